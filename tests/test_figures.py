"""The catalogue of figures and the words that go with it."""

from __future__ import annotations

import string
from collections.abc import Iterator

import numpy as np
import pytest

from planner.figures import DAYS, FIGURES, Figure, figure
from planner.money.figures import FIGURES as MONEY
from planner.money.returns import RETURNS
from planner.money.users import users_definitions
from planner.study.compare import Study
from planner.text import text, texts_of
from tests.study.scenarios import studied


@pytest.fixture(scope="module")
def study() -> Study:
    return studied(finance__analysis_period_years=1, sources__solar__strings=2, tank__volume_m3=20.0)


def test_every_figure_has_its_own_key_label_and_definition() -> None:
    assert len({figure.key for figure in FIGURES}) == len(FIGURES)
    assert len({figure.label for figure in FIGURES}) == len(FIGURES)
    assert all(figure.definition.endswith(".") and text(figure.absent) for figure in FIGURES)


@pytest.mark.parametrize("figure", FIGURES, ids=lambda each: each.key)
def test_every_figure_can_be_read_from_every_option(figure: Figure, study: Study) -> None:
    for option in study.options:
        value = float(figure.read(option))
        assert np.isfinite(value) or text(figure.absent)
        if figure.money in MONEY:
            assert value == float(option.life.figures[figure.money]) or np.isnan(value)


def test_figures_of_money_have_one_definition_and_no_definition_is_left_out() -> None:
    named = {figure.money for figure in FIGURES if figure.money}
    assert named <= set(MONEY) | set(users_definitions()) | set(RETURNS)
    assert set(MONEY) | set(users_definitions()) <= named
    assert all(figure.money for figure in FIGURES if figure.group in ("money", "components", "users", "comparison"))


def slots(sentence: str) -> Iterator[str]:
    return (name for _, name, _, _ in string.Formatter().parse(sentence) if name is not None)


def test_slots_of_sentences_are_named() -> None:
    from planner.text.en import SENTENCES

    for key, sentence in SENTENCES.items():
        assert all(name.isidentifier() for name in slots(sentence)), key


def test_every_word_explained_has_its_meaning() -> None:
    words = *texts_of("word."), *texts_of("word_of_money.")
    assert len(words) > 10
    assert sorted(words) == sorted(texts_of("meaning."))


def test_what_the_daily_limit_costs_is_a_figure(study: Study) -> None:
    limited = studied(
        finance__analysis_period_years=1,
        tank__volume_m3=20.0,
        borehole__daily_limit_m3=20.0,
        service__options=["generator"],
    )
    shown = figure("shortfall_by_daily_limit_m3_per_year")
    missing, short = (float(shown.read(option)) for option in (limited.options[0], study.option("generator")))
    demanded, delivered = (
        float(getattr(limited.options[0].quantities, f"{name}_m3").sum()) for name in ("demand", "delivered")
    )
    assert short == 0.0
    assert 0 < missing <= demanded - delivered + 1e-6


def test_a_rating_is_that_of_the_set_of_the_option(study: Study) -> None:
    rated = {option.name: float(figure("generator_kw").read(option)) for option in study.options}
    assert rated["generator"] == rated["solar + generator"] == 7.5
    assert np.isnan(rated["solar"])
    assert np.isnan(rated["grid"])


def test_carbon_dioxide_that_is_not_known_in_full_is_not_counted() -> None:
    quick = {"finance__analysis_period_years": 1, "tank__volume_m3": 20.0, "sources__solar__strings": 2}
    unknown = studied(**quick, sources__grid__co2_kg_per_kwh=None)
    known = studied(**quick, sources__grid__co2_kg_per_kwh=0.5)
    for shown in (each for each in FIGURES if each.group == "carbon"):
        for option in unknown.options:
            counted = "grid" not in option.sources
            assert np.isfinite(float(shown.read(option))) == counted, option.name
            assert shown.words_for(option) == text(shown.absent if counted else "figure.not_counted")
        assert all(np.isfinite(float(shown.read(option))) for option in known.options)


def test_the_reference_says_that_it_is_one(study: Study) -> None:
    against = study.option(study.reference)
    for shown in (each for each in FIGURES if each.group == "comparison"):
        assert np.isnan(float(shown.read(against)))
        assert shown.words_for(against) == "reference"
        assert all(shown.words_for(option) == text(shown.absent) for option in study.options if option != against)


def test_days_without_water_are_those_of_the_hours(study: Study) -> None:
    short, month, in_month, longest, litres = (
        np.array([float(figure(key).read(option)) for option in study.options]) for key in DAYS
    )
    assert (in_month <= short + 1e-9).all()
    assert (longest <= short).all()
    lacking = short > 0
    assert lacking.any()
    assert not lacking.all()
    assert set(month[lacking]) <= set(range(1, 13))
    assert np.isnan(litres[~lacking]).all()
    for option, days, missing_l in zip(study.options, short, litres, strict=True):
        did = option.outcome
        shortfall_m3 = float((did.demand_m3 - did.delivered_m3).sum())
        if days:
            assert 0.1 * did.demand_m3.min() / 31 < missing_l / 1000 * (1 + 1e-9)
            assert days * missing_l / 1000 <= shortfall_m3 + 1e-6
            worst = int(np.argmin(did.delivered_m3.sum(axis=-2) / did.demand_m3.sum(axis=-2)))
            assert float(figure("worst_month").read(option)) == worst + 1
            assert float(figure("worst_month_short_days").read(option)) == did.month_short_days[:, worst].mean()
