"""The site checks in words: the first finding, the plate line by line, and each verdict with its remedy."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from pathlib import Path

from planner.checks.plate import PlateLine
from planner.checks.remedies import CarriedOut
from planner.checks.verdict import ORDER, SYMBOL, Verdict, failed, worst_first
from planner.report.document import Block, Cell, Column, Heading, Row, Table, Text
from planner.text import model_words, number, text

PLATE = "checks.plate"
PLATE_WIDTHS = {"symbol": 12, "printed": 14, "meaning": 26, "asks": 24, "holds": 12}


def summary(verdicts: Sequence[Verdict]) -> str:
    """Count the verdicts in words, such as '2 failed, 3 with caution, 4 not given, 31 passed'."""
    counts = Counter(verdict.outcome for verdict in verdicts)
    return ", ".join(text(f"check.count_{key}", count=counts[key]) for key in ORDER if counts[key])


def figure(value: float | str | None, unit: str) -> str:
    """Write a compared figure with its unit, a number to four significant figures."""
    if value is None:
        return "-"
    if isinstance(value, str):
        return value
    shown = number(value, ",.0f" if abs(value) >= 1000 else ".4g")
    return f"{shown} {model_words(unit)}".strip()


def plate_table(lines: Sequence[PlateLine]) -> Table:
    """Lay the nameplate out, to be held beside it: what is printed, what it means, what the site asks, if it holds."""
    rows = []
    for line in lines:
        words = {"symbol": line.symbol, "printed": line.printed, "meaning": line.meaning, "asks": line.asks}
        cells = {key: Cell(said, "wrap") for key, said in words.items()}
        here = text("plate.holds.open")
        if line.outcome is not None:
            here = f"{SYMBOL[line.outcome]} {text(f'plate.holds.{line.outcome}')}"
        rows.append(Row(line.key, cells | {"holds": Cell(here)}, "strong" if line.outcome == "fail" else "plain"))
    columns = tuple(Column(key, text(f"plate.column.{key}"), width) for key, width in PLATE_WIDTHS.items())
    return Table(PLATE, columns, tuple(rows), heading=text("plate.heading"))


def check_summary(
    name: str, found: Sequence[str], lines: Sequence[PlateLine], verdicts: Sequence[Verdict],
    beware: Sequence[str] = (), *, verbose: bool,
) -> Iterator[Block]:  # fmt: skip
    """Show the plate, every verdict that does not pass, with why and its remedy, and last the count and the finding.

    Checks that could not be made are counted in one line; `verbose` shows them, and the passed ones too. `beware` is
    what else there is to know before the finding is trusted.
    """
    yield Heading(text("check.title", scenario=name))
    yield plate_table(lines)
    for verdict in worst_first(verdicts):
        if verdict.outcome in ("pass", "not given") and not verbose:
            continue
        slots = {
            "outcome": text(f"check.{verdict.outcome}"),
            "topic": verdict.topic_label,
            "compared": verdict.compared,
        }
        yield Heading(text("check.head", symbol=SYMBOL[verdict.outcome], **slots))
        yield from (Text(line, "note") for line in _lines(verdict))
    open_count = sum(verdict.outcome == "not given" for verdict in verdicts)
    if open_count and not verbose:
        yield Text(text("check.open_one" if open_count == 1 else "check.open_many", count=open_count))
    listed = text("caution.where_listed")
    yield Text(listed if verbose else f"{text('check.more')} {listed}")
    yield from map(Text, beware)
    yield Text(summary(verdicts))
    for place, sentence in enumerate(found):
        yield Text(sentence, "verdict" if place == 0 else "paragraph")


def carried_out_blocks(carried: CarriedOut, after: Sequence[Verdict], out: Path, *, kept: bool) -> Iterator[Block]:
    """Tell which remedies were carried out, what they do not cover, what is left to do, and where it is written.

    Parameters
    ----------
    carried : CarriedOut
        The remedies.
    after : sequence of Verdict
        What the checks say of the file written.
    out : pathlib.Path
        The file.
    kept : bool
        Whether it has the comments and the order of the one that it was made from.
    """
    yield Heading(text("apply.heading"))
    left = failed(after)
    if not carried.remedied:
        yield Text(text("apply.none_computed" if left else "apply.none"))
    for key, verdicts in (("apply.one", carried.remedied), ("apply.left", left)):
        for verdict in verdicts:
            topic = text(f"topic_inside.{verdict.topic}")
            yield Text(text(key, topic=topic, what=verdict.what, remedy=verdict.remedy), "note")
    if carried.remedied:
        yield Text(text("apply.nothing_installed"))
    if not kept:
        yield Text(text("apply.comments_lost"))
    wrote = "apply.wrote_clean" if not left else "apply.wrote_one_fails" if len(left) == 1 else "apply.wrote_fail"
    yield Text(text(wrote, file=out, count=len(left)), "verdict")


def _lines(verdict: Verdict) -> Iterator[str]:
    if verdict.value is not None or verdict.limit is not None:
        slots = {"value": figure(verdict.value, verdict.unit), "limit": figure(verdict.limit, verdict.unit)}
        key = "check.against_with_margin" if verdict.margin else "check.against"
        yield text(key, margin=verdict.margin, **slots)
    yield verdict.why
    if verdict.remedy:
        remedy = verdict.remedy
        sought = remedy[:1].upper() + remedy[1:]
        yield sought if verdict.outcome == "not given" else text("check.remedy", remedy=remedy)
    yield text("check.source", source=verdict.source)
