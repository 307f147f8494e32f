"""Words of the next step up from an option, and of what its water costs beyond another's.

A step comes in its slot as one of `next_step.kind.*`, a sum of money with its currency.
"""

SENTENCES: dict[str, str] = {
    "answer.only_option": (
        "{option}, the only option compared, meets the target of {target:g} % of the water: capital cost "
        "{capital_cost}, life-cycle cost (present value) {life_cycle_cost} over the {years}-year analysis period, "
        "levelised cost of water {per_m3} per m3."
    ),
    "answer.only_option_incomplete": (
        "{option}, the only option compared, meets the target of {target:g} % of the water. Its total is incomplete, "
        "as no price was entered for: {unpriced}; the rest comes to a life-cycle cost (present value) of "
        "{life_cycle_cost} over the {years}-year analysis period and a levelised cost of water of {per_m3} per m3."
    ),
    "next_step.kind.string": "one more string of modules ({strings} in place of {strings_before})",
    "next_step.kind.tank": "the next tank ({tank:g} m3 in place of {tank_before:g} m3)",
    "next_step.kind.string_and_tank": "one more string of modules and the next tank ({strings} strings, {tank:g} m3)",
    "next_step.kind.pump": "another pump ({name})",
    "next_step.kind.source": "{name} as well",
    "next_step.would_meet_dearer": (
        "With {step}, {option} would meet the target: {after:.1f} % of the water and {days_after:.1f} short days a "
        "year, in place of {before:.1f} % and {days_before:.1f}. That takes {capital} more to build; its life-cycle "
        "cost is then {total}, {gap} more than that of {best}."
    ),
    "next_step.would_meet_cheaper": (
        "With {step}, {option} would meet the target: {after:.1f} % of the water and {days_after:.1f} short days a "
        "year, in place of {before:.1f} % and {days_before:.1f}. That takes {capital} more to build; its life-cycle "
        "cost is then {total}, {gap} less than that of {best} as it stands."
    ),
    "next_step.would_meet_first": (
        "With {step}, {option} would meet the target: {after:.1f} % of the water and {days_after:.1f} short days a "
        "year, in place of {before:.1f} % and {days_before:.1f}. That takes {capital} more to build; its life-cycle "
        "cost is then {total} in place of {now}."
    ),
    "next_step.would_meet_technical": (
        "With {step}, {option} would meet the target: {after:.1f} % of the water and {days_after:.1f} short days a "
        "year, in place of {before:.1f} % and {days_before:.1f}."
    ),
    "next_step.would_not": (
        "{option} misses the target with {before:.1f} % of the water and {days_before:.1f} short days a year, and no "
        "single next step meets it: the most comes of {step}, with {after:.1f} % and {days_after:.1f} short days a "
        "year, for {capital} more to build."
    ),
    "next_step.would_not_technical": (
        "{option} misses the target with {before:.1f} % of the water and {days_before:.1f} short days a year, and no "
        "single next step meets it: the most comes of {step}, with {after:.1f} % and {days_after:.1f} short days a "
        "year."
    ),
    "next_step.would_fail": "{option} cannot simply take {step}: these checks would then fail: {checks}.",
    "next_step.close": (
        "{option} meets the target by only {points:.1f} percentage points. To have more in hand, {step} brings "
        "{after:.1f} % of the water and {days_after:.1f} short days a year in place of {days_before:.1f}, for "
        "{capital} more to build; its life-cycle cost is then {total} in place of {now}."
    ),
    "next_step.close_technical": (
        "{option} meets the target by only {points:.1f} percentage points. To have more in hand, {step} brings "
        "{after:.1f} % of the water and {days_after:.1f} short days a year in place of {days_before:.1f}."
    ),
    "next_step.saves": (
        "With {step}, {option} would cost less over the analysis period: {total} in place of {now}, for {capital} more "
        "to build."
    ),
    "next_step.incremental": (
        "The water that {option} delivers beyond {other} costs {extra} per m3, against {average} on average over all "
        "of it: it is worth having where each m3 that is missing costs those who go without it more than that."
    ),
    "next_step.below": (
        "If {percent:.1f} % of the water were enough in place of {target:g} %, {other} would be the answer, with "
        "every size as it stands here, and cost {gap} less over the analysis period ({share:.0f} %)."
    ),
    "next_step.above": (
        "If more than {percent:.1f} % of the water were asked for, {other} would be the answer, with every size as "
        "it stands here, and cost {gap} more over the analysis period."
    ),
    "next_step.valued_same": (
        "With each m3 that is missing put at {value}, as entered, {option} still comes first: {total} with the water "
        "in it that its users go without."
    ),
    "next_step.valued_other": (
        "With each m3 that is missing put at {value}, as entered, {other} would come first, at {total} with the water "
        "in it that its users go without, against {total_first} for {option}. No other cost here holds that value."
    ),
    # the page
    "page.next_step": "Next step",
    "next_step.title": "The next step up, and what more water costs",
    "next_step.title_technical": "The next step up",
    "next_step.under": (
        "Works as they would be built, sizes as chosen for each option, in the run: what is changed here does not "
        "follow. Money in {currency}."
    ),
    "next_step.under_technical": "Works as they would be built: sizes as chosen for each option.",
    "next_step.steps": "Next steps",
    "next_step.option": "Supply option",
    "next_step.step": "Step",
    "next_step.why_not": "Not as it stands: checks that would fail",
    "next_step.more_capital": "More to build ({currency})",
    "next_step.more_cost": "More over the life ({currency})",
    "next_step.per_m3": "Per m3 more ({currency})",
    "next_step.no_more": "no more water",
    "next_step.no_dearer": "costs no more",
    "next_step.frontier": "What the water of one option costs beyond that of another",
    "next_step.water": "Water served, present value (m3)",
    "next_step.average": "On average ({currency}/m3)",
    "next_step.increment": "Beyond that option ({currency}/m3)",
    "next_step.standing": "Held against",
    "next_step.unserved": "Value of unserved water ({currency})",
    "next_step.cost_with_unserved": "Life-cycle cost with it ({currency})",
    "next_step.standing.frontier": "{against}",
    "next_step.standing.lowest": "none: serves least",
    "next_step.standing.dominated": "{against}, which costs no more and serves no less",
    "next_step.standing.extended": "{against}; the next one gives more for less a m3",
    "next_step.method": (
        "Options in the order of the water they serve, each held against one that serves less; a cost per m3 beyond "
        "that one is the difference of two "
        "life-cycle costs over that of the water served, both discounted. Method: Tan-Torres Edejer et al. (eds), "
        "Making choices in health: WHO guide to cost-effectiveness analysis, World Health Organization, 2003, with "
        "water served in the place of health. A m3 hides when it is missing: read it beside the short days."
    ),
    "next_step.value_method": (
        "The value of unserved water is service.unserved_water_value_per_m3 of the scenario, for each m3 of demand "
        "that is not met, discounted; it is in no other cost."
    ),
    # worth: works as built, and chosen anew
    "worth_answer.turns_as_built": (
        "With the works as they would be built, the answer would turn by any of these alone, the smallest change first."
    ),
    "worth_answer.nothing_turns_as_built": (
        "With the works as they would be built, no input changed by itself turns this answer within the ranges looked "
        "at."
    ),
    "worth_answer.turns_anew": (
        "With strings and tank chosen anew at each value, it would turn by any of these alone, the smallest change "
        "first."
    ),
    "worth_answer.nothing_turns_anew": (
        "With strings and tank chosen anew at each value, no input changed by itself turns it within these ranges."
    ),
    "worth_answer.anew_alike": "With strings and tank chosen anew at each value it turns at the same values.",
    "worth_answer.nothing_open": (
        "The scenario leaves neither strings nor tank open, so that chosen anew the works would be the same."
    ),
    "worth_answer.undecided": (
        "It cannot be said yet whether {source} is worth having: no price was entered for {unpriced}. Without that the "
        "life-cycle cost (present value) over the {years}-year analysis period comes to {cost_with} for {option}, with "
        "it, and to {cost_without} for {without}, without it."
    ),
    "worth_answer.incomplete_alike": (
        "No price was entered for what both need ({unpriced}): their costs are incomplete, the difference is not."
    ),
    "worth.note_of_both": (
        "Each value is looked for twice. With the works as built every design stays as it was chosen in the scenario "
        "as it stands (strings, tank, float-switch levels) while an input changes; with works chosen anew each option "
        "takes, at each value, the cheapest of its open strings and tanks that meets the target there, among those "
        "that pass the checks as the scenario stands and with the float-switch levels of now. A switching value is "
        "where the two best options, one with and one without the source, have the same life-cycle cost; it was "
        "verified by running the scenario again there, and the two agree to {percent} percent unless the table says "
        "otherwise. 'The answer turns' looks at every option and at the service target as well: beyond that value the "
        "best of all options changes sides."
    ),
    "worth.words_as_built": "Same life-cycle cost at (works as built)",
    "worth.turns_as_built": "The answer turns at (works as built)",
    "worth.words_anew": "Same life-cycle cost at (works chosen anew)",
    "worth.turns_anew": "The answer turns at (works chosen anew)",
    "worth.cost_unchanged": "changes no cost",
    "worth.without_effect": "Without effect here: {inputs}.",
    "worth.with_reason": "{input} ({why})",
}
