"""Water quality: results of the analysis against the guideline values for drinking-water.

Values of WHO, Guidelines for drinking-water quality, 4th edition incorporating the first and second addenda, 2022: of
health, whose exceedance fails, and of what people accept or the works bear, which is a caution. National standards come
first.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from planner.checks.basis import Basis
from planner.checks.safety import people_drink
from planner.checks.verdict import Outcome, Verdict, at_least, at_most, highest, missing, room
from planner.scenario.records import WaterQuality
from planner.text import known, listed, text

TOPIC = "water"
SOLIDS_MG_L_PER_US_CM = 0.64
"""Dissolved solids by conductivity: 640 mg/L for 1 dS/m, up to 5 dS/m (water criteria of stock keeping, at second
hand)."""


@dataclass(frozen=True)
class Guideline:
    """A guideline value.

    Attributes
    ----------
    key : str
        Field of `WaterQuality`.
    limit : float
        Greatest value in the unit of the field.
    kind : str
        Of health, or of acceptance and operation.
    from_memory : bool
        Whether the value was not seen in print, at first or second hand.
    least : float or None
        Least value, where there is one.
    """

    key: str
    limit: float
    kind: Literal["health", "acceptance"]
    from_memory: bool = False
    least: float | None = None

    @property
    def name(self) -> str:
        """What is measured, inside a sentence."""
        return text(f"check.quality_{self.key}.what")

    @property
    def unit(self) -> str:
        """Unit of value and limit."""
        extra = WaterQuality.model_fields[self.key].json_schema_extra
        return str(extra.get("unit", "")) if isinstance(extra, dict) else ""

    @property
    def range(self) -> str:
        """The limits in words, '' where there is but a greatest value."""
        return "" if self.least is None else text("quality.range", low=f"{self.least:g}", high=f"{self.limit:g}")

    @property
    def source(self) -> str:
        """Where the limit comes from."""
        return text("quality.source_from_memory" if self.from_memory else "quality.source")


GUIDELINES: tuple[Guideline, ...] = (
    Guideline("e_coli_per_100ml", 0.0, "health"),
    Guideline("arsenic_mg_l", 0.01, "health"),
    Guideline("fluoride_mg_l", 1.5, "health"),
    Guideline("nitrate_mg_l", 50.0, "health"),
    Guideline("nitrite_mg_l", 3.0, "health"),
    Guideline("manganese_mg_l", 0.08, "health"),
    Guideline("lead_mg_l", 0.01, "health"),
    Guideline("uranium_mg_l", 0.03, "health"),
    Guideline("boron_mg_l", 2.4, "health", from_memory=True),
    Guideline("chromium_mg_l", 0.05, "health"),
    Guideline("cadmium_mg_l", 0.003, "health"),
    Guideline("iron_mg_l", 0.3, "acceptance", from_memory=True),
    Guideline("chloride_mg_l", 250.0, "acceptance"),
    Guideline("sulfate_mg_l", 250.0, "acceptance"),
    Guideline("sodium_mg_l", 200.0, "acceptance", from_memory=True),
    Guideline("hardness_mg_l", 200.0, "acceptance", from_memory=True),
    Guideline("dissolved_solids_mg_l", 1000.0, "acceptance"),
    Guideline("turbidity_ntu", 5.0, "acceptance"),
    Guideline("ph", 8.5, "acceptance", from_memory=True, least=6.5),
)
MINIMUM = (
    "e_coli_per_100ml", "arsenic_mg_l", "fluoride_mg_l", "nitrate_mg_l", "manganese_mg_l", "iron_mg_l",
    "chloride_mg_l", "hardness_mg_l", "dissolved_solids_mg_l", "turbidity_ntu", "ph",
)  # fmt: skip
"""What should be known of a source before it is paid for: proposed here, no standard; germs, nitrate, fluoride and
arsenic lead in WHO's advice on what to test first."""


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the analysis where people drink the water."""
    return list(_verdicts(basis.scenario.water_quality)) if people_drink(basis.scenario) else []


def result_of(found: WaterQuality | None, key: str) -> float | None:
    """Result by the key of a guideline; dissolved solids from the conductivity where they alone are missing."""
    if found is None:
        return None
    value: float | None = getattr(found, key)
    if key == "dissolved_solids_mg_l" and value is None and found.conductivity_us_cm is not None:
        return SOLIDS_MG_L_PER_US_CM * found.conductivity_us_cm
    return value


def outcome_of(guideline: Guideline, value: float | None) -> Outcome:
    """Judge one result."""
    if value is None:
        return "not given"
    if at_most(value, guideline.limit) and (guideline.least is None or at_least(value, guideline.least)):
        return "pass"
    return "fail" if guideline.kind == "health" else "caution"


def _verdicts(found: WaterQuality | None) -> Iterator[Verdict]:
    for guideline in GUIDELINES:
        value = result_of(found, guideline.key)
        if value is not None:
            yield _judged(guideline, value)
    if found is not None and found.nitrate_mg_l is not None and found.nitrite_mg_l is not None:
        yield _nitrogen(found.nitrate_mg_l, found.nitrite_mg_l)
    open_ones = [each.name for each in GUIDELINES if each.key in MINIMUM and result_of(found, each.key) is None]
    if open_ones:
        yield missing(
            TOPIC,
            "water_analysis",
            text("check.water_analysis.compared" if found is None else "check.water_analysis.compared_in_part"),
            text("check.water_analysis.look_for", names=listed(open_ones)),
            why=text("check.water_analysis.why"),
            source=text("check.water_analysis.source"),
        )


def _judged(guideline: Guideline, value: float) -> Verdict:
    outcome, own = outcome_of(guideline, value), f"quality.remedy.{guideline.key}"
    remedy = text(own if known(own) else f"quality.remedy.{guideline.kind}")
    in_range = guideline.least is not None
    return Verdict(
        TOPIC,
        f"quality_{guideline.key}",
        text("quality.compared", name=guideline.name),
        outcome,
        f"{value:g}" if in_range else value,
        guideline.range if in_range else guideline.limit,
        guideline.unit,
        "" if in_range else room(value, guideline.limit, guideline.unit),
        text(f"quality.why.{guideline.kind}"),
        "" if outcome == "pass" else remedy,
        guideline.source,
    )


def _nitrogen(nitrate: float, nitrite: float) -> Verdict:
    """Nitrate and nitrite together: the sum of each over its own guideline value."""
    limits = {each.key: each.limit for each in GUIDELINES}
    return highest(
        TOPIC,
        "quality_nitrate_and_nitrite",
        text("quality.compared_nitrogen"),
        100 * (nitrate / limits["nitrate_mg_l"] + nitrite / limits["nitrite_mg_l"]),
        100.0,
        "%",
        why=text("quality.why.health"),
        remedy=text("quality.remedy.nitrate_mg_l"),
        source=text("quality.source_from_memory"),
    )
