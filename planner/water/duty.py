"""Where pump and system meet: the flow that a given power gives at this site."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.scenario.waterworks import Borehole, Pipeline, Pump
from planner.water.ageing import Ageing, ageing_of
from planner.water.head import SystemHead, system_head
from planner.water.properties import water_density_kg_m3
from planner.water.pump import hydraulic_power_w, pump_model
from planner.water.working_range import (
    LIMITS,
    MONTH_NAMES,
    Bounds,
    CannotDraw,
    CannotLift,
    CannotStart,
    Condition,
    Limit,
    work,
    working_range,
)

Array = NDArray[np.float64]
TABLE_POINTS = 40


@dataclass(frozen=True, eq=False)
class FlowTable:
    """What flow a motor input gives at this site, by life year and month.

    The first axis is the life year; a table of one year holds for all.

    Attributes
    ----------
    power_w, flow_m3h, torque : (years, 12, points) arrays
        Motor input [W] and flow [m3/h], both rising, from starting power to full power, and the motor's torque over
        its rated one.
    start_power_w, full_power_w, full_flow_m3h : (years, 12) arrays
        Input at which water begins to arrive; input and flow at full speed, or at the reduced speed where a limit
        binds. A month in which the pump gives no water starts at an infinite power and has nil of the others.
    limited_by : tuple of str
        What binds at full power in each month of the first year, one of LIMITS.
    """

    power_w: Array
    flow_m3h: Array
    torque: Array
    start_power_w: Array
    full_power_w: Array
    full_flow_m3h: Array
    limited_by: tuple[Limit, ...]

    def flow_at(self, power_w: ArrayLike, month: ArrayLike, year: ArrayLike = 0) -> Array:
        """Flow that an available motor input gives [m3/h]; nil below starting power, level above full power.

        Parameters
        ----------
        power_w : array_like
            Motor input available [W], shape (hours,) or (hours, columns).
        month : array_like
            Month of each hour, 0 to 11, shape (hours,).
        year : array_like
            Life year of each column, from 0, shape (columns,) or one for all.
        """
        power, month = np.asarray(power_w, dtype=float), np.asarray(month)
        columns = power.reshape(month.size, -1)
        of_column = np.broadcast_to(self._rows(year), columns.shape[1:])
        groups = [(row, of_column == row) for row in np.unique(of_column)]
        flow = np.empty_like(columns)
        for number in range(12):
            hours = month == number
            if not hours.any():
                continue
            given, found = columns[hours], np.empty((int(hours.sum()), columns.shape[1]))
            for row, same in groups:
                x, y = self.power_w[row, number], self.flow_m3h[row, number]
                found[:, same] = np.interp(given[:, same], x, y, left=0.0)
            flow[hours] = found
        return flow.reshape(power.shape)

    def power_used(self, power_w: ArrayLike, month: ArrayLike, year: ArrayLike = 0) -> Array:
        """What the pump takes of an available motor input [W]; arguments as for `flow_at`."""
        power = np.asarray(power_w, dtype=float)
        columns = power.reshape(np.size(month), -1)
        start, full = (self.by_hour(values, month, year) for values in (self.start_power_w, self.full_power_w))
        return np.where(columns < start, 0.0, np.minimum(columns, full)).reshape(power.shape)

    def by_hour(self, values: Array, month: ArrayLike, year: ArrayLike) -> Array:
        """Lay values of each year and month, (years, 12), out over hours and columns, (hours, columns).

        One column stands for all where the table has one year, and one row where the hours are of one month.
        """
        rows = np.zeros(1, dtype=np.int64) if len(self.power_w) == 1 else np.atleast_1d(self._rows(year))
        month = np.asarray(month)
        month = month[:1] if (month == month[0]).all() else month
        return np.asarray(values[rows[np.newaxis, :], month[:, np.newaxis]])

    def with_loss(self, loss_w: Array) -> FlowTable:
        """Put a loss on the way to the motor, (years, 12, points) [W], on top of its input."""
        power = np.maximum.accumulate(self.power_w + loss_w, axis=2)
        start = np.where(np.isinf(self.start_power_w), self.start_power_w, power[..., 0])
        return replace(self, power_w=power, start_power_w=start, full_power_w=power[..., -1])

    def in_year(self, year: int) -> FlowTable:
        """Return the table of one life year, from 0, for all years."""
        row = int(self._rows(year))
        arrays: dict[str, Any] = {name: v[[row]] for name, v in vars(self).items() if isinstance(v, np.ndarray)}
        return replace(self, **arrays)

    def _rows(self, year: ArrayLike) -> NDArray[np.int64]:
        year = np.asarray(year, dtype=np.int64)
        return np.zeros_like(year) if len(self.power_w) == 1 else year


@dataclass(frozen=True)
class Duty:
    """The duty point; `other_head_m` is what the four parts of the head do not explain.

    That is the head to clear a high point on the way, or what a valve destroys where even the lowest speed gives more
    than the safe yield; mostly nil. `efficiency_percent` is wire to water, `shut_off_head_m` is the pump's head at no
    flow and rated speed.
    """

    flow_m3h: float
    total_head_m: float
    static_head_m: float
    drawdown_m: float
    friction_m: float
    residual_head_m: float
    other_head_m: float
    input_power_w: float
    speed_percent: float
    hydraulic_power_w: float
    efficiency_percent: float
    limited_by: Limit
    shut_off_head_m: float


@dataclass(frozen=True, eq=False)
class DutyCurves:
    """Curves for a chart: heads over a common flow axis, NaN where the pump does not reach.

    Attributes
    ----------
    flow_m3h : (points,) array
        The flow axis.
    system_head_m : (points,) array
        Total dynamic head of the site.
    speed_percent : (speeds,) array
        Speeds of the pump.
    pump_head_m : (speeds, points) array
        Head of the pump at those speeds.
    """

    flow_m3h: Array
    system_head_m: Array
    speed_percent: Array
    pump_head_m: Array


def flow_table(
    borehole: Borehole,
    pipeline: Pipeline,
    pump: Pump,
    power_limit_w: float | None = None,
    years: int = 1,
    run: NDArray[np.int64] | None = None,
) -> FlowTable:
    """Solve, for each life year and month, the flow that every motor input gives at this site.

    Parameters
    ----------
    borehole, pipeline, pump
        The waterworks of the scenario.
    power_limit_w : float, optional
        Largest motor input that the controller gives [W]; without it the pump's rated power.
    years : int
        Life years, through which the works age; the table has one year where nothing does.
    run : ndarray of int, optional
        Those of them, from 0 and rising, for which it is solved; all without it. The first counts as the first year.

    Raises
    ------
    CannotDraw
        If the water at rest does not cover the intake in some month of the first year.
    CannotLift
        If the pump's largest head does not exceed static lift and residual head in some month of the first year.
    CannotStart
        If the power limit is below the starting power in some month of the first year.
    ImplausiblePump
        If the pump's figures contradict one another.

    Notes
    -----
    A month of a later year in which the aged works give no water is no error: the pump stands still in it.
    """
    system, model = system_head(borehole, pipeline), pump_model(pump)
    aged = ageing_of(borehole, pump, years)
    if run is not None:
        aged, years = Ageing(*(each[run] for each in vars(aged).values())), run.size
    states = np.stack(
        np.broadcast_arrays(
            system.static_level_m + aged.level_fall_m[:, np.newaxis],
            aged.drawdown_growth[:, np.newaxis],
            aged.wear[:, np.newaxis],
        ),
        axis=-1,
    )
    # months that share a state share the working-out; the first of them stands in the first year if any does
    distinct, first, case = np.unique(states.reshape(-1, 3), axis=0, return_index=True, return_inverse=True)
    at = Condition(*distinct.T)
    reach = working_range(
        system,
        model,
        at,
        Bounds.of(borehole, pump, power_limit_w),
        [int(month) for month in first % 12],
        first < 12,
    )
    flow = np.linspace(reach.start_m3h, reach.full_m3h, TABLE_POINTS, axis=1)
    done = work(system, model, flow, at.by_point())
    works = reach.works[:, np.newaxis]
    # a datasheet whose power falls with flow could bend the table back
    power = np.where(works, np.maximum.accumulate(done.input_w, axis=1), 0.0)
    torque = np.where(works, done.torque, 0.0)
    case = case.reshape(years, 12)
    if (case == case[0]).all():
        case = case[:1]
    return FlowTable(
        power_w=power[case],
        flow_m3h=flow[case],
        torque=torque[case],
        start_power_w=np.where(reach.works, power[:, 0], np.inf)[case],
        full_power_w=power[case][..., -1],
        full_flow_m3h=reach.full_m3h[case],
        limited_by=tuple(LIMITS[index] for index in reach.limit[case[0]]),
    )


def _static_m(system: SystemHead, month: int | None) -> float:
    return float(system.static_m().mean() if month is None else system.static_m()[month])


def duty_point(
    borehole: Borehole,
    pipeline: Pipeline,
    pump: Pump,
    power_limit_w: float | None = None,
    month: int | None = None,
    *,
    without: Collection[Limit] = (),
) -> Duty:
    """Solve the duty point of the new works at full speed, or at the speed to which a limit holds the pump.

    Parameters
    ----------
    borehole, pipeline, pump, power_limit_w
        As for `flow_table`.
    month : int, optional
        Month, 0 to 11; without it the water stands at the mean of the monthly levels.
    without : collection of str
        Limits to leave aside, of LIMITS.

    Raises
    ------
    CannotDraw, CannotLift, CannotStart, ImplausiblePump
        As `flow_table`, for the one level.
    """
    return duty_points(borehole, pipeline, pump, power_limit_w, [month], without=without)[0]


def duty_points(
    borehole: Borehole,
    pipeline: Pipeline,
    pump: Pump,
    power_limit_w: float | None,
    months: Sequence[int | None],
    *,
    without: Collection[Limit] = (),
) -> list[Duty]:
    """Solve the duty points of several months at once; see `duty_point`."""
    system, model = system_head(borehole, pipeline), pump_model(pump)
    static = np.array([_static_m(system, month) for month in months])
    at = Condition(static - system.rise_m, np.ones(static.size), np.zeros(static.size))
    bounds = Bounds.of(borehole, pump, power_limit_w, without)
    reach = working_range(system, model, at, bounds, list(months), np.ones(static.size, dtype=bool))
    flow, done = reach.full_m3h, work(system, model, reach.full_m3h, at)
    drawdown, friction = system.drawdown.at(flow), system.friction_m(flow)
    hydraulic = hydraulic_power_w(flow, done.head_m, float(water_density_kg_m3(borehole.water_temperature_c)))
    return [
        Duty(
            flow_m3h=float(flow[case]),
            total_head_m=float(done.head_m[case]),
            static_head_m=float(static[case]),
            drawdown_m=float(drawdown[case]),
            friction_m=float(friction[case]),
            residual_head_m=system.residual_m,
            other_head_m=float(done.head_m[case] - static[case] - drawdown[case] - friction[case] - system.residual_m),
            input_power_w=float(done.input_w[case]),
            speed_percent=float(100 * done.speed[case]),
            hydraulic_power_w=float(hydraulic[case]),
            efficiency_percent=float(100 * hydraulic[case] / done.input_w[case]),
            limited_by=LIMITS[int(reach.limit[case])],
            shut_off_head_m=model.max_head_m,
        )
        for case in range(static.size)
    ]


def duty_at_speeds(
    borehole: Borehole,
    pipeline: Pipeline,
    pump: Pump,
    speed_percent: ArrayLike = (40, 60, 80, 100),
    month: int | None = None,
    points: int = 60,
) -> DutyCurves:
    """Draw the pump's curve at several speeds and the system curve over a common flow axis.

    Parameters
    ----------
    borehole, pipeline, pump
        The waterworks of the scenario.
    speed_percent : array_like
        Speeds, as shares of the rated speed [%], not above 100.
    month : int, optional
        As for `duty_point`.
    points : int
        Number of flows, from nil to the pump's largest.
    """
    system, model = system_head(borehole, pipeline), pump_model(pump)
    flow = np.linspace(0, model.max_flow_m3h, points)
    speeds = np.atleast_1d(np.asarray(speed_percent, dtype=float))
    turn = speeds[:, np.newaxis] / 100
    head = model.head_m(flow, turn)
    return DutyCurves(
        flow_m3h=flow,
        system_head_m=system.required_m(flow, _static_m(system, month)),
        speed_percent=speeds,
        pump_head_m=np.where(flow <= turn * model.max_flow_m3h * (1 + 1e-9), head, np.nan),
    )


__all__ = [
    "LIMITS",
    "MONTH_NAMES",
    "CannotDraw",
    "CannotLift",
    "CannotStart",
    "Duty",
    "DutyCurves",
    "FlowTable",
    "Limit",
    "duty_at_speeds",
    "duty_point",
    "duty_points",
    "flow_table",
]
