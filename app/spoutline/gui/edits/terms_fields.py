"""What an entry of the terms form is: its place in the terms, its words and how it is typed."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.gui.edits.question import Option


class TermsEntry(StrEnum):
    """How an entry is given."""

    TEXT = "text"
    LONG_TEXT = "long_text"
    NUMBER = "number"  # an exact decimal
    COUNT = "count"  # a whole number
    DAY = "day"
    CHOICE = "choice"
    SEVERAL = "several"  # any number of the choices
    PICTURE = "picture"  # name of a picture file


class Known(StrEnum):
    """Names that price lists know, offered while a text is typed."""

    MAKERS = "makers"
    GROUPS = "groups"
    CURRENCIES = "currencies"
    PART_NUMBERS = "part_numbers"


@frozen(kw_only=True)
class TermsField:
    """One entry; ``path`` leads from the terms to it, names separated by dots. ``is_wide`` takes the whole row."""

    path: str
    title: str
    help: str
    entry: TermsEntry = TermsEntry.TEXT
    options: tuple[Option, ...] = ()
    known: Known | None = None
    is_wide: bool = False


@frozen(kw_only=True)
class TermsColumn:
    """One column of a table; ``name`` is the field of a row, empty where the row is a bare text.

    ``initial`` stands in a new row: a row that holds nothing else counts as empty. ``share`` is its part of the width,
    ``empty_words`` what an empty cell means.
    """

    name: str
    title: str
    help: str
    share: int
    entry: TermsEntry = TermsEntry.TEXT
    options: tuple[Option, ...] = ()
    known: Known | None = None
    initial: str = ""
    empty_words: str = ""


@frozen(kw_only=True)
class TermsTable:
    """A list of rows; ``row`` names one of them in a fault."""

    path: str
    title: str
    help: str
    row: str
    columns: tuple[TermsColumn, ...]

    @property
    def new_row(self) -> tuple[str, ...]:
        """The cells of a new row."""
        return tuple(column.initial for column in self.columns)

    def is_empty(self, row: tuple[str, ...]) -> bool:
        """Say whether a row holds nothing that a person typed."""
        return all(cell.strip() in ("", column.initial) for cell, column in zip(row, self.columns, strict=True))


@frozen(kw_only=True)
class Subject:
    """One page of the form."""

    name: str
    title: str
    lead: str
    parts: tuple[TermsField | TermsTable, ...]

    @property
    def fields(self) -> tuple[TermsField, ...]:
        """The single entries of the page."""
        return tuple(part for part in self.parts if isinstance(part, TermsField))

    @property
    def tables(self) -> tuple[TermsTable, ...]:
        """The tables of the page."""
        return tuple(part for part in self.parts if isinstance(part, TermsTable))
