"""The usual cautions, said where they apply, and what the model itself warns of."""

from __future__ import annotations

from planner.checks.safety import placed_cautions
from planner.scenario.scenario import Scenario
from planner.study.compare import Study


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
    return [*(caution.text for caution in placed_cautions(_compared(study))), *_numbers(study)]


def _compared(study: Study) -> Scenario:
    """Leave out of the scenario the sources that no option uses."""
    used = {source for option in study.options for source in option.sources}
    unused = {name: None for name in study.scenario.sources.names if name not in used}
    sources = study.scenario.sources.model_copy(update=unused)
    return study.scenario.model_copy(update={"sources": sources})


def _numbers(study: Study) -> list[str]:
    scenario = study.scenario
    said = list(study.weather.notes)
    if not study.altitude_given:
        said.append(f"The altitude was not given; {study.place.altitude_m:.0f} m is taken from pvlib's world grid.")
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
    if any("grid" in option.sources for option in study.options):
        grid = scenario.sources.grid
        if grid is not None and grid.co2_kg_per_kwh is None:
            said.append("No carbon dioxide figure was given for the grid, so its emissions are not counted.")
    said.append(
        "Every life year is simulated by itself from a half-full tank, hour by hour; water quality and the wear of the "
        "borehole are not part of the simulation."
    )
    return said
