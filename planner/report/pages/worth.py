"""The report of `planner worth`: with and without a source, and where the answer turns."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from math import nan

from planner.figures import DAYS
from planner.report.document import (
    Axis,
    Block,
    Cell,
    Chart,
    Column,
    Heading,
    Page,
    Report,
    Row,
    Series,
    Span,
    Table,
)
from planner.report.document import Text as Words
from planner.report.pages.figure_cells import (
    COSTS,
    LEVELS,
    figure_cell,
    figure_column,
    figure_heading,
    figure_value,
    yes_no,
)
from planner.report.pages.next_step import next_step_page
from planner.report.pages.worth_map import has_several, map_page, map_slots, map_table, one_map_words
from planner.report.shown import NOTHING
from planner.study.worth import AGREE, OptionSummary, Switching, Worth
from planner.text import source_name, text

ANSWER_WIDTHS = (14.0,) * 8
WORDS_WIDTH = 28.0
OPTION_ROWS, SWITCHING_ROWS = 18, 16

SERVICE = ("demand_met_percent", "demand_met_worst_year_percent")
IN_TERMINAL = ("short_days_per_year", "longest_short_days", "demand_met_percent")


def option_figures(option: OptionSummary) -> dict[str, float]:
    """Figures of an option by their keys in the catalogue; NaN for what it does not have."""
    design = option.design
    start, stop = design.levels if design.has_switch else (nan, nan)
    return {
        "strings": float(design.strings),
        "modules": float(option.modules),
        "tank_m3": design.tank_m3,
        "start_level_percent": start,
        "stop_level_percent": stop,
        **dict(zip(DAYS, option.days, strict=True)),
        **{key: figure_value(option, key) for key in (*SERVICE, *COSTS)},
    }


def worth_report(worth: Worth, sentences: Sequence[str]) -> Report:
    """Build the report of a finished study.

    Parameters
    ----------
    worth : Worth
        The finished study.
    sentences : sequence of str
        The answer in words.
    """
    pages = [_answer(worth, sentences), _options_page(worth)]
    if _with_outcome(worth):
        pages.append(_switching_page(worth))
    if worth.map is not None and has_several(worth.map):
        pages.append(map_page(worth.map, worth.scenario.currency))
    pages.append(next_step_page(worth.next_steps, worth.scenario))
    return Report(worth.scenario.name, tuple(pages))


def worth_summary(worth: Worth, sentences: Sequence[str]) -> Iterator[Block]:
    """Give what the terminal shows of a study; what changes nothing is said in sentences."""
    slots = {"having": worth.with_best.name, "lacking": worth.without_best.name}
    if _with_outcome(worth):
        shown = ["input", "unit", "base", "words", "turns", *([] if worth.anew is None else ["anew_turns"])]
        yield replace(switching_table(worth).only(shown), heading=text("worth.switching_heading", **slots))
    yield from _in_words(worth)
    if worth.map is not None and has_several(worth.map):
        yield replace(map_table(worth.map), heading=text("worth.map_under", **map_slots(worth.map)))
    yield Words(text("caution.where_listed"), "note")
    heading = text("worth.options_heading", scenario=worth.scenario.name, source=source_name(worth.source))
    shown = ["option", "meets_target", *IN_TERMINAL, *COSTS[:-1], "saving"]
    yield replace(options_table(worth).only(shown), heading=heading)
    yield from map(Words, sentences)


def _answer(worth: Worth, sentences: Sequence[str]) -> Page:
    blocks: list[Block] = [
        Words(sentences[0], "verdict"),
        *map(Words, sentences[1:]),
        *_in_words(worth),
        Heading(text("studies.how_found")),
    ]
    blocks += map(Words, [text("worth.note_of_both", percent=f"{100 * AGREE:g}"), text("caution.where_listed")])
    title = text("worth.title", source=source_name(worth.source))
    under = text("worth.answer_under", scenario=worth.scenario.name, currency=worth.scenario.currency)
    return Page("worth.answer", text("studies.answer"), title, under, tuple(blocks), ANSWER_WIDTHS,
                one_page=True)  # fmt: skip


def _in_words(worth: Worth) -> Iterator[Block]:
    """What would be a table or a map of one outcome."""
    shown = [switching for switching, _ in _with_outcome(worth)]
    idle = [each for each in worth.switching if not each.changes and each not in shown]
    if idle:
        reasons = [(each.varied.label, switching_words(each)) for each in idle]
        inputs = [text("worth.with_reason", input=label, why=why) for label, why in reasons]
        yield Words(text("worth.without_effect", inputs="; ".join(inputs)))
    if worth.map is not None and not has_several(worth.map):
        yield Words(one_map_words(worth.map))


def options_table(worth: Worth) -> Table:
    """Every option, best first, and what adding the source to it saves."""
    currency, source = worth.scenario.currency, source_name(worth.source)
    figures = (*DAYS, *SERVICE, "strings", "tank_m3", *LEVELS, *COSTS)
    columns = (
        Column("option", text("worth.option"), 24.0),
        Column("has_source", text("worth.has_source", source=source)),
        Column("meets_target", text("studies.meets_target")),
        *(figure_column(key, currency) for key in figures),
        Column("saving", text("worth.saving", source=source, currency=currency)),
    )
    savings = {pair.without.name: pair.saving for pair in worth.pairs}
    rows = []
    for option in worth.options:
        has_it = worth.source in option.design.sources
        word = text("worth.has_it") if has_it else NOTHING
        values = option_figures(option)
        cells = {
            "option": Cell(option.name),
            "has_source": yes_no(has_it),
            "meets_target": yes_no(option.meets_service),
            **{key: figure_cell(key, values[key]) for key in figures},
            "saving": Cell(savings.get(option.name, nan), "money", word=word),
        }
        rows.append(Row(option.name, cells, "best" if option in (worth.with_best, worth.without_best) else "plain"))
    return Table("worth.options", columns, tuple(rows), freeze=1)


def _options_page(worth: Worth) -> Page:
    table, source = options_table(worth), source_name(worth.source)
    first, last = worth.options[0].name, worth.options[-1].name
    cost = figure_heading("life_cycle_cost", worth.scenario.currency)
    chart = Chart(
        "worth.options_chart",
        "stacked bars",
        text("worth.options_chart", source=source),
        text("worth.options_alt", source=source, options=", ".join(option.name for option in worth.options)),
        (
            Series(
                cost,
                Span(table.key, first, "option", last),
                Span(table.key, first, "life_cycle_cost", last),
                "dark",
                tuple("dark" if worth.source in option.design.sources else "light" for option in worth.options),
            ),
        ),
        Axis(kind="text"),
        Axis(cost),
        rows=OPTION_ROWS,
    )
    under = text("worth.options_under", source=source)
    return Page(table.key, text("worth.options"), text("worth.options"), under, (table, chart), one_page=True)


def switching_words(switching: Switching) -> str:
    """Say what came of one input's switching value."""
    varied = switching.varied
    if varied.without_effect:
        return varied.without_effect
    if varied.kind == "service" and not switching.changes:
        return text("worth.cost_unchanged")
    if not switching.changes:
        return text("worth.alike")
    if switching.value is None:
        low, high, beyond = varied.with_unit(varied.low), varied.with_unit(varied.high), switching.beyond
        if beyond is not None and beyond > varied.high:
            return text("worth.none_beyond", low=low, high=high, beyond=varied.with_unit(beyond))
        return text("worth.none", low=low, high=high)
    value = varied.with_unit(switching.value)
    if not switching.agrees:
        return text("worth.jump", value=value)
    return value if switching.serve_there else text("worth.no_longer_serves", value=value)


