"""Say in plain sentences what sizing found."""

from __future__ import annotations

from typing import Any

from planner.money.quantities import unpriced
from planner.scenario.scenario import Scenario
from planner.study.candidates import AS_GIVEN, Levels
from planner.study.ranking import FUEL_KWP_PER_L_A_YEAR, GRID_KWP_PER_KWH_A_YEAR, TANK_KWP_PER_M3
from planner.study.sizing import OptionSizing, SizedDesign, Sizing
from planner.study.words import money
from planner.text import listed, text


def sizing_sentences(sizing: Sizing) -> list[str]:
    """Put the answer into plain sentences: the best design, its near rivals, more service, the float switch."""
    first = sizing.ranked[0]
    sentences = [_verdict(sizing, first)]
    if first.best is not None:
        sentences.append(_rivals(sizing.scenario, first))
    sentences.append(_next_percent(sizing, first))
    switch = next((option for option in sizing.ranked if option.nearest.levels is not None), None)
    if switch is not None:
        sentences.append(switch_sentence(switch))
    run = _against_run(sizing, first)
    return [*sentences, run] if run else sentences


def design_words(design: SizedDesign) -> str:
    """Spell a design out."""
    return ", ".join(_parts(design))


def _parts(design: SizedDesign) -> list[str]:
    parts = [*_array(design.modules, design.strings, design.array_kw), *_tank_and_switch(design.tank_m3, design.levels)]
    if design.levels is not None and design.hours != AS_GIVEN:
        parts.append(text("sizing_answer.hours", hours=design.hours))
    return [*parts, *design.pipes]


def _array(modules: int, strings: int, kwp: float) -> list[str]:
    key = "sizing_answer.array" if strings > 1 else "sizing_answer.array_one_string"
    return [text(key, modules=modules, strings=strings, kwp=kwp)] if modules else []


def hours_words(design: SizedDesign) -> str:
    """Name the hours in which top-up may run."""
    return text("candidate.as_given") if design.hours == AS_GIVEN else design.hours


def misses_words(option: OptionSizing) -> str:
    """Say by how much the best of an option misses the target, without a full stop."""
    nearest, service = option.nearest, option.grid.setups[0].supply.scenario.service
    target, count, points = service.demand_met_percent, option.grid.count, option.misses_by_percent
    delivered, worst = 100 * nearest.delivered_share, 100 * nearest.worst_year_share
    if delivered < target - 1e-7:
        return text("sizing_answer.misses_share", count=count, delivered=delivered, target=target, points=points)
    if points == 0:
        return text(
            "sizing_answer.misses_days", count=count, days=nearest.longest_short_days, more=option.misses_by_days
        )
    return text("sizing_answer.misses_worst_year", count=count, delivered=worst, points=points)


def switch_sentence(option: OptionSizing) -> str:
    """Give the float switch as a setting that an installer can use."""
    design = option.nearest
    assert design.levels is not None
    assert design.switch_m3 is not None
    (start, stop), (start_m3, stop_m3) = design.levels, design.switch_m3
    sentence = text(
        "sizing_answer.float_switch" if design.hours == AS_GIVEN else "sizing_answer.float_switch_and_timer",
        option=option.name,
        start=start,
        stop=stop,
        start_m3=start_m3,
        stop_m3=stop_m3,
        hours=design.hours,
    )
    steady = option.steady_start_percent
    if steady is None or steady[0] == steady[1]:
        return sentence
    words = _sentence(option.by_run.supply.scenario, "steady_start", low=steady[0], high=steady[1])
    return f"{sentence} {words}"


def _sentence(scenario: Scenario, key: str, **slots: Any) -> str:
    """Words about costs, or about weights where there are no prices."""
    return text(f"sizing_answer.{key}" if scenario.priced else f"sizing_answer.{key}_technical", **slots)


def _amount(scenario: Scenario, value: float) -> str:
    """Write a difference of costs, or of weights where there are no prices."""
    return money(value, scenario.currency) if scenario.priced else text("sizing_answer.weight", kwp=value)


