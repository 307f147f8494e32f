"""Pressures along a rising main, surge and warm plastic pipe against EPANET, textbooks and standards."""

from __future__ import annotations

import warnings
from pathlib import Path

import numpy as np
import pytest

from planner.scenario.waterworks import Borehole, Pipeline, ProfilePoint, Segment
from planner.water.head import system_head
from planner.water.materials import PE100, PVC_U
from planner.water.pipes import pipe_of
from planner.water.properties import bulk_modulus_pa, water_density_kg_m3
from planner.water.route import allowed_bar, head_of_bar, route_of, segment_loss_m
from planner.water.surge import joukowsky_head_m, stop_time_for_s, surge_heads_m, wave_speed_m_s, wave_speed_of

FOOT_M, INCH_M, PSI_PA = 0.3048, 0.0254, 6894.757

# ----------------------------------------------------------------------------------------- the engine of EPANET

FLOW_M3H, HEAD_LEFT_M = 6.0, 3.0


def _works() -> tuple[Borehole, Pipeline]:
    borehole = Borehole(
        static_level_m=60, pump_depth_m=90, specific_capacity_m3h_per_m=1, safe_yield_m3h=50, water_temperature_c=20
    )
    levels = [(0, 0), (150, 12), (310, 5), (480, 31), (650, 22), (850, 55)]
    pipeline = Pipeline(
        rise_to_tank_inlet_m=60,
        residual_head_m=HEAD_LEFT_M,
        friction="hazen-williams",
        segments=[
            Segment(name="riser", length_m=90, pipe="steel medium 50"),
            Segment(name="first", length_m=400, pipe="PE100 SDR11 63"),
            Segment(name="second", length_m=450, pipe="PE100 SDR11 75"),
        ],
        profile=[ProfilePoint(chainage_m=chainage, level_m=level) for chainage, level in levels],
    )
    return borehole, pipeline


@pytest.mark.engine("EPANET", "pressures along a main with a profile, the engine in the test")
def test_pressures_along_a_profile_against_epanet(tmp_path: Path) -> None:
    borehole, pipeline = _works()
    system, route = system_head(borehole, pipeline), route_of(borehole, pipeline)
    total = float(system.required_m(FLOW_M3H, 60 + 60))
    line = route.line_m(total - 60 - float(system.drawdown.at(FLOW_M3H)), segment_loss_m(system, FLOW_M3H))
    ours = line - route.level_m

    import wntr  # here, as it is slow to load

    network = wntr.network.WaterNetworkModel()
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # wntr reminds that the unit of roughness stays
        network.options.hydraulic.headloss = "H-W"
    network.options.hydraulic.accuracy = 1e-7
    network.options.time.duration = 0
    # the main is fed at its lower end and ends in a tank of constant level; its nodes stand where our points stand
    last = len(route.along_m) - 1
    assert route.along_m[last] == route.along_m[last - 1] == 940  # the climb into the tank at the end
    for number in range(last):
        fed = -FLOW_M3H / 3600 if number == 0 else 0.0
        network.add_junction(f"n{number}", base_demand=fed, elevation=float(route.level_m[number]))
    network.add_reservoir("tank", base_head=60 + HEAD_LEFT_M)
    for number in range(last):
        middle = (route.along_m[number] + route.along_m[min(number + 1, last)]) / 2
        segment = int(np.searchsorted(route.end_m, middle))
        length = float(route.along_m[number + 1] - route.along_m[number])
        to = "tank" if number + 1 == last else f"n{number + 1}"
        if number + 1 == last:
            length = 0.1  # the two last points stand at one place
        pipe = system.pipes[min(segment, 2)]
        network.add_pipe(f"p{number}", f"n{number}", to, length, pipe.inner_diameter_m, roughness=pipe.hazen_williams_c)
    results = wntr.sim.EpanetSimulator(network).run_sim(file_prefix=str(tmp_path / "main"), version=2.2)
    engine = results.node["pressure"].iloc[0]
    # the engine returns 32-bit heads in feet: 1e-4 of a few hundred metres at worst
    for number in range(last):
        assert ours[number] == pytest.approx(float(engine[f"n{number}"]), abs=2e-3), number
    assert len(ours) >= 8


def test_pressure_at_the_pump_is_what_the_water_weighs_and_loses() -> None:
    borehole, pipeline = _works()
    system, route = system_head(borehole, pipeline), route_of(borehole, pipeline)
    lost = segment_loss_m(system, FLOW_M3H)
    line = route.line_m(60 + HEAD_LEFT_M + float(lost.sum()), lost)
    assert line[0] - route.level_m[0] == pytest.approx(90 + 60 + HEAD_LEFT_M + float(lost.sum()))
    assert line[-1] == pytest.approx(60 + HEAD_LEFT_M)


