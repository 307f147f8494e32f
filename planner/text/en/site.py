"""Words of the pages on head, tank, checks, inputs and what was simulated."""

SENTENCES: dict[str, str] = {
    "simulated.title": "Simulated quantities",
    "simulated.under": (
        "Water, energy, fuel and hours are values of the hourly simulation: they change only with a new run. What the "
        "hours ask of the generator and the grid's bill, at the prices of the first year, are formulas on the sheet "
        "'Inputs'."
    ),
    "simulated.years": "Analysis period (years)",
    "simulated.people": "People, first year (0: none)",
    "simulated.demand_m3": "Demand (m3)",
    "simulated.delivered_m3": "Delivered (m3)",
    "simulated.fuel_l": "Fuel (L)",
    "simulated.grid_kwh": "Grid (kWh)",
    "simulated.grid_peaks_kw": "Sum of monthly peaks (kW)",
    "simulated.hours": "Generator (h)",
    "simulated.run_h": "Generator, run in all (h)",
    "simulated.services": "Services",
    "simulated.used_h": "Hours of the generator at hand (h)",
    "simulated.age_years": "Years of the generator at hand",
    "simulated.overhauls": "Overhauls",
    "simulated.worn": "Generators worn out by hours",
    "simulated.bought": "Generators replaced",
    "simulated.kept_h": "Hours of the generator kept (h)",
    "simulated.kept_years": "Years of the generator kept",
    "simulated.block_kwh": "Grid, block {number} (kWh)",
    "simulated.grid_bill": "Grid bill ({currency})",
    "simulated.further_kwh": "{source} (kWh)",
    "simulated.further_hours": "{source} (h)",
    "simulated.further_fuel_l": "{source}, fuel (L)",
    "simulated.further_band": "{source}, band {band} (kWh)",
    "simulated.left": "Generator's life left at the end (share)",
    # ---- cash flow
    "head.title": "Total dynamic head and duty point",
    "head.under": (
        "Waterworks of {option}; heads in metres of water. The duty point is where the pump at full speed meets the "
        "system, or where safe yield, power limit or intake level limit it."
    ),
    "head.build_up": "Build-up at the duty point",
    "head.part": "Part",
    "head.head_m": "Head (m)",
    "head.share": "Share (%)",
    "head.static_level": "Static water level, mean of the months",
    "head.rise": "Rise from the ground to the tank's inlet",
    "head.drawdown": "Drawdown",
    "head.pipe_friction": "Friction in the pipes",
    "head.fitting_losses": "Losses in fittings",
    "head.residual": "Residual head at the inlet",
    "head.other": "High point of the route, or held back by a valve",
    "head.total": "Total dynamic head",
    "head.duty": "Duty point, yearly mean water level",
    "head.figure": "Figure",
    "head.value": "Value",
    "head.unit": "Unit",
    "head.flow": "Flow",
    "head.shut_off": "Pump's head at no flow, rated speed",
    "head.speed": "Speed",
    "head.of_rated": "% of rated",
    "head.hydraulic_power": "Power of the water lifted",
    "head.input_power": "Input of the motor",
    "head.efficiency": "Efficiency, motor input to water",
    "head.limited_by": "Limited by",
    "head.by_run": "Friction at the duty point by run of pipe ({method})",
    "head.run": "Run of pipe",
    "head.length": "Length (m)",
    "head.inside_diameter": "Inside diameter (mm)",
    "head.velocity": "Velocity (m/s)",
    "head.friction": "Friction (m)",
    "head.fittings": "Fittings (m)",
    "head.loss": "Loss (m/100 m)",
    "head.by_month": "Duty point by month",
    "head.month": "Month",
    "head.level": "Static water level (m)",
    "head.static_lift": "Static lift (m)",
    "head.flow_m3h": "Flow (m3/h)",
    "head.total_head": "Total head (m)",
    "head.input_w": "Motor input (W)",
    "head.differing": "Options with another pump, pipeline or limit",
    "head.option": "Supply option",
    "head.curves": "Points of the curves",
    "head.system": "System (m)",
    "head.at_speed": "{speed} % (m)",
    "head.chart": "Pump and system",
    "head.chart_alt": "Head over flow: the system, the pump at several speeds, and the duty point where they meet.",
    "head.system_curve": "System",
    "head.pump_curve": "Pump at {speed} % speed",
    "head.duty_point": "Duty point",
    # ---- tank
    "tank.title": "Tank and float switch",
    "tank.under": (
        "Each size and each setting was simulated hour by hour over all years, with everything else of the option as "
        "chosen."
    ),
    "tank.by_size": "Demand met by tank size",
    "tank.option": "Supply option",
    "tank.tank_m3": "Tank (m3)",
    "tank.met": "Demand met (%)",
    "tank.target": "Target (%)",
    "tank.price": "Price of the tank ({currency})",
    "tank.chosen": "Chosen",
    "tank.is_chosen": "✓ chosen",
    "tank.settings": "Settings of the float switch",
    "tank.none_tried": (
        "No option lets grid or generator top up what the sun pumps, so no settings were compared."
    ),
    "tank.start": "Start level (% of tank)",
    "tank.stop": "Stop level (% of tank)",
    "tank.meets": "Meets target",
    "tank.grid": "Grid (kWh/year)",
    "tank.fuel": "Fuel (L/year)",
    "tank.life_cycle_cost": "Life-cycle cost ({currency})",
    "tank.annualised_cost": "Annualised cost ({currency}/year)",
    "tank.against": "Against the setting used ({currency}/year)",
    "tank.remark": "Remark",
    "tank.used": "used",
    "tank.best": "best",
    "tank.none_better": "{option}: start {start} %, stop {stop} % of the tank; of the settings tried none is better.",
    "tank.would_meet": (
        "{option}: start {start} %, stop {stop} % of the tank misses the service target; {better} % would meet it."
    ),
    "tank.would_save": (
        "{option}: start {start} %, stop {stop} % of the tank; {better} % would save {saving} a year."
    ),
    "tank.most_delivered": (
        "{option}: start {start} %, stop {stop} % of the tank; {better} % would deliver most of those tried."
    ),
    "tank.chart_alt": "Demand met by tank size, of {option} and of options that differ from it, and the target.",
    "tank.target_line": "Target",
    # ---- checks
    "checks.title": "Site checks",
    "checks.under": "{summary}. Local codes and licensed practice come first.",
    "checks.verdict": "Verdict",
    "checks.topic": "Topic",
    "checks.compared": "What was compared",
    "checks.value": "Value",
    "checks.limit": "Limit",
    "checks.margin": "Margin",
    "checks.why": "Why it matters",
    "checks.remedy": "Remedy",
    "checks.source": "Limit from",
    "checks.pass": "pass",
    "checks.caution": "caution",
    "checks.fail": "fail",
    "checks.not given": "not given",
    "checks.route": "Route and pressure lines",
    "checks.in_metres": "{name} (m)",
    "checks.chainage": "Chainage",
    "checks.ground": "Ground",
    "checks.duty_line": "Hydraulic grade line at duty",
    "checks.shut_off_line": "Hydraulic grade line at shut-off",
    "checks.allowed_line": "Pressure limit of the pipe",
    "checks.not_known": "not known",
    "checks.chart_alt": "Ground, hydraulic grade lines and the limit of the pipe along the route from the borehole.",
    "checks.chainage_axis": "Chainage from the borehole (m)",
    "checks.level_axis": "Level above the ground at the borehole (m)",
    # ---- inputs
    "inputs.under": (
        "Every key of the scenario. 'given' stands in the scenario; 'default' is assumed, with its source; 'not given' "
        "has no value; '{starter}' was invented for the starter scenario and not changed since. 'money' is {currency}."
    ),
    "inputs.status_given": "given",
    "inputs.status_default": "default",
    "inputs.status_assumed": "assumed",
    "inputs.status_not given": "not given",
    "inputs.status_starter": "still the starter's value",
    "starter.left_over": (
        "{count} values still are the invented ones of the starter scenario ('{status}' on the sheet 'Inputs'): put "
        "those of the site in their place before the figures are used."
    ),
    "inputs.note": (
        "To change an input, go to the sheet 'Form': the values here follow it, and every sum of money follows these. "
        "Prices, lives and maintenance of things bought, percentages, the discount rate, inflation, growth of prices, "
        "grant, loan, water price and tariff prices may be changed so. All else needs a new run of this workbook "
        "(planner run FILE): whatever changes water, energy, fuel or hours, the analysis period, the kind of prices, "
        "the limits of tariff blocks, the pump's life, a percentage that was 0, and whatever was chosen by cost (tank, "
        "strings, levels), which stays as it was chosen. The sheet 'Tank' and the sentences of the sheet 'Answer' stay "
        "as of the run."
    ),
    "inputs.key": "Key",
    "inputs.value": "Value",
    "inputs.status": "Given or default",
    "inputs.meaning": "Meaning",
    "inputs.source": "Source of the default, or what absence means",
    "inputs.by_month": "by month",
    "inputs.weather": "Weather used",
    "inputs.weather_source": "Source: {source}",
    "inputs.weather_note": "Note: {note}",
    "inputs.altitude": "Altitude of the site",
    "inputs.altitude_given": "given",
    "inputs.altitude_grid": "from pvlib's world grid",
    "inputs.years": "Irradiation of the lowest and highest year",
    "inputs.from_to": "{low} to {high}",
    "inputs.of_mean": "% of mean",
    "weather.ghi_kwh_m2_day": "Horizontal irradiation, mean",
    "weather.ghi_lowest_year_kwh_m2_day": "Horizontal irradiation, lowest year",
    "weather.ghi_highest_year_kwh_m2_day": "Horizontal irradiation, highest year",
    "weather.temperature_mean_c": "Air temperature, mean",
    "weather.temperature_min_c": "Air temperature, coldest hour",
    "weather.temperature_max_c": "Air temperature, hottest hour",
    "weather.clearness": "Clearness index, mean",
    "weather.clearness_spread": "Clearness index, spread of the days",
    "weather.wind_m_s": "Wind",
}  # fmt: skip
