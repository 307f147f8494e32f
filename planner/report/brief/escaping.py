"""Words of users in HTML: nothing of them is read as a tag, and nothing turns the words after them about."""

from __future__ import annotations

import re
from html import escape

_NOT_SHOWN = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069\ufffe\uffff\ud800-\udfff]")
"""Control characters, among them those that turn the direction of writing until another ends them."""


def safe(words: str) -> str:
    """Make words fit for a text or an attribute of HTML."""
    return escape(_NOT_SHOWN.sub(" ", words))
