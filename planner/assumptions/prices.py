"""Prices of the price list in the place of those that the things themselves leave out."""

from __future__ import annotations

from planner.assumptions.draft import Draft, is_number
from planner.scenario.paths import Path
from planner.scenario.scenario import NO_CURRENCY
from planner.text import text

_PLAIN: tuple[tuple[str, str], ...] = (
    ("pump", "pump.price"),
    ("controller", "controller.price"),
    ("borehole", "borehole.price"),
    ("grid_connection", "sources.grid.price"),
    ("generator", "sources.generator.price"),
    ("fuel_per_l", "sources.generator.fuel_price_per_l"),
)
"""A price of the list, and the key that it fills in."""
_MADE = ("controller",)
"""Tables that need not be described for the thing to be there."""


def complete(draft: Draft) -> None:
    """Fill in what the price list says; nothing without a currency, for which the check then asks."""
    if not isinstance(draft.get("prices"), dict) or draft.get("currency") in (None, NO_CURRENCY):
        return
    for listed, key in _PLAIN:
        table = key.rpartition(".")[0]
        if table in _MADE or isinstance(draft.get(table), dict):
            _fill(draft, listed, key)
    _solar(draft)
    _tank(draft)
    _pipes(draft)
    tariff = draft.get("sources.grid.tariff")
    priced = isinstance(tariff, dict) and ("price_per_kwh" in tariff or "blocks" in tariff)
    if isinstance(draft.get("sources.grid"), dict) and not priced:
        _fill(draft, "grid_per_kwh", "sources.grid.tariff.price_per_kwh")
    if draft.get("sources.grid.price") is not None and _price(draft, "grid_connection") is not None:
        draft.fill("sources.grid.line_price_per_m", 0.0, _said("grid_connection"))


def _price(draft: Draft, listed: str) -> float | None:
    value = draft.get(("prices", listed))
    return value if is_number(value) and value >= 0 else None


def _said(listed: str) -> str:
    return text("assumed.price", listed=f"prices.{listed}")


def _fill(draft: Draft, listed: str, key: str | Path, times: float = 1.0) -> None:
    price = _price(draft, listed)
    if price is not None:
        draft.fill(key, price * times, _said(listed))


def _solar(draft: Draft) -> None:
    power = draft.number("sources.solar.module.power_w")
    if power and _price(draft, "pv_per_kwp") is not None and draft.get("sources.solar.module.price") is None:
        _fill(draft, "pv_per_kwp", "sources.solar.module.price", power / 1000)
        draft.fill("sources.solar.structure_price_per_module", 0.0, text("assumed.stand_in_price"))


def _tank(draft: Draft) -> None:
    volume = draft.number("tank.volume_m3") if draft.get("tank.volume_m3") != "auto" else None
    sizes = draft.entries("tank.sizes")
    for path, _ in sizes:
        own = draft.number((*path, "volume_m3"))
        if own:
            _fill(draft, "tank_per_m3", (*path, "price"), own)
    if volume and not sizes:
        _fill(draft, "tank_per_m3", "tank.price", volume)


def _pipes(draft: Draft) -> None:
    listed = {entry.get("pipe"): path for path, entry in draft.entries("prices.pipes")}
    for path, segment in draft.entries("pipeline.segments"):
        known = listed.get(segment.get("pipe"))
        own = draft.level((*known, "per_m"), -1.0) if known else -1.0
        if own >= 0:
            draft.fill((*path, "price"), own, _said("pipes"))
        else:
            _fill(draft, "pipe_per_m", (*path, "price"))
