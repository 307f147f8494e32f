"""The comparison as a whole: balances, invariants, the search and the ranking."""

from __future__ import annotations

import numpy as np
import pytest

from planner.scenario.errors import InputError
from planner.study.compare import Study
from planner.study.words import sentences
from planner.water.demand import daily_demand_m3
from tests.study.scenarios import changed, studied

MONTH_DAYS = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])

FIXED = {
    "finance__analysis_period_years": 4,
    "tank__volume_m3": 30.0,
    "sources__solar__strings": 2,
}
STEADY = FIXED | {
    "weather": {"kind": "file", "file": "dry-village-weather.csv"},
    "demand__growth_percent_per_year": 0.0,
    "sources__solar__degradation_percent_per_year": 0.0,
    "sources__grid__outages": None,
}


@pytest.fixture(scope="module")
def study() -> Study:
    return studied(**FIXED)


def test_all_seven_options_are_formed(study: Study) -> None:
    assert [option.name for option in study.options] == [
        "solar",
        "grid",
        "generator",
        "solar + grid",
        "solar + generator",
        "grid + generator",
        "solar + grid + generator",
    ]


def test_water_balances_in_every_year_of_every_option(study: Study) -> None:
    for option in study.options:
        outcome = option.outcome
        pumped = (outcome.solar_m3 + outcome.grid_m3 + outcome.generator_m3).sum(axis=-1)
        stored = outcome.level_end_m3 - outcome.level_start_m3
        np.testing.assert_allclose(pumped - (outcome.delivered_m3 + outcome.leakage_m3).sum(axis=-1), stored, atol=1e-7)


def test_demand_is_that_of_the_scenario(study: Study) -> None:
    wanted = daily_demand_m3(study.scenario.demand, 4) * MONTH_DAYS
    for option in study.options:
        # What users want and what money counts is the draw less the leakage of 8 %.
        np.testing.assert_allclose(option.outcome.demand_m3, wanted * 0.92, rtol=1e-9)
        np.testing.assert_allclose(option.quantities.demand_m3, wanted.sum(axis=-1) * 0.92, rtol=1e-9)


def test_energy_is_used_or_idle_and_only_from_sources_at_hand(study: Study) -> None:
    for option in study.options:
        outcome = option.outcome
        assert outcome.idle_kwh.min() > -1e-6
        assert outcome.solar_kwh.min() > -1e-6
        for source, quantity in (
            ("solar", outcome.solar_kwh),
            ("grid", outcome.grid_kwh),
            ("generator", outcome.generator_kwh),
        ):
            if source not in option.sources:
                assert quantity.max() == 0, (option.name, source)
            elif len(option.sources) == 1:
                assert quantity.sum(axis=1).min() > 0, (option.name, source)
    sunny = [option for option in study.options if "solar" in option.sources]
    offered = [(option.outcome.solar_kwh + option.outcome.idle_kwh).sum() for option in sunny]
    np.testing.assert_allclose(offered, offered[0])


def test_grid_power_times_hours_is_grid_energy(study: Study) -> None:
    grid = study.option("grid").outcome
    kwh_per_hour = grid.grid_kwh.sum(axis=-1) / grid.grid_hours
    assert kwh_per_hour.max() <= 2.4 / 0.95 + 1e-9
    assert grid.grid_peak_kw.max() <= 2.4 / 0.95 + 1e-9
    assert grid.grid_peak_kw.max() > 0.9 * 2.4 / 0.95


def test_fuel_follows_hours_and_energy(study: Study) -> None:
    outcome = study.option("generator").outcome
    fuel = 0.08145 * 7.5 * outcome.generator_hours + 0.246 * outcome.generator_kwh
    np.testing.assert_allclose(outcome.fuel_l, fuel)


def test_one_option_alone_gives_the_same_figures_as_among_seven(study: Study) -> None:
    for name in ("solar", "solar + grid", "solar + grid + generator"):
        alone = studied(**FIXED, service__options=[name]).option(name)
        among = study.option(name)
        np.testing.assert_array_equal(alone.outcome.delivered_m3, among.outcome.delivered_m3)
        np.testing.assert_array_equal(alone.outcome.grid_kwh, among.outcome.grid_kwh)
        assert float(alone.life.present_cost) == float(among.life.present_cost)


def test_one_life_year_alone_gives_the_same_as_within_the_whole_life() -> None:
    names = ["solar", "solar + generator"]
    whole = studied(**STEADY, service__options=names)
    alone = studied(**(STEADY | {"finance__analysis_period_years": 1}), service__options=names)
    for name in names:
        for year in range(4):
            np.testing.assert_array_equal(
                whole.option(name).outcome.delivered_m3[year], alone.option(name).outcome.delivered_m3[0]
            )
            np.testing.assert_array_equal(whole.option(name).outcome.fuel_l[year], alone.option(name).outcome.fuel_l[0])


