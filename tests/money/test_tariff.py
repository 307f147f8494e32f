"""Electricity bills: which band an hour falls in, and what each part of the bill is."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.money.tariff import band_count, band_of_hour, yearly_bill
from tests.money.cases import make_tariff

HOUR = np.tile(np.arange(24), 365)
MONTH = np.repeat(np.arange(12), np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]) * 24)


def bands_of_day(hours: list[list[float]], month: int = 0, months: list[int] | None = None) -> list[int]:
    tariff = make_tariff(bands=[{"name": "b", "hours": hours, "months": months or [], "price_per_kwh": 1.0}])
    return np.flatnonzero(band_of_hour(tariff, np.full(24, month), np.arange(24))).tolist()


def test_without_tariff_every_hour_is_outside_the_bands() -> None:
    assert band_count(None) == 1
    assert not band_of_hour(None, MONTH, HOUR).any()
    assert band_of_hour(None, MONTH, HOUR).shape == (8760,)


@pytest.mark.parametrize(
    ("hours", "expected"),
    [
        ([[7.0, 10.0]], [7, 8, 9]),
        ([[22.0, 2.0]], [0, 1, 22, 23]),
        ([[6.5, 9.0]], [6, 7, 8]),  # the midpoint 6:30 is the range's beginning
        ([[6.6, 9.4]], [7, 8]),
        ([[6.6, 9.6]], [7, 8, 9]),
        ([[0.0, 24.0]], list(range(24))),
        ([[0.0, 0.0]], list(range(24))),  # an end not after its beginning runs over midnight
        ([[7.0, 8.0], [18.0, 20.0]], [7, 18, 19]),
    ],
)
def test_hours_of_a_band(hours: list[list[float]], expected: list[int]) -> None:
    assert bands_of_day(hours) == expected


def test_months_of_a_band() -> None:
    assert bands_of_day([[7.0, 9.0]], month=5, months=[6, 7]) == [7, 8]
    assert bands_of_day([[7.0, 9.0]], month=7, months=[6, 7]) == []


def test_the_first_band_that_holds_counts() -> None:
    tariff = make_tariff(
        bands=[
            {"name": "peak", "hours": [[18.0, 21.0]], "months": [1], "price_per_kwh": 3.0},
            {"name": "day", "hours": [[6.0, 22.0]], "price_per_kwh": 2.0},
        ]
    )
    band_of = band_of_hour(tariff, MONTH, HOUR)
    assert band_count(tariff) == 3
    assert np.bincount(band_of, minlength=3).tolist() == [8760 - 365 * 16, 31 * 3, 365 * 16 - 31 * 3]


def test_every_part_of_a_banded_bill() -> None:
    tariff = make_tariff(
        price_per_kwh=0.1,
        bands=[{"name": "peak", "hours": [[18.0, 21.0]], "price_per_kwh": 0.3}],
        fixed_charge_per_month=5.0,
        demand_charge_per_kw_month=2.0,
        levy_per_kwh=0.01,
        tax_percent=20.0,
    )
    kwh = np.zeros((3, 12, 2))
    kwh[1, :, 0], kwh[1, 0, 1] = 100.0, 50.0
    peak = np.zeros((3, 12))
    peak[1, :2] = 4.0
    bill = yearly_bill(tariff, kwh, peak)
    assert bill.total.shape == (3,)
    assert bill.fixed == 60.0
    assert bill.energy == pytest.approx([0.0, 1200 * 0.1 + 50 * 0.3, 0.0])
    assert bill.demand.tolist() == [0.0, 16.0, 0.0]
    assert bill.levy == pytest.approx([0.0, 12.5, 0.0])
    assert bill.tax == pytest.approx([12.0, 0.2 * (60 + 135 + 16 + 12.5), 12.0])
    assert bill.total == pytest.approx([72.0, 1.2 * (60 + 135 + 16 + 12.5), 72.0])


def test_blocks_begin_anew_each_month() -> None:
    tariff = make_tariff(blocks=[{"up_to_kwh_month": 100.0, "price_per_kwh": 1.0}, {"price_per_kwh": 2.0}])
    lumped, even = np.zeros((12, 1)), np.full((12, 1), 100.0)
    lumped[0] = 1200.0
    assert yearly_bill(tariff, even, np.zeros(12)).energy == pytest.approx(1200.0)
    assert yearly_bill(tariff, lumped, np.zeros(12)).energy == pytest.approx(100.0 + 2 * 1100.0)


@given(
    price=st.floats(0, 2),
    ends=st.lists(st.floats(1, 2000), min_size=1, max_size=4, unique=True),
    kwh=st.lists(st.floats(0, 5000), min_size=12, max_size=12),
)
def test_blocks_of_one_price_make_the_flat_bill(price: float, ends: list[float], kwh: list[float]) -> None:
    blocks = [{"up_to_kwh_month": end, "price_per_kwh": price} for end in sorted(ends)] + [{"price_per_kwh": price}]
    used = np.array(kwh)[:, None]
    flat = yearly_bill(make_tariff(price_per_kwh=price, tax_percent=10.0), used, np.zeros(12)).total
    stepped = yearly_bill(make_tariff(blocks=blocks, tax_percent=10.0), used, np.zeros(12)).total
    assert stepped == pytest.approx(flat, rel=1e-12)


@given(kwh=st.floats(0, 3000), more=st.floats(0.1, 500))
def test_rising_blocks_never_make_more_energy_cheaper_by_the_kwh(kwh: float, more: float) -> None:
    tariff = make_tariff(
        blocks=[
            {"up_to_kwh_month": 250.0, "price_per_kwh": 1.0},
            {"up_to_kwh_month": 750.0, "price_per_kwh": 1.5},
            {"price_per_kwh": 2.0},
        ]
    )
    less, most = (
        yearly_bill(tariff, np.full((12, 1), use), np.zeros(12)).energy / use for use in (kwh + 1, kwh + 1 + more)
    )
    assert most >= less - 1e-9


@pytest.mark.parametrize(("kwh", "peak"), [((12, 2), (12,)), ((11, 1), (12,)), ((12, 1), (11,))])
def test_wrong_bands_or_months_are_refused(kwh: tuple[int, ...], peak: tuple[int, ...]) -> None:
    with pytest.raises(ValueError, match=r"the tariff wants energy \(\.\.\., 12, 1\)"):
        yearly_bill(make_tariff(), np.zeros(kwh), np.zeros(peak))
