"""A worksheet that leaves out what costs time and changes nothing that anybody sees."""

from __future__ import annotations

from xlsxwriter.worksheet import Worksheet


class PlainWorksheet(Worksheet):
    """XlsxWriter's worksheet without two things.

    It does not search each formula for functions newer than Excel 2007: the workbook holds thousands of formulas and
    uses none of those functions; the search takes a third of the writing. Nor does it say in advance which columns the
    rows fill, which the standard leaves open.
    """

    def _prepare_formula(self, formula: str, expand_future_functions: bool = False) -> str:
        return formula.removeprefix("=")

    def _calculate_spans(self) -> None:
        self.row_spans: dict[int, str] = {}
