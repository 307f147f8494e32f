"""The workbook against an independent spreadsheet program: every formula true, and the answer follows its inputs.

Places, people, pumps and prices are invented.
"""

from __future__ import annotations

import copy
import re
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
import openpyxl
import pytest

from planner.assumptions.reader import check_scenario
from planner.figures import figure, figures_of
from planner.scenario.reader import read_raw
from planner.scenario.walk import walk
from planner.study.compare import Study, study_scenario
from tests.report.conftest import RICH, write
from tests.report.formulas import OFFICE, cells_with_formulas, recalculated, without_values
from tests.study.scenarios import EXAMPLES, changed_raw

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(
        OFFICE is None, reason="LibreOffice (soffice) is not installed: the formulas cannot be recalculated"
    ),
]

Rows = list[tuple[Any, ...]]
RELATIVE = 1e-6
RANDOM, EDITED = 20, 9
OPTIONS = (
    ["solar", "grid", "generator"],
    ["solar", "solar + grid"],
    ["generator", "solar + generator", "grid + generator"],
    ["solar + grid + generator", "generator"],
)
PRICE = re.compile(r"(price|price_per_\w+|costs\.yearly\[\d+\]\.per_year)$")
RATES: dict[str, tuple[float, float]] = {
    "finance.discount_rate_percent": (0.5, 16.0),
    "finance.inflation_percent": (0.0, 8.0),
    "finance.grant_percent": (0.0, 50.0),
    "finance.loan_percent": (0.0, 50.0),
    "finance.loan_rate_percent": (0.0, 14.0),
    "finance.loan_years": (1.0, 9.0),
    "finance.water_price_per_m3": (0.0, 1.5),
    "sources.generator.fuel_price_growth_percent_per_year": (-2.0, 6.0),
    "sources.grid.tariff.price_growth_percent_per_year": (-2.0, 6.0),
    "costs.contingency_percent": (1.0, 20.0),
    "costs.installation_percent": (1.0, 30.0),
    "costs.supervision_percent": (1.0, 15.0),
    "costs.vat_percent": (1.0, 25.0),
    "costs.direct_support_per_person_year": (0.0, 3.0),
    "finance.renewal_fund_interest_percent": (-3.0, 6.0),
    "finance.exchange_rate": (0.2, 90.0),
    "households.size": (3.0, 9.0),
    "households.income_per_month": (20.0, 400.0),
    "households.lowest_income_per_month": (5.0, 60.0),
    "households.collection_percent": (40.0, 100.0),
    "pump.maintenance_percent_per_year": (0.0, 5.0),
    "sources.generator.life_hours": (700.0, 9000.0),
    "sources.generator.life_years": (2.0, 12.0),
    "sources.generator.service_interval_h": (100.0, 500.0),
    "sources.generator.overhaul_interval_h": (400.0, 3000.0),
    "controller.life_years": (2.0, 15.0),
}
"""What may be changed in the workbook without a new run, and between what bounds the tests do.

The pump's life may not: a new pump ends the wear of the old one, so that the hours change.
"""
BLOCKS = {
    "price_per_kwh": None,
    "blocks": [
        {"up_to_kwh_month": 60, "price_per_kwh": 0.11},
        {"up_to_kwh_month": 300, "price_per_kwh": 0.22},
        {"price_per_kwh": 0.35},
    ],
}
BANDS = [{"name": "Evening", "hours": [[18, 22]], "price_per_kwh": 0.4}]


@dataclass
class Case:
    """A scenario as raw data, its study and its workbook."""

    name: str
    raw: dict[str, Any]
    study: Study
    path: Path


def _case(name: str, raw: dict[str, Any], folder: Path) -> Case:
    study, path = study_scenario(check_scenario(raw, name), EXAMPLES), folder / f"{name}.xlsx"
    write(study, path)
    return Case(name, raw, study, path)


def _pinned(raw: dict[str, Any], study: Study) -> dict[str, Any]:
    """The scenario with the sizes of its first option for good, so that other prices choose no others."""
    own, first = copy.deepcopy(raw), study.ranked[0]
    own["tank"]["volume_m3"] = first.tank_m3
    solar = own["sources"].get("solar")
    if solar and solar["strings"] == "auto":
        solar["strings"] = max(option.strings for option in study.options)
    if "auto" in own.get("topup", {}).values():
        own["topup"] = {"start_level_percent": 40, "stop_level_percent": 70}
    return own


