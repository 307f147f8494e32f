"""The site checks of a finished comparison or sizing, and the answer that they allow."""

from __future__ import annotations

from collections.abc import Sequence

from planner.answers.users import users_sentence
from planner.checks.basis import Basis
from planner.checks.design import depends_on_design
from planner.checks.site import site_basis, site_verdicts
from planner.checks.verdict import Verdict, failed
from planner.resource.sun import Place
from planner.resource.years import WeatherYears
from planner.scenario.starter import starter_sentence
from planner.sources.base import SourceKind
from planner.study.compare import OptionResult, Study
from planner.study.context import Store
from planner.study.site import estimate_sentences
from planner.study.sizing import Sizing
from planner.study.sizing_words import sizing_sentences
from planner.study.words import sentences
from planner.text import language_in_use, text

_SHOWN = 4
_BASES: Store[tuple[Study, Basis]] = Store(2)


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
    strings, tank_m3 = study_design(study)
    known = study_basis(study)
    return site_verdicts(study.scenario, study.place, study.weather, strings=strings, tank_m3=tank_m3, known=known)


def study_basis(study: Study) -> Basis:
    """What the checks of `study_verdicts` share; kept for the last studies, by their identity."""
    key = id(study), language_in_use()
    return _BASES.keep(
        key, lambda: (study, site_basis(study.scenario, study.place, study.weather, *study_design(study)))
    )[1]


def study_design(study: Study) -> tuple[int | None, float]:
    """Give the strings of the best option that has an array, and tank of the best option [m3]."""
    strings = next((option.strings for option in study.ranked if option.strings), None)
    return strings, study.ranked[0].tank_m3


def answer(study: Study, verdicts: Sequence[Verdict]) -> list[str]:
    """Put the answer into plain sentences, what must be remedied before it holds first.

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
    found = below_headline(study, verdicts)
    if failures(study, verdicts) and study.best:
        found[0] = text("site_answer.faults", headline=headline(study, verdicts), faults=found[0])
    return found


def below_headline(study: Study, verdicts: Sequence[Verdict]) -> list[str]:
    """Give the sentences of `answer` as they stand where the headline stands above them."""
    found = [
        failures(study, verdicts),
        others_that_hold(study, verdicts),
        *sentences(study),
        users_sentence(study),
        starter_sentence(study.scenario),
    ]
    return [sentence for sentence in found if sentence]


def headline(study: Study, verdicts: Sequence[Verdict]) -> str:
    """Name the option ranked first, and say whether it is recommended as it is; without a full stop."""
    first = study.ranked[0]
    target = f"{study.scenario.service.demand_met_percent:g}"
    if study.best is None:
        return text("site_answer.nearest", target=target, option=first.name)
    if not study.scenario.priced:
        lead = "meets" if holds(study, verdicts) else "meets_once_remedied"
        return text(f"site_answer.{lead}", target=target, option=first.name)
    lead = "recommended" if holds(study, verdicts) else "remedy_first"
    key = f"site_answer.{lead}_incomplete" if first.unpriced else f"site_answer.{lead}"
    return text(key, option=first.name)


def holds(study: Study, verdicts: Sequence[Verdict]) -> bool:
    """Tell whether the option ranked first meets the target and passes its site checks."""
    return study.best is not None and not failed_of_first(study, verdicts)


def failed_of_first(study: Study, verdicts: Sequence[Verdict]) -> tuple[Verdict, ...]:
    """Pick the failed checks that concern the option ranked first."""
    return failed_with(study.ranked[0].sources, study.kinds, verdicts)


def failed_with(
    sources: Sequence[SourceKind], kinds: Sequence[SourceKind], verdicts: Sequence[Verdict]
) -> tuple[Verdict, ...]:
    """Pick the failed checks that concern an option of some sources: not those of others of `kinds` alone."""
    topics = {source.check_topic for source in sources}
    without = {source.check_topic for source in kinds} - topics
    return tuple(
        verdict
        for verdict in failed(verdicts)
        if verdict.topic not in without and (not verdict.supplies or topics.intersection(verdict.supplies))
    )


def failures(study: Study, verdicts: Sequence[Verdict]) -> str:
    """Say which checks of the option ranked first fail, so that it cannot be built as it is; '' where none does.

    Where sizes were chosen among those that pass, say that none does, and what would lift the first of them.
    """
    found = failed_of_first(study, verdicts)
    sentence = not_to_build(found)
    in_the_way = next((verdict for verdict in found if depends_on_design(verdict)), None)
    if in_the_way is None or not _sizes_open(study):
        return sentence
    return f"{sentence} {text('site_answer.in_the_way', what=in_the_way.what, remedy=in_the_way.remedy)}"


def others_that_hold(study: Study, verdicts: Sequence[Verdict]) -> str:
    """Name the options that meet the target and pass their checks, where the one ranked first does not pass them."""
    if study.best is None or holds(study, verdicts):
        return ""
    alike = [verdict for verdict in verdicts if not depends_on_design(verdict)]
    names = [
        option.name
        for option in study.ranked[1:]
        if option.meets_service
        and not failed_with(option.sources, study.kinds, alike)
        and not failed_with(option.sources, study.kinds, option_verdicts(study, option))
    ]
    return text("site_answer.others_hold", options=", ".join(names)) if names else ""


def option_verdicts(study: Study, option: OptionResult) -> tuple[Verdict, ...]:
    """Check the site as it holds for one option, with that option's own array and tank."""
    strings = option.strings or None
    return site_verdicts(option.scenario, study.place, study.weather, strings=strings, tank_m3=option.tank_m3)


def _sizes_open(study: Study) -> bool:
    """Whether anything of the array or the tank of the option ranked first was chosen."""
    first = study.ranked[0]
    solar = first.scenario.sources.solar
    array_open = first.has_array and solar is not None and (solar.strings == "auto" or first.series is not None)
    return array_open or first.scenario.tank.volume_m3 == "auto"


def not_to_build(found: Sequence[Verdict]) -> str:
    """Say that what fails some checks cannot be built as it is; '' where there are none."""
    if not found:
        return ""
    checks = "; ".join(
        text("site_answer.check", topic=text(f"topic_inside.{verdict.topic}"), what=verdict.what)
        for verdict in found[:_SHOWN]
    )
    if len(found) == 1:
        return text("site_answer.one_fails", checks=checks)
    key = "site_answer.many_fail" if len(found) > _SHOWN else "site_answer.some_fail"
    return text(key, count=len(found), checks=checks, more=len(found) - _SHOWN)


def sizing_answer(sizing: Sizing, place: Place, weather: WeatherYears) -> list[str]:
    """Put what sizing found into plain sentences, what must be remedied before it holds first.

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
    setup = first.grid.setups[int(first.candidates.setup[design.index])].supply
    verdicts = site_verdicts(
        setup.scenario, place, weather, strings=design.strings if design.modules else None, tank_m3=design.tank_m3
    )
    faults = not_to_build(failed_with(setup.sources, sizing.kinds, verdicts))
    found = [*sizing_sentences(sizing), *estimate_sentences(setup.scenario)]
    if not faults:
        return found
    if first.best is not None:
        faults = text("site_answer.faults", headline=text("site_answer.remedy_first", option=first.name), faults=faults)
    return [faults, *found]
