"""The vocabulary in which scenario fields are declared: base model, number types and field makers.

Every field carries its description, unit, bounds and, where it has a default, the default's source, so that error
messages, the starter file, the inputs sheet and the JSON Schema all say the same thing.
"""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import BaseModel, ConfigDict, Field

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


class Model(BaseModel):
    """Base of every scenario model: nothing unknown, nothing converted, nothing infinite, nothing changed later."""

    model_config = ConfigDict(extra="forbid", frozen=True, strict=True, allow_inf_nan=False, validate_default=True)


def needed(description: str, unit: str = "", **bounds: Any) -> Any:
    """Declare a field that the user must give."""
    return Field(description=description, json_schema_extra={"unit": unit}, **bounds)


def optional(description: str, unit: str = "", *, absent: str = "not given", **bounds: Any) -> Any:
    """Declare a field that may be left out; `absent` says what that means."""
    return Field(default=None, description=description, json_schema_extra={"unit": unit, "absent": absent}, **bounds)


def assumed(default: Any, description: str, unit: str = "", *, source: str, **bounds: Any) -> Any:
    """Declare a field with a default and the source of that default."""
    return Field(
        default=default,
        description=description,
        json_schema_extra={"unit": unit, "default_source": source},
        **bounds,
    )


def several(description: str, **bounds: Any) -> Any:
    """Declare a list of tables that may be empty."""
    return Field(default_factory=list, description=description, **bounds)
