"""Texts that a Word document can hold."""

from __future__ import annotations

import re

_NOT_FOR_XML = re.compile("[\x00-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069\ud800-\udfff\ufffe\uffff]+")


def clean(content: str) -> str:
    """Put a space in the place of control characters, of which the format knows none or which turn a line about."""
    return _NOT_FOR_XML.sub(" ", content)
