"""From the values of a sweep's keys to cases: changed scenarios, and the designs held or chosen anew in them."""

from __future__ import annotations

import json
import shutil
import tempfile
import weakref
import zlib
from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from planner.assumptions.reader import scenario_of
from planner.scenario.errors import InputError, Problem
from planner.scenario.scenario import Scenario, option_name_of
from planner.sources.base import SourceKind
from planner.study.cases import Case, Design, Supply, supplies_of
from planner.study.context import Context, Store
from planner.study.keys import Key, with_value
from planner.study.results import Result
from planner.study.search import choose_all

Array = NDArray[np.float64]

_MOST_ROWS = 1024


@dataclass(frozen=True)
class Core:
    """What every unit of a sweep shares; small, and picklable.

    Attributes
    ----------
    raw : str
        Raw scenario as JSON.
    folder : str
        Folder to which paths in the scenario are relative.
    kinds : tuple of SourceKind
        The sources in order of priority.
    keys : tuple of Key
        Inputs varied.
    hour_keys : tuple of int
        Places of those that touch the hours.
    designs : tuple of Design
        Designs of the base case, one for each option.
    redesign : bool
        Whether designs are chosen anew in each variant.
    by_line : bool
        Whether prices are taken by a straight line.
    price_ends : tuple of (float, float)
        Lowest and highest value of each key that is a price, in the order of `keys`.
    weather : bytes or None
        Compressed content of the weather file, for workers that do not see the folder.
    """

    raw: str
    folder: str
    kinds: tuple[SourceKind, ...]
    keys: tuple[Key, ...]
    hour_keys: tuple[int, ...]
    designs: tuple[Design, ...]
    redesign: bool
    by_line: bool
    price_ends: tuple[tuple[float, float], ...]
    weather: bytes | None = None

    def with_weather(self) -> Core:
        """Take the content of the weather file along, where there is one."""
        weather = json.loads(self.raw).get("weather", {})
        if weather.get("kind") != "file":
            return self
        return replace(self, weather=zlib.compress((Path(self.folder) / weather["file"]).read_bytes()))


@dataclass(frozen=True)
class Row:
    """A changed scenario: its raw data, itself, and its options."""

    raw: dict[str, Any]
    scenario: Scenario
    supplies: list[Supply]


class Variants:
    """Makes the cases of a sweep, keeping the scenarios that it made last."""

    def __init__(self, core: Core) -> None:
        self._core = core
        self.raw: dict[str, Any] = json.loads(core.raw)
        folder = Path(core.folder)
        if core.weather is not None:
            folder = self._unpacked(core.weather)
        # No hours are kept: what shares a pass must not depend on what was worked out before.
        self.context = Context(folder, core.kinds).without_hours()
        self._rows: Store[Row] = Store(_MOST_ROWS)

    def _unpacked(self, weather: bytes) -> Path:
        """Put the weather file that came along into a folder of its own, removed with this object."""
        folder = Path(tempfile.mkdtemp(prefix="planner-"))
        weakref.finalize(self, shutil.rmtree, folder, ignore_errors=True)
        name = Path(self.raw["weather"]["file"]).name
        (folder / name).write_bytes(zlib.decompress(weather))
        self.raw["weather"]["file"] = name
        return folder

    def changed(self, held: Sequence[tuple[int, float]], raw: dict[str, Any] | None = None) -> dict[str, Any]:
        """Raw scenario with some keys, by their places, set."""
        changed = self.raw if raw is None else raw
        for index, value in held:
            changed = with_value(changed, self._core.keys[index], value)
        return changed

    def row(self, values: Array) -> Row:
        """Scenario of a case by the values of the keys that touch the hours; sizes are left to the designs."""
        held = tuple((p, v) for p, v in self._held(values) if self._core.redesign or not self._core.keys[p].is_size)

        def make() -> Row:
            raw = self.changed(held)
            scenario = scenario_of(raw)
            return Row(raw, scenario, supplies_of(scenario, self._core.kinds))

        found: Row = self._rows.keep(held, make)
        return found

    def cases(self, values: Array) -> list[Case]:
        """Cases of every option, their designs held; raises where one cannot be."""
        row = self.row(values)
        cases = [
            Case.of(supply.scenario, self._design(supply, fixed, values))
            for supply, fixed in zip(row.supplies, self._core.designs, strict=True)
        ]
        busiest_m3 = float(self.context.site(row.scenario).draw_m3[:, 0].max())
        for case in cases:
            _check_sizes(case, busiest_m3)
            self.context.prepared(case)
        return cases

    def chosen(self, values: Array) -> list[Result]:
        """Results of every option, its design chosen anew."""
        scenario = self.row(values).scenario
        return [choice.result for choice in choose_all(self.context, self.context.supplies(scenario))]

    def _held(self, values: Array) -> list[tuple[int, float]]:
        pairs = zip(self._core.hour_keys, values.tolist(), strict=True)
        return [(index, value) for index, value in pairs if not np.isnan(value)]

    def _design(self, supply: Supply, fixed: Design, values: Array) -> Design:
        """Sizes of one option: swept, else given, else those of the base case."""
        solar, tank = supply.scenario.sources.solar, supply.scenario.tank.volume_m3
        sunny = supply.sunny is not None
        strings = fixed.strings if solar is None or solar.strings == "auto" else solar.strings
        start, stop = fixed.levels if supply.leaves_levels_open else supply.given_levels
        dark = "" if sunny else "_without_sun"
        swept = {self._core.keys[index].text: value for index, value in self._held(values)}

        def size(text: str, otherwise: float) -> float:
            return otherwise if self._overridden(supply.name, text) else swept.get(text, otherwise)

        return Design(
            supply.name,
            supply.sources,
            int(size("sources.solar.strings", strings)) if sunny else 0,
            size("tank.volume_m3", fixed.tank_m3 if tank == "auto" else tank),
            (size(f"topup.start_level{dark}_percent", start), size(f"topup.stop_level{dark}_percent", stop)),
            fixed.series,
            fixed.section_mm2,
        )

    def _overridden(self, option: str, text: str) -> bool:
        """Whether the option has a value of its own for a key."""
        for name, tables in self.raw.get("overrides", {}).items():
            node: Any = tables if option_name_of(name) == option else {}
            for part in text.split("."):
                node = node.get(part) if isinstance(node, dict) else None
            if node is not None:
                return True
        return False


def _check_sizes(case: Case, busiest_m3: float) -> None:
    """Refuse sizes that the scenario's own checks have not seen."""
    design = case.design
    start, stop = design.levels
    key = ""
    if design.tank_m3 < busiest_m3:
        key, text = "tank.volume_m3", f"{design.tank_m3:g} m3 is less than the {busiest_m3:.2f} m3 of the busiest hour"
    elif design.has_switch and not 0 <= start < stop <= 100:
        key, text = "topup", f"the stop level {stop:g} % must be above the start level {start:g} %, within 0-100"
    elif design.strings < 1 and any(source.has_array for source in design.sources):
        key, text = "sources.solar.strings", f"{design.strings} was given; at least 1 is needed"
    if key:
        raise InputError("", [Problem(key, text)])
