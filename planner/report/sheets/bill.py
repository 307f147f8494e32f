"""The sheet 'Bill of quantities': every line, what it costs and which options it belongs to."""

from __future__ import annotations

from dataclasses import dataclass
from typing import get_args

from planner.money.quantities import EQUIPMENT_GROUPS, Group, Line
from planner.report.sheets.page import Page, reference
from planner.study.compare import Study

GROUPS: tuple[Group, ...] = get_args(Group)
PERCENTAGES: tuple[Group, ...] = ("Installation", "Contingency")
NAME, SOURCE, QUANTITY, UNIT, PRICE, COST, LIFE, WORN, UPKEEP, FIRST_OPTION = range(10)


@dataclass(frozen=True)
class _Entry:
    """One row: a line as it stands in some options, by name of option; the same but for the price of a percentage."""

    line: Line
    by_option: dict[str, Line]


def write_bill(page: Page, study: Study) -> None:
    """Fill the sheet 'Bill of quantities'.

    Costs, subtotals, percentages and totals are formulas with their values.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    """
    currency = study.scenario.currency
    page.title(
        "Bill of quantities",
        "A cost under an option's name means that the option uses the line. A line 'worn by years or hours' is "
        "replaced when its years or its running hours are used up, whichever comes first.",
    )
    options = [option.name for option in study.ranked]
    page.header(
        [
            "Line",
            "Source",
            "Quantity",
            "Unit",
            f"Unit price ({currency})",
            f"Cost ({currency})",
            "Life (years)",
            "Worn by",
            "Upkeep (%/year)",
            *(f"{name} ({currency})" for name in options),
        ]
    )
    page.freeze()
    page.fix_width(NAME, 34)
    for column in range(FIRST_OPTION, FIRST_OPTION + len(options)):
        page.fix_width(column, 14)
    entries = _entries(study)
    lines_rows: list[tuple[int, _Entry]] = []
    subtotals: dict[Group, int] = {}
    for group in GROUPS:
        chosen = [entry for entry in entries if entry.line.group == group]
        if not chosen:
            continue
        page.heading(group, FIRST_OPTION + len(options) - 1)
        first = page.row
        for entry in chosen:
            lines_rows.append((page.row, entry))
            _line(page, entry, options, subtotals)
        subtotals[group] = page.row
        _subtotal(page, group, first, chosen, options)
    _totals(page, lines_rows, subtotals, options, currency)


def _entries(study: Study) -> list[_Entry]:
    """Gather the lines of all options, equal ones in one row, in order of first appearance."""
    found: dict[tuple[object, ...], dict[str, Line]] = {}
    for option in study.ranked:
        for line in option.lines:
            price = None if line.group in PERCENTAGES else float(line.unit_price)
            key: tuple[object, ...] = (
                line.name,
                line.group,
                line.source,
                float(line.quantity),
                line.unit,
                price,
                line.life_years,
                line.upkeep_percent_per_year,
                line.by_hours,
            )
            while option.name in found.get(key, {}):  # two equal lines of one option stay two rows
                key = (*key, "again")
            found.setdefault(key, {})[option.name] = line
    return [_Entry(next(iter(lines.values())), lines) for lines in found.values()]


def _line(page: Page, entry: _Entry, options: list[str], subtotals: dict[Group, int]) -> None:
    line, row = entry.line, page.row
    percentage = line.group in PERCENTAGES
    page.put(row, NAME, line.name, "wrap")
    page.put(row, SOURCE, line.source)
    page.put(row, QUANTITY, float(line.quantity), "whole" if float(line.quantity).is_integer() else "two")
    page.put(row, UNIT, line.unit)
    cost = f"={reference(row, QUANTITY)}*{reference(row, PRICE)}"
    if percentage:
        page.put(row, PRICE, "by option", "word")
        page.put(row, COST, "by option", "word")
    else:
        page.put(row, PRICE, float(line.unit_price), "price")
        page.put(row, COST, float(line.cost), "money", formula=cost)
    page.put(row, LIFE, line.life_years, "whole" if float(line.life_years).is_integer() else "one")
    page.put(row, WORN, "years or hours" if line.by_hours else "years")
    page.put(row, UPKEEP, line.upkeep_percent_per_year, "two")
    bases = [
        subtotals[group]
        for group in (EQUIPMENT_GROUPS if line.group == "Installation" else GROUPS)
        if group in subtotals
    ]
    for column, name in enumerate(options, start=FIRST_OPTION):
        own = entry.by_option.get(name)
        if own is None:
            page.put(row, column, "–", "word")
            continue
        formula = f"={reference(row, COST, fixed_column=True)}"
        if percentage:
            added = "+".join(reference(base, column) for base in bases) or "0"
            formula = f"={reference(row, QUANTITY, fixed_column=True)}/100*({added})"
        page.put(row, column, float(own.cost), "money", formula=formula)
    page.row += 1


def _subtotal(page: Page, group: Group, first: int, chosen: list[_Entry], options: list[str]) -> None:
    row, last = page.row, page.row - 1
    for column in range(FIRST_OPTION):
        page.put(row, column, f"Subtotal: {group}" if column == NAME else None, "text", "sub")
    for column, name in enumerate(options, start=FIRST_OPTION):
        value = sum(float(entry.by_option[name].cost) for entry in chosen if name in entry.by_option)
        formula = f"=SUM({reference(first, column)}:{reference(last, column)})"
        page.put(row, column, value, "money", "sub", formula=formula)
    page.row += 1


def _totals(
    page: Page,
    rows: list[tuple[int, _Entry]],
    subtotals: dict[Group, int],
    options: list[str],
    currency: str,
) -> None:
    page.row += 1
    first, last = rows[0][0], rows[-1][0]
    build, upkeep = page.row, page.row + 1
    for row, label in ((build, f"Build cost ({currency})"), (upkeep, f"Upkeep ({currency}/year, prices of year 0)")):
        for column in range(FIRST_OPTION):
            page.put(row, column, label if column == NAME else None, "wrap" if column == NAME else "text", "total")
    for column, name in enumerate(options, start=FIRST_OPTION):
        lines = [entry.by_option[name] for _, entry in rows if name in entry.by_option]
        added = "+".join(reference(row, column) for row in subtotals.values())
        page.put(build, column, sum(float(line.cost) for line in lines), "money", "total", formula=f"={added}")
        yearly = sum(float(line.cost) * line.upkeep_percent_per_year / 100 for line in lines)
        rates = f"{reference(first, UPKEEP, fixed_column=True)}:{reference(last, UPKEEP, fixed_column=True)}"
        costs = f"{reference(first, column)}:{reference(last, column)}"
        # SUMPRODUCT of ranges takes texts and the empty cells of subtotals' upkeep as nothing.
        page.put(upkeep, column, yearly, "money", "total", formula=f"=SUMPRODUCT({rates},{costs})/100")
    page.row = upkeep + 1
