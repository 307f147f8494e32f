"""Break the program in one place at a time and see whether a test notices: `python -m tests.broken_on_purpose`.

    python -m tests.broken_on_purpose                                     # 20 places of money, water and supply
    python -m tests.broken_on_purpose planner/study/search.py --count 10 --seed 3 --tests tests/study/test_search.py

A comparison is turned round, a sign changed, a product made a quotient, a number doubled, the least made the most,
'and' made 'or', a 'not' left out. All is done in a copy of the project, so that the files at hand stay whole
whatever ends it.
What nobody notices is listed: it is the same program in other words, or a test is missing.
"""

from __future__ import annotations

import argparse
import ast
import copy
import os
import random
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

HOUSE = Path(__file__).parents[1]
FOLDERS = ("planner/money", "planner/water", "planner/supply")
NOT_COPIED = shutil.ignore_patterns(".*", "__pycache__")
SECONDS = 600
"""A program so broken that it does not end is noticed too."""
TURNED: dict[type[ast.AST], type[ast.AST]] = {
    ast.Lt: ast.GtE, ast.GtE: ast.Lt, ast.Gt: ast.LtE, ast.LtE: ast.Gt, ast.Eq: ast.NotEq, ast.NotEq: ast.Eq,
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult, ast.And: ast.Or, ast.Or: ast.And,
}  # fmt: skip
RENAMED = {"min": "max", "max": "min", "minimum": "maximum", "maximum": "minimum", "argmin": "argmax",
           "argmax": "argmin", "floor": "ceil", "ceil": "floor", "any": "all", "all": "any"}  # fmt: skip


@dataclass(frozen=True)
class Break:
    """One place to break: `was`, from byte `begin` to byte `end` of the file, becomes `becomes`."""

    file: Path
    line: int
    begin: int
    end: int
    was: str
    becomes: str

    def __str__(self) -> str:
        """Where it is and what becomes of it."""
        return f"{self.file}:{self.line}: {self.was} -> {self.becomes}"


def breaks_of(source: str, file: Path) -> list[Break]:
    """List every place of a module that can be broken."""
    tree, code = ast.parse(source), source.encode()
    starts = [0]
    for line in code.splitlines(keepends=True):
        starts.append(starts[-1] + len(line))
    found = []
    for node in _expressions(tree):
        broken = _broken(node)
        if broken is not None:
            assert node.end_lineno is not None
            assert node.end_col_offset is not None
            begin, end = starts[node.lineno - 1] + node.col_offset, starts[node.end_lineno - 1] + node.end_col_offset
            found.append(Break(file, node.lineno, begin, end, ast.unparse(node), ast.unparse(broken)))
    return found


def _expressions(node: ast.AST) -> Iterator[ast.expr]:
    """Walk the expressions that are worked out: no annotation, no text."""
    for name, value in ast.iter_fields(node):
        if name in ("annotation", "returns", "decorator_list"):
            continue
        for child in value if isinstance(value, list) else [value]:
            if isinstance(child, ast.JoinedStr | ast.pattern) or not isinstance(child, ast.AST):
                continue
            if isinstance(child, ast.expr):
                yield child
            yield from _expressions(child)


def _broken(node: ast.expr) -> ast.expr | None:
    """Return the expression broken in one place of its own; None where there is nothing to break."""
    other = copy.deepcopy(node)
    match other:
        case ast.Compare(ops=[op]) if type(op) in TURNED:
            other.ops = [TURNED[type(op)]()]  # type: ignore[list-item]
        case ast.BinOp(op=op) if type(op) in TURNED and not _of_text(other):
            other.op = TURNED[type(op)]()  # type: ignore[assignment]
        case ast.BoolOp(op=op):
            other.op = TURNED[type(op)]()  # type: ignore[assignment]
        case ast.UnaryOp(op=ast.USub() | ast.Not()):
            return other.operand
        case ast.Constant(value=bool()):
            other.value = not other.value
        case ast.Constant(value=int() | float()):
            other.value = 2 * other.value or 1
        case ast.Call(func=ast.Attribute(attr=name)) if name in RENAMED:
            other.func.attr = RENAMED[name]  # type: ignore[attr-defined]
        case ast.Call(func=ast.Name(id=name)) if name in RENAMED:
            other.func.id = RENAMED[name]  # type: ignore[attr-defined]
        case _:
            return None
    return other