def test_one_bar() -> None:
    # 10.2 m of water at 20 deg C: 1e5 / (998.207 * 9.80665)
    assert head_of_bar(20) == pytest.approx(10.2155, abs=5e-4)


# ------------------------------------------------------------------------------------------------------- surge


@pytest.mark.published("surge", "New Mexico State University, Soils 456 notes, chapter 8", values=2, confirmed="seen")
def test_surge_of_the_new_mexico_notes() -> None:
    # New Mexico State University, Soils 456 notes, chapter 8: PVC 1.66 in outside, wall 0.14 in, E 400 000 psi,
    # 1 ft/s: 63.2 * 0.32 = 20.3 psi. Their formula has 4700 ft/s for the rigid pipe, 294 000 psi for the water and
    # the outside diameter in place of the bore.
    rigid_m_s = 4700 * FOOT_M
    density = 62.4 / 32.2 * 515.378818  # slugs per cubic foot to kg/m3
    bulk = 294_000 * PSI_PA
    slowed = wave_speed_m_s(bulk, bulk / rigid_m_s**2, 400_000 * PSI_PA, 1.66 * INCH_M, 0.14 * INCH_M)
    assert float(slowed) / rigid_m_s == pytest.approx(0.32083, abs=5e-5)
    psi = density * float(slowed) * FOOT_M / PSI_PA
    assert psi == pytest.approx(20.3, abs=0.05)


def test_surge_of_a_teaching_case_in_pvc() -> None:
    # D 0.3 m, wall 20 mm, E 2.6 GPa, K 2.1 GPa, 1450 m/s rigid, 2.5 m/s; recomputed 400.4 m/s and 102.0 m
    speed = wave_speed_m_s(2.1e9, 2.1e9 / 1450**2, 2.6e9, 0.3, 0.02)
    assert float(speed) == pytest.approx(400.4, abs=0.1)
    assert float(joukowsky_head_m(speed, 2.5)) == pytest.approx(102.0, abs=0.1)


def test_wave_speed_in_large_steel_pipe() -> None:
    # an open teaching case: L 1200 m, D 0.6 m, wall 12 mm, K 2.1 GPa, E 200 GPa; recomputed 1173.5 m/s
    assert float(wave_speed_m_s(2.1e9, 1000, 200e9, 0.6, 0.012)) == pytest.approx(1173.5, abs=0.1)


# PE100 by its short-term modulus, K 2.1934 GPa, 998.2 kg/m3, D/e = SDR - 2; recomputed, m/s
CELERITY = [(0.8e9, "17", 228), (0.8e9, "9", 330), (1.1e9, "17", 267), (1.1e9, "13.6", 302), (1.1e9, "11", 341)]


@pytest.mark.parametrize(("young_pa", "ratio", "speed_m_s"), CELERITY)
def test_wave_speed_in_polyethylene(young_pa: float, ratio: str, speed_m_s: float) -> None:
    ours = wave_speed_m_s(bulk_modulus_pa(20), water_density_kg_m3(20), young_pa, float(ratio) - 2, 1.0)
    assert float(ours) == pytest.approx(speed_m_s, abs=0.6)


@pytest.mark.parametrize(
    ("name", "speed_m_s"), [("PE100 SDR17 63", 267), ("PE100 SDR11 63", 341), ("PE100 SDR9 63", 383)]
)
def test_wave_speed_of_pipes_of_the_tables(name: str, speed_m_s: float) -> None:
    # the bore over the rounded-up wall is within 3 % of SDR - 2; an anchored main is stiffer by 1 - 0.45^2
    pipe = pipe_of(name)
    assert pipe.wall_m is not None
    bulk, density = bulk_modulus_pa(20), water_density_kg_m3(20)
    free = wave_speed_m_s(bulk, density, 1.1e9, pipe.inner_diameter_m, pipe.wall_m)
    assert float(free) == pytest.approx(speed_m_s, rel=0.015)
    rigid = float(np.sqrt(bulk / density))
    slack = (rigid / float(free)) ** 2 - 1
    assert wave_speed_of(pipe, 20) == pytest.approx(rigid / np.sqrt(1 + slack * (1 - 0.45**2)))


def test_wave_speed_in_anchored_plastic() -> None:
    # worked by hand with K 2.19 GPa and 1000 kg/m3: PVC-U 63 SDR 21 at 3.0 GPa 384 m/s free, 416 anchored; PE100 63
    # SDR 11 at 0.9 GPa 312 and 347
    for young_pa, bore, wall, poisson, free, anchored in (
        (3.0e9, 57.0, 3.0, 0.40, 384, 416),
        (0.9e9, 51.4, 5.8, 0.45, 312, 347),
    ):
        assert float(wave_speed_m_s(2.19e9, 1000, young_pa, bore, wall)) == pytest.approx(free, abs=1)
        assert float(wave_speed_m_s(2.19e9, 1000, young_pa, bore, wall, poisson)) == pytest.approx(anchored, abs=1)


