"""Scenarios that share prices and finance through a file of their own."""

from __future__ import annotations

from pathlib import Path

import pytest

from planner.assumptions.reader import read_scenario
from planner.scenario.errors import InputError
from planner.scenario.reader import read_raw

VISIT = Path("scenarios/visit.toml").read_text(encoding="utf-8")
PRICES = """currency = "KES"

[prices]
pump = 1500
tank_per_m3 = 150

[finance]
discount_rate_percent = 8
"""


def write(folder: Path, **files: str) -> Path:
    for name, text in files.items():
        (folder / f"{name}.toml").write_text(text, encoding="utf-8")
    return folder / "site.toml"


def site(include: str, more: str = "") -> str:
    return f"include = {include}\n{VISIT}{more}"


def lines(file: Path) -> list[str]:
    with pytest.raises(InputError) as error:
        read_scenario(file)
    return list(error.value.lines())


def test_tables_are_merged_under_the_files_own_values(tmp_path: Path) -> None:
    file = write(tmp_path, prices=PRICES, site=site('"prices.toml"', "\n[prices]\npump = 1100\n"))
    scenario = read_scenario(file)
    assert (scenario.currency, scenario.pump.price, scenario.finance.discount_rate_percent) == ("KES", 1100, 8)
    assert scenario.tank.sizes[0].price == 300
    assert "include" not in read_raw(file)


def test_the_earlier_of_several_files_wins_and_files_may_include_others(tmp_path: Path) -> None:
    file = write(
        tmp_path,
        base='currency = "USD"\n[finance]\ngrant_percent = 50\n',
        local='include = ["base.toml"]\n[prices]\npump = 900\n',
        prices=PRICES,
        site=site('["local.toml", "prices.toml"]'),
    )
    scenario = read_scenario(file)
    assert (scenario.currency, scenario.pump.price) == ("USD", 900)
    assert (scenario.finance.grant_percent, scenario.finance.discount_rate_percent) == (50, 8)


def test_an_error_names_the_file_in_which_the_key_stands(tmp_path: Path) -> None:
    wrong = PRICES.replace("pump = 1500", "pump = -1").replace("discount_rate", "discont_rate")
    file = write(tmp_path, prices=wrong, site=site('"prices.toml"').replace("= -16.0", "= -160"))
    found = lines(file)
    prices = tmp_path / "prices.toml"
    assert f"{prices}:4: prices.pump: -1 was given; must be at least 0" in found
    assert any(line.startswith(f"{prices}:8: finance.discont_rate_percent: is not a known key") for line in found)
    assert any(line.startswith(f"{file}:6: site.latitude_deg: -160") for line in found)


@pytest.mark.parametrize("name", ["absent.toml", "."])
def test_a_file_that_cannot_be_read_is_refused_at_the_line(tmp_path: Path, name: str) -> None:
    (line,) = lines(write(tmp_path, site=site(f'"{name}"')))
    assert line.startswith(f"{tmp_path / 'site.toml'}:1: include: {name!r} was given;")


def test_a_circle_is_refused_at_the_line_that_closes_it(tmp_path: Path) -> None:
    file = write(tmp_path, a='\ninclude = "b.toml"\n', b='include = "a.toml"\n', site=site('"a.toml"'))
    assert lines(file) == [f"{tmp_path / 'b.toml'}:1: include: 'a.toml' was given; it includes itself"]
    (line,) = lines(write(tmp_path, site=site('"site.toml"')))
    assert line == f"{file}:1: include: 'site.toml' was given; it includes itself"


def test_broken_toml_names_its_own_file(tmp_path: Path) -> None:
    (line,) = lines(write(tmp_path, prices="[prices]\npump = 1,5\n", site=site('"prices.toml"')))
    assert line.startswith(f"{tmp_path / 'prices.toml'}:2: prices.pump")


def test_names_of_files_are_texts(tmp_path: Path) -> None:
    assert any(":1: include: 5 was given" in line for line in lines(write(tmp_path, site=site("5"))))
