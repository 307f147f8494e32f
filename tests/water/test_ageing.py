from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.money.flows import renewals
from planner.scenario.equipment import whole_years
from planner.scenario.waterworks import Borehole, CurvePoint, Pipeline, Pump
from planner.water.ageing import ageing_of
from planner.water.duty import CannotDraw, CannotLift, flow_table
from planner.water.pump import PumpModel, hydraulic_power_w, pump_model, rising_root

MakeB = Callable[..., Borehole]
MakeL = Callable[..., Pipeline]
MakeP = Callable[..., Pump]
KINDS = ["centrifugal", "helical-rotor"]
NOT_AGEING = {"specific_capacity_decline_percent_per_year": 0.0}


def flow_at(model: PumpModel, head_m: float, wear: float, speed: float = 1.0) -> float:
    return float(
        rising_root(lambda flow: -model.surplus(flow, np.array(head_m), np.array(speed), wear), 0.0, model.max_flow_m3h)
    )


def test_worn_rings_of_a_centrifugal_pump(make_pump: MakeP) -> None:
    # Q = Q_new - w Qb sqrt(H/Hb), shaft power at the same impeller flow (Guelich, from memory): with w = 0.05 at Hb
    # flow and efficiency x 0.95, energy per m3 x 1.0526; at a quarter of the head half the leak
    model = pump_model(make_pump())
    assert flow_at(model, 180.0, 0.0) == pytest.approx(2.0)
    worn = flow_at(model, 180.0, 0.05)
    assert worn == pytest.approx(1.9)
    shaft = [float(model.shaft_w(*point, 1.0, w)) for point, w in (((2.0, 180.0), 0.0), ((worn, 180.0), 0.05))]
    assert shaft[1] == pytest.approx(shaft[0])
    per_m3 = [float(model.input_power_w(q, 180.0, 1.0, w)) / q for q, w in ((2.0, 0.0), (worn, 0.05))]
    assert per_m3[1] / per_m3[0] == pytest.approx(1.0526, abs=1e-4)
    assert flow_at(model, 45.0, 0.0) - flow_at(model, 45.0, 0.05) == pytest.approx(0.025 * 2.0)
    assert float(model.head_m(0.0, 1.0, 0.05)) < model.max_head_m


def test_worn_stator_of_a_helical_rotor_pump(make_pump: MakeP) -> None:
    # nD = 2.0, slip 0.2 straight in head: 1.8 new, 1.6 with the slip doubled; at half the head 1.9 and 1.8
    model = pump_model(
        make_pump(kind="helical-rotor", rated_flow_m3h=1.8, max_flow_m3h=2.0, rated_head_m=100.0, max_head_m=1000.0)
    )
    doubled = 0.2 / 1.8  # as a share of the rated flow
    new, worn = ([flow_at(model, head, w) for head in (100.0, 50.0)] for w in (0.0, doubled))
    assert new == pytest.approx([1.8, 1.9])
    assert worn == pytest.approx([1.6, 1.8])
    assert float(model.shaft_w(1.6, 100.0, 1.0, doubled)) == pytest.approx(float(model.shaft_w(1.8, 100.0, 1.0)))


@pytest.mark.parametrize("kind", KINDS)
def test_wear_is_that_of_the_plate_and_grows_with_head(
    make_pump: MakeP, datasheet: list[CurvePoint], kind: str
) -> None:
    for curve in ([], datasheet) if kind == "centrifugal" else ([],):
        model = pump_model(make_pump(kind=kind, curve=curve))
        lost = [flow_at(model, head, 0.0) - flow_at(model, head, 0.1) for head in (90.0, 180.0, 200.0)]
        assert lost[1] == pytest.approx(0.1 * model.rated_flow_m3h, rel=1e-6)
        assert lost[0] < lost[1] < lost[2]
        worn = flow_at(model, 180.0, 0.1)
        assert hydraulic_power_w(worn, 180.0) < model.shaft_w(worn, 180.0, 1.0, 0.1)


def test_specific_capacity_falls_compound_and_the_level_straight(make_borehole: MakeB, make_pump: MakeP) -> None:
    borehole = make_borehole(specific_capacity_decline_percent_per_year=2.0, level_decline_m_per_year=0.3)
    aged = ageing_of(borehole, make_pump(), 16)
    assert (aged.drawdown_growth[0], aged.level_fall_m[0], aged.wear[0]) == (1.0, 0.0, 0.0)
    assert aged.drawdown_growth[15] == pytest.approx(1 / 0.7386, rel=1e-4)  # 0.98^15, worked by hand
    assert aged.level_fall_m[15] == pytest.approx(4.5)


