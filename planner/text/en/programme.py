"""English of what several sites come to together."""

SENTENCES: dict[str, str] = {
    "programme.heading": "Sites side by side, the option ranked first at each",
    "programme.site": "Site",
    "programme.incomplete": "{mark} incomplete: something has no price; the sums of all sites lack it as well",
    "programme.priced": (
        "All {count} sites together: capital cost {capital_cost}, life-cycle cost (present value) {life_cycle_cost}, "
        "{water:,.1f} m3 of water a day."
    ),
    "programme.granted": "Grants pay {grant} of the capital cost.",
    "programme.per_person": "They serve {people:,.0f} people in the first year, at a capital cost of {cost} each.",
    "programme.per_person_granted": (
        "They serve {people:,.0f} people in the first year, at a capital cost of {cost} each, of which grants pay "
        "{grant}."
    ),
    "programme.technical": "All {count} sites together: {water:,.1f} m3 of water a day.",
    "programme.open": "Not to be built as they are, for the target is missed or a check fails: {sites}.",
    "programme.all_hold": "At each site the option ranked first meets the target and passes its checks.",
}
