"""Figures as a nameplate prints them: '50/60 Hz', '110-400 V', '1~ 230 V', '0 – 3,600 rpm'."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

Printed = str | float | list[float]
"""As printed, the figure alone, or the lowest and the highest."""

_THOUSANDS = r"[1-9]\d{0,2}(?:[,.'’ \u00a0]\d{3})+(?!\d)"
"""No line of a plate has three decimals."""
_NUMBER = rf"{_THOUSANDS}|\d+(?:[.,]\d+)?"
_UNIT = r"(?:\s*(?:v|volts?|vac|vdc|ac|dc|pv|hz|rpm|r/min|1/min|min-1|u/min|~|=|⎓))*"
_BETWEEN = r"\s*(?:[-/;~÷‐‑‒–—−]|to|\.\.+|…)\s*"
_PRINTED = re.compile(
    rf"{_UNIT}\s*(?:([13])\s*(?:~|∼|ph(?:ase)?s?\b\.?)(?=\D*\d))?{_UNIT}\s*({_NUMBER}){_UNIT}"
    rf"(?:({_BETWEEN})({_NUMBER}){_UNIT})?\s*",
    re.I,
)


@dataclass(frozen=True)
class Figures:
    """What stands on the plate: one figure, or the lowest and the highest.

    Attributes
    ----------
    numbers : tuple of float
        One or two.
    phases : int or None
        1 or 3 where '1~' or '3~' stands before them.
    stroke : bool
        Whether a stroke stands between the two.
    """

    numbers: tuple[float, ...]
    phases: int | None = None
    stroke: bool = False


def figures_of(given: Printed) -> Figures:
    """Read what was given for a line of the plate.

    Raises
    ------
    ValueError
        If it is neither one figure nor two, or the higher stands first.
    """
    if isinstance(given, str):
        found = _PRINTED.fullmatch(given)
        if found is None:
            raise ValueError("it is not understood")
        numbers = [_number(part) for part in (found[2], found[4]) if part]
        read = Figures(tuple(numbers), int(found[1]) if found[1] else None, "/" in (found[3] or ""))
    else:
        read = Figures(tuple(map(float, given if isinstance(given, Sequence) else [given])))
    if len(read.numbers) not in (1, 2):
        raise ValueError(f"{len(read.numbers)} figures were found")
    if len(read.numbers) == 2 and read.numbers[0] >= read.numbers[1]:
        raise ValueError("the lowest comes first, then the highest")
    return read


def _number(text: str) -> float:
    if re.fullmatch(_THOUSANDS, text):
        return float(re.sub(r"\D", "", text))
    return float(text.replace(",", "."))


SINGLE_VOLTAGE_PERCENT = 10.0
"""How far the supply may stand from a single voltage of the plate: NEMA MG 1 and zone B of IEC 60034-1, from memory."""
_LEAST_MOST = {"dc_voltage_v": (5, 2000), "ac_voltage_v": (5, 1000), "frequency_hz": (5, 400), "speed_rpm": (0, 60000)}
_SUCH_AS = {
    "dc_voltage_v": '"110-400 V" or [110, 400]',
    "ac_voltage_v": '"160-270 V", "1~ 230 V", 230 or [160, 270]',
    "frequency_hz": '50, "50/60" or [50, 60]',
    "speed_rpm": '"0-3,600" or [0, 3600]',
}


def check_printed(given: Printed, key: str) -> None:
    """Refuse what cannot stand on that line of a plate.

    Parameters
    ----------
    given : str, float or list of float
        As given.
    key : str
        'dc_voltage_v', 'ac_voltage_v', 'frequency_hz' or 'speed_rpm'.

    Raises
    ------
    ValueError
        With what was given and what may be.
    """
    shown, (least, most) = shown_figures(given), _LEAST_MOST[key]
    try:
        read = figures_of(given)
    except ValueError as error:
        raise ValueError(f"{shown} was given, but {error}; write it as printed: {_SUCH_AS[key]}") from error
    if not all(least <= number <= most for number in read.numbers):
        raise ValueError(f"{shown} was given; each figure must be {least} to {most}")
    if read.phases is not None and key != "ac_voltage_v":
        raise ValueError(f"{shown} was given; '{read.phases}~' is an AC supply: it belongs to ac_voltage_v")
    if read.stroke and key.endswith("voltage_v"):
        raise ValueError(
            f"{shown} was given; two voltages with a stroke are two ways to connect the winding, not a range: give the "
            "one for which a licensed electrician will connect it"
        )
    if len(read.numbers) == 1 and key == "dc_voltage_v":
        raise ValueError(f"{shown} was given; the lowest and the highest are wanted: {_SUCH_AS[key]}")


def ends_of(given: Printed, key: str, low: str, high: str) -> dict[str, float]:
    """Say what a line of the plate gives: lowest and highest by their keys, and the phases where they are printed.

    A single AC voltage is the rated one, about which the supply may vary; a single speed is the highest.
    """
    read = figures_of(given)
    first, last = read.numbers[0], read.numbers[-1]
    found = {low: first, high: last}
    if len(read.numbers) == 1 and key == "ac_voltage_v":
        varies = first * SINGLE_VOLTAGE_PERCENT / 100
        found = {low: round(first - varies, 3), high: round(first + varies, 3)}
    elif len(read.numbers) == 1:
        found = {high: last}
    return found if read.phases is None else found | {"phases": read.phases}


def shown_figures(given: Printed) -> str:
    """Write what was given as it would be printed: texts as they are, lists as a range."""
    if isinstance(given, str):
        return f"'{given[:40]}'"
    return " to ".join(f"{number:g}" for number in (given if isinstance(given, list) else [given]))
