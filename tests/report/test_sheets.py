"""What the sheets say against the study they were written from."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import openpyxl
import pytest

from planner.answers.of_study import failed_of_first, study_verdicts
from planner.figures import figure
from planner.scenario.starter import statuses
from planner.scenario.walk import walk
from planner.study.compare import Study
from planner.text import text
from planner.water.duty import duty_point
from tests.report.conftest import Written, write

Rows = list[tuple[Any, ...]]


def rows_of(sheet: Any) -> Rows:
    return [tuple(row) for row in sheet.iter_rows(values_only=True)]


def table(sheet: Any, first_header: str) -> list[dict[str, Any]]:
    """Rows under a header, by its texts, up to the first empty row."""
    rows = rows_of(sheet)
    start = next(number for number, row in enumerate(rows) if row[0] == first_header)
    found = []
    for row in rows[start + 1 :]:
        if row[0] is None:
            break
        found.append({str(header): value for header, value in zip(rows[start], row, strict=True) if header is not None})
    return found


def block(sheet: Any, option: str) -> Rows:
    """Rows of an option's block, below its heading."""
    rows = rows_of(sheet)
    headings = [n for n, row in enumerate(rows) if str(row[0])[:1].isdigit() and ". " in str(row[0])]
    wanted = next(n for n in headings if str(rows[n][0]).removesuffix(", recommended").split(". ")[1] == option)
    after = [n for n in headings if n > wanted] or [len(rows)]
    return [row for row in rows[wanted + 1 : after[0]] if row[0] is not None]


def column_of(sheet: Any, heading: str) -> int:
    for row in rows_of(sheet):
        if heading in row:
            return row.index(heading)
    raise AssertionError(heading)


def test_answer_ranks_the_options_with_word_and_sign(written: Written) -> None:
    study, currency = written.study, written.study.scenario.currency
    lines = table(written.values["Answer"], "Supply option, best first")
    assert [line["Supply option, best first"] for line in lines] == list(study.ranking)
    for line, option in zip(lines, study.ranked, strict=True):
        assert line["Meets target"] == ("✓ yes" if option.meets_service else "✗ no")
        assert line["Short days a year"] == pytest.approx(float(option.outcome.short_days.mean()))
        assert line["Tank (m3)"] == option.tank_m3
        assert line["PV array (kWp)"] == (option.array_kw or "–")
        assert line[f"Capital cost ({currency})"] == pytest.approx(float(option.life.capital_cost))
        assert line[f"Life-cycle cost ({currency})"] == pytest.approx(float(option.life.present_cost))
        tariff = float(figure("tariff_operation_and_renewals").read(option))
        assert line[f"Users pay for operation and replacements ({currency}/m3)"] == pytest.approx(tariff)
        assert len(line) == 8


def test_answer_recommends_only_what_meets_the_target(written: Written) -> None:
    texts = [str(row[0]) for row in rows_of(written.values["Answer"])]
    recommended = [text for text in texts if text[2:].startswith("Recommended")]
    missed = [text for text in texts if text.startswith("✗ No option")]
    if written.study.best is None:
        assert not recommended
        assert len(missed) == 1
        assert written.study.ranking[0] in missed[0]
    else:
        faults = failed_of_first(written.study, study_verdicts(written.study))
        assert len(recommended) == (0 if faults else 1)
        assert all(f": {written.study.best}, which meets" in text for text in recommended)
        assert bool(faults) == any(text.startswith("✗ Not yet to be built") for text in texts)
        assert not missed


def test_the_three_studies_cover_both_verdicts(rich: Written, plain: Written, alone: Written) -> None:
    assert {study.best is None for study in (rich.study, plain.study, alone.study)} == {True, False}


