"""A short price list, from which the prices are filled in that the equipment's own keys leave out."""

from __future__ import annotations

from typing import Any

from planner.scenario.fields import Model, needed, optional, several

_ABSENT = "what has no price of its own is named as unpriced"


def _price(description: str, unit: str = "money") -> Any:
    return optional(description, unit, absent=_ABSENT, ge=0)


class PipePrice(Model):
    """Price of one pipe of the tables."""

    changes = "money"

    pipe: str = needed("The pipe, as in pipeline.segments.pipe", min_length=1)
    per_m: float = needed("Price per metre", "money/m", ge=0)


class Prices(Model):
    """A few prices, each used wherever the thing itself has none; they may stand in a file that sites share."""

    changes = "money"

    pv_per_kwp: float | None = _price("PV array with its stand, per kWp", "money/kWp")
    tank_per_m3: float | None = _price("Tank, built, per m3 of volume", "money/m3")
    pipe_per_m: float | None = _price("Pipe that is not in the list of pipes, per metre", "money/m")
    pipes: list[PipePrice] = several("Pipes with a price of their own")
    pump: float | None = _price("Pump")
    controller: float | None = _price("Controller")
    borehole: float | None = _price("Borehole")
    grid_connection: float | None = _price("Connection to the grid, the line included")
    grid_per_kwh: float | None = _price("Energy from the grid", "money/kWh")
    generator: float | None = _price("Generator")
    fuel_per_l: float | None = _price("Fuel", "money/L")
