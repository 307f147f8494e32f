"""The page 'Bill of quantities': every line, what it costs and which options it belongs to."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import get_args

from planner.money.formula import Formula, Operand
from planner.money.functions import total, weighted_total
from planner.money.quantities import ALL, EQUIPMENT_GROUPS, PERCENTAGES, Group, Line, bill_of_quantities
from planner.report.document import At, Cell, Column, Page, Row, Section, Span, Table
from planner.report.pages.inputs import Inputs
from planner.study.compare import OptionResult, Study
from planner.text import text

BILL = "bill"
GROUPS: tuple[Group, ...] = get_args(Group)
CAPITAL, MAINTENANCE = "capital_cost", "maintenance"


@dataclass(frozen=True)
class Entry:
    """One row: a line as it stands in some options, by name of option; the same but for the price of a percentage.

    `number` is the row's key, `cells` the line with the inputs as cells.
    """

    number: int
    line: Line
    cells: Line
    by_option: dict[str, Line]


@dataclass(frozen=True)
class Bill:
    """The rows of the bill by group, in order, and references to their cells."""

    groups: dict[Group, list[Entry]]

    @property
    def entries(self) -> list[Entry]:
        """Every row of a line."""
        return [entry for entries in self.groups.values() for entry in entries]

    def run(self, column: str, table: str = BILL) -> Formula:
        """Cells of a column from the first line to the last, in this table or one of the same rows."""
        entries = self.entries
        return Formula.leaf(Span(table, entries[0].number, column, entries[-1].number))

    def worn_by_hours(self, option: OptionResult) -> list[Formula]:
        """Costs of the lines that running hours, too, wear out."""
        own = [entry for entry in self.entries if entry.line.by_hours and entry.line in option.lines]
        return [Formula.leaf(At(BILL, entry.number, option.name)) for entry in own]


def sum_cell(row: str, option: str) -> Formula:
    """Cell of an option's capital cost, or of its yearly maintenance in prices of year 0."""
    return Formula.leaf(At(BILL, row, option))


def bill_of_study(study: Study, inputs: Inputs) -> Bill:
    """Gather the lines of all options, equal ones in one row, in order of first appearance."""
    found: dict[tuple[object, ...], dict[str, Line]] = {}
    cells_of: dict[tuple[object, ...], Line] = {}
    for option in study.ranked:
        own = inputs.scenario_of(option)
        written = bill_of_quantities(own, option.sources, strings=option.strings, tank_m3=option.tank_m3)
        for line, cells in zip(option.lines, written, strict=True):
            price = None if line.group in PERCENTAGES else float(line.unit_price)
            key: tuple[object, ...] = (
                line.thing, line.size, line.group, line.source, float(line.quantity), line.unit, price, line.life_years,
                line.maintenance_percent_per_year, line.by_hours,
                repr(cells.quantity),
                None if price is None else repr(cells.unit_price),
                repr(cells.life_years),
                repr(cells.maintenance_percent_per_year),
            )  # fmt: skip
            while option.name in found.get(key, {}):  # two equal lines of one option stay two rows
                key = (*key, "again")
            found.setdefault(key, {})[option.name] = line
            cells_of[key] = cells
    entries = [
        Entry(number, next(iter(lines.values())), cells_of[key], lines)
        for number, (key, lines) in enumerate(found.items())
    ]
    by_group = {group: [entry for entry in entries if entry.line.group == group] for group in GROUPS}
    return Bill({group: chosen for group, chosen in by_group.items() if chosen})


def bill_page(study: Study, bill: Bill) -> Page:
    """Build the page 'Bill of quantities'.

    Parameters
    ----------
    study : Study
        The finished comparison.
    bill : Bill
        Its rows.
    """
    currency = study.scenario.currency
    options = [option.name for option in study.ranked]
    columns = (
        Column("line", text("bill.line"), 34),
        Column("supply", text("bill.supply"), 12),
        *(Column(key, text(f"bill.{key}")) for key in ("quantity", "unit")),
        *(Column(key, text(f"bill.{key}", currency=currency)) for key in ("price", "cost")),
        *(Column(name, text("bill.option", option=name, currency=currency), 12) for name in options),
        *(Column(key, text(f"bill.{key}"), printed=False) for key in ("life", "replaced_by", "maintenance")),
    )
    rows: list[Row | Section] = []
    before: list[Group] = []
    for group, entries in bill.groups.items():
        rows.append(Section(group_label(group)))
        rows += (_line(entry, options, before) for entry in entries)
        rows.append(_subtotal(group, entries, options))
        before.append(group)
    rows += _totals(bill, options, currency)
    table = Table(BILL, columns, tuple(rows), freeze=1)
    return Page("bill", text("page.bill"), text("page.bill"), text("bill.under"), (table,))


