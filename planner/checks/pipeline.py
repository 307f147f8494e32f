"""Pipeline: pressure at duty, against a closed valve and in a surge, and the route's high points."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.checks.basis import Basis, changed
from planner.checks.verdict import (
    PRACTICE,
    SITE_DATA,
    Outcome,
    Remedy,
    Verdict,
    at_most,
    figure,
    highest,
    missing,
    reserve,
    room,
)
from planner.water.friction import velocity_m_s
from planner.water.pipes import Pipe, material_for, stronger
from planner.water.route import (
    Route,
    allowed_bar,
    head_of_bar,
    high_points,
    route_of,
    segment_loss_m,
)
from planner.water.surge import stop_time_for_s, surge_heads_m, wave_speed_of

Array = NDArray[np.float64]

TOPIC = "Pipeline"
SURGE_MARGIN = 1.5
PROFILE_TOLERANCE = 0.02
INLET_TOLERANCE_M = 0.5


@dataclass(frozen=True, eq=False)
class Pressures:
    """Highest pressure in each run of pipe [bar], shape (segments,); the surge NaN where its wave speed is not known.

    Attributes
    ----------
    duty_bar, shut_off_bar, surge_bar : (segments,) arrays
        At duty, against a closed valve, and when the flow stops.
    allowed_bar : (segments,) array
        What the pipe bears; NaN where its class is not known, 0 where the water is too hot for any.
    route : Route
        The route.
    """

    duty_bar: Array
    shut_off_bar: Array
    surge_bar: Array
    allowed_bar: Array
    route: Route


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the pipeline."""
    found = pressures(basis)
    return [
        _against_class(
            basis,
            found.duty_bar,
            found.allowed_bar,
            "pressure_at_duty",
            f"Highest pressure at {basis.flow_words}",
            "A pipe under more than its class bursts or creeps to an early end.",
            "fail",
        ),
        _against_class(
            basis,
            found.shut_off_bar,
            found.allowed_bar,
            "pressure_at_shut_off",
            "Highest pressure if a valve is closed against the running pump",
            "A valve closed by mistake, or a float valve, puts the pump's largest head on the pipe.",
            "caution",
        ),
        _surge(basis, found),
        *_profile(basis, found),
    ]


def pressures(basis: Basis) -> Pressures:
    """Work out the highest pressures in each run of pipe."""
    scenario, system = basis.scenario, basis.system
    water_c = scenario.borehole.water_temperature_c
    route, per_bar = route_of(scenario.borehole, scenario.pipeline), head_of_bar(water_c)
    lost = segment_loss_m(system, basis.flow_m3h)
    duty = route.line_m(basis.pump_level_m, lost) - route.level_m
    shut_off = basis.shut_off_head_m - float(system.static_level_m.min()) - route.level_m
    rises = _surge_heads_m(basis)

    def most(head: Array) -> Array:
        return np.array([head[route.within(number)].max() for number in range(len(system.pipes))]) / per_bar

    allowed = np.array([_bears_bar(pipe, water_c) for pipe in system.pipes])
    return Pressures(
        duty_bar=most(duty),
        shut_off_bar=most(shut_off),
        surge_bar=most(duty) + rises / per_bar,  # at rest the pressure is nowhere higher than at duty
        allowed_bar=allowed,
        route=route,
    )


def _bears_bar(pipe: Pipe, water_c: float) -> float:
    if pipe.pressure_class_bar is None:
        return np.nan
    return allowed_bar(pipe, water_c) or 0.0


def _class_source(basis: Basis) -> str:
    """Say where the pressure classes of the pipes in warm water come from, each source once."""
    sources = dict.fromkeys(pipe.material.warm.source for pipe in basis.system.pipes)
    return f"pressure class of the pipe, derated for warm water: {'; '.join(sources)}"


def _wave_speeds(basis: Basis) -> Array:
    """Wave speed in each run [m/s], NaN where not known."""
    water_c = basis.scenario.borehole.water_temperature_c
    speeds = [
        segment.wave_speed_m_s or wave_speed_of(pipe, water_c) or np.nan
        for segment, pipe in zip(basis.scenario.pipeline.segments, basis.system.pipes, strict=True)
    ]
    return np.array(speeds, dtype=float)


def _velocities(basis: Basis) -> Array:
    return velocity_m_s(basis.flow_m3h / 3600, np.array([pipe.inner_diameter_m for pipe in basis.system.pipes]))


def _surge_heads_m(basis: Basis) -> Array:
    stop = basis.scenario.pipeline.stop_time_s
    return surge_heads_m(_wave_speeds(basis), _velocities(basis), basis.system.length_m, stop)


