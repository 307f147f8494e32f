"""The sources that could serve the pump: sun (in `solar`), grid and generator, with equipment, prices, availability."""

from __future__ import annotations

from typing import Annotated, Self

from pydantic import Field, model_validator

from planner.scenario.equipment import Equipment
from planner.scenario.fields import (
    COMMON_PRACTICE,
    FROM_MEMORY,
    HourRange,
    Model,
    NonNegative12,
    NonNegative24,
    Percent,
    assumed,
    at_odds,
    found,
    needed,
    optional,
    several,
)
from planner.scenario.solar import Solar

Month = Annotated[int, Field(ge=1, le=12)]
_MONTH_DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)


class Band(Model):
    """Hours of the day with an energy price of their own."""

    changes = "money"

    name: str = needed("Name of the band", changes="nothing", min_length=1)
    hours: list[HourRange] = several("Parts of the day, [from, to] in local standard time", changes="run", min_length=1)
    months: list[Month] = several("Months in which the band holds, 1 to 12; none means all year", changes="run")
    price_per_kwh: float = needed("Energy price", "money/kWh", ge=0)


class Block(Model):
    """A step of a rising-block tariff."""

    changes = "money"

    up_to_kwh_month: float | None = optional(
        "Monthly use up to which the price holds", "kWh/month", absent="no upper end", gt=0
    )
    price_per_kwh: float = needed("Energy price", "money/kWh", ge=0)


class Tariff(Model):
    """What the grid's energy costs."""

    changes = "money"

    price_per_kwh: float | None = optional(
        "Energy price outside the bands", "money/kWh", absent="blocks are given instead", ge=0
    )
    bands: list[Band] = several("Time bands with their own price; the first that holds counts")
    blocks: list[Block] = several("Rising (or falling) blocks by monthly use, instead of one energy price")
    fixed_charge_per_month: float = assumed(0.0, "Fixed charge", "money/month", source="no charge entered", ge=0)
    demand_charge_per_kw_month: float = assumed(
        0.0,
        "Charge on the highest half-hourly demand of each month",
        "money/kW/month",
        source="no charge entered",
        ge=0,
    )
    levy_per_kwh: float = assumed(0.0, "Levies on energy", "money/kWh", source="no levy entered", ge=0)
    tax_percent: Percent = assumed(0.0, "Tax on the whole bill", "%", source="no tax entered")
    price_growth_percent_per_year: float = assumed(
        0.0, "Growth of the tariff beyond general inflation", "%/year", source="none assumed", ge=-10, le=20
    )

    @model_validator(mode="after")
    def _one_price(self) -> Self:
        if (self.price_per_kwh is None) == (not self.blocks):
            raise at_odds(
                ("price_per_kwh", "blocks"), "give either price_per_kwh or blocks (both or neither was given)"
            )
        if self.blocks and self.bands:
            raise at_odds(("bands", "blocks"), "bands and blocks cannot be combined; give one of them")
        ends = [block.up_to_kwh_month for block in self.blocks]
        if ends:
            if ends[-1] is not None or any(end is None for end in ends[:-1]):
                raise at_odds(("blocks",), "the last block, and only the last, has no up_to_kwh_month")
            known = [end for end in ends if end is not None]
            if known != sorted(set(known)):
                raise at_odds(("blocks",), "blocks must be in order of rising up_to_kwh_month")
        return self


