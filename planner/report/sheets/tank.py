"""The sheet 'Tank': delivered share by tank size, and the settings of the float switch that were tried."""

from __future__ import annotations

from typing import Any

import numpy as np

from planner.money.quantities import tank_price
from planner.report.sheets.page import Page, reference
from planner.report.style import INK, LINES, MARKERS, Look, axis, style_chart, value_axis
from planner.study.compare import OptionResult, Study
from planner.study.words import money

LAST, CHART_AT, CHART_ROWS = 10, 6, 22
SHOWN_CURVES = 3


def write_tank(page: Page, book: Any, study: Study) -> None:
    """Fill the sheet 'Tank'.

    Parameters
    ----------
    page : Page
        The sheet.
    book
        XlsxWriter's workbook, for the chart.
    study : Study
        The finished comparison.
    """
    page.title(
        "Tank and float switch",
        "Each size and each setting was simulated hour by hour over the whole life, with everything else of the option "
        "as chosen.",
    )
    page.fix_width(0, 27)
    for column in range(1, LAST + 1):
        page.fix_width(column, 13)
    top = page.row + 1
    spots = _curves(page, study)
    page.row = max(page.row, top + CHART_ROWS + 2)
    _trials(page, study)
    _chart(page, book, study, spots, top)


def _curves(page: Page, study: Study) -> dict[str, tuple[int, int]]:
    """Write the tank curves; return the first and last row of each option."""
    currency, target = study.scenario.currency, study.scenario.service.delivered_share_percent
    page.heading("Delivered share by tank size", LAST)
    page.header(
        ["Supply option", "Tank (m3)", "Delivered share (%)", "Target (%)", f"Price of the tank ({currency})", "Chosen"]
    )
    spots = {}
    for option in study.ranked:
        first = page.row
        volumes = option.tank_curve.volume_m3
        prices = np.asarray(tank_price(option.scenario.tank, volumes))
        for volume, share, price in zip(volumes, option.tank_curve.delivered_share, prices, strict=True):
            chosen = bool(np.isclose(volume, option.tank_m3))
            look: Look = "best" if chosen else "plain"
            page.put(page.row, 0, option.name, "text", look)
            page.put(page.row, 1, float(volume), "one", look)
            page.put(page.row, 2, 100 * float(share), "two", look)
            page.put(page.row, 3, target, "one", look)
            page.put(page.row, 4, float(price), "money", look)
            page.put(page.row, 5, "✓ chosen" if chosen else "", "centre", look)
            page.row += 1
        spots[option.name] = (first, page.row - 1)
    return spots


def _trials(page: Page, study: Study) -> None:
    currency = study.scenario.currency
    tried = [option for option in study.ranked if option.trials]
    page.heading("Settings of the float switch", LAST)
    if not tried:
        page.paragraph("No option lets grid or generator top up what the sun pumps, so no settings were compared.")
        return
    for option in tried:
        page.paragraph(_saving(option, currency), last_column=LAST)
    page.header(
        [
            "Supply option",
            "Start level (% of tank)",
            "Stop level (% of tank)",
            "Delivered share (%)",
            "Meets the target",
            "Grid (kWh/year)",
            "Fuel (L/year)",
            f"Present cost ({currency})",
            f"Yearly cost ({currency}/year)",
            f"Against the setting used ({currency}/year)",
            "Remark",
        ]
    )
    for option in tried:
        used_row, best = page.row, option.best_trial
        for place, trial in enumerate(option.trials):
            row, look = page.row, "best" if place == 0 else "plain"
            style: Look = "best" if look == "best" else "plain"
            page.put(row, 0, option.name, "text", style)
            page.put(row, 1, trial.start_percent, "whole", style)
            page.put(row, 2, trial.stop_percent, "whole", style)
            page.put(row, 3, 100 * trial.delivered_share, "two", style)
            page.put(row, 4, "✓ yes" if trial.meets_service else "✗ no", "centre", style)
            page.put(row, 5, trial.grid_kwh_per_year, "whole", style)
            page.put(row, 6, trial.fuel_l_per_year, "whole", style)
            page.put(row, 7, trial.present_cost, "money", style)
            page.put(row, 8, trial.equivalent_yearly_cost, "money", style)
            page.put(
                row,
                9,
                trial.equivalent_yearly_cost - option.trials[0].equivalent_yearly_cost,
                "money",
                style,
                formula=f"={reference(row, 8)}-{reference(used_row, 8, fixed_row=True)}",
            )
            remarks = [word for word, true in (("used", place == 0), ("best", trial is best)) if true]
            page.put(row, 10, ", ".join(remarks), "centre", style)
            page.row += 1


