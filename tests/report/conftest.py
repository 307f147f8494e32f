"""Studies and their workbooks, each made once. Place, people, pump and prices are invented."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from pathlib import Path
from typing import Any

import openpyxl
import pytest

from planner.answers.cautions import cautions
from planner.answers.of_study import study_verdicts
from planner.report.run_workbook import write_workbook
from planner.study.compare import Study
from tests.study.scenarios import studied

# Few years, to be quick; every kind of text, tariff, override and price that a sheet treats in a way of its own.
RICH: dict[str, Any] = {
    "name": "=1+1 & 'Söhne' <invented>",
    "question": "@which supply?",
    "site__place": "+place \u0007 invented",
    "finance__analysis_period_years": 4,
    "finance__prices": "nominal",
    "finance__inflation_percent": 3.0,
    "finance__discount_rate_percent": 9.0,
    "finance__grant_percent": 30.0,
    "finance__loan_percent": 40.0,
    "finance__loan_rate_percent": 7.0,
    "finance__loan_years": 3,
    "finance__water_price_per_m3": 0.4,
    "borehole__life_years": 3,
    "borehole__static_level_by_month_m": [47, 48, 49, 50, 49, 48, 47, 46, 46, 46, 47, 47],
    "sources__grid__tariff__bands": [{"name": "-Evening", "hours": [[18, 22]], "price_per_kwh": 0.4}],
    "sources__generator__life_hours": 900.0,
    "pipeline__residual_head_m": 3.0,
    "households": {"size": 6.0, "income_per_month": 90.0, "lowest_income_per_month": 30.0, "collection_percent": 80.0},
    "finance__renewal_fund_interest_percent": 1.5,
    "finance__programme_currency": "EUR",
    "finance__exchange_rate": 1.08,
    "finance__usd_prices_since_2011": 1.4,
    "costs__supervision_percent": 6.0,
    "costs__vat_percent": 16.0,
    "costs__direct_support_per_person_year": 0.7,
    "prepared_by": "=Invented author",
    "water_quality": {"arsenic_mg_l": 0.02, "iron_mg_l": 0.5, "ph": 7.0},
    "pumping_test": {"flow_m3h": 9.0, "duration_h": 24.0, "date": "=invented day"},
    "costs__items": [
        {"name": '=HYPERLINK("x")', "unit_price": 321.5, "quantity": 2.5},
        {"name": "Fence", "unit_price": 100, "sources": ["solar"]},
        {"name": "Fence", "unit_price": 100, "sources": ["solar"]},
    ],
    "overrides": {
        "solar + grid": {"tank": {"volume_m3": 30.0}, "costs": {"installation_percent": 20.0}},
        "grid": {"pump": {"rated_power_w": 2600.0}},
    },
}
PLAIN: dict[str, Any] = {"finance__analysis_period_years": 3, "service__demand_met_percent": 100.0}
ALONE: dict[str, Any] = {
    "finance__analysis_period_years": 1,
    "service__options": ["solar"],
    "sources__grid": None,
    "sources__generator": None,
    "sources__solar__strings": 1,
    "tank__volume_m3": 20.0,
    "demand__users": [
        {"kind": "volume", "name": "Nursery", "m3_per_day": [0, 45, 45, 45, 45, 45, 45, 45, 45, 45, 45, 0]},
    ],
}


@dataclass
class Written:
    """A study, the path of its workbook, and the workbook read back as formulas and as values once it is asked for."""

    study: Study
    path: Path

    @cached_property
    def formulas(self) -> Any:
        return openpyxl.load_workbook(self.path)

    @cached_property
    def values(self) -> Any:
        return openpyxl.load_workbook(self.path, data_only=True)


def write(study: Study, path: Path) -> None:
    """Write a study's workbook with its own cautions."""
    write_workbook(study, cautions(study), path, study_verdicts(study))


def _written(changes: dict[str, Any], folder: Path) -> Written:
    study, path = studied(**changes), folder / "study.xlsx"
    write(study, path)
    return Written(study, path)


@pytest.fixture(scope="session")
def rich(tmp_path_factory: pytest.TempPathFactory) -> Written:
    return _written(RICH, tmp_path_factory.mktemp("rich"))


@pytest.fixture(scope="session")
def plain(tmp_path_factory: pytest.TempPathFactory) -> Written:
    return _written(PLAIN, tmp_path_factory.mktemp("plain"))


@pytest.fixture(scope="session")
def alone(tmp_path_factory: pytest.TempPathFactory) -> Written:
    return _written(ALONE, tmp_path_factory.mktemp("alone"))


@pytest.fixture(scope="session", params=["rich", "plain", "alone"])
def written(request: pytest.FixtureRequest) -> Written:
    """Each of the workbooks in turn."""
    return request.getfixturevalue(request.param)
