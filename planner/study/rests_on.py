"""What an answer rests on: every number that was not given, tried lower and higher with the works as chosen."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from planner.assumptions.reader import option_scenario, scenario_of
from planner.resource.climatology import MONTH_TOO_BRIGHT, climatology_at
from planner.scenario.errors import InputError
from planner.scenario.place import MonthlyWeather
from planner.scenario.scenario import Scenario
from planner.scenario.walk import Field, walk
from planner.study.cases import Case, Design
from planner.study.context import Context
from planner.study.evaluate import evaluate
from planner.study.keys import READY_CHANGE_PERCENT, READY_ENDS, Key, numeric_keys, with_value
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
_HELD = (
    "seed", "service.", "tank.", "topup.", "weather.", "finance.analysis_period_years", "pipeline.segments",
    "pump.life", "controller.dc_voltage", "controller.ac_", "costs.items", "sources.solar.module",
    "sources.solar.planes", "sources.solar.strings",
)  # fmt: skip
"""Not tried: what was chosen, is printed on what is bought, or follows from what was given."""


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
class _Trial:
    """A number, and the scenario in which it is lower and higher; None where it cannot be."""

    key: str
    label: str
    unit: str
    value: float
    how: str
    tried: Pair
    scenarios: tuple[Scenario | None, Scenario | None]


def effects_of(context: Context, scenario: Scenario, design: Design) -> tuple[Effect, ...]:
    """Try every number that was not given, one at a time, all in the same passes through the hours.

    Parameters
    ----------
    context : Context
        What the cases share.
    scenario : Scenario
        The scenario for all options.
    design : Design
        The works, which are held.

    Returns
    -------
    tuple of Effect
        Those that matter most first.
    """
    trials = list(_trials(context, scenario, design.name))
    cases = [Case.of(option_scenario(scenario, design.name), design)]
    place_of: dict[int, int] = {}
    for trial in trials:
        for changed in trial.scenarios:
            if changed is not None and _can_run(context, case := Case.of(changed, design)):
                place_of[id(changed)] = len(cases)
                cases.append(case)
    found = evaluate(context, cases)
    met, cost = 100 * found.delivered_share, found.present_cost

    def came_of(changed: Scenario | None) -> Pair:
        if changed is None:
            return np.nan, np.nan
        at = place_of.get(id(changed))
        return (0.0, np.nan) if at is None else (float(met[at]), float(cost[at]))

    effects = []
    for trial in trials:
        shares, costs = zip(*map(came_of, trial.scenarios), strict=True)
        changes = [abs(share - met[0]) / 100 for share in shares]
        if cost[0] > 0:
            changes += [abs(each / cost[0] - 1) for each in costs]
        weight = max((float(change) for change in changes if np.isfinite(change)), default=0.0)
        effects.append(
            Effect(trial.key, trial.label, trial.unit, trial.value, trial.how, trial.tried, shares, costs, weight)
        )
    return tuple(sorted(effects, key=lambda effect: -effect.weight))


def _can_run(context: Context, case: Case) -> bool:
    try:
        context.prepared(case)
    except InputError:
        return False
    return True


def _trials(context: Context, scenario: Scenario, option: str) -> Iterator[_Trial]:
    if scenario.weather.kind == "estimate":
        yield _irradiation(context, scenario, option)
    known = numeric_keys(scenario)
    for field in walk(scenario):
        key = known.get(field.key)
        if key is None or key.base is None or not _is_tried(field, priced=scenario.priced):
            continue
        ends = _ends(key, field)
        if ends[0] < ends[1]:
            low, high = (_changed(scenario, key, end, option) for end in ends)
            yield _Trial(key.text, key.label, key.unit, key.base, field.source, ends, (low, high))


def _is_tried(field: Field, *, priced: bool) -> bool:
    if field.status not in ("assumed", "default") or field.changes == "nothing" or field.unit.startswith("money"):
        return False
    return not field.key.startswith(_HELD) and (priced or not field.is_of_money)


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


def _changed(scenario: Scenario, key: Key, value: float, option: str) -> Scenario | None:
    """The scenario of an option with one key set; None where the key cannot have the value."""
    try:
        return option_scenario(scenario_of(with_value(scenario.given(keep=[key.path]), key, value)), option)
    except InputError:
        return None


def _irradiation(context: Context, scenario: Scenario, option: str) -> _Trial:
    """The estimate's months all lower and higher, by as much as a month of it was found to be off."""
    place = context.site(scenario).place
    months = climatology_at(place.latitude_deg, place.longitude_deg, place.altitude_m)
    own, error = option_scenario(scenario, option), 1 - 1 / MONTH_TOO_BRIGHT
    held = scenario.weather.model_dump(exclude={"kind"}) | {"temperature_c": months.temperature_c.tolist()}

    def with_share(share: float) -> Scenario:
        ghi = (share * months.ghi_kwh_m2_day).tolist()
        return own.model_copy(update={"weather": MonthlyWeather(kind="monthly", ghi_kwh_m2_day=ghi, **held)})

    mean, low, high = float(months.ghi_kwh_m2_day.mean()), 1 - error, 1 + error
    label, how, ends = text("rests_on.irradiation"), text("rests_on.estimate"), (low * mean, high * mean)
    return _Trial(IRRADIATION, label, "kWh/m2/day", mean, how, ends, (with_share(low), with_share(high)))


__all__ = ["IRRADIATION", "Effect", "effects_of"]
