"""`planner run`."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from planner.commands.ending import say_fault, say_wrong
from planner.commands.options import DONE, Outputs, Quiet, Scenarios, Seed, Verbose
from planner.commands.reading import located, read_with_seed, shown_progress
from planner.text import text

if TYPE_CHECKING:
    from planner.study.compare import Study

Compare = Annotated[
    Path | None,
    typer.Option("--compare", help="Workbook that puts all scenarios side by side.", show_default=False),
]
Quick = Annotated[bool, typer.Option("--quick", help="Leave out what the numbers that were not given would change.")]
Brief = Annotated[
    bool, typer.Option("--brief", help="Write a page for a browser as well: the answer, failed checks and cautions.")
]


def run(
    scenarios: Scenarios,
    outputs: Outputs = Path("outputs"),
    seed: Seed = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
    compare: Compare = None,
    brief: Brief = False,
    quick: Quick = False,
) -> int:
    """Simulate, cost and compare every supply option; write a workbook and a JSON file for each scenario."""
    from planner.report.files import check_folder
    from planner.scenario.errors import InputError, Problem

    doubled = {file.stem for file in scenarios if sum(other.stem == file.stem for other in scenarios) > 1}
    if doubled:
        name = sorted(doubled)[0]
        raise InputError(name, [Problem("", "two scenarios of this name would write the same files; rename one")])
    if compare is not None:
        _check_comparison(compare, scenarios, outputs)
    suffixes = (".xlsx", ".json", *([".html"] if brief else []))
    check_folder(outputs, [f"{file.stem}{suffix}" for file in scenarios for suffix in suffixes])
    failed: list[int] = []
    studies: list[Study] = []
    warned: set[str] = set()  # of all sites: a list that is repeated is not read
    with shown_progress(quiet or len(scenarios) < 2) as progress:
        for done, file in enumerate(scenarios):
            progress(done, len(scenarios), file.name)
            try:
                study = _run_one(file, outputs, seed, warned, brief=brief, quick=quick, quiet=quiet, verbose=verbose)
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


def _run_one(
    file: Path, outputs: Path, seed: int | None, warned: set[str], *, brief: bool, quick: bool, quiet: bool,
    verbose: bool,
) -> Study:  # fmt: skip
    from planner.answers.cautions import cautions, limits, number_cautions, warnings
    from planner.answers.of_study import answer, study_basis, study_verdicts
    from planner.answers.remedied import remedied, remedied_sentences
    from planner.report.files import results_in
    from planner.report.json_file import write_json
    from planner.report.run_workbook import write_brief, write_workbook
    from planner.scenario.errors import InputError, Problem
    from planner.study.compare import study_scenario

    workbook, data, page = (outputs / f"{file.stem}{suffix}" for suffix in (".xlsx", ".json", ".html"))
    if workbook.resolve() == file.resolve():
        raise InputError(str(file), [Problem("", "the results would replace this form; give another --outputs folder")])
    with located(file):
        study = study_scenario(read_with_seed(file, seed), file.parent, with_effects=not quick)
        verdicts = study_verdicts(study)
        found = remedied(study, verdicts, file.parent)
    beware, with_remedies = cautions(study), remedied_sentences(found)
    with results_in(outputs) as folder:
        write_workbook(study, beware, folder / workbook.name, verdicts, with_remedies)
        write_json(study, beware, verdicts, folder / data.name, found)
        if brief:
            write_brief(study, beware, folder / page.name, verdicts, with_remedies)
    if not quiet:
        from planner.checks.finding import finding
        from planner.report.console import out_console
        from planner.report.terminal import Answer, run_report

        if brief:
            typer.echo(text("command.wrote_three", first=workbook, second=data, third=page))
        else:
            typer.echo(text("command.wrote_both", first=workbook, second=data))
        said = Answer(
            found=finding(study_basis(study), verdicts),
            sentences=answer(study, verdicts),
            remedied=with_remedies,
            verdicts=verdicts,
            limits=number_cautions(study) if verbose else limits(study),
            dangers=warnings(study, warned, full=verbose),
        )
        out_console().print(run_report(study, said, verbose=verbose))
    return study
