"""The inputs that a funder would ask about, each once: the keys that it changes, the values tried of it, and how."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from planner.scenario.operands import with_arrays
from planner.scenario.paths import Path, parts_of
from planner.scenario.scenario import Scenario
from planner.scenario.sources import Outages
from planner.study.keys import Key, numeric_keys
from planner.study.rests_on import IRRADIATION, IRRADIATION_SHARES
from planner.study.trials import Trial, number_at
from planner.text import text

Array = NDArray[np.float64]
Kind = Literal["linear", "money", "service", "hours"]

PRICES_TO = 3.0
"""Prices are tried from nothing to so many times their value."""
RATES_PERCENT = (0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 20.0)
DISTANCE_M = 20_000.0
"""The line to the grid is tried to this length, or to twice its own where that is more."""
LEAST_TARGET_PERCENT = 50.0
MEAN_OUTAGE_H = 3.0
"""Duration of an outage where the scenario has none. Like the ranges: assumed, common practice, no source."""
_TARIFF, _OUTAGES = "sources.grid.tariff", "sources.grid.outages.hours_per_day"
_USERS = {"count", "area_m2", "m3_per_day"}
"""Keys of users to which what they draw is in proportion."""


@dataclass(frozen=True)
class Selection:
    """What a study asks about, and how far it looks where the hours run anew; all other ranges are the same in all.

    Attributes
    ----------
    names : frozenset of str
        The inputs.
    demand_percent, outages_h : tuple of float
        Values tried of the demand, in per cent of today's, and of outages a day, rising.
    """

    names: frozenset[str]
    demand_percent: tuple[float, ...]
    outages_h: tuple[float, ...]


UNCERTAIN = Selection(
    frozenset({"tariff", "outage_hours", "fuel_price", "module_price", "demand", "discount_rate", "irradiation"}),
    demand_percent=(50.0, 75.0, 90.0, 100.0, 110.0, 125.0, 150.0),
    outages_h=(0.0, 6.0, 12.0, 20.0),
)
"""Of any answer: what may turn out otherwise than written. Between the values tried it is read off curves, so they are
few, for the sake of time, and the demand stays near to what is written."""
DECIDING = Selection(
    frozenset({"tariff", "outage_hours", "grid_distance", "fuel_price", "module_price", "demand", "discount_rate",
               "target"}),
    demand_percent=(25.0, 50.0, 75.0, 100.0, 125.0, 150.0, 200.0),
    outages_h=(0.0, 2.0, 4.0, 8.0, 12.0, 16.0, 20.0),
)  # fmt: skip
"""Of one decision: also another site and another target. The hours are run wherever it turns, so the demand may be far
from what is written, and the values are rows of a map as well."""


@dataclass(frozen=True)
class Varied:
    """An input that a funder asks about.

    Attributes
    ----------
    name, key : str
        Name by which it is known here and in the texts, and the key or table of the scenario that it changes.
    unit : str
        Its unit, for people.
    base : float
        Its value; 100 where it is a share of several numbers.
    values : tuple of float
        Values at which it is tried, rising, the base among them.
    paths : tuple of tuple
        Numbers that it changes.
    kind : str
        'linear': present cost is a straight line of it; 'money': it changes prices only; 'service': what is asked for;
        'hours': the hours run anew.
    is_factor : bool
        Whether each number is multiplied by value / base, else set to the value.
    is_share : bool
        Whether its values are shares of what several numbers are [%].
    without_effect : str
        Why it cannot matter in this scenario, '' where it can.
    """

    name: str
    key: str
    unit: str
    base: float
    values: tuple[float, ...]
    paths: tuple[Path, ...]
    kind: Kind
    is_factor: bool = False
    is_share: bool = False
    without_effect: str = ""

    @property
    def low(self) -> float:
        """Lower end of the range looked at."""
        return self.values[0]

    @property
    def high(self) -> float:
        """Upper end of the range looked at."""
        return self.values[-1]

    @property
    def source(self) -> str:
        """Source that it belongs to, '' where it belongs to none."""
        table, below = parts_of(self.key)[:2]
        return str(below) if table == "sources" else ""

    @property
    def label(self) -> str:
        """What people call it, in a table or at the beginning of a sentence."""
        return text(f"varied.{self.name}")

    @property
    def phrase(self) -> str:
        """What people call it, within a sentence."""
        several = self.is_share and self.name == "tariff"
        return text(f"varied.the_{self.name}{'_of_today' if several else ''}")

    def rounded(self, value: float) -> float:
        """Round a value to what is known of it: three significant figures, whole per cent where hours run anew.

        The base stays as it was given; what would read like it keeps a decimal.
        """
        if value == self.base:
            return value
        if not (self.is_share and self.kind == "hours"):
            return float(f"{value:.3g}")
        whole = float(round(value))
        return whole if whole != round(self.base) else round(value, 1)

    def with_unit(self, value: float) -> str:
        """Write a value of it with its unit."""
        return text("varied.amount", value=self.rounded(value), unit=self.unit)

    def trial(self, option: str, scenario: Scenario, value: float) -> Trial:
        """Try a value with an option, whose own scenario is given."""
        numbers = self._numbers(scenario, value)
        if self.kind != "hours":
            return Trial(option, None, numbers)
        return Trial(option, with_arrays(scenario, numbers), {})

    def change(self, scenario: Scenario, value: float | Array) -> Scenario:
        """Put another value of it into a scenario, or one for each of some cases that differ in money alone."""
        if self.key == _OUTAGES:
            scenario = with_outages(scenario)
        return with_arrays(scenario, self._numbers(scenario, value))

    def service(self, value: float) -> dict[str, float]:
        """Put another value of it into the service to be given."""
        return {str(path[-1]): value for path in self.paths}

    def _numbers(self, scenario: Scenario, value: Any) -> dict[Path, Any]:
        """What stands at its paths where it has a value."""
        return {path: number_at(scenario, path) * value / self.base if self.is_factor else value for path in self.paths}


def varied_inputs(
    scenario: Scenario,
    selection: Selection,
    keys: Mapping[str, Key] | None = None,
    largest_demand_percent: float = np.inf,
) -> list[Varied]:
    """List the inputs of a selection that a scenario has.

    Parameters
    ----------
    scenario : Scenario
        The scenario for all options.
    selection : Selection
        What is asked about, and how far.
    keys : mapping of str to Key, optional
        What `numeric_keys` gave, where that is known.
    largest_demand_percent : float
        Where the range of the demand ends at the latest, should that be above today's.

    Returns
    -------
    list of Varied
        Without prices those that change water alone.
    """
    found = _listed(scenario, selection, keys or numeric_keys(scenario), largest_demand_percent)
    return [
        varied
        for varied in found
        if varied.name in selection.names and (scenario.priced or varied.kind in ("hours", "service"))
    ]


def with_outages(scenario: Scenario) -> Scenario:
    """Give the grid outages of no hours where the scenario has none."""
    grid = scenario.sources.grid
    if grid is None or grid.outages is not None:
        return scenario
    never: dict[str, Any] = {"outages": Outages(hours_per_day=0.0, mean_duration_h=MEAN_OUTAGE_H)}
    sources = scenario.sources.model_copy(update={"grid": grid.model_copy(update=never)})
    return scenario.model_copy(update={"sources": sources})


def with_base(values: Sequence[float], base: float) -> tuple[float, ...]:
    """Put the base in the place of the nearest value."""
    nearest = min(values, key=lambda value: abs(value - base))
    return tuple(sorted({base if value == nearest else value for value in values}))


def _listed(scenario: Scenario, selection: Selection, keys: Mapping[str, Key], largest: float) -> Iterator[Varied]:
    there = {name: key for name, key in keys.items() if key.base is not None}
    currency = scenario.currency
    energy = [key for name, key in there.items() if name.startswith(_TARIFF) and name.endswith("price_per_kwh")]
    yield from _priced("tariff", _TARIFF, text("varied.unit.per_kwh", currency=currency), energy)
    for key in _present(there, _OUTAGES):
        values = with_base(selection.outages_h, key.base or 0.0)
        yield _single("outage_hours", key, text("varied.unit.hours_per_day"), values)
    for key in _present(there, "sources.grid.line_length_m"):
        length_m, grid = key.base or 0.0, scenario.sources.grid
        nothing = "" if grid is not None and grid.line_price_per_m > 0 else text("varied.no_line_price")
        yield _single("grid_distance", key, "m", (0.0, length_m, max(DISTANCE_M, 2 * length_m)), nothing)
    for name, path, unit in (
        ("fuel_price", "sources.generator.fuel_price_per_l", "per_l"),
        ("module_price", "sources.solar.module.price", "per_module"),
    ):
        yield from _priced(name, path, text(f"varied.unit.{unit}", currency=currency), _present(there, path))
    drawn = [key for key in there.values() if key.path[:2] == ("demand", "users") and _USERS & set(key.path)]
    shares = _rising(min(share, max(100.0, largest)) for share in selection.demand_percent)
    yield _scaled("demand", "demand.users", text("varied.unit.of_today"), shares, drawn)
    for key in _present(there, "finance.discount_rate_percent"):
        rates = with_base(RATES_PERCENT, key.base or 0.0)
        yield _single("discount_rate", key, text("varied.unit.percent_per_year"), rates)
    for key in _present(there, "service.demand_met_percent"):
        target = key.base or 0.0
        yield _single("target", key, text("varied.unit.of_demand"), (min(LEAST_TARGET_PERCENT, target), target, 100.0))
    if scenario.weather.kind == "estimate":
        low, high = (100 * share for share in IRRADIATION_SHARES)
        yield Varied("irradiation", IRRADIATION, text("varied.unit.of_estimate"), 100.0, (low, 100.0, high), (),
                     "hours", is_factor=True, is_share=True)  # fmt: skip


def _present(there: Mapping[str, Key], name: str) -> list[Key]:
    return [there[name]] if name in there else []


def _single(name: str, key: Key, unit: str, values: Sequence[float], nothing: str = "", **more: bool) -> Varied:
    base = float(key.base or 0.0)
    return Varied(name, key.text, unit, base, _rising(values), (key.path,), _kind(key), without_effect=nothing, **more)


def _scaled(name: str, table: str, unit: str, shares: Sequence[float], keys: Sequence[Key]) -> Varied:
    paths = tuple(key.path for key in keys)
    return Varied(name, table, unit, 100.0, tuple(shares), paths, _kind(keys[0]), is_factor=True, is_share=True)


def _priced(name: str, table: str, unit: str, prices: Sequence[Key]) -> Iterator[Varied]:
    """One price as it is, several as a share of today's; without effect where all are nil."""
    given = [key for key in prices if key.base] or prices[:1]
    if len(given) > 1:
        yield _scaled(name, table, text("varied.unit.of_today"), (0.0, 100.0, 100 * PRICES_TO), given)
    for key in given if len(given) == 1 else ():
        base = float(key.base or 0.0)
        nothing = "" if base else text("varied.no_price")
        yield _single(name, key, unit, (0.0, base, PRICES_TO * base), nothing, is_factor=True)


def _rising(values: Iterable[float]) -> tuple[float, ...]:
    return tuple(sorted(set(values)))


def _kind(key: Key) -> Kind:
    """How an input works on the life-cycle cost: of what changes money alone, all but rates are factors of it."""
    if key.path[0] == "service":
        return "service"
    if key.touches_hours:
        return "hours"
    return "money" if "%" in key.unit else "linear"


__all__ = ["DECIDING", "UNCERTAIN", "Kind", "Selection", "Varied", "varied_inputs", "with_base", "with_outages"]
