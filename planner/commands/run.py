"""`planner run`."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from planner.commands.ending import say_fault, say_wrong
from planner.commands.options import DONE, Language, Outputs, Quiet, Scenarios, Seed, Verbose
from planner.commands.reading import located, read_with_seed, rows_kind, shown_progress
from planner.text import listed, text

if TYPE_CHECKING:
    from planner.study.compare import Study

SHOWN_TURNS = 2
"""Sentences shown of each kind on what would turn the answer."""
Compare = Annotated[
    Path | None,
    typer.Option("--compare", help="Workbook that puts all scenarios side by side.", show_default=False),
]
Quick = Annotated[
    bool,
    typer.Option("--quick", help="Leave out what the assumptions change, how sure the answer is, and the next step."),
]
Brief = Annotated[bool, typer.Option("--brief", help="Write one page for a phone or a sheet of paper as well.")]


class RowsBy(StrEnum):
    """By what there is a row."""

    HOURS = "hours"
    MONTHS = "months"
    YEARS = "years"


Rows = Annotated[
    RowsBy | None,
    typer.Option("--rows", help="Write every option's hours, months or years as CSV as well.", show_default=False),
]
Parquet = Annotated[bool, typer.Option("--parquet", help="Write those rows as Parquet.")]


@dataclass(frozen=True)
class _Wanted:
    """What is to be written and said of each scenario."""

    outputs: Path
    seed: int | None
    language: str | None
    brief: bool
    quick: bool
    quiet: bool
    verbose: bool
    rows: RowsBy | None
    rows_kind: str

    def files(self, scenario: Path) -> list[str]:
        """Names of the files of a scenario: workbook, JSON, and those that are asked for."""
        stem = scenario.stem
        rows = [] if self.rows is None else [f"{stem}-{self.rows.value}.{self.rows_kind}"]
        return [f"{stem}.xlsx", f"{stem}.json", *([f"{stem}.html"] if self.brief else []), *rows]


def run(
    scenarios: Scenarios,
    outputs: Outputs = Path("outputs"),
    seed: Seed = None,
    language: Language = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
    compare: Compare = None,
    brief: Brief = False,
    quick: Quick = False,
    rows: Rows = None,
    parquet: Parquet = False,
) -> int:
    """Simulate, cost and compare every supply option; write a workbook and a JSON file for each scenario."""
    from planner.report.files import check_folder
    from planner.scenario.errors import InputError, Problem

    kind = rows_kind(parquet=parquet)
    wanted = _Wanted(outputs, seed, language, brief, quick, quiet, verbose, rows, kind)
    doubled = {file.stem for file in scenarios if sum(other.stem == file.stem for other in scenarios) > 1}
    if doubled:
        name = sorted(doubled)[0]
        raise InputError(name, [Problem("", "two scenarios of this name would write the same files; rename one")])
    if compare is not None:
        _check_comparison(compare, scenarios, outputs)
    check_folder(outputs, [name for file in scenarios for name in wanted.files(file)])
    failed: list[int] = []
    studies: list[Study] = []
    warned: set[str] = set()  # of all sites: a list that is repeated is not read
    with shown_progress(quiet or len(scenarios) < 2) as progress:
        for done, file in enumerate(scenarios):
            progress(done, len(scenarios), file.name)
            try:
                study = _run_one(file, wanted, warned)
                if compare is not None:
                    studies.append(study)
            except InputError as error:
                failed.append(say_wrong(error))
            except BrokenPipeError:
                raise
            except Exception as error:
                # a fault of ours in one scenario must not cost the others
                if verbose:
                    raise
                failed.append(say_fault(error, file))
    if compare is not None:
        _compare(studies, compare, quiet=quiet)
    return min(failed, default=DONE)


def _check_comparison(compare: Path, scenarios: list[Path], outputs: Path) -> None:
    """Refuse a comparison that cannot be or that would overwrite something, before anything is run."""
    from planner.report.files import check_folder
    from planner.scenario.errors import InputError, Problem

    taken = {path.resolve() for file in scenarios for path in (file, outputs / f"{file.stem}.xlsx")}
    problem = None
    if len(scenarios) < 2:
        problem = "a comparison needs at least two scenarios"
    elif compare.suffix.lower() != ".xlsx":
        problem = "a comparison is a workbook: its name must end in .xlsx"
    elif compare.resolve() in taken:
        problem = "the comparison would replace a scenario or the results of one; give it another name"
    if problem is not None:
        raise InputError(str(compare), [Problem("", problem)])
    check_folder(compare.parent, [compare.name])


def _compare(studies: list[Study], compare: Path, *, quiet: bool) -> None:
    from planner.report.files import writing
    from planner.report.pages.comparison import comparison_report
    from planner.report.workbook.book import write_book

    with writing(compare):
        write_book(comparison_report(studies, str(compare)), compare)
    if not quiet:
        from planner.report.console import out_console
        from planner.report.terminal_comparison import comparison_summary
        from planner.report.terminal_writer import terminal_blocks

        typer.echo(f"\n{text('command.wrote', file=compare)}\n")
        out_console().print(terminal_blocks(comparison_summary(studies)))


def _turns(study: Study, *, full: bool) -> list[str]:
    """Say what would turn the answer, and how sure it is: the first of it, or all."""
    from planner.answers.next_step import next_step_sentences
    from planner.answers.uncertainty import uncertainty_sentences

    steps, sure = next_step_sentences(study), uncertainty_sentences(study)
    return [*steps, *sure] if full else [*steps[:SHOWN_TURNS], *sure[:SHOWN_TURNS]]


def _run_one(file: Path, wanted: _Wanted, warned: set[str]) -> Study:
    from planner.answers.cautions import cautions, limits, number_cautions, warnings
    from planner.answers.of_study import answer, study_basis, study_verdicts
    from planner.answers.remedied import remedied, remedied_sentences
    from planner.report.files import results_in
    from planner.report.json_file import write_json
    from planner.report.run_workbook import write_workbook
    from planner.scenario.errors import InputError, Problem
    from planner.study.compare import study_scenario

    names = wanted.files(file)
    workbook, data, *_ = names
    if (wanted.outputs / workbook).resolve() == file.resolve():
        raise InputError(str(file), [Problem("", "the results would replace this form; give another --outputs folder")])
    with located(file):
        checked = read_with_seed(file, wanted.seed, wanted.language)
        study = study_scenario(checked, file.parent, with_effects=not wanted.quick)
        verdicts = study_verdicts(study)
        found = remedied(study, verdicts, file.parent)
    beware, with_remedies = cautions(study), remedied_sentences(found)
    with results_in(wanted.outputs) as folder:
        write_workbook(study, beware, folder / workbook, verdicts, with_remedies)
        write_json(study, beware, verdicts, folder / data, found)
        if wanted.brief:
            from planner.report.brief.file import write_brief

            write_brief(study, folder / f"{file.stem}.html", verdicts, with_remedies)
        if wanted.rows is not None:
            from planner.report.rows import study_rows, write_frames

            write_frames(study_rows(study, wanted.rows.value), folder / names[-1])
    if not wanted.quiet:
        from planner.checks.finding import finding
        from planner.report.console import out_console
        from planner.report.terminal import Answer, run_report

        typer.echo(text("command.wrote_all", files=listed([str(wanted.outputs / name) for name in names])))
        said = Answer(
            found=finding(study_basis(study), verdicts),
            sentences=answer(study, verdicts),
            turns=_turns(study, full=wanted.verbose),
            remedied=with_remedies,
            verdicts=verdicts,
            limits=number_cautions(study) if wanted.verbose else limits(study),
            dangers=warnings(study, warned, full=wanted.verbose),
        )
        out_console().print(run_report(study, said, verbose=wanted.verbose))
    return study
