"""Plans the energy supply of a borehole pump: sun, grid, generator and their mixes.

`planner.load` is the way in from Python; see `planner.api`.
"""

from typing import TYPE_CHECKING, Any

from planner.version import __version__

if TYPE_CHECKING:
    from planner.api import load
    from planner.scenario.errors import InputError

__all__ = ["InputError", "__version__", "load"]


def __getattr__(name: str) -> Any:
    # only when it is asked for: the command line does without, and the libraries behind it take a second
    if name == "load":
        from planner.api import load

        return load
    if name == "InputError":
        from planner.scenario.errors import InputError

        return InputError
    raise AttributeError(f"module 'planner' has no attribute {name!r}")
