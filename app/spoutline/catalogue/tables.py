"""The tables of catalogues: entries by edition, and the described ones compiled for the search.

A described part is one row, what its kind adds stands beside it, many-valued facts below it.
"""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from typing import TYPE_CHECKING, Any, ClassVar

from sqlalchemy import (
    Boolean,
    Column,
    ColumnElement,
    Date,
    Double,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    String,
    Table,
    Text,
    UniqueConstraint,
)
from sqlalchemy.schema import SchemaItem
from sqlalchemy.types import TypeEngine

from spoutline.catalogue.entry_text import DIGEST_LENGTH
from spoutline.catalogue.part_assembly import stored_figures
from spoutline.model.catalogue_edition import CATALOGUE_NAME_LENGTH
from spoutline.model.part_figures import PartFigure
from spoutline.model.part_identity import ITEM_NUMBER_LENGTH, MADE_UP_LENGTH, NUMBER_LENGTH

WORD_LENGTH = 40  # values of the model's enumerations
NAME_LENGTH = 200
FAMILY_LENGTH = 120
OPEN = 2_147_483_647  # the last edition of an entry that the draft still holds
_SEARCHED = ("temperature_minimum_c", "temperature_maximum_c")


def _column(figure: PartFigure) -> Column[Any]:
    types: dict[type, TypeEngine[Any]] = {bool: Boolean(), int: Integer(), float: Double()}
    column_type = String(WORD_LENGTH) if issubclass(figure.value_type, StrEnum) else types[figure.value_type]
    return Column(column_type, nullable=figure.may_lack)


class CatalogueTable:
    """Base of the catalogue's tables: the attributes of a class are the columns of one table.

    Nothing is mapped to objects, since parts are put together by ``part_records``: the mapper of SQLAlchemy alone would
    take longer to load than a position to plan. Every name starts with ``catalogue_`` so that the book may share the
    database.
    """

    metadata: ClassVar[MetaData] = MetaData(
        naming_convention={
            "ix": "ix_%(table_name)s_%(column_0_N_name)s",
            "uq": "uq_%(table_name)s_%(column_0_name)s",
            "fk": "fk_%(table_name)s_%(column_0_name)s",
            "pk": "pk_%(table_name)s",
        }
    )
    beside: ClassVar[tuple[SchemaItem, ...]] = ()  # constraints and indexes
    __table__: ClassVar[Table]

    def __init_subclass__(cls, *, table: str, figures: str | None = None) -> None:
        """Make the table of this name; with ``figures``, those declared for a block of a part are columns too."""
        if figures is not None:
            for figure in stored_figures(figures):
                setattr(cls, figure.name, _column(figure))
        columns = {name: column for name, column in vars(cls).items() if isinstance(column, Column)}
        for name, column in columns.items():
            column.name = column.key = name
        cls.__table__ = Table(table, cls.metadata, *columns.values(), *cls.beside)

    @classmethod
    def __clause_element__(cls) -> Table:
        """Return the table, as SQLAlchemy asks for it where a class stands in a statement."""
        return cls.__table__


class CatalogueRow(CatalogueTable, table="catalogue_catalogue"):
    """A catalogue of the book. Its draft has the number after ``last_edition``."""

    id: ColumnElement[int] = Column(Integer, primary_key=True, autoincrement=False)
    name: ColumnElement[str] = Column(String(CATALOGUE_NAME_LENGTH), nullable=False)
    folded_name: ColumnElement[str] = Column(String(2 * CATALOGUE_NAME_LENGTH), unique=True, nullable=False)
    last_edition: ColumnElement[int] = Column(Integer, nullable=False)  # 0 before the first is published
    source_fingerprint: ColumnElement[str] = Column(
        String(64), nullable=False
    )  # of the text that *Demonstration* was compiled from


