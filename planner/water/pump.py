"""The pump and its motor: what flow, head and speed go together, and what power they take.

A pump is described at rated speed, from its nameplate alone or from points of its datasheet, and carried to other
speeds by the affinity laws (centrifugal) or by displacement and slip (helical rotor). Wear is not a factor on the
flow but a leak inside the pump: across the worn rings of a centrifugal pump, between rotor and stator of a helical one.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from scipy.interpolate import PchipInterpolator

from planner.scenario.waterworks import Pump
from planner.water.motor import Motor
from planner.water.properties import GRAVITY_M_S2
from planner.water.root import rising_root

Array = NDArray[np.float64]
Curve = Callable[[Array], Array]

SHUT_OFF_POWER_SHARE = 0.6
"""Input at no flow over input at rated flow, centrifugal pump: assumed, common practice, no source."""
NO_HEAD_TORQUE_SHARE = 0.15
"""Torque at no head over torque at rated head, helical rotor: assumed, common practice, no source."""
BEST_PUMP_EFFICIENCY = 0.8
"""Where the curves are our own, the pump end is taken as no more efficient: assumed, common practice, no source."""
_LOWEST_SPEED = 0.01


def hydraulic_power_w(flow_m3h: ArrayLike, head_m: ArrayLike, density_kg_m3: float = 1000.0) -> Array:
    """Power that the water takes, density * g * flow * head [W]; flow and head broadcast."""
    return np.asarray(density_kg_m3 * GRAVITY_M_S2 / 3600 * np.asarray(flow_m3h) * np.asarray(head_m))


class ImplausiblePump(ValueError):
    """The figures given for a pump contradict one another; the message says which and where."""


@dataclass(frozen=True, eq=False)
class PumpModel(ABC):
    """A pump with its motor.

    Speeds are shares of the rated speed, flows in m3/h, heads in m. `wear` is the share of the rated flow that is lost
    at the rated head and rated speed, nil for a new pump. Arguments broadcast.

    Attributes
    ----------
    max_flow_m3h, max_head_m : float
        Flow at no head and head at no flow of the new pump, both at rated speed.
    rated_flow_m3h, rated_head_m : float
        The plate's rated point, at which wear is given.
    min_speed : float
        Lowest speed over rated speed.
    motor : Motor
        The motor.
    best_efficiency : float
        Bound of the pump end's efficiency, above every given point.
    """

    max_flow_m3h: float
    max_head_m: float
    rated_flow_m3h: float
    rated_head_m: float
    min_speed: float
    motor: Motor
    best_efficiency: float

    @abstractmethod
    def leak_m3h(self, head_m: Array, wear: ArrayLike) -> Array:
        """Flow that wear lets back inside the pump at a head [m3/h]."""

    @abstractmethod
    def surplus(self, flow_m3h: Array, head_m: Array, speed: Array, wear: ArrayLike = 0.0) -> Array:
        """Measure how far flow and head stay within reach of the pump at a speed.

        Nil on the pump's curve, positive below it; falls with flow, head and wear, rises with speed. Only its sign and
        its zero matter.
        """

    @abstractmethod
    def shaft_power_w(self, flow_m3h: Array, head_m: Array, speed: Array, wear: ArrayLike = 0.0) -> Array:
        """Shaft power at a point of the pump's curve at some speed [W]."""

    def head_m(self, flow_m3h: ArrayLike, speed: ArrayLike, wear: ArrayLike = 0.0) -> Array:
        """Head that the pump gives at a flow and a speed [m]; nil where the flow is out of reach."""
        return rising_root(
            lambda head, flow, turn, worn: -self.surplus(flow, head, turn, worn),
            0.0,
            self.max_head_m,
            flow_m3h,
            speed,
            wear,
        )

    def speed_for(self, flow_m3h: ArrayLike, head_m: ArrayLike, wear: ArrayLike = 0.0) -> Array:
        """Speed at which the pump gives a flow at a head; 1 where that is out of reach."""
        return rising_root(
            lambda turn, flow, head, worn: self.surplus(flow, head, turn, worn),
            _LOWEST_SPEED,
            1.0,
            flow_m3h,
            head_m,
            wear,
        )

    def shaft_w(self, flow_m3h: ArrayLike, head_m: ArrayLike, speed: ArrayLike, wear: ArrayLike = 0.0) -> Array:
        """Shaft power at a point of the pump's curve [W], never less than the best pump end would take there."""
        flow, head, turn = (np.asarray(value, dtype=float) for value in (flow_m3h, head_m, speed))
        least_w = hydraulic_power_w(flow + self.leak_m3h(head, wear), head) / self.best_efficiency
        return np.maximum(self.shaft_power_w(flow, head, turn, wear), least_w)

    def input_power_w(self, flow_m3h: ArrayLike, head_m: ArrayLike, speed: ArrayLike, wear: ArrayLike = 0.0) -> Array:
        """Electrical input of the motor at a point of the pump's curve at some speed [W]."""
        return self.motor.input_w(self.shaft_w(flow_m3h, head_m, speed, wear), speed)


