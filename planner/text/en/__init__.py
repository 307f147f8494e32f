"""English: every sentence of the modules of this folder, and what the figures are called."""

from importlib import import_module
from pkgutil import iter_modules

from planner.text.en.figures import FIGURES

__all__ = ["FIGURES", "SENTENCES"]

SENTENCES: dict[str, str] = {}
for _module in iter_modules(__path__):
    SENTENCES |= getattr(import_module(f"{__name__}.{_module.name}"), "SENTENCES", {})
