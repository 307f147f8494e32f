"""The stages of a sweep before money: weather, designs and hours, each made once for all that leaves it as it is."""

from __future__ import annotations

import json
import shutil
import tempfile
import weakref
import zlib
from collections import OrderedDict
from collections.abc import Callable, Hashable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, TypeVar

import numpy as np
from numpy.typing import NDArray

from planner.money.simulated import Quantities, quantities_of
from planner.money.tariff import band_count, band_of_hour
from planner.scenario.errors import InputError
from planner.scenario.reader import check_scenario
from planner.scenario.scenario import option_name_of
from planner.sources.base import SourceKind
from planner.study.design import Design, Ground, designs_of, ground_of, option_of
from planner.study.pinned import Pinned
from planner.study.search import choose_all, given_levels
from planner.study.sweep.keys import Key, with_value
from planner.supply.run import HOUR, MONTH, Option, Outcome, run_options
from planner.water.demand import hourly_demand_m3

Array = NDArray[np.float64]
Integers = NDArray[np.int64]
Kept = TypeVar("Kept")


@dataclass(frozen=True)
class Core:
    """What every unit of a sweep shares; small, and picklable.

    Attributes
    ----------
    raw : str
        Raw scenario as JSON.
    folder : str
        Folder to which paths in the scenario are relative.
    keys : tuple of Key
        Inputs varied.
    hour_keys : tuple of int
        Places of those that touch the hours.
    pinned : tuple of Pinned
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
    keys: tuple[Key, ...]
    hour_keys: tuple[int, ...]
    pinned: tuple[Pinned, ...]
    redesign: bool
    by_line: bool
    price_ends: tuple[tuple[float, float], ...]
    weather: bytes | None = None

    def with_weather(self) -> Core:
        """Take the content of the weather file along, where there is one."""
        weather = json.loads(self.raw)["weather"]
        if weather["kind"] != "file":
            return self
        return replace(self, weather=zlib.compress((Path(self.folder) / weather["file"]).read_bytes()))


@dataclass(frozen=True)
class Row:
    """What the cases of one row did: an outcome for each option, arrays (cases, years, 12[, bands])."""

    raw: dict[str, Any]
    outcomes: list[Outcome]
    quantities: list[Quantities]
    sizes: list[Sizes]


@dataclass(frozen=True)
class Sizes:
    """Design of one option in each case of a row."""

    sources: tuple[SourceKind, ...]
    strings: int
    tank_m3: Array
    start_percent: Array
    stop_percent: Array
    has_switch: bool


@dataclass(frozen=True)
class Hours:
    """Hours of a batch: the row of each case and its place there, or what went wrong with it."""

    rows: list[Row]
    row_of: Integers
    place: Integers
    problems: list[str | None]

    def put(self, members: Integers, done: Row | str) -> None:
        """Enter what came of the cases of one row."""
        for at, member in enumerate(members):
            self.problems[member] = done if isinstance(done, str) else None
            self.row_of[member], self.place[member] = len(self.rows), at
        if not isinstance(done, str):
            self.rows.append(done)


class HourStage:
    """Runs batches of hour cases, keeping the grounds, designs and hours that it made last."""

    def __init__(self, core: Core) -> None:
        self._core = core
        self.raw: dict[str, Any] = json.loads(core.raw)
        self._folder = Path(core.folder)
        if core.weather is not None:
            self._folder = self._unpacked(core.weather)
        self._grounds: OrderedDict[Hashable, Ground] = OrderedDict()
        self._designs: OrderedDict[Hashable, tuple[dict[str, Any], Ground, list[Design]]] = OrderedDict()
        self._hours: OrderedDict[Hashable, Hours] = OrderedDict()

    def _unpacked(self, weather: bytes) -> Path:
        """Put the weather file that came along into a folder of its own, removed with this stage."""
        folder = Path(tempfile.mkdtemp(prefix="planner-"))
        weakref.finalize(self, shutil.rmtree, folder, ignore_errors=True)
        name = Path(self.raw["weather"]["file"]).name
        (folder / name).write_bytes(zlib.decompress(weather))
        self.raw["weather"]["file"] = name
        return folder

    def stand_on(self, ground: Ground) -> None:
        """Take over the ground of the scenario as it is, so that it need not be made again."""
        self._grounds[()] = ground

    def hours_of(self, cases: Array, row_of: Integers) -> Hours:
        """Hours of a batch."""
        key = cases.tobytes(), row_of.tobytes(), cases.shape
        return _keep(self._hours, key, 2, lambda: self._run(cases, row_of))

    def changed(self, held: Sequence[tuple[int, float]], raw: dict[str, Any] | None = None) -> dict[str, Any]:
        """Raw scenario with some keys, by their places, set."""
        changed = self.raw if raw is None else raw
        for place, value in held:
            changed = with_value(changed, self._core.keys[place], value)
        return changed

    def _run(self, cases: Array, row_of: Integers) -> Hours:
        hours = Hours([], np.zeros(len(cases), np.int64), np.zeros(len(cases), np.int64), ["failed"] * len(cases))
        ready: list[tuple[Integers, _Prepared]] = []
        for number in range(int(row_of.max()) + 1):
            members = np.flatnonzero(row_of == number)
            try:
                if self._core.redesign:
                    hours.put(members, self._redesigned(cases[members[0]]))
                    continue
                prepared, wrong = self._prepared(cases[members])
            except Exception as error:
                hours.put(members, said(error))
                continue
            for member, text in zip(members, wrong, strict=True):
                hours.problems[member] = text
            if prepared is not None:
                ready.append((members[[text is None for text in wrong]], prepared))
        for together in _alike(ready):
            for (members, _), done in zip(together, _run_together([p for _, p in together]), strict=True):
                hours.put(members, done)
        return hours

    def _prepared(self, cases: Array) -> tuple[_Prepared | None, list[str | None]]:
        """Build the designs of a row and bind its cases to them; tell which cases cannot be."""
        raw, ground, designs = self._built(cases[0])
        sizes = [self._sizes(design, pinned, cases) for design, pinned in zip(designs, self._core.pinned, strict=True)]
        wrong = _wrong_sizes(sizes, float(ground.draw_m3[:, 0].max()), len(cases))
        good = np.array([text is None for text in wrong])
        if not good.any():
            return None, wrong
        kept = [
            replace(size, tank_m3=size.tank_m3[good], start_percent=size.start_percent[good],
                    stop_percent=size.stop_percent[good])
            for size in sizes
        ]  # fmt: skip
        return _Prepared(raw, ground, designs, kept), wrong

    def _built(self, case: Array) -> tuple[dict[str, Any], Ground, list[Design]]:
        held = [(place, value) for place, value in self._held(case) if not self._core.keys[place].is_size]

        def build() -> tuple[dict[str, Any], Ground, list[Design]]:
            raw = self.changed(held)
            ground = self._ground(raw, held)
            return raw, ground, designs_of(ground)

        return _keep(self._designs, tuple(held), 2, build)

    def _ground(self, raw: dict[str, Any], held: Sequence[tuple[int, float]]) -> Ground:
        """Put a scenario on the ground that its weather keys make, which is kept."""
        weather = [(place, value) for place, value in held if self._core.keys[place].changes == "weather"]
        scenario = check_scenario(raw, "")
        ground = _keep(
            self._grounds, tuple(weather), 4, lambda: ground_of(check_scenario(self.changed(weather), ""), self._folder)
        )
        grid = scenario.sources.grid
        return replace(
            ground,
            scenario=scenario,
            draw_m3=hourly_demand_m3(scenario.demand, scenario.finance.life_years),
            bands=None if grid is None else band_of_hour(grid.tariff, MONTH, HOUR),
            band_count=1 if grid is None else band_count(grid.tariff),
        )

    def _sizes(self, design: Design, pinned: Pinned, cases: Array) -> Sizes:
        """Sizes of one option in the cases of a row: swept, else given, else those of the base case."""
        own = design.scenario
        solar = own.sources.solar
        strings = pinned.strings if solar is None or solar.strings == "auto" else solar.strings
        tank = pinned.tank_m3 if own.tank.volume_m3 == "auto" else own.tank.volume_m3
        sunny = "solar" in design.sources
        searched = sunny and own.topup.start_level_percent == "auto"
        levels = pinned.levels if searched else given_levels(design)
        dark = "" if sunny else "_without_sun"
        swept = {
            name: self._swept(design.name, text, cases)
            for name, text in (
                ("strings", "sources.solar.strings"),
                ("tank", "tank.volume_m3"),
                ("start", f"topup.start_level{dark}_percent"),
                ("stop", f"topup.stop_level{dark}_percent"),
            )
        }
        return Sizes(
            sources=design.sources,
            strings=int(_or(swept["strings"], strings)[0]) if sunny else 0,
            tank_m3=_or(swept["tank"], tank),
            start_percent=_or(swept["start"], levels[0]),
            stop_percent=_or(swept["stop"], levels[1]),
            has_switch=design.sources != ("solar",),
        )

    def _swept(self, option: str, text: str, cases: Array) -> Array:
        """Swept values of a size in each case, NaN where it is not swept or the option has a value of its own."""
        places = [at for at, place in enumerate(self._core.hour_keys) if self._core.keys[place].text == text]
        if not places or self._overridden(option, text):
            return np.full(len(cases), np.nan)
        return np.asarray(cases[:, places[0]])

    def _overridden(self, option: str, text: str) -> bool:
        for name, tables in self.raw.get("overrides", {}).items():
            node: Any = tables if option_name_of(name) == option else {}
            for part in text.split("."):
                node = node.get(part) if isinstance(node, dict) else None
            if node is not None:
                return True
        return False

    def _redesigned(self, case: Array) -> Row:
        held = self._held(case)
        raw = self.changed(held)
        ground = self._ground(raw, held)
        choices = choose_all(designs_of(ground), ground)
        outcomes = [choice.outcome.taken(None) for choice in choices]
        sizes = []
        for choice in choices:
            start, stop = choice.levels if choice.levels is not None else (np.nan, np.nan)
            has_switch = choice.levels is not None
            sources, tank = choice.design.sources, np.array([choice.tank_m3])
            sizes.append(Sizes(sources, choice.strings, tank, np.array([start]), np.array([stop]), has_switch))
        quantities = [quantities_of(outcome) for outcome in outcomes]
        return Row(raw, outcomes, quantities, sizes)

    def _held(self, case: Array) -> list[tuple[int, float]]:
        return [(at, float(value)) for at, value in zip(self._core.hour_keys, case, strict=True) if not np.isnan(value)]


@dataclass(frozen=True)
class _Prepared:
    raw: dict[str, Any]
    ground: Ground
    designs: list[Design]
    sizes: list[Sizes]

    @property
    def shared(self) -> tuple[Hashable, ...]:
        """What all options of one call of the hour loop must have in common."""
        limits = tuple(design.scenario.borehole.daily_limit_m3 for design in self.designs)
        generators = [design.scenario.sources.generator for design in self.designs]
        runs = tuple(generator.minimum_run_h if generator else 0.0 for generator in generators)
        bands = None if self.ground.bands is None else self.ground.bands.tobytes()
        return (
            self.ground.draw_m3.shape,
            limits,
            runs,
            bands,
            len(self.sizes[0].tank_m3),
        )

    def options(self) -> list[Option]:
        return [
            option_of(design, self.ground, [size.strings], size.tank_m3.tolist(), size.start_percent.tolist(),
                      size.stop_percent.tolist())
            for design, size in zip(self.designs, self.sizes, strict=True)
        ]  # fmt: skip


def _alike(ready: Sequence[tuple[Integers, _Prepared]]) -> list[list[tuple[Integers, _Prepared]]]:
    """Gather rows that may go through the hour loop together."""
    groups: dict[tuple[Hashable, ...], list[tuple[Integers, _Prepared]]] = {}
    for members, prepared in ready:
        groups.setdefault(prepared.shared, []).append((members, prepared))
    return list(groups.values())


def _run_together(rows: Sequence[_Prepared]) -> list[Row | str]:
    """Run rows through the hour loop at once; should that fail, one by one, so that only the faulty one is lost."""
    ground = rows[0].ground
    try:
        outcomes = run_options(
            [option for row in rows for option in row.options()], bands=ground.bands, band_count=ground.band_count
        )
    except Exception as error:
        if len(rows) == 1:
            return [said(error)]
        return [done for row in rows for done in _run_together([row])]
    width = len(rows[0].designs)
    done: list[Row | str] = []
    for number, row in enumerate(rows):
        own = [_without_strings(outcome) for outcome in outcomes[number * width : (number + 1) * width]]
        quantities = [quantities_of(outcome) for outcome in own]
        done.append(Row(row.raw, own, quantities, row.sizes))
    return done


def _wrong_sizes(sizes: Sequence[Sizes], draw_m3: float, count: int) -> list[str | None]:
    """Say what is wrong with the sizes of each case, None where nothing is."""
    wrong: list[str | None] = [None] * count
    for size in sizes:
        for case in range(count):
            tank, start, stop = (float(a[case]) for a in (size.tank_m3, size.start_percent, size.stop_percent))
            if tank < draw_m3:
                wrong[case] = f"tank.volume_m3: {tank:g} m3 is less than the {draw_m3:.2f} m3 of the busiest hour"
            elif size.has_switch and not 0 <= start < stop <= 100:
                wrong[case] = (
                    f"topup: the stop level {stop:g} % must be above the start level {start:g} %, within 0-100"
                )
            elif "solar" in size.sources and size.strings < 1:
                wrong[case] = f"sources.solar.strings: {size.strings} was given; at least 1 is needed"
    return wrong


def _without_strings(outcome: Outcome) -> Outcome:
    """Drop the axis of strings, of which each row has one number."""
    return outcome.taken((slice(None), 0))


def _or(swept: Array, otherwise: float) -> Array:
    return np.where(np.isnan(swept), otherwise, swept)


def _keep(cache: OrderedDict[Hashable, Kept], key: Hashable, most: int, make: Callable[[], Kept]) -> Kept:
    """Return what is kept under a key, else make it and forget the oldest beyond `most`."""
    if key not in cache:
        cache[key] = make()
        while len(cache) > most:
            cache.popitem(last=False)
    cache.move_to_end(key)
    return cache[key]


OUR_FAULT = "failed with "
"""How a reason begins that is no fault of the input."""


def said(error: Exception) -> str:
    """Put what went wrong with a variant into one line."""
    if isinstance(error, InputError):
        return "; ".join(f"{p.key}: {p.text}" if p.key else p.text for p in error.problems)
    return f"{OUR_FAULT}{type(error).__name__}: {error}"
