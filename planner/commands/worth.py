"""`planner worth`."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from planner.commands.options import DONE, Language, OneScenario, Outputs, Quiet, Seed, Verbose
from planner.commands.reading import located, read_with_seed, shown_progress
from planner.text import text

STEPS = 11
"""Steps of a study, at most, for the progress bar."""


SOURCES = ("grid", "generator", "solar")
"""Sources that could be worth having, for the shell to complete; the study says which there are."""


def worth(
    scenario: OneScenario,
    source: Annotated[
        str,
        typer.Argument(
            help=f"The source in question: {', '.join(SOURCES)}.", show_default=False, autocompletion=lambda: SOURCES
        ),
    ],
    outputs: Outputs = Path("outputs"),
    seed: Seed = None,
    language: Language = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
) -> int:
    """Say whether a source is worth having, and what would turn the answer."""
    from planner.answers.worth import worth_answer
    from planner.report.console import out_console
    from planner.report.files import check_folder, results_in
    from planner.report.pages.worth import worth_report, worth_summary
    from planner.report.studies_json import worth_as_data, write_study_json
    from planner.report.terminal_writer import terminal_blocks
    from planner.report.workbook.book import write_book
    from planner.study.worth import worth_of

    stem = f"{scenario.stem}-worth-{source}"
    workbook, data = outputs / f"{stem}.xlsx", outputs / f"{stem}.json"
    check_folder(outputs, [workbook.name, data.name])
    with located(scenario), shown_progress(quiet) as progress:
        done = iter(range(100))
        found = worth_of(
            read_with_seed(scenario, seed, language),
            source,
            scenario.parent,
            lambda step: progress(next(done), STEPS, step),
        )
    said = worth_answer(found)
    with results_in(outputs) as folder:
        write_book(worth_report(found, said), folder / workbook.name)
        write_study_json(worth_as_data(found, said), folder / data.name)
    if not quiet:
        typer.echo(text("command.wrote_both", first=workbook, second=data))
        out_console().print(terminal_blocks(worth_summary(found, said)))
    return DONE
