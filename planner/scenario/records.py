"""What was measured of the source: the pumping test on record and the results of the water's analysis."""

from __future__ import annotations

from typing import Self

from pydantic import model_validator

from planner.scenario.fields import Model, at_odds, needed, optional


class PumpingTest(Model):
    """The constant-rate pumping test on record; it is only checked, the drawdown is given above."""

    changes = "nothing"

    date: str | None = optional("Day of the test", min_length=1)
    contractor: str | None = optional("Who tested", min_length=1)
    flow_m3h: float = needed("Flow held through the test", "m3/h", gt=0)
    duration_h: float = needed("How long it was held", "h", gt=0, le=1000)
    static_level_m: float | None = optional("Depth of the water at rest before the test", "m", ge=0, le=1500)
    final_level_m: float | None = optional("Depth of the water at the end of the test", "m", gt=0, le=1500)
    recovery_h: float | None = optional("How long the recovery was watched", "h", ge=0, le=1000)
    recovery_level_m: float | None = optional("Depth of the water at the end of the recovery", "m", ge=0, le=1500)

    @model_validator(mode="after")
    def _levels(self) -> Self:
        rest, final, after = self.static_level_m, self.final_level_m, self.recovery_level_m
        if rest is not None and final is not None and final < rest:
            raise at_odds(
                ("final_level_m", "static_level_m"),
                "final_level_m {final} is above static_level_m {rest}: both are depths, measured downward",
                {"final": final, "rest": rest},
            )
        if final is not None and after is not None and after > final:
            raise at_odds(
                ("recovery_level_m", "final_level_m"),
                "recovery_level_m {after} is below final_level_m {final}, but the water rises in the recovery",
                {"after": after, "final": final},
            )
        return self


class WaterQuality(Model):
    """Results of the analysis of the raw water, as the laboratory or the field kit gave them."""

    changes = "nothing"

    date: str | None = optional("Day of the sample", min_length=1)
    laboratory: str | None = optional("Who analysed it", min_length=1)
    e_coli_per_100ml: float | None = optional("E. coli or thermotolerant coliforms", "per 100 mL", ge=0, le=1e9)
    arsenic_mg_l: float | None = optional("Arsenic", "mg/L", ge=0, le=1e4)
    fluoride_mg_l: float | None = optional("Fluoride", "mg/L", ge=0, le=1e4)
    nitrate_mg_l: float | None = optional("Nitrate, as NO3", "mg/L", ge=0, le=1e5)
    nitrite_mg_l: float | None = optional("Nitrite, as NO2", "mg/L", ge=0, le=1e5)
    manganese_mg_l: float | None = optional("Manganese", "mg/L", ge=0, le=1e4)
    lead_mg_l: float | None = optional("Lead", "mg/L", ge=0, le=1e4)
    uranium_mg_l: float | None = optional("Uranium", "mg/L", ge=0, le=1e4)
    boron_mg_l: float | None = optional("Boron", "mg/L", ge=0, le=1e4)
    chromium_mg_l: float | None = optional("Chromium, total", "mg/L", ge=0, le=1e4)
    cadmium_mg_l: float | None = optional("Cadmium", "mg/L", ge=0, le=1e4)
    iron_mg_l: float | None = optional("Iron", "mg/L", ge=0, le=1e4)
    chloride_mg_l: float | None = optional("Chloride", "mg/L", ge=0, le=3e5)
    sulfate_mg_l: float | None = optional("Sulfate", "mg/L", ge=0, le=3e5)
    sodium_mg_l: float | None = optional("Sodium", "mg/L", ge=0, le=3e5)
    hardness_mg_l: float | None = optional("Total hardness, as CaCO3", "mg/L", ge=0, le=1e5)
    dissolved_solids_mg_l: float | None = optional("Total dissolved solids", "mg/L", ge=0, le=4e5)
    conductivity_us_cm: float | None = optional("Electrical conductivity", "uS/cm", ge=0, le=5e5)
    turbidity_ntu: float | None = optional("Turbidity", "NTU", ge=0, le=1e5)
    ph: float | None = optional("pH", ge=0, le=14)
