"""A scenario whose prices, lives and rates are cells of the sheet 'Inputs', so that pricing it writes formulas."""

from __future__ import annotations

from planner.money.formula import Formula, Operand
from planner.report.sheets.inputs import InputCells
from planner.scenario.operands import with_operands
from planner.scenario.paths import Path, dotted
from planner.scenario.scenario import Scenario
from planner.scenario.walk import walk
from planner.study.compare import OptionResult

PERCENTAGES = (("costs", "installation_percent"), ("costs", "contingency_percent"))
BLOCK_END = "up_to_kwh_month"


def cell_scenario(option: OptionResult, inputs: InputCells) -> Scenario:
    """Put cells in the place of what money alone hangs on.

    Parameters
    ----------
    option : OptionResult
        The option; its scenario with its overrides counts.
    inputs : InputCells
        Where the inputs stand.

    Returns
    -------
    Scenario
        Numbers that change hours, water or energy stay, and so do those that change which lines there are: the ends
        of tariff blocks, which part simulated energy, and a percentage that was 0.
    """
    money = {field.path for field in walk(option.scenario) if field.changes == "money"}

    def cell(path: Path, value: Operand) -> Operand:
        fixed = path not in money or path[-1] == BLOCK_END or (path in PERCENTAGES and value == 0)
        return value if fixed else Formula.leaf(inputs.of(option.name, dotted(path)))

    return with_operands(option.scenario, cell)
