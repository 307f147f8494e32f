"""Scenarios with one number changed, each made once, and the trials of works in them."""

from __future__ import annotations

from planner.assumptions.reader import option_scenario, scenario_of
from planner.scenario.errors import InputError
from planner.scenario.paths import Path
from planner.scenario.scenario import Scenario
from planner.scenario.walk import walk
from planner.study.keys import Key, with_value
from planner.study.trials import Trial, number_at


class Changes:
    """Makes trials of one scenario with one key set at a time.

    Parameters
    ----------
    scenario : Scenario
        The scenario for all options.
    """

    def __init__(self, scenario: Scenario) -> None:
        self.scenario = scenario
        self._made: dict[tuple[Path, float], Scenario | None] = {}
        self._follow = derived_prices(scenario)

    def trial(self, option: str, key: Key, value: float) -> Trial | None:
        """Set a key for an option; None where the key cannot have the value.

        Where something was worked out, any key may move what the bill counts, such as the riser's length by the depth.
        """
        if self._stands_alone(key):
            return Trial(option, None, {key.path: value})
        changed = self._changed(key, value)
        if changed is None:
            return None
        try:
            scenario = option_scenario(changed, option)
        except InputError:
            return None
        if key.touches_hours:
            return Trial(option, scenario, None if key.is_counted or self.scenario.assumptions else {})
        path = key.path[2:] if key.path[0] == "overrides" else key.path
        return Trial(option, None, {each: number_at(scenario, each) for each in (path, *self._follow)})

    def _stands_alone(self, key: Key) -> bool:
        """Whether a key changes nothing but itself: it is of money, no price follows it, no option has its own."""
        return not (key.touches_hours or self._follow or self.scenario.overrides)

    def _changed(self, key: Key, value: float) -> Scenario | None:
        at = key.path, value
        if at not in self._made:
            try:
                made = scenario_of(with_value(self.scenario.given(keep=[key.path]), key, value))
            except InputError:
                made = None
            self._made[at] = made
        return self._made[at]


def derived_prices(scenario: Scenario) -> tuple[Path, ...]:
    """Keys of money that were worked out, as from a price list, and so move with others."""
    if not scenario.assumptions:
        return ()
    found = (field for field in walk(scenario) if field.reason and field.changes == "money" and not field.is_list)
    return tuple(field.path for field in found if isinstance(field.value, int | float))


__all__ = ["Changes", "derived_prices"]
