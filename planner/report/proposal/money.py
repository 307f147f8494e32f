"""The budget, who pays for it, and whether what users pay keeps the works going."""

from __future__ import annotations

from collections.abc import Hashable, Iterator
from dataclasses import replace

from planner.money.quantities import PERCENTAGES
from planner.report.document import Block, Cell, Row, Section, Table, Text
from planner.report.pages.bill import BILL, CAPITAL, MAINTENANCE, Entry, group_label, subtotal_key
from planner.report.pages.options import OPTIONS
from planner.report.pages.users import BY_YEAR, PROGRAMME, RANGES, USERS
from planner.report.proposal.material import OWN, Material, asked, to_complete, value_cell
from planner.text import listed, text

_WHO_PAYS = ("grant", "loan", "own_funds", "capital_cost")
_BY_YEAR = ("year", "operation_cost", "replacement", "loan_payment", "burden", "fund_balance")


def budget_blocks(material: Material) -> Iterator[Block]:
    """List what is built at what price, who pays, and what of the budget is not known."""
    if not material.priced:
        yield to_complete("prices")
        yield from asked("contributions", "procurement", "timetable")
        return
    yield from incomplete(material)
    yield _bill(material)
    zero = [key for key in PERCENTAGES if not material.given(f"costs.{key}_percent")]
    if zero:
        yield to_complete("percentages", names=listed([text(f"bill.group.{key}").lower() for key in zero]))
    if material.scenario.price_date is None:
        yield to_complete("price_date")
    else:
        yield Text(text("proposal.price_date", date=material.scenario.price_date))
    pays = [key for key in _WHO_PAYS if material.value(key) or key == "capital_cost"]
    yield material.of_first(OPTIONS, ("figure", OWN, "unit"), pays, text("proposal.who_pays"))
    programme = material.table(PROGRAMME)
    if programme is not None:
        yield material.of_first(PROGRAMME, ("figure", OWN, "unit"), _keys(programme), programme.heading)
    else:
        yield to_complete("exchange_rate", currency=material.scenario.currency)
    yield from asked("contributions", "procurement", "timetable")


def incomplete(material: Material) -> Iterator[Text]:
    """Ask for the price of what has none, whose sum the budget lacks."""
    if material.unpriced:
        names = dict.fromkeys(thing.label() for thing in material.unpriced)
        yield to_complete("unpriced", names=listed(list(names)))


def _bill(material: Material) -> Table:
    """The lines of the proposed option, under the headings of their groups; what has no price says so."""
    name, currency = material.first.name, material.scenario.currency
    table = material.table(BILL)
    assert table is not None
    lines: list[Row | Section] = []
    for group, entries in material.bill.groups.items():
        own = [_bill_line(material, table, entry) for entry in entries if _has(entry, name)]
        lines += [Section(group_label(group)), *own] if own else []
        if len(own) > 1:
            lines.append(table.row(subtotal_key(group)))
    keys = ("line", "quantity", "unit", "price", "life", name)
    shown = tuple(
        replace(column, heading=text("bill.cost", currency=currency)) if column.key == name else column
        for column in table.only(keys).columns
    )
    rows = (*lines, table.row(CAPITAL), table.row(MAINTENANCE))
    return replace(table, columns=shown, rows=rows, heading=text("page.bill"))


def _has(entry: Entry, option: str) -> bool:
    return option in entry.by_option and bool(entry.line.quantity)


def _bill_line(material: Material, table: Table, entry: Entry) -> Row:
    row = table.row(entry.number)
    if entry.line.group in PERCENTAGES:
        return replace(row, cells={**row.cells, "price": Cell(text("answer.nothing"), "word")})
    if entry.line.thing not in material.unpriced:
        return row
    missing = Cell(text("figure.not_given"), "word", "strong")
    return replace(row, cells={**row.cells, "price": missing, material.first.name: missing})


def _keys(table: Table) -> list[Hashable]:
    return [row.key for row in table.data_rows()]


def recovery_blocks(material: Material) -> Iterator[Block]:
    """Say what users must pay, what that takes of an income, and what is to be saved for replacements."""
    if not material.priced:
        yield to_complete("tariff_unpriced")
        yield from asked("tariff", "willingness", "savings_account")
        return
    if material.unpriced:
        yield Text(text("proposal.tariffs_too_low"))
    yield _users(material)
    yield Text(text("users.tariffs"), "note")
    yield Text(text("users.fund"), "note")
    if material.scenario.households is None and material.scenario.litres_per_person_day is not None:
        yield to_complete("households")
    elif material.scenario.households is not None:
        yield Text(text("users.income"), "note")
        homes = material.scenario.households
        if homes.income_per_month is None or homes.lowest_income_per_month is None:
            yield to_complete("income")
        if not material.given("households.collection_percent"):
            yield to_complete("collection")
    ranges = material.table(RANGES)
    if ranges is not None:
        columns = [column.key for column in ranges.columns[:4]]
        yield material.of_first(RANGES, [*columns, OWN], _keys(ranges), text("users.ranges"))
        since = material.scenario.finance.usd_prices_since_2011
        yield Text(text("proposal.ranges_source" if since else "proposal.ranges_source_2011"), "note")
    yield _by_year(material)
    price = material.scenario.finance.water_price_per_m3
    if material.given("finance.water_price_per_m3"):
        yield Text(text("proposal.water_price", price=f"{price:g}", currency=material.scenario.currency))
    else:
        yield to_complete("tariff")
    yield from asked("willingness", "savings_account")


def _users(material: Material) -> Table:
    """What users pay for the water of the proposed option, under the headings of its parts."""
    table, name = material.table(USERS), material.first.name
    assert table is not None
    own = table.only(("figure", name, "unit"))
    headed = tuple(replace(each, heading=text("proposal.value")) if each.key == name else each for each in own.columns)
    rows = tuple(
        replace(row, cells={**row.cells, name: value_cell(row.cells[name])})
        if isinstance(row, Row) and name in row.cells
        else row
        for row in own.rows
    )
    return replace(own, columns=headed, rows=rows, heading=text("page.users"))


def _by_year(material: Material) -> Table:
    """What the owner pays in each year after the grant, and what the savings hold."""
    table = material.table(BY_YEAR)
    assert table is not None
    name = material.first.name
    rows = [row.key for row in table.data_rows() if isinstance(row.key, tuple) and row.key[0] == name]
    loan = material.value("loan") > 0
    columns = [key for key in _BY_YEAR if loan or key != "loan_payment"]
    nothing = Cell(text("answer.nothing"), "word")
    dashed = tuple(
        replace(row, cells={key: cell if key == "year" or cell.value else nothing for key, cell in row.cells.items()})
        for row in table.only(columns, rows).data_rows()
    )
    return replace(table.only(columns, rows), rows=dashed, heading=text("proposal.by_year"))
