"""The way in from Python: the same answers as the commands, tables of pandas, nothing written unless asked for."""

from __future__ import annotations

import json
import runpy
import tomllib
from functools import cache
from pathlib import Path

import pytest
from typer.testing import CliRunner

import planner
from planner.api import Compared, Site
from planner.cli import app

SCENARIO = Path("scenarios/hill-school.toml")
SHORT = {"finance.analysis_period_years": 2, "service.options": ["solar", "grid", "solar + grid"]}


@cache
def site() -> Site:
    return planner.load(SCENARIO).with_values(SHORT)


@cache
def compared() -> Compared:
    return site().run()


def test_a_run_is_that_of_the_command(tmp_path: Path) -> None:
    book, data = compared().write(tmp_path, "school")
    ours = json.loads(data.read_text(encoding="utf-8"))
    assert book.exists()
    from planner.scenario.writer import toml_text

    file = tmp_path / "again.toml"
    file.write_text(toml_text(site().scenario.given("json")), encoding="utf-8")
    ran = CliRunner().invoke(app, ["run", str(file), "--outputs", str(tmp_path / "out"), "--quiet"])
    assert ran.exit_code == 0, ran.output
    assert json.loads((tmp_path / "out" / "again.json").read_text(encoding="utf-8")) == ours
    costs = {option["name"]: option["life_cycle_cost"] for option in ours["options"]}
    assert compared().options["life_cycle_cost"].to_dict() == costs
    assert compared().sentences == ours["sentences"]
    assert compared().best == ours["best"]


def test_nothing_is_written_unless_asked_for(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    data = tomllib.loads(SCENARIO.read_text(encoding="utf-8"))
    monkeypatch.chdir(tmp_path)
    study = planner.load(data).with_values(SHORT).run(quick=True)
    assert study.years.index.names == ["option", "year"]
    assert study.months.index.names == ["option", "year", "month"]
    assert len(study.hours("solar", 1)) == 8760
    assert set(study.checks["outcome"]) <= {"pass", "caution", "fail", "not given"}
    assert list(tmp_path.iterdir()) == []


def test_a_dictionary_and_its_file_are_the_same(tmp_path: Path) -> None:
    data = tomllib.loads(SCENARIO.read_text(encoding="utf-8"))
    assert planner.load(data, SCENARIO.parent).scenario == planner.load(SCENARIO).scenario


def test_a_form_is_loaded(tmp_path: Path) -> None:
    form = tmp_path / "site.xlsx"
    assert CliRunner().invoke(app, ["form", str(form), "--from", str(SCENARIO)]).exit_code == 0
    assert planner.load(form).scenario == planner.load(SCENARIO).scenario


def test_a_value_is_set_by_its_key_and_the_site_stays_as_it_was() -> None:
    more = site().with_values({"demand.users[1].count": 999})
    assert more.scenario.demand.users[0].count == 999
    assert site().scenario.demand.users[0].count != 999


def test_wrong_input_is_named() -> None:
    with pytest.raises(planner.InputError, match=r"borehole\.pump_depth_m.*must be greater than 0"):
        site().with_values({"borehole.pump_depth_m": -4})
    with pytest.raises(planner.InputError, match="no such file"):
        planner.load("nowhere.toml")


def test_checks_size_worth_and_sweep_give_tables() -> None:
    checks = site().check()
    assert "pass" in set(checks.checks["outcome"])
    assert checks.sentences
    small = site().with_values({"finance.analysis_period_years": 1, "size.strings": [1], "size.tanks_m3": [10, 20]})
    sized = small.size()
    assert sized.options.index.name == "option"
    assert sized.options["life_cycle_cost"].notna().all()
    assert {"tank_m3", "life_cycle_cost"} <= set(sized.trade_off.columns)
    worth = small.worth("grid")
    assert "grid" in worth.sentences[0]
    assert set(worth.options.index) == {"solar", "grid", "solar + grid"}
    assert "value" in worth.switching_values.columns
    key = "sources.grid.tariff.fixed_charge_per_month"
    swept = small.sweep({"grid": [{"key": key, "values": [1, 30]}]})
    assert set(swept.rows[key]) == {1, 30}
    by_price = swept.rows[swept.rows["option"] == "grid"].set_index(key)["life_cycle_cost"]
    assert by_price[30] > by_price[1] + 300


def test_the_worked_example_draws_its_picture(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    example = runpy.run_path("scenarios/from_python.py")
    picture = example["main"](tmp_path)
    assert picture.read_bytes().startswith(b"\x89PNG")
    assert "Months in which the sun alone leaves people short" in capsys.readouterr().out


def test_an_unknown_name_is_an_attribute_error() -> None:
    with pytest.raises(AttributeError, match="no attribute 'lode'"):
        planner.lode  # noqa: B018
