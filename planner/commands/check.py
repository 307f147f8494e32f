"""`planner check`."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from planner.commands.options import DONE, Language, OneScenario, Quiet, Seed, Verbose
from planner.commands.reading import as_toml, located, read_with_seed

if TYPE_CHECKING:
    from planner.report.document import Block

FAILED = 1
"""Exit code of --strict when a check fails."""


def check(
    scenario: OneScenario,
    strict: Annotated[
        bool,
        typer.Option("--strict", help="End with exit code 1 when a check fails, with --apply one of the new file."),
    ] = False,
    apply: Annotated[
        Path | None,
        typer.Option(
            "--apply",
            help="Scenario file to write, with the remedies of failed checks that can be computed.",
            show_default=False,
        ),
    ] = None,
    seed: Seed = None,
    language: Language = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
) -> int:
    """Check whether borehole, pump, pipe, array, cables and supply fit together, and the remedy for what does not."""
    from planner.checks.finding import finding
    from planner.checks.plate import plate_lines
    from planner.checks.site import site_basis, site_verdicts
    from planner.study.site import estimate_sentences, place_of, weather_of

    if apply is not None:
        from planner.report.scenario_file import check_new_file

        check_new_file(apply)
    checked = read_with_seed(scenario, seed, language)
    with located(scenario):
        place = place_of(checked)
        weather = weather_of(checked, place, scenario.parent)
        verdicts = site_verdicts(checked, place, weather)
        basis = site_basis(checked, place, weather)
    if not quiet:
        from planner.report.checks_table import check_summary

        found, beware = finding(basis, verdicts), estimate_sentences(checked)[:1]
        lines = plate_lines(basis, verdicts)
        _print(check_summary(checked.name, found, lines, verdicts, beware, verbose=verbose))
    if apply is not None:
        from planner.checks.remedies import carried_out
        from planner.report.checks_table import carried_out_blocks
        from planner.report.scenario_file import remedied_file, write_new

        with located(scenario):
            carried = carried_out(checked, verdicts, lambda changed: site_verdicts(changed, place, weather))
            if seed is not None:
                carried.changes["seed",] = seed
            made = remedied_file(scenario, apply, carried, as_toml(scenario))
            verdicts = site_verdicts(made.scenario, place, weather)
        write_new(apply, made)
        if not quiet:
            _print(carried_out_blocks(carried, verdicts, apply, kept=made.kept))
    return FAILED if strict and any(verdict.outcome == "fail" for verdict in verdicts) else DONE


def _print(blocks: Iterable[Block]) -> None:
    from planner.report.console import out_console
    from planner.report.terminal_writer import terminal_blocks

    out_console().print(terminal_blocks(blocks))
