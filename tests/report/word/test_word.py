"""A report as a Word document, read back with python-docx."""

from __future__ import annotations

import io
import zipfile
from datetime import UTC, date, datetime

import docx
import pytest
from docx.oxml.ns import qn

from planner.report.document import (
    Axis,
    Cell,
    Chart,
    Column,
    Heading,
    Page,
    Report,
    Row,
    Section,
    Series,
    Span,
    Table,
    Text,
)
from planner.report.word.book import Frame, word_bytes
from planner.report.word.styles import OPEN, PAGE_MM, TEXT_WIDTH_MM
from planner.text import in_language, review_note

TABLE = Table(
    "t",
    (Column("what", "What"), Column("much", "How much (m)")),
    (
        Section("A group"),
        Row("a", {"what": Cell("short"), "much": Cell(1234.5, "one")}),
        Row("b", {"what": Cell('a <b> & "c"'), "much": Cell(float("nan"), "one", word="none")}, "total"),
        Row("c", {"what": Cell("empty")}),
    ),
    heading="Heights",
)
FRAME = Frame("Site", "Revision B", "A. Person", date(2026, 3, 4))


def report(*blocks: object, title: str = "Site") -> Report:
    front = Page("front", "front", title, "under it")
    return Report(title, (front, Page("one", "One", "One", blocks=tuple(blocks)), Page("two", "Two", "Two")))  # type: ignore[arg-type]


def read(content: bytes) -> docx.document.Document:
    return docx.Document(io.BytesIO(content))


def opened(*blocks: object, frame: Frame = FRAME) -> docx.document.Document:
    return read(word_bytes(report(*blocks), frame))


def test_each_block_has_a_style_of_its_own() -> None:
    said = opened(Heading("Part"), Text("plain"), Text("weigh", "verdict"), Text("aside", "note"), Text("one", "item"))
    styles = {paragraph.text: paragraph.style.name for paragraph in said.paragraphs}
    assert styles["Site"] == "Title"
    assert styles["under it"] == "Subtitle"
    assert styles["One"] == styles["Two"] == "Heading 1"
    assert styles["Part"] == "Heading 2"
    assert [styles[each] for each in ("plain", "weigh", "aside", "one")] == ["Normal", "Verdict", "Note", "List Bullet"]


def test_a_line_to_be_completed_is_highlighted_and_nothing_else_is() -> None:
    said = opened(Text("known"), Text("To be completed: the tariff [per m3]", "open"))
    marked = [
        paragraph.text
        for paragraph in said.paragraphs
        if any(run.font.highlight_color is not None for run in paragraph.runs)
    ]
    assert marked == ["To be completed: the tariff [per m3]"]
    assert next(each for each in said.paragraphs if each.text in marked).style.name == OPEN


def test_a_table_keeps_its_cells_groups_and_looks() -> None:
    (table,) = opened(TABLE).tables
    texts = [[cell.text for cell in row.cells] for row in table.rows]
    assert texts == [
        ["What", "How much (m)"], ["A group", "A group"], ["short", "1,234.5"], ['a <b> & "c"', "none"], ["empty", ""],
    ]  # fmt: skip
    styles = [[cell.paragraphs[0].style.name for cell in row.cells] for row in table.rows]
    assert styles[0] == ["Table heading", "Table heading"]
    assert styles[2] == ["Table text", "Table number"]
    assert all(run.bold for cell in table.rows[3].cells for run in cell.paragraphs[0].runs)
    assert not any(run.bold for cell in table.rows[2].cells for run in cell.paragraphs[0].runs)


def test_the_headings_of_a_table_come_again_on_each_page_and_no_row_is_torn() -> None:
    (table,) = opened(TABLE).tables
    properties = [row._tr.trPr for row in table.rows]
    assert [each.find(qn("w:tblHeader")) is not None for each in properties] == [True, False, False, False, False]
    assert all(each.find(qn("w:cantSplit")) is not None for each in properties)


