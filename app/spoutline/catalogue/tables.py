"""The tables of the compiled catalogue: one row per part, what its kind adds beside it, many-valued facts below it."""

from __future__ import annotations

from sqlalchemy import ForeignKey, Index, MetaData, String
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column

NUMBER_LENGTH = 40  # generated catalogues use longer numbers than the reviewed one
WORD_LENGTH = 40  # values of the model's enumerations
NAME_LENGTH = 200


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


class EditionRow(CatalogueTable):
    """What the catalogue was compiled from: a single row."""

    __tablename__ = "catalogue_edition"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    edition: Mapped[str] = mapped_column(String(NAME_LENGTH))
    fingerprint: Mapped[str] = mapped_column(String(64))
    last_part_id: Mapped[int]  # ids are never given twice, so that a part in memory is known to be the stored one


class MakerRow(CatalogueTable):
    """An invented maker and the prefix of its part numbers."""

    __tablename__ = "catalogue_maker"

    prefix: Mapped[str] = mapped_column(String(2), primary_key=True)
    name: Mapped[str] = mapped_column(String(NAME_LENGTH), unique=True)


class PartRecord(CatalogueTable):
    """What every part has."""

    __tablename__ = "catalogue_part"

    id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    number: Mapped[str] = mapped_column(String(NUMBER_LENGTH), unique=True)
    maker: Mapped[str] = mapped_column(String(NAME_LENGTH))
    kind: Mapped[str] = mapped_column(String(WORD_LENGTH))
    name: Mapped[str] = mapped_column(String(NAME_LENGTH))
    search_text: Mapped[str] = mapped_column(String(3 * NAME_LENGTH))  # number, name and maker, case folded
    status: Mapped[str] = mapped_column(String(WORD_LENGTH))
    superseded_by: Mapped[str | None] = mapped_column(String(NUMBER_LENGTH))
    path: Mapped[str | None] = mapped_column(String(WORD_LENGTH))
    temperature_minimum_c: Mapped[float]
    temperature_maximum_c: Mapped[float]
    maximum_pressure_pa: Mapped[float]
    flow_coefficient_kv: Mapped[float | None]
    mass_kg: Mapped[float]
    resistance_ohm: Mapped[float | None]
    length_m: Mapped[float]
    pull_strength_n: Mapped[float | None]
    lead_time_days: Mapped[int]
    pack_quantity: Mapped[int]

    __table_args__ = (
        Index(None, "kind", "path", "status", "temperature_minimum_c", "temperature_maximum_c"),
        Index(None, "kind", "status"),
    )


class PortRow(CatalogueTable):
    """One end of a part."""

    __tablename__ = "catalogue_port"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    end: Mapped[str] = mapped_column(String(WORD_LENGTH), primary_key=True)
    thread: Mapped[str] = mapped_column(String(WORD_LENGTH))
    size: Mapped[str] = mapped_column(String(WORD_LENGTH))
    gender: Mapped[str] = mapped_column(String(WORD_LENGTH))
    path: Mapped[str] = mapped_column(String(WORD_LENGTH))


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
    operation: Mapped[str] = mapped_column(String(WORD_LENGTH))
    service: Mapped[str] = mapped_column(String(WORD_LENGTH))
    spout_outside_diameter_m: Mapped[float]
    spout_straight_length_m: Mapped[float]
    spring_distance_m: Mapped[float | None]
    hold_open: Mapped[bool]
    no_pressure_device: Mapped[bool]
    attitude_device: Mapped[bool]
    bellows: Mapped[bool]
    misfill_interlock: Mapped[bool]
    enhanced_conventional: Mapped[bool]
    def_zone_evaluated: Mapped[bool]
    minimum_flow_m3_s: Mapped[float | None]
    maximum_flow_m3_s: Mapped[float]
    opening_pressure_pa: Mapped[float | None]


class NozzleLiquidRow(CatalogueTable):
    """A liquid family that a nozzle may deliver."""

    __tablename__ = "catalogue_nozzle_liquid"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: Mapped[str] = mapped_column(String(WORD_LENGTH), primary_key=True)


class HoseRecord(CatalogueTable):
    """What a hose adds; its length stands with the part."""

    __tablename__ = "catalogue_hose"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    construction: Mapped[str] = mapped_column(String(WORD_LENGTH))
    bore_m: Mapped[float]
    length_m: Mapped[float]
    outside_diameter_m: Mapped[float]
    minimum_bend_radius_m: Mapped[float]
    mass_kg_m: Mapped[float]
    resistance_ohm_m: Mapped[float | None]
    permeation_kg_m2_s: Mapped[float | None]
    low_permeation: Mapped[bool]
    built_in_swivel: Mapped[bool]
    inner_tube_bore_m: Mapped[float | None]
    inner_tube_outside_diameter_m: Mapped[float | None]


class BreakawayRecord(CatalogueTable):
    """What a breakaway or swivel-breakaway adds."""

    __tablename__ = "catalogue_breakaway"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    separation_minimum_n: Mapped[float]
    separation_maximum_n: Mapped[float]
    reconnectable: Mapped[bool]
    closes_vapour: Mapped[bool]
    omnidirectional: Mapped[bool]
    seal_diameter_m: Mapped[float | None]


class PlacementRow(CatalogueTable):
    """A place in the chain where a breakaway may sit."""

    __tablename__ = "catalogue_placement"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: Mapped[str] = mapped_column(String(WORD_LENGTH), primary_key=True)


class SwivelRecord(CatalogueTable):
    """What a swivel or swivel-breakaway adds."""

    __tablename__ = "catalogue_swivel"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    planes: Mapped[int]


class AdaptorRecord(CatalogueTable):
    """What an adaptor or splitter adds."""

    __tablename__ = "catalogue_adaptor"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    closes_vapour: Mapped[bool]
    needs_vapour_return: Mapped[bool]


class AccessoryRecord(CatalogueTable):
    """What a cap, clamp, sealant or label adds."""

    __tablename__ = "catalogue_accessory"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    fits_diameter_minimum_m: Mapped[float | None]
    fits_diameter_maximum_m: Mapped[float | None]
    label_def: Mapped[bool]
    label_family: Mapped[str | None] = mapped_column(String(WORD_LENGTH))


class LabelClassRow(CatalogueTable):
    """A listing class that a label names."""

    __tablename__ = "catalogue_label_class"

    part_id: Mapped[int] = mapped_column(ForeignKey("catalogue_part.id", ondelete="CASCADE"), primary_key=True)
    word: Mapped[str] = mapped_column(String(WORD_LENGTH), primary_key=True)
