"""What `planner size` may choose from, beyond the ready lists."""

from __future__ import annotations

from typing import Annotated, Self

from pydantic import Field, field_validator, model_validator

from planner.scenario.fields import HourRange, Model, Percent, at_odds, needed, optional, several
from planner.scenario.waterworks import Pump

Levels = Annotated[list[Percent], Field(min_length=2, max_length=2)]
"""Levels of the float switch, [start, stop] as per cent of the tank."""


class HoursCandidate(Model):
    """Hours to which a timer could hold the top-up."""

    name: str = needed("What the setting is called", min_length=1)
    hours: list[HourRange] = several(
        "Parts of the day, [from, to] in local standard time; none means whenever the source may run"
    )


class PipeCandidate(Model):
    """Another pipe for one segment of the pipeline; its length, fittings, life and maintenance stay the segment's."""

    segment: str = needed("Name of the segment it could take the place of", min_length=1)
    pipe: str | None = optional(
        "A size from the pipe tables, such as 'PE100 SDR11 63'", absent="inner_diameter_mm is used"
    )
    inner_diameter_mm: float | None = optional("Inside diameter", "mm", absent="from the pipe table", gt=5, le=2000)
    roughness_mm: float | None = optional(
        "Roughness of the wall", "mm", absent="of the pipe's material (0.007 mm plastic)", ge=0, le=5
    )
    price: float = needed("Price per metre, laid", "money/m", ge=0)

    @model_validator(mode="after")
    def _one_bore(self) -> Self:
        if (self.inner_diameter_mm is None) == (self.pipe is None):
            raise at_odds(
                ("inner_diameter_mm", "pipe"), "give either inner_diameter_mm or pipe (both or neither was given)"
            )
        return self

    @property
    def label(self) -> str:
        """How the pipe is named in a result."""
        return self.pipe if self.pipe is not None else f"{self.inner_diameter_mm:g} mm inside"


class Size(Model):
    """Candidates that `planner size` combines with one another; what the scenario gives is always among them."""

    strings: list[Annotated[int, Field(ge=1, le=1000)]] = several(
        "Numbers of strings to try; none means 1 to the largest number of the array"
    )
    tanks_m3: list[Annotated[float, Field(gt=0, le=1e5)]] = several(
        "Tank volumes to try; none means tank.sizes, or parts and multiples of the given volume"
    )
    levels_percent: list[Levels] = several(
        "Float-switch levels [start, stop] to try where sun and top-up share the tank; none means a ready list"
    )
    levels_without_sun_percent: list[Levels] = several(
        "Float-switch levels [start, stop] to try where the sun is no source; none means a ready list"
    )
    hours: list[HoursCandidate] = several(
        "Hours to which a timer could hold grid and generator; none means as given, by night only, by day only"
    )
    pumps: list[Pump] = several("Other pumps to try in place of the given one")
    pipes: list[PipeCandidate] = several("Other pipes to try, each for the segment it names")

    @field_validator("levels_percent", "levels_without_sun_percent")
    @classmethod
    def _rising(cls, value: list[list[float]]) -> list[list[float]]:
        for start, stop in value:
            if stop <= start:
                raise at_odds(
                    (),
                    "the stop level {stop} % must be above the start level {start} %",
                    {"start": start, "stop": stop},
                )
        return value
