"""Strings in parallel: their current, what protects one from the others, and the array's power over the pump's."""

from __future__ import annotations

from math import ceil, floor

from planner.checks.array import TOPIC, cold_string_v
from planner.checks.basis import Basis
from planner.checks.verdict import (
    PRACTICE,
    Remedy,
    Verdict,
    at_least,
    at_most,
    figure,
    highest,
    lowest,
    missing,
    reserve,
    room,
)
from planner.scenario.solar import Solar
from planner.supply.cables import PV_CURRENT_FACTOR
from planner.text import text

POWER_RATIO = (1.2, 2.0)
FUSE_LEAST, FUSE_MOST = 1.5, 2.4
"""Rating of a string's fuse over the short-circuit current of a module, IEC 62548 (from memory)."""
FUSE_RATINGS_A = (1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 25, 30, 32, 40, 50, 63)
"""Usual ratings of gPV fuses (IEC 60269-6), from memory."""
FEW_STRINGS = 2
"""Strings of which none can be harmed by the other: IEC 62548, as a module bears its own short-circuit current."""


def verdicts(basis: Basis) -> list[Verdict]:
    """Judge the strings; nothing without an array."""
    solar = basis.scenario.sources.solar
    if solar is None:
        return []
    return [_current(basis, solar), _over_current(basis, solar), _ratio(basis, solar)]


def strings_remedy(basis: Basis, count: int, words: str) -> Remedy:
    """Change the number of strings, or the most that a search may try where the number is left open."""
    key = "sources.solar.strings" if basis.strings is not None else "sources.solar.strings_max"
    return words, {key: count}


def _counted(basis: Basis) -> str:
    return f"{basis.string_counts[1]} string(s)" + ("" if basis.strings is not None else ", the most there may be")


def _current(basis: Basis, solar: Solar) -> Verdict:
    limit, strings = basis.scenario.controller.dc_current_max_a, basis.string_counts[1]
    value = strings * PV_CURRENT_FACTOR * solar.module.current_sc_a
    compared = f"Current of {_counted(basis)}, 1.25 times the short-circuit current, against the controller's largest"
    why = "Bright cloud edges give more than the rated current; inputs and fuses must bear it."
    source = f"{text('source.controller')}; 1.25 times by IEC 62548"
    key = "array_current"
    if limit is None:
        look_for = "look for 'max. input current' or 'Isc max.' on the controller's plate"
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=value, unit="A")
    fits = floor(limit / (value / strings) + 1e-9)
    words, changes = (
        strings_remedy(basis, fits, f"no more than {fits} string(s)")
        if fits
        else ("another controller, or a module of less current", {})
    )
    return highest(TOPIC, key, compared, value, limit, "A", why=why, remedy=words, source=source, changes=changes)


def _over_current(basis: Basis, solar: Solar) -> Verdict:
    strings, module = basis.string_counts[1], solar.module
    value, limit, fuse = (strings - 1) * module.current_sc_a, module.series_fuse_max_a, solar.string_fuse_a
    key = "string_over_current"
    compared = f"Current that the others of {_counted(basis)} drive into a faulty one, against the module's series fuse"
    why = "A short circuit in one string draws the current of all others, which can set its modules and cable alight."
    source = "the module's datasheet; IEC 62548 (fuse of 1.5 to 2.4 times the short-circuit current, from memory)"
    if limit is None and strings > FEW_STRINGS:
        look_for = "look for 'max. series fuse' on the module's back"
        return missing(TOPIC, key, compared, look_for, why=why, source=source, value=value, unit="A")
    words, changes = _fuse(basis, solar)
    if fuse is not None:
        low, high = (times * module.current_sc_a for times in (FUSE_LEAST, FUSE_MOST))
        most = high if limit is None else min(high, limit)
        compared = f"Fuse in each string, against {figure(low)} A and at most {figure(most)} A for this module"
        judge, bound = (lowest, low) if not at_least(fuse, low) else (highest, most)
        return judge(TOPIC, key, compared, fuse, bound, "A", why=why, remedy=words, source=source, changes=changes)
    if limit is None:
        compared += ", which one or two strings do not reach"
        return Verdict(TOPIC, key, compared, "pass", value, None, "A", "", why, "", source)
    return highest(TOPIC, key, compared, value, limit, "A", why=why, remedy=words, source=source, changes=changes)


def _fuse(basis: Basis, solar: Solar) -> Remedy:
    """Name the smallest usual fuse that suits the module, or fewer strings where none does."""
    module, limit = solar.module, solar.module.series_fuse_max_a
    low = FUSE_LEAST * module.current_sc_a
    most = FUSE_MOST * module.current_sc_a if limit is None else min(FUSE_MOST * module.current_sc_a, limit)
    rating = next((rating for rating in FUSE_RATINGS_A if at_least(rating, low) and at_most(rating, most)), None)
    if rating is not None:
        volts = ceil(cold_string_v(basis, solar))
        words = (
            f"a gPV fuse (IEC 60269-6) of {rating} A, for at least {volts} V DC, in both poles of each string; not "
            "covered: the cable of a string, which must bear the fuse's rating"
        )
        return words, {"sources.solar.string_fuse_a": float(rating)}
    fits = FEW_STRINGS if limit is None else 1 + floor(limit / module.current_sc_a + 1e-9)
    words, changes = strings_remedy(basis, fits, f"no more than {fits} string(s) and no fuse: no usual rating suits")
    return words, changes | {"sources.solar.string_fuse_a": None}


def _ratio(basis: Basis, solar: Solar) -> Verdict:
    low, high = POWER_RATIO
    need_w = basis.motor_input_w / (basis.scenario.controller.efficiency_percent / 100)
    string_w = solar.modules_in_series * solar.module.power_w
    strings = basis.strings
    if strings is None:
        # the number that comes nearest to the middle stands for a design that is still open
        strings = int(min(max(round((low + high) / 2 * need_w / string_w), 1), solar.strings_max))
    value = strings * string_w / need_w
    left_open = "" if basis.strings is not None else f" (the number is open; {strings} of 1 to {solar.strings_max})"
    short = value < (low + high) / 2
    good = at_least(value, low) and at_most(value, high)
    words, changes = _other_number(basis, need_w / string_w, strings, short=short)
    return Verdict(
        TOPIC,
        "power_ratio",
        f"Rated power of {strings} string(s){left_open} over what the pump takes, against {low:g} to {high:g}",
        "pass" if good else "caution",
        value,
        low if short else high,
        "times",
        reserve(value, low, "times") if short else room(value, high, "times"),
        "A small array seldom brings the pump to full speed; a large one gives power that nothing can use.",
        "" if good else words,
        PRACTICE,
        {} if good else changes,
    )


def _other_number(basis: Basis, strings_per_need: float, strings: int, *, short: bool) -> Remedy:
    low, high = POWER_RATIO
    wanted = ceil(low * strings_per_need - 1e-9) if short else max(floor(high * strings_per_need + 1e-9), 1)
    if wanted == strings:
        return "fewer modules in series where the voltages allow it, or a smaller module: one string is the least", {}
    words, changes = strings_remedy(basis, wanted, f"{wanted} string(s)")
    if not at_most(wanted / strings_per_need, high) or not at_least(wanted / strings_per_need, low):
        words += ", the nearest there is"
    return words, changes
