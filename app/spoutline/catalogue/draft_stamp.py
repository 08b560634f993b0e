"""What tells one state of a draft from every other: whoever works something out for it sees that it changed since."""

from __future__ import annotations

import hashlib
from typing import Final

from sqlalchemy import Connection, select

from spoutline.catalogue.editions import held_by
from spoutline.catalogue.tables import CrossReferenceRow, EntryRow, FamilyRow, PriceListRow

_FETCHED: Final = 2_000  # rows that are held in memory at once


def draft_stamp(connection: Connection, catalogue_id: int, last_edition: int) -> str:
    """Return a text that stays the same as long as nothing in the draft changes and it is not published.

    A state of an entry keeps its content, and no key is given twice; of the others a key may come again.
    """
    told = hashlib.sha256(f"{catalogue_id} {last_edition}".encode())
    for table, columns, at_once in (
        (EntryRow, (EntryRow.id,), _FETCHED),
        (CrossReferenceRow, tuple(CrossReferenceRow.__table__.c), _FETCHED),
        (PriceListRow, (PriceListRow.id, PriceListRow.name, PriceListRow.content), 1),
        (FamilyRow, (FamilyRow.id, FamilyRow.name, FamilyRow.content), 1),
    ):
        held = held_by(table, catalogue_id, last_edition + 1)
        query = select(*columns).where(*held).order_by(table.id).execution_options(yield_per=at_once)
        for row in connection.execute(query):
            told.update(repr(tuple(row)).encode())
    return told.hexdigest()
