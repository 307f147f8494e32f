"""The example scenarios, found in a checkout as well as in an installed package."""

from __future__ import annotations

import tomllib
from importlib import resources
from importlib.resources.abc import Traversable
from pathlib import Path

PACKAGED = "examples"
"""Folder of the package into which a wheel takes what stands in `scenarios/` of a checkout."""


def example_names() -> list[str]:
    """Names of the examples."""
    return sorted(file.name.removesuffix(".toml") for file in _folder().iterdir() if file.name.endswith(".toml"))


def example_files(name: str) -> tuple[str, dict[str, bytes]]:
    """Return the text of an example, and the content of the files that it reads, by their names.

    Parameters
    ----------
    name : str
        One of `example_names`.
    """
    folder = _folder()
    text = folder.joinpath(f"{name}.toml").read_text("utf-8")
    weather = tomllib.loads(text).get("weather", {})
    beside = [weather["file"]] if "file" in weather else []
    return text, {file: folder.joinpath(file).read_bytes() for file in beside}


def _folder() -> Traversable | Path:
    packaged = resources.files("planner").joinpath(PACKAGED)
    return packaged if packaged.is_dir() else Path(__file__).parents[2] / "scenarios"
