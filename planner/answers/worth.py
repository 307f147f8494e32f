"""What 'is it worth it?' comes to, in sentences."""

from __future__ import annotations

from planner.answers.next_step import sentences_of
from planner.study.worth import Worth
from planner.study.worth_words import worth_sentences


def worth_answer(worth: Worth) -> list[str]:
    """Say whether a source is worth having, what would turn that, and what the next step up from an option brings."""
    return [*worth_sentences(worth), *sentences_of(worth.next_steps, worth.scenario)]
