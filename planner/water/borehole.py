"""Drawdown of the borehole at a steady flow."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.scenario.waterworks import Borehole

Array = NDArray[np.float64]
Basis = Literal["given", "specific_capacity", "step_test", "one_flow", "linear_part", "quadratic_part"]
"""Where the coefficients come from: a step test as a whole; one in which all steps have the same flow, so that it gives
no quadratic part; one in which s/Q falls with Q, so that only the linear part was fitted; and one in which s/Q starts
below zero, so that only the quadratic part was."""


@dataclass(frozen=True)
class Drawdown:
    """Drawdown s = B Q + C Q^2 (Jacob 1947, Trans. ASCE 112:1047-1070).

    `basis` says how B and C were found.
    """

    linear_m_per_m3h: float
    quadratic_m_per_m3h2: float
    basis: Basis = "given"

    def at(self, flow_m3h: ArrayLike) -> Array:
        """Drawdown at a flow [m]."""
        flow = np.asarray(flow_m3h, dtype=float)
        return np.asarray((self.linear_m_per_m3h + self.quadratic_m_per_m3h2 * flow) * flow)

    def flow_at(self, drawdown_m: ArrayLike) -> Array:
        """Flow at a drawdown, not below 0 [m3/h]; infinite at an infinite one, and where nothing draws down."""
        drawdown = np.asarray(drawdown_m, dtype=float)
        if self.linear_m_per_m3h == self.quadratic_m_per_m3h2 == 0:
            return np.where(drawdown > 0, np.inf, 0.0)
        some = (drawdown > 0) & np.isfinite(drawdown)
        # the root of B Q + C Q^2 = s in the form that does not cancel
        held = np.where(some, drawdown, 1.0)
        root = np.sqrt(self.linear_m_per_m3h**2 + 4 * self.quadratic_m_per_m3h2 * held)
        return np.where(some, 2 * held / (self.linear_m_per_m3h + root), drawdown)

    def efficiency_percent(self, flow_m3h: ArrayLike) -> Array:
        """Share of the drawdown that the aquifer takes, B Q / (B Q + C Q^2) [%]; 100 without a quadratic part."""
        losses = self.quadratic_m_per_m3h2 * np.asarray(flow_m3h, dtype=float)
        if self.linear_m_per_m3h == 0:
            return np.where(losses > 0, 0.0, 100.0)
        return np.asarray(100 * self.linear_m_per_m3h / (self.linear_m_per_m3h + losses))


def drawdown_of(borehole: Borehole) -> Drawdown:
    """Drawdown law of a borehole, from its specific capacity or its step test.

    Notes
    -----
    Specific capacity: B = 1 / capacity, C = 0. Step test: least squares of s/Q on Q (Bierschenk 1963; Kruseman and de
    Ridder, Analysis and Evaluation of Pumping Test Data, ILRI 47, 2nd ed., chapter 14), all steps with equal weight.
    Where the line falls (C < 0) or starts below zero (B < 0), as badly scattered steps can make it, that coefficient
    is set to nil and the other fitted alone. Drawdown measured at the end of each step still holds the slow fall of
    the level with time, so C from it is on the high, careful side.
    """
    if borehole.specific_capacity_m3h_per_m is not None:
        return Drawdown(1 / borehole.specific_capacity_m3h_per_m, 0.0, "specific_capacity")
    flow = np.array([step.flow_m3h for step in borehole.step_test])
    per_flow = np.array([step.drawdown_m for step in borehole.step_test]) / flow
    if np.ptp(flow) <= 1e-9 * flow.max():
        return Drawdown(float(per_flow.mean()), 0.0, "one_flow")
    away = flow - flow.mean()
    quadratic = float(away @ per_flow / (away @ away))
    linear = float(per_flow.mean() - quadratic * flow.mean())
    if quadratic < 0:
        return Drawdown(float(per_flow.mean()), 0.0, "linear_part")
    if linear < 0:
        alone = float(flow @ per_flow / (flow @ flow))
        return Drawdown(0.0, alone, "quadratic_part")
    return Drawdown(linear, quadratic, "step_test")
