"""The rest of the pump's nameplate, each line as it is printed."""

from __future__ import annotations

from typing import Annotated, Any, Literal, Self

from pydantic import BeforeValidator, Field, ValidationInfo, field_validator, model_validator

from planner.scenario.fields import Model, at_odds, optional
from planner.scenario.printed import Printed, check_printed, ends_of, figures_of, shown_figures

_Volts = Annotated[float, Field(gt=0, le=2000)]
_Hertz = Annotated[float, Field(gt=0, le=400)]
_Rpm = Annotated[float, Field(ge=0, le=60000)]
PrintedVolts = _Volts | Annotated[list[_Volts], Field(min_length=1, max_length=2)] | str
PrintedHertz = _Hertz | Annotated[list[_Hertz], Field(min_length=1, max_length=2)] | str
PrintedSpeed = _Rpm | Annotated[list[_Rpm], Field(min_length=1, max_length=2)] | str
_OR_TWO_KEYS = "instead of its lowest and its highest"
_RANGES = (
    ("dc_voltage_v", "dc_voltage_min_v", "dc_voltage_max_v"),
    ("ac_voltage_v", "ac_voltage_min_v", "ac_voltage_max_v"),
    ("speed_rpm", "speed_min_rpm", "speed_max_rpm"),
)


def _without_spaces(given: Any) -> Any:
    return "".join(given.split()).upper() if isinstance(given, str) else given


class Plate(Model):
    """What else the pump's nameplate says; every line that is not given is reported as not given.

    A range may be given in one key, as printed, or as its lowest and its highest in two; `dc_voltage_min_v` and the
    like are then known either way.
    """

    changes = "nothing"

    dc_voltage_v: PrintedVolts | None = optional(
        f'DC supply voltage as printed, such as "110-400 V"; {_OR_TWO_KEYS}', "V"
    )
    dc_voltage_min_v: float | None = optional("Lowest DC supply voltage", "V", given_by="dc_voltage_v", gt=0, le=2000)
    dc_voltage_max_v: float | None = optional("Highest DC supply voltage", "V", given_by="dc_voltage_v", gt=0, le=2000)
    ac_voltage_v: PrintedVolts | None = optional(
        f'AC supply voltage as printed, such as "160-270 V" or "1~ 230 V"; {_OR_TWO_KEYS}', "V"
    )
    ac_voltage_min_v: float | None = optional("Lowest AC supply voltage", "V", given_by="ac_voltage_v", gt=0, le=1000)
    ac_voltage_max_v: float | None = optional("Highest AC supply voltage", "V", given_by="ac_voltage_v", gt=0, le=1000)
    phases: Literal[1, 3] | None = optional("Phases of the AC supply", given_by="ac_voltage_v")
    frequency_hz: PrintedHertz | None = optional('Frequency of the AC supply as printed, such as 50 or "50/60"', "Hz")
    current_a: float | None = optional("Highest current", "A", gt=0)
    locked_rotor_code: Literal["A", "B", "C", "D", "E", "F", "G", "H", "J", "K", "L", "M", "N", "P"] | None = optional(
        "Code letter of the locked-rotor kVA (NEMA MG 1)", absent="the usual letter of motors of its size"
    )
    speed_rpm: PrintedSpeed | None = optional(f'Speed as printed, such as "0-3,600"; {_OR_TWO_KEYS}', "rpm")
    speed_min_rpm: float | None = optional("Lowest speed; 0 for a drive", "rpm", given_by="speed_rpm", ge=0)
    speed_max_rpm: float | None = optional("Highest speed", "rpm", given_by="speed_rpm", gt=0)
    frame_in: float | None = optional("Frame size", "in", gt=0, le=20)
    outer_diameter_mm: float | None = optional("Largest outside diameter", "mm", gt=0)
    insulation_class: Annotated[
        Literal["Y", "A", "E", "B", "F", "H", "N", "R"] | None, BeforeValidator(_without_spaces)
    ] = optional("Insulation class (IEC 60085)")
    ingress_protection: Annotated[str | None, BeforeValidator(_without_spaces)] = optional(
        "Ingress protection (IEC 60529), such as 'IP68'", pattern=r"^IP[0-6X][0-9X]$"
    )
    liquid_temperature_max_c: float | None = optional("Highest temperature of the liquid", "deg C", gt=0, le=120)
    minimum_submergence_m: float | None = optional(
        "Water needed above the intake", "m", absent="0 m in the hourly run, assumed", changes="run", ge=0, le=50
    )
    length_below_intake_m: float | None = optional("Length of the motor below the intake", "m", ge=0, le=20)

    @field_validator("dc_voltage_v", "ac_voltage_v", "frequency_hz", "speed_rpm")
    @classmethod
    def _readable(cls, given: Printed | None, info: ValidationInfo) -> Printed | None:
        if given is not None:
            try:
                check_printed(given, str(info.field_name))
            except ValueError as error:
                raise at_odds((), "{words}", {"words": str(error)}) from error
        return given

    @model_validator(mode="after")
    def _ranges(self) -> Self:
        for printed, low, high in _RANGES:
            given = getattr(self, printed)
            if given is not None:
                self._fill(printed, ends_of(given, printed, low, high))
            least, most = getattr(self, low), getattr(self, high)
            if least is not None and most is not None and least > most:
                raise at_odds(
                    (low, high),
                    "{low} {least} is above {high} {most}: are the two exchanged?",
                    {"low": low, "least": least, "high": high, "most": most},
                )
        return self

    def _fill(self, printed: str, found: dict[str, float]) -> None:
        """Put what a printed line says where its parts are looked for; the keys stay as they were given."""
        for key, value in found.items():
            there = getattr(self, key)
            if there is not None and there != value:
                raise at_odds(
                    (printed, key),
                    "{printed} {given} and {key} {there} contradict one another: give the line of the plate once, as "
                    "printed or in its parts",
                    {"printed": printed, "given": shown_figures(getattr(self, printed)), "key": key, "there": there},
                )
            self.__dict__[key] = value

    @property
    def frequencies_hz(self) -> tuple[float, ...]:
        """Frequency, or the lowest and the highest, that the plate names; empty where it names none [Hz]."""
        return () if self.frequency_hz is None else figures_of(self.frequency_hz).numbers
