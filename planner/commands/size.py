"""`planner size`."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from planner.commands.reading import read_with_seed, shown_progress


def size(
    scenario: Annotated[Path, typer.Argument(help="Scenario file (TOML).", show_default=False)],
    outputs: Annotated[Path, typer.Option("--outputs", help="Folder for the workbook and the JSON.")] = Path("outputs"),
    seed: Annotated[
        int | None,
        typer.Option("--seed", min=0, max=2**31, help="Seed to use instead of the scenario's.", show_default=False),
    ] = None,
    quiet: Annotated[bool, typer.Option("--quiet", "-q", help="Print nothing but errors.")] = False,
    verbose: Annotated[
        bool, typer.Option("--verbose", "-v", help="Say more; show the traceback of our own faults.")
    ] = False,
) -> int:
    """Search panels, tank, float-switch levels, hours, pumps and pipes for the least present cost that serves."""
    from planner.report.console import out_console
    from planner.report.files import check_folder, results_in
    from planner.report.sizing_report import sizing_terminal, write_sizing_book, write_sizing_json
    from planner.scenario.reader import located
    from planner.study.sizing import size_scenario
    from planner.study.sizing_words import sizing_sentences

    workbook, data = outputs / f"{scenario.stem}-size.xlsx", outputs / f"{scenario.stem}-size.json"
    check_folder(outputs, [workbook.name, data.name])
    with located(scenario), shown_progress(quiet) as progress:
        sizing = size_scenario(read_with_seed(scenario, seed), scenario.parent, progress)
    said = sizing_sentences(sizing)
    with results_in(outputs) as folder:
        write_sizing_book(sizing, said, folder / workbook.name)
        write_sizing_json(sizing, said, folder / data.name)
    if not quiet:
        out_console().print(sizing_terminal(sizing, said, verbose=verbose))
        typer.echo(f"\nWrote {workbook} and {data}\n")
    return 0
