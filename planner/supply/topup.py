"""One top-up source of the hour loop: what it could add, its float switch, its shortest run, and what it did."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from planner.supply.cells import Columns, Integers, hours_with_some

Array = NDArray[np.float64]


@dataclass(frozen=True)
class TopUpSeries:
    """What one top-up source could add, hour by hour, to the columns it serves.

    Attributes
    ----------
    columns : slice or ndarray of int
        The columns it serves, each once; a slice, which is faster, where they stand side by side.
    extra_m3 : ndarray, (hours, series)
        Water it could add to the sun's in the hour, availability included [m³].
    hours_per_m3 : ndarray, (hours, series)
        Running time per m³ added [h/m³].
    kwh_per_m3 : ndarray, (hours, series)
        Energy taken from the source per m³ added [kWh/m³].
    sun_kwh_per_m3 : ndarray, (hours, series)
        Change of the solar energy used per m³ added [kWh/m³]: positive where a parallel drive also uses sun too weak to
        start the pump alone, negative where a changeover drive leaves the sun aside.
    available : ndarray, (hours, series), optional
        Share of the hour in which it may run; needed where it has a shortest run.
    bands : ndarray of int, (hours,), optional
        Tariff band of each hour, by which its energy is split and its demand found; one band when left out.
    of_column : ndarray of int, (columns served,), optional
        The series that holds in each of the columns; each has its own when left out.
    """

    columns: Columns
    extra_m3: Array
    hours_per_m3: Array
    kwh_per_m3: Array
    sun_kwh_per_m3: Array
    available: Array | None = None
    bands: NDArray[np.int64] | None = None
    of_column: Integers | None = None

    def last(self, hours: int) -> TopUpSeries:
        """Return its last hours alone."""
        series = {
            name: value[-hours:]
            for name, value in vars(self).items()
            if name not in ("columns", "of_column") and isinstance(value, np.ndarray)
        }
        return replace(self, **series)


@dataclass(frozen=True)
class FloatSwitch:
    """When a top-up source runs.

    `start_m3` and `stop_m3` (variants, columns served) are the levels at which it starts and stops [m³],
    `minimum_run_h` its shortest run, one for all or (columns served,) [h].
    """

    start_m3: Array
    stop_m3: Array
    minimum_run_h: float | Array = 0.0


@dataclass(frozen=True)
class TopUpTotals:
    """What one top-up source did in the columns it serves, by month.

    `added_m3`, `run_hours` and `peak_kw` (highest half-hourly demand) are (months, variants, columns served), `kwh` is
    (months, bands, variants, columns served).
    """

    columns: Columns
    added_m3: Array
    kwh: Array
    run_hours: Array
    peak_kw: Array

    @staticmethod
    def joined(parts: Sequence[TopUpTotals]) -> TopUpTotals:
        """Put other months one after another; those in which a tariff band never holds may lack it."""
        bands = max(part.kwh.shape[1] for part in parts)
        kwh = [np.pad(p.kwh, ((0, 0), (0, bands - p.kwh.shape[1]), (0, 0), (0, 0))) for p in parts]
        names = ("added_m3", "run_hours", "peak_kw")
        whole = {name: np.concatenate([getattr(part, name) for part in parts]) for name in names}
        return TopUpTotals(columns=parts[0].columns, kwh=np.concatenate(kwh), **whole)


class TopUp:
    """State of one top-up source during the loop.

    `on` and `run_left_h` (variants, columns served) tell whether it is wanted and what is left of its shortest run.

    Parameters
    ----------
    series, switch : TopUpSeries, FloatSwitch
        The source.
    shape : (int, int)
        Variants and columns.
    month_count : int
        Number of months in the totals.
    """

    def __init__(self, series: TopUpSeries, switch: FloatSwitch, shape: tuple[int, int], month_count: int) -> None:
        self.series, self.columns = series, series.columns
        served = np.arange(shape[1])[self.columns]
        self.index_of = np.full(shape[1], -1)
        self.index_of[served] = np.arange(served.size)
        self.of_column = np.arange(served.size) if series.of_column is None else series.of_column
        shape = shape[0], served.size
        self.start = np.array(np.broadcast_to(switch.start_m3, shape), order="C")
        self.width = np.subtract(switch.stop_m3, self.start, order="C")
        self.minimum_run_h = np.broadcast_to(switch.minimum_run_h, served.size)
        self.on, self.running, self.run_left_h = np.zeros(shape), np.zeros(shape, dtype=bool), np.zeros(shape)
        self.has_minimum_run = bool(np.any(switch.minimum_run_h))
        self.shifts_sun = bool(np.any(series.sun_kwh_per_m3))
        runs = series.available if self.has_minimum_run else series.extra_m3  # it may run and add nothing
        assert runs is not None
        self.adds_in = hours_with_some(runs)
        band_count = 1 if series.bands is None else int(series.bands.max()) + 1
        self.sums = TopUpTotals(
            self.columns,
            np.zeros((month_count, *shape)),
            np.zeros((month_count, band_count, *shape)),
            np.zeros((month_count, *shape)),
            np.zeros((month_count, *shape)),
        )

    def begin(self, level: Array) -> None:
        """Begin from levels alone: on where the level is not above the start level."""
        self.on[:] = level[:, self.columns] <= self.start

    def resume(self, on: Array, running: Array, run_left_h: Array) -> None:
        """Go on from the switches of another run, given over all columns."""
        self.on[:], self.run_left_h[:] = on[:, self.columns], run_left_h[:, self.columns]
        self.running[:] = running[:, self.columns] > 0

    @property
    def rests(self) -> NDArray[np.bool_]:
        """Where it is neither wanted nor running, (variants, columns served)."""
        rests: NDArray[np.bool_] = (self.on <= 0) & (self.run_left_h <= 0) & ~self.running
        return rests
