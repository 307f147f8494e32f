"""Say in a few plain sentences what the comparison found and whether the top-up is worth having."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from planner.study.close_call import CLOSE_PERCENT
from planner.study.compare import OptionResult, Study
from planner.study.ranking import TANK_KWP_PER_M3
from planner.study.search import LevelTrial
from planner.supply.cells import DAY
from planner.supply.run import MONTH_DAYS
from planner.text import listed, source_name, sum_of_money, text


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
    if study.scenario.priced:
        found = [_verdict(study), _why_none(study), runner_up(study), _worth_of_top_up(study), _levels(study)]
    elif study.best is None:
        found = [_service(study), _why_none(study)]
    else:
        found = [_service(study), _others(study), _levels(study), _sizes(study)]
    return [sentence for sentence in found if sentence]


def money(value: float, currency: str) -> str:
    """Write an amount of money for people, to three or four significant figures."""
    if abs(value) >= 10_000:
        value = round(value, -2)
    return sum_of_money(value, currency)


def sources_words(sources: Sequence[str]) -> str:
    """Name sources inside a sentence."""
    names = [source_name(source) for source in sources]
    return names[0] if len(names) == 1 else text("source.list", others=", ".join(names[:-1]), last=names[-1])


def _verdict(study: Study) -> str:
    currency, first = study.scenario.currency, study.ranked[0]
    incomplete = "_incomplete" if first.unpriced else ""
    slots = {
        "option": first.name,
        "target": study.scenario.service.demand_met_percent,
        "years": study.scenario.finance.analysis_period_years,
        "life_cycle_cost": money(float(first.life.present_cost), currency),
        "unpriced": ", ".join(thing.label() for thing in first.unpriced),
    }
    if study.best is None:
        return text(f"answer.none_meets{incomplete}", delivered=100 * first.delivered_share, **slots)
    best = text(
        f"answer.{'best' if len(study.options) > 1 else 'only_option'}{incomplete}",
        capital_cost=money(float(first.life.capital_cost), currency),
        per_m3=sum_of_money(float(first.life.levelised_cost_per_m3), currency, ".2f"),
        **slots,
    )
    return f"{best} {text('answer.in_money_of_year_0')}" if study.scenario.finance.prices == "nominal" else best


def runner_up(study: Study) -> str | None:
    """Say which option that meets the target comes next, and by how much; None where there is no other option."""
    meeting = [option for option in study.ranked if option.meets_service]
    if len(meeting) < 2:
        missed = [option for option in study.ranked if not option.meets_service]
        return _only_one(missed[0], study) if study.best is not None and missed else None
    first, second = meeting[0], meeting[1]
    gap = float(second.life.present_cost - first.life.present_cost)
    percent = 100 * gap / float(first.life.present_cost)
    sentence = text(
        "answer.next_best_close" if percent < CLOSE_PERCENT else "answer.next_best",
        option=second.name,
        gap=money(gap, study.scenario.currency),
        percent=percent,
    )
    spared = {thing.label() for thing in second.unpriced}
    only_first = [thing.label() for thing in first.unpriced if thing.label() not in spared]
    if not only_first:
        return sentence
    return f"{sentence} {text('answer.next_best_unpriced', option=second.name, unpriced=', '.join(only_first))}"


def _only_one(missed: OptionResult, study: Study) -> str:
    """Say that no other option meets the target, and what the next one lacks."""
    points = study.scenario.service.demand_met_percent - 100 * missed.delivered_share
    days, allowed = missed.outcome.longest_short_days.max(), study.scenario.service.longest_short_days
    if points < 0.05 and allowed is not None and days > allowed:
        return text("answer.only_one_days", option=missed.name, days=days, allowed=allowed)
    if points < 0.05:
        return text("answer.only_one_worst_year", option=missed.name, percent=100 * missed.worst_year_share)
    return text("answer.only_one_share", option=missed.name, points=points)


def _worth_of_top_up(study: Study) -> str | None:
    """Compare the sun alone with the best option that adds grid or generator to it."""
    sunny = [option for option in study.ranked if option.has_array]
    alone = next((option for option in sunny if len(option.sources) == 1), None)
    mixed = [option for option in sunny if len(option.sources) > 1]
    if alone is None or not mixed:
        return _worth_of_sun(study)
    best = mixed[0]
    gap = float(best.life.present_cost - alone.life.present_cost)
    if best.meets_service and not alone.meets_service:
        key = "answer.top_up_needed" if gap >= 0 else "answer.top_up_needed_and_saves"
    elif not best.meets_service:
        key = "answer.top_up_misses"
    elif 100 * abs(gap) < CLOSE_PERCENT * float(alone.life.present_cost):
        key = "answer.top_up_alike_dearer" if gap > 0 else "answer.top_up_alike_cheaper"
    else:
        key = "answer.top_up_not_worth" if gap > 0 else "answer.top_up_worth"
    return text(
        key,
        sources=sources_words([source for source in best.sources if not source.has_array]),
        alone=100 * alone.delivered_share,
        topped_up=100 * best.delivered_share,
        gap=money(abs(gap), study.scenario.currency),
    )


def _worth_of_sun(study: Study) -> str | None:
    sunny = [option for option in study.ranked if option.has_array]
    dark = [option for option in study.ranked if not option.has_array]
    if not sunny or not dark:
        return None
    gap = float(dark[0].life.present_cost - sunny[0].life.present_cost)
    return text(
        "answer.sun_saves" if gap > 0 else "answer.sun_costs",
        option=sunny[0].name,
        gap=money(abs(gap), study.scenario.currency),
        other=dark[0].name,
    )


def _service(study: Study) -> str:
    """Say how well the option that stands first serves, where there are no prices."""
    first = study.ranked[0]
    percent, month = worst_month(first)
    longest = float(first.outcome.longest_short_days.max())
    meets = "answer.technical_meets" if longest else "answer.technical_never_short"
    return text(
        meets if study.best else "answer.technical_nearest",
        option=first.name,
        target=study.scenario.service.demand_met_percent,
        delivered=100 * first.delivered_share,
        years=study.scenario.finance.analysis_period_years,
        worst=percent,
        month=text(f"month_name.{month}"),
        short=float(first.outcome.short_days.mean()),
        longest=longest,
    )


def worst_month(option: OptionResult) -> tuple[float, int]:
    """Least share of demand met of any calendar month [%], and its number, 1 to 12."""
    share = option.outcome.month_share
    return 100 * float(np.nanmin(share)), 1 + int(np.nanargmin(share))


def _why_none(study: Study) -> str | None:
    """Where no option meets the target, hold the demand against what the pump gives here, in the worst month."""
    if study.best is not None:
        return None
    first = study.ranked[0]
    _, month = worst_month(first)
    flow_m3h, days = first.duty.flow_m3h, MONTH_DAYS[month - 1]
    asked, given = (
        float(each[:, month - 1].mean() / days) for each in (first.outcome.demand_m3, first.outcome.delivered_m3)
    )
    needed_h = asked / flow_m3h
    return text(
        "answer.why_none" if needed_h <= DAY else "answer.why_none_at_all",
        option=first.name,
        month=text(f"month_name.{month}"),
        asked=asked,
        needed=needed_h,
        flow=flow_m3h,
        ran=given / flow_m3h,
    )


def _others(study: Study) -> str | None:
    """Say which other options meet the target, where there are no prices to rank them by."""
    others = [option.name for option in study.ranked[1:] if option.meets_service]
    if others:
        return text("answer.technical_others", options="; ".join(others))
    missed = [option for option in study.ranked if not option.meets_service]
    return _only_one(missed[0], study) if study.best is not None and missed else None


def _sizes(study: Study) -> str | None:
    """Say how sizes were chosen without prices, where any were left open."""
    solar, tank, top_up = (getattr(study.scenario, name) for name in ("sources", "tank", "topup"))
    is_open = "auto" in (tank.volume_m3, top_up.start_level_percent, solar.solar and solar.solar.strings)
    return text("answer.technical_sizes", tank=TANK_KWP_PER_M3) if is_open else None


def saving_words(option: OptionResult, used: LevelTrial, better: LevelTrial) -> str:
    """Say what another setting of the float switch saves in a year: money, or energy where there are no prices."""
    if option.scenario.priced:
        return money(used.equivalent_yearly_cost - better.equivalent_yearly_cost, option.scenario.currency)
    saved = (
        ("answer.kwh_of_grid", used.grid_kwh_per_year - better.grid_kwh_per_year),
        ("answer.l_of_fuel", used.fuel_l_per_year - better.fuel_l_per_year),
    )
    return listed([text(key, amount=amount) for key, amount in saved if abs(amount) >= 1])


def _levels(study: Study) -> str | None:
    """Say what a better float-switch setting would save, for the best option that has one."""
    for option in study.ranked:
        best = option.best_trial
        if best is None:
            continue
        used = option.trials[0]
        slots = {"option": option.name, "start": used.start_percent, "stop": used.stop_percent}
        saving = used.objective - best.objective
        if not best.meets_service or math.isclose(saving, 0, abs_tol=0.005 * used.objective) or saving < 0:
            return text("answer.levels_good" if option.scenario.priced else "answer.levels_good_technical", **slots)
        return text(
            "answer.levels_better",
            better_start=best.start_percent,
            better_stop=best.stop_percent,
            saving=saving_words(option, used, best),
            **slots,
        )
    return None