def _searches(case: Case) -> bool:
    """Whether prices could choose other sizes."""
    return "'auto'" in str(case.raw)


def _random_raw(number: int) -> dict[str, Any]:
    """Starter scenario, short and of fixed sizes, with prices, rates and tariff drawn at random."""
    draw = np.random.default_rng(number)
    tariff = [{}, {"bands": BANDS}, BLOCKS][number % 3]
    raw = changed_raw(
        finance__analysis_period_years=int(draw.integers(2, 7)),
        service__options=OPTIONS[number % len(OPTIONS)],
        service__reference=OPTIONS[number % len(OPTIONS)][-1],
        finance__prices="nominal" if number % 2 else "constant",
        sources__solar__strings=int(draw.integers(1, 5)),
        tank__volume_m3=float(draw.choice([10.0, 20.0, 24.0, 50.0, 130.0])),
        sources__generator__life_hours=float(draw.uniform(800, 9000)),
        sources__generator__overhaul_interval_h=float(draw.uniform(500, 3000)),
        costs__items=[
            {"name": "Fence", "unit_price": 10.0, "quantity": 40.0, "unit": "m", "life_years": 3},
            {"name": "Hut", "unit_price": 900.0, "sources": ["generator", "grid"]},
        ],
        **{f"sources__grid__tariff__{key}": value for key, value in tariff.items()},
    )
    for key, value in _changes(raw, f"random {number}", draw).items():
        _set(raw, key, value)
    return raw


def _changes(raw: dict[str, Any], name: str, draw: np.random.Generator) -> dict[str, float]:
    """Other prices and rates for a scenario, by key."""
    scenario = check_scenario(raw, name)
    changes: dict[str, float] = {}
    for entry in walk(scenario):
        number = isinstance(entry.value, int | float) and not isinstance(entry.value, bool)
        if not number or entry.key.startswith("overrides") or entry.status == "not given":
            continue
        if entry.key in RATES and not (entry.key.startswith("costs.") and entry.value == 0):
            value = float(draw.uniform(*RATES[entry.key]))
            years = min(round(value), scenario.finance.analysis_period_years)
            changes[entry.key] = years if entry.key == "finance.loan_years" else round(value, 2)
        elif PRICE.search(entry.key) and entry.value > 0:
            changes[entry.key] = round(float(entry.value * draw.uniform(0.4, 2.5)), 4)
    return changes


def _set(raw: dict[str, Any], key: str, value: float) -> None:
    """Set a dotted key, entries of lists counted from 1."""
    parts: list[str | int] = []
    for part in key.split("."):
        name, _, place = part.partition("[")
        parts.append(name)
        if place:
            parts.append(int(place.rstrip("]")) - 1)
    table: Any = raw
    for part in parts[:-1]:
        table = table[part] if isinstance(part, int) else table.setdefault(part, {})
    table[parts[-1]] = value


@pytest.fixture(scope="module")
def cases(tmp_path_factory: pytest.TempPathFactory) -> list[Case]:
    """The examples, as they are and with fixed sizes, and random scenarios."""
    folder = tmp_path_factory.mktemp("alive")
    priced = {file.stem: raw for file in sorted(EXAMPLES.glob("*.toml")) if "currency" in (raw := read_raw(file))}
    found = [_case(name, raw, folder) for name, raw in priced.items()]
    assert len(found) == 4
    found += [_case(f"{case.name}-fixed", _pinned(case.raw, case.study), folder) for case in found if _searches(case)]
    found += [_case(f"random-{number}", _random_raw(number), folder) for number in range(RANDOM)]
    rich = changed_raw(**RICH | {"sources__solar__strings": 2, "tank__volume_m3": 20.0})
    return [_case("rich-fixed", rich, folder), *found]


def _assert_same(wanted: Any, found: Any, where: str) -> None:
    if isinstance(wanted, int | float):
        assert isinstance(found, int | float), f"{where}: {found!r}, not {wanted}"
        # Sums of flows that cancel are as exact as the flows, a thousandth of the smallest coin.
        assert found == pytest.approx(wanted, rel=RELATIVE, abs=1e-5), where
    else:
        assert found == wanted, where


