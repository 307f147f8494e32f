"""What has no price makes a total incomplete, wherever the total is shown. Place, pump and prices are invented."""

from __future__ import annotations

import json
from collections.abc import Iterable
from pathlib import Path

import openpyxl
import pytest
from typer.testing import CliRunner

from planner.answers.cautions import cautions
from planner.cli import app
from planner.money.quantities import Thing, unpriced
from planner.scenario.writer import toml_text
from planner.sources.registry import GENERATOR, GRID, SOLAR, SOURCES
from tests.study.scenarios import changed, changed_raw, studied

QUICK = {
    "finance__analysis_period_years": 1,
    "tank__volume_m3": 30.0,
    "sources__solar__strings": 2,
    "service__options": ["grid", "solar + grid"],
}


def labels(things: Iterable[Thing]) -> list[str]:
    return [thing.label() for thing in things]


def test_what_has_no_price_is_named_for_the_option_that_needs_it() -> None:
    bare = changed(
        borehole__price=None, sources__grid__price=None, sources__grid__line_price_per_m=None,
        sources__solar__structure_price_per_module=None, sources__generator__service_price=None,
        sources__generator__overhaul_price=None,
    )  # fmt: skip
    assert labels(unpriced(bare, (GRID,))) == ["Borehole", "Connection", "Line to the pump"]
    assert labels(unpriced(bare, (SOLAR,))) == ["Borehole", "Stand, wiring and fixing"]
    assert labels(unpriced(bare, (GENERATOR,))) == ["Borehole", "Services of the generator"]
    overhauled = labels(unpriced(bare, (GENERATOR,), 10_000.0))
    assert overhauled == ["Borehole", "Services of the generator", "Overhauls of the generator"]
    assert unpriced(changed(), SOURCES, 1e6) == ()


def test_a_price_entered_as_nothing_is_a_price_and_no_line_needs_none() -> None:
    paid = changed(borehole__price=0.0, sources__grid__line_length_m=0.0, sources__grid__line_price_per_m=None)
    assert unpriced(paid, (GRID,)) == ()


def test_what_has_no_price_is_not_said_to_be_paid_for() -> None:
    said = " ".join(cautions(studied(**(QUICK | {"service__options": ["generator"]}), sources__generator__price=None)))
    assert "No price was entered for: Generator;" in said
    assert "paid for" not in said
    paid = " ".join(cautions(studied(**(QUICK | {"service__options": ["generator"]}), sources__generator__price=0.0)))
    assert "Counted as there and paid for, a price of 0 being entered: Generator, 7.5 kW." in paid
    assert "No price was entered" not in paid


@pytest.fixture(scope="module")
def bare(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("bare")
    raw = changed_raw(**QUICK, borehole__price=None, pump__price=None)
    (folder / "bare.toml").write_text(toml_text(raw), encoding="utf-8")
    return folder / "bare.toml"


def said_by(file: Path, *command: str) -> tuple[str, Path]:
    out = file.parent / command[0]
    ran = CliRunner().invoke(app, [command[0], str(file), *command[1:], "--outputs", str(out)])
    assert ran.exit_code == 0, ran.output
    return " ".join(ran.stdout.split()), out


def test_run_calls_the_total_incomplete_in_terminal_json_and_first_sheet(bare: Path) -> None:
    text, out = said_by(bare, "run")
    missing = "no price was entered for: Borehole, Invented submersible"
    assert f"Its total is incomplete, as {missing}" in text
    assert "capital cost" not in text.split("Of the options")[1]
    assert "* incomplete: no price was entered for Borehole, Invented submersible" in text
    data = json.loads((out / "bare.json").read_text(encoding="utf-8"))
    assert data["headline"].endswith("its total is incomplete")
    assert {tuple(option["unpriced"]) for option in data["options"]} == {("Borehole", "Invented submersible")}
    assert any(missing in sentence for sentence in data["sentences"])
    sheet = openpyxl.load_workbook(out / "bare.xlsx", data_only=True)["Answer"]
    cells = [str(cell.value) for row in sheet.iter_rows() for cell in row if cell.value is not None]
    assert any(cell.startswith(f"! Recommended on the conditions below: {data['best']}") for cell in cells)
    assert {"Capital cost, incomplete (USD)", "Life-cycle cost, incomplete (USD)", "To build it, at least"} <= set(
        cells
    )
    named = "no price was entered for: Borehole and Invented submersible."
    assert f"The sums are incomplete, as {named}" in cells


def test_size_and_worth_call_it_incomplete_too(bare: Path) -> None:
    size = bare.parent / "size.toml"
    table = "\n[size]\nstrings = [2]\ntanks_m3 = [30.0]\nlevels_percent = [[20.0, 30.0]]\n"
    size.write_text(bare.read_text(encoding="utf-8") + table, encoding="utf-8")
    assert "Its total is incomplete, as no price was entered for: Borehole" in said_by(size, "size")[0]
    assert (
        "No price was entered for what both need (Borehole, Invented submersible)" in said_by(bare, "worth", "solar")[0]
    )


@pytest.mark.parametrize(("saves", "can_be_said"), [(True, False), pytest.param(False, True, marks=pytest.mark.slow)])
def test_worth_does_not_decide_where_a_missing_price_could_turn_it(
    saves: bool, can_be_said: bool, tmp_path: Path
) -> None:
    """The connection has no price: it can undo what the grid seems to save, and only add to what it costs more."""
    changes = {
        "sources__grid__price": None,
        "sources__grid__tariff__price_per_kwh": 0.01 if saves else 3.0,
        "service__options": ["generator", "grid + generator" if saves else "grid"],
    }
    raw = changed_raw(**(QUICK | changes))
    (tmp_path / "site.toml").write_text(toml_text(raw), encoding="utf-8")
    said, out = said_by(tmp_path / "site.toml", "worth", "grid")
    data = json.loads((out / "site-worth-grid.json").read_text(encoding="utf-8"))
    assert (data["saving_present"] > 0) == saves
    assert data["sentences"][0].startswith("It cannot be said yet") != can_be_said
    assert "Yes" not in data["sentences"][0]
    assert ("No, the grid is not worth having" in said) == can_be_said
