"""`planner worth`."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

from planner.commands.options import DONE, Language, OneScenario, Outputs, Quiet, Seed, Verbose
from planner.commands.reading import located, read_with_seed, shown_progress
from planner.text import text

STEPS = 9
"""Steps of a study, at most, for the progress bar."""


class Source(StrEnum):
    """Sources that could be worth having."""

    GRID = "grid"
    GENERATOR = "generator"
    SOLAR = "solar"


def worth(
    scenario: OneScenario,
    source: Annotated[Source, typer.Argument(help="The source in question.", show_default=False)],
    outputs: Outputs = Path("outputs"),
    seed: Seed = None,
    language: Language = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
) -> int:
    """Say whether a source is worth having, and what would turn the answer."""
    from planner.report.console import out_console
    from planner.report.files import check_folder, results_in
    from planner.report.pages.worth import worth_report, worth_summary
    from planner.report.studies_json import worth_as_data, write_study_json
    from planner.report.terminal_writer import terminal_blocks
    from planner.report.workbook.book import write_book
    from planner.study.worth import worth_of
    from planner.study.worth_words import worth_sentences

    stem = f"{scenario.stem}-worth-{source.value}"
    workbook, data = outputs / f"{stem}.xlsx", outputs / f"{stem}.json"
    check_folder(outputs, [workbook.name, data.name])
    with located(scenario), shown_progress(quiet) as progress:
        done = iter(range(100))
        found = worth_of(
            read_with_seed(scenario, seed, language),
            source.value,
            scenario.parent,
            lambda step: progress(next(done), STEPS, step),
        )
    said = worth_sentences(found)
    with results_in(outputs) as folder:
        write_book(worth_report(found, said), folder / workbook.name)
        write_study_json(worth_as_data(found, said), folder / data.name)
    if not quiet:
        typer.echo(text("command.wrote_both", first=workbook, second=data))
        out_console().print(terminal_blocks(worth_summary(found, said)))
    return DONE