@dataclass(frozen=True, eq=False)
class CentrifugalPump(PumpModel):
    """A centrifugal pump: flow goes with the speed, head with its square, shaft power with its cube.

    Affinity laws: US DOE-HDBK-1012/3-92, Fluid Flow, HT-03. Wear: the rings let back w Qb sqrt(H/Hb), Qb and Hb the
    rated point, and the shaft takes what the impeller's flow asks (Guelich, Centrifugal Pumps, chapters 3 and 9, from
    memory).
    """

    head_of_flow: Curve
    shaft_of_flow: Curve

    def leak_m3h(self, head_m: Array, wear: ArrayLike) -> Array:
        """See `PumpModel.leak_m3h`."""
        return np.asarray(np.asarray(wear) * self.rated_flow_m3h * np.sqrt(np.maximum(head_m, 0) / self.rated_head_m))

    def surplus(self, flow_m3h: Array, head_m: Array, speed: Array, wear: ArrayLike = 0.0) -> Array:
        """See `PumpModel.surplus`; here a head [m]."""
        impeller = flow_m3h + self.leak_m3h(head_m, wear)
        return np.asarray(speed**2 * self.head_of_flow(impeller / speed) - head_m)

    def shaft_power_w(self, flow_m3h: Array, head_m: Array, speed: Array, wear: ArrayLike = 0.0) -> Array:
        """See `PumpModel.shaft_power_w`."""
        impeller = flow_m3h + self.leak_m3h(head_m, wear)
        return np.asarray(speed**3 * self.shaft_of_flow(impeller / speed))


@dataclass(frozen=True, eq=False)
class HelicalRotorPump(PumpModel):
    """A helical rotor pump: flow goes with the speed less a slip that the head causes; torque goes with the head.

    Wear makes the slip grow in proportion, so that it costs more flow the higher the head, and none of the torque
    (mechanism: SPE 37455, 1997, abstract; the proportion is assumed).
    """

    slip_of_head: Curve
    shaft_of_head: Curve

    def leak_m3h(self, head_m: Array, wear: ArrayLike) -> Array:
        """See `PumpModel.leak_m3h`."""
        rated_slip = float(self.slip_of_head(np.array(self.rated_head_m)))
        return np.asarray(
            np.asarray(wear) * self.rated_flow_m3h / rated_slip * self.slip_of_head(np.maximum(head_m, 0))
        )

    def surplus(self, flow_m3h: Array, head_m: Array, speed: Array, wear: ArrayLike = 0.0) -> Array:
        """See `PumpModel.surplus`; here a flow [m3/h]."""
        lost = self.slip_of_head(np.maximum(head_m, 0)) + self.leak_m3h(head_m, wear)
        return np.asarray(speed * self.max_flow_m3h - lost - flow_m3h)

    def shaft_power_w(self, flow_m3h: Array, head_m: Array, speed: Array, wear: ArrayLike = 0.0) -> Array:
        """See `PumpModel.shaft_power_w`."""
        return np.asarray(speed * self.shaft_of_head(np.maximum(head_m, 0)))


