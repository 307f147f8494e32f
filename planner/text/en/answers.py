"""Words of the answers: comparison, sizing, worth, sweep and returns.

A sum of money comes in its slot with its currency; other figures come as numbers and are written here.
"""

SENTENCES: dict[str, str] = {
    "option_source.solar": "solar",
    "option_source.grid": "grid",
    "option_source.generator": "generator",
    "source.solar": "the sun",
    "source.grid": "the grid",
    "source.generator": "the generator",
    "source.list": "{others} and {last}",
    # comparison
    "answer.best": (
        "Of the options that meet the target of {target:g} % of the water, {option} costs least: capital cost "
        "{capital_cost}, life-cycle cost (present value) {life_cycle_cost} over the {years}-year analysis period, "
        "levelised cost of water {per_m3} per m3."
    ),
    "answer.best_incomplete": (
        "Of the options that meet the target of {target:g} % of the water, {option} costs least. Its total is "
        "incomplete, as no price was entered for: {unpriced}; the rest comes to a life-cycle cost (present value) of "
        "{life_cycle_cost} over the {years}-year analysis period and a levelised cost of water of {per_m3} per m3."
    ),
    "answer.in_money_of_year_0": "The levelised cost is in money of year 0.",
    "answer.none_meets": (
        "No option meets the target of {target:g} % of the water; {option} comes nearest with {delivered:.1f} %, for a "
        "life-cycle cost (present value) of {life_cycle_cost} over the {years}-year analysis period."
    ),
    "answer.none_meets_incomplete": (
        "No option meets the target of {target:g} % of the water; {option} comes nearest with {delivered:.1f} %. Its "
        "total is incomplete, as no price was entered for: {unpriced}; the rest comes to a life-cycle cost (present "
        "value) of {life_cycle_cost} over the {years}-year analysis period."
    ),
    "answer.why_none": (
        "In the worst month, {month}, {asked:.1f} m3 a day are asked for: {needed:.1f} hours of pumping at the "
        "{flow:.2f} m3/h that pump, pipe and borehole give here. {option} gives as much as {ran:.1f} such hours do: "
        "more hours of power, more flow within what the borehole may give, or less demand would be needed."
    ),
    "answer.why_none_at_all": (
        "In the worst month, {month}, {asked:.1f} m3 a day are asked for: {needed:.0f} hours of pumping at the "
        "{flow:.2f} m3/h that pump, pipe and borehole give here, and a day has 24. {option} gives as much as {ran:.1f} "
        "such hours do: more flow, within what this borehole may give or from another, or less demand would be needed."
    ),
    "answer.next_best": "The next best is {option}, which costs {gap} more over the analysis period ({percent:.1f} %).",
    "answer.next_best_close": (
        "The next best is {option}, which costs {gap} more over the analysis period ({percent:.1f} %): too close to "
        "call on cost alone."
    ),
    "answer.next_best_unpriced": (
        "That leaves out what has no price and {option} does not need ({unpriced}): enter it, as it may turn the order."
    ),
    "answer.only_one_days": (
        "It is the only option that meets the target; {option} falls short on {days:.0f} days in a row, {allowed} "
        "being allowed."
    ),
    "answer.only_one_worst_year": (
        "It is the only option that meets the target; {option} falls short in its worst year, with {percent:.1f} %."
    ),
    "answer.only_one_share": (
        "It is the only option that meets the target; {option} falls short by {points:.1f} percentage points."
    ),
    "answer.top_up_needed": (
        "A top-up from {sources} (pumping on it when sun and tank do not suffice) is needed for the target: it raises "
        "the water delivered from {alone:.1f} % to {topped_up:.1f} % and costs {gap} more over the analysis period."
    ),
    "answer.top_up_needed_and_saves": (
        "A top-up from {sources} (pumping on it when sun and tank do not suffice) is needed for the target: it raises "
        "the water delivered from {alone:.1f} % to {topped_up:.1f} % and even saves {gap} over the analysis period."
    ),
    "answer.top_up_misses": (
        "A top-up from {sources} (pumping on it when sun and tank do not suffice) changes the water delivered from "
        "{alone:.1f} % to {topped_up:.1f} %, which still misses the target."
    ),
    "answer.top_up_not_worth": (
        "A top-up from {sources} (pumping on it when sun and tank do not suffice) is not worth having for the target: "
        "the sun alone meets it, and the top-up costs {gap} more over the analysis period (water delivered: "
        "{alone:.1f} % without it, {topped_up:.1f} % with it)."
    ),
    "answer.top_up_worth": (
        "A top-up from {sources} (pumping on it when sun and tank do not suffice) is worth having: it saves {gap} over "
        "the analysis period against the sun alone, mainly by a smaller array or tank, and changes the water delivered "
        "from {alone:.1f} % to {topped_up:.1f} %."
    ),
    "answer.top_up_alike_cheaper": (
        "With a top-up from {sources} (pumping on it when sun and tank do not suffice) it costs about the same as with "
        "the sun alone, {gap} less over the analysis period; the water delivered changes from {alone:.1f} % to "
        "{topped_up:.1f} %."
    ),
    "answer.top_up_alike_dearer": (
        "With a top-up from {sources} (pumping on it when sun and tank do not suffice) it costs about the same as with "
        "the sun alone, {gap} more over the analysis period; the water delivered changes from {alone:.1f} % to "
        "{topped_up:.1f} %."
    ),
    "answer.sun_saves": "{option} saves {gap} over the analysis period against {other}, the best without the sun.",
    "answer.sun_costs": "{option} costs {gap} more over the analysis period than {other}, the best without the sun.",
    "answer.levels_good": (
        "In {option} the float switch starts the top-up at {start:g} % of the tank and stops it at {stop:g} %; no "
        "setting tried would save more than 0.5 % of its annualised cost."
    ),
    "answer.levels_better": (
        "In {option} the float switch is set to {start:g}/{stop:g} % of the tank; {better_start:g}/{better_stop:g} % "
        "would meet the target as well and save {saving} a year."
    ),
    # sizing
    "sizing_answer.array": "{modules} PV modules in {strings} strings ({kwp:.1f} kWp)",
    "sizing_answer.array_one_string": "{modules} PV modules in 1 string ({kwp:.1f} kWp)",
    "sizing_answer.strings": "{strings} strings",
    "sizing_answer.one_string": "1 string",
    "sizing_answer.tank": "a tank of {tank_m3:g} m3",
    "sizing_answer.switch": "the float switch at {start:g}/{stop:g} %",
    "sizing_answer.hours": "pumping on grid or generator {hours}",
    "sizing_answer.best": (
        "Of {tried:,} candidate designs, each run through every hour of the {years}-year analysis period, the cheapest "
        "that meets the target of {target:g} % of the water is {option} with {design}: capital cost {capital_cost}, "
        "life-cycle cost (present value) {life_cycle_cost}, {delivered:.1f} % delivered."
    ),
    "sizing_answer.best_incomplete": (
        "Of {tried:,} candidate designs, each run through every hour of the {years}-year analysis period, the cheapest "
        "that meets the target of {target:g} % of the water is {option} with {design}: {delivered:.1f} % delivered. "
        "Its total is incomplete, as no price was entered for: {unpriced}; the rest comes to a life-cycle cost "
        "(present value) of {life_cycle_cost} over the {years}-year analysis period."
    ),
    "sizing_answer.none_meets": (
        "None of the {tried:,} candidate designs meets the target; nearest comes {option} with {design}: {misses}. Its "
        "capital cost is {capital_cost}, its life-cycle cost (present value) {life_cycle_cost} over the {years}-year "
        "analysis period."
    ),
    "sizing_answer.none_meets_incomplete": (
        "None of the {tried:,} candidate designs meets the target; nearest comes {option} with {design}: {misses}. Its "
        "total is incomplete, as no price was entered for: {unpriced}; the rest comes to a life-cycle cost (present "
        "value) of {life_cycle_cost} over the {years}-year analysis period."
    ),
    "sizing_answer.misses_share": (
        "the best of {count:,} candidates delivers {delivered:.1f} % and misses the target of {target:g} % by "
        "{points:.1f} percentage points"
    ),
    "sizing_answer.misses_days": (
        "the best of {count:,} candidates is short on {days:.0f} days in a row, {more:.0f} more than allowed"
    ),
    "sizing_answer.misses_worst_year": (
        "the best of {count:,} candidates delivers {delivered:.1f} % in its worst year and misses what is asked of "
        "that year by {points:.1f} percentage points"
    ),
    "sizing_answer.float_switch": (
        "Float switch for {option}: pumping on grid or generator starts when {start_m3:.3g} m3 are left in the tank "
        "({start:g} %, measured from its bottom) and stops at {stop_m3:.3g} m3 ({stop:g} %); in a tank with upright "
        "walls the same percentages hold for the depth of the water."
    ),
    "sizing_answer.float_switch_and_timer": (
        "Float switch for {option}: pumping on grid or generator starts when {start_m3:.3g} m3 are left in the tank "
        "({start:g} %, measured from its bottom) and stops at {stop_m3:.3g} m3 ({stop:g} %), with a timer that lets it "
        "run {hours}; in a tank with upright walls the same percentages hold for the depth of the water."
    ),
    "sizing_answer.steady_start": "Start levels from {low:g} % to {high:g} % cost within 2 % of it.",
    "sizing_answer.no_rival": "No other candidate of {option} that meets the target comes within 2 % of its cost.",
    "sizing_answer.one_rival": (
        "Within 2 % of its cost comes one other candidate of {option}: {design} ({percent:.2f} % more)."
    ),
    "sizing_answer.rivals": (
        "Within 2 % of its cost come {count:,} other candidates of {option}, first {design} ({percent:.2f} % more)."
    ),
    "sizing_answer.out_of_reach": (
        "To reach the target, widen the candidates (more strings, larger tanks), add a source, or ask for less than "
        "{target:g} %."
    ),
    "sizing_answer.no_higher_target": "The target is {target:g} %: there is no more to be had.",
    "sizing_answer.higher_beyond": (
        "Raising the target from {target:g} % to {higher:g} % is beyond every candidate of {option}."
    ),
    "sizing_answer.higher_free": (
        "Raising the target from {target:g} % to {higher:g} % costs nothing: this design already delivers "
        "{delivered:.1f} %."
    ),
    "sizing_answer.higher_adds": (
        "Raising the target from {target:g} % to {higher:g} % adds {cost} to the life-cycle cost ({option})."
    ),
    "sizing_answer.run_same": "'planner run' takes the same design for {option}.",
    "sizing_answer.as_given": "what the scenario gives",
    "sizing_answer.run_dearer": (
        "Take {change} instead of {instead}, which 'planner run' takes for {option}: it meets the target and costs "
        "{gap} less over the analysis period."
    ),
    "sizing_answer.run_cheaper": (
        "Take {change} for {option}; 'planner run' takes {instead}, which costs {gap} less over the analysis period."
    ),
    "sizing_answer.run_misses": "That other design misses the target.",
    # worth
    "worth_answer.incomplete": "The costs are incomplete, as no price was entered for: {unpriced}.",
    "worth_answer.needed": (
        "Yes, {source} is needed: without it the best supply, {without}, delivers {lacking:.1f} % of the water instead "
        "of the target of {target:g} %."
    ),
    "worth_answer.needed_in_worst_year": (
        "Yes, {source} is needed: without it the best supply, {without}, misses the target in its worst year "
        "({lacking:.1f} %)."
    ),
    "worth_answer.needed_dearer": (
        "With it the best, {option}, delivers {delivered:.1f} % of the water and costs {gap} more over the "
        "{years}-year analysis period."
    ),
    "worth_answer.needed_cheaper": (
        "With it the best, {option}, delivers {delivered:.1f} % of the water and even costs {gap} less over the "
        "{years}-year analysis period."
    ),
    "worth_answer.only_without": (
        "No, {source} is not worth having: {without} meets the target of {target:g} % without it, for a life-cycle "
        "cost (present value) of {life_cycle_cost} over the {years}-year analysis period, and nothing with it does."
    ),
    "worth_answer.neither": (
        "Neither with nor without {source} does any design meet the target of {target:g} % of the water."
    ),
    "worth_answer.neither_more": (
        "With it the best, {option}, delivers {delivered:.1f} %, {points:.1f} percentage points more than {without}."
    ),
    "worth_answer.neither_less": (
        "With it the best, {option}, delivers {delivered:.1f} %, {points:.1f} percentage points less than {without}."
    ),
    "worth_answer.neither_dearer": "It costs {gap} more over the {years}-year analysis period.",
    "worth_answer.neither_cheaper": "It costs {gap} less over the {years}-year analysis period.",
    "worth_answer.hardly_matters": (
        "It hardly matters whether you have {source}: the life-cycle cost (present value) over the {years}-year "
        "analysis period is {cost_with} for the cheapest supply with it, {option}, and {cost_without} for the cheapest "
        "without it, {without}, a difference of {percent:.1f} %."
    ),
    "worth_answer.worth_having": (
        "Yes, {source} is worth having: the life-cycle cost (present value) over the {years}-year analysis period is "
        "{cost_with} for the cheapest supply with it, {option}, and {cost_without} for the cheapest without it, "
        "{without}, so it lowers the annualised cost by {yearly}."
    ),
    "worth_answer.not_worth_having": (
        "No, {source} is not worth having: the life-cycle cost (present value) over the {years}-year analysis period "
        "is {cost_with} for the cheapest supply with it, {option}, and {cost_without} for the cheapest without it, "
        "{without}, so it would raise the annualised cost by {yearly}."
    ),
    "worth_answer.from_now": "{value} (now {base})",
    "worth_answer.above_best": "If {input} rose above {value}, {best} would be best.",
    "worth_answer.below_best": "If {input} fell below {value}, {best} would be best.",
    "worth_answer.above_misses": "If {input} rose above {value}, {first} would miss the target and {best} be best.",
    "worth_answer.below_misses": "If {input} fell below {value}, {first} would miss the target and {best} be best.",
    "worth_answer.above_none": "If {input} rose above {value}, {first} and every other option would miss the target.",
    "worth_answer.below_none": "If {input} fell below {value}, {first} and every other option would miss the target.",
    "worth_answer.all_turn": "Each of the inputs looked at could turn the answer if it changed far enough.",
    "worth_answer.steady": (
        "It stays the same, the designs as they are and all else as given, over the whole range of: {ranges}."
    ),
    "worth_answer.range": "{input} from {low} to {high}",
    # sweep
    "sweep_answer.life_cycle_cost_of": "Life-cycle cost of {option}",
    "sweep_answer.levelised_cost_of": "Levelised cost of water of {option}",
    "sweep_answer.lead_of": "Life-cycle cost of {other} less that of {option}",
    "sweep_answer.no_value": "no value",
    "sweep_answer.first_misses": "{option}, misses the target",
    "sweep_answer.nothing_one_at_a_time": (
        "No input moved one at a time could be worked out; the first reason: {reason}."
    ),
    "sweep_answer.nothing_grid": "No combination of the grid could be worked out; the first reason: {reason}.",
    "sweep_answer.nothing_random": "No case drawn at random could be worked out; the first reason: {reason}.",
    "sweep_answer.failed": (
        "{failed:,} of {count:,} variants could not be worked out and are left out; they are listed with the reason."
    ),
    "sweep_answer.matters_most": (
        "Moved one at a time, '{input}' matters most: as it goes from {low:g} to {high:g}, the life-cycle cost "
        "(present value) of {option} goes from {cost_at_low} to {cost_at_high} ({cost} as it stands)."
    ),
    "sweep_answer.changes": "Moved alone, these change the answer: {changes}.",
    "sweep_answer.changes_and_more": "Moved alone, these change the answer: {changes}; and {more:,} more.",
    "sweep_answer.change_none_meets": "'{input}' at {value:g} (no option meets the target)",
    "sweep_answer.change_nearest": "'{input}' at {value:g} ({option} comes nearest)",
    "sweep_answer.change_meets": "'{input}' at {value:g} ({option} meets the target)",
    "sweep_answer.change_first_misses": "'{input}' at {value:g} ({first} misses the target, {option} is best)",
    "sweep_answer.change_best": "'{input}' at {value:g} ({option} is best)",
    "sweep_answer.stays_cheapest": (
        "None of the inputs, moved alone within its range, changes the answer: {option} stays the cheapest option that "
        "meets the target."
    ),
    "sweep_answer.stays_nearest": (
        "None of the inputs, moved alone within its range, changes the answer: no option meets the target, and "
        "{option} stays nearest to it."
    ),
    "sweep_answer.grid": "Of the {count:,} combinations of the grid, the cheapest that meets the target is {counts}.",
    "sweep_answer.grid_part": "{option} in {count:,}",
    "sweep_answer.grid_none": "none in {count:,}",
    "sweep_answer.random": (
        "Of 100 cases drawn at random, the cheapest that meets the target is {shares} ({draws:,} draws, so give or "
        "take {error:.0f})."
    ),
    "sweep_answer.random_some_none": (
        "Of 100 cases drawn at random, the cheapest that meets the target is {shares}; no option meets it in "
        "{none:.0f} ({draws:,} draws, so give or take {error:.0f})."
    ),
    "sweep_answer.random_none": "In none of {draws:,} cases drawn at random does any option meet the target.",
    "sweep_answer.random_share": "{option} in {cases:.0f}",
    "sweep_answer.random_cost": (
        "The life-cycle cost (present value) of {option} is more than {low} in 90 of 100 cases, and more than {high} "
        "in 10 of 100."
    ),
    "sweep_answer.measured_weather": (
        "With the demand of life year {life_year}, nine of ten measured weather years ({years:,} were run) deliver at "
        "least this part of the water: {shares}."
    ),
    "sweep_answer.synthetic_weather": (
        "With the demand of life year {life_year}, nine of ten synthetic weather years ({years:,} were run) deliver at "
        "least this part of the water: {shares}."
    ),
    "sweep_answer.weather_share": "{option} {percent:.1f} %",
    "sweep_answer.few_years": "With only {years} years this is little more than the worst of them.",
    "sweep_answer.chosen_anew": (
        "What the scenario leaves to the tool (tank, strings, float switch) was chosen anew in each variant."
    ),
    "sweep_answer.built_once": (
        "Tank, strings and float switch stay as they were chosen for the scenario as it stands, unless swept "
        "themselves: the works are built once."
    ),
    # returns
    "returns.no_outlay": (
        "its capital cost is no higher than the reference's, so there is no extra outlay to earn a return on"
    ),
    "returns.never_saves": "its later years save nothing that could pay for the extra capital cost",
    "returns.loses_all": "at no rate above -100 % are the later savings worth more than the extra capital cost",
    "returns.several": "several rates balance outlay and savings, so none is the answer",
    "returns.at_once": "its capital cost is no higher than the reference's and it never falls behind",
    "returns.not_recovered": "the extra capital cost is not recovered, to stay so, within the analysis period",
}
