"""Look into a workbook that a stranger may have made before any parser sees it, and refuse what could do harm.

Limits: the file at most 10 MB; at most 1 000 parts, 100 MB unpacked, no part packed tighter than 200 to 1; each part
of XML in UTF-8, without document type or entity declarations; no macros, links to other workbooks, data connections
or embedded objects. Of each form sheet the first 5 000 rows are read; values below them are refused, columns beyond
the key column are not looked at. Nothing in a workbook is ever executed or computed, and no address in it is followed.
"""

from __future__ import annotations

import re
import zipfile
import zlib
from pathlib import Path

from planner.scenario.errors import InputError, Problem
from planner.text import text

LARGEST_FILE = 10_000_000
MOST_PARTS = 1_000
LARGEST_UNPACKED = 100_000_000
TIGHTEST_PACKING = 200
SMALL_PART = 1_000_000
"""A part this small may be packed as tightly as it likes."""
MOST_ROWS = 5_000

_REFUSED_PARTS = (
    (re.compile(r"vbaproject|macrosheets/|activex/"), "macros"),
    (re.compile(r"externallinks/"), "links"),
    (re.compile(r"xl/connections\.xml|querytables/"), "connections"),
    (re.compile(r"embeddings/|oleobject"), "objects"),
)
_PICTURES = (".png", ".jpg", ".jpeg", ".gif", ".bmp", ".emf", ".wmf", ".bin", ".tif", ".tiff")
_ENCODING = re.compile(rb"""^<\?xml[^>]*encoding\s*=\s*["']([^"']*)["']""")
_ROW = re.compile(rb"""<(?:\w+:)?row\b[^<>]{0,500}?\sr\s*=\s*["'](\d+)["']""")
_FILLED = re.compile(rb"<(?:\w+:)?(?:v|is|f)\b")


def check_archive(path: Path) -> None:
    """Refuse a file that is no workbook, is too large, or holds what a form has no need of.

    Parameters
    ----------
    path : pathlib.Path
        The file to look into.

    Raises
    ------
    InputError
        With every reason found.
    """
    try:
        size = path.stat().st_size
        if size > LARGEST_FILE:
            raise InputError(str(path), [Problem("", f"is {size} bytes; a form is at most {LARGEST_FILE}")])
        with zipfile.ZipFile(path) as archive:
            reasons = _listed_reasons(archive) or _read_reasons(archive)
    except FileNotFoundError as error:
        raise InputError(str(path), [Problem("", "there is no such file")]) from error
    except OSError as error:
        raise InputError(str(path), [Problem("", f"cannot be read: {error.strerror or error}")]) from error
    except (zipfile.BadZipFile, EOFError, RuntimeError, NotImplementedError, ValueError, zlib.error) as error:
        words = "is not a workbook of the kind .xlsx (an old .xls or a file with a password is not read)"
        raise InputError(str(path), [Problem("", words)]) from error
    if reasons:
        raise InputError(str(path), [Problem("", reason) for reason in reasons])


def _listed_reasons(archive: zipfile.ZipFile) -> list[str]:
    """Reasons that show in the list of parts, before anything is unpacked."""
    parts = archive.infolist()
    names = [part.filename.lower() for part in parts]
    reasons = []
    if len(parts) > MOST_PARTS:
        reasons.append(text("form_file.many_parts", parts=len(parts), most=MOST_PARTS))
    unpacked = sum(part.file_size for part in parts)
    if unpacked > LARGEST_UNPACKED:
        reasons.append(text("form_file.unpacks", bytes=unpacked, most=LARGEST_UNPACKED))
    if any(part.file_size > max(SMALL_PART, TIGHTEST_PACKING * part.compress_size) for part in parts):
        reasons.append(text("form_file.packed_tight", most=TIGHTEST_PACKING))
    if len(set(names)) < len(names):
        reasons.append(text("form_file.two_of_a_name"))
    if "[content_types].xml" not in names:
        reasons.append(text("form_file.not_xlsx"))
    for pattern, what in _REFUSED_PARTS:
        if any(pattern.search(name) for name in names):
            reasons.append(text("form_file.contains", what=text(f"form_file.part_{what}")))
    return reasons


def _read_reasons(archive: zipfile.ZipFile) -> list[str]:
    """Reasons that show in the text of the parts."""
    reasons = []
    for part in archive.infolist():
        if part.is_dir():
            continue
        content = archive.read(part).removeprefix(b"\xef\xbb\xbf")
        if b"<!DOCTYPE" in content or b"<!ENTITY" in content:
            reasons.append(text("form_file.declares", part=part.filename))
        if part.filename.lower().endswith(_PICTURES):
            continue
        encoding = _ENCODING.match(content)
        foreign = encoding is not None and encoding[1].lower() not in (b"utf-8", b"us-ascii")
        if foreign or b"\x00" in content or (content and not content.lstrip().startswith(b"<")):
            reasons.append(text("form_file.not_xml", part=part.filename))
        if part.filename == "[Content_Types].xml" and b"macroenabled" in content.lower():
            reasons.append(text("form_file.macros"))
        if "worksheets/" in part.filename and _filled_below(content):
            reasons.append(text("form_file.far_below", part=part.filename, row=MOST_ROWS))
    return reasons


def _filled_below(sheet: bytes) -> bool:
    """Whether a sheet has filled cells below the rows that are read; rows that are only formatted do not count."""
    for row in _ROW.finditer(sheet):
        if int(row[1]) > MOST_ROWS:
            return _FILLED.search(sheet, row.end()) is not None
    return False
