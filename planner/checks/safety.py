"""The usual cautions, each placed where it applies.

They are common practice of the trades and state what to take care of, not how to do the work; the codes of the country
and the people licensed under them come first.
"""

from __future__ import annotations

from collections.abc import Iterator, Set
from dataclasses import dataclass

from planner.scenario.scenario import Scenario

LOCAL = "Local codes and licensed practice come first."
WHERE_LISTED = (
    f"{LOCAL} Read the cautions before anything is built, opened or drunk: 'planner run' prints those that apply to "
    "the site and writes them on the sheet 'Method and cautions'."
)
"""What a study says that does not print the cautions themselves."""


@dataclass(frozen=True)
class Caution:
    """A caution, the topic of the checks beside which it belongs (see `planner.checks.verdict`), and its words."""

    topic: str
    text: str


def placed_cautions(*scenarios: Scenario) -> tuple[Caution, ...]:
    """List the cautions that apply to one scenario or to several together, the ones that can kill first."""
    sources = {name for scenario in scenarios for name in scenario.sources.names}
    drinks = any(user.kind == "people" for scenario in scenarios for user in scenario.demand.users)
    found = [*_electricity(sources), *_heights_and_depths(sources), *_water(drinks)]
    return tuple(Caution(topic, f"{text} {LOCAL}") for topic, text in found)


def _electricity(sources: Set[str]) -> Iterator[tuple[str, str]]:
    solar, grid, generator = (name in sources for name in ("solar", "grid", "generator"))
    controller = "Array and controller" if solar else "AC side"
    if solar:
        yield (
            "Array and controller",
            "PV modules give dangerous DC voltage whenever there is light and cannot be switched off by day; "
            "isolators, string fuses and polarity are for a licensed electrician.",
        )
        yield (
            "Array and controller",
            "Never unplug a DC connector, pull a DC fuse or cut a DC cable under load: the arc does not go out by "
            "itself, burns and sets fire. Stop the pump, open the DC load-break isolator and measure that no current "
            "flows before a connector is opened; an earth fault can keep current flowing, so treat it as live.",
        )
    named = [name for name, there in (("array", solar), ("grid", grid), ("generator", generator)) if there]
    every = named[0] if len(named) == 1 else f"{', '.join(named[:-1])} and {named[-1]}"
    live = "; by day the array's side of its isolator stays live" if solar else ""
    yield (
        controller,
        f"Before a cover is opened or a conductor touched, isolate every source ({every}), lock each off and label it, "
        "wait as long as the controller's maker says for its capacitors to discharge, then prove dead, between all "
        f"conductors and to earth, with a tester tried on a known source before and after{live}.",
    )
    yield (controller, "Never work switches, plugs or the controller with wet hands or standing in water.")
    if grid:
        yield (
            "AC side",
            "Grid electricity at a borehole can kill: earthing, a residual-current device and lock-off before the pump "
            "is lifted are for a licensed electrician and the utility.",
        )
    if grid or generator:
        yield (
            "AC side",
            "The type of the residual-current device must suit an electronic drive, whose smooth DC leakage blinds "
            "types AC and A: type B (IEC 62423) where the drive's maker or the local code asks for it, with no device "
            "of another type upstream in the same circuit.",
        )
    if generator:
        yield (
            "AC side",
            "A generator's exhaust kills in closed and half-closed rooms: run it in the open, away from doors, windows "
            "and the mouth of the borehole. Let it cool before it is refuelled, keep flames away, and store fuel where "
            "a spill cannot reach the borehole.",
        )
        yield (
            "AC side",
            "A generator must never feed back into the grid or another source, which kills those who work on the line: "
            "connect it through a changeover switch that cannot join the two, never by a plug into a socket.",
        )
    where = "frames of modules, controller, pipe and casing" if solar else "controller, pipe and casing"
    ends = "at the array, at the controller and at the wellhead" if solar else "at the controller and at the wellhead"
    yield (
        controller,
        f"Lightning comes down the cables into the borehole: bond and earth {where}, fit surge protection {ends}, to "
        "the local wiring rules, and stop work when thunder is heard.",
    )


def _heights_and_depths(sources: Set[str]) -> Iterator[tuple[str, str]]:
    fenced = "tank, array and controller" if "solar" in sources else "tank and controller"
    yield (
        "Borehole",
        "A pump with its full pipe can weigh more than a crew can hold: lift with tripod or crane, clamps and a safety "
        "rope, all rated for the load, with nobody beneath.",
    )
    yield (
        "Borehole",
        "Look for overhead lines before a tripod, crane, mast or length of pipe is raised, and keep the distance that "
        "the utility asks: a line can kill without being touched.",
    )
    yield (
        "Borehole",
        "Never go down a dug shaft or into a pump chamber or tank alone: the air can lack oxygen or hold gas. Test "
        "the air, ventilate, wear a harness with a line to someone outside, keep engines away, and never go in after "
        "someone who has collapsed; call rescue.",
    )
    yield (
        "Tank",
        "People fall from roofs, ladders and tank towers: guard rails or a harness on a sound anchor, ladders tied, no "
        "work there in wind, rain or alone. Roof and tower must be designed for their load; each m3 of water weighs a "
        "tonne.",
    )
    yield (
        "Tank",
        "Children drown in open tanks and fall into open boreholes: keep tank, chambers and borehole covered and "
        f"locked, and fence {fenced}.",
    )
    yield (
        "Pipeline",
        "Trench walls fall in without warning and bury people: shore or slope every trench that someone enters, as "
        "the local code asks, keep spoil and vehicles from its edge, and find buried cables and pipes before digging.",
    )
    yield (
        "Pipeline",
        "Test the pipe with water, never with air, which stores enough to kill when a joint lets go: fill slowly, "
        "bleed the air at the high points, then raise the pressure by steps and keep people away.",
    )


def _water(drinks: bool) -> Iterator[tuple[str, str]]:
    clean = "Clean, disinfect and flush borehole, pipes and tank first, then take samples:"
    if drinks:
        yield (
            "Water",
            f"{clean} have germs, arsenic, fluoride, nitrate and salinity tested before anyone drinks the water. "
            "Nothing computed here says that it is fit to drink.",
        )
    else:
        yield ("Water", f"{clean} test the water for what its use asks; nobody is to drink it untested.")
    yield (
        "Water",
        "Chlorine burns skin, eyes and lungs: gloves, goggles and open air; add it to water, never water to it; never "
        "mix it with acid, fuel or another cleaner; let nobody drink, and lead the water away from animals and "
        "streams, until it is flushed out.",
    )
    yield ("Borehole", "Taking water mostly needs a permit with a daily volume; hold it before pumping.")
