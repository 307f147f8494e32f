"""`planner proposal`."""

from __future__ import annotations

from pathlib import Path

import typer

from planner.commands.ending import say_fault, say_wrong
from planner.commands.options import DONE, Language, Outputs, Quiet, Scenarios, Seed, Verbose
from planner.commands.reading import located, read_with_seed, shown_progress
from planner.text import text
from planner.text.numbers import Language as LanguageCode


def proposal(
    scenarios: Scenarios,
    outputs: Outputs = Path("outputs"),
    seed: Seed = None,
    language: Language = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
) -> int:
    """Write a proposal to a funder as a Word document to go on with: what the study knows, the rest to be completed."""
    from planner.report.files import check_folder
    from planner.scenario.errors import InputError, Problem

    doubled = {file.stem for file in scenarios if sum(other.stem == file.stem for other in scenarios) > 1}
    if doubled:
        name = sorted(doubled)[0]
        raise InputError(name, [Problem("", "two scenarios of this name would write the same files; rename one")])
    check_folder(outputs, [_name(file) for file in scenarios])
    failed: list[int] = []
    with shown_progress(quiet or len(scenarios) < 2) as progress:
        for done, file in enumerate(scenarios):
            progress(done, len(scenarios), file.name)
            try:
                count = _write(file, outputs, seed, language)
            except InputError as error:
                failed.append(say_wrong(error))
            except BrokenPipeError:
                raise
            except Exception as error:
                # a fault of ours in one scenario must not cost the others
                if verbose:
                    raise
                failed.append(say_fault(error, file))
            else:
                if not quiet:
                    typer.echo(text("proposal.wrote", file=outputs / _name(file), count=count))
    return min(failed, default=DONE)


def _name(file: Path) -> str:
    return f"{file.stem}-proposal.docx"


def _write(file: Path, outputs: Path, seed: int | None, language: LanguageCode | None) -> int:
    """Write the proposal of one scenario; the number of lines to be completed."""
    from planner.answers.cautions import plain_cautions
    from planner.answers.of_study import study_verdicts
    from planner.answers.remedied import remedied, remedied_sentences
    from planner.report.files import results_in
    from planner.report.proposal.book import count_to_complete, proposal_report
    from planner.report.proposal.material import Material
    from planner.report.proposal.summary import frame_of
    from planner.report.word.book import write_word
    from planner.study.compare import study_scenario

    with located(file):
        study = study_scenario(read_with_seed(file, seed, language), file.parent, with_effects=True)
        verdicts = study_verdicts(study)
        found = remedied(study, verdicts, file.parent)
    report = proposal_report(Material(study, verdicts, tuple(remedied_sentences(found)), tuple(plain_cautions(study))))
    with results_in(outputs) as folder:
        write_word(report, folder / _name(file), frame_of(study.scenario))
    return count_to_complete(report)
