"""What the figures of the catalogue are called, and what they are."""

FIGURES: dict[str, tuple[str, str]] = {
    "tank_m3": ("Storage tank", "Usable volume of the tank."),
    "modules": ("PV modules", "Modules in all strings together."),
    "strings": ("Strings in parallel", "Strings of modules in series, side by side."),
    "array_kwp": ("PV array, rated", "Rated power of all modules at standard test conditions (IEC 60904-3)."),
    "start_level_percent": ("Start level of the top-up", "Level at which the float switch starts grid or generator."),
    "stop_level_percent": ("Stop level of the top-up", "Level at which the float switch stops grid or generator."),
    "duty_flow_m3h": ("Flow at the duty point", "Flow where pump and system meet at the yearly mean water level."),
    "total_dynamic_head_m": (
        "Total dynamic head",
        "Static lift, drawdown, friction and residual head together, at the duty point.",
    ),
    "generator_kw": ("Generator, rated", "Rated power of the generating set at the reference conditions."),
    "meets_target": ("Meets the service target (1: yes)", "Whether it delivers what the service target asks."),
    "short_days_per_year": (
        "Short days",
        "Days on which more than a tenth of the day's demand is missing, mean of the years (common practice, no "
        "source).",
    ),
    "worst_month": (
        "Worst month (1: January)",
        "Calendar month in which the lowest share of demand is delivered, all years together.",
    ),
    "worst_month_short_days": ("Short days in the worst month", "Short days in that month, mean of the years."),
    "longest_short_days": (
        "Longest run of short days",
        "Most short days in a row in the analysis period, over the turn of the year as well.",
    ),
    "missing_l_per_short_day": (
        "Water missing on a mean short day",
        "What users miss on all short days of the analysis period over their number.",
    ),
    "demand_met_percent": ("Demand met", "Water delivered over water wanted, all years together."),
    "demand_met_worst_year_percent": ("Demand met in the worst year", "The lowest yearly share of demand delivered."),
    "demand_met_worst_month_percent": (
        "Demand met in the worst month",
        "The lowest share of demand delivered of any calendar month, all years together.",
    ),
    "demand_first_year_m3": ("Demand in the first year", "Water wanted by the users in year 1."),
    "delivered_first_year_m3": ("Delivered in the first year", "Water that reaches the users in year 1."),
    "demand_last_year_m3": ("Demand in the last year", "Water wanted by the users in the last year."),
    "delivered_last_year_m3": ("Delivered in the last year", "Water that reaches the users in the last year."),
    "shortfall_m3_per_year": ("Shortfall, mean", "Demand not met, mean of the years."),
    "shortfall_by_daily_limit_m3_per_year": (
        "  of it caused by the daily limit",
        "Demand that would be met without the daily limit, mean of the years; found by a run without it.",
    ),
    "demand_met_worst_year_in_ten_percent": (
        "Demand met in the worst year in ten",
        "Yearly share of demand delivered that nine years in ten reach (10th percentile of the years).",
    ),
    "short_days_worst_year_in_ten": (
        "Short days in the worst year in ten",
        "Short days that nine years in ten do not exceed (90th percentile of the years).",
    ),
    "missing_l_per_day_worst_year_in_ten": (
        "Missing in the worst year in ten",
        "Water missing, mean of a year's days, that nine years in ten do not exceed (90th percentile of the years).",
    ),
    "pumped_by_solar_percent": ("Pumped by the sun", "Share of the water pumped that PV power lifts."),
    "pumped_by_grid_percent": ("Added by the grid", "Share of the water pumped that the grid adds."),
    "pumped_by_generator_percent": ("Added by the generator", "Share of the water pumped that the generator adds."),
    "pv_used_kwh_per_year": ("PV energy used (DC)", "Energy that the array gives the pump, mean of the years."),
    "pv_unused_kwh_per_year": ("PV energy unused (DC)", "Energy that the array could have given, mean of the years."),
    "grid_kwh_per_year": ("Grid energy", "Energy bought from the grid, mean of the years."),
    "grid_hours_per_year": ("Running on the grid", "Hours in which the grid drives the pump, mean of the years."),
    "grid_peak_kw": ("Highest half-hour demand on the grid", "The highest half hour of all months and years."),
    "generator_kwh_per_year": ("Generator energy", "Energy that the generator gives, mean of the years."),
    "generator_hours_per_year": ("Running of the generator", "Hours that the generator runs, mean of the years."),
    "fuel_l_per_year": ("Fuel", "Fuel that the generator burns, mean of the years."),
    "capital_cost": ("Capital cost", "What is built in year 0, before grant and loan."),
    "life_cycle_cost": (
        "Life-cycle cost (present value)",
        "Present value of every cost of the analysis period less the residual value (NIST Handbook 135).",
    ),
    "life_cycle_construction": ("  Capital cost", "Its part that is paid in year 0."),
    "life_cycle_replacement": ("  Replacements", "Its part that replaces what wears out."),
    "life_cycle_upkeep": ("  Maintenance", "Its part that keeps the works up."),
    "life_cycle_grid": ("  Grid bills", "Its part that pays for grid energy."),
    "life_cycle_fuel": ("  Fuel", "Its part that pays for fuel, delivery included."),
    "life_cycle_generator_service": ("  Generator service", "Its part that services and overhauls the generator."),
    "life_cycle_yearly_costs": ("  Other yearly costs", "Its part that comes back each year."),
    "life_cycle_direct_support": ("  Direct support", "Its part that the authority spends on support."),
    "life_cycle_residual": ("  Residual value", "What the works are worth at the end, taken off."),
    "annualised_cost": (
        "Annualised cost",
        "Level yearly cost, in money of year 0, of the same present value (NIST Handbook 135).",
    ),
    "levelised_cost_per_m3": (
        "Levelised cost of water",
        "Life-cycle cost over the present volume delivered (average incremental economic cost, ADB 1999).",
    ),
    "annualised_cost_per_person": (
        "Annualised cost per person of the first year",
        "Annualised cost over the people served in year 1.",
    ),
    "revenue_present": ("Present value of what users pay", "Present value of water sold at the water price."),
    "net_present_value": ("Net present value", "Present value of what users pay less the life-cycle cost."),
    "grant": ("Grant", "Sum received in year 0 that need not be repaid."),
    "loan": ("Loan", "Sum received in year 0 that is repaid."),
    "own_funds": ("Own funds in year 0 (community or owner)", "Capital cost less grant and loan."),
    "owner_life_cycle_cost": (
        "Life-cycle cost to the owner",
        "Present value of all costs less grant and loan drawn, plus loan payments.",
    ),
    "capital_expenditure": ("Capital expenditure", "Capital cost (life-cycle components, IRC 2011)."),
    "operation_and_minor_maintenance": (
        "Operation and minor maintenance",
        "Maintenance, energy, fuel, services and other yearly costs (life-cycle components, IRC 2011).",
    ),
    "capital_maintenance": (
        "Capital maintenance (replacement)",
        "Replacements (life-cycle components, IRC 2011).",
    ),
    "expenditure_on_direct_support": (
        "Expenditure on direct support",
        "Support by the local authority, 0 where none was entered (life-cycle components, IRC 2011).",
    ),
    "residual_taken_off": ("Residual value, taken off", "What the works are worth at the end."),
    "cost_of_capital": (
        "Cost of capital (loan payments less loan)",
        "Present value of loan payments less the loan (life-cycle components, IRC 2011).",
    ),
    "tariff_operation": (
        "Tariff that covers operation",
        "Level price of water, in money of year 0, that pays for energy, service, maintenance and other yearly costs.",
    ),
    "tariff_operation_and_renewals": (
        "Tariff that covers operation and replacements",
        "The same with the level saving for replacements.",
    ),
    "tariff_full": (
        "Tariff that covers everything (full cost recovery)",
        "The same with direct support and the capital cost less grant and residual value, at the discount rate.",
    ),
    "household_m3_per_month": (
        "Water that a household wants",
        "Water per person and day, as in the demand, times the people of a household; a school's pupils left aside.",
    ),
    "bill_operation": ("Bill at the tariff for operation", "Water that a household wants at that tariff."),
    "bill_operation_and_renewals": (
        "Bill at the tariff for operation and replacements",
        "Water that a household wants at that tariff.",
    ),
    "bill_full": ("Bill at the tariff for everything", "Water that a household wants at that tariff."),
    "income_share_operation": ("Of a middle income: operation", "That bill over the income of the middle household."),
    "income_share_operation_and_renewals": (
        "Of a middle income: operation and replacements",
        "That bill over the income of the middle household.",
    ),
    "income_share_full": ("Of a middle income: everything", "That bill over the income of the middle household."),
    "lowest_income_share_operation": (
        "Of the poorest fifth's income: operation",
        "That bill over the income of a household of the poorest fifth.",
    ),
    "lowest_income_share_operation_and_renewals": (
        "Of the poorest fifth's income: operation and replacements",
        "That bill over the income of a household of the poorest fifth.",
    ),
    "lowest_income_share_full": (
        "Of the poorest fifth's income: everything",
        "That bill over the income of a household of the poorest fifth.",
    ),
    "burden_mean": (
        "Yearly burden, mean",
        "What is paid in years 1 to the last, after the grant: operation, support, replacements and loan payments.",
    ),
    "burden_largest": ("Yearly burden, largest", "The same in the year in which it is largest."),
    "burden_largest_year": ("  in year", "First year with that burden."),
    "renewal_saving": (
        "Level yearly saving for replacements",
        "Least level deposit, in money of year 0, with which one fund for all replacements is never overdrawn.",
    ),
    "renewal_fund_empty_year": ("  fund empty after year", "Year after whose replacements the fund is at nothing."),
    "renewal_fund_left": (
        "  fund left at the end",
        "What the fund holds after the last year, in money of year 0: it belongs to the next replacements.",
    ),
    "capital_cost_per_person": ("Capital cost per person", "Capital cost over the people served in year 1."),
    "recurrent_cost_per_person": (
        "Recurrent cost per person and year",
        "Operation, direct support and saving for replacements, level, over the people served in year 1.",
    ),
    "co2_kg": (
        "Carbon dioxide over the analysis period",
        "Of fuel burnt and energy bought; not counted where the factor of one of them is not given.",
    ),
    "co2_kg_per_year": ("Carbon dioxide, mean", "The same, mean of the years."),
    "co2_kg_per_m3": ("Carbon dioxide per m3 delivered", "The same over the water delivered."),
    "saving_present": (
        "Saving in life-cycle cost (negative: costs more)",
        "Life-cycle cost of the reference less this one's.",
    ),
    "internal_rate_of_return_percent": (
        "Internal rate of return",
        "Rate at which the extra capital cost equals the later savings against the reference.",
    ),
    "payback_years": (
        "Payback, simple",
        "Years until the extra capital cost is recovered, to stay so.",
    ),
    "discounted_payback_years": (
        "Payback, discounted",
        "The same with savings discounted.",
    ),
}
