"""Try much input that nobody would give, and count what comes of it: `python -m tests.robust scenarios=10000`."""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Callable

from tests.robust.trials import Found, form_trial, run_trial, scenario_trial, weather_trial

KINDS: dict[str, tuple[Callable[[int], Found], int]] = {
    "scenarios": (scenario_trial, 10_000),
    "forms": (form_trial, 1_000),
    "weather": (weather_trial, 1_000),
    "runs": (run_trial, 300),
}
"""Kinds of trial, and how many of each."""


def main(arguments: list[str]) -> int:
    """Run the trials; the exit code is 1 where anything is wrong."""
    counts = {name: count for name, (_, count) in KINDS.items()}
    if arguments:
        counts = {name: int(count) for name, count in (argument.split("=") for argument in arguments)}
    wrong = 0
    for name, count in counts.items():
        found: Counter[str] = Counter()
        for seed in range(count):
            result = KINDS[name][0](seed)
            found[result.what] += 1
            if result.wrong:
                wrong += 1
                print(f"{name} {seed}: {result.what}: {result.wrong}")
        print(f"{name}: {count} tried, {dict(sorted(found.items()))}", flush=True)
    print(f"{wrong} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
