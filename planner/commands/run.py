"""`planner run`."""

from __future__ import annotations

from pathlib import Path

import typer

from planner.commands.options import DONE, WRONG_INPUT, Outputs, Quiet, Scenarios, Seed, Verbose
from planner.commands.reading import located, read_with_seed, shown_progress


def run(
    scenarios: Scenarios,
    outputs: Outputs = Path("outputs"),
    seed: Seed = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
) -> int:
    """Simulate, cost and compare every supply option; write a workbook and a JSON file for each scenario."""
    from planner.scenario.errors import InputError, Problem

    doubled = {file.stem for file in scenarios if sum(other.stem == file.stem for other in scenarios) > 1}
    if doubled:
        name = sorted(doubled)[0]
        raise InputError(name, [Problem("", "two scenarios of this name would write the same files; rename one")])
    wrong = False
    with shown_progress(quiet or len(scenarios) < 2) as progress:
        for done, file in enumerate(scenarios):
            progress(done, len(scenarios), file.name)
            try:
                _run_one(file, outputs, seed, quiet=quiet, verbose=verbose)
            except InputError as error:
                wrong = True
                for line in error.lines():
                    typer.echo(line, err=True)
    return WRONG_INPUT if wrong else DONE


def _run_one(file: Path, outputs: Path, seed: int | None, *, quiet: bool, verbose: bool) -> None:
    from planner.checks.cautions import cautions
    from planner.checks.of_study import failures, study_verdicts
    from planner.report.console import out_console
    from planner.report.files import writing
    from planner.report.json_file import write_json
    from planner.report.terminal import study_report
    from planner.report.workbook import write_workbook
    from planner.scenario.errors import InputError, Problem
    from planner.study.compare import study_scenario
    from planner.study.words import sentences

    workbook, data = outputs / f"{file.stem}.xlsx", outputs / f"{file.stem}.json"
    if workbook.resolve() == file.resolve():
        raise InputError(str(file), [Problem("", "the results would replace this form; give another --outputs folder")])
    with located(file):
        study = study_scenario(read_with_seed(file, seed), file.parent)
        verdicts = study_verdicts(study)
    said, beware = [*sentences(study), *failures(verdicts)], cautions(study)
    with writing(workbook):
        write_workbook(study, said, beware, workbook, verdicts)
        write_json(study, said, beware, verdicts, data)
    if not quiet:
        out_console().print(study_report(study, said, beware, verdicts, verbose=verbose))
        typer.echo(f"\nWrote {workbook} and {data}\n")
