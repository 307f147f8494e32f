"""The vocabulary in which scenario fields are declared: base model, number types and field makers.

Every field carries its description, unit, bounds, what a change of it makes necessary and, where it has a default, the
default's source; `planner.scenario.walk` reads them for error messages, starter file, form, sheets, sweeps and schema.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Annotated, Any, ClassVar, Literal

from pydantic import BaseModel, ConfigDict, Field
from pydantic_core import PydanticCustomError

COMMON_PRACTICE = "common practice, no source"
FROM_MEMORY = "from memory"

Auto = Literal["auto"]
Month12 = Annotated[list[float], Field(min_length=12, max_length=12)]
"""Twelve values, January to December."""
NonNegative12 = Annotated[list[Annotated[float, Field(ge=0)]], Field(min_length=12, max_length=12)]
NonNegative24 = Annotated[list[Annotated[float, Field(ge=0)]], Field(min_length=24, max_length=24)]
"""Twenty-four values, one for each hour of the day from midnight."""
Percent = Annotated[float, Field(ge=0, le=100)]
Percent12 = Annotated[list[Percent], Field(min_length=12, max_length=12)]
HourRange = Annotated[list[Annotated[float, Field(ge=0, le=24)]], Field(min_length=2, max_length=2)]
"""A part of the day, [from, to] in hours of local standard time; to < from runs over midnight."""


Changes = Literal["weather", "run", "money", "nothing"]
"""What a change of a key makes necessary: the weather anew, and with it the hours and the money; the hours in the same
weather, and the money; the money, and who meets the target; or none of these, as for names and what is only checked.

Designs are taken as given: where one is left open ('auto'), any key may change what is chosen.
"""


class Model(BaseModel):
    """Base of every scenario model: nothing unknown, nothing converted, nothing infinite, nothing changed later.

    `changes` holds for the model's own fields and those that it inherits, unless a field says otherwise.
    """

    # Built when first used: the scenario builds what is in it, and no part of it once more by itself.
    model_config = ConfigDict(
        extra="forbid", frozen=True, strict=True, allow_inf_nan=False, validate_default=True, defer_build=True
    )

    changes: ClassVar[Changes] = "run"


def needed(description: str, unit: str = "", *, changes: Changes | None = None, **bounds: Any) -> Any:
    """Declare a field that the user must give."""
    return Field(description=description, json_schema_extra=_said(unit=unit, changes=changes), **bounds)


def optional(
    description: str,
    unit: str = "",
    *,
    absent: str = "not given",
    given_by: str = "",
    changes: Changes | None = None,
    **bounds: Any,
) -> Any:
    """Declare a field that may be left out; `absent` says what that means, `given_by` which other key may give it."""
    extra = _said(unit=unit, absent=absent, given_by=given_by, changes=changes)
    return Field(default=None, description=description, json_schema_extra=extra, **bounds)


def assumed(
    default: Any, description: str, unit: str = "", *, source: str, changes: Changes | None = None, **bounds: Any
) -> Any:
    """Declare a field with a default and the source of that default."""
    extra = _said(unit=unit, default_source=source, changes=changes)
    return Field(default=default, description=description, json_schema_extra=extra, **bounds)


def found(description: str, unit: str = "", *, how: str, changes: Changes | None = None, **bounds: Any) -> Any:
    """Declare a field that may be left out because `planner.assumptions` works it out; `how` says from what.

    The models themselves want it, so that whatever stands on them sees a value.
    """
    return Field(description=description, json_schema_extra=_said(unit=unit, how=how, changes=changes), **bounds)


def several(description: str, *, changes: Changes | None = None, **bounds: Any) -> Any:
    """Declare a list that may be empty."""
    return Field(default_factory=list, description=description, json_schema_extra=_said(changes=changes), **bounds)


AT_ODDS = "at_odds"
"""Kind of the errors that `at_odds` makes."""


def at_odds(keys: Sequence[str], words: str, slots: Mapping[str, Any] | None = None) -> PydanticCustomError:
    """Make the error of values that do not agree.

    Parameters
    ----------
    keys : sequence of str
        Dotted keys that are at odds, from the model that says so; none where it is the value itself.
    words : str
        What is wrong, with named slots.
    slots : mapping, optional
        What stands in the slots.
    """
    return PydanticCustomError(AT_ODDS, words, {**(slots or {}), AT_ODDS: tuple(keys)})


def _said(**extra: str | None) -> dict[str, Any]:
    return {name: text for name, text in extra.items() if text}
