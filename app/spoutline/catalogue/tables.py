"""The tables of catalogues: entries by edition, and the described ones compiled for the search.

A described part is one row, what its kind adds stands beside it, many-valued facts below it.
"""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from typing import TYPE_CHECKING, Any

from sqlalchemy import (
    Boolean,
    Double,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    String,
    Text,
    UniqueConstraint,
)
from sqlalchemy.orm import DeclarativeBase, Mapped, MappedColumn, mapped_column
from sqlalchemy.types import TypeEngine

from spoutline.catalogue.entry_text import DIGEST_LENGTH
from spoutline.model.catalogue_edition import CATALOGUE_NAME_LENGTH
from spoutline.model.part_figures import PartFigure, figures_in
from spoutline.model.part_identity import ITEM_NUMBER_LENGTH, MADE_UP_LENGTH, NUMBER_LENGTH
from spoutline.model.port import Port

WORD_LENGTH = 40  # values of the model's enumerations
NAME_LENGTH = 200
FAMILY_LENGTH = 120
OPEN = 2_147_483_647  # the last edition of an entry that the draft still holds
_SEARCHED = ("temperature_minimum_c", "temperature_maximum_c")


class CatalogueTable(DeclarativeBase):
    """Base of the catalogue's tables; every name starts with ``catalogue_`` so that the book may share the database."""

    metadata = MetaData(
        naming_convention={
            "ix": "ix_%(table_name)s_%(column_0_N_name)s",
            "uq": "uq_%(table_name)s_%(column_0_name)s",
            "fk": "fk_%(table_name)s_%(column_0_name)s",
            "pk": "pk_%(table_name)s",
        }
    )


class CatalogueRow(CatalogueTable):
    """A catalogue of the book. Its draft has the number after ``last_edition``."""

    __tablename__ = "catalogue_catalogue"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    name: Mapped[str] = mapped_column(String(CATALOGUE_NAME_LENGTH))
    folded_name: Mapped[str] = mapped_column(String(2 * CATALOGUE_NAME_LENGTH), unique=True)
    last_edition: Mapped[int]  # 0 before the first is published
    source_fingerprint: Mapped[str] = mapped_column(String(64))  # of the text that *Demonstration* was compiled from


