"""The usual cautions, said where they apply, and what the model itself warns of."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from planner.checks.safety import people_drink, placed_cautions
from planner.figures import figure
from planner.money.benchmarks import benchmarks_for, units_per_dollar
from planner.money.quantities import PERCENTAGES, Thing
from planner.scenario.scenario import Scenario
from planner.sources.base import SourceKind
from planner.study.compare import Study
from planner.study.search import LEVELS
from planner.study.site import estimate_sentences
from planner.text import known, listed, source_name, text


def cautions(study: Study) -> list[str]:
    """List the cautions that apply to a study: safety first, then the limits of its numbers.

    Parameters
    ----------
    study : Study
        The finished comparison.

    Returns
    -------
    list of str
    """
    safety = [caution.text for caution in placed_cautions(study.sources, drinks=people_drink(study.scenario))]
    return [*safety, *number_cautions(study)]


def safety_cautions(sources: Sequence[SourceKind], *, drinks: bool) -> list[str]:
    """List the cautions of the work itself, without the 'caution.local' of each; see `placed_cautions`."""
    return [caution.words for caution in placed_cautions(sources, drinks=drinks)]


def plain_cautions(study: Study) -> list[str]:
    """List the cautions of `cautions` where one 'caution.local' stands above them all."""
    return [*safety_cautions(study.sources, drinks=people_drink(study.scenario)), *number_cautions(study)]


def dangers(sources: Sequence[SourceKind]) -> list[str]:
    """Name in a few words what can kill at works with some sources."""
    of_sources = [_danger_words(source, danger) for source in sources for danger in _DANGERS.get(source, (source,))]
    return [*of_sources, *(text(f"danger.{danger}") for danger in _DANGERS_OF_WORKS)]


def _danger_words(source: str, danger: str) -> str:
    key = f"danger.{danger}"
    return text(key) if known(key) else text("danger.any", source=source_name(source))


def warnings(study: Study, already: set[str], *, full: bool) -> list[str]:
    """Warn of what can kill at the works, each thing once a call.

    Parameters
    ----------
    study : Study
        The finished comparison.
    already : set of str
        What was warned of before in the same call; what is new is added.
    full : bool
        Whether the cautions themselves are wanted, in place of the names of the dangers.
    """
    first = not already
    wanted = safety_cautions(study.sources, drinks=people_drink(study.scenario)) if full else dangers(study.sources)
    new = [words for words in wanted if words not in already]
    already.update(new)
    if full:
        listed_ones = [text("terminal.beware", caution=words) for words in new]
        return [*listed_ones, text("caution.local")] if first else listed_ones
    return [text("terminal.dangers" if first else "terminal.more_dangers", dangers=listed(new))] if new else []


def weather_first(sentences: Sequence[str], scenario: Scenario) -> list[str]:
    """Put what there is to say of estimated weather before the answer, which then ends the screen."""
    estimate = estimate_sentences(scenario)
    return [*(each for each in sentences if each in estimate), *(each for each in sentences if each not in estimate)]


def number_cautions(study: Study) -> list[str]:
    """List the limits of a study's numbers."""
    return [*limits(study), *_further_limits(study)]


def limits(study: Study) -> list[str]:
    """List the limits of a study's numbers that bear on the decision and that nothing else on the screen says."""
    scenario = study.scenario
    sentences = list(study.weather.notes)
    if not study.altitude_given:
        sentences.append(text("caution.altitude", altitude=f"{study.place.altitude_m:.0f}"))
    sentences += _clock(scenario)
    if scenario.priced:
        sentences += [*_under_budgeted(study), *_free(study), *_loan(scenario)]
    sentences += _turned_away(scenario)
    daily_m3 = float(study.options[0].quantities.demand_m3[-1]) / 365
    hours = daily_m3 / study.duty.flow_m3h
    if hours > 20:
        sentences.append(text("caution.hours_a_day", hours=f"{hours:.1f}", flow=f"{study.duty.flow_m3h:.1f}"))
    for option in study.options:
        solar = option.scenario.sources.solar
        if option.array is not None and solar is not None and option.strings:
            hours_held = float(option.array.window_hours.mean())
            if hours_held > 200:
                sentences.append(text("caution.dc_window", option=option.name, hours=f"{hours_held:.0f}"))
                break
    return sentences


