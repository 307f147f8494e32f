"""The catalogue of figures: each once, with its unit, its format and how it is read from a result.

Sheets, terminal, JSON, rows of files, comparison and the reference text take their figures from here. What a figure is
called and what it means stands in `planner.text`. `read` takes the result of one option, or of many cases at once whose
arrays have a leading axis.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

from planner.money.users import INCOMES, TARIFFS
from planner.supply.worst_year import (
    demand_met_worst_year_in_ten,
    missing_l_per_day_worst_year_in_ten,
    worst_year_in_ten,
)
from planner.text import figure_definition, figure_label, model_words, text

Array = NDArray[np.float64]
Group = Literal["design", "service", "energy", "money", "components", "users", "carbon", "comparison"]
Format = Literal["whole", "one", "two", "three", "money", "price"]

_LITRES_PER_M3 = 1000
_ALL = 1e-9
"""Share of the demand within which all of it is met."""

MONEY: tuple[Group, ...] = ("money", "components", "users", "comparison")
"""Groups of figures of money: where there are no prices, there are none of them."""

COST_CATEGORIES = (
    "construction",
    "replacement",
    "upkeep",
    "grid",
    "fuel",
    "generator_service",
    "yearly_costs",
    "direct_support",
    "residual",
)
"""Kinds of cost that every report shows, in their order."""


def cost_categories(further: Sequence[str] = ()) -> tuple[str, ...]:
    """Kinds of cost in the order in which they are shown, with `further` ones of sources of one's own."""
    return (*COST_CATEGORIES[:-1], *further, COST_CATEGORIES[-1])


@dataclass(frozen=True)
class Figure:
    """One figure of a supply option.

    Attributes
    ----------
    key : str
        Name in JSON, rows of files and code; the unit is part of it where it has one.
    unit : str
        'money' stands for the scenario's currency.
    format : str
        How it is shown.
    group : str
        Part of a report in which it stands.
    read : callable
        Gives the value from a result: a number, or an array over its leading axes; NaN where there is none.
    absent : str
        Key of the words that stand where there is no value.
    known : callable
        Tells whether a result has it at all; where it does not, `read` gives NaN.
    unknown : str
        Key of the words that stand there.
    category : str
        Kind of cost that it is, where it is one of a source of one's own, of which the texts know nothing; else ''.
    money : str
        Name of its definition in `money.figures.FIGURES`, `money.users.users_definitions` or `money.returns.RETURNS`,
        which cells are written from; '' where there is none.
    """

    key: str
    unit: str
    format: Format
    group: Group
    read: Callable[[Any], Any]
    absent: str = "figure.none"
    money: str = ""
    known: Callable[[Any], bool] = lambda _: True
    unknown: str = "figure.none"
    category: str = ""

    @property
    def is_money(self) -> bool:
        """Whether it follows from prices."""
        return self.group in MONEY

    @property
    def label(self) -> str:
        """What people call it."""
        return text("figure.further_cost", category=self.category) if self.category else figure_label(self.key)

    @property
    def definition(self) -> str:
        """What it is, in one line, with its source."""
        return text("figure.further_cost_is") if self.category else figure_definition(self.key)

    def words_for(self, result: Any) -> str:
        """What stands where a result gives no value."""
        return text(self.absent if self.known(result) else self.unknown)

    def unit_in(self, currency: str) -> str:
        """Its unit with the currency's code in it."""
        return model_words(self.unit).replace("money", currency)


def _mean(name: str) -> Callable[[Any], Any]:
    """Mean over the years of an outcome's (..., years, 12) sums."""

    def read(result: Any) -> Any:
        values = getattr(result.outcome, name)
        return values.sum(axis=-1).mean(axis=-1)

    return read


def _grid_kwh(result: Any) -> Any:
    return result.outcome.grid_kwh.sum(axis=(-1, -2)).mean(axis=-1)


def _pumped_percent(source: str) -> Callable[[Any], Any]:
    def read(result: Any) -> Any:
        did = result.outcome
        pumped = {"solar": did.solar_m3} | {name: top_up.m3 for name, top_up in did.top_ups.items()}
        sums = {name: volume.sum(axis=(-1, -2)) for name, volume in pumped.items()}
        total = sum(sums.values())
        return _ratio(100 * sums.get(source, np.zeros_like(total)), total)

    return read


