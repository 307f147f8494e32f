"""The budget, who pays for it, and whether what users pay keeps the works going."""

from __future__ import annotations

from collections.abc import Hashable, Iterator
from dataclasses import replace

from planner.money.quantities import PERCENTAGES
from planner.report.document import Block, Cell, Row, Section, Table, Text
from planner.report.pages.bill import BILL
from planner.report.pages.options import OPTIONS
from planner.report.pages.users import BY_YEAR, PROGRAMME, RANGES, USERS
from planner.report.proposal.material import Material, asked, to_complete
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
    yield material.of_first(OPTIONS, ("figure", "unit"), pays, text("proposal.who_pays"))
    if not material.given("finance.grant_percent"):
        yield to_complete("grant")
    programme = material.table(PROGRAMME)
    if programme is not None:
        yield material.of_first(PROGRAMME, ("figure", "unit"), _keys(programme), programme.heading)
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
    entries = {entry.number: entry for entry in material.bill.entries}
    missing = Cell(text("figure.not_given"), "word", "strong")
    rows: list[Row | Section] = []
    for row in table.rows:
        if isinstance(row, Section):
            if rows and isinstance(rows[-1], Section):
                rows.pop()  # a group of which the option has nothing
            rows.append(row)
            continue
        entry = entries.get(row.key) if isinstance(row.key, int) else None
        if entry is None:
            if row.cells[name].value or row.look == "total":
                rows.append(row)
        elif name in entry.by_option and entry.line.quantity:
            unpriced = entry.line.thing in material.unpriced
            rows.append(replace(row, cells={**row.cells, "price": missing, name: missing}) if unpriced else row)
    keys = ("line", "quantity", "unit", "price", "life", name)
    shown = tuple(
        replace(column, heading=text("bill.cost", currency=currency)) if column.key == name else column
        for column in table.only(keys).columns
    )
    return replace(table, columns=shown, rows=tuple(rows), heading=text("page.bill"))


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
    table = material.table(USERS)
    assert table is not None
    own = table.only(("figure", "unit", material.first.name))
    yield replace(own, heading=text("page.users"))
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
        columns = tuple(column.key for column in ranges.columns[:4])
        yield material.of_first(RANGES, columns, _keys(ranges), text("users.ranges"))
        since = material.scenario.finance.usd_prices_since_2011
        yield Text(text("users.ranges_source" if since else "users.ranges_source_2011"), "note")
    yield _by_year(material)
    price = material.scenario.finance.water_price_per_m3
    if material.given("finance.water_price_per_m3"):
        yield Text(text("proposal.water_price", price=f"{price:g}", currency=material.scenario.currency))
    else:
        yield to_complete("tariff")
    yield from asked("willingness", "savings_account")


def _by_year(material: Material) -> Table:
    """What the owner pays in each year after the grant, and what the savings hold."""
    table = material.table(BY_YEAR)
    assert table is not None
    name = material.first.name
    rows = [row.key for row in table.data_rows() if isinstance(row.key, tuple) and row.key[0] == name]
    loan = material.value("loan") > 0
    columns = [key for key in _BY_YEAR if loan or key != "loan_payment"]
    return replace(table.only(columns, rows), heading=text("proposal.by_year"))
