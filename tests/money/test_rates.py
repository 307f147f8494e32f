"""Interest arithmetic against numpy_financial, whose `npv` takes one row of flows and whose `pmt` one kind of zero."""

from __future__ import annotations

import numpy as np
import numpy_financial as npf
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.money.rates import capital_recovery_factor, discount_factor, level_payment, present_value, real_rate


@given(rate=st.floats(-0.05, 0.6).filter(lambda rate: abs(rate) > 1e-4), years=st.integers(1, 40))
@pytest.mark.engine("numpy_financial", "level payments and present values, in the test")
def test_level_payment_is_pmt(rate: float, years: int) -> None:
    assert level_payment(rate, years, 1234.5) == pytest.approx(-npf.pmt(rate, years, 1234.5), rel=1e-9)


@pytest.mark.parametrize("rate", [0.0, 1e-300, 1e-17, -1e-17, 1e-12])
def test_level_payment_near_no_interest(rate: float) -> None:
    assert level_payment(rate, 8, 1000.0) == pytest.approx(125.0, rel=1e-9)


@pytest.mark.engine("numpy_financial", "level payments and present values, in the test", values=12)
def test_present_value_is_npv_row_by_row() -> None:
    flows = np.random.default_rng(2).normal(0, 100, (3, 4, 9))
    rates = np.random.default_rng(3).uniform(0, 0.3, (3, 4))
    values = present_value(flows, discount_factor(rates, 8))
    assert values.shape == (3, 4)
    for case in np.ndindex(3, 4):
        assert values[case] == pytest.approx(npf.npv(rates[case], flows[case]), rel=1e-9, abs=1e-9)


@given(rate=st.floats(-0.04, 0.4), years=st.integers(1, 40))
def test_recovered_capital_is_worth_the_capital(rate: float, years: int) -> None:
    worth = capital_recovery_factor(rate, years) * discount_factor(rate, years)[1:].sum()
    assert worth == pytest.approx(1.0, rel=1e-9)


@given(rate=st.floats(-0.04, 0.4), inflation=st.floats(-0.04, 0.5))
def test_fisher_is_its_own_inverse(rate: float, inflation: float) -> None:
    assert real_rate((1 + rate) * (1 + inflation) - 1, inflation) == pytest.approx(rate, abs=1e-12)