def test_answer_names_what_it_depends_on(rich: Written) -> None:
    values = {line["What it depends on"]: line for line in table(rich.values["What it rests on"], "What it depends on")}
    fuel = values["Fuel price at the filling station (USD/L)"]
    assert (fuel["Value"], fuel["Basis"]) == (1.25, text("inputs.status_starter"))
    assert values["Growth of the fuel price (%/year)"]["Basis"] == "default"
    demand = rich.study.options[0].quantities.demand_m3[0] / 365
    assert values["Demand in the first year (m3/day)"]["Value"] == pytest.approx(demand)


def test_options_say_why_a_rate_is_missing(written: Written) -> None:
    study = written.study
    lines = {str(line["Figure"]): line for line in _figures(written)}
    for option in study.options:
        rate = lines["Internal rate of return"][option.name]
        reason = lines["  why there is none"][option.name]
        if option.comparison is None:
            assert rate == "reference"
        elif np.isnan(option.comparison.internal_rate_of_return):
            assert rate == "none"
            assert reason == option.comparison.irr_reason != ""
        else:
            assert rate == pytest.approx(100 * float(option.comparison.internal_rate_of_return))
            assert reason == "–"


def test_each_missing_figure_has_its_own_reason(plain: Written, tmp_path: Path) -> None:
    study = plain.study
    name, known = next((option.name, option.comparison) for option in study.options if option.comparison)
    figures = ("internal_rate_of_return", "simple_payback_years", "discounted_payback_years")
    remarks = ("irr_reason", "payback_reason", "discounted_payback_reason")
    words = dict(zip(remarks, ("no rate", "no payback", "no discounted payback"), strict=True))
    comparison = replace(known, **dict.fromkeys(figures, np.array(np.nan)), **words)
    options = tuple(replace(o, comparison=comparison) if o.name == name else o for o in study.options)
    write(replace(study, options=options), tmp_path / "reasons.xlsx")
    rows = rows_of(openpyxl.load_workbook(tmp_path / "reasons.xlsx", data_only=True)["Options"])
    column = next(row for row in rows if row[0] == "Figure").index(name)
    start = next(number for number, row in enumerate(rows) if row[0] == "Internal rate of return")
    shown = [row[column] for row in rows[start : start + 6]]
    assert shown == ["none", "no rate", "never", "no payback", "never", "no discounted payback"]


def _figures(written: Written) -> list[dict[str, Any]]:
    rows = rows_of(written.values["Options"])
    header = next(row for row in rows if row[0] == "Figure")
    return [
        {str(name): value for name, value in zip(header, row, strict=True)} for row in rows if row[0] and row != header
    ]


def test_options_add_up_the_present_cost_by_category(written: Written) -> None:
    lines = _figures(written)
    names = [str(line["Figure"]) for line in lines]
    first = names.index(figure("life_cycle_cost").label) + 1
    last = names.index(figure("annualised_cost").label)
    assert last - first >= 3
    for option in written.study.options:
        total = sum(line[option.name] for line in lines[first:last])
        assert total == pytest.approx(lines[first - 1][option.name], rel=1e-9)


def test_water_is_conserved_in_months_and_years(written: Written) -> None:
    sheet, study = written.values["Water"], written.study
    rise = column_of(sheet, "Change in storage (m3)")
    pumped, delivered = column_of(sheet, "Pumped in all (m3)"), column_of(sheet, "Delivered (m3)")
    lost = column_of(sheet, "Lost to leakage (m3)")
    years = study.scenario.finance.analysis_period_years
    for option in study.options:
        rows = block(sheet, option.name)
        assert [row[0] for row in rows] == [
            *("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec", "First year"),
            *(f"Year {year + 1}" for year in range(years)),
            "All years",
        ]
        # The rise of a month follows from the balance, that of a year from the levels simulated.
        assert rows[12][rise] == pytest.approx(rows[13][rise], abs=1e-6)
        for row in rows:
            assert row[pumped] - row[delivered] - row[lost] == pytest.approx(row[rise], abs=1e-6)
        assert rows[-1][delivered] == pytest.approx(option.quantities.delivered_m3.sum())