def _against_class(
    basis: Basis, bar: Array, allowed: Array, key: str, compared: str, why: str, beyond: Outcome
) -> Verdict:
    names = basis.system.segment_names
    unknown = [names[number] for number in np.flatnonzero(np.isnan(allowed))]
    over = [
        number
        for number in range(len(bar))
        if not np.isnan(allowed[number]) and not at_most(bar[number], allowed[number])
    ]
    if unknown and not over:
        return missing(
            TOPIC,
            key,
            f"{compared}, in {unknown[0]}",
            f"look for 'PN' or bar printed along the pipe of {', '.join(unknown)}",
            why=why,
            source=_class_source(basis),
            value=float(bar[names.index(unknown[0])]),
            unit="bar",
        )
    worst = int(np.nanargmax(bar / np.maximum(allowed, 1e-9)))
    remedy, changes = _stronger(basis, over, key)
    return highest(
        TOPIC,
        key,
        f"{compared}, against what the pipe bears at {basis.scenario.borehole.water_temperature_c:g} deg C; "
        f"least room in {names[worst]}",
        float(bar[worst]),
        float(allowed[worst]),
        "bar",
        why=why,
        remedy=remedy,
        source=_class_source(basis),
        beyond=beyond,
        changes=changes,
    )


def _stronger(basis: Basis, over: list[int], key: str) -> Remedy:
    """Name, for each run, the next class that bears duty and shut-off, tried out with its own bore."""
    named = {number: _next_class(basis, number) for number in over}
    said = [f"{basis.system.segment_names[number]}: {words}" for number, (words, _) in named.items()]
    changes: dict[str, Any] = {}
    if all(pipe for _, pipe in named.values()):
        for number, (_, pipe) in named.items():
            segment = f"pipeline.segments[{number + 1}]"
            changes |= {f"{segment}.pipe": pipe, f"{segment}.pressure_class_bar": None}
    valve = "a pressure switch or relief valve, and no valve that can close against the running pump"
    return "; ".join([*said, *([f"or {valve}"] if key == "pressure_at_shut_off" else [])]), changes


def _next_class(basis: Basis, number: int) -> tuple[str, str]:
    """Say which pipe bears duty and shut-off, and name it where the tables have it."""
    pipe, pipeline = basis.system.pipes[number], basis.scenario.pipeline
    asked = _asked_bar(pressures(basis), number)
    for other in stronger(pipe):
        segment = pipeline.segments[number].model_copy(update={"pipe": other.name, "pressure_class_bar": None})
        segments = [*pipeline.segments[:number], segment, *pipeline.segments[number + 1 :]]
        laid = basis.scenario.model_copy(update={"pipeline": pipeline.model_copy(update={"segments": segments})})
        found = pressures(changed(basis, laid))
        # a wider bore asks less head of another pump, but the pump is bought for the pipe as given
        if at_most(max(asked, _asked_bar(found, number)), found.allowed_bar[number]):
            return f"{other.name} (PN {other.pressure_class_bar:g})", other.name
    water_c = basis.scenario.borehole.water_temperature_c
    factor = pipe.material.warm.share_at(water_c)
    if factor is None:
        bearing = material_for(water_c)
        instead = "cooler water" if bearing is None else f"{bearing.name} pipe"
        return f"{instead}, as {pipe.material.name} has no class in water this hot", ""
    return f"pipe, joints and fittings of at least PN {ceil(asked / factor)}", ""


def _asked_bar(found: Pressures, number: int) -> float:
    """Pressure that a pipe must bear for good: at duty, and if a valve is closed."""
    return float(max(found.duty_bar[number], found.shut_off_bar[number]))


