"""A source that the planner does not know: a neighbour's supply with its own timetable, tariff and price.

It is made here alone; nothing in the planner names it. Prices and hours are invented.
"""

from __future__ import annotations

import copy
import pickle
from dataclasses import dataclass, replace
from functools import cache
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import numpy as np
import openpyxl
import pytest
from numpy.typing import ArrayLike

from planner.answers.cautions import cautions
from planner.answers.of_study import study_verdicts
from planner.figures import catalogue
from planner.money.formula import Formula, Operand
from planner.money.functions import weighted_total
from planner.money.quantities import Line, Thing
from planner.money.yearly import Column, Definition
from planner.report.document import Report, Row, Table
from planner.report.json_file import study_as_data
from planner.report.pages.bill import bill_of_study
from planner.report.pages.by_time import energy_page, water_page
from planner.report.pages.cash import Sources, cash_page
from planner.report.pages.inputs import inputs_of
from planner.report.pages.options import options_page
from planner.report.run_workbook import money_pages, write_workbook
from planner.report.workbook.book import write_book
from planner.scenario.errors import InputError
from planner.scenario.scenario import Scenario
from planner.sources.base import Array, Bands, SourceKind, Surroundings, TopUpSourceKind
from planner.sources.registry import GENERATOR, GRID, SOLAR, SOURCES
from planner.study.candidates import candidate_grid
from planner.study.compare import OptionResult, Study, study_scenario
from planner.study.context import Context
from planner.study.design import option_of
from planner.study.sweep.run import SweepResult, run_sweep
from planner.study.words import sentences
from planner.study.worth import worth_of
from planner.study.worth_words import verdict
from planner.supply.run import HOUR, MONTH, run_options
from tests.report.formulas import cells_with_formulas
from tests.report.spreadsheet import Spreadsheet
from tests.study.scenarios import changed
from tests.supply.options import FUEL, HOURS, option, source_of

EVENING = (HOUR >= 17) & (HOUR < 22)
YEARS = 2
CHOSEN = ("solar + neighbour", "solar")


@dataclass(frozen=True, eq=False)
class Neighbour(TopUpSourceKind):
    """A neighbour who lets us have power by day, and dearer in the evening, for a meter and so much a kWh."""

    key = "neighbour"
    day_price_per_kwh: float = 0.3
    evening_price_per_kwh: float = 0.8
    meter_price: float = 70.0

    @property
    def running(self) -> tuple[Column, ...]:
        return (Column("neighbour", later=self.bill),)

    @property
    def emission(self) -> Definition:
        return lambda y: y.top_ups[self].kwh * 0.5

    def bill(self, y: Any) -> Operand:
        return weighted_total(y.top_ups[self].parts_kwh, [self.day_price_per_kwh, self.evening_price_per_kwh])

    def described(self, scenario: Scenario) -> bool:
        return True

    def lines(self, scenario: Scenario, strings: ArrayLike) -> list[Line]:
        return [Line(Thing("Meter"), "other", self.key, 1.0, "item", self.meter_price, 30.0, 2.0)]

    def available(self, scenario: Scenario) -> Array:
        on = (HOUR >= 7) & (HOUR < 22)
        return np.repeat(on[:, None].astype(float), scenario.finance.analysis_period_years, axis=1)

    def power_w(self, scenario: Scenario, around: Surroundings) -> Array:
        return np.full((1, scenario.finance.analysis_period_years), 1e5)

    def bands(self, scenario: Scenario) -> Bands:
        return Bands(EVENING.astype(np.int64), 2)


def kinds_with(neighbour: Neighbour) -> tuple[SourceKind, ...]:
    """All sources, the neighbour's after the grid and before the generator."""
    return SOLAR, GRID, neighbour, GENERATOR


def site(**changes: Any) -> Scenario:
    base = {"finance__analysis_period_years": YEARS, "tank__volume_m3": 60, "sources__solar__strings": 2}
    return changed(**(base | changes))


@cache
def studied(day: float = 0.3, evening: float = 0.8) -> Study:
    return study_scenario(site(), Path(), kinds_with(Neighbour(day, evening)))


def with_neighbour(study: Study) -> list[OptionResult]:
    return [each for each in study.options if "neighbour" in each.sources]


