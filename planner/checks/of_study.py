"""The site checks of a finished comparison or sizing, and the answer that they allow."""

from __future__ import annotations

from collections.abc import Sequence

from planner.checks.site import site_verdicts
from planner.checks.verdict import Verdict, failed
from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.starter import starter_sentence
from planner.study.compare import Study
from planner.study.sizing import Sizing
from planner.study.sizing_words import sizing_sentences
from planner.study.words import sentences

MEND_FIRST = "Least cost once these are mended"
_SHOWN = 4


def study_verdicts(study: Study) -> tuple[Verdict, ...]:
    """Check the site with the tank of the best option and the array of the best option that has one.

    Parameters
    ----------
    study : Study
        The finished comparison.

    Returns
    -------
    tuple of Verdict
        In the order of the topics.
    """
    strings = next((option.strings for option in study.ranked if option.strings), None)
    return site_verdicts(study.scenario, study.place, study.weather, strings=strings, tank_m3=study.ranked[0].tank_m3)


def answer(study: Study, verdicts: Sequence[Verdict]) -> list[str]:
    """Put the answer into plain sentences, what must be mended before it holds first.

    Parameters
    ----------
    study : Study
        The finished comparison.
    verdicts : sequence of Verdict
        What the site checks found.

    Returns
    -------
    list of str
    """
    faults, starter = failures(study, verdicts), starter_sentence(study.scenario)
    said = [f"{headline(study, verdicts)}. {faults}" if faults and study.best else faults, *sentences(study), starter]
    return [sentence for sentence in said if sentence]


def headline(study: Study, verdicts: Sequence[Verdict]) -> str:
    """Name the option ranked first, and say whether it is recommended as it is; without a full stop."""
    first = study.ranked[0]
    if study.best is None:
        target = study.scenario.service.delivered_share_percent
        return f"No option meets the service target of {target:g} %; {first.name} comes nearest"
    lead = "Recommended" if holds(study, verdicts) else MEND_FIRST
    return f"{lead}: {first.name}{'; its total is incomplete' if first.unpriced else ''}"


def holds(study: Study, verdicts: Sequence[Verdict]) -> bool:
    """Tell whether the option ranked first meets the target and passes its site checks."""
    return study.best is not None and not failed_of_first(study, verdicts)


def failed_of_first(study: Study, verdicts: Sequence[Verdict]) -> tuple[Verdict, ...]:
    """Pick the failed checks that concern the option ranked first."""
    return failed_with(study.ranked[0].sources, verdicts)


def failed_with(sources: Sequence[str], verdicts: Sequence[Verdict]) -> tuple[Verdict, ...]:
    """Pick the failed checks that concern an option of some sources: not those of a source that it does without."""
    without = set()
    if "solar" not in sources:
        without.add("Array and controller")
    if set(sources) == {"solar"}:
        without.add("AC side")
    return tuple(verdict for verdict in failed(verdicts) if verdict.topic not in without)


def failures(study: Study, verdicts: Sequence[Verdict]) -> str:
    """Say which checks of the option ranked first fail, so that it cannot be built as it is; '' where none does."""
    return not_to_build(failed_of_first(study, verdicts))


def not_to_build(found: Sequence[Verdict]) -> str:
    """Say that what fails some checks cannot be built as it is; '' where there are none."""
    if not found:
        return ""
    shown = [f"{_inside(verdict.topic)}: {verdict.compared.split(', against')[0]}" for verdict in found[:_SHOWN]]
    more = f" and {len(found) - _SHOWN} more" if len(found) > _SHOWN else ""
    count = "one site check fails" if len(found) == 1 else f"{len(found)} site checks fail"
    return f"Not to be built as it is: {count} ({'; '.join(shown)}{more}); see the checks for the remedies."


def sizing_answer(sizing: Sizing, place: Place, weather: WeatherYears) -> list[str]:
    """Put what sizing found into plain sentences, what must be mended before it holds first.

    Parameters
    ----------
    sizing : Sizing
        The finished sizing.
    place : Place
        Where the site is.
    weather : WeatherYears
        Its weather.

    Returns
    -------
    list of str
    """
    first = sizing.ranked[0]
    design = first.nearest
    setup = first.grid.setups[int(first.candidates.setup[design.place])].supply
    verdicts = site_verdicts(
        setup.scenario, place, weather, strings=design.strings if design.modules else None, tank_m3=design.tank_m3
    )
    faults = not_to_build(failed_with(setup.sources, verdicts))
    said = sizing_sentences(sizing)
    if not faults:
        return said
    return [f"{MEND_FIRST}: {first.name}. {faults}" if first.best is not None else faults, *said]


def _inside(topic: str) -> str:
    """Write a topic as it stands inside a sentence."""
    return topic if topic[:2].isupper() else topic.lower()
