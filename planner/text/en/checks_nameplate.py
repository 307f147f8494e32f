"""Words of the nameplate: its checks against the site, and its lines in plain words."""

SENTENCES: dict[str, str] = {
    "check.rated_figures.compared": (
        "Power of the water at the rated duty ({hydraulic_kw:.2f} kW) as a share of the plate's {rated_w:g} W, against "
        "{low:g} to {high:g} %"
    ),
    "check.rated_figures.why": "A share outside the usual hints at a figure misread from the plate.",
    "check.rated_figures.remedy": ("read power, flow and head from the plate again; the rated ones, not the largest"),
    "check.rated_figures.source": "the pump's nameplate; the range is common practice, no source",
    "check.motor_power.compared": ("Power that the motor takes at {flow}, against its rated power and {percent:.0f} %"),
    "check.motor_power.compared_unlimited": (
        "Power that the motor takes at {flow_m3h:.2f} m3/h, if nothing limits its power, against its rated power and "
        "{percent:.0f} %"
    ),
    "check.motor_power.why": "A motor that takes more than its rating overheats.",
    "check.motor_power.remedy_drive": (
        "a drive set to give at most {most_w} W, as the hourly run takes it, or {remedy}"
    ),
    "check.motor_power.source": (
        "the pump's nameplate; {percent:.0f} % is common practice, no source, up to {service_percent:.0f} % is a "
        "caution (service factor, NEMA MG 1), as is what a drive can limit"
    ),
    "check.current.compared": "Current at the rated power ({currents}), against the plate's largest",
    "check.current.compared_unknown": (
        "Current at the rated power (no supply voltage is known), against the plate's largest"
    ),
    "check.current.from.array": "{amperes:.1f} A from the array",
    "check.current.from.grid": "{amperes:.1f} A from the grid",
    "check.current.from.generator": "{amperes:.1f} A from the generator",
    "check.current.why": "More current than the plate allows trips the controller or burns the winding.",
    "check.current.look_for": "look for 'A' or 'Amp' on the plate",
    "check.current.remedy.array": (
        "read the current on the plate again, or a pump that is made for {amperes} A from the array"
    ),
    "check.current.remedy.grid": (
        "read the current on the plate again, or a pump that is made for {amperes} A from the grid"
    ),
    "check.current.remedy.generator": (
        "read the current on the plate again, or a pump that is made for {amperes} A from the generator"
    ),
    "check.current.remedy_or_series": "{series}; or {remedy}",
    "check.current.remedy_or_volts": "a supply of at least {volts} V, within the plate's limits; or {remedy}",
    "check.speed_range.compared": (
        "Speed range of the motor, against what a varying source asks: {low:g} to {high:g} rpm, the lowest as a share "
        "of the highest"
    ),
    "check.speed_range.compared_not_given": "Speed range of the motor, against what a varying source asks",
    "check.speed_range.why": ("The sun's power varies; only a motor that can turn slowly makes use of a weak one."),
    "check.speed_range.look_for": "look for 'rpm' or '1/min' on the plate",
    "check.speed_range.remedy": "choose a variable-speed motor",
    "check.speed_range.source": (
        "the pump's nameplate; a variable-speed motor on a varying source is common practice, no source"
    ),
    "check.frame.compared": "Casing, against the frame of the motor: {inches:g} inches are {millimetres:.0f} mm",
    "check.frame.compared_not_given": "Casing, against the frame of the motor",
    "check.frame.why": "A motor does not go into a casing smaller than its frame.",
    "check.frame.look_for_frame": "look for the frame in inches on the plate",
    "check.frame.look_for_casing": "look for the casing's inside diameter in the driller's log",
    "check.frame.remedy": "a pump with a frame of at most {inches:g} inches",
    "check.insulation.compared": (
        "Class {letter} stands {limit_c} deg C: room above water of {water_c:g} deg C, against that above "
        "{coolant_c:g} deg C"
    ),
    "check.insulation.compared_not_given": "Insulation class, against the water's temperature",
    "check.insulation.why": (
        "The winding may warm up only as far as its insulation stands; hot water takes that room away."
    ),
    "check.insulation.look_for": "look for 'Ins. Cl.' and a letter on the plate",
    "check.insulation.remedy": "a motor of a higher class, or one that its maker rates for this water",
    "check.insulation.source": ("IEC 60085 (temperature of the class), IEC 60034-1 (coolant of {coolant_c:g} deg C)"),
    "check.ingress_protection.compared": "{code}: {meaning}; against a motor that hangs in water",
    "check.ingress_protection.compared_not_given": "Ingress protection of a motor that hangs in water",
    "check.ingress_protection.why": "A motor that lives under water must stand it for good.",
    "check.ingress_protection.look_for": "look for 'IP' and two digits on the plate; the second should be 8",
    "check.ingress_protection.remedy": "a submersible motor of IP68, or the maker's word on immersion",
    "check.ingress_protection.source": "IEC 60529",
    "check.water_temperature.compared": "Temperature of the water, against what the plate allows",
    "check.water_temperature.why": (
        "Water warmer than the plate allows is outside the motor's duty: it cools too little and shortens its life."
    ),
    "check.water_temperature.look_for": "look for 'max. liquid temp.' on the plate",
    "check.water_temperature.remedy": "a motor rated for water of at least {water_c:g} deg C",
    "check.plate_window.why": "Outside its voltage limits it switches off, or is destroyed.",
    "check.dc_window.compared": (
        "Working voltage of a string, {hot:.0f} V at the hottest noon to {cold:.0f} V in the cold, against {low:g} to "
        "{high:g} V"
    ),
    "check.dc_window.compared_not_given": (
        "Working voltage of a string, {hot:.0f} V at the hottest noon to {cold:.0f} V in the cold, against the plate's "
        "DC limits"
    ),
    "check.dc_window.span": "{hot:.0f} to {cold:.0f}",
    "check.dc_window.look_for": (
        "look for 'DC', 'PV' or 'Voc' with volts on the plate, unless the controller alone sees the array"
    ),
    "check.ac_window.compared": "Nominal voltage of the supplies ({volts}), against {low:g} to {high:g} V",
    "check.ac_window.compared_not_given": ("Nominal voltage of the supplies ({volts}), against the plate's AC limits"),
    "check.ac_window.compared_none_given": (
        "Nominal voltage of the supplies (not given), against the plate's AC limits"
    ),
    "check.ac_window.look_for": "look for 'AC' or '~' with volts on the plate",
    "check.ac_window.remedy": (
        "a transformer, chosen and fitted by a licensed electrician, or a pump for this voltage"
    ),
    # the nameplate in plain words
    "plate.not_given": "not given",
    "plate.printed.duty": "{flow_m3h:g} m3/h, {head_m:g} m",
    "plate.printed.volts": "{low:g} to {high:g} V",
    "plate.printed.speed": "{low:g} to {high:g} rpm",
    "plate.rated_duty.item": "Rated flow and head",
    "plate.rated_duty.meaning": "the duty to plan on",
    "plate.largest.item": "Largest flow and head",
    "plate.largest.meaning": "the ends of the curve, never both at once and never to plan on",
    "plate.rated_power.item": "Rated power",
    "plate.rated_power.meaning": (
        "what the motor takes; the water gets {hydraulic_kw:.2f} kW of it at the rated duty, {percent:.0f} %"
    ),
    "plate.dc_supply.item": "DC supply",
    "plate.dc_supply.meaning": "the array's voltage must stay within these limits",
    "plate.dc_supply.look_for": "look for 'DC', 'PV' or 'Voc' with volts",
    "plate.ac_supply.item": "AC supply",
    "plate.ac_supply.meaning": "the voltage of grid or generator must stay within",
    "plate.ac_supply.look_for": "look for 'AC' or '~' with volts",
    "plate.phases.item": "Phases",
    "plate.phases.meaning": "phases of the AC supply",
    "plate.phases.look_for": "look for '1~' or '3~'",
    "plate.frequency.item": "Frequency",
    "plate.frequency.meaning": "an AC motor turns in step with it: fewer hertz, less speed, much less head",
    "plate.frequency.look_for": "look for 'Hz'",
    "plate.current.item": "Current",
    "plate.current.meaning": "the most that it may take",
    "plate.current.look_for": "look for 'A' or 'Amp'",
    "plate.speed.item": "Speed",
    "plate.speed.meaning": "flow goes with the speed, head with its square",
    "plate.speed.look_for": "look for 'rpm' or '1/min'",
    "plate.frame.item": "Frame",
    "plate.frame.meaning": "size class of the motor; does not go into a casing under {millimetres:.0f} mm",
    "plate.frame.look_for": "look for the size in inches",
    "plate.insulation.item": "Insulation class",
    "plate.insulation.meaning": "the winding stands {limit_c} deg C (IEC 60085)",
    "plate.insulation.look_for": "look for 'Ins. Cl.' and a letter",
    "plate.ingress.item": "Ingress protection",
    "plate.ingress.meaning": "{solids}; {water} (IEC 60529)",
    "plate.ingress.look_for": "look for 'IP' and two digits",
    "plate.liquid.item": "Liquid temperature",
    "plate.liquid.meaning": "warmer water is outside its duty",
    "plate.liquid.look_for": "look for 'max. liquid temp.'",
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
}
