from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq
from scipy.special import ndtr

from planner.resource.clearness import bend, daily_quantiles, highest_clearness, law_exponent
from planner.resource.closure import daily_clearness
from planner.resource.sun import DAYS_PER_MONTH, MONTH_OF_DAY, Place, Sun, hours_to_months, sun_of
from planner.resource.synthetic import synthetic_years
from planner.resource.years import WeatherYears, plane_irradiance

MEANS = [5.6, 6.2, 6.5, 6.4, 6.2, 6.0, 5.5, 5.2, 5.6, 5.8, 5.6, 5.3]  # an invented Sahel year
TEMPERATURES = [25.0, 28, 31, 33, 33, 30, 28, 27, 28, 30, 28, 25]
RANGES = [14.0] * 12


def make(place: Place, sun: Sun, means: list[float] = MEANS, **settings: object) -> WeatherYears:
    given = {"years": 3, "seed": 1, **settings}
    return synthetic_years(place, sun, means, TEMPERATURES, RANGES, **given)  # type: ignore[arg-type]


def check_laws(weather: WeatherYears) -> None:
    ghi, dni, dhi, sun = weather.ghi_w_m2, weather.dni_w_m2, weather.dhi_w_m2, weather.sun
    for values in (ghi, dni, dhi):
        assert values.shape == ghi.shape
        assert np.isfinite(values).all()
        assert values.min() >= 0
    height = np.cos(np.radians(sun.zenith_deg))[:, None]
    assert np.abs(dni * height + dhi - ghi).max() < 1e-9
    assert (dhi <= ghi + 1e-9).all()
    assert ghi[sun.extraterrestrial_horizontal_wh_m2 == 0].sum() == 0
    assert (ghi <= sun.extraterrestrial_horizontal_wh_m2[:, None] + 1e-9).all()


@pytest.mark.parametrize("law", ["saunier", "bendt"])
@pytest.mark.parametrize(
    "place",
    [
        Place(12.4, -1.5, 306, 0),
        Place(-25.8, 28.0, 1400, 2),
        Place(28.6, 77.2, 222, 5.5),
        Place(27.7, 85.3, 1400, 5.75),
        Place(-18.1, 178.4, 0, 12),
        Place(-13.8, -172.0, 10, 13),
        Place(-10.0, 150.0, 10, 0),  # a clock ten hours behind the sun
        Place(40.0, 80.0, 1000, 8),
        Place(48.0, 11.0, 500, 1),
        Place(-16.5, -68.15, 3862, -4),
    ],
    ids=lambda place: f"{place.latitude_deg}, {place.longitude_deg}, {place.utc_offset_h}",
)
@pytest.mark.parametrize("clearness", [0.15, 0.45, 0.75])
def test_months_keep_their_means_and_hours_keep_the_laws(place: Place, clearness: float, law: str) -> None:
    sun = sun_of(place)
    means = clearness * hours_to_months(sun.extraterrestrial_horizontal_wh_m2) / 1000 / DAYS_PER_MONTH
    weather = make(place, sun, list(means), daily_law=law)
    np.testing.assert_allclose(weather.monthly_ghi_kwh_m2_day(), np.tile(means, (3, 1)).T, rtol=1e-9)
    check_laws(weather)


def test_temperature_keeps_means_and_range(sahel: Place, sahel_sun: Sun) -> None:
    weather = make(sahel, sahel_sun)
    table = weather.monthly_table()
    np.testing.assert_allclose(table["temperature_mean_c"], TEMPERATURES, atol=1e-9)
    day = weather.temperature_c[:, 0].reshape(365, 24)
    # Erbs, Klein and Beckman 1983: peak to peak 0.9758 of the range, lowest near 6 h and highest near 15 h.
    assert np.ptp(day, axis=1).mean() == pytest.approx(0.9758 * 14, rel=0.02)
    assert set(day.argmin(axis=1)) <= {4, 5, 6}
    assert set(day.argmax(axis=1)) <= {14, 15}


def test_temperature_follows_the_sun_and_not_a_foreign_clock() -> None:
    place = Place(-10.0, 150.0, 10, 0)
    day = make(place, sun_of(place), [5.0] * 12).temperature_c[:, 0].reshape(365, 24).mean(axis=0)
    assert day.argmax() in (4, 5)  # 14-15 h solar is 4-5 h by this clock


