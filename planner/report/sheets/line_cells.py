"""From the lines of the bill of quantities back to the input cells that hold price, life and upkeep."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

import numpy as np

from planner.money.quantities import belongs
from planner.report.sheets.inputs import InputCells
from planner.scenario.tank import Tank
from planner.study.compare import OptionResult

Cell = Callable[[str], str]


@dataclass(frozen=True)
class LineCells:
    """Formulas of one line, without '='; None where the figure is no input (a simulated or a fixed one)."""

    price: str | None
    life: str | None
    upkeep: str | None
    quantity: str | None = None


def line_cells(option: OptionResult, inputs: InputCells) -> list[LineCells]:
    """Formulas of an option's lines, in the order of `bill_of_quantities`.

    Parameters
    ----------
    option : OptionResult
        The option.
    inputs : InputCells
        Where the inputs stand.

    Returns
    -------
    list of LineCells
        As many as the option has lines.
    """

    def cell(key: str) -> str:
        return inputs.of(option.name, key)

    found = [*_cells(option, cell)]
    if len(found) != len(option.lines):
        raise ValueError(f"{len(found)} lines have inputs, {option.name} has {len(option.lines)}")
    return found


def _cells(option: OptionResult, cell: Cell) -> Iterator[LineCells]:
    own = option.scenario
    for thing in ("borehole", "pump", "controller"):
        yield _bought(cell, thing)
    for number in range(len(own.pipeline.segments)):
        yield _bought(cell, f"pipeline.segments[{number + 1}]")
    yield LineCells(
        _tank_price(own.tank, option.tank_m3, cell), cell("tank.life_years"), cell("tank.upkeep_percent_per_year")
    )
    if "solar" in option.sources:
        yield _bought(cell, "sources.solar.module")
        yield LineCells(
            cell("sources.solar.structure_price_per_module"), cell("sources.solar.structure_life_years"), None
        )
    if "grid" in option.sources:
        connection = _bought(cell, "sources.grid")
        yield connection
        yield LineCells(cell("sources.grid.line_price_per_m"), connection.life, connection.upkeep)
    if "generator" in option.sources:
        yield _bought(cell, "sources.generator")
    for number, item in enumerate(own.costs.items, start=1):
        if belongs(item.sources, option.sources):
            key = f"costs.items[{number}]"
            life = None if item.life_years is None else cell(f"{key}.life_years")
            upkeep = cell(f"{key}.upkeep_percent_per_year")
            yield LineCells(cell(f"{key}.unit_price"), life, upkeep, cell(f"{key}.quantity"))
    for key, percent in (
        ("costs.installation_percent", own.costs.installation_percent),
        ("costs.contingency_percent", own.costs.contingency_percent),
    ):
        if percent > 0:
            yield LineCells(None, None, None, cell(key))


def _bought(cell: Cell, thing: str) -> LineCells:
    return LineCells(cell(f"{thing}.price"), cell(f"{thing}.life_years"), cell(f"{thing}.upkeep_percent_per_year"))


def _tank_price(tank: Tank, volume_m3: float, cell: Cell) -> str:
    """Price of a tank as `tank_price` reads it off: as given, between two sizes, or per m3 beyond them."""
    if (
        tank.price is not None
        and tank.volume_m3 != "auto"
        and (not tank.sizes or np.isclose(volume_m3, tank.volume_m3, rtol=1e-9, atol=0.0))
    ):
        if np.isclose(volume_m3, tank.volume_m3, rtol=1e-9, atol=0.0):
            return cell("tank.price")
        return f"{cell('tank.price')}*{volume_m3!r}/{cell('tank.volume_m3')}"
    volumes = [size.volume_m3 for size in tank.sizes]

    def at(place: int) -> str:
        return cell(f"tank.sizes[{place + 1}].price")

    if volume_m3 in volumes:
        return at(volumes.index(volume_m3))
    if volume_m3 < volumes[0] or volume_m3 > volumes[-1]:
        nearest = 0 if volume_m3 < volumes[0] else len(volumes) - 1
        return f"{at(nearest)}*{volume_m3!r}/{volumes[nearest]!r}"
    after = next(place for place, volume in enumerate(volumes) if volume > volume_m3)
    share = (volume_m3 - volumes[after - 1]) / (volumes[after] - volumes[after - 1])
    return f"{at(after - 1)}*{1 - share!r}+{at(after)}*{share!r}"
