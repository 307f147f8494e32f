"""The hour loop once more, as a plain loop over hours for one case: slow, scalar, written from the rules alone."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass
class PlainTopUp:
    """One source for one case: series per hour and switch levels."""

    extra_m3: list[float]
    hours_per_m3: list[float]
    kwh_per_m3: list[float]
    start_m3: float
    stop_m3: float
    on: bool = False
    added_m3: float = 0.0
    kwh: float = 0.0

    def step(self, hour: int, ahead: float, fall: float, left_h: float) -> tuple[float, float]:
        """Return (level at the end of the hour, hours of it left to another source)."""
        if self.on:
            share = 1.0
        elif ahead < self.start_m3:
            share = min((self.start_m3 - ahead) / fall, 1.0)
        else:
            share = 0.0
        could = min(share * self.extra_m3[hour], left_h * self.extra_m3[hour])
        gap = (self.start_m3 - ahead) + (self.stop_m3 - self.start_m3)
        added = max(min(could, gap), 0.0)
        self.on = share > 0 and added < gap
        self.added_m3 += added
        self.kwh += added * self.kwh_per_m3[hour]
        return ahead + added, max(1.0 - added * self.hours_per_m3[hour], 0.0)


def plain_loop(
    sun_m3: list[float],
    draw_m3: list[float],
    volume_m3: float,
    start_m3: float,
    grid: PlainTopUp | None = None,
    generator: PlainTopUp | None = None,
) -> dict[str, float]:
    """Run one case hour by hour."""
    level, shortfall, idle = start_m3, 0.0, 0.0
    for source in (grid, generator):
        if source is not None:
            source.on = level <= source.start_m3
    for hour, (sun, draw) in enumerate(zip(sun_m3, draw_m3, strict=True)):
        ahead = level + sun - draw
        fall = max(draw - sun, 1e-9)
        left_h = 1.0
        for source in (grid, generator):
            if source is not None:
                ahead, left_h = source.step(hour, ahead, fall, left_h)
        idle += max(ahead - volume_m3, 0.0)
        shortfall += max(-ahead, 0.0)
        level = min(max(ahead, 0.0), volume_m3)
    return {
        "shortfall_m3": shortfall,
        "idle_m3": idle,
        "end_m3": level,
        "grid_m3": grid.added_m3 if grid else 0.0,
        "grid_kwh": grid.kwh if grid else 0.0,
        "generator_m3": generator.added_m3 if generator else 0.0,
        "generator_kwh": generator.kwh if generator else 0.0,
    }
