"""Pipeline: pressure at duty, against a closed valve and in a surge, and the route's high points."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.checks.basis import Basis, changed
from planner.checks.verdict import (
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
from planner.text import listed, text
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

TOPIC = "pipeline"
SURGE_MARGIN = 1.5
PROFILE_TOLERANCE = 0.02


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
        _against_class(basis, found.duty_bar, found.allowed_bar, "pressure_at_duty", "fail"),
        _against_class(basis, found.shut_off_bar, found.allowed_bar, "pressure_at_shut_off", "caution"),
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


def _warm_sources(basis: Basis) -> str:
    """Say where the pressure classes of the pipes in warm water come from, each source once."""
    return "; ".join(dict.fromkeys(text(f"material.warm.{pipe.material.warm.source}") for pipe in basis.system.pipes))


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


def _against_class(basis: Basis, bar: Array, allowed: Array, key: str, beyond: Outcome) -> Verdict:
    names = basis.system.segment_names
    why, source = text(f"check.{key}.why"), text("check.pipe_class.source", sources=_warm_sources(basis))
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
            text(f"check.{key}.compared_open", flow=basis.flow_words, segment=unknown[0]),
            text("check.pipe_class.look_for", segments=listed(unknown)),
            why=why,
            source=source,
            value=float(bar[names.index(unknown[0])]),
            unit="bar",
        )
    worst = int(np.nanargmax(bar / np.maximum(allowed, 1e-9)))
    remedy, changes = _stronger(basis, over, key)
    return highest(
        TOPIC,
        key,
        text(
            f"check.{key}.compared",
            flow=basis.flow_words,
            temperature=f"{basis.scenario.borehole.water_temperature_c:g}",
            segment=names[worst],
        ),
        float(bar[worst]),
        float(allowed[worst]),
        "bar",
        why=why,
        remedy=remedy,
        source=source,
        beyond=beyond,
        changes=changes,
    )


def _stronger(basis: Basis, over: list[int], key: str) -> Remedy:
    """Name, for each run, the next class that bears duty and shut-off, tried out with its own bore."""
    named = {number: _next_class(basis, number) for number in over}
    pipes = "; ".join(words for words, _ in named.values())
    changes: dict[str, Any] = {}
    if all(pipe for _, pipe in named.values()):
        for number, (_, pipe) in named.items():
            segment = f"pipeline.segments[{number + 1}]"
            changes |= {f"{segment}.pipe": pipe, f"{segment}.pressure_class_bar": None}
    return text(f"check.{key}.remedy", pipes=pipes), changes


def _next_class(basis: Basis, number: int) -> tuple[str, str]:
    """Say which pipe bears duty and shut-off, and name it where the tables have it."""
    pipe, pipeline = basis.system.pipes[number], basis.scenario.pipeline
    segment_name = basis.system.segment_names[number]
    asked = _asked_bar(pressures(basis), number)
    for other in stronger(pipe):
        segment = pipeline.segments[number].model_copy(update={"pipe": other.name, "pressure_class_bar": None})
        segments = [*pipeline.segments[:number], segment, *pipeline.segments[number + 1 :]]
        laid = basis.scenario.model_copy(update={"pipeline": pipeline.model_copy(update={"segments": segments})})
        found = pressures(changed(basis, laid))
        # a wider bore asks less head of another pump, but the pump is bought for the pipe as given
        if at_most(max(asked, _asked_bar(found, number)), found.allowed_bar[number]):
            pressure = f"{other.pressure_class_bar:g}"
            words = text("check.pipe_class.remedy_named", segment=segment_name, pipe=other.name, pressure=pressure)
            return words, other.name
    water_c = basis.scenario.borehole.water_temperature_c
    factor, bearing = pipe.material.warm.share_at(water_c), material_for(water_c)
    if factor is not None:
        return text("check.pipe_class.remedy_class", segment=segment_name, pressure=ceil(asked / factor)), ""
    slots = {"segment": segment_name, "given": text(f"material.{pipe.material.key}")}
    if bearing is None:
        return text("check.pipe_class.remedy_cooler", **slots), ""
    return text("check.pipe_class.remedy_material", material=text(f"material.{bearing.key}"), **slots), ""


def _asked_bar(found: Pressures, number: int) -> float:
    """Pressure that a pipe must bear for good: at duty, and if a valve is closed."""
    return float(max(found.duty_bar[number], found.shut_off_bar[number]))


def _surge(basis: Basis, found: Pressures) -> Verdict:
    names, speeds = basis.system.segment_names, _wave_speeds(basis)
    stop_s, why = basis.scenario.pipeline.stop_time_s, text("check.surge.why")
    timed, stop = ("", "") if stop_s is None else ("_timed", f"{stop_s:g}")
    unknown = [names[number] for number in np.flatnonzero(np.isnan(speeds) | np.isnan(found.allowed_bar))]
    ratio = found.surge_bar / np.maximum(found.allowed_bar, 1e-9)
    if unknown and not (ratio > 1).any():
        return missing(
            TOPIC,
            "surge",
            text(f"check.surge.compared_open{timed}", stop=stop, segments=listed(unknown)),
            text("check.surge.look_for"),
            why=why,
            source=text("check.surge.source_open", sources=_warm_sources(basis)),
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
        text(
            f"check.surge.compared{timed}",
            stop=stop,
            rise=figure(rise),
            segment=names[worst],
            speed=f"{speeds[worst]:.0f}",
        ),
        outcome,
        value,
        limit,
        "bar",
        room(value, limit, "bar"),
        why,
        "" if good else remedy,
        text("check.surge.source", sources=_warm_sources(basis), times=f"{SURGE_MARGIN:g}"),
        {} if good else changes,
    )


def _slower_stop(basis: Basis, found: Pressures, speeds: Array) -> Remedy:
    per_bar = head_of_bar(basis.scenario.borehole.water_temperature_c)
    rises = _surge_heads_m(basis)
    room_m = (found.allowed_bar - found.surge_bar) * per_bar + rises
    pressed = (rises > room_m) & ~np.isnan(room_m)
    least = float(room_m[pressed].min()) if pressed.any() else 0.0
    if least <= 0 or np.isnan(speeds).any():
        return text("check.surge.remedy_class"), {}
    length = basis.system.length_m
    seconds = max(stop_time_for_s(least, _velocities(basis), length), float((2 * length / speeds).sum()) * 1.001)
    slow_s = ceil(10 * seconds) / 10
    return text("check.surge.remedy", seconds=f"{slow_s:.1f}"), {"pipeline.stop_time_s": slow_s}


def _profile(basis: Basis, found: Pressures) -> list[Verdict]:
    pipeline, route = basis.scenario.pipeline, found.route
    why, source = text("check.high_points.why"), text("check.high_points.source")
    if not pipeline.profile:
        return [
            missing(
                TOPIC,
                "high_points",
                text("check.high_points.compared_open"),
                text("check.high_points.look_for"),
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
    places = listed([figure(profile[index].chainage_m) for index in sorted((tops & bare) | below)])
    remedy = text("check.high_points.remedy_below" if below else "check.high_points.remedy", places=places)
    return [
        Verdict(
            TOPIC,
            "high_points",
            text("check.high_points.compared", count=len(tops)),
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
        text("check.profile_length.compared", laid=figure(laid), chainage=figure(chainage)),
        off,
        PROFILE_TOLERANCE * chainage,
        "m",
        why=text("check.profile_length.why"),
        remedy=text("check.profile_length.remedy"),
        source=text("check.profile_length.source", share=f"{100 * PROFILE_TOLERANCE:g}"),
        beyond="caution",
    )
