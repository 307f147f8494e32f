"""Every sum of money twice, in NumPy and as cells, in random scenarios of every kind of prices, tariff and finance.

Quantities are drawn, not simulated: what they are does not matter to the money. Places, people, pumps and prices are
invented.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import openpyxl
import pytest
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from planner.assumptions.reader import check_scenario, option_scenario
from planner.money.formula import Formula
from planner.money.functions import both, ceiling, equals, floor, level_payment, maximum, minimum, remainder, where
from planner.money.lifecycle import compare, life_cycle
from planner.money.quantities import bill_of_quantities
from planner.money.simulated import Quantities, TopUpYears
from planner.report.document import Report
from planner.report.pages.inputs import inputs_of
from planner.report.pages.options import options_page
from planner.report.run_workbook import money_pages
from planner.report.workbook.book import write_book
from planner.study.compare import Study, rank, reference_option
from tests.report.formulas import OFFICE, cells_with_formulas, recalculated, without_values
from tests.report.spreadsheet import Spreadsheet
from tests.study.scenarios import changed_raw, studied

# A whole workbook is slow to shrink, and its message names the cell.
WHOLE: dict[str, Any] = {
    "deadline": None,
    "phases": (Phase.reuse, Phase.generate),
    "suppress_health_check": list(HealthCheck),
}
NAMES = ("solar", "grid", "generator", "solar + grid + generator")
TARIFFS: tuple[dict[str, Any], ...] = (
    {},
    {
        "bands": [
            {"name": "Evening", "hours": [[18, 22]], "price_per_kwh": 0.4},
            {"name": "Night", "hours": [[22, 5]], "price_per_kwh": 0.05},
        ]
    },
    {
        "price_per_kwh": None,
        "blocks": [
            {"up_to_kwh_month": 60, "price_per_kwh": 0.11},
            {"up_to_kwh_month": 300, "price_per_kwh": 0.22},
            {"price_per_kwh": 0.35},
        ],
    },
)


INCOMES = {"income_per_month": 140.0, "lowest_income_per_month": 35.0, "collection_percent": 85.0}


@dataclass(frozen=True)
class Case:
    """Raw data of a scenario, and a seed for its quantities."""

    raw: dict[str, Any]
    seed: int

    def __repr__(self) -> str:
        return f"Case({self.raw['finance']}, seed={self.seed})"


def maybe(low: float, high: float) -> st.SearchStrategy[float]:
    """Nothing, or a number between bounds."""
    return st.just(0.0) | st.floats(low, high).map(lambda value: round(value, 3))


@st.composite
def scenarios(draw: st.DrawFn) -> Case:
    """A scenario with any money."""
    years = draw(st.integers(1, 40))
    grant = draw(maybe(0, 100))
    loan = draw(maybe(0, 100).filter(lambda share: share + grant <= 100))
    tariff = draw(st.sampled_from(TARIFFS)) | {
        "fixed_charge_per_month": draw(maybe(0, 9)),
        "demand_charge_per_kw_month": draw(maybe(0, 5)),
        "levy_per_kwh": draw(maybe(0, 0.1)),
        "tax_percent": draw(maybe(0, 25)),
        "price_growth_percent_per_year": draw(maybe(-5, 10)),
    }
    raw = changed_raw(
        finance__analysis_period_years=years,
        finance__prices=draw(st.sampled_from(["constant", "nominal"])),
        finance__discount_rate_percent=draw(maybe(-4.9, 0) | st.floats(0.1, 25)),
        finance__inflation_percent=draw(maybe(-4, 15)),
        finance__grant_percent=grant,
        finance__loan_percent=loan,
        finance__loan_rate_percent=draw(maybe(0, 20)),
        finance__loan_years=draw(st.integers(1, years)),
        finance__water_price_per_m3=draw(maybe(0, 2)),
        service__options=list(NAMES),
        service__reference=draw(st.sampled_from(NAMES)),
        pump__life_years=draw(st.floats(0.4, 15)),
        pump__maintenance_percent_per_year=draw(maybe(0, 5)),
        costs__installation_percent=draw(maybe(0, 30)),
        costs__contingency_percent=draw(maybe(0, 20)),
        costs__supervision_percent=draw(maybe(1, 15)),
        costs__vat_percent=draw(maybe(1, 25)),
        costs__direct_support_per_person_year=draw(maybe(0, 3)),
        finance__renewal_fund_interest_percent=draw(maybe(-5, 8)),
        finance__programme_currency="EUR",
        finance__exchange_rate=draw(st.floats(0.1, 90)),
        households=draw(st.sampled_from([None, {"size": 5.5}, {"size": 4.0} | INCOMES])),
        costs__items=[{"name": "Fence", "unit_price": draw(maybe(1, 90)), "quantity": 30.0, "life_years": 6}],
        sources__generator__life_hours=draw(st.floats(500, 30_000)),
        sources__generator__life_years=draw(st.floats(1, 20)),
        sources__generator__service_interval_h=draw(st.floats(100, 500)),
        sources__generator__overhaul_interval_h=draw(st.floats(300, 12_000)),
        sources__generator__overhaul_price=draw(maybe(0, 900)),
        sources__generator__fuel_price_growth_percent_per_year=draw(maybe(-5, 10)),
        **{f"sources__grid__tariff__{key}": value for key, value in tariff.items()},
    )
    if draw(st.booleans()):
        raw["overrides"] = {"grid": {"costs": {"installation_percent": 12.0}, "pump": {"price": 1234.5}}}
    return Case(raw, draw(st.integers(0, 2**32 - 1)))


@cache
def base() -> Study:
    """A study whose hours lend the sheets what is not money."""
    return studied(
        finance__analysis_period_years=1, service__options=list(NAMES), sources__solar__strings=2, tank__volume_m3=20.0
    )


def money_study(raw: dict[str, Any], seed: int) -> Study:
    """The base study with a scenario's money and random quantities."""
    scenario, random = check_scenario(raw, "random"), np.random.default_rng(seed)
    years, grid = scenario.finance.analysis_period_years, scenario.sources.grid
    assert grid is not None
    busy = random.choice([300, 3000, 8760])
    options = []
    for option in base().options:
        own = option_scenario(scenario, option.name)
        of = {name: float(name in option.sources) for name in ("solar", "grid", "generator")}

        def yearly(most: float, *shape: int) -> np.ndarray:
            return random.uniform(0, most, (years, *shape))

        demand, delivered = 1000 + yearly(1000), yearly(1000)
        made = [yearly(most) * of["generator"] for most in (900, busy, 2000)]
        band_kwh = yearly(200, 12, 1 + len(grid.tariff.bands)) * of["grid"]
        nothing, months = np.zeros(years), np.zeros((years, 12))
        top_ups = {
            "grid": TopUpYears(
                band_kwh.sum(axis=(1, 2)), nothing, nothing, band_kwh, peak_kw=yearly(5, 12) * of["grid"]
            ),
            "generator": TopUpYears(*made, months[..., None], months),
        }
        quantities = Quantities(demand, delivered, yearly(900) * of["solar"], top_ups)
        lines = bill_of_quantities(own, option.sources, strings=option.strings, tank_m3=option.tank_m3)
        share = float(random.choice([0.9, 0.95, 1.0]))
        options.append(
            replace(
                option, scenario=own, quantities=quantities, lines=lines, comparison=None, delivered_share=share,
                meets_service=bool(random.integers(2)), life=life_cycle(own, option.sources, lines, quantities),
            )
        )  # fmt: skip
    reference = reference_option(scenario)
    against = next(option.life for option in options if option.name == reference)
    compared = tuple(o if o.name == reference else replace(o, comparison=compare(o.life, against)) for o in options)
    ranking = rank(compared)
    best = ranking[0] if next(o for o in compared if o.name == ranking[0]).meets_service else None
    return replace(
        base(), scenario=scenario, options=compared, ranking=ranking, best=best, reference=reference
    )  # fmt: skip


