"""Days without water: how many a year, in which month, how many in a row, and how much is missing."""

from __future__ import annotations

from planner.figures import DAYS, figure
from planner.study.compare import OptionResult
from planner.text import text


def days_words(option: OptionResult) -> str:
    """Say on how many days an option leaves users short of water, when, how long and by how much."""
    short, month, in_month, longest, litres = (float(figure(key).read(option)) for key in DAYS)
    if not longest:
        return text("days.none", option=option.name, years=option.scenario.finance.analysis_period_years)
    return text(
        "days.short",
        option=option.name,
        short=short,
        month=text(f"month_name.{month:.0f}"),
        in_month=in_month,
        longest=longest,
        litres=float(f"{litres:.2g}"),
    )