def test_its_options_are_formed_in_order_of_priority() -> None:
    names = [each.name for each in studied().options]
    assert len(names) == 15
    assert names[:4] == ["solar", "grid", "neighbour", "generator"]
    assert names[-1] == "solar + grid + neighbour + generator"
    # None of them is worked out otherwise for the neighbour's being there.
    assert [each.name for each in study_scenario(site(), Path()).options] == [
        name for name in names if "neighbour" not in name
    ]


def test_the_others_keep_their_figures() -> None:
    for own in study_scenario(site(), Path()).options:
        beside = studied().option(own.name)
        assert float(beside.life.present_cost) == float(own.life.present_cost)
        np.testing.assert_array_equal(beside.outcome.delivered_m3, own.outcome.delivered_m3)


def test_its_money_by_hand() -> None:
    for each in with_neighbour(studied()):
        used = each.outcome.top_ups["neighbour"]
        day, evening = used.kwh.sum(axis=1).T
        flows = each.life.flows
        np.testing.assert_allclose(flows.further["neighbour"], [0, *(0.3 * day + 0.8 * evening)], rtol=1e-12)
        # The meter, bought once, of which 28 of 30 years are left after two, and kept up for 2 % a year.
        (meter,) = [line for line in each.lines if line.label == "Meter"]
        assert (meter.cost, meter.source) == (70.0, "neighbour")
        rate = studied().scenario.finance.discount_rate_percent / 100
        present = sum(float(flows.further["neighbour"][year]) / (1 + rate) ** year for year in range(1, YEARS + 1))
        assert float(each.life.present_by_category["neighbour"]) == pytest.approx(present, rel=1e-12)
    alone = studied().option("neighbour")
    assert alone.outcome.top_ups["neighbour"].kwh.sum() > 1000
    kwh = alone.outcome.top_ups["neighbour"].kwh.sum(axis=(1, 2))
    np.testing.assert_allclose(alone.life.co2_kg, 0.5 * kwh, rtol=1e-12)
    costs = alone.life.present_by_category
    assert costs["grid"] == costs["fuel"] == costs["generator_service"] == 0
    assert float(alone.life.present_cost) == pytest.approx(sum(map(float, costs.values())), rel=1e-12)
    assert float(alone.life.figures["operation"]) == pytest.approx(
        float(costs["upkeep"] + costs["neighbour"] + costs["yearly_costs"]), rel=1e-12
    )


def test_its_bill_is_one_definition_for_numbers_and_cells() -> None:
    cells = {"neighbour": SimpleNamespace(parts_kwh=[Formula.leaf("B2"), Formula.leaf("C2")])}
    assert Neighbour().bill(SimpleNamespace(top_ups=cells)).text(str) == "B2*0.3+C2*0.8"


def test_its_cost_has_a_column_a_figure_and_formulas(tmp_path: Path) -> None:
    study = studied()
    write_book(Report("Money", (options_page(study), *money_pages(study, inputs_of(study)))), tmp_path / "money.xlsx")
    book = openpyxl.load_workbook(tmp_path / "money.xlsx")
    cells = {
        sheet.title: {(cell.row, cell.column): cell.value for row in sheet.iter_rows() for cell in row}
        for sheet in book
    }
    judge = Spreadsheet(cells)
    for (sheet, address), (formula, wanted) in cells_with_formulas(tmp_path / "money.xlsx").items():
        found = judge.value(sheet, book[sheet][address].row, book[sheet][address].column)
        same = found == wanted if isinstance(wanted, str) else found == pytest.approx(wanted, rel=1e-7, abs=1e-5)
        assert same, f"'{sheet}' {address} {formula}: {found!r}, not {wanted!r}"
    alone = study.option("neighbour")
    flow = cash_page(study, Sources(inputs_of(study), bill_of_study(study, inputs_of(study)))).blocks[-1]
    assert isinstance(flow, Table)
    (place,) = [column.key for column in flow.columns if column.heading == "neighbour (USD)"]
    by_row = {row.key: row.cells[place] for row in flow.rows if isinstance(row, Row)}
    for year in range(1, YEARS + 1):
        cell = by_row["neighbour", year]
        assert cell.value == pytest.approx(float(alone.life.flows.further["neighbour"][year]), rel=1e-12)
        assert cell.formula is not None
        assert by_row["grid", year].value == 0
    (figure,) = [each for each in catalogue(study.further_costs) if each.category]
    assert (figure.key, figure.label) == ("life_cycle_neighbour", "  neighbour")
    assert float(figure.read(alone)) == float(alone.life.present_by_category["neighbour"])
    data = {each["name"]: each for each in study_as_data(study, [], study_verdicts(study))["options"]}
    assert data["neighbour"]["life_cycle_neighbour"] == float(figure.read(alone))
    assert data["solar"]["life_cycle_neighbour"] == 0
    costs = [figure.read(alone) for figure in catalogue(study.further_costs) if figure.key.startswith("life_cycle_")]
    assert float(costs[0]) == pytest.approx(float(sum(costs[1:])), rel=1e-12)


