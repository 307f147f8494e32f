"""Labels of the money's columns and figures, by their keys; '{currency}' and '{reference}' are filled in."""

from __future__ import annotations

COST_LABELS = {
    "construction": "Construction",
    "replacement": "Replacement",
    "upkeep": "Upkeep",
    "grid": "Grid bills",
    "fuel": "Fuel",
    "generator_service": "Generator service",
    "yearly_costs": "Yearly costs",
    "residual": "Residual value",
}
COLUMN_LABELS = {
    **{key: f"{label} ({{currency}})" for key, label in COST_LABELS.items()},
    "total_cost": "Total cost ({currency})",
    "discount_factor": "Discount factor",
    "present_value": "Present value ({currency})",
    "cumulated": "Cumulated ({currency})",
    "revenue": "Paid by users ({currency})",
    "grant_received": "Grant ({currency})",
    "loan_received": "Loan ({currency})",
    "loan_payment": "Loan payment ({currency})",
    "owner_cost": "Owner's cost ({currency})",
    "owner_present_value": "Owner's present value ({currency})",
    "price_level": "Price level",
    "water_present_m3": "Water, present (m3)",
    "saving": "Saving against {reference} ({currency})",
    "saved": "Saving, cumulated ({currency})",
    "saving_present": "Saving, present ({currency})",
    "saved_present": "Saving, present, cumulated ({currency})",
}
"""Columns of the sheet 'Cash flow', in their order."""
SIMULATED_LABELS = {
    "demand_m3": "Demand (m3)",
    "delivered_m3": "Delivered (m3)",
    "fuel_l": "Fuel (L)",
    "grid_kwh": "Grid (kWh)",
    "grid_peaks_kw": "Sum of monthly peaks (kW)",
    "hours": "Generator (h)",
    "run_h": "Generator, run in all (h)",
    "services": "Services",
    "used_h": "Hours of the set at hand (h)",
    "age_years": "Years of the set at hand",
    "overhauls": "Overhauls",
    "worn": "Sets worn out by hours",
    "bought": "Generators replaced",
    "kept_h": "Hours of the set kept (h)",
    "kept_years": "Years of the set kept",
}
STEP_LABELS = {
    "outlay": "Saving in year 0",
    "slack": "Rounding, taken as nothing",
    "slack_present": "Rounding, discounted",
    "savers": "Years that save",
    "changes": "Rates that balance",
    "rate_below": "Rate below the first",
    "rate_above": "Rate above the first",
    "ever_behind": "Ever behind (1: yes)",
    "last_behind": "Last year end behind",
    "ever_behind_present": "Ever behind, discounted",
    "last_behind_present": "Last year end behind, discounted",
}
COMPONENT_LABELS = {
    "capital_expenditure": "Capital expenditure",
    "operation": "Operation and minor maintenance",
    "capital_maintenance": "Capital maintenance (replacement)",
    "residual_value": "Residual value, taken off",
}
COST_OF_CAPITAL = "Cost of capital (loan payments less loan)"
SUPPORT = "Direct and indirect support"
OWN_FUNDS = "Own funds in year 0 (community or owner)"
