"""Where pump and system meet: the flow that a given power gives at this site."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.scenario.waterworks import Borehole, Pipeline, Pump
from planner.water.head import SystemHead, system_head
from planner.water.properties import water_density_kg_m3
from planner.water.pump import PumpModel, hydraulic_power_w, pump_model, rising_root

Array = NDArray[np.float64]
Limit = Literal["rated speed", "safe yield", "power limit"]
LIMITS: tuple[Limit, ...] = ("rated speed", "safe yield", "power limit")

MONTH_NAMES = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)
TABLE_POINTS = 40


class CannotLift(ValueError):
    """The pump's head at no flow and rated speed does not reach the tank.

    Attributes
    ----------
    shortfall_m : float
        Head that is missing.
    month : int or None
        The worst month, 0 to 11; None for the yearly mean level.
    static_head_m, max_head_m : float
        Head asked for at no flow (static lift and residual head), and the pump's largest.
    """

    def __init__(self, static_head_m: float, max_head_m: float, month: int | None) -> None:
        self.shortfall_m = static_head_m - max_head_m
        self.month = month
        self.static_head_m = static_head_m
        self.max_head_m = max_head_m
        when = "at the yearly mean level" if month is None else f"in {MONTH_NAMES[month]}"
        super().__init__(
            f"the pump cannot lift the water to the tank {when}: at no flow {static_head_m:.1f} m are needed (static "
            f"lift and residual head), the pump gives at most {max_head_m:.1f} m; {self.shortfall_m:.1f} m are missing"
        )


class CannotStart(ValueError):
    """The power limit is below the power at which the pump starts to deliver.

    Attributes
    ----------
    power_limit_w, start_power_w : float
        The limit, and the motor input that is needed in the worst month.
    month : int or None
        That month, 0 to 11; None for the yearly mean level.
    """

    def __init__(self, power_limit_w: float, start_power_w: float, month: int | None) -> None:
        self.power_limit_w = power_limit_w
        self.start_power_w = start_power_w
        self.month = month
        when = "at the yearly mean level" if month is None else f"in {MONTH_NAMES[month]}"
        super().__init__(
            f"the power limit of {power_limit_w:.0f} W is below the {start_power_w:.0f} W at which the pump starts to "
            f"deliver {when}"
        )


@dataclass(frozen=True, eq=False)
class FlowTable:
    """What flow a motor input gives at this site, month by month.

    Attributes
    ----------
    power_w, flow_m3h : (12, points) arrays
        Motor input and flow, both rising, from starting power to full power.
    start_power_w, full_power_w, full_flow_m3h : (12,) arrays
        Input at which water begins to arrive; input and flow at full speed, or at the reduced speed where the safe
        yield or the power limit binds.
    limited_by : tuple of str
        What binds at full power in each month: 'rated speed', 'safe yield' or 'power limit'.
    """

    power_w: Array
    flow_m3h: Array
    start_power_w: Array
    full_power_w: Array
    full_flow_m3h: Array
    limited_by: tuple[Limit, ...]

    def flow_at(self, power_w: ArrayLike, month: ArrayLike) -> Array:
        """Flow that an available motor input gives [m3/h]; nil below starting power, level above full power.

        Parameters
        ----------
        power_w : array_like
            Motor input available [W], shape (hours,) or (hours, columns).
        month : array_like
            Month of each hour, 0 to 11, shape (hours,).
        """
        power, month = np.asarray(power_w, dtype=float), np.asarray(month)
        flow = np.empty_like(power)
        for number in range(12):
            hours = month == number
            if hours.any():
                flow[hours] = np.interp(power[hours], self.power_w[number], self.flow_m3h[number], left=0.0)
        return flow

    def power_used(self, power_w: ArrayLike, month: ArrayLike) -> Array:
        """What the pump takes of an available motor input [W]; arguments as for `flow_at`."""
        power, month = np.asarray(power_w, dtype=float), np.asarray(month)
        by_hour = (slice(None), *[np.newaxis] * (power.ndim - month.ndim))
        start, full = self.start_power_w[month][by_hour], self.full_power_w[month][by_hour]
        return np.where(power < start, 0.0, np.minimum(power, full))


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


@dataclass(frozen=True, eq=False)
class _Range:
    """Flows between which the pump can work at each static lift, and what sets the upper one (index of LIMITS)."""

    start_m3h: Array
    full_m3h: Array
    limit: NDArray[np.int64]


def _work(system: SystemHead, model: PumpModel, flow_m3h: Array, static_m: Array) -> tuple[Array, Array, Array]:
    """Head of the pump, its speed and its motor input where it gives a flow against a static lift.

    Where that would need less than the lowest speed, a valve throttles the pump at its lowest speed.
    """
    head = system.required_m(flow_m3h, static_m)
    speed = model.speed_for(flow_m3h, head)
    throttled = speed < model.min_speed * (1 - 1e-9)
    if throttled.any():
        speed = np.where(throttled, model.min_speed, speed)
        head = np.where(throttled, model.head_m(flow_m3h, speed), head)
    return head, speed, model.input_power_w(flow_m3h, head, speed)


def _flow_at_speed(system: SystemHead, model: PumpModel, static_m: Array, speed: float) -> Array:
    return rising_root(
        lambda flow, static, turn: -model.surplus(flow, system.required_m(flow, static), turn),
        0.0,
        speed * model.max_flow_m3h,
        static_m,
        speed,
    )


def _working_range(
    system: SystemHead,
    model: PumpModel,
    static_m: Array,
    month_of: list[int | None],
    safe_yield_m3h: float,
    power_limit_w: float | None,
) -> _Range:
    """Find the working range at each static lift; `month_of` names the month of each for the errors."""
    at_rest = system.required_m(np.zeros_like(static_m), static_m)
    worst = int(at_rest.argmax())
    if at_rest[worst] >= model.max_head_m:
        raise CannotLift(float(at_rest[worst]), model.max_head_m, month_of[worst])

    full = _flow_at_speed(system, model, static_m, 1.0)
    limit = np.where(full > safe_yield_m3h, 1, 0)
    full = np.minimum(full, safe_yield_m3h)
    start = np.minimum(_flow_at_speed(system, model, static_m, model.min_speed), full)
    if power_limit_w is None:
        return _Range(start, full, limit)

    over = _work(system, model, full, static_m)[2] > power_limit_w * (1 + 1e-9)
    if over.any():
        start_power = _work(system, model, start, static_m)[2]
        worst = int(start_power.argmax())
        if start_power[worst] > power_limit_w:
            raise CannotStart(power_limit_w, float(start_power[worst]), month_of[worst])
        held = rising_root(
            lambda flow, static: _work(system, model, flow, static)[2] - power_limit_w,
            start[over],
            full[over],
            static_m[over],
        )
        full[over] = held
        limit = np.where(over, 2, limit)
    return _Range(start, full, limit)


def flow_table(borehole: Borehole, pipeline: Pipeline, pump: Pump, power_limit_w: float | None = None) -> FlowTable:
    """Solve, for each month, the flow that every motor input gives at this site.

    Parameters
    ----------
    borehole, pipeline, pump
        The waterworks of the scenario.
    power_limit_w : float, optional
        Largest motor input that the controller can give [W].

    Raises
    ------
    CannotLift
        If the pump's largest head does not exceed static lift and residual head in some month.
    CannotStart
        If the power limit is below the starting power in some month.
    ImplausiblePump
        If the pump's figures contradict one another.
    """
    system, model = system_head(borehole, pipeline), pump_model(pump)
    static, first, month_level = np.unique(system.static_m(), return_index=True, return_inverse=True)
    reach = _working_range(
        system, model, static, [int(month) for month in first], borehole.safe_yield_m3h, power_limit_w
    )
    flow = np.linspace(reach.start_m3h, reach.full_m3h, TABLE_POINTS, axis=1)
    power = _work(system, model, flow, static[:, np.newaxis])[2]
    power = np.maximum.accumulate(power, axis=1)  # a datasheet whose power falls with flow could bend it back
    power, flow = power[month_level], flow[month_level]
    return FlowTable(
        power_w=power,
        flow_m3h=flow,
        start_power_w=power[:, 0],
        full_power_w=power[:, -1],
        full_flow_m3h=flow[:, -1],
        limited_by=tuple(LIMITS[index] for index in reach.limit[month_level]),
    )


def _static_m(system: SystemHead, month: int | None) -> float:
    return float(system.static_m().mean() if month is None else system.static_m()[month])


def duty_point(
    borehole: Borehole,
    pipeline: Pipeline,
    pump: Pump,
    power_limit_w: float | None = None,
    month: int | None = None,
) -> Duty:
    """Solve the duty point at full speed, or at the speed to which safe yield or power limit hold the pump.

    Parameters
    ----------
    borehole, pipeline, pump, power_limit_w
        As for `flow_table`.
    month : int, optional
        Month, 0 to 11; without it the water stands at the mean of the monthly levels.

    Raises
    ------
    CannotLift, CannotStart, ImplausiblePump
        As `flow_table`, for the one level.
    """
    system, model = system_head(borehole, pipeline), pump_model(pump)
    static = np.array([_static_m(system, month)])
    reach = _working_range(system, model, static, [month], borehole.safe_yield_m3h, power_limit_w)
    head, speed, power = (float(value[0]) for value in _work(system, model, reach.full_m3h, static))
    flow = float(reach.full_m3h[0])
    drawdown, friction = float(system.drawdown.at(flow)), float(system.friction_m(flow))
    hydraulic = float(hydraulic_power_w(flow, head, float(water_density_kg_m3(borehole.water_temperature_c))))
    return Duty(
        flow_m3h=flow,
        total_head_m=head,
        static_head_m=float(static[0]),
        drawdown_m=drawdown,
        friction_m=friction,
        residual_head_m=system.residual_m,
        other_head_m=head - float(static[0]) - drawdown - friction - system.residual_m,
        input_power_w=power,
        speed_percent=100 * speed,
        hydraulic_power_w=hydraulic,
        efficiency_percent=100 * hydraulic / power,
        limited_by=LIMITS[int(reach.limit[0])],
        shut_off_head_m=model.max_head_m,
    )


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