def _surge(basis: Basis, found: Pressures) -> Verdict:
    names, speeds = basis.system.segment_names, _wave_speeds(basis)
    compared = "Highest pressure when the flow stops at once, or a pipe's valve slams"
    if basis.scenario.pipeline.stop_time_s is not None:
        compared = f"Highest pressure when the flow stops in {basis.scenario.pipeline.stop_time_s:g} s"
    why = (
        "A power cut stops the water at once; the wave bursts pipes and tears joints, and sucks as hard as it presses."
    )
    source = f"Joukowsky 1898 with the wave speed of the pipe (Korteweg), without friction; {_class_source(basis)}"
    unknown = [names[number] for number in np.flatnonzero(np.isnan(speeds) | np.isnan(found.allowed_bar))]
    ratio = found.surge_bar / np.maximum(found.allowed_bar, 1e-9)
    if unknown and not (ratio > 1).any():
        return missing(
            TOPIC,
            "surge",
            f"{compared}, in {', '.join(unknown)}",
            "look for the wall (or SDR) and the class (PN) printed along the pipe",
            why=why,
            source=source,
            unit="bar",
        )
    worst = int(np.nanargmax(ratio))
    value, limit = float(found.surge_bar[worst]), float(found.allowed_bar[worst])
    outcome: Outcome = "pass"
    if not at_most(value, limit):
        outcome = "caution" if at_most(value, SURGE_MARGIN * limit) else "fail"
    rise, good = float(_surge_heads_m(basis)[worst]), outcome == "pass"
    remedy, changes = _slower_stop(basis, found, speeds)
    return Verdict(
        TOPIC,
        "surge",
        f"{compared}: a rise of {figure(rise)} m in {names[worst]} (wave {speeds[worst]:.0f} m/s)",
        outcome,
        value,
        limit,
        "bar",
        room(value, limit, "bar"),
        why,
        "" if good else remedy,
        f"{source}; up to {SURGE_MARGIN:g} times the class is a caution, as the estimate is an upper bound: {PRACTICE}",
        {} if good else changes,
    )


def _slower_stop(basis: Basis, found: Pressures, speeds: Array) -> Remedy:
    per_bar = head_of_bar(basis.scenario.borehole.water_temperature_c)
    rises = _surge_heads_m(basis)
    room_m = (found.allowed_bar - found.surge_bar) * per_bar + rises
    pressed = (rises > room_m) & ~np.isnan(room_m)
    least = float(room_m[pressed].min()) if pressed.any() else 0.0
    if least <= 0 or np.isnan(speeds).any():
        return "pipe of a higher class, or slower water in a wider pipe", {}
    length = basis.system.length_m
    seconds = max(stop_time_for_s(least, _velocities(basis), length), float((2 * length / speeds).sum()) * 1.001)
    slow_s = ceil(10 * seconds) / 10
    words = (
        f"let the flow stop in no less than {slow_s:.1f} s, in a power cut too (slow valve, soft stop, an air vessel "
        "for power cuts), or wider pipe"
    )
    return words, {"pipeline.stop_time_s": slow_s}


def _profile(basis: Basis, found: Pressures) -> list[Verdict]:
    pipeline, route = basis.scenario.pipeline, found.route
    why = "Air gathers at a high point and chokes the flow; a pressure below that of the air draws in dirt."
    source = f"the route's profile; air valves at high points are {PRACTICE}"
    if not pipeline.profile:
        return [
            missing(
                TOPIC,
                "high_points",
                "High points of the route, and the pressure there",
                "walk the route with a level or a satellite receiver, and note chainage and ground level",
                why=why,
                source=source,
            )
        ]
    profile = pipeline.profile
    tops = set(high_points(pipeline))
    head = [pipeline.rise_to_tank_inlet_m - point.level_m for point in profile]
    bare = {index for index, point in enumerate(profile) if point.air_valve == "no"}
    below = {index for index in bare if head[index] < -1e-9}
    lowest_m = min(head)
    outcome: Outcome = "fail" if below else "caution" if tops & bare else "pass"
    places = ", ".join(figure(profile[index].chainage_m) for index in sorted((tops & bare) | below))
    remedy = f"an air valve at chainage {places} m"
    if below:
        remedy += "; or lay the pipe lower there, or raise the tank"
    return [
        Verdict(
            TOPIC,
            "high_points",
            f"Lowest pressure head along the route with the pump at rest; high points between the ends: {len(tops)}",
            outcome,
            lowest_m,
            0.0,
            "m",
            reserve(lowest_m, 0.0, "m"),
            why,
            "" if outcome == "pass" else remedy,
            source,
            {f"pipeline.profile[{index + 1}].air_valve": "yes" for index in sorted((tops & bare) | below)},
        ),
        _matches(basis, route),
    ]


def _matches(basis: Basis, route: Route) -> Verdict:
    pipeline = basis.scenario.pipeline
    laid = float(basis.system.length_m.sum()) - route.borehole_m
    chainage = pipeline.profile[-1].chainage_m
    off = abs(laid - chainage)
    return highest(
        TOPIC,
        "profile_length",
        f"Pipe beyond the borehole ({figure(laid)} m) and the profile ({figure(chainage)} m): their difference",
        off,
        PROFILE_TOLERANCE * chainage,
        "m",
        why="If the two differ, friction and pressures are worked out for another route.",
        remedy="give the profile to the tank, and segments of the same length",
        source=f"{SITE_DATA}; 2 % is {PRACTICE}",
        beyond="caution",
    )
