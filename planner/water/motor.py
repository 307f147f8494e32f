"""The motor: its losses by torque and speed, and so its input at any load and speed."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

Array = NDArray[np.float64]


@dataclass(frozen=True)
class LossShares:
    """Shares of a motor's loss at rated torque and speed; together 1.

    Attributes
    ----------
    copper : float
        Of the windings: goes with the square of the current, and so of the torque.
    iron : float
        Of the core: goes with speed^1.5 while voltage follows speed (hysteresis with speed, eddy currents with its
        square).
    friction : float
        Of bearings, seals and the water around the rotor: goes with the square of the speed.
    stray : float
        Stray load loss: goes with speed and the square of the torque.
    """

    copper: float
    iron: float
    friction: float
    stray: float = 0.0

    def loss(self, torque: ArrayLike, speed: ArrayLike) -> Array:
        """Loss over that at the rated point; torque and speed over their rated ones, broadcast."""
        torque, speed = np.asarray(torque, dtype=float), np.asarray(speed, dtype=float)
        return np.asarray(
            (self.copper + self.stray * speed) * torque**2 + self.iron * speed**1.5 + self.friction * speed**2
        )


SUBMERSIBLE = LossShares(copper=0.64, iron=0.24, friction=0.12)
"""Loss of a borehole motor: 0.36 without load and 0.64 by torque put the best load at rated speed at 75 %, as the US
DOE Motor Challenge fact sheet DOE/GO-10097-517 says; iron to friction 2 to 1, the middle of the shares usual in small
induction motors (core 15-25 %, friction 5-15 %), from memory. A motor with permanent magnets has less iron loss and
more friction, which changes little."""


@dataclass(frozen=True)
class Motor:
    """A motor on a drive whose voltage follows its speed, so that its current follows its torque.

    Attributes
    ----------
    rated_input_w : float
        Electrical input at rated torque and speed [W].
    rated_efficiency : float
        Efficiency there, above 0 and below 1.
    losses : LossShares
        How the loss splits.

    Notes
    -----
    Input = shaft power + rated loss * (copper T^2 + iron f^1.5 + friction f^2 + stray f T^2), T and f torque and speed
    over their rated ones: the textbook split of losses, in the terms that the seven-point interpolation of
    IEC 60034-2-3:2020 also uses (from memory). A helical rotor pump keeps its torque, and so its copper loss, when it
    turns slowly; a centrifugal pump's torque falls with the square of the speed.
    """

    rated_input_w: float
    rated_efficiency: float
    losses: LossShares = SUBMERSIBLE

    @property
    def rated_shaft_w(self) -> float:
        """Shaft power at the rated point [W]."""
        return self.rated_input_w * self.rated_efficiency

    def torque(self, shaft_w: ArrayLike, speed: ArrayLike = 1.0) -> Array:
        """Torque over the rated one at a shaft power [W] and a speed over the rated one, above 0; broadcast."""
        return np.asarray(np.asarray(shaft_w, dtype=float) / self.rated_shaft_w / np.asarray(speed, dtype=float))

    def input_w(self, shaft_w: ArrayLike, speed: ArrayLike = 1.0) -> Array:
        """Electrical input that a shaft power takes at a speed [W].

        Parameters
        ----------
        shaft_w : array_like
            Shaft power [W].
        speed : array_like
            Speed over the rated one, above 0; the two broadcast.
        """
        shaft_w = np.asarray(shaft_w, dtype=float)
        rated_loss_w = self.rated_input_w - self.rated_shaft_w
        return np.asarray(shaft_w + rated_loss_w * self.losses.loss(self.torque(shaft_w, speed), speed))

    def shaft_w(self, input_w: ArrayLike) -> Array:
        """Shaft power that an electrical input gives at rated speed [W]; nil below the loss without load."""
        together = 1 / self.rated_efficiency - 1
        constant = together * (self.losses.iron + self.losses.friction)
        varying = together * (self.losses.copper + self.losses.stray)
        spare = np.maximum(np.asarray(input_w, dtype=float) / self.rated_shaft_w - constant, 0)
        # the root of load + varying load^2 = spare in the form that does not cancel
        return np.asarray(self.rated_shaft_w * 2 * spare / (1 + np.sqrt(1 + 4 * varying * spare)))

    def efficiency_percent(self, shaft_w: ArrayLike, speed: ArrayLike = 1.0) -> Array:
        """Shaft power over electrical input [%], arguments as for `input_w`."""
        return np.asarray(100 * np.asarray(shaft_w, dtype=float) / self.input_w(shaft_w, speed))
