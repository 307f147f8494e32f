"""The sizing for the terminal, the workbook and the JSON."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path
from typing import Any

from rich.console import Group, RenderableType
from rich.table import Table
from rich.text import Text

from planner import __version__
from planner.checks.safety import WHERE_LISTED
from planner.report.sheets.page import Page
from planner.report.study_book import put_row, write_study_book, write_study_json
from planner.report.style import LINES, MARKERS, Kind, style_chart, value_axis
from planner.study.sizing import CLOSE, OptionSizing, SizedDesign, Sizing
from planner.study.sizing_words import misses_words, switch_sentence

SCHEMA = 1
SHEETS = ("Answer", "Best designs", "Runners-up", "Trade-off", "Cost of service")
RUNNERS_IN_TERMINAL, RUNNERS_IN_BOOK = 5, 1000
NOTE = (
    "Every candidate was run hour by hour through every life year and costed: nothing was skipped. Present cost is the "
    "present value of all costs less what the works are worth at the end. Check any choice against the yield of the "
    f"borehole before it is built. {WHERE_LISTED}"
)
_SHARES_IN_TERMINAL = (80.0, 90.0, 95.0, 97.0, 98.0, 99.0, 99.5, 100.0)


def sizing_terminal(sizing: Sizing, sentences: Sequence[str], *, verbose: bool = False) -> Group:
    """Put tables and sentences together for the terminal; `verbose` adds the candidates that were left out."""
    parts: list[RenderableType] = [_best_table(sizing), Text("")]
    parts += [Text(sentence) for sentence in sentences]
    first = sizing.ranked[0]
    if first.runners_up:
        parts += [Text(""), _runners_table(first)]
    parts += [Text(""), _service_table(sizing)]
    for option in sizing.ranked:
        if option.best is None:
            parts.append(Text(f"! {option.name}: {misses_words(option)}."))
    if verbose:
        parts += [
            Text(f"Left out, {option.name}: {text}") for option in sizing.options for text in option.grid.left_out
        ]
    return Group(*parts, Text(f"\n{WHERE_LISTED}"))


def _best_table(sizing: Sizing) -> Table:
    currency = sizing.scenario.currency
    table = Table(title=f"{sizing.scenario.name}: cheapest design of each supply option", title_justify="left")
    for heading in ("Supply option", "Serves"):
        table.add_column(heading)
    for heading in ("Strings", "PV\nkW", "Tank\nm3", "Switch\n%"):
        table.add_column(heading, justify="right")
    table.add_column("Hours")
    for heading in (
        "Delivered\n%",
        f"To build\n{currency}",
        f"Present cost\n{currency}",
        f"Per m3\n{currency}",
        "Tried",
    ):
        table.add_column(heading, justify="right")
    for option in sizing.ranked:
        design = option.nearest
        table.add_row(
            option.name,
            "✓ yes" if option.best else "✗ no",
            *_design_cells(design),
            *_money_cells(design),
            f"{option.grid.count:,}",
        )
    return table


def _design_cells(design: SizedDesign) -> list[str]:
    return [
        str(design.strings) if design.modules else "-",
        f"{design.array_kw:.1f}" if design.modules else "-",
        f"{design.tank_m3:g}",
        f"{design.levels[0]:g}/{design.levels[1]:g}" if design.levels else "-",
        design.hours if design.levels else "-",
    ]


def _money_cells(design: SizedDesign) -> list[str]:
    return [
        f"{100 * design.delivered_share:.1f}",
        f"{design.capital_cost:,.0f}",
        f"{design.present_cost:,.0f}",
        f"{design.levelised_cost_per_m3:.2f}",
    ]


def _runners_table(option: OptionSizing) -> Table:
    shown = option.runners_up[:RUNNERS_IN_TERMINAL]
    title = f"{option.name}: the first {len(shown)} of {len(option.runners_up)} others within {100 * CLOSE:g} percent"
    table = Table(title=title, title_justify="left")
    for heading in ("Strings", "PV\nkW", "Tank\nm3", "Switch\n%"):
        table.add_column(heading, justify="right")
    table.add_column("Hours")
    for heading in ("Delivered\n%", "To build", "Present cost", "Per m3"):
        table.add_column(heading, justify="right")
    for design in shown:
        table.add_row(*_design_cells(design), *_money_cells(design))
    return table


def _service_table(sizing: Sizing) -> Table:
    title = f"Least present cost ({sizing.scenario.currency}) that delivers at least so much of the water"
    table = Table(title=title, title_justify="left")
    table.add_column("Supply option")
    target = sizing.scenario.service.delivered_share_percent
    shares = sorted({*_SHARES_IN_TERMINAL, target})
    for share in shares:
        table.add_column(f"{share:g} %" + ("\ntarget" if share == target else ""), justify="right")
    for option in sizing.ranked:
        costs = dict(option.least_cost_at)
        cells = [costs.get(share) for share in shares]
        table.add_row(option.name, *("-" if design is None else f"{design.present_cost:,.0f}" for design in cells))
    return table


def write_sizing_book(sizing: Sizing, sentences: Sequence[str], path: Path) -> None:
    """Write the sizing as a workbook, whole or not at all.

    Parameters
    ----------
    sizing : Sizing
        The finished sizing.
    sentences : sequence of str
        The answer in words.
    path : pathlib.Path
        File to write.
    """

    def fill(book: Any, pages: dict[str, Page]) -> None:
        _answer(pages["Answer"], sizing, sentences)
        _best(pages["Best designs"], sizing)
        _runners(pages["Runners-up"], sizing)
        _trade_off(pages["Trade-off"], book, sizing)
        _cost_of_service(pages["Cost of service"], book, sizing)

    write_study_book(sizing.scenario.name, SHEETS, fill, path, one_page=("Answer", "Best designs", "Cost of service"))


def _answer(page: Page, sizing: Sizing, sentences: Sequence[str]) -> None:
    page.title(sizing.scenario.name, f"Sizing; money in {sizing.scenario.currency}")
    page.fix_width(0, 110)
    page.paragraph(sentences[0], "verdict")
    for sentence in sentences[1:]:
        page.paragraph(sentence)
    switches = [switch_sentence(option) for option in sizing.ranked if option.best and option.grid.has_switch]
    if switches:
        page.heading("Float switches, by supply option")
        for sentence in switches:
            page.paragraph(sentence)
    page.heading("How it was found")
    page.paragraph(NOTE)
    for option in sizing.ranked:
        if option.best is None:
            page.paragraph(f"{option.name} cannot meet the target: {misses_words(option)}.")
        for text in option.grid.left_out:
            page.paragraph(f"Left out for {option.name}: {text}.")


_COLUMNS: tuple[str, ...] = (
    "Supply option", "Strings", "Modules", "PV array (kW)", "Tank (m3)", "Switch starts (%)", "Switch stops (%)",
    "Starts at (m3 from the bottom)", "Stops at (m3 from the bottom)", "Hours of top-up", "Pump and pipes",
    "Delivered (%)", "Worst year (%)", "Longest run of short days", "Meets the target",
    "Grid (kWh/year)", "Fuel (L/year)",
)  # fmt: skip
_MONEY = ("Build cost", "Present cost", "Yearly cost", "Cost of water per m3")


def _header(page: Page, currency: str, *more: str) -> None:
    page.header([*_COLUMNS, *(f"{name} ({currency})" for name in _MONEY), *more])
    page.freeze()
    page.fix_width(0, 24)
    page.fix_width(_COLUMNS.index("Pump and pipes"), 24)


def _row(design: SizedDesign) -> list[tuple[str | float | None, Kind]]:
    switch, levels = design.switch_m3 or (None, None), design.levels or (None, None)
    return [
        (design.option, "text"),
        (float(design.strings) if design.modules else None, "whole"),
        (float(design.modules) if design.modules else None, "whole"),
        (design.array_kw if design.modules else None, "one"),
        (design.tank_m3, "one"),
        (levels[0], "one"),
        (levels[1], "one"),
        (switch[0], "two"),
        (switch[1], "two"),
        (design.hours if design.levels else None, "text"),
        ("; ".join([design.pump, *design.pipes]), "wrap"),
        (100 * design.delivered_share, "two"),
        (100 * design.worst_year_share, "two"),
        (design.longest_short_days, "whole"),
        ("yes" if design.meets_service else "no", "centre"),
        (design.grid_kwh_per_year, "whole"),
        (design.fuel_l_per_year, "whole"),
        (design.capital_cost, "money"),
        (design.present_cost, "money"),
        (design.equivalent_yearly_cost, "money"),
        (design.levelised_cost_per_m3, "price"),
    ]


def _best(page: Page, sizing: Sizing) -> None:
    page.title("Best designs", "The cheapest that meets the target; where none does, the one that misses it by least.")
    _header(page, sizing.scenario.currency, "Candidates tried", "'planner run' would cost", "Misses by (points)")
    for place, option in enumerate(sizing.ranked):
        more: list[tuple[str | float | None, Kind]] = [
            (float(option.grid.count), "whole"),
            (option.by_run_cost, "money"),
            (option.misses_by_percent, "two"),
        ]
        put_row(page, [*_row(option.nearest), *more], "best" if place == 0 and option.best else "plain")


def _runners(page: Page, sizing: Sizing) -> None:
    under = f"Others that meet the target at no more than {100 * CLOSE:g} percent above the best of their option."
    page.title("Runners-up", under)
    _header(page, sizing.scenario.currency, "Above the best (%)")
    for option in sizing.ranked:
        if option.best is None:
            continue
        for design in option.runners_up[:RUNNERS_IN_BOOK]:
            above = 100 * (design.present_cost / option.best.present_cost - 1)
            put_row(page, [*_row(design), (above, "two")])


def _trade_off(page: Page, book: Any, sizing: Sizing) -> None:
    currency = sizing.scenario.currency
    page.title("Trade-off", "Designs that no other of the same option beats in both present cost and delivered share.")
    top = page.row
    page.row += 22
    _header(page, currency)
    page.sheet.freeze_panes(0, 1)
    chart = book.add_chart({"type": "scatter", "subtype": "straight_with_markers"})
    share_column, cost_column = _COLUMNS.index("Delivered (%)"), len(_COLUMNS) + 1
    for place, option in enumerate(sizing.ranked):
        first = page.row
        for design in option.front:
            put_row(page, _row(design))
        chart.add_series(
            {
                "name": option.name,
                "categories": page.range_of(first, share_column, page.row - 1, share_column),
                "values": page.range_of(first, cost_column, page.row - 1, cost_column),
                "line": LINES[place % len(LINES)],
                "marker": {"type": MARKERS[place % len(MARKERS)], "size": 5},
            }
        )
    chart.set_x_axis(value_axis("Delivered share of the water (%)", "0", max=100))
    chart.set_y_axis(value_axis(f"Least present cost ({currency})"))
    page.chart(style_chart(chart, "What more service costs"), top, 0, 11, 21)


def _cost_of_service(page: Page, book: Any, sizing: Sizing) -> None:
    currency = sizing.scenario.currency
    page.title(
        "Cost of service", "Least present cost of a design that delivers at least so much of the water over the life."
    )
    page.header(["Delivered at least (%)", *(f"{option.name} ({currency})" for option in sizing.ranked)])
    first = page.row
    for row, (share, _) in enumerate(sizing.ranked[0].least_cost_at):
        designs = [option.least_cost_at[row][1] for option in sizing.ranked]
        costs: list[tuple[str | float | None, Kind]] = [
            ("not reached" if design is None else design.present_cost, "money") for design in designs
        ]
        put_row(page, [(share, "one"), *costs])
    chart = book.add_chart({"type": "column"})
    last = page.row - 1
    for column, option in enumerate(sizing.ranked, start=1):
        chart.add_series(
            {
                "name": option.name,
                "categories": page.range_of(first, 0, last, 0),
                "values": page.range_of(first, column, last, column),
                "fill": {"color": LINES[(column - 1) % len(LINES)]["color"]},
            }
        )
    chart.set_x_axis(value_axis("Delivered at least (%)", "0.0"))
    chart.set_y_axis(value_axis(f"Least present cost ({currency})"))
    page.row += 1
    page.chart(style_chart(chart, "Least present cost by service"), page.row, 0, None, 20)


def sizing_as_data(sizing: Sizing, sentences: Sequence[str]) -> dict[str, Any]:
    """Return a sizing as plain data."""
    return {
        "planner_version": __version__,
        "schema": SCHEMA,
        "scenario": sizing.scenario.name,
        "currency": sizing.scenario.currency,
        "life_years": sizing.scenario.finance.life_years,
        "candidates": sizing.candidate_count,
        "best": sizing.ranking[0] if sizing.ranked[0].best else None,
        "ranking": list(sizing.ranking),
        "sentences": list(sentences),
        "cautions": [WHERE_LISTED],
        "options": [_option_data(option) for option in sizing.options],
    }


def _option_data(option: OptionSizing) -> dict[str, Any]:
    higher, more = option.next_percent
    return {
        "name": option.name,
        "candidates": option.grid.count,
        "left_out": list(option.grid.left_out),
        "meets_service": option.best is not None,
        "misses_by_percent": option.misses_by_percent,
        "misses_by_days": option.misses_by_days,
        "design": _design_data(option.nearest),
        "runners_up": [_design_data(design) for design in option.runners_up[:RUNNERS_IN_BOOK]],
        "trade_off": [_design_data(design) for design in option.front],
        "least_cost_at": [
            {"delivered_percent": share, "present_cost": None if design is None else design.present_cost}
            for share, design in option.least_cost_at
        ],
        "next_percent": {"delivered_percent": higher, "extra_present_cost": more},
        "steady_start_percent": list(option.steady_start_percent) if option.steady_start_percent else None,
        "by_run": {"present_cost": option.by_run_cost, "meets_service": option.by_run_meets},
    }


def _design_data(design: SizedDesign) -> dict[str, Any]:
    data = asdict(design)
    del data["place"], data["option"]
    return {**data, "switch_m3": design.switch_m3}


def write_sizing_json(sizing: Sizing, sentences: Sequence[str], path: Path) -> None:
    """Write a sizing as JSON, whole or not at all."""
    write_study_json(sizing_as_data(sizing, sentences), path)
