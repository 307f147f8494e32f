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
        "If {percent:.1f} % of the water were enough in place of {target:g} %, {other} would be the answer and cost "
        "{gap} less over the analysis period ({share:.0f} %)."
    ),
    "next_step.above": (
        "If more than {percent:.1f} % of the water were asked for, {other} would be the answer and cost {gap} more "
        "over the analysis period."
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
    "next_step.under": "Works as they would be built: sizes as chosen for each option. Money in {currency}.",
    "next_step.under_technical": "Works as they would be built: sizes as chosen for each option.",
    "next_step.steps": "Next steps",
    "next_step.option": "Supply option",
    "next_step.step": "Step",
    "next_step.fails": "not as it stands: {checks}",
    "next_step.more_capital": "More to build ({currency})",
    "next_step.more_cost": "More over the life ({currency})",
    "next_step.per_m3": "Per m3 more ({currency})",
    "next_step.no_more": "no more water",
    "next_step.frontier": "What the water of one option costs beyond that of another",
    "next_step.water": "Water served, present value (m3)",
    "next_step.average": "On average (per m3)",
    "next_step.against": "Against",
    "next_step.increment": "Beyond it (per m3)",
    "next_step.standing": "Standing",
    "next_step.unserved": "Value of unserved water ({currency})",
    "next_step.cost_with_unserved": "Life-cycle cost with it ({currency})",
    "next_step.standing.frontier": "worth it above that value of a m3",
    "next_step.standing.lowest": "the least water",
    "next_step.standing.dominated": "costs no less and serves no more",
    "next_step.standing.extended": "the next one gives more for less a m3",
    "next_step.method": (
        "Options in the order of the water they serve; a cost per m3 beyond another is the difference of two "
        "life-cycle costs over that of the water served, both discounted. Method: Tan-Torres Edejer et al. (eds), "
        "Making choices in health: WHO guide to cost-effectiveness analysis, World Health Organization, 2003, with "
        "water served in the place of health. A m3 hides when it is missing: read it beside the short days."
    ),
    "next_step.value_method": (
        "The value of unserved water is service.unserved_water_value_per_m3 of the scenario, for each m3 of demand "
        "that is not met, discounted; it is in no other cost."
    ),
}
