"""Print what is held against the outside world: `python -m tests.published`, with `--run` also whether it holds.

One row for each domain: printed numbers that tests compare with, how far these are confirmed, how many agree to the
print's own rounding, and, apart and in no total, those from memory. Then the other programs, then the sources.
"""

from __future__ import annotations

import sys
from collections.abc import Iterable, Sequence

from tests.published.marks import CONFIRMED, DOMAINS, ENGINES, MEMORY, Collected, Published, collect, values

HEAD = ("domain", "values", "seen", "second hand", "to the digit", "sources", "from memory")
WIDTHS = (30, 9, 7, 14, 15, 10, 13)


def row(name: str, marks: Sequence[Published]) -> tuple[str, ...]:
    """Cells of a domain or of all of them."""
    firm = [mark for mark in marks if mark.confirmed != MEMORY]
    exact = sum(mark.values for mark in firm if not mark.within)
    seen, second_hand, recalled = (values(list(marks), confirmed) for confirmed in CONFIRMED)
    sources = len({mark.source for mark in firm})
    return (name, *(str(cell) for cell in (seen + second_hand, seen, second_hand, exact, sources, recalled)))


def table(found: Collected) -> Iterable[str]:
    """Lines of the tables."""
    marks = [mark for _, mark in found.published]
    yield _line(HEAD, WIDTHS)
    yield _line(tuple("-" * (width - 2) for width in WIDTHS), WIDTHS)
    yield from (_line(row(domain, list(found.of(domain))), WIDTHS) for domain in DOMAINS)
    yield _line(row("in all", marks), WIDTHS)
    yield f"\n{len({test for test, _ in found.published})} cases of tests. 'Values' leaves out those from memory."
    yield "\n" + _line(("other program", "cases", "values", "what is compared"), (30, 9, 9, 0))
    for name in ENGINES:
        compared: dict[str, list[int | None]] = {}
        for _, mark in found.engines:
            if mark.name == name:
                compared.setdefault(mark.compared, []).append(mark.values)
        for what, counts in compared.items():
            number = "all" if None in counts else str(sum(count or 0 for count in counts))
            yield _line((name, str(len(counts)), number, what), (30, 9, 9, 0))
    for domain in DOMAINS:
        yield f"\n{domain}"
        by_source: dict[tuple[str, str, str], int] = {}
        for mark in found.of(domain):
            key = mark.source, mark.confirmed, mark.within
            by_source[key] = by_source.get(key, 0) + mark.values
        for (source, confirmed, within), number in by_source.items():
            yield f"  {number:4d}  {source}; {confirmed}" + (f"; within {within}" if within else "")


def outcome(found: Collected) -> str:
    """Say what became of the tests that ran."""
    failed = [test for test, came in found.outcomes.items() if came == "failed"]
    skipped = [test for test, came in found.outcomes.items() if came == "skipped"]
    passed = len(found.outcomes) - len(failed) - len(skipped)
    named = "".join(f"\n  failed: {test}" for test in failed) + "".join(f"\n  skipped: {test}" for test in skipped)
    return f"\n{passed} cases passed, {len(failed)} failed, {len(skipped)} were skipped.{named}"


def main(words: list[str]) -> int:
    """Print the tables; the exit code is that of pytest."""
    if words not in ([], ["--run"]):
        sys.exit("python -m tests.published [--run]")
    found = collect(run=bool(words))
    print("\n".join(table(found)))
    if words:
        print(outcome(found))
    if found.exit_code:
        print(f"\npytest ended with {found.exit_code}:\n{found.output}")
    return found.exit_code


def _line(cells: Sequence[str], widths: Sequence[int]) -> str:
    return "".join(cell.ljust(width) for cell, width in zip(cells, widths, strict=True)).rstrip()


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