def test_the_whole_report_is_written_with_it(tmp_path: Path) -> None:
    study, file = studied(), tmp_path / "whole.xlsx"
    write_workbook(study, cautions(study), file, study_verdicts(study))
    said = [cell.value for sheet in openpyxl.load_workbook(file) for row in sheet.iter_rows() for cell in row]
    assert any("Electricity from neighbour at a borehole can kill" in str(value) for value in said)
    assert said.count("neighbour, band 2 (kWh)") == 1
    assert "Added by neighbour (m3)" in said
    assert "Running on neighbour (h)" in said
    assert "grid not counted; neighbour" in said or "grid; neighbour" in said


def test_the_pages_of_water_and_energy_count_what_it_pumps() -> None:
    study = studied()
    water, energy = water_page(study), energy_page(study)
    for place, ranked in enumerate(study.ranked):
        did = ranked.outcome
        pumped = did.solar_m3 + sum(source.m3 for source in did.top_ups.values())
        kwh = did.solar_kwh + sum(source.kwh.sum(axis=-1) for source in did.top_ups.values())
        for page, key, wanted in (
            (water, "pumped_m3", pumped.sum(axis=1)),
            (energy, "kwh_per_m3", kwh.sum(axis=1) / pumped.sum(axis=1)),
        ):
            (table,) = [
                each for each in page.blocks if isinstance(each, Table) and each.key.endswith(f".{place}.years")
            ]
            rows = [row for row in table.rows if isinstance(row, Row)]
            assert [rows[year].cells[key].value for year in range(YEARS)] == pytest.approx(list(wanted), rel=1e-12)


def test_its_timetable_holds() -> None:
    context = Context(Path(), kinds_with(Neighbour()))
    supply = next(each for each in context.supplies(site()) if each.name == "neighbour")
    made = context.built(supply.scenario, supply.sources)
    (outcome,) = run_options([option_of(made.built, made.site, [0], [60.0], [20.0], [40.0])], trace=True)
    assert outcome.trace is not None
    added = outcome.trace.top_up_m3[0, :, 0]
    assert not added[(HOUR < 7) | (HOUR >= 22)].any()
    assert added[HOUR == 7].any()
    assert added[EVENING].any()
    # By its own bands, whatever those of the grid's tariff are: without sun, a m3 takes the same energy all month.
    did = outcome.top_ups["neighbour"]
    for month in range(12):
        kwh, m3 = did.kwh[0, 0, :, month], did.m3[0, 0, :, month]
        evening_m3 = added[EVENING & (month == MONTH)].sum(axis=0)
        np.testing.assert_allclose(kwh[:, 1], kwh.sum(axis=-1) * evening_m3 / m3, rtol=1e-9)


def test_no_water_is_created_or_lost_with_it() -> None:
    for each in with_neighbour(studied()):
        did = each.outcome
        pumped = did.solar_m3 + sum(source.m3 for source in did.top_ups.values())
        gone = did.delivered_m3 + did.leakage_m3
        np.testing.assert_allclose(
            did.level_end_m3 - did.level_start_m3, (pumped - gone).sum(axis=-1), rtol=0, atol=1e-6
        )


def test_it_is_ranked_by_what_it_costs() -> None:
    given, dear = studied(0.0, 0.0), studied(9.0, 9.0)
    assert given.best == "neighbour"
    assert dear.best is not None
    assert "neighbour" not in dear.best
    assert float(given.option("neighbour").life.present_cost) < float(dear.option("neighbour").life.present_cost)
    # The last source in priority that stands alone is what others are measured against: the generator, as without it.
    assert given.reference == "generator"
    with_it_last = study_scenario(site(), Path(), (GRID, GENERATOR, Neighbour()))
    assert with_it_last.reference == "neighbour"


