"""What the tables hold of an entry, worked out before its key is given: nothing of it asks the database anything."""

from __future__ import annotations

from typing import Final, NamedTuple

from spoutline.catalogue.descriptions import describe
from spoutline.catalogue.many_rows import Row
from spoutline.catalogue.part_records import rows_of
from spoutline.catalogue.search_words import search_text
from spoutline.model.catalogue_entry import CatalogueEntry

# the columns of ``EntryRows.entry`` in their order
ENTRY_COLUMNS: Final = (
    *("is_described", "number", "maker", "kind", "item_number", "gtin", "digest", "search_text", "content"),
)


class EntryRows(NamedTuple):
    """The rows of one entry without its key and the editions that hold it.

    ``part`` has those of the part that it describes, each with the name of its table; none where it is not described.
    """

    entry: Row
    part: tuple[tuple[str, Row], ...]


def rows_of_entry(entry: CatalogueEntry, text: str, digest: str, catalogue_id: int) -> EntryRows:
    """Return the rows of an entry whose ``text`` and ``digest`` are ``entry_text`` and ``digest_of``."""
    part = describe(entry).part
    known_by = search_text(entry, catalogue_id, described=part is not None)
    kind = None if entry.kind is None else entry.kind.value
    named = (entry.number, entry.maker, kind, entry.item_number or None, entry.gtin or None)
    rows = () if part is None else tuple(rows_of(part))
    return EntryRows((part is not None, *named, digest, known_by, text), rows)
