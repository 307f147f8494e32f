"""Words of the checks of borehole, cooling, tank and water, and of what they share."""

SENTENCES: dict[str, str] = {
    # what all checks of a site share
    "basis.duty_flow": "{flow} m3/h (the duty flow)",
    "basis.planned_flow": "{flow} m3/h (the flow to plan on with a pump that lifts it)",
    "basis.drawn_flow": "{flow} m3/h (the flow that the pump would draw)",
    "basis.coldest_given": "{temperature} deg C, as given",
    "basis.coldest_of_weather": "{temperature} deg C, the weather's coldest hour less {allowance} K (none was given)",
    "basis.better_pump": (
        "a pump rated at about {head} m at {flow} m3/h (about {power} kW if {share} % of it reach the water)"
    ),
    # borehole
    "check.specific_capacity.compared": (
        "Drawdown by a specific capacity of {given:g} m3/h per m at the safe yield of {flow:g} m3/h, against the "
        "{there_m:.1f} m of water above the intake"
    ),
    "check.specific_capacity.why": (
        "Typed upside down, it makes a weak borehole look strong, and the pump is hung where it runs dry."
    ),
    "check.specific_capacity.remedy": (
        "read the pumping test again: if it says {given:g} m of drawdown per m3/h, the specific capacity is {inverse}, "
        "and the safe yield draws the water down by {drawdown_m:.1f} m"
    ),
    "check.specific_capacity.source": "the site's data; a doubt under {percent:.0f} % is assumed, common practice",
    "check.safe_yield.compared": "Flow that the pump gives here at full speed, against the borehole's safe yield",
    "check.safe_yield.compared_rated": "Rated flow of the pump, against the borehole's safe yield",
    "check.safe_yield.why": "Over-pumping draws in sand, lets the pump run dry and can ruin the borehole for good.",
    "check.safe_yield.remedy_speed": "set the drive's highest speed to {speed} %, or a pump of less flow",
    "check.safe_yield.remedy_pump": (
        "a pump rated at no more than {flow} m3/h, at about {head} m; until then a drive or valve that holds it to "
        "{limit} m3/h"
    ),
    "check.safe_yield.source": (
        "the site's data (pumping test); a pump rated above the yield fails, one that can be held by its speed does not"
    ),
    "check.pumping_level.compared": "Depth of the water in {month} at {flow}, against the pump's intake",
    "check.pumping_level.why": "A pump that takes air loses its prime, runs dry and burns.",
    "check.pumping_level.source": "the site's data",
    "check.deeper.remedy": "set the pump {by} m deeper, with pipe and cable to match, or {less}",
    "check.deeper.remedy_if_bottom": (
        "set the pump {by} m deeper, with pipe and cable to match, once the driller's log shows that bottom lies "
        "deeper, or {less}"
    ),
    "check.deeper.remedy_if_screen": (
        "set the pump {by} m deeper, with pipe and cable to match, once the driller's log shows that screen lies "
        "deeper, or {less}"
    ),
    "check.deeper.remedy_if_both": (
        "set the pump {by} m deeper, with pipe and cable to match, once the driller's log shows that bottom and screen "
        "lie deeper, or {less}"
    ),
    "check.deeper.remedy_shallow": "{less}: the borehole is not deep enough to hang the pump deeper",
    "check.deeper.remedy_in_screen": (
        "{less}: any deeper the pump would hang in the screen, which draws sand and leaves the motor hot"
    ),
    "check.deeper.less": "pump less",
    "check.deeper.less_held": (
        "pump less (the hourly run holds it to {flow} m3/h: a drive set to at most {speed} % speed and a low-water "
        "cut-out)"
    ),
    "check.submergence.compared": "Water above the intake in {month} at {flow}, against what the pump asks",
    "check.submergence.why": "Too little water above the intake draws in air and lets the pump cavitate.",
    "check.submergence.look_for": "look for 'minimum submergence' or NPSH in the pump's datasheet",
    "check.submergence.source": "the pump's nameplate",
    "check.level_through_life.compared": (
        "Depth of the water in {month} of the last year at {flow}, the static water level falling {decline} m and the "
        "specific capacity {loss} % a year, against the intake less what must stay above it"
    ),
    "check.level_through_life.compared_dry": (
        "Depth of the water in {month} of the last year at {flow}, the static water level falling {decline} m and the "
        "specific capacity {loss} % a year, against the intake less what must stay above it; too deep from year {year} "
        "on"
    ),
    "check.level_through_life.why": (
        "A pump hung for today's water runs dry in later years, and the hourly run lets it pump less and less."
    ),
    "check.level_through_life.source": "declines as entered or assumed; a borehole cleaned in time falls less",
    "check.screen.compared": "Depth of the water in {month} at {flow}, against the top of the screen",
    "check.screen.why": "A screen that falls dry clogs and lets air into the water.",
    "check.screen.look_for": "look for the screen's depth in the driller's log",
    "check.screen.source_log": "the driller's log",
    "check.screen.remedy": "pump less, so that the water stays above the screen",
    "check.screen.source": "the site's data; to keep it wet is common practice, no source",
    "check.casing_clearance.compared_open": "Inside diameter of the casing, against the pump's outside diameter",
    "check.casing_clearance.compared": (
        "Inside diameter of the casing, against the pump's outside diameter of {outer} mm and {room} mm of room"
    ),
    "check.casing_clearance.why": "A pump that sticks cannot be lifted again and may cost the borehole.",
    "check.casing_clearance.source_open": "the pump's nameplate and the site's data",
    "check.casing_clearance.remedy": "a pump of at most {outer} mm outside diameter",
    "check.casing_clearance.source": (
        "the pump's nameplate (frame: NEMA MG 1 part 18); the room is common practice, no source"
    ),
    "check.motor_size.look_for_casing": "look for the casing's inside diameter in the driller's log",
    "check.motor_size.look_for_motor": "look for the outside diameter or the frame in inches on the plate",
    "check.motor_size.look_for_both": (
        "look for the casing's inside diameter in the driller's log and the outside diameter or the frame in inches on "
        "the plate"
    ),
    "check.below_motor.compared": "Borehole left below the motor",
    "check.below_motor.compared_intake": (
        "Borehole left below the intake, from which the motor's length is to be taken"
    ),
    "check.below_motor.why": "Sand gathers at the bottom; a motor that stands in it overheats and sticks.",
    "check.below_motor.look_for": "look for the borehole's depth in the driller's log, or sound it",
    "check.below_motor.source_log": "the driller's log",
    "check.below_motor.look_for_length": "look for the motor's length on the datasheet's drawing",
    "check.below_motor.source_plate": "the pump's nameplate",
    "check.below_motor.remedy": "set the pump {by} m higher",
    "check.below_motor.source": "the site's data; {sump} m of sump is common practice, no source",
    "check.daily_limit.compared": (
        "Water drawn in the busiest month, {first} m3/day in the first year and {most} at most, against the daily limit"
    ),
    "check.daily_limit.compared_over": (
        "Water drawn in the busiest month, {first} m3/day in the first year and {most} at most, against the daily "
        "limit; too much from year {year} on"
    ),
    "check.daily_limit.compared_open": (
        "Water drawn in the busiest month, {first} m3/day in the first year and {most} at most, against the permit"
    ),
    "check.daily_limit.why": "A permit that is overdrawn can be withdrawn, and the aquifer with it.",
    "check.daily_limit.look_for": ("look for the daily volume in the abstraction permit or the pumping test's report"),
    "check.daily_limit.source_permit": "the abstraction permit",
    "check.daily_limit.remedy": "a permit for {volume}, or less demand",
    "check.daily_limit.source": "the site's data (permit or test)",
    # cooling of the motor
    "check.motor_cooling.compared": (
        "Velocity of the water past the motor in the casing at {flow}, against what cools it"
    ),
    "check.motor_cooling.compared_small": (
        "Velocity of the water past the motor in the casing at {flow}, against what cools it; a four-inch motor below "
        "3 hp asks for none"
    ),
    "check.motor_cooling.compared_beside": (
        "Velocity of the water past the motor in the casing at {flow}, against what cools it; the intake lies beside "
        "or below the screen, so that the water does not pass the motor"
    ),
    "check.motor_cooling.compared_small_beside": (
        "Velocity of the water past the motor in the casing at {flow}, against what cools it; a four-inch motor below "
        "3 hp asks for none; the intake lies beside or below the screen, so that the water does not pass the motor"
    ),
    "check.motor_cooling.compared_sleeve": (
        "Velocity of the water past the motor in the flow sleeve at {flow}, against what cools it"
    ),
    "check.motor_cooling.compared_sleeve_small": (
        "Velocity of the water past the motor in the flow sleeve at {flow}, against what cools it; a four-inch motor "
        "below 3 hp asks for none"
    ),
    "check.motor_cooling.why": (
        "A submersible motor is cooled by the water that flows past it; in still water its winding burns."
    ),
    "check.motor_cooling.remedy": "a flow sleeve of at most {width} mm inside diameter over the motor",
    "check.motor_cooling.remedy_if_room": (
        "a flow sleeve of at most {width} mm inside diameter over the motor, if the casing has room for it"
    ),
    "check.motor_cooling.remedy_motor": (
        "a smaller motor, or one that its maker rates for this flow and water: no flow sleeve goes between"
    ),
    "check.motor_cooling.source": (
        "0.25 ft/s for 4-inch motors from 3 hp, 0.5 ft/s for larger: common practice, no source; the site's data"
    ),
    # tank
    "check.irradiation.compared": (
        "Irradiation of {month}, the month that stands furthest from the region's climatology: {given} against {usual} "
        "kWh/m2/day"
    ),
    "check.irradiation.compared_not": "Irradiation, against the region's climatology",
    "check.irradiation.why": "The array is sized by these figures; a wrong unit or month shows in no other check.",
    "check.irradiation.source": (
        "a climatology of 3 by 3 degrees (NASA MERRA-2, 2011-2015); {limit:g} % assumed, beyond the 29 % found at "
        "three typical years"
    ),
    "check.irradiation.above": (
        "your {month} is {apart} % above what this region has: look whether the figures are kWh/m2 a day on a "
        "horizontal plane (1 kWh = 3.6 MJ), start with January and are for this place, and at the signs of its "
        "latitude and longitude"
    ),
    "check.irradiation.below": (
        "your {month} is {apart} % below what this region has: look whether the figures are kWh/m2 a day on a "
        "horizontal plane (not hours of sun, or sums of a month), start with January and are for this place"
    ),
    "check.irradiation.measure": (
        "the irradiation is an estimate from that climatology itself: measure or fetch it before money is committed "
        "(planner weather --fetch, or a station nearby)"
    ),
    "check.irradiation.elsewhere": (
        "the climatology has nothing for this place: compare the figures with a second source, such as planner weather "
        "--fetch or a station nearby"
    ),
    "check.air_temperature.compared": (
        "Air of {month}, the month that stands furthest from the region's climatology: {given} against {usual} deg C "
        "at this altitude"
    ),
    "check.air_temperature.compared_not": "Air temperature, against the region's climatology",
    "check.air_temperature.why": "Modules and cables are judged at these temperatures.",
    "check.air_temperature.source": (
        "a climatology of 3 by 3 degrees (ERA5, 2000-2025; contains modified Copernicus Climate Change Service "
        "information), 6.5 K/km of altitude; {limit:g} K assumed, beyond the 4 K found at three typical years"
    ),
    "check.air_temperature.above": (
        "your {month} is {apart} K warmer than this region: look whether the figures are degrees Celsius, means of day "
        "and night, and start with January, and at the altitude"
    ),
    "check.air_temperature.below": (
        "your {month} is {apart} K colder than this region: look whether the figures are degrees Celsius, means of day "
        "and night, and start with January, and at the altitude"
    ),
    "check.air_temperature.measure": (
        "the temperature is an estimate from that climatology itself: measure or fetch it before money is committed"
    ),
    "check.air_temperature.elsewhere": (
        "the climatology has nothing for this place: compare the figures with a second source"
    ),
    "check.days_held.compared": "Demand of the first year's busiest month that {volume} m3 hold: {hours} hours",
    "check.days_held.compared_open": (
        "Demand of the first year's busiest month that {volume} m3 (the volume is open: the smallest that "
        "suits) hold: {hours} hours"
    ),
    "check.days_held.why": "The tank carries the users over cloud, outage and repair.",
    "check.days_held.remedy": "a tank of {volume} m3, or less where a second source stands by",
    "check.days_held.source": (
        "one day's demand: Recommended Standards for Water Works 7.0.1, from memory; the hourly run says what suffices"
    ),
    "check.busiest_hour.compared": (
        "Volume of the tank, against the water drawn in the busiest hour of the first year"
    ),
    "check.busiest_hour.why": "A tank that one hour empties leaves the users dry each day.",
    "check.busiest_hour.remedy": "a tank of at least {volume} m3",
    "check.busiest_hour.source": "the site's data",
    "check.refill_time.compared": "Hours of pumping that fill {volume} m3 at {flow}, nothing being drawn",
    "check.refill_time.why": "A tank that takes long to fill stays low after every outage.",
    "check.refill_time.remedy": "a flow of at least {flow} m3/h",
    "check.refill_time.remedy_smaller": "a tank of at most {volume} m3, or a flow of at least {flow} m3/h",
    "check.refill_time.remedy_only_smaller": "a tank of at most {volume} m3",
    "check.refill_time.remedy_second": (
        "a second borehole or source: {flow} m3/h, which would fill it in time, is above this one's safe yield"
    ),
    "check.refill_time.source": "common practice, no source",
    "check.inlet_height.compared": "Tank inlet used in the head, against the ground at the route's end",
    "check.inlet_height.why": "An inlet taken too low in the head leaves the pump short at the last metre.",
    "check.inlet_height.look_for": "survey the tank's site against the borehole, and give the route's profile",
    "check.inlet_height.remedy": (
        "survey again: the inlet stands at {ground} m or more above the ground at the borehole, by the height of the "
        "tank itself"
    ),
    "check.inlet_height.source": "the site's data",
    "check.outlet_head.compared": ("Height of the tank's outlet above the taps, before any loss in the pipes to them"),
    "check.outlet_head.why": "Taps without head give a trickle, and the far ones nothing.",
    "check.outlet_head.look_for": "survey the outlet against the highest tap",
    "check.outlet_head.remedy": "raise the tank by {by} m, which the pump must then lift as well",
    "check.outlet_head.source": (
        "7 m for one storey: CPHEEO manual on water supply; 2 m is common practice, no source"
    ),
    # water
    "check.per_person.compared_pupils": "Water per person and day of {user}, the user with the least for its kind",
    "check.per_person.compared_below_basic": (
        "Water per person and day of {user} (less than basic service), the user with the least for its kind"
    ),
    "check.per_person.compared_basic": (
        "Water per person and day of {user} (basic service), the user with the least for its kind"
    ),
    "check.per_person.compared_intermediate": (
        "Water per person and day of {user} (intermediate service and more), the user with the least for its kind"
    ),
    "check.per_person.why": "With too little water people fetch the rest from unsafe places.",
    "check.per_person.remedy": "give {volume}, or show that they have another safe source",
    "check.per_person.source": (
        "Sphere Handbook: 15 L, school 3 L per pupil (from memory); WHO domestic water quantity: 20 L basic, 50 L "
        "intermediate"
    ),
    "check.yield_through_life.compared": (
        "Demand of the busiest month at its largest, against the safe yield in 20 hours: it suffices through the "
        "analysis period"
    ),
    "check.yield_through_life.compared_short": (
        "Demand of the busiest month at its largest, against the safe yield in 20 hours: it no longer suffices from "
        "year {year} on"
    ),
    "check.yield_through_life.compared_limit": (
        "Demand of the busiest month at its largest, against the daily limit: it suffices through the analysis period"
    ),
    "check.yield_through_life.compared_limit_short": (
        "Demand of the busiest month at its largest, against the daily limit: it no longer suffices from year {year} on"
    ),
    "check.yield_through_life.why": (
        "A borehole that cannot keep up with growth leaves the users short, or is over-pumped."
    ),
    "check.yield_through_life.remedy": (
        "a second borehole or source by year {year}, or hold the demand to {volume} m3/day"
    ),
    "check.yield_through_life.source": (
        "the site's data; 20 hours a day, to let the level recover, is common practice, no source"
    ),
}