def test_missing_range_comes_from_clearness_and_is_said(sahel: Place, sahel_sun: Sun) -> None:
    weather = synthetic_years(sahel, sahel_sun, MEANS, [20.0] * 12, None, years=1, seed=1)
    table = weather.monthly_table()
    swing = (table["temperature_max_c"] - table["temperature_min_c"]) / 0.9758
    np.testing.assert_allclose(swing, 25.8 * table["clearness"] - 5.21, rtol=0.02)
    assert any("range" in note for note in weather.notes)
    assert not any("range" in note for note in make(sahel, sahel_sun).notes)


def test_seed_decides(sahel: Place, sahel_sun: Sun) -> None:
    first, again, other = (make(sahel, sahel_sun, seed=seed, annual_spread_percent=4) for seed in (5, 5, 6))
    np.testing.assert_array_equal(first.ghi_w_m2, again.ghi_w_m2)
    np.testing.assert_array_equal(first.dni_w_m2, again.dni_w_m2)
    assert np.abs(first.ghi_w_m2 - other.ghi_w_m2).max() > 50
    assert np.abs(first.ghi_w_m2[:, 0] - first.ghi_w_m2[:, 1]).max() > 50
    plain, plain_other = (make(sahel, sahel_sun, seed=seed) for seed in (5, 6))
    np.testing.assert_allclose(plain.monthly_ghi_kwh_m2_day(), plain_other.monthly_ghi_kwh_m2_day(), rtol=1e-12)


def test_a_year_does_not_depend_on_how_many_are_asked(sahel: Place, sahel_sun: Sun) -> None:
    few, many = make(sahel, sahel_sun, years=2), make(sahel, sahel_sun, years=7)
    np.testing.assert_allclose(few.ghi_w_m2, many.ghi_w_m2[:, :2], rtol=1e-12, atol=1e-9)


def test_spread_of_years(sahel: Place, sahel_sun: Sun) -> None:
    weather = make(sahel, sahel_sun, years=20, annual_spread_percent=4)
    factor = weather.annual_factor
    assert factor.mean() == pytest.approx(1, abs=1e-12)
    # Normal quantiles at 1/40, 3/40 ... 39/40: lowest and highest -+1.960.
    assert factor.min() == pytest.approx(1 - 0.04 * 1.95996, abs=1e-5)
    assert factor.max() == pytest.approx(1 + 0.04 * 1.95996, abs=1e-5)
    assert factor.std() == pytest.approx(0.04, rel=0.05)
    assert list(factor) != sorted(factor)
    np.testing.assert_allclose(weather.monthly_ghi_kwh_m2_day(), np.outer(MEANS, factor), rtol=1e-9)
    assert make(sahel, sahel_sun, years=1, annual_spread_percent=10).annual_factor.tolist() == [1.0]


def test_spread_of_months_beside_that_of_years(sahel: Place, sahel_sun: Sun) -> None:
    given = {"years": 40, "annual_spread_percent": 4.0}
    plain, uneven = make(sahel, sahel_sun, **given), make(sahel, sahel_sun, **given, monthly_spread_percent=9.0)
    # Neither the years nor the long-term months change: anomalies add up to nothing both ways.
    np.testing.assert_allclose(uneven.annual_factor, plain.annual_factor, rtol=1e-12)
    months = uneven.monthly_ghi_kwh_m2_day()
    np.testing.assert_allclose(months.mean(axis=1), MEANS, rtol=1e-12)
    anomaly = months / plain.monthly_ghi_kwh_m2_day() - 1
    np.testing.assert_allclose(anomaly.std(axis=1), 0.09, rtol=0.12)
    assert anomaly.std() == pytest.approx(0.09, rel=0.04)
    # Months of a year are strangers, but for their common sum: -1/11 between any two.
    links = np.corrcoef(anomaly)[np.triu_indices(12, 1)]
    assert links.mean() == pytest.approx(-1 / 11, abs=0.02)
    check_laws(uneven)
    again = make(sahel, sahel_sun, **given, monthly_spread_percent=9.0)
    np.testing.assert_array_equal(again.ghi_w_m2, uneven.ghi_w_m2)
    assert make(sahel, sahel_sun, years=1, monthly_spread_percent=9.0).annual_factor.tolist() == [1.0]


