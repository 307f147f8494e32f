"""Words of the checks of cables."""

SENTENCES: dict[str, str] = {
    "check.dc_cable.compared": ("Cable from the array to the controller: voltage drop and current-carrying capacity"),
    "check.ac_cable.compared": (
        "Cable from grid or generator to the controller: voltage drop and current-carrying capacity"
    ),
    "check.drop_cable.compared": (
        "Cable from the controller down to the motor: voltage drop and current-carrying capacity"
    ),
    "check.dc_cable.look_for": (
        "measure the run from the array to the controller and look for the cross-section (mm2) printed on the cable; "
        "enter both for the array cable"
    ),
    "check.ac_cable.look_for": (
        "measure the run from grid or generator to the controller and look for the cross-section (mm2) printed on the "
        "cable; enter both for the AC cable"
    ),
    "check.drop_cable.look_for": (
        "measure the run from the controller down to the motor and look for the cross-section (mm2) printed on the "
        "cable; enter both for the drop cable"
    ),
    "check.cable.source": "IEC 60364-5-52 annex G, other uses than lighting on a public network",
    "check.cable.array": "Array cable with {strings} string(s)",
    "check.cable.array_open": "Array cable with {strings} string(s), which would suit (the number is open)",
    "check.cable.grid": "AC cable on the grid",
    "check.cable.generator": "AC cable on the generator",
    "check.cable.drop": "Drop cable",
    "check.cable_drop.compared": (
        "{cable}, {length_m:g} m of {section_mm2:g} mm2 ({ohm:.3f} ohm at {conductor_c:g} deg C): voltage lost at "
        "{current_a} A and {voltage_v} V"
    ),
    "check.cable_drop.why": "Voltage lost in the cable is power lost for life, and too little of it stops the motor.",
    "check.cable_drop.source": "common practice, no source; resistance by IEC 60228",
    "check.ac_cable_drop.source": (
        "IEC 60364-5-52 annex G, other uses than lighting on a public network; resistance by IEC 60228"
    ),
    "check.cable_ampacity.compared": (
        "{cable}, {section_mm2:g} mm2 laid as {installation} at {ambient_c:.0f} deg C: current-carrying capacity, "
        "against the current to design for"
    ),
    "check.cable_ampacity.compared_grouped": (
        "{cable}, {section_mm2:g} mm2 laid as {installation} at {ambient_c:.0f} deg C, {circuits} circuits together "
        "(factor {factor:g}): current-carrying capacity, against the current to design for"
    ),
    "check.cable_ampacity.why": "A cable that carries more than its capacity overheats and can start a fire.",
    "check.cable_ampacity.source": "IEC 60364-5-52, PVC, with the factors for ambient temperature and grouping",
    "check.cable_ampacity.source_datasheet": "the cable's datasheet",
    "check.cable.remedy": (
        "a cross-section of {section_mm2:g} mm2, the smallest that passes voltage drop and current-carrying capacity "
        "with PVC, laid by itself as {installation} at {ambient_c:.0f} deg C; not covered: {not_covered}"
    ),
    "check.cable.remedy_grouped": (
        "a cross-section of {section_mm2:g} mm2, the smallest that passes voltage drop and current-carrying capacity "
        "with PVC, laid with {circuits} circuits together as {installation} at {ambient_c:.0f} deg C; not covered: "
        "{not_covered}"
    ),
    "check.cable.remedy_none": (
        "a shorter run, or another cable laid out by a licensed electrician: no cross-section up to 50 mm2 suffices"
    ),
    "check.cable.not_covered.faults": "earth-fault loop and short circuit",
    "check.cable.not_covered.device": "the protective device",
    "check.cable.not_covered.outdoors": "insulation for DC, sun and weather",
    "check.cable.not_covered.ground": "depth, ducts and dryness of the ground",
    "check.cable.not_covered.ground_grouping": "the ground's own factor for grouping",
    "check.ac_cable_protection.compared": (
        "Protective device of the AC cable, {device}, against the {carried_a} A that the cable is to carry and the "
        "{most_a} A that protect it"
    ),
    "check.drop_cable_protection.compared": (
        "Protective device of the drop cable, {device}, against the {carried_a} A that the cable is to carry and the "
        "{most_a} A that protect it"
    ),
    "check.ac_cable_protection.compared_not_given": "Protective device of the AC cable",
    "check.cable_protection.why": (
        "A device too small trips the pump; one too large lets the cable burn before it trips."
    ),
    "check.cable_protection.look_for": (
        "look for the rated current on the circuit breaker or fuse before the cable; it is to be at least "
        "{carried_a} A and at most {most_a} A"
    ),
    "check.cable_protection.device.breaker": "a breaker of {rating_a:g} A",
    "check.cable_protection.device.fuse": "a gG fuse of {rating_a:g} A",
    "check.cable_protection.remedy": (
        "{device}, with the motor's own overload protection beside it; not covered: earth-fault loop and short circuit"
    ),
    "check.cable_protection.remedy_and_cable": (
        "{device}, with the motor's own overload protection beside it, and {remedy}"
    ),
    "check.cable_protection.remedy_none": (
        "a device for more current than those of usual size, chosen by a licensed electrician"
    ),
    "check.cable_protection.source": "IEC 60364-4-43:2008, 433.1: Ib <= In <= Iz and I2 <= 1.45 Iz",
    "check.dc_cable_voltage.compared": (
        "Open-circuit voltage of a string in the cold, against the DC voltage for which the array cable is made"
    ),
    "check.dc_cable_voltage.why": (
        "Insulation that is not made for the voltage fails, and an arc of DC does not go out by itself."
    ),
    "check.dc_cable_voltage.look_for": "look for the DC voltage printed on the cable, such as 'DC 1500 V'",
    "check.dc_cable_voltage.remedy": "a cable made for PV (EN 50618 or IEC 62930, 1,500 V DC)",
    "check.dc_cable_voltage.source": "IEC 62548; cable for PV is made for 1,500 V DC (EN 50618, IEC 62930)",
    "check.dc_cable_outdoor.compared": "Array cable, against sun and weather",
    "check.dc_cable_outdoor.made_for_it": "made for it",
    "check.dc_cable_outdoor.not_made_for_it": "not made for it",
    "check.dc_cable_outdoor.why": (
        "Insulation that sun and rain wear out leaks to earth within years, and shocks or burns."
    ),
    "check.dc_cable_outdoor.look_for": "look for 'EN 50618', 'IEC 62930' or 'H1Z2Z2-K' printed on the cable",
    "check.dc_cable_outdoor.remedy": (
        "a cable made for PV (EN 50618 or IEC 62930), or conduit that stands the sun over all its length"
    ),
    "check.dc_cable_outdoor.source": "IEC 62548; EN 50618, IEC 62930",
    "check.drop_cable_length.compared": "Length of the drop cable, against the pump's depth",
    "check.drop_cable_length.why": "A joint under water is the first thing to fail.",
    "check.drop_cable_length.remedy": "a drop cable of at least {length_m} m in one piece",
}