def _through(x: Array, y: Array) -> Curve:
    """Monotone cubic through points (Fritsch and Carlson 1980), straight on beyond the ends by the outermost chords."""
    inside = PchipInterpolator(x, y)
    first, last = (y[1] - y[0]) / (x[1] - x[0]), (y[-1] - y[-2]) / (x[-1] - x[-2])

    def curve(at: Array) -> Array:
        held = np.clip(at, x[0], x[-1])
        return np.asarray(inside(held) + first * np.minimum(at - x[0], 0) + last * np.maximum(at - x[-1], 0))

    return curve


def _datasheet(pump: Pump) -> tuple[Array, Array, Array]:
    """Flow, head and input power of the datasheet's points, carried to no flow and to no head by the nameplate.

    The power is held beyond the outermost points.
    """
    flow = [point.flow_m3h for point in pump.curve]
    head = [point.head_m for point in pump.curve]
    power = [point.power_w for point in pump.curve]
    if flow[0] > 0:
        if pump.max_head_m <= head[0]:
            raise ImplausiblePump(
                f"pump '{pump.name}': max_head_m {pump.max_head_m:g} (at no flow) is not above the first point of the "
                f"curve ({flow[0]:g} m3/h at {head[0]:g} m)"
            )
        flow, head, power = [0.0, *flow], [pump.max_head_m, *head], [power[0], *power]
    if head[-1] > 0:
        if pump.max_flow_m3h <= flow[-1]:
            raise ImplausiblePump(
                f"pump '{pump.name}': max_flow_m3h {pump.max_flow_m3h:g} (at no head) is not above the last point of "
                f"the curve ({flow[-1]:g} m3/h at {head[-1]:g} m)"
            )
        flow, head, power = [*flow, pump.max_flow_m3h], [*head, 0.0], [*power, power[-1]]
    return np.array(flow), np.array(head), np.array(power)


def _centrifugal(pump: Pump, motor: Motor, best_efficiency: float) -> CentrifugalPump:
    if pump.curve:
        flow, head, power = _datasheet(pump)
        power_of_flow = _through(flow, power)
        return CentrifugalPump(
            max_flow_m3h=float(flow[-1]),
            max_head_m=float(head[0]),
            rated_flow_m3h=pump.rated_flow_m3h,
            rated_head_m=pump.rated_head_m,
            min_speed=pump.speed_min_percent / 100,
            motor=motor,
            best_efficiency=best_efficiency,
            head_of_flow=_through(flow, head),
            # the power is held beyond no head too: only the search for a speed looks there
            shaft_of_flow=lambda at: motor.shaft_w(power_of_flow(np.clip(at, 0, flow[-1]))),
        )
    exponent = np.log(1 - pump.rated_head_m / pump.max_head_m) / np.log(pump.rated_flow_m3h / pump.max_flow_m3h)

    def head_of_flow(at: Array) -> Array:
        return np.asarray(pump.max_head_m * (1 - (at / pump.max_flow_m3h) ** exponent))

    def shaft_of_flow(at: Array) -> Array:
        load = np.minimum(at / pump.rated_flow_m3h, 1)
        share = SHUT_OFF_POWER_SHARE + (1 - SHUT_OFF_POWER_SHARE) * (2 * load - load**2)
        return motor.shaft_w(pump.rated_power_w * share)

    return CentrifugalPump(
        max_flow_m3h=pump.max_flow_m3h,
        max_head_m=pump.max_head_m,
        rated_flow_m3h=pump.rated_flow_m3h,
        rated_head_m=pump.rated_head_m,
        min_speed=pump.speed_min_percent / 100,
        motor=motor,
        best_efficiency=best_efficiency,
        head_of_flow=head_of_flow,
        shaft_of_flow=shaft_of_flow,
    )


