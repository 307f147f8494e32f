"""A process that is measured: it imports, or runs the command line, then prints its peak memory.

`import numpy pandas`, or the arguments of `planner`.
"""

from __future__ import annotations

import importlib
import sys
from pathlib import Path


def peak_megabytes() -> float:
    """Peak memory of this program; getrusage would count what the process that started it had held."""
    lines = Path("/proc/self/status").read_text(encoding="utf-8").splitlines()
    return int(next(line.split()[1] for line in lines if line.startswith("VmHWM:"))) / 1024


def main(arguments: list[str]) -> None:
    """Do the work and print the peak memory [MB]."""
    if arguments[0] == "import":
        for name in arguments[1:]:
            importlib.import_module(name)
    else:
        from planner.cli import main as planner

        sys.argv[1:] = arguments
        try:
            planner()
        except SystemExit as stop:
            if stop.code:
                raise
    print(peak_megabytes())


if __name__ == "__main__":
    main(sys.argv[1:])
