"""Words of the proposal to a funder: its chapters, tables and what is said in them."""

SENTENCES: dict[str, str] = {
    "proposal.contents_heading": "Contents",
    "proposal.page": "Page {page} of {pages}",
    "proposal.wrote": "Wrote {file}; lines to be completed: {count}.",
    # ---- first page
    "proposal.kind": "Proposal for a pumped water supply from a borehole: {place}",
    "proposal.draft": (
        "This is a draft made from a study of the site. Lines marked in yellow ask for facts that the study does not "
        "hold: replace each by the fact, and take the mark away, before this is handed in. All other figures are those "
        "of the study; make the proposal again when the study changes."
    ),
    "proposal.version": "planner {version}",
    "proposal.foot.revision": "Revision {revision}",
    "proposal.foot.visit": "Site visited: {date}",
    "proposal.foot.between": " · ",
    "proposal.position_ne": "{latitude}° north, {longitude}° east",
    "proposal.position_nw": "{latitude}° north, {longitude}° west",
    "proposal.position_se": "{latitude}° south, {longitude}° east",
    "proposal.position_sw": "{latitude}° south, {longitude}° west",
    "proposal.record.place": "Place",
    "proposal.record.position": "Position",
    "proposal.record.prepared_by": "Prepared by",
    "proposal.record.visit_date": "Site visited",
    "proposal.record.price_date": "Prices of",
    "proposal.record.revision": "Revision",
    "proposal.record.version": "Worked out with",
    # ---- chapters
    "proposal.chapter.summary": "Summary",
    "proposal.chapter.need": "Need and people",
    "proposal.chapter.source": "Source of the water",
    "proposal.chapter.design": "Technical design",
    "proposal.chapter.options": "Options compared",
    "proposal.chapter.budget": "Budget and procurement",
    "proposal.chapter.recovery": "Cost recovery and affordability",
    "proposal.chapter.operation": "Operation, upkeep and spares",
    "proposal.chapter.environment": "Environment and carbon dioxide",
    "proposal.chapter.risks": "Risks",
    "proposal.chapter.indicators": "Indicators",
    "proposal.chapter.annexes": "Annexes",
    "proposal.value": "Value",
    "proposal.column.label": "What",
    "proposal.column.value": "Value",
    "proposal.column.unit": "Unit",
    "proposal.column.basis": "Basis",
    "proposal.column.source": "Source",
    "proposal.column.what": "What",
    "proposal.column.test": "Test",
    "proposal.column.option": "Supply option",
    # ---- summary
    "proposal.grant_asked": "Asked for: a grant of {grant}, {percent} % of the capital cost of {capital_cost}.",
    "proposal.in_brief": "A tank of {tank} m3 is filled; {water} m3 of water a day reach the users in the first year.",
    "proposal.in_brief_array": (
        "A PV array of {kwp} kWp is built and a tank of {tank} m3 is filled; {water} m3 of water a day reach the users "
        "in the first year."
    ),
    # ---- need and people
    "proposal.users.heading": "Who draws water, in the first year, without losses",
    "proposal.users.user": "Who",
    "proposal.users.number": "How many",
    "proposal.users.each": "Each a day (largest month)",
    "proposal.users.mean": "Mean (m3/day)",
    "proposal.users.largest": "Largest month (m3/day)",
    "proposal.users.people": "{count} people",
    "proposal.users.animals": "{count} head",
    "proposal.demand_grows": (
        "The study counts on a demand of {first} m3 a day in the first year and {last} m3 a day in year {years}, as a "
        "mean of the year."
    ),
    "proposal.demand_level": (
        "The study counts on a demand of {first} m3 a day, as a mean of the year, which stays the same through {years} "
        "years."
    ),
    "proposal.target": "Asked of the supply: at least {percent} % of that water, all {years} years together.",
    "proposal.households": "At {size} people a household these are about {count} households.",
    "proposal.service_ladder": (
        "On the ladder of WHO and UNICEF (JMP, at second hand) a public tap can reach 'basic' at best: an improved "
        "source, fetched within 30 minutes, queue included. 'Safely managed' asks for a tap on the plot, water when it "
        "is needed, and water free of faecal and priority chemical pollution."
    ),
    # ---- source
    "proposal.borehole": "The borehole",
    "proposal.basis.given": "given",
    "proposal.basis.worked_out": "worked out",
    "proposal.basis.assumed": "assumed",
    "proposal.permits": "Permits and land",
    "proposal.daily_limit": (
        "No more than {limit} m3 a day is taken in the study: it counts that as what permit or test allow."
    ),
    # ---- design
    "proposal.design": "Proposed is the supply option {option} with the pump '{pump}'.",
    "proposal.design_unnamed": "Proposed is the supply option {option}.",
    "proposal.works": "The works",
    "proposal.acceptance": "Tests at hand-over, to be agreed in the contract",
    "proposal.acceptance.pump.what": "Pump",
    "proposal.acceptance.pump.test": (
        "Curve of head, flow and input power from the maker's test bench, with an agreed grade of tolerance"
    ),
    "proposal.acceptance.pump.source": "ISO 9906:2012, from memory; small pumps have wider tolerances, so ask",
    "proposal.acceptance.flow.what": "Supply as a whole",
    "proposal.acceptance.flow.test": (
        "Flow of at least 90 % of what is predicted for the same head and the same sun or supply, at three powers or "
        "over a clear day; the errors of the instruments are told with it"
    ),
    "proposal.acceptance.flow.source": "proposed here, no standard",
    "proposal.acceptance.array.what": "PV array",
    "proposal.acceptance.array.test": (
        "Polarity, open-circuit voltage and short-circuit current of each string, continuity of earthing, insulation; "
        "papers of the pumping system: flow by power at constant head"
    ),
    "proposal.acceptance.array.source": "IEC 62446-1 and IEC 62253, at second hand",
    "proposal.acceptance.works.what": "Main, tank and water",
    "proposal.acceptance.works.test": (
        "Main tested with water under pressure, tank full for 24 hours without loss, works disinfected and flushed, "
        "samples without E. coli; stops for dry running and full tank shown to work; drawings as built, spares and "
        "tools handed over"
    ),
    "proposal.acceptance.works.source": "common practice, no source",
    # ---- budget and cost recovery
    "proposal.who_pays": "Who pays for building it",
    "proposal.price_date": "Prices are those of {date}.",
    "proposal.tariffs_too_low": (
        "Something has no price (see the budget), so that every tariff, bill and saving below is too low."
    ),
    "proposal.ranges_source": (
        "Ranges: IRC WASHCost, cost benchmarks, 2012, at second hand, for piped schemes from mechanised boreholes, "
        "brought from US dollars of 2011 to the prices of this study."
    ),
    "proposal.ranges_source_2011": (
        "Ranges: IRC WASHCost, cost benchmarks, 2012, at second hand, for piped schemes from mechanised boreholes, in "
        "US dollars of 2011 as published: in today's prices they would be higher."
    ),
    "proposal.by_year": "What is paid in each year after the grant, and what the savings then hold",
    "proposal.water_price": "The study counts on a price of water of {currency} {price} per m3.",
    # ---- operation
    "proposal.operation": (
        "Works last as long as somebody is paid and able to look after them. The tasks below are those of the works "
        "proposed; the makers' instructions come first. Work on electrical parts, lifting of the pump and entry into a "
        "tank or chamber are for trained crews, with every source of power locked off: see the cautions in the annexes."
    ),
    "proposal.who": "Who does what",
    "proposal.yearly_cost": "Counted in the running costs: {name}, {cost} a year.",
    "proposal.generator_hours": (
        "The generator runs about {hours} hours a year; serviced each {interval} running hours, that makes {times} "
        "services a year, and at least one a year whatever its hours."
    ),
    # ---- environment
    "proposal.carbon.heading": "Carbon dioxide of fuel burnt and electricity bought",
    "proposal.carbon": "What it took to make and bring the works is not counted.",
    "proposal.taken": (
        "In the first year {given} m3 of the {wanted} m3 wanted reach the users; what leaks is pumped on top."
    ),
    # ---- risks
    "proposal.no_check_warns": "No site check fails or warns.",
    "proposal.risks.heading": "What the site checks found",
    "proposal.risks.turns": "What would turn the answer",
    "proposal.risks.risk": "Risk",
    "proposal.risks.found": "Found",
    "proposal.risks.why": "Why it matters",
    "proposal.risks.remedy": "What is to be done",
    "proposal.rests_more": "{count} more values were tried and change less; all that was not given stands in Annex B.",
    # ---- indicators
    "proposal.indicators.heading": "What will be measured, and what is expected",
    "proposal.indicators.what": "Indicator",
    "proposal.indicators.expected": "Expected",
    "proposal.indicators.unit": "Unit",
    "proposal.indicators.measured": "How it is measured",
    "proposal.indicators.to_agree": "to be agreed",
    "proposal.indicator.people": "People served in the first year",
    "proposal.indicator.people.unit": "people",
    "proposal.indicator.people.measured": "register of users, counted again each year",
    "proposal.indicator.m3_a_day": "Water delivered, mean of the first year",
    "proposal.indicator.m3_a_day.unit": "m3/day",
    "proposal.indicator.m3_a_day.measured": "water meter at the tank, read daily",
    "proposal.indicator.demand_met": "Share of the water wanted that is delivered",
    "proposal.indicator.demand_met.unit": "% of demand",
    "proposal.indicator.demand_met.measured": "meter against the demand planned for that year",
    "proposal.indicator.short_days": "Days a year on which more than a tenth of the day's water is missing",
    "proposal.indicator.short_days.unit": "days/year",
    "proposal.indicator.short_days.measured": "operator's log: tank empty, hours without water",
    "proposal.indicator.longest_short_days": "Most such days in a row",
    "proposal.indicator.longest_short_days.unit": "days",
    "proposal.indicator.longest_short_days.measured": "operator's log",
    "proposal.indicator.functionality": "Functionality: visits without notice that find water at every tap",
    "proposal.indicator.functionality.unit": "% of visits",
    "proposal.indicator.functionality.measured": "visits without notice, at least twice a year",
    "proposal.indicator.repair": "Time from failure to repair",
    "proposal.indicator.repair.unit": "days",
    "proposal.indicator.repair.measured": "operator's log: day reported, day repaired",
    "proposal.indicator.collected": "Tariff collected over cost of operation and upkeep",
    "proposal.indicator.collected.unit": "ratio",
    "proposal.indicator.collected.measured": "cash book, each year",
    "proposal.indicator.saving": "Set aside for replacements",
    "proposal.indicator.saving.unit": "{currency}/year",
    "proposal.indicator.saving.measured": "statement of the savings account",
    "proposal.indicator.samples": "E. coli in a sample of 100 mL",
    "proposal.indicator.samples.unit": "per 100 mL",
    "proposal.indicator.samples.measured": "samples from tank and taps, at least quarterly; guideline of WHO: none",
    "proposal.indicator.women": "Women in the committee and in its key posts",
    "proposal.indicator.women.unit": "% of members",
    "proposal.indicator.women.measured": "minutes of the election",
    "proposal.indicator.operators": "Operators trained and at work",
    "proposal.indicator.operators.unit": "people",
    "proposal.indicator.operators.measured": "list of training, visits",
    "proposal.indicator.fuel": "Fuel burnt",
    "proposal.indicator.fuel.unit": "L/year",
    "proposal.indicator.fuel.measured": "fuel receipts and hour meter",
    "proposal.indicator.carbon": "Carbon dioxide of fuel and electricity",
    "proposal.indicator.carbon.unit": "kg/year",
    "proposal.indicator.carbon.measured": "from fuel receipts and the electricity meter",
    # ---- annexes
    "proposal.annex.checks": "Annex A: site checks",
    "proposal.annex.assumptions": "Annex B: what was assumed, and from where",
    "proposal.annex.cautions": "Annex C: cautions",
    "proposal.annex.papers": "Annex D: papers to be attached",
    "proposal.assumptions": (
        "Every value that was not given at the site, by the part of the scheme it belongs to. Replace by what is "
        "measured or agreed wherever it can be had."
    ),
    "proposal.weather": "Sun and temperature: {source}.",
}
