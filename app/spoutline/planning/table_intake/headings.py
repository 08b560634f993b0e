"""Where the titles of a table stand, what stands over and under them, and which rows below are no parts."""

from __future__ import annotations

import difflib
import hashlib
import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from functools import cache
from typing import Final

from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.faults import InputFault, InputProblem
from spoutline.planning.survey_import.fields import normal, unit_in
from spoutline.planning.survey_import.titles import heads_over
from spoutline.planning.table_intake.intake_fields import TableSubject, fields_of, known_names
from spoutline.planning.table_intake.plain_prices import is_amount, places_of_prices
from spoutline.planning.table_intake.raw_table import RawRow, RawTable
from spoutline.units.accepted import ACCEPTED

ALIKE: Final = 0.86  # of a title and a field's name: a letter or two mistyped, no more
_ENOUGH: Final = 2  # titles that name a field make a row of titles; one may be chance
_CURRENCY: Final = re.compile(r"\b(USD|EUR|GBP|CAD|CHF|AUD|MXN)\b|([$€£])")
_SIGNS: Final = {"$": "USD", "€": "EUR", "£": "GBP"}
_TOTAL: Final = re.compile(
    r"(?:grand |sub-?)?totals?\b|sum\b|(?:zwischen|end)?summe\b|gesamt|total g[ée]n[ée]ral|suma\b", re.IGNORECASE
)


@frozen
class Column:
    """A column as its headings show it: title, what stands over it, the unit and the currency that they name."""

    place: int
    title: str
    head: str = ""
    unit: str = ""
    currency: str = ""
    means: str = ""  # the field that its cells tell, where no title does

    @property
    def names(self) -> tuple[str, ...]:
        """What the column may be called, the fuller name first, without case, unit and currency."""
        whole = (normal(f"{self.head} {self.title}"), normal(self.title), normal(self.head) if not self.title else "")
        endings = {normal(self.unit), self.currency.casefold(), "in"} - {""}
        found = [name for name in whole if name]
        for name in whole:
            words = name.split()
            while len(words) > 1 and words[-1] in endings:
                words.pop()
                found.append(" ".join(words))
            if words and [self.currency.casefold()] == words:
                found.append("price")
        return tuple(dict.fromkeys(found))


@frozen
class Headings:
    """The headings of a table; ``first_row`` is the number of the first row below them."""

    columns: tuple[Column, ...]
    first_row: int

    @property
    def has_titles(self) -> bool:
        """Whether any column has a title."""
        return any(one.title or one.head for one in self.columns)

    @property
    def fingerprint(self) -> str:
        """What tells tables of one supplier from others: a digest of all titles in their order."""
        text = "\n".join(f"{normal(one.head)}|{normal(one.title)}|{one.unit}|{one.currency}" for one in self.columns)
        return hashlib.sha256(text.encode()).hexdigest()[:16]

    def repeats(self, row: RawRow) -> bool:
        """Say whether a row below gives the titles again, as lists of several pages do."""
        said = [(one.title, row.cell(one.place)) for one in self.columns if one.title]
        same = sum(title == text for title, text in said)
        return same >= _ENOUGH and same * 2 > len(said)


