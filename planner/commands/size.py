"""`planner size`."""

from __future__ import annotations

from pathlib import Path

import typer

from planner.commands.options import DONE, OneScenario, Outputs, Quiet, Seed, Verbose
from planner.commands.reading import located, read_with_seed, shown_progress


def size(
    scenario: OneScenario,
    outputs: Outputs = Path("outputs"),
    seed: Seed = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
) -> int:
    """Search panels, tank, float-switch levels, hours, pumps and pipes for the least present cost that serves."""
    from planner.report.console import out_console
    from planner.report.files import writing
    from planner.report.sizing_report import sizing_terminal, write_sizing_book, write_sizing_json
    from planner.study.sizing import size_scenario
    from planner.study.sizing_words import sizing_sentences

    with located(scenario), shown_progress(quiet) as progress:
        sizing = size_scenario(read_with_seed(scenario, seed), scenario.parent, progress)
    said = sizing_sentences(sizing)
    workbook, data = outputs / f"{scenario.stem}-size.xlsx", outputs / f"{scenario.stem}-size.json"
    with writing(workbook):
        write_sizing_book(sizing, said, workbook)
        write_sizing_json(sizing, said, data)
    if not quiet:
        out_console().print(sizing_terminal(sizing, said, verbose=verbose))
        typer.echo(f"\nWrote {workbook} and {data}\n")
    return DONE
