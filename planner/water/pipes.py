"""Pipes by name, made from the table of materials, and the pipe of a segment.

The bore of plastic pipe is the outside diameter less twice the smallest wall, the figure that pipe tables print. Pipe
is made a little thicker than its smallest wall, so its mean bore is about 1 % smaller and its friction up to 5 %
larger: see `Pipe.mean_inner_diameter_m`.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from difflib import get_close_matches
from functools import cache
from math import ceil

from planner.scenario.waterworks import Segment
from planner.water import materials
from planner.water.materials import PipeMaterial, PipeSize


@dataclass(frozen=True)
class Pipe:
    """A pipe: its material, bore, wall, roughness and pressure class (None where not known)."""

    name: str
    material: PipeMaterial
    inner_diameter_m: float
    outer_diameter_m: float | None
    wall_m: float | None
    roughness_m: float
    hazen_williams_c: float
    pressure_class_bar: float | None
    outer_tolerance_m: float = 0.0

    @property
    def mean_inner_diameter_m(self) -> float:
        """Bore at the middle of the tolerances of its material [m]; the tabled bore where they are not known."""
        tolerance = self.material.wall_tolerance
        if tolerance is None or self.wall_m is None or self.outer_diameter_m is None:
            return self.inner_diameter_m
        factor, more_mm = tolerance
        largest_m = ceil(round(10 * (factor * self.wall_m * 1e3 + more_mm), 6)) / 10e3
        return self.outer_diameter_m + self.outer_tolerance_m / 2 - (self.wall_m + largest_m)


def _pipe(material: PipeMaterial, series: str, size: PipeSize) -> Pipe:
    return Pipe(
        name=f"{series} {size.number}",
        material=material,
        inner_diameter_m=round(size.outer_mm - 2 * size.wall_mm, 1) / 1e3,
        outer_diameter_m=size.outer_mm / 1e3,
        wall_m=size.wall_mm / 1e3,
        roughness_m=material.roughness_m,
        hazen_williams_c=material.hazen_williams_c,
        pressure_class_bar=size.class_bar,
        outer_tolerance_m=material.outer_tolerance_mm.get(size.number, 0.0) / 1e3,
    )


@cache
def _pipes_of(known: tuple[PipeMaterial, ...]) -> dict[str, Pipe]:
    found = [
        _pipe(material, series, size)
        for material in known
        for series, sizes in material.series.items()
        for size in sizes
    ]
    return {pipe.name: pipe for pipe in found}


def pipes() -> dict[str, Pipe]:
    """Every pipe of the table of materials by name, each series from small to large."""
    return _pipes_of(materials.MATERIALS)


def _plain(text: str) -> str:
    """Strip what people write differently: case, blanks, hyphens, DN, OD and mm."""
    return re.sub(r"dn|od|mm|[^a-z0-9.]", "", text.lower())


def pipe_of(text: str) -> Pipe:
    """Look up a pipe, such as 'PE100 SDR11 63' (outside diameter) or 'steel medium 50' (DN).

    Raises
    ------
    ValueError
        If the tables have no such pipe; the message lists the nearest names.
    """
    by_plain_name = {_plain(name): pipe for name, pipe in pipes().items()}
    pipe = by_plain_name.get(_plain(text))
    if pipe is None:
        near = get_close_matches(_plain(text), by_plain_name, n=3, cutoff=0.0)
        names = ", ".join(f"'{by_plain_name[name].name}'" for name in near)
        raise ValueError(f"no pipe '{text}' in the tables; nearest: {names}")
    return pipe


def bore_of(segment: Segment) -> Pipe:
    """Resolve what a segment is made of: its own figures win over those of the table.

    Parameters
    ----------
    segment : Segment
        A run of pipe; given by its bore alone it counts as plastic.

    Raises
    ------
    ValueError
        If the segment names a pipe that the tables do not have.
    """
    if segment.pipe is not None:
        pipe = pipe_of(segment.pipe)
    else:
        assert segment.inner_diameter_mm is not None  # the scenario demands one of the two
        bore_m = segment.inner_diameter_mm / 1e3
        pipe = Pipe(
            f"bore {segment.inner_diameter_mm:g} mm",
            materials.PLASTIC,
            bore_m,
            None,
            None,
            materials.PLASTIC.roughness_m,
            materials.PLASTIC.hazen_williams_c,
            None,
        )
    if segment.roughness_mm is not None:
        pipe = replace(pipe, roughness_m=segment.roughness_mm / 1e3)
    if segment.hazen_williams_c is not None:
        pipe = replace(pipe, hazen_williams_c=segment.hazen_williams_c)
    if segment.pressure_class_bar is not None:
        pipe = replace(pipe, pressure_class_bar=segment.pressure_class_bar)
    return pipe


def next_larger(pipe: Pipe) -> Pipe | None:
    """Find the next larger pipe of the same series, or None for the largest and for pipe from no table."""
    series = pipe.name.rpartition(" ")[0]
    larger = [
        other
        for other in pipes().values()
        if other.name.rpartition(" ")[0] == series and other.inner_diameter_m > pipe.inner_diameter_m
    ]
    return min(larger, key=lambda other: other.inner_diameter_m, default=None)


def stronger(pipe: Pipe) -> list[Pipe]:
    """Find the pipes of the same material and outside diameter of a higher pressure class, the weakest first."""
    given = pipe.pressure_class_bar or 0.0
    found = [
        (other.pressure_class_bar, other)
        for other in pipes().values()
        if other.material is pipe.material
        and other.name != pipe.name  # whose own class was given lower
        and other.outer_diameter_m == pipe.outer_diameter_m
        and other.pressure_class_bar is not None
        and other.pressure_class_bar > given
    ]
    return [other for _, other in sorted(found, key=lambda pair: pair[0])]


def material_for(temperature_c: float) -> PipeMaterial | None:
    """Find a material whose pipes keep a pressure class in water of a temperature [deg C], or None."""
    return next(
        (known for known in materials.MATERIALS if known.series and known.warm.share_at(temperature_c) is not None),
        None,
    )
