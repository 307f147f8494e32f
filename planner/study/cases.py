"""Cases: a design of one supply option, and the scenario as it holds for that option."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cache
from typing import Any

import numpy as np
from pydantic import BaseModel

from planner.assumptions.reader import option_scenario
from planner.scenario.errors import InputError, Problem
from planner.scenario.fields import Changes
from planner.scenario.scenario import Scenario
from planner.scenario.walk import fields_of
from planner.sources.base import SourceKind, TopUpSourceKind
from planner.sources.registry import SOURCES, option_name, options_of
from planner.text import text

Digest = tuple[Any, ...]

SIZES = (
    "tank.volume_m3",
    "sources.solar.strings",
    "topup.start_level_percent",
    "topup.stop_level_percent",
    "topup.start_level_without_sun_percent",
    "topup.stop_level_without_sun_percent",
)
"""Keys of a scenario that a design holds in their place, so that the tank's price follows its volume."""
SERIES, SECTION = "sources.solar.modules_in_series", "cables.dc.section_mm2"
"""Keys of the modules in series and the array's cable, which a design holds where the scenario leaves them open."""
DEFAULT_LEVELS = (20.0, 40.0)
"""Start and stop level where they are left to the tool, until they are chosen [% of the tank]."""


@dataclass(frozen=True)
class Design:
    """One supply option with its sizes.

    Attributes
    ----------
    name : str
        The option.
    sources : tuple of SourceKind
        Its sources, in their fixed order.
    strings : int
        Strings of modules; 0 without sun.
    tank_m3 : float
        Tank volume [m³].
    levels : tuple of float
        Float-switch levels, start and stop [% of the tank]; without effect where the sun is the only source.
    series, section_mm2 : int or None, float or None
        Modules in series, and section of the array's cable, that were chosen; None where the scenario's own holds.
    """

    name: str
    sources: tuple[SourceKind, ...]
    strings: int
    tank_m3: float
    levels: tuple[float, float]
    series: int | None = None
    section_mm2: float | None = None

    @property
    def has_switch(self) -> bool:
        """Whether a float switch starts a pump on another source than the sun."""
        return any(isinstance(source, TopUpSourceKind) for source in self.sources)


@dataclass(frozen=True)
class Case:
    """A design in a scenario.

    Attributes
    ----------
    scenario : Scenario
        As it holds for the option, its overrides merged in.
    design : Design
        What is simulated and priced there, whatever sizes the scenario gives.
    """

    scenario: Scenario
    design: Design

    @staticmethod
    def of(scenario: Scenario, design: Design) -> Case:
        """Put a design that was chosen elsewhere into a scenario, its modules in series and cable with it."""
        return Case(as_chosen(scenario, design.series, design.section_mm2), design)

    @property
    def modules(self) -> int:
        """Modules of the array; 0 without sun."""
        return sum(source.modules(self.scenario, self.design.strings) for source in self.design.sources)

    @property
    def array_kw(self) -> float:
        """Rated power of the array [kW]; 0 without sun."""
        return sum(source.array_kw(self.scenario, self.design.strings) for source in self.design.sources)


@dataclass(frozen=True)
class Supply:
    """One supply option: its name, its sources in their fixed order, and the scenario as it holds for it.

    `series` is the number of modules in series that a search has put into the scenario; None where it has put none.
    `cabled` holds, by number of strings, the section of the array's cable that was found for them, and the scenario
    with it.
    """

    name: str
    sources: tuple[SourceKind, ...]
    scenario: Scenario
    series: int | None = None
    cabled: Mapping[int, tuple[float, Scenario]] = field(default_factory=dict)

    @property
    def sunny(self) -> SourceKind | None:
        """The source with the array, None without."""
        return next((source for source in self.sources if source.has_array), None)

    @property
    def has_switch(self) -> bool:
        """Whether a float switch starts a pump on another source than the sun."""
        return any(isinstance(source, TopUpSourceKind) for source in self.sources)

    @property
    def is_mixed(self) -> bool:
        """Whether sun and another source share the tank."""
        return self.sunny is not None and self.has_switch

    @property
    def strings_to_try(self) -> tuple[int, ...]:
        """Numbers of strings to try; (0,) without sun."""
        return self.sunny.strings_to_try(self.scenario) if self.sunny else (0,)

    @property
    def tanks_to_try(self) -> tuple[float, ...]:
        """Tank volumes to try [m³]."""
        given = self.scenario.tank.volume_m3
        return tuple(size.volume_m3 for size in self.scenario.tank.sizes) if given == "auto" else (given,)

    @property
    def leaves_series_open(self) -> bool:
        """Whether the number of modules in series is to be chosen."""
        return self.sunny is not None and self.series is None and self.scenario.leaves_open(SERIES)

    def with_series(self, series: int) -> Supply:
        """Give the option another number of modules in series."""
        return replace(self, scenario=as_chosen(self.scenario, series), series=series)

    def with_sections(self, section_mm2: Mapping[int, float]) -> Supply:
        """Give the option a section of the array's cable for each number of strings."""
        known = {section: as_chosen(self.scenario, None, section) for section in set(section_mm2.values())}
        return replace(self, cabled={count: (section, known[section]) for count, section in section_mm2.items()})

    @property
    def leaves_levels_open(self) -> bool:
        """Whether the float-switch levels are to be chosen."""
        return self.is_mixed and self.scenario.topup.start_level_percent == "auto"

    @property
    def given_levels(self) -> tuple[float, float]:
        """Levels given for the option, or the low default where they are to be chosen [% of the tank]."""
        top_up = self.scenario.topup
        if self.sunny is None:
            return top_up.start_level_without_sun_percent, top_up.stop_level_without_sun_percent
        if top_up.start_level_percent == "auto" or top_up.stop_level_percent == "auto":
            return DEFAULT_LEVELS
        return top_up.start_level_percent, top_up.stop_level_percent

    def case(self, strings: int, tank_m3: float, levels: tuple[float, float]) -> Case:
        """Give it sizes."""
        section, scenario = self.cabled.get(strings, (None, self.scenario))
        return Case(scenario, Design(self.name, self.sources, strings, tank_m3, levels, self.series, section))


