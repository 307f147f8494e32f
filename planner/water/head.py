"""The head that the borehole and the pipeline ask of the pump."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.scenario.waterworks import Borehole, Pipeline
from planner.water.borehole import Drawdown, drawdown_of
from planner.water.friction import darcy_weisbach_head_m, hazen_williams_head_m, minor_head_m
from planner.water.pipes import Pipe, bore_of
from planner.water.properties import kinematic_viscosity_m2_s

Array = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class SystemHead:
    """Everything between the water in the borehole and the tank's inlet.

    Attributes
    ----------
    static_level_m : (12,) array
        Depth of the water at rest by month, below ground at the borehole.
    rise_m, residual_m : float
        Tank inlet above ground at the borehole; head to be left there.
    drawdown : Drawdown
        Drawdown law of the borehole.
    segment_names : tuple of str
        Names of the runs of pipe, from the pump to the tank.
    pipes : tuple of Pipe
        Their resolved pipes.
    length_m, fittings_k : (segments,) arrays
        Their lengths and summed loss coefficients.
    friction_method : str
        'darcy-weisbach' or 'hazen-williams'.
    viscosity_m2_s : float
        Kinematic viscosity of the water.
    crest_m : (crests,) array
        Points of the route, the ground at the borehole among them, that stand higher than the head line at the tank,
        above ground at the borehole. Mostly empty.
    crest_share : (crests, segments) array
        Share of each segment's friction lost on the way to them.
    """

    static_level_m: Array
    rise_m: float
    residual_m: float
    drawdown: Drawdown
    segment_names: tuple[str, ...]
    pipes: tuple[Pipe, ...]
    length_m: Array
    fittings_k: Array
    friction_method: str
    viscosity_m2_s: float
    crest_m: Array
    crest_share: Array

    def static_m(self) -> Array:
        """Static lift by month, from the water at rest to the tank's inlet [m], shape (12,)."""
        return self.static_level_m + self.rise_m

    def segment_friction_m(self, flow_m3h: ArrayLike) -> tuple[Array, Array]:
        """Head lost in each segment's pipe and in its fittings [m], each of shape (segments, *flow.shape)."""
        flow = np.asarray(flow_m3h, dtype=float) / 3600
        diameter, roughness, coefficient, length, fittings = (
            values.reshape(-1, *[1] * flow.ndim)
            for values in (
                np.array([pipe.inner_diameter_m for pipe in self.pipes]),
                np.array([pipe.roughness_m for pipe in self.pipes]),
                np.array([pipe.hazen_williams_c for pipe in self.pipes]),
                self.length_m,
                self.fittings_k,
            )
        )
        if self.friction_method == "hazen-williams":
            pipe_m = hazen_williams_head_m(flow, length, diameter, coefficient)
        else:
            pipe_m = darcy_weisbach_head_m(flow, length, diameter, roughness, self.viscosity_m2_s)
        return pipe_m, minor_head_m(flow, diameter, fittings)

    def friction_m(self, flow_m3h: ArrayLike) -> Array:
        """Head lost to friction and fittings from the pump to the tank [m], of the flow's shape."""
        pipe_m, fittings_m = self.segment_friction_m(flow_m3h)
        return np.asarray((pipe_m + fittings_m).sum(axis=0))

    def required_m(self, flow_m3h: ArrayLike, static_m: ArrayLike, drawdown_growth: ArrayLike = 1.0) -> Array:
        """Total dynamic head at a flow and a static lift [m], drawdown grown by a factor; the three broadcast.

        Static lift + drawdown + friction + residual head. Where a point of the route stands so high that the pressure
        there would fall below that of the air, the head that just carries the water over it: air gets in there, so
        the fall behind it is not counted as help.
        """
        pipe_m, fittings_m = self.segment_friction_m(flow_m3h)
        friction = pipe_m + fittings_m
        above = np.asarray(friction.sum(axis=0) + self.residual_m)
        if self.crest_m.size:
            to_crest = np.tensordot(self.crest_share, friction, axes=1)
            over = self.crest_m.reshape(-1, *[1] * (to_crest.ndim - 1)) - self.rise_m + to_crest
            above = np.maximum(above, over.max(axis=0))
        return np.asarray(np.asarray(static_m) + np.asarray(drawdown_growth) * self.drawdown.at(flow_m3h) + above)

    def total_m(self, flow_m3h: ArrayLike, month: ArrayLike) -> Array:
        """Total dynamic head at a flow in a month (0 to 11) [m]; the two broadcast."""
        return self.required_m(flow_m3h, self.static_m()[np.asarray(month)])


def system_head(borehole: Borehole, pipeline: Pipeline) -> SystemHead:
    """Gather the head that a borehole and its pipeline ask of the pump.

    The length of pipe from the pump to the ground is taken as the depth of the pump, and the rest of the pipe as the
    route whose profile may be given.

    Raises
    ------
    ValueError
        If a segment names a pipe that the tables do not have.
    """
    level = borehole.static_level_by_month_m or [borehole.static_level_m] * 12
    length = np.array([segment.length_m for segment in pipeline.segments])
    rise, residual = pipeline.rise_to_tank_inlet_m, pipeline.residual_head_m

    crest = np.array([0.0, *(point.level_m for point in pipeline.profile)])
    along = borehole.pump_depth_m + np.array([0.0, *(point.chainage_m for point in pipeline.profile)])
    high = crest > rise + residual
    ends = np.cumsum(length)
    share = np.clip((along[high, np.newaxis] - (ends - length)) / length, 0, 1)

    return SystemHead(
        static_level_m=np.array(level, dtype=float),
        rise_m=rise,
        residual_m=residual,
        drawdown=drawdown_of(borehole),
        segment_names=tuple(segment.name for segment in pipeline.segments),
        pipes=tuple(bore_of(segment) for segment in pipeline.segments),
        length_m=length,
        fittings_k=np.array([segment.fittings_k for segment in pipeline.segments]),
        friction_method=pipeline.friction,
        viscosity_m2_s=float(kinematic_viscosity_m2_s(borehole.water_temperature_c)),
        crest_m=crest[high],
        crest_share=share,
    )
