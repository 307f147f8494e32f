"""English of the method, its limits and its words."""

SENTENCES: dict[str, str] = {
    "method.under": "Worked out by planner {version}, seed {seed}.",
    "method.cautions": "Cautions",
    "method.caution": "! Caution {number}",
    "method.method": "Method",
    "method.limits": "Limits of the model",
    "method.words": "Words",
    "method.weather": "Weather",
    "method.weather_file": (
        "Hourly file: {source}. Where it has no beam and diffuse irradiance of its own, global is split after Erbs, "
        "Klein and Duffie (1982)."
    ),
    "method.weather_means": (
        "Hours made from twelve monthly means, anew for each year: daily clearness after {law}; hours after Graham and "
        "Hollands (1990) and Knight, Klein and Duffie (1991), beam and diffuse after Erbs, Klein and Duffie (1982), "
        "temperature after Erbs, Klein and Beckman (1983). The sums of the months are kept."
    ),
    "method.array": "PV array",
    "method.array_words": (
        "Irradiance on the modules after {sky}; reflection at {reflection} after De Soto, Klein and Beckman (2006) and "
        "Marion (2017); cell temperature after Faiman (2008), power of a module at any irradiance and temperature "
        "after Batzelis (2017) from its datasheet, and the De Soto single-diode equation where the controller's "
        "voltage window holds it off its best point; all as in pvlib. Shade, soiling, mismatch, wiring, light-induced "
        "and yearly degradation are taken off as given."
    ),
    "sky.perez-driesse": "Perez et al. (1990) as made continuous by Driesse, Jensen and Perez (2024)",
    "sky.haydavies": "Hay and Davies (1980)",
    "reflection.glass": "plain glass",
    "reflection.coated_glass": "coated glass",
    "reflection.none": "no glass (left out)",
    "method.borehole": "Borehole and pipes",
    "method.borehole_words": (
        "Drawdown s = B Q + C Q2 (Jacob 1947), from a specific capacity or a step test. Friction after {friction}, "
        "losses in fittings by their coefficients K. Inside diameters of PE pipe from ISO 4427-2, of steel tube from "
        "EN 10255."
    ),
    "friction.darcy-weisbach": "Darcy-Weisbach with Colebrook-White (Colebrook 1939)",
    "friction.hazen-williams": "Hazen-Williams",
    "method.pump": "Pump",
    "pump.centrifugal": "Affinity laws about the curve at rated speed.",
    "pump.helical-rotor": (
        "Positive displacement: flow proportional to speed less slip; torque follows the head."
    ),
    "method.loop": "Hour loop",
    "method.loop_words": (
        "Each hour of each year: the sun pumps first; grid and generator top up between start and stop level, in their "
        "hours and outages; the tank is drawn on by the users. Sources may share an hour where the controller runs "
        "them in parallel. Nothing is created or lost: what is pumped equals what is delivered, lost to leakage and "
        "stored."
    ),
    "method.generator": "Generator",
    "method.generator_words": (
        "Fuel = idle part x rating x hours + further part x energy (Skarstein and Uhlen 1989, from memory); rating "
        "lowered for altitude and heat; services, overhauls and replacement by running hours."
    ),
    "method.sizes": "Choice of sizes",
    "method.sizes_words": (
        "Where left open: the smallest tank that meets the service target, the number of strings and the float "
        "switch's levels of least life-cycle cost that meet it. Options that meet the target are ranked by life-cycle "
        "cost; those that miss it come after them, by what they deliver."
    ),
    "method.money": "Money",
    "method.money_words": (
        "Life-cycle cost as in 10 CFR 436 and NIST Handbook 135 (Fuller and Petersen 1995): capital cost in year 0, "
        "all else at year ends; replacement at the end of each life; straight-line residual value. Levelised cost of "
        "water as average incremental economic cost (ADB, Handbook for the Economic Analysis of Water Supply Projects, "
        "1999). Real and nominal rates after Fisher."
    ),
    "limit.hours": (
        "Hours, not minutes: within an hour the water balance is resolved, but a passing cloud is not seen."
    ),
    "limit.start": (
        "Each year starts with what the year before leaves in the tank; the first starts as full as it ends."
    ),
    "limit.weather": "A single weather file repeats every year; only monthly means give years that differ.",
    "limit.nameplate": (
        "From a nameplate alone, the power at part load is an assumption; points of the datasheet are better."
    ),
    "limit.ageing": (
        "The works age evenly, by the yearly declines of the inputs; a borehole is never cleaned."
    ),
    "limit.not_run": "Surge, water quality and bursts are not part of the hourly run.",
    "limit_of_money.flows": "Costs fall at year ends, loan payments are level, taxes on income are left out.",
    "limit.carbon": "The carbon dioxide of making and moving the equipment is not counted.",
    "limit.inspection": (
        "The program computes; it does not inspect: a pumping test, a survey of the route and quotations come first."
    ),
    "word.source": "source",
    "meaning.source": "Solar, grid or generator.",
    "word.option": "supply option",
    "meaning.option": "One combination of sources that meets the same demand, such as solar + grid.",
    "word.top_up": "top-up",
    "meaning.top_up": "Pumping on grid or generator because the sun and the tank do not suffice.",
    "word.levels": "start level, stop level",
    "meaning.levels": "Levels of the tank at which top-up starts and stops: the float switch.",
    "word.demand_met": "demand met, shortfall",
    "meaning.demand_met": "Water delivered over water demanded; shortfall is what is demanded and not delivered.",
    "word.pv_unused": "PV energy unused",
    "meaning.pv_unused": (
        "PV energy available but not used (curtailed): tank full, below starting power, or above what the pump takes."
    ),
    "word.static_lift": "static lift",
    "meaning.static_lift": "From the static water level in the borehole up to the tank's inlet.",
    "word.head": "total dynamic head",
    "meaning.head": "Static lift + drawdown + friction + residual head.",
    "word.duty_point": "duty point",
    "meaning.duty_point": "Flow and head at which the pump and the system meet.",
    "word_of_money.life_cycle_cost": "life-cycle cost",
    "meaning.life_cycle_cost": "Present value of every cost over the analysis period, less the residual value.",
    "word_of_money.net_present_value": "net present value",
    "meaning.net_present_value": "Present value of what users pay, less the life-cycle cost.",
    "word_of_money.annualised_cost": "annualised cost",
    "meaning.annualised_cost": "Level yearly sum whose present value is the life-cycle cost.",
    "word_of_money.levelised_cost": "levelised cost of water",
    "meaning.levelised_cost": "Life-cycle cost / present value of the delivered m3, in money of year 0.",
    "word_of_money.rate": "internal rate of return",
    "meaning.rate": "Rate at which the extra capital cost against the reference equals the later savings.",
    "word_of_money.payback": "payback",
    "meaning.payback": "Years until the extra capital cost is recovered and stays recovered; discounted or not.",
    "word_of_money.residual_value": "residual value",
    "meaning.residual_value": (
        "What equipment is worth at the end: its price times the share of its life left."
    ),
}  # fmt: skip
