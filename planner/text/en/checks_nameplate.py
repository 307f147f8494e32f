"""Words of the nameplate's checks against the site."""

SENTENCES: dict[str, str] = {
    "check.rated_figures.compared": (
        "Power of the water at the rated duty ({hydraulic_kw:.2f} kW) as a share of the plate's {rated_w:g} W, against "
        "{low:g} to {high:g} %"
    ),
    "check.rated_figures.why": "A share outside the usual hints at a figure misread from the plate.",
    "check.rated_figures.remedy": ("read power, flow and head from the plate again; the rated ones, not the largest"),
    "check.rated_figures.source": "the pump's nameplate; the range is common practice, no source",
    "check.largest_flow.compared": (
        "Largest flow of the plate, against {times:g} times the rated flow of {rated:g} m3/h"
    ),
    "check.largest_flow.why": "A largest flow far above the rated one hints at a decimal point that is misplaced.",
    "check.largest_flow.remedy": "read both flows from the plate again",
    "check.largest_flow.source": "the pump's nameplate; the share is common practice, no source",
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
}
