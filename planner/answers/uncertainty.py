"""Say how sure an answer is: what is too close to call, what would turn it, and the worst year in ten."""

from __future__ import annotations

from planner.figures import figure
from planner.study.close_call import close_call_sentence
from planner.study.compare import Study
from planner.study.switching_values import SwitchingValue, Turn
from planner.study.trials import years_run
from planner.study.varied import Varied
from planner.text import text

FEW_YEARS = 10
"""Below so many years a worst year in ten is little more than the worst year."""


def uncertainty_sentences(study: Study) -> list[str]:
    """Put what is uncertain about an answer into sentences, each by itself.

    Parameters
    ----------
    study : Study
        The finished comparison.

    Returns
    -------
    list of str
        What is too close to call, the values at which the answer turns, and the worst year in ten; empty where that
        was not asked for.
    """
    if study.uncertainty is None:
        return []
    return [*call_sentences(study), *switching_sentences(study), *worst_year_sentences(study)]


def call_sentences(study: Study) -> list[str]:
    """Say whether the first two options are too close to call."""
    call = study.uncertainty.call if study.uncertainty else None
    sentence = close_call_sentence(call) if call is not None else ""
    return [sentence] if sentence else []


def switching_sentences(study: Study) -> list[str]:
    """Say at which values of the inputs that matter most the answer turns, and with which works."""
    found = study.uncertainty.switching if study.uncertainty else ()
    if not found:
        return []
    years = study.scenario.finance.analysis_period_years
    run = years_run(years).size
    works = "works_held" if run == years else "works_held_in_years"
    return [*(_switching(study, each) for each in found), text(f"uncertainty.{works}", run=run, years=years)]


def worst_year_sentences(study: Study) -> list[str]:
    """Say what the option ranked first gives in the worst year in ten."""
    first, years = study.ranked[0], study.scenario.finance.analysis_period_years

    def value(key: str) -> float:
        return float(figure(key).read(first))

    met = value("demand_met_worst_year_in_ten_percent")
    sentence = text(
        "uncertainty.worst_year" if met < 100 * (1 - 1e-9) else "uncertainty.worst_year_full",
        option=first.name,
        met=met,
        days=value("short_days_worst_year_in_ten"),
        litres=value("missing_l_per_day_worst_year_in_ten"),
    )
    return [sentence, text("uncertainty.few_years", years=years)] if years < FEW_YEARS else [sentence]


def _switching(study: Study, found: SwitchingValue) -> str:
    varied, turn, option = found.varied, found.nearest, study.ranked[0].name
    slots = {"input": varied.label, "base": _now(varied), "option": option}
    if turn is None:
        low, high = (varied.with_unit(varied.values[end]) for end in (0, -1))
        stays = "stays_first" if study.best else "stays_nearest"
        return text(f"uncertainty.{stays}", low=low, high=high, **slots)
    key = f"{_happens(study, turn)}_{'above' if turn.value > varied.base else 'below'}"
    return text(f"uncertainty.{key}", value=varied.with_unit(turn.value), other=turn.first, **slots)


def _happens(study: Study, turn: Turn) -> str:
    """Key of what happens at a turn."""
    if study.best is None:
        return "meets" if turn.meets else "nearest"
    if not turn.meets:
        return "none_meets"
    return "misses" if turn.misses else "other_first"


def _now(varied: Varied) -> str:
    """Write the value that an input has; of what is a share of today's, without the words for that."""
    return text("uncertainty.percent", value=varied.base) if varied.is_share else varied.with_unit(varied.base)
