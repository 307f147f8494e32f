"""Names of earlier versions are refused with the name of today."""

from __future__ import annotations

from typing import Any

import pytest

from planner.assumptions.reader import check_scenario
from planner.scenario.errors import RENAMED, InputError
from planner.scenario.starter import starter_data

OLD = [
    ("finance", "life_years", 20),
    ("tank", "upkeep_percent_per_year", 1.0),
    ("service", "delivered_share_percent", 98.0),
    ("service", "worst_year_share_percent", 90.0),
]


def refusal(table: str, key: str, value: Any) -> str:
    """Return the message with which the starter with one old name is refused."""
    raw = starter_data()
    raw.setdefault(table, {}).pop(RENAMED.get(key, ""), None)
    raw[table][key] = value
    with pytest.raises(InputError) as caught:
        check_scenario(raw, "site.toml")
    return "\n".join(caught.value.lines())


@pytest.mark.parametrize(("table", "key", "value"), OLD)
def test_an_old_key_is_refused_with_its_new_name(table: str, key: str, value: float) -> None:
    assert f"{table}.{key}: is not a known key; it is called '{RENAMED[key]}' now" in refusal(table, key, value)


def test_an_old_value_is_refused_with_its_new_name() -> None:
    text = refusal("controller", "mode", "blending")
    assert text.endswith("'blending' was given; must be 'parallel' or 'changeover'; it is called 'parallel' now")


def test_a_life_that_still_is_called_so_is_read() -> None:
    raw = starter_data()
    raw["tank"]["life_years"] = 30.0
    assert check_scenario(raw, "site.toml").tank.life_years == 30.0