class Outages(Model):
    """Random failures of the grid, drawn anew for each life year."""

    hours_per_day: float = needed("Mean hours without grid per day, over the year", "h/day", ge=0, lt=24)
    mean_duration_h: float = needed("Mean duration of one outage", "h", gt=0, le=720)
    month_weights: NonNegative12 | None = optional(
        "Hours without grid in each month against each other, such as 1 in wet months and 3 in dry ones; their mean "
        "stays that of the year",
        absent="alike in every month",
    )
    start_weights: NonNegative24 | None = optional(
        "How often outages begin in each hour of the day from midnight, against each other, such as 4 in the evening "
        "peak and 1 else",
        absent="alike in every hour",
    )

    @model_validator(mode="after")
    def _some_weight(self) -> Self:
        for name in ("month_weights", "start_weights"):
            weights = getattr(self, name)
            if weights is not None and not any(weights):
                raise at_odds((name,), f"{name} must not all be 0")
        most = max(self.month_hours())
        if most >= 24:
            raise at_odds(
                ("hours_per_day", "month_weights"),
                "hours_per_day {given} with these month_weights makes {most} hours without grid a day in one month; "
                "must be below 24",
                {"given": self.hours_per_day, "most": round(most, 1)},
            )
        return self

    def month_hours(self) -> list[float]:
        """Mean hours without grid per day in each month [h/day]."""
        weights = self.month_weights or [1.0] * 12
        mean = sum(weight * days for weight, days in zip(weights, _MONTH_DAYS, strict=True)) / sum(_MONTH_DAYS)
        return [self.hours_per_day * weight / mean for weight in weights]


class Grid(Equipment):
    """The grid; `price` is the whole cost of connection less the line."""

    hours: list[HourRange] = several("Hours of the day in which the grid is on; none means all day")
    outages: Outages | None = optional("Random outages within those hours", absent="no outages")
    power_limit_w: float | None = optional("Largest power the connection gives", "W", absent="no limit", gt=0)
    voltage_v: float | None = optional("Nominal voltage at the pump's connection", "V", gt=0, le=1000)
    voltage_tolerance_percent: float = assumed(
        10.0,
        "Variation of the voltage, either way",
        "%",
        source="supply voltage of public networks: IEC 60038, EN 50160",
        changes="nothing",
        ge=0,
        le=50,
    )
    phases: Annotated[int, Field(ge=1, le=3)] | None = optional("Phases", changes="nothing")
    frequency_hz: float | None = optional("Frequency", "Hz", changes="nothing", gt=0, le=400)
    line_length_m: float = assumed(
        0.0, "Length of new line to the pump", "m", source="no new line", changes="money", ge=0, le=1e5
    )
    line_price_per_m: float = assumed(
        0.0, "Price of new line", "money/m", source="no cost entered", changes="money", ge=0
    )
    life_years: float = assumed(
        20.0,
        "Service life of the connection",
        "years",
        source=f"assumed, {COMMON_PRACTICE}",
        changes="money",
        gt=0,
        le=100,
    )
    tariff: Tariff = Field(
        default_factory=lambda: Tariff(price_per_kwh=0.0), description="The tariff; left out, its energy has no price"
    )
    co2_kg_per_kwh: float | None = optional(
        "Carbon dioxide per kWh",
        "kg/kWh",
        absent="no figure: grid emissions are not counted",
        changes="money",
        ge=0,
        le=3,
    )


