"""A study from Python: tables of pandas, and a picture of the tank. `python scenarios/from_python.py` writes it.

Needs matplotlib beside the planner: `pip install -e ".[plot]"`.
"""

from __future__ import annotations

import sys
from pathlib import Path

import matplotlib as mpl

import planner

mpl.use("Agg")

HERE = Path(__file__).parent


def main(folder: Path) -> Path:
    """Compare the options of the hill school over three years, and draw the tank's lowest fortnight."""
    site = planner.load(HERE / "hill-school.toml").with_values({"finance.analysis_period_years": 3})
    study = site.run(quick=True)
    print(
        study.options[["demand_met_percent", "short_days_per_year", "tank_m3", "life_cycle_cost"]].round(2).to_string()
    )

    months = study.months.loc["solar"]
    print(f"Months in which the sun alone leaves people short: {(months['shortfall_m3'] > 0).sum()} of {len(months)}")

    hours = study.hours("solar", year=3)
    level = hours["tank_level_m3"].reset_index(drop=True)
    fortnight = level.rolling(14 * 24).mean().idxmin()
    days = level.iloc[fortnight - 14 * 24 + 1 : fortnight + 1]
    axes = days.set_axis([hour / 24 for hour in range(len(days))]).plot(figsize=(7, 3), color="black")
    axes.set(xlabel="Day", ylabel="Water in the tank (m3)", title="Hill school (invented), sun alone, year 3")
    picture = folder / "tank.png"
    axes.figure.savefig(picture, dpi=120, bbox_inches="tight")
    return picture


if __name__ == "__main__":
    print("Wrote", main(Path(sys.argv[1] if len(sys.argv) > 1 else "outputs")))
