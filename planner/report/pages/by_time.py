"""The pages 'Water' and 'Energy': each option month by month in the first life year, and year by year."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from types import SimpleNamespace
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from planner.money.formula import Formula, Operand
from planner.money.functions import largest, ratio, total
from planner.report.document import At, Axis, Block, Cell, Chart, Column, Kind, Page, Row, Section, Series, Span, Table
from planner.study.compare import OptionResult, Study
from planner.supply.option import TopUpOutcome
from planner.text import known, source_name, text

Array = NDArray[np.float64]
Pair = tuple[Array, Array]
"""Values of the first year's months (12,) and of the life years (years,)."""

MONTHS = tuple(f"month.{number}" for number in range(1, 13))
TOTAL = "total"
LABEL_WIDTH, CHART_ROWS, MOST_UPRIGHT = 15.0, 24, 12


@dataclass(frozen=True)
class Measure:
    """One column: its key, heading, format and values, how its total follows, and how it follows from the others.

    `of` takes the columns before it as attributes and works on arrays and on cells; `absent` is the key of the words
    where there is no value.
    """

    key: str
    heading: str
    kind: Kind
    values: Pair | None
    total: Literal["sum", "largest", ""] = "sum"
    of: Callable[[Any], Operand] | None = None
    absent: str = ""


def water_page(study: Study) -> Page:
    """Build the page 'Water' from a finished comparison."""
    demand = study.scenario.demand
    under = [text("water.under")]
    if demand.leakage_percent:
        under.append(text("water.leaking", percent=f"{demand.leakage_percent:g}"))
    if demand.leakage_m3_per_day:
        under.append(text("water.leaking_by_the_clock", m3_per_day=f"{demand.leakage_m3_per_day:g}"))
    blocks = _tables("water", study, [_water(option, study.further_sources) for option in study.ranked])
    first = study.ranked[0].name
    chart = Chart(
        key="water.chart",
        kind="columns",
        title=text("water.chart", option=first),
        alt_text=text("water.chart_alt", option=first),
        series=tuple(
            _series("water", 0, key, text(f"water.{key}"), style)
            for key, style in (("demand_m3", "light"), ("delivered_m3", "dark"))
        ),
        x=Axis(text("by_time.month_axis"), "text"),
        y=Axis(text("water.axis")),
        rows=CHART_ROWS,
    )
    return _page("water", " ".join(under), blocks, chart)


def energy_page(study: Study) -> Page:
    """Build the page 'Energy' from a finished comparison."""
    grid = study.scenario.sources.grid
    bands = [band.name for band in grid.tariff.bands] if grid else []
    under = text("energy.under_bands", bands=", ".join(bands)) if bands else text("energy.under")
    blocks = _tables("energy", study, [_energy(option, bands, study.further_sources) for option in study.ranked])
    option = study.ranked[0]
    shown = [("pv_used_kwh", "solar", "source solar"), ("grid_kwh", "grid", "source grid")]
    shown += [(f"{source}_kwh", source, f"source {place}") for place, source in enumerate(study.further_sources)]
    shown += [("generator_kwh", "generator", "source generator"), ("pv_unused_kwh", "solar", "unused")]
    chart = Chart(
        key="energy.chart",
        kind="stacked columns",
        title=text("energy.chart", option=option.name),
        alt_text=text("energy.chart_alt", option=option.name),
        series=tuple(
            _series("energy", 0, key, _heading("energy", key, source), style)
            for key, source, style in shown
            if source in option.sources
        ),
        x=Axis(text("by_time.month_axis"), "text"),
        y=Axis(text("energy.axis")),
        rows=CHART_ROWS,
    )
    return _page("energy", under, blocks, chart)


def _page(key: str, under: str, tables: Iterator[Table], chart: Chart) -> Page:
    """Put the option ranked first and its chart on one sheet of paper; the others stand below them."""
    name, months, years = text(f"page.{key}"), next(tables), next(tables)
    blocks: tuple[Block, ...] = (months, years, chart, *tables)
    upright = len(months.columns) <= MOST_UPRIGHT
    return Page(key, name, name, under, blocks, (LABEL_WIDTH,), one_page=True, upright=upright, printed=3)


