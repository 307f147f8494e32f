"""Say in plain sentences what sizing found."""

from __future__ import annotations

from planner.money.quantities import unpriced
from planner.study.sizing import OptionSizing, SizedDesign, Sizing
from planner.study.words import cost_words, money


def sizing_sentences(sizing: Sizing) -> list[str]:
    """Put the answer into plain sentences: the best design, its near rivals, more service, the float switch."""
    first = sizing.ranked[0]
    said = [_verdict(sizing, first)]
    if first.best is not None:
        said.append(_rivals(first))
    said.append(_next_percent(sizing, first))
    switch = next((option for option in sizing.ranked if option.nearest.levels is not None), None)
    if switch is not None:
        said.append(switch_sentence(switch))
    run = _against_run(sizing, first)
    return [*said, run] if run else said


def design_words(design: SizedDesign) -> str:
    """Spell a design out."""
    parts = []
    if design.modules:
        strings = f"{design.strings} string{'s' if design.strings > 1 else ''}"
        parts.append(f"{design.modules} panels in {strings} ({design.array_kw:.1f} kW)")
    parts.append(f"a tank of {design.tank_m3:g} m3")
    if design.levels is not None:
        parts.append(f"the float switch at {design.levels[0]:g}/{design.levels[1]:g} percent")
        if design.hours != "as given":
            parts.append(f"pumping on grid or generator {design.hours}")
    return ", ".join([*parts, *design.pipes])


def misses_words(option: OptionSizing) -> str:
    """Say by how much the best of an option misses the target."""
    nearest, service = option.nearest, option.grid.setups[0].supply.scenario.service
    target, best = service.delivered_share_percent, f"the best of {option.grid.count} candidates delivers"
    short = f"{option.misses_by_percent:.1f} percentage points"
    if 100 * nearest.delivered_share < target - 1e-7:
        return (
            f"{best} {100 * nearest.delivered_share:.1f} percent and misses the target of {target:g} percent by {short}"
        )
    if option.misses_by_percent == 0:
        return (
            f"the best of {option.grid.count} candidates is short on {nearest.longest_short_days:.0f} days in a row, "
            f"{option.misses_by_days:.0f} more than allowed"
        )
    worst = 100 * nearest.worst_year_share
    return f"{best} {worst:.1f} percent in its worst year and misses what is asked of that year by {short}"


def switch_sentence(option: OptionSizing) -> str:
    """Give the float switch as a setting that an installer can use."""
    design = option.nearest
    assert design.levels is not None
    assert design.switch_m3 is not None
    start, stop = design.switch_m3
    timer = "" if design.hours == "as given" else f", with a timer that lets it run {design.hours}"
    said = (
        f"Float switch for {option.name}: pumping on grid or generator starts when {start:.3g} m3 are left in the tank "
        f"({design.levels[0]:g} percent, measured from its bottom) and stops at {stop:.3g} m3 ({design.levels[1]:g} "
        f"percent){timer}; in a tank with upright walls the same percentages hold for the depth of the water"
    )
    steady = option.steady_start_percent
    if steady is None or steady[0] == steady[1]:
        return f"{said}."
    return f"{said}. Start levels from {steady[0]:g} to {steady[1]:g} percent cost within 2 percent of it."


def _verdict(sizing: Sizing, first: OptionSizing) -> str:
    currency, design = sizing.scenario.currency, first.nearest
    years, target = sizing.scenario.finance.life_years, sizing.scenario.service.delivered_share_percent
    tried = f"{sizing.candidate_count:,} candidate designs"
    setup = first.grid.setups[0].supply
    missing = unpriced(setup.scenario, setup.sources)
    cost = cost_words(design.capital_cost, design.present_cost, currency, years, missing)
    if first.best is None:
        return (
            f"None of the {tried} meets the service target; nearest comes {first.name} with {design_words(design)}: "
            f"{misses_words(first)} ({cost})."
        )
    return (
        f"Of {tried}, each run through every hour of {years} years, the cheapest that delivers at least {target:g} "
        f"percent of the water is {first.name} with {design_words(design)}: {cost}, "
        f"{100 * design.delivered_share:.1f} percent delivered."
    )


def _rivals(first: OptionSizing) -> str:
    count = len(first.runners_up)
    if not count:
        return f"No other candidate of {first.name} that serves comes within 2 percent of its cost."
    assert first.best is not None
    next_one = first.runners_up[0]
    percent = 100 * (next_one.present_cost / first.best.present_cost - 1)
    others = "one other candidate" if count == 1 else f"{count} other candidates"
    comes = "comes" if count == 1 else "come"
    return (
        f"Within 2 percent of its cost {comes} {others} of {first.name}, first {design_words(next_one)} "
        f"({percent:.2f} percent more)."
    )


def _next_percent(sizing: Sizing, first: OptionSizing) -> str:
    currency = sizing.scenario.currency
    target, (higher, more) = sizing.scenario.service.delivered_share_percent, first.next_percent
    if first.best is None:
        return (
            "To reach the target, widen the candidates (more strings, larger tanks), add a source, or ask for less "
            f"than {target:g} percent."
        )
    if higher <= target:
        return f"The target is {target:g} percent: there is no more to be had."
    step = f"Raising the target from {target:g} to {higher:g} percent"
    if more is None:
        return f"{step} is beyond every candidate of {first.name}."
    if more <= 1e-9 * abs(first.best.present_cost):
        return f"{step} costs nothing: this design already delivers {100 * first.best.delivered_share:.1f} percent."
    return f"{step} adds {money(more, currency)} to the present cost ({first.name})."


def _against_run(sizing: Sizing, first: OptionSizing) -> str | None:
    """Say where the design differs from what the ordinary run takes, and why."""
    best, run = first.best, first.by_run
    if best is None:
        return None
    same = (run.design.strings, run.design.tank_m3) == (best.strings, best.tank_m3) and run.levels == best.levels
    if same and best.hours == "as given" and not best.pipes and best.pump == run.supply.scenario.pump.name:
        return f"'planner run' takes the same design for {first.name}."
    strings, tank_m3 = run.design.strings, run.design.tank_m3
    panels = f"{strings} string{'s' if strings > 1 else ''}, " if strings else ""
    switch = f", float switch at {run.levels[0]:g}/{run.levels[1]:g} percent" if run.levels else ""
    gap = first.by_run_cost - best.present_cost
    says = f"{money(abs(gap), sizing.scenario.currency)} {'more' if gap >= 0 else 'less'}"
    fault = "" if first.by_run_meets else ", and misses the target"
    return (
        f"'planner run' takes another design for {first.name} ({panels}tank {tank_m3:g} m3{switch}), which costs "
        f"{says} over the life{fault}: it keeps to what the scenario gives and, where only the tank is open, takes the "
        "smallest that serves; this search takes the least present cost outright."
    )
