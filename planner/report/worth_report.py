"""'Is it worth it?' for the terminal, the workbook and the JSON."""

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
from planner.report.style import LINES, Kind, axis, solid, style_chart, value_axis
from planner.study.worth import AGREE, CheapestMap, Standing, Switching, Worth
from planner.study.worth_words import NAMES

SCHEMA = 1
SHEETS = ("Answer", "With and without", "Switching values", "Map")
NOTE = (
    "While an input changes, every design stays as it was chosen in the base case (strings, tank, float-switch "
    "levels). A switching value is where the two best options, one with and one without the source, have the same "
    "present cost; each was verified by running the scenario again at the value, and the two agree to "
    f"{100 * AGREE:g} percent unless the table says otherwise. 'The answer turns' looks at every option and at the "
    "service target as well: beyond that value the best of all options changes sides."
)


def worth_terminal(worth: Worth, sentences: Sequence[str]) -> Group:
    """Put sentences and tables together for the terminal."""
    parts: list[RenderableType] = [Text(sentence) for sentence in sentences]
    parts += [Text(""), _options_table(worth), Text(""), _switching_table(worth)]
    if worth.map is not None:
        parts += [Text(""), _map_table(worth.map)]
    return Group(*parts, Text(f"\n{WHERE_LISTED}"))


def _options_table(worth: Worth) -> Table:
    currency = worth.scenario.currency
    table = Table(title=f"{worth.scenario.name}: with and without {NAMES[worth.source]}", title_justify="left")
    table.add_column("Supply option")
    table.add_column("Serves")
    for heading in ("Delivered\n%", f"To build\n{currency}", f"Present cost\n{currency}", f"Yearly\n{currency}"):
        table.add_column(heading, justify="right")
    table.add_column(f"Adding {NAMES[worth.source]}")
    for option in worth.options:
        table.add_row(
            option.name,
            "✓ yes" if option.meets_service else "✗ no",
            f"{100 * option.delivered_share:.1f}",
            f"{option.capital_cost:,.0f}",
            f"{option.present_cost:,.0f}",
            f"{option.equivalent_yearly_cost:,.0f}",
            _added(worth, option),
            style="bold" if option in (worth.with_best, worth.without_best) else "",
        )
    return table


def _added(worth: Worth, option: Standing) -> str:
    pair = next((pair for pair in worth.pairs if pair.without is option), None)
    if pair is None:
        return "has it" if worth.source in option.pinned.sources else "-"
    verb = "saves" if pair.saving >= 0 else "costs"
    return f"{verb} {abs(pair.saving):,.0f}"


def switching_words(switching: Switching) -> str:
    """Say what came of one input's switching value."""
    varied = switching.varied
    if varied.without_effect:
        return f"no effect: {varied.without_effect}"
    if not switching.changes:
        return "changes both alike"
    if switching.value is None:
        span = f"none from {varied.text(varied.low)} to {varied.text(varied.high)}"
        beyond = switching.beyond
        return f"{span} (it would be at {varied.text(beyond)})" if beyond is not None and beyond > varied.high else span
    text = varied.text(switching.value)
    if not switching.agrees:
        return f"{text}: a jump, the costs do not meet there"
    return text if switching.serve_there else f"{text}, but there one no longer serves as now"


def turn_words(switching: Switching) -> str:
    """Say where the answer turns with one input."""
    turns = [
        f"{switching.varied.text(turn.value)}: {turn.best if turn.meets else 'none that serves'}"
        for turn in switching.turns
    ]
    return "; ".join(turns) if turns else "nowhere in the range"


def _gap_words(switching: Switching) -> str:
    if switching.cost_with is None or switching.cost_without is None:
        return "-"
    gap = abs(switching.cost_with - switching.cost_without) / max(abs(switching.cost_with), abs(switching.cost_without))
    return f"{100 * gap:.4f}"


def _switching_table(worth: Worth) -> Table:
    title = f"Where {worth.with_best.name} and {worth.without_best.name} cost the same, and where the answer turns"
    table = Table(title=title, title_justify="left")
    for heading in ("Input", "Now", "Same present cost at"):
        table.add_column(heading)
    table.add_column("Differ by\n%", justify="right")
    table.add_column("The answer turns at")
    for switching in worth.switching:
        varied = switching.varied
        table.add_row(
            varied.name,
            varied.text(varied.base),
            switching_words(switching),
            _gap_words(switching),
            turn_words(switching),
        )
    return table


def _map_table(cheapest: CheapestMap) -> Table:
    title = (
        f"Best option by {cheapest.down.name} ({cheapest.down.unit}, down) and {cheapest.across.name} "
        f"({cheapest.across.unit}, across); * misses the target"
    )
    table = Table(title=title, title_justify="left")
    table.add_column("")
    for value in cheapest.across_values:
        table.add_column(f"{value:.4g}")
    for value, names, meets in zip(cheapest.down_values, cheapest.best, cheapest.meets, strict=True):
        cells = [name + ("" if serves else " *") for name, serves in zip(names, meets, strict=True)]
        table.add_row(f"{value:.4g}", *cells)
    return table