def _worst_month_percent(result: Any) -> Any:
    return 100 * np.nanmin(result.outcome.month_share, axis=-1)


def _worst_month(result: Any) -> Any:
    """Month of the lowest share, 1 to 12; NaN where no month lacks anything."""
    share = result.outcome.month_share
    return np.where(np.nanmin(share, axis=-1) < 1 - _ALL, 1.0 + np.nanargmin(share, axis=-1), np.nan)


def _worst_month_short_days(result: Any) -> Any:
    by_month = result.outcome.month_short_days.mean(axis=-2)
    worst = np.nanargmin(result.outcome.month_share, axis=-1)
    return np.take_along_axis(by_month, np.expand_dims(worst, -1), axis=-1)[..., 0]


def _missing_l_per_short_day(result: Any) -> Any:
    did = result.outcome
    litres = _LITRES_PER_M3 * did.short_days_shortfall_m3.sum(axis=(-1, -2))
    return _ratio(litres, did.month_short_days.sum(axis=(-1, -2)))


def _shortfall_m3(result: Any) -> Any:
    return (result.quantities.demand_m3 - result.quantities.delivered_m3).mean(axis=-1)


def _money(name: str) -> Callable[[Any], Any]:
    """Figure of `money.figures.FIGURES`, where its arithmetic is defined."""
    return lambda result: result.life.figures.get(name, 0.0)


def _compared(key: str, unit: str, name: str, **more: Any) -> Figure:
    """Figure of the comparison with the reference, which the reference itself has not."""

    def known(result: Any) -> bool:
        return result.comparison is not None

    def read(result: Any) -> Any:
        return getattr(result.comparison, name) if known(result) else np.nan

    shown = more.pop("format", "one")
    return Figure(key, unit, shown, "comparison", read, money=name, known=known, unknown="figure.reference", **more)


def _carbon(key: str, unit: str, shown: Format, of: Callable[[Any], Any], absent: str = "figure.none") -> Figure:
    """Figure of carbon dioxide, which is not counted where a source's own is not known."""

    def known(result: Any) -> bool:
        return bool(result.emission_known)

    def read(result: Any) -> Any:
        return of(result) if known(result) else np.nan

    return Figure(key, unit, shown, "carbon", read, absent, known=known, unknown="figure.not_counted")


def _co2_per_m3(result: Any) -> Any:
    return _ratio(result.life.co2_kg.sum(axis=-1), result.quantities.delivered_m3.sum(axis=-1))


def _ratio(part: Any, whole: Any) -> Any:
    part, whole = np.broadcast_arrays(np.asarray(part, dtype=float), np.asarray(whole, dtype=float))
    return np.divide(part, whole, out=np.full(part.shape, np.nan), where=whole > 0)


def _share_in_ten(result: Any) -> Any:
    did = result.quantities
    return 100 * demand_met_worst_year_in_ten(did.demand_m3, did.delivered_m3)


def _missing_in_ten(result: Any) -> Any:
    did = result.quantities
    return missing_l_per_day_worst_year_in_ten(did.demand_m3, did.delivered_m3)


def _limit_shortfall_m3(result: Any) -> Any:
    """Mean over the years; nothing where the daily limit was not looked at, as none is given."""
    missing = result.outcome.limit_shortfall_m3
    return np.zeros(result.outcome.level_end_m3.shape[:-1]) if missing is None else missing.mean(axis=-1)


def _sum(key: str, name: str, group: Group = "money", unit: str = "money", **more: Any) -> Figure:
    """Figure of money; `name` is its definition in `money.figures.FIGURES`."""
    return Figure(key, unit, more.pop("format", "money"), group, _money(name), money=name, **more)


def _users(key: str, unit: str, shown: Format, absent: str = "figure.none", needs: str = "") -> Figure:
    """Figure of what users must pay, of `money.users`; `needs` names what of `money.terms.Payers` it rests on."""

    def known(result: Any) -> bool:
        payers = result.life.payers
        if not needs:
            return True
        return bool(payers.households and (needs == "households" or np.any(getattr(payers, needs) > 0)))

    def read(result: Any) -> Any:
        return result.life.users[key] if known(result) else np.nan

    return Figure(key, unit, shown, "users", read, absent, key, known, "figure.not_given")


