"""Write a report as one HTML file: no script, nothing fetched, readable on a small screen and on paper."""

from __future__ import annotations

from collections.abc import Iterator
from html import escape
from pathlib import Path

from planner.report.document import Chart, Heading, Page, Report, Row, Section, Table, Text, Tiles
from planner.report.files import write_text
from planner.report.shown import is_number, shown
from planner.report.style import INK, MIST, RULE, SLATE, STRAW

_STYLE = f"""
body {{ font: 16px/1.45 Arial, sans-serif; color: {INK}; max-width: 60rem; margin: 0 auto; padding: 0.75rem; }}
h1, h2, h3 {{ color: {SLATE}; line-height: 1.2; }}
.verdict {{ background: {STRAW}; padding: 0.5rem 0.75rem; font-weight: bold; font-size: 1.15rem; }}
.note {{ font-style: italic; }}
.table {{ overflow-x: auto; }}
table {{ border-collapse: collapse; font-size: 0.85rem; }}
th {{ background: {MIST}; text-align: left; }}
th, td {{ border-bottom: 1px solid {RULE}; padding: 0.25rem 0.5rem; vertical-align: top; }}
td.number {{ text-align: right; white-space: nowrap; }}
tr.best td, tr.total td, tr.strong td {{ font-weight: bold; }}
tr.best td {{ background: {STRAW}; }}
tr.sub td {{ font-style: italic; }}
@media print {{ body {{ font-size: 10pt; }} }}
"""


def write_html(report: Report, path: Path, language: str = "en") -> None:
    """Write a report as one HTML file, whole or not at all."""
    write_text(path, html_text(report, language))


def html_text(report: Report, language: str = "en") -> str:
    """Return a report as the text of one HTML file."""
    parts = [
        "<!doctype html>",
        f'<html lang="{escape(language)}"><head><meta charset="utf-8">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f"<title>{escape(report.title)}</title><style>{_STYLE}</style></head><body>",
        *(line for place, page in enumerate(report.pages) for line in _page(page, place)),
        "</body></html>",
    ]
    return "\n".join(parts) + "\n"


def _page(page: Page, place: int) -> Iterator[str]:
    level = "h1" if place == 0 else "h2"
    yield f'<section id="{escape(page.key)}"><{level}>{escape(page.title)}</{level}>'
    if page.under:
        yield f'<p class="note">{escape(page.under)}</p>'
    for block in page.blocks:
        if isinstance(block, Heading):
            yield f"<h3>{escape(block.text)}</h3>"
        elif isinstance(block, Text):
            yield f'<p class="{block.style}">{escape(block.text)}</p>'
        elif isinstance(block, Chart):
            yield f'<p class="note">{escape(block.alt_text)}</p>'
        elif isinstance(block, Tiles):
            for tile in block.tiles:
                number = f"{tile.before}{shown(tile.cell)}{tile.after}"
                yield f"<p>{escape(tile.label)}: <strong>{escape(number)}</strong> {escape(tile.note.text)}</p>"
        else:
            yield from _table(block)
    yield "</section>"


def _table(table: Table) -> Iterator[str]:
    if table.heading:
        yield f"<h3>{escape(table.heading)}</h3>"
    yield '<div class="table"><table>'
    if table.header:
        headings = "".join(f"<th>{escape(column.heading)}</th>" for column in table.columns)
        yield f"<thead><tr>{headings}</tr></thead>"
    yield "<tbody>"
    for row in table.rows:
        if isinstance(row, Section):
            yield f'<tr><th colspan="{len(table.columns)}">{escape(row.text)}</th></tr>'
        else:
            yield _row(table, row)
    yield "</tbody></table></div>"


def _row(table: Table, row: Row) -> str:
    cells = []
    for column in table.columns:
        cell = row.cells.get(column.key)
        if cell is None:
            cells.append("<td></td>")
        else:
            number = ' class="number"' if is_number(cell) else ""
            cells.append(f"<td{number}>{escape(shown(cell))}</td>")
    return f'<tr class="{row.look}">{"".join(cells)}</tr>'
