"""The three charts of the brief and the tables that they show: money by part, water by month, the worst fortnight."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from planner.figures import COST_CATEGORIES, cost_categories, cost_figure, figure
from planner.report.document import Axis, Cell, Chart, Column, Page, Row, Series, Span, Table
from planner.resource.sun import DAYS_PER_MONTH
from planner.study.compare import OptionResult, Study
from planner.study.hours import DAY, Hours, Stretch
from planner.study.words import money
from planner.text import source_name, text

COSTS, WATER, TANK = "brief.costs", "brief.water", "brief.tank"


def chart_pages(study: Study, hours: Hours) -> Iterator[Page]:
    """Build the page of the charts, and one of the tables that they show.

    Parameters
    ----------
    study : Study
        The finished comparison.
    hours : Hours
        The hours of the option ranked first.
    """
    worst = hours.worst()
    tables = [_water_table(study), _tank_table(hours, worst)]
    charts = [_water(study), _tank(hours, worst)]
    if study.scenario.priced:
        tables.insert(0, _cost_table(study))
        charts.insert(0, _costs(study))
    yield Page("charts", "", "", blocks=tuple(charts))
    yield Page("shown", "", "", blocks=tuple(tables))


def _parts(study: Study) -> list[str]:
    """Kinds of cost that any option has."""
    return [
        name
        for name in cost_categories(study.further_costs)
        if any(float(cost_figure(name).read(option)) != 0 for option in study.options)
    ]


def _cost_table(study: Study) -> Table:
    parts = _parts(study)
    columns = (Column("option", ""), *(Column(name, cost_figure(name).label.strip()) for name in parts))
    rows = tuple(
        Row(option.name, {"option": Cell(option.name)} | {name: _cost(option, name) for name in parts})
        for option in study.ranked
    )
    return Table(COSTS, columns, rows)


def _cost(option: OptionResult, name: str) -> Cell:
    return Cell(float(cost_figure(name).read(option)), "money")


def _costs(study: Study) -> Chart:
    first, currency, parts = study.ranked[0], study.scenario.currency, _parts(study)
    largest = max(parts, key=lambda name: float(cost_figure(name).read(first)))
    return Chart(
        COSTS,
        "stacked bars",
        text("brief.costs"),
        text(
            "brief.costs_alt",
            option=first.name,
            cost=money(float(figure("life_cycle_cost").read(first)), currency),
            years=study.scenario.finance.analysis_period_years,
            part=cost_figure(largest).label.strip(),
        ),
        tuple(
            Series(
                cost_figure(name).label.strip(),
                _down(study, "option"),
                _down(study, name),
                f"cost {name}" if name in COST_CATEGORIES else f"cost {study.further_costs.index(name)}",
            )
            for name in parts
        ),
        Axis(kind="text"),
        Axis(text("answer.costs_axis", currency=currency)),
    )


def _down(study: Study, column: str) -> Span:
    return Span(COSTS, study.ranking[0], column, study.ranking[-1])


def _missing_m3_day(option: OptionResult) -> np.ndarray[tuple[int, ...], np.dtype[np.float64]]:
    """Water missing a day by month, mean of the years, (12,) [m³]."""
    did = option.outcome
    return np.asarray((did.demand_m3 - did.delivered_m3).mean(axis=0) / DAYS_PER_MONTH)


def _water_table(study: Study) -> Table:
    """Water a day by month, mean of the years, of the option ranked first: what each source pumps, what is missing."""
    option = study.ranked[0]
    pumped = {
        source: option.outcome.solar_m3 if source.has_array else option.outcome.top_up(source).m3
        for source in option.sources
    }
    values = {str(source): volume.mean(axis=0) / DAYS_PER_MONTH for source, volume in pumped.items()}
    values["missing"] = _missing_m3_day(option)
    rows = tuple(
        Row(place, {"month": Cell(text(f"month.{place + 1}"))}
            | {key: Cell(float(volume[place]), "one") for key, volume in values.items()})
        for place in range(12)
    )  # fmt: skip
    return Table(WATER, (Column("month", ""), *(Column(key, key) for key in values)), rows)


def _water(study: Study) -> Chart:
    option, years = study.ranked[0], study.scenario.finance.analysis_period_years
    missing = _missing_m3_day(option)
    month, most = int(missing.argmax()), f"{missing.max():,.1f}"
    misses = float(most.replace(",", "")) > 0
    styles = {}
    for source in option.sources:
        further = study.further_sources.index(source) if source in study.further_sources else source
        styles[str(source)] = source_name(source), f"source {further}"
    if misses:
        styles["missing"] = text("brief.water_missing"), "missing"
    alt = "brief.water_alt" if misses else "brief.water_alt_none_missing"
    return Chart(
        WATER,
        "stacked columns",
        text("brief.water", option=option.name),
        text(alt, years=years, month=text(f"month_name.{month + 1}"), missing=most),
        tuple(
            Series(name, Span(WATER, 0, "month", 11), Span(WATER, 0, key, 11), style)
            for key, (name, style) in styles.items()
        ),
        Axis(kind="text"),
        Axis(text("brief.water_axis", years=years)),
    )


def _tank_table(hours: Hours, worst: Stretch) -> Table:
    """Hours of the worst days: the day from their first, the tank's level and what is missing on the whole day."""
    some = {key: values[worst.hours] for key, values in hours.year(worst.year).items()}
    level = some["tank_level_m3"]
    missing = np.repeat(some["shortfall_m3"].reshape(-1, DAY).sum(axis=1), DAY)
    rows = tuple(
        Row(place, {
            "day": Cell((place + 1) / DAY, "two"),
            "level": Cell(float(level[place]), "one"),
            "full": Cell(hours.tank_m3, "one"),
            "missing": Cell(float(missing[place]), "one"),
        })
        for place in range(level.size)
    )  # fmt: skip
    return Table(TANK, tuple(Column(key, "") for key in ("day", "level", "full", "missing")), rows)


def _tank(hours: Hours, worst: Stretch) -> Chart:
    last = worst.days * DAY - 1
    month = int(np.searchsorted(np.cumsum(DAYS_PER_MONTH), worst.first_day, side="right"))
    begin = {
        "day": worst.first_day - int(DAYS_PER_MONTH[:month].sum()) + 1,
        "month": text(f"month_name.{month + 1}"),
        "year": worst.year + 1,
    }
    lowest = float(hours.series["tank_level_m3"][worst.hours, worst.year].min())
    slots = {"missing": f"{worst.shortfall_m3:,.1f}", "tank": f"{hours.tank_m3:,.1f}", "lowest": f"{lowest:,.1f}"}
    shown = [("level", "plain line 0"), ("full", "plain line 2")]
    if worst.misses_water:
        shown.insert(1, ("missing", "plain line 1"))
    alt = "brief.tank_alt" if worst.misses_water else "brief.tank_alt_none_missing"
    return Chart(
        TANK,
        "lines",
        text("brief.tank", option=hours.name),
        text(alt, **begin, **slots),
        tuple(
            Series(text(f"brief.tank_{key}"), Span(TANK, 0, "day", last), Span(TANK, 0, key, last), style)
            for key, style in shown
        ),
        Axis(text("brief.tank_days", **begin), low=0, high=worst.days),
        Axis(text("brief.tank_axis"), low=0),
    )
