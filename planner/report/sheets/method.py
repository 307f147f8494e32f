"""The sheet 'Method and cautions': how the figures were worked out, what the words mean, what to beware of."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner import __version__
from planner.report.sheets.page import Page
from planner.resource.clearness import law_in_words
from planner.study.compare import Study

GLOSSARY = (
    ("source", "Solar, grid or generator."),
    ("supply option", "One combination of sources that serves the same demand, such as solar + grid."),
    ("top-up", "Pumping on grid or generator because the sun and the tank do not suffice."),
    ("start level, stop level", "Levels of the tank at which top-up starts and stops: the float switch."),
    ("shortfall", "Water demanded and not delivered; delivered share = delivered / demanded."),
    ("idle sun", "PV energy available but unused: tank full, below starting power, or above what the pump takes."),
    ("static lift", "From the water at rest in the borehole up to the tank's inlet."),
    ("total dynamic head", "Static lift + drawdown + friction + residual head."),
    ("duty point", "Flow and head at which the pump and the system meet."),
    ("present cost", "Present value of every cost over the life, less the residual value."),
    ("net present value", "Present value of what users pay, less the present cost."),
    ("equivalent yearly cost", "Level yearly sum whose present value is the present cost."),
    ("levelised cost of water", "Present cost / present value of the delivered m3, in money of year 0."),
    ("internal rate of return", "Rate at which the extra construction against the reference equals the later savings."),
    ("payback", "Years until the extra construction is recovered and stays recovered; discounted or not."),
    ("residual value", "What equipment is worth at the end: its price times the share of its life left."),
)

LIMITS = (
    "Hours, not minutes: within an hour the water balance is resolved, but a passing cloud is not seen.",
    "Each life year starts with what the year before leaves in the tank; the first starts as full as it ends.",
    "A single weather file repeats every year; only monthly means give years that differ.",
    "From a nameplate alone, the power at part load is an assumption; points of the datasheet are better.",
    "The works age evenly, by the yearly declines of the inputs; a borehole is never cleaned.",
    "Surge, water quality and bursts are not part of the hourly run.",
    "Costs fall at year ends, loan payments are level, taxes on income are left out.",
    "The carbon dioxide of making and moving the equipment is not counted.",
    "The program computes; it does not inspect: a pumping test, a survey of the route and quotations come first.",
)


_SKY = {
    "perez-driesse": "Perez et al. (1990) as made continuous by Driesse, Jensen and Perez (2024)",
    "haydavies": "Hay and Davies (1980)",
}
_GLASS = {"glass": "plain glass", "coated_glass": "coated glass", "none": "no glass (left out)"}


def write_method(page: Page, study: Study, cautions: Sequence[str]) -> None:
    """Fill the sheet 'Method and cautions'.

    Parameters
    ----------
    page : Page
        The sheet.
    study : Study
        The finished comparison.
    cautions : sequence of str
        What to beware of.
    """
    page.fix_width(0, 28)
    page.fix_width(1, 112)
    page.title("Method and cautions", f"Worked out by planner {__version__}, seed {study.scenario.seed}.")
    page.heading("Cautions", 1)
    for number, caution in enumerate(cautions, start=1):
        _pair(page, f"! Caution {number}", caution)
    page.heading("Method", 1)
    for part, text in _method(study):
        _pair(page, part, text)
    page.heading("Limits of the model", 1)
    for limit in LIMITS:
        page.paragraph(limit, last_column=1)
    page.heading("Words", 1)
    for word, meaning in GLOSSARY:
        _pair(page, word, meaning)


def _pair(page: Page, left: str, right: str) -> None:
    page.put(page.row, 0, left, "wrap", "strong")
    page.put(page.row, 1, right, "wrap")
    page.row += 1


def _method(study: Study) -> Iterator[tuple[str, str]]:
    scenario = study.scenario
    yield "Weather", _weather(study)
    if (solar := scenario.sources.solar) is not None:
        yield (
            "PV array",
            f"Irradiance on the modules after {_SKY[solar.sky_model]}; reflection at {_GLASS[solar.reflection]} after "
            "De Soto, Klein and Beckman (2006) and Marion (2017); cell temperature after Faiman (2008), power of a "
            "module at any irradiance and temperature after Batzelis (2017) from its datasheet, and the De Soto "
            "single-diode equation where the controller's voltage window holds it off its best point; all as in pvlib. "
            "Shade, soiling, mismatch, wiring, first-light loss and yearly degradation are taken off as given.",
        )
    friction = (
        "Darcy-Weisbach with Colebrook-White (Colebrook 1939)"
        if scenario.pipeline.friction == "darcy-weisbach"
        else "Hazen-Williams"
    )
    yield (
        "Borehole and pipes",
        "Drawdown s = B Q + C Q2 (Jacob 1947), from a specific capacity or a step test. Friction after "
        f"{friction}, losses in fittings by their coefficients K. Bores of PE pipe from ISO 4427-2, of steel tube from "
        "EN 10255.",
    )
    yield (
        "Pump",
        "Affinity laws about the curve at rated speed."
        if scenario.pump.kind == "centrifugal"
        else "Positive displacement: flow proportional to speed less slip; torque follows the head.",
    )
    yield (
        "Hour loop",
        "Each hour of each life year: the sun pumps first; grid and generator top up between start and stop level, in "
        "their hours and outages; the tank is drawn on by the users. Sources may share an hour where the controller "
        "blends them. Nothing is created or lost: what is pumped equals what is delivered, lost to leakage and stored.",
    )
    if scenario.sources.generator is not None:
        yield (
            "Generator",
            "Fuel = idle part x rating x hours + further part x energy (Skarstein and Uhlen 1989, from memory); rating "
            "lowered for altitude and heat; services, overhauls and replacement by running hours.",
        )
    yield (
        "Choice of sizes",
        "Where left open: the smallest tank that meets the service target, the number of strings and the float "
        "switch's levels of least present cost that meet it. Options that meet the target are ranked by present cost; "
        "those that miss it come after them, by what they deliver.",
    )
    yield (
        "Money",
        "Life-cycle cost as in 10 CFR 436 and NIST Handbook 135 (Fuller and Petersen 1995): year 0 construction, all "
        "else at year ends; replacement at the end of each life; straight-line residual value. Levelised cost of water "
        "as average incremental economic cost (ADB, Handbook for the Economic Analysis of Water Supply Projects, "
        "1999). Real and nominal rates after Fisher.",
    )


def _weather(study: Study) -> str:
    weather = study.scenario.weather
    if weather.kind == "file":
        return (
            f"Hourly file: {study.weather.source}. Where it has no beam and diffuse irradiance of its own, global is "
            "split after Erbs, Klein and Duffie (1982)."
        )
    law = law_in_words(weather.daily_law, weather.clearness_maximum, study.place.latitude_deg)
    return (
        f"Hours made from twelve monthly means, anew for each life year: daily clearness after {law}; hours after "
        "Graham and Hollands (1990) and Knight, Klein and Duffie (1991), beam and diffuse after Erbs, Klein and Duffie "
        "(1982), temperature after Erbs, Klein and Beckman (1983). The sums of the months are kept."
    )