def written(study: Study, path: Path) -> Path:
    """Write the sheets of money alone."""
    pages = options_page(study), *money_pages(study, inputs_of(study))
    write_book(Report("Money", pages), path)
    return path


def assert_same(found: Any, wanted: Any, where: str) -> None:
    if isinstance(wanted, str):
        assert found == wanted, where
    else:
        # Worths at far rates, and sums of flows that cancel, are as exact as the flows.
        assert isinstance(found, int | float), f"{where}: {found!r}, not {wanted}"
        assert float(found) == pytest.approx(wanted, rel=1e-7, abs=1e-5), where


@settings(max_examples=settings.default.max_examples // 8, **WHOLE)
@given(case=scenarios())
def test_formulas_worked_out_from_their_text_are_the_values_of_numpy(
    case: Case, tmp_path_factory: pytest.TempPathFactory
) -> None:
    path = written(money_study(case.raw, case.seed), tmp_path_factory.mktemp("money") / "money.xlsx")
    stored = cells_with_formulas(path)
    book = openpyxl.load_workbook(path)
    cells = {
        sheet.title: {(cell.row, cell.column): cell.value for row in sheet.iter_rows() for cell in row}
        for sheet in book
    }
    judge = Spreadsheet(cells)
    assert len(stored) > 500
    for (sheet, address), (formula, wanted) in stored.items():
        cell = book[sheet][address]
        assert_same(judge.value(sheet, cell.row, cell.column), wanted, f"'{sheet}' {address} {formula}")


@pytest.mark.slow
@pytest.mark.skipif(OFFICE is None, reason="LibreOffice (soffice) is not installed")
@settings(max_examples=2, **WHOLE)
@given(cases=st.lists(scenarios(), min_size=8, max_size=8))
@pytest.mark.engine("LibreOffice", "formulas of money of random studies against numpy")
def test_libreoffice_finds_the_values_of_numpy(cases: list[Case], tmp_path_factory: pytest.TempPathFactory) -> None:
    folder = tmp_path_factory.mktemp("money")
    files = [
        written(money_study(case.raw, case.seed), folder / f"case-{number}.xlsx") for number, case in enumerate(cases)
    ]
    worked_out = recalculated([without_values(file, folder / "bare") for file in files], folder)
    for file in files:
        found = cells_with_formulas(worked_out[file.name])
        for (sheet, address), (formula, wanted) in cells_with_formulas(file).items():
            assert_same(found[sheet, address][1], wanted, f"{file.name} '{sheet}' {address} {formula}")


# ------------------------------------------------------------------------------------------------------ the algebra

BINARY = {
    "+": lambda a, b: a + b,
    "-": lambda a, b: a - b,
    "*": lambda a, b: a * b,
    "/": lambda a, b: a / (b * b + 1),
    "^": lambda a, b: (a * a + 1) ** minimum(maximum(b, -2), 2),
    "min": minimum,
    "max": maximum,
    "mod": lambda a, b: remainder(floor(a), 7),
    "where": lambda a, b: where(a < b, a, -b),
    "equal": lambda a, b: where(both(equals(floor(a), floor(a)), a >= b), ceiling(a), b),
    "pay": lambda a, b: level_payment(minimum(maximum(a, 0), 9) / 100, 7, b),
}
TREES = st.recursive(
    st.sampled_from(["x", "y", "z"]) | st.integers(-9, 9).map(float) | st.floats(-5, 5),
    lambda inner: st.tuples(st.sampled_from([*BINARY, "neg"]), inner, inner),
    max_leaves=12,
)


def evaluated(tree: Any, leaves: dict[str, Any]) -> Any:
    if not isinstance(tree, tuple):
        return leaves.get(tree, tree) if isinstance(tree, str) else tree
    name, left, right = tree
    first, second = evaluated(left, leaves), evaluated(right, leaves)
    return -first if name == "neg" else BINARY[name](first, second)


@given(tree=TREES, numbers=st.tuples(*[st.floats(-9, 9)] * 3))
@settings(max_examples=3 * settings.default.max_examples)
def test_any_expression_reads_back_as_its_value(tree: Any, numbers: tuple[float, float, float]) -> None:
    cells = dict(zip("xyz", numbers, strict=True))
    wanted = float(evaluated(tree, cells))
    formula = evaluated(tree, {name: Formula.leaf(name) for name in cells})
    if not isinstance(formula, Formula):
        assert float(formula) == pytest.approx(wanted, rel=1e-9, abs=1e-9)
        return
    sheet = Spreadsheet({"S": {(1, place): number for place, number in enumerate(numbers, start=1)}})
    text = formula.text({"x": "A1", "y": "$B$1", "z": "'S'!C1"}.__getitem__)
    assert float(sheet.work_out(text, "S")) == pytest.approx(wanted, rel=1e-7, abs=1e-7), text


@pytest.mark.parametrize(
    ("formula", "text"),
    [
        (lambda a, b: (a + b) * 2, "(a+b)*2"),
        (lambda a, b: a - (b - 1), "a-(b-1)"),
        (lambda a, b: -(a**2), "-(a^2)"),
        (lambda a, b: (-a) ** 2, "(-a)^2"),
        (lambda a, b: a / (b * 0.1), "a/(b*0.1)"),
        (lambda a, b: 0.0 + a * 1.0 - 0.0, "a"),
        (lambda a, b: where(a <= b, -1.5, 1e-9), "IF(a<=b,-1.5,1E-09)"),
        (lambda a, b: np.float64(3.0) * a, "3*a"),
        (lambda a, b: where(a > 0, 'say "no"', b), 'IF(a>0,"say ""no""",b)'),
    ],
)
def test_text_of_expressions(formula: Any, text: str) -> None:
    assert formula(Formula.leaf("a"), Formula.leaf("b")).text() == text


def test_no_branch_hangs_on_a_cell() -> None:
    with pytest.raises(TypeError, match="neither true nor false"):
        assert Formula.leaf("A1") > 0