def _of_text(node: ast.BinOp) -> bool:
    sides = (node.left, node.right)
    return any(
        isinstance(s, ast.JoinedStr) or (isinstance(s, ast.Constant) and isinstance(s.value, str)) for s in sides
    )


def unnoticed(house: Path, one: Break, tests: Sequence[str]) -> bool:
    """Break one place of a house, run tests there, mend the place, and tell whether all passed."""
    path = house / one.file
    whole = path.read_bytes()
    try:
        path.write_bytes(whole[: one.begin] + f"({one.becomes})".encode() + whole[one.end :])
        return _pass(house, tests)
    finally:
        path.write_bytes(whole)


def _pass(house: Path, tests: Sequence[str]) -> bool:
    # without this a file broken within the second in which it was read could be taken for the whole one
    environment = {**os.environ, "PYTHONDONTWRITEBYTECODE": "1"}
    command = [sys.executable, "-m", "pytest", "-x", "-q", "-p", "no:cacheprovider", *tests]
    if "-n" in (house / "pyproject.toml").read_text(encoding="utf-8"):
        command.insert(3, "-n0")
    try:
        run = subprocess.run(command, cwd=house, env=environment, capture_output=True, timeout=SECONDS, check=False)
    except subprocess.TimeoutExpired:
        return False
    return run.returncode == 0


def tests_of(file: Path, house: Path) -> list[str]:
    """Tests that should notice a break: those of the module's folder, and the published values."""
    found = [f"tests/{file.parts[1]}", "tests/published"]
    return [folder for folder in found if (house / folder).is_dir()] or ["tests"]


def survivors(house: Path, places: Sequence[str], count: int, seed: int, tests: Sequence[str]) -> list[Break]:
    """Break places drawn from modules or folders, and return what no test notices.

    Parameters
    ----------
    house : pathlib.Path
        The project, which is copied.
    places : sequence of str
        Modules and folders in it.
    count, seed : int
        How many places are broken, and which.
    tests : sequence of str
        What is run; those of each module's folder where there are none.

    Raises
    ------
    SystemExit
        When the tests fail before anything is broken.
    """
    with tempfile.TemporaryDirectory() as folder:
        work = Path(folder) / "house"
        shutil.copytree(house, work, ignore=NOT_COPIED)
        files = sorted(file for place in places for file in ([work / place] if (work / place).is_file()
                       else (work / place).rglob("*.py")))  # fmt: skip
        every = [one for file in files for one in breaks_of(file.read_text("utf-8"), file.relative_to(work))]
        chosen = random.Random(seed).sample(every, min(count, len(every)))
        wanted = {one: list(tests) or tests_of(one.file, work) for one in chosen}
        if not _pass(work, sorted({name for names in wanted.values() for name in names})):
            raise SystemExit("the tests fail before anything is broken")
        left = []
        for at, one in enumerate(chosen, start=1):
            survived = unnoticed(work, one, wanted[one])
            left += [one] if survived else []
            print(f"{at}/{len(chosen)} {'UNNOTICED' if survived else 'noticed'} {one}", flush=True)
    return left


def main() -> None:
    """Break, and list what nobody noticed; exit code 1 where there is any."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("places", nargs="*", default=FOLDERS, help="modules or folders (money, water, supply)")
    parser.add_argument("--count", type=int, default=20, help="how many places (20)")
    parser.add_argument("--seed", type=int, default=1, help="which places (1)")
    parser.add_argument("--tests", nargs="+", default=[], help="tests to run (those of the folder, and the published)")
    given = parser.parse_args()
    left = survivors(HOUSE, given.places, given.count, given.seed, given.tests)
    print(f"{len(left)} unnoticed", *left, sep="\n")
    sys.exit(1 if left else 0)


if __name__ == "__main__":
    main()
