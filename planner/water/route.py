"""The route of the rising main: ground, pressure lines at duty and at shut-off, and what the pipe bears."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from planner.scenario.scenario import Scenario
from planner.scenario.waterworks import Borehole, Pipeline
from planner.water.duty import CannotDraw, CannotLift, CannotStart, Duty, duty_point
from planner.water.head import SystemHead, system_head
from planner.water.pipes import Pipe
from planner.water.properties import GRAVITY_M_S2, water_density_kg_m3
from planner.water.pump import pump_model

Array = NDArray[np.float64]

_JOINT_M = 1e-6


def head_of_bar(temperature_c: float) -> float:
    """Head of water of a temperature that presses with one bar [m]."""
    return 1e5 / (float(water_density_kg_m3(temperature_c)) * GRAVITY_M_S2)


def allowed_bar(pipe: Pipe, temperature_c: float) -> float | None:
    """Pressure that a pipe bears in water of a temperature [bar]; None where its class is not known or lost."""
    factor = pipe.material.warm.share_at(temperature_c)
    if pipe.pressure_class_bar is None or factor is None:
        return None
    return pipe.pressure_class_bar * factor


@dataclass(frozen=True, eq=False)
class Route:
    """Points of the main from the pump to the tank, the ends of its runs of pipe among them.

    Attributes
    ----------
    along_m, level_m : (points,) arrays
        Length of pipe from the pump, and level above the ground at the borehole.
    start_m, end_m : (segments,) arrays
        Where each run begins and ends, along the pipe.
    borehole_m : float
        Where the pipe comes to the ground at the borehole, along the pipe.
    """

    along_m: Array
    level_m: Array
    start_m: Array
    end_m: Array
    borehole_m: float

    def within(self, segment: int) -> NDArray[np.bool_]:
        """Points that a run of pipe touches, shape (points,)."""
        after = self.along_m >= self.start_m[segment] - _JOINT_M
        return np.asarray(after & (self.along_m <= self.end_m[segment] + _JOINT_M))

    def line_m(self, at_pump_m: float, lost_m: Array) -> Array:
        """Level to which the water would rise at every point [m], shape (points,).

        Parameters
        ----------
        at_pump_m : float
            That level just above the pump.
        lost_m : (segments,) array
            Head lost in each run, spread evenly over its length.
        """
        share = np.clip((self.along_m[:, np.newaxis] - self.start_m) / (self.end_m - self.start_m), 0, 1)
        return np.asarray(at_pump_m - share @ lost_m)


def route_of(borehole: Borehole, pipeline: Pipeline) -> Route:
    """Lay out the main; without a profile it climbs evenly from the borehole to the tank."""
    length = np.array([segment.length_m for segment in pipeline.segments])
    end = np.cumsum(length)
    depth = borehole.pump_depth_m
    points = [(0.0, -depth), (depth, 0.0)]
    points += [(depth + point.chainage_m, point.level_m) for point in pipeline.profile if point.chainage_m > 0]
    points.append((max(float(end[-1]), points[-1][0]), pipeline.rise_to_tank_inlet_m))
    along, level = np.array(points).T
    joints = np.array([joint for joint in end[:-1] if not np.isclose(along, joint).any()])
    places, levels = np.concatenate([along, joints]), np.concatenate([level, np.interp(joints, along, level)])
    in_order = np.argsort(places, kind="stable")
    return Route(places[in_order], levels[in_order], end - length, end, depth)


def level_above_pump_m(duty: Duty, rise_m: float) -> float:
    """Level, above the ground at the borehole, to which the water would rise just above the pump at duty [m]."""
    return duty.total_head_m - duty.drawdown_m - (duty.static_head_m - rise_m)


def segment_loss_m(system: SystemHead, flow_m3h: float) -> Array:
    """Head lost in each run, fittings included [m], shape (segments,)."""
    pipe_m, fittings_m = system.segment_friction_m(flow_m3h)
    return np.asarray(pipe_m + fittings_m)


def high_points(pipeline: Pipeline) -> list[int]:
    """Points of the profile, ends left out, above the ground before and behind them: air gathers there."""
    level = [point.level_m for point in pipeline.profile]
    found, last_change = [], 0.0
    for index in range(1, len(level) - 1):
        rise = level[index] - level[index - 1]
        last_change = rise if rise else last_change
        if last_change > 0 and level[index + 1] < level[index]:
            found.append(index)
    return found


@dataclass(frozen=True, eq=False)
class RouteProfile:
    """The route for a chart, from the borehole to the tank; arrays of (points,), levels above ground at the borehole.

    Attributes
    ----------
    chainage_m, ground_m : array
        Along the pipe from the borehole, and level of the ground.
    duty_line_m, shut_off_line_m : array
        Level to which the water would rise at duty (NaN where the pump cannot lift it) and against a closed valve.
    allowed_line_m : array
        That level at which the pipe's pressure class, derated for temperature, is reached; NaN where it has none.
    """

    chainage_m: Array
    ground_m: Array
    duty_line_m: Array
    shut_off_line_m: Array
    allowed_line_m: Array


def route_profile(scenario: Scenario) -> RouteProfile | None:
    """Draw the route and its pressure lines in the month of the deepest water, or nothing without a profile.

    Raises
    ------
    ImplausiblePump, ValueError
        If the pump's figures contradict one another, or a pipe is in no table.
    """
    if not scenario.pipeline.profile:
        return None
    borehole, pipeline = scenario.borehole, scenario.pipeline
    system, route = system_head(borehole, pipeline), route_of(borehole, pipeline)
    shown = route.along_m >= route.borehole_m - _JOINT_M
    deepest = int(system.static_level_m.argmax())
    try:
        duty = duty_point(borehole, pipeline, scenario.pump, scenario.controller.power_limit_w, deepest)
        at_duty = route.line_m(level_above_pump_m(duty, system.rise_m), segment_loss_m(system, duty.flow_m3h))
    except (CannotLift, CannotStart, CannotDraw):
        at_duty = np.full(route.along_m.shape, np.nan)
    allowed = np.full(route.along_m.shape, np.inf)
    for number, pipe in enumerate(system.pipes):
        bears = allowed_bar(pipe, borehole.water_temperature_c)
        within = route.within(number)
        head = np.nan if bears is None else bears * head_of_bar(borehole.water_temperature_c)
        allowed[within] = np.minimum(allowed[within], head)
    shut_off = pump_model(scenario.pump).max_head_m - float(system.static_level_m.min())
    return RouteProfile(
        chainage_m=route.along_m[shown] - route.borehole_m,
        ground_m=route.level_m[shown],
        duty_line_m=at_duty[shown],
        shut_off_line_m=np.full(int(shown.sum()), shut_off),
        allowed_line_m=(route.level_m + allowed)[shown],
    )
