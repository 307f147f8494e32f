"""The usual cautions, each placed where it applies."""

from __future__ import annotations

from dataclasses import dataclass

from planner.scenario.scenario import Scenario

LOCAL = "Local codes and licensed practice come first."


@dataclass(frozen=True)
class Caution:
    """A caution, the topic of the checks beside which it belongs (see `planner.checks.verdict`), and its words."""

    topic: str
    text: str


def placed_cautions(scenario: Scenario) -> tuple[Caution, ...]:
    """List the cautions that apply to a scenario, the ones that can kill first."""
    sources, demand = scenario.sources, scenario.demand
    found = []
    if sources.solar is not None:
        found.append(
            Caution(
                "Array and controller",
                "PV modules give dangerous DC voltage whenever there is light and cannot be switched off by day; "
                f"isolators, string fuses and polarity are for a licensed electrician. {LOCAL}",
            )
        )
    if sources.grid is not None:
        found.append(
            Caution(
                "AC side",
                "Mains at a well can kill: earthing, a residual-current device and lock-off before the pump is lifted "
                f"are for a licensed electrician and the utility. {LOCAL}",
            )
        )
    if sources.generator is not None:
        found.append(
            Caution(
                "AC side",
                "A generator's exhaust kills in closed rooms, and one connected beside the grid needs a changeover "
                f"switch that cannot feed back into it; store fuel away from the well. {LOCAL}",
            )
        )
    where = (
        "frames of modules, controller, pipe and casing" if sources.solar is not None else "controller, pipe and casing"
    )
    found += [
        Caution(
            "Array and controller" if sources.solar is not None else "AC side",
            f"Lightning comes down the cable into the well: bond and earth {where}, and fit surge arresters at both "
            f"ends of the cable, to the local wiring rules. {LOCAL}",
        ),
        Caution(
            "Borehole",
            "A pump with its full pipe can weigh more than a crew can hold: lift with tripod or crane, clamps and a "
            f"safety rope, nobody beneath, and keep the open well covered. {LOCAL}",
        ),
        Caution(
            "Pipeline",
            "Test the pipe with water, never with air, which stores enough to kill when a joint lets go; raise the "
            f"pressure step by step, bleed the air and keep people away. {LOCAL}",
        ),
    ]
    drinks = any(user.kind == "people" for user in demand.users)
    water = "Have the water tested for germs and minerals and the well disinfected before anyone drinks from it"
    if not drinks:
        water = "Test the water for what its use asks; nobody is to drink it untested"
    found += [
        Caution("Water", f"{water}. {LOCAL}"),
        Caution("Borehole", f"Taking water mostly needs a permit with a daily volume; hold it before pumping. {LOCAL}"),
    ]
    return tuple(found)
