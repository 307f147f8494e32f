"""What a source of power is: everything that the planner asks of one, whichever it is."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, ClassVar, NamedTuple, Self

import numpy as np
from numpy.typing import ArrayLike, NDArray

from planner.money.quantities import Line, Priced
from planner.money.yearly import Column, Definition
from planner.resource.years import WeatherYears
from planner.scenario.errors import InputError, Problem
from planner.scenario.fields import HourRange
from planner.scenario.scenario import Scenario
from planner.supply.array import ArrayPower
from planner.supply.cables import ac_loss_share
from planner.supply.generator import FuelUse
from planner.supply.series import Sun, TopUpSource
from planner.text import source_name, text

Array = NDArray[np.float64]


@dataclass(frozen=True)
class Surroundings:
    """Altitude [m] and weather at the site, and the weather year of each life year, (years,)."""

    altitude_m: float
    weather: WeatherYears
    weather_of_year: NDArray[np.int64]


class Bands(NamedTuple):
    """Tariff band of each hour, (hours,), and the number of bands."""

    of_hour: NDArray[np.int64]
    band_count: int


@dataclass(frozen=True)
class AcSupply:
    """The AC that a source gives, as the checks of the AC side judge it.

    Attributes
    ----------
    name : str
        The source.
    voltage_v, phases, frequency_hz : float, int, float or None
        Nominal values; None where not given.
    voltage_tolerance_percent : float
        Variation of the voltage, either way.
    """

    name: str
    voltage_v: float | None
    phases: int | None
    frequency_hz: float | None
    voltage_tolerance_percent: float


class SourceKind(str, ABC):
    """A source of power: its name, together with what it can do and what it costs.

    It is a string, its key, so that it stands wherever the name of a source is asked for: in the scenario's lists of
    sources, in the name of a supply option, in reports.

    Attributes
    ----------
    key : str
        Its name.
    """

    key: ClassVar[str]
    check_topic: ClassVar[str] = "ac"
    """Topic of the checks that concern only options with a source of its sort, and of its cautions."""
    has_array: ClassVar[bool] = False
    """Whether the sun gives its power."""

    def __new__(cls, *_: Any, **__: Any) -> Self:
        """Make the string of the key; what else is given is for the initialiser."""
        return super().__new__(cls, cls.key)

    @abstractmethod
    def described(self, scenario: Scenario) -> bool:
        """Whether it is at hand."""

    @abstractmethod
    def lines(self, scenario: Scenario, strings: ArrayLike) -> list[Line]:
        """Its lines of the bill of quantities; `strings` (...) are those of the array."""

    def priced(self, scenario: Scenario, running_hours: float) -> list[Priced]:
        """What of it is to have a price in the scenario, after some running hours over the life."""
        return []

    def prices(self, scenario: Scenario) -> dict[str, Any]:
        """Its prices, by fields of `planner.money.terms.Terms`."""
        return {}

    @property
    def running(self) -> tuple[Column, ...]:
        """What it costs to run, by category; see `planner.money.terms.Terms` for what the definitions are given."""
        return ()

    @property
    def emission(self) -> Definition | None:
        """Its carbon dioxide [kg], from the same figures; None where it has none."""
        return None

    def emission_known(self, scenario: Scenario) -> bool:
        """Whether its carbon dioxide is counted, or it has none."""
        return True

    @property
    def emission_caution(self) -> str:
        """What is said where its carbon dioxide is not known."""
        return text("caution.source_carbon", source=source_name(self))

    @property
    def cautions(self) -> tuple[str, ...]:
        """What of it can kill, in whole sentences, beside what is said of every supply."""
        return (text("caution.source_any", source=source_name(self)),)

    @property
    def supply_name(self) -> str:
        """What there is of it at the site to be isolated."""
        return source_name(self)

    @property
    def emission_name(self) -> str:
        """What its carbon dioxide comes from."""
        return source_name(self)

    def array(self, scenario: Scenario, weather: WeatherYears) -> ArrayPower:
        """Hourly power of its array; asked only where there is one."""
        raise NotImplementedError(f"'{self}' has no array")

    def sun(
        self, scenario: Scenario, array: ArrayPower, weather_of_year: NDArray[np.int64], strings: tuple[int, ...]
    ) -> Sun:
        """Its array for the hour loop; asked only where there is one."""
        raise NotImplementedError(f"'{self}' has no array")

    def strings_to_try(self, scenario: Scenario) -> tuple[int, ...]:
        """Numbers of strings that an option with its array may have; (0,) without."""
        return (0,)

    def strings_to_size(self, scenario: Scenario, listed: Sequence[int]) -> tuple[int, ...]:
        """Numbers of strings that sizing tries, in rising order: those listed, else all, and the one given."""
        return (0,)

    def modules(self, scenario: Scenario, strings: int) -> int:
        """Modules in so many strings."""
        return 0

    def array_kw(self, scenario: Scenario, strings: int) -> float:
        """Rated power of so many strings [kW]."""
        return 0.0

    def rating_kw(self, scenario: Scenario) -> float:
        """Rated power of a generating set [kW]; NaN where it has none."""
        return np.nan


class TopUpSourceKind(SourceKind):
    """A source that pumps where sun and tank do not suffice."""

    @property
    def cautions(self) -> tuple[str, ...]:
        """What of it can kill, and of the alternating current that it gives."""
        return (*super().cautions, text("caution.residual_current"))

    @abstractmethod
    def available(self, scenario: Scenario) -> Array:
        """Share of each hour in which it can be used, (hours, years).

        Raises
        ------
        InputError
            When the scenario asks for what cannot be.
        """

    @abstractmethod
    def power_w(self, scenario: Scenario, around: Surroundings) -> Array:
        """Its largest AC power, (hours, years) or (1, years) [W]."""

    def efficiency(self, scenario: Scenario) -> float:
        """Efficiency from its terminals to the controller's output."""
        return scenario.controller.ac_efficiency_percent / 100

    def minimum_run_h(self, scenario: Scenario) -> float:
        """Shortest run once started [h]."""
        return 0.0

    def bands(self, scenario: Scenario) -> Bands | None:
        """Its tariff's bands, None where every hour is alike."""
        return None

    def fuel(self, scenario: Scenario) -> FuelUse | None:
        """Fuel it burns, None where it takes none."""
        return None

    def supply(self, scenario: Scenario) -> AcSupply | None:
        """Its AC, None where the scenario says nothing of it."""
        return None

    def hours(self, scenario: Scenario) -> list[HourRange] | None:
        """Parts of the day in which it may run, none meaning all day; None where a timer cannot hold it to others."""
        return None

    def held_to(self, scenario: Scenario, hours: list[HourRange]) -> Scenario:
        """Hold it to some parts of the day; asked only where a timer can."""
        raise NotImplementedError(f"'{self}' has no hours")

    def top_up(self, scenario: Scenario, around: Surroundings) -> TopUpSource:
        """Put it together for the hour loop."""
        bands = self.bands(scenario)
        return TopUpSource(
            name=self.key,
            available=self.available(scenario),
            power_w=self.power_w(scenario, around),
            efficiency=self.efficiency(scenario),
            parallel=scenario.controller.mode == "parallel",
            minimum_run_h=self.minimum_run_h(scenario),
            bands=None if bands is None else bands.of_hour,
            band_count=1 if bands is None else bands.band_count,
            fuel=self.fuel(scenario),
        )


