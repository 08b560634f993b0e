"""A part taken apart into the rows of the catalogue's tables, and put together again."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, fields
from typing import Any

from sqlalchemy import ColumnElement, Connection, Row, select

from spoutline.catalogue.tables import (
    AccessoryRecord,
    AdaptorRecord,
    BreakawayRecord,
    CatalogueTable,
    HoseRecord,
    LabelClassRow,
    ListingRow,
    MaterialRow,
    NozzleLiquidRow,
    NozzleRecord,
    PartRecord,
    PlacementRow,
    PortRow,
    PriceRow,
    SchemeRow,
    SwivelRecord,
)
from spoutline.model.liquid import LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.nominal_size import NominalSize
from spoutline.model.part import (
    AccessoryData,
    AdaptorData,
    BreakawayData,
    HoseConstruction,
    HoseData,
    NozzleData,
    NozzleOperation,
    NozzleService,
    Part,
    PartKind,
    PartStatus,
    Placement,
    Price,
    SwivelData,
)
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard

_CHUNK = 10_000  # ids in one query: below the 32 766 bound values of SQLite

# columns of a row under the names of the table; only the database driver sees them
Columns = dict[str, Any]
_INLET, _OUTLET = "inlet", "outlet"


def rows_of(part: Part, part_id: int) -> Iterator[tuple[type[CatalogueTable], Columns]]:
    """Yield every table row that stores ``part`` under the key ``part_id``."""
    yield PartRecord, _part_columns(part, part_id)
    for end, port in ((_INLET, part.inlet), (_OUTLET, part.outlet)):
        if port is not None:
            ends: Columns = {"end": end, "thread": port.thread, "size": port.size}
            yield PortRow, ends | {"part_id": part_id, "gender": port.gender, "path": port.path}
    for place, material in enumerate(part.wetted_materials):
        yield MaterialRow, {"part_id": part_id, "place": place, "word": material}
    for price in part.prices:
        yield PriceRow, {"part_id": part_id, "currency": price.currency, "minor": price.minor}
    for table, words in _words_of(part):
        for word in sorted(words):
            yield table, {"part_id": part_id, "word": word}
    for record, data in _data_of(part):
        if data is not None:
            columns = {column.name for column in record.__table__.columns}
            values = {item.name: getattr(data, item.name) for item in fields(data) if item.name in columns}
            yield record, values | {"part_id": part_id}


def _part_columns(part: Part, part_id: int) -> Columns:
    return {
        "id": part_id,
        "number": part.number,
        "maker": part.maker,
        "kind": part.kind,
        "name": part.name,
        "search_text": f"{part.number} {part.name} {part.maker}".casefold(),
        "status": part.status,
        "superseded_by": part.superseded_by,
        "path": part.path,
        "temperature_minimum_c": part.temperature_minimum_c,
        "temperature_maximum_c": part.temperature_maximum_c,
        "maximum_pressure_pa": part.maximum_pressure_pa,
        "flow_coefficient_kv": part.flow_coefficient_kv,
        "mass_kg": part.mass_kg,
        "resistance_ohm": part.resistance_ohm,
        "length_m": part.length_m,
        "pull_strength_n": part.pull_strength_n,
        "lead_time_days": part.lead_time_days,
        "pack_quantity": part.pack_quantity,
    }


def _words_of(part: Part) -> Iterator[tuple[type[CatalogueTable], Iterable[str]]]:
    yield ListingRow, part.listings
    yield SchemeRow, part.schemes
    yield NozzleLiquidRow, part.nozzle.liquids if part.nozzle else ()
    yield PlacementRow, part.breakaway.placements if part.breakaway else ()
    yield LabelClassRow, part.accessory.label_classes if part.accessory else ()


def _data_of(part: Part) -> Iterator[tuple[type[CatalogueTable], Any]]:
    yield NozzleRecord, part.nozzle
    yield HoseRecord, part.hose
    yield BreakawayRecord, part.breakaway
    yield SwivelRecord, part.swivel
    yield AdaptorRecord, part.adaptor
    yield AccessoryRecord, part.accessory


def load_parts(connection: Connection, part_ids: Sequence[int]) -> dict[int, Part]:
    """Return the parts with these keys. One query per table and ten thousand parts, never one per part."""
    loaded: dict[int, Part] = {}
    for start in range(0, len(part_ids), _CHUNK):
        below = _below(connection, part_ids[start : start + _CHUNK])
        for row in below.parts:
            loaded[row.id] = _part_from(row, below)
    return loaded


_Words = Mapping[int, Sequence[str]]


@dataclass(slots=True)
class _Below:
    """The rows of a chunk of parts, sorted under their part."""

    parts: Sequence[Row[Any]]
    ports: dict[tuple[int, str], Port] = field(default_factory=dict)
    prices: dict[int, list[Price]] = field(default_factory=lambda: defaultdict(list))
    words: dict[type[CatalogueTable], _Words] = field(default_factory=dict)
    data: dict[type[CatalogueTable], dict[int, Row[Any]]] = field(default_factory=dict)


_EXTRAS: dict[PartKind, tuple[type[CatalogueTable], ...]] = {
    PartKind.NOZZLE: (NozzleRecord, NozzleLiquidRow),
    PartKind.SWIVEL: (SwivelRecord,),
    PartKind.SWIVEL_BREAKAWAY: (SwivelRecord, BreakawayRecord, PlacementRow),
    PartKind.CURB_HOSE: (HoseRecord,),
    PartKind.WHIP_HOSE: (HoseRecord,),
    PartKind.BREAKAWAY: (BreakawayRecord, PlacementRow),
    PartKind.ADAPTOR: (AdaptorRecord,),
    PartKind.SPLITTER: (AdaptorRecord,),
    PartKind.CAP: (AccessoryRecord, LabelClassRow),
    PartKind.HOSE_CLAMP: (AccessoryRecord, LabelClassRow),
    PartKind.SEALANT: (AccessoryRecord, LabelClassRow),
    PartKind.LABEL: (AccessoryRecord, LabelClassRow),
}
_WORD_TABLES: tuple[type[CatalogueTable], ...] = (
    ListingRow,
    SchemeRow,
    MaterialRow,
    NozzleLiquidRow,
    PlacementRow,
    LabelClassRow,
)


def _below(connection: Connection, part_ids: Sequence[int]) -> _Below:
    below = _Below(_all(connection, PartRecord, PartRecord.id.in_(part_ids)))
    tables = {table for row in below.parts for table in _EXTRAS[PartKind(row.kind)]}
    for port in _all(connection, PortRow, PortRow.part_id.in_(part_ids)):
        below.ports[port.part_id, port.end] = _port_from(port.thread, port.size, port.gender, port.path)
    for price in _all(connection, PriceRow, PriceRow.part_id.in_(part_ids), PriceRow.__table__.c.currency):
        below.prices[price.part_id].append(Price(currency=price.currency, minor=price.minor))
    for table in _WORD_TABLES:
        wanted = table in (ListingRow, SchemeRow, MaterialRow) or table in tables
        below.words[table] = _words(connection, table, part_ids) if wanted else {}
    for table in tables - set(_WORD_TABLES):
        key = table.__table__.c.part_id
        below.data[table] = {row.part_id: row for row in _all(connection, table, key.in_(part_ids))}
    return below


def _all(
    connection: Connection,
    table: type[CatalogueTable],
    condition: ColumnElement[bool],
    order: ColumnElement[str] | None = None,
) -> Sequence[Row[Any]]:
    query = select(table.__table__).where(condition)
    return connection.execute(query if order is None else query.order_by(order)).all()


def _words(connection: Connection, table: type[CatalogueTable], part_ids: Sequence[int]) -> _Words:
    columns = table.__table__.c
    order = columns.place if table is MaterialRow else columns.word
    query = select(columns.part_id, columns.word).where(columns.part_id.in_(part_ids)).order_by(order)
    words: dict[int, list[str]] = defaultdict(list)
    for part_id, word in connection.execute(query):
        words[part_id].append(word)
    return words


_PORTS: dict[tuple[str, str, str, str], Port] = {}


def _port_from(thread: str, size: str, gender: str, path: str) -> Port:
    key = (thread, size, gender, path)
    port = _PORTS.get(key)
    if port is None:
        port = Port(thread=ThreadStandard(thread), size=NominalSize(size), gender=Gender(gender), path=FlowPath(path))
        _PORTS[key] = port  # a handful of different ports: thousands of parts share them
    return port


def _part_from(row: Row[Any], below: _Below) -> Part:
    part_id: int = row.id
    kind = PartKind(row.kind)
    data = {table: below.data[table][part_id] for table in _EXTRAS[kind] if table in below.data}
    return Part(
        number=row.number,
        maker=row.maker,
        kind=kind,
        name=row.name,
        status=PartStatus(row.status),
        superseded_by=row.superseded_by,
        inlet=below.ports.get((part_id, _INLET)),
        outlet=below.ports.get((part_id, _OUTLET)),
        listings=frozenset(map(ListingClass, below.words[ListingRow].get(part_id, ()))),
        schemes=frozenset(map(ListingScheme, below.words[SchemeRow].get(part_id, ()))),
        wetted_materials=tuple(map(Material, below.words[MaterialRow].get(part_id, ()))),
        temperature_minimum_c=row.temperature_minimum_c,
        temperature_maximum_c=row.temperature_maximum_c,
        maximum_pressure_pa=row.maximum_pressure_pa,
        flow_coefficient_kv=row.flow_coefficient_kv,
        mass_kg=row.mass_kg,
        resistance_ohm=row.resistance_ohm,
        length_m=row.length_m,
        pull_strength_n=row.pull_strength_n,
        prices=tuple(below.prices.get(part_id, ())),
        lead_time_days=row.lead_time_days,
        pack_quantity=row.pack_quantity,
        nozzle=_nozzle(data.get(NozzleRecord), below.words[NozzleLiquidRow].get(part_id, ())),
        hose=_hose(data.get(HoseRecord)),
        breakaway=_breakaway(data.get(BreakawayRecord), below.words[PlacementRow].get(part_id, ())),
        swivel=SwivelData(planes=data[SwivelRecord].planes) if SwivelRecord in data else None,
        adaptor=_adaptor(data.get(AdaptorRecord)),
        accessory=_accessory(data.get(AccessoryRecord), below.words[LabelClassRow].get(part_id, ())),
    )


def _nozzle(row: Row[Any] | None, liquids: Iterable[str]) -> NozzleData | None:
    if row is None:
        return None
    return NozzleData(
        operation=NozzleOperation(row.operation),
        service=NozzleService(row.service),
        liquids=frozenset(map(LiquidFamily, liquids)),
        spout_outside_diameter_m=row.spout_outside_diameter_m,
        spout_straight_length_m=row.spout_straight_length_m,
        spring_distance_m=row.spring_distance_m,
        hold_open=row.hold_open,
        no_pressure_device=row.no_pressure_device,
        attitude_device=row.attitude_device,
        bellows=row.bellows,
        misfill_interlock=row.misfill_interlock,
        enhanced_conventional=row.enhanced_conventional,
        def_zone_evaluated=row.def_zone_evaluated,
        minimum_flow_m3_s=row.minimum_flow_m3_s,
        maximum_flow_m3_s=row.maximum_flow_m3_s,
        opening_pressure_pa=row.opening_pressure_pa,
    )


def _hose(row: Row[Any] | None) -> HoseData | None:
    if row is None:
        return None
    return HoseData(
        construction=HoseConstruction(row.construction),
        bore_m=row.bore_m,
        length_m=row.length_m,
        outside_diameter_m=row.outside_diameter_m,
        minimum_bend_radius_m=row.minimum_bend_radius_m,
        mass_kg_m=row.mass_kg_m,
        resistance_ohm_m=row.resistance_ohm_m,
        permeation_kg_m2_s=row.permeation_kg_m2_s,
        low_permeation=row.low_permeation,
        built_in_swivel=row.built_in_swivel,
        inner_tube_bore_m=row.inner_tube_bore_m,
        inner_tube_outside_diameter_m=row.inner_tube_outside_diameter_m,
    )


def _breakaway(row: Row[Any] | None, placements: Iterable[str]) -> BreakawayData | None:
    if row is None:
        return None
    return BreakawayData(
        separation_minimum_n=row.separation_minimum_n,
        separation_maximum_n=row.separation_maximum_n,
        reconnectable=row.reconnectable,
        closes_vapour=row.closes_vapour,
        omnidirectional=row.omnidirectional,
        seal_diameter_m=row.seal_diameter_m,
        placements=frozenset(map(Placement, placements)),
    )


def _adaptor(row: Row[Any] | None) -> AdaptorData | None:
    if row is None:
        return None
    return AdaptorData(closes_vapour=row.closes_vapour, needs_vapour_return=row.needs_vapour_return)


def _accessory(row: Row[Any] | None, label_classes: Iterable[str]) -> AccessoryData | None:
    if row is None:
        return None
    return AccessoryData(
        fits_diameter_minimum_m=row.fits_diameter_minimum_m,
        fits_diameter_maximum_m=row.fits_diameter_maximum_m,
        label_classes=frozenset(map(ListingClass, label_classes)),
        label_def=row.label_def,
        label_family=LiquidFamily(row.label_family) if row.label_family else None,
    )
