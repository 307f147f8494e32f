"""Several sites or designs side by side, as a workbook."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any

from planner.checks.of_study import failed_of_first, study_verdicts
from planner.report.pages.options import service_words as verdict
from planner.report.sheets.page import Page
from planner.report.study_book import write_study_book
from planner.report.style import Kind, Look, axis, solid, style_chart, value_axis
from planner.scenario.errors import InputError, Problem
from planner.study.compare import OptionResult, Study

SHEETS = ("Side by side", "All options")
FIRST_STUDY = 2
CHART_ROWS = 18
Value = float | str
_Line = tuple[str, str, Kind, Callable[[Study, OptionResult], Value], str]


def write_comparison(studies: Sequence[Study], path: Path) -> None:
    """Write studies of several scenarios side by side, whole or not at all.

    Parameters
    ----------
    studies : sequence of Study
        At least two, in the order to be shown.
    path : pathlib.Path
        File to write.

    Raises
    ------
    InputError
        When there are fewer than two, or their currencies differ: no rate of exchange is known.
    """
    if len(studies) < 2:
        raise InputError(str(path), [Problem("", "a comparison needs at least two scenarios that run")])
    currencies = {study.scenario.currency for study in studies}
    if len(currencies) > 1:
        listed = ", ".join(f"'{study.scenario.name}' in {study.scenario.currency}" for study in studies)
        text = f"scenarios in different currencies cannot be compared ({listed}); give all prices in one currency"
        raise InputError(str(path), [Problem("currency", text)])
    names = _names(studies)

    def fill(book: Any, pages: dict[str, Page]) -> None:
        _side_by_side(pages["Side by side"], book, studies, names)
        _all_options(pages["All options"], studies, names)

    write_study_book(" / ".join(names), SHEETS, fill, path)


def _names(studies: Sequence[Study]) -> list[str]:
    """Names of the scenarios; equal ones are told apart by a number."""
    plain = [study.scenario.name for study in studies]
    return [name if plain.count(name) == 1 else f"{name} ({place})" for place, name in enumerate(plain, start=1)]


def _differences(studies: Sequence[Study]) -> list[str]:
    """What makes the figures of the scenarios unlike, in words."""
    bases: tuple[tuple[str, Callable[[Study], object]], ...] = (
        ("years counted", lambda study: study.scenario.finance.life_years),
        ("discount rates", lambda study: study.scenario.finance.discount_rate_percent),
        ("kinds of prices", lambda study: study.scenario.finance.prices),
        ("rates of inflation", lambda study: study.scenario.finance.inflation_percent),
        ("service targets", lambda study: study.scenario.service.delivered_share_percent),
    )
    return [name for name, basis in bases if len({basis(study) for study in studies}) > 1]


def _side_by_side(page: Page, book: Any, studies: Sequence[Study], names: list[str]) -> None:
    currency = studies[0].scenario.currency
    page.title(
        "Scenarios side by side",
        f"The option ranked first of each scenario, or, where none meets its target, the one that delivers most; it is "
        f"not recommended while site checks fail, and its cost is incomplete where prices are missing. Money in "
        f"{currency}.",
    )
    differing = _differences(studies)
    if differing:
        page.paragraph(
            f"! The scenarios have different {', '.join(differing)}: compare their costs with care.", "verdict"
        )
    page.header(["Figure", "Unit", *names])
    header_row = page.row - 1
    page.freeze(FIRST_STUDY)
    page.fix_width(0, 38)
    for column in range(FIRST_STUDY, FIRST_STUDY + len(studies)):
        page.fix_width(column, 24)
    rows: dict[str, int] = {}
    for label, unit, kind, of, word in _lines(currency):
        rows[label] = page.row
        page.put(page.row, 0, label)
        page.put(page.row, 1, unit)
        for column, study in enumerate(studies, start=FIRST_STUDY):
            value = of(study, study.ranked[0])
            shown: Kind = "wrap" if isinstance(value, str) else kind
            page.put(page.row, column, value, shown, word=word)
        page.row += 1
    page.row += 1
    last = FIRST_STUDY + len(studies) - 1
    chart = book.add_chart({"type": "column"})
    row = rows["Cost of water"]
    chart.add_series(
        {
            "name": "Cost of water",
            "categories": page.range_of(header_row, FIRST_STUDY, header_row, last),
            "values": page.range_of(row, FIRST_STUDY, row, last),
            "gap": 80,
            **solid("#6F9AA0"),
        }
    )
    chart.set_x_axis(axis("Scenario"))
    chart.set_y_axis(value_axis(f"Cost of water ({currency}/m3)", "0.00", min=0))
    page.chart(style_chart(chart, "Levelised cost of water", legend="none"), page.row, 0, None, CHART_ROWS)
    page.row += CHART_ROWS


def _lines(currency: str) -> list[_Line]:
    def people(study: Study, option: OptionResult) -> Value:
        return "none" if study.scenario.people is None else float(study.scenario.people)

    def failing(study: Study, option: OptionResult) -> Value:
        return float(len(failed_of_first(study, study_verdicts(study))))

    def own_funds(study: Study, option: OptionResult) -> Value:
        return float(option.life.capital_cost) - float(option.life.grant) - float(option.life.loan)

    def mean(name: str) -> Callable[[Study, OptionResult], Value]:
        return lambda study, option: float(getattr(option.quantities, name).sum()) / study.scenario.finance.life_years

    def life(name: str) -> Callable[[Study, OptionResult], Value]:
        return lambda study, option: float(getattr(option.life, name))

    a_year = f"{currency}/year"
    return [
        ("Place", "", "wrap", lambda s, o: s.scenario.site.place or "–", ""),
        ("Least cost, or nearest", "", "wrap", lambda s, o: o.name, ""),
        ("Service", "", "wrap", lambda s, o: verdict(o), ""),
        ("Site checks that fail", "", "whole", failing, ""),
        ("No price was entered for", "", "wrap", lambda s, o: ", ".join(o.unpriced) or "–", ""),
        ("Delivered over the life", "% of demand", "one", lambda s, o: 100 * o.delivered_share, ""),
        ("People, first year", "", "whole", people, ""),
        ("Demand in the first year", "m3/day", "one", lambda s, o: float(o.quantities.demand_m3[0]) / 365, ""),
        ("Delivered, mean", "m3/year", "whole", mean("delivered_m3"), ""),
        ("Total dynamic head", "m", "one", lambda s, o: o.duty.total_head_m, ""),
        ("Flow at that head", "m3/h", "two", lambda s, o: o.duty.flow_m3h, ""),
        ("Tank", "m3", "one", lambda s, o: o.tank_m3, ""),
        ("PV array, rated", "kW", "two", lambda s, o: o.array_kw if o.modules else "none", ""),
        ("Grid", "kWh/year", "whole", mean("grid_kwh"), ""),
        ("Fuel", "L/year", "whole", mean("fuel_l"), ""),
        ("Years counted", "years", "whole", lambda s, o: float(s.scenario.finance.life_years), ""),
        ("Discount rate", "%/year", "two", lambda s, o: s.scenario.finance.discount_rate_percent, ""),
        ("Prices", "", "wrap", lambda s, o: s.scenario.finance.prices, ""),
        ("Build cost", currency, "money", life("capital_cost"), ""),
        ("Grant", currency, "money", life("grant"), ""),
        ("Loan", currency, "money", life("loan"), ""),
        ("Own funds in year 0", currency, "money", own_funds, ""),
        ("Present cost", currency, "money", life("present_cost"), ""),
        ("Yearly cost", a_year, "money", life("equivalent_yearly_cost"), ""),
        ("Cost of water", f"{currency}/m3", "price", life("levelised_cost_per_m3"), "nothing delivered"),
        ("Yearly cost per person", f"{currency}/person/year", "price", life("cost_per_person_year"), "no people"),
    ]


def _all_options(page: Page, studies: Sequence[Study], names: list[str]) -> None:
    currency = studies[0].scenario.currency
    page.title("All options of all scenarios", "Best first within each scenario.")
    page.header(
        [
            "Scenario",
            "Supply option",
            "Service",
            "Delivered (%)",
            "Tank (m3)",
            "PV array (kW)",
            f"Build cost ({currency})",
            f"Present cost ({currency})",
            f"Yearly cost ({currency}/year)",
            f"Cost of water ({currency}/m3)",
        ]
    )
    page.freeze()
    page.fix_width(0, 34)
    page.fix_width(1, 26)
    for name, study in zip(names, studies, strict=True):
        for option in study.ranked:
            look: Look = "best" if option.name == study.best else "plain"
            life = option.life
            cells: tuple[tuple[Value, Kind], ...] = (
                (name, "wrap"),
                (f"{option.name}{', cost incomplete' if option.unpriced else ''}", "text"),
                (verdict(option), "text"),
                (100 * option.delivered_share, "one"),
                (option.tank_m3, "one"),
                (option.array_kw, "two") if option.modules else ("–", "word"),
                (float(life.capital_cost), "money"),
                (float(life.present_cost), "money"),
                (float(life.equivalent_yearly_cost), "money"),
                (float(life.levelised_cost_per_m3), "price"),
            )
            for column, (value, kind) in enumerate(cells):
                page.put(page.row, column, value, kind, look, word="nothing delivered")
            page.row += 1
