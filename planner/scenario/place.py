"""Where the scheme stands, the weather there and who draws water."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import AfterValidator, Field

from planner.scenario.fields import (
    COMMON_PRACTICE,
    Model,
    Month12,
    NonNegative12,
    assumed,
    at_odds,
    found,
    needed,
    optional,
    several,
)


class Site(Model):
    """The place on the map."""

    changes = "weather"

    place: str = found("Name of the place", how="the name of the project", changes="nothing", min_length=1)
    latitude_deg: float = needed("Latitude, north positive", "deg", ge=-90, le=90)
    longitude_deg: float = needed("Longitude, east positive", "deg", ge=-180, le=180)
    time_zone: str = found(
        "Fixed offset of local standard time such as '+05:45', or an IANA zone name such as 'Africa/Nairobi'",
        how="from the coordinates",
        min_length=1,
    )
    altitude_m: float | None = optional(
        "Ground level above the sea", "m", absent="taken from pvlib's world grid", ge=-450, le=6000
    )
    temperature_lowest_c: float | None = optional(
        "Lowest air temperature to be expected in the life of the works",
        "deg C",
        absent="the coldest hour of the weather less 5 K",
        changes="nothing",
        ge=-50,
        le=40,
    )
    temperature_highest_c: float | None = optional(
        "Highest air temperature to be expected",
        "deg C",
        absent="the hottest hour of the weather",
        changes="nothing",
        ge=0,
        le=60,
    )


class _MonthlyMeans(Model):
    changes = "weather"

    kind: Literal["monthly"]
    ghi_kwh_m2_day: NonNegative12 = needed("Monthly mean of daily irradiation on a horizontal plane", "kWh/m2/day")
    temperature_c: Month12 = needed("Monthly mean air temperature", "deg C")
    temperature_range_k: NonNegative12 | None = optional(
        "Monthly mean of the daily range, maximum less minimum",
        "K",
        absent="derived from the clearness of each month (Erbs, Klein and Beckman 1983), poor at humid places",
    )


class _SyntheticWeather(Model):
    """Hourly years made from twelve monthly means: what there is to say about the spread of days, months and years."""

    changes = "weather"

    kind: Literal["monthly", "estimate"]
    annual_spread_percent: float = assumed(
        4.0,
        "Standard deviation of the yearly irradiation about its mean",
        "%",
        source=f"assumed, {COMMON_PRACTICE}",
        ge=0,
        le=20,
    )
    monthly_spread_percent: float | None = optional(
        "Standard deviation of a month's irradiation beside that of its year, the same in all months; 0 for none",
        "%",
        absent="what chance makes of the month's days by the law of daily clearness, about 2 to 14 %",
        ge=0,
        le=20,
    )
    daily_law: Literal["by_latitude", "saunier", "bendt"] = assumed(
        "by_latitude",
        "Law of daily clearness: 'saunier' has few very dull days, 'bendt' many; 'by_latitude' passes from the one "
        "to the other between 28 and 35 degrees",
        source="Saunier, Reddy and Kumar 1987, Solar Energy 38:169-177, for the tropics; Bendt, Collares-Pereira and "
        "Rabl 1981, Solar Energy 27:1-5, beyond; the latitudes assumed, judged at three typical years",
    )
    clearness_maximum: Literal["clear_sky", "general"] = assumed(
        "clear_sky",
        "Brightest day of a month: 'general' depends on the mean alone; 'clear_sky' is that, but at most 1.15 times "
        "the month's clear sky",
        source="Hollands and Huget 1983, Solar Energy 30:195-209; the 1.15 assumed, judged at three typical years",
    )


# Fields come from the last of the bases first: the means before their spread.
class MonthlyWeather(_SyntheticWeather, _MonthlyMeans):
    """Twelve monthly means, turned into a different synthetic year for each life year."""

    kind: Literal["monthly"]


class EstimatedWeather(_SyntheticWeather):
    """Twelve monthly means of a coarse climatology, found by latitude and longitude, for a first look at a site."""

    kind: Literal["estimate"]


class FileWeather(Model):
    """A weather file, used as it is for every life year (several years in the file take turns)."""

    changes = "weather"

    kind: Literal["file"]
    file: str = needed("Path of the weather file, relative to the scenario", min_length=1)
    file_format: Literal["auto", "epw", "tmy3", "tm2", "pvgis_tmy", "pvgis_hourly", "csv"] = assumed(
        "auto", "Format of the file", source="guessed from the file's name and first lines"
    )


Weather = Annotated[MonthlyWeather | FileWeather | EstimatedWeather, Field(discriminator="kind")]

Profile = Literal["household", "school", "livestock", "morning", "night", "even"]


def _whole_day(fractions: list[float]) -> list[float]:
    total = sum(fractions)
    if abs(total - 1) > 0.01:
        raise at_odds((), "24 fractions must add up to 1 (they add up to {total})", {"total": total})
    return fractions


Fractions24 = Annotated[
    list[Annotated[float, Field(ge=0)]], Field(min_length=24, max_length=24), AfterValidator(_whole_day)
]


class _User(Model):
    name: str = found("Who draws the water", how="the kind of user", changes="nothing", min_length=1)
    growth_percent_per_year: float | None = optional(
        "Growth of this user's demand", "%/year", absent="the growth of the whole demand", ge=-20, le=30
    )
    draw_profile: Profile | Fractions24 | None = optional(
        "When in the day the water is drawn: a ready profile or 24 fractions",
        absent="the profile of the whole demand",
    )


class People(_User):
    """People, by head and day."""

    kind: Literal["people"]
    count: float = needed("Number of people in the first year", "people", gt=0, le=1e7)
    litres_per_person_day: float = assumed(
        25.0,
        "Water per person and day",
        "L/person/day",
        source="rural supply in the National Water Policy of Tanzania 2002, from memory; WHO (Howard and Bartram 2003) "
        "calls about 20 basic access, Sphere 2018 asks for at least 15 in an emergency",
        gt=0,
        le=1000,
    )


class Livestock(_User):
    """Animals, by head and day."""

    kind: Literal["livestock"]
    count: float = needed("Number of animals in the first year", "head", gt=0, le=1e7)
    litres_per_head_day: float = needed("Water per animal and day", "L/head/day", gt=0, le=1000)


class Irrigation(_User):
    """A watered field, by its net requirement."""

    kind: Literal["irrigation"]
    area_m2: float = needed("Watered area", "m2", gt=0, le=1e8)
    net_requirement_mm_day: NonNegative12 = needed("Net irrigation requirement by month", "mm/day")
    application_efficiency_percent: float = needed(
        "Share of the water applied that the crop can use", "%", gt=0, le=100
    )


class Volume(_User):
    """A known daily volume."""

    kind: Literal["volume"]
    m3_per_day: NonNegative12 = needed("Daily volume by month", "m3/day")


User = Annotated[People | Livestock | Irrigation | Volume, Field(discriminator="kind")]


class Demand(Model):
    """Everything that is drawn from the tank."""

    growth_percent_per_year: float = assumed(
        0.0, "Growth of demand", "%/year", source="no growth assumed", ge=-20, le=30
    )
    leakage_percent: float = assumed(
        0.0, "Share of the water leaving the tank that is lost", "%", source="no leakage assumed", ge=0, lt=90
    )
    leakage_m3_per_day: float = assumed(
        0.0,
        "Further water lost at a steady rate day and night, as through joints and taps that drip",
        "m3/day",
        source="no leakage assumed",
        ge=0,
        le=1e5,
    )
    draw_profile: Profile | Fractions24 = assumed(
        "household",
        "When in the day the water is drawn: a ready profile or 24 fractions",
        source=COMMON_PRACTICE,
    )
    users: list[User] = several("Who draws the water", min_length=1)
