"""The table of pipe materials: everything that the material of a pipe decides, one entry each.

Whoever adds a material adds an entry to `MATERIALS`, and its name and the source of its warm class to the texts; pipe
names, inside diameters, friction, warm water, surge and the remedies of the checks follow it.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True)
class PipeSize:
    """One size of a series: its number in the name, least outside diameter and wall [mm], and class [bar]."""

    number: int
    outer_mm: float
    wall_mm: float
    class_bar: float


@dataclass(frozen=True)
class WarmClass:
    """Share of its pressure class that a pipe keeps in warm water.

    Attributes
    ----------
    temperature_c, share : tuple of float
        Temperatures of the water, rising [deg C], and the share kept there; straight lines between, the first share
        below, and no class above the last.
    source : str
        Key in the texts of where the shares come from.
    """

    temperature_c: tuple[float, ...]
    share: tuple[float, ...]
    source: str

    def share_at(self, temperature_c: float) -> float | None:
        """Share kept in water of a temperature [deg C], or None where the pipe has no class any more."""
        if temperature_c > self.temperature_c[-1]:
            return None
        return float(np.interp(temperature_c, self.temperature_c, self.share))


@dataclass(frozen=True, eq=False)
class PipeMaterial:
    """A material of pipe.

    Attributes
    ----------
    key : str
        What it is called in the texts.
    roughness_m : float
        Roughness of the wall in service [m].
    hazen_williams_c : float
        Hazen-Williams coefficient.
    warm : WarmClass
        What warm water leaves of the pressure class.
    young_pa, poisson : float or None, float
        Short-term modulus of the wall [Pa], None where it is not known, and Poisson's ratio.
    series : dict of str to tuple of PipeSize
        Sizes from small to large, by what stands before the number in a pipe's name.
    outer_tolerance_mm : dict of int to float
        How much larger the mean outside diameter may be, by size number; 0 where not named.
    wall_tolerance : tuple of float or None
        Largest wall over the smallest, as a factor and what is added [mm], rounded up to 0.1 mm; None for a wall that
        is taken as tabled.
    """

    key: str
    roughness_m: float
    hazen_williams_c: float
    warm: WarmClass
    young_pa: float | None
    poisson: float
    series: dict[str, tuple[PipeSize, ...]]
    outer_tolerance_mm: dict[int, float]
    wall_tolerance: tuple[float, float] | None = None


PLASTIC_ROUGHNESS_M = 0.007e-3
"""Wall of plastic pipe in service: common practice, no source (new: 0.0015 mm, EPANET 2.2 manual, table 3.2)."""
STEEL_ROUGHNESS_M = 0.15e-3
"""Galvanised steel: 0.0005 ft, EPANET 2.2 manual, table 3.2."""
PLASTIC_HAZEN_WILLIAMS_C = 150.0
"""New plastic: 140-150, EPANET 2.2 manual, table 3.2."""
STEEL_HAZEN_WILLIAMS_C = 120.0
"""Galvanised iron, EPANET 2.2 manual, table 3.2."""


def _sizes(numbers: tuple[int, ...], walls_mm: tuple[float | None, ...], class_bar: float) -> tuple[PipeSize, ...]:
    """Sizes of plastic pipe, numbered by the outside diameter; no wall where a size is not made."""
    return tuple(
        PipeSize(number, float(number), wall, class_bar)
        for number, wall in zip(numbers, walls_mm, strict=True)
        if wall is not None
    )


_PE100_OUTER_MM = (25, 32, 40, 50, 63, 75, 90, 110)
_WARM_PE = WarmClass((20.0, 30.0, 40.0), (1.0, 0.87, 0.74), "pe")

# ISO 4427-2:2007 table 2 (EN 12201-2:2011 the same); design coefficient 1.25
PE100 = PipeMaterial(
    key="pe100",
    roughness_m=PLASTIC_ROUGHNESS_M,
    hazen_williams_c=PLASTIC_HAZEN_WILLIAMS_C,
    young_pa=1.1e9,  # 0.8 to 1.2 GPa, from memory: wave speed within 15 %
    poisson=0.45,  # from memory
    series={
        "PE100 SDR17": _sizes(_PE100_OUTER_MM, (None, 2.0, 2.4, 3.0, 3.8, 4.5, 5.4, 6.6), 10.0),
        # the label of SDR 13.6 is 12.5, not the computed 12.7
        "PE100 SDR13.6": _sizes(_PE100_OUTER_MM, (2.0, 2.4, 3.0, 3.7, 4.7, 5.6, 6.7, 8.1), 12.5),
        "PE100 SDR11": _sizes(_PE100_OUTER_MM, (2.3, 3.0, 3.7, 4.6, 5.8, 6.8, 8.2, 10.0), 16.0),
        "PE100 SDR9": _sizes(_PE100_OUTER_MM, (3.0, 3.6, 4.5, 5.6, 7.1, 8.4, 10.1, 12.3), 20.0),
    },
    # EN 12201-2 grade B, from memory
    outer_tolerance_mm={25: 0.3, 32: 0.3, 40: 0.4, 50: 0.4, 63: 0.4, 75: 0.5, 90: 0.6, 110: 0.7},
    # ISO 11922-1 grade V, from memory; it gives the printed 9.2, 11.1, 6.1 and 7.4 mm of EN 12201-2 for 90 and 110 mm
    wall_tolerance=(1.1, 0.1),
    warm=_WARM_PE,
)

_PVC_OUTER_MM = (40, 50, 63, 75, 90, 110, 125, 160, 200)

# ISO 1452-2:2009, design coefficient 2.5 to 90 mm and 2.0 from 110 mm
PVC_U = PipeMaterial(
    key="pvc_u",
    roughness_m=PLASTIC_ROUGHNESS_M,
    hazen_williams_c=PLASTIC_HAZEN_WILLIAMS_C,
    warm=WarmClass((25.0, 35.0, 45.0), (1.0, 0.8, 0.63), "pvc_u"),
    young_pa=3.0e9,  # 2.7 to 3.3 GPa, from memory
    poisson=0.38,
    series={
        "PVC-U PN6": _sizes(_PVC_OUTER_MM, (1.5, 1.6, 2.0, 2.3, 2.8, 2.7, 3.1, 4.0, 4.9), 6.0),
        "PVC-U PN10": _sizes(_PVC_OUTER_MM, (1.9, 2.4, 3.0, 3.6, 4.3, 4.2, 4.8, 6.2, 7.7), 10.0),
        "PVC-U PN12.5": _sizes(_PVC_OUTER_MM, (2.4, 3.0, 3.8, 4.5, 5.4, 5.3, 6.0, 7.7, 9.6), 12.5),
        "PVC-U PN16": _sizes(_PVC_OUTER_MM, (3.0, 3.7, 4.7, 5.6, 6.7, 6.6, 7.4, 9.5, 11.9), 16.0),
    },
    # ISO 1452-2 table 2, from memory
    outer_tolerance_mm={40: 0.2, 50: 0.2, 63: 0.3, 75: 0.3, 90: 0.3, 110: 0.4, 125: 0.4, 160: 0.5, 200: 0.6},
    wall_tolerance=(1.1, 0.2),  # from memory
)

_STEEL_MEDIUM_CLASS_BAR = 25.0
"""Limit of threaded malleable-iron fittings to 120 deg C, EN 10242, from memory; the tube itself bears more."""

# EN 10255:2004+A1:2007 series M (ISO 65 medium); DN 15, 20, 65-100 from memory
STEEL = PipeMaterial(
    key="steel",
    roughness_m=STEEL_ROUGHNESS_M,
    hazen_williams_c=STEEL_HAZEN_WILLIAMS_C,
    warm=WarmClass((20.0, 120.0), (1.0, 1.0), "steel"),
    young_pa=2.0e11,
    poisson=0.3,
    series={
        "steel medium": tuple(
            PipeSize(nominal, outer, wall, _STEEL_MEDIUM_CLASS_BAR)
            for nominal, outer, wall in (
                (15, 21.3, 2.6),
                (20, 26.9, 2.6),
                (25, 33.7, 3.2),
                (32, 42.4, 3.2),
                (40, 48.3, 3.2),
                (50, 60.3, 3.6),
                (65, 76.1, 3.6),
                (80, 88.9, 4.0),
                (100, 114.3, 4.5),
            )
        )
    },
    outer_tolerance_mm={},
)

PLASTIC = PipeMaterial(
    key="plastic",
    roughness_m=PLASTIC_ROUGHNESS_M,
    hazen_williams_c=PLASTIC_HAZEN_WILLIAMS_C,
    young_pa=None,
    poisson=0.45,
    series={},
    outer_tolerance_mm={},
    warm=_WARM_PE,
)
"""What a segment given by its inside diameter alone is taken for."""

MATERIALS: tuple[PipeMaterial, ...] = (PE100, PVC_U, STEEL, PLASTIC)
