"""Tariff bands of a top-up source: energy is counted by band, also where a band never holds."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from planner.supply.option import Outcome
from planner.supply.run import HOUR, run_options
from tests.study.scenarios import studied
from tests.supply.options import HOURS, option, source_of


def test_a_band_that_never_holds_keeps_its_place() -> None:
    bands = ((HOUR >= 6) & (HOUR < 12)).astype(np.int64)
    grid = replace(source_of(1.0, 1), bands=bands, band_count=3)
    (outcome,) = run_options([option("grid", np.full((HOURS, 1), 1.0), 40.0, grid=grid)])
    assert outcome.grid_kwh.shape[-1] == 3
    assert outcome.grid_kwh[..., :2].sum(axis=(0, 1, 2, 3)).min() > 0
    assert not outcome.grid_kwh[..., 2].any()


def test_a_tariff_with_a_band_inside_another_is_billed() -> None:
    evening = {"name": "evening", "hours": [[17, 22]], "price_per_kwh": 0.3}
    inside = {"name": "inside", "hours": [[18, 20]], "price_per_kwh": 0.9}
    options = ["grid"]
    plain, doubled = (
        studied(finance__analysis_period_years=1, service__options=options, sources__grid__tariff__bands=bands)
        for bands in ([evening], [evening, inside])
    )
    assert float(doubled.options[0].life.present_cost) == float(plain.options[0].life.present_cost)


def test_bands_that_differ_between_options_are_refused() -> None:
    draw, bands = np.full((HOURS, 1), 1.0), (HOUR >= 12).astype(np.int64)
    first, other = (replace(source_of(1.0, 1), bands=each, band_count=2) for each in (bands, 1 - bands))
    with pytest.raises(ValueError, match="the tariff bands of 'grid' differ"):
        run_options([option("grid", draw, 40.0, grid=first), option("grid", draw, 40.0, grid=other)])


def test_nothing_from_the_grid_has_its_bands_too() -> None:
    (outcome,) = run_options(
        [option("generator", np.full((HOURS, 1), 1.0), 40.0, generator=source_of(1.0, 1))], band_count=3
    )
    assert outcome.at(0, 0).grid_kwh.shape == (1, 12, 3)
    assert not outcome.grid_kwh.any()


def test_outcomes_of_different_sources_lie_side_by_side() -> None:
    draw, alive = np.full((HOURS, 1), 1.0), source_of(1.0, 1)
    grid = replace(alive, bands=(HOUR >= 12).astype(np.int64), band_count=2)
    options = [option("grid", draw, 40.0, grid=grid), option("generator", draw, 40.0, generator=alive)]
    outcomes = run_options(options, band_count=2)
    names = ("grid",)
    stacks = [each.at(0, 0).arrays(names) for each in outcomes]
    both = Outcome.of_arrays("", {key: np.stack([stack[key] for stack in stacks]) for key in stacks[0]})
    for place, each in enumerate(outcomes):
        np.testing.assert_array_equal(both.taken(place).grid_kwh, each.at(0, 0).grid_kwh)
        np.testing.assert_array_equal(both.delivered_m3[place], each.at(0, 0).delivered_m3)
    assert both.grid_kwh[0].all()
    assert not both.grid_kwh[1].any()