class EditionRow(CatalogueTable, table="catalogue_edition"):
    """A published edition; nothing of it changes any more."""

    catalogue_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_catalogue.id"), primary_key=True)
    number: ColumnElement[int] = Column(Integer, primary_key=True, autoincrement=False)
    title: ColumnElement[str] = Column(String(NAME_LENGTH), nullable=False)
    fingerprint: ColumnElement[str] = Column(String(64), nullable=False)
    published_on: ColumnElement[date | None] = Column(Date)
    publisher: ColumnElement[str] = Column(String(NAME_LENGTH), nullable=False)
    notes: ColumnElement[str] = Column(Text, nullable=False)
    parts_count: ColumnElement[int] = Column(Integer, nullable=False)
    described_count: ColumnElement[int] = Column(Integer, nullable=False)
    currencies: ColumnElement[str] = Column(Text, nullable=False)  # of its described parts, sorted, separated by blanks


class StateRow(CatalogueTable, table="catalogue_state"):
    """What the catalogues of a book share: a single row."""

    id: ColumnElement[int] = Column(Integer, primary_key=True, autoincrement=False)
    # ids are never given twice, so that a part in memory is known to be the stored one
    last_entry_id: ColumnElement[int] = Column(Integer, nullable=False)
    chosen: ColumnElement[str] = Column(
        String(2 * CATALOGUE_NAME_LENGTH), nullable=False
    )  # planned with unasked; empty: *Demonstration*
    demonstration_left_out: ColumnElement[bool] = Column(Boolean, nullable=False)


class EntryRow(CatalogueTable, table="catalogue_entry"):
    """A state of an entry and the editions that hold it: all from ``first_edition`` to ``last_edition``."""

    id: ColumnElement[int] = Column(Integer, primary_key=True, autoincrement=False)
    catalogue_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_catalogue.id"), nullable=False)
    first_edition: ColumnElement[int] = Column(Integer, nullable=False)
    last_edition: ColumnElement[int] = Column(Integer, nullable=False)
    number: ColumnElement[str] = Column(String(NUMBER_LENGTH), nullable=False)
    maker: ColumnElement[str] = Column(String(NAME_LENGTH), nullable=False)
    kind: ColumnElement[str | None] = Column(String(WORD_LENGTH))
    is_described: ColumnElement[bool] = Column(Boolean, nullable=False)
    item_number: ColumnElement[str | None] = Column(String(ITEM_NUMBER_LENGTH))
    gtin: ColumnElement[str | None] = Column(String(14))
    digest: ColumnElement[str] = Column(String(DIGEST_LENGTH), nullable=False)
    search_text: ColumnElement[str] = Column(
        Text, nullable=False
    )  # the tokens that it is known by, see ``search_words``
    content: ColumnElement[str] = Column(Text, nullable=False)  # as ``entry_text`` writes it

    beside = (
        UniqueConstraint("catalogue_id", "number", "maker", "first_edition", name="uq_catalogue_entry_state"),
        Index(None, "catalogue_id", "first_edition"),
        Index("ix_catalogue_entry_listed", "catalogue_id", "last_edition", "is_described", "number", "maker"),
        Index(None, "catalogue_id", "item_number"),
        Index(None, "catalogue_id", "gtin"),
    )


class CrossReferenceRow(CatalogueTable, table="catalogue_cross_reference"):
    """A state of a cross-reference and the editions that hold it, as those of an entry."""

    id: ColumnElement[int] = Column(Integer, primary_key=True, autoincrement=False)
    catalogue_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_catalogue.id"), nullable=False)
    first_edition: ColumnElement[int] = Column(Integer, nullable=False)
    last_edition: ColumnElement[int] = Column(Integer, nullable=False)
    number: ColumnElement[str] = Column(String(NUMBER_LENGTH), nullable=False)
    maker: ColumnElement[str] = Column(String(NAME_LENGTH), nullable=False)
    folded_number: ColumnElement[str] = Column(
        String(2 * NUMBER_LENGTH), nullable=False
    )  # as ``folded_number`` compares them
    part_number: ColumnElement[str] = Column(String(NUMBER_LENGTH), nullable=False)
    part_maker: ColumnElement[str] = Column(String(NAME_LENGTH), nullable=False)
    relation: ColumnElement[str] = Column(String(WORD_LENGTH), nullable=False)
    remark: ColumnElement[str] = Column(Text, nullable=False)

    beside = (
        UniqueConstraint("catalogue_id", "number", "maker", "first_edition", name="uq_catalogue_cross_reference"),
        Index("ix_catalogue_cross_reference_folded_number", "catalogue_id", "folded_number"),
        Index("ix_catalogue_cross_reference_first_edition", "catalogue_id", "first_edition"),
        Index("ix_catalogue_cross_reference_last_edition", "catalogue_id", "last_edition"),
    )


