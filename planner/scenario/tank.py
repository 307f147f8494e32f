"""The tank, and the levels in it at which grid or generator top up."""

from __future__ import annotations

from typing import Annotated, Self

from pydantic import Field, model_validator

from planner.scenario.fields import (
    COMMON_PRACTICE,
    Auto,
    Model,
    Percent,
    assumed,
    at_odds,
    needed,
    optional,
    several,
)


class TopUp(Model):
    """The float switch: levels as shares of the tank at which grid or generator start and stop."""

    start_level_percent: Percent | Auto = assumed(
        "auto",
        "Level at which top-up starts where the sun is a source, or 'auto' for the best that meets the target",
        "%",
        source="a choice left to the planner",
    )
    stop_level_percent: Percent | Auto = assumed(
        "auto",
        "Level at which top-up stops where the sun is a source, or 'auto'",
        "%",
        source="as the start level",
    )
    start_level_without_sun_percent: Percent = assumed(
        70.0, "Level at which pumping starts where the sun is no source", "%", source=COMMON_PRACTICE
    )
    stop_level_without_sun_percent: Percent = assumed(
        95.0, "Level at which pumping stops where the sun is no source", "%", source=COMMON_PRACTICE
    )

    @model_validator(mode="after")
    def _order(self) -> Self:
        if (self.start_level_percent == "auto") != (self.stop_level_percent == "auto"):
            raise at_odds(
                ("start_level_percent", "stop_level_percent"),
                "start_level_percent and stop_level_percent must both be numbers or both 'auto'",
            )
        pairs = [(self.start_level_without_sun_percent, self.stop_level_without_sun_percent)]
        if self.start_level_percent != "auto" and self.stop_level_percent != "auto":
            pairs.append((self.start_level_percent, self.stop_level_percent))
        for start, stop in pairs:
            if stop <= start:
                raise at_odds(
                    (),
                    "the stop level {stop} % must be above the start level {start} %",
                    {"start": start, "stop": stop},
                )
        return self


class TankSize(Model):
    """A size that can be built or bought, and what it costs."""

    volume_m3: float = needed("Volume", "m3", gt=0, le=1e5)
    price: float = assumed(0.0, "Price, built", "money", source="no cost entered", changes="money", ge=0)


class Tank(Model):
    """The tank."""

    volume_m3: Annotated[float, Field(gt=0, le=1e5)] | Auto = assumed(
        "auto",
        "Volume, or 'auto' for the size that meets the target at least life-cycle cost (where there are no prices, "
        "on technical grounds)",
        "m3",
        source="a choice left to the planner",
    )
    price: float | None = optional(
        "Price of the given volume, built",
        "money",
        absent="read off the sizes between their prices",
        changes="money",
        ge=0,
    )
    sizes: list[TankSize] = several(
        "Sizes that can be built, smallest first; none means usual sizes where one is to be chosen"
    )
    life_years: float = assumed(
        25.0, "Service life", "years", source="steel tank 20-30 years, from memory", changes="money", gt=0, le=100
    )
    maintenance_percent_per_year: float = assumed(
        1.0,
        "Yearly maintenance as a share of the price",
        "%/year",
        source=f"assumed, {COMMON_PRACTICE}",
        changes="money",
        ge=0,
        le=50,
    )
    outlet_height_m: float | None = optional(
        "Height of the tank's outlet above the ground at the taps", "m", changes="nothing", ge=-500, le=1500
    )

    @model_validator(mode="after")
    def _priced(self) -> Self:
        if self.volume_m3 == "auto" and not self.sizes:
            raise at_odds(("volume_m3", "sizes"), "volume_m3 = 'auto' needs a list of sizes to choose from")
        for before, after in zip(self.sizes, self.sizes[1:], strict=False):
            if after.volume_m3 <= before.volume_m3:
                raise at_odds(("sizes",), "sizes must be in order of rising volume")
        return self
