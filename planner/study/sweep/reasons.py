"""Why a variant of a sweep has no result."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from planner.scenario.errors import InputError
from planner.text import text

Kind = Literal["wrong_input", "failed", "worker_lost", "not_done", "not_done_error"]
"""The variant's input is refused; an error within the program; its chunk was given up after its worker was lost too
often; or the cluster did not do its chunk, with or without an error of its own."""


@dataclass(frozen=True)
class Reason:
    """Why a variant has no result: its kind, and what the words for it name."""

    kind: Kind
    slots: dict[str, str] = field(default_factory=dict)

    @property
    def given_up(self) -> bool:
        """Whether it was not done at all, so that it may be tried again."""
        return self.kind in ("worker_lost", "not_done", "not_done_error")

    @property
    def is_input(self) -> bool:
        """Whether the input is at fault."""
        return self.kind == "wrong_input"

    @property
    def words(self) -> str:
        """The reason in words."""
        return text(f"sweep_reason.{self.kind}", **self.slots)


def reason_of(error: Exception) -> Reason:
    """Take an error met with a variant as the reason."""
    if isinstance(error, InputError):
        problems = (f"{problem.key}: {problem.text}" if problem.key else problem.text for problem in error.problems)
        return Reason("wrong_input", {"problems": "; ".join(problems)})
    return Reason("failed", {"error": type(error).__name__, "message": str(error)})
