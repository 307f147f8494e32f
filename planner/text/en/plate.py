"""Words of the nameplate line by line, and of the first finding: whether the pump fits the site."""

SENTENCES: dict[str, str] = {
    "plate.not_given": "not given",
    "plate.printed.range": "{low:g} to {high:g} {unit}",
    "plate.rated_flow.symbol": "Q, Qn",
    "plate.rated_flow.meaning": "flow at the rated head: the one to plan on",
    "plate.rated_flow.asks": "at most {limit}, the borehole's safe yield",
    "plate.rated_head.symbol": "H, Hn",
    "plate.rated_head.meaning": "head at the rated flow: the one to plan on",
    "plate.rated_head.asks": "{limit} at {flow} m3/h",
    "plate.largest_flow.symbol": "Qmax",
    "plate.largest_flow.meaning": "flow at no head: never to plan on",
    "plate.largest_head.symbol": "Hmax",
    "plate.largest_head.meaning": "head at no flow: never to plan on, but the pipe must bear it",
    "plate.largest_head.asks": "more than {value} before any water flows",
    "plate.rated_power.symbol": "P, P1",
    "plate.rated_power.meaning": "what the motor takes at the rated duty; {percent:.0f} % of it reach the water",
    "plate.rated_power.asks": "{value} at the flow it gives here",
    "plate.dc_supply.symbol": "U DC, PV, Voc",
    "plate.dc_supply.meaning": "the array's voltage must stay within these limits",
    "plate.dc_supply.asks": (
        "{hot:.0f} to {cold:.0f} V at work, {open:.0f} V at rest in the cold, {count} modules in series"
    ),
    "plate.dc_supply.look_for": "look for 'DC', 'PV' or 'Voc' with volts",
    "plate.ac_supply.symbol": "U AC, ~",
    "plate.ac_supply.meaning": "the voltage of grid or generator must stay within",
    "plate.ac_supply.look_for": "look for 'AC' or '~' with volts",
    "plate.phases.symbol": "1~, 3~, ph",
    "plate.phases.meaning": "phases of the AC supply",
    "plate.phases.look_for": "look for '1~' or '3~'",
    "plate.frequency.symbol": "f, Hz",
    "plate.frequency.meaning": "an AC motor turns in step with it: fewer hertz, less speed, much less head",
    "plate.frequency.look_for": "look for 'Hz'",
    "plate.current.symbol": "I, Imax, A",
    "plate.current.meaning": "the most that it may take",
    "plate.current.asks": "{value} at the rated power",
    "plate.current.look_for": "look for 'A' or 'Amp'",
    "plate.speed.symbol": "n, rpm, 1/min",
    "plate.speed.meaning": "flow goes with the speed, head with its square",
    "plate.speed.asks": "turns slowly under a weak sun",
    "plate.speed.look_for": "look for 'rpm' or '1/min'",
    "plate.frame.symbol": 'inch, "',
    "plate.frame.meaning": "size class of the motor; does not go into a casing under {millimetres:.0f} mm",
    "plate.frame.asks": "goes into a casing of {value}",
    "plate.frame.asks_open": "casing not given",
    "plate.frame.look_for": "look for the size in inches",
    "plate.insulation.symbol": "Ins. Cl.",
    "plate.insulation.meaning": "the winding stands {limit_c} deg C (IEC 60085)",
    "plate.insulation.asks": "water of {water_c:g} deg C",
    "plate.insulation.look_for": "look for 'Ins. Cl.' and a letter",
    "plate.ingress.symbol": "IP",
    "plate.ingress.meaning": "{solids}; {water} (IEC 60529)",
    "plate.ingress.asks": "hangs under water for good",
    "plate.ingress.look_for": "look for 'IP' and two digits",
    "plate.liquid.symbol": "t max",
    "plate.liquid.meaning": "warmer water is outside its duty",
    "plate.liquid.asks": "water of {water_c:g} deg C",
    "plate.liquid.look_for": "look for 'max. liquid temp.'",
    "plate.submergence.symbol": "min. submergence",
    "plate.submergence.meaning": "water that must stand above the intake",
    "plate.submergence.asks": "{value} stand above it",
    "plate.submergence.look_for": "look for 'min. submergence', often in the manual only",
    "plate.asked_by": "{value} from {source}",
    "plate.holds.pass": "holds",
    "plate.holds.caution": "caution",
    "plate.holds.fail": "fails",
    "plate.holds.not given": "not given",
    "plate.holds.open": "-",
    "plate.heading": "The plate, line by line",
    "plate.column.symbol": "On the plate",
    "plate.column.printed": "Printed",
    "plate.column.meaning": "What it means",
    "plate.column.asks": "What this site asks",
    "plate.column.holds": "Here",
    "plate.solids.0": "no protection against solids",
    "plate.solids.1": "keeps out bodies over 50 mm, such as the back of a hand",
    "plate.solids.2": "keeps out bodies of 12.5 mm and more, such as a finger",
    "plate.solids.3": "keeps out bodies of 2.5 mm and more, such as a tool",
    "plate.solids.4": "keeps out bodies of 1 mm and more, such as a wire",
    "plate.solids.5": "dust-protected",
    "plate.solids.6": "dust-tight",
    "plate.solids.X": "solids not stated",
    "plate.water.0": "no protection against water",
    "plate.water.1": "against drops that fall straight down",
    "plate.water.2": "against drops, tilted up to 15 degrees",
    "plate.water.3": "against spray up to 60 degrees from the vertical",
    "plate.water.4": "against splashes from all sides",
    "plate.water.5": "against jets",
    "plate.water.6": "against powerful jets",
    "plate.water.7": "stands immersion for a time",
    "plate.water.8": "stands continuous immersion, on terms that the maker states",
    "plate.water.9": "against hot jets of high pressure, which says nothing of immersion",
    "plate.water.X": "water not stated",
    # whether the pump fits
    "finding.contradiction": "The figures of this plate contradict one another: {fault}.",
    "finding.cannot_lift": (
        "This pump cannot lift the water here: it reaches {most} m at most, with no flow, and the site takes {lift} m "
        "before any water flows."
    ),
    "finding.too_weak": "This pump is too weak: at {flow} m3/h it reaches {given} m, the site takes {needed} m.",
    "finding.cannot_draw": (
        "This pump gives no water here: the water at rest stands {level:.1f} m deep, and does not cover the intake at "
        "{depth:g} m."
    ),
    "finding.cannot_start": (
        "This pump gives no water here: the {limit:g} W that the controller may give it do not bring the water up."
    ),
    "finding.short": (
        "This pump is a little short: at {flow} m3/h it reaches {given} m, the site takes {needed} m; it settles at "
        "{duty} m3/h."
    ),
    "finding.over_yield": (
        "This pump is made for more than the borehole may give: {rated} m3/h rated, {safe} m3/h safe yield."
    ),
    "finding.over": (
        "This pump lifts {times} what the site needs: at {flow} m3/h it could reach {given} m ({most} m with no flow), "
        "the site takes {needed} m."
    ),
    "finding.times": "{times} times",
    "finding.twice": "twice",
    "finding.fits": "This pump fits: at {flow} m3/h it reaches {given} m, the site takes {needed} m.",
    "finding.would_fit": (
        "What would fit: a pump rated at about {head} m at {flow} m3/h, with a motor that takes about {power} kW if "
        "{share} % of it reach the water."
    ),
}
