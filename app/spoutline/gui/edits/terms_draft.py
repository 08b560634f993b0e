"""Terms as they are typed: every entry a text, faulty or not, and what the texts amount to."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import replace
from datetime import date
from decimal import Decimal
from enum import Enum
from types import MappingProxyType
from typing import Generic, TypeVar

from pydantic import BaseModel, ValidationError

from spoutline.book.survey_faults import problems_of
from spoutline.frozen import frozen
from spoutline.gui.edits.question import Option
from spoutline.gui.edits.terms_fields import Known, TermsColumn, TermsEntry, TermsField, TermsTable
from spoutline.gui.edits.terms_subjects import SUBJECTS
from spoutline.gui.wording import told
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation_terms import DriveOffs, Freight, Heading, Labour, Rounding, Selling, Terms, YearlyFigures
from spoutline.model.usual_terms import UsualTerms
from spoutline.model.worded import Worded
from spoutline.units.decimals import exact_decimal

Row = tuple[str, ...]
TermsT = TypeVar("TermsT", Terms, UsualTerms)

SEPARATOR = ";"  # between the values of several choices
FIELDS = {field.path: field for subject in SUBJECTS for field in subject.fields}
TABLES = {table.path: table for subject in SUBJECTS for table in subject.tables}

_WHOLE = re.compile(r"\d+", re.ASCII)
_DAY = re.compile(r"\d{4}-\d{2}-\d{2}", re.ASCII)
_PLACE = re.compile(r"([a-z_.]+)(?:\[(\d+)\])?(?:\.([a-z_]+))?")
_UNSHARED = ("customer", "options", "overrides", "alternates")
_UNSHARED_HEADING = ("number", "title", "dated", "scope")


@frozen
class Spot:
    """Where an entry of the form is: a field, or a cell of a table; without row or column the whole of it."""

    path: str
    row: int | None = None
    column: int | None = None


@frozen
class DraftProblem:
    """What is wrong with an entry, and what would be right; ``is_missing`` where nothing was written yet."""

    spot: Spot
    field: str
    value: str
    wanted: str
    is_missing: bool = False

    def __str__(self) -> str:
        return f"{self.field}: {self.words}"

    @property
    def words(self) -> str:
        """What to say beside the entry, whose name is in view there."""
        wanted = told(self.wanted)
        if self.is_missing:
            return f"{wanted[:1].upper()}{wanted[1:]}."
        return told(Worded("{value} is not usable here; {wanted}.", value=self.value, wanted=self.wanted))


@frozen
class Judged(Generic[TermsT]):
    """What a draft amounts to: terms, or what stands in their way."""

    terms: TermsT | None
    problems: tuple[DraftProblem, ...]


@frozen
class TermsDraft:
    """Everything typed: the text of each field by its path, the rows of each table by its path.

    ``makers`` are those whose name may stand before a part number.
    """

    texts: Mapping[str, str]
    rows: Mapping[str, tuple[Row, ...]]
    makers: frozenset[str] = frozenset()

    def with_text(self, path: str, text: str) -> TermsDraft:
        """Return the draft with another text in a field."""
        return replace(self, texts=MappingProxyType({**self.texts, path: text}))

    def with_rows(self, path: str, rows: tuple[Row, ...]) -> TermsDraft:
        """Return the draft with other rows in a table."""
        return replace(self, rows=MappingProxyType({**self.rows, path: rows}))


def draft_of(start: Terms | UsualTerms, today: date | None = None, makers: Iterable[str] = ()) -> TermsDraft:
    """Return terms, or what there is of them, as the form shows them; a heading without a day is dated ``today``.

    ``makers`` are those that price lists know; those whom the terms name are known besides.
    """
    texts = {path: _shown(_value_at(start, path)) for path in FIELDS}
    if not texts["heading.dated"] and today is not None:
        texts["heading.dated"] = today.isoformat()
    rows = {path: tuple(_cells(row, table) for row in _rows_at(start, path)) for path, table in TABLES.items()}
    if not rows["options"]:
        rows["options"] = tuple(_cells(row, TABLES["options"]) for row in Terms.model_fields["options"].default)
    named = {one.part.maker for one in start.overrides if one.part.maker}
    return TermsDraft(MappingProxyType(texts), MappingProxyType(rows), frozenset({*makers, *named}))


def empty_means(path: str) -> str:
    """Return what an empty field stands for; empty where it must be filled in, or where nothing is meant."""
    owners: dict[str, type[BaseModel]] = {
        "heading": Heading,
        "rounding": Rounding,
        "selling": Selling,
        "freight": Freight,
        "labour": Labour,
        "drive_offs": DriveOffs,
        "yearly": YearlyFigures,
    }
    head, _, name = path.partition(".")
    field = (owners[head] if name else Terms).model_fields.get(name or head) if head in owners or not name else None
    if field is None or field.is_required():
        return ""
    return _option_words(_shown(field.default), FIELDS[path].options)


def judged_terms(draft: TermsDraft) -> Judged[Terms]:
    """Return the terms that the texts amount to, or every problem with its spot."""
    return _judged(_Reading(draft), Terms)


def judged_usual(draft: TermsDraft) -> Judged[UsualTerms]:
    """Return what other quotations share of the draft; what they do not share is not looked at."""
    reading = _Reading(draft, is_shared=True)
    for name in _UNSHARED:
        reading.document.pop(name, None)
    if not reading.document.get("seller"):
        reading.document.pop("seller", None)
    return _judged(reading, UsualTerms)


def cell_words(text: str, column: TermsColumn) -> str:
    """Return the text of a cell as it is shown: a choice by its words, an empty one by what it means."""
    if not text.strip() and column.empty_words:
        return column.empty_words
    if not column.options:
        return text
    return ", ".join(_option_words(piece, column.options) for piece in _pieces(text, column.entry))


def cell_value(text: str, column: TermsColumn) -> str:
    """Return the text that a cell holds for what was typed or pasted; words of a choice become its value."""
    if not column.options:
        return text
    values = (_option_value(piece, column.options) or piece for piece in _pieces(text, column.entry))
    return SEPARATOR.join(values)


class _Reading:
    """The document that the texts of a draft amount to, and what could not be read."""

    def __init__(self, draft: TermsDraft, *, is_shared: bool = False) -> None:
        self._makers = draft.makers
        self.document: dict[str, object] = {"seller": {}, "customer": {}, "heading": {}}
        self.problems: list[DraftProblem] = []
        self.places: dict[str, list[int]] = {}  # table to the rows of the form that stand in the document
        for path, field in FIELDS.items():
            if not (is_shared and _is_unshared(path)):
                self._take_field(field, draft.texts[path])
        for path, table in TABLES.items():
            if not (is_shared and _is_unshared(path)):
                self._take_table(table, draft.rows[path])

    def _take_field(self, field: TermsField, text: str) -> None:
        value = self._read(text, field, Spot(field.path), _title(field))
        if value is not None:
            self._put(field.path, value)

    def _take_table(self, table: TermsTable, rows: tuple[Row, ...]) -> None:
        kept = [at for at, row in enumerate(rows) if not table.is_empty(row)]
        self.places[table.path] = kept
        found: list[object] = []
        for at in kept:
            values: dict[str, object] = {}
            for place, column in enumerate(table.columns):
                name = cell_name(table, at, place)
                value = self._read(rows[at][place], column, Spot(table.path, at, place), name)
                if value is not None:
                    values[column.name] = value
            found.append(values if table.columns[0].name else values.get("", ""))
        if found or table.path == "options":
            self._put(table.path, found)

    def _read(self, text: str, entry: TermsField | TermsColumn, spot: Spot, name: str) -> object | None:
        try:
            return _value_of(text, entry, self._makers)
        except InputFault as fault:
            self.problems.append(DraftProblem(spot, name, f"“{text.strip()}”", fault.problems[0].wanted))
            return None

    def _put(self, path: str, value: object) -> None:
        *heads, name = path.split(".")
        target = self.document
        for head in heads:
            inner = target.setdefault(head, {})
            if isinstance(inner, dict):
                target = inner
        target[name] = value


def _judged(reading: _Reading, model: type[TermsT]) -> Judged[TermsT]:
    try:
        terms: TermsT = model.model_validate(reading.document)
    except ValidationError as error:
        return Judged(None, _all_problems(error, model, reading))
    return Judged(None if reading.problems else terms, tuple(reading.problems))


def _all_problems(error: ValidationError, model: type[BaseModel], reading: _Reading) -> tuple[DraftProblem, ...]:
    told = {problem.spot for problem in reading.problems}
    found = [_located(problem, reading) for problem in problems_of(error, model, "", whole="terms")]
    return (*reading.problems, *(problem for problem in found if problem.spot not in told))


def _located(problem: InputProblem, reading: _Reading) -> DraftProblem:
    match = _PLACE.match(problem.field)
    path, row, name = (match[1], match[2], match[3]) if match else ("", None, None)
    is_missing = problem.is_missing
    if path in FIELDS:
        wanted = _needed(FIELDS[path]) if is_missing else problem.wanted
        return DraftProblem(Spot(path), _title(FIELDS[path]), problem.value, wanted, is_missing)
    table = TABLES.get(path)
    if table is None:
        return DraftProblem(Spot(path), problem.field, problem.value, problem.wanted, is_missing)
    if row is None:
        return DraftProblem(Spot(path), table.title, problem.value, problem.wanted, is_missing)
    at = reading.places[path][int(row)]
    column = next((place for place, one in enumerate(table.columns) if one.name == (name or "")), None)
    if column is None:
        return DraftProblem(
            Spot(path, at), f"{table.row.capitalize()} {at + 1}", problem.value, problem.wanted, is_missing
        )
    wanted = _needed(table.columns[column]) if is_missing else problem.wanted
    return DraftProblem(Spot(path, at, column), cell_name(table, at, column), problem.value, wanted, is_missing)


def cell_name(table: TermsTable, row: int, column: int) -> str:
    """Return what a fault calls a cell; rows count from 1."""
    return f"{table.row.capitalize()} {row + 1}, {table.columns[column].title}"


def _title(field: TermsField) -> str:
    return field.title.replace("&", "")


def _needed(entry: TermsField | TermsColumn) -> str:
    match entry.entry:
        case TermsEntry.NUMBER:
            return "a number is needed, such as 12.5"
        case TermsEntry.COUNT:
            return "a whole number is needed"
        case TermsEntry.DAY:
            return "a day is needed, such as 2026-11-25"
        case TermsEntry.CHOICE | TermsEntry.SEVERAL:
            return "choose one"
    return "write it"


def _value_of(text: str, entry: TermsField | TermsColumn, makers: frozenset[str]) -> object | None:
    """Return what a text stands for; None where it says nothing. Raise ``InputFault`` for what cannot be read."""
    if entry.entry is TermsEntry.SEVERAL:
        return [_chosen(piece, entry.options) for piece in _pieces(text, entry.entry)]
    if not text.strip():
        return None
    if entry.entry is TermsEntry.CHOICE:
        return _chosen(text, entry.options)
    if entry.known is Known.PART_NUMBERS:
        return PartRef.from_text(text, makers)
    read = _READERS.get(entry.entry)
    return read(text.strip()) if read is not None else text


def _count(text: str) -> int:
    if not _WHOLE.fullmatch(text):
        raise _fault("write a whole number")
    return int(text)


def _day(text: str) -> date:
    try:
        if _DAY.fullmatch(text):
            return date.fromisoformat(text)
    except ValueError:
        pass  # the form is right, but there is no such day
    raise _fault("write a day as year-month-day, such as 2026-11-25")


_READERS: dict[TermsEntry, Callable[[str], object]] = {
    TermsEntry.NUMBER: exact_decimal,
    TermsEntry.COUNT: _count,
    TermsEntry.DAY: _day,
}


def _chosen(text: str, options: tuple[Option, ...]) -> str:
    value = _option_value(text, options)
    if value is None:
        raise _fault(f"use one of: {', '.join(option.words for option in options)}")
    return value


def _option_value(text: str, options: tuple[Option, ...]) -> str | None:
    word = text.strip().casefold()
    return next((str(one.value) for one in options if word in (one.value.casefold(), one.words.casefold())), None)


def _option_words(value: str, options: tuple[Option, ...]) -> str:
    return next((option.words for option in options if option.value == value), value)


def _pieces(text: str, entry: TermsEntry) -> list[str]:
    if entry is not TermsEntry.SEVERAL:
        return [text]
    return [piece.strip() for piece in re.split("[;,]", text) if piece.strip()]


def _fault(wanted: str) -> InputFault:
    return InputFault((InputProblem("", "", "", wanted),))


def _is_unshared(path: str) -> bool:
    head, _, name = path.partition(".")
    return head in _UNSHARED or (head == "heading" and name in _UNSHARED_HEADING)


def _value_at(owner: BaseModel, path: str) -> object:
    value: object = owner
    for name in path.split("."):
        value = getattr(value, name, None)
    return value


def _rows_at(owner: BaseModel, path: str) -> Iterator[object]:
    rows = _value_at(owner, path)
    yield from rows if isinstance(rows, tuple) else ()


def _cells(row: object, table: TermsTable) -> Row:
    if isinstance(row, BaseModel):
        return tuple(_shown(getattr(row, column.name)) for column in table.columns)
    return (_shown(row),)


def _shown(value: object) -> str:
    match value:
        case None:
            return ""
        case Enum():
            return str(value.value)
        case Decimal():
            return format(value, "f")
        case tuple():
            return SEPARATOR.join(_shown(one) for one in value)
    return str(value)
