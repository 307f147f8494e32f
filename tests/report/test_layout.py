"""Where the blocks of a page stand on its sheet, and what becomes of references to other sheets."""

from __future__ import annotations

from pathlib import Path

import openpyxl

from planner.money.formula import Formula
from planner.report.document import (
    HEADER,
    At,
    Axis,
    Cell,
    Chart,
    Column,
    Foreign,
    Page,
    Report,
    Row,
    Series,
    Span,
    Table,
    Text,
)
from planner.report.workbook.book import write_book
from planner.report.workbook.layout import Addresses, lay_out


def table(key: str, columns: int, rows: int = 2) -> Table:
    names = [f"c{place}" for place in range(columns)]
    made = tuple(Row(number, {name: Cell(float(number), "whole") for name in names}) for number in range(rows))
    return Table(key, tuple(Column(name, name.upper()) for name in names), made)


def chart(key: str, beside: str, column: int | None, rows: int) -> Chart:
    span = Span("narrow", 0, "c0", 1)
    series = (Series("one", span, span, "line 0"),)
    return Chart(key, "lines", key, key, series, Axis("x (m)"), Axis("y (m)"), beside, column, rows)


def tops(page: Page) -> dict[object, int]:
    return {placed.item: placed.row for placed in lay_out(page) if isinstance(placed.item, Chart | Text)}


def test_what_reaches_below_a_chart_is_put_beneath_it_and_what_does_not_stays_beside_it() -> None:
    first, second = chart("first", "narrow", 4, 10), chart("second", "narrow", 4, 8)
    end = Text("End")
    page = Page("p", "P", "P", blocks=(table("narrow", 3), first, second, table("other", 3), table("wide", 9), end))
    found = tops(page)
    addresses = Addresses(Report("R", (page,)), {"p": lay_out(page)}, {})
    place = addresses.tables
    assert found[first] == place["narrow"].header_row
    assert found[second] == found[first] + 10
    assert place["other"].header_row < found[second]
    assert place["wide"].header_row >= found[second] + 8
    assert found[end] > place["wide"].rows[1]


def test_a_chart_with_columns_of_its_own_moves_nothing() -> None:
    beside = chart("beside", "narrow", None, 30)
    with_chart = Page("p", "P", "P", blocks=(table("narrow", 3), beside, table("wide", 9)))
    without = Page("p", "P", "P", blocks=(table("narrow", 3), table("wide", 9)))
    rows = [
        Addresses(Report("R", (page,)), {"p": lay_out(page)}, {}).tables["wide"].header_row
        for page in (with_chart, without)
    ]
    assert rows[0] == rows[1]


def test_addresses_are_plain_on_their_sheet_and_absolute_elsewhere() -> None:
    page = Page("p", "P's", "P", blocks=(table("t", 3),))
    addresses = Addresses(Report("R", (page,)), {"p": lay_out(page)}, {"a.key": "'Form'!$B$2"})
    assert addresses.text(At("t", 1, "c2"), "P's") == "C5"
    assert addresses.text(Span("t", 0, "c0", 1), "Other") == "'P''s'!$A$4:$A$5"
    assert addresses.text(Span("t", HEADER, "c0", None, "c2"), "P's") == "A3:C3"
    assert addresses.text(Foreign("a.key"), "P's") == "'Form'!$B$2"


def test_a_cell_of_another_sheet_is_linked_where_it_is_and_its_value_stands_where_it_is_not(tmp_path: Path) -> None:
    def cell(key: str) -> Cell:
        return Cell(7.0, "whole", formula=Formula.leaf(Foreign(key)))

    rows = (Row("here", {"c": cell("here")}), Row("gone", {"c": cell("gone")}))
    page = Page("p", "P", "P", blocks=(Table("t", (Column("c", "C"),), rows),))

    def more(book: object) -> dict[str, str]:
        book.add_worksheet("Form").write_number("B2", 7)  # type: ignore[attr-defined]
        return {"here": "'Form'!$B$2"}

    write_book(Report("R", (page,)), tmp_path / "r.xlsx", more)
    sheet = openpyxl.load_workbook(tmp_path / "r.xlsx")["P"]
    assert [sheet["A4"].value, sheet["A5"].value] == ["='Form'!$B$2", 7]
