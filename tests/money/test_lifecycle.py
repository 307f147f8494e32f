"""Money by year and the life-cycle figures of a priced option."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
import numpy_financial as npf
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.money.flows import CashFlows, flows_of
from planner.money.lifecycle import LifeCycle, appraise, cash_flows, compare, life_cycle
from planner.money.quantities import Line, Thing, bill_of_quantities, with_percentages
from planner.money.simulated import Quantities
from planner.money.terms import Terms, terms_of
from planner.scenario.scenario import Scenario
from planner.sources.registry import GRID, SOLAR, SOURCES
from tests.money.cases import make_generator, make_quantities, make_scenario, make_tariff, make_terms

YEARS = 12
RATE = st.floats(0, 0.2)
SCALE = st.floats(0.01, 100)


def line(price: float, life_years: float = 20.0, upkeep: float = 0.0, *, by_hours: bool = False) -> Line:
    return Line(Thing("thing"), "other", "all", 1.0, "item", price, life_years, upkeep, by_hours)


def priced_scenario(**finance: float | str) -> Scenario:
    return make_scenario(
        borehole={"price": 9000.0, "life_years": 40.0},
        pump={"price": 1500.0, "life_years": 5.0, "maintenance_percent_per_year": 3.0},
        tank={"volume_m3": 20.0, "price": 2500.0},
        sources={
            "solar": {"module": {"price": 120.0}},
            "grid": {
                "price": 900.0,
                "co2_kg_per_kwh": 0.5,
                "tariff": {"price_per_kwh": 0.2, "fixed_charge_per_month": 4.0, "price_growth_percent_per_year": 2.0},
            },
            "generator": {
                "price": 4000.0,
                "fuel_price_per_l": 1.1,
                "fuel_delivery_per_l": 0.2,
                "fuel_price_growth_percent_per_year": 3.0,
                "service_price": 60.0,
                "overhaul_price": 700.0,
                "life_hours": 8000.0,
                "overhaul_interval_h": 4000.0,
                "co2_kg_per_l": 2.7,
            },
        },
        costs={
            "yearly": [
                {"name": "Caretaker", "per_year": 600.0},
                {"name": "Fuel keeper", "per_year": 90.0, "sources": ["generator"]},
            ],
            "installation_percent": 10.0,
            "contingency_percent": 5.0,
        },
        finance={"analysis_period_years": YEARS, "discount_rate_percent": 6.0, "water_price_per_m3": 0.5} | finance,
    )


def some_quantities(scale: float | np.ndarray = 1.0) -> Quantities:
    drift = np.linspace(1, 1.4, YEARS) * np.asarray(scale)[..., None]
    return make_quantities(
        YEARS,
        demand_m3=3600 * drift,
        delivered_m3=3500 * drift,
        generator_hours=900 * drift,
        generator_kwh=2000 * drift,
        fuel_l=1200 * drift,
        grid_kwh=150 * drift[..., None, None],
    )


def priced(**finance: float | str) -> LifeCycle:
    scenario = priced_scenario(**finance)
    lines = bill_of_quantities(scenario, SOURCES, strings=2, tank_m3=20.0)
    return life_cycle(scenario, SOURCES, lines, some_quantities())


def test_flows_of_each_kind() -> None:
    terms = make_terms(
        4,
        yearly_costs=50.0,
        direct_support=400.0,
        water_price_per_m3=0.5,
        tariff=make_tariff(price_per_kwh=0.1),
        grid_price_growth=0.1,
        generator=make_generator(service_interval_h=250.0),
        fuel_price_per_l=2.0,
        fuel_price_growth=0.5,
        service_price=30.0,
    )
    quantities = make_quantities(4, delivered_m3=100.0, grid_kwh=10.0, fuel_l=[8.0, 0, 8, 8], generator_hours=200.0)
    flows = flows_of(terms, [line(1000.0, 3.0, 2.0), line(300.0, 8.0)], quantities)
    expected: dict[str, Any] = {
        "construction": [1300, 0, 0, 0, 0],
        "replacement": [0, 0, 0, 1000, 0],
        "residual": [0, 0, 0, 0, -(1000 * 2 / 3 + 300 / 2)],
        "upkeep": [0, 20, 20, 20, 20],
        "grid": [0, 12, 13.2, 14.52, 15.972],
        "fuel": [0, 16, 0, 36, 54],
        "generator_service": [0, 0, 30, 30, 30],
        "yearly_costs": [0, 50, 50, 50, 50],
        "direct_support": [0, 400, 400, 400, 400],
        "revenue": [0, 50, 50, 50, 50],
    }
    for name, values in expected.items():
        np.testing.assert_allclose(getattr(flows, name), values, err_msg=name)
    costs = np.sum([values for name, values in expected.items() if name != "revenue"], axis=0)
    np.testing.assert_allclose(flows.total_cost(), costs)
    assert list(flows.costs_by_category()) == [name for name in expected if name != "revenue"]


def test_generator_is_replaced_by_hours_or_years() -> None:
    terms = make_terms(10, generator=make_generator(life_hours=4000.0, life_years=15.0))
    machine = [line(4000.0, 15.0, by_hours=True)]
    busy = flows_of(terms, machine, make_quantities(10, generator_hours=1000.0))
    assert np.flatnonzero(busy.replacement).tolist() == [4, 8]
    assert busy.residual[-1] == pytest.approx(-2000.0)
    idle = flows_of(terms, [line(4000.0, 4.0, by_hours=True)], make_quantities(10))
    assert np.flatnonzero(idle.replacement).tolist() == [4, 8]


def test_life_cycle_figures_are_those_of_numpy_financial() -> None:
    life = priced()
    total = life.flows.total_cost()
    assert life.present_cost == pytest.approx(npf.npv(0.06, total), rel=1e-12)
    assert life.present_cost == pytest.approx(sum(life.present_by_category.values()), rel=1e-12)
    assert life.revenue_present == pytest.approx(npf.npv(0.06, life.flows.revenue), rel=1e-12)
    assert life.npv == pytest.approx(life.revenue_present - life.present_cost)
    assert life.equivalent_yearly_cost == pytest.approx(-npf.pmt(0.06, YEARS, life.present_cost), rel=1e-12)
    volume = npf.npv(0.06, np.concatenate([[0.0], some_quantities().delivered_m3]))
    assert life.levelised_cost_per_m3 == pytest.approx(life.present_cost / volume, rel=1e-12)
    assert life.cost_per_person_year == pytest.approx(life.equivalent_yearly_cost / 500)
    equipment = 1500 + 12 * 120 + 4000
    assert life.capital_cost == pytest.approx(1.05 * (9000 + 2500 + 900 + 1.1 * equipment))


def test_prices_of_the_scenario_reach_the_flows() -> None:
    flows, used = priced().flows, some_quantities()
    grown = np.arange(YEARS)
    np.testing.assert_allclose(flows.fuel[1:], (1.1 + 0.2) * 1.03**grown * used.fuel_l)
    np.testing.assert_allclose(flows.grid[1:], 1.02**grown * (12 * 4 + 0.2 * used.grid_kwh.sum(axis=(-1, -2))))
    # 12 960 h in all, a service each 250 h; one overhaul at 4000 h, a new machine at 8000 h, one more at 12 000 h
    assert used.generator_hours.sum() == pytest.approx(12_960)
    assert flows.generator_service.sum() == pytest.approx(51 * 60 + 2 * 700)
    np.testing.assert_allclose(flows.revenue[1:], 0.5 * used.delivered_m3)


def test_yearly_costs_are_those_of_the_option() -> None:
    scenario = priced_scenario()
    lines = bill_of_quantities(scenario, (SOLAR,), strings=2, tank_m3=20.0)
    alone = cash_flows(scenario, (SOLAR,), lines, some_quantities())
    assert alone.yearly_costs.tolist() == [0.0] + [600.0] * YEARS
    assert not alone.grid.any()
    assert not alone.fuel.any()
    assert priced().flows.yearly_costs.tolist() == [0.0] + [690.0] * YEARS


def test_carbon_dioxide() -> None:
    used = some_quantities()
    np.testing.assert_allclose(priced().co2_kg, 2.7 * used.fuel_l + 0.5 * used.grid_kwh.sum(axis=(-1, -2)))
    scenario = make_scenario()  # no factor given: the grid is not counted
    life = life_cycle(scenario, (GRID,), [], make_quantities(20, grid_kwh=100.0, fuel_l=1.0))
    assert not life.co2_kg.any()


def test_no_water_and_no_people_give_no_figure() -> None:
    terms = make_terms(5)
    quantities = make_quantities(5)
    life = appraise(terms, flows_of(terms, [line(100.0)], quantities), quantities)
    assert np.isnan(life.levelised_cost_per_m3)
    assert np.isnan(life.cost_per_person_year)


@given(rate=st.floats(-0.02, 0.2), inflation=st.floats(-0.02, 0.15))
@settings(max_examples=30, deadline=None)
def test_constant_and_nominal_prices_agree(rate: float, inflation: float) -> None:
    grant_and_inflation = {"grant_percent": 30.0, "inflation_percent": 100 * inflation}
    nominal = (1 + rate) * (1 + inflation) - 1
    constant = priced(discount_rate_percent=100 * rate, **grant_and_inflation)
    rising = priced(discount_rate_percent=100 * nominal, prices="nominal", **grant_and_inflation)
    for name in (
        "present_cost",
        "revenue_present",
        "npv",
        "equivalent_yearly_cost",
        "levelised_cost_per_m3",
        "capital_cost",
        "owner_present_cost",
    ):
        assert getattr(rising, name) == pytest.approx(getattr(constant, name), rel=1e-9), name


def test_grant_and_loan() -> None:
    life = priced(grant_percent=40.0, loan_percent=30.0, loan_rate_percent=9.0, loan_years=4)
    assert life.grant == pytest.approx(0.4 * life.capital_cost)
    assert life.loan == pytest.approx(0.3 * life.capital_cost)
    due = -npf.pmt(0.09, 4, float(life.loan))
    np.testing.assert_allclose(life.loan_payment, [0.0, *[due] * 4, *[0.0] * (YEARS - 4)])
    flows = life.flows.total_cost() + life.loan_payment
    flows[0] -= life.grant + life.loan
    np.testing.assert_allclose(life.owner_flows, flows)
    assert life.owner_present_cost == pytest.approx(npf.npv(0.06, flows))
    assert life.present_cost == pytest.approx(priced().present_cost)  # before grant and loan


def test_a_loan_at_the_discount_rate_costs_the_owner_nothing() -> None:
    life = priced(loan_percent=50.0, loan_rate_percent=6.0, loan_years=7)
    assert life.owner_present_cost == pytest.approx(life.present_cost)


def test_a_loan_is_nominal_and_so_cheaper_where_prices_rise() -> None:
    loan = {"loan_percent": 50.0, "loan_rate_percent": 6.0, "loan_years": 7}
    life = priced(inflation_percent=10.0, **loan)
    np.testing.assert_allclose(life.loan_payment[1:8] * 1.1 ** np.arange(1, 8), -npf.pmt(0.06, 7, float(life.loan)))
    nominal = priced(inflation_percent=10.0, discount_rate_percent=100 * (1.06 * 1.1 - 1), prices="nominal", **loan)
    assert nominal.owner_present_cost == pytest.approx(life.owner_present_cost)
    assert life.owner_present_cost < life.present_cost


def test_an_interest_free_loan_is_repaid_in_equal_parts() -> None:
    life = priced(loan_percent=50.0, loan_years=5)
    np.testing.assert_allclose(life.loan_payment[1:6], life.loan / 5)


def test_comparison_with_a_reference() -> None:
    terms = make_terms(5, 0.1)
    water = make_quantities(5, delivered_m3=100.0)

    def life(price: float, yearly: float) -> LifeCycle:
        own = replace(terms, yearly_costs=yearly)
        return appraise(own, flows_of(own, [line(price, 5.0)], water), water)

    found = compare(life(1000.0, 50.0), life(200.0, 300.0))
    flows = [-800.0, *[250.0] * 5]
    assert found.saving_present == pytest.approx(npf.npv(0.1, flows))
    assert found.internal_rate_of_return == pytest.approx(npf.irr(flows))
    assert found.simple_payback_years == pytest.approx(3.2)
    # -800 + 250 (1 - 1.1^-4) / 0.1 = -7.53, and 250 / 1.1^5 = 155.23 follows in year 5
    assert found.discounted_payback_years == pytest.approx(4 + 7.53364 / 155.23033, abs=1e-5)
    assert (found.irr_reason, found.payback_reason, found.discounted_payback_reason) == ("", "", "")
    back = compare(life(200.0, 300.0), life(1000.0, 50.0))
    assert np.isnan(back.internal_rate_of_return)
    assert "no extra outlay" in str(back.irr_reason)
    assert back.saving_present == pytest.approx(-found.saving_present)


# ---------------------------------------------------------------------------------------------------- many cases


def assert_cases_agree(many: LifeCycle, one: Callable[[int], LifeCycle], cases: int) -> None:
    for case in range(cases):
        single = one(case)
        for name in ("present_cost", "levelised_cost_per_m3", "owner_present_cost", "capital_cost", "npv"):
            both = np.broadcast_to(getattr(many, name), (cases,))
            assert both[case] == pytest.approx(float(getattr(single, name)), rel=1e-12), name
        total = np.broadcast_to(many.owner_flows, (cases, YEARS + 1))
        np.testing.assert_allclose(total[case], single.owner_flows, rtol=1e-12)


def test_prices_as_arrays_give_what_single_prices_give() -> None:
    scenario = priced_scenario(grant_percent=20.0, loan_percent=30.0, loan_rate_percent=5.0)
    base = terms_of(scenario, SOURCES)
    lines = bill_of_quantities(scenario, SOURCES, strings=2, tank_m3=20.0)
    random = np.random.default_rng(4)
    varied = [
        "discount_rate",
        "grant_share",
        "loan_rate",
        "water_price_per_m3",
        "yearly_costs",
        "grid_price_factor",
        "grid_price_growth",
        "fuel_price_per_l",
        "fuel_price_growth",
        "service_price",
        "overhaul_price",
    ]
    prices: dict[str, Any] = {name: getattr(base, name) * random.uniform(0.5, 1.5, 6) for name in varied}
    pump = random.uniform(500, 3000, 6)

    def priced_at(terms: Terms, pump_price: float | np.ndarray) -> LifeCycle:
        dearer = [replace(x, unit_price=pump_price) if x.label == "Invented pump" else x for x in lines]
        whole = with_percentages(dearer, {"installation": 10.0, "contingency": 5.0}, YEARS)
        return appraise(terms, flows_of(terms, whole, some_quantities()), some_quantities())

    many = priced_at(replace(base, **prices), pump)
    assert many.present_cost.shape == (6,)
    assert_cases_agree(
        many,
        lambda case: priced_at(replace(base, **{name: x[case] for name, x in prices.items()}), float(pump[case])),
        6,
    )


@pytest.mark.parametrize("prices", ["constant", "nominal"])
def test_quantities_as_arrays_give_what_single_quantities_give(prices: str) -> None:
    scenario = priced_scenario(prices=prices, inflation_percent=3.0, loan_percent=30.0, loan_rate_percent=5.0)
    scales, strings = np.array([0.5, 1.0, 2.5]), np.array([1, 2, 5])

    def at(scale: float | np.ndarray, string: int | np.ndarray) -> LifeCycle:
        lines = bill_of_quantities(scenario, SOURCES, strings=string, tank_m3=20.0)
        return life_cycle(scenario, SOURCES, lines, some_quantities(scale))

    assert_cases_agree(at(scales, strings), lambda case: at(float(scales[case]), int(strings[case])), 3)


def test_wrong_years_and_missing_sources_are_refused() -> None:
    with pytest.raises(ValueError, match="hold 5 years, the terms count 20"):
        flows_of(make_terms(20), [], make_quantities(5))
    with pytest.raises(ValueError, match="worn by running hours"):
        flows_of(make_terms(20), [line(1.0, by_hours=True)], make_quantities(20))
    scenario = make_scenario(sources={"solar": None})
    with pytest.raises(ValueError, match="does not describe the source 'solar'"):
        terms_of(scenario, (SOLAR,))


# ---------------------------------------------------------------------------------------------------- invariants


def figures(terms: Terms, lines: list[Line]) -> LifeCycle:
    return appraise(terms, flows_of(terms, lines, some_quantities()), some_quantities())


def all_priced(rate: float) -> Terms:
    return make_terms(
        YEARS,
        rate,
        yearly_costs=100.0,
        water_price_per_m3=0.3,
        tariff=make_tariff(price_per_kwh=0.2),
        generator=make_generator(life_hours=8000.0, overhaul_interval_h=4000.0),
        fuel_price_per_l=1.2,
        service_price=40.0,
        overhaul_price=500.0,
    )


LINES = [line(1000.0, 4.0, 2.0), line(800.0, 30.0), line(3000.0, 15.0, 1.0, by_hours=True)]
PRICES = ["yearly_costs", "grid_price_factor", "fuel_price_per_l", "service_price", "overhaul_price"]


@given(rate=RATE, price=st.sampled_from([*PRICES, *range(len(LINES))]), scale=st.floats(1.01, 10))
def test_present_cost_rises_with_any_price(rate: float, price: str | int, scale: float) -> None:
    terms, lines = all_priced(rate), list(LINES)
    before = figures(terms, lines).present_cost
    if isinstance(price, str):
        changes: dict[str, Any] = {price: scale * getattr(terms, price)}
        terms = replace(terms, **changes)
    else:
        lines[price] = replace(lines[price], unit_price=scale * lines[price].unit_price)
    assert figures(terms, lines).present_cost > before


@given(rate=RATE, scale=SCALE)
def test_present_cost_scales_with_all_prices(rate: float, scale: float) -> None:
    terms = all_priced(rate)
    prices: dict[str, Any] = {name: scale * getattr(terms, name) for name in PRICES}
    scaled = replace(terms, **prices)
    lines = [replace(x, unit_price=scale * x.unit_price) for x in LINES]
    assert figures(scaled, lines).present_cost == pytest.approx(scale * figures(terms, LINES).present_cost, rel=1e-9)


def test_no_interest_makes_a_plain_sum() -> None:
    life = figures(all_priced(0.0), LINES)
    assert life.present_cost == pytest.approx(life.flows.total_cost().sum())
    assert life.equivalent_yearly_cost == pytest.approx(life.present_cost / YEARS)
    assert life.levelised_cost_per_m3 == pytest.approx(life.present_cost / some_quantities().delivered_m3.sum())


@given(price=st.floats(0, 1e6), life=st.floats(0.3, 60), years=st.integers(1, 40))
def test_replacements_and_residual_of_a_line(price: float, life: float, years: int) -> None:
    flows = flows_of(make_terms(years), [line(price, life)], make_quantities(years))
    whole = max(1, int(life + 0.5))
    times = -(-years // whole) - 1
    assert flows.replacement.sum() == pytest.approx(times * price)
    assert flows.replacement[-1] == 0
    assert np.all(flows.residual[:-1] == 0)
    assert 0 <= -flows.residual[-1] <= price
    # straight line: what has been bought, less what is left, is what the years have used
    used = price * years / whole
    assert price * (1 + times) + flows.residual[-1] == pytest.approx(used, abs=1e-6)


def test_every_kind_of_flow_is_counted() -> None:
    ones = CashFlows(*[np.array([1.0, 2.0])] * 10, further={"water_carts": np.array([1.0, 2.0])})
    assert ones.total_cost().tolist() == [10.0, 20.0]
    assert ones.times(np.array([1.0, 3.0])).total_cost().tolist() == [10.0, 60.0]
