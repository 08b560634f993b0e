"""Which states of entries an edition holds, and what is known of an edition.

An entry's state holds for all editions from its first to its last. A change closes the state at the newest published
edition and opens another in the draft, so that editions share all that did not change: a hundred editions cost as much
room as their changes.
"""

from __future__ import annotations

from sqlalchemy import ColumnElement, Connection, select

from spoutline.catalogue.tables import (
    CatalogueRow,
    CrossReferenceRow,
    EditionRow,
    EntryRow,
    FamilyRow,
    PartRecord,
    PriceListRow,
    PriceRow,
)
from spoutline.frozen import frozen
from spoutline.model.catalogue_edition import CatalogueEdition, folded_catalogue_name


@frozen
class CatalogueKey:
    """A catalogue in the tables: its key, its name, and the number of its newest edition, 0 before the first."""

    id: int
    name: str
    last_edition: int


@frozen(kw_only=True)
class OpenedEdition:
    """An edition that is read: its catalogue's key, and the number by which states of entries are told.

    ``currencies`` is None for a draft, which may change.
    """

    edition: CatalogueEdition
    catalogue_id: int
    at: int
    currencies: tuple[str, ...] | None


def held_by(
    table: type[EntryRow | PartRecord | CrossReferenceRow | PriceListRow | FamilyRow], catalogue_id: int, at: int
) -> tuple[ColumnElement[bool], ...]:
    """Return the conditions that a row of ``table`` belongs to edition ``at`` of a catalogue."""
    return table.catalogue_id == catalogue_id, table.first_edition <= at, table.last_edition >= at


def currencies_of(connection: Connection, catalogue_id: int, at: int) -> tuple[str, ...]:
    """Return the currencies in which the described parts of an edition have prices, sorted."""
    query = (
        select(PriceRow.currency)
        .join(PartRecord, PartRecord.id == PriceRow.part_id)
        .where(*held_by(PartRecord, catalogue_id, at))
        .distinct()
    )
    return tuple(sorted(connection.execute(query).scalars()))


def published(connection: Connection, catalogue: CatalogueKey, number: int) -> OpenedEdition | None:
    """Return a published edition of a catalogue; None where there is none of this number."""
    query = select(EditionRow.__table__).where(EditionRow.catalogue_id == catalogue.id, EditionRow.number == number)
    row = connection.execute(query).one_or_none()
    if row is None:
        return None
    edition = CatalogueEdition(
        catalogue=catalogue.name,
        number=row.number,
        title=row.title,
        fingerprint=row.fingerprint,
        published_on=row.published_on,
        notes=row.notes,
        publisher=row.publisher,
        parts_count=row.parts_count,
        described_count=row.described_count,
    )
    currencies = tuple(row.currencies.split())
    return OpenedEdition(edition=edition, catalogue_id=catalogue.id, at=row.number, currencies=currencies)


def draft_of(catalogue: CatalogueKey) -> OpenedEdition:
    """Return the draft of a catalogue."""
    title = f"{catalogue.name}, draft"
    if catalogue.last_edition:
        title += f" after edition {catalogue.last_edition}"
    edition = CatalogueEdition(catalogue=catalogue.name, number=None, title=title)
    return OpenedEdition(edition=edition, catalogue_id=catalogue.id, at=catalogue.last_edition + 1, currencies=None)


def catalogue_row(connection: Connection, name: str) -> CatalogueKey | None:
    """Return key, name and newest edition of the catalogue that a person calls ``name``; capitals do not count."""
    columns = (CatalogueRow.id, CatalogueRow.name, CatalogueRow.last_edition)
    row = connection.execute(select(*columns).where(CatalogueRow.folded_name == folded(name))).one_or_none()
    return None if row is None else CatalogueKey(*row)


def folded(name: str) -> str:
    """Return a catalogue's name as it is compared."""
    return folded_catalogue_name(name)
