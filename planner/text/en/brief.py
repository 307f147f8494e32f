"""Words of the brief beside those of the decision: its headings, its charts, and these in words."""

SENTENCES: dict[str, str] = {
    "brief.place_people": "{place}. Serves {people} people in the first year.",
    "brief.days": "Days short of water",
    "brief.pay": "What users must pay",
    "brief.turns": "What would turn the answer",
    "brief.options": "The options, best first",
    "brief.who": "By whom, when, from what",
    "brief.cautions_follow": "The cautions at the end are part of this brief.",
    # money
    "brief.costs": "Life-cycle cost by part",
    "brief.costs_alt": (
        "Bars of the life-cycle cost of each option by part, each part one end to the next. {option}, ranked first, "
        "costs {cost} in all over {years} years; its largest part is: {part}."
    ),
    # water
    "brief.water": "Water by month and source: {option}",
    "brief.water_alt": (
        "Columns of the water that each source pumps, by month, mean of {years} years, and on them the water that is "
        "missing. Most is missing in {month}: {missing} m3 a day."
    ),
    "brief.water_alt_none_missing": (
        "Columns of the water that each source pumps, by month, mean of {years} years. No water is missing in any "
        "month."
    ),
    "brief.water_axis": "m3 a day, mean of {years} years",
    "brief.water_missing": "missing",
    # tank
    "brief.tank": "Tank in its worst fortnight: {option}",
    "brief.tank_alt": (
        "Line of the water in the tank by the hour from {day} {month} of year {year}, the fourteen days with the most "
        "missing water of all years, in which {missing} m3 are missing. The tank holds {tank} m3; its lowest level in "
        "these days is {lowest} m3."
    ),
    "brief.tank_alt_none_missing": (
        "Line of the water in the tank by the hour from {day} {month} of year {year}, the fourteen days with the "
        "lowest tank of all years. No water is missing. The tank holds {tank} m3; its lowest level in these days is "
        "{lowest} m3."
    ),
    "brief.tank_axis": "m3",
    "brief.tank_days": "days from {day} {month} of year {year}",
    "brief.tank_level": "level",
    "brief.tank_full": "full",
    "brief.tank_missing": "missing on the day",
}
