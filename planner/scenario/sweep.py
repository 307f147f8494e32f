"""What `planner sweep` varies: inputs one at a time, in a grid, at random, and the weather's years."""

from __future__ import annotations

from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from planner.scenario.fields import Model, assumed, at_odds, needed, optional, several

_KEY = "Key of the scenario by its dotted path, such as 'finance.discount_rate_percent' or 'demand.users[1].count'"


def _rising(low: float | None, high: float | None) -> None:
    if low is not None and high is not None and high <= low:
        raise at_odds(("low", "high"), "high {high} must be above low {low}", {"low": low, "high": high})


class SteppedInput(Model):
    """An input moved to a low and a high value while all others stay."""

    key: str = needed(_KEY, min_length=1)
    low: float | None = optional("Low value", "as the key", absent="the change by percent below the scenario's value")
    high: float | None = optional("High value", "as the key", absent="the change by percent above the scenario's value")
    change_percent: float | None = optional(
        "Change down and up from the scenario's value, instead of low and high",
        "%",
        absent="low and high are given",
        gt=0,
        le=100,
    )

    @model_validator(mode="after")
    def _one_way(self) -> Self:
        ends = self.low is not None and self.high is not None
        if ends == (self.change_percent is not None) or (self.low is None) != (self.high is None):
            raise at_odds(("low", "high", "change_percent"), "give either low and high, or change_percent")
        _rising(self.low, self.high)
        return self


class GridInput(Model):
    """An input that takes each of some values, combined with every value of the other inputs."""

    key: str = needed(_KEY, min_length=1)
    values: list[float] = needed("Values to take", "as the key", min_length=1, max_length=10_000)


class Uniform(Model):
    """Any value between two ends, all alike."""

    kind: Literal["uniform"]
    key: str = needed(_KEY, min_length=1)
    low: float = needed("Lowest value", "as the key")
    high: float = needed("Highest value", "as the key")

    @model_validator(mode="after")
    def _ends(self) -> Self:
        _rising(self.low, self.high)
        return self


class Triangular(Model):
    """Between two ends, most often near the mode."""

    kind: Literal["triangular"]
    key: str = needed(_KEY, min_length=1)
    low: float = needed("Lowest value", "as the key")
    mode: float = needed("Most likely value", "as the key")
    high: float = needed("Highest value", "as the key")

    @model_validator(mode="after")
    def _rising(self) -> Self:
        if not (self.low <= self.mode <= self.high and self.low < self.high):
            raise at_odds(("low", "mode", "high"), "low, mode and high must be in rising order")
        return self


class _Spread(Model):
    key: str = needed(_KEY, min_length=1)
    mean: float = needed("Mean, before any cut", "as the key")
    standard_deviation: float = needed("Standard deviation, before any cut", "as the key", gt=0)
    low: float | None = optional("Cut off below", "as the key", absent="no cut")
    high: float | None = optional("Cut off above", "as the key", absent="no cut")

    @model_validator(mode="after")
    def _ends(self) -> Self:
        _rising(self.low, self.high)
        return self


class Normal(_Spread):
    """A normal distribution, cut at its ends where they are given."""

    kind: Literal["normal"]


class LogNormal(_Spread):
    """A value whose logarithm is normal; mean and standard deviation are of the value itself."""

    kind: Literal["lognormal"]

    @model_validator(mode="after")
    def _positive(self) -> Self:
        if self.mean <= 0:
            raise at_odds(("mean",), "the mean of a lognormal input must be above 0")
        if self.high is not None and self.high <= 0:
            raise at_odds(("high",), "high of a lognormal input must be above 0")
        return self


class Discrete(Model):
    """One of some values, each with its weight."""

    kind: Literal["discrete"]
    key: str = needed(_KEY, min_length=1)
    values: list[float] = needed("Values it can take", "as the key", min_length=1, max_length=1000)
    weights: list[Annotated[float, Field(ge=0)]] = several("Weights of the values; none means all alike")

    @model_validator(mode="after")
    def _weighed(self) -> Self:
        if self.weights and (len(self.weights) != len(self.values) or sum(self.weights) <= 0):
            raise at_odds(("weights",), "give one weight for each value, not all of them 0")
        return self


RandomInput = Annotated[Uniform | Triangular | Normal | LogNormal | Discrete, Field(discriminator="kind")]


class Correlation(Model):
    """Two random inputs that tend to move together."""

    first: str = needed("Key of one random input", min_length=1)
    second: str = needed("Key of the other", min_length=1)
    rank_correlation: float = needed("Spearman's rank correlation of the two", gt=-1, lt=1)


class RandomSweep(Model):
    """Inputs drawn at random, all at once."""

    draws: int = assumed(200, "Number of draws", source="enough for the middle of the spread", ge=10, le=200_000)
    seed: int | None = optional("Seed of the draws", absent="the scenario's seed", ge=0, le=2**31)
    inputs: list[RandomInput] = several("Inputs and how they are distributed", min_length=1)
    correlations: list[Correlation] = several("Inputs that move together; none means all are independent")


class WeatherSweep(Model):
    """Many weather years for the scheme as it stands in one life year."""

    years: int = assumed(
        30,
        "Weather years to make; a weather file gives its own years instead",
        "years",
        source="three tens",
        ge=2,
        le=200,
    )
    life_year: int = assumed(
        1, "Life year whose demand and ageing of the array hold in all of them", source="the first year", ge=1, le=40
    )


class Sweep(Model):
    """What is uncertain, and how far."""

    redesign: bool = assumed(
        False,
        "Choose what is 'auto' (tank, strings, levels) anew in each variant, instead of keeping the base case's",
        source="the works are built once, before the future is known",
    )
    one_at_a_time: list[SteppedInput] = several("Inputs to move one at a time, for the tornado chart")
    grid: list[GridInput] = several("Inputs to combine in a grid")
    random: RandomSweep | None = optional("Inputs drawn at random", absent="no random draws")
    weather: WeatherSweep | None = optional("Spread between weather years", absent="no weather sweep")
