"""The borehole, the pipeline, and the pump with its plate and controller."""

from __future__ import annotations

from typing import Literal, Self

from pydantic import Field, model_validator

from planner.scenario.equipment import Equipment
from planner.scenario.fields import (
    COMMON_PRACTICE,
    Model,
    Month12,
    assumed,
    at_odds,
    found,
    needed,
    optional,
    several,
)
from planner.scenario.plate import Plate


class StepTestPoint(Model):
    """One step of a pumping test."""

    flow_m3h: float = needed("Flow of the step", "m3/h", gt=0)
    drawdown_m: float = needed("Drawdown at the end of the step", "m", gt=0)


class Borehole(Equipment):
    """The borehole; levels and depths are measured downward from the ground at the borehole."""

    life_years: float = assumed(
        30.0,
        "Service life",
        "years",
        source="assumed; boreholes are held to last 20 to 50 years, from memory",
        changes="money",
        gt=0,
        le=100,
    )
    static_level_m: float = needed("Static water level: depth of the water at rest", "m", ge=0, le=1500)
    static_level_by_month_m: Month12 | None = optional(
        "Static water level by month: depth of the water at rest", "m", absent="the same level all year"
    )
    pump_depth_m: float = needed("Depth of the pump's intake", "m", gt=0, le=1500)
    specific_capacity_m3h_per_m: float | None = optional(
        "Specific capacity: flow per metre of drawdown", "m3/h per m", gt=0
    )
    test_flow_m3h: float | None = optional(
        "Flow of a pumping test of one step, instead of a specific capacity",
        "m3/h",
        absent="specific_capacity_m3h_per_m or step_test is used",
        gt=0,
    )
    drawdown_m: float | None = optional(
        "Drawdown at that flow: how far the water stood below its level at rest", "m", absent="as test_flow_m3h", gt=0
    )
    step_test: list[StepTestPoint] = several("Steps of a pumping test, instead of a specific capacity")
    safe_yield_m3h: float = found(
        "Safe yield: flow that the borehole can give without harm",
        "m3/h",
        how="the largest flow of the pumping test",
        gt=0,
    )
    level_decline_m_per_year: float = assumed(
        0.0,
        "How much deeper the static water level stands each year",
        "m/year",
        source="no fall; 0.3 in stressed and 1 in over-drawn aquifers: assumed from reported falls",
        ge=0,
        le=20,
    )
    specific_capacity_decline_percent_per_year: float = assumed(
        1.0,
        "Yearly loss of specific capacity",
        "%/year",
        source="assumed for hard rock and limestone; sandstone 2, iron-rich alluvium 4",
        ge=0,
        le=30,
    )
    daily_limit_m3: float | None = optional(
        "Volume allowed per day by permit or test", "m3/day", absent="no daily limit", gt=0
    )
    water_temperature_c: float = assumed(
        20.0, "Temperature of the water", "deg C", source=f"assumed, {COMMON_PRACTICE}", ge=0, le=60
    )
    depth_m: float | None = optional("Depth of the borehole", "m", changes="nothing", gt=0, le=2000)
    casing_inner_diameter_mm: float | None = optional(
        "Inside diameter of the casing at the pump", "mm", changes="nothing", gt=0
    )
    screen_top_m: float | None = optional("Depth of the top of the screen", "m", changes="nothing", gt=0)
    flow_sleeve_diameter_mm: float | None = optional(
        "Inside diameter of a flow sleeve over the motor", "mm", absent="no sleeve", changes="nothing", gt=0
    )

    @model_validator(mode="after")
    def _one_drawdown(self) -> Self:
        given = (self.specific_capacity_m3h_per_m is not None) + bool(self.step_test)
        if given != 1:
            raise at_odds(
                ("test_flow_m3h", "drawdown_m", "specific_capacity_m3h_per_m", "step_test"),
                "give the pumping test once: test_flow_m3h with drawdown_m, or specific_capacity_m3h_per_m, "
                "or step_test (several or none was given)",
            )
        if len(self.step_test) == 1:
            raise at_odds(("step_test",), "step_test needs at least two steps (one was given)")
        deepest = max(self.static_level_by_month_m or [self.static_level_m])
        if self.pump_depth_m <= max(deepest, self.static_level_m):
            raise at_odds(
                ("pump_depth_m",),
                "pump_depth_m {depth} is not below the water at rest ({level} m)",
                {"depth": self.pump_depth_m, "level": deepest},
            )
        return self

    @model_validator(mode="after")
    def _within_the_hole(self) -> Self:
        if self.depth_m is not None and self.pump_depth_m >= self.depth_m:
            raise at_odds(
                ("pump_depth_m", "depth_m"),
                "pump_depth_m {pump} is not above the bottom of the borehole, depth_m {bottom}: are the two exchanged?",
                {"pump": self.pump_depth_m, "bottom": self.depth_m},
            )
        return self


