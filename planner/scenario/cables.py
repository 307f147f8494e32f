"""The cables between array, AC supply, controller and motor; each run may be left out."""

from __future__ import annotations

from typing import Literal, Self

from pydantic import model_validator

from planner.scenario.fields import COMMON_PRACTICE, Model, assumed, at_odds, found, needed, optional

STANDARD_SECTIONS_MM2 = (1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0)
"""Nominal cross-sections of IEC 60228 in the range of borehole pumps."""


class CableRun(Model):
    """One run of copper cable."""

    length_m: float = needed("Length of the run, one way", "m", gt=0, le=1e5)
    section_mm2: float = found(
        "Cross-section of one conductor, a size of IEC 60228",
        "mm2",
        how="the smallest that bears the current and loses no more of the voltage than is allowed",
        ge=1.5,
        le=50,
    )
    conductor_class: Literal[2, 5] = assumed(
        2, "Class of the conductor (IEC 60228): 2 stranded, 5 flexible", source="usual fixed cable, from memory"
    )
    conductor: Literal["plain", "tinned"] = assumed(
        "plain", "Copper of the conductor; cable for PV is tinned, class 5", source="usual fixed cable, from memory"
    )
    conductor_temperature_c: float = assumed(
        70.0,
        "Working temperature of the conductor, for its resistance",
        "deg C",
        source="the highest for PVC insulation, IEC 60364-5-52",
        ge=20,
        le=90,
    )
    installation: Literal["B2", "C", "D"] = assumed(
        "B2",
        "How it is laid (IEC 60364-5-52): B2 cable in conduit, C on a wall or in free air, D in the ground",
        source="the careful choice",
        changes="nothing",
    )
    ambient_temperature_c: float | None = optional(
        "Temperature of what surrounds it",
        "deg C",
        absent="the hottest hour of the weather; in the ground, the mean of the warmest month",
        changes="nothing",
        ge=-20,
        le=65,
    )
    grouped_circuits: int = assumed(
        1,
        "Loaded circuits that lie bunched together or in one conduit, this one counted",
        source="laid by itself",
        changes="nothing",
        ge=1,
        le=20,
    )
    ampacity_a: float | None = optional(
        "Current-carrying capacity here, from its datasheet, with the ambient temperature and the grouping in it",
        "A",
        absent="IEC 60364-5-52 for PVC, with the factors for ambient temperature and grouping",
        changes="nothing",
        gt=0,
    )

    @model_validator(mode="after")
    def _standard(self) -> Self:
        if self.section_mm2 not in STANDARD_SECTIONS_MM2:
            sizes = ", ".join(f"{section:g}" for section in STANDARD_SECTIONS_MM2)
            raise at_odds(
                ("section_mm2",),
                "section_mm2 {given} is no standard size; one of {sizes}",
                {"given": self.section_mm2, "sizes": sizes},
            )
        return self


class DcCable(CableRun):
    """The run from the array to the controller."""

    voltage_class_v: float | None = optional(
        "Highest DC voltage for which the cable is made, as printed on it", "V", changes="nothing", gt=0, le=3000
    )
    outdoor: Literal["yes", "no"] | None = optional(
        "Whether it is made for sun and weather, such as cable to EN 50618 or IEC 62930", changes="nothing"
    )


class AcCable(CableRun):
    """The run from grid or generator to the controller."""

    power_factor: float = assumed(
        0.85, "Power factor of what it feeds", source=f"assumed, {COMMON_PRACTICE}", gt=0.2, le=1
    )
    protective_device_a: float | None = optional(
        "Rated current of the circuit breaker or fuse that protects it", "A", changes="nothing", gt=0, le=1000
    )
    protective_device: Literal["breaker", "gG fuse"] = assumed(
        "breaker",
        "Its kind: circuit breaker (IEC 60898) or gG fuse (IEC 60269)",
        source=COMMON_PRACTICE,
        changes="nothing",
    )


class DropCable(AcCable):
    """The run from the controller down to the motor."""

    supply: Literal["dc", "1-phase", "3-phase"] = needed("What it carries")
    voltage_v: float = needed("Voltage at its upper end at rated power", "V", gt=0, le=2000)


class Cables(Model):
    """The cables; one that is not given is reported as not given and its loss is left out."""

    dc: DcCable | None = optional(
        "Array to controller, all strings in one cable", absent="the array's loss in the DC wiring"
    )
    ac: AcCable | None = optional("Grid or generator to controller", absent="no loss counted")
    drop: DropCable | None = optional("Controller to motor", absent="no loss counted")
