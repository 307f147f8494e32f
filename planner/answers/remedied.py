"""What a comparison comes to with the remedies of the checks that it fails, and what they cost."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from planner.answers.of_study import study_design, study_verdicts
from planner.checks.remedies import CarriedOut, carried_out
from planner.checks.site import site_verdicts
from planner.checks.verdict import Verdict, failed
from planner.scenario.errors import InputError
from planner.scenario.paths import Path as Keys
from planner.scenario.paths import dotted
from planner.scenario.scenario import Scenario
from planner.study.cases import as_chosen
from planner.study.compare import OptionResult, Study, study_scenario
from planner.study.words import money
from planner.text import known, text

MOST_ROUNDS = 3
"""Comparisons made anew: with its remedies another design may be chosen, which may ask for others."""

_PRICED_BY_NUMBER = (
    "sources.solar.strings",
    "sources.solar.strings_max",
    "sources.solar.modules_in_series",
    "borehole.pump_depth_m",
)
"""Keys that say how much of a priced thing there is."""
_RUNS = {"pipeline.riser_pipe": 0, "pipeline.pipe": 1}
"""The run of pipe that a key of the short form means."""


@dataclass(frozen=True)
class Remedied:
    """A comparison without the remedies of its failed checks, and with those that can be computed.

    Attributes
    ----------
    before, after : Study
        The comparisons; the same where no remedy can be computed.
    carried : CarriedOut
        The remedies carried out, and what the checks say of the design chosen with them.
    """

    before: Study
    after: Study
    carried: CarriedOut

    @property
    def option(self) -> OptionResult:
        """The option ranked first with the remedies."""
        return self.after.ranked[0]

    @property
    def further_cost(self) -> float:
        """Its life-cycle cost over that of the option ranked first without them [money]."""
        return float(self.option.life.present_cost - self.before.ranked[0].life.present_cost)

    @property
    def failing(self) -> tuple[Verdict, ...]:
        """Checks that still fail."""
        return failed(self.carried.verdicts)

    @property
    def items(self) -> list[str]:
        """What is changed, in a few words each."""
        return items_of(self.carried.changes)

    @property
    def not_priced(self) -> list[str]:
        """What is changed at a price that does not follow."""
        changes = self.carried.changes
        followed = {path for path in changes if _price_follows(path, self.before.scenario, self.after.scenario)}
        return items_of({path: value for path, value in changes.items() if path not in followed})


def remedied(study: Study, verdicts: Sequence[Verdict], folder: Path) -> Remedied | None:
    """Carry out the remedies of failed checks, and compare the supply options anew.

    Parameters
    ----------
    study : Study
        The finished comparison.
    verdicts : sequence of Verdict
        What `planner.answers.of_study.study_verdicts` says of it.
    folder : pathlib.Path
        Folder to which paths in the scenario are relative.

    Returns
    -------
    Remedied or None
        None where no check fails, at no cost; and where the scenario with the remedies cannot be run.
    """
    if not failed(verdicts):
        return None
    after = study
    whole = CarriedOut(study.scenario, study.scenario, (), {}, tuple(verdicts))
    for _ in range(MOST_ROUNDS):
        carried = carried_out(after.scenario, whole.verdicts, _judge(after))
        if carried.changes.items() <= whole.changes.items():
            break  # none, or what an option's own override undoes
        try:
            after = study_scenario(carried.scenario, folder, study.kinds)
        except InputError:
            return None
        whole = replace(
            whole,
            scenario=carried.scenario,
            remedied=(*whole.remedied, *carried.remedied),
            changes=whole.changes | carried.changes,
            verdicts=study_verdicts(after),
        )
    return Remedied(study, after, whole)


def remedied_sentences(found: Remedied | None) -> list[str]:
    """Say what the remedies cost, what the answer becomes with them, and which checks still fail."""
    if found is None:
        return []
    failing = ", ".join(verdict.what for verdict in found.failing)
    if not found.carried.remedied:
        key = "remedied.none_computed" if found.before.scenario.priced else "remedied.none_computed_technical"
        return [text(key, checks=failing)]
    count = len(found.failing)
    checks = "no_check_fails" if not count else "one_fails" if count == 1 else "some_fail"
    slots = {
        "remedies": ", ".join(found.items),
        "option": found.option.name,
        "met": 100 * found.option.delivered_share,
        "checks": text(f"remedied.{checks}", checks=failing, count=count),
    }
    if not found.after.scenario.priced:
        sentences = [text("remedied.answer", **slots)]
    else:
        sentences = [text("remedied.answer_priced", cost=_cost_words(found), **slots)]
        items = dict.fromkeys([*found.not_priced, *(thing.label() for thing in found.option.unpriced)])
        if items:
            sentences.append(text("remedied.not_priced", items=", ".join(items)))
    if found.after.best is None:
        sentences.append(text("remedied.short", target=found.after.scenario.service.demand_met_percent))
    return sentences


def _cost_words(found: Remedied) -> str:
    before, gap = found.before.ranked[0].name, found.further_cost
    shown, none = (money(abs(value), found.after.scenario.currency) for value in (gap, 0.0))
    key = "same" if shown == none else "more" if gap > 0 else "less"
    other = "" if before == found.option.name else "_as" if key == "same" else "_than"
    return text(f"remedied.{key}{other}", gap=shown, before=before)


def _judge(study: Study) -> Callable[[Scenario], tuple[Verdict, ...]]:
    """Check other scenarios with the design that was chosen, where they leave it open."""
    strings, tank_m3 = study_design(study)
    chosen = next(((option.series, option.section_mm2) for option in study.ranked if option.strings), (None, None))

    def judged(scenario: Scenario) -> tuple[Verdict, ...]:
        solar = scenario.sources.solar
        return site_verdicts(
            as_chosen(scenario, *chosen),
            study.place,
            study.weather,
            strings=strings if solar is None or solar.strings == "auto" else None,
            tank_m3=tank_m3 if scenario.tank.volume_m3 == "auto" else None,
        )

    return judged


def items_of(changes: Mapping[Keys, Any]) -> list[str]:
    """Say what is changed in a few words each; what only follows from another change has none."""
    items: dict[str, None] = {}
    for path, value in changes.items():
        key = "_".join(part for part in path if isinstance(part, str))
        if value is not None and known(f"remedy_item.{key}"):
            items[text(f"remedy_item.{key}", value=value)] = None
    return list(items)


def _price_follows(path: Keys, before: Scenario, after: Scenario) -> bool:
    """Whether the cost of a change is counted: by the number of a priced thing, or by another price."""
    key = dotted(path)
    if key in _PRICED_BY_NUMBER:
        return True
    if key == "tank.volume_m3" and after.tank.price is None:
        return bool(after.tank.sizes)
    position = _RUNS.get(key, path[2] if path[:2] == ("pipeline", "segments") else None)
    if isinstance(position, int):
        return before.pipeline.segments[position].price != after.pipeline.segments[position].price
    return key == "tank.volume_m3" and before.tank.price != after.tank.price