def test_three_top_ups_share_an_hour_by_priority() -> None:
    # The pump lifts 4 m3/h for 2 kW, and 4 m3/h are drawn; the tank stays empty, so that all are wanted all the time.
    # The grid is on for a quarter of each hour: 1 m3. The neighbour's for half of what is left of it: 3/8 h, 1.5 m3.
    # The generator has what is left then, 3/8 h: 1.5 m3.
    draw = np.full((HOURS, 1), 4.0)
    shares = {"grid": 0.25, "neighbour": 0.5, "generator": 1.0}
    sources = {name: source_of(share, 1) for name, share in shares.items()}
    sources["generator"] = replace(sources["generator"], fuel=FUEL)
    three = option("grid + neighbour + generator", draw, 40.0, **sources)
    two = option("neighbour + generator", draw, 40.0, **{name: sources[name] for name in ("neighbour", "generator")})
    outcome, without = run_options([three, two])
    hourly = {name: (source.m3.sum() / HOURS, source.kwh.sum() / HOURS) for name, source in outcome.top_ups.items()}
    assert list(hourly) == ["grid", "neighbour", "generator"]
    assert hourly["grid"] == pytest.approx((1.0, 0.5), abs=1e-9)
    assert hourly["neighbour"] == pytest.approx((1.5, 0.75), abs=1e-9)
    assert hourly["generator"] == pytest.approx((1.5, 0.75), abs=1e-9)
    assert outcome.fuel_l.sum() == pytest.approx(HOURS * (0.08 * 5.0 * 0.375 + 0.25 * 0.75), rel=1e-9)
    assert without.top_ups["neighbour"].m3.sum() == pytest.approx(2.0 * HOURS, rel=1e-9)
    assert without.top_ups["generator"].m3.sum() == pytest.approx(2.0 * HOURS, rel=1e-9)


def test_each_stands_by_behind_the_one_before() -> None:
    # Tank 40 m3, first source from 8 to 16 m3: the second from 4 to 8, the third from 2 to 4. The first two are dead.
    draw = np.full((HOURS, 1), 0.5)
    dead, alive = source_of(0.0, 1), source_of(1.0, 1)
    for sources, start, stop in (
        ({"grid": dead, "neighbour": dead, "generator": alive}, 2.0, 4.0),
        ({"grid": dead, "neighbour": alive, "generator": dead}, 4.0, 8.0),
        ({"neighbour": alive, "grid": dead, "generator": dead}, 8.0, 16.0),
    ):
        (outcome,) = run_options([option(" + ".join(sources), draw, 40.0, **sources)], trace=True)
        assert outcome.trace is not None
        level, added = outcome.trace.level_m3[:, 0, 0], outcome.trace.top_up_m3.sum(axis=0)[:, 0, 0]
        assert level[added < 1e-9].min() == pytest.approx(start, abs=1e-9)
        assert level.max() == pytest.approx(stop, abs=1e-9)


def test_sources_in_two_orders_are_refused() -> None:
    draw, alive = np.full((HOURS, 1), 0.5), source_of(1.0, 1)
    there = option("grid + neighbour", draw, 40.0, grid=alive, neighbour=alive)
    back = option("neighbour + grid", draw, 40.0, neighbour=alive, grid=alive)
    with pytest.raises(ValueError, match="cycle"):
        run_options([there, back])


def swept(neighbour: Neighbour, *rates: float, **changes: Any) -> SweepResult:
    grid = [
        {"key": "finance.discount_rate_percent", "values": list(rates)},
        {"key": "demand.leakage_percent", "values": [0.0, 20.0]},
    ]
    return run_sweep(site(sweep={"grid": grid}, **changes), Path(), kinds=kinds_with(neighbour))


def test_it_is_swept_with_the_others() -> None:
    found = swept(Neighbour(), 3.0, 6.0)
    assert found.base.options == tuple(each.name for each in studied().options)
    results = found.results[0]
    assert not results.problems
    # Without sun there are no float-switch levels to choose, so that a study of the variant has the same designs.
    names = ("neighbour", "grid + neighbour", "neighbour + generator")
    for variant, (rate, leakage) in enumerate(results.plan.values):
        again = study_scenario(
            site(finance__discount_rate_percent=rate, demand__leakage_percent=leakage, sources__solar=None),
            Path(),
            kinds_with(Neighbour()),
        )
        for name in names:
            place = results.options.index(name)
            cost, share = (results.measure(of)[variant, place] for of in ("present_cost", "delivered_share"))
            assert cost == pytest.approx(float(again.option(name).life.present_cost), rel=1e-12)
            assert share == pytest.approx(again.option(name).delivered_share, rel=1e-12)


