"""An entry as the text that the store keeps, and its digest: the same text for the same entry."""

from __future__ import annotations

import hashlib
import json
from datetime import date
from functools import lru_cache
from operator import attrgetter
from typing import Any, Final

from spoutline.model.catalogue_entry import CatalogueEntry, Cell, EntryPrice, FigureCell, Origin
from spoutline.model.part import PartKind, PartStatus
from spoutline.model.part_file import FileMatter, MediaType, PartFile

DIGEST_LENGTH: Final = 32  # hex digits of SHA-256 that are kept: 128 bits
_WORDS: Final = (
    "number",
    "maker",
    "name",
    "kind",
    "status",
    "superseded_by",
    "superseded_by_maker",
    "item_number",
    "gtin",
    "supplier",
    "family",
    "lead_days",
    "pack",
    "remark",
)
_words_of: Final = attrgetter(*_WORDS)
_WRITER: Final = json.JSONEncoder(ensure_ascii=False, separators=(",", ":"))
_STATED: Final = (Origin.STATED.value, "")


def entry_text(entry: CatalogueEntry) -> str:
    """Return an entry as JSON without what it leaves open."""
    kept: dict[str, Any] = {
        name: value for name, value in zip(_WORDS, _words_of(entry), strict=True) if value is not None and value != ""
    }
    if entry.discontinued_from is not None:
        kept["discontinued_from"] = entry.discontinued_from.isoformat()
    if entry.prices:
        kept["prices"] = {price.currency: price.minor for price in entry.prices}
    if entry.files:
        kept["files"] = [[one.title, one.matter, one.media, one.digest, one.size] for one in entry.files]
    if entry.figures:
        kept["figures"] = {cell.column: cell.value for cell in entry.figures}
        told = [cell for cell in entry.figures if cell.origin is not Origin.STATED or cell.source]
        if told:
            kept["origins"] = {cell.column: [cell.origin, cell.source] for cell in told}
    return _WRITER.encode(kept)


def entry_from_text(text: str) -> CatalogueEntry:
    """Return the entry that ``entry_text`` wrote; it was checked before it was stored and is not checked again."""
    content: dict[str, Any] = json.loads(text)
    origins = content.pop("origins", {})
    kind, day = content.pop("kind", None), content.pop("discontinued_from", None)
    figures = tuple(
        known_figure(column, plain_cell(value), *origins.get(column, _STATED))
        for column, value in content.pop("figures", {}).items()
    )
    files = tuple(
        PartFile.model_construct(
            title=title, matter=FileMatter(matter), media=MediaType(media), digest=digest, size=size
        )
        for title, matter, media, digest, size in content.pop("files", ())
    )
    content["prices"] = tuple(
        _PRICE.model_copy(update={"currency": currency, "minor": minor})
        for currency, minor in content.pop("prices", {}).items()
    )
    content["kind"] = None if kind is None else PartKind(kind)
    content["status"] = PartStatus(content["status"])
    content["discontinued_from"] = None if day is None else date.fromisoformat(day)
    content["figures"], content["files"] = figures, files
    return _ENTRY.model_copy(update=content)


# a copy of these takes a fifth of what making one without a check takes
_CELL: Final = FigureCell.model_construct(column="", value="", origin=Origin.STATED, source="")
_PRICE: Final = EntryPrice.model_construct(currency="", minor=0)
_ENTRY: Final = CatalogueEntry.model_construct(number="", maker="")


@lru_cache(maxsize=50_000, typed=True)  # parts of a catalogue share most of their figures; 1, 1.0 and yes are different
def known_figure(column: str, value: Cell, origin: str, source: str) -> FigureCell:
    """Return a figure that was checked before; equal ones are mostly one object."""
    return _CELL.model_copy(update={"column": column, "value": value, "origin": Origin(origin), "source": source})


def plain_cell(value: object) -> Cell:
    """Return a figure that JSON wrote."""
    return tuple(value) if isinstance(value, list) else value  # type: ignore[return-value]


def digest_of(text: str) -> str:
    """Return what tells the content of one entry from another."""
    return hashlib.sha256(text.encode()).hexdigest()[:DIGEST_LENGTH]
