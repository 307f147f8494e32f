"""The page 'Checks': verdicts on the site, pressure along the route where its profile was given, and the plate."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np

from planner.answers.of_study import study_basis
from planner.checks.finding import finding
from planner.checks.plate import plate_lines
from planner.checks.verdict import SYMBOL, Verdict, worst_first
from planner.report.checks_table import figure, plate_table, summary
from planner.report.document import Axis, Block, Cell, Chart, Column, Page, Row, Series, Span, Table, Text
from planner.study.compare import Study
from planner.text import listed, text
from planner.water.route import RouteProfile, route_profile

CHECKS, OTHERS, ROUTE = "checks", "checks.others", "checks.route"
WIDTHS = {
    "verdict": 12, "topic": 13, "compared": 23, "value": 12, "limit": 12, "margin": 14, "why": 29, "remedy": 32,
    "source": 18,
}  # fmt: skip
_LINES = ("ground", "duty_line", "shut_off_line", "allowed_line")


def checks_page(study: Study, verdicts: Sequence[Verdict], remedied: Sequence[str] = ()) -> Page:
    """Build the page 'Checks'.

    Parameters
    ----------
    study : Study
        The finished comparison.
    verdicts : sequence of Verdict
        What the site checks found.
    remedied : sequence of str
        What there is to say of the answer with the remedies.
    """
    profile, basis = route_profile(study.scenario), study_basis(study)
    worst = [verdict for verdict in verdicts if verdict.outcome in ("fail", "caution")]
    others = [verdict for verdict in verdicts if verdict.outcome not in ("fail", "caution")]
    printed: list[Block] = [Text(sentence) for sentence in (*finding(basis, verdicts), *remedied)]
    printed += [checks_table(worst)] if worst else []
    printed += [Text(text(f"checks.{key}", names=listed(names))) for key, names in _names(others).items() if names]
    blocks = (
        *printed,
        *([checks_table(others, OTHERS)] if others else []),
        *([] if profile is None else _route(profile)),
        plate_table(plate_lines(basis, verdicts)),
    )
    under = text("checks.under", summary=summary(verdicts))
    return Page("checks", text("page.checks"), text("checks.title"), under, blocks, printed=len(printed))


def _names(verdicts: Sequence[Verdict]) -> dict[str, list[str]]:
    """What was not given and what passed, in a few words each."""
    outcomes = {"names_not_given": "not given", "names_passed": "pass"}
    return {
        key: list(dict.fromkeys(verdict.what for verdict in verdicts if verdict.outcome == outcome))
        for key, outcome in outcomes.items()
    }


def checks_table(verdicts: Sequence[Verdict], key: str = CHECKS) -> Table:
    """Lay verdicts out, the worst first."""
    rows = []
    for number, verdict in enumerate(worst_first(verdicts)):
        texts = {
            "topic": verdict.topic_label,
            "compared": verdict.compared,
            "value": figure(verdict.value, verdict.unit),
            "limit": figure(verdict.limit, verdict.unit),
            "margin": verdict.margin,
            "why": verdict.why,
            "remedy": verdict.remedy,
            "source": verdict.source,
        }
        cells = {"verdict": Cell(f"{SYMBOL[verdict.outcome]} {text(f'checks.{verdict.outcome}')}")}
        cells |= {key: Cell(words, "wrap") for key, words in texts.items()}
        rows.append(Row(number, cells, "strong" if verdict.outcome == "fail" else "plain"))
    columns = tuple(Column(key, text(f"checks.{key}"), width) for key, width in WIDTHS.items())
    return Table(key, columns, tuple(rows), freeze=1 if key == CHECKS else None)


def _route(profile: RouteProfile) -> Iterator[Block]:
    columns = (profile.ground_m, profile.duty_line_m, profile.shut_off_line_m, profile.allowed_line_m)
    lines = dict(zip(_LINES, columns, strict=True))
    unknown, last = text("checks.not_known"), len(profile.chainage_m) - 1
    rows = tuple(
        Row(place, {
            "chainage": Cell(float(chainage), "one"),
            **{key: Cell(float(values[place]), "one", word=unknown) for key, values in lines.items()},
        })
        for place, chainage in enumerate(profile.chainage_m)
    )  # fmt: skip
    headings = tuple(Column(key, text("checks.in_metres", name=text(f"checks.{key}"))) for key in ("chainage", *_LINES))
    yield Table(ROUTE, headings, rows, heading=text("checks.route"))
    yield Chart(
        "checks.chart",
        "lines",
        text("checks.route"),
        text("checks.chart_alt"),
        tuple(
            Series(
                text(f"checks.{key}"),
                Span(ROUTE, 0, "chainage", last),
                Span(ROUTE, 0, key, last),
                f"plain line {place}",
            )
            for place, (key, values) in enumerate(lines.items())
            if np.isfinite(values).all()
        ),
        Axis(text("checks.chainage_axis"), low=0),
        Axis(text("checks.level_axis")),
    )