def test_water_says_where_nothing_is_wanted(alone: Written) -> None:
    sheet = alone.values["Water"]
    share = column_of(sheet, "Demand met (%)")
    rows = block(sheet, "solar")
    assert rows[0][share] == "no demand"
    assert rows[5][share] > 0


def test_energy_splits_the_grid_by_bands(rich: Written) -> None:
    sheet = rich.values["Energy"]
    grid, outside = column_of(sheet, "Grid (kWh)"), column_of(sheet, "Grid, outside the bands (kWh)")
    evening = column_of(sheet, "Grid, -Evening (kWh)")
    option = rich.study.option("grid")
    rows = block(sheet, "grid")
    by_band = option.outcome.grid_kwh.sum(axis=(0, 1))
    assert by_band.min() > 0
    assert rows[-1][outside] == pytest.approx(by_band[0])
    assert rows[-1][evening] == pytest.approx(by_band[1])
    assert rows[-1][grid] == pytest.approx(by_band.sum())
    peak = column_of(sheet, "Highest half-hour demand on the grid (kW)")
    assert rows[-1][peak] == pytest.approx(option.outcome.grid_peak_kw.max())


def test_head_adds_up_to_the_duty_point(written: Written) -> None:
    sheet, duty = written.values["Head"], written.study.ranked[0].duty
    parts = table(sheet, "Part")
    assert parts[-1]["Head (m)"] == pytest.approx(duty.total_head_m)
    assert sum(part["Head (m)"] for part in parts[:-1]) == pytest.approx(duty.total_head_m, abs=0.005)
    runs = table(sheet, "Run of pipe")
    assert [run["Length (m)"] for run in runs] == [
        segment.length_m for segment in written.study.scenario.pipeline.segments
    ]
    friction = sum(run["Friction (m)"] + run["Fittings (m)"] for run in runs)
    assert friction == pytest.approx(duty.friction_m)
    for run in runs:
        bore_m = run["Inside diameter (mm)"] / 1000
        assert run["Velocity (m/s)"] == pytest.approx(duty.flow_m3h / 3600 / (np.pi * bore_m**2 / 4))


def test_head_follows_the_water_level_through_the_months(rich: Written) -> None:
    months = table(rich.values["Head"], "Month")
    assert [month["Static water level (m)"] for month in months] == rich.study.scenario.borehole.static_level_by_month_m
    own = rich.study.ranked[0].scenario
    for number, month in enumerate(months):
        duty = duty_point(own.borehole, own.pipeline, own.pump, own.controller.power_limit_w, month=number)
        level = month["Static water level (m)"]
        assert month["Static lift (m)"] == pytest.approx(level + own.pipeline.rise_to_tank_inlet_m)
        assert month["Flow (m3/h)"] == pytest.approx(duty.flow_m3h)
        assert month["Total head (m)"] == pytest.approx(duty.total_head_m)


def test_head_shows_options_with_another_pump(rich: Written) -> None:
    others = table(rich.values["Head"], "Supply option")
    first = rich.study.ranked[0].duty
    assert [line["Supply option"] for line in others] == [o.name for o in rich.study.ranked if o.duty != first]
    assert others


def test_tank_marks_the_chosen_size(written: Written) -> None:
    rows = rows_of(written.values["Tank"])
    start = next(number for number, row in enumerate(rows) if "Chosen" in row)
    curve = [dict(zip(rows[start], row, strict=True)) for row in rows[start + 1 :] if row[0] is not None]
    chosen = {line["Supply option"]: line["Tank (m3)"] for line in curve if line["Chosen"] == "✓ chosen"}
    assert chosen == {option.name: option.tank_m3 for option in written.study.options}
    share = {(line["Supply option"], line["Tank (m3)"]): line["Demand met (%)"] for line in curve}
    for option in written.study.options:
        assert share[option.name, option.tank_m3] == pytest.approx(100 * option.delivered_share, abs=0.5)


