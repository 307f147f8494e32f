"""The usual cautions, said where they apply, and what the model itself warns of."""

from __future__ import annotations

from planner.study.compare import Study

_LOCAL = "Local codes and licensed practice come first."


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
    sources = {source for option in study.options for source in option.sources}
    return [*_safety(sources), *_numbers(study)]


def _safety(sources: set[str]) -> list[str]:
    said = []
    if "solar" in sources:
        said.append(
            "PV modules give dangerous DC voltage whenever there is light and cannot be switched off by day; "
            f"isolators, string fuses, earthing and lightning protection need a licensed electrician. {_LOCAL}"
        )
    if "grid" in sources:
        said.append(
            "Mains at a well can kill: earthing, a residual-current device and lock-off before the pump is lifted are "
            f"for a licensed electrician and the utility. {_LOCAL}"
        )
    if "generator" in sources:
        said.append(
            "A generator's exhaust kills in closed rooms, and one connected beside the grid needs a changeover switch "
            f"that cannot feed back into it; store fuel away from the well. {_LOCAL}"
        )
    said.append(
        "Lifting pumps and pipes, pressure tests and work over an open well are for trained crews; test the water "
        "before anyone drinks it, and hold an abstraction permit where one is asked for."
    )
    return said


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
        "Every life year is simulated by itself from a half-full tank, hour by hour; surge, water quality and the wear "
        "of the borehole are not part of the simulation."
    )
    return said