def test_spread_of_months_left_to_chance(sahel: Place, sahel_sun: Sun) -> None:
    """As the means of days drawn freely from the same months, with the same order of days, spread."""
    weather = make(sahel, sahel_sun, years=40, monthly_spread_percent=None)
    made = weather.monthly_ghi_kwh_m2_day()
    spread = made.std(axis=1) / made.mean(axis=1)
    daily = daily_clearness(make(sahel, sahel_sun, years=40).ghi_w_m2, sahel_sun)
    drawn = np.random.default_rng(3).standard_normal((400, 31))
    for day in range(1, 31):
        drawn[:, day] = 0.28 * drawn[:, day - 1] + np.sqrt(1 - 0.28**2) * drawn[:, day]
    for month in (0, 6):
        pool = np.sort(daily[month == MONTH_OF_DAY].ravel())
        free = np.quantile(pool, ndtr(drawn)).mean(axis=1)
        assert spread[month] == pytest.approx(free.std() / free.mean(), rel=0.2)
    # The clear dry season varies less than the rains.
    assert spread[[0, 1, 2]].mean() < spread[[6, 7]].mean()


def test_spread_of_months_at_the_polar_night() -> None:
    place = Place(70.0, 25.0, 50, 1)
    means = [0.01, 0.5, 1.8, 3.8, 4.8, 5.0, 4.7, 3.2, 1.8, 0.6, 0.05, 0.0]
    for spread in (None, 15.0):
        weather = make(place, sun_of(place), means, years=10, monthly_spread_percent=spread)
        check_laws(weather)
        assert weather.annual_factor == pytest.approx(1, abs=0.01)


def test_law_by_latitude() -> None:
    """Saunier's law in the tropics, Bendt's in the temperate zone, both hemispheres, and no step between them."""
    assert [law_exponent("by_latitude", at) for at in (0, -27.9, 28, 31.5, -35, 60)] == [1, 1, 1, 0.5, 0, 0]
    assert [law_exponent(law, 31.5) for law in ("saunier", "bendt")] == [1, 0]
    for latitude, law in ((12.4, "saunier"), (-40.0, "bendt")):
        place = Place(latitude, -1.5, 306.0, 0.0)
        sun = sun_of(place)
        means = list(0.5 * hours_to_months(sun.extraterrestrial_horizontal_wh_m2) / 1000 / DAYS_PER_MONTH)
        default, named = make(place, sun, means), make(place, sun, means, daily_law=law)
        np.testing.assert_array_equal(default.ghi_w_m2, named.ghi_w_m2)
        assert {"saunier": "Saunier", "bendt": "Bendt"}[law] in default.source
        assert "chosen by latitude" in default.source
        assert not any("law of daily" in note for note in default.notes)
        other = "bendt" if law == "saunier" else "saunier"
        told = [note for note in make(place, sun, means, daily_law=other).notes if "law of daily" in note]
        assert len(told) == 1
        assert ("too few" if other == "saunier" else "too many") in told[0]


def test_maximum_by_choice(sahel: Place) -> None:
    """The general maximum is that of every place; the other is bound to the clear sky, and both are named."""
    place = Place(55.3, -160.5, 7.0, -9.0)
    sun = sun_of(place)
    means = [0.583, 1.047, 1.853, 3.058, 3.278, 3.806, 5.005, 2.704, 3.041, 1.614, 0.743, 0.462]
    bound, free = (make(place, sun, means, clearness_maximum=kind) for kind in ("clear_sky", "general"))
    december = MONTH_OF_DAY == 11
    highest = [daily_clearness(year.ghi_w_m2, sun)[december].max() for year in (bound, free)]
    clear = daily_clearness(sun.clear_sky_ghi_w_m2[:, None], sun)[december].mean()
    assert highest[0] < 1.15 * clear + 0.01 < highest[1]
    assert "1.15 times the clear sky" in bound.source
    assert "Hollands and Huget 1983;" in free.source


@pytest.mark.parametrize("law", ["saunier", "bendt"])
def test_brightest_months_stay_below_the_sun_above_the_air(sahel: Place, sahel_sun: Sun, law: str) -> None:
    """The clear sky of this hazy grid is far below such months, so caps must rise, but not past what there is."""
    above = sahel_sun.extraterrestrial_horizontal_wh_m2
    weather = make(sahel, sahel_sun, list(0.87 * hours_to_months(above) / 1000 / DAYS_PER_MONTH), daily_law=law)
    assert (weather.ghi_w_m2 <= 0.965 * above[:, None]).all()
    assert weather.ghi_w_m2.sum() == pytest.approx(3 * 0.87 * above.sum(), rel=1e-9)


