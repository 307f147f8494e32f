"""Between which flows a pump can work at a site: what starts it, what holds it back, and what it cannot do."""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import dataclass
from functools import cache
from typing import Literal, NamedTuple, Self

import numpy as np
from numpy.typing import NDArray

from planner.scenario.waterworks import Borehole, Pump
from planner.water.head import SystemHead
from planner.water.pump import PumpModel
from planner.water.root import rising_root

Array = NDArray[np.float64]
Limit = Literal["rated speed", "safe yield", "power limit", "intake level"]
LIMITS: tuple[Limit, ...] = ("rated speed", "safe yield", "power limit", "intake level")

ASSUMED_SUBMERGENCE_M = 0.0
"""Water kept above the intake where the plate says nothing: assumed."""

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


def _when(month: int | None) -> str:
    return "at the yearly mean level" if month is None else f"in {MONTH_NAMES[month]}"


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
        super().__init__(
            f"the pump cannot lift the water to the tank {_when(month)}: at no flow {static_head_m:.1f} m are needed "
            f"(static lift and residual head), the pump gives at most {max_head_m:.1f} m; {self.shortfall_m:.1f} m are "
            f"missing"
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
        super().__init__(
            f"the power limit of {power_limit_w:.0f} W is below the {start_power_w:.0f} W at which the pump starts to "
            f"deliver {_when(month)}"
        )


class CannotDraw(ValueError):
    """The water at rest does not cover the pump's intake.

    Attributes
    ----------
    level_m, pump_depth_m, submergence_m : float
        Depth of the water at rest in the worst month, depth of the intake, and water asked for above it.
    month : int or None
        That month, 0 to 11; None for the yearly mean level.
    """

    def __init__(self, level_m: float, pump_depth_m: float, submergence_m: float, month: int | None) -> None:
        self.level_m = level_m
        self.pump_depth_m = pump_depth_m
        self.submergence_m = submergence_m
        self.month = month
        super().__init__(
            f"the intake at {pump_depth_m:g} m is not covered {_when(month)}: the water at rest stands at "
            f"{level_m:.1f} m and the pump needs {submergence_m:g} m of it above the intake; hang the pump deeper than "
            f"{level_m + submergence_m:.1f} m"
        )


class Condition(NamedTuple):
    """State of the works in each case, (cases,) arrays or any that broadcast with the flow.

    `level_m` is the depth of the water at rest, `drawdown_growth` the drawdown over that of the first year, `wear` the
    share of the rated flow that wear has taken.
    """

    level_m: Array
    drawdown_growth: Array
    wear: Array

    def only(self, cases: NDArray[np.bool_]) -> Condition:
        """Return some of the cases."""
        return Condition(*(values[cases] for values in self))

    def by_point(self) -> Condition:
        """Return the cases as rows, for several flows each."""
        return Condition(*(values[:, np.newaxis] for values in self))


@dataclass(frozen=True)
class Bounds:
    """What holds a pump back.

    Attributes
    ----------
    safe_yield_m3h, power_limit_w : float
        Largest flow [m3/h] and motor input [W].
    pump_depth_m, submergence_m : float
        Depth of the intake, infinite where it is left aside, and water to be kept above it [m].
    """

    safe_yield_m3h: float
    power_limit_w: float
    pump_depth_m: float
    submergence_m: float

    @classmethod
    def of(
        cls, borehole: Borehole, pump: Pump, power_limit_w: float | None = None, without: Collection[Limit] = ()
    ) -> Self:
        """Gather the bounds of a site.

        Parameters
        ----------
        borehole, pump
            The waterworks of the scenario.
        power_limit_w : float, optional
            Largest motor input that the controller gives [W]; without it the pump's rated power.
        without : collection of str
            Limits to leave aside.
        """
        limit_w = pump.rated_power_w if power_limit_w is None else power_limit_w
        submergence = pump.plate.minimum_submergence_m
        return cls(
            safe_yield_m3h=np.inf if "safe yield" in without else borehole.safe_yield_m3h,
            power_limit_w=np.inf if "power limit" in without else limit_w,
            pump_depth_m=np.inf if "intake level" in without else borehole.pump_depth_m,
            submergence_m=ASSUMED_SUBMERGENCE_M if submergence is None else submergence,
        )


class Work(NamedTuple):
    """Head of the pump [m], its speed, the motor's torque (both over the rated ones) and its input [W]."""

    head_m: Array
    speed: Array
    torque: Array
    input_w: Array


def work(system: SystemHead, model: PumpModel, flow_m3h: Array, at: Condition) -> Work:
    """Work that the pump does where it gives a flow in some state of the works; flow and state broadcast.

    Where that would need less than the lowest speed, a valve throttles the pump at its lowest speed.
    """
    head = system.required_m(flow_m3h, at.level_m + system.rise_m, at.drawdown_growth)
    speed = model.speed_for(flow_m3h, head, at.wear)
    throttled = speed < model.min_speed * (1 - 1e-9)
    if throttled.any():
        speed = np.where(throttled, model.min_speed, speed)
        head = np.where(throttled, model.head_m(flow_m3h, speed, at.wear), head)
    shaft_w = model.shaft_w(flow_m3h, head, speed, at.wear)
    return Work(head, speed, model.motor.torque(shaft_w, speed), model.motor.input_w(shaft_w, speed))


@dataclass(frozen=True, eq=False)
class WorkingRange:
    """Flows between which the pump can work in each case; (cases,) arrays.

    Attributes
    ----------
    full_m3h : array
        Largest flow [m3/h].
    limit : array of int
        What sets the largest, an index of LIMITS.
    works : array of bool
        Whether the pump gives any water.
    """

    full_m3h: Array
    limit: NDArray[np.int64]
    works: NDArray[np.bool_]
    _start_m3h: Callable[[], Array]

    @property
    def start_m3h(self) -> Array:
        """Least flow [m3/h], found only where it is asked for."""
        return np.where(self.works, self._start_m3h(), 0.0)


def working_range(
    system: SystemHead,
    model: PumpModel,
    at: Condition,
    bounds: Bounds,
    months: list[int | None],
    must_work: NDArray[np.bool_],
) -> WorkingRange:
    """Find the working range in each state of the works.

    Parameters
    ----------
    system, model
        The site and the pump.
    at : Condition
        The cases.
    bounds : Bounds
        What holds the pump back.
    months : list of int or None, (cases,)
        Month of each case, 0 to 11, None for the yearly mean; for the errors.
    must_work : array of bool, (cases,)
        Cases in which a pump that gives no water is an error; in the others it stands still.

    Raises
    ------
    CannotDraw
        If the intake is not covered, in a case that must work.
    CannotLift
        If the pump's largest head does not exceed static lift and residual head, in a case that must work.
    CannotStart
        If the power limit is below the starting power, in a case that must work.
    """

    def worst(failing: NDArray[np.bool_], by: Array) -> int | None:
        """Return the worst of the cases that fail though they must not, or None."""
        wrong = failing & must_work
        return int(np.where(wrong, by, -np.inf).argmax()) if wrong.any() else None

    def flow_at(speed: float) -> Array:
        return rising_root(
            lambda flow, level, growth, wear: (
                -model.surplus(flow, system.required_m(flow, level + system.rise_m, growth), np.array(speed), wear)
            ),
            0.0,
            speed * model.max_flow_m3h,
            *at,
        )

    cover = bounds.pump_depth_m - bounds.submergence_m - at.level_m
    dry = cover <= 0
    case = worst(dry, at.level_m)
    if case is not None:
        raise CannotDraw(float(at.level_m[case]), bounds.pump_depth_m, bounds.submergence_m, months[case])
    at_rest = system.required_m(np.zeros_like(at.level_m), at.level_m + system.rise_m)
    shut_off = np.full_like(at_rest, model.max_head_m)
    if at.wear.any():
        shut_off = np.where(at.wear > 0, model.head_m(0.0, 1.0, at.wear), shut_off)
    beyond = at_rest >= shut_off
    case = worst(beyond, at_rest)
    if case is not None:
        raise CannotLift(float(at_rest[case]), float(shut_off[case]), months[case])

    full = flow_at(1.0)
    limit = np.where(full > bounds.safe_yield_m3h, LIMITS.index("safe yield"), LIMITS.index("rated speed"))
    full = np.minimum(full, bounds.safe_yield_m3h)
    covered = system.drawdown.flow_at(np.maximum(cover, 0) / at.drawdown_growth)
    limit = np.where(full > covered, LIMITS.index("intake level"), limit)
    full = np.minimum(full, covered)
    works = ~(dry | beyond)

    @cache
    def start() -> Array:
        return np.minimum(flow_at(model.min_speed), full)

    over = works & (work(system, model, full, at).input_w > bounds.power_limit_w * (1 + 1e-9))
    if over.any():
        start_w = work(system, model, start(), at).input_w
        weak = over & (start_w > bounds.power_limit_w)
        case = worst(weak, start_w)
        if case is not None:
            raise CannotStart(bounds.power_limit_w, float(start_w[case]), months[case])
        held = over & ~weak
        if held.any():
            full[held] = rising_root(
                lambda flow, *state: work(system, model, flow, Condition(*state)).input_w - bounds.power_limit_w,
                start()[held],
                full[held],
                *at.only(held),
            )
        limit = np.where(over, LIMITS.index("power limit"), limit)
        works &= ~weak
    return WorkingRange(np.where(works, full, 0.0), limit, works, start)
