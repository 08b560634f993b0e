"""Annex B of a bill as a reader of the HTML paper meets it: calculations, their lines, and whom they hold for."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from documents.html_reading import Element, page_of

_CALCULATION = re.compile(r"B(\d+) (.+)")
_GROUPS = re.compile(r"G(\d+)(?:–(\d+))?")
_LIST = re.compile(r"\bC\d+\b")
_FIGURE = re.compile(r"([^\s=][^=]*?) = ([^=]+?)(?:, (?=[^=]+ = )|\.?$)")


@dataclass
class Line:
    """A numbered line: the groups that it names, and its figures by symbol."""

    groups: set[int]
    figures: dict[str, str]


@dataclass
class Calculation:
    """A calculation by its mark: formulas told in it, lines that hold in it, results with limit and margin."""

    title: str
    formulas: list[str] = field(default_factory=list)
    lines: list[Line] = field(default_factory=list)
    results: list[tuple[set[int], tuple[str, ...]]] = field(default_factory=list)


def groups_in(text: str, lists: Mapping[str, str] = MappingProxyType({})) -> set[int]:
    """Return the numbers of the groups that a text names, ranges in full, long lists by their mark."""
    told = _LIST.sub(lambda match: lists.get(match[0], match[0]), text)
    return {number for first, last in _GROUPS.findall(told) for number in range(int(first), int(last or first) + 1)}


def calculations_of(content: bytes) -> dict[str, Calculation]:
    """Return every calculation of an English bill by the anchor of its heading."""
    found: dict[str, Calculation] = {}
    told: dict[int, Line] = {}
    now: Calculation | None = None
    shared: dict[str, str] = {}
    lists: dict[str, str] = {}
    titles: list[str] = []
    for element in _told(content):
        text = " ".join(element.text.replace("\N{NO-BREAK SPACE}", " ").split())
        if element.tag in ("h2", "h3"):
            match = _CALCULATION.match(text)
            now = found.setdefault(element.attributes["id"], Calculation(match[2])) if match else None
            shared = {}
        elif now is None:
            if element.tag == "tr" and _LIST.fullmatch(element.cells[0]):
                lists[element.cells[0]] = element.cells[1]
        elif element.tag == "li":
            now.formulas.append(text)
            shared = {}
        elif element.tag == "p" and text.startswith("Told before"):
            now.lines.extend(_again(text, told, lists))
        elif element.tag == "p":
            shared = figures_in(text.partition("In every line ")[2])
        elif element.tag == "thead":
            titles = element.cells
        elif titles[0] == "No.":
            number, groups, *cells = element.cells
            line = told[int(number)] = Line(groups_in(groups, lists), {**shared, **_figures(titles[2:], cells)})
            now.lines.append(line)
        else:
            groups, *cells = element.cells
            now.results.append((groups_in(groups, lists), tuple(cells)))
            shared = {}
    return found


def figures_in(text: str) -> dict[str, str]:
    """Return the figures of a text like ``a = 1 ft, b = 2 ft`` by their symbols."""
    return {symbol.strip(): figure.strip() for symbol, figure in _FIGURE.findall(text)}


def _figures(titles: list[str], cells: list[str]) -> dict[str, str]:
    found: dict[str, str] = {}
    for title, cell in zip(titles, cells, strict=True):
        if title in ("with", "Value"):
            found.update(figures_in(cell))
        else:
            found[title] = cell
    return found


def _again(text: str, told: dict[int, Line], lists: Mapping[str, str]) -> Iterator[Line]:
    """Yield the lines told before, each for the groups that stand behind it in parentheses."""
    for numbers, groups in re.findall(r"([\d–, ]+) \(([^)]*)\)", text):
        for first, last in re.findall(r"(\d+)(?:–(\d+))?", numbers):
            for number in range(int(first), int(last or first) + 1):
                yield Line(groups_in(groups, lists), told[number].figures)


@dataclass
class _Told(Element):
    cells: list[str] = field(default_factory=list)


def _told(content: bytes) -> Iterator[_Told]:
    """Yield headings, notes, formulas, heads and rows of tables in their order."""
    row: _Told | None = None
    for element in page_of(content).elements:
        if element.tag in ("th", "td") and row is not None:
            row.cells.append(" ".join(element.text.replace("\N{NO-BREAK SPACE}", " ").split()))
        if element.tag not in ("tr", "h2", "h3", "p", "li"):
            continue
        if row is not None:
            yield row
            row = None
        if element.tag == "tr":
            row = _Told("thead" if "thead" in element.parents else "tr", element.attributes, element.parents)
        else:
            yield _Told(element.tag, element.attributes, element.parents, element.text)
    if row is not None:
        yield row
