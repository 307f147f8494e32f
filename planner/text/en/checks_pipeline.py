"""Words of the checks of head, pipeline and strings in parallel."""

SENTENCES: dict[str, str] = {
    # head
    "head_part.part": "{name} {head}",
    "head_part.static": "static water level, mean of the year",
    "head_part.deepest": "lower in the deepest month",
    "head_part.drawdown": "drawdown",
    "head_part.rise": "rise to the tank inlet",
    "head_part.friction": "friction in {segment}",
    "head_part.fittings": "fittings",
    "head_part.residual": "residual head at the inlet",
    "head_part.high_point": "to clear the high point of the route",
    "check.lift.compared": "Head needed before any water flows in {month}, against the pump's head with no flow",
    "check.lift.why": "Below this head not a drop reaches the tank.",
    "check.lift.source": "the pump's nameplate (largest head)",
    "check.rated_head.compared": (
        "Head of the pump at the rated flow {flow} m3/h, against the head needed there in {month} [m]: {parts}"
    ),
    "check.rated_head.compared_yield": (
        "Head of the pump at {share} % of the borehole's safe yield, as the rated flow is more, {flow} m3/h, against "
        "the head needed there in {month} [m]: {parts}"
    ),
    "check.rated_head.why": (
        "A pump works best near its rated head; short of it the flow falls away, far above it power is wasted."
    ),
    "check.rated_head.remedy_short": (
        "plan on the smaller flow of the duty point, or a pump rated at about {head} m at {flow} m3/h (about {power} "
        "kW if {share} % of it reach the water)"
    ),
    "check.rated_head.remedy_over": (
        "a pump rated at about {head} m at {flow} m3/h (about {power} kW if {share} % of it reach the water); this one "
        "must be held down in speed"
    ),
    "check.rated_head.source": (
        "computed from the site's data; more than a tenth short fails, more than a third above is a caution: common "
        "practice, no source"
    ),
    "check.power_limit.compared": "The controller's largest output against what the pump takes at {flow} m3/h",
    "check.power_limit.why": (
        "With less power the pump stays below its flow, and with much less no water arrives at all."
    ),
    "check.power_limit.remedy": "a controller of at least {power} W that suits the motor",
    "check.power_limit.source": "the controller's datasheet; so little that no water arrives fails",
    "check.duty_flow.compared": (
        "Duty in {month}, {flow} m3/h at {head} m ({limited}), against {low} to {high} % of the rated {rated} m3/h"
    ),
    "check.duty_flow.why": (
        "Far from its rated duty a pump wastes power and wears; plan on the rated flow, not on the largest."
    ),
    "check.duty_flow.source": "the pump's nameplate (rated flow); the range is common practice, no source",
    "check.speed.compared": "Speed needed for {flow} m3/h, against the pump's lowest speed",
    "check.speed.why": (
        "Below its lowest speed the pump cannot be slowed; a valve must then destroy the head that is too much."
    ),
    "check.speed.source": "the pump's nameplate (speed range)",
    "check.wire_to_water.compared": (
        "Wire-to-water efficiency at the duty, against {share} % of that at the rated duty ({rated} %)"
    ),
    "check.wire_to_water.why": (
        "Every point lost here is paid for in PV modules, energy or fuel through the whole life."
    ),
    "check.wire_to_water.source": "the pump's nameplate (rated duty); the share is common practice, no source",
    "check.hours_a_day.compared": (
        "Hours a day at {flow} in the busiest month: {first} in the first year, {last} at most"
    ),
    "check.hours_a_day.why": (
        "A pump that must run day and night has no reserve, and the borehole no time to recover."
    ),
    "check.hours_a_day.remedy": "a flow of at least {flow} m3/h, or less demand in the late years",
    "check.hours_a_day.remedy_less": (
        "less demand, or a second borehole or source: {flow} m3/h, which would do, is above the borehole's safe yield "
        "of {safe} m3/h"
    ),
    "check.hours_a_day.source": ("20 hours a day is common practice, no source; more than 24 in the first year fails"),
    "check.pipe_length.compared": "Length of all pipe, against the pump's depth and the way to the tank",
    "check.pipe_length.why": "Pipe that is not counted is friction that is not counted.",
    "check.pipe_length.remedy": "add {length} m to the lengths of pipe",
    "check.pipe_length.source": "the site's data",
    "check.velocity.compared": "Velocity at {flow} [m/s]: {segments}; against {slowest} to {fastest} m/s",
    "check.velocity.segment": "{segment} {velocity}",
    "check.velocity.why": "Fast water costs head and makes surges; slow water lets sand and air settle.",
    "check.velocity.remedy_size": "for {segment} the next pipe size, {pipe}",
    "check.velocity.remedy_diameter": "for {segment} an inside diameter of at least {diameter} mm",
    "check.velocity.remedy_slow": (
        "nothing, where the friction must be low; else {segment} of at most {diameter} mm inside diameter"
    ),
    "check.velocity.source": ("EN 805:2000 annex A, from memory; 3 m/s: Crane TP-410, general service, from memory"),
    # pipeline
    "check.pressure_at_duty.compared": (
        "Highest pressure at {flow}, against the pressure that the pipe withstands at {temperature} deg C; least "
        "margin in {segment}"
    ),
    "check.pressure_at_duty.compared_open": "Highest pressure at {flow}, in {segment}",
    "check.pressure_at_duty.why": "A pipe under more than its class bursts or creeps to an early end.",
    "check.pressure_at_duty.remedy": "{pipes}",
    "check.pressure_at_shut_off.compared": (
        "Highest pressure if a valve is closed against the running pump, against the pressure that the pipe withstands "
        "at {temperature} deg C; least margin in {segment}"
    ),
    "check.pressure_at_shut_off.compared_open": (
        "Highest pressure if a valve is closed against the running pump, in {segment}"
    ),
    "check.pressure_at_shut_off.why": (
        "A valve closed by mistake, or a float valve, puts the pump's largest head on the pipe."
    ),
    "check.pressure_at_shut_off.remedy": (
        "{pipes}; or a pressure switch or relief valve, and no valve that can close against the running pump"
    ),
    "check.pipe_class.look_for": "look for 'PN' or bar printed along the pipe of {segments}",
    "check.pipe_class.source": "pressure class of the pipe, derated for warm water: {sources}",
    "check.pipe_class.remedy_named": "{segment}: {pipe} (PN {pressure})",
    "check.pipe_class.remedy_class": "{segment}: pipe, joints and fittings of at least PN {pressure}",
    "check.pipe_class.remedy_material": ("{segment}: {material} pipe, as {given} has no class in water this hot"),
    "check.pipe_class.remedy_cooler": "{segment}: cooler water, as {given} has no class in water this hot",
    "check.surge.compared": (
        "Highest pressure when the flow stops at once, or a pipe's valve slams: a rise of {rise} m in {segment} (wave "
        "{speed} m/s)"
    ),
    "check.surge.compared_timed": (
        "Highest pressure when the flow stops in {stop} s: a rise of {rise} m in {segment} (wave {speed} m/s)"
    ),
    "check.surge.compared_open": (
        "Highest pressure when the flow stops at once, or a pipe's valve slams, in {segments}"
    ),
    "check.surge.compared_open_timed": "Highest pressure when the flow stops in {stop} s, in {segments}",
    "check.surge.why": (
        "A power cut stops the water at once; the wave bursts pipes and tears joints, and sucks as hard as it presses."
    ),
    "check.surge.look_for": "look for the wall (or SDR) and the class (PN) printed along the pipe",
    "check.surge.remedy": (
        "let the flow stop in no less than {seconds} s, in a power cut too (slow valve, soft stop, an air vessel for "
        "power cuts), or wider pipe"
    ),
    "check.surge.remedy_class": "pipe of a higher class, or slower water in a wider pipe",
    "check.surge.source_open": (
        "Joukowsky 1898 with the wave speed of the pipe (Korteweg), without friction; pressure class of the pipe, "
        "derated for warm water: {sources}"
    ),
    "check.surge.source": (
        "Joukowsky 1898 with the wave speed of the pipe (Korteweg), without friction; pressure class of the pipe, "
        "derated for warm water: {sources}; up to {times} times the class is a caution, as the estimate is an upper "
        "bound: common practice, no source"
    ),
    "check.high_points.compared_open": "High points of the route, and the pressure there",
    "check.high_points.compared": (
        "Lowest pressure head along the route with the pump at rest; high points between the ends: {count}"
    ),
    "check.high_points.why": (
        "Air gathers at a high point and chokes the flow; a pressure below that of the air draws in dirt."
    ),
    "check.high_points.look_for": (
        "walk the route with a level or a satellite receiver, and note chainage and ground level"
    ),
    "check.high_points.remedy": "an air valve at chainage {places} m",
    "check.high_points.remedy_below": (
        "an air valve at chainage {places} m; or lay the pipe lower there, or raise the tank"
    ),
    "check.high_points.source": "the route's profile; air valves at high points are common practice, no source",
    "check.profile_length.compared": (
        "Pipe beyond the borehole ({laid} m) and the profile ({chainage} m): their difference"
    ),
    "check.profile_length.why": ("If the two differ, friction and pressures are worked out for another route."),
    "check.profile_length.remedy": "give the profile to the tank, and segments of the same length",
    "check.profile_length.source": "the site's data; {share} % is common practice, no source",
    # strings in parallel
    "check.strings.remedy": "no more than {count} string(s)",
    "check.array_current.compared": (
        "Current of {count} string(s), 1.25 times the short-circuit current, against the controller's largest"
    ),
    "check.array_current.compared_open": (
        "Current of {count} string(s), which would suit (the number is open), 1.25 times the short-circuit current, "
        "against the controller's largest"
    ),
    "check.array_current.why": (
        "Bright cloud edges give more than the rated current; inputs and fuses must withstand it."
    ),
    "check.array_current.look_for": "look for 'max. input current' or 'Isc max.' on the controller's plate",
    "check.array_current.remedy_controller": "another controller, or a module of less current",
    "check.array_current.source": "the controller's datasheet; 1.25 times by IEC 62548",
    "check.string_over_current.compared": (
        "Current that the others of {count} string(s) drive into a faulty one, against the module's series fuse"
    ),
    "check.string_over_current.compared_open": (
        "Current that the others of {count} string(s), which would suit (the number is open), drive into a faulty one, "
        "against the module's series fuse"
    ),
    "check.string_over_current.compared_few": (
        "Current that the others of {count} string(s) drive into a faulty one, against the module's series fuse, which "
        "one or two strings do not reach"
    ),
    "check.string_over_current.compared_few_open": (
        "Current that the others of {count} string(s), which would suit (the number is open), drive into a faulty one, "
        "against the module's series fuse, which one or two strings do not reach"
    ),
    "check.string_over_current.compared_fuse": (
        "Fuse in each string, against {least} A and at most {most} A for this module"
    ),
    "check.string_over_current.why": (
        "A short circuit in one string draws the current of all others, which can set its modules and cable alight."
    ),
    "check.string_over_current.look_for": "look for 'max. series fuse' on the module's back",
    "check.string_over_current.remedy": (
        "a gPV fuse (IEC 60269-6) of {rating:g} A, for at least {volts} V DC, in both poles of each string; not "
        "covered: the cable of a string, which must withstand the fuse's rating"
    ),
    "check.string_over_current.remedy_fewer": ("no more than {count} string(s) and no fuse: no usual rating suits"),
    "check.string_over_current.source": (
        "the module's datasheet; IEC 62548 (fuse of 1.5 to 2.4 times the short-circuit current, from memory)"
    ),
    "check.power_ratio.compared": (
        "Rated power of {count} string(s) over what the pump takes, against {low} to {high}"
    ),
    "check.power_ratio.compared_open": (
        "Rated power of {count} string(s) (the number is open; 1 to {largest} may be tried) over what the pump takes, "
        "against {low} to {high}"
    ),
    "check.power_ratio.why": (
        "A small array seldom brings the pump to full speed; a large one gives power that nothing can use."
    ),
    "check.power_ratio.remedy": "{count} string(s)",
    "check.power_ratio.remedy_nearest": "{count} string(s), the nearest there is",
    "check.power_ratio.remedy_least": (
        "fewer modules in series where the voltages allow it, or a smaller module: one string is the least"
    ),
    "check.power_ratio.source": "common practice, no source",
}
