"""What a reader of an HTML paper meets: its elements in order, with their texts and attributes."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from html.parser import HTMLParser

# elements without an end tag: HTML Living Standard, 13.1.2
VOID = frozenset({"area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"})
UNSEEN = frozenset({"style", "title", "desc", "nav"})


@dataclass
class Element:
    tag: str
    attributes: dict[str, str]
    parents: tuple[str, ...]
    text: str = ""


@dataclass
class Page(HTMLParser):
    """A page read strictly: each end tag closes the element opened last."""

    elements: list[Element] = field(default_factory=list)
    shown: list[str] = field(default_factory=list)

    def __post_init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self._open: list[Element] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        element = Element(tag, {name: value or "" for name, value in attrs}, tuple(one.tag for one in self._open))
        self.elements.append(element)
        if tag not in VOID:
            self._open.append(element)
        if tag == "br":
            self.shown.append(" ")

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.append(Element(tag, {name: value or "" for name, value in attrs}, ()))

    def handle_endtag(self, tag: str) -> None:
        assert self._open, f"</{tag}> closes nothing"
        assert self._open[-1].tag == tag, f"</{tag}> closes <{self._open[-1].tag}>"
        self._open.pop()
        self.shown.append("" if tag in ("sub", "sup") else " ")

    def handle_data(self, data: str) -> None:
        for one in self._open:
            one.text += data
        if not UNSEEN & {one.tag for one in self._open}:
            self.shown.append(data)

    def all(self, tag: str) -> list[Element]:
        return [one for one in self.elements if one.tag == tag]


def page_of(content: bytes) -> Page:
    page = Page()
    page.feed(content.decode("utf-8"))
    page.close()
    assert page._open == []
    return page


def figures(text: str) -> set[str]:
    """Return every figure in a text, as it is written."""
    return set(re.findall(r"\d[\d.,/]*", text.replace("\N{NO-BREAK SPACE}", " ")))


def shown_text(content: bytes) -> str:
    return " ".join("".join(page_of(content).shown).split())
