"""Read a page of HTML as strictly as is needed to judge it: every element, its attributes and its own words."""

from __future__ import annotations

from dataclasses import dataclass, field
from html.parser import HTMLParser

VOID = {"meta", "br", "hr", "img", "input", "link", "source", "base"}


@dataclass
class Element:
    """One element of a page."""

    tag: str
    attributes: dict[str, str]
    parent: Element | None = None
    inside: list[Element | str] = field(default_factory=list)

    def all(self, tag: str = "") -> list[Element]:
        """Every element below it, in order; those of a tag where one is given."""
        found: list[Element] = []
        for inner in self.inside:
            if isinstance(inner, Element):
                found += [inner] if tag in ("", inner.tag) else []
                found += inner.all(tag)
        return found

    def one(self, tag: str) -> Element:
        """The only element of a tag below it."""
        (found,) = self.all(tag)
        return found

    @property
    def text(self) -> str:
        """All words below it, as they are read."""
        return " ".join("".join(self.words()).split())

    def words(self) -> list[str]:
        """Words below it; those of the style sheet are none."""
        if self.tag == "style":
            return []
        return [
            word
            for inner in self.inside
            for word in ([inner] if isinstance(inner, str) else [" ", *inner.words(), " "])
        ]


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.root = Element("", {})
        self.at = self.root

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        names = [name for name, _ in attrs]
        assert len(set(names)) == len(names), f"<{tag}> has an attribute twice: {names}"
        element = Element(tag, {name: value or "" for name, value in attrs}, self.at)
        self.at.inside.append(element)
        if tag not in VOID:
            self.at = element

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.handle_starttag(tag, attrs)
        if tag not in VOID:
            self.handle_endtag(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.at.tag == tag, f"</{tag}> where </{self.at.tag}> was to come"
        assert self.at.parent is not None
        self.at = self.at.parent

    def handle_data(self, data: str) -> None:
        self.at.inside.append(data)


def read(page: str) -> Element:
    """Read a page; every element must be closed where it was opened."""
    reader = _Reader()
    reader.feed(page)
    reader.close()
    assert reader.at is reader.root, f"<{reader.at.tag}> is not closed"
    return reader.root