def _tariffs() -> Iterator[Figure]:
    """What each tariff comes to: per m3, per household, and of an income."""
    for covers in TARIFFS:
        yield _users(f"tariff_{covers}", "money/m3", "price", "figure.no_water")
    yield _users("household_m3_per_month", "m3/household/month", "two", needs="households")
    for covers in TARIFFS:
        yield _users(f"bill_{covers}", "money/household/month", "price", "figure.no_water", "households")
    for share, income in INCOMES.items():
        for covers in TARIFFS:
            yield _users(f"{share}_{covers}", "% of income", "one", "figure.no_water", income)


FIGURES: tuple[Figure, ...] = (
    Figure("tank_m3", "m3", "one", "design", lambda result: result.tank_m3),
    Figure("modules", "", "whole", "design", lambda result: result.modules),
    Figure("strings", "", "whole", "design", lambda result: result.strings),
    Figure("array_kwp", "kWp", "two", "design", lambda result: result.array_kw),
    Figure("start_level_percent", "% of tank", "whole", "design", lambda r: r.levels[0] if r.levels else np.nan),
    Figure("stop_level_percent", "% of tank", "whole", "design", lambda r: r.levels[1] if r.levels else np.nan),
    Figure("duty_flow_m3h", "m3/h", "two", "design", lambda result: result.duty.flow_m3h),
    Figure("total_dynamic_head_m", "m", "one", "design", lambda result: result.duty.total_head_m),
    Figure("generator_kw", "kW", "one", "design", lambda result: result.generator_kw),
    Figure("meets_target", "", "whole", "service", lambda result: result.meets_service),
    Figure("short_days_per_year", "days/year", "one", "service", _mean("month_short_days")),
    Figure("worst_month", "month, 1 to 12", "whole", "service", _worst_month, "figure.nothing_missing"),
    Figure("worst_month_short_days", "days/year", "one", "service", _worst_month_short_days),
    Figure("longest_short_days", "days", "whole", "service", lambda r: r.outcome.longest_short_days.max(axis=-1)),
    Figure("missing_l_per_short_day", "L/day", "whole", "service", _missing_l_per_short_day, "figure.no_short_day"),
    Figure("demand_met_percent", "% of demand", "two", "service", lambda r: 100 * r.delivered_share),
    Figure("demand_met_worst_year_percent", "% of demand", "two", "service", lambda r: 100 * r.worst_year_share),
    Figure("demand_met_worst_month_percent", "% of demand", "two", "service", _worst_month_percent),
    Figure("demand_first_year_m3", "m3", "whole", "service", lambda r: r.quantities.demand_m3[..., 0]),
    Figure("delivered_first_year_m3", "m3", "whole", "service", lambda r: r.quantities.delivered_m3[..., 0]),
    Figure("demand_last_year_m3", "m3", "whole", "service", lambda r: r.quantities.demand_m3[..., -1]),
    Figure("delivered_last_year_m3", "m3", "whole", "service", lambda r: r.quantities.delivered_m3[..., -1]),
    Figure("shortfall_m3_per_year", "m3/year", "one", "service", _shortfall_m3),
    Figure("shortfall_by_daily_limit_m3_per_year", "m3/year", "one", "service", _limit_shortfall_m3),
    Figure("demand_met_worst_year_in_ten_percent", "% of demand", "two", "service", _share_in_ten),
    Figure("short_days_worst_year_in_ten", "days/year", "one", "service",
           lambda r: worst_year_in_ten(r.outcome.short_days, worst="high")),
    Figure("missing_l_per_day_worst_year_in_ten", "L/day", "whole", "service", _missing_in_ten),
    Figure("pumped_by_solar_percent", "% of pumped", "one", "service", _pumped_percent("solar")),
    Figure("pumped_by_grid_percent", "% of pumped", "one", "service", _pumped_percent("grid")),
    Figure("pumped_by_generator_percent", "% of pumped", "one", "service", _pumped_percent("generator")),
    Figure("pv_used_kwh_per_year", "kWh/year", "whole", "energy", _mean("solar_kwh")),
    Figure("pv_unused_kwh_per_year", "kWh/year", "whole", "energy", _mean("idle_kwh")),
    Figure("grid_kwh_per_year", "kWh/year", "whole", "energy", _grid_kwh),
    Figure("grid_hours_per_year", "h/year", "whole", "energy", _mean("grid_hours")),
    Figure("grid_peak_kw", "kW", "two", "energy", lambda r: r.outcome.grid_peak_kw.max(axis=(-1, -2))),
    Figure("generator_kwh_per_year", "kWh/year", "whole", "energy", _mean("generator_kwh")),
    Figure("generator_hours_per_year", "h/year", "whole", "energy", _mean("generator_hours")),
    Figure("fuel_l_per_year", "L/year", "whole", "energy", _mean("fuel_l")),
    _sum("capital_cost", "capital_cost"),
    _sum("life_cycle_cost", "present_cost"),
    *(_sum(f"life_cycle_{name}", f"{name}_present") for name in COST_CATEGORIES),
    _sum("annualised_cost", "equivalent_yearly_cost", unit="money/year"),
    _sum("levelised_cost_per_m3", "levelised_cost_per_m3", unit="money/m3", format="price", absent="figure.no_water"),
    _sum("annualised_cost_per_person", "cost_per_person_year", unit="money/person/year", format="price",
         absent="figure.no_people"),
    _sum("revenue_present", "revenue_present"),
    _sum("net_present_value", "npv"),
    _sum("grant", "grant"),
    _sum("loan", "loan"),
    _sum("own_funds", "own_funds"),
    _sum("owner_life_cycle_cost", "owner_present_cost"),
    _sum("capital_expenditure", "capital_expenditure", "components"),
    _sum("operation_and_minor_maintenance", "operation", "components"),
    _sum("capital_maintenance", "capital_maintenance", "components"),
    _sum("expenditure_on_direct_support", "expenditure_on_direct_support", "components"),
    _sum("residual_taken_off", "residual_value", "components"),
    _sum("cost_of_capital", "cost_of_capital", "components"),
    *_tariffs(),
    _users("burden_mean", "money/year", "money"),
    _users("burden_largest", "money", "money"),
    _users("burden_largest_year", "", "whole"),
    _users("renewal_saving", "money/year", "money"),
    _users("renewal_fund_empty_year", "", "whole"),
    _users("renewal_fund_left", "money", "money"),
    _users("capital_cost_per_person", "money/person", "price", "figure.no_people"),
    _users("recurrent_cost_per_person", "money/person/year", "price", "figure.no_people"),
    _carbon("co2_kg", "kg", "whole", lambda result: result.life.co2_kg.sum(axis=-1)),
    _carbon("co2_kg_per_year", "kg/year", "whole", lambda result: result.life.co2_kg.mean(axis=-1)),
    _carbon("co2_kg_per_m3", "kg/m3", "three", _co2_per_m3, "figure.no_water"),
    _compared("saving_present", "money", "saving_present", format="money"),
    _compared("internal_rate_of_return_percent", "%/year", "internal_rate_of_return_percent"),
    _compared("payback_years", "years", "simple_payback_years", absent="figure.never"),
    _compared("discounted_payback_years", "years", "discounted_payback_years", absent="figure.never"),
)  # fmt: skip
"""Every figure, in the order in which figures are shown."""

