"""The page 'Answer': one sheet of paper that decides, and says so only while it holds."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from planner.answers.decision import Decision, LargeNumber, OptionRow
from planner.answers.of_study import holds
from planner.checks.verdict import SYMBOL, Outcome, Verdict
from planner.figures import COST_CATEGORIES, cost_categories, cost_figure, figure
from planner.money.formula import Formula, Operand
from planner.money.functions import equals, where
from planner.report.document import (
    HEADER,
    Axis,
    Block,
    Cell,
    Chart,
    Column,
    Heading,
    Page,
    Row,
    Series,
    Span,
    Table,
    Text,
    Tile,
    Tiles,
)
from planner.report.pages.options import RANK, option_span
from planner.report.pages.since import FOLLOWED, RUN_AGAIN, UNCHANGED, in_state, while_followed, while_unchanged
from planner.report.pages.users import USERS
from planner.study.compare import Study
from planner.text import text

MAIN = "answer"
OPTION_WIDTH, FIGURE_WIDTH = 28.0, 13.0
CHART_ROWS = 22
DASHED = frozenset(("modules", "array_kwp", "grid_kwh_per_year", "fuel_l_per_year"))
"""Figures of which nothing is shown by a dash."""
_DECIMALS = {"capital_cost": 0, "tariff_operation_and_renewals": 2, "short_days_per_year": 1}
"""Large numbers that one figure gives, with the decimals shown."""
_NUMBER = re.compile(r"\d(?:[\d.,'\s]*\d)?")


def answer_page(study: Study, decided: Decision, verdicts: Sequence[Verdict], extra: Sequence[str] = ()) -> Page:
    """Build the page 'Answer'.

    Parameters
    ----------
    study : Study
        The finished comparison.
    decided : Decision
        What it decides.
    verdicts : sequence of Verdict
        What the site checks found.
    extra : sequence of str
        What else there is to say, below what would turn the answer.
    """
    scenario = study.scenario
    money = "" if scenario.priced else "_technical"
    blocks: list[Block] = []
    if scenario.question:
        blocks.append(Text(text("answer.question", question=scenario.question)))
    blocks += _band(study, decided, verdicts)
    blocks.append(Tiles("answer.large", tuple(_tile(study, number) for number in decided.large)))
    blocks.append(_options(study, decided))
    blocks += _part(f"decision.days_heading{money}", (*decided.days, *decided.pay))
    blocks += _part("decision.turns_heading", (*decided.turns, *extra))
    blocks += [Heading(text("decision.who_heading")), Text(" ".join((_setting(study), *decided.who)))]
    blocks.append(Text(text("decision.cautions"), "note"))
    if scenario.priced:
        blocks += _chart(study)
    return Page(
        "answer",
        text("page.answer"),
        scenario.name,
        scenario.place_besides_name,
        tuple(blocks),
        one_page=True,
        upright=True,
    )


def _setting(study: Study) -> str:
    scenario = study.scenario
    said = text(
        "answer.setting" if scenario.priced else "answer.setting_technical",
        currency=scenario.currency,
        prices=text(f"cash.prices_{scenario.finance.prices}"),
        years=scenario.finance.analysis_period_years,
    )
    if scenario.people is None:
        return said
    return f"{text('answer.people', people=f'{scenario.people:,.0f}')} {said}"


def _band(study: Study, decided: Decision, verdicts: Sequence[Verdict]) -> Iterator[Block]:
    """Verdict and conditions; whatever no longer holds gives way to what does."""
    outcome: Outcome = "fail" if not holds(study, verdicts) else "caution" if decided.conditions else "pass"
    verdict = f"{SYMBOL[outcome]} {decided.verdict}"
    again: Operand = text("decision.run_again")
    if study.scenario.priced:
        changed = Formula(
            "SUBSTITUTE", text("decision.changed", option="{option}"), "{option}", _found(study, HEADER, 1)
        )
        again = in_state(FOLLOWED, changed, in_state(RUN_AGAIN, again, text("decision.overpaid")))
    yield Text(verdict, "verdict", in_state(UNCHANGED, verdict, again))
    given_way = in_state(FOLLOWED, text("decision.given_way"), "") if study.scenario.priced else ""
    for place, sentence in enumerate(decided.conditions):
        yield Text(sentence, "condition", in_state(UNCHANGED, sentence, given_way if place == 0 else ""))


def _part(heading: str, sentences: Sequence[str]) -> Iterator[Block]:
    if sentences:
        yield Heading(text(heading))
        yield from (Text(sentence, formula=while_unchanged(sentence)) for sentence in sentences)


def _tile(study: Study, number: LargeNumber) -> Tile:
    """Show a large number, as a number that follows the option ranked first where one figure gives it."""
    note = Text(number.note, formula=while_unchanged(number.note))
    decimals, written = _DECIMALS.get(number.key), _NUMBER.search(number.value_text)
    if decimals is None or written is None:
        words = while_unchanged(number.value_text)
        return Tile(number.label, Cell(number.value_text, formula=words), note)
    before, after = number.value_text[: written.start()], number.value_text[written.end() :]
    cell = Cell(number.value, formula=while_followed(_found(study, number.key, 1), text("answer.nothing")))
    return Tile(number.label, cell, note, before, after, decimals)


def figure_span(study: Study, key: str) -> Span:
    """Cells of a figure of all options, in the order of the run, on the page that shows it."""
    if key != HEADER and figure(key).group == "users":
        return Span(USERS, key, study.ranking[0], None, study.ranking[-1])
    return option_span(study, key)


def _found(study: Study, key: str, place: int) -> Formula:
    """Figure, or the name, of the option of a rank."""
    ranks = Formula.leaf(option_span(study, RANK))
    return Formula("INDEX", Formula.leaf(figure_span(study, key)), Formula("MATCH", place, ranks, 0))


def figure_of(study: Study, key: str, place: int) -> Formula:
    """Figure of the option of a rank."""
    return _found(study, key, place)


def _options(study: Study, decided: Decision) -> Table:
    """Lay the options out side by side, best first."""
    columns = tuple(
        Column(key, heading, OPTION_WIDTH if key == "option" else FIGURE_WIDTH)
        for key, heading in decided.options.headings.items()
    )
    rows = []
    for place, row in enumerate(decided.options.rows, start=1):
        name = while_followed(_found(study, HEADER, place), row.name)
        cells = {"option": Cell.worked_out(row.name, "text", name)}
        cells |= {key: _cell(study, row, key, place) for key in row.values}
        rows.append(Row(row.name, cells, "best" if row.best else "plain"))
    return Table(MAIN, columns, tuple(rows))


def _cell(study: Study, row: OptionRow, key: str, place: int) -> Cell:
    found, value, nothing = _found(study, key, place), row.values[key], text("answer.nothing")
    if key == "meets_target":
        words = text("answer.yes"), text("answer.no")
        return Cell.worked_out(row.texts[key], "centre", while_followed(where(found > 0, *words), nothing))
    if key in DASHED:
        formula = while_followed(where(equals(Formula("N", found), 0), nothing, found), nothing)
        return Cell.worked_out(value or nothing, figure(key).format if value else "word", formula)
    return Cell.worked_out(value, figure(key).format, while_followed(found, nothing), word=text(figure(key).absent))


def _chart(study: Study) -> Iterator[Block]:
    """Life-cycle cost of every option by category, at the foot, as low as the page needs."""
    currency, first = study.scenario.currency, study.ranked[0].name
    spent = [
        name
        for name in cost_categories(study.further_costs)
        if any(float(option.life.present_by_category.get(name, 0.0)) != 0 for option in study.options)
    ]
    yield Chart(
        "answer.costs",
        "stacked bars",
        text("answer.costs"),
        text("answer.costs_alt", option=first),
        tuple(
            Series(
                cost_figure(name).label.strip(),
                option_span(study, HEADER),
                option_span(study, f"life_cycle_{name}"),
                f"cost {name}" if name in COST_CATEGORIES else f"cost {study.further_costs.index(name)}",
            )
            for name in spent
        ),
        Axis(kind="text"),
        Axis(text("answer.costs_axis", currency=currency)),
        rows=CHART_ROWS,
    )
