"""The page 'Tank': demand met by tank size, and the settings of the float switch that were tried."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np

from planner.money.formula import Formula
from planner.money.quantities import tank_price
from planner.report.document import At, Axis, Block, Cell, Chart, Column, Heading, Page, Row, Series, Span, Table, Text
from planner.study.compare import OptionResult, Study
from planner.study.words import saving_words
from planner.text import text

SIZES, SETTINGS = "tank.sizes", "tank.settings"
WIDTHS = (27.0, *[12.0] * 10)
CHART_ROWS, SHOWN_CURVES, TIMES_CHOSEN = 13, 3, 4.0


def tank_page(study: Study) -> Page:
    """Build the page 'Tank' from a finished comparison."""
    settings = (Heading(text("tank.settings")), *_settings(study))
    blocks = (_chart(study), *settings, _sizes(study))
    return Page(
        "tank", text("page.tank"), text("tank.title"), text("tank.under"), blocks, WIDTHS, printed=len(blocks) - 1
    )


def _sizes(study: Study) -> Table:
    currency, target = study.scenario.currency, study.scenario.service.demand_met_percent
    rows = []
    for option in study.ranked:
        volumes = option.tank_curve.volume_m3
        prices = np.asarray(tank_price(option.scenario.tank, volumes))
        for place, (volume, share) in enumerate(zip(volumes, option.tank_curve.delivered_share, strict=True)):
            chosen = bool(np.isclose(volume, option.tank_m3))
            cells = {
                "option": Cell(option.name),
                "tank_m3": Cell(float(volume), "one"),
                "met": Cell(100 * float(share), "two"),
                "target": Cell(target, "one"),
                "price": Cell(float(prices[place]), "money"),
                "chosen": Cell(text("tank.is_chosen") if chosen else "", "centre"),
            }
            rows.append(Row((option.name, place), cells, "best" if chosen else "plain"))
    price = [Column("price", text("tank.price", currency=currency))] if study.scenario.priced else []
    columns = (*_columns("option", "tank_m3", "met", "target"), *price, *_columns("chosen"))
    return Table(SIZES, columns, tuple(rows), heading=text("tank.by_size"))


def _columns(*keys: str, **slots: str) -> tuple[Column, ...]:
    return tuple(Column(key, text(f"tank.{key}", **slots)) for key in keys)


def _settings(study: Study) -> Iterator[Block]:
    tried = [option for option in study.ranked if option.trials]
    if not tried:
        yield Text(text("tank.none_tried"))
        return
    yield from (Text(_saving(option)) for option in tried)
    costs = _columns("life_cycle_cost", "annualised_cost", "against", currency=study.scenario.currency)
    columns = (
        *_columns("option", "start", "stop", "met", "meets", "grid", "fuel"),
        *(costs if study.scenario.priced else ()),
        *_columns("remark"),
    )
    rows = tuple(row for option in tried for row in _trials(option))
    yield Table(SETTINGS, columns, rows)


def _trials(option: OptionResult) -> Iterator[Row]:
    used, best = option.trials[0], option.best_trial
    for place, trial in enumerate(option.trials):
        own, against = (Formula.leaf(At(SETTINGS, (option.name, at), "annualised_cost")) for at in (place, 0))
        remarks = [text(key) for key, true in (("tank.used", place == 0), ("tank.best", trial is best)) if true]
        cells = {
            "option": Cell(option.name),
            "start": Cell(trial.start_percent, "whole"),
            "stop": Cell(trial.stop_percent, "whole"),
            "met": Cell(100 * trial.delivered_share, "two"),
            "meets": Cell(text("answer.yes" if trial.meets_service else "answer.no"), "centre"),
            "grid": Cell(trial.grid_kwh_per_year, "whole"),
            "fuel": Cell(trial.fuel_l_per_year, "whole"),
            "life_cycle_cost": Cell(trial.present_cost, "money"),
            "annualised_cost": Cell(trial.equivalent_yearly_cost, "money"),
            "against": Cell.worked_out(
                trial.equivalent_yearly_cost - used.equivalent_yearly_cost, "money", own - against
            ),
            "remark": Cell(", ".join(remarks), "centre"),
        }
        yield Row((option.name, place), cells, "best" if place == 0 else "plain")


def _saving(option: OptionResult) -> str:
    """Say what the best setting tried would save against the one used."""
    used, best = option.trials[0], option.best_trial
    assert best is not None
    if best is used:
        key = "tank.none_better"
    elif best.meets_service and not used.meets_service:
        key = "tank.would_meet"
    else:
        key = "tank.would_save" if used.objective > best.objective else "tank.most_delivered"
    return text(
        key,
        option=option.name,
        start=f"{used.start_percent:g}",
        stop=f"{used.stop_percent:g}",
        better=f"{best.start_percent:g}/{best.stop_percent:g}",
        saving=saving_words(option, used, best),
    )


def _chart(study: Study) -> Chart:
    """Tank curve of the recommended option, of two others that differ from it, and the target."""
    shown: list[OptionResult] = []
    for option in sorted(study.ranked, key=lambda o: (o is not study.ranked[0], not o.has_array, len(o.sources))):
        alike = any(_alike(option, other) for other in shown)
        if len(shown) < SHOWN_CURVES and not alike:
            shown.append(option)
    widest = max(shown, key=lambda option: float(option.tank_curve.volume_m3[-1] - option.tank_curve.volume_m3[0]))
    lowest = min(float(option.tank_curve.delivered_share.min()) for option in shown)
    floor = 5 * np.floor(min(100 * lowest, study.scenario.service.demand_met_percent) / 5 - 0.2)

    def series(name: str, option: OptionResult, key: str, style: str) -> Series:
        last = (option.name, len(option.tank_curve.volume_m3) - 1)
        places, values = (Span(SIZES, (option.name, 0), column, last) for column in ("tank_m3", key))
        return Series(name, places, values, style)

    return Chart(
        "tank.chart",
        "lines",
        text("tank.by_size"),
        text("tank.chart_alt", option=study.ranked[0].name),
        (
            *(series(option.name, option, "met", f"line {place}") for place, option in enumerate(shown)),
            series(text("tank.target_line"), widest, "target", "target"),
        ),
        Axis(text("tank.tank_m3"), low=0, high=_last_shown(shown)),
        Axis(text("tank.met"), low=max(float(floor), 0.0), high=100),
        rows=CHART_ROWS,
    )


def _last_shown(shown: Sequence[OptionResult]) -> float | None:
    """Largest tank on the chart: some times what was chosen, as the curves are flat beyond; None for all."""
    last = max(float(option.tank_curve.volume_m3[-1]) for option in shown)
    wanted = TIMES_CHOSEN * max(option.tank_m3 for option in shown)
    return None if wanted >= last else 10 * float(np.ceil(wanted / 10))


def _alike(option: OptionResult, other: OptionResult) -> bool:
    mine, theirs = option.tank_curve, other.tank_curve
    return mine.volume_m3.shape == theirs.volume_m3.shape and bool(
        np.allclose(mine.volume_m3, theirs.volume_m3)
        and np.allclose(mine.delivered_share, theirs.delivered_share, atol=0.005)
    )
