from __future__ import annotations

import pytest

from planner.scenario.waterworks import Segment
from planner.water.pipes import bore_of, next_larger, pipe_of, pipes


@pytest.mark.parametrize(
    "text", ["PE100 SDR11 63", "pe100 sdr11 63", "PE 100 SDR 11 OD 63 mm", "PE100 SDR-11 63mm", " PE100  SDR11  63 "]
)
def test_the_same_pipe_by_any_spelling(text: str) -> None:
    assert pipe_of(text).name == "PE100 SDR11 63"


def test_every_name_finds_its_own_pipe() -> None:
    assert {name: pipe_of(name) for name in pipes()} == pipes()
    assert pipe_of("Steel medium DN50") is pipes()["steel medium 50"]


@pytest.mark.parametrize(
    ("text", "near"), [("PE100 SDR11 65", "'PE100 SDR11 63'"), ("steel medium 55", "'steel medium 50'"), ("", "'")]
)
def test_unknown_pipe_names_the_nearest(text: str, near: str) -> None:
    with pytest.raises(ValueError, match="no pipe") as caught:
        pipe_of(text)
    assert near in str(caught.value)


def test_segment_takes_material_of_the_table() -> None:
    steel = bore_of(Segment(name="riser", length_m=1.0, pipe="steel medium 50"))
    assert (steel.inner_diameter_m, steel.roughness_m, steel.hazen_williams_c) == (0.0531, 0.15e-3, 120.0)
    plastic = bore_of(Segment(name="main", length_m=1.0, pipe="PE100 SDR17 90"))
    assert (plastic.inner_diameter_m, plastic.roughness_m, plastic.hazen_williams_c) == (0.0792, 0.007e-3, 150.0)
    assert plastic.pressure_class_bar == 10.0


def test_bore_alone_counts_as_plastic_of_unknown_class() -> None:
    pipe = bore_of(Segment(name="main", length_m=1.0, inner_diameter_mm=45.0))
    assert (pipe.inner_diameter_m, pipe.roughness_m, pipe.hazen_williams_c) == (0.045, 0.007e-3, 150.0)
    assert pipe.pressure_class_bar is None
    assert pipe.wall_m is None
    assert pipe.mean_inner_diameter_m == 0.045


def test_figures_of_the_segment_win_over_the_table() -> None:
    pipe = bore_of(
        Segment(
            name="old",
            length_m=1.0,
            pipe="PE100 SDR11 63",
            roughness_mm=0.03,
            hazen_williams_c=140.0,
            pressure_class_bar=8.0,
        )
    )
    assert pipe.roughness_m == pytest.approx(3e-5)
    assert (pipe.hazen_williams_c, pipe.pressure_class_bar) == (140.0, 8.0)
    assert pipe.inner_diameter_m == 0.0514


def test_next_larger_stays_in_the_series() -> None:
    assert next_larger(pipe_of("PE100 SDR11 50")) is pipes()["PE100 SDR11 63"]
    assert next_larger(pipe_of("steel medium 50")) is pipes()["steel medium 65"]
    assert next_larger(pipe_of("PE100 SDR11 110")) is None
    assert next_larger(bore_of(Segment(name="x", length_m=1.0, inner_diameter_mm=45.0))) is None
