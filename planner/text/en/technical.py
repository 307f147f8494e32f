"""Words where there are no prices, in the place of those about costs, and of what an answer rests on."""

SENTENCES: dict[str, str] = {
    # ---- comparison, sizing, sweep
    "answer.levels_good_technical": (
        "In {option} the float switch starts the top-up at {start:g} % of the tank and stops it at {stop:g} %; no "
        "setting tried meets the target with notably less energy from outside."
    ),
    "answer.kwh_of_grid": "{amount:,.0f} kWh from the grid",
    "answer.l_of_fuel": "{amount:,.0f} L of fuel",
    "answer.technical_meets": (
        "{option} meets the target of {target:g} % of the water: {delivered:.1f} % over {years} years, {worst:.0f} % "
        "in the worst month ({month}); {short:.1f} days a year are short of more than a tenth of their water, at most "
        "{longest:.0f} in a row."
    ),
    "answer.technical_never_short": (
        "{option} meets the target of {target:g} % of the water: {delivered:.1f} % over {years} years, with no day "
        "short of more than a tenth of its water."
    ),
    "answer.technical_nearest": (
        "No option meets the target of {target:g} % of the water; {option} comes nearest with {delivered:.1f} % over "
        "{years} years, {worst:.0f} % in the worst month ({month}); {short:.1f} days a year are short of more than a "
        "tenth of their water, at most {longest:.0f} in a row."
    ),
    "answer.technical_others": (
        "So do: {options}. Without prices they stand in the order of the scenario; which of them to build, prices and "
        "those who will run it must say."
    ),
    "answer.technical_sizes": (
        "Sizes left open were chosen without prices, of those that pass the checks with the fewest cautions: a m3 of "
        "tank counts as {tank:g} kWp of array (assumed, common "
        "practice, no source)."
    ),
    "remedied.none_computed_technical": "The remedies of what fails cannot be computed: {checks}.",
    "sizing_answer.weight": "{kwp:.2g} kWp of array",
    "sizing_answer.best_technical": (
        "{option} meets the target of {target:g} % of the water with {design}: {delivered:.1f} % delivered. Of "
        "{tried:,} candidate designs, each run through every hour of the {years}-year analysis period, it is of least "
        "weight in its option: without prices a m3 of tank counts as {tank:g} kWp of array, a kWh a year from the grid "
        "as {grid:g} and a litre of fuel a year as {fuel:g} (assumed, common practice, no source), and options stand "
        "in the order of the scenario."
    ),
    "sizing_answer.none_meets_technical": (
        "None of the {tried:,} candidate designs meets the target; nearest comes {option} with {design}: {misses}. "
        "Without prices designs are weighed: a m3 of tank counts as {tank:g} kWp of array, a kWh a year from the grid "
        "as {grid:g} and a litre of fuel a year as {fuel:g} (assumed, common practice, no source)."
    ),
    "sizing_answer.steady_start_technical": "Start levels from {low:g} % to {high:g} % weigh within 2 % of it.",
    "sizing_answer.no_rival_technical": (
        "No other candidate of {option} that meets the target comes within 2 % of its weight."
    ),
    "sizing_answer.one_rival_technical": (
        "Within 2 % of its weight comes one other candidate of {option}: {design} ({percent:.2f} % more)."
    ),
    "sizing_answer.rivals_technical": (
        "Within 2 % of its weight come {count:,} other candidates of {option}, first {design} ({percent:.2f} % more)."
    ),
    "sizing_answer.higher_free_technical": (
        "Raising the target from {target:g} % to {higher:g} % takes nothing more: this design already delivers "
        "{delivered:.1f} %."
    ),
    "sizing_answer.higher_adds_technical": (
        "Raising the target from {target:g} % to {higher:g} % takes as much more as {cost} would ({option})."
    ),
    "sizing_answer.run_dearer_technical": (
        "Take {change} instead of {instead}, which 'planner run' takes for {option}: it meets the target and weighs "
        "{gap} less."
    ),
    "sizing_answer.run_cheaper_technical": (
        "Take {change} for {option}; 'planner run' takes {instead}, which weighs {gap} less."
    ),
    "sweep_answer.demand_met_of": "Demand met by {option}",
    "sweep_answer.percent": "{percent:.2f} %",
    "sweep_answer.matters_most_technical": (
        "Moved one at a time, {input} matters most: as it goes from {low:g} to {high:g}, what {option} meets of the "
        "demand goes from {cost_at_low} to {cost_at_high} ({cost} as it stands)."
    ),
    "sweep_answer.stays_cheapest_technical": (
        "None of the inputs, moved alone within its range, changes the answer: {option} stays the first option that "
        "meets the target."
    ),
    "sweep_answer.grid_technical": (
        "Of the {count:,} combinations of the grid, the first that meets the target is {counts}."
    ),
    "sweep_answer.random_technical": (
        "Of 100 cases drawn at random, the first option that meets the target is {shares} ({draws:,} draws, so give or "
        "take {error:.0f})."
    ),
    "sweep_answer.random_some_none_technical": (
        "Of 100 cases drawn at random, the first option that meets the target is {shares}; no option meets it in "
        "{none:.0f} ({draws:,} draws, so give or take {error:.0f})."
    ),
    "sweep_answer.random_none_technical": (
        "In none of {draws:,} cases drawn at random does any option meet the target."
    ),
    "sweep_answer.random_cost_technical": (
        "What {option} meets of the demand is more than {low} in 90 of 100 cases, and more than {high} in 10 of 100."
    ),
    # ---- pages of sizing, sweep and comparison
    "size.note_technical": (
        "Every candidate was run hour by hour through every life year: nothing was skipped. As there are no prices, "
        "what is built and bought is weighed, as the answer says. Check any choice against the yield of the borehole "
        "before it is built."
    ),
    "size.answer_under_technical": "Sizing, without prices",
    "size.weight": "Weight (kWp of array)",
    "size.best_of_technical": "{scenario}: design of least weight of each supply option",
    "size.best_under_technical": (
        "The one of least weight that meets the target; where none does, the one that misses it by least."
    ),
    "size.by_run_technical": "Weight of the design of 'planner run' (kWp)",
    "size.front_under_technical": "Designs that no other of the same option beats in both weight and demand met.",
    "size.front_chart_technical": "What more service takes",
    "size.front_alt_technical": (
        "Least weight against the demand met over the analysis period, one line an option: {options}."
    ),
    "size.service_technical": "Size for service",
    "size.service_under_technical": "Least weight of a design that delivers at least so much of the water.",
    "size.service_heading_technical": "Least weight (kWp of array) that delivers at least so much of the water",
    "size.service_chart_technical": "Least weight by service",
    "size.service_alt_technical": "Least weight by the demand met, one column an option: {options}.",
    "sweep.one_at_a_time_under_technical": (
        "Each input goes to its low and its high value while all others stay; inputs are in order of swing. The best "
        "option there is the first that meets the target, or, where none does, the one that delivers most. The "
        "indicator is the percentage change of the result for each per cent of change of the input, larger end (ADB)."
    ),
    "sweep.cheapest_technical": "First that meets the target",
    "sweep.tornado_met": "{option}: {figure}",
    "sweep.grid_under_technical": (
        "{count} combinations; the first option that meets the service target in each, and what every option meets of "
        "the demand."
    ),
    "sweep.grid_alt_technical": "Demand met by {input}, one line an option: {options}.",
    "sweep.map_technical": "First that meets the target: {down} down, {across} across",
    "sweep.chances_alt_technical": (
        "Of 100 cases, in how many each option is the first that meets the target, and in how many it meets the "
        "target: {options}."
    ),
    "sweep.exceeded_chart_technical": "Demand met and how often it is exceeded",
    "sweep.exceeded_alt_technical": "Of 100 cases, how many meet more of the demand, one line an option: {options}.",
    "sweep.correlations_technical": "Rank correlation of each input with the demand met (Spearman)",
    "sweep.correlation_note_technical": (
        "1: what is met always rises with the input; -1: it always falls; near 0: the input hardly matters."
    ),
    "compare.side_under_technical": (
        "The option that stands first in each scenario: the first that meets its target, or, where none does, the one "
        "that delivers most; it cannot be built as it is while site checks fail. The scenarios give no prices."
    ),
    "compare.differ_technical": "! The scenarios have different {what}: compare them with care.",
    "compare.first_technical": "First that meets the target, or nearest",
    # ---- terminal
    "narrow.title_technical": "{name}: technical answer, without prices",
    # ---- pages of a run
    "answer.setting_technical": (
        "A technical answer, as the scenario names no currency and gives no prices. Every option was simulated hour by "
        "hour through {years} years."
    ),
    "answer.option_technical": "Supply option",
    "options.under_technical": (
        "In the order of the run, over {years} years; energy and hours are means of the years. Those that meet the "
        "target come first, in the order of the scenario."
    ),
    # ---- method
    "method.sizes_words_technical": (
        "Where left open: the smallest tank that meets the service target, and the number of strings and the float "
        "switch's levels that meet it with least weight: a kWp of array counts 1, a m3 of tank {tank:g}, a kWh a year "
        "from the grid {grid:g} and a litre of fuel a year {fuel:g}, which is near what they usually weigh against one "
        "another (assumed, common practice, no source). Prices may choose other sizes. Options that meet the target "
        "stand in the order of the scenario; those that miss it come after them, by what they deliver."
    ),
    # ---- inputs
    "inputs.note_technical": (
        "The values here follow the sheet 'Form', and nothing else in this workbook does: after a change, run it again "
        "(planner run FILE). With a currency and prices on that sheet the answer becomes one in money."
    ),
    # ---- what an answer rests on
    "rests_on.estimate": "an estimate from the coordinates",
    "rests_on.heading": "What it rests on: not given, so tried lower / higher ({option} as sized)",
    "rests_on.irradiation": "Global irradiation, mean of the year",
    "rests_on.key": "Key",
    "rests_on.label": "Input",
    "rests_on.value": "Value",
    "rests_on.unit": "Unit",
    "rests_on.tried": "Tried",
    "rests_on.met": "Demand met %",
    "rests_on.cost": "Life-cycle cost {currency}",
    "rests_on.source": "Where it comes from",
    "rests_on.pair": "{low} / {high}",
    "rests_on.none": (
        "What was not given was tried lower and higher ({count} numbers): none changes the answer notably; every value "
        "that was not given stands on the sheet 'Inputs'"
    ),
    "rests_on.more": (
        "and {count} more, which change less; every value that was not given stands on the sheet 'Inputs'"
    ),
}
