"""The whole scenario and the sense its parts must make together."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import combinations
from typing import Any, Literal, Self

from pydantic import Field, PrivateAttr, field_validator, model_validator

from planner.scenario.assumption import Assumption, without
from planner.scenario.cables import Cables
from planner.scenario.fields import Model, assumed, at_odds, found, needed, optional
from planner.scenario.finance import Costs, Finance, Service
from planner.scenario.households import Households
from planner.scenario.operands import with_arrays
from planner.scenario.paths import Path, parts_of
from planner.scenario.place import Demand, Site, Weather
from planner.scenario.prices import Prices
from planner.scenario.records import PumpingTest, WaterQuality
from planner.scenario.size import Size
from planner.scenario.sources import Sources
from planner.scenario.sweep import Sweep
from planner.scenario.tank import Tank, TopUp
from planner.scenario.walk import walk
from planner.scenario.waterworks import Borehole, Controller, Pipeline, Pump
from planner.text.numbers import Language

SOURCE_ORDER = ("solar", "grid", "generator")
NO_CURRENCY = "XXX"
"""Code of ISO 4217 for 'no currency involved'."""
OVERRIDABLE = ("pump", "controller", "topup", "sources", "tank", "costs", "pipeline")


def option_name(sources: tuple[str, ...]) -> str:
    """Name the supply option formed by some sources, in their fixed order; sources of no fixed place come last."""
    known = [name for name in SOURCE_ORDER if name in sources]
    return " + ".join([*known, *(name for name in sources if name not in SOURCE_ORDER)])


def option_names(described: tuple[str, ...]) -> list[str]:
    """Name every supply option that the described sources allow, single sources first."""
    return [option_name(chosen) for size in range(1, len(described) + 1) for chosen in combinations(described, size)]


_PRICES_NAMED = 4


class Scenario(Model):
    """Everything the user tells us about one site."""

    name: str = needed("Name of the project", changes="nothing", min_length=1)
    question: str | None = optional("The question the comparison should answer", changes="nothing")
    include: str | list[str] | None = optional(
        "Files, relative to this one, whose tables hold where this file gives no value of its own: prices and finance "
        "that several sites share",
        changes="nothing",
    )
    currency: str = assumed(
        NO_CURRENCY,
        "Currency of every price, three capital letters such as 'USD'",
        source="no currency in ISO 4217: no prices, and a technical answer",
        changes="nothing",
        pattern=r"^[A-Z]{3}$",
    )
    language: Language = assumed(
        "en",
        "Language of the answer and the reports: keys of this file and messages stay English",
        source="the language of these files",
        changes="nothing",
    )
    price_date: str | None = optional("When the prices were asked", changes="nothing", min_length=1)
    prepared_by: str | None = optional("Who prepared the study", changes="nothing", min_length=1)
    visit_date: str | None = optional("When the site was visited", changes="nothing", min_length=1)
    revision: str | None = optional("Revision of the study", changes="nothing", min_length=1)
    seed: int = assumed(
        1,
        "Seed of everything drawn at random (weather, outages)",
        source="same scenario, same seed, same numbers",
        changes="weather",
        ge=0,
        le=2**31,
    )
    site: Site
    weather: Weather = found("The weather", how="estimated from the coordinates")
    demand: Demand
    borehole: Borehole
    pipeline: Pipeline
    pump: Pump
    controller: Controller = Field(default_factory=Controller)
    topup: TopUp = Field(default_factory=TopUp)
    sources: Sources = found("The sources of power", how="the sun alone")
    tank: Tank = found("The tank", how="chosen among usual sizes")
    service: Service = Field(default_factory=Service)
    costs: Costs = Field(default_factory=Costs)
    finance: Finance = Field(default_factory=Finance)
    households: Households | None = optional("The households that pay", absent="no bill per household")
    pumping_test: PumpingTest | None = optional("The constant-rate pumping test on record", absent="no test on record")
    water_quality: WaterQuality | None = optional("Results of the water's analysis", absent="not analysed")
    prices: Prices | None = optional("A short price list", absent="every price stands with the thing itself")
    cables: Cables | None = optional("The cables", absent="no loss but that in the array's DC wiring")
    size: Size | None = optional("Candidates that 'planner size' tries", absent="ready lists of candidates")
    sweep: Sweep | None = optional(
        "What 'planner sweep' varies", absent="a ready list of inputs is moved down and up by a fifth"
    )
    overrides: dict[str, dict[str, Any]] = Field(
        default_factory=dict,
        description="Values that hold for one supply option only, by its name: [overrides.'solar + grid'.tank]",
    )

    _assumptions: tuple[Assumption, ...] = PrivateAttr(default=())

    @field_validator("overrides")
    @classmethod
    def _overridable(cls, value: dict[str, dict[str, Any]]) -> dict[str, dict[str, Any]]:
        for option, tables in value.items():
            for table in tables:
                if table not in OVERRIDABLE:
                    raise at_odds(
                        (),
                        "'{table}' cannot differ in one option ('{option}'); allowed: {allowed}",
                        {"table": table, "option": option, "allowed": ", ".join(OVERRIDABLE)},
                    )
        return value

    @model_validator(mode="after")
    def _options_described(self) -> Self:
        possible = option_names(self.sources.names)
        named = [("service.options", name) for name in self.service.options]
        if self.service.reference is not None:
            named.append(("service.reference", self.service.reference))
        named += [("overrides", name) for name in self.overrides]
        for where, name in named:
            parts = [part.strip() for part in name.split("+")]
            unknown = [part for part in parts if part not in SOURCE_ORDER]
            missing = [part for part in parts if part in SOURCE_ORDER and part not in self.sources.names]
            if unknown:
                raise at_odds(
                    (where,),
                    "{where} names '{name}', but '{part}' is no source; a supply option is one of: {possible}",
                    {"where": where, "name": name, "part": unknown[0], "possible": "; ".join(possible)},
                )
            if missing:
                raise at_odds(
                    (where,),
                    "{where} names '{name}', but the source '{part}' is not described; add [sources.{part}]",
                    {"where": where, "name": name, "part": missing[0]},
                )
        if self.service.reference is not None and option_name_of(self.service.reference) not in self.option_names:
            raise at_odds(
                ("service.reference",),
                "service.reference '{name}' is not among the options compared: {possible}",
                {"name": self.service.reference, "possible": "; ".join(self.option_names)},
            )
        return self

    @model_validator(mode="after")
    def _controller_fits(self) -> Self:
        low, high = self.controller.dc_voltage_min_v, self.controller.dc_voltage_max_v
        if low is not None and high is not None and low >= high:
            raise at_odds(
                ("controller.dc_voltage_min_v", "controller.dc_voltage_max_v"),
                "controller.dc_voltage_min_v {low} must be below controller.dc_voltage_max_v {high}",
                {"low": low, "high": high},
            )
        return self

    @model_validator(mode="after")
    def _currency_named(self) -> Self:
        if self.priced:
            return self
        prices = [field.key for field in walk(self) if field.given and field.unit.startswith("money")]
        if prices:
            more = f" and {len(prices) - _PRICES_NAMED} more" if len(prices) > _PRICES_NAMED else ""
            raise at_odds(
                prices[:_PRICES_NAMED],
                "currency is left out, so no price can stand, as at {keys}; give the currency, such as "
                "currency = 'USD'",
                {"keys": ", ".join(prices[:_PRICES_NAMED]) + more},
            )
        return self

    @property
    def priced(self) -> bool:
        """Whether there are prices; without a currency there are none, and the answer is a technical one."""
        return self.currency != NO_CURRENCY

    @property
    def litres_per_person_day(self) -> float | None:
        """Water that one person of a household wants, mean of the people other than a school's pupils [L/day]."""
        profile = self.demand.draw_profile
        every = [user for user in self.demand.users if user.kind == "people"]
        homes = [user for user in every if (user.draw_profile or profile) != "school"]
        people = sum(user.count for user in homes)
        return sum(user.count * user.litres_per_person_day for user in homes) / people if people else None

    @property
    def assumptions(self) -> tuple[Assumption, ...]:
        """What was left out and worked out, in the order in which it was."""
        return self._assumptions

    def resting_on(self, assumptions: Iterable[Assumption]) -> Self:
        """Note what was worked out before the scenario was checked."""
        noted = self.model_copy()
        noted._assumptions = tuple(assumptions)
        return noted

    def leaves_open(self, key: str) -> bool:
        """Whether a key was left out and worked out by a rule, so that a search may choose it anew."""
        return any(assumption.key == key for assumption in self._assumptions)

    def choosing(self, key: str, value: float, how: str) -> Self:
        """Put what a search chose in the place of what a rule gave for a key that was left out."""
        noted = [Assumption(each.path, how) if each.key == key else each for each in self._assumptions]
        return with_arrays(self, {parts_of(key): value}).resting_on(noted)

    def given(self, mode: Literal["python", "json"] = "python", *, keep: Iterable[Path] = ()) -> dict[str, Any]:
        """Return the raw data that the user gave, without what was worked out.

        Parameters
        ----------
        mode : str
            As of `pydantic.BaseModel.model_dump`.
        keep : iterable of tuple
            Keys that are to be set: what was worked out there stays, as the rest of their table is wanted with them.
        """
        return without(self.model_dump(mode=mode, exclude_unset=True), self._assumptions, keep)

    @property
    def option_names(self) -> list[str]:
        """Names of the supply options to compare."""
        if self.service.options:
            return list(dict.fromkeys(option_name_of(name) for name in self.service.options))
        return option_names(self.sources.names)

    @property
    def place_besides_name(self) -> str:
        """Name of the place where it says more than the name of the project; else ''."""
        return "" if self.site.place == self.name else self.site.place

    @property
    def people(self) -> float | None:
        """Number of people served in the first year, or None where no user is people."""
        counts = [user.count for user in self.demand.users if user.kind == "people"]
        return sum(counts) if counts else None


def option_name_of(text: str) -> str:
    """Bring a supply option's name as a user wrote it to the fixed order of its sources."""
    return option_name(tuple(part.strip() for part in text.split("+")))
