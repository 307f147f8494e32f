"""What an answer rests on: every number that was not given, tried lower and higher with the works as chosen."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from planner.assumptions.reader import option_scenario
from planner.resource.climatology import MONTH_TOO_BRIGHT, climatology_at
from planner.scenario.place import MonthlyWeather
from planner.scenario.scenario import Scenario
from planner.scenario.walk import Field, walk
from planner.study.cases import Design
from planner.study.changes import Changes
from planner.study.context import Context
from planner.study.keys import READY_CHANGE_PERCENT, READY_ENDS, Key
from planner.study.trials import Trial
from planner.text import text

Pair = tuple[float, float]

ENDS = READY_ENDS | {
    "demand.growth_percent_per_year": (0.0, 3.0),
    "demand.leakage_percent": (0.0, 20.0),
    "controller.efficiency_percent": (90.0, 98.0),
    "pump.motor_efficiency_percent": (70.0, 85.0),
}
"""Ends between which a value is tried that may be nil, or of which a change by per cent says little; all others go a
fifth down and up. Assumed, common practice, no source."""
IRRADIATION = "weather.ghi_kwh_m2_day"
IRRADIATION_SHARES = 1 / MONTH_TOO_BRIGHT, 2 - 1 / MONTH_TOO_BRIGHT
"""Shares of an estimate of the sun between which it is tried."""
_HELD = (
    "seed", "service.", "tank.", "topup.", "weather.", "finance.analysis_period_years", "pipeline.segments",
    "pump.life", "controller.dc_voltage", "controller.ac_", "costs.items", "sources.solar.module",
    "sources.solar.planes", "sources.solar.strings",
)  # fmt: skip
"""Not tried: what was chosen, is printed on what is bought, or follows from what was given."""
_SMALL = (
    "albedo", "wiring_percent", "light_induced_percent", "mismatch_percent", "conductor_temperature_c",
    "derating_percent_per_100m", "derating_from_altitude_m", "derating_percent_per_k", "derating_from_temperature_c",
    "degradation_percent_per_year", "speed_min_percent", "power_factor", "co2_kg_per_l", "loan_years",
)  # fmt: skip
"""Not tried either: a fifth of them changes water and cost by less than half a per cent in every example, if at all."""


@dataclass(frozen=True)
class Effect:
    """A number that was not given, and what becomes of the option that stands first where it is lower and higher.

    Attributes
    ----------
    key, label, unit : str
        Where it stands in the scenario (`IRRADIATION` for the yearly mean of an estimate), and what people call it.
    value : float
        Its value.
    how : str
        Where that comes from.
    tried : (float, float)
        The lower and the higher value.
    demand_met_percent, life_cycle_cost : (float, float)
        What is met and what it costs there; NaN where the key may have no such value, no water where the works cannot
        run with it.
    weight : float
        Largest change of the share met, or of the cost in proportion to itself.
    """

    key: str
    label: str
    unit: str
    value: float
    how: str
    tried: Pair
    demand_met_percent: Pair
    life_cycle_cost: Pair
    weight: float


@dataclass(frozen=True)
class Number:
    """A number that was not given, and the trials of the first option with it lower and higher; None where none is."""

    key: str
    label: str
    unit: str
    value: float
    how: str
    tried: Pair
    trials: tuple[Trial | None, Trial | None]


def numbers_not_given(context: Context, changes: Changes, keys: Mapping[str, Key], design: Design) -> Iterator[Number]:
    """List every number that was not given and bears on an option, with its trials.

    Parameters
    ----------
    context : Context
        What the trials share.
    changes : Changes
        Makes the scenarios.
    keys : mapping of str to Key
        Every numeric key.
    design : Design
        The works of the option, which are held.
    """
    scenario = changes.scenario
    if scenario.weather.kind == "estimate":
        yield _irradiation(context, scenario, design.name)
    for field in walk(scenario):
        key = keys.get(field.key)
        if key is None or key.base is None or not _is_tried(field, design, priced=scenario.priced):
            continue
        ends = _ends(key, field)
        if ends[0] < ends[1]:
            low, high = (changes.trial(design.name, key, end) for end in ends)
            yield Number(key.text, key.label, key.unit, key.base, field.source, ends, (low, high))


def effects_of(
    numbers: Sequence[Number], found: Callable[[Trial | None], tuple[float, float]], base: Pair
) -> tuple[Effect, ...]:
    """Read the effect of each number off its trials, what matters most first.

    Parameters
    ----------
    numbers : sequence of Number
        The numbers.
    found : callable
        Share of the demand met [%] and life-cycle cost of a trial; NaN where there is none.
    base : (float, float)
        The same as the option stands.
    """
    effects = []
    for number in numbers:
        shares, costs = zip(*map(found, number.trials), strict=True)
        moves = [abs(share - base[0]) / 100 for share in shares]
        if base[1] > 0:
            moves += [abs(each / base[1] - 1) for each in costs]
        weight = max((float(move) for move in moves if np.isfinite(move)), default=0.0)
        effects.append(
            Effect(number.key, number.label, number.unit, number.value, number.how, number.tried, shares, costs, weight)
        )
    return tuple(sorted(effects, key=lambda effect: -effect.weight))


def _is_tried(field: Field, design: Design, *, priced: bool) -> bool:
    if field.status not in ("assumed", "default") or field.changes == "nothing" or field.unit.startswith("money"):
        return False
    if field.path[0] == "sources" and field.path[1] not in design.sources:
        return False
    return not field.key.startswith(_HELD) and field.name not in _SMALL and (priced or not field.is_of_money)


def _ends(key: Key, field: Field) -> Pair:
    """Lower and higher value, as far as the key may have them."""
    base, limits = key.base or 0.0, field.takes.number
    if key.text in ENDS:
        low, high = ENDS[key.text]
        return min(low, base), max(high, base)
    change = abs(base) * READY_CHANGE_PERCENT / 100
    low, high = (round(base - change), round(base + change)) if key.whole else (base - change, base + change)
    if limits is not None and limits.ge is not None:
        low = max(low, limits.ge)
    if limits is not None and limits.le is not None:
        high = min(high, limits.le)
    return low, high


def irradiation_trial(context: Context, scenario: Scenario, option: str, share: float) -> Trial:
    """An option where the sun of every month is a share of what was estimated."""
    place = context.site(scenario).place
    months = climatology_at(place.latitude_deg, place.longitude_deg, place.altitude_m)
    held = scenario.weather.model_dump(exclude={"kind"}) | {"temperature_c": months.temperature_c.tolist()}
    ghi = (share * months.ghi_kwh_m2_day).tolist()
    weather = MonthlyWeather(kind="monthly", ghi_kwh_m2_day=ghi, **held)
    return Trial(option, option_scenario(scenario, option).model_copy(update={"weather": weather}), {})


def _irradiation(context: Context, scenario: Scenario, option: str) -> Number:
    """The estimate's months all lower and higher, by as much as a month of it was found to be off."""
    place = context.site(scenario).place
    mean = float(climatology_at(place.latitude_deg, place.longitude_deg, place.altitude_m).ghi_kwh_m2_day.mean())
    low, high = (irradiation_trial(context, scenario, option, share) for share in IRRADIATION_SHARES)
    label, how = text("rests_on.irradiation"), text("rests_on.estimate")
    ends = IRRADIATION_SHARES[0] * mean, IRRADIATION_SHARES[1] * mean
    return Number(IRRADIATION, label, "kWh/m2/day", mean, how, ends, (low, high))


__all__ = [
    "IRRADIATION",
    "IRRADIATION_SHARES",
    "Effect",
    "Number",
    "effects_of",
    "irradiation_trial",
    "numbers_not_given",
]
