"""English of what a run prints on the terminal."""

SENTENCES: dict[str, str] = {
    "narrow.title": "{name}: supply options over {years} years",
    "narrow.option": "Supply option",
    "narrow.meets_target": "Meets\ntarget",
    "narrow.demand_met_percent": "Demand\nmet %",
    "narrow.tank_m3": "Tank\nm3",
    "narrow.array_kwp": "PV\nkWp",
    "narrow.grid_kwh_per_year": "Grid\nkWh/yr",
    "narrow.fuel_l_per_year": "Fuel\nL/yr",
    "narrow.demand_met_worst_month_percent": "Worst\nmonth\n%",
    "narrow.short_days_per_year": "Short\ndays\n/yr",
    "narrow.worst_month": "Worst\nmonth",
    "narrow.worst_month_short_days": "In that\nmonth",
    "narrow.longest_short_days": "Most\nin a\nrow",
    "narrow.missing_l_per_short_day": "Missing\nL/day",
    "narrow.modules": "Series x\nstrings",
    "narrow.series_by_strings": "{series} x {strings}",
    "narrow.capital_cost": "Capital\ncost\n{currency}",
    "narrow.life_cycle_cost": "Life-\ncycle\ncost\n{currency}",
    "narrow.levelised_cost_per_m3": "Per m3\n{currency}",
    "terminal.duty": (
        "Duty: {flow} m3/h at {head} m (static {static}, drawdown {drawdown}, friction {friction}, residual "
        "{residual}), motor input {input_w} W, limited by {limit}."
    ),
    "terminal.weather": "Weather: {source}",
    "terminal.incomplete": "{mark} incomplete: no price was entered for {names}",
    "terminal.checks": "Site checks: {summary}",
    "terminal.failed": "{sign} {topic}: {compared}: {value} against {limit}. {remedy}",
    "terminal.more_faults": "and {count} more: sheet 'Checks'",
    "rests_on.one": (
        "What it rests on: {key} was not given ({value} {unit}); tried at {tried}, {option} meets {met} % of the "
        "demand at a life-cycle cost of {currency} {cost}."
    ),
    "rests_on.one_technical": (
        "What it rests on: {key} was not given ({value} {unit}); tried at {tried}, {option} meets {met} % of demand."
    ),
    "sweep.change_less": (
        "Inputs that change it less, or not at all, and never the best option: {count}; they stand in the workbook."
    ),
    "size.switch": "Float switch (% of tank)",
    "size.levels": "{start:g} / {stop:g}",
    "worth.map_one": "Whatever the values of {down} and of {across} that were tried, {option} stays the best option.",
    "worth.map_one_misses": (
        "Whatever the values of {down} and of {across} that were tried, {option} comes nearest to the target."
    ),
    "terminal.beware": "! {caution}",
    "check.named_fail": "{count} failed ({names})",
    "check.named_first_fail": "{count} failed ({names}; ...)",
    "check.named_caution": "{count} with caution ({names})",
    "check.named_first_caution": "{count} with caution ({names}; ...)",
    # dangers: names of things in a list
    "terminal.dangers": (
        "! What kills here: {dangers}. Local codes and licensed practice come first. Before anything is built, opened "
        "or drunk read the cautions on the sheet 'Method and cautions' (--verbose prints them)."
    ),
    "terminal.more_dangers": "! And here as well: {dangers}.",
    "danger.solar": "DC voltage of the array (never off by day)",
    "danger.grid": "grid electricity",
    "danger.exhaust": "exhaust of the generator",
    "danger.backfeed": "a generator that feeds back into the line",
    "danger.any": "electricity from {source}",
    "danger.lightning": "lightning",
    "danger.loads": "falling loads",
    "danger.falls": "falls from a height",
    "danger.air": "bad air in shafts and tanks",
    "danger.trench": "trenches",
    "danger.tank": "open tanks",
    "danger.water": "untested water",
}