def test_tank_compares_the_float_switch_settings(plain: Written) -> None:
    rows = rows_of(plain.values["Tank"])
    start = next(number for number, row in enumerate(rows) if "Start level (% of tank)" in row)
    end = next(number for number, row in enumerate(rows) if number > start and row[0] is None)
    trials = rows[start + 1 : end]
    wanted = [trial for option in plain.study.ranked for trial in option.trials]
    assert len(trials) == len(wanted) > 10
    for row, trial in zip(trials, wanted, strict=True):
        assert row[1:3] == (trial.start_percent, trial.stop_percent)
        assert row[5] == pytest.approx(trial.grid_kwh_per_year)
        assert row[8] == pytest.approx(trial.equivalent_yearly_cost)
    assert sum("used" in str(row[10]) for row in trials) == sum(bool(option.trials) for option in plain.study.options)


def test_bill_totals_are_the_build_costs(written: Written) -> None:
    sheet, study = written.values["Bill of quantities"], written.study
    currency = study.scenario.currency
    rows = rows_of(sheet)
    total = next(row for row in rows if row[0] == f"Capital cost ({currency})")
    upkeep = next(row for row in rows if str(row[0]).startswith("Maintenance ("))
    header = next(row for row in rows if row[0] == "Line")
    for option in study.options:
        column = header.index(f"{option.name} ({currency})")
        assert total[column] == pytest.approx(float(option.life.capital_cost))
        first_year = float(option.life.flows.upkeep[1])
        if study.scenario.finance.prices == "nominal":
            first_year /= 1 + study.scenario.finance.inflation_percent / 100
        assert upkeep[column] == pytest.approx(first_year)


def test_bill_lists_equal_lines_of_all_options_once(rich: Written) -> None:
    rows = rows_of(rich.values["Bill of quantities"])
    names = [row[0] for row in rows]
    assert names.count("Fence") == 2  # given twice in the scenario
    assert names.count("Borehole") == 2  # the heading and the line
    assert names.count("Installation") == 3  # the heading, the usual percentage and that of solar + grid
    assert names.count("Tank, 30 m3") == 1


def test_replacements_have_the_headings_of_the_bill(written: Written) -> None:
    bill, replacements = (
        [row[0] for row in rows_of(written.values[name]) if row[0] and not any(row[1:])]
        for name in ("Bill of quantities", "Replacements")
    )
    assert "Pump and controller" in bill
    assert [name for name in replacements if name in bill] == [name for name in bill if name in replacements]
    assert set(bill) - set(replacements) <= {bill[0], bill[1]}  # title and what stands under it


def test_cash_flow_discounts_to_the_present_cost(written: Written) -> None:
    sheet, currency = written.values["Cash flow"], written.study.scenario.currency
    columns = {
        name: column_of(sheet, f"{name} ({currency})")
        for name in (
            "Present value",
            "Cumulated",
            "Paid by users",
            "Owner's cost",
            "Owner's present value",
            "Loan payment",
        )
    }
    years = written.study.scenario.finance.analysis_period_years
    for option in written.study.options:
        rows = block(sheet, option.name)
        assert [row[0] for row in rows] == [*range(years + 1), "Sum"]
        life = option.life
        assert rows[-1][columns["Present value"]] == pytest.approx(float(life.present_cost))
        assert rows[-2][columns["Cumulated"]] == pytest.approx(float(life.present_cost))
        assert rows[-1][columns["Owner's present value"]] == pytest.approx(float(life.owner_present_cost))
        assert rows[-1][columns["Loan payment"]] == pytest.approx(float(life.loan_payment.sum()))
        assert rows[-1][columns["Paid by users"]] == pytest.approx(float(life.flows.revenue.sum()))
        for year, row in enumerate(rows[:-1]):
            assert row[columns["Owner's cost"]] == pytest.approx(float(life.owner_flows[year]), abs=1e-6)