def test_spread_never_leaves_what_can_be(sahel: Place, sahel_sun: Sun) -> None:
    above = hours_to_months(sahel_sun.extraterrestrial_horizontal_wh_m2) / 1000 / DAYS_PER_MONTH
    weather = make(sahel, sahel_sun, list(0.80 * above), years=10, annual_spread_percent=20)
    clearness = weather.monthly_ghi_kwh_m2_day() / above[:, None]
    assert clearness.max() < 0.88
    assert clearness.min() > 0.05
    np.testing.assert_allclose(
        weather.annual_factor,
        weather.ghi_w_m2.sum(axis=0) / (0.80 * sahel_sun.extraterrestrial_horizontal_wh_m2.sum()),
        rtol=1e-9,
    )
    check_laws(weather)


@pytest.mark.parametrize(
    ("value", "words"), [(9.5, "clearness index of 0.9"), (0.2, "clearness index of 0.0"), (-1, "-0.10")]
)
def test_impossible_month_is_refused(sahel: Place, sahel_sun: Sun, value: float, words: str) -> None:
    means = [*MEANS[:5], value, *MEANS[6:]]
    with pytest.raises(ValueError, match=rf"June: {value:g} kWh/m2/day is .*{words}.*allows 0\.5\d to 9\.\d\d"):
        make(sahel, sahel_sun, means)


def test_unlikely_month_is_noted(sahel: Place, sahel_sun: Sun) -> None:
    weather = make(sahel, sahel_sun, [*MEANS[:3], 8.7, *MEANS[4:]])
    assert [note for note in weather.notes if note.startswith("April: 8.7")]
    assert not make(sahel, sahel_sun).notes


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"years": 0}, "years"),
        ({"annual_spread_percent": -1}, "annual_spread_percent"),
        ({"monthly_spread_percent": 31}, "monthly_spread_percent"),
        ({"daily_law": "beta"}, "daily_law 'beta'"),
        ({"clearness_maximum": "mine"}, "clearness_maximum 'mine' is not one of 'clear_sky', 'general'"),
        ({"means": [5.0] * 11}, "twelve finite numbers"),
        ({"means": [float("nan")] * 12}, "twelve finite numbers"),
    ],
)
def test_bad_settings_are_refused(sahel: Place, sahel_sun: Sun, change: dict, words: str) -> None:
    with pytest.raises(ValueError, match=words):
        make(sahel, sahel_sun, **change)


def test_polar_night() -> None:
    place = Place(70.0, 25.0, 50, 1)
    means = [0.01, 0.5, 1.8, 3.8, 4.8, 5.0, 4.7, 3.2, 1.8, 0.6, 0.05, 0.0]
    weather = make(place, sun_of(place), means, annual_spread_percent=5, years=10)
    check_laws(weather)
    assert weather.ghi_w_m2[weather.sun.month == 11].sum() == 0
    got = weather.monthly_ghi_kwh_m2_day().mean(axis=1)
    np.testing.assert_allclose(got[1:10], means[1:10], rtol=1e-3)
    assert any("latitude" in note for note in weather.notes)
    bright = make(place, weather.sun, [*means[:-1], 0.1])
    assert any(note.startswith("December") and "twilight" in note for note in bright.notes)
    assert bright.annual_factor.tolist() == pytest.approx([1.0] * 3)


def test_polar_twilight_gives_no_more_than_there_is() -> None:
    place = Place(66.0, 25.0, 50, 2)
    sun = sun_of(place)
    above = hours_to_months(sun.extraterrestrial_horizontal_wh_m2) / 1000 / DAYS_PER_MONTH
    assert 0 < above[11] < 0.3
    weather = make(place, sun, [*(0.5 * above[:11]), 0.149])
    assert any(note.startswith("December") and "twilight" in note for note in weather.notes)
    np.testing.assert_allclose(weather.monthly_ghi_kwh_m2_day()[11], 0.88 * above[11], rtol=1e-9)
    check_laws(weather)


