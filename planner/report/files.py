"""Write files whole or not at all."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from planner.scenario.errors import InputError, Problem


def write_whole(path: Path, write: Callable[[Path], None]) -> None:
    """Let `write` fill a temporary file beside `path`, then put it in place; on failure `path` is left as it was.

    Parameters
    ----------
    path : pathlib.Path
        The file wanted; its folder is made where missing.
    write : callable
        Called with the temporary file's path.
    """
    path.parent.mkdir(parents=True, exist_ok=True)
    handle, name = tempfile.mkstemp(prefix=f".{path.stem}-", suffix=path.suffix, dir=path.parent)
    os.close(handle)
    temporary = Path(name)
    try:
        write(temporary)
        temporary.chmod(0o644)
        temporary.replace(path)
    finally:
        temporary.unlink(missing_ok=True)


def write_text(path: Path, text: str) -> None:
    """Write a text file in UTF-8, whole or not at all."""
    write_whole(path, lambda temporary: _fill(temporary, text))


def _fill(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8")


@contextmanager
def writing(path: Path) -> Iterator[None]:
    """Turn a folder or file that cannot be written into a clear message."""
    try:
        yield
    except OSError as error:
        raise InputError(str(path), [Problem("", f"cannot be written: {error.strerror or error}")]) from error
