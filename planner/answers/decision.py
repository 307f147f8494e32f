"""What a finished study decides: verdict and conditions, three large numbers, options, and what bears on them.

The first page of the workbook, the brief, the proposal's summary and the terminal show the same decision, each in its
own form.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from planner.answers.days import days_words
from planner.answers.next_step import next_step_sentences
from planner.answers.of_study import failed_of_first, failures, others_that_hold
from planner.answers.uncertainty import call_sentences, switching_sentences, worst_year_sentences
from planner.answers.users import users_sentence
from planner.checks.verdict import Verdict
from planner.figures import DAYS, Figure, Format, figure
from planner.money.users import INCOMES
from planner.scenario.starter import left_over
from planner.study.compare import OptionResult, Study
from planner.study.words import money, runner_up
from planner.text import listed, number, text
from planner.version import __version__

PRICED_COLUMNS = (
    "meets_target", "short_days_per_year", "array_kwp", "tank_m3", "capital_cost", "life_cycle_cost",
    "tariff_operation_and_renewals",
)  # fmt: skip
"""Figures of the options, behind their names."""
TECHNICAL_COLUMNS = (
    "meets_target", "short_days_per_year", "longest_short_days", "array_kwp", "tank_m3", "grid_kwh_per_year",
    "fuel_l_per_year",
)  # fmt: skip
"""The same where there are no prices."""
RECORD = ("prepared_by", "visit_date", "price_date", "revision")
"""Keys that say who made the study, on what visit and prices."""
_DECIMALS: dict[Format, int] = {"whole": 0, "one": 1, "two": 2, "three": 3, "money": 0, "price": 2}


@dataclass(frozen=True)
class LargeNumber:
    """One of the numbers that stand large.

    Attributes
    ----------
    key : str
        Figure of the catalogue that it shows, or 'water' and 'array_and_tank' for what is put together.
    label : str
        What it is.
    value_text : str
        The number with its unit, rounded for people.
    note : str
        What there is to add, in few words.
    value : float
        The number itself; NaN where there is none.
    """

    key: str
    label: str
    value_text: str
    note: str
    value: float


@dataclass(frozen=True)
class OptionRow:
    """One option: its name, whether it is the best, and by key of a column its value and how that is written."""

    name: str
    best: bool
    values: dict[str, float]
    texts: dict[str, str]


@dataclass(frozen=True)
class OptionsCompared:
    """The options, best first: the heading of each column by its key, 'option' for the names, and the rows."""

    headings: dict[str, str]
    rows: tuple[OptionRow, ...]


@dataclass(frozen=True)
class Decision:
    """What a study decides, in sentences and numbers.

    Attributes
    ----------
    verdict : str
        One sentence.
    conditions : tuple of str
        What must be put right or found out before it holds; they belong in the same band as the verdict.
    large : tuple of LargeNumber
        Three.
    options : OptionsCompared
        At most eight columns.
    days, pay, turns, who : tuple of str
        Sentences: days without water; what users pay; what would turn the answer; who made it, when, from what.
    """

    verdict: str
    conditions: tuple[str, ...]
    large: tuple[LargeNumber, ...]
    options: OptionsCompared
    days: tuple[str, ...]
    pay: tuple[str, ...]
    turns: tuple[str, ...]
    who: tuple[str, ...]


def decision(study: Study, verdicts: Sequence[Verdict], remedied: Sequence[str] = ()) -> Decision:
    """Say what a study decides, in the language in use.

    Parameters
    ----------
    study : Study
        The finished comparison.
    verdicts : sequence of Verdict
        What the site checks found.
    remedied : sequence of str
        What the answer becomes with the remedies of what fails, and what they cost.

    Returns
    -------
    Decision
    """
    conditions = tuple(_conditions(study, verdicts, remedied))
    return Decision(
        verdict=_verdict(study, verdicts, conditions),
        conditions=conditions,
        large=_large(study),
        options=_options(study),
        days=(days_words(study.ranked[0]), *worst_year_sentences(study)),
        pay=tuple(_pay(study)),
        turns=tuple(_turns(study)),
        who=tuple(_who(study)),
    )


def _verdict(study: Study, verdicts: Sequence[Verdict], conditions: Sequence[str]) -> str:
    first = study.ranked[0]
    slots = {
        "option": first.name,
        "target": study.scenario.service.demand_met_percent,
        "delivered": 100 * first.delivered_share,
    }
    if study.best is None:
        return text("decision.none_meets", **slots)
    if failed_of_first(study, verdicts):
        lead = "not_yet"
    else:
        lead = "on_conditions" if conditions else "recommended"
    if not study.scenario.priced:
        lead = {"recommended": "serves"}.get(lead, f"serves_{lead}")
    return text(f"decision.{lead}", **slots)


def _conditions(study: Study, verdicts: Sequence[Verdict], remedied: Sequence[str]) -> list[str]:
    sentences = [failures(study, verdicts), *remedied, others_that_hold(study, verdicts)]
    starters = left_over(study.scenario)
    if starters:
        sentences.append(text("decision.starter", count=len(starters)))
    if study.scenario.weather.kind == "estimate":
        sentences.append(text("decision.estimated_weather"))
    if study.scenario.priced and study.ranked[0].unpriced:
        sentences.append(text("decision.unpriced", names=_unpriced(study.ranked[0])))
    return [sentence for sentence in sentences if sentence]


def _unpriced(option: OptionResult) -> str:
    return listed([thing.label() for thing in option.unpriced])


def _large(study: Study) -> tuple[LargeNumber, ...]:
    if study.scenario.priced:
        return _to_build(study), _users_pay(study), _short_days(study)
    return _water(study), _short_days(study), _array_and_tank(study)


def _to_build(study: Study) -> LargeNumber:
    first, currency = study.ranked[0], study.scenario.currency
    cost, own_funds, per_person = (
        _value(key, first) for key in ("capital_cost", "own_funds", "capital_cost_per_person")
    )
    if own_funds < cost:
        note = text("decision.to_build_note_grant", own=money(own_funds, currency))
    elif math.isfinite(per_person):
        note = text("decision.to_build_note_people", per_person=money(per_person, currency))
    else:
        note = text("decision.to_build_note")
    value = text("decision.value_money", currency=currency, value=cost)
    return LargeNumber("capital_cost", _at_least("to_build", first), value, note, cost)


def _users_pay(study: Study) -> LargeNumber:
    first, currency = study.ranked[0], study.scenario.currency
    tariff, share = (_value(f"{name}_operation_and_renewals", first) for name in ("tariff", "income_share"))
    note = text("decision.users_pay_note")
    if math.isfinite(share):
        note = text("decision.users_pay_note_income", share=share)
    known = math.isfinite(tariff)
    value = text("decision.value_money_per_m3", currency=currency, value=tariff) if known else text("answer.nothing")
    return LargeNumber("tariff_operation_and_renewals", _at_least("users_pay", first), value, note, tariff)


def _at_least(key: str, option: OptionResult) -> str:
    return text(f"decision.{key}_at_least" if option.unpriced else f"decision.{key}")


def _short_days(study: Study) -> LargeNumber:
    first = study.ranked[0]
    days, month, _, longest, _ = (_value(key, first) for key in DAYS)
    years = study.scenario.finance.analysis_period_years
    note = text("decision.short_days_never", years=years)
    if longest:
        note = text("decision.short_days_note", month=text(f"month_name.{month:.0f}"), longest=longest)
    value = text("decision.value_days", value=days)
    return LargeNumber("short_days_per_year", text("decision.short_days"), value, note, days)


def _water(study: Study) -> LargeNumber:
    water_m3 = float(study.ranked[0].quantities.delivered_m3.mean()) / 365
    note = text("decision.water_note", years=study.scenario.finance.analysis_period_years)
    return LargeNumber("water", text("decision.water"), text("decision.value_water", value=water_m3), note, water_m3)


def _array_and_tank(study: Study) -> LargeNumber:
    first = study.ranked[0]
    kwp, tank_m3 = first.array_kw, first.tank_m3
    key = "array_and_tank" if kwp > 0 else "tank"
    value = text(f"decision.value_{key}", kwp=kwp, tank=tank_m3)
    note = text(f"decision.{key}_note", option=first.name)
    return LargeNumber("array_and_tank", text("decision.array_and_tank"), value, note, tank_m3)


def _options(study: Study) -> OptionsCompared:
    columns = list(PRICED_COLUMNS if study.scenario.priced else _technical_columns(study))
    unpriced = study.scenario.priced and any(option.unpriced for option in study.options)
    incomplete = text("answer.incomplete") if unpriced else ""
    headings = {"option": text("answer.option" if study.scenario.priced else "answer.option_technical")}
    for key in columns:
        unit = figure(key).unit_in(study.scenario.currency)
        headings[key] = text(f"short.{key}", unit=unit, incomplete=incomplete)
    return OptionsCompared(headings, tuple(_row(study, option, columns) for option in study.ranked))


def _technical_columns(study: Study) -> tuple[str, ...]:
    """Figures without prices: energy that no option takes from outside gives way to the share of water."""
    kept = [
        key
        for key in TECHNICAL_COLUMNS
        if key not in ("grid_kwh_per_year", "fuel_l_per_year")
        or any(_value(key, option) > 0 for option in study.options)
    ]
    return (*kept[:1], "demand_met_percent", *kept[1:]) if len(kept) < len(TECHNICAL_COLUMNS) else tuple(kept)


def _row(study: Study, option: OptionResult, columns: Sequence[str]) -> OptionRow:
    values = {key: _value(key, option) for key in columns}
    texts = {"option": option.name} | {key: _written(figure(key), option, value) for key, value in values.items()}
    return OptionRow(option.name, option.name == study.best, values, texts)


def _value(key: str, option: OptionResult) -> float:
    return float(figure(key).read(option))


def _written(of: Figure, option: OptionResult, value: float) -> str:
    if of.key == "meets_target":
        return text("answer.yes" if value else "answer.no")
    if not math.isfinite(value):
        return of.words_for(option)
    if value == 0 and of.key in ("array_kwp", "grid_kwh_per_year", "fuel_l_per_year"):
        return text("answer.nothing")
    return number(value, f",.{_DECIMALS[of.format]}f")


def _pay(study: Study) -> list[str]:
    first = study.ranked[0]
    if not study.scenario.priced:
        return []
    if first.unpriced:
        return [text("decision.pay_unpriced", names=_unpriced(first))]
    sentences = [users_sentence(study)]
    middle, lowest = (_value(f"{share}_operation_and_renewals", first) for share in INCOMES)
    if math.isfinite(middle):
        key = "pay_income_lowest" if math.isfinite(lowest) else "pay_income"
        sentences.append(text(f"decision.{key}", middle=middle, lowest=lowest))
    return [sentence for sentence in sentences if sentence]


def _turns(study: Study) -> list[str]:
    found = [
        runner_up(study) if study.scenario.priced else None,
        *call_sentences(study),
        *switching_sentences(study),
        *next_step_sentences(study),
    ]
    return [sentence for sentence in found if sentence]


def _who(study: Study) -> list[str]:
    scenario = study.scenario
    record = {key: getattr(scenario, key) for key in RECORD}
    if any(record.values()):
        given = {key: value or text("figure.not_given") for key, value in record.items()}
        sentences = [text("decision.record", **given)]
    else:
        sentences = [text("decision.no_record")]
    weather = scenario.weather
    sentences.append(text(f"decision.weather_{weather.kind}", file=getattr(weather, "file", "")))
    sentences.append(text("decision.version", version=__version__, seed=scenario.seed))
    return sentences
