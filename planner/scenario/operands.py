"""A checked scenario with other operands in the place of its numbers: arrays of cases, or cells of a workbook.

What a scenario costs is arithmetic on its fields, so the same functions price one case, many, or write formulas. The
copy is not checked again: its numbers must have been.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, TypeVar

import numpy as np
from numpy.typing import NDArray
from pydantic import BaseModel

from planner.scenario.paths import Path

Array = NDArray[np.float64]
Change = Callable[[Path, Any], Any]
AnyModel = TypeVar("AnyModel", bound=BaseModel)


def with_operands(model: AnyModel, change: Change, path: Path = ()) -> AnyModel:
    """Copy a model with every number replaced.

    Parameters
    ----------
    model : BaseModel
        The model; tables of overrides and other plain dictionaries are left as they are.
    change : callable
        Gives, by path (list entries from 0) and value, what is to stand there; arrays count as numbers.
    path : tuple
        Path of the model itself.
    """
    found = {}
    for name in type(model).model_fields:
        value = getattr(model, name)
        new = _changed(value, change, (*path, name))
        if new is not value:
            found[name] = new
    return model.model_copy(update=found) if found else model


def value_at(model: BaseModel, path: Path) -> Any:
    """Value at a path of a model."""
    node: Any = model
    for part in path:
        node = node[part] if isinstance(part, int) else getattr(node, part)
    return node


def with_arrays(model: AnyModel, arrays: Mapping[Path, Array | float]) -> AnyModel:
    """Put arrays of cases, or other numbers, in the place of some numbers of a model, by their paths."""
    return with_operands(model, lambda path, value: arrays.get(path, value))


def _changed(value: Any, change: Change, path: Path) -> Any:
    if isinstance(value, BaseModel):
        return with_operands(value, change, path)
    if isinstance(value, list):
        new = [_changed(inner, change, (*path, place)) for place, inner in enumerate(value)]
        return new if any(one is not other for one, other in zip(new, value, strict=True)) else value
    if isinstance(value, bool | str | dict) or value is None:
        return value
    return change(path, value)