def write_worth_book(worth: Worth, sentences: Sequence[str], path: Path) -> None:
    """Write the answer as a workbook, whole or not at all.

    Parameters
    ----------
    worth : Worth
        The finished study.
    sentences : sequence of str
        The answer in words.
    path : pathlib.Path
        File to write.
    """
    sheets = SHEETS if worth.map is not None else SHEETS[:-1]

    def fill(book: Any, pages: dict[str, Page]) -> None:
        _answer(pages["Answer"], worth, sentences)
        _options(pages["With and without"], book, worth)
        _switching(pages["Switching values"], book, worth)
        if worth.map is not None:
            _map(pages["Map"], book, worth.map, worth.scenario.currency)

    write_study_book(worth.scenario.name, sheets, fill, path, one_page=sheets)


def _answer(page: Page, worth: Worth, sentences: Sequence[str]) -> None:
    page.title(f"Is {NAMES[worth.source]} worth it?", f"{worth.scenario.name}; money in {worth.scenario.currency}")
    page.fix_width(0, 110)
    page.paragraph(sentences[0], "verdict")
    for sentence in sentences[1:]:
        page.paragraph(sentence)
    page.heading("How it was found")
    page.paragraph(NOTE)
    page.paragraph(WHERE_LISTED)


def _options(page: Page, book: Any, worth: Worth) -> None:
    currency, source = worth.scenario.currency, NAMES[worth.source]
    page.title("With and without", f"Each option's design is the one that the ordinary run chooses; source: {source}.")
    page.header(
        [
            "Supply option, best first", f"Has {source}", "Meets the target", "Delivered (%)", "Worst year (%)",
            "Strings", "Tank (m3)", "Switch starts (%)", "Switch stops (%)", f"Build cost ({currency})",
            f"Present cost ({currency})", f"Yearly cost ({currency}/year)", f"Cost of water ({currency}/m3)",
            f"Adding {source} saves ({currency})",
        ]
    )  # fmt: skip
    page.freeze()
    first = page.row
    savings = {pair.without.name: pair.saving for pair in worth.pairs}
    for option in worth.options:
        switched = option.pinned.sources != ("solar",)
        values: list[tuple[str | float | None, Kind]] = [
            (option.name, "text"),
            ("yes" if worth.source in option.pinned.sources else "no", "centre"),
            ("yes" if option.meets_service else "no", "centre"),
            (100 * option.delivered_share, "two"),
            (100 * option.worst_year_share, "two"),
            (float(option.pinned.strings) if option.modules else None, "whole"),
            (option.pinned.tank_m3, "one"),
            (option.pinned.levels[0] if switched else None, "one"),
            (option.pinned.levels[1] if switched else None, "one"),
            (option.capital_cost, "money"),
            (option.present_cost, "money"),
            (option.equivalent_yearly_cost, "money"),
            (option.levelised_cost_per_m3, "price"),
            (savings.get(option.name), "money"),
        ]
        put_row(page, values, "best" if option in (worth.with_best, worth.without_best) else "plain")
    chart = book.add_chart({"type": "bar"})
    chart.add_series(
        {
            "name": "Present cost",
            "categories": page.range_of(first, 0, page.row - 1, 0),
            "values": page.range_of(first, 10, page.row - 1, 10),
            "points": [
                solid(LINES[0]["color"] if worth.source in option.pinned.sources else "#C8DCDA")
                for option in worth.options
            ],
            "gap": 45,
        }
    )
    chart.set_y_axis(axis("", reverse=True))
    chart.set_x_axis(value_axis(f"Present cost ({currency})"))
    page.row += 1
    title = f"Present cost with (dark) and without (light) {source}"
    page.chart(style_chart(chart, title, legend="none"), page.row, 0, 10, 18)


def _switching(page: Page, book: Any, worth: Worth) -> None:
    currency = worth.scenario.currency
    pair = f"{worth.with_best.name} and {worth.without_best.name}"
    page.title("Switching values", f"Where {pair} have the same present cost, the designs held fixed.")
    page.header(
        [
            "Input", "Unit", "Now", "Range from", "Range to", "Switching value", "Change from now (%)", "In words",
            f"{worth.with_best.name} there ({currency})", f"{worth.without_best.name} there ({currency})",
            "They differ by (%)", "Best of all there", "The answer turns at", "Key in the scenario",
        ]
    )  # fmt: skip
    page.freeze()
    for column in (7, 12, 13):
        page.fix_width(column, 34)
    first = page.row
    found: list[int] = []
    for switching in worth.switching:
        varied, value = switching.varied, switching.value
        having, lacking = switching.cost_with, switching.cost_without
        gap = (
            None if having is None or lacking is None else 100 * abs(having - lacking) / max(abs(having), abs(lacking))
        )
        change = None if value is None or varied.base == 0 else 100 * (value / varied.base - 1)
        if change is not None:
            found.append(page.row)
        put_row(
            page,
            [
                (varied.name, "text"), (varied.unit, "text"), (varied.base, "general"), (varied.low, "general"),
                (varied.high, "general"), (value, "two"), (change, "one"), (switching_words(switching), "wrap"),
                (having, "money"), (lacking, "money"), (gap, "three"), (switching.cheapest_there, "text"),
                (turn_words(switching), "wrap"), (varied.key, "text"),
            ],
        )  # fmt: skip
    if found:
        chart = book.add_chart({"type": "bar"})
        chart.add_series(
            {
                "name": "Change from now",
                "categories": page.range_of(first, 0, page.row - 1, 0),
                "values": page.range_of(first, 6, page.row - 1, 6),
                "gap": 45,
                **solid(LINES[0]["color"]),
            }
        )
        chart.set_y_axis(axis("", reverse=True, label_position="low"))
        chart.set_x_axis(value_axis("Change of the input that makes the two cost the same (%)", "0"))
        page.row += 1
        page.chart(style_chart(chart, "How far each input would have to move", legend="none"), page.row, 0, 7, 16)


