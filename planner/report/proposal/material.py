"""What the chapters of a proposal are made from: the study, its checks, and the tables that the workbook shows too."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cached_property

from planner.answers.decision import Decision, decision
from planner.checks.verdict import Verdict
from planner.figures import figure
from planner.money.quantities import Thing
from planner.report.document import Block, Cell, Page, Table, Text
from planner.report.pages.bill import Bill, bill_of_study, bill_page
from planner.report.pages.head import head_page
from planner.report.pages.inputs import Inputs, inputs_of
from planner.report.pages.options import options_page
from planner.report.pages.records import records_page
from planner.report.pages.users import users_page
from planner.scenario.scenario import Scenario
from planner.scenario.walk import Field, walk
from planner.study.compare import OptionResult, Study
from planner.text import model_words, text

OWN = "own"


@dataclass(frozen=True)
class Material:
    """A finished study, what the site checks found, and what the answer becomes with their remedies.

    Attributes
    ----------
    study : Study
        The finished comparison.
    verdicts : tuple of Verdict
        What `planner.answers.of_study.study_verdicts` says of it.
    remedied : tuple of str
        What there is to say of the answer with the remedies.
    cautions : tuple of str
        What to beware of.
    """

    study: Study
    verdicts: tuple[Verdict, ...]
    remedied: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()

    @property
    def scenario(self) -> Scenario:
        """The scenario for all options."""
        return self.study.scenario

    @property
    def priced(self) -> bool:
        """Whether there are prices."""
        return self.scenario.priced

    @property
    def first(self) -> OptionResult:
        """The option ranked first, which is proposed."""
        return self.study.ranked[0]

    @property
    def unpriced(self) -> tuple[Thing, ...]:
        """What the proposed option needs and no price was entered for."""
        return self.first.unpriced if self.priced else ()

    @cached_property
    def decision(self) -> Decision:
        """What the study decides."""
        return decision(self.study, self.verdicts, self.remedied)

    @cached_property
    def fields(self) -> dict[str, Field]:
        """Every key of the scenario."""
        return {field.key: field for field in walk(self.scenario)}

    @cached_property
    def inputs(self) -> Inputs:
        """Rows of the inputs, which sums of money are written from."""
        return inputs_of(self.study)

    @cached_property
    def bill(self) -> Bill:
        """The bill of quantities of all options."""
        return bill_of_study(self.study, self.inputs)

    @cached_property
    def _tables(self) -> dict[str, Table]:
        pages = [options_page(self.study), head_page(self.study), records_page(self.scenario)]
        if self.priced:
            pages += [bill_page(self.study, self.bill), users_page(self.study, self.inputs)]
        return {block.key: block for page in pages for block in page.blocks if isinstance(block, Table)}

    def table(self, key: str) -> Table | None:
        """One table of the workbook by its key; None where the study has none."""
        return self._tables.get(key)

    def of_first(self, key: str, columns: Sequence[str], rows: Sequence[Hashable], heading: str = "") -> Table:
        """Some rows of a table with a column for each option, in the order given, for the proposed one alone.

        `OWN` among the columns stands for that of the option.
        """
        name = self.first.name
        table = self._tables[key].only([name if column == OWN else column for column in columns])
        shown = tuple(
            replace(each, heading=text("proposal.value")) if each.key == name else each for each in table.columns
        )
        plain = []
        for row in map(table.row, rows):
            plain.append(replace(row, cells={**row.cells, name: value_cell(row.cells[name])}))
        # The proposal takes several parts of one table of the workbook: each gets a key of its own.
        return replace(table, key=f"{key}.{rows[0]}", columns=shown, rows=tuple(plain), heading=heading)

    def value(self, key: str) -> float:
        """Figure of the catalogue of the proposed option."""
        return float(figure(key).read(self.first))

    def given(self, key: str) -> bool:
        """Whether the user gave a key."""
        field = self.fields.get(key)
        return field is not None and field.given


def to_complete(key: str, **slots: str) -> Text:
    """Make the line that asks for a fact which the study does not hold."""
    return Text(text(f"proposal.open.{key}", **slots), "open")


def asked(*keys: str) -> Iterator[Text]:
    """Make several such lines."""
    return (to_complete(key) for key in keys)


def chapter(key: str, blocks: Iterator[Block], *, apart: bool = False) -> Page:
    """Make a chapter; `apart` begins it on a new page."""
    title = text(f"proposal.chapter.{key}")
    return Page(f"proposal.{key}", title, title, blocks=tuple(blocks), one_page=apart)


def value_cell(cell: Cell) -> Cell:
    """Cell of the only option in a table: in no other column's company it need not stand out, words as numbers do."""
    return cell._replace(look=None, kind="word" if isinstance(cell.value, str) else cell.kind)


def named(field: Field) -> str:
    """What a key is called inside a sentence."""
    name = model_words(field.short)
    return name[:1].lower() + name[1:]