class EditionRow(CatalogueTable):
    """A published edition; nothing of it changes any more."""

    __tablename__ = "catalogue_edition"

    catalogue_id: Mapped[int] = mapped_column(ForeignKey("catalogue_catalogue.id"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    title: Mapped[str] = mapped_column(String(NAME_LENGTH))
    fingerprint: Mapped[str] = mapped_column(String(64))
    published_on: Mapped[date | None]
    publisher: Mapped[str] = mapped_column(String(NAME_LENGTH))
    notes: Mapped[str] = mapped_column(Text)
    parts_count: Mapped[int]
    described_count: Mapped[int]
    currencies: Mapped[str] = mapped_column(Text)  # of its described parts, sorted, separated by blanks


class StateRow(CatalogueTable):
    """What the catalogues of a book share: a single row."""

    __tablename__ = "catalogue_state"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    last_entry_id: Mapped[int]  # ids are never given twice, so that a part in memory is known to be the stored one
    chosen: Mapped[str] = mapped_column(
        String(2 * CATALOGUE_NAME_LENGTH)
    )  # planned with unasked; empty: *Demonstration*
    demonstration_left_out: Mapped[bool]


class EntryRow(CatalogueTable):
    """A state of an entry and the editions that hold it: all from ``first_edition`` to ``last_edition``."""

    __tablename__ = "catalogue_entry"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    catalogue_id: Mapped[int] = mapped_column(ForeignKey("catalogue_catalogue.id"))
    first_edition: Mapped[int]
    last_edition: Mapped[int]
    number: Mapped[str] = mapped_column(String(NUMBER_LENGTH))
    maker: Mapped[str] = mapped_column(String(NAME_LENGTH))
    kind: Mapped[str | None] = mapped_column(String(WORD_LENGTH))
    is_described: Mapped[bool]
    item_number: Mapped[str | None] = mapped_column(String(ITEM_NUMBER_LENGTH))
    gtin: Mapped[str | None] = mapped_column(String(14))
    digest: Mapped[str] = mapped_column(String(DIGEST_LENGTH))
    search_text: Mapped[str] = mapped_column(Text)  # the tokens that it is known by, see ``search_words``
    content: Mapped[str] = mapped_column(Text)  # as ``entry_text`` writes it

    __table_args__ = (
        UniqueConstraint("catalogue_id", "number", "maker", "first_edition", name="uq_catalogue_entry_state"),
        Index(None, "catalogue_id", "first_edition"),
        Index("ix_catalogue_entry_listed", "catalogue_id", "last_edition", "is_described", "number", "maker"),
        Index(None, "catalogue_id", "item_number"),
        Index(None, "catalogue_id", "gtin"),
    )


class CrossReferenceRow(CatalogueTable):
    """A state of a cross-reference and the editions that hold it, as those of an entry."""

    __tablename__ = "catalogue_cross_reference"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    catalogue_id: Mapped[int] = mapped_column(ForeignKey("catalogue_catalogue.id"))
    first_edition: Mapped[int]
    last_edition: Mapped[int]
    number: Mapped[str] = mapped_column(String(NUMBER_LENGTH))
    maker: Mapped[str] = mapped_column(String(NAME_LENGTH))
    folded_number: Mapped[str] = mapped_column(String(2 * NUMBER_LENGTH))  # as ``folded_number`` compares them
    part_number: Mapped[str] = mapped_column(String(NUMBER_LENGTH))
    part_maker: Mapped[str] = mapped_column(String(NAME_LENGTH))
    relation: Mapped[str] = mapped_column(String(WORD_LENGTH))
    remark: Mapped[str] = mapped_column(Text)

    __table_args__ = (
        UniqueConstraint("catalogue_id", "number", "maker", "first_edition", name="uq_catalogue_cross_reference"),
        Index("ix_catalogue_cross_reference_folded_number", "catalogue_id", "folded_number"),
        Index("ix_catalogue_cross_reference_first_edition", "catalogue_id", "first_edition"),
        Index("ix_catalogue_cross_reference_last_edition", "catalogue_id", "last_edition"),
    )


class PriceListRow(CatalogueTable):
    """A state of a price list and the editions that hold it; it changes as a whole."""

    __tablename__ = "catalogue_price_list"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    catalogue_id: Mapped[int] = mapped_column(ForeignKey("catalogue_catalogue.id"))
    first_edition: Mapped[int]
    last_edition: Mapped[int]
    name: Mapped[str] = mapped_column(String(60))  # its id
    content: Mapped[str] = mapped_column(Text)  # as ``list_store`` writes it

    __table_args__ = (UniqueConstraint("catalogue_id", "name", "first_edition", name="uq_catalogue_price_list"),)


class FamilyRow(CatalogueTable):
    """A state of a family of parts and the editions that hold it; it changes as a whole."""

    __tablename__ = "catalogue_family"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    catalogue_id: Mapped[int] = mapped_column(ForeignKey("catalogue_catalogue.id"))
    first_edition: Mapped[int]
    last_edition: Mapped[int]
    name: Mapped[str] = mapped_column(String(FAMILY_LENGTH))
    content: Mapped[str] = mapped_column(Text)  # as ``family_store`` writes it

    __table_args__ = (UniqueConstraint("catalogue_id", "name", "first_edition", name="uq_catalogue_family"),)


class FileRow(CatalogueTable):
    """The content of a picture or document, kept once for all parts, editions and catalogues that have it."""

    __tablename__ = "catalogue_file"

    digest: Mapped[str] = mapped_column(String(64), primary_key=True)
    media: Mapped[str] = mapped_column(String(WORD_LENGTH))
    content: Mapped[bytes] = mapped_column(LargeBinary)


class PartRecord(CatalogueTable):
    """What every described part has; key and editions are those of its entry."""

    __tablename__ = "catalogue_part"

    id: Mapped[int] = mapped_column(
        ForeignKey("catalogue_entry.id", ondelete="CASCADE"), primary_key=True, autoincrement=False
    )
    catalogue_id: Mapped[int]
    first_edition: Mapped[int]
    last_edition: Mapped[int]
    number: Mapped[str] = mapped_column(String(NUMBER_LENGTH))  # unique within its maker and edition
    maker: Mapped[str] = mapped_column(String(NAME_LENGTH))
    kind: Mapped[str] = mapped_column(String(WORD_LENGTH))
    name: Mapped[str] = mapped_column(String(NAME_LENGTH))
    status: Mapped[str] = mapped_column(String(WORD_LENGTH))
    superseded_by: Mapped[str | None] = mapped_column(String(NUMBER_LENGTH))
    superseded_by_maker: Mapped[str | None] = mapped_column(String(NAME_LENGTH))  # None: the same maker
    path: Mapped[str | None] = mapped_column(String(WORD_LENGTH))
    lead_time_days: Mapped[int]
    pack_quantity: Mapped[int]

    # of the declared figures that are added below, those by which the catalogue is searched
    if TYPE_CHECKING:
        temperature_minimum_c: Mapped[float]
        temperature_maximum_c: Mapped[float]

    __table_args__ = (Index("ix_catalogue_part_number", "catalogue_id", "number"),)


class PortRow(CatalogueTable):
    """One end of a part."""

    __tablename__ = "catalogue_port"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    end: Mapped[str] = mapped_column(String(WORD_LENGTH), primary_key=True)
    thread: Mapped[str] = mapped_column(String(WORD_LENGTH))
    size: Mapped[str] = mapped_column(String(WORD_LENGTH))
    gender: Mapped[str] = mapped_column(String(WORD_LENGTH))
    path: Mapped[str] = mapped_column(String(WORD_LENGTH))
    made_up_in: Mapped[str] = mapped_column(String(MADE_UP_LENGTH), server_default="")


class ListingRow(CatalogueTable):
    """A listing class that a part carries."""

    __tablename__ = "catalogue_listing"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: Mapped[str] = mapped_column(String(WORD_LENGTH), primary_key=True)

    __table_args__ = (Index(None, "word", "part_id"),)


class SchemeRow(CatalogueTable):
    """A listing scheme that a part belongs to."""

    __tablename__ = "catalogue_scheme"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: Mapped[str] = mapped_column(String(WORD_LENGTH), primary_key=True)

    __table_args__ = (Index(None, "word", "part_id"),)


class MaterialRow(CatalogueTable):
    """A wetted material, in the order that the maker names them."""

    __tablename__ = "catalogue_material"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    place: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    word: Mapped[str] = mapped_column(String(WORD_LENGTH))


class PriceRow(CatalogueTable):
    """A list price in minor units of a currency."""

    __tablename__ = "catalogue_price"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    currency: Mapped[str] = mapped_column(String(3), primary_key=True)
    minor: Mapped[int]

    __table_args__ = (Index(None, "currency"),)


class NozzleRecord(CatalogueTable):
    """What a nozzle adds."""

    __tablename__ = "catalogue_nozzle"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class NozzleLiquidRow(CatalogueTable):
    """A liquid family that a nozzle may deliver."""

    __tablename__ = "catalogue_nozzle_liquid"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: Mapped[str] = mapped_column(String(WORD_LENGTH), primary_key=True)


class HoseRecord(CatalogueTable):
    """What a hose adds; its length stands with the part."""

    __tablename__ = "catalogue_hose"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class BreakawayRecord(CatalogueTable):
    """What a breakaway or swivel-breakaway adds."""

    __tablename__ = "catalogue_breakaway"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class PlacementRow(CatalogueTable):
    """A place in the chain where a breakaway may sit."""

    __tablename__ = "catalogue_placement"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: Mapped[str] = mapped_column(String(WORD_LENGTH), primary_key=True)


class SwivelRecord(CatalogueTable):
    """What a swivel or swivel-breakaway adds."""

    __tablename__ = "catalogue_swivel"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class AdaptorRecord(CatalogueTable):
    """What an adaptor or splitter adds."""

    __tablename__ = "catalogue_adaptor"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class AccessoryRecord(CatalogueTable):
    """What a cap, clamp, sealant or label adds."""

    __tablename__ = "catalogue_accessory"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class LabelClassRow(CatalogueTable):
    """A listing class that a label names."""

    __tablename__ = "catalogue_label_class"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: Mapped[str] = mapped_column(String(WORD_LENGTH), primary_key=True)


IN_ONE_QUERY = 10_000  # ids or numbers bound in one query: below the 32 766 values of SQLite

# the figures of each table, one column each: those of every part, and what each kind adds
FIGURE_TABLES: dict[str, type[CatalogueTable]] = {
    "": PartRecord,
    "nozzle": NozzleRecord,
    "hose": HoseRecord,
    "breakaway": BreakawayRecord,
    "swivel": SwivelRecord,
    "adaptor": AdaptorRecord,
    "accessory": AccessoryRecord,
}
# the figures that hold several words, one row each
WORD_TABLES: dict[str, type[CatalogueTable]] = {
    "listings": ListingRow,
    "schemes": SchemeRow,
    "wetted_materials": MaterialRow,
    "nozzle.liquids": NozzleLiquidRow,
    "breakaway.placements": PlacementRow,
    "accessory.label_classes": LabelClassRow,
}


def stored_figures(block: str) -> tuple[PartFigure, ...]:
    """Return the figures of a block that are columns of its table."""
    return tuple(figure for figure in figures_in(block) if not figure.many and figure.value_type is not Port)


def _column(figure: PartFigure) -> MappedColumn[Any]:
    types: dict[type, TypeEngine[Any]] = {bool: Boolean(), int: Integer(), float: Double()}
    column_type = String(WORD_LENGTH) if issubclass(figure.value_type, StrEnum) else types[figure.value_type]
    return mapped_column(column_type, nullable=figure.may_lack)


for _block, _table in FIGURE_TABLES.items():
    for _figure in stored_figures(_block):
        setattr(_table, _figure.name, _column(_figure))
Index(
    "ix_catalogue_part_filter",
    *(PartRecord.__table__.c[name] for name in ("catalogue_id", "kind", "path", "status", *_SEARCHED)),
)