@settings(max_examples=30)
@given(life=st.floats(0.6, 30), years=st.integers(1, 40))
def test_wear_ends_where_the_money_buys_a_new_pump(
    make_borehole: MakeB, make_pump: MakeP, life: float, years: int
) -> None:
    wear = ageing_of(make_borehole(), make_pump(life_years=life, wear_percent_per_year=1.0), years).wear
    bought = renewals(whole_years(life), np.arange(years + 1), years)
    new_in_year = np.concatenate([[True], bought[1:years] > 0])  # bought at the end of year n, new in year n + 1
    assert ((wear == 0) == new_in_year).all()
    assert wear.max() <= 0.01 * (whole_years(life) - 1) + 1e-12


@pytest.mark.parametrize("kind", KINDS)
def test_each_year_of_the_table_is_that_of_works_as_they_then_stand(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP, kind: str
) -> None:
    months = [60.0 + month for month in range(12)]
    borehole = make_borehole(
        static_level_by_month_m=months, level_decline_m_per_year=0.5, specific_capacity_decline_percent_per_year=2.0
    )
    pump = make_pump(kind=kind, wear_percent_per_year=0.0)
    table = flow_table(borehole, make_pipeline(), pump, years=8)
    assert table.flow_m3h.shape == (8, 12, 40)
    then = make_borehole(
        static_level_by_month_m=[level + 3.5 for level in months],
        specific_capacity_m3h_per_m=0.98**7,
        **NOT_AGEING,
    )
    alone = flow_table(then, make_pipeline(), pump)
    assert table.power_w[7] == pytest.approx(alone.power_w[0], rel=1e-9)
    assert table.flow_m3h[7] == pytest.approx(alone.flow_m3h[0], rel=1e-9)
    assert (table.full_flow_m3h[7] < table.full_flow_m3h[0]).all()
    hours, month = np.full((24, 16), 1500.0), np.full(24, 11)
    year = np.tile(np.arange(8), 2)
    flow = table.flow_at(hours, month, year)
    assert (np.diff(flow[0, :8]) < 0).all()
    assert flow[:, :8] == pytest.approx(flow[:, 8:])
    assert flow[0, 7] == pytest.approx(float(table.in_year(7).flow_at([1500.0], [11])[0]))
    assert table.power_used(np.full((24, 16), 9e9), month, year)[0] == pytest.approx(
        np.tile(table.full_power_w[:, 11], 2)
    )


def test_worn_pump_gives_less_and_a_new_one_all_again(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP
) -> None:
    table = flow_table(
        make_borehole(**NOT_AGEING), make_pipeline(), make_pump(life_years=5, wear_percent_per_year=3), years=8
    )
    full = table.full_flow_m3h[:, 0]
    assert (np.diff(full[:5]) < 0).all()
    assert full[5:] == pytest.approx(full[:3])


def test_works_that_do_not_age_share_one_year(make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP) -> None:
    table = flow_table(make_borehole(**NOT_AGEING), make_pipeline(), make_pump(wear_percent_per_year=0.0), years=20)
    assert table.power_w.shape == (1, 12, 40)
    assert table.flow_at(np.full((3, 20), 1500.0), np.zeros(3, dtype=int), np.arange(20)).std() == 0


def test_water_that_falls_out_of_reach_stops_the_pump_but_not_the_run(
    make_borehole: MakeB, make_pipeline: MakeL, make_pump: MakeP
) -> None:
    falling = make_borehole(level_decline_m_per_year=5.0)
    table = flow_table(falling, make_pipeline(), make_pump(), years=12)  # 90 m in year 7, at the intake
    assert table.full_flow_m3h[5, 0] > 0
    assert (table.full_flow_m3h[6:] == 0).all()
    power, month, year = np.full((2, 12), 2000.0), np.zeros(2, dtype=int), np.arange(12)
    assert table.flow_at(power, month, year)[0, 6:].tolist() == [0.0] * 6
    assert table.power_used(power, month, year)[0, 6:].tolist() == [0.0] * 6
    with pytest.raises(CannotDraw, match=r"intake at 90 m is not covered in January: .* 90.0 m .* deeper than 91.0 m"):
        flow_table(
            make_borehole(static_level_m=89.9, static_level_by_month_m=[90.0 - 1e-9] * 12),
            make_pipeline(),
            make_pump(plate={"minimum_submergence_m": 1.0}),
        )
    high = make_borehole(static_level_m=60.0, pump_depth_m=400.0, level_decline_m_per_year=30.0 / 2)
    lifted = flow_table(high, make_pipeline(), make_pump(), years=12)
    assert lifted.full_flow_m3h[11, 0] == 0  # 225 m deep and 73 m more: beyond the pump's 257 m
    with pytest.raises(CannotLift):
        flow_table(make_borehole(static_level_m=225.0, pump_depth_m=400.0), make_pipeline(), make_pump())
