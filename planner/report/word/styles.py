"""How a Word document looks: its page, its styles, the numbers of its chapters, header and footer.

Everything that is shown has a style with a name of its own, so that whoever edits the document changes it in one place.
"""

from __future__ import annotations

from typing import Any

from docx.document import Document
from docx.enum.style import WD_STYLE_TYPE
from docx.enum.text import WD_ALIGN_PARAGRAPH
from docx.oxml import OxmlElement, parse_xml
from docx.oxml.ns import nsdecls, qn
from docx.shared import Mm, Pt, RGBColor

from planner.report.style import FONT, INK, RULE, SLATE, STRAW

PAGE_MM, MARGIN_MM = (210.0, 297.0), (20.0, 22.0)
"""A4: width and height; margins left and right, top and bottom."""
TEXT_WIDTH_MM = PAGE_MM[0] - 2 * MARGIN_MM[0]
TABLE_POINTS = 8.5
OPEN, TABLE_TEXT, TABLE_NUMBER, TABLE_HEADING = "Open point", "Table text", "Table number", "Table heading"
TABLE_TITLE, TABLE_END, NOTE, VERDICT, CONTENTS = "Table title", "Table end", "Note", "Verdict", "TOC 1"
_HEADINGS = {"Title": 24.0, "Subtitle": 13.0, "Heading 1": 15.0, "Heading 2": 11.5, "TOC Heading": 13.0}


def set_up(document: Document, language: str) -> None:
    """Give a new document its page, its styles and the language that its spelling is checked in."""
    for relation in [key for key, each in document.part.rels.items() if "stylesWithEffects" in each.reltype]:
        document.part.drop_rel(relation)
    package = document.part.package
    for relation in [key for key, each in package.rels.items() if "thumbnail" in each.reltype]:
        package.rels.pop(relation)
    plain = document.styles.default(WD_STYLE_TYPE.TABLE)
    for style in [each for each in document.styles if each.type == WD_STYLE_TYPE.TABLE and each != plain]:
        style.delete()
    section = document.sections[0]
    section.page_width, section.page_height = (Mm(size) for size in PAGE_MM)
    section.left_margin = section.right_margin = Mm(MARGIN_MM[0])
    section.top_margin = section.bottom_margin = Mm(MARGIN_MM[1])
    section.different_first_page_header_footer = True
    spoken = document.styles.element.find(f".//{qn('w:rPrDefault')}//{qn('w:lang')}")
    spoken.set(qn("w:val"), "en-GB" if language == "en" else language)
    _styles(document)
    _number_headings(document)


def _styles(document: Document) -> None:
    _style(document, "Normal", 10.0, before=0, after=6)
    for name, size in _HEADINGS.items():
        style = _style(document, name, size, colour=SLATE, bold=True, before=14 if "Heading" in name else 0, after=6)
        style.paragraph_format.keep_with_next = True
        for border in list(style.element.iter(qn("w:pBdr"))):
            border.getparent().remove(border)
        if name == "TOC Heading":
            style.base_style = document.styles["Normal"]  # not a chapter, so not numbered as one
    _style(document, "List Bullet", 10.0, after=3)
    _style(document, NOTE, 9.0, italic=True, after=6)
    _style(document, OPEN, 10.0, after=4)
    _style(document, CONTENTS, 10.0, after=3)
    _style(document, TABLE_TITLE, 10.0, bold=True, before=6, after=3).paragraph_format.keep_with_next = True
    _style(document, TABLE_TEXT, TABLE_POINTS, after=0)
    _style(document, TABLE_NUMBER, TABLE_POINTS, after=0).paragraph_format.alignment = WD_ALIGN_PARAGRAPH.RIGHT
    _style(document, TABLE_HEADING, TABLE_POINTS, bold=True, after=0)
    _style(document, TABLE_END, 5.0, after=0)
    verdict = _style(document, VERDICT, 12.0, bold=True, before=4, after=8)
    edges = "".join(
        f'<w:{side} w:val="single" w:sz="6" w:space="4" w:color="{SLATE[1:]}"/>' for side in ("top", "bottom")
    )
    properties = verdict.element.get_or_add_pPr()
    properties.insert_element_before(parse_xml(f"<w:pBdr {nsdecls('w')}>{edges}</w:pBdr>"), *_AFTER_BORDER)
    shading = f'<w:shd {nsdecls("w")} w:val="clear" w:color="auto" w:fill="{STRAW[1:]}"/>'
    properties.insert_element_before(parse_xml(shading), *_AFTER_BORDER[1:])
    for name in ("Header", "Footer"):
        style = _style(document, name, 8.5, colour=RULE, after=0)
        for stops in list(style.element.iter(qn("w:tabs"))):
            stops.getparent().remove(stops)  # those of a page of another size