def find_headings(
    table: RawTable,
    known: Mapping[str, str] | None = None,
    subject: TableSubject = TableSubject.PARTS,
    *,
    are_said: bool = False,
) -> Headings:
    """Return the headings of a table; those of numbers and prices alone need no titles.

    Parameters
    ----------
    table
        The table; its first rows are looked at.
    known
        Further titles that name a field, such as those of a remembered map: title to key.
    subject
        What the rows of the table are.
    are_said
        Whether a person says what the columns hold: then no title need be known.

    Raises
    ------
    InputFault
        No row of the first ones gives titles, and some must be known.
    """
    rows = table.head()
    names = {*known_names(subject), *(normal(title) for title in known or {})}
    for near in (False, True):  # mistyped titles only where no row is right
        counts = [_named(row.cells, _over(rows, place), names, near=near) for place, row in enumerate(rows)]
        best_count = max(counts, default=0)
        best = counts.index(best_count) if best_count else -1
        if best_count >= _ENOUGH:
            break
    if best_count < _ENOUGH and not fields_of(subject).needs_titles and len(rows) > 1:
        best, best_count = 0, _ENOUGH  # a person says what the columns hold
    if best_count < _ENOUGH and subject is TableSubject.PARTS and rows:
        places = places_of_prices(rows)
        if places is not None or are_said:
            return _untold(rows, places)
    if best < 0 or best_count < _ENOUGH:
        wanted = "a row of titles is needed, and at least one row below it"
        if fields_of(subject).needs_titles:
            wanted = "a row of titles is needed, such as: part number, description, price"
        raise InputFault((InputProblem(table.place, "titles", "none in the first rows", wanted),))
    titles = rows[best]
    above = _over(rows, best)
    below = rows[best + 1] if best + 1 < len(rows) else None
    units = below.cells if below is not None and _gives_units(below) else ()
    first = (below.number if below is not None and units else titles.number) + 1
    wide = max(len(titles.cells), len(units))
    names_of = tuple(titles.cell(column) for column in range(wide))
    heads = tuple(
        left if not title and place < len(units) and units[place] else over  # a title merged over several units
        for place, (title, left, over) in enumerate(
            zip(names_of, heads_over(names_of, names_of), heads_over(names_of, above), strict=True)
        )
    )
    columns = tuple(
        _column(place, title, head, units[place] if place < len(units) else "")
        for place, (title, head) in enumerate(zip(names_of, heads, strict=True))
    )
    return Headings(columns, first)


def _untold(rows: Sequence[RawRow], places: tuple[int, int] | None) -> Headings:
    """Return the headings of columns whose titles tell nothing; a first row with an amount in it gives none."""
    first = rows[0]
    is_titles = len(rows) > 1 and not any(map(is_amount, first.cells))
    means = {} if places is None else dict(zip(places, ("number", "price"), strict=True))
    columns = []
    for place in range(max(len(row.cells) for row in rows)):
        title = first.cell(place) if is_titles else ""
        columns.append(replace(_column(place, title, "", ""), means=means.get(place, "")))
    return Headings(tuple(columns), first.number + int(is_titles))


def _over(rows: Sequence[RawRow], place: int) -> tuple[str, ...]:
    """Return what stands right over a row; a single text is the title of the table and no head of its columns."""
    if not place or rows[place - 1].number != rows[place].number - 1:
        return ()
    above = rows[place - 1].cells
    return above if sum(map(bool, above)) > 1 else ()


def _named(cells: Sequence[str], above: Sequence[str], names: set[str], *, near: bool) -> int:
    heads = heads_over(cells, above)
    found = set()
    for place, (title, head) in enumerate(zip(cells, heads, strict=True)):
        said = _column(place, title, head, "").names if title and len(title) <= BOUNDS.title_characters else ()
        alike = [one for name in said for one in difflib.get_close_matches(name, names, 1, ALIKE)] if near else said
        found.add(next((one for one in alike if one in names), ""))
    return len(found - {""})


def _column(place: int, title: str, head: str, under: str) -> Column:
    unit = under if under and under in all_units() else ""
    unit = unit or unit_named(title) or unit_named(head)
    shown = (text.upper().replace("_", " ") for text in (under, title, head))
    currency = next((found for text in shown if (found := currency_named(text))), "")
    return Column(place, title, head, unit, currency)


def _gives_units(row: RawRow) -> bool:
    said = [cell.strip("()[] ") for cell in row.cells if cell]
    return bool(said) and all(cell in all_units() or currency_named(cell) == cell for cell in said)


@cache
def all_units() -> frozenset[str]:
    """Return every spelling of a unit that any dimension takes."""
    return frozenset(unit for known in ACCEPTED.values() for unit in known if unit)


def unit_named(title: str) -> str:
    """Return the unit that a title names: in brackets, or behind a comma or a blank as its last word."""
    found = unit_in(title)
    if found in all_units():
        return found
    last = re.split(r"[\s,/]+", title.strip())[-1] if title.strip() else ""
    return last if last in all_units() and last != title.strip() else ""


def currency_named(text: str) -> str:
    """Return the currency that a text names by its code or sign; empty where it names none or several."""
    found = {code or _SIGNS[sign] for code, sign in _CURRENCY.findall(text[:200])}
    return found.pop() if len(found) == 1 else ""


def is_total(row: RawRow) -> bool:
    """Say whether a row adds others up: its first text is a word for that."""
    first = next((cell for cell in row.cells if cell), "")
    return bool(_TOTAL.match(first)) and len(first) < 40