def as_chosen(scenario: Scenario, series: int | None, section_mm2: float | None = None) -> Scenario:
    """Put modules in series and section that were chosen into a scenario that leaves them open; None leaves them."""
    if series is not None and scenario.leaves_open(SERIES):
        scenario = scenario.choosing(SERIES, series, text("assumed.series_chosen"))
    if section_mm2 is not None and scenario.leaves_open(SECTION):
        scenario = scenario.choosing(SECTION, section_mm2, text("assumed.section_chosen"))
    return scenario


def supplies_of(scenario: Scenario, kinds: Sequence[SourceKind] = SOURCES) -> list[Supply]:
    """List the supply options of a scenario; `kinds` are the sources in order of priority.

    Raises
    ------
    InputError
        When an override moves the hours of a tariff's bands: an option is compared with others by the same hours.
    """
    supplies = []
    for sources in options_of(scenario, kinds):
        name = option_name(sources)
        merged = option_scenario(scenario, name)
        if merged is not scenario:
            _check_bands(merged, scenario, kinds)
        supplies.append(Supply(name, sources, merged))
    return supplies


def _check_bands(scenario: Scenario, base: Scenario, kinds: Sequence[SourceKind]) -> None:
    for kind in kinds:
        if not isinstance(kind, TopUpSourceKind) or not (kind.described(scenario) and kind.described(base)):
            continue
        here, there = kind.bands(scenario), kind.bands(base)
        alike = here is there or (
            here is not None
            and there is not None
            and here.band_count == there.band_count
            and np.array_equal(here.of_hour, there.of_hour)
        )
        if not alike:
            words = "an override may change the prices of the tariff's bands, but not their number, hours or months"
            raise InputError("", [Problem("overrides", words)])


def digest(
    scenario: Scenario,
    changes: tuple[Changes, ...],
    *,
    tables: tuple[str, ...] | None = None,
    sources: tuple[str, ...] | None = None,
) -> Digest:
    """Values of all keys whose change makes something necessary, the sizes of the design left out.

    Parameters
    ----------
    scenario : Scenario
        The scenario as it holds for an option.
    changes : tuple of str
        What the change of a key must make necessary for it to count, such as ('weather', 'run').
    tables : tuple of str, optional
        Keys of the scenario that count; all by default.
    sources : tuple of str, optional
        Sources that count; all by default.

    Returns
    -------
    tuple
        Equal for scenarios that are alike in all of this; can be a key of a dictionary.
    """
    parts = []
    for name in _counted(type(scenario), changes, ""):
        if tables is not None and name not in tables:
            continue
        value = getattr(scenario, name)
        if name == "sources" and sources is not None:
            # A source may be described elsewhere than in a table of its name.
            value = {source: getattr(value, source, None) for source in sources}
        parts.append(_values(value, changes, name))
    return tuple(parts)


def _values(value: Any, changes: tuple[Changes, ...], key: str) -> Any:
    if isinstance(value, BaseModel):
        inside = _counted(type(value), changes, key)
        return (type(value), *(_values(getattr(value, name), changes, f"{key}.{name}") for name in inside))
    if isinstance(value, list):
        return tuple(_values(each, changes, key) for each in value)
    if isinstance(value, dict):
        return tuple((name, _values(each, changes, f"{key}.{name}")) for name, each in value.items())
    return value


@cache
def _counted(model: type[BaseModel], changes: tuple[Changes, ...], key: str) -> tuple[str, ...]:
    """Names of the keys of a table that count; tables in it always do."""
    prefix = f"{key}." if key else ""
    return tuple(
        name
        for name, field in fields_of(model).items()
        if f"{prefix}{name}" not in (*SIZES, "overrides", "sweep", "size")
        and (field.tables or field.changes in changes)
    )