@pytest.mark.engine("LibreOffice", "every formula of the workbook against the value stored with it")
def test_an_independent_program_finds_every_stored_value(cases: list[Case], tmp_path: Path) -> None:
    bare = [without_values(case.path, tmp_path / "bare") for case in cases]
    assert all(value is None for _, value in cells_with_formulas(bare[0]).values())
    worked_out = recalculated(bare, tmp_path)
    total = 0
    for case in cases:
        stored, found = cells_with_formulas(case.path), cells_with_formulas(worked_out[case.path.name])
        assert stored.keys() == found.keys()
        assert len(stored) > 300, case.name
        for (sheet, address), (formula, wanted) in stored.items():
            where = f"{case.name} '{sheet}' {address} {formula}"
            _, value = found[sheet, address]
            assert wanted not in (None, ""), f"{where} has no stored value"
            assert value not in (None, ""), f"{where} is blank"
            assert not str(value).startswith(("#", "Err:")), f"{where}: {value}"
            _assert_same(wanted, value, where)
        total += len(stored)
    print(f"\ncompared {total} formula cells of {len(cases)} workbooks")
    assert total > 30_000


AGAIN, CHANGED = "! Run the study again", "! Prices or rates were changed since the run"
PAID = "! Grant and loan together exceed 100 percent"
TYPED: dict[str, tuple[dict[str, float | str], str]] = {
    "target": ({"service.demand_met_percent": 90.0}, AGAIN),
    "years": ({"finance.analysis_period_years": 10.0}, AGAIN),
    "prices": ({"finance.prices": "nominal"}, AGAIN),
    "text": ({"finance.discount_rate_percent": "five"}, AGAIN),
    "beyond": ({"finance.grant_percent": 170.0}, AGAIN),
    "paid": ({"finance.grant_percent": 70.0, "finance.loan_percent": 60.0}, PAID),
    "life": ({"sources.generator.life_hours": 3000.0}, CHANGED),
    "price": ({"sources.solar.module.price": 900.0}, CHANGED),
}
"""What may be typed into the form of a finished workbook, and how its first sheet then begins."""
SAID = ("The next best is", "stays ahead of", "users cover operation", "Recommended")
"""Beginnings of what only the run can say."""


@pytest.mark.engine("LibreOffice", "the first sheet's sentences, recalculated with changed prices")
def test_the_first_sheet_never_says_what_is_not_so(cases: list[Case], tmp_path: Path) -> None:
    case = next(case for case in cases if case.name == "hill-school")
    files = [
        without_values(case.path, tmp_path / "bare", changes, f"{name}.xlsx") for name, (changes, _) in TYPED.items()
    ]
    worked_out = recalculated(files, tmp_path)
    for name, (changes, verdict) in TYPED.items():
        with closing(openpyxl.load_workbook(worked_out[f"{name}.xlsx"], data_only=True)) as book:
            rows = list(book["Answer"].iter_rows(values_only=True))
        shown = [cell for row in rows for cell in row if cell not in (None, "")]
        words = [cell for cell in shown if isinstance(cell, str)]
        assert not any(word.startswith(("#", "Err:")) for word in words), name
        assert any(word.startswith(verdict) for word in words), name
        assert not any(said in word for word in words for said in SAID), name
        numbers = [cell for cell in shown if isinstance(cell, int | float)]
        if verdict != CHANGED:
            assert numbers == [], f"{name}: a figure stands beside an input that it does not follow"
            continue
        raw = copy.deepcopy(case.raw)
        for key, value in changes.items():
            _set(raw, key, value)
        fresh = study_scenario(check_scenario(raw, name), EXAMPLES)
        first = fresh.ranked[0]
        assert any(f"{first.name} costs least now" in word for word in words), name
        top = next(number for number, row in enumerate(rows) if row[0] == "Supply option, best first") + 1
        for row, option in zip(rows[top:], fresh.ranked, strict=False):
            assert row[0] == option.name
            assert row[6] == pytest.approx(float(option.life.present_cost), rel=RELATIVE)
        assert float(first.life.capital_cost) == pytest.approx(numbers[0])