def _tank_and_switch(tank_m3: float, levels: Levels | None) -> list[str]:
    tank = text("sizing_answer.tank", tank_m3=tank_m3)
    return [tank] if levels is None else [tank, text("sizing_answer.switch", start=levels[0], stop=levels[1])]


def _verdict(sizing: Sizing, first: OptionSizing) -> str:
    currency, design = sizing.scenario.currency, first.nearest
    setup = first.grid.setups[0].supply
    missing = unpriced(setup.scenario, setup.sources) if sizing.scenario.priced else ()
    slots = {
        "tried": sizing.candidate_count,
        "years": sizing.scenario.finance.analysis_period_years,
        "target": sizing.scenario.service.demand_met_percent,
        "option": first.name,
        "design": design_words(design),
        "delivered": 100 * design.delivered_share,
        "capital_cost": money(design.capital_cost, currency),
        "life_cycle_cost": money(design.present_cost, currency),
        "unpriced": ", ".join(thing.label() for thing in missing),
        "tank": TANK_KWP_PER_M3,
        "grid": GRID_KWP_PER_KWH_A_YEAR,
        "fuel": FUEL_KWP_PER_L_A_YEAR,
    }
    incomplete = "_incomplete" if missing else ""
    if first.best is None:
        return _sentence(sizing.scenario, f"none_meets{incomplete}", misses=misses_words(first), **slots)
    return _sentence(sizing.scenario, f"best{incomplete}", **slots)


def _rivals(scenario: Scenario, first: OptionSizing) -> str:
    count = len(first.runners_up)
    if not count:
        return _sentence(scenario, "no_rival", option=first.name)
    assert first.best is not None
    rival = first.runners_up[0]
    return _sentence(
        scenario,
        "one_rival" if count == 1 else "rivals",
        count=count,
        option=first.name,
        design=design_words(rival),
        percent=100 * (rival.objective / first.best.objective - 1),
    )


def _next_percent(sizing: Sizing, first: OptionSizing) -> str:
    target, (higher, more) = sizing.scenario.service.demand_met_percent, first.next_percent
    if first.best is None:
        return text("sizing_answer.out_of_reach", target=target)
    if higher <= target:
        return text("sizing_answer.no_higher_target", target=target)
    slots = {"target": target, "higher": higher, "option": first.name}
    if more is None:
        return text("sizing_answer.higher_beyond", **slots)
    if more <= 1e-9 * abs(first.best.objective):
        return _sentence(sizing.scenario, "higher_free", delivered=100 * first.best.delivered_share, **slots)
    return _sentence(sizing.scenario, "higher_adds", cost=_amount(sizing.scenario, more), **slots)


def _against_run(sizing: Sizing, first: OptionSizing) -> str | None:
    """Say what to change against what the ordinary run takes, and what that saves."""
    best, run = first.best, first.by_run
    if best is None:
        return None
    case, scenario = run.result.case, run.supply.scenario
    taken = _array(case.modules, case.design.strings, case.array_kw)
    taken += _tank_and_switch(case.design.tank_m3, run.levels)
    parts = _parts(best)
    change, instead = ([part for part in here if part not in there] for here, there in ((parts, taken), (taken, parts)))
    if best.pump != scenario.pump.name:
        change, instead = [best.pump, *change], [scenario.pump.name, *instead]
    if not change:
        return text("sizing_answer.run_same", option=first.name)
    gap = first.by_run_cost - best.objective
    sentence = _sentence(
        sizing.scenario,
        "run_dearer" if gap >= 0 else "run_cheaper",
        option=first.name,
        change=listed(change),
        instead=listed(instead) if instead else text("sizing_answer.as_given"),
        gap=_amount(sizing.scenario, abs(gap)),
    )
    return sentence if first.by_run_meets else f"{sentence} {text('sizing_answer.run_misses')}"
