"""Lines of the proposal that ask for a fact which a study does not hold: whole sentences, with a hint in brackets."""

SENTENCES: dict[str, str] = {
    # first page and summary
    "proposal.open.applicant": "To be completed: who applies, and to whom [name, address, contact, legal form]",
    "proposal.open.prepared_by": "To be completed: who prepared the study [name, trade, organisation]",
    "proposal.open.visit_date": "To be completed: when the site was visited [day, by whom]",
    "proposal.open.revision": "To be completed: revision of this proposal [number or day]",
    "proposal.open.prices": (
        "To be completed: what the works cost to build and to run [no price was entered, so the study has no costs]"
    ),
    "proposal.open.unpriced": "To be completed: the budget is incomplete, no price was entered for {names} [quotes]",
    "proposal.open.grant": "To be completed: the sum asked for, and from whom [share of the capital cost, funder]",
    "proposal.open.funder": "To be completed: the funder, and when the sum is wanted [name, instalments]",
    # need and people
    "proposal.open.growth": (
        "To be completed: growth of the demand [none was given, so none is counted; census, enrolment, plans]"
    ),
    "proposal.open.leakage": (
        "To be completed: water lost between tank and taps [none was given, so none is counted; meter readings]"
    ),
    "proposal.open.litres": (
        "To be completed: water per person and day [not given, so a usual figure is counted; national norm, survey]"
    ),
    "proposal.open.present_sources": (
        "To be completed: where people fetch water today [sources, distance, queue, price, quality, dry months]"
    ),
    "proposal.open.baseline": (
        "To be completed: baseline before the works [survey: litres, minutes and money a household spends on water]"
    ),
    "proposal.open.inclusion": (
        "To be completed: who could be left out, and what is done about it [women, poorest, disabled, herders, tenants]"
    ),
    "proposal.open.consent": (
        "To be completed: consent of the users [day and minutes of the meeting, who was there, what they contribute]"
    ),
    "proposal.open.coordination": (
        "To be completed: agreement with the authority and with other schemes near by [letter, plan it belongs to]"
    ),
    # source
    "proposal.open.borehole": "To be completed: not given of the borehole are {names} [driller's report, test, permit]",
    "proposal.open.completion_report": (
        "To be completed: report of the drilling [driller and licence, strata, casing, screens, seal, disinfection]"
    ),
    "proposal.open.hydrogeologist": (
        "To be completed: hydrogeologist's report [name, day, recommended yield and hours, effect on other wells]"
    ),
    "proposal.open.pumping_test": (
        "To be completed: constant-rate pumping test with recovery [day, who tested, flow, hours, levels: none is on "
        "record]"
    ),
    "proposal.open.test_record": "To be completed: not given of the pumping test are {names} [record of the test]",
    "proposal.open.quality": (
        "To be completed: analysis of the water, none is on record [laboratory, day, results for at least {names}]"
    ),
    "proposal.open.quality_rest": "To be completed: not analysed are {names} [laboratory, day, results]",
    "proposal.open.quality_for_use": (
        "To be completed: analysis of the water for its use [laboratory, day, salinity, sodium, iron, solids]"
    ),
    "proposal.open.laboratory": "To be completed: who analysed the water, and when [laboratory, day of the sample]",
    "proposal.open.treatment": (
        "To be completed: how the water is brought below the guideline values [treatment, its cost, who runs it]"
    ),
    "proposal.open.water_permit": (
        "To be completed: permit to take the water [authority, number, day, volume a day, until when]"
    ),
    "proposal.open.land": (
        "To be completed: right to the land of borehole, main, array and tank [owner, deed or agreement, way-leave]"
    ),
    # design
    "proposal.open.pump": "To be completed: make and type of the pump [plate, datasheet with its curve, guarantee]",
    "proposal.open.profile": (
        "To be completed: long section of the main [levels along the route; none were given, so only its ends count]"
    ),
    "proposal.open.drawings": (
        "To be completed: drawings [map, layout, wellhead, single-line diagram, tank and tap stands]"
    ),
    "proposal.open.array_place": (
        "To be completed: place of the array [shade through the year, foundation, wind, fence, who guards it]"
    ),
    "proposal.open.tank_structure": (
        "To be completed: design of the tank's tower or base by a structural engineer [ground, wind, earthquake]"
    ),
    # options and budget
    "proposal.open.other_ways": (
        "To be completed: other ways that were looked at, and why not [handpump, spring, rain, extending a network]"
    ),
    "proposal.open.percentages": (
        "To be completed: not given are {names} [none is counted; say so where the prices hold them]"
    ),
    "proposal.open.price_date": "To be completed: when the prices were asked [day, quotes, how long they hold]",
    "proposal.open.exchange_rate": (
        "To be completed: exchange rate of {currency} to the funder's currency [rate, day, who bears its changes]"
    ),
    "proposal.open.contributions": (
        "To be completed: contributions in money and in kind [users, government, others; sum, labour, materials]"
    ),
    "proposal.open.procurement": (
        "To be completed: plan of procurement [lots, how bids are invited, who awards, guarantees, spares in the order]"
    ),
    "proposal.open.timetable": (
        "To be completed: timetable [permits, tenders, delivery, building, hand-over, end of the guarantee]"
    ),
    # cost recovery
    "proposal.open.tariff_unpriced": (
        "To be completed: what users must pay for operation and replacements [follows from prices, of which none were "
        "entered]"
    ),
    "proposal.open.tariff": "To be completed: tariff agreed with the users [per m3, bucket or month; who sets it]",
    "proposal.open.willingness": (
        "To be completed: what users can and will pay [what is paid today, survey, help for the poorest]"
    ),
    "proposal.open.savings_account": (
        "To be completed: savings account for replacements [bank, who signs, interest, who audits]"
    ),
    "proposal.open.households": (
        "To be completed: households that pay [people per household, income of a middle and of a poor one]"
    ),
    "proposal.open.income": "To be completed: income of households [a middle one, and one of the poorest fifth]",
    "proposal.open.collection": (
        "To be completed: share of the water that is paid for [none was given, so all is counted as paid]"
    ),
    # operation
    "proposal.open.stockist": "To be completed: who stocks spares [name, distance, which parts, days to the site]",
    "proposal.open.operator": "To be completed: the operator [name, training, hours a week, pay, deputy]",
    "proposal.open.committee": (
        "To be completed: the body that answers for the supply [committee or utility, by-laws, members, women in it]"
    ),
    "proposal.open.electrician": (
        "To be completed: licensed electrician and crew that lifts the pump [names, distance, call-out price]"
    ),
    "proposal.open.operation_contract": (
        "To be completed: service contract and guarantees [with whom, how long, time to repair]"
    ),
    "proposal.open.support": (
        "To be completed: support by the local authority [visits a year, training, money; none was entered]"
    ),
    "proposal.open.theft": "To be completed: protection against theft and damage [site, bolts, guard, insurance]",
    # environment
    "proposal.open.grid_factor": (
        "To be completed: carbon dioxide per kWh of the grid [national factor, its year and kind; not counted here]"
    ),
    "proposal.open.grid_factor_source": (
        "To be completed: where the grid's {factor} kg of carbon dioxide per kWh comes from [source, year, kind]"
    ),
    "proposal.open.screening": "To be completed: environmental screening [authority, category, day, licence]",
    "proposal.open.protection": (
        "To be completed: protection of the wellhead [distance to latrines, stock, fuel and graves; fence, drainage]"
    ),
    "proposal.open.waste_water": "To be completed: where spilt and waste water goes [drain, soakaway, trough]",
    "proposal.open.end_of_life": (
        "To be completed: what becomes of worn-out modules, pumps, batteries, oil [who takes them back]"
    ),
    "proposal.open.safeguards": (
        "To be completed: social safeguards [land taken, work of children, safety on site, complaints]"
    ),
    # risks and indicators
    "proposal.open.other_risks": (
        "To be completed: risks that no study sees [conflict, theft, politics, exchange rate, supplier; who bears them]"
    ),
    "proposal.open.targets": "To be completed: targets of the indicators marked 'to be agreed' [number, until when]",
    "proposal.open.monitoring": (
        "To be completed: who measures the indicators [baseline, how often, who reports to whom, budget for it]"
    ),
    "proposal.open.logframe": (
        "To be completed: logical framework in the funder's form [goal, purpose, outputs, activities]"
    ),
    "proposal.open.exit": (
        "To be completed: what holds when the funding ends [who owns the works, who pays, who is called]"
    ),
    # annexes
    "proposal.open.checks": (
        "To be completed, {topic}: not checked for lack of a figure are {names} [plate, datasheet, measurement]"
    ),
    "proposal.open.papers": (
        "To be completed: papers to be attached [test record, laboratory sheet, quotes, permits, map, minutes of "
        "consent, drawings]"
    ),
}