def _saving(option: OptionResult, currency: str) -> str:
    """Say what the best setting tried would save against the one used."""
    used, best = option.trials[0], option.best_trial
    assert best is not None
    setting = f"{option.name}: start {used.start_percent:g} %, stop {used.stop_percent:g} % of the tank"
    saving = used.equivalent_yearly_cost - best.equivalent_yearly_cost
    better = f"{best.start_percent:g}/{best.stop_percent:g} %"
    if best is used:
        return f"{setting}; of the settings tried none is better."
    if best.meets_service and not used.meets_service:
        return f"{setting} misses the service target; {better} would meet it."
    if saving > 0:
        return f"{setting}; {better} would save {money(saving, currency)} a year."
    return f"{setting}; {better} would deliver most of those tried."


def _chart(page: Page, book: Any, study: Study, spots: dict[str, tuple[int, int]], top: int) -> None:
    """Chart of the recommended option's tank curve, two others that differ from it, and the target."""
    shown: list[OptionResult] = []
    for option in sorted(
        study.ranked, key=lambda o: (o is not study.ranked[0], "solar" not in o.sources, len(o.sources))
    ):
        alike = any(_alike(option, other) for other in shown)
        if len(shown) < SHOWN_CURVES and not alike:
            shown.append(option)
    chart = book.add_chart({"type": "scatter", "subtype": "straight_with_markers"})
    for place, option in enumerate(shown):
        first, last = spots[option.name]
        colour = LINES[place]["color"]
        chart.add_series(
            {
                "name": option.name,
                "categories": page.range_of(first, 1, last, 1),
                "values": page.range_of(first, 2, last, 2),
                "line": LINES[place],
                "marker": {"type": MARKERS[place], "size": 7, "fill": {"color": colour}, "border": {"color": INK}},
            }
        )
    widest = max(shown, key=lambda option: float(option.tank_curve.volume_m3[-1] - option.tank_curve.volume_m3[0]))
    first, last = spots[widest.name]
    chart.add_series(
        {
            "name": "Target",
            "categories": page.range_of(first, 1, last, 1),
            "values": page.range_of(first, 3, last, 3),
            "line": {"color": INK, "width": 1.25, "dash_type": "dash"},
            "marker": {"type": "none"},
        }
    )
    lowest = min(float(option.tank_curve.delivered_share.min()) for option in shown)
    floor = 5 * np.floor(min(100 * lowest, study.scenario.service.delivered_share_percent) / 5 - 0.2)
    chart.set_x_axis(axis("Tank (m3)", "#,##0", min=0))
    chart.set_y_axis(value_axis("Delivered share (%)", "0", min=max(float(floor), 0.0), max=100))
    page.chart(style_chart(chart, "Delivered share by tank size"), top + 1, CHART_AT, LAST, CHART_ROWS)


def _alike(option: OptionResult, other: OptionResult) -> bool:
    mine, theirs = option.tank_curve, other.tank_curve
    return mine.volume_m3.shape == theirs.volume_m3.shape and bool(
        np.allclose(mine.volume_m3, theirs.volume_m3)
        and np.allclose(mine.delivered_share, theirs.delivered_share, atol=0.005)
    )
