"""The array: its modules, planes, strings and losses."""

from __future__ import annotations

from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from planner.scenario.equipment import Equipment
from planner.scenario.fields import (
    COMMON_PRACTICE,
    Auto,
    Model,
    Percent,
    Percent12,
    assumed,
    at_odds,
    found,
    needed,
    optional,
)

DOBOS = "Dobos 2014, NREL/TP-6A20-62641"
"""Usual losses of an array: the report, of the United States' National Renewable Energy Laboratory, from memory."""


class Module(Equipment):
    """A PV module from its datasheet at standard test conditions."""

    power_w: float = needed("Rated power", "W", gt=0, le=2000)
    voltage_mp_v: float = needed("Voltage at the maximum power point", "V", gt=0, le=500)
    current_mp_a: float = needed("Current at the maximum power point", "A", gt=0, le=50)
    voltage_oc_v: float = needed("Open-circuit voltage", "V", gt=0, le=600)
    current_sc_a: float = needed("Short-circuit current", "A", gt=0, le=60)
    current_sc_percent_per_k: float = assumed(
        0.05,
        "Temperature coefficient of the short-circuit current",
        "%/K",
        source=f"assumed, {COMMON_PRACTICE}",
        ge=0,
        le=0.2,
    )
    voltage_oc_percent_per_k: float = needed(
        "Temperature coefficient of the open-circuit voltage (negative)", "%/K", ge=-0.6, le=-0.1
    )
    system_voltage_v: float | None = optional(
        "Highest system voltage of the module", "V", changes="nothing", gt=0, le=3000
    )
    series_fuse_max_a: float | None = optional(
        "Largest series fuse of the module", "A", changes="nothing", gt=0, le=200
    )
    life_years: float = assumed(
        25.0,
        "Service life",
        "years",
        source=f"assumed, {COMMON_PRACTICE}",
        changes="money",
        gt=0,
        le=100,
    )

    @model_validator(mode="after")
    def _consistent(self) -> Self:
        product = self.voltage_mp_v * self.current_mp_a
        if abs(product / self.power_w - 1) > 0.05:
            raise at_odds(
                ("power_w", "voltage_mp_v", "current_mp_a"),
                "power_w {power} differs by more than 5 % from voltage_mp_v x current_mp_a = {product}",
                {"power": self.power_w, "product": round(product, 1)},
            )
        if self.voltage_oc_v <= self.voltage_mp_v or self.current_sc_a <= self.current_mp_a:
            raise at_odds(
                ("voltage_oc_v", "current_sc_a", "voltage_mp_v", "current_mp_a"),
                "voltage_oc_v and current_sc_a must exceed voltage_mp_v and current_mp_a",
            )
        return self


class Plane(Model):
    """Strings of modules that face one way."""

    tilt_deg: float = needed("Tilt from the horizontal", "deg", ge=0, le=90)
    azimuth_deg: float = needed("Azimuth: direction faced, clockwise from north (180 is south)", "deg", ge=0, le=360)
    share_percent: Annotated[float, Field(gt=0, le=100)] = assumed(
        100.0, "Share of the strings on this plane", "%", source="one plane"
    )
    shading_percent: Percent = assumed(
        0.0,
        "Energy lost to the shade of trees, buildings and the horizon (one shaded cell can take a third of a module)",
        "%",
        source="no shade assumed; look at the site",
    )
    shading_by_month_percent: Percent12 | None = optional(
        "The same by month, January to December, where the low sun is shaded more",
        "%",
        absent="the same share in every month",
    )

    def shading_of_months_percent(self) -> tuple[float, ...]:
        """Loss to shade of each month."""
        return tuple(self.shading_by_month_percent or [self.shading_percent] * 12)


