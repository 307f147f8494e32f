"""What several sites come to together: the sums that a programme asks for."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.answers.of_study import holds, study_verdicts
from planner.figures import figure
from planner.study.compare import Study
from planner.study.words import money
from planner.text import listed, text

DAYS_PER_YEAR = 365


def programme_sentences(studies: Sequence[Study]) -> list[str]:
    """Say what the first option of each site comes to, all sites together, and at which sites it does not hold.

    Parameters
    ----------
    studies : sequence of Study
        The sites, all in one currency or all without prices.

    Returns
    -------
    list of str
    """
    water_m3 = sum(float(study.ranked[0].quantities.delivered_m3.mean()) for study in studies) / DAYS_PER_YEAR
    slots = {"count": len(studies), "water": water_m3}
    if studies[0].scenario.priced:
        sentences = list(_sums(studies, slots))
    else:
        sentences = [text("programme.technical", **slots)]
    as_they_are = [study.scenario.name for study in studies if not holds(study, study_verdicts(study))]
    sentences.append(text("programme.open", sites=listed(as_they_are)) if as_they_are else text("programme.all_hold"))
    return sentences


def _sums(studies: Sequence[Study], slots: dict[str, float]) -> Iterator[str]:
    currency = studies[0].scenario.currency
    capital, grant, life_cycle = (
        sum(float(figure(key).read(study.ranked[0])) for study in studies)
        for key in ("capital_cost", "grant", "life_cycle_cost")
    )
    costs = {"capital_cost": money(capital, currency), "life_cycle_cost": money(life_cycle, currency)}
    yield text("programme.priced", **slots, **costs)
    people = sum(study.scenario.people or 0 for study in studies)
    if people and all(study.scenario.people for study in studies):
        each = {"people": people, "cost": money(capital / people, currency), "grant": money(grant / people, currency)}
        yield text("programme.per_person_granted" if grant else "programme.per_person", **each)
    elif grant:
        yield text("programme.granted", grant=money(grant, currency))