@pytest.mark.published(
    "surge", "Plastics Pipe Institute, Handbook of PE Pipe, chapter 6", values=4, confirmed="from memory"
)
def test_surge_of_pe_against_the_plastics_pipe_institute() -> None:
    # Plastics Pipe Institute, Handbook of PE Pipe, chapter 6 (formula from memory): E 150 000 psi, K 300 000 psi,
    # 4660 ft/s in a rigid pipe, 5 ft/s taken away: 80.9, 71.9, 63.9 and 56.3 psi, within 0.2 %
    bulk, rigid_m_s = 300_000 * PSI_PA, 4660 * FOOT_M
    density = 62.4 / 32.2 * 515.378818
    for ratio, psi in ((9, 80.9), (11, 71.9), (13.5, 63.9), (17, 56.3)):
        speed = wave_speed_m_s(bulk, bulk / rigid_m_s**2, 150_000 * PSI_PA, ratio - 2, 1)
        assert density * float(speed) * 5 * FOOT_M / PSI_PA == pytest.approx(psi, rel=2e-3)


def test_slow_stops_follow_michaud_and_never_exceed_joukowsky() -> None:
    # 2 L v / (g T): 500 m at 2.2635 m/s in 0.5 s; so fast a stop is not slow, and Joukowsky's rise holds
    speed, velocity, length = [1200.0], [2.2635], [500.0]
    at_once = surge_heads_m(speed, velocity, length)
    assert float(at_once[0]) == pytest.approx(1200 * 2.2635 / 9.80665)
    assert surge_heads_m(speed, velocity, length, 0.5) == pytest.approx(at_once)
    slow = surge_heads_m(speed, velocity, length, 5.0)
    assert float(slow[0]) == pytest.approx(2 * 500 * 2.2635 / (9.80665 * 5))
    assert stop_time_for_s(float(slow[0]), velocity, length) == pytest.approx(5.0)


# -------------------------------------------------------------------------------------------- warm plastic pipe

ISO_4427_1 = pytest.mark.published(
    "pipes and materials", "ISO 4427-1, annex A: warm water", values=1, confirmed="from memory"
)
ISO_1452_2 = pytest.mark.published(
    "pipes and materials", "ISO 1452-2, annex A: warm water", values=1, confirmed="from memory"
)
ISO_1452_2_ENDS = pytest.mark.published(
    "pipes and materials",
    "ISO 1452-2, scope: full class to 25, no use above 45 deg C",
    values=2,
    confirmed="at second hand",
)


@pytest.mark.parametrize(
    ("water_c", "factor"),
    [
        (10, 1),
        (20, 1),
        (25, 0.935),
        pytest.param(30, 0.87, marks=ISO_4427_1),
        (35, 0.805),
        pytest.param(40, 0.74, marks=ISO_4427_1),
    ],
)
def test_pressure_factor_of_warm_pe(water_c: float, factor: float) -> None:
    # ISO 4427-1 annex A, from memory: 0.87 at 30 and 0.74 at 40 deg C
    assert PE100.warm.share_at(water_c) == pytest.approx(factor)


@pytest.mark.parametrize(
    ("water_c", "factor"),
    [
        pytest.param(25, 1, marks=ISO_1452_2_ENDS),
        (30, 0.9),
        pytest.param(35, 0.8, marks=ISO_1452_2),
        (38, 0.749),
        (40, 0.715),
        pytest.param(45, 0.63, marks=ISO_1452_2),
    ],
)
def test_pressure_factor_of_warm_pvc(water_c: float, factor: float) -> None:
    # ISO 1452-2 annex A, from memory: full to 25 deg C, 0.80 at 35 and 0.63 at 45, and not for use above
    assert PVC_U.warm.share_at(water_c) == pytest.approx(factor)
    assert allowed_bar(pipe_of("PVC-U PN16 63"), water_c) == pytest.approx(16 * factor)
    assert allowed_bar(pipe_of("PVC-U PN16 63"), 45.1) is None


@pytest.mark.parametrize(
    ("name", "at_30_c", "at_40_c"),
    [("PE100 SDR17 63", 8.7, 7.4), ("PE100 SDR13.6 63", 10.875, 9.25), ("PE100 SDR11 63", 13.92, 11.84),
     ("PE100 SDR9 63", 17.4, 14.8)],
)  # fmt: skip
def test_allowed_pressure_of_warm_pe(name: str, at_30_c: float, at_40_c: float) -> None:
    # PN 10, 12.5, 16 and 20 with those factors
    assert allowed_bar(pipe_of(name), 30) == pytest.approx(at_30_c)
    assert allowed_bar(pipe_of(name), 40) == pytest.approx(at_40_c)
    assert allowed_bar(pipe_of(name), 41) is None


def test_steel_keeps_its_class() -> None:
    assert allowed_bar(pipe_of("steel medium 50"), 50) == 25
