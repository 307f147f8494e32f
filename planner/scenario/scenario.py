"""The whole scenario and the sense its parts must make together."""

from __future__ import annotations

from itertools import combinations
from typing import Any, Self

from pydantic import Field, field_validator, model_validator
from pydantic_core import PydanticCustomError

from planner.scenario.cables import Cables
from planner.scenario.fields import Model, assumed, needed, optional
from planner.scenario.finance import Costs, Finance, Service
from planner.scenario.place import Demand, Site, Weather
from planner.scenario.size import Size
from planner.scenario.sources import Sources
from planner.scenario.sweep import Sweep
from planner.scenario.tank import Tank, TopUp
from planner.scenario.waterworks import Borehole, Controller, Pipeline, Pump

SOURCE_ORDER = ("solar", "grid", "generator")
OVERRIDABLE = ("pump", "controller", "topup", "sources", "tank", "costs", "pipeline")


def option_name(sources: tuple[str, ...]) -> str:
    """Name the supply option formed by some sources, in their fixed order; sources of no fixed place come last."""
    known = [name for name in SOURCE_ORDER if name in sources]
    return " + ".join([*known, *(name for name in sources if name not in SOURCE_ORDER)])


def option_names(described: tuple[str, ...]) -> list[str]:
    """Name every supply option that the described sources allow, single sources first."""
    return [option_name(chosen) for size in range(1, len(described) + 1) for chosen in combinations(described, size)]


class Scenario(Model):
    """Everything the user tells us about one site."""

    name: str = needed("Name of the project", changes="nothing", min_length=1)
    question: str | None = optional("The question the comparison should answer", changes="nothing")
    currency: str = needed("Currency of every price, three letters", changes="nothing", pattern=r"^[A-Z]{3}$")
    seed: int = assumed(
        1,
        "Seed of everything drawn at random (weather, outages)",
        source="same scenario, same seed, same numbers",
        changes="weather",
        ge=0,
        le=2**31,
    )
    site: Site
    weather: Weather
    demand: Demand
    borehole: Borehole
    pipeline: Pipeline
    pump: Pump
    controller: Controller = Field(default_factory=Controller)
    topup: TopUp = Field(default_factory=TopUp)
    sources: Sources
    tank: Tank
    service: Service = Field(default_factory=Service)
    costs: Costs = Field(default_factory=Costs)
    finance: Finance
    cables: Cables | None = optional("The cables", absent="no loss but that in the array's DC wiring")
    size: Size | None = optional("Candidates that 'planner size' tries", absent="ready lists of candidates")
    sweep: Sweep | None = optional(
        "What 'planner sweep' varies", absent="a ready list of inputs is moved down and up by a fifth"
    )
    overrides: dict[str, dict[str, Any]] = Field(
        default_factory=dict,
        description="Values that hold for one supply option only, by its name: [overrides.'solar + grid'.tank]",
    )

    @field_validator("overrides")
    @classmethod
    def _overridable(cls, value: dict[str, dict[str, Any]]) -> dict[str, dict[str, Any]]:
        for option, tables in value.items():
            for table in tables:
                if table not in OVERRIDABLE:
                    raise PydanticCustomError(
                        "override",
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
                raise PydanticCustomError(
                    "option",
                    "{where} names '{name}', but '{part}' is no source; a supply option is one of: {possible}",
                    {"where": where, "name": name, "part": unknown[0], "possible": "; ".join(possible)},
                )
            if missing:
                raise PydanticCustomError(
                    "option",
                    "{where} names '{name}', but the source '{part}' is not described; add [sources.{part}]",
                    {"where": where, "name": name, "part": missing[0]},
                )
        if self.service.reference is not None and option_name_of(self.service.reference) not in self.option_names:
            raise PydanticCustomError(
                "option",
                "service.reference '{name}' is not among the options compared: {possible}",
                {"name": self.service.reference, "possible": "; ".join(self.option_names)},
            )
        return self

    @model_validator(mode="after")
    def _controller_fits(self) -> Self:
        low, high = self.controller.dc_voltage_min_v, self.controller.dc_voltage_max_v
        if low is not None and high is not None and low >= high:
            raise PydanticCustomError(
                "controller",
                "controller.dc_voltage_min_v {low} must be below controller.dc_voltage_max_v {high}",
                {"low": low, "high": high},
            )
        return self

    @property
    def option_names(self) -> list[str]:
        """Names of the supply options to compare."""
        if self.service.options:
            return list(dict.fromkeys(option_name_of(name) for name in self.service.options))
        return option_names(self.sources.names)

    @property
    def people(self) -> float | None:
        """Number of people served in the first year, or None where no user is people."""
        counts = [user.count for user in self.demand.users if user.kind == "people"]
        return sum(counts) if counts else None


def option_name_of(text: str) -> str:
    """Bring a supply option's name as a user wrote it to the fixed order of its sources."""
    return option_name(tuple(part.strip() for part in text.split("+")))
