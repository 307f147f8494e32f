"""Write a report as a Word document: its first page with the contents, then a chapter a page of the report."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any, BinaryIO

import docx
from docx.document import Document
from docx.enum.text import WD_COLOR_INDEX, WD_TAB_ALIGNMENT
from docx.oxml import parse_xml
from docx.oxml.ns import nsdecls, qn
from docx.shared import Mm

from planner.report.document import Block, Chart, Heading, Page, Report, Table, Text, TextStyle
from planner.report.files import write_stream
from planner.report.review import with_review_note
from planner.report.word.styles import (
    CONTENTS,
    NOTE,
    OPEN,
    TABLE_END,
    TABLE_TITLE,
    TEXT_WIDTH_MM,
    VERDICT,
    add_field,
    set_up,
)
from planner.report.word.tables import table_element
from planner.report.word.words import clean
from planner.text import language_in_use, text

_STYLES: dict[TextStyle, str] = {
    "paragraph": "Normal", "verdict": VERDICT, "note": NOTE, "item": "List Bullet", "open": OPEN,
}  # fmt: skip
_PAGE, _PAGES = "\x01", "\x02"
_FIELDS = {_PAGE: "PAGE", _PAGES: "NUMPAGES"}
_EPOCH = (1980, 1, 1, 0, 0, 0)
"""Time of every part of the file; the earliest that the format knows."""


@dataclass(frozen=True)
class Frame:
    """What stands around a document's text.

    Attributes
    ----------
    header, footer : str
        Words at the top and at the foot of each page but the first; the foot has the page's number beside them.
    author : str
        Who prepared it; '' where that is not known.
    day : datetime.date or None
        Day noted as that of the document in its properties; None leaves it out.
    """

    header: str
    footer: str
    author: str = ""
    day: date | None = None


def write_word(report: Report, path: Path, frame: Frame) -> None:
    """Write a report as a Word document, whole or not at all; the same report gives the same bytes.

    Parameters
    ----------
    report : Report
        Its first page stands before the contents, each further one is a chapter; charts are passed over.
    path : pathlib.Path
        File to write.
    frame : Frame
        What stands around the text.
    """
    content = word_bytes(report, frame)

    def write(stream: BinaryIO) -> None:
        stream.write(content)

    write_stream(path, write)


def word_bytes(report: Report, frame: Frame) -> bytes:
    """Return a report as the bytes of a Word document; see `write_word`."""
    document = docx.Document()
    set_up(document, language_in_use())
    _properties(document, report.title, frame)
    _frame(document, frame)
    front, *chapters = with_review_note(report).pages
    document.add_paragraph(clean(front.title), style="Title")
    if front.under:
        document.add_paragraph(clean(front.under), style="Subtitle")
    _blocks(document, front.blocks)
    _contents(document, chapters)
    for number, page in enumerate(chapters, start=1):
        _chapter(document, page, number)
    stream = io.BytesIO()
    document.save(stream)
    return _same_each_time(stream)


def _chapter(document: Document, page: Page, number: int) -> None:
    heading = document.add_paragraph(clean(page.title), style="Heading 1")
    if number == 1 or page.one_page:
        heading.paragraph_format.page_break_before = True
    # The mark that the line in the contents leads to.
    mark = f'{nsdecls("w")} w:id="{number}"'
    heading._p.insert(1, parse_xml(f'<w:bookmarkStart {mark} w:name="{_mark(number)}"/>'))
    heading._p.append(parse_xml(f"<w:bookmarkEnd {mark}/>"))
    if page.under:
        document.add_paragraph(clean(page.under), style=NOTE)
    _blocks(document, page.blocks)


def _mark(number: int) -> str:
    return f"_Toc{number:08d}"


def _blocks(document: Document, blocks: Sequence[Block]) -> None:
    for block in blocks:
        if isinstance(block, Text):
            paragraph = document.add_paragraph(style=_STYLES[block.style])
            run = paragraph.add_run(clean(block.text))
            if block.style == "open":
                run.font.highlight_color = WD_COLOR_INDEX.YELLOW
        elif isinstance(block, Heading):
            document.add_paragraph(clean(block.text), style="Heading 2")
        elif isinstance(block, Table):
            _table(document, block)
        else:
            assert isinstance(block, Chart)


def _table(document: Document, table: Table) -> None:
    if table.heading:
        document.add_paragraph(clean(table.heading), style=TABLE_TITLE)
    # Between two tables there must be a paragraph, or they become one.
    document.add_paragraph(style=TABLE_END)._p.addprevious(table_element(table))


def _contents(document: Document, chapters: Sequence[Page]) -> None:
    """List the chapters, as a field that Word brings up to date when asked to."""
    document.add_paragraph(clean(text("proposal.contents_heading")), style="TOC Heading")
    for number, page in enumerate(chapters, start=1):
        line = document.add_paragraph(style=CONTENTS)
        if number == 1:
            for run in _field_start('TOC \\o "1-1" \\h \\z'):
                line._p.append(run)
        link = parse_xml(f'<w:hyperlink {nsdecls("w")} w:anchor="{_mark(number)}" w:history="1"/>')
        line._p.append(link)
        run = line.add_run(f"{number}\t{clean(page.title)}")
        link.append(run._r)
        line.paragraph_format.tab_stops.add_tab_stop(Mm(10))
        if number == len(chapters):
            line._p.append(parse_xml(f'<w:r {nsdecls("w")}><w:fldChar w:fldCharType="end"/></w:r>'))


def _field_start(instruction: str) -> Iterator[Any]:
    inner = (
        '<w:fldChar w:fldCharType="begin"/>',
        f'<w:instrText xml:space="preserve"> {instruction.replace(chr(34), "&quot;")} </w:instrText>',
        '<w:fldChar w:fldCharType="separate"/>',
    )
    return (parse_xml(f"<w:r {nsdecls('w')}>{each}</w:r>") for each in inner)


def _frame(document: Document, frame: Frame) -> None:
    section = document.sections[0]
    section.header.paragraphs[0].add_run(clean(frame.header))
    foot = section.footer.paragraphs[0]
    stops = foot.paragraph_format.tab_stops
    stops.add_tab_stop(Mm(TEXT_WIDTH_MM), WD_TAB_ALIGNMENT.RIGHT)
    foot.add_run(f"{clean(frame.footer)}\t")
    words = ""
    for letter in text("proposal.page", page=_PAGE, pages=_PAGES):
        if letter in _FIELDS:
            foot.add_run(words)
            words = ""
            add_field(foot, _FIELDS[letter])
        else:
            words += letter
    foot.add_run(words)


def _properties(document: Document, title: str, frame: Frame) -> None:
    own = document.core_properties
    own.title, own.author, own.last_modified_by = clean(title)[:255], clean(frame.author)[:255], ""
    own.comments, own.revision, own.language = "", 1, language_in_use()
    element = own._element
    if frame.day is None:
        for name in ("dcterms:created", "dcterms:modified"):
            for each in element.findall(qn(name)):
                element.remove(each)
    else:
        own.created = own.modified = datetime(frame.day.year, frame.day.month, frame.day.day, tzinfo=UTC)


def _same_each_time(stream: io.BytesIO) -> bytes:
    """Give every part of a packed document the same time, so that the same content gives the same bytes."""
    packed = io.BytesIO()
    with zipfile.ZipFile(stream) as read, zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as written:
        for name in read.namelist():
            written.writestr(zipfile.ZipInfo(name, _EPOCH), read.read(name), zipfile.ZIP_DEFLATED)
    return packed.getvalue()
