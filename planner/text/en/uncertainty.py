"""Words of what is uncertain about an answer: what would turn it, the worst year in ten, and what is too close to call.

Every sentence stands by itself.
"""

SENTENCES: dict[str, str] = {
    # ---- too close to call
    "uncertainty.too_close": (
        "{first} and {second} are too close to call: their order turns in {turned} of {changes} changes of one "
        "uncertain input at a time, and less than {percent:g} % of cost stays between them in {close} more."
    ),
    "uncertainty.ahead_in_most": (
        "{first} mostly stays ahead of {second}: their order turns in {turned} of {changes} changes of one uncertain "
        "input at a time, and less than {percent:g} % of cost stays between them in {close} more."
    ),
    "uncertainty.ahead_in_all": (
        "{first} stays ahead of {second} by {percent:g} % of cost or more, or because {second} misses the target, in "
        "all of {changes} changes of one uncertain input at a time."
    ),
    "uncertainty.misses_in_some": (
        "{first} misses the target in {turned} of {changes} changes of one uncertain input at a time."
    ),
    "uncertainty.meets_in_all": (
        "{first} meets the target in all of {changes} changes of one uncertain input at a time."
    ),
    # ---- the worst year in ten
    "uncertainty.worst_year": (
        "Worst year in ten with {option}: demand met {met:.2f} %; days short of more than a tenth of their water "
        "{days:.0f}; water missing, mean of all days, {litres:,.0f} L a day."
    ),
    "uncertainty.worst_year_full": "Worst year in ten with {option}: no water is missing.",
    "uncertainty.few_years": "The worst year in ten lies near the worst of the years counted ({years}).",
    # ---- what would turn the answer
    "uncertainty.percent": "{value:,.10g} %",
    "uncertainty.other_first_above": ("{input}: above {value} (now {base}), {other} comes first instead of {option}."),
    "uncertainty.other_first_below": ("{input}: below {value} (now {base}), {other} comes first instead of {option}."),
    "uncertainty.misses_above": (
        "{input}: above {value} (now {base}), {option} misses the target and {other} comes first."
    ),
    "uncertainty.misses_below": (
        "{input}: below {value} (now {base}), {option} misses the target and {other} comes first."
    ),
    "uncertainty.none_meets_above": "{input}: above {value} (now {base}), no option meets the target.",
    "uncertainty.none_meets_below": "{input}: below {value} (now {base}), no option meets the target.",
    "uncertainty.meets_above": "{input}: above {value} (now {base}), {other} meets the target.",
    "uncertainty.meets_below": "{input}: below {value} (now {base}), {other} meets the target.",
    "uncertainty.nearest_above": "{input}: above {value} (now {base}), {other} comes nearest to the target.",
    "uncertainty.nearest_below": "{input}: below {value} (now {base}), {other} comes nearest to the target.",
    "uncertainty.stays_first": "{input}: between {low} and {high} (now {base}), {option} stays first.",
    "uncertainty.stays_nearest": (
        "{input}: between {low} and {high} (now {base}), no option meets the target and {option} stays nearest to it."
    ),
    "uncertainty.works_held": (
        "These values hold for the works as they would be built, every size as chosen today; sizes chosen anew for "
        "another value may turn elsewhere."
    ),
    "uncertainty.works_held_in_years": (
        "These values hold for the works as they would be built, every size as chosen today, and come from {run} of "
        "the {years} years; sizes chosen anew for another value may turn elsewhere."
    ),
    # ---- the table
    "uncertainty.heading": "What would turn the answer (works as they would be built)",
    "uncertainty.input": "Input",
    "uncertainty.base": "Value",
    "uncertainty.unit": "Unit",
    "uncertainty.tried": "Tried",
    "uncertainty.below": "First below",
    "uncertainty.above": "First above",
    "uncertainty.range": "{low:,.10g} to {high:,.10g}",
    "uncertainty.first_there": "{value:,.10g}: {option}",
    "uncertainty.nearest_there": "{value:,.10g}: {option} (misses the target)",
    "uncertainty.no_turn": "stays",
}
