"""The sweep's workbook and its lines for the terminal."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from pathlib import Path
from typing import BinaryIO

import numpy as np
from rich.console import Group, RenderableType
from rich.table import Table
from rich.text import Text

from planner.checks.safety import WHERE_LISTED
from planner.report.files import write_stream
from planner.report.sheets.page import Page, clean
from planner.report.style import Styles
from planner.report.sweep_sheets import MOST_ROWS, write_grid, write_random, write_tornado, write_weather
from planner.study.sweep.engine import MEASURES
from planner.study.sweep.run import SweepResult
from planner.study.sweep.summary import changes_of, first_words, firsts_of, of_base, tornadoes

_SHEETS = {"one at a time": "One at a time", "grid": "Grid", "random": "Random"}
_WRITERS = {"one at a time": write_tornado, "grid": write_grid, "random": write_random}
_STAGES = {
    "weather": "weather and hours anew",
    "run": "hours anew, same weather",
    "money": "prices only, same hours",
    "nothing": "nothing: it is only checked",
}
_SHOWN = 8


def write_sweep_workbook(swept: SweepResult, said: Sequence[str], path: Path) -> None:
    """Write a sweep as a workbook with charts, whole or not at all.

    Parameters
    ----------
    swept : SweepResult
        The finished sweep.
    said : sequence of str
        What it says in plain sentences.
    path : pathlib.Path
        File to write.
    """
    write_stream(path, lambda stream: _fill(swept, said, stream))


def _fill(swept: SweepResult, said: Sequence[str], stream: BinaryIO) -> None:
    import xlsxwriter

    book = xlsxwriter.Workbook(
        stream,
        {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False},
    )
    name = clean(swept.base.scenario.name)
    book.set_properties({"title": name, "created": datetime(1980, 1, 1)})
    styles = Styles(book)
    pages = [Page(book.add_worksheet("Answer"), styles, "Answer")]
    _write_answer(pages[0], swept, said)
    for results in swept.results:
        title = _SHEETS[results.plan.mode]
        pages.append(Page(book.add_worksheet(title), styles, title))
        _WRITERS[results.plan.mode](pages[-1], book, swept.base, results)
    if swept.weather is not None:
        pages.append(Page(book.add_worksheet("Weather years"), styles, "Weather years"))
        write_weather(pages[-1], book, swept.weather)
    if any(results.problems for results in swept.results):
        pages.append(Page(book.add_worksheet("Left out"), styles, "Left out"))
        _write_problems(pages[-1], swept)
    footer = name[:100].replace("&", "&&")
    for page in pages:
        page.finish(footer, one_page=page.name == "Answer")
    book.close()


def _write_answer(page: Page, swept: SweepResult, said: Sequence[str]) -> None:
    base = swept.base
    currency = base.scenario.currency
    page.title(f"{base.scenario.name}: what is uncertain", base.scenario.question or "")
    page.fix_width(0, 46)
    for sentence in [*said, WHERE_LISTED]:
        page.paragraph(sentence)
    page.heading("The scenario as it stands", 6)
    page.header(
        [
            "Supply option",
            "Meets the target",
            "Delivered share (%)",
            "Tank (m3)",
            "Strings",
            f"Present cost ({currency})",
            f"Levelised cost ({currency}/m3)",
        ]
    )
    for place in base.ranking():
        values = dict(zip(MEASURES, base.numbers[place].tolist(), strict=True))
        page.put(page.row, 0, base.options[place])
        page.put(page.row, 1, "✓ yes" if values["meets_service"] > 0.5 else "✗ no", "centre")
        page.put(page.row, 2, 100 * values["delivered_share"], "two")
        page.put(page.row, 3, values["tank_m3"], "one")
        page.put(page.row, 4, values["strings"], "whole")
        page.put(page.row, 5, values["present_cost"], "money")
        page.put(page.row, 6, values["levelised_cost_per_m3"], "three", word="nothing delivered")
        page.row += 1
    page.heading("Inputs varied", 6)
    page.header(["Input", "Sweep", "As it stands", "Lowest", "Highest", "Unit", "What is worked out anew"])
    for results in swept.results:
        for place, key in enumerate(results.plan.keys):
            values_of_key = results.plan.values[:, place]
            page.put(page.row, 0, key.text)
            page.put(page.row, 1, results.plan.mode)
            page.put(page.row, 2, np.nan if key.base is None else key.base, "general", word="chosen by the tool")
            page.put(page.row, 3, _short(np.nanmin(values_of_key)), "general")
            page.put(page.row, 4, _short(np.nanmax(values_of_key)), "general")
            page.put(page.row, 5, key.unit.replace("money", currency))
            page.put(page.row, 6, _STAGES[key.changes])
            page.row += 1


def _short(value: float) -> float:
    """Round to four figures, for people."""
    return float(f"{value:.4g}")


def _write_problems(page: Page, swept: SweepResult) -> None:
    page.title("Variants that could not be worked out", "Everything else was worked out.")
    page.header(["Sweep", "Variant", "Inputs", "What is wrong"])
    page.freeze()
    page.fix_width(2, 60)
    page.fix_width(3, 90)
    left = MOST_ROWS
    for results in swept.results:
        for variant, text in list(results.problems.items())[:left]:
            given = [
                f"{key.text} = {value:g}"
                for key, value in zip(results.plan.keys, results.plan.values[variant], strict=True)
                if not np.isnan(value)
            ]
            page.put(page.row, 0, results.plan.mode)
            page.put(page.row, 1, float(variant + 1), "whole")
            page.put(page.row, 2, ", ".join(given), "wrap")
            page.put(page.row, 3, text, "wrap")
            page.row += 1
        left = max(left - len(results.problems), 0)


def sweep_report(swept: SweepResult, said: Sequence[str]) -> Group:
    """Lay a sweep out for the terminal: the tornado of the best option's present cost, and the sentences."""
    parts: list[RenderableType] = []
    base = swept.base
    for results in swept.results:
        if results.plan.mode != "one at a time":
            continue
        cost = tornadoes(base, results)[0]
        table = Table(title=f"{base.scenario.name}: {cost.title}, {base.scenario.currency}", title_justify="left")
        table.add_column("Input, one at a time")
        for heading in ("Input\nlow", "Input\nhigh", "Cost\nat low", "Cost\nat high", "Swing"):
            table.add_column(heading, justify="right")
        for heading in ("Best at low", "Best at high"):
            table.add_column(heading)
        firsts, changing = firsts_of(results), {place for place, _ in changes_of(results)}
        for number, swing in enumerate(cost.swings):
            if number >= _SHOWN and swing.place not in changing:
                continue
            low, high = results.plan.values[1 + 2 * swing.place : 3 + 2 * swing.place, swing.place]
            figures = [f"{value:,.0f}" if np.isfinite(value) else "–" for value in (swing.low, swing.high, swing.swing)]
            best = [first_words(firsts[place], results.options) for place in (1 + 2 * swing.place, 2 + 2 * swing.place)]
            table.add_row(results.plan.keys[swing.place].text, f"{low:g}", f"{high:g}", *figures, *best)
        parts.append(table)
    if not parts:
        parts.append(_base_table(swept))
    return Group(*parts, Text(""), *(Text(sentence) for sentence in said), Text(f"\n{WHERE_LISTED}"))


def _base_table(swept: SweepResult) -> Table:
    base = swept.base
    table = Table(title=f"{base.scenario.name}, as it stands", title_justify="left")
    table.add_column("Supply option")
    for heading in ("Delivered\n%", f"Present cost\n{base.scenario.currency}"):
        table.add_column(heading, justify="right")
    share, cost = of_base(base, "delivered_share"), of_base(base, "present_cost")
    for place in base.ranking():
        table.add_row(base.options[place], f"{100 * share[place]:.1f}", f"{cost[place]:,.0f}")
    return table