class PriceListRow(CatalogueTable, table="catalogue_price_list"):
    """A state of a price list and the editions that hold it; it changes as a whole."""

    id: ColumnElement[int] = Column(Integer, primary_key=True, autoincrement=False)
    catalogue_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_catalogue.id"), nullable=False)
    first_edition: ColumnElement[int] = Column(Integer, nullable=False)
    last_edition: ColumnElement[int] = Column(Integer, nullable=False)
    name: ColumnElement[str] = Column(String(60), nullable=False)  # its id
    content: ColumnElement[str] = Column(Text, nullable=False)  # as ``list_store`` writes it

    beside = (UniqueConstraint("catalogue_id", "name", "first_edition", name="uq_catalogue_price_list"),)


class FamilyRow(CatalogueTable, table="catalogue_family"):
    """A state of a family of parts and the editions that hold it; it changes as a whole."""

    id: ColumnElement[int] = Column(Integer, primary_key=True, autoincrement=False)
    catalogue_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_catalogue.id"), nullable=False)
    first_edition: ColumnElement[int] = Column(Integer, nullable=False)
    last_edition: ColumnElement[int] = Column(Integer, nullable=False)
    name: ColumnElement[str] = Column(String(FAMILY_LENGTH), nullable=False)
    content: ColumnElement[str] = Column(Text, nullable=False)  # as ``family_store`` writes it

    beside = (UniqueConstraint("catalogue_id", "name", "first_edition", name="uq_catalogue_family"),)


class FileRow(CatalogueTable, table="catalogue_file"):
    """The content of a picture or document, kept once for all parts, editions and catalogues that have it."""

    digest: ColumnElement[str] = Column(String(64), primary_key=True)
    media: ColumnElement[str] = Column(String(WORD_LENGTH), nullable=False)
    content: ColumnElement[bytes] = Column(LargeBinary, nullable=False)


class PartRecord(CatalogueTable, table="catalogue_part", figures=""):
    """What every described part has; key and editions are those of its entry."""

    id: ColumnElement[int] = Column(
        Integer, ForeignKey("catalogue_entry.id", ondelete="CASCADE"), primary_key=True, autoincrement=False
    )
    catalogue_id: ColumnElement[int] = Column(Integer, nullable=False)
    first_edition: ColumnElement[int] = Column(Integer, nullable=False)
    last_edition: ColumnElement[int] = Column(Integer, nullable=False)
    number: ColumnElement[str] = Column(String(NUMBER_LENGTH), nullable=False)  # unique within its maker and edition
    maker: ColumnElement[str] = Column(String(NAME_LENGTH), nullable=False)
    kind: ColumnElement[str] = Column(String(WORD_LENGTH), nullable=False)
    name: ColumnElement[str] = Column(String(NAME_LENGTH), nullable=False)
    status: ColumnElement[str] = Column(String(WORD_LENGTH), nullable=False)
    superseded_by: ColumnElement[str | None] = Column(String(NUMBER_LENGTH))
    superseded_by_maker: ColumnElement[str | None] = Column(String(NAME_LENGTH))  # None: the same maker
    path: ColumnElement[str | None] = Column(String(WORD_LENGTH))
    lead_time_days: ColumnElement[int] = Column(Integer, nullable=False)
    pack_quantity: ColumnElement[int] = Column(Integer, nullable=False)

    # of the declared figures, those by which the catalogue is searched
    if TYPE_CHECKING:
        temperature_minimum_c: ColumnElement[float]
        temperature_maximum_c: ColumnElement[float]

    beside = (Index("ix_catalogue_part_number", "catalogue_id", "number"),)


