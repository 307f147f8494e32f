"""Print one table of what the planner costs: `python -m tests.benchmarks`, or only some parts of it by name.

Nothing is asserted: a figure depends on the machine and on what else it does. Compare ratios, and runs side by side.
"""

from __future__ import annotations

import sys

from tests.benchmarks import commands, hours, sweeps

PARTS = {"commands": commands, "hours": hours, "sweeps": sweeps}
WIDTHS = (52, 38, 34, 16)


def main(names: list[str]) -> None:
    """Measure the named parts, or all, and print each row as soon as it is known."""
    unknown = [name for name in names if name not in PARTS]
    if unknown:
        sys.exit(f"no such part: {', '.join(unknown)} (there are {', '.join(PARTS)})")
    _print("what", "figure", "ratio within this run", "aim")
    _print(*("-" * (width - 2) for width in WIDTHS))
    for name in names or PARTS:
        for row in PARTS[name].rows():
            _print(row.name, row.figure, row.ratio, row.aim)


def _print(*cells: str) -> None:
    print("".join(cell.ljust(width) for cell, width in zip(cells, WIDTHS, strict=True)).rstrip(), flush=True)


if __name__ == "__main__":
    main(sys.argv[1:])
