"""What each test is held against: marks of published values and of other programs, and their collection by pytest.

`published(domain, source, values=, confirmed=, within=)` counts the printed numbers that one case of a test compares
with; `within` says by how much the comparison is looser than the print's rounding, and why. A test may bear several.
Not marked: figures worked out here from a source's formula, and a printed number for the second time.

`engine(name, compared, values=)` is a comparison with another program, run in the test or its figures written down;
`values` is left out where it depends on what is compared.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import redirect_stdout
from dataclasses import dataclass, field
from io import StringIO
from pathlib import Path

import pytest

TESTS = Path(__file__).parents[1]
DOMAINS = (
    "friction in pipes",
    "pipes and materials",
    "surge",
    "water properties",
    "pumps",
    "wells",
    "storage and demand",
    "sun and irradiance",
    "weather files and years",
    "array",
    "cables",
    "motors and generators",
    "fuel and emissions",
    "life-cycle cost and returns",
    "tariffs and cost recovery",
    "water quality",
    "uncertainty",
)
MEMORY = "from memory"
CONFIRMED = ("seen", "at second hand", MEMORY)
"""How far a printed number is confirmed: read in the source itself; in what quotes it; or not read again."""
ENGINES = ("EPANET", "pvlib", "LibreOffice", "fluids", "CoolProp and iapws", "numpy_financial")


@dataclass(frozen=True)
class Published:
    """Printed numbers that a case of a test compares with."""

    domain: str
    source: str
    values: int
    confirmed: str
    within: str = ""

    def __post_init__(self) -> None:
        if self.domain not in DOMAINS or self.confirmed not in CONFIRMED or not self.source or self.values < 1:
            raise ValueError(f"not a mark of published values: {self}")


@dataclass(frozen=True)
class Engine:
    """A comparison with another program."""

    name: str
    compared: str
    values: int | None = None

    def __post_init__(self) -> None:
        if self.name not in ENGINES or not self.compared or self.values == 0:
            raise ValueError(f"not a mark of a comparison with a program: {self}")


@dataclass(eq=False)  # pytest keeps its plugins in sets
class Collected:
    """A plugin of pytest: the marks of the tests that it collected, by the test's name, and what became of these."""

    published: list[tuple[str, Published]] = field(default_factory=list)
    engines: list[tuple[str, Engine]] = field(default_factory=list)
    outcomes: dict[str, str] = field(default_factory=dict)
    exit_code: int = 0
    output: str = ""

    def pytest_collection_finish(self, session: pytest.Session) -> None:
        for item in session.items:
            self.published += [(item.nodeid, Published(*m.args, **m.kwargs)) for m in item.iter_markers("published")]
            self.engines += [(item.nodeid, Engine(*m.args, **m.kwargs)) for m in item.iter_markers("engine")]

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        if report.when == "call" or report.outcome != "passed":
            self.outcomes[report.nodeid] = report.outcome

    def of(self, domain: str) -> Iterator[Published]:
        """Marks of a domain, those of each case of a test."""
        return (mark for _, mark in self.published if mark.domain == domain)


def values(marks: list[Published], *confirmed: str) -> int:
    """Sum the values that are so far confirmed."""
    return sum(mark.values for mark in marks if mark.confirmed in confirmed)


def collect(*, run: bool, tests: Path = TESTS) -> Collected:
    """Let pytest find the marked tests, the slow ones too, and run them if wanted."""
    found, said = Collected(), StringIO()
    project = TESTS.parent / "pyproject.toml"
    options = ["-c", str(project), "-n0", "-q", "-m", "published or engine", *([] if run else ["--collect-only"])]
    with redirect_stdout(said):
        found.exit_code = int(pytest.main([str(tests), *options], plugins=[found]))
    found.output = said.getvalue()
    return found
