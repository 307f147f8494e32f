"""`planner check`."""

from __future__ import annotations

from typing import Annotated

import typer

from planner.commands.options import DONE, OneScenario, Quiet, Seed, Verbose
from planner.commands.reading import located, read_with_seed

FAILED = 1
"""Exit code of --strict when a check fails."""


def check(
    scenario: OneScenario,
    strict: Annotated[bool, typer.Option("--strict", help="End with exit code 1 when a check fails.")] = False,
    seed: Seed = None,
    quiet: Quiet = False,
    verbose: Verbose = False,
) -> int:
    """Check whether borehole, pump, pipe, array, cables and supply fit together, and the remedy for what does not."""
    from planner.checks.finding import finding
    from planner.checks.plate import plate_lines
    from planner.checks.site import site_basis, site_verdicts
    from planner.study.site import place_of, weather_of

    checked = read_with_seed(scenario, seed)
    with located(scenario):
        place = place_of(checked)
        weather = weather_of(checked, place, scenario.parent)
        verdicts = site_verdicts(checked, place, weather)
        basis = site_basis(checked, place, weather)
    if not quiet:
        from planner.report.checks_table import check_summary
        from planner.report.console import out_console
        from planner.report.terminal_writer import terminal_blocks

        found, lines = finding(basis, verdicts), plate_lines(basis, verdicts)
        out_console().print(terminal_blocks(check_summary(checked.name, found, lines, verdicts, verbose=verbose)))
    return FAILED if strict and any(verdict.outcome == "fail" for verdict in verdicts) else DONE
