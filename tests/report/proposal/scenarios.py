"""Studies for proposals, each made once: of a bare visit, and of one of which all that has a key was given."""

from __future__ import annotations

import io
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

import docx

from planner.answers.cautions import plain_cautions
from planner.answers.of_study import study_verdicts
from planner.assumptions.reader import scenario_of
from planner.report.proposal.book import proposal_report
from planner.report.proposal.material import Material
from planner.report.proposal.summary import frame_of
from planner.report.word.book import word_bytes
from planner.study.compare import study_scenario
from planner.text import text

VISIT = Path("scenarios/visit.toml")
PRICES = {
    "borehole": 6500.0, "pump": 1400.0, "controller": 600.0, "pv_per_kwp": 800.0, "tank_per_m3": 160.0,
    "grid_per_kwh": 0.22,
}  # fmt: skip


def bare() -> dict[str, Any]:
    """The visit of the README, two years, from the sun alone."""
    data = tomllib.loads(VISIT.read_text(encoding="utf-8"))
    return data | {"finance": {"analysis_period_years": 2}, "service": {"options": ["solar"]}}


def priced() -> dict[str, Any]:
    """The same with the six prices of the README, which leave some works without one."""
    return bare() | {"currency": "USD", "prices": PRICES}


def whole() -> dict[str, Any]:
    """The same with every fact that a proposal asks for and that has a key. All of it invented."""
    data = priced()
    data |= {
        "prepared_by": "A. Person", "visit_date": "2026-11-02", "price_date": "2026-10-15", "revision": "B",
        "households": {
            "size": 5.0, "income_per_month": 120.0, "lowest_income_per_month": 60.0, "collection_percent": 90.0,
        },
        "pumping_test": {
            "date": "2026-09-01", "contractor": "Driller of an invented name", "flow_m3h": 2.6, "duration_h": 24.0,
            "static_level_m": 27.0, "final_level_m": 33.5, "recovery_h": 12.0, "recovery_level_m": 27.1,
        },
        "water_quality": {
            "date": "2026-09-03", "laboratory": "Invented laboratory", "e_coli_per_100ml": 0.0, "arsenic_mg_l": 0.002,
            "fluoride_mg_l": 0.9, "nitrate_mg_l": 4.0, "manganese_mg_l": 0.01, "iron_mg_l": 0.1, "chloride_mg_l": 20.0,
            "hardness_mg_l": 90.0, "dissolved_solids_mg_l": 300.0, "turbidity_ntu": 0.8, "ph": 7.1,
        },
        "costs": {
            "installation_percent": 12.0, "contingency_percent": 10.0, "supervision_percent": 5.0, "vat_percent": 16.0,
            "direct_support_per_person_year": 1.0, "yearly": [{"name": "Caretaker", "per_year": 240.0}],
        },
    }  # fmt: skip
    data["prices"] = PRICES | {"pipe_per_m": 6.0}
    data["borehole"] |= {
        "casing_inner_diameter_mm": 150.0, "screen_top_m": 70.0, "safe_yield_m3h": 2.4, "daily_limit_m3": 30.0,
    }  # fmt: skip
    data["demand"] |= {"growth_percent_per_year": 1.0, "leakage_percent": 5.0}
    data["demand"]["users"][0]["litres_per_person_day"] = 25.0
    data["pump"]["name"] = "Invented pump"
    data["pipeline"]["profile"] = [{"chainage_m": 0.0, "level_m": 0.0}, {"chainage_m": 430.0, "level_m": 30.0}]
    data["finance"] |= {
        "grant_percent": 70.0, "water_price_per_m3": 0.5, "programme_currency": "USD", "exchange_rate": 1.0,
    }  # fmt: skip
    return data


def two() -> dict[str, Any]:
    """The same between the sun and the grid, so that something may turn the answer."""
    return whole() | {"service": {"options": ["solar", "grid"]}}


@cache
def material(name: str) -> Material:
    """Study one of the scenarios above."""
    data = {"bare": bare, "priced": priced, "whole": whole, "two": two}[name]()
    study = study_scenario(scenario_of(data), VISIT.parent, with_effects=name in ("whole", "two"))
    return Material(study, study_verdicts(study), (), tuple(plain_cautions(study)))


@cache
def document(name: str) -> Any:
    """The proposal of one of them, written and read back."""
    found = material(name)
    return docx.Document(io.BytesIO(word_bytes(proposal_report(found), frame_of(found.scenario))))


@cache
def lines(name: str) -> list[str]:
    """What is to be completed in it: its highlighted paragraphs."""
    return [
        paragraph.text
        for paragraph in document(name).paragraphs
        if any(run.font.highlight_color is not None for run in paragraph.runs)
    ]


def asks(name: str, key: str) -> bool:
    """Whether a line asks for a fact, by its key; slots of its sentence may hold anything."""
    start = text(f"proposal.open.{key}", **dict.fromkeys(_SLOTS, "\0")).partition("\0")[0]
    return any(line.startswith(start) for line in lines(name))


_SLOTS = ("names", "currency", "factor", "topic")


@cache
def words(name: str) -> str:
    """Everything that a proposal says, tables included, in no order."""
    said = document(name)
    cells = [cell.text for table in said.tables for row in table.rows for cell in row.cells]
    return "\n".join([*(paragraph.text for paragraph in said.paragraphs), *cells])
