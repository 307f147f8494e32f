"""What a run says on the screen, and in what order. Places and prices are invented."""

from __future__ import annotations

import io
import re
from dataclasses import replace

import pytest

from planner.answers.cautions import dangers, warnings
from planner.answers.days import days_words
from planner.answers.of_study import answer, study_verdicts
from planner.answers.programme import programme_sentences
from planner.checks.verdict import Verdict
from planner.figures import DAYS, figure
from planner.report.console import LiteralConsole
from planner.report.terminal import Answer, named_summary, run_report
from planner.report.terminal_comparison import comparison_summary
from planner.report.terminal_options import days_table, options_table
from planner.study.compare import Study
from tests.report.terminal import on_terminal
from tests.study.scenarios import studied

WIDTH = 100


@pytest.fixture(scope="module")
def study() -> Study:
    return studied(finance__analysis_period_years=2, sources__solar__strings=1, tank__volume_m3=20.0)


def screen(study: Study, *, verbose: bool = False) -> list[str]:
    verdicts = study_verdicts(study)
    said = Answer((), answer(study, verdicts), (), (), verdicts, (), warnings(study, set(), full=verbose))
    stream = io.StringIO()
    LiteralConsole(file=stream, width=WIDTH, markup=False, emoji=False).print(run_report(study, said, verbose=verbose))
    return stream.getvalue().splitlines()


def test_the_answer_ends_the_screen_and_dangers_stand_before_it(study: Study) -> None:
    shown = " ".join(" ".join(screen(study)).split())
    said = answer(study, study_verdicts(study))
    order = [shown.index(part) for part in ("Site checks:", "! What kills here:", "Short", said[0], said[-1])]
    assert order == sorted(order)
    assert shown.endswith(said[-1])
    assert shown.count("Local codes and licensed practice come first") == 1
    assert len(screen(study)) <= 50


def test_days_without_water_stand_before_the_percentages(study: Study) -> None:
    keys = [column.key for column in options_table(study).columns]
    assert keys.index("short_days_per_year") < keys.index("longest_short_days") < keys.index("demand_met_percent")
    assert max(map(len, screen(study))) <= WIDTH
    first = study.ranked[0]
    assert days_words(first) in " ".join(" ".join(screen(study)).split())
    days = on_terminal([days_table(study)])
    for option in study.ranked:
        short, _, _, longest, litres = (float(figure(key).read(option)) for key in DAYS)
        line = next(line for line in days.splitlines() if re.match(rf" {re.escape(option.name)}  ", line))
        assert f"{short:.1f}" in line
        assert f" {longest:.0f} " in line
        assert (f"{litres:,.0f}" if longest else "–") in line
    assert "Missing" in " ".join(screen(study, verbose=True))


def test_what_no_option_has_is_no_column() -> None:
    sunny = studied(
        finance__analysis_period_years=1, sources__solar__strings=2, tank__volume_m3=20.0, service__options=["solar"]
    )
    keys = {column.key for column in options_table(sunny).columns}
    assert not keys & {"grid_kwh_per_year", "fuel_l_per_year"}
    assert "array_kwp" in keys


def test_checks_with_caution_are_named_and_those_not_given_counted() -> None:
    def found(key: str, outcome: str) -> Verdict:
        return Verdict("head", key, "long comparison", outcome, None, None, "", "", "", "", "")  # type: ignore[arg-type]

    verdicts = [found("velocity", "caution"), found("surge", "pass"), found("screen", "not given")]
    assert named_summary(verdicts) == "1 with caution (velocity in the pipe), 1 not given, 1 passed"
    many = [found(key, "caution") for key in ("velocity", "surge", "screen", "lift", "frame")]
    assert named_summary(many).endswith("head before any water flows; ...)")


def test_dangers_are_those_of_the_sources_built_and_each_is_named_once_a_call(study: Study) -> None:
    said: set[str] = set()
    (line,) = warnings(study, said, full=False)
    assert all(danger in line for danger in ("exhaust of the generator", "grid electricity", "untested water"))
    assert warnings(study, said, full=False) == []
    assert "exhaust of the generator" not in dangers([source for source in study.sources if source != "generator"])
    full = warnings(study, set(), full=True)
    assert len(full) > 15
    assert full[-1] == "Local codes and licensed practice come first."


def test_several_sites_end_with_their_sums(study: Study) -> None:
    other = replace(study, scenario=study.scenario.model_copy(update={"name": "The second"}))
    shown = " ".join(on_terminal(comparison_summary([study, other]), WIDTH).split())
    capital, grant = (2 * float(figure(key).read(study.ranked[0])) for key in ("capital_cost", "grant"))
    people = 2 * study.scenario.people
    assert f"capital cost USD {round(capital, -2):,.0f}" in shown
    assert f"{people:,.0f} people" in shown
    assert f"USD {capital / people:,.0f} each, of which grants pay USD {grant / people:,.0f}" in shown
    assert "The second" in shown
    assert shown.endswith(programme_sentences([study, other])[-1])
