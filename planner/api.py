"""The planner from Python: a scenario in, tables of pandas out; no file is written unless asked for.

    import planner

    site = planner.load("my-site.toml")
    study = site.run()
    study.options[["demand_met_percent", "life_cycle_cost"]]
    study.hours("solar + grid", year=3)["tank_level_m3"].plot()

Columns are the keys of the catalogue, with the unit in the name; `frame.attrs["units"]` has the unit of each. Whatever
is wrong with the input ends in a `planner.InputError`, whose text names file, line and key.
"""

from __future__ import annotations

from collections.abc import Mapping
from copy import deepcopy
from dataclasses import dataclass, field
from functools import cached_property
from pathlib import Path
from typing import Any

import pandas as pd

from planner.answers.cautions import cautions
from planner.answers.of_study import answer, sizing_answer, study_verdicts
from planner.answers.remedied import remedied, remedied_sentences
from planner.answers.worth import worth_answer
from planner.assumptions.reader import check_scenario, read_scenario
from planner.checks.finding import finding
from planner.checks.site import site_basis, site_verdicts
from planner.checks.verdict import Verdict
from planner.report.files import results_in
from planner.report.form.reading import check_form
from planner.report.json_file import write_json
from planner.report.rows import checks_frame, hours_frame, months_frame, options_frame, years_frame
from planner.report.run_workbook import write_workbook
from planner.report.studies_json import finite, sizing_as_data, worth_as_data
from planner.report.sweep_rows import frames
from planner.scenario.paths import parts_of, set_path
from planner.scenario.scenario import Scenario
from planner.study.compare import Study, study_scenario
from planner.study.site import estimate_sentences, place_of, weather_of
from planner.study.sizing import Sizing, size_scenario
from planner.study.sweep.run import SweepResult, run_sweep
from planner.study.sweep.summary import sentences as sweep_sentences
from planner.study.sweep.workers import Processes, Serial
from planner.study.worth import Worth, worth_of

FORMS = (".xlsx", ".xlsm")


def load(scenario: str | Path | Mapping[str, Any], folder: str | Path | None = None) -> Site:
    """Read and check a scenario.

    Parameters
    ----------
    scenario : str, pathlib.Path or mapping
        A TOML file, a filled-in form, or the same data as a dictionary.
    folder : str or pathlib.Path, optional
        Folder to which paths in the scenario are relative; that of the file, or the current one, where it is left out.

    Returns
    -------
    Site

    Raises
    ------
    planner.InputError
        When it cannot be read or anything in it is wrong; every problem found is named.
    """
    if isinstance(scenario, Mapping):
        data = deepcopy(dict(scenario))
        return Site(check_scenario(data, "scenario"), Path(folder or "."))
    file = Path(scenario)
    checked = check_form(file) if file.suffix.lower() in FORMS else read_scenario(file)
    return Site(checked, Path(folder) if folder is not None else file.parent, file)


@dataclass(frozen=True)
class Site:
    """One checked scenario, to be worked out in one of the five ways.

    Attributes
    ----------
    scenario : Scenario
        The scenario, completed; `scenario.given()` is what the user gave.
    folder : pathlib.Path
        Folder to which its paths are relative.
    file : pathlib.Path or None
        The file from which it was read.
    """

    scenario: Scenario
    folder: Path
    file: Path | None = None

    def with_values(self, values: Mapping[str, Any]) -> Site:
        """Return the site with some keys set, by dotted key, lists counted from 1: {'demand.users[1].count': 500}."""
        raw = self.scenario.given()
        for key, value in values.items():
            raw = set_path(raw, parts_of(key), value)
        return Site(check_scenario(raw, str(self.file or "scenario")), self.folder, self.file)

    def check(self) -> Checked:
        """Check whether borehole, pump, pipe, array, cables and supply fit together."""
        place = place_of(self.scenario)
        weather = weather_of(self.scenario, place, self.folder)
        verdicts = site_verdicts(self.scenario, place, weather)
        basis = site_basis(self.scenario, place, weather)
        return Checked(verdicts, [*finding(basis, verdicts), *estimate_sentences(self.scenario)])

    def run(self, *, quick: bool = False) -> Compared:
        """Simulate, cost and compare every supply option; `quick` leaves out what the assumptions would change."""
        return Compared(study_scenario(self.scenario, self.folder, with_effects=not quick), self.folder)

    def size(self) -> Sized:
        """Search for the design that meets the target at least cost."""
        sizing = size_scenario(self.scenario, self.folder, lambda done, total, name: None)
        place = place_of(self.scenario)
        return Sized(sizing, sizing_answer(sizing, place, weather_of(self.scenario, place, self.folder)))

    def sweep(self, table: Mapping[str, Any] | None = None, *, workers: int = 1) -> Swept:
        """Vary uncertain inputs as the [sweep] table says, or another in its place.

        Parameters
        ----------
        table : mapping, optional
            What would stand in [sweep].
        workers : int
            Processes to use.
        """
        site = self if table is None else self.with_values({"sweep": dict(table)})
        crew = Serial() if workers == 1 else Processes(workers)
        try:
            return Swept(run_sweep(site.scenario, site.folder, workers=crew))
        finally:
            crew.close()

    def worth(self, source: str) -> Worthwhile:
        """Say whether a source is worth having: 'solar', 'grid' or 'generator'."""
        return Worthwhile(worth_of(self.scenario, source, self.folder))


