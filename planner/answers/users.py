"""What users must pay for the option ranked first, in a sentence."""

from __future__ import annotations

import math

from planner.figures import figure
from planner.study.compare import Study
from planner.study.words import money
from planner.text import sum_of_money, text


def users_sentence(study: Study) -> str:
    """Say which tariff covers what, what is to be set aside, and which year is dearest.

    Parameters
    ----------
    study : Study
        The finished comparison.

    Returns
    -------
    str
        Empty where there are no prices or no water, and where something has no price, as the tariff would be too low.
    """
    first, currency = study.ranked[0], study.scenario.currency
    if not study.scenario.priced or first.unpriced:
        return ""

    def value(key: str) -> float:
        return float(figure(key).read(first))

    tariffs = {key: value(f"tariff_{name}") for key, name in _TARIFFS.items()}
    if not all(map(math.isfinite, tariffs.values())):
        return ""
    slots = {key: sum_of_money(tariff, currency, ".2f") for key, tariff in tariffs.items()}
    if value("renewal_saving") <= 0:
        return text("users.sentence_no_lumps", option=first.name, **slots)
    return text(
        "users.sentence",
        option=first.name,
        saving=money(value("renewal_saving"), currency),
        year=f"{value('burden_largest_year'):.0f}",
        largest=money(value("burden_largest"), currency),
        mean=money(value("burden_mean"), currency),
        **slots,
    )


_TARIFFS = {"operation": "operation", "renewals": "operation_and_renewals", "full": "full"}