def turn_words(switching: Switching) -> str:
    """Say where the answer turns with one input."""
    turns = [
        text(
            "worth.turn",
            value=switching.varied.with_unit(turn.value),
            best=turn.best if turn.meets else text("worth.none_serves"),
        )
        for turn in switching.turns
    ]
    return "; ".join(turns) if turns else text("worth.nowhere")


def _with_outcome(worth: Worth) -> list[tuple[Switching, Switching | None]]:
    """Inputs with which something turns: with the works as built, and chosen anew (None where nothing is open)."""
    anew = worth.anew or [None] * len(worth.switching)
    pairs = zip(worth.switching, anew, strict=True)
    return [pair for pair in pairs if any(each is not None and _does(each) for each in pair)]


def _does(switching: Switching) -> bool:
    """Whether costs meet or the answer turns within the range."""
    return switching.value is not None or bool(switching.turns)


def switching_table(worth: Worth) -> Table:
    """Where the best option with the source and the best without cost the same, and where the answer turns.

    Inputs with which nothing does are left out: the answer says them in a sentence.
    """
    columns = [Column(key, text(f"worth.{key}")) for key in ("input", "unit", "base", "value", "change_percent")]
    columns += [Column(key, text(f"worth.{key}_as_built"), WORDS_WIDTH) for key in ("words", "turns")]
    if worth.anew is not None:
        columns += [Column(f"anew_{key}", text(f"worth.{key}_anew"), WORDS_WIDTH) for key in ("words", "turns")]
    columns.append(Column("key", text("worth.key"), WORDS_WIDTH))
    rows = tuple(_switching_row(*each) for each in _with_outcome(worth))
    return Table("worth.switching", tuple(columns), rows, freeze=1)


def _switching_row(switching: Switching, anew: Switching | None) -> Row:
    varied, value = switching.varied, switching.value
    cells = {
        "input": Cell(varied.label),
        "unit": Cell(varied.unit),
        "base": Cell(varied.base, "general"),
        "value": Cell(value, "two"),
        "change_percent": Cell(_change_percent(switching), "one"),
        "words": Cell(switching_words(switching), "wrap"),
        "turns": Cell(turn_words(switching), "wrap"),
        "key": Cell(varied.key),
    }
    if anew is not None:
        cells |= {"anew_words": Cell(switching_words(anew), "wrap"), "anew_turns": Cell(turn_words(anew), "wrap")}
    return Row(varied.name, cells)


def _change_percent(switching: Switching) -> float | None:
    value, base = switching.value, switching.varied.base
    return None if value is None or base == 0 else 100 * (value / base - 1)


def _switching_page(worth: Worth) -> Page:
    table = switching_table(worth)
    slots = {"having": worth.with_best.name, "lacking": worth.without_best.name}
    blocks: list[Block] = [table]
    shown = [switching for switching, _ in _with_outcome(worth)]
    if any(_change_percent(switching) is not None for switching in shown):
        first, last = shown[0].varied.name, shown[-1].varied.name
        x, y = (Span(table.key, first, column, last) for column in ("input", "change_percent"))
        series = (Series(text("worth.change_percent"), x, y, "dark"),)
        alt = text("worth.switching_alt", **slots)
        axes = Axis(kind="text"), Axis(text("worth.change_axis"))
        blocks.append(Chart("worth.switching_chart", "stacked bars", text("worth.switching_chart"), alt, series, *axes,
                            rows=SWITCHING_ROWS))  # fmt: skip
    under = text("worth.switching_under", **slots)
    return Page(table.key, text("worth.switching"), text("worth.switching"), under, tuple(blocks), one_page=True)
