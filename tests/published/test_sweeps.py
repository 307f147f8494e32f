"""Sweeps against published values: percentiles, one-at-a-time sensitivity, expected values.

Tolerances are those of the printed rounding. Cases marked 'closed form' have no printed source: they follow from the
definition and were worked out by hand from it.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pytest

from planner.money.rates import discount_factor, present_value
from planner.scenario.sweep import Discrete, LogNormal, Normal, Triangular
from planner.study.sweep.draws import quantile
from planner.study.sweep.statistics import percentiles, sensitivity_indicator, tornado

MANY = (np.arange(100_000) + 0.5) / 100_000
"""Middles of so many equal parts of a distribution."""


def exceeded_by(law: Normal | LogNormal, percent: float) -> float:
    """Value that a share of the outcomes exceeds: the energy assessor's P-value, opposite to a cost estimator's."""
    return float(quantile(law, 1 - percent / 100))


# FGW TR6 Rev. 11 (2022) and energy-yield practice: the P90 is exceeded with 90 % probability and lies 1.282 standard
# deviations below the median, the P75 0.674, the P99 2.326 (printed to three decimals).
@pytest.mark.parametrize(("percent", "factor"), [(75, 0.674), (90, 1.282), (99, 2.326)])
@pytest.mark.published(
    "uncertainty", "FGW TR6 rev. 11 (2022): factors of exceedance", values=1, confirmed="at second hand"
)
def test_p_values_of_a_normal_yield(percent: float, factor: float) -> None:
    law = Normal(kind="normal", key="yield", mean=100.0, standard_deviation=10.0)
    assert exceeded_by(law, percent) == pytest.approx(100 - 10 * factor, abs=0.005)


def test_the_table_says_which_tail_it_means() -> None:
    # The same convention in words; P90 in a table of costs means not exceeded in 90 % of trials, the other tail.
    law = Normal(kind="normal", key="yield", mean=100.0, standard_deviation=10.0)
    low, middle, high = percentiles(quantile(law, MANY), (10, 50, 90))
    assert low.value == pytest.approx(100 - 12.82, abs=0.01)
    assert low.meaning == "exceeded in 90 of 100 cases"
    assert middle.value == pytest.approx(100, abs=1e-6)
    assert high.value == pytest.approx(100 + 12.82, abs=0.01)
    assert high.meaning == "exceeded in 10 of 100 cases"


# A standard deviation of 8 %: closed form of the same convention.
@pytest.mark.parametrize(("percent", "ratio"), [(90, 0.89748), (75, 0.94604)])
def test_p_values_at_eight_percent(percent: float, ratio: float) -> None:
    law = Normal(kind="normal", key="yield", mean=1.0, standard_deviation=0.08)
    assert exceeded_by(law, percent) == pytest.approx(ratio, abs=5e-6)


@pytest.mark.published("uncertainty", "energy-yield practice: P90/P50", values=1, confirmed="seen")
def test_quadrature_of_independent_spreads_and_the_lognormal_p90() -> None:
    # Independent spreads of 6, 3 and 2 % add in quadrature to 7.0 %; P90/P50 of the lognormal is printed as 0.91 in
    # energy-yield practice, 0.91420 in closed form.
    spreads = (0.06, 0.03, 0.02)
    together = [Normal(kind="normal", key="x", mean=1.0, standard_deviation=spread) for spread in spreads]
    random = np.random.default_rng(1)
    total = sum(quantile(law, random.permutation(MANY)) - 1 for law in together)
    assert np.std(np.asarray(total)) == pytest.approx(0.07, abs=5e-4)
    deviation = np.sqrt(np.expm1(0.07**2))
    law = LogNormal(kind="lognormal", key="x", mean=1.0, standard_deviation=float(deviation))
    ratio = exceeded_by(law, 90) / exceeded_by(law, 50)
    assert ratio == pytest.approx(0.91, abs=0.005)
    assert ratio == pytest.approx(0.91420, abs=5e-6)


def test_percentiles_of_a_triangular_distribution() -> None:
    # Triangular (80, 100, 140): closed form.
    law = Triangular(kind="triangular", key="x", low=80.0, mode=100.0, high=140.0)
    found = percentiles(quantile(law, MANY), (10, 50, 90))
    assert [percentile.value for percentile in found] == pytest.approx([90.954, 105.359, 124.508], abs=2e-3)
    assert float(quantile(law, MANY).mean()) == pytest.approx(106.667, abs=1e-3)


@pytest.mark.published("uncertainty", "OAS, cost-benefit analysis, annex: expected value", values=1, confirmed="seen")
def test_expected_value_of_two_outcomes() -> None:
    # OAS/CBA annex: +20 with probability 0.7, -80 with probability 0.3, expected -10.
    law = Discrete(kind="discrete", key="x", values=[20.0, -80.0], weights=[0.7, 0.3])
    assert float(quantile(law, MANY).mean()) == pytest.approx(-10, abs=1e-9)


def net_present_value(capital: float = 10_000, net: float = 1500, life: int = 15, rate: float = 0.08) -> float:
    """Present value of a capital outlay and a level net income."""
    return float(present_value(np.array([-capital, *[net] * life]), discount_factor(rate, life)))


def test_tornado_of_a_small_project() -> None:
    # Capital 10 000, net income 1 500 a year, 15 years, 8 %; each input moved alone. Closed form. Order by swing and
    # one variable at a time: ADB Guidelines for the Economic Analysis of Projects (1997), chapter XII.
    low = [
        net_present_value(capital=9000), net_present_value(net=1350), net_present_value(life=12),
        net_present_value(rate=0.06),
    ]  # fmt: skip
    high = [
        net_present_value(capital=11_000), net_present_value(net=1650), net_present_value(life=18),
        net_present_value(rate=0.10),
    ]  # fmt: skip
    base = net_present_value()
    assert base == pytest.approx(2839.22, abs=0.005)
    found = tornado(base, low, high)
    assert [swing.index for swing in found] == [3, 2, 1, 0]
    assert [swing.swing for swing in found] == pytest.approx([3159.25, 2753.71, 2567.84, 2000.00], abs=0.006)
    ends = [(4568.37, 1409.12), (1304.12, 4057.83), (1555.30, 4123.14), (3839.22, 1839.22)]
    assert [(swing.low, swing.high) for swing in found] == [pytest.approx(pair, abs=0.006) for pair in ends]


# ADB Handbook for the Economic Analysis of Water Supply Projects (1999), box 7.1 (figures from memory, consistent):
# price 300 gives a net present value of 20 912, price 270 gives 6 895, indicator 6.70; internal rate of return 15.87 %
# falls to 13.31 % against a cut-off of 12 %, indicator 6.61.
@pytest.mark.parametrize(
    ("results", "printed"),
    [((20_912.0, 6895.0), 6.70), ((15.87 - 12, 13.31 - 12), 6.61)],
    ids=["net present value", "rate of return above the cut-off"],
)
def test_sensitivity_indicator(results: Sequence[float], printed: float) -> None:
    assert sensitivity_indicator(results[0], results[1], 300, 270) == pytest.approx(printed, abs=0.006)