def test_sweeps_with_two_sources_of_one_name_are_kept_apart() -> None:
    # In one process, where the hours of the last sweep are kept.
    alone = {"sources__grid": None, "sources__generator": None}
    cheap, dear = (swept(Neighbour(*prices), 5.0, **alone).results[0] for prices in ((0.1, 0.1), (2.0, 2.0)))
    place = cheap.options.index("neighbour")
    assert (cheap.measure("present_cost")[:, place] < 0.5 * dear.measure("present_cost")[:, place]).all()


def test_it_stands_through_the_weather_years_of_a_sweep() -> None:
    beside = {"sources__grid": None, "sources__generator": None}
    scenario = site(sweep={"weather": {"years": 3, "life_year": 1}}, **beside)
    found = run_sweep(scenario, Path(), kinds=kinds_with(Neighbour()))
    assert found.weather is not None
    shares = dict(zip(found.weather.options, found.weather.delivered_share, strict=True))
    # By day only, but every day, with a tank of some days: more than the sun alone gives in any of the years.
    assert (shares["solar + neighbour"] >= shares["solar"]).all()
    assert shares["neighbour"] == pytest.approx(1.0, abs=0.02)


def test_whether_it_is_worth_having_is_told() -> None:
    given = worth_of(site(), "neighbour", Path(), kinds=kinds_with(Neighbour(0.0, 0.0)))
    assert given.with_best.name == "neighbour"
    assert given.with_best.present_cost == float(studied(0.0, 0.0).option("neighbour").life.present_cost)
    assert {(pair.without.name, pair.with_source.name) for pair in given.pairs} == {
        (name, beside)
        for name, beside in (
            ("solar", "solar + neighbour"),
            ("grid", "grid + neighbour"),
            ("generator", "neighbour + generator"),
            ("solar + grid", "solar + grid + neighbour"),
            ("solar + generator", "solar + neighbour + generator"),
            ("grid + generator", "grid + neighbour + generator"),
            ("solar + grid + generator", "solar + grid + neighbour + generator"),
        )
    }
    assert given.map is not None
    assert (given.map.down.name, given.map.across.name) == ("demand", "discount_rate")
    assert given.saving > 0
    few = site(sources__grid=None)
    dear = worth_of(few, "neighbour", Path(), kinds=kinds_with(Neighbour(9.0, 9.0)))
    assert dear.saving < 0
    assert verdict(dear).startswith("It hardly matters whether you have neighbour")
    with pytest.raises(InputError, match="'neighbour' is no source"):
        worth_of(site(), "neighbour", Path())


def test_sizing_holds_by_a_timer_only_what_has_hours_of_its_own() -> None:
    context = Context(Path(), kinds_with(Neighbour()))
    supplies = {supply.name: supply for supply in context.supplies(site())}
    alone = candidate_grid(context, supplies["neighbour"])
    assert [setup.hours for setup in alone.setups] == [""]
    beside = candidate_grid(context, supplies["neighbour + generator"])
    assert [setup.hours for setup in beside.setups] == ["", "by night only", "by day only"]
    assert beside.strings == (0,)
    assert candidate_grid(context, supplies["solar + neighbour"]).strings[0] == 1


def test_its_sun_and_its_top_up_are_told_apart_in_the_sentences() -> None:
    study = replace(studied(), options=tuple(each for each in studied().options if each.name in CHOSEN), ranking=CHOSEN)
    said = " ".join(sentences(study))
    assert "from neighbour" in said
    assert "solar" not in said.split("from neighbour")[1].split(".")[0]


def test_a_source_is_its_name() -> None:
    assert [str(source) for source in SOURCES] == ["solar", "grid", "generator"]
    assert pickle.loads(pickle.dumps(Neighbour(0.1, 0.2))).evening_price_per_kwh == 0.2
    assert copy.deepcopy(GRID) == "grid"
    assert "grid" in SOURCES
    assert "neighbour" not in SOURCES
