"""Words of the cautions: of the work itself, and of the limits of a study's numbers."""

SENTENCES: dict[str, str] = {
    "caution.local": "Local codes and licensed practice come first.",
    "caution.with_local": "{caution} Local codes and licensed practice come first.",
    "caution.where_listed": (
        "Local codes and licensed practice come first. Read the cautions before anything is built, opened or drunk: "
        "'planner run' writes those that apply to the site on the sheet 'Method and cautions'."
    ),
    # of the work itself
    "caution.source.solar": "array",
    "caution.source.grid": "grid",
    "caution.source.generator": "generator",
    "caution.source_any": (
        "Electricity from {source} at a borehole can kill: earthing, protection, a changeover that cannot join it to "
        "another source, and lock-off before the pump is lifted are for a licensed electrician and for whoever runs it."
    ),
    "caution.daylight": (
        "PV modules give dangerous DC voltage whenever there is light and cannot be switched off by day; isolators, "
        "string fuses and polarity are for a licensed electrician."
    ),
    "caution.dc_arc": (
        "Never unplug a DC connector, pull a DC fuse or cut a DC cable under load: the arc does not go out by itself, "
        "burns and sets fire. Stop the pump, open the DC load-break isolator and measure that no current flows before "
        "a connector is opened; an earth fault can keep current flowing, so treat it as live."
    ),
    "caution.isolate": (
        "Before a cover is opened or a conductor touched, isolate every source ({sources}), lock each off and label "
        "it, wait as long as the controller's maker says for its capacitors to discharge, then prove dead, between all "
        "conductors and to earth, with a tester tried on a known source before and after."
    ),
    "caution.isolate_array": (
        "Before a cover is opened or a conductor touched, isolate every source ({sources}), lock each off and label "
        "it, wait as long as the controller's maker says for its capacitors to discharge, then prove dead, between all "
        "conductors and to earth, with a tester tried on a known source before and after; by day the array's side of "
        "its isolator stays live."
    ),
    "caution.wet_hands": "Never work switches, plugs or the controller with wet hands or standing in water.",
    "caution.grid": (
        "Grid electricity at a borehole can kill: earthing, a residual-current device and lock-off before the pump is "
        "lifted are for a licensed electrician and the utility."
    ),
    "caution.residual_current": (
        "The type of the residual-current device must suit an electronic drive, whose smooth DC leakage blinds types "
        "AC and A: type B (IEC 62423) where the drive's maker or the local code asks for it, with no device of another "
        "type upstream in the same circuit."
    ),
    "caution.exhaust": (
        "A generator's exhaust kills in closed and half-closed rooms: run it in the open, away from doors, windows and "
        "the mouth of the borehole. Let it cool before it is refuelled, keep flames away, and store fuel where a spill "
        "cannot reach the borehole."
    ),
    "caution.backfeed": (
        "A generator must never feed back into the grid or another source, which kills those who work on the line: "
        "connect it through a changeover switch that cannot join the two, never by a plug into a socket."
    ),
    "caution.lightning": (
        "Lightning comes down the cables into the borehole: bond and earth controller, pipe and casing, fit surge "
        "protection at the controller and at the wellhead, to the local wiring rules, and stop work when thunder is "
        "heard."
    ),
    "caution.lightning_array": (
        "Lightning comes down the cables into the borehole: bond and earth frames of modules, controller, pipe and "
        "casing, fit surge protection at the array, at the controller and at the wellhead, to the local wiring rules, "
        "and stop work when thunder is heard."
    ),
    "caution.lifting": (
        "A pump with its full pipe can weigh more than a crew can hold: lift with tripod or crane, clamps and a safety "
        "rope, all rated for the load, with nobody beneath."
    ),
    "caution.overhead_lines": (
        "Look for overhead lines before a tripod, crane, mast or length of pipe is raised, and keep the distance that "
        "the utility asks: a line can kill without being touched."
    ),
    "caution.confined_space": (
        "Never go down a dug shaft or into a pump chamber or tank alone: the air can lack oxygen or hold gas. Test the "
        "air, ventilate, wear a harness with a line to someone outside, keep engines away, and never go in after "
        "someone who has collapsed; call rescue."
    ),
    "caution.falls": (
        "People fall from roofs, ladders and tank towers: guard rails or a harness on a sound anchor, ladders tied, no "
        "work there in wind, rain or alone. Roof and tower must be designed for their load; each m3 of water weighs a "
        "tonne."
    ),
    "caution.children": (
        "Children drown in open tanks and fall into open boreholes: keep tank, chambers and borehole covered and "
        "locked, and fence tank and controller."
    ),
    "caution.children_array": (
        "Children drown in open tanks and fall into open boreholes: keep tank, chambers and borehole covered and "
        "locked, and fence tank, array and controller."
    ),
    "caution.trench": (
        "Trench walls fall in without warning and bury people: shore or slope every trench that someone enters, as the "
        "local code asks, keep spoil and vehicles from its edge, and find buried cables and pipes before digging."
    ),
    "caution.pressure_test": (
        "Test the pipe with water, never with air, which stores enough to kill when a joint lets go: fill slowly, "
        "bleed the air at the high points, then raise the pressure by steps and keep people away."
    ),
    "caution.drinking": (
        "Clean, disinfect and flush borehole, pipes and tank first, then take samples: have germs, arsenic, fluoride, "
        "nitrate and salinity tested before anyone drinks the water. Nothing computed here says that it is fit to "
        "drink."
    ),
    "caution.not_drinking": (
        "Clean, disinfect and flush borehole, pipes and tank first, then take samples: test the water for what its use "
        "asks; nobody is to drink it untested."
    ),
    "caution.chlorine": (
        "Chlorine burns skin, eyes and lungs: gloves, goggles and open air; add it to water, never water to it; never "
        "mix it with acid, fuel or another cleaner; let nobody drink, and lead the water away from animals and "
        "streams, until it is flushed out."
    ),
    "caution.permit": "Taking water mostly needs a permit with a daily volume; hold it before pumping.",
    # of the limits of a study's numbers
    "caution.altitude": "The altitude was not given; {altitude} m is taken from pvlib's world grid.",
    "caution.hours_a_day": (
        "In the last year the pump would have to run {hours} hours a day at its duty flow of {flow} m3/h; the demand "
        "outgrows the pump or the borehole."
    ),
    "caution.safe_yield": (
        "The pump could give more than the borehole's safe yield of {flow} m3/h; its speed is held down to that."
    ),
    "caution.dc_window": (
        "In {option} the controller's DC window holds the array off its best point in {hours} hours a year; look at "
        "the number of modules in series."
    ),
    "caution.source_carbon": "No carbon dioxide figure was given for {source}, so its emissions are not counted.",
    "caution.lowest_level": (
        "In {option} the float switch was set to the lowest level tried, {level} % of the tank; a higher one keeps "
        "more in reserve for a failure."
    ),
    "caution.simulated": (
        "Every life year is simulated hour by hour, from what the year before leaves in the tank, with pump, borehole "
        "and modules as aged by then; water quality is not part of the simulation."
    ),
    "caution.summer_time": (
        "Hours are standard time all year; in summer the clocks of {zone} run an hour ahead, so draw, tariff bands and "
        "allowed hours then stand an hour late."
    ),
    "caution.unpriced": ("No price was entered for: {names}; the cost of an option that needs it is incomplete."),
    "caution.free": "Counted as there and paid for, a price of 0 being entered: {names}.",
    "caution.under_budgeted": (
        "{option} is budgeted at {cost} US dollars of 2011 per person and year to run, support and keep renewed, below "
        "the {low} to {high} found for such schemes (IRC WASHCost, cost benchmarks, 2012, at second hand): look for "
        "what is missing, such as wages, repairs, water tests or support, before it is promised to users."
    ),
    "caution.loan": (
        "The loan's interest of {rate} % is nominal, prices are constant and no inflation was entered, so the interest "
        "counts as if it were above inflation and the owner's cost comes out too high: enter the inflation (0 only "
        "where none is expected)."
    ),
    "caution.turned_away": (
        "A plane of the array faces the pole (azimuth {azimuth} at latitude {latitude}); in this hemisphere PV modules "
        "usually face {usual} degrees."
    ),
}