@pytest.mark.parametrize("letters", [3, 30, 300])
def test_a_table_is_never_wider_than_the_page(letters: int) -> None:
    columns = tuple(Column(f"c{number}", "heading " * 3) for number in range(9))
    wide = Table("w", columns, (Row(0, {column.key: Cell("m" * letters) for column in columns}),))
    (table,) = opened(wide).tables
    widths = [int(each.get(qn("w:w"))) for each in table._tbl.tblGrid]
    assert all(width > 0 for width in widths)
    assert sum(widths) <= 56.7 * TEXT_WIDTH_MM + len(widths)


def test_it_is_a4_with_pages_numbered_and_the_frame_around() -> None:
    said = opened()
    section = said.sections[0]
    assert [round(size.mm) for size in (section.page_width, section.page_height)] == list(PAGE_MM)
    assert section.header.paragraphs[0].text == "Site"
    foot = section.footer.paragraphs[0]
    assert foot.text.startswith("Revision B\tPage ")
    commands = [each.text.strip() for each in foot._p.iter(qn("w:instrText"))]
    assert commands == ["PAGE", "NUMPAGES"]
    assert section.different_first_page_header_footer


def test_the_contents_name_the_chapters_and_lead_to_them() -> None:
    said = opened()
    links = {"".join(node.text for node in link.iter(qn("w:t"))): link.get(qn("w:anchor"))
             for link in said.element.iter(qn("w:hyperlink"))}  # fmt: skip
    marks = {mark.get(qn("w:name")): mark.getparent() for mark in said.element.iter(qn("w:bookmarkStart"))}
    assert list(links) == ["1One", "2Two"]
    for words, mark in links.items():
        assert "".join(node.text for node in marks[mark].iter(qn("w:t"))) == words[1:]


@pytest.mark.parametrize("mark", ["\x00", "\x0b", "\x1b[2J", "\x85", "\u202e", "\ud800", "\ufffe"])
def test_no_character_breaks_the_file(mark: str) -> None:
    name = f"Well {mark}3 ]]> </w:t> & <x>"
    table = Table(name, (Column("a", name),), (Section(name), Row(0, {"a": Cell(name)})), heading=name)
    content = word_bytes(
        report(Heading(name), Text(name), Text(name, "open"), table, title=name), Frame(name, name, name, None)
    )
    said = read(content)
    words = [each.text for each in said.paragraphs] + [cell.text for row in said.tables[0].rows for cell in row.cells]
    assert sum("]]> </w:t> & <x>" in each for each in words) == 8
    assert not any(mark in each for each in words)
    assert "]]>" in said.core_properties.title


def test_the_same_report_gives_the_same_bytes_and_no_time_of_writing() -> None:
    first, again = (word_bytes(report(TABLE), FRAME) for _ in range(2))
    assert first == again
    with zipfile.ZipFile(io.BytesIO(first)) as packed:
        assert {each.date_time for each in packed.infolist()} == {(1980, 1, 1, 0, 0, 0)}
        assert b"python-docx" not in b"".join(map(packed.read, packed.namelist()))
        assert not [name for name in packed.namelist() if "thumbnail" in name]
    own = read(first).core_properties
    assert (own.title, own.author, own.created) == ("Site", "A. Person", datetime(2026, 3, 4, tzinfo=UTC))


def test_a_day_that_is_not_known_is_left_out() -> None:
    own = read(word_bytes(report(), Frame("", ""))).core_properties
    assert own.created is None
    assert own.modified is None


def test_charts_are_passed_over() -> None:
    places = Span("t", "a", "much", "b")
    chart = Chart("c", "lines", "Chart of it", "alt", (Series("s", places, places, "line 0"),), Axis(), Axis())
    said = opened(TABLE, chart, Text("after"))
    assert "Chart of it" not in [each.text for each in said.paragraphs]
    assert said.paragraphs[-2].text == "after"


def test_a_translation_that_awaits_review_says_so_once() -> None:
    with in_language("fr"):
        said = [each.text for each in opened(Text("mot")).paragraphs]
        assert said.count(review_note()) == 1
    assert not any("review" in each.text for each in opened(Text("word")).paragraphs)
