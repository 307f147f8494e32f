"""Words for what was left out of a scenario and worked out: from what, and by which rule."""

SENTENCES: dict[str, str] = {
    "assumed.place": "the name of the project",
    "assumed.time_zone": "from the coordinates",
    "assumed.weather": "no weather given: estimated from the coordinates; measure or fetch before money is committed",
    "assumed.user": "the kind of user",
    "assumed.user.people": "People",
    "assumed.user.livestock": "Animals",
    "assumed.user.irrigation": "Watered field",
    "assumed.user.volume": "Water by volume",
    "assumed.specific_capacity": (
        "{flow} m3/h over {drawdown} m of drawdown; one step does not show how the drawdown grows at other flows"
    ),
    "assumed.safe_yield": (
        "the flow of the pumping test, {flow} m3/h: a short test says little about a dry season; have the yield set "
        "by a test of a day or more"
    ),
    "assumed.pump_name": "Pump",
    "assumed.pump_named": "no name given",
    "assumed.pump_kind": (
        "largest flow {ratio} times the rated one: common practice, no source; look at the pump or its datasheet"
    ),
    "assumed.controller_window": "the DC voltage on the pump's plate",
    "assumed.riser": "Riser",
    "assumed.main": "Main",
    "assumed.segments": "a riser of the pump's depth and a main of pipeline.length_m; no fittings counted",
    "assumed.pipe": (
        "{velocity} m/s at {flow} m3/h (about 1 m/s or less: common practice, no source), pressure class {bar} bar for "
        "the pump against a closed valve; sizes of {standard}"
    ),
    "assumed.sources": "no source given: the sun alone",
    "assumed.module": "a generic module of round figures, no one's datasheet: common practice, no source",
    "assumed.series": (
        "{fewest} to {most} fit the controller's voltages, and the plate's current, on a hot noon and a cold morning; "
        "of these, the string that comes nearest to {ratio} times the pump's input"
    ),
    "assumed.series_by_power": (
        "what comes nearest to {ratio} times the pump's input; the controller's voltages are not all known, so look "
        "whether {fewest} to {most} is what they bear"
    ),
    "assumed.series_chosen": "chosen with the number of strings, among those that pass the checks",
    "assumed.string_fuse": (
        "the smallest usual gPV fuse (IEC 60269-6) of 1.5 to 2.4 times the module's short-circuit current (IEC 62548, "
        "from memory), in both poles of each string; fewer than three strings need none"
    ),
    "assumed.section_chosen": "the smallest that passes the checks of ampacity and voltage drop for the array chosen",
    "assumed.section": (
        "the smallest size of IEC 60228 that bears the current (IEC 60364-5-52) and loses at most {percent:g} % of the "
        "voltage"
    ),
    "assumed.planes": (
        "towards the equator, tilted by the latitude but at least 10 deg, from which rain washes the glass: common "
        "practice, no source"
    ),
    "assumed.tank": "no tank given: one is chosen",
    "assumed.rating": (
        "the smallest that runs and starts a motor which takes {need:.1f} kW, of whose rating {percent:.0f} % are left "
        "at this altitude and {hottest:.0f} deg C"
    ),
    "assumed.level": "a fifth of the tank from the level that is given: common practice, no source",
    "assumed.tank_sizes": "usual sizes: common practice, no source",
    "assumed.price": "from {listed}",
    "assumed.stand_in_price": "the stand is in prices.pv_per_kwp",
}