def _helical_rotor(pump: Pump, motor: Motor, best_efficiency: float) -> HelicalRotorPump:
    if pump.curve:
        flow, head, _ = _datasheet(pump)
        # torque goes straight with the head, so the shaft power goes straight on beyond the datasheet's points
        shaft = _through(
            np.array([point.head_m for point in reversed(pump.curve)]),
            motor.shaft_w([point.power_w for point in reversed(pump.curve)]),
        )
        least_w = NO_HEAD_TORQUE_SHARE * motor.rated_shaft_w
        return HelicalRotorPump(
            max_flow_m3h=float(flow[-1]),
            max_head_m=float(head[0]),
            rated_flow_m3h=pump.rated_flow_m3h,
            rated_head_m=pump.rated_head_m,
            min_speed=pump.speed_min_percent / 100,
            motor=motor,
            best_efficiency=best_efficiency,
            slip_of_head=_through(head[::-1], flow[-1] - flow[::-1]),
            shaft_of_head=lambda at: np.maximum(shaft(at), least_w),
        )
    exponent = np.log(1 - pump.rated_flow_m3h / pump.max_flow_m3h) / np.log(pump.rated_head_m / pump.max_head_m)

    def slip_of_head(at: Array) -> Array:
        return np.asarray(pump.max_flow_m3h * (at / pump.max_head_m) ** exponent)

    def shaft_of_head(at: Array) -> Array:
        share = NO_HEAD_TORQUE_SHARE + (1 - NO_HEAD_TORQUE_SHARE) * at / pump.rated_head_m
        return np.asarray(motor.rated_shaft_w * share)

    return HelicalRotorPump(
        max_flow_m3h=pump.max_flow_m3h,
        max_head_m=pump.max_head_m,
        rated_flow_m3h=pump.rated_flow_m3h,
        rated_head_m=pump.rated_head_m,
        min_speed=pump.speed_min_percent / 100,
        motor=motor,
        best_efficiency=best_efficiency,
        slip_of_head=slip_of_head,
        shaft_of_head=shaft_of_head,
    )


def pump_model(pump: Pump) -> PumpModel:
    """Describe a pump by its datasheet points where given, else by the three points of its nameplate.

    Centrifugal, nameplate: H = Hmax (1 - (Q/Qmax)^n) with n from the rated point; motor input rising from 0.6 of the
    rated at no flow by a parabola to the rated at rated flow, and level beyond. Helical rotor, nameplate: slip
    Qmax (H/Hmax)^m with m from the rated point; torque straight in head from 0.15 of the rated at no head. The forms
    are our own: they pass through the plate's three points. Datasheet: monotone cubics through its points, carried to
    the plate's largest head at no flow and largest flow at no head. Between and beyond the given points the pump end is
    taken as no more than 80 % efficient, or as its best given point where that is better.

    Raises
    ------
    ImplausiblePump
        If plate and datasheet contradict one another, or the pump would give more power than its shaft takes.
    """
    motor = Motor(pump.rated_power_w, pump.motor_efficiency_percent / 100)
    points = [(point.flow_m3h, point.head_m, point.power_w) for point in pump.curve] or [
        (pump.rated_flow_m3h, pump.rated_head_m, pump.rated_power_w)
    ]
    best_efficiency = BEST_PUMP_EFFICIENCY
    for flow, head, power in points:
        hydraulic_w, shaft_w = float(hydraulic_power_w(flow, head)), float(motor.shaft_w(power))
        if hydraulic_w > shaft_w:
            raise ImplausiblePump(
                f"pump '{pump.name}' would be more than 100 % efficient: at {flow:g} m3/h and {head:g} m the water "
                f"takes {hydraulic_w:.0f} W, but of {power:g} W the shaft gets {shaft_w:.0f} W; check its power, flow, "
                f"head and motor_efficiency_percent"
            )
        if shaft_w > 0:
            best_efficiency = max(best_efficiency, hydraulic_w / shaft_w)
    build = _centrifugal if pump.kind == "centrifugal" else _helical_rotor
    return build(pump, motor, best_efficiency)
