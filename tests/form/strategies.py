"""Random valid scenarios, built from the models themselves: every optional part, union and list turns up.

The types and bounds come from the models. What a model demands of several keys together is met by the function of the
model's name below; a new rule of that sort needs one there.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from types import UnionType
from typing import Annotated, Any, Literal, Union, get_args, get_origin

from hypothesis import strategies as st
from pydantic import BaseModel
from pydantic.fields import FieldInfo

from planner.scenario.scenario import Scenario

Draw = Callable[[st.SearchStrategy[Any]], Any]

TEXTS = st.one_of(
    st.sampled_from(["=1+1", "+254 700", "-", "@home", '""', "  ", "12,5", "1e3", "TRUE", "auto", '=HYPERLINK("x")']),
    st.text(st.characters(exclude_categories=["Cs", "Cc", "Cn", "Co"]), min_size=1, max_size=20),
)


@st.composite
def scenarios(draw: Draw) -> dict[str, Any]:
    """Draw raw data of a valid scenario, as it would be read from TOML."""
    return model(draw, Scenario)


def model(draw: Draw, kind: type[BaseModel]) -> dict[str, Any]:
    data = {}
    for name, field in kind.model_fields.items():
        needed = field.is_required() or any(getattr(limit, "min_length", 0) for limit in field.metadata)
        if get_origin(field.annotation) is not dict and (needed or draw(st.booleans())):
            data[name] = value(draw, field.annotation, tuple(field.metadata))
            if data[name] == {} and field.default_factory is not None:
                del data[name]  # an empty table of defaults says nothing: no cell of a form could hold it
    return RULES.get(kind.__name__, lambda _, given: given)(draw, data)


def value(draw: Draw, annotation: Any, limits: tuple[Any, ...] = ()) -> Any:
    origin = get_origin(annotation)
    if origin is Annotated:
        inner, *extra = get_args(annotation)
        more = [limit for part in extra for limit in (part.metadata if isinstance(part, FieldInfo) else [part])]
        return value(draw, inner, limits + tuple(more))
    if origin in (Union, UnionType):
        members = [member for member in get_args(annotation) if member is not type(None)]
        return value(draw, draw(st.sampled_from(members)), limits)
    if origin is Literal:
        return draw(st.sampled_from(get_args(annotation)))
    if origin is list:
        shortest, longest = limit(limits, "min_length", 1), limit(limits, "max_length", None)
        if longest == 24:
            return day(draw)
        length = draw(st.integers(max(shortest, 1), longest or 3))
        return [value(draw, get_args(annotation)[0]) for _ in range(length)]
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return model(draw, annotation)
    if annotation is bool:
        return draw(st.booleans())
    if annotation is str:
        pattern = limit(limits, "pattern", None)
        return draw(st.from_regex(pattern.replace("$", r"\Z"), fullmatch=True) if pattern else TEXTS)
    return number(draw, limits, whole=annotation is int)


def number(draw: Draw, limits: tuple[Any, ...], *, whole: bool) -> int | float:
    above, below = limit(limits, "gt", None), limit(limits, "lt", None)
    low = limit(limits, "ge", above if above is not None else -40)
    high = limit(limits, "le", below if below is not None else low + 5000)
    floats = st.floats(low, high, allow_subnormal=False).map(digits15)
    first, last = math.ceil(low), math.floor(high)
    inside = st.integers(first, last) if first <= last else floats

    def fits(x: float) -> bool:
        return low <= x <= high and (above is None or x > above) and (below is None or x < below)

    return draw((inside if whole else st.one_of(inside, floats)).filter(fits))


def digits15(x: float) -> float:
    """Keep what a spreadsheet keeps of a number."""
    return float(f"{x:.15g}")


def limit(limits: tuple[Any, ...], name: str, default: Any) -> Any:
    return next((getattr(each, name) for each in limits if getattr(each, name, None) is not None), default)


def day(draw: Draw) -> list[float]:
    shares = [0.0] * 24
    for hour in draw(st.lists(st.integers(0, 23), min_size=4, max_size=4)):
        shares[hour] += 0.25
    return shares


def one_of_two(draw: Draw, data: dict[str, Any], first: tuple[str, Any], second: tuple[str, Any]) -> dict[str, Any]:
    (kept, given), (dropped, _) = (first, second) if draw(st.booleans()) else (second, first)
    return {key: inner for key, inner in data.items() if key != dropped} | {kept: data.get(kept, given)}


def borehole(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    steps = [{"flow_m3h": 2, "drawdown_m": 1.5}, {"flow_m3h": 4.25, "drawdown_m": 4}]
    data = one_of_two(draw, data, ("specific_capacity_m3h_per_m", 1.25), ("step_test", steps))
    data = {key: inner for key, inner in data.items() if key not in ("test_flow_m3h", "drawdown_m")}
    if "step_test" not in data and draw(st.booleans()):
        del data["specific_capacity_m3h_per_m"]
        data |= {"test_flow_m3h": 3, "drawdown_m": 2.75}
    if "step_test" in data and len(data["step_test"]) < 2:
        data["step_test"] = steps
    data["static_level_m"] = digits15(data["static_level_m"] % 300)
    by_month = [digits15(level % 300) for level in data.get("static_level_by_month_m", [])]
    if by_month:
        data["static_level_by_month_m"] = by_month
    data["pump_depth_m"] = digits15(max(data["static_level_m"], *by_month, 0) + 7.3)
    return data | ({"depth_m": digits15(data["pump_depth_m"] + 12)} if "depth_m" in data else {})


def pipeline(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    data = {key: inner for key, inner in data.items() if key not in ("length_m", "pipe", "riser_pipe")}
    if draw(st.booleans()):
        del data["segments"]
        data["length_m"] = 430.5
    return data


def bore(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    return one_of_two(draw, data, ("inner_diameter_mm", 51.4), ("pipe", "PE100 SDR11 63"))


def pump(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    flow, head = draw(st.integers(1, 500)), draw(st.integers(5, 300))
    data |= {"rated_flow_m3h": flow, "rated_head_m": head, "max_flow_m3h": flow * 1.5, "max_head_m": head + 20}
    data["rated_power_w"] = 6 * flow * head
    if "curve" in data:
        data["curve"] = [
            {"flow_m3h": flow * step, "head_m": head * (3 - step), "power_w": 900 + step} for step in range(3)
        ]
    return data


def plate(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    printed = {
        "dc_voltage_v": ["110-400 V", "DC 110 - 400", [110.5, 400]],
        "ac_voltage_v": ["1~ 230 V", 230, [160, 270]],
        "frequency_hz": ["50/60", 50, [50, 60.5]],
        "speed_rpm": ["0-3,600", 2900, [0, 3600]],
    }
    parts = {"dc_voltage": (110, 400.5), "ac_voltage": (207, 253), "speed": (0, 2900)}
    data |= {key: draw(st.sampled_from(lines)) for key, lines in printed.items() if key in data}
    for name, ends in parts.items():
        keys = [key for key in data if key.startswith((f"{name}_min", f"{name}_max"))]
        if any(key in data for key in printed if key.startswith(name)):
            data = {key: inner for key, inner in data.items() if key not in keys}
        else:
            data |= {key: ends["max" in key] for key in keys}
    return {key: inner for key, inner in data.items() if key != "phases" or "ac_voltage_v" not in data}


def module(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    volts, amps = draw(st.integers(10, 90)), draw(st.integers(1, 20))
    data |= {"power_w": volts * amps, "voltage_mp_v": volts, "current_mp_a": amps}
    return data | {"voltage_oc_v": digits15(volts * 1.21), "current_sc_a": amps + 0.5}


def solar(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    shares = {1: [100], 2: [37.5, 62.5], 3: [50, 20, 30]}[len(data["planes"])]
    planes = [plane | {"share_percent": share} for plane, share in zip(data["planes"], shares, strict=True)]
    data = data | {"planes": planes}
    if "soiling_percent_per_day" in data or "cleaning_interval_days" in data:
        data |= {"soiling_percent_per_day": 0.2, "cleaning_interval_days": draw(st.integers(1, 90))}
        data = {key: inner for key, inner in data.items() if key not in ("soiling_percent", "soiling_by_month_percent")}
    return data


def tariff(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    data = one_of_two(draw, data, ("price_per_kwh", 0.2), ("blocks", [{"price_per_kwh": 0.1}]))
    if "blocks" in data:
        data.pop("bands", None)
        prices = [block["price_per_kwh"] for block in data["blocks"]]
        data["blocks"] = [{"up_to_kwh_month": 50 * (i + 1), "price_per_kwh": p} for i, p in enumerate(prices[:-1])]
        data["blocks"].append({"price_per_kwh": prices[-1]})
    return data


def tank(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    if "sizes" in data or data.get("volume_m3", "auto") == "auto":
        sizes = data.get("sizes", [{"volume_m3": 1, "price": 800}])
        data["sizes"] = [size | {"volume_m3": 10 * (place + 1)} for place, size in enumerate(sizes)]
    elif "price" not in data:
        data["price"] = 1234.5
    return data


def topup(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    for start, stop, low, high in (
        ("start_level_percent", "stop_level_percent", 10, 90.5),
        ("start_level_without_sun_percent", "stop_level_without_sun_percent", 65, 99),
    ):
        if start in data or stop in data:
            auto = "without" not in start and draw(st.booleans())
            data |= {start: "auto", stop: "auto"} if auto else {start: low, stop: high}
    return data


def controller(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    if "dc_voltage_min_v" in data and "dc_voltage_max_v" in data:
        data |= {"dc_voltage_min_v": 120, "dc_voltage_max_v": 450.5}
    return data


def pumping_test(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    """The water stands deepest at the end of the test, whatever was drawn."""
    levels = sorted(data[name] for name in ("static_level_m", "final_level_m", "recovery_level_m") if name in data)
    names = [name for name in ("static_level_m", "recovery_level_m", "final_level_m") if name in data]
    return data | dict(zip(names, levels, strict=True))


def finance(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    for share in ("grant_percent", "loan_percent"):
        if share in data:
            data[share] = digits15(data[share] / 2)
    if "loan_years" in data or data.get("loan_percent"):
        data |= {"loan_years": 3, "analysis_period_years": max(3, data.get("analysis_period_years", 20))}
    if "programme_currency" in data or "exchange_rate" in data:
        data = {"programme_currency": "EUR", "exchange_rate": 1.5} | data
    return data


def sources(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    from planner.scenario.sources import Generator

    return data or {"generator": model(draw, Generator)}


def size(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    for key in ("levels_percent", "levels_without_sun_percent"):
        if key in data:
            data[key] = [[20, 40.5], [10, 90]][: len(data[key])]
    return data


def cable(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    return data | {"section_mm2": draw(st.sampled_from([1.5, 4, 16, 35]))}


def stepped(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    ends = {"low": -1.5, "high": 4} if draw(st.booleans()) else {"change_percent": 20}
    return {"key": data["key"]} | ends


def outages(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    weights = {"month_weights": [1.0, 2.5] * 6, "start_weights": [0.0, 4.0] * 12}
    return data | {"hours_per_day": 6} | {key: value for key, value in weights.items() if key in data}


def rising(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    return data | {key: inner for key, inner in (("low", 1), ("mode", 2.5), ("high", 7)) if key in data}


def lognormal(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    return rising(draw, data) | {"mean": 2.5}


def discrete(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    return data | ({"weights": [0.5] * len(data["values"])} if "weights" in data else {})


def scenario(draw: Draw, data: dict[str, Any]) -> dict[str, Any]:
    data.setdefault("currency", "USD")
    data.pop("include", None)  # it names files, which there are none of
    described = list(data["sources"])
    service = data.get("service", {})
    if "options" in service:
        service["options"] = described
    if "reference" in service:
        service["reference"] = draw(st.sampled_from(described))
    for table in ("controller", "topup", "service", "costs"):
        if data.get(table) == {}:
            del data[table]  # an empty table there says no more than none
    if data["pump"].get("plate") == {}:
        del data["pump"]["plate"]
    changes = {
        "tank": {"volume_m3": 12.5, "price": 900},
        "controller": {"mode": "changeover", "power_limit_w": 4000},
        "costs": {"yearly": [{"name": draw(TEXTS), "per_year": 12.5, "sources": ["grid"]}], "items": []},
        "topup": {"start_level_percent": "auto", "stop_level_percent": "auto"},
        "pump": {"name": draw(TEXTS), "kind": "centrifugal"},
        "pipeline": {"friction": "hazen-williams"},
    }
    chosen = draw(st.lists(st.sampled_from(sorted(changes)), max_size=3, unique=True))
    if chosen:
        option = " + ".join(described)
        data["overrides"] = {option: {table: changes[table] for table in chosen}}
    return data


RULES: dict[str, Callable[[Draw, dict[str, Any]], dict[str, Any]]] = {
    "Borehole": borehole,
    "Pipeline": pipeline,
    "Segment": bore,
    "PipeCandidate": bore,
    "Pump": pump,
    "Plate": plate,
    "Module": module,
    "Solar": solar,
    "Outages": outages,
    "Tariff": tariff,
    "Tank": tank,
    "TopUp": topup,
    "Controller": controller,
    "Finance": finance,
    "PumpingTest": pumping_test,
    "Sources": sources,
    "Size": size,
    "DcCable": cable,
    "AcCable": cable,
    "DropCable": cable,
    "SteppedInput": stepped,
    "Uniform": rising,
    "Triangular": rising,
    "Normal": rising,
    "LogNormal": lognormal,
    "Discrete": discrete,
    "Scenario": scenario,
}
