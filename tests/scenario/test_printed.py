"""The lines of a nameplate are taken as they are printed."""

from __future__ import annotations

from typing import Any

import pytest
from pydantic import ValidationError

from planner.scenario.plate import Plate
from planner.scenario.printed import figures_of
from planner.scenario.waterworks import Pump

PUMP: dict[str, Any] = {
    "name": "Invented", "kind": "centrifugal", "rated_flow_m3h": 2.5, "rated_head_m": 110.0, "max_flow_m3h": 4.5,
    "max_head_m": 165.0, "rated_power_w": 1500.0,
}  # fmt: skip


@pytest.mark.parametrize(
    ("printed", "numbers", "phases"),
    [
        ("50/60", (50, 60), None),
        ("50/60 Hz", (50, 60), None),
        ("DC 110-400 V", (110, 400), None),
        ("110 – 400 V", (110, 400), None),
        ("110~400V", (110, 400), None),
        ("110÷400 V", (110, 400), None),
        ("PV 110...400 V", (110, 400), None),
        ("1~ 230 V", (230,), 1),
        ("AC 1~ 160-270V", (160, 270), 1),
        ("3 ~ 380-415 V", (380, 415), 3),
        ("0-3,600 rpm", (0, 3600), None),
        ("0 – 3 600 1/min", (0, 3600), None),
        ("0-3.600 rpm", (0, 3600), None),
        ("49.5-50,5 Hz", (49.5, 50.5), None),
        ("12,5", (12.5,), None),
        (230, (230,), None),
        ([110, 400], (110, 400), None),
    ],
)
def test_figures_as_printed(printed: Any, numbers: tuple[float, ...], phases: int | None) -> None:
    assert (figures_of(printed).numbers, figures_of(printed).phases) == (numbers, phases)


def test_a_plate_as_printed_is_that_of_its_parts() -> None:
    printed = Plate(
        dc_voltage_v="110-400 V", ac_voltage_v="1~ 160–270 V", frequency_hz="50/60", speed_rpm="0-3,600 rpm"
    )
    parts = Plate(
        dc_voltage_min_v=110, dc_voltage_max_v=400, ac_voltage_min_v=160, ac_voltage_max_v=270, phases=1,
        speed_min_rpm=0, speed_max_rpm=3600,
    )  # fmt: skip
    assert {key: getattr(printed, key) for key in parts.model_fields_set} == parts.model_dump(exclude_unset=True)
    assert printed.frequencies_hz == (50, 60)
    assert printed.model_dump(exclude_unset=True)["dc_voltage_v"] == "110-400 V"
    assert Plate.model_validate(printed.model_dump()) == printed
    assert (Plate(ac_voltage_v=230).ac_voltage_min_v, Plate(ac_voltage_v=230).ac_voltage_max_v) == (207, 253)
    assert (Plate(insulation_class="f").insulation_class, Plate(ingress_protection="IP 68").ingress_protection) == (
        "F", "IP68",
    )  # fmt: skip


@pytest.mark.parametrize(
    ("keys", "said"),
    [
        ({"dc_voltage_v": "110-400", "dc_voltage_min_v": 90}, "dc_voltage_min_v 90.0 contradict one another"),
        ({"ac_voltage_v": "1~ 230 V", "phases": 3}, "phases 3 contradict one another"),
        ({"dc_voltage_v": "400-110"}, "the lowest comes first"),
        ({"dc_voltage_v": 48}, "the lowest and the highest are wanted"),
        ({"dc_voltage_v": "1~ 110-400 V"}, "belongs to ac_voltage_v"),
        ({"ac_voltage_v": "230/400 V"}, "two ways to connect the winding"),
        ({"ac_voltage_v": "1~"}, "each figure must be 5 to 1000"),
        ({"ac_voltage_v": "mains"}, "write it as printed"),
        ({"frequency_hz": [50, 60, 400]}, "at most 2 items"),
        ({"dc_voltage_min_v": 400, "dc_voltage_max_v": 110}, "are the two exchanged?"),
        ({"speed_min_rpm": 3600, "speed_max_rpm": 360}, "are the two exchanged?"),
    ],
)
def test_what_cannot_stand_on_a_plate_is_refused(keys: dict[str, Any], said: str) -> None:
    with pytest.raises(ValidationError, match=said.replace("?", r"\?").replace(".", r"\.")):
        Plate(**keys)


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"rated_flow_m3h": 4.5, "max_flow_m3h": 2.5}, "the largest flow of a plate is that at no head"),
        ({"rated_head_m": 165, "max_head_m": 110}, "the largest head of a plate is that at no flow"),
        ({"rated_power_w": 1.5}, "is 1.5 kW meant? write 1500"),
        ({"rated_flow_m3h": 4.4, "rated_head_m": 164}, "largest flow and largest head never hold at once"),
    ],
)
def test_a_plate_that_contradicts_itself_is_told_what_was_mixed_up(changes: dict[str, float], said: str) -> None:
    with pytest.raises(ValidationError) as refused:
        Pump.model_validate(PUMP | changes)
    assert said in str(refused.value)