@dataclass(frozen=True)
class Checked:
    """Site checks, and what they come to in sentences."""

    verdicts: tuple[Verdict, ...] = field(repr=False)
    sentences: list[str]

    @cached_property
    def checks(self) -> pd.DataFrame:
        """One row a check: topic, outcome, what was compared, value, limit, unit, margin, why, remedy, source."""
        return checks_frame(self.verdicts)


@dataclass(frozen=True)
class Compared:
    """A finished comparison; `study` is the whole of it, `folder` that of the scenario."""

    study: Study = field(repr=False)
    folder: Path

    @property
    def best(self) -> str | None:
        """The option that meets the target at least cost; None where none meets it."""
        return self.study.best

    @cached_property
    def options(self) -> pd.DataFrame:
        """Every figure of the catalogue, one row an option, best first."""
        return options_frame(self.study)

    @cached_property
    def years(self) -> pd.DataFrame:
        """Water, energy, fuel and cost by option and life year, from 1."""
        return years_frame(self.study)

    @cached_property
    def months(self) -> pd.DataFrame:
        """Water, energy and fuel by option, life year and month, from 1."""
        return months_frame(self.study)

    def hours(self, option: str, year: int | None = None) -> pd.DataFrame:
        """Every hour of one option, of one life year (from 1) or of all: energy, flows, demand, tank level."""
        return hours_frame(self.study, option, year)

    @cached_property
    def verdicts(self) -> tuple[Verdict, ...]:
        """What the site checks found with the design of the best option."""
        return study_verdicts(self.study)

    @cached_property
    def checks(self) -> pd.DataFrame:
        """The same, one row a check."""
        return checks_frame(self.verdicts)

    @cached_property
    def sentences(self) -> list[str]:
        """The answer."""
        return answer(self.study, self.verdicts)

    @cached_property
    def cautions(self) -> list[str]:
        """What to beware of."""
        return cautions(self.study)

    def write(self, folder: str | Path, name: str) -> tuple[Path, Path]:
        """Write the workbook and the JSON, whole or not at all, and return their paths."""
        found = remedied(self.study, self.verdicts, self.folder)
        book, data = f"{name}.xlsx", f"{name}.json"
        with results_in(Path(folder)) as into:
            write_workbook(self.study, self.cautions, into / book, self.verdicts, remedied_sentences(found))
            write_json(self.study, self.cautions, self.verdicts, into / data, found)
        return Path(folder) / book, Path(folder) / data


@dataclass(frozen=True)
class Sized:
    """A finished sizing and what it comes to in sentences."""

    sizing: Sizing = field(repr=False)
    sentences: list[str]

    @cached_property
    def options(self) -> pd.DataFrame:
        """The design of each option that meets the target at least cost, or comes nearest to it; best first."""
        by_name = {each["name"]: each for each in self._data["options"]}
        rows = {name: {"misses_by_percent": by_name[name]["misses_by_percent"], **by_name[name]["design"]}
                for name in self._data["ranking"]}  # fmt: skip
        return pd.DataFrame.from_dict(rows, orient="index").rename_axis("option")

    @cached_property
    def trade_off(self) -> pd.DataFrame:
        """Designs of which none is both cheaper and better than another, by option."""
        rows = [{"option": each["name"], **design} for each in self._data["options"] for design in each["trade_off"]]
        return pd.DataFrame(rows).set_index("option")

    @cached_property
    def _data(self) -> dict[str, Any]:
        data: dict[str, Any] = finite(sizing_as_data(self.sizing, self.sentences))
        return data


@dataclass(frozen=True)
class Swept:
    """A finished sweep."""

    swept: SweepResult = field(repr=False)

    @cached_property
    def rows(self) -> pd.DataFrame:
        """One row for each variant and option: its inputs, its figures, and what went wrong."""
        return pd.concat(list(frames(self.swept)), ignore_index=True)

    @cached_property
    def sentences(self) -> list[str]:
        """What it comes to."""
        return sweep_sentences(self.swept)


@dataclass(frozen=True)
class Worthwhile:
    """Whether a source is worth having."""

    worth: Worth = field(repr=False)

    @cached_property
    def options(self) -> pd.DataFrame:
        """Figures of the options with and without the source."""
        return pd.DataFrame(self._data["options"]).set_index("name").rename_axis("option")

    @cached_property
    def switching_values(self) -> pd.DataFrame:
        """One row an input: the value at which the answer turns."""
        return pd.DataFrame(self._data["switching_values"]).set_index("input")

    @cached_property
    def sentences(self) -> list[str]:
        """The answer."""
        return worth_answer(self.worth)

    @cached_property
    def _data(self) -> dict[str, Any]:
        data: dict[str, Any] = finite(worth_as_data(self.worth, self.sentences))
        return data
