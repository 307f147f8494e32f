"""Tables and sentences on the terminal."""

from __future__ import annotations

from planner.report.document import Axis, Cell, Chart, Column, Heading, Row, Table, Text
from planner.report.terminal_writer import HEADING_LINES
from tests.report.terminal import on_terminal

NAN = float("nan")
TABLE = Table(
    "costs",
    (
        Column("option", "Supply option"),
        Column("cost", "Life-cycle cost (present value, USD)"),
        Column("share", "Demand met in the worst year of all the years of the life (% of demand)"),
    ),
    (
        Row("a", {"option": Cell("solar [red]x[/red]"), "cost": Cell(12345.4, "money"), "share": Cell(97.25, "two")}),
        Row("b", {"option": Cell("grid"), "cost": Cell(NAN, "money", word="no value"), "share": Cell(None, "two")}),
    ),
    heading="Costs",
)


def test_a_table_shows_its_values_with_their_decimals_and_words_for_none() -> None:
    lines = on_terminal([TABLE]).splitlines()
    cells = [[cell.strip() for cell in line.strip("│").split("│")] for line in lines if line.startswith("│")]
    assert cells == [["solar [red]x[/red]", "12,345", "97.25"], ["grid", "no value", ""]]


def test_headings_are_folded_to_the_width_of_the_cells_but_into_few_lines() -> None:
    heads = [line for line in on_terminal([TABLE]).splitlines() if line.startswith("┃")]
    assert len(heads) == HEADING_LINES
    first, second, third = zip(*(line.strip("┃").split("┃") for line in heads), strict=True)
    assert len(first[0].strip("\n")) == len("solar [red]x[/red]") + 2
    assert len(second[0]) == len("Life-cycle") + 2
    assert " ".join(" ".join(third).split()) == TABLE.columns[2].heading


def test_some_columns_and_rows_of_a_table_stand_in_the_order_asked() -> None:
    part = TABLE.only(["cost", "option"], ["b"])
    assert [column.key for column in part.columns] == ["cost", "option"]
    assert [row.key for row in part.data_rows()] == ["b"]


def test_notes_are_indented_and_blocks_of_another_kind_stand_apart() -> None:
    chart = Chart("c", "lines", "t", "a", (), Axis(), Axis())
    shown = on_terminal([Heading("Site"), Text("one"), Text("two"), chart, Text("aside", "note"), Heading("More")])
    assert [line.rstrip() for line in shown.splitlines()] == ["Site", "one", "two", "", "    aside", "", "More"]