class Solar(Model):
    """The PV array."""

    module: Module = found("The module", how="a generic one of a common size")
    modules_in_series: int = found(
        "Modules in one string", how="what the controller's voltages and the pump's power ask for", ge=1, le=100
    )
    strings: Annotated[int, Field(ge=1, le=1000)] | Auto = assumed(
        "auto",
        "Strings in parallel, or 'auto' for the number that meets the service target at least life-cycle cost",
        source="a choice left to the planner",
    )
    strings_max: int = assumed(
        12,
        "Largest number of strings tried when strings is 'auto'",
        source="a bound of the search",
        ge=1,
        le=200,
    )
    string_fuse_a: float | None = optional(
        "Rated current of the fuses in each string", "A", absent="none", changes="nothing", gt=0, le=200
    )
    planes: list[Plane] = found(
        "Planes of the array", how="one, towards the equator, tilted by the latitude but at least 10 deg", min_length=1
    )
    soiling_percent: Percent = assumed(3.0, "Loss to dust and dirt", "%", source=COMMON_PRACTICE)
    soiling_by_month_percent: Percent12 | None = optional(
        "The same by month, January to December, where dry and rainy seasons differ",
        "%",
        absent="the same loss in every month",
    )
    soiling_percent_per_day: float | None = optional(
        "Growth of the loss to dust with each day without rain or cleaning, about 0.05 in the humid tropics, 0.2 in a "
        "dry season, 0.4 under harmattan or desert dust; with the days between cleanings, in place of a steady loss",
        "%/day",
        absent="a steady loss to dust",
        ge=0,
        le=2,
    )
    cleaning_interval_days: float | None = optional(
        "Days between cleanings, by hand or by rain, where the loss to dust is given by day", "days", gt=0, le=365
    )
    reflection: Literal["glass", "coated_glass", "none"] = assumed(
        "glass",
        "What light that falls in aslant loses at the module's glass: plain, with an anti-reflection coating, or none",
        source="De Soto, Klein and Beckman 2006, Solar Energy 80:78-88; plain glass loses most",
    )
    sky_model: Literal["perez-driesse", "haydavies"] = assumed(
        "perez-driesse",
        "Model of the sky's light on a tilted plane; Hay and Davies give 1 to 2 % less",
        source="Perez et al. 1990, Solar Energy 44:271-289, made continuous by Driesse, Jensen and Perez 2024, "
        "Solar Energy 267:112093",
    )
    mismatch_percent: Percent = assumed(2.0, "Mismatch: loss to unequal modules", "%", source=DOBOS)
    wiring_percent: Percent = assumed(2.0, "Loss in the DC wiring", "%", source=DOBOS)
    light_induced_percent: Percent = assumed(
        1.5, "Light-induced degradation: loss in the first days of light", "%", source=DOBOS
    )
    degradation_percent_per_year: float = assumed(
        0.5,
        "Loss of power per year",
        "%/year",
        source="Jordan and Kurtz 2013, Prog. Photovolt. 21:12-29, median",
        ge=0,
        le=5,
    )
    albedo: float = assumed(0.2, "Reflectance of the ground", source="usual value of open ground", ge=0, le=0.9)
    structure_price_per_module: float = assumed(
        0.0,
        "Price per module of mounting structure, wiring and installation",
        "money",
        source="no cost entered",
        changes="money",
        ge=0,
    )
    structure_life_years: float = assumed(
        25.0,
        "Service life of the mounting structure",
        "years",
        source=f"assumed, {COMMON_PRACTICE}",
        changes="money",
        gt=0,
        le=100,
    )

    @model_validator(mode="after")
    def _whole(self) -> Self:
        total = sum(plane.share_percent for plane in self.planes)
        if abs(total - 100) > 0.01:
            raise at_odds(
                ("planes",),
                "share_percent of the planes adds up to {total}, must be 100",
                {"total": round(total, 3)},
            )
        rate, days = self.soiling_percent_per_day, self.cleaning_interval_days
        if (rate is None) != (days is None):
            raise at_odds(
                ("soiling_percent_per_day", "cleaning_interval_days"),
                "give soiling_percent_per_day and cleaning_interval_days together, or neither",
            )
        if rate is not None and days is not None:
            if self.soiling_by_month_percent is not None or "soiling_percent" in self.model_fields_set:
                raise at_odds(
                    (
                        "soiling_percent",
                        "soiling_by_month_percent",
                        "soiling_percent_per_day",
                        "cleaning_interval_days",
                    ),
                    "give the loss to dust once: soiling_percent (and soiling_by_month_percent), or "
                    "soiling_percent_per_day with cleaning_interval_days",
                )
            if rate * days > 100:
                raise at_odds(
                    ("soiling_percent_per_day", "cleaning_interval_days"),
                    "soiling_percent_per_day x cleaning_interval_days is {product} %, must be at most 100 %",
                    {"product": round(rate * days, 1)},
                )
        return self

    def soiling_of_months_percent(self) -> tuple[float, ...]:
        """Loss to dust of each month; of a linear growth between cleanings, half of what it comes to."""
        if self.soiling_percent_per_day is not None and self.cleaning_interval_days is not None:
            return (self.soiling_percent_per_day * self.cleaning_interval_days / 2,) * 12
        return tuple(self.soiling_by_month_percent or [self.soiling_percent] * 12)