class Segment(Equipment):
    """One run of pipe; segments follow one another from the pump to the tank. The price is per metre."""

    life_years: float = assumed(
        40.0,
        "Service life",
        "years",
        source="assumed; buried plastic pipe is made for 50 years and more, from memory",
        changes="money",
        gt=0,
        le=100,
    )
    name: str = needed("Which run of pipe", changes="nothing", min_length=1)
    length_m: float = needed("Length", "m", gt=0, le=1e5)
    inner_diameter_mm: float | None = optional("Inside diameter", "mm", absent="from the pipe table", gt=5, le=2000)
    pipe: str | None = optional(
        "A size from the pipe tables, such as 'PE100 SDR11 63', 'PVC-U PN10 63' or 'steel medium 50'",
        absent="the inside diameter is used",
    )
    roughness_mm: float | None = optional(
        "Roughness of the wall", "mm", absent="of the pipe's material (0.007 mm plastic)", ge=0, le=5
    )
    hazen_williams_c: float | None = optional(
        "Hazen-Williams C", absent="of the pipe's material (150 plastic, 120 galvanised steel)", gt=40, le=170
    )
    fittings_k: float = assumed(0.0, "Sum of the loss coefficients K of the fittings", source="none", ge=0, le=1e4)
    pressure_class_bar: float | None = optional(
        "Pressure class of the pipe at 20 deg C", "bar", absent="from the pipe table", changes="nothing", gt=0
    )
    wave_speed_m_s: float | None = optional(
        "Speed of a pressure wave in the full pipe",
        "m/s",
        absent="from material and wall of the pipe table",
        changes="nothing",
        gt=50,
        le=1500,
    )

    @model_validator(mode="after")
    def _one_bore(self) -> Self:
        if (self.inner_diameter_mm is None) == (self.pipe is None):
            raise at_odds(
                ("inner_diameter_mm", "pipe"), "give either inner_diameter_mm or pipe (both or neither was given)"
            )
        return self


class ProfilePoint(Model):
    """One point of the pipeline's route."""

    changes = "nothing"

    chainage_m: float = needed("Distance along the pipe from the borehole", "m", ge=0)
    level_m: float = needed("Level of the ground above the ground at the borehole", "m", ge=-3000, le=3000)
    air_valve: Literal["yes", "no"] = assumed("no", "Whether an air valve stands there", source="none mentioned")


class Pipeline(Model):
    """The way from the pump to the tank."""

    rise_to_tank_inlet_m: float = needed(
        "Height of the tank's inlet above the ground at the borehole", "m", ge=-500, le=1500
    )
    residual_head_m: float = assumed(
        0.0, "Head to be left at the tank's inlet", "m", source="free outlet", ge=0, le=200
    )
    friction: Literal["darcy-weisbach", "hazen-williams"] = assumed(
        "darcy-weisbach", "Friction formula", source="Darcy-Weisbach with Colebrook-White"
    )
    length_m: float | None = optional(
        "Length of the main from the borehole to the tank, in place of segments",
        "m",
        absent="see segments",
        gt=0,
        le=1e5,
    )
    pipe: str | None = optional(
        "Pipe of that main, a size from the pipe tables", absent="chosen by velocity and pressure", min_length=1
    )
    riser_pipe: str | None = optional(
        "Pipe of the riser in the borehole, a size from the pipe tables",
        absent="chosen by velocity and pressure",
        min_length=1,
    )
    segments: list[Segment] = found(
        "Runs of pipe from the pump to the tank",
        how="a riser of the pump's depth and a main of pipeline.length_m",
        min_length=1,
    )
    profile: list[ProfilePoint] = several("Ground level along the route, borehole first", changes="nothing")
    stop_time_s: float | None = optional(
        "Shortest time in which the flow can stop",
        "s",
        absent="it stops at once, the worst case",
        changes="nothing",
        gt=0,
        le=600,
    )


class CurvePoint(Model):
    """One point of a pump's datasheet at rated speed."""

    flow_m3h: float = needed("Flow", "m3/h", ge=0)
    head_m: float = needed("Head", "m", ge=0)
    power_w: float = needed("Electrical input of the motor", "W", gt=0)


