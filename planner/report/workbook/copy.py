"""A hidden copy of a sheet as it was written, and one cell that counts where the two have come to differ."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from xlsxwriter.utility import xl_rowcol_to_cell

from planner.report.form.parts import KEY_COLUMN

COUNT_COLUMN = 40


def add_copy(book: Any, sheet: str, name: str, followed: Sequence[str]) -> str:
    """Copy what stands on a sheet to a hidden one, and count the cells that differ from it.

    Parameters
    ----------
    book
        XlsxWriter's workbook.
    sheet, name : str
        Sheet to copy, and what the copy is called.
    followed : sequence of str
        Addresses of cells in which a change is no difference, as others look at it.

    Returns
    -------
    str
        Address of the cell that counts: 0 until something is typed.
    """
    original, copy = book.get_worksheet_by_name(sheet), book.add_worksheet(name)
    copy.very_hidden()
    words = {place: word for word, place in book.str_table.string_table.items()}
    quoted, quoted_copy = (f"'{each.replace(chr(39), chr(39) * 2)}'" for each in (sheet, name))
    last_row = last_column = 0
    for row, cells in original.table.items():
        for column, cell in cells.items():
            if column >= KEY_COLUMN:
                continue
            last_row, last_column = max(last_row, row), max(last_column, column)
            if hasattr(cell, "string"):
                copy.write_string(row, column, words[cell.string])
            elif hasattr(cell, "number"):
                copy.write_number(row, column, cell.number)
    area = f"$A$1:{xl_rowcol_to_cell(last_row + 1, last_column, row_abs=True, col_abs=True)}"
    one, other = f"{quoted}!{area}", f"{quoted_copy}!{area}"
    # An empty cell equals 0 and the empty text.
    different = f"SUMPRODUCT(1*((({one}<>{other})+(ISBLANK({one})<>ISBLANK({other})))>0))"
    for place, address in enumerate(followed):
        here = address.rpartition("!")[2]
        copy.write_formula(
            place,
            COUNT_COLUMN + 1,
            f"=IF(AND({quoted}!{here}={here},ISBLANK({quoted}!{here})=ISBLANK({here})),0,1)",
            None,
            0,
        )
    if followed:
        last = xl_rowcol_to_cell(len(followed) - 1, COUNT_COLUMN + 1, row_abs=True, col_abs=True)
        first = xl_rowcol_to_cell(0, COUNT_COLUMN + 1, row_abs=True, col_abs=True)
        different = f"{different}-SUM({first}:{last})"
    copy.write_formula(0, COUNT_COLUMN, f"={different}", None, 0)
    return f"{quoted_copy}!{xl_rowcol_to_cell(0, COUNT_COLUMN, row_abs=True, col_abs=True)}"
