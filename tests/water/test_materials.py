"""A material added by one entry and its words is followed by every use; the entry here is invented."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from planner.checks.pipeline import pressures
from planner.scenario.waterworks import Borehole, Pipeline, Segment
from planner.text import en, known
from planner.water import materials
from planner.water.friction import darcy_weisbach_head_m
from planner.water.head import system_head
from planner.water.materials import MATERIALS, PipeMaterial, PipeSize, WarmClass
from planner.water.pipes import material_for, next_larger, pipe_of, stronger
from planner.water.properties import bulk_modulus_pa, kinematic_viscosity_m2_s, water_density_kg_m3
from planner.water.route import allowed_bar
from planner.water.surge import wave_speed_m_s, wave_speed_of
from tests.checks.sites import basis, checked, site

INVENTED = PipeMaterial(
    key="basalt",
    roughness_m=0.05e-3,
    hazen_williams_c=140.0,
    warm=WarmClass((20.0, 80.0), (1.0, 0.4), "basalt"),
    young_pa=2.0e10,
    poisson=0.25,
    series={
        "basalt PN8": (PipeSize(50, 50.0, 2.0, 8.0), PipeSize(63, 63.0, 2.5, 8.0)),
        "basalt PN25": (PipeSize(50, 50.0, 4.0, 25.0), PipeSize(63, 63.0, 5.0, 25.0)),
    },
    outer_tolerance_mm={50: 0.4},
    wall_tolerance=(1.2, 0.0),
)


@pytest.fixture
def _invented(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(materials, "MATERIALS", (*MATERIALS, INVENTED))
    monkeypatch.setitem(en.SENTENCES, "material.basalt", "basalt fibre")
    monkeypatch.setitem(en.SENTENCES, "material.warm.basalt", "an invented standard")


@pytest.mark.usefixtures("_invented")
def test_one_entry_is_enough_for_bore_friction_and_surge(
    make_borehole: Callable[..., Borehole], make_pipeline: Callable[..., Pipeline]
) -> None:
    pipe = pipe_of("Basalt PN25 DN50")
    assert (pipe.inner_diameter_m, pipe.pressure_class_bar, pipe.material) == (0.042, 25.0, INVENTED)
    assert pipe.mean_inner_diameter_m == pytest.approx(0.0502 - 0.004 - 0.0048)
    assert next_larger(pipe) == pipe_of("basalt PN25 63")
    assert stronger(pipe_of("basalt PN8 50")) == [pipe]
    segment = Segment(name="main", length_m=850.0, pipe=pipe.name)
    lost = system_head(make_borehole(), make_pipeline(segments=[segment])).friction_m(2.0)
    viscosity = kinematic_viscosity_m2_s(20.0)
    assert float(lost) == pytest.approx(float(darcy_weisbach_head_m(2 / 3600, 850.0, 0.042, 0.05e-3, viscosity)))
    bulk, density = bulk_modulus_pa(20), water_density_kg_m3(20)
    assert wave_speed_of(pipe, 20) == pytest.approx(
        float(wave_speed_m_s(bulk, density, 2.0e10, 0.042, 0.004, poisson=0.25))
    )
    with pytest.raises(ValueError, match="'basalt PN8 63'"):
        pipe_of("basalt PN8 65")


@pytest.mark.usefixtures("_invented")
def test_one_entry_is_enough_for_warm_water_and_the_checks() -> None:
    assert allowed_bar(pipe_of("basalt PN8 63"), 50) == pytest.approx(0.7 * 8)
    hot = {"borehole.water_temperature_c": 50, "pipeline.segments.1.pipe": "basalt PN8 63"}
    site_hot = basis(site(hot))
    assert pressures(site_hot).allowed_bar[1] == pytest.approx(5.6)
    verdict = checked(site(hot))["pressure_at_shut_off"]
    assert verdict.limit == pytest.approx(5.6)
    assert "basalt PN25 63 (PN 25)" in verdict.remedy
    assert "an invented standard" in verdict.source
    surge = checked(site(hot))["surge"]
    assert f"wave {wave_speed_of(pipe_of('basalt PN8 63'), 50):.0f} m/s" in surge.compared or surge.outcome == "pass"


def test_pvc_loses_its_class_in_warm_water_and_another_material_is_named() -> None:
    # PVC-U counted as steel would keep 16 bar at 38 deg C
    assert allowed_bar(pipe_of("PVC-U PN16 63"), 38) == pytest.approx(16 * 0.749)
    hot = {"borehole.water_temperature_c": 48, "pipeline.segments.1.pipe": "PVC-U PN16 63"}
    assert pressures(basis(site(hot))).allowed_bar[1] == 0
    assert "steel pipe, as PVC-U has no class in water this hot" in checked(site(hot))["pressure_at_duty"].remedy
    assert material_for(48) is materials.STEEL


@pytest.mark.parametrize("material", MATERIALS, ids=lambda material: material.key)
def test_every_entry_is_sound(material: PipeMaterial) -> None:
    assert list(material.warm.temperature_c) == sorted(set(material.warm.temperature_c))
    assert list(material.warm.share) == sorted(material.warm.share, reverse=True)
    assert material.warm.share_at(0) == 1
    assert known(f"material.{material.key}")
    assert known(f"material.warm.{material.warm.source}")
    assert 0 < material.poisson < 0.5
    for sizes in material.series.values():
        bores = [size.outer_mm - 2 * size.wall_mm for size in sizes]
        assert bores == sorted(bores)
        assert all(bore > 0.6 * size.outer_mm for bore, size in zip(bores, sizes, strict=True))
