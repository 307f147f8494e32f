"""Say in a few plain sentences what the comparison found and whether the top-up is worth having."""

from __future__ import annotations

import math
from collections.abc import Sequence

from planner.study.compare import OptionResult, Study

CLOSE_PERCENT = 2.0
"""Difference in present cost below which cost alone does not decide."""


def sentences(study: Study) -> list[str]:
    """Put the answer of a study into two to four plain sentences.

    Parameters
    ----------
    study : Study
        The finished comparison.

    Returns
    -------
    list of str
    """
    said = [_verdict(study)]
    runner_up = _runner_up(study)
    if runner_up:
        said.append(runner_up)
    worth = _worth_of_top_up(study)
    if worth:
        said.append(worth)
    levels = _levels(study)
    if levels:
        said.append(levels)
    return said


def money(value: float, currency: str) -> str:
    """Write an amount of money for people, to three or four significant figures."""
    if abs(value) >= 10_000:
        value = round(value, -2)
    return f"{currency} {value:,.0f}"


def incomplete(names: Sequence[str]) -> str:
    """Say that a total leaves out what has no price."""
    return f"incomplete, as no price was entered for: {', '.join(names)}"


def cost_words(capital: float, present: float, currency: str, years: int, unpriced: Sequence[str]) -> str:
    """Spell out what an option costs; where something has no price, that this is the priced part only."""
    cost = f"a present cost of {money(present, currency)} over {years} years"
    if unpriced:
        return f"its total is {incomplete(unpriced)}; the rest comes to {cost}"
    return f"{money(capital, currency)} to build, {cost}"


def _verdict(study: Study) -> str:
    currency, years = study.scenario.currency, study.scenario.finance.life_years
    target = study.scenario.service.delivered_share_percent
    first = study.ranked[0]
    capital, present = float(first.life.capital_cost), float(first.life.present_cost)
    in_year_0 = " in money of year 0" if study.scenario.finance.prices == "nominal" else ""
    if study.best is None:
        known = f"; its total is {incomplete(first.unpriced)}" if first.unpriced else ""
        return (
            f"No option delivers the wanted {target:g} percent of the water; {first.name} comes nearest with "
            f"{100 * first.delivered_share:.1f} percent, for a present cost of {money(present, currency)} over {years} "
            f"years{known}."
        )
    cost = cost_words(capital, present, currency, years, first.unpriced)
    per_m3 = f"{currency} {float(first.life.levelised_cost_per_m3):.2f} per m3{in_year_0}"
    return (
        f"Of the options that deliver at least {target:g} percent of the water, {first.name} costs least: {cost}, "
        f"{per_m3}."
    )


def _runner_up(study: Study) -> str | None:
    serving = [option for option in study.ranked if option.meets_service]
    if len(serving) < 2:
        missed = [option for option in study.ranked if not option.meets_service]
        if study.best is not None and missed:
            return "It is the only option that meets the target; " + _misses(missed[0], study) + "."
        return None
    first, second = serving[0], serving[1]
    gap = float(second.life.present_cost - first.life.present_cost)
    percent = 100 * gap / float(first.life.present_cost)
    close = " (too close to call on cost alone)" if percent < CLOSE_PERCENT else ""
    return (
        f"The next best is {second.name}, which costs {money(gap, study.scenario.currency)} more over the life "
        f"({percent:.1f} percent){close}."
    )


def _misses(option: OptionResult, study: Study) -> str:
    short = study.scenario.service.delivered_share_percent - 100 * option.delivered_share
    longest, allowed = option.outcome.longest_short_days.max(), study.scenario.service.longest_short_days
    if short < 0.05 and allowed is not None and longest > allowed:
        return f"{option.name} falls short on {longest:.0f} days in a row, {allowed} being allowed"
    if short < 0.05:
        return f"{option.name} falls short in its worst year, with {100 * option.worst_year_share:.1f} percent"
    return f"{option.name} falls short by {short:.1f} percentage points"


def _worth_of_top_up(study: Study) -> str | None:
    """Compare the sun alone with the best option that adds grid or generator to it."""
    names = [option.name for option in study.options]
    mixed = [option for option in study.ranked if "solar" in option.sources and len(option.sources) > 1]
    if "solar" not in names or not mixed:
        return _worth_of_sun(study)
    alone, best = study.option("solar"), mixed[0]
    currency = study.scenario.currency
    gap = float(best.life.present_cost - alone.life.present_cost)
    added = " and ".join(best.sources[1:])
    shares = f"{100 * alone.delivered_share:.1f} to {100 * best.delivered_share:.1f} percent"
    if best.meets_service and not alone.meets_service:
        return (
            f"Topping up from the {added} is needed for the target: it lifts the water delivered from {shares} "
            + (f"and costs {money(gap, currency)} more over the life." if gap >= 0 else
               f"and even saves {money(-gap, currency)} over the life.")
        )  # fmt: skip
    if not best.meets_service:
        return f"Topping up from the {added} lifts the water delivered from {shares}, which still misses the target."
    if gap > 0:
        return (
            f"Topping up from the {added} is not worth having for the target: the sun alone meets it, and the top-up "
            f"costs {money(gap, currency)} more over the life (water delivered: {shares})."
        )
    return (
        f"Topping up from the {added} is worth having: it saves {money(-gap, currency)} over the life against the sun "
        f"alone, mainly by a smaller array or tank, and moves the water delivered from {shares}."
    )


def _worth_of_sun(study: Study) -> str | None:
    sunny = [option for option in study.ranked if "solar" in option.sources]
    dark = [option for option in study.ranked if "solar" not in option.sources]
    if not sunny or not dark:
        return None
    gap = float(dark[0].life.present_cost - sunny[0].life.present_cost)
    amount = money(abs(gap), study.scenario.currency)
    verb = "saves" if gap > 0 else "costs"
    more = "" if gap > 0 else " more"
    return f"{sunny[0].name} {verb} {amount}{more} over the life against {dark[0].name}, the best without the sun."


def _levels(study: Study) -> str | None:
    """Say what a better float-switch setting would save, for the best option that has one."""
    for option in study.ranked:
        best = option.best_trial
        if best is None:
            continue
        used = option.trials[0]
        saving = used.equivalent_yearly_cost - best.equivalent_yearly_cost
        if not best.meets_service or math.isclose(saving, 0, abs_tol=0.005 * used.equivalent_yearly_cost) or saving < 0:
            return (
                f"In {option.name} the float switch starts the top-up at {used.start_percent:g} percent of the tank "
                f"and stops it at {used.stop_percent:g} percent; no setting tried would save more than half a percent."
            )
        return (
            f"In {option.name} the float switch is set to {used.start_percent:g}/{used.stop_percent:g} percent of the "
            f"tank; {best.start_percent:g}/{best.stop_percent:g} percent would serve as well and save "
            f"{money(saving, study.scenario.currency)} a year."
        )
    return None
