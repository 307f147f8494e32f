"""Tasks of upkeep and spares by the works that are there: who does what how often, and on what authority it is said."""

_PRACTICE = "common practice, no source"
_IRRIGATION_GUIDE = "GIZ and FAO, upkeep of solar-powered irrigation, at second hand"
_OPERATOR, _ELECTRICIAN, _CREW = "operator", "licensed electrician", "trained crew"

_TASKS: dict[str, tuple[str, str, str]] = {
    "daily.works": ("Read the meter and the pressure; look for leaks, look at the taps", _OPERATOR, _PRACTICE),
    "daily.solar": ("See that it runs; look at the fault lights", _OPERATOR, _IRRIGATION_GUIDE),
    "daily.grid": ("Look at the voltage and at the lamps of the phases", _OPERATOR, _PRACTICE),
    "daily.generator": ("Oil, coolant, fuel and leaks before the start; note hours and litres", _OPERATOR, _PRACTICE),
    "weekly.works": ("Level in the tank, float switch, fence and covers", _OPERATOR, _PRACTICE),
    "weekly.solar": (
        "Look at the yield, the mounting and the controller, without opening it", _OPERATOR, _IRRIGATION_GUIDE,
    ),
    "weekly.generator": ("Look at the battery", _OPERATOR, _PRACTICE),
    "monthly.works": ("Note the pumping level and the m3 per kWh; tell the committee of a trend", _OPERATOR, _PRACTICE),
    "monthly.solar": (
        "Wash the modules in the cool of the day, from the ground, without walking on them", _OPERATOR,
        _IRRIGATION_GUIDE,
    ),
    "monthly.generator": (
        "If it stands by: run it for 30 minutes at a third of its rating or more", _OPERATOR,
        "every 30 days: US Army TM 9-6115-464-12; load: NFPA 110; both at second hand",
    ),
    "quarterly.works": (
        "Test for chlorine and E. coli; turn every valve", "operator with the health office", _PRACTICE,
    ),
    "quarterly.solar": ("Bolts, cables, shade and vegetation", _OPERATOR, _IRRIGATION_GUIDE),
    "quarterly.grid": ("Contacts, dust in the panel", _ELECTRICIAN, _PRACTICE),
    "quarterly.generator": ("Air filter, belts, drain of the fuel filter", "mechanic", _PRACTICE),
    "yearly.works": (
        "Level at rest in the dry season; tank drained, scrubbed, disinfected; meter tested; insulation of the motor",
        _CREW, _PRACTICE,
    ),
    "yearly.solar": (
        "Voltage and current of each string, insulation, earth resistance, surge protection", _ELECTRICIAN,
        _IRRIGATION_GUIDE,
    ),
    "yearly.grid": ("Earth resistance, breakers and residual-current device", _ELECTRICIAN, _PRACTICE),
    "yearly.generator": ("Full service and test under load", "mechanic", _PRACTICE),
    "years.works": (
        "Pump and rising pipe lifted; borehole tested anew where its specific capacity is down by a fifth or more",
        _CREW, _PRACTICE,
    ),
    "years.solar": ("Fans, controller, DC isolators", _ELECTRICIAN, _PRACTICE),
    "years.grid": ("Parts of the panel", _ELECTRICIAN, _PRACTICE),
    "years.generator": ("Overhaul, by its hours", "mechanic", _PRACTICE),
}  # fmt: skip
"""What is to be done, who does it, and where that comes from, by interval and works."""

SENTENCES: dict[str, str] = {
    "proposal.upkeep.heading": "Tasks of upkeep",
    "proposal.upkeep.column.of": "Works",
    "proposal.upkeep.column.task": "Task",
    "proposal.upkeep.column.by": "By",
    "proposal.upkeep.column.basis": "Basis",
    "proposal.upkeep.daily": "Daily",
    "proposal.upkeep.weekly": "Weekly",
    "proposal.upkeep.monthly": "Every two to four weeks",
    "proposal.upkeep.quarterly": "Each quarter",
    "proposal.upkeep.yearly": "Each year",
    "proposal.upkeep.years": "Every five to ten years",
    "proposal.upkeep.of.works": "borehole, pump, pipes, tank",
    "proposal.upkeep.of.solar": "PV array",
    "proposal.upkeep.of.grid": "grid connection",
    "proposal.upkeep.of.generator": "generator",
    "proposal.upkeep.sources": "Who does a task is common practice, no source; adapt it to who is there.",
    "proposal.spares.heading": "Spares (common practice, no source)",
    "proposal.spares.kept": "Kept",
    "proposal.spares.parts": "Parts",
    "proposal.spares.on_site": "on site",
    "proposal.spares.in_district": "in the district, one for about ten schemes",
    "proposal.spares.on_site.works": (
        "float switch and level sensor, non-return valve, gate valve, pipe couplings, tap washers, splice kit for the "
        "cable, overload relay"
    ),
    "proposal.spares.on_site.solar": (
        "fuses, cartridge of the surge protection, connectors and the tool to crimp them, one module of the same type"
    ),
    "proposal.spares.on_site.grid": "contactor, fuses, cartridge of the surge protection",
    "proposal.spares.on_site.generator": "oil, filters for oil, fuel and air, belt, starter battery",
    "proposal.spares.in_district.works": "pump end, motor and controller, which take longest to come",
}
for _key, _parts in _TASKS.items():
    SENTENCES |= {
        f"proposal.upkeep.{_key}.{_part}": _said for _part, _said in zip(("task", "by", "basis"), _parts, strict=True)
    }
