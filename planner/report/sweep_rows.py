"""Results of a sweep as a table for other programs: one row for each variant and supply option."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pandas as pd

from planner.figures import shown
from planner.report.pages.figure_cells import figure_of
from planner.report.rows import write_frames
from planner.study.sweep.engine import MEASURES
from planner.study.sweep.run import Results, SweepResult

_ROWS = 200_000
"""Rows written at a time."""


def write_rows(swept: SweepResult, path: Path) -> None:
    """Write every result as CSV, or as Parquet where the file is so named.

    Parameters
    ----------
    swept : SweepResult
        The finished sweep.
    path : pathlib.Path
        File to write, ending in .csv or .parquet (the latter needs pyarrow).
    """
    write_frames(frames(swept), path)


def frames(swept: SweepResult) -> Iterator[pd.DataFrame]:
    """Yield the rows piece by piece: sweep, variant, each input, option, each figure, and what went wrong.

    Where there are no prices, figures of money have no column.

    An input that a variant leaves alone has the scenario's value, or nothing where the tool chose it.
    """
    priced = swept.base.scenario.priced
    names = list(dict.fromkeys(key.text for results in swept.results for key in results.plan.keys))
    for results in swept.results:
        step = max(_ROWS // len(results.options), 1)
        for begin in range(0, results.plan.size, step):
            yield _frame(results, names, begin, min(begin + step, results.plan.size), priced=priced)


def _frame(results: Results, names: list[str], begin: int, end: int, *, priced: bool) -> pd.DataFrame:
    options, count = len(results.options), end - begin
    plan = results.plan
    columns: dict[str, object] = {
        "sweep": plan.mode,
        "variant": np.repeat(np.arange(begin + 1, end + 1), options),
    }
    for name in names:
        columns[name] = np.full(count * options, np.nan)
    for place, key in enumerate(plan.keys):
        values = plan.values[begin:end, place]
        given = np.where(np.isnan(values), np.nan if key.base is None else key.base, values)
        columns[key.text] = np.repeat(given, options)
    columns["option"] = np.tile(np.array(results.options, dtype=object), count)
    for place, measure in enumerate(MEASURES):
        figure, factor = figure_of(measure)
        if figure in shown([figure], priced=priced):
            columns[figure] = factor * results.numbers[begin:end, :, place].ravel()
    reasons = (results.problems.get(variant) for variant in range(begin, end))
    wrong = [reason.words if reason else "" for reason in reasons]
    columns["problem"] = np.repeat(np.array(wrong, dtype=object), options)
    return pd.DataFrame(columns)