class DescribedTopUp(TopUpSourceKind):
    """A top-up source that a table of the scenario describes, below `sources`, under its name."""

    def described(self, scenario: Scenario) -> bool:
        """Whether the scenario has the table."""
        return getattr(scenario.sources, self.key) is not None

    def hours(self, scenario: Scenario) -> list[HourRange] | None:
        """Those of the table."""
        hours: list[HourRange] = getattr(scenario.sources, self.key).hours
        return hours

    def held_to(self, scenario: Scenario, hours: list[HourRange]) -> Scenario:
        """Put other hours into the table."""
        table = getattr(scenario.sources, self.key).model_copy(update={"hours": hours})
        return scenario.model_copy(update={"sources": scenario.sources.model_copy(update={self.key: table})})


def through_ac_cable(scenario: Scenario, voltage_v: float | None, phases: int | None) -> float:
    """Efficiency from an AC supply to the controller's output, the AC cable's loss at rated power taken off.

    Raises
    ------
    InputError
        When the cable would lose all.
    """
    efficiency = scenario.controller.ac_efficiency_percent / 100
    run = scenario.cables.ac if scenario.cables else None
    if run is None or voltage_v is None:
        return efficiency
    share = ac_loss_share(run, scenario.pump.rated_power_w / efficiency, voltage_v, phases or 1)
    if share >= 1:
        text = "the cable would lose all that grid or generator give; take a larger section"
        raise InputError("", [Problem("cables.ac.section_mm2", text)])
    return efficiency * (1 - share)