def leaves(value: Any, path: str = "") -> dict[str, Any]:
    """Every key of dumped data, lists of tables counted from 1."""
    found: dict[str, Any] = {}
    for key, inner in value.items():
        here = f"{path}.{key}" if path else key
        if isinstance(inner, dict):
            found |= leaves(inner, here)
        elif isinstance(inner, list) and inner and isinstance(inner[0], dict):
            for number, member in enumerate(inner, start=1):
                found |= leaves(member, f"{here}[{number}]")
        else:
            found[here] = inner
    return found


def test_inputs_list_every_key_once(written: Written) -> None:
    rows = rows_of(written.values["Inputs"])
    end = next(number for number, row in enumerate(rows) if row[0] == "Weather used")
    start = next(number for number, row in enumerate(rows) if row[0] == "Key") + 1
    keys = [str(row[0]) for row in rows[start:end] if row[0] is not None]
    assert len(keys) == len(set(keys))
    wanted = leaves(written.study.scenario.model_dump(exclude={"overrides"}))
    assert set(wanted) == {key for key in keys if not key.startswith("overrides.")}
    by_key = dict(zip(keys, (row for row in rows[start:end] if row[0] is not None), strict=True))
    for key, value in wanted.items():
        if isinstance(value, int | float):
            assert by_key[key][1] == value, key
        elif value is None:
            assert by_key[key][1] == "–"
            assert by_key[key][3] == "not given"


def test_inputs_tell_given_from_assumed_with_a_source(rich: Written) -> None:
    status = {row[0]: row[3] for row in rows_of(rich.values["Inputs"])}
    assert status["finance.inflation_percent"] == "given"
    assert status["borehole.water_temperature_c"] == "default"
    assert status["sources.generator.minimum_run_h"] == text("inputs.status_starter")
    told = {key: text(f"inputs.status_{found}") for key, found in statuses(rich.study.scenario).items()}
    assert told.items() <= status.items()
    found = {entry.key: entry for entry in walk(rich.study.scenario)}
    assert found["overrides.'solar + grid'.tank.volume_m3"].value == 30.0
    without = [key for key, entry in found.items() if entry.status == "default" and not entry.source]
    assert not without, f"defaults without a source: {without}"
    assert all(entry.meaning for entry in found.values())


def test_inputs_show_months_in_columns(rich: Written) -> None:
    rows = {row[0]: row for row in rows_of(rich.values["Inputs"])}
    weather = rich.study.scenario.weather
    assert weather.kind == "monthly"
    assert list(rows["weather.ghi_kwh_m2_day"][7:19]) == weather.ghi_kwh_m2_day
    used = rich.study.weather.monthly_table()["temperature_max_c"]
    assert list(rows["Air temperature, hottest hour"][7:19]) == pytest.approx(list(used))


def test_method_names_the_law_of_days_and_the_models_of_the_array(written: Written) -> None:
    told = {row[0]: str(row[1]) for row in rows_of(written.values["Method and cautions"]) if row[0]}
    weather, solar = written.study.scenario.weather, written.study.scenario.sources.solar
    if weather.kind == "monthly":
        assert "Saunier" in told["Weather"] or "Bendt" in told["Weather"]
        assert "Hollands and Huget 1983" in told["Weather"]
    if solar is not None:
        assert {"perez-driesse": "Driesse", "haydavies": "Hay and"}[solar.sky_model] in told["PV array"]
        assert {"glass": "plain glass", "coated_glass": "coated", "none": "left out"}[solar.reflection] in told[
            "PV array"
        ]


def test_cautions_are_printed(written: Written) -> None:
    texts = {row[1] for row in rows_of(written.values["Method and cautions"])}
    study: Study = written.study
    assert any("licensed" in str(text) for text in texts)
    if "solar" in study.scenario.sources.names:
        assert any("cannot be switched off by day" in str(text) for text in texts)