DAYS = ("short_days_per_year", "worst_month", "worst_month_short_days", "longest_short_days", "missing_l_per_short_day")
"""Figures of the days without water, in the order in which they are shown."""

_BY_KEY = {figure.key: figure for figure in FIGURES}


def figure(key: str) -> Figure:
    """One figure by its key."""
    return _BY_KEY[key]


def shown(keys: Sequence[str], *, priced: bool) -> tuple[str, ...]:
    """Those of some figures that are shown: where there are no prices, none of money."""
    return tuple(key for key in keys if priced or not _BY_KEY[key].is_money)


def cost_figure(category: str) -> Figure:
    """Life-cycle cost of one kind, whether of the catalogue or of a source of one's own."""
    key = f"life_cycle_{category}"
    return _BY_KEY[key] if key in _BY_KEY else _sum(key, f"{category}_present", category=category)


def catalogue(further: Sequence[str] = ()) -> tuple[Figure, ...]:
    """Every figure, with the life-cycle cost of `further` kinds of cost among the others of its sort."""
    place = FIGURES.index(cost_figure(COST_CATEGORIES[-1]))
    return (*FIGURES[:place], *map(cost_figure, further), *FIGURES[place:])


def figures_of(group: Group, further: Sequence[str] = ()) -> tuple[Figure, ...]:
    """The figures of one part of a report, in order; see `catalogue`."""
    return tuple(each for each in catalogue(further) if each.group == group)
