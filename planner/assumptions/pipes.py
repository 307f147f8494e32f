"""Riser and main from one length: the pipe by the water's velocity and by the pressure against a closed valve."""

from __future__ import annotations

from math import pi

from planner.assumptions.draft import Draft
from planner.text import text
from planner.water.materials import PE100, STEEL
from planner.water.pipes import Pipe, pipes

VELOCITY_M_S = 1.0
"""Velocity up to which a pipe is taken as wide enough, at the flow drawn. Common practice, no source."""
BAR_PER_M = 0.0980665
"""Pressure of a metre of water."""
_COLD_C = 20.0


def complete(draft: Draft) -> None:
    """Fill in the runs of pipe, where the main's length is all that is given of them."""
    length, depth = draft.number("pipeline.length_m"), draft.number("borehole.pump_depth_m")
    flow, head = draft.number("pump.rated_flow_m3h"), draft.number("pump.max_head_m")
    if not (length and depth and flow and head) or draft.get("pipeline.segments"):
        return
    water_c = draft.level("borehole.water_temperature_c", _COLD_C)
    above_level_m = head - draft.level("borehole.static_level_m")
    levels = [draft.level((*path, "level_m")) for path, _ in draft.entries("pipeline.profile")]
    lowest_m = min([0.0, draft.level("pipeline.rise_to_tank_inlet_m"), *levels])
    segments = [
        _run(draft, "riser_pipe", text("assumed.riser"), depth, flow, (above_level_m + depth) * BAR_PER_M, water_c),
        _run(draft, "pipe", text("assumed.main"), length, flow, (above_level_m - lowest_m) * BAR_PER_M, water_c),
    ]
    draft.fill("pipeline.segments", segments, text("assumed.segments"))
    for place, key in enumerate(("riser_pipe", "pipe")):
        if not draft.get(("pipeline", key)):
            chosen = pipes()[str(segments[place]["pipe"])]
            how = text(
                "assumed.pipe",
                velocity=f"{velocity_m_s(chosen, flow):.1f}",
                flow=f"{flow:g}",
                bar=f"{chosen.pressure_class_bar:g}",
                standard=text(f"material.standard.{chosen.material.key}"),
            )
            draft.note(("pipeline", "segments", place, "pipe"), how)


def _run(
    draft: Draft, key: str, name: str, length_m: float, flow_m3h: float, bar: float, water_c: float
) -> dict[str, object]:
    given = draft.get(("pipeline", key))
    pipe = given if given is not None else pipe_for(flow_m3h, bar, water_c).name
    return {"name": name, "length_m": float(length_m), "pipe": pipe}


def velocity_m_s(pipe: Pipe, flow_m3h: float) -> float:
    """Velocity of the water in a pipe [m/s]."""
    return flow_m3h / 3600 / (pi / 4 * pipe.mean_inner_diameter_m**2)


def pipe_for(flow_m3h: float, bar: float, water_c: float = _COLD_C) -> Pipe:
    """Choose a pipe: the smallest in which the water is not too fast, of the weakest class that bears the pressure.

    Parameters
    ----------
    flow_m3h : float
        Flow of the pump at its rated duty [m3/h].
    bar : float
        Highest pressure, against a closed valve [bar].
    water_c : float
        Temperature of the water [deg C].

    Returns
    -------
    Pipe
        Of PE100 where its sizes and classes reach (ISO 4427), else of steel; where none bears the pressure, one of the
        strongest, and where all are too narrow, the widest.
    """
    known = [pipe for pipe in pipes().values() if pipe.material in (PE100, STEEL)]
    needed_bar = min(bar, max(_bears_bar(pipe, water_c) for pipe in known))
    strong = [pipe for pipe in known if _bears_bar(pipe, water_c) >= needed_bar]
    wide = [pipe for pipe in strong if velocity_m_s(pipe, flow_m3h) <= VELOCITY_M_S]
    if not wide:
        return max(strong, key=lambda pipe: pipe.inner_diameter_m)
    return min(wide, key=lambda pipe: (pipe.material is not PE100, pipe.pressure_class_bar, pipe.inner_diameter_m))


def _bears_bar(pipe: Pipe, water_c: float) -> float:
    share = pipe.material.warm.share_at(water_c)
    return (pipe.pressure_class_bar or 0.0) * share if share is not None else 0.0
