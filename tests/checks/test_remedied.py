"""What `planner run` says of the remedies: their cost is that of a study of the site that has them."""

from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import openpyxl
import pytest
from typer.testing import CliRunner

from planner.answers import remedied as module
from planner.answers.of_study import study_verdicts
from planner.answers.remedied import Remedied, remedied, remedied_sentences
from planner.assumptions.own_keys import own_keys
from planner.checks.verdict import Verdict, failed
from planner.cli import app
from planner.scenario.writer import toml_text
from planner.study.compare import Study, study_scenario
from planner.study.words import money
from tests.checks.test_remedies_tried import faulty_sites, judged_in_the_full_sites_weather
from tests.study.scenarios import EXAMPLES, changed_raw, studied

SHORT: dict[str, Any] = {"finance__analysis_period_years": 2, "service__options": ["solar", "solar + grid"]}
# four strings where the controller takes the current of one, and a thin AC cable
FAULTS: dict[str, Any] = SHORT | {
    "sources__grid__voltage_v": 230,
    "sources__grid__phases": 1,
    "sources__solar__strings": 4,
    "controller__dc_current_max_a": 20,
    "cables": {"ac": {"length_m": 200, "section_mm2": 1.5}},
}
MENDED: dict[str, Any] = FAULTS | {"sources__solar__strings": 1}


def found(**changes: Any) -> tuple[Study, Sequence[Verdict], Remedied | None]:
    study = studied(**changes)
    verdicts = study_verdicts(study)
    return study, verdicts, remedied(study, verdicts, EXAMPLES)


def test_nothing_is_run_where_no_check_fails(monkeypatch: pytest.MonkeyPatch) -> None:
    study = studied(**SHORT)
    verdicts = study_verdicts(study)
    assert not failed(verdicts)

    def refuse(*_: object) -> None:
        raise AssertionError("run again")

    monkeypatch.setattr(module, "study_scenario", refuse)
    assert remedied(study, verdicts, EXAMPLES) is None
    assert remedied_sentences(None) == []


def test_the_cost_is_that_of_the_site_with_its_remedies() -> None:
    study, verdicts, said = found(**FAULTS)
    assert {verdict.key for verdict in failed(verdicts)} >= {"array_current", "ac_cable_drop"}
    assert said is not None
    section = said.carried.changes["cables", "ac", "section_mm2"]
    assert section > 1.5
    own = studied(**MENDED | {"cables": {"ac": {"length_m": 200, "section_mm2": section}}})
    assert not failed(study_verdicts(own))
    assert said.option.name == own.ranked[0].name
    assert float(said.option.life.present_cost) == float(own.ranked[0].life.present_cost)
    gap = float(own.ranked[0].life.present_cost - study.ranked[0].life.present_cost)
    assert said.further_cost == pytest.approx(gap)
    assert not said.failing
    first, second = remedied_sentences(said)
    way = "more" if gap > 0 else "less"
    assert first.startswith(f"With the remedies (1 string(s), AC cable of {section:g} mm2) {own.ranked[0].name} costs ")
    assert f"{money(abs(gap), 'USD')} {way} over the analysis period" in first
    assert first.endswith(f"meets {100 * own.ranked[0].delivered_share:.1f} % of the water, and no check fails.")
    # strings are priced by their number; a cable has no price
    assert second.endswith(f"adds to them: AC cable of {section:g} mm2.")


def test_things_without_a_price_are_named_beside_the_cost() -> None:
    _, _, said = found(**FAULTS | {"cables": None, "controller__price": None})
    assert said is not None
    assert remedied_sentences(said)[1].endswith("adds to them: Controller.")


def test_a_check_without_a_computed_remedy_is_named() -> None:
    _, _, said = found(**SHORT | {"borehole__safe_yield_m3h": 3.0})
    assert said is not None
    assert said.before is said.after
    assert remedied_sentences(said) == [
        "The remedies of what fails cannot be computed, so what they cost is not known: flow of the pump against the "
        "safe yield."
    ]
    _, _, both = found(**FAULTS | {"borehole__safe_yield_m3h": 3.0})
    assert both is not None
    assert "and one check still fails (flow of the pump against the safe yield)." in remedied_sentences(both)[0]


def test_remedies_that_an_override_undoes_do_not_go_round_in_circles(monkeypatch: pytest.MonkeyPatch) -> None:
    runs: list[object] = []

    def counted(*arguments: Any) -> Study:
        runs.append(arguments)
        return study_scenario(*arguments)

    monkeypatch.setattr(module, "study_scenario", counted)
    same = {"sources": {"solar": {"strings": 4}}}
    _, _, said = found(**FAULTS | {"overrides": {"solar": same, "solar + grid": same}})
    assert said is not None
    assert len(runs) == 1
    assert len({verdict.key for verdict in said.carried.remedied}) == len(said.carried.remedied)


def test_a_design_left_open_keeps_to_what_passes_before_its_remedies() -> None:
    open_design = FAULTS | {"sources__solar__strings": "auto", "sources__solar__strings_max": 4}
    study, _, said = found(**open_design)
    assert said is not None
    assert (study.ranked[0].strings, said.option.strings) == (1, 1)
    assert not said.failing
    assert said.further_cost == 0  # what is left to remedy is a cable, which is not in the bill


def test_workbook_json_and_terminal_say_it(tmp_path: Path) -> None:
    file, out = tmp_path / "faulty.toml", tmp_path / "out"
    file.write_text(toml_text(changed_raw(**FAULTS)), encoding="utf-8")
    ran = CliRunner().invoke(app, ["run", str(file), "--outputs", str(out), "--brief", "--quick"])
    assert ran.exit_code == 0, ran.output
    data = json.loads((out / "faulty.json").read_text(encoding="utf-8"))
    sentences = data["remedied"]["sentences"]
    assert sentences[0].startswith("With the remedies (1 string(s), ")
    assert data["remedied"]["changes"]["sources.solar.strings"] == 1
    assert data["remedied"]["failing"] == []
    first = next(option for option in data["options"] if option["name"] == data["ranking"][0])
    gap = data["remedied"]["life_cycle_cost"] - first["life_cycle_cost"]
    assert data["remedied"]["further_life_cycle_cost"] == pytest.approx(gap)
    cells = {cell for row in openpyxl.load_workbook(out / "faulty.xlsx")["Checks"].values for cell in row}
    printed = " ".join(ran.stdout.split())
    page = (out / "faulty.html").read_text(encoding="utf-8")
    for sentence in sentences:
        assert sentence in cells
        assert sentence in printed
        assert sentence in page

    file.write_text(toml_text(changed_raw(**SHORT)), encoding="utf-8")
    ran = CliRunner().invoke(app, ["run", str(file), "--outputs", str(out), "--quick"])
    assert json.loads((out / "faulty.json").read_text(encoding="utf-8"))["remedied"] is None
    assert "With the remedies" not in ran.stdout


@pytest.mark.slow
def test_every_change_of_a_remedy_has_words_or_follows_from_one_that_has() -> None:
    follow = {"ampacity_a", "pressure_class_bar", "rise_to_tank_inlet_m"}
    for changes, scenario in faulty_sites():
        for verdict in judged_in_the_full_sites_weather(scenario):
            own = own_keys(scenario, verdict.changes)
            wordless = [path for path, value in own.items() if value is not None and not module.items_of({path: value})]
            length = ("pipeline", "segments", 0, "length_m")
            assert not [path for path in wordless if path[-1] not in follow and path != length], (changes, wordless)
