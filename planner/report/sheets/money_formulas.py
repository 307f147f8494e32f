"""Formulas of the figures that sum up an option's money, mirroring `money.lifecycle` and `money.returns`."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from planner.money.returns import AT_ONCE, LOSES_ALL, NEVER_SAVES, NO_OUTLAY, NOT_RECOVERED
from planner.report.sheets import cash as columns
from planner.report.sheets import returns as steps
from planner.report.sheets.cash import COLUMN_OF, CashCells
from planner.report.sheets.options import SEVERAL
from planner.report.sheets.returns import ReturnCells
from planner.report.sheets.simulated import Simulated
from planner.study.compare import OptionResult, Study


@dataclass(frozen=True)
class MoneyFormulas:
    """Formulas by option, from where flows, quantities and steps stand."""

    study: Study
    simulated: Simulated
    flows: dict[str, CashCells]
    returns: ReturnCells

    def _sum(self, option: OptionResult, column: int) -> str:
        return self.flows[option.name].sum(column)

    def _present_of(self, option: OptionResult, column: int) -> str:
        flows = self.flows[option.name]
        return f"SUMPRODUCT({flows.range(column)},{flows.range(columns.FACTOR)})"

    def build(self, option: OptionResult) -> str:
        """Construction, before grant and loan."""
        return f"={self.flows[option.name].start(COLUMN_OF['construction'])}"

    def present(self, option: OptionResult) -> str:
        """Present cost."""
        return f"={self._sum(option, columns.PRESENT)}"

    def category(self, option: OptionResult, name: str) -> str:
        """Present value of one kind of cost."""
        return f"={self._present_of(option, COLUMN_OF[name])}"

    def group(self, option: OptionResult, names: Sequence[str]) -> str:
        """Present value of several kinds of cost."""
        return "=" + "+".join(self._present_of(option, COLUMN_OF[name]) for name in names)

    def own_funds(self, option: OptionResult) -> str:
        """What is left of the construction after grant and loan."""
        return f"{self.build(option)}-{self._sum(option, columns.GRANT)}-{self._sum(option, columns.LOAN)}"

    def capital(self, option: OptionResult) -> str:
        """Cost of capital: present value of the loan's payments less the loan."""
        return f"={self._present_of(option, columns.PAYMENT)}-{self._sum(option, columns.LOAN)}"

    def yearly(self, option: OptionResult) -> str:
        """Equivalent yearly cost; a rate too small to divide by counts as none."""
        return f"={self._yearly(option)}"

    def _yearly(self, option: OptionResult) -> str:
        present, rate, years = self._sum(option, columns.PRESENT), self._real(option), self.simulated.years
        return f"IF(ABS({rate})<0.0000001,{present}/{years},-PMT({rate}/100,{years},{present}))"

    def _real(self, option: OptionResult) -> str:
        return self.flows[option.name].real_rate

    def levelised(self, option: OptionResult) -> str:
        """Present cost per present m3."""
        water = self._sum(option, columns.WATER)
        return f'=IF({water}>0,{self._sum(option, columns.PRESENT)}/{water},"nothing delivered")'

    def per_person(self, option: OptionResult) -> str:
        """Equivalent yearly cost per person of the first year."""
        people = self.simulated.people
        return f'=IF(N({people})>0,{self._yearly(option)}/{people},"no people")'

    def revenue(self, option: OptionResult) -> str:
        """Present value of what users pay."""
        return f"={self._present_of(option, columns.REVENUE)}"

    def net(self, option: OptionResult) -> str:
        """Net present value."""
        return f"={self._present_of(option, columns.REVENUE)}-{self._sum(option, columns.PRESENT)}"

    def grant(self, option: OptionResult) -> str:
        """Grant received in year 0."""
        return f"={self._sum(option, columns.GRANT)}"

    def loan(self, option: OptionResult) -> str:
        """Loan received in year 0."""
        return f"={self._sum(option, columns.LOAN)}"

    def owner(self, option: OptionResult) -> str:
        """Present cost to the owner."""
        return f"={self._sum(option, columns.OWNER_PRESENT)}"

    def comparison(self, option: OptionResult, name: str) -> str:
        """A figure or a remark of the comparison with the reference, by its name in `Comparison`."""
        if option.comparison is None:
            return '="–"' if name.endswith("reason") else '="reference"'
        of_name = {
            "saving_present": self._saving,
            "internal_rate_of_return": self._rate,
            "irr_reason": self._rate_reason,
        }
        if name in of_name:
            return of_name[name](option)
        discounted = name.startswith("discounted")
        return (
            self._payback_reason(option, discounted) if name.endswith("reason") else self._payback(option, discounted)
        )

    def _saving(self, option: OptionResult) -> str:
        reference = self.study.option(self.study.reference)
        return f"={self._sum(reference, columns.PRESENT)}-{self._sum(option, columns.PRESENT)}"

    def _step(self, option: OptionResult, step: int) -> str:
        return self.returns.of(option.name, step)

    def _rate(self, option: OptionResult) -> str:
        outlay, slack = self._step(option, steps.OUTLAY), self._step(option, steps.SLACK)
        savers, changes = self._step(option, steps.SAVERS), self._step(option, steps.CHANGES)
        rate = f"100*IRR({self.flows[option.name].range(columns.SAVING)},{self._step(option, steps.GUESS)})"
        return f'=IF({outlay}>=-{slack},"none",IF({savers}=0,"none",IF({changes}=1,{rate},"none")))'

    def _rate_reason(self, option: OptionResult) -> str:
        outlay, slack = self._step(option, steps.OUTLAY), self._step(option, steps.SLACK)
        savers, changes = self._step(option, steps.SAVERS), self._step(option, steps.CHANGES)
        last = f'IF({changes}=0,"{LOSES_ALL}",IF({changes}=1,"–","{SEVERAL}"))'
        return f'=IF({outlay}>=-{slack},"{NO_OUTLAY}",IF({savers}=0,"{NEVER_SAVES}",{last}))'

    def _payback_parts(self, option: OptionResult, discounted: bool) -> tuple[str, str, str, str, str]:
        """Addresses: ever behind, last year behind, rounding, flows, their running sum."""
        flows = self.flows[option.name]
        if discounted:
            names = (steps.EVER_PRESENT, steps.LAST_PRESENT, steps.SLACK_PRESENT)
            ranges = (flows.range(columns.SAVING_PRESENT), flows.range(columns.SAVED_PRESENT))
        else:
            names = (steps.EVER, steps.LAST, steps.SLACK)
            ranges = (flows.range(columns.SAVING), flows.range(columns.SAVED))
        ever, last, slack = (self._step(option, name) for name in names)
        return ever, last, slack, *ranges

    def _payback(self, option: OptionResult, discounted: bool) -> str:
        ever, last, slack, flows, saved = self._payback_parts(option, discounted)
        outlay, years = self._step(option, steps.OUTLAY), self.simulated.years
        paid = f"{last}-INDEX({saved},{last}+1)/INDEX({flows},{last}+2)"
        return f'=IF({ever}=0,0,IF({outlay}>=-{slack},"never",IF({last}<{years},{paid},"never")))'

    def _payback_reason(self, option: OptionResult, discounted: bool) -> str:
        ever, last, slack, _, _ = self._payback_parts(option, discounted)
        outlay, years = self._step(option, steps.OUTLAY), self.simulated.years
        rest = f'IF({last}<{years},"–","{NOT_RECOVERED}")'
        return f'=IF({ever}=0,"{AT_ONCE}",IF({outlay}>=-{slack},"{NO_OUTLAY}",{rest}))'