def _heading(page: str, key: str, source: str) -> str:
    """Heading of what a source does; of one that the texts do not know it gives the unit."""
    if known(f"{page}.{key}"):
        return text(f"{page}.{key}")
    return text(f"{page}.further_{key.rpartition('_')[2]}", source=source_name(source))


def _water(option: OptionResult, further: Sequence[str]) -> list[Measure]:
    outcome = option.outcome
    pumped = ["solar_m3", "grid_m3", *(f"{source}_m3" for source in further), "generator_m3"]
    stored = (_stored_by_month(option), outcome.level_end_m3 - outcome.level_start_m3)

    def measure(key: str, values: Pair | None, **more: Any) -> Measure:
        return Measure(key, text(f"water.{key}"), more.pop("kind", "one"), values, **more)

    return [
        measure("demand_m3", _pair(outcome.demand_m3)),
        measure("delivered_m3", _pair(outcome.delivered_m3)),
        measure("shortfall_m3", None, of=lambda c: c.demand_m3 - c.delivered_m3, total=""),
        measure(
            "demand_met_percent",
            None,
            of=lambda c: 100 * ratio(c.delivered_m3, c.demand_m3),
            total="",
            kind="two",
            absent="by_time.no_demand",
        ),
        measure("solar_m3", _pair(outcome.solar_m3)),
        measure("grid_m3", _pair(outcome.grid_m3)),
        *(
            Measure(f"{source}_m3", _heading("water", f"{source}_m3", source), "one", _pair(outcome.top_up(source).m3))
            for source in further
        ),
        measure("generator_m3", _pair(outcome.generator_m3)),
        measure("pumped_m3", None, of=lambda c: sum((getattr(c, key) for key in pumped), 0.0), total=""),
        measure("leakage_m3", _pair(outcome.leakage_m3)),
        measure("storage_change_m3", stored),
    ]


def _stored_by_month(option: OptionResult) -> Array:
    """Change in storage by month of the first year: what was pumped less what left the tank."""
    outcome = option.outcome
    return np.asarray((_pumped_m3(option) - outcome.delivered_m3 - outcome.leakage_m3)[0])


def _pumped_m3(option: OptionResult) -> Array:
    """Water that all sources pump, (years, 12) [m³]."""
    return np.asarray(sum((did.m3 for did in option.outcome.top_ups.values()), option.outcome.solar_m3))


def _energy(option: OptionResult, bands: Sequence[str], further: Sequence[str]) -> list[Measure]:
    outcome = option.outcome
    count = 1 + len(bands)
    used = ["pv_used_kwh", "grid_kwh", *(f"{source}_kwh" for source in further), "generator_kwh"]
    keys = [f"grid_band_{number}_kwh" for number in range(count)]
    names = [text("energy.outside_bands"), *bands]

    def measure(key: str, values: Pair | None, kind: Kind = "whole", **more: Any) -> Measure:
        return Measure(key, more.pop("heading", None) or text(f"energy.{key}"), kind, values, **more)

    found = [
        measure("pv_used_kwh", _pair(outcome.solar_kwh)),
        measure("pv_unused_kwh", _pair(outcome.idle_kwh)),
    ]
    if count > 1:
        found += [
            measure(key, _pair(outcome.grid_kwh[..., place]), heading=text("energy.grid_band_kwh", band=name))
            for place, (key, name) in enumerate(zip(keys, names, strict=True))
        ]
        found.append(measure("grid_kwh", None, of=lambda c: sum(getattr(c, key) for key in keys), total=""))
    else:
        found.append(measure("grid_kwh", _pair(outcome.grid_kwh.sum(axis=-1))))
    peaks = np.asarray(outcome.grid_peak_kw[0]), np.asarray(outcome.grid_peak_kw.max(axis=1))
    return [
        *found,
        measure("grid_hours", _pair(outcome.grid_hours), "one"),
        measure("grid_peak_kw", peaks, "two", total="largest"),
        *(
            Measure(f"{source}_{key}", _heading("energy", f"{source}_{key}", source), kind, _pair(values))
            for source in further
            for key, kind, values in _did(outcome.top_up(source))
        ),
        measure("generator_kwh", _pair(outcome.generator_kwh)),
        measure("generator_hours", _pair(outcome.generator_hours), "one"),
        measure("fuel_l", _pair(outcome.fuel_l)),
        measure("pumped_m3", _pair(_pumped_m3(option))),
        measure(
            "kwh_per_m3",
            None,
            "two",
            of=lambda c: ratio(sum((getattr(c, key) for key in used), 0.0), c.pumped_m3),
            total="",
            absent="by_time.none_pumped",
        ),
    ]


