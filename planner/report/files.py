"""Write files whole or not at all."""

from __future__ import annotations

import io
import os
import platform
import re
import shutil
import tempfile
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

from planner.scenario.errors import InputError, Problem

_LEAST_FREE_BYTES = 10_000_000
"""What the files of a run may take, several times over."""
_STALE_SECONDS = 86_400
"""A file being written is never so old. Common practice, no source."""
_MACHINE = re.sub(r"[^A-Za-z0-9]", "", platform.node()) or "machine"


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


def write_stream(path: Path, write: Callable[[BinaryIO], None]) -> None:
    """Let `write` fill a stream in memory, then write it, whole or not at all.

    For libraries that answer a full disk by an error of their own kind and with half-open files.
    """
    stream = io.BytesIO()
    write(stream)
    write_whole(path, lambda temporary: _fill(temporary, stream.getvalue()))


def write_text(path: Path, text: str) -> None:
    """Write a text file in UTF-8, whole or not at all."""
    write_whole(path, lambda temporary: _fill(temporary, text.encode("utf-8")))


def _fill(path: Path, content: bytes) -> None:
    path.write_bytes(content)


@contextmanager
def writing(path: Path) -> Iterator[None]:
    """Turn a folder or file that cannot be written into a clear message."""
    try:
        yield
    except OSError as error:
        raise InputError(str(path), [Problem("", f"cannot be written: {error.strerror or error}")]) from error


@contextmanager
def results_in(folder: Path) -> Iterator[Path]:
    """Give a folder to fill; its files are put in place together once all are whole, else none is.

    Parameters
    ----------
    folder : pathlib.Path
        Folder of the results; made where missing. What killed runs left there half-written is removed.

    Raises
    ------
    InputError
        When the results cannot be written; earlier ones are then left as they were.
    """
    with writing(folder):
        folder.mkdir(parents=True, exist_ok=True)
        _clear_left(folder)
        with tempfile.TemporaryDirectory(prefix=f".planner-{_MACHINE}-{os.getpid()}-", dir=folder) as staging:
            yield Path(staging)
            for file in sorted(Path(staging).iterdir()):
                file.replace(folder / file.name)


_STAGING = re.compile(r"\.planner-([A-Za-z0-9]+)-(\d+)-[a-z0-9_]{8}")
_TEMPORARY = re.compile(r"\.(.+)-[a-z0-9_]{8}(\.xlsx|\.json|\.csv|\.parquet|\.docx)")


def _clear_left(folder: Path) -> None:
    """Remove what killed runs left: folders of processes that are gone, and old files beside their finished ones."""
    for path in folder.iterdir():
        staging, temporary = _STAGING.fullmatch(path.name), _TEMPORARY.fullmatch(path.name)
        if staging and path.is_dir() and not path.is_symlink():
            gone = staging[1] == _MACHINE and not _runs(int(staging[2]))
            if gone or _is_old(path):
                shutil.rmtree(path, ignore_errors=True)
        elif temporary and path.is_file() and _is_old(path) and (folder / f"{temporary[1]}{temporary[2]}").exists():
            path.unlink(missing_ok=True)


def _is_old(path: Path) -> bool:
    return time.time() - path.stat().st_mtime > _STALE_SECONDS


def _runs(process: int) -> bool:
    """Whether a process of this machine runs, or may run."""
    if os.name != "posix":
        return True
    try:
        os.kill(process, 0)
    except (ProcessLookupError, OverflowError):
        return False
    except OSError:
        return True
    return True


def check_folder(folder: Path, names: Sequence[str] = ()) -> None:
    """Refuse, before any work is done, a folder into which results cannot be written; nothing is made or changed.

    Parameters
    ----------
    folder : pathlib.Path
        Folder of the results, which may not be there yet.
    names : sequence of str
        Files to be written into it.

    Raises
    ------
    InputError
        When it, or a folder above it, is a file or may not be written to, when a folder has the name of a result, or
        when the disk is full.
    """
    there = folder
    while not there.exists() and there != there.parent:
        there = there.parent
    taken = next((folder / name for name in names if (folder / name).is_dir()), None)
    problem = None
    if not there.is_dir():
        problem = f"cannot be written: {there} is a file; give another --outputs folder"
    elif not os.access(there, os.W_OK | os.X_OK):
        problem = f"cannot be written: no permission to write in {there}; give another --outputs folder"
    elif taken is not None:
        problem = f"cannot be written: {taken} is a folder, in the place of a result"
    elif shutil.disk_usage(there).free < _LEAST_FREE_BYTES:
        free = shutil.disk_usage(there).free / 1e6
        problem = f"cannot be written: {free:.1f} MB are free on its disk, {_LEAST_FREE_BYTES / 1e6:.0f} MB are wanted"
    if problem is not None:
        raise InputError(str(folder), [Problem("", problem)])
