"""Tables and sentences on the terminal."""

from __future__ import annotations

import re

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
    rule = next(place for place, line in enumerate(lines) if set(line.strip()) == {"─"})
    assert [re.split(r" {2,}", line.strip()) for line in lines[rule + 1 :]] == [
        ["solar [red]x[/red]", "12,345", "97.25"],
        ["grid", "no value"],
    ]


def test_headings_are_folded_to_the_width_of_the_cells_but_into_few_lines() -> None:
    lines = on_terminal([TABLE]).splitlines()
    heads = lines[1 : next(place for place, line in enumerate(lines) if set(line.strip()) == {"─"})]
    assert len(heads) == HEADING_LINES
    ends = len(" solar [red]x[/red] "), len(" solar [red]x[/red]  Life-cycle")
    columns = (
        [line[: ends[0]] for line in heads],
        [line[slice(*ends)] for line in heads],
        [line[ends[1] :] for line in heads],
    )
    assert [" ".join(" ".join(column).split()) for column in columns] == [column.heading for column in TABLE.columns]


def test_some_columns_and_rows_of_a_table_stand_in_the_order_asked() -> None:
    part = TABLE.only(["cost", "option"], ["b"])
    assert [column.key for column in part.columns] == ["cost", "option"]
    assert [row.key for row in part.data_rows()] == ["b"]


def test_notes_are_indented_and_blocks_of_another_kind_stand_apart() -> None:
    chart = Chart("c", "lines", "t", "a", (), Axis(), Axis())
    shown = on_terminal([Heading("Site"), Text("one"), Text("two"), chart, Text("aside", "note"), Heading("More")])
    assert [line.rstrip() for line in shown.splitlines()] == ["Site", "one", "two", "", "    aside", "", "More"]


def test_no_key_is_cut_and_no_column_of_words_vanishes() -> None:
    key = "demand.users[1].litres_per_person_day"
    columns = (Column("key", "Key"), *(Column(f"{place}", "Life-cycle cost") for place in range(6)))
    row = Row("only", {"key": Cell(key), **{f"{place}": Cell(123456.0, "money") for place in range(6)}})
    shown = on_terminal([Table("t", columns, (row,))], 100)
    assert key in "".join(line[1:].split("  ")[0].strip() for line in shown.splitlines()[2:])
    assert shown.count("123,456") == 6
    assert "…" not in shown