FIGURES = {
    "capital_cost": "capital_cost",
    "life_cycle_cost": "present_cost",
    "annualised_cost": "equivalent_yearly_cost",
    "levelised_cost_per_m3": "levelised_cost_per_m3",
    "annualised_cost_per_person": "cost_per_person_year",
    "revenue_present": "revenue_present",
    "net_present_value": "npv",
    "grant": "grant",
    "loan": "loan",
    "owner_life_cycle_cost": "owner_present_cost",
}
"""Attributes of the life cycle by the figure that shows them."""
COMPARED = {
    "saving_present": ("saving_present", 1.0, ""),
    "internal_rate_of_return_percent": ("internal_rate_of_return", 100.0, "none"),
    "payback_years": ("simple_payback_years", 1.0, "never"),
    "discounted_payback_years": ("discounted_payback_years", 1.0, "never"),
}


@pytest.mark.engine("LibreOffice", "workbooks with changed prices against a fresh run")
def test_changed_prices_and_rates_give_what_a_fresh_run_gives(cases: list[Case], tmp_path: Path) -> None:
    chosen = [case for case in cases if not _searches(case)][:EDITED]
    fresh: dict[str, Study] = {}
    files = []
    for number, case in enumerate(chosen):
        changes = _changes(case.raw, case.name, np.random.default_rng(100 + number))
        assert "finance.discount_rate_percent" in changes
        assert len(changes) > 10
        raw = copy.deepcopy(case.raw)
        for key, value in changes.items():
            _set(raw, key, value)
        fresh[case.path.name] = study_scenario(check_scenario(raw, case.name), EXAMPLES)
        files.append(without_values(case.path, tmp_path / "bare", changes))
    worked_out = recalculated(files, tmp_path)
    figures, moved = 0, 0
    for case in chosen:
        study = fresh[case.path.name]
        path = worked_out[case.path.name]
        with closing(openpyxl.load_workbook(path, data_only=True, read_only=True)) as book:
            sheets = ("Answer", "Options", "What users pay")
            answer, options, users = (list(book[name].iter_rows(values_only=True)) for name in sheets)
        figures += _assert_answer(case, study, answer, options)
        figures += _assert_users(case, study, users)
        moved += study.ranking != case.study.ranking
    print(f"\n{figures} figures of {len(chosen)} changed workbooks are those of a fresh run; {moved} rank anew")
    assert moved > 0


def _assert_users(case: Case, study: Study, rows: Rows) -> int:
    """Compare what users must pay; return how many figures."""
    lines = {str(row[0]): row for row in reversed(rows)}
    count = 0
    for option in study.options:
        column = list(lines["Figure"]).index(option.name)
        for shown in figures_of("users"):
            if shown.known(option):
                value = float(shown.read(option))
                wanted = value if np.isfinite(value) else shown.words_for(option)
                _assert_same(wanted, lines[shown.label][column], f"{case.name} {option.name} {shown.label}")
                count += 1
    return count


def _assert_answer(case: Case, study: Study, rows: Rows, figures: Rows) -> int:
    """Compare ranking, verdict and figures of a recalculated workbook with a study; return how many figures."""
    top = next(number for number, row in enumerate(rows) if row[0] == "Supply option, best first") + 1
    assert [row[0] for row in rows[top : top + len(study.options)]] == list(study.ranking), case.name
    verdict = next(str(row[0]) for row in rows if str(row[0])[:1] in "✓✗!")
    assert study.ranking[0] in verdict
    assert verdict.startswith(CHANGED)
    lines = {str(row[0]): row for row in reversed(figures)}
    count = 0
    for option in study.options:
        column = list(lines["Figure"]).index(option.name)
        for key, name in FIGURES.items():
            label = figure(key).label
            value = float(getattr(option.life, name))
            wanted: float | str = value if np.isfinite(value) else "no people"
            _assert_same(wanted, lines[label][column], f"{case.name} {option.name} {label}")
            count += 1
        for key, (name, factor, word) in COMPARED.items():
            label = figure(key).label
            found = lines[label][column]
            if option.comparison is None:
                assert found == "reference"
                continue
            value = factor * float(getattr(option.comparison, name))
            _assert_same(value if np.isfinite(value) else word, found, f"{case.name} {option.name} {label}")
            count += 1
        if option.comparison is not None:
            reason = str(option.comparison.irr_reason) or "–"
            assert lines["  why there is none"][column] == reason, f"{case.name} {option.name}"
    return count