def test_same_seed_same_numbers_other_seed_others() -> None:
    small = FIXED | {"service__options": ["solar", "solar + grid"]}
    first, again, other = studied(**small), studied(**small), studied(**small, seed=2)
    for name in ("solar", "solar + grid"):
        np.testing.assert_array_equal(first.option(name).outcome.delivered_m3, again.option(name).outcome.delivered_m3)
        assert float(first.option(name).life.present_cost) == float(again.option(name).life.present_cost)
    assert not np.array_equal(first.option("solar").outcome.delivered_m3, other.option("solar").outcome.delivered_m3)


def test_with_hardly_any_panel_solar_and_grid_is_grid_alone() -> None:
    # One module of a thousandth of the pump's power never starts it; same float switch in both options.
    levels = {
        "start_level_percent": 20.0,
        "stop_level_percent": 40.0,
        "start_level_without_sun_percent": 20.0,
        "stop_level_without_sun_percent": 40.0,
    }
    night = studied(
        **FIXED, topup=levels, controller__mode="changeover", controller__dc_voltage_min_v=419.0,
        service__options=["grid", "solar + grid"],
    )  # fmt: skip
    assert night.option("solar + grid").outcome.solar_kwh.max() < 1e-9
    np.testing.assert_allclose(
        night.option("solar + grid").outcome.delivered_m3, night.option("grid").outcome.delivered_m3, atol=1e-9
    )
    np.testing.assert_allclose(
        night.option("solar + grid").outcome.grid_kwh, night.option("grid").outcome.grid_kwh, atol=1e-9
    )


def test_more_panels_or_a_larger_tank_never_deliver_less_on_sun_alone() -> None:
    def share(strings: int, tank_m3: float) -> float:
        return studied(
            **(FIXED | {"sources__solar__strings": strings, "tank__volume_m3": tank_m3}), service__options=["solar"]
        ).option("solar").delivered_share  # fmt: skip

    by_strings = [share(strings, 20.0) for strings in (1, 2, 3)]
    assert by_strings == sorted(by_strings)
    assert by_strings[0] < by_strings[-1]
    # A larger tank starts with more water in it (half full), so the comparison is safe in this direction.
    by_tank = [share(2, tank) for tank in (10.0, 20.0, 50.0)]
    assert by_tank == sorted(by_tank)


def test_the_tank_curve_is_what_separate_runs_give(study: Study) -> None:
    solar = study.option("solar")
    place = solar.tank_curve.volume_m3.tolist().index(50.0)
    separate = studied(**(FIXED | {"tank__volume_m3": 50.0}), service__options=["solar"]).option("solar")
    assert solar.tank_curve.delivered_share[place] == pytest.approx(separate.delivered_share, abs=1e-12)


def test_auto_takes_the_smallest_tank_that_serves() -> None:
    chosen = studied(**(FIXED | {"tank__volume_m3": "auto"}), service__options=["solar"]).option("solar")
    sizes = [size.volume_m3 for size in chosen.scenario.tank.sizes]
    shares = {
        size: studied(**(FIXED | {"tank__volume_m3": size}), service__options=["solar"]).option("solar").delivered_share
        for size in sizes
    }
    assert chosen.tank_m3 == min(size for size in sizes if shares[size] >= 0.97)
    assert chosen.tank_m3 > sizes[0]


@pytest.mark.slow
def test_auto_strings_and_tank_are_the_cheapest_by_brute_force() -> None:
    name = "solar + generator"
    auto = FIXED | {"tank__volume_m3": "auto", "sources__solar__strings": "auto", "service__options": [name]}
    chosen = studied(**auto).option(name)
    sizes = [size.volume_m3 for size in chosen.scenario.tank.sizes]
    costs = {}
    for strings in range(1, 5):
        for size in sizes:
            fixed = auto | {"tank__volume_m3": size, "sources__solar__strings": strings}
            option = studied(**fixed).option(name)
            if option.meets_service:
                costs[strings, size] = float(option.life.present_cost)
    assert (chosen.strings, chosen.tank_m3) == min(costs, key=costs.__getitem__)
    assert float(chosen.life.present_cost) == pytest.approx(min(costs.values()), rel=1e-12)


def test_auto_levels_are_the_cheapest_that_serve() -> None:
    auto = {"topup": {"start_level_percent": "auto", "stop_level_percent": "auto"}}
    option = studied(**FIXED, **auto, service__options=["solar + generator"]).option("solar + generator")
    serving = [trial for trial in option.trials if trial.meets_service]
    assert option.levels == (option.trials[0].start_percent, option.trials[0].stop_percent)
    assert option.trials[0].present_cost == min(trial.present_cost for trial in serving)
    assert float(option.life.present_cost) == pytest.approx(option.trials[0].present_cost, rel=1e-12)
    given = studied(
        **FIXED,
        topup={"start_level_percent": option.levels[0], "stop_level_percent": option.levels[1]},
        service__options=["solar + generator"],
    ).option("solar + generator")
    assert float(given.life.present_cost) == pytest.approx(float(option.life.present_cost), rel=1e-12)


def test_a_careless_float_switch_costs_fuel(study: Study) -> None:
    trials = {(trial.start_percent, trial.stop_percent): trial for trial in study.option("solar + generator").trials}
    assert trials[70.0, 90.0].fuel_l_per_year > 1.5 * trials[10.0, 20.0].fuel_l_per_year