def _further_limits(study: Study) -> list[str]:
    scenario = study.scenario
    sentences = _unpriced(study) if scenario.priced else []
    if study.duty.limited_by == "safe yield":
        sentences.append(text("caution.safe_yield", flow=f"{scenario.borehole.safe_yield_m3h:g}"))
    sentences += [source.emission_caution for source in study.sources if not source.emission_known(scenario)]
    lowest = min(start for start, _ in LEVELS)
    for option in study.ranked:
        if option.levels and option.levels[0] <= lowest and option.scenario.topup.start_level_percent == "auto":
            sentences.append(text("caution.lowest_level", option=option.name, level=f"{lowest:g}"))
            break
    return [*sentences, text("caution.simulated")]


def _clock(scenario: Scenario) -> list[str]:
    """Say that hours are standard time where the zone's clocks move in summer."""
    try:
        zone = ZoneInfo(scenario.site.time_zone)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return []
    offsets = {datetime(2023, month, 1, 12, tzinfo=zone).utcoffset() for month in (1, 7)}
    if len(offsets) == 1:
        return []
    return [text("caution.summer_time", zone=scenario.site.time_zone)]


_DANGERS = {"generator": ("exhaust", "backfeed")}
"""What is dangerous of a source, where it is more than its electricity."""
_DANGERS_OF_WORKS = ("lightning", "loads", "falls", "air", "trench", "tank", "water")

_IN_ANOTHER_PRICE = {
    "structure": "sources.solar.structure_price_per_module",
    "power_line": "sources.grid.line_price_per_m",
}
"""Lines whose price the price list has within that of another, by the key at which it then puts 0."""


def _missing(study: Study) -> dict[Thing, str]:
    """What no price was entered for, and what it is called."""
    return {thing: thing.label() for option in study.options for thing in option.unpriced}


def _unpriced(study: Study) -> list[str]:
    """Name what no price was entered for."""
    missing = _missing(study)
    return [text("caution.unpriced", names=listed(list(missing.values())))] if missing else []


def _free(study: Study) -> list[str]:
    """Name what was entered as free."""
    missing = _missing(study)
    free = {
        line.thing: line.label
        for option in study.options
        for line in option.lines
        if line.group not in PERCENTAGES and line.quantity and float(line.unit_price) == 0
    }
    assumed = {assumption.key for assumption in study.scenario.assumptions}
    within = {thing for thing, key in _IN_ANOTHER_PRICE.items() if key in assumed}
    entered = [label for thing, label in free.items() if thing not in missing and thing.key not in within]
    return [text("caution.free", names=listed(entered))] if entered else []


def _loan(scenario: Scenario) -> list[str]:
    """Warn of a nominal interest set against constant prices without an inflation to bring them together."""
    finance = scenario.finance
    nominal = finance.loan_percent > 0 and finance.loan_rate_percent > 0
    if not nominal or finance.prices != "constant" or "inflation_percent" in finance.model_fields_set:
        return []
    return [text("caution.loan", rate=f"{finance.loan_rate_percent:g}")]


def _under_budgeted(study: Study) -> list[str]:
    """Warn of running costs below what such schemes were found to cost, where the currency lets them be compared."""
    scenario, first = study.scenario, study.ranked[0]
    per_dollar = units_per_dollar(scenario)
    if not scenario.people or per_dollar is None:
        return []
    recurrent = benchmarks_for(scenario.people)[1]
    dollars = float(figure(recurrent.figure).read(first)) / per_dollar / (scenario.finance.usd_prices_since_2011 or 1.0)
    if dollars >= recurrent.low_usd:
        return []
    slots = {"low": f"{recurrent.low_usd:g}", "high": f"{recurrent.high_usd:g}", "option": first.name}
    return [text("caution.under_budgeted", cost=f"{dollars:.2f}", **slots)]


def _turned_away(scenario: Scenario) -> list[str]:
    """Warn of a plane that faces the pole, as after copying from the other hemisphere."""
    solar, latitude = scenario.sources.solar, scenario.site.latitude_deg
    if solar is None or abs(latitude) < 15:
        return []
    pole_deg = 0.0 if latitude > 0 else 180.0
    for plane in solar.planes:
        away = abs((plane.azimuth_deg - pole_deg + 180) % 360 - 180)
        if plane.tilt_deg > 10 and away < 60:
            slots = {"azimuth": plane.azimuth_deg, "latitude": latitude, "usual": 180 - pole_deg}
            return [text("caution.turned_away", **{name: f"{degrees:g}" for name, degrees in slots.items()})]
    return []
