"""The page 'Method and cautions': how the figures were worked out, what the words mean, what to beware of."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.report.document import Block, Cell, Column, Heading, Page, Row, Table, Text
from planner.resource.clearness import law_in_words
from planner.study.compare import Study
from planner.study.ranking import FUEL_KWP_PER_L_A_YEAR, GRID_KWP_PER_KWH_A_YEAR, TANK_KWP_PER_M3
from planner.text import text, texts_of
from planner.version import __version__

COLUMNS = (Column("part", "", 14), Column("words", "", 111))


def method_page(study: Study, cautions: Sequence[str]) -> Page:
    """Build the page 'Method and cautions'.

    Parameters
    ----------
    study : Study
        The finished comparison.
    cautions : sequence of str
        What to beware of.
    """
    words = [(text(f"word.{key}"), text(f"meaning.{key}")) for key in texts_of("word.")]
    limits = [text(f"limit.{key}") for key in texts_of("limit.")]
    if study.scenario.priced:
        of_money = texts_of("word_of_money.")
        words += [(text(f"word_of_money.{key}"), text(f"meaning.{key}")) for key in of_money]
        limits += [text(f"limit_of_money.{key}") for key in texts_of("limit_of_money.")]
    blocks: tuple[Block, ...] = (
        Heading(text("method.cautions")),
        cautions_table(cautions),
        Heading(text("method.limits")),
        *map(Text, limits),
        Heading(text("method.method")),
        _pairs("method.method", list(_method(study))),
        Heading(text("method.words")),
        _pairs("method.words", words),
    )
    under = f"{text('method.under', version=__version__, seed=study.scenario.seed)} {text('decision.printing')}"
    return Page(
        "method", text("page.method"), text("page.method"), under, blocks, printed=3 + len(limits), upright=True
    )


def cautions_table(cautions: Sequence[str]) -> Table:
    """Number the cautions."""
    numbered = [(text("method.caution", number=number), each) for number, each in enumerate(cautions, start=1)]
    return _pairs("method.cautions", numbered)


def _pairs(key: str, pairs: Sequence[tuple[str, str]]) -> Table:
    rows = tuple(
        Row(place, {"part": Cell(left, "wrap", "strong"), "words": Cell(right, "wrap")})
        for place, (left, right) in enumerate(pairs)
    )
    return Table(key, COLUMNS, rows, header=False)


def _method(study: Study) -> Iterator[tuple[str, str]]:
    scenario = study.scenario
    yield text("method.weather"), _weather(study)
    if (solar := scenario.sources.solar) is not None:
        sky, glass = text(f"sky.{solar.sky_model}"), text(f"reflection.{solar.reflection}")
        yield text("method.array"), text("method.array_words", sky=sky, reflection=glass)
    friction = text(f"friction.{scenario.pipeline.friction}")
    yield text("method.borehole"), text("method.borehole_words", friction=friction)
    yield text("method.pump"), text(f"pump.{scenario.pump.kind}")
    yield text("method.loop"), text("method.loop_words")
    if scenario.sources.generator is not None:
        yield text("method.generator"), text("method.generator_words")
    if scenario.priced:
        yield text("method.sizes"), text("method.sizes_words")
        yield text("method.money"), text("method.money_words")
    else:
        weights = {"tank": TANK_KWP_PER_M3, "grid": GRID_KWP_PER_KWH_A_YEAR, "fuel": FUEL_KWP_PER_L_A_YEAR}
        yield text("method.sizes"), text("method.sizes_words_technical", **weights)


def _weather(study: Study) -> str:
    weather = study.scenario.weather
    if weather.kind == "file":
        return text("method.weather_file", source=study.weather.source)
    law = law_in_words(weather.daily_law, weather.clearness_maximum, study.place.latitude_deg)
    return text("method.weather_means", law=law)
