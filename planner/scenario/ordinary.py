"""Read a file only if it is an ordinary one and not larger than it may be."""

from __future__ import annotations

import stat
from pathlib import Path


def read_ordinary(path: Path, most_bytes: int) -> bytes:
    """Read a whole file.

    Parameters
    ----------
    path : pathlib.Path
        The file.
    most_bytes : int
        The most that it may hold [bytes].

    Raises
    ------
    OSError
        When it cannot be read, is a folder, device or pipe, or is larger; `strerror` says which.
    """
    if path.exists() and not path.is_dir() and not stat.S_ISREG(path.stat().st_mode):
        raise OSError(None, "is not an ordinary file")
    with path.open("rb") as stream:
        content = stream.read(most_bytes + 1)
    if len(content) > most_bytes:
        raise OSError(None, f"is larger than {most_bytes:,} bytes")
    return content
