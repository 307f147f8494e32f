"""A proposal to a funder, made from a finished study: the chapters that donors ask for, in their order."""

from __future__ import annotations

from planner.report.document import Report, Text
from planner.report.proposal.annexes import annex_blocks
from planner.report.proposal.design import design_blocks, options_blocks
from planner.report.proposal.material import Material, chapter
from planner.report.proposal.money import budget_blocks, recovery_blocks
from planner.report.proposal.operation import operation_blocks
from planner.report.proposal.outlook import environment_blocks, indicator_blocks, risk_blocks
from planner.report.proposal.people import need_blocks
from planner.report.proposal.source import source_blocks
from planner.report.proposal.summary import front_page, summary_blocks

CHAPTERS = {
    "summary": summary_blocks,
    "need": need_blocks,
    "source": source_blocks,
    "design": design_blocks,
    "options": options_blocks,
    "budget": budget_blocks,
    "recovery": recovery_blocks,
    "operation": operation_blocks,
    "environment": environment_blocks,
    "risks": risk_blocks,
    "indicators": indicator_blocks,
    "annexes": annex_blocks,
}
"""The chapters in the order in which donors ask for them."""


def proposal_report(material: Material) -> Report:
    """Build the proposal: its first page, then its chapters.

    Parameters
    ----------
    material : Material
        The study and what its checks found.
    """
    pages = [chapter(key, blocks(material), apart=key == "annexes") for key, blocks in CHAPTERS.items()]
    return Report(material.scenario.name, (front_page(material), *pages))


def count_to_complete(report: Report) -> int:
    """Count the lines that ask for a fact which the study does not hold."""
    return sum(isinstance(block, Text) and block.style == "open" for page in report.pages for block in page.blocks)