class Pump(Equipment):
    """The pump, from its nameplate alone or from datasheet points."""

    name: str = found("Which pump", how="'Pump'", changes="nothing", min_length=1)
    kind: Literal["centrifugal", "helical-rotor"] = found(
        "Kind of pump end", how="from how far the largest flow lies above the rated one"
    )
    rated_flow_m3h: float = needed("Rated flow", "m3/h", gt=0, le=2000)
    rated_head_m: float = needed("Rated head", "m", gt=0, le=2000)
    max_flow_m3h: float = needed("Largest flow, at no head", "m3/h", gt=0, le=4000)
    max_head_m: float = needed("Largest head, at no flow", "m", gt=0, le=3000)
    rated_power_w: float = needed("Electrical input of the motor at the rated duty", "W", gt=0, le=1e6)
    speed_min_percent: float = assumed(
        40.0, "Lowest speed as a share of the rated speed", "%", source=COMMON_PRACTICE, gt=0, lt=100
    )
    motor_efficiency_percent: float = assumed(
        80.0,
        "Efficiency of the motor at its rated load",
        "%",
        source=f"assumed, {COMMON_PRACTICE}",
        gt=20,
        le=99,
    )
    wear_percent_per_year: float = assumed(
        0.5,
        "Yearly loss of flow at the rated head by wear, until the pump is replaced",
        "%/year",
        source="assumed for clean water, near the 0.57 % of efficiency of a Hydraulic Institute case; silt 1, sand 3",
        ge=0,
        le=20,
    )
    life_years: float = assumed(
        15.0,
        "Service life; a new pump ends the wear of the old one",
        "years",
        source=f"assumed, {COMMON_PRACTICE}",
        changes="run",
        gt=0,
        le=100,
    )
    curve: list[CurvePoint] = several("Points of the datasheet at rated speed, instead of the nameplate's three")
    plate: Plate = Field(default_factory=Plate, description="The rest of the nameplate")

    @model_validator(mode="after")
    def _sensible_plate(self) -> Self:
        if self.max_flow_m3h <= self.rated_flow_m3h:
            raise at_odds(
                ("rated_flow_m3h", "max_flow_m3h"),
                "rated_flow_m3h {rated} is not below max_flow_m3h {largest}: the largest flow of a plate is that at no "
                "head, always more than the rated one; are the two exchanged?",
                {"largest": self.max_flow_m3h, "rated": self.rated_flow_m3h},
            )
        if self.max_head_m <= self.rated_head_m:
            raise at_odds(
                ("rated_head_m", "max_head_m"),
                "rated_head_m {rated} is not below max_head_m {largest}: the largest head of a plate is that at no "
                "flow, always more than the rated one; are the two exchanged?",
                {"largest": self.max_head_m, "rated": self.rated_head_m},
            )
        hydraulic_w = 1000 * 9.80665 * self.rated_flow_m3h / 3600 * self.rated_head_m
        if hydraulic_w >= 0.9 * self.rated_power_w:
            raise at_odds(
                ("rated_power_w", "rated_flow_m3h", "rated_head_m"),
                "rated_power_w {power} cannot lift rated_flow_m3h {flow} to rated_head_m {head}: the water alone takes "
                "{hydraulic} W of it; {hint}",
                {
                    "power": self.rated_power_w,
                    "flow": self.rated_flow_m3h,
                    "head": self.rated_head_m,
                    "hydraulic": round(hydraulic_w),
                    "hint": f"is {self.rated_power_w:g} kW meant? write {1000 * self.rated_power_w:g}"
                    if hydraulic_w < 900 * self.rated_power_w < 9e5
                    else "largest flow and largest head never hold at once: take the rated ones",
                },
            )
        if 0 < len(self.curve) < 3:
            raise at_odds(("curve",), "curve needs at least three points, or none")
        for before, after in zip(self.curve, self.curve[1:], strict=False):
            if after.flow_m3h <= before.flow_m3h or after.head_m >= before.head_m:
                raise at_odds(
                    ("curve",),
                    "curve must be in order of rising flow and falling head (see the point at {flow} m3/h)",
                    {"flow": after.flow_m3h},
                )
        return self


class Controller(Equipment):
    """The drive between the supplies and the motor."""

    mode: Literal["parallel", "changeover"] = assumed(
        "parallel",
        "'parallel' adds grid or generator to the sun in the same hour; 'changeover' uses one source at a time",
        source="the more common kind of hybrid drive, from memory",
    )
    power_limit_w: float | None = optional("Largest output to the motor", "W", absent="the pump's rated power", gt=0)
    efficiency_percent: float = assumed(
        96.0,
        "Efficiency from the array to the motor",
        "%",
        source=f"assumed, {COMMON_PRACTICE}",
        gt=50,
        le=100,
    )
    ac_efficiency_percent: float = assumed(
        95.0,
        "Efficiency from the AC supply to the motor",
        "%",
        source=f"assumed, {COMMON_PRACTICE}",
        gt=50,
        le=100,
    )
    dc_voltage_min_v: float | None = optional(
        "Lowest array voltage at which it works",
        "V",
        absent="the plate's DC voltage, else no lower limit in the hourly run",
        gt=0,
        le=2000,
    )
    dc_voltage_max_v: float | None = optional(
        "Highest array voltage at which it works",
        "V",
        absent="the plate's DC voltage, else no upper limit in the hourly run",
        gt=0,
        le=2000,
    )
    dc_voltage_limit_v: float | None = optional(
        "Array voltage that would destroy it", "V", changes="nothing", gt=0, le=2500
    )
    dc_current_max_a: float | None = optional(
        "Largest array current that it may be given", "A", changes="nothing", gt=0, le=5000
    )
    starting: Literal["soft", "direct"] = assumed(
        "soft",
        "How the motor starts on grid or generator: 'soft' by a drive, 'direct' on line",
        source="what a drive does",
        changes="nothing",
    )
