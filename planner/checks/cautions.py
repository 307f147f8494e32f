"""The usual cautions, said where they apply, and what the model itself warns of."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from planner.checks.safety import placed_cautions
from planner.scenario.scenario import Scenario
from planner.study.compare import Study
from planner.study.search import LEVELS


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
    return [*safety_cautions(compared(study)), *number_cautions(study)]


def safety_cautions(*scenarios: Scenario) -> list[str]:
    """List the cautions of the work itself that apply to one scenario or to several together."""
    return [caution.text for caution in placed_cautions(*scenarios)]


def compared(study: Study) -> Scenario:
    """Return a study's scenario without the sources that no option uses."""
    used = {source for option in study.options for source in option.sources}
    unused = {name: None for name in study.scenario.sources.names if name not in used}
    sources = study.scenario.sources.model_copy(update=unused)
    return study.scenario.model_copy(update={"sources": sources})


def number_cautions(study: Study) -> list[str]:
    """List the limits of a study's numbers."""
    scenario = study.scenario
    said = list(study.weather.notes)
    if not study.altitude_given:
        said.append(f"The altitude was not given; {study.place.altitude_m:.0f} m is taken from pvlib's world grid.")
    said += _clock(scenario)
    said += _unpriced(study)
    said += _loan(scenario)
    said += _turned_away(scenario)
    daily_m3 = float(study.options[0].quantities.demand_m3[-1]) / 365
    hours = daily_m3 / study.duty.flow_m3h
    if hours > 20:
        said.append(
            f"In the last year the pump would have to run {hours:.1f} hours a day at its duty flow of "
            f"{study.duty.flow_m3h:.1f} m3/h; the demand outgrows the pump or the borehole."
        )
    if study.duty.limited_by == "safe yield":
        said.append(
            f"The pump could give more than the borehole's safe yield of {scenario.borehole.safe_yield_m3h:g} m3/h; "
            "its speed is held down to that."
        )
    for option in study.options:
        solar = option.scenario.sources.solar
        if option.array is not None and solar is not None and option.strings:
            hours_held = float(option.array.window_hours.mean())
            if hours_held > 200:
                said.append(
                    f"In {option.name} the controller's DC window holds the array off its best point in "
                    f"{hours_held:.0f} hours a year; look at the number of modules in series."
                )
                break
    used = dict.fromkeys(source for option in study.options for source in option.sources)
    said += [source.emission_caution for source in used if not source.emission_known(scenario)]
    lowest = min(start for start, _ in LEVELS)
    for option in study.ranked:
        if option.levels and option.levels[0] <= lowest and option.scenario.topup.start_level_percent == "auto":
            said.append(
                f"In {option.name} the float switch was set to the lowest level tried, {lowest:g} percent of the tank; "
                "a higher one keeps more in reserve for a failure."
            )
            break
    said.append(
        "Every life year is simulated hour by hour, from what the year before leaves in the tank; water quality and "
        "the wear of the borehole are not part of the simulation."
    )
    return said


def _clock(scenario: Scenario) -> list[str]:
    """Say that hours are standard time where the zone's clocks move in summer."""
    try:
        zone = ZoneInfo(scenario.site.time_zone)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return []
    offsets = {datetime(2023, month, 1, 12, tzinfo=zone).utcoffset() for month in (1, 7)}
    if len(offsets) == 1:
        return []
    return [
        f"Hours are standard time all year; in summer the clocks of {scenario.site.time_zone} run an hour ahead, so "
        "draw, tariff bands and allowed hours then stand an hour late."
    ]


def _unpriced(study: Study) -> list[str]:
    """Name what no price was entered for, and what was entered as free."""
    missing = dict.fromkeys(name for option in study.options for name in option.unpriced)
    free = dict.fromkeys(
        line.name
        for option in study.options
        for line in option.lines
        if line.group not in ("Installation", "Contingency") and line.quantity and float(line.unit_price) == 0
    )
    entered = [name for name in free if name not in missing]
    said = []
    if missing:
        said.append(
            f"No price was entered for: {', '.join(missing)}; the cost of an option that needs it is incomplete."
        )
    if entered:
        said.append(f"Counted as there and paid for, a price of 0 being entered: {', '.join(entered)}.")
    return said


def _loan(scenario: Scenario) -> list[str]:
    """Warn of a nominal interest set against constant prices without an inflation to bring them together."""
    finance = scenario.finance
    nominal = finance.loan_percent > 0 and finance.loan_rate_percent > 0
    if not nominal or finance.prices != "constant" or "inflation_percent" in finance.model_fields_set:
        return []
    return [
        f"The loan's interest of {finance.loan_rate_percent:g} percent is nominal, prices are constant and no "
        "inflation was entered, so the interest counts as if it were above inflation and the owner's cost comes out "
        "too high: enter finance.inflation_percent (0 only where no inflation is expected)."
    ]


def _turned_away(scenario: Scenario) -> list[str]:
    """Warn of a plane that faces the pole, as after copying from the other hemisphere."""
    solar, latitude = scenario.sources.solar, scenario.site.latitude_deg
    if solar is None or abs(latitude) < 15:
        return []
    pole_deg = 0.0 if latitude > 0 else 180.0
    for plane in solar.planes:
        away = abs((plane.azimuth_deg - pole_deg + 180) % 360 - 180)
        if plane.tilt_deg > 10 and away < 60:
            return [
                f"A plane of the array faces the pole (azimuth {plane.azimuth_deg:g} at latitude {latitude:g}); in "
                f"this hemisphere panels usually face {180 - pole_deg:g} degrees."
            ]
    return []