def test_days_follow_one_another_as_weather_does(sahel: Place, sahel_sun: Sun) -> None:
    daily = daily_clearness(make(sahel, sahel_sun, years=20).ghi_w_m2, sahel_sun)
    for month in range(12):
        days = month == MONTH_OF_DAY
        daily[days] -= daily[days].mean(axis=0)
    lag = [np.corrcoef(year[:-1], year[1:])[0, 1] for year in daily.T]
    assert 0.15 < np.mean(lag) < 0.40


def test_bendt_has_duller_days_than_saunier(sahel: Place, sahel_sun: Sun) -> None:
    worst = [
        np.quantile(daily_clearness(make(sahel, sahel_sun, years=10, daily_law=law).ghi_w_m2, sahel_sun), 0.02)
        for law in ("bendt", "saunier")
    ]
    assert worst[0] < 0.8 * worst[1]


def test_south_mirrors_north() -> None:
    """Miami's means moved by six months to 25.8 S and a plane facing north; the Earth is nearer the sun in January."""
    means = [3.494, 4.427, 5.157, 6.165, 6.029, 5.761, 5.993, 5.669, 4.915, 4.371, 3.568, 3.362]
    gain = []
    for place, turned, azimuth in (
        (Place(25.8, -80.27, 2, -5), means, 180),
        (Place(-25.8, -80.27, 2, -5), means[6:] + means[:6], 0),
    ):
        weather = make(place, sun_of(place), turned)
        gain.append(plane_irradiance(weather, 25.8, azimuth).sum() / weather.ghi_w_m2.sum())
    assert gain[0] == pytest.approx(1.054, rel=0.01)
    assert gain[1] == pytest.approx(gain[0], rel=0.03)
    away = make(place, sun_of(place), turned)
    assert plane_irradiance(away, 25.8, 180).sum() < 0.9 * away.ghi_w_m2.sum()


@settings(max_examples=30, deadline=None)
@given(mean=st.floats(0.2, 0.75), days=st.sampled_from([28, 30, 31]), exponent=st.floats(0, 1))
def test_quantiles_rise_and_have_the_mean(mean: float, days: int, exponent: float) -> None:
    highest = highest_clearness(np.array([mean]), np.array([0.75]))
    values = daily_quantiles(np.array([mean]), highest, days, exponent)[0]
    assert (np.diff(values) > 0).all()
    assert values.min() >= 0.05
    assert values.max() <= highest[0]
    # A month's worth of points of a skew law; Bendt's ends abruptly at its top and errs twice as much.
    assert values.mean() == pytest.approx(mean, abs=0.001 if exponent == 1 else 0.002)


@settings(max_examples=100, deadline=None)
@given(
    rows=st.lists(
        st.tuples(
            st.lists(st.tuples(st.floats(-0.5, 1.5), st.floats(0, 1000)), min_size=9, max_size=9),
            st.floats(0.0, 0.999),
        ),
        min_size=1,
        max_size=5,
    )
)
def test_bend_keeps_sums_order_and_caps(rows: list) -> None:
    fraction = np.array([[share for share, _ in row] for row, _ in rows])
    cap = np.array([[top for _, top in row] for row, _ in rows])
    total = np.array([part for _, part in rows]) * cap.sum(axis=1)
    bent = bend(fraction, cap, total)
    np.testing.assert_allclose(bent.sum(axis=1), total, rtol=1e-9, atol=1e-9)
    assert (bent <= cap * (1 + 1e-6) + 1e-9).all()
    assert (bent >= 0).all()
    shares = np.where(cap > 1e-3, bent / np.maximum(cap, 1e-3), np.nan)
    for row_share, row_fraction in zip(shares, fraction, strict=True):
        known = np.isfinite(row_share)
        order = np.argsort(row_fraction[known])
        assert (np.diff(row_share[known][order]) >= -1e-9).all()


@settings(max_examples=50, deadline=None)
@given(
    fraction=st.lists(st.floats(0.05, 0.95), min_size=6, max_size=6),
    cap=st.lists(st.floats(1, 1000), min_size=6, max_size=6),
    part=st.floats(0.01, 0.99),
)
def test_bend_has_one_power(fraction: list[float], cap: list[float], part: float) -> None:
    """Against a search of the one power by bisection."""
    shares, caps = np.array(fraction), np.array(cap)
    total = part * caps.sum()
    power = brentq(lambda p: (caps * shares**p).sum() - total, 0, 200, xtol=1e-13)
    np.testing.assert_allclose(bend(shares[None], caps[None], np.array([total]))[0], caps * shares**power, rtol=1e-6)