class PortRow(CatalogueTable, table="catalogue_port"):
    """One end of a part."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    end: ColumnElement[str] = Column(String(WORD_LENGTH), primary_key=True)
    thread: ColumnElement[str] = Column(String(WORD_LENGTH), nullable=False)
    size: ColumnElement[str] = Column(String(WORD_LENGTH), nullable=False)
    gender: ColumnElement[str] = Column(String(WORD_LENGTH), nullable=False)
    path: ColumnElement[str] = Column(String(WORD_LENGTH), nullable=False)
    made_up_in: ColumnElement[str] = Column(String(MADE_UP_LENGTH), server_default="", nullable=False)


class ListingRow(CatalogueTable, table="catalogue_listing"):
    """A listing class that a part carries."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: ColumnElement[str] = Column(String(WORD_LENGTH), primary_key=True)

    beside = (Index(None, "word", "part_id"),)


class SchemeRow(CatalogueTable, table="catalogue_scheme"):
    """A listing scheme that a part belongs to."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: ColumnElement[str] = Column(String(WORD_LENGTH), primary_key=True)

    beside = (Index(None, "word", "part_id"),)


class MaterialRow(CatalogueTable, table="catalogue_material"):
    """A wetted material, in the order that the maker names them."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    place: ColumnElement[int] = Column(Integer, primary_key=True, autoincrement=False)
    word: ColumnElement[str] = Column(String(WORD_LENGTH), nullable=False)


class PriceRow(CatalogueTable, table="catalogue_price"):
    """A list price in minor units of a currency."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    currency: ColumnElement[str] = Column(String(3), primary_key=True)
    minor: ColumnElement[int] = Column(Integer, nullable=False)

    beside = (Index(None, "currency"),)


class NozzleRecord(CatalogueTable, table="catalogue_nozzle", figures="nozzle"):
    """What a nozzle adds."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class NozzleLiquidRow(CatalogueTable, table="catalogue_nozzle_liquid"):
    """A liquid family that a nozzle may deliver."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: ColumnElement[str] = Column(String(WORD_LENGTH), primary_key=True)


class HoseRecord(CatalogueTable, table="catalogue_hose", figures="hose"):
    """What a hose adds; its length stands with the part."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class BreakawayRecord(CatalogueTable, table="catalogue_breakaway", figures="breakaway"):
    """What a breakaway or swivel-breakaway adds."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class PlacementRow(CatalogueTable, table="catalogue_placement"):
    """A place in the chain where a breakaway may sit."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: ColumnElement[str] = Column(String(WORD_LENGTH), primary_key=True)


class SwivelRecord(CatalogueTable, table="catalogue_swivel", figures="swivel"):
    """What a swivel or swivel-breakaway adds."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class AdaptorRecord(CatalogueTable, table="catalogue_adaptor", figures="adaptor"):
    """What an adaptor or splitter adds."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class AccessoryRecord(CatalogueTable, table="catalogue_accessory", figures="accessory"):
    """What a cap, clamp, sealant or label adds."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)


class LabelClassRow(CatalogueTable, table="catalogue_label_class"):
    """A listing class that a label names."""

    part_id: ColumnElement[int] = Column(Integer, ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: ColumnElement[str] = Column(String(WORD_LENGTH), primary_key=True)


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


Index(
    "ix_catalogue_part_filter",
    *(PartRecord.__table__.c[name] for name in ("catalogue_id", "kind", "path", "status", *_SEARCHED)),
)
