"""Words of the page 'What users pay'."""

SENTENCES: dict[str, str] = {
    "page.users": "What users pay",
    "users.under": (
        "Tariffs, bills and savings in {currency} of year 0; the burden of each year in {currency}, {prices}. Options "
        "stand in the order of the run."
    ),
    "users.sentence": (
        "{option}: users cover operation and replacements at {renewals} a m3 (operation alone {operation}; with "
        "support and what the grant leaves of the capital cost {full}). {saving} a year set aside pays for every "
        "replacement when it falls due; without savings the dearest year is year {year}, at {largest} against a mean "
        "of {mean}."
    ),
    "users.sentence_no_lumps": (
        "{option}: users cover operation at {operation} a m3, and support and what the grant leaves of the capital "
        "cost too at {full}; nothing is replaced within the analysis period, so that nothing is set aside here for "
        "what comes after it."
    ),
    "users.part.tariff": "Tariff per m3 that is paid for",
    "users.part.household": "Household: bill, and what it takes of an income",
    "users.part.burden": "Yearly burden after the grant, in years 1 to the last",
    "users.part.fund": "Savings for replacements",
    "users.part.person": "Per person",
    "users.tariffs": (
        "A level tariff pays for all years together: where costs per m3 rise, it leaves something over in early years "
        "that the late ones need. Direct support is in the last tariff alone, as an authority mostly bears it."
    ),
    "users.income": (
        "Limit for a bill: 3 and 5 % of household income are both used as tests (Fankhauser and Tepic 2005; 3 % in the "
        "UNDP Human Development Report 2006; both at second hand). No threshold is agreed (AQUA 72(8), 2023, a review "
        "of 79 studies). What is still spent on other sources in dry weeks comes on top."
    ),
    "users.no_households": (
        "No bill per household: [households] is not given (size, income_per_month and lowest_income_per_month)."
    ),
    "users.nobody_at_home": "No bill per household: no user of the water is people at home.",
    "users.fund": (
        "The saving is the least level deposit at each year's end with which the fund is not overdrawn by any year's "
        "replacements; the mean of the replacements over the years can be too little. Deposits rise with prices."
    ),
    "users.income_judged": "  against the usual limits",
    "users.income_below": "at most {low} %",
    "users.income_between": "between {low} and {high} %",
    "users.income_above": "above {high} %",
    "users.ranges": "Against published ranges of cost",
    "users.low": "From ({currency})",
    "users.high": "To ({currency})",
    "users.range_below": "! below: looks under-budgeted",
    "users.range_above": "above",
    "users.range_within": "within",
    "users.ranges_source": (
        "Small and medium piped schemes from mechanised boreholes, larger ones above 5,000 people: IRC WASHCost, cost "
        "benchmarks, 2012, in US dollars of 2011, at second hand, brought to the prices that finance."
        "usd_prices_since_2011 says. What animals, fields and others draw is in the costs here, but in nobody's share."
    ),
    "users.ranges_source_2011": (
        "Small and medium piped schemes from mechanised boreholes, larger ones above 5,000 people: IRC WASHCost, cost "
        "benchmarks, 2012, in US dollars of 2011 as published, at second hand: today's would be higher (give finance."
        "usd_prices_since_2011). What animals, fields and others draw is in the costs here, but in nobody's share."
    ),
    "users.ranges_not_compared": (
        "Not compared: the published ranges are in US dollars, the prices in {currency}. With finance."
        "programme_currency = 'USD' and finance.exchange_rate the capital cost per person is held against {low} to "
        "{high} and the recurrent cost per person and year against {low_yearly} to {high_yearly} US dollars of 2011 "
        "(IRC WASHCost, cost benchmarks, 2012, at second hand)."
    ),
    "users.programme": "In {programme}, the currency of the programme",
    "users.by_year": "By year",
    "users.operation_cost": "Operation ({currency})",
    "users.burden": "Yearly burden ({currency})",
    "users.renewals": "Replacements, money of year 0 ({currency})",
    "users.renewals_present": "Worth in the fund's interest ({currency})",
    "users.renewals_due": "The same, cumulated ({currency})",
    "users.saving_needed": "Level saving needed until then ({currency}/year)",
    "users.fund_balance": "Fund at the year's end ({currency})",
}