_AFTER_BORDER = ("w:shd", "w:tabs", "w:spacing", "w:ind", "w:jc", "w:outlineLvl", "w:rPr")
"""What follows borders in the properties of a paragraph, in the order that the format wants."""


def _style(
    document: Document,
    name: str,
    size: float,
    *,
    colour: str = INK,
    bold: bool = False,
    italic: bool = False,
    before: float = 0.0,
    after: float = 0.0,
) -> Any:
    """Set a paragraph style, made where there is none: letters, and space above and below [points]."""
    styles = document.styles
    style: Any = styles[name] if name in styles else styles.add_style(name, WD_STYLE_TYPE.PARAGRAPH)
    if style.base_style is None and name != "Normal":
        style.base_style = styles["Normal"]
    style.font.name, style.font.size, style.font.color.rgb = FONT, Pt(size), RGBColor.from_string(colour[1:])
    letters = style.element.rPr.rFonts
    for theme in [key for key in letters.attrib if key.endswith("Theme")]:
        del letters.attrib[theme]  # would win over the name
    style.font.bold, style.font.italic = bold, italic
    spacing = style.paragraph_format
    spacing.space_before, spacing.space_after, spacing.line_spacing = Pt(before), Pt(after), 1.1
    style.hidden, style.quick_style = False, True
    return style


def _number_headings(document: Document) -> None:
    """Let headings of the first level number themselves, so that chapters can be moved and added."""
    numbering = document.part.numbering_part.element
    taken = [int(each.get(qn("w:abstractNumId"))) for each in numbering.iter(qn("w:abstractNum"))]
    number = max(taken, default=0) + 1
    numbering.insert(
        0,
        parse_xml(
            f'<w:abstractNum {nsdecls("w")} w:abstractNumId="{number}"><w:multiLevelType w:val="multilevel"/>'
            '<w:lvl w:ilvl="0"><w:start w:val="1"/><w:numFmt w:val="decimal"/><w:pStyle w:val="Heading1"/>'
            '<w:lvlText w:val="%1"/><w:lvlJc w:val="left"/>'
            '<w:pPr><w:ind w:left="567" w:hanging="567"/></w:pPr></w:lvl></w:abstractNum>'
        ),
    )
    used = numbering.add_num(number)
    properties = document.styles["Heading 1"].element.get_or_add_pPr()
    properties.get_or_add_numPr().get_or_add_numId().val = used.numId


def add_field(paragraph: Any, instruction: str) -> None:
    """Add a field that Word works out by itself, such as the number of the page."""
    for kind in ("begin", "separate", "end"):
        run = paragraph.add_run()
        mark = OxmlElement("w:fldChar")
        mark.set(qn("w:fldCharType"), kind)
        run._r.append(mark)
        if kind == "begin":
            command = OxmlElement("w:instrText")
            command.set(qn("xml:space"), "preserve")
            command.text = f" {instruction} "
            paragraph.add_run()._r.append(command)
        elif kind == "separate":
            paragraph.add_run("1")
