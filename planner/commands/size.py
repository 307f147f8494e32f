"""`planner size`."""

from __future__ import annotations

from pathlib import Path

import typer

from planner.commands.options import DONE, Language, OneScenario, Outputs, Quiet, Seed, Verbose
from planner.commands.reading import located, read_with_seed, shown_progress
from planner.text import text


def size(
    scenario: OneScenario,
    outputs: Outputs = Path("outputs"),
    seed: Seed = None,
    language: Language = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
) -> int:
    """Search array, tank, float switch, hours, pumps and pipes for the design that meets the target at least cost."""
    from planner.answers.of_study import sizing_answer
    from planner.report.console import out_console
    from planner.report.files import check_folder, results_in
    from planner.report.pages.size import size_report, size_summary
    from planner.report.studies_json import sizing_as_data, write_study_json
    from planner.report.terminal_writer import terminal_blocks
    from planner.report.workbook.book import write_book
    from planner.study.site import place_of, weather_of
    from planner.study.sizing import size_scenario

    workbook, data = outputs / f"{scenario.stem}-size.xlsx", outputs / f"{scenario.stem}-size.json"
    check_folder(outputs, [workbook.name, data.name])
    with located(scenario), shown_progress(quiet) as progress:
        checked = read_with_seed(scenario, seed, language)
        sizing = size_scenario(checked, scenario.parent, progress)
        place = place_of(checked)
        said = sizing_answer(sizing, place, weather_of(checked, place, scenario.parent))
    with results_in(outputs) as folder:
        write_book(size_report(sizing, said), folder / workbook.name)
        write_study_json(sizing_as_data(sizing, said), folder / data.name)
    if not quiet:
        typer.echo(text("command.wrote_both", first=workbook, second=data))
        out_console().print(terminal_blocks(size_summary(sizing, said, verbose=verbose)))
    return DONE
