"""The page 'What users pay': what it shows, what it says is not known, what it leaves out. All of it is invented."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from planner.answers.cautions import number_cautions
from planner.answers.of_study import below_headline, study_verdicts
from planner.answers.users import users_sentence
from planner.figures import figure
from planner.report.document import Page, Table, Text
from planner.report.pages.inputs import inputs_of
from planner.report.pages.users import users_page
from planner.report.run_workbook import run_report
from planner.scenario.scenario import NO_CURRENCY
from planner.study.compare import Study
from tests.study.scenarios import studied_once

SHORT: dict[str, Any] = {
    "finance__analysis_period_years": 3,
    "service__options": ["solar", "generator"],
    "sources__solar__strings": 2,
    "tank__volume_m3": 20.0,
    "controller__life_years": 2,
}
HOMES = {"size": 5.0, "income_per_month": 100.0, "lowest_income_per_month": 20.0}


def page_of(**changes: Any) -> tuple[Study, Page]:
    study = studied_once(**SHORT | changes)
    return study, users_page(study, inputs_of(study))


def table(page: Page, key: str) -> Table:
    return next(block for block in page.blocks if isinstance(block, Table) and block.key == key)


def words(page: Page) -> str:
    return " ".join(block.text for block in page.blocks if isinstance(block, Text))


def test_the_page_shows_the_catalogue_and_judges_the_bill() -> None:
    study, page = page_of(households=HOMES)
    shown = table(page, "users")
    for option in study.ranked:
        bill = shown.cell("bill_operation_and_renewals", option.name).value
        assert bill == float(figure("bill_operation_and_renewals").read(option))
        share = float(shown.cell("lowest_income_share_operation_and_renewals", option.name).value or 0)
        assert share == pytest.approx(100 * float(bill or 0) / 20)
        said = shown.cell("lowest_income_share_operation_and_renewals.judged", option.name).value
        assert said == ("at most 3 %" if share <= 3 else "between 3 and 5 %" if share <= 5 else "above 5 %")
    said = {
        shown.cell(f"{income}_operation_and_renewals.judged", option.name).value
        for income in ("income_share", "lowest_income_share")
        for option in study.ranked
    }
    assert len(said) > 1


def test_without_households_there_is_no_bill_and_that_is_said() -> None:
    _, page = page_of()
    keys = {row.key for row in table(page, "users").data_rows()}
    assert not any(str(key).startswith(("bill_", "income_", "lowest_", "household_")) for key in keys)
    assert "[households] is not given" in words(page)


def test_pupils_are_no_household() -> None:
    users = [{"kind": "people", "name": "Pupils", "count": 500, "litres_per_person_day": 5, "draw_profile": "school"}]
    _, page = page_of(households=HOMES, demand__users=users)
    assert "no user of the water is people at home" in words(page)


def test_costs_are_held_against_the_published_ranges_in_dollars() -> None:
    study, page = page_of(costs__yearly=[])
    ranges = table(page, "users.ranges")
    recurrent = ranges.row("recurrent_cost_per_person").cells
    assert (recurrent["low"].value, recurrent["high"].value) == (3.0, 15.0)
    for option in study.ranked:
        value = float(figure("recurrent_cost_per_person").read(option))
        start = "! below" if value < 3 else "above" if value > 15 else "within"
        assert str(recurrent[option.name].value).startswith(start)
    assert "in US dollars of 2011 as published" in words(page)
    _, risen = page_of(finance__usd_prices_since_2011=1.4)
    assert table(risen, "users.ranges").cell("capital_cost_per_person", "low").value == pytest.approx(30 * 1.4)


def test_another_currency_is_compared_by_its_exchange_rate_or_it_is_said_what_would_be() -> None:
    _, page = page_of(currency="KES")
    assert not any(isinstance(block, Table) and block.key == "users.ranges" for block in page.blocks)
    assert "Not compared" in words(page)
    assert "30 to 131" in words(page)
    study, page = page_of(currency="KES", finance__programme_currency="USD", finance__exchange_rate=130.0)
    assert table(page, "users.ranges").cell("recurrent_cost_per_person", "high").value == pytest.approx(15 * 130)
    first = study.ranked[0]
    brought = table(page, "users.programme").cell("capital_cost", first.name).value
    assert brought == pytest.approx(float(first.life.capital_cost) / 130)


def test_a_budget_below_the_range_is_warned_of_and_one_within_is_not() -> None:
    cheap = studied_once(**SHORT, demand__growth_percent_per_year=0.0, finance__usd_prices_since_2011=20.0)
    assert float(figure("recurrent_cost_per_person").read(cheap.ranked[0])) < 3 * 20
    assert any("IRC WASHCost" in said for said in number_cautions(cheap))
    supported = studied_once(**SHORT, costs__direct_support_per_person_year=4.0)
    assert float(figure("recurrent_cost_per_person").read(supported.ranked[0])) >= 4
    assert not any("IRC WASHCost" in said for said in number_cautions(supported))
    elsewhere = studied_once(**SHORT, currency="KES")
    assert not any("IRC WASHCost" in said for said in number_cautions(elsewhere))


def test_a_technical_answer_shows_none_of_it() -> None:
    priced = studied_once(**SHORT, finance__usd_prices_since_2011=20.0)
    technical = replace(priced, scenario=priced.scenario.model_copy(update={"currency": NO_CURRENCY}))
    for study, shown in ((priced, True), (technical, False)):
        report = run_report(study, number_cautions(study), study_verdicts(study))
        assert ("users" in {page.key for page in report.pages}) == shown
        assert any("IRC WASHCost" in said for said in number_cautions(study)) == shown


def test_the_answer_says_what_users_pay_unless_something_has_no_price() -> None:
    study = studied_once(**SHORT)
    first = study.ranked[0]
    said = users_sentence(study)
    assert said.startswith(f"{first.name}: users cover operation and replacements at USD ")
    assert f"USD {float(first.life.users['tariff_operation_and_renewals']):.2f} a m3" in said
    assert said in below_headline(study, study_verdicts(study))
    assert "nothing is replaced" in users_sentence(studied_once(**SHORT | {"controller__life_years": 15}))
    assert users_sentence(studied_once(**SHORT, pump__price=None)) == ""
