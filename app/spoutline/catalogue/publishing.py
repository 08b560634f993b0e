"""An edition published: a draft made the next edition of its catalogue, with the fingerprint of all that it holds."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable
from datetime import date

from sqlalchemy import Connection, func, insert, select, update

from spoutline.catalogue.cross_references import references_held
from spoutline.catalogue.editions import (
    CatalogueKey,
    currencies_of,
    draft_of,
    folded,
    held_by,
)
from spoutline.catalogue.named_states import states_held
from spoutline.catalogue.shelf_lookup import known_catalogue, opened_edition
from spoutline.catalogue.tables import (
    CatalogueRow,
    EditionRow,
    EntryRow,
    FamilyRow,
    PriceListRow,
)
from spoutline.model.catalogue_edition import CatalogueEdition, EditionRef
from spoutline.model.cross_reference import CrossReference


def create_catalogue(connection: Connection, name: str) -> CatalogueKey:
    """Make an empty catalogue, in the caller's transaction."""
    key = (connection.execute(select(func.max(CatalogueRow.id))).scalar() or 0) + 1
    values = {"id": key, "name": name, "folded_name": folded(name), "last_edition": 0, "source_fingerprint": ""}
    connection.execute(insert(CatalogueRow), [values])
    return known_catalogue(connection, name)


def publish_draft(
    connection: Connection,
    row: CatalogueKey,
    *,
    title: str,
    notes: str,
    publisher: str,
    on: date | None,
) -> CatalogueEdition:
    """Make the draft of a catalogue its next edition, in the caller's transaction."""
    number = row.last_edition + 1
    held = held_by(EntryRow, row.id, number)
    columns = (EntryRow.number, EntryRow.maker, EntryRow.digest, EntryRow.is_described)
    states = connection.execute(select(*columns).where(*held)).all()
    references = references_held(connection, draft_of(row))
    lists, families = (
        [text for _name, text in states_held(connection, table, row.id, number)] for table in (PriceListRow, FamilyRow)
    )
    values = {
        "catalogue_id": row.id,
        "number": number,
        "title": title,
        "fingerprint": fingerprint_of_states(
            ((one.number, one.maker, one.digest) for one in states), references, lists, families
        ),
        "published_on": on,
        "publisher": publisher,
        "notes": notes,
        "parts_count": len(states),
        "described_count": sum(one.is_described for one in states),
        "currencies": " ".join(currencies_of(connection, row.id, number)),
    }
    connection.execute(insert(EditionRow), [values])
    connection.execute(update(CatalogueRow).where(CatalogueRow.id == row.id).values(last_edition=number))
    return opened_edition(connection, EditionRef(row.name, number)).edition


def fingerprint_of_states(
    states: Iterable[tuple[str, str, str]],
    references: Iterable[CrossReference] = (),
    list_texts: Iterable[str] = (),
    family_texts: Iterable[str] = (),
) -> str:
    """Return the fingerprint of an edition.

    It is the SHA-256 over number, maker and digest of its entries, and all of its cross-references, price
    lists and families, in their order; of lists and families the texts that are stored.
    """
    digest = hashlib.sha256()
    for number, maker, content in sorted(states):
        digest.update(f"{number}\0{maker}\0{content}\n".encode())
    for one in sorted(references, key=lambda one: one.ref):
        texts = (one.number, one.maker, one.part_number, one.part_maker, one.relation, one.remark)
        digest.update(("\1" + "\0".join(texts) + "\n").encode())
    for text in sorted(list_texts):
        digest.update(f"\2{text}\n".encode())
    for text in sorted(family_texts):
        digest.update(f"\3{text}\n".encode())
    return digest.hexdigest()