def test_options_that_miss_the_target_rank_last() -> None:
    poor = studied(**(FIXED | {"sources__solar__strings": 1, "tank__volume_m3": 10.0}))
    serves = [option.meets_service for option in poor.ranked]
    assert not poor.option("solar").meets_service
    assert serves == sorted(serves, reverse=True)
    costs = [float(option.life.present_cost) for option in poor.ranked if option.meets_service]
    assert costs == sorted(costs)
    assert poor.best == poor.ranking[0]


def test_nothing_serves() -> None:
    none = studied(
        **(FIXED | {"sources__solar__strings": 1, "tank__volume_m3": 10.0}), service__options=["solar"]
    )  # fmt: skip
    assert none.best is None
    assert sentences(none)[0].startswith("No option meets the target of 97 % of the water; solar comes nearest")
    assert "more hours of power, more flow within what the borehole may give, or less demand" in sentences(none)[1]


def test_sentences_name_the_best_and_what_the_top_up_is_worth(study: Study) -> None:
    said = sentences(study)
    assert study.best is not None
    assert f"{study.best} costs least" in said[0]
    assert any(sentence.startswith("A top-up from the ") for sentence in said)
    assert any("float switch" in sentence for sentence in said)


def test_an_override_changes_its_option_only(study: Study) -> None:
    overrides = {"grid": {"tank": {"volume_m3": 75.0}}}
    larger = studied(**FIXED, overrides=overrides, service__options=["solar", "grid"])
    assert larger.option("grid").tank_m3 == 75.0
    assert larger.option("solar").tank_m3 == 30.0
    np.testing.assert_array_equal(
        larger.option("solar").outcome.delivered_m3, study.option("solar").outcome.delivered_m3
    )
    assert larger.option("grid").delivered_share >= study.option("grid").delivered_share


def test_a_daily_limit_holds() -> None:
    limited = studied(**FIXED, borehole__daily_limit_m3=20.0, service__options=["generator"])
    outcome = limited.option("generator").outcome
    assert (outcome.generator_m3 <= 20.0 * MONTH_DAYS + 1e-6).all()
    assert limited.option("generator").delivered_share < 0.9


def test_a_changeover_controller_takes_more_from_the_grid(study: Study) -> None:
    changeover = studied(**FIXED, controller__mode="changeover", service__options=["solar + grid"])
    parallel_kwh = study.option("solar + grid").outcome.grid_kwh.sum()
    assert changeover.option("solar + grid").outcome.grid_kwh.sum() > parallel_kwh


def test_the_scenario_used_is_the_one_checked() -> None:
    assert changed(**FIXED).finance.analysis_period_years == 4


def test_an_override_may_change_a_bands_price_but_not_its_hours() -> None:
    bands = [{"name": "Evening", "hours": [[18.0, 22.0]], "price_per_kwh": 0.4}]
    grid = {"sources__grid__tariff__bands": bands, "service__options": ["grid", "solar + grid"]}
    dearer = [bands[0] | {"price_per_kwh": 0.8}]
    override = {"grid": {"sources": {"grid": {"tariff": {"bands": dearer}}}}}
    base, changed_price = studied(**FIXED, **grid), studied(**FIXED, **grid, overrides=override)
    assert float(changed_price.option("grid").life.present_cost) > float(base.option("grid").life.present_cost)
    same = "solar + grid"
    assert float(changed_price.option(same).life.present_cost) == float(base.option(same).life.present_cost)
    moved = [bands[0] | {"hours": [[6.0, 9.0]]}]
    override = {"grid": {"sources": {"grid": {"tariff": {"bands": moved}}}}}
    with pytest.raises(InputError, match="not their number, hours or months"):
        studied(**FIXED, **grid, overrides=override)


def test_cables_cost_energy_and_thicker_ones_less() -> None:
    run = {"length_m": 60.0, "section_mm2": 4.0}
    thin = {
        "dc": run,
        "ac": run,
        "drop": {"length_m": 80.0, "section_mm2": 2.5, "supply": "3-phase", "voltage_v": 230.0},
    }
    thick = {name: cable | {"section_mm2": 16.0} for name, cable in thin.items()}
    grid = {"sources__grid__voltage_v": 230.0, "sources__grid__phases": 1, "service__options": ["solar", "grid"]}
    none, thinly, thickly = (studied(**FIXED, **grid, cables=cables) for cables in (None, thin, thick))
    kwh = [float(study.option("grid").outcome.grid_kwh.sum()) for study in (none, thickly, thinly)]
    water = [float(study.option("grid").outcome.grid_m3.sum()) for study in (none, thickly, thinly)]
    per_m3 = [energy / volume for energy, volume in zip(kwh, water, strict=True)]
    assert per_m3 == sorted(per_m3)
    assert per_m3[0] * 1.02 < per_m3[2] < per_m3[0] * 1.25
    offered = [
        float((study.option("solar").outcome.solar_kwh + study.option("solar").outcome.idle_kwh).sum())
        for study in (thickly, thinly)
    ]
    assert offered[0] > offered[1]
