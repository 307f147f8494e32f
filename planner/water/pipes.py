"""Pipe tables: PE100 pressure pipe and medium steel tube, and the bore of a segment.

The bore of PE pipe is the outside diameter less twice the smallest wall, the figure that pipe tables print. Pipe is
made a little thicker than its smallest wall, so its mean bore is about 1 % smaller and its friction up to 5 % larger:
see `Pipe.mean_inner_diameter_m`.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from difflib import get_close_matches
from math import ceil

from planner.scenario.waterworks import Segment

PLASTIC_ROUGHNESS_M = 0.007e-3
"""Wall of plastic pipe in service: common practice, no source (new: 0.0015 mm, EPANET 2.2 manual, table 3.2)."""
STEEL_ROUGHNESS_M = 0.15e-3
"""Galvanised steel: 0.0005 ft, EPANET 2.2 manual, table 3.2."""
PLASTIC_HAZEN_WILLIAMS_C = 150.0
"""New plastic: 140-150, EPANET 2.2 manual, table 3.2."""
STEEL_HAZEN_WILLIAMS_C = 120.0
"""Galvanised iron, EPANET 2.2 manual, table 3.2."""

PE100_OUTER_MM = (25, 32, 40, 50, 63, 75, 90, 110)
PE100_WALL_MM: dict[str, tuple[float | None, ...]] = {
    "17": (None, 2.0, 2.4, 3.0, 3.8, 4.5, 5.4, 6.6),
    "13.6": (2.0, 2.4, 3.0, 3.7, 4.7, 5.6, 6.7, 8.1),
    "11": (2.3, 3.0, 3.7, 4.6, 5.8, 6.8, 8.2, 10.0),
    "9": (3.0, 3.6, 4.5, 5.6, 7.1, 8.4, 10.1, 12.3),
}
"""Smallest wall by standard dimension ratio, ISO 4427-2:2007 table 2 (EN 12201-2:2011 the same)."""
PE100_CLASS_BAR = {"17": 10.0, "13.6": 12.5, "11": 16.0, "9": 20.0}
"""PN at 20 deg C, design coefficient 1.25, ISO 4427-2:2007; the label of SDR 13.6 is 12.5, not the computed 12.7."""
PE100_OUTER_TOLERANCE_MM = (0.3, 0.3, 0.4, 0.4, 0.4, 0.5, 0.6, 0.7)
"""How much larger the mean outside diameter may be, EN 12201-2 grade B, from memory."""

STEEL_MEDIUM_MM: dict[int, tuple[float, float]] = {
    15: (21.3, 2.6),
    20: (26.9, 2.6),
    25: (33.7, 3.2),
    32: (42.4, 3.2),
    40: (48.3, 3.2),
    50: (60.3, 3.6),
    65: (76.1, 3.6),
    80: (88.9, 4.0),
    100: (114.3, 4.5),
}
"""Outside diameter and wall by DN, EN 10255:2004+A1:2007 series M (ISO 65 medium); DN 15, 20, 65-100 from memory."""
STEEL_CLASS_BAR = 25.0
"""Limit of threaded malleable-iron fittings to 120 deg C, EN 10242, from memory; the tube itself bears more."""


@dataclass(frozen=True)
class Pipe:
    """A pipe: its bore, wall, roughness and pressure class (None where not known)."""

    name: str
    material: str
    inner_diameter_m: float
    outer_diameter_m: float | None
    wall_m: float | None
    roughness_m: float
    hazen_williams_c: float
    pressure_class_bar: float | None
    outer_tolerance_m: float = 0.0

    @property
    def mean_inner_diameter_m(self) -> float:
        """Bore at the middle of the tolerances of PE pipe [m]; the tabled bore for any other pipe.

        The largest wall is taken as 1.1 times the smallest plus 0.1 mm, rounded up to 0.1 mm (ISO 11922-1 grade V,
        from memory; it gives the printed 9.2, 11.1, 6.1 and 7.4 mm of EN 12201-2 for 90 and 110 mm pipe).
        """
        if self.material != "PE100" or self.wall_m is None or self.outer_diameter_m is None:
            return self.inner_diameter_m
        largest_m = ceil(round(11 * self.wall_m * 1e3 + 1, 6)) / 10e3
        return self.outer_diameter_m + self.outer_tolerance_m / 2 - (self.wall_m + largest_m)


def _pe100() -> list[Pipe]:
    return [
        Pipe(
            f"PE100 SDR{ratio} {outer}",
            "PE100",
            round(outer - 2 * wall, 1) / 1e3,
            outer / 1e3,
            wall / 1e3,
            PLASTIC_ROUGHNESS_M,
            PLASTIC_HAZEN_WILLIAMS_C,
            PE100_CLASS_BAR[ratio],
            tolerance / 1e3,
        )
        for ratio, walls in PE100_WALL_MM.items()
        for outer, wall, tolerance in zip(PE100_OUTER_MM, walls, PE100_OUTER_TOLERANCE_MM, strict=True)
        if wall is not None
    ]


def _steel_medium() -> list[Pipe]:
    return [
        Pipe(
            f"steel medium {nominal}",
            "steel",
            round(outer - 2 * wall, 1) / 1e3,
            outer / 1e3,
            wall / 1e3,
            STEEL_ROUGHNESS_M,
            STEEL_HAZEN_WILLIAMS_C,
            STEEL_CLASS_BAR,
        )
        for nominal, (outer, wall) in STEEL_MEDIUM_MM.items()
    ]


PIPES: dict[str, Pipe] = {pipe.name: pipe for pipe in [*_pe100(), *_steel_medium()]}
"""Every pipe of the tables by name, each series from small to large."""


def _plain(text: str) -> str:
    """Strip what people write differently: case, blanks, hyphens, DN, OD and mm."""
    return re.sub(r"dn|od|mm|[^a-z0-9.]", "", text.lower())


_BY_PLAIN_NAME = {_plain(name): pipe for name, pipe in PIPES.items()}


def pipe_of(text: str) -> Pipe:
    """Look up a pipe, such as 'PE100 SDR11 63' (outside diameter) or 'steel medium 50' (DN).

    Raises
    ------
    ValueError
        If the tables have no such pipe; the message lists the nearest names.
    """
    pipe = _BY_PLAIN_NAME.get(_plain(text))
    if pipe is None:
        near = get_close_matches(_plain(text), _BY_PLAIN_NAME, n=3, cutoff=0.0)
        names = ", ".join(f"'{_BY_PLAIN_NAME[name].name}'" for name in near)
        raise ValueError(f"no pipe '{text}' in the tables; nearest: {names}")
    return pipe


def bore_of(segment: Segment) -> Pipe:
    """Resolve what a segment is made of: its own figures win over those of the table.

    A segment given by its bore alone counts as plastic.

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
            "plastic",
            bore_m,
            None,
            None,
            PLASTIC_ROUGHNESS_M,
            PLASTIC_HAZEN_WILLIAMS_C,
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
        for other in PIPES.values()
        if other.name.rpartition(" ")[0] == series and other.inner_diameter_m > pipe.inner_diameter_m
    ]
    return min(larger, key=lambda other: other.inner_diameter_m, default=None)
