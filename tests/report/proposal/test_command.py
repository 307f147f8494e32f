"""`planner proposal`: what it writes and says, and the pages that LibreOffice makes of it."""

from __future__ import annotations

import re
import shutil
import subprocess
from pathlib import Path

import docx
import pytest
from typer.testing import CliRunner

from planner.cli import app
from planner.report.proposal.book import proposal_report
from planner.report.proposal.summary import frame_of
from planner.report.word.book import write_word
from planner.scenario.writer import toml_text
from tests.report.proposal.scenarios import bare, material

OFFICE = shutil.which("soffice")
WRITER = OFFICE is not None and (Path(OFFICE).resolve().parent / "libswlo.so").exists()


def run(*arguments: object) -> tuple[int, str, str]:
    result = CliRunner().invoke(app, ["proposal", *map(str, arguments)])
    return result.exit_code, result.stdout, result.stderr


def scenario_in(file: Path, **more: object) -> Path:
    file.write_text(toml_text(bare() | more), encoding="utf-8")
    return file


def test_it_writes_a_document_and_says_how_much_is_left_to_do(tmp_path: Path) -> None:
    file, out = scenario_in(tmp_path / "site.toml"), tmp_path / "out"
    code, said, err = run(file, "--outputs", out)
    assert code == 0, err
    document = docx.Document(str(out / "site-proposal.docx"))
    marked = sum(any(run.font.highlight_color for run in each.runs) for each in document.paragraphs)
    assert said == f"Wrote {out / 'site-proposal.docx'}; lines to be completed: {marked}.\n"
    first = (out / "site-proposal.docx").read_bytes()
    assert run(file, "--outputs", out, "--quiet") == (0, "", "")
    assert (out / "site-proposal.docx").read_bytes() == first
    assert run(file, "--outputs", out, "--quiet", "--seed", 5)[0] == 0
    assert (out / "site-proposal.docx").read_bytes() != first
    assert [path.name for path in out.iterdir()] == ["site-proposal.docx"]


def test_names_from_anywhere_do_not_break_the_document(tmp_path: Path) -> None:
    name = "Well \x01\x1b[2J <b>&amp;]]>\u202e"
    users = [{"kind": "people", "name": name, "count": 100.0}]
    file = scenario_in(tmp_path / "a.toml", name=name, prepared_by=name, revision=name, demand={"users": users})
    code, _, err = run(file, "--outputs", tmp_path)
    assert code == 0, err
    said = [each.text for each in docx.Document(str(tmp_path / "a-proposal.docx")).paragraphs]
    assert "<b>&amp;]]>" in said[0]
    assert not re.search("[\x00-\x08\x1b\u202e]", "".join(said))


def test_what_cannot_be_run_is_said_and_costs_neither_the_others_nor_an_earlier_document(tmp_path: Path) -> None:
    good, wrong = scenario_in(tmp_path / "good.toml"), tmp_path / "wrong.toml"
    wrong.write_text("nonsense = 1\n", encoding="utf-8")
    (tmp_path / "wrong-proposal.docx").write_bytes(b"earlier")
    code, said, err = run(wrong, good, "--outputs", tmp_path)
    assert code == 2
    assert str(wrong) in err
    assert "good-proposal.docx" in said
    assert (tmp_path / "wrong-proposal.docx").read_bytes() == b"earlier"


def test_two_scenarios_of_one_name_are_refused(tmp_path: Path) -> None:
    (tmp_path / "b").mkdir()
    files = [scenario_in(tmp_path / "a.toml"), scenario_in(tmp_path / "b" / "a.toml")]
    code, _, err = run(*files, "--outputs", tmp_path)
    assert code == 2
    assert "rename one" in err


@pytest.mark.slow
@pytest.mark.skipif(not WRITER, reason="LibreOffice Writer (soffice) is not installed: no pages can be made")
@pytest.mark.parametrize("name", ["bare", "whole"])
def test_libreoffice_makes_pages_of_it(tmp_path: Path, name: str) -> None:
    found = material(name)
    write_word(proposal_report(found), tmp_path / "proposal.docx", frame_of(found.scenario))
    command = [
        str(OFFICE), "--headless", "--norestore", f"-env:UserInstallation={(tmp_path / 'profile').as_uri()}",
        "--convert-to", "pdf", "--outdir", str(tmp_path), str(tmp_path / "proposal.docx"),
    ]  # fmt: skip
    subprocess.run(command, check=True, capture_output=True, timeout=300)
    pages = re.findall(rb"/Type\s*/Page\b", (tmp_path / "proposal.pdf").read_bytes())
    assert 8 <= len(pages) <= 25
