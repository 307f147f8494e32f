"""The bill of quantities: what an option is built of, at what price, how long it lasts and what it costs to keep."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, Literal, NamedTuple, Protocol

import numpy as np
from numpy.typing import ArrayLike, NDArray
from pydantic import BaseModel

from planner.money.formula import Operand, is_formula
from planner.money.functions import may_be, weighted_total
from planner.money.yearly import Column, Definition
from planner.scenario.equipment import Equipment
from planner.scenario.finance import CostItem
from planner.scenario.scenario import Scenario
from planner.scenario.tank import Tank
from planner.text import known, text

Array = NDArray[np.float64]
Group = Literal[
    "borehole",
    "pump_and_controller",
    "pipeline",
    "tank",
    "solar_array",
    "grid_connection",
    "generator",
    "other",
    "installation",
    "contingency",
    "supervision",
    "vat",
]
"""Parts of the works, in the order of the bill."""
PERCENTAGES: tuple[Group, ...] = ("installation", "contingency", "supervision", "vat")
"""Groups of one line each, a percentage of others: installation of the equipment bought, each further one of all lines
above it. That supervision is counted on the contingency too, and the tax on all, is common practice, no source."""
EQUIPMENT_GROUPS: tuple[Group, ...] = ("pump_and_controller", "pipeline", "solar_array", "generator")
"""What is bought and then brought and fixed in place, to which the installation percentage applies. The borehole, a
tank 'built', a connection's 'whole cost' and the user's own lines are prices of finished work."""


ALL = "all"
"""Source of a line that serves the works whatever the source."""


class Thing(NamedTuple):
    """What is built or kept up: a key for which the texts have words, and the name where the scenario gives one."""

    key: str
    name: str = ""

    def label(self, size: str = "") -> str:
        """What people call it; as it calls itself where the language has no words for the key."""
        if self.name:
            return self.name
        if size:
            return text(f"bill.line_sized.{self.key}", size=size)
        return text(f"bill.line.{self.key}") if known(f"bill.line.{self.key}") else self.key


@dataclass(frozen=True)
class Line:
    """One line of the bill of quantities.

    Attributes
    ----------
    thing : Thing
        What it is.
    group : str
        The part of the works it belongs to.
    source : str
        The source it serves, `ALL` where it serves the works whatever the source.
    quantity, unit_price : float or ndarray, (...)
        How much, and the price of one [money]; arrays are cases, and each number may also be a formula.
    unit : str
        Unit of the quantity: a key for which the texts have words, or as the scenario gives it.
    life_years : float
        Service life [years]; replaced at each multiple of it, rounded to whole years, before the life counted ends.
    maintenance_percent_per_year : float
        Yearly upkeep as a share of the price [%/year].
    by_hours : bool
        Whether running hours, too, wear it out (the generator).
    size : str
        What tells it from others of its key, '' where nothing does.
    """

    thing: Thing
    group: Group
    source: str
    quantity: Operand
    unit: str
    unit_price: Operand
    life_years: Operand
    maintenance_percent_per_year: Operand
    by_hours: bool = False
    size: str = ""

    @property
    def label(self) -> str:
        """What people call it."""
        return self.thing.label(self.size)

    @property
    def unit_label(self) -> str:
        """Unit of the quantity in words."""
        return text(f"bill.unit.{self.unit}") if known(f"bill.unit.{self.unit}") else self.unit

    @property
    def cost(self) -> Operand:
        """Cost of the line [money]."""
        return self.quantity * self.unit_price


class Priced(NamedTuple):
    """Something with a price: what it is, the model that the price is given in, and the key there."""

    thing: Thing
    model: BaseModel
    field: str


class PricedSource(Protocol):
    """What money asks of a source."""

    @property
    def running(self) -> tuple[Column, ...]:
        """What it costs to run, by category; see `terms.Terms`."""

    @property
    def emission(self) -> Definition | None:
        """Its carbon dioxide [kg], None where it has none; see `terms.Terms`."""

    def described(self, scenario: Scenario) -> bool:
        """Whether it is at hand."""

    def lines(self, scenario: Scenario, strings: ArrayLike) -> list[Line]:
        """Its lines of the bill of quantities."""

    def priced(self, scenario: Scenario, running_hours: float) -> list[Priced]:
        """What of it has a price, after some running hours over the life."""

    def prices(self, scenario: Scenario) -> dict[str, Any]:
        """Its prices, by fields of `terms.Terms`."""


def tank_price(tank: Tank, volume_m3: ArrayLike) -> Operand:
    """Price of a tank of some volume.

    Parameters
    ----------
    tank : Tank
        The tank with its price or its sizes.
    volume_m3 : array_like, (...)
        Volume [m³].

    Returns
    -------
    ndarray, (...)
        Price [money]; a formula where the tank's prices are cells.

    Notes
    -----
    The given price holds for the given volume. Any other volume is read off the sizes, linearly between two of them
    and at the price per m³ of the smallest or largest beyond them; where no sizes are listed, at the price per m³ of
    the given tank.
    """
    volume = np.asarray(volume_m3, dtype=float)
    points: list[tuple[float, float]] = [(size.volume_m3, size.price) for size in tank.sizes]
    given = np.zeros(volume.shape)[()]
    if tank.price is not None and tank.volume_m3 != "auto":
        points = points or [(tank.volume_m3, tank.price)]
        given = np.isclose(volume, tank.volume_m3, rtol=1e-9, atol=0.0).astype(float)
    points = points or [(1.0, 0.0)]  # no price was entered
    volumes = np.array([volume_m3 for volume_m3, _ in points])
    beyond = np.where(volume < volumes[0], volume / volumes[0], np.maximum(volume / volumes[-1], 1.0)) * (1 - given)
    shares = [np.interp(volume, volumes, unit) * beyond for unit in np.eye(len(points))]
    price = weighted_total([price for _, price in points], shares)
    price = price if tank.price is None else price + tank.price * given
    return price if is_formula(price) else np.asarray(price)


def bill_of_quantities(
    scenario: Scenario, sources: Sequence[PricedSource], *, strings: int | ArrayLike, tank_m3: float | ArrayLike
) -> tuple[Line, ...]:
    """List what a supply option is built of.

    Parameters
    ----------
    scenario : Scenario
        The scenario as it holds for the option.
    sources : sequence of PricedSource
        The option's sources; only their equipment is listed.
    strings : int or array_like, (...)
        Strings of modules; not used without sun.
    tank_m3 : float or array_like, (...)
        Volume of the tank [m³].

    Returns
    -------
    tuple of Line
        Borehole, pump, controller, pipeline and tank, then each source's equipment, the user's items, and last the
        `PERCENTAGES`, where one is given.

    Notes
    -----
    Lines without a price are kept, as their quantity is known. The user's items 'for the whole life' and the
    percentages are neither replaced nor worth anything at the end. An item of several sources counts to the first of
    them that the option uses.
    """
    lines = [*_works(scenario, tank_m3)]
    for source in sources:
        lines += source.lines(scenario, strings)
    whole_life = float(scenario.finance.analysis_period_years)
    lines += [_item(item, sources, whole_life) for item in scenario.costs.items if belongs(item.sources, sources)]
    costs = scenario.costs
    return with_percentages(lines, {group: getattr(costs, f"{group}_percent") for group in PERCENTAGES}, whole_life)


def unpriced(scenario: Scenario, sources: Sequence[PricedSource], running_hours: float = 0.0) -> tuple[Thing, ...]:
    """List what a supply option is built of or kept up with and has no price, so that its total leaves it out.

    Parameters
    ----------
    scenario : Scenario
        The scenario as it holds for the option.
    sources : sequence of PricedSource
        The option's sources.
    running_hours : float
        Running hours of the generator over the life; an overhaul is listed only where one falls due.

    Returns
    -------
    tuple of Thing
        Empty where the total is complete. A price entered as 0 is a price: the thing is there and paid for.
    """
    things: list[Priced] = [
        Priced(Thing("borehole"), scenario.borehole, "price"),
        Priced(Thing("pump", scenario.pump.name), scenario.pump, "price"),
        Priced(Thing("controller"), scenario.controller, "price"),
        *(Priced(Thing("pipe", segment.name), segment, "price") for segment in scenario.pipeline.segments),
    ]
    tank = scenario.tank
    if tank.price is None:
        sizes = [Priced(Thing("tank"), size, "price") for size in tank.sizes]
        things += sizes or [Priced(Thing("tank"), tank, "price")]
    for source in sources:
        things += source.priced(scenario, running_hours)
    return tuple(dict.fromkeys(thing for thing, model, field in things if field not in model.model_fields_set))


def belongs(item_sources: Iterable[str], option_sources: Iterable[object]) -> bool:
    """Tell whether a cost of some sources (none: of every option) falls to an option."""
    wanted = set(item_sources)
    return not wanted or bool(wanted & set(option_sources))


def with_percentages(
    lines: Iterable[Line], percentages: Mapping[Group, Operand], life_years: float
) -> tuple[Line, ...]:
    """Put the percentages at the end of some lines, in the order of `PERCENTAGES`, in place of any that they hold.

    Parameters
    ----------
    lines : iterable of Line
        The bill of quantities; its prices may have been changed.
    percentages : mapping of str to float
        By group [%]: 'installation' (labour and transport) of the equipment bought (`EQUIPMENT_GROUPS`), 'contingency',
        'supervision' and 'vat' of all lines above.
    life_years : float
        Years counted: the life of the lines, so that none is replaced.

    Returns
    -------
    tuple of Line
        A line of 0 % is left out.
    """
    kept = [line for line in lines if line.group not in PERCENTAGES]
    for group in PERCENTAGES:
        percent = percentages.get(group, 0.0)
        if may_be(percent > 0):
            base = [line for line in kept if line.group in EQUIPMENT_GROUPS or group != "installation"]
            price = sum((line.cost for line in base), 0.0) / 100
            unit = "percent_of_equipment" if group == "installation" else "percent_of_lines_above"
            kept.append(Line(Thing(group), group, ALL, percent, unit, price, life_years, 0.0))
    return tuple(kept)


def bought(
    thing: Thing,
    group: Group,
    source: str,
    equipment: Equipment | Tank,
    *,
    quantity: Operand = 1.0,
    unit: str = "item",
    unit_price: Operand = None,
) -> Line:
    """Line of a thing with life and upkeep of its own; its price too, unless another is given."""
    price = unit_price if unit_price is not None else equipment.price
    assert price is not None
    life, upkeep = equipment.life_years, equipment.maintenance_percent_per_year
    return Line(thing, group, source, quantity, unit, price, life, upkeep)


def _works(scenario: Scenario, tank_m3: ArrayLike) -> list[Line]:
    tank, pump = scenario.tank, scenario.pump
    size = f"{float(tank_m3):g}" if isinstance(tank_m3, int | float) else ""
    return [
        bought(Thing("borehole"), "borehole", ALL, scenario.borehole),
        bought(Thing("pump", pump.name), "pump_and_controller", ALL, pump),
        bought(Thing("controller"), "pump_and_controller", ALL, scenario.controller),
        *(
            bought(Thing("pipe", segment.name), "pipeline", ALL, segment, quantity=segment.length_m, unit="m")
            for segment in scenario.pipeline.segments
        ),
        replace(bought(Thing("tank"), "tank", ALL, tank, unit_price=one_or_many(tank_price(tank, tank_m3))), size=size),
    ]


def _item(item: CostItem, sources: Sequence[object], whole_life: float) -> Line:
    owner = next((source for source in item.sources if source in sources), ALL)
    life = whole_life if item.life_years is None else item.life_years
    upkeep = item.maintenance_percent_per_year
    thing = Thing("item", item.name)
    return Line(thing, "other", owner, item.quantity, item.unit, item.unit_price, life, upkeep)


def one_or_many(values: Operand) -> Operand:
    """Unpack a single case; leave an array of cases, or a formula, as it is."""
    return float(values) if isinstance(values, np.ndarray) and values.ndim == 0 else values