def _map(page: Page, book: Any, cheapest: CheapestMap, currency: str) -> None:
    across, down = cheapest.across, cheapest.down
    page.title(
        "Map", f"Best option by {down.name} ({down.unit}) and {across.name} ({across.unit}), designs held fixed."
    )
    corner = f"{down.name} ({down.unit}) / {across.name} ({across.unit})"
    headings = [corner, *(f"{value:.4g}" for value in cheapest.across_values)]
    page.fix_width(0, 34)
    page.header(headings)
    for value, names, meets in zip(cheapest.down_values, cheapest.best, cheapest.meets, strict=True):
        cells: list[tuple[str | float | None, Kind]] = [
            (name if serves else f"{name} (misses the target)", "wrap")
            for name, serves in zip(names, meets, strict=True)
        ]
        put_row(page, [(value, "general"), *cells])
    page.heading(f"Its present cost ({currency})", len(cheapest.across_values))
    page.header(headings)
    first = page.row
    for value, costs in zip(cheapest.down_values, cheapest.present_cost.tolist(), strict=True):
        money: list[tuple[str | float | None, Kind]] = [(cost, "money") for cost in costs]
        put_row(page, [(value, "general"), *money])
    chart = book.add_chart({"type": "line"})
    for place, row in enumerate(range(first, page.row)):
        chart.add_series(
            {
                "name": f"{down.name} {cheapest.down_values[place]:.4g}",
                "categories": page.range_of(first - 1, 1, first - 1, len(cheapest.across_values)),
                "values": page.range_of(row, 1, row, len(cheapest.across_values)),
                "line": LINES[place % len(LINES)],
            }
        )
    chart.set_x_axis(axis(f"{across.name} ({across.unit})"))
    chart.set_y_axis(value_axis(f"Present cost of the best option ({currency})"))
    page.row += 1
    page.chart(style_chart(chart, "Present cost of the best option", legend="right"), page.row, 0, None, 20)


def worth_as_data(worth: Worth, sentences: Sequence[str]) -> dict[str, Any]:
    """Return the answer as plain data."""
    cheapest = worth.map
    return {
        "planner_version": __version__,
        "schema": SCHEMA,
        "scenario": worth.scenario.name,
        "currency": worth.scenario.currency,
        "source": worth.source,
        "sentences": list(sentences),
        "cautions": [WHERE_LISTED],
        "with_best": worth.with_best.name,
        "without_best": worth.without_best.name,
        "saving": worth.saving,
        "options": [{"name": option.name, **asdict(option)} for option in worth.options],
        "pairs": [
            {"without": pair.without.name, "with": pair.with_source.name, "saving": pair.saving} for pair in worth.pairs
        ],
        "switching_values": [_switching_data(switching) for switching in worth.switching],
        "map": None if cheapest is None else {
            "down": cheapest.down.name, "down_unit": cheapest.down.unit, "down_values": list(cheapest.down_values),
            "across": cheapest.across.name, "across_unit": cheapest.across.unit,
            "across_values": list(cheapest.across_values), "best": [list(row) for row in cheapest.best],
            "meets": [list(row) for row in cheapest.meets], "present_cost": cheapest.present_cost.tolist(),
        },
    }  # fmt: skip


def _switching_data(switching: Switching) -> dict[str, Any]:
    varied = switching.varied
    return {
        "input": varied.name,
        "key": varied.key,
        "unit": varied.unit,
        "base": varied.base,
        "low": varied.low,
        "high": varied.high,
        "value": switching.value,
        "other_values": list(switching.others),
        "beyond_range": switching.beyond,
        "words": switching_words(switching),
        "present_cost_with": switching.cost_with,
        "present_cost_without": switching.cost_without,
        "agrees": switching.agrees,
        "cheapest_there": switching.cheapest_there,
        "answer_turns": [asdict(turn) for turn in switching.turns],
    }


def write_worth_json(worth: Worth, sentences: Sequence[str], path: Path) -> None:
    """Write the answer as JSON, whole or not at all."""
    write_study_json(worth_as_data(worth, sentences), path)
