"""What the brief holds: the decision, three charts, what fails and what to beware of."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.answers.cautions import plain_cautions
from planner.answers.decision import Decision
from planner.checks.verdict import SYMBOL, Verdict, failed
from planner.report.brief.charts import chart_pages
from planner.report.document import Block, Cell, Column, Heading, Page, Report, Row, Table, Text, Tile, Tiles
from planner.report.pages.checks import checks_table
from planner.study.compare import Study
from planner.study.hours import Hours
from planner.text import text

SHOWN = ("head", "verdict", "large", "options", "words", "charts", "facts", "cautions")
"""Keys of the pages that are shown, in their order; the others hold what the charts show."""
MOST_LETTERS, LETTERS_OF_A_ROW = 7000, 120
"""Letters that fit on a sheet of A4 beside charts and numbers, and those whose room a table row takes: by trial."""
FAULT = ("topic", "compared", "value", "limit", "remedy")
"""Columns of the table of failed checks."""


def brief_report(study: Study, decided: Decision, verdicts: Sequence[Verdict], hours: Hours) -> Report:
    """Build the brief.

    Parameters
    ----------
    study : Study
        The finished comparison.
    decided : Decision
        What it decides.
    verdicts : sequence of Verdict
        What the site checks found.
    hours : Hours
        The hours of the option ranked first.
    """
    scenario = study.scenario
    pages = (
        Page("head", "", scenario.name, _where(study)),
        Page("verdict", "", "", blocks=tuple(_verdict(study, decided))),
        Page("large", "", "", blocks=(_large(decided),)),
        Page("options", "", text("brief.options"), blocks=(_options(decided),)),
        Page("words", "", "", blocks=tuple(_words(decided))),
        *chart_pages(study, hours),
        Page("facts", "", "", blocks=tuple(_facts(decided, verdicts))),
        Page("cautions", "", text("brief.cautions"), text("caution.local"), tuple(map(Text, plain_cautions(study)))),
    )
    return Report(scenario.name, pages)


def is_long(report: Report) -> bool:
    """Whether a brief is so long that its cautions fit on its sheet of paper only where they run on."""
    blocks = [block for page in report.pages if page.key in SHOWN for block in page.blocks]
    letters = sum(len(block.text) for block in blocks if isinstance(block, Text))
    rows = sum(len(block.rows) for block in blocks if isinstance(block, Table) and block.header)
    return letters + LETTERS_OF_A_ROW * rows > MOST_LETTERS


def _where(study: Study) -> str:
    place, people = study.scenario.place_besides_name, study.scenario.people
    if people is None:
        return place
    key = "brief.place_people" if place else "answer.people"
    return text(key, place=place, people=f"{people:,.0f}")


def _verdict(study: Study, decided: Decision) -> Iterator[Text]:
    sign = SYMBOL["fail" if study.best is None else "caution" if decided.conditions else "pass"]
    yield Text(f"{sign} {decided.verdict}", "verdict")
    yield from map(Text, decided.conditions)


def _large(decided: Decision) -> Tiles:
    numbers = decided.large
    return Tiles("brief.large", tuple(Tile(each.label, Cell(each.value_text), Text(each.note)) for each in numbers))


def _options(decided: Decision) -> Table:
    compared = decided.options
    columns = tuple(Column(key, heading) for key, heading in compared.headings.items())
    rows = tuple(
        Row(
            option.name,
            {key: Cell(words, "text" if key == columns[0].key else "word") for key, words in option.texts.items()},
            "best" if option.best else "plain",
        )
        for option in compared.rows
    )
    return Table("brief.options", columns, rows)


def _words(decided: Decision) -> Iterator[Block]:
    """Sentences below their headings; a heading without any is left out."""
    for key, sentences in (("days", decided.days), ("pay", decided.pay), ("turns", decided.turns)):
        if sentences:
            yield Heading(text(f"brief.{key}"))
            yield from map(Text, sentences)


def _facts(decided: Decision, verdicts: Sequence[Verdict]) -> Iterator[Block]:
    """What fails, with what would mend it; and by whom, when and from what all this was worked out."""
    faults = failed(verdicts)
    yield Heading(text("brief.failed"))
    yield checks_table(faults).only(FAULT) if faults else Text(text("brief.none_failed"))
    yield Heading(text("brief.who"))
    yield from map(Text, decided.who)
    yield Text(text("brief.cautions_follow"))
