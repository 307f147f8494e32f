"""Words of the checks of array and controller and of the AC side, and of what they share with those of cables."""

SENTENCES: dict[str, str] = {
    "unit.modules": "modules",
    "unit.phases": "phases",
    "unit.hours_per_year": "h/year",
    "unit.speed": "rpm",
    "source.controller": "the controller's datasheet",
    "source.plate": "the pump's nameplate",
    "source.plate_practice": "the pump's nameplate; common practice, no source",
    "source.plate_and_site": "the pump's nameplate; the site's data",
    "source.site": "the site's data",
    "source.practice": "common practice, no source",
    # what to look for where something was not given
    "check.look_for": "look for {things}",
    "check.asked.ac_volts": "'AC' or '~' with volts on the plate of pump or controller",
    "check.asked.grid_volts": "the voltage of the grid",
    "check.asked.generator_volts": "the voltage of the generator",
    "check.asked.phases": "'1~' or '3~' on the plate of pump or controller",
    "check.asked.grid_phases": "the phases of the grid",
    "check.asked.generator_phases": "the phases of the generator",
    "check.asked.hertz": "'Hz' on the plate of pump or controller",
    "check.asked.grid_hertz": "the frequency of the grid",
    "check.asked.generator_hertz": "the frequency of the generator",
    "check.supply.look_for_voltage": "look for the voltage of grid and generator",
    # modules in series
    "check.series.more.one": "one module more in series",
    "check.series.more.two": "two modules more in series",
    "check.series.more.three": "three modules more in series",
    "check.series.more.many": "{count} modules more in series",
    "check.series.less.one": "one module less in series",
    "check.series.less.two": "two modules less in series",
    "check.series.less.three": "three modules less in series",
    "check.series.less.many": "{count} modules less in series",
    "check.series.no_adding": (
        "no module may be added in series until the largest DC voltage of the controller is known"
    ),
    "check.series.not_even_one": (
        "not even one of these modules fits: it gives {one_v:.0f} V at rest in the cold, and {most_v:g} V are the most "
        "that is borne: a module of at most {rated_v} V open-circuit, or another controller"
    ),
    "check.series.window_too_narrow": (
        "no number of these modules fits: at least {fewest} for the {least_v:g} V needed at the hottest noon, at most "
        "{most} for the {most_v:g} V borne at rest in the cold: another controller or another module"
    ),
    "check.series.none_fits": "no number of modules in series fits: another controller or another module",
    "check.series.another": "another controller or another module",
    "check.string_open_circuit_voltage.compared": (
        "Open-circuit voltage of {modules} modules on the coldest morning ({coldest}), against the limit of controller "
        "or pump"
    ),
    "check.string_open_circuit_voltage.compared_working_known": (
        "Open-circuit voltage of {modules} modules on the coldest morning ({coldest}), against the limit of controller "
        "or pump; the highest working voltage is {highest_v:g} V"
    ),
    "check.string_open_circuit_voltage.compared_with_working": (
        "Open-circuit voltage of {modules} modules on the coldest morning ({coldest}), against the highest working "
        "voltage, as the controller's limit was not given"
    ),
    "check.string_open_circuit_voltage.why": (
        "Before the motor starts, the cold string stands at this voltage; above the limit it destroys the electronics."
    ),
    "check.string_open_circuit_voltage.look_for": (
        "look for 'max. input voltage', 'max. DC' or 'Voc max.' on the controller's plate; no module may be added in "
        "series until the largest DC voltage of the controller is known"
    ),
    "check.string_open_circuit_voltage.remedy_until_known": (
        "look for 'max. input voltage', 'max. DC' or 'Voc max.' on the controller's plate; until it is known, {remedy}"
    ),
    "check.string_open_circuit_voltage.source": (
        "the controller's datasheet or the plate; the voltage in the cold by IEC 62548"
    ),
    "check.module_system_voltage.compared": (
        "Open-circuit voltage of a string in the cold, against the module's system voltage"
    ),
    "check.module_system_voltage.why": (
        "Above it the module's own insulation may fail, and touch the frame with the array's voltage."
    ),
    "check.module_system_voltage.look_for": "look for 'max. system voltage' on the module's back",
    "check.module_system_voltage.source": "the module's datasheet; IEC 62548",
    "check.string_voltage_hot.compared": (
        "Working voltage of a string at the hottest noon ({hottest_c:.1f} deg C in the shade), against the "
        "controller's lowest"
    ),
    "check.string_voltage_hot.why": (
        "Below the controller's lowest voltage the pump loses power just when the sun is best, or stops."
    ),
    "check.string_voltage_cold.compared": (
        "Working voltage of a string on the coldest morning ({coldest_c:.1f} deg C), against the controller's highest"
    ),
    "check.string_voltage_cold.why": (
        "Above the controller's highest working voltage the array is held off its best point or cut off."
    ),
    "check.string_voltage.look_for": "look for the range of DC or MPP voltage in the controller's datasheet",
    "check.modules_in_series.compared": (
        "Modules in series, against the numbers that fit between the lowest voltage at noon and the limit in the cold"
    ),
    "check.modules_in_series.why": "Only these numbers are safe in the cold and still work in the heat.",
    "check.modules_in_series.look_for": ("look for the lowest and the largest DC voltage on the controller's plate"),
    "check.modules_in_series.source": "the controller's datasheet; IEC 62548",
    "check.modules_in_series.span": "{fewest} to {most}",
    "check.modules_in_series.no_span": "none",
    "check.modules_in_series.too_many.one": "one module too many",
    "check.modules_in_series.too_many.two": "two modules too many",
    "check.modules_in_series.too_many.three": "three modules too many",
    "check.modules_in_series.too_many.many": "{count} modules too many",
    "check.modules_in_series.too_few.one": "one module too few",
    "check.modules_in_series.too_few.two": "two modules too few",
    "check.modules_in_series.too_few.three": "three modules too few",
    "check.modules_in_series.too_few.many": "{count} modules too few",
    "check.window_hours.compared": (
        "Hours a year in which the controller's voltage window keeps the array off its best point; {percent:.1f} % of "
        "its energy is lost so"
    ),
    "check.window_hours.why": "In those hours power is lost that has been paid for.",
    "check.window_hours.source": (
        "hourly run of the first year; {hours:.0f} hours is common practice, no source, and so is the tenth of the "
        "energy beyond which it fails"
    ),
    # voltage, phases and frequency of grid and generator
    "check.connection.phase_and_neutral": "one phase and neutral ({volts:.0f} V)",
    "check.connection.two_phases": "two of the phases ({volts:.0f} V)",
    "check.supply_voltage.nominal": "{volts:.4g} V",
    "check.supply_voltage.variation": "variation {percent} %",
    "check.supply_voltage.drop": "{percent:.1f} % in the cable",
    "check.supply_voltage.drop_not_given": "drop in the cable not given and not counted",
    "check.grid_voltage.compared": (
        "Voltage of the grid at the controller, {low:.0f} to {high:.0f} V ({facts}), against {least:g} to {most:g} V"
    ),
    "check.generator_voltage.compared": (
        "Voltage of the generator at the controller, {low:.0f} to {high:.0f} V ({facts}), against {least:g} to "
        "{most:g} V"
    ),
    "check.grid_voltage.compared_not_given": "Voltage of the grid at the controller, against the plate's AC limits",
    "check.generator_voltage.compared_not_given": (
        "Voltage of the generator at the controller, against the plate's AC limits"
    ),
    "check.grid_voltage.source": "the pump's nameplate; variation of {percent} %: the site's data",
    "check.generator_voltage.source": "the pump's nameplate; variation of {percent} %: ISO 8528-5, from memory",
    "check.supply_voltage.why": (
        "With too little voltage the motor draws more current and stops; with too much its insulation suffers."
    ),
    "check.supply_voltage.remedy_low": (
        "a voltage stabiliser or a transformer, chosen and fitted by a licensed electrician, or a pump for less voltage"
    ),
    "check.supply_voltage.remedy_thicker_cable": (
        "a cross-section of {section_mm2:g} mm2 in the AC cable (not covered: earth-fault loop, short circuit and the "
        "protective device); or a voltage stabiliser or a transformer, chosen and fitted by a licensed electrician, or "
        "a pump for less voltage"
    ),
    "check.supply_voltage.remedy_shorter_cable": (
        "a shorter AC cable (not covered: earth-fault loop, short circuit and the protective device); or a voltage "
        "stabiliser or a transformer, chosen and fitted by a licensed electrician, or a pump for less voltage"
    ),
    "check.supply_voltage.remedy_high": (
        "a voltage stabiliser or a transformer, chosen and fitted by a licensed electrician, or a pump for more voltage"
    ),
    "check.grid_phases.compared": "Phases of the grid, against the plate's",
    "check.generator_phases.compared": "Phases of the generator, against the plate's",
    "check.supply_phases.why": "A three-phase motor does not start on one phase, and burns trying.",
    "check.supply_phases.why_one_of_three": (
        "A pump of one phase loads one phase of three, so that it can draw a third of the power."
    ),
    "check.grid_phases.remedy_connect_unknown": (
        "connect one phase and neutral, if voltage and utility allow it, by a licensed electrician"
    ),
    "check.grid_phases.remedy_connect.phase_and_neutral": (
        "connect one phase and neutral ({volts:.0f} V), if voltage and utility allow it, by a licensed electrician"
    ),
    "check.grid_phases.remedy_connect.two_phases": (
        "connect two of the phases ({volts:.0f} V), if voltage and utility allow it, by a licensed electrician"
    ),
    "check.generator_phases.remedy_connect_unknown": (
        "connect one phase and neutral, if voltage and the maker of the generator allow it, by a licensed electrician"
    ),
    "check.generator_phases.remedy_connect.phase_and_neutral": (
        "connect one phase and neutral ({volts:.0f} V), if voltage and the maker of the generator allow it, by a "
        "licensed electrician"
    ),
    "check.generator_phases.remedy_connect.two_phases": (
        "connect two of the phases ({volts:.0f} V), if voltage and the maker of the generator allow it, by a licensed "
        "electrician"
    ),
    "check.grid_phases.remedy_three": (
        "a grid of three phases, or a drive that takes {given} and gives three, by a licensed electrician"
    ),
    "check.generator_phases.remedy_three": (
        "a generator of three phases, or a drive that takes {given} and gives three, by a licensed electrician"
    ),
    "check.grid_frequency.compared": (
        "Frequency of the grid, against the plate's {wanted_hz:g} Hz, {percent:g} % either way"
    ),
    "check.generator_frequency.compared": (
        "Frequency of the generator, against the plate's {wanted_hz:g} Hz, {percent:g} % either way"
    ),
    "check.grid_frequency.compared_not_given": "Frequency of the grid, against the plate's",
    "check.generator_frequency.compared_not_given": "Frequency of the generator, against the plate's",
    "check.supply_frequency.why": (
        "Speed goes with frequency: with less the head falls by the square, with more the power rises by the cube."
    ),
    "check.supply_frequency.side.above": "{percent:.1f} % above the plate",
    "check.supply_frequency.side.below": "{percent:.1f} % below the plate",
    "check.supply_frequency.side.equal": "equal",
    "check.grid_frequency.remedy": "a grid of {wanted_hz:g} Hz, or a drive that makes its own frequency",
    "check.generator_frequency.remedy": "a generator of {wanted_hz:g} Hz, or a drive that makes its own frequency",
    "check.supply_frequency.source": "IEC 60034-1, zone A; zone B is a caution",
    "check.grid_power.compared": (
        "Power that the grid's connection gives, against what the controller takes with the motor at rated power"
    ),
    "check.grid_power.compared_one_phase": (
        "Power that the grid's connection gives on one of its phases, against what the controller takes with the motor "
        "at rated power"
    ),
    "check.grid_power.why": "A connection too small trips as soon as the pump runs at full speed.",
    "check.grid_power.remedy": (
        "a connection of at least {needed_w} W, if the utility grants it; its cable and protection then too"
    ),
    # size of the generator
    "check.generator.remedy": (
        "a generator rated at {rating_kw:g} kW or a little more, with its cable and protective device to match"
    ),
    "check.generator.remedy_nothing_left": (
        "no generator of this derating gives power here: look at altitude and derating again"
    ),
    "check.generator_running.compared": (
        "Generator ({rating_kw:g} kW, of which {percent:.0f} % are left at {altitude_m:.0f} m and {hottest_c:.0f} "
        "deg C), against what the controller takes at the rated power"
    ),
    "check.generator_running.compared_one_phase": (
        "Generator ({rating_kw:g} kW, of which {percent:.0f} % are left at {altitude_m:.0f} m and {hottest_c:.0f} "
        "deg C and on one of three phases), against what the controller takes at the rated power"
    ),
    "check.generator_running.why": "An overloaded generator slows down, stalls and burns its winding.",
    "check.generator_running.source": "rating by the user, derating as entered",
    "check.generator_starting.compared_soft": (
        "Generator as derated, against what starts the motor softly by a drive, {good:g} times the running need "
        "({least:g} at least)"
    ),
    "check.generator_starting.compared": (
        "Generator as derated, against what starts the motor direct on line with {kva} kVA (code letter {code}) and a "
        "dip of {good_dip:.0f} % ({least_kw} kW for {most_dip:.0f} %)"
    ),
    "check.generator_starting.compared_assumed": (
        "Generator as derated, against what starts the motor direct on line with {kva} kVA (code letter {code}, "
        "assumed) and a dip of {good_dip:.0f} % ({least_kw} kW for {most_dip:.0f} %)"
    ),
    "check.generator_starting.why": (
        "A generator that cannot start the motor lets its voltage collapse; the motor hums and heats."
    ),
    "check.generator_starting.source_direct": (
        "locked-rotor kVA by code letter, NEMA MG 1 (from memory); dip across the alternator's transient reactance; "
        "dip of {good_dip:.0f} %: ISO 8528-5, class G1 (from memory); {most_dip:.0f} % is common practice, no source"
    ),
    "check.generator_loading.compared": (
        "Load of the generator with the motor at rated power, against {low:.0f} to {high:.0f} % of its rating as "
        "derated"
    ),
    "check.generator_loading.why": (
        "A lightly loaded generator builds up carbon; one loaded above its prime rating for hours wears out early."
    ),
    "check.generator_loading.remedy_light": "{remedy}, or other loads beside the pump",
    "check.generator_loading.remedy_other_loads": (
        "other loads beside the pump: a smaller generator would not start it"
    ),
    "check.generator_loading.source": (
        "{low:.0f} %: NFPA 110 practice; {high:.0f} % mean load of prime power: ISO 8528-1"
    ),
}
