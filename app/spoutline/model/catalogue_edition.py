"""Catalogues of a book and their editions: how one is named, and what is known of it."""

from __future__ import annotations

import re
from datetime import date
from typing import Annotated, Final

from pydantic import AfterValidator, StringConstraints

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.plain_values import hidden_sign
from spoutline.model.worded import Worded

DEMONSTRATION: Final = "Demonstration"  # the invented catalogue that comes with the program; nobody may write to it
CATALOGUE_NAME_LENGTH: Final = 60
_DRAFT: Final = "draft"
_NAME: Final = re.compile(r"[^\W_](?:[\w &().,+-]*[\w).])?")


def folded_catalogue_name(name: str) -> str:
    """Return a catalogue's name as it is compared: capitals do not count."""
    return name.strip().casefold()


@frozen
class EditionRef:
    """A catalogue, and which of its editions: a number, the draft, or the newest published one where neither is said.

    A person writes ``NAME``, ``NAME@3`` or ``NAME@draft``.
    """

    catalogue: str
    number: int | None = None
    is_draft: bool = False

    def __str__(self) -> str:
        """Return how a person writes it."""
        if self.is_draft:
            return f"{self.catalogue}@{_DRAFT}"
        return self.catalogue if self.number is None else f"{self.catalogue}@{self.number}"

    @classmethod
    def from_text(cls, text: str, field: str = "catalogue") -> EditionRef:
        """Return what a person names; raise ``InputFault`` for what names no catalogue or edition.

        ``field`` is what a fault names.
        """
        name, at, edition = text.strip().rpartition("@")
        if not at:
            name, edition = edition, ""
        told = catalogue_name_fault(name.strip())
        if told:
            raise InputFault(
                (InputProblem("", field, repr(text), Worded("{told}; write NAME, NAME@3 or NAME@draft", told=told)),)
            )
        edition = edition.strip()
        if at and edition.casefold() == _DRAFT:
            return cls(name.strip(), is_draft=True)
        if not at:
            return cls(name.strip())
        if not (edition.isascii() and edition.isdigit() and int(edition[:9]) > 0 and len(edition) <= 9):
            wanted = Worded("behind @ stands the number of an edition, counted from 1, or {draft}", draft=_DRAFT)
            raise InputFault((InputProblem("", field, repr(text), wanted),))
        return cls(name.strip(), int(edition))


@frozen(kw_only=True)
class CatalogueEdition:
    """An edition as it was published; ``number`` is None for the draft.

    ``fingerprint`` is the SHA-256 over its parts in 64 hex digits: equal editions of any book have equal ones. It is
    empty for a draft.
    """

    catalogue: str
    number: int | None
    title: str  # as papers print it
    fingerprint: str = ""
    published_on: date | None = None
    notes: str = ""
    publisher: str = ""
    parts_count: int = 0
    described_count: int = 0  # of these, the parts that a search may choose

    @property
    def ref(self) -> EditionRef:
        """What names exactly this edition."""
        return EditionRef(self.catalogue, self.number, is_draft=self.number is None)


def catalogue_name_fault(name: str) -> str:
    """Return what would be right in place of a catalogue's name; empty for one that may stand."""
    told = hidden_sign(name)
    if told:
        return told
    if len(name) > CATALOGUE_NAME_LENGTH or "  " in name or not _NAME.fullmatch(name):
        return Worded(
            "a catalog's name has up to {catalogue_name_length} letters, digits, single blanks "
            "and & ( ) . , + - _ and begins with a letter or digit",
            catalogue_name_length=CATALOGUE_NAME_LENGTH,
        )
    return ""


def _names_an_edition(text: str) -> str:
    try:
        return str(EditionRef.from_text(text))
    except InputFault as fault:
        raise ValueError(fault.problems[0].wanted) from None


CatalogueChoice = Annotated[
    str,
    StringConstraints(strip_whitespace=True, min_length=1, max_length=2 * CATALOGUE_NAME_LENGTH),
    AfterValidator(_names_an_edition),
]