def _did(source: TopUpOutcome) -> Iterator[tuple[str, Kind, Array]]:
    """Energy and running time of a source of one's own."""
    yield "kwh", "whole", source.kwh.sum(axis=-1)
    yield "hours", "one", source.hours


def _pair(monthly: Array) -> Pair:
    """From (years, 12): the first year's months, and the years' sums."""
    return np.asarray(monthly[0]), np.asarray(monthly.sum(axis=1))


def _key(page: str, place: int, part: str) -> str:
    return f"{page}.{place}.{part}"


def _tables(page: str, study: Study, measures: Sequence[Sequence[Measure]]) -> Iterator[Table]:
    """Two tables for each option, best first: months of the first year, and life years."""
    years = study.scenario.finance.analysis_period_years
    headings = [text("by_time.label"), *(measure.heading for measure in measures[0])]
    for place, (option, columns) in enumerate(zip(study.ranked, measures, strict=True)):
        made = tuple(
            Column(key, heading) for key, heading in zip(["label", *(c.key for c in columns)], headings, strict=True)
        )
        for part, labels, total_label in (
            ("months", [text(month) for month in MONTHS], text("by_time.first_year")),
            ("years", [text("by_time.year", year=year + 1) for year in range(years)], text("by_time.all_years")),
        ):
            key = _key(page, place, part)
            rows = _rows(key, labels, total_label, columns, 0 if part == "months" else 1)
            heading: tuple[Section, ...] = ()
            if part == "months":
                name = "by_time.recommended" if option.name == study.best else "by_time.option"
                heading = (Section(text(name, place=place + 1, option=option.name)),)
            first = place == 0 and part == "months"
            yield Table(key, made, (*heading, *rows), header=first, freeze=1 if first else None)


def _rows(
    table: str, labels: Sequence[str], total_label: str, measures: Sequence[Measure], which: int
) -> Iterator[Row]:
    """Rows of months or years and their total; the total of a derived column follows from the other totals."""
    values: dict[str, Array] = {}
    for measure in measures:
        if measure.values is not None:
            given = np.asarray(measure.values[which], dtype=float)
            made = largest(given) if measure.total == "largest" else total(given)
            values[measure.key] = np.append(given, made)
        else:
            assert measure.of is not None
            values[measure.key] = np.asarray(measure.of(SimpleNamespace(**values)), dtype=float)
    for place, label in enumerate([*labels, total_label]):
        row = TOTAL if place == len(labels) else place
        cells = {"label": Cell(label)}
        for measure in measures:
            word = text(measure.absent) if measure.absent else None
            formula = _formula(table, row, measure, measures, len(labels))
            cells[measure.key] = Cell(float(values[measure.key][place]), measure.kind, None, word, formula)
        yield Row(row, cells, "total" if row == TOTAL else "plain")


def _formula(table: str, row: int | str, measure: Measure, measures: Sequence[Measure], count: int) -> Formula | None:
    if measure.of is not None:
        cells = SimpleNamespace(**{each.key: Formula.leaf(At(table, row, each.key)) for each in measures})
        made = measure.of(cells)
        return made if isinstance(made, Formula) else None
    if row != TOTAL:
        return None
    column = Formula.leaf(Span(table, 0, measure.key, count - 1))
    made = largest(column) if measure.total == "largest" else total(column)
    return made if isinstance(made, Formula) else None


def _series(page: str, place: int, key: str, name: str, style: str) -> Series:
    """Chart series of the months of one option."""
    table = _key(page, place, "months")
    return Series(name, Span(table, 0, "label", 11), Span(table, 0, key, 11), style)
