"""English of days without water."""

SENTENCES: dict[str, str] = {
    "figure.nothing_missing": "none",
    "figure.no_short_day": "no short day",
    "days.heading": "Days on which more than a tenth of the water is missing",
    "days.none": "With {option} no day of {years} years is short of more than a tenth of its water.",
    "days.short": (
        "With {option} {short:.1f} days a year are short of more than a tenth of their water, at most {longest:.0f} in "
        "a row; the worst month is {month} with {in_month:.1f} such days; on a mean short day users miss {litres:,.0f} "
        "litres."
    ),
}
