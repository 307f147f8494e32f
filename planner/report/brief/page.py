"""Write pages of a report as one HTML file: no script, nothing fetched, readable on a phone and on paper.

Each page becomes a section; `planner.report.brief.style` lays the sections out by their keys.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.report.brief.chart import chart_html
from planner.report.brief.escaping import safe
from planner.report.brief.style import STYLE
from planner.report.document import Block, Chart, Column, Heading, Page, Report, Row, Section, Table, Text, Tiles
from planner.report.shown import is_number, shown
from planner.text import restyled, review_note


def html_text(report: Report, pages: Sequence[str], language: str, *, dense: bool = False) -> str:
    """Return pages of a report as the text of one HTML file.

    Parameters
    ----------
    report : Report
        The report.
    pages : sequence of str
        Keys of the pages that are shown, in their order; the report's other ones may hold what charts show.
    language : str
        Code of the language that it is in.
    dense : bool
        Whether small print runs on without new lines on paper.
    """
    by_key = {page.key: page for page in report.pages}
    parts = [
        "<!doctype html>",
        f'<html lang="{safe(language)}"><head><meta charset="utf-8">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f"<title>{safe(report.title)}</title><style>{STYLE}</style></head>",
        '<body class="dense">' if dense else "<body>",
        *(line for place, key in enumerate(pages) for line in _section(report, by_key[key], first=place == 0)),
        *([f'<footer class="note">{safe(note)}</footer>'] if (note := review_note()) else []),
        "</body></html>",
    ]
    return "\n".join(parts) + "\n"


def _section(report: Report, page: Page, *, first: bool) -> Iterator[str]:
    yield f'<section id="{safe(page.key)}">'
    if page.title:
        level = "h1" if first else "h2"
        yield f'<{level} dir="auto">{safe(page.title)}</{level}>'
    if page.under:
        yield f'<p class="under">{safe(page.under)}</p>'
    if page.blocks:
        yield '<div class="body">'
        yield from _blocks(report, page.blocks)
        yield "</div>"
    yield "</section>"


def _blocks(report: Report, blocks: Sequence[Block]) -> Iterator[str]:
    """Write blocks one after another; a heading and what follows it stand together."""
    within = False
    for block in blocks:
        if isinstance(block, Heading):
            yield "</div><div>" if within else "<div>"
            within = True
            yield f"<h2>{safe(block.text)}</h2>"
        elif isinstance(block, Text):
            yield _paragraph(block.style, block.text)
        elif isinstance(block, Chart):
            yield chart_html(block, report.values)
        elif isinstance(block, Tiles):
            yield from _tiles(block)
        else:
            yield from _table(block)
    if within:
        yield "</div>"


def _tiles(tiles: Tiles) -> Iterator[str]:
    """Write large numbers side by side, below one another on a narrow screen."""
    yield '<div class="tiles">'
    for tile in tiles.tiles:
        value = tile.cell.value
        number = value if isinstance(value, str) else restyled(f"{value:,.{tile.decimals}f}")
        words = ("", tile.label), ("large", f"{tile.before}{number}{tile.after}"), ("note", tile.note.text)
        yield f"<div>{''.join(_paragraph(style, said) for style, said in words)}</div>"
    yield "</div>"


def _paragraph(style: str, words: str) -> str:
    return f'<p class="{style}">{safe(words)}</p>' if style else f"<p>{safe(words)}</p>"


def _table(table: Table) -> Iterator[str]:
    """Write a table; where it has headings, its rows become cards on a narrow screen, each cell with its heading.

    What becomes a card is no table any more to a reading aloud but for the roles.
    """
    yield f'<div class="{"cards" if table.header else "plain"}"><table role="table">'
    if table.heading:
        yield f"<caption>{safe(table.heading)}</caption>"
    if table.header:
        yield f'<thead role="rowgroup"><tr role="row">{"".join(_heading(table, c) for c in table.columns)}</tr></thead>'
    yield '<tbody role="rowgroup">'
    for row in table.rows:
        if isinstance(row, Section):
            yield f'<tr role="row"><th role="columnheader" colspan="{len(table.columns)}">{safe(row.text)}</th></tr>'
        else:
            yield _row(table, row)
    yield "</tbody></table></div>"


def _heading(table: Table, column: Column) -> str:
    cells = [row.cells[column.key] for row in table.data_rows() if column.key in row.cells]
    numbers = any(_to_the_right(cell.kind) or is_number(cell) for cell in cells)
    look = ' class="number"' if numbers else ""
    return f'<th role="columnheader"{look}>{safe(column.heading)}</th>'


def _row(table: Table, row: Row) -> str:
    return f'<tr role="row" class="{row.look}">{"".join(_cell(table, row, column) for column in table.columns)}</tr>'


def _cell(table: Table, row: Row, column: Column) -> str:
    cell = row.cells.get(column.key)
    label = f' data-label="{safe(column.heading)}"' if table.header else ""
    if cell is None:
        return f'<td role="cell"{label}></td>'
    look = "number" if is_number(cell) or _to_the_right(cell.kind) else "long" if cell.kind == "wrap" else ""
    named = f' class="{look}"' if look else ""
    return f'<td role="cell"{named}{label}>{safe(shown(cell))}</td>'


def _to_the_right(kind: str) -> bool:
    """Whether words stand to the right, in the place of a number."""
    return kind == "word"