class Generator(Equipment):
    """The generating set."""

    rating_kw: float = found(
        "Rated power at the reference conditions", "kW", how="what the pump needs to start and run here", gt=0, le=5000
    )
    idle_l_per_h_per_kw: float = assumed(
        0.08145,
        "Fuel at no load, per kW of rating",
        "L/h/kW",
        source=f"Skarstein and Uhlen 1989, Wind Eng. 13(2), {FROM_MEMORY}",
        ge=0,
        le=1,
    )
    marginal_l_per_kwh: float = assumed(
        0.246,
        "Further fuel per kWh",
        "L/kWh",
        source=f"Skarstein and Uhlen 1989, Wind Eng. 13(2), {FROM_MEMORY}",
        gt=0,
        le=2,
    )
    fuel_price_per_l: float = assumed(
        0.0, "Price of fuel at the filling station", "money/L", source="no cost entered", changes="money", ge=0
    )
    fuel_delivery_per_l: float = assumed(
        0.0, "Cost of bringing the fuel to the site", "money/L", source="no cost entered", changes="money", ge=0
    )
    fuel_price_growth_percent_per_year: float = assumed(
        0.0,
        "Growth of the fuel price beyond general inflation",
        "%/year",
        source="none assumed",
        changes="money",
        ge=-10,
        le=20,
    )
    hours: list[HourRange] = several("Hours of the day in which it may run; none means any")
    minimum_run_h: float = assumed(0.0, "Shortest run once started", "h", source="no minimum", ge=0, le=12)
    derating_percent_per_100m: float = assumed(
        1.0,
        "Loss of rating per 100 m above the altitude from which it falls",
        "%",
        source="1 % per 100 m above 305 m: MSHA rule for naturally aspirated engines",
        ge=0,
        le=5,
    )
    derating_from_altitude_m: float = assumed(
        305.0,
        "Altitude from which the rating falls",
        "m",
        source="MSHA rule for naturally aspirated engines",
        ge=0,
        le=5000,
    )
    derating_percent_per_k: float = assumed(
        0.45,
        "Loss of rating per kelvin above the air temperature from which it falls",
        "%/K",
        source="5 % at 43 deg C: Hicks, Handbook of Energy Engineering Calculations",
        ge=0,
        le=5,
    )
    derating_from_temperature_c: float = assumed(
        32.2,
        "Air temperature from which the rating falls",
        "deg C",
        source="Hicks, Handbook of Energy Engineering Calculations",
        ge=0,
        le=60,
    )
    voltage_v: float | None = optional("Voltage", "V", gt=0, le=1000)
    phases: Annotated[int, Field(ge=1, le=3)] | None = optional("Phases", changes="nothing")
    frequency_hz: float | None = optional("Frequency", "Hz", changes="nothing", gt=0, le=400)
    transient_reactance_percent: float = assumed(
        25.0,
        "Transient reactance of the alternator, for the voltage dip when the motor starts",
        "%",
        source=f"assumed, {COMMON_PRACTICE}",
        changes="nothing",
        gt=2,
        le=60,
    )
    life_hours: float = assumed(
        20000.0,
        "Running hours until it is replaced",
        "h",
        source="commercial sets 20 000-30 000 h",
        changes="money",
        gt=0,
        le=2e5,
    )
    life_years: float = assumed(
        15.0,
        "Longest life whatever the hours",
        "years",
        source=f"assumed, {COMMON_PRACTICE}",
        changes="money",
        gt=0,
        le=100,
    )
    service_interval_h: float = assumed(
        250.0,
        "Running hours between services",
        "h",
        source="oil and filter every 250 h: common service schedules",
        changes="money",
        gt=0,
        le=5000,
    )
    service_price: float = assumed(
        0.0, "Price of one service", "money", source="no cost entered", changes="money", ge=0
    )
    overhaul_interval_h: float = assumed(
        10000.0,
        "Running hours between overhauls",
        "h",
        source=f"assumed, {COMMON_PRACTICE}",
        changes="money",
        gt=0,
        le=1e5,
    )
    overhaul_price: float = assumed(
        0.0, "Price of one overhaul", "money", source="no cost entered", changes="money", ge=0
    )
    co2_kg_per_l: float = assumed(
        2.68,
        "Carbon dioxide per litre of fuel",
        "kg/L",
        source="diesel: IPCC 2006 Guidelines vol. 2, 74.1 kg/GJ, 43.0 GJ/t, 0.84 kg/L",
        changes="money",
        ge=0,
        le=5,
    )


class Sources(Model):
    """The sources at hand; each that is described can serve."""

    solar: Solar | None = optional("The sun", absent="no solar option")
    grid: Grid | None = optional("The grid", absent="no grid option")
    generator: Generator | None = optional("A generator", absent="no generator option")

    @model_validator(mode="after")
    def _any(self) -> Self:
        if not (self.solar or self.grid or self.generator):
            raise at_odds(
                ("solar", "grid", "generator"),
                "describe at least one of sources.solar, sources.grid, sources.generator",
            )
        return self

    @property
    def names(self) -> tuple[str, ...]:
        """Names of the described sources, in their fixed order."""
        return tuple(name for name in ("solar", "grid", "generator") if getattr(self, name) is not None)
