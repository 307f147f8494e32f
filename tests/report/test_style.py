"""Widths and line counts of texts, and what may stand in a cell."""

from __future__ import annotations

from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st
from openpyxl.cell.cell import ILLEGAL_CHARACTERS_RE

from planner.report.style import COST_FILLS, SOURCE_FILLS, line_count, text_width
from planner.report.workbook.sheet import LONGEST_TEXT, clean


@given(st.text(max_size=200))
def test_any_text_becomes_fit_for_a_cell(text: str) -> None:
    fit = clean(text)
    assert len(fit) == len(text)
    assert not ILLEGAL_CHARACTERS_RE.search(fit)
    assert "\n" not in fit


def test_a_long_text_is_cut_visibly() -> None:
    assert clean("x" * LONGEST_TEXT) == "x" * LONGEST_TEXT
    cut = clean("x" * (LONGEST_TEXT + 1))
    assert len(cut) == LONGEST_TEXT
    assert cut.endswith("…")


def test_wide_letters_take_more_room_than_narrow_ones() -> None:
    assert text_width("iiii") < text_width("0000") < text_width("WWWW")


@given(st.text(alphabet="abc W", max_size=120), st.floats(6, 80), st.floats(1, 20))
def test_a_wider_column_never_needs_more_lines(text: str, width: float, more: float) -> None:
    assert 1 <= line_count(text, width + more) <= line_count(text, width)


def test_lines_hold_what_fits() -> None:
    assert line_count("00 00 00", 100) == 1
    assert line_count("00 00 00", 6) == 2
    assert line_count("0" * 50, 10) >= 5


def luminance(colour: str) -> float:
    """Relative luminance of an sRGB colour (IEC 61966-2-1), 0 black to 1 white."""
    parts = [int(colour[start : start + 2], 16) / 255 for start in (1, 3, 5)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def test_solid_fills_of_one_chart_differ_in_grey() -> None:
    for fills in (COST_FILLS, SOURCE_FILLS):
        greys = sorted(luminance(fill["fill"]["color"]) for fill in fills.values() if "fill" in fill)
        assert all(darker + 0.05 < lighter for darker, lighter in pairwise(greys)), greys