def group_label(group: Group) -> str:
    """What people call a part of the works."""
    return text(f"bill.group.{group}")


def subtotal_key(group: Group) -> tuple[str, Group]:
    """Key of the row of a group's subtotal."""
    return "subtotal", group


def _line(entry: Entry, options: list[str], before: list[Group]) -> Row:
    line, given, row = entry.line, entry.cells, entry.number
    percentage = line.group in PERCENTAGES
    quantity, price = (Formula.leaf(At(BILL, row, key)) for key in ("quantity", "price"))
    whole = float(line.quantity).is_integer()
    by_option = Cell(text("bill.by_option"), "word")
    cells = {
        "line": Cell(line.label, "wrap"),
        "supply": Cell(text("bill.all_sources") if line.source == ALL else line.source),
        "quantity": Cell.worked_out(float(line.quantity), "whole" if whole else "two", given.quantity),
        "unit": Cell(line.unit_label),
        "price": by_option if percentage else Cell.worked_out(float(line.unit_price), "price", given.unit_price),
        "cost": by_option if percentage else Cell.worked_out(float(line.cost), "money", quantity * price),
        "life": Cell.worked_out(
            line.life_years, "whole" if float(line.life_years).is_integer() else "one", given.life_years
        ),
        "replaced_by": Cell(text("bill.years_or_hours" if line.by_hours else "bill.years")),
        "maintenance": Cell.worked_out(line.maintenance_percent_per_year, "two", given.maintenance_percent_per_year),
    }
    bases = [group for group in before if group in EQUIPMENT_GROUPS or line.group != "installation"]
    for name in options:
        own = entry.by_option.get(name)
        if own is None:
            cells[name] = Cell("–", "word")
            continue
        cost: Operand = Formula.leaf(At(BILL, row, "cost"))
        if percentage:
            subtotals = (Formula.leaf(At(BILL, subtotal_key(group), name)) for group in bases)
            cost = quantity / 100 * sum(subtotals, 0.0)
        cells[name] = Cell.worked_out(float(own.cost), "money", cost)
    return Row(row, cells)


def _subtotal(group: Group, entries: list[Entry], options: list[str]) -> Row:
    cells = {"line": Cell(text("bill.subtotal", group=group_label(group)))}
    for key in ("supply", "quantity", "unit", "price", "cost", "life", "replaced_by", "maintenance"):
        cells[key] = Cell(None)
    for name in options:
        value = sum(float(entry.by_option[name].cost) for entry in entries if name in entry.by_option)
        costs = Formula.leaf(Span(BILL, entries[0].number, name, entries[-1].number))
        cells[name] = Cell.worked_out(value, "money", total(costs))
    return Row(subtotal_key(group), cells, "sub")


def _totals(bill: Bill, options: list[str], currency: str) -> Iterator[Row]:
    empty = dict.fromkeys(
        ("supply", "quantity", "unit", "price", "cost", "life", "replaced_by", "maintenance"), Cell(None)
    )
    capital = {"line": Cell(text("bill.capital_cost", currency=currency), "wrap"), **empty}
    yearly = {"line": Cell(text("bill.maintenance_total", currency=currency), "wrap"), **empty}
    for name in options:
        lines = [entry.by_option[name] for entry in bill.entries if name in entry.by_option]
        added = sum((Formula.leaf(At(BILL, subtotal_key(group), name)) for group in bill.groups), 0.0)
        capital[name] = Cell.worked_out(sum(float(line.cost) for line in lines), "money", added)
        # The sum takes texts and the empty cells of subtotals' maintenance as nothing.
        kept = weighted_total(bill.run("maintenance"), bill.run(name)) / 100
        value = sum(float(line.cost) * line.maintenance_percent_per_year / 100 for line in lines)
        yearly[name] = Cell.worked_out(value, "money", kept)
    yield Row(CAPITAL, capital, "total")
    yield Row(MAINTENANCE, yearly, "total")
