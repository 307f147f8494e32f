"""Words of the decision: what the first page, the brief and the summary of the proposal say, each in its own form."""

SENTENCES: dict[str, str] = {
    # the verdict, one sentence
    "decision.recommended": "Recommended: {option}, which meets the target of {target:g} % of the water at least cost.",
    "decision.on_conditions": (
        "Recommended on the conditions below: {option}, which meets the target of {target:g} % of the water at least "
        "cost."
    ),
    "decision.not_yet": (
        "Not yet to be built: {option} meets the target of {target:g} % of the water at least cost, once the checks "
        "that fail are put right."
    ),
    "decision.none_meets": (
        "No option meets the target of {target:g} % of the water; {option} comes nearest, with {delivered:.1f} %."
    ),
    "decision.serves": "{option} meets the target of {target:g} % of the water.",
    "decision.serves_on_conditions": "{option} meets the target of {target:g} % of the water, on the conditions below.",
    "decision.serves_not_yet": (
        "Not yet to be built: {option} meets the target of {target:g} % of the water, once the checks that fail are "
        "put right."
    ),
    # conditions, one sentence each
    "decision.estimated_weather": (
        "Sun and temperature are an estimate for the place: measure or fetch them before money is committed."
    ),
    "decision.starter": (
        "{count} values still are the invented ones of the starter scenario: put those of the site in their place "
        "before the figures are used."
    ),
    "decision.unpriced": "The sums are incomplete, as no price was entered for: {names}.",
    # the three large numbers
    "decision.to_build": "To build it",
    "decision.to_build_at_least": "To build it, at least",
    "decision.to_build_note": "before any grant",
    "decision.to_build_note_grant": "of it {own} left to pay after grant and loan",
    "decision.to_build_note_people": "{per_person} per person",
    "decision.users_pay": "Users must pay",
    "decision.users_pay_at_least": "Users must pay, at least",
    "decision.users_pay_note": "for operation and replacements",
    "decision.users_pay_note_income": "for operation and replacements: {share:.1f} % of a middle household's income",
    "decision.short_days": "Days short of water",
    "decision.short_days_note": "more than a tenth of the day missing; most in {month}, up to {longest:.0f} in a row",
    "decision.short_days_never": "no day with more than a tenth missing in {years} years",
    "decision.water": "Water a day",
    "decision.water_note": "delivered, mean of {years} years",
    "decision.array_and_tank": "To be built",
    "decision.array_and_tank_note": "PV array and storage tank of {option}",
    "decision.tank_note": "storage tank of {option}",
    "decision.value_money": "{currency} {value:,.0f}",
    "decision.value_money_per_m3": "{currency} {value:,.2f} per m3",
    "decision.value_days": "{value:,.1f} days a year",
    "decision.value_water": "{value:,.1f} m3",
    "decision.value_array_and_tank": "{kwp:,.2f} kWp + {tank:,.1f} m3",
    "decision.value_tank": "{tank:,.1f} m3",
    # what users pay
    "decision.pay_unpriced": (
        "What users must pay is more than these figures say, as no price was entered for: {names}."
    ),
    "decision.pay_income": (
        "At the tariff for operation and replacements the bill takes {middle:.1f} % of a middle household's income."
    ),
    "decision.pay_income_lowest": (
        "At the tariff for operation and replacements the bill takes {middle:.1f} % of a middle household's income and "
        "{lowest:.1f} % of one of the poorest fifth."
    ),
    # who, when
    "decision.record": (
        "Prepared by: {prepared_by}. Site visited: {visit_date}. Prices of: {price_date}. Revision: {revision}."
    ),
    "decision.no_record": (
        "Not said: who prepared it, when the site was visited, of when the prices are, which revision it is."
    ),
    "decision.weather_estimate": "Weather: monthly means estimated for the place, turned into years hour by hour.",
    "decision.weather_monthly": "Weather: monthly means as given, turned into years hour by hour.",
    "decision.weather_file": "Weather: hourly record '{file}'.",
    "decision.version": "Worked out by planner {version}, seed {seed}.",
    # a workbook changed since its run
    "decision.changed": (
        "! Prices or rates were changed since the run: of the options that meet the target, at the sizes of the run, "
        "{option} costs least now. Run the study again before this is used."
    ),
    "decision.run_again": (
        "! Run the study again: an input was changed that these figures do not follow (the sheet 'Inputs' says which; "
        "they are those of the run)."
    ),
    "decision.overpaid": (
        "! Grant and loan together exceed 100 percent of the capital cost: put them right before this is used."
    ),
    "decision.given_way": (
        "The figures below follow the changed prices; what the run said of checks, conditions and the next best has "
        "given way, as only a new run can tell."
    ),
    "decision.days_heading": "Days short of water, and what users pay",
    "decision.days_heading_technical": "Days short of water",
    "decision.turns_heading": "What would turn it",
    "decision.who_heading": "Who, when, from what",
    "decision.large_unit": "{label} ({unit})",
    "decision.cautions": (
        "Read the cautions on the sheet 'Method and cautions' before anything is bought, opened or drunk; local codes "
        "and licensed practice come first."
    ),
    "decision.printing": (
        "The printed set holds what is read by others. To print any other sheet, or more of one, clear its print area "
        "or print a selection."
    ),
    "checks.names_not_given": "Not given, so not checked: {names}.",
    "checks.names_passed": "Passed: {names}.",
    "page.basis": "What it rests on",
    "inputs.since": "Since the run",
    "inputs.since_count": "Count",
    "inputs.since_form": "Changed on the form beside what the values here follow",
    "inputs.since_again": "Changed in all that the figures do not follow",
    "inputs.since_followed": "Changed and followed by every sum of money",
    "inputs.since_state": "State: 0 as run, 1 figures follow, 2 to be run again, 3 grant and loan above 100 %",
    "inputs.since_state_technical": "State: 0 as run, 2 to be run again",
    "inputs.again": "! run again",
    "inputs.followed": "changed, followed",
    "page.form_of_run": "Form of the run",
    # headings of the table of options beside those that other tables have
    "short.meets_target": "Meets target",
    "short.tariff_operation_and_renewals": "Users pay for operation and replacements{incomplete} ({unit})",
}
