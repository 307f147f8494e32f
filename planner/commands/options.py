"""Arguments and options that several commands share."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from planner.text.numbers import Language as LanguageCode

Scenarios = Annotated[
    list[Path], typer.Argument(help="Scenario files (TOML, or a filled-in form).", show_default=False)
]
OneScenario = Annotated[Path, typer.Argument(help="Scenario file (TOML, or a filled-in form).", show_default=False)]
Outputs = Annotated[Path, typer.Option("--outputs", help="Folder for the workbook and the JSON.")]
Quiet = Annotated[bool, typer.Option("--quiet", "-q", help="Print nothing but errors.")]
Verbose = Annotated[bool, typer.Option("--verbose", "-v", help="Say more; show the traceback of an internal error.")]
Seed = Annotated[
    int | None,
    typer.Option("--seed", min=0, max=2**31, help="Seed to use instead of the scenario's.", show_default=False),
]
Language = Annotated[
    LanguageCode | None,
    typer.Option(
        "--language",
        help="Language of the answer and the reports, instead of the scenario's; each but English awaits review.",
        show_default=False,
    ),
]

DONE, OUR_FAULT, WRONG_INPUT = 0, 1, 2
"""Exit codes."""
