"""The sheet 'Bill of quantities': every line, what it costs and which options it belongs to."""

from __future__ import annotations

from dataclasses import dataclass
from typing import get_args

from planner.money.formula import cell_text
from planner.money.quantities import EQUIPMENT_GROUPS, Group, Line, bill_of_quantities
from planner.report.sheets.cells import cell_scenario
from planner.report.sheets.inputs import InputCells
from planner.report.sheets.page import Page, reference
from planner.report.style import Kind
from planner.study.compare import OptionResult, Study

GROUPS: tuple[Group, ...] = get_args(Group)
PERCENTAGES: tuple[Group, ...] = ("Installation", "Contingency")
NAME, SOURCE, QUANTITY, UNIT, PRICE, COST, LIFE, WORN, UPKEEP, FIRST_OPTION = range(10)


@dataclass(frozen=True)
class _Entry:
    """One row: a line as it stands in some options, by name of option; the same but for the price of a percentage.

    `cells` is the line with the inputs as cells.
    """

    line: Line
    cells: Line
    by_option: dict[str, Line]


@dataclass(frozen=True)
class BillCells:
    """Where the bill stands: rows of its lines, column of each option, rows of the totals."""

    page: Page
    lines: dict[int, Line]
    columns: dict[str, int]
    build_row: int
    upkeep_row: int

    def build(self, option: str) -> str:
        """Address of an option's build cost."""
        return self.page.at(self.build_row, self.columns[option])

    def upkeep(self, option: str) -> str:
        """Address of an option's yearly upkeep in prices of year 0."""
        return self.page.at(self.upkeep_row, self.columns[option])

    def costs(self, option: str) -> str:
        """Range of an option's costs by line, in the rows of the lines."""
        return self.page.at(min(self.lines), self.columns[option], max(self.lines))

    def worn_by_hours(self, option: OptionResult) -> list[str]:
        """Costs of the lines that running hours, too, wear out."""
        own = [row for row, line in self.lines.items() if line.by_hours and line in option.lines]
        return [self.page.at(row, self.columns[option.name]) for row in own]


def write_bill(page: Page, study: Study, inputs: InputCells) -> BillCells:
    """Fill the sheet 'Bill of quantities'.

    Prices, lives, upkeep, costs, subtotals, percentages and totals are formulas with their values.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    inputs : InputCells
        Where prices, lives and upkeep stand.

    Returns
    -------
    BillCells
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
    entries = _entries(study, inputs)
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
    build, upkeep = _totals(page, lines_rows, subtotals, options, currency)
    columns = {name: FIRST_OPTION + place for place, name in enumerate(options)}
    return BillCells(page, {row: entry.line for row, entry in lines_rows}, columns, build, upkeep)


def _entries(study: Study, inputs: InputCells) -> list[_Entry]:
    """Gather the lines of all options, equal ones in one row, in order of first appearance."""
    found: dict[tuple[object, ...], dict[str, Line]] = {}
    cells_of: dict[tuple[object, ...], Line] = {}
    for option in study.ranked:
        own = cell_scenario(option, inputs)
        written = bill_of_quantities(own, option.sources, strings=option.strings, tank_m3=option.tank_m3)
        for line, cells in zip(option.lines, written, strict=True):
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
                cell_text(cells.quantity),
                None if price is None else cell_text(cells.unit_price),
                cell_text(cells.life_years),
                cell_text(cells.upkeep_percent_per_year),
            )
            while option.name in found.get(key, {}):  # two equal lines of one option stay two rows
                key = (*key, "again")
            found.setdefault(key, {})[option.name] = line
            cells_of[key] = cells
    return [_Entry(next(iter(lines.values())), cells_of[key], lines) for key, lines in found.items()]


def _line(page: Page, entry: _Entry, options: list[str], subtotals: dict[Group, int]) -> None:
    line, cells, row = entry.line, entry.cells, page.row
    percentage = line.group in PERCENTAGES
    page.put(row, NAME, line.name, "wrap")
    page.put(row, SOURCE, line.source)
    kind: Kind = "whole" if float(line.quantity).is_integer() else "two"
    page.put(row, QUANTITY, float(line.quantity), kind, formula=cell_text(cells.quantity))
    page.put(row, UNIT, line.unit)
    cost = f"={reference(row, QUANTITY)}*{reference(row, PRICE)}"
    if percentage:
        page.put(row, PRICE, "by option", "word")
        page.put(row, COST, "by option", "word")
    else:
        page.put(row, PRICE, float(line.unit_price), "price", formula=cell_text(cells.unit_price))
        page.put(row, COST, float(line.cost), "money", formula=cost)
    life: Kind = "whole" if float(line.life_years).is_integer() else "one"
    page.put(row, LIFE, line.life_years, life, formula=cell_text(cells.life_years))
    page.put(row, WORN, "years or hours" if line.by_hours else "years")
    page.put(row, UPKEEP, line.upkeep_percent_per_year, "two", formula=cell_text(cells.upkeep_percent_per_year))
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
) -> tuple[int, int]:
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
    return build, upkeep
