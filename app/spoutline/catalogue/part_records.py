"""A part taken apart into the rows of the catalogue's tables, and put together again."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any

from sqlalchemy import ColumnElement, Connection, Row, select

from spoutline.catalogue.tables import (
    FIGURE_TABLES,
    IN_ONE_QUERY,
    WORD_TABLES,
    CatalogueTable,
    MaterialRow,
    PartRecord,
    PortRow,
    PriceRow,
    stored_figures,
)
from spoutline.model.nominal_size import NominalSize
from spoutline.model.part import Part, PartKind, PartStatus, Price
from spoutline.model.part_figures import BLOCKS, BLOCKS_OF_KIND, figures_in, value_at
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard

# columns of a row under the names of the table; only the database driver sees them
Columns = dict[str, Any]
_INLET, _OUTLET = "inlet", "outlet"


def rows_of(part: Part, part_id: int, held: Columns) -> Iterator[tuple[type[CatalogueTable], Columns]]:
    """Yield every table row that stores ``part`` under the key ``part_id``; ``held`` says in which editions."""
    yield PartRecord, _part_columns(part, part_id) | held
    for end, port in ((_INLET, part.inlet), (_OUTLET, part.outlet)):
        if port is not None:
            ends: Columns = {"end": end, "thread": port.thread, "size": port.size, "made_up_in": port.made_up_in}
            yield PortRow, ends | {"part_id": part_id, "gender": port.gender, "path": port.path}
    for place, material in enumerate(part.wetted_materials):
        yield MaterialRow, {"part_id": part_id, "place": place, "word": material}
    for price in part.prices:
        yield PriceRow, {"part_id": part_id, "currency": price.currency, "minor": price.minor}
    for path, table in WORD_TABLES.items():
        words = value_at(part, path)
        if table is not MaterialRow and isinstance(words, frozenset):
            for word in sorted(words):
                yield table, {"part_id": part_id, "word": word}
    for block in BLOCKS:
        data = getattr(part, block)
        if data is not None:
            yield FIGURE_TABLES[block], _figure_columns(data, block) | {"part_id": part_id}


def _figure_columns(owner: object, block: str) -> Columns:
    return {figure.name: getattr(owner, figure.name) for figure in stored_figures(block)}


def _part_columns(part: Part, part_id: int) -> Columns:
    return {
        "id": part_id,
        "number": part.number,
        "maker": part.maker,
        "kind": part.kind,
        "name": part.name,
        "status": part.status,
        "superseded_by": part.superseded_by,
        "superseded_by_maker": part.superseded_by_maker,
        "path": part.path,
        **_figure_columns(part, ""),
        "lead_time_days": part.lead_time_days,
        "pack_quantity": part.pack_quantity,
    }


def load_parts(connection: Connection, part_ids: Sequence[int]) -> dict[int, Part]:
    """Return the parts with these keys. One query per table and ten thousand parts, never one per part."""
    loaded: dict[int, Part] = {}
    for start in range(0, len(part_ids), IN_ONE_QUERY):
        below = _below(connection, part_ids[start : start + IN_ONE_QUERY])
        for row in below.parts:
            loaded[row.id] = _part_from(row, below)
    return loaded


_Words = Mapping[int, Sequence[str]]


@dataclass(slots=True)
class _Below:
    """The rows of a chunk of parts, sorted under their part; words by path, what a kind adds by block."""

    parts: Sequence[Row[Any]]
    ports: dict[tuple[int, str], Port] = field(default_factory=dict)
    prices: dict[int, list[Price]] = field(default_factory=lambda: defaultdict(list))
    words: dict[str, _Words] = field(default_factory=dict)
    data: dict[str, dict[int, Row[Any]]] = field(default_factory=dict)


_WORDS_OF_BLOCK = {
    block: tuple(path for path in WORD_TABLES if path.rpartition(".")[0] == block) for block in FIGURE_TABLES
}


def _below(connection: Connection, part_ids: Sequence[int]) -> _Below:
    below = _Below(_all(connection, PartRecord, PartRecord.id.in_(part_ids)))
    blocks = ["", *sorted({block for row in below.parts for block in BLOCKS_OF_KIND[PartKind(row.kind)]})]
    for port in _all(connection, PortRow, PortRow.part_id.in_(part_ids)):
        below.ports[port.part_id, port.end] = port_from(port.thread, port.size, port.gender, port.path, port.made_up_in)
    for price in _all(connection, PriceRow, PriceRow.part_id.in_(part_ids), PriceRow.__table__.c.currency):
        below.prices[price.part_id].append(Price(currency=price.currency, minor=price.minor))
    for block in blocks:
        for path in _WORDS_OF_BLOCK[block]:
            below.words[path] = _words(connection, WORD_TABLES[path], part_ids)
        if block:
            table = FIGURE_TABLES[block]
            key = table.__table__.c.part_id
            below.data[block] = {row.part_id: row for row in _all(connection, table, key.in_(part_ids))}
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


_PORTS: dict[tuple[str, str, str, str, str], Port] = {}


def port_from(thread: str, size: str, gender: str, path: str, made_up_in: str = "") -> Port:
    """Return a port as the table of ports writes it; equal ones are one object."""
    key = (thread, size, gender, path, made_up_in)
    port = _PORTS.get(key)
    if port is None:
        port = Port(ThreadStandard(thread), NominalSize(size), Gender(gender), FlowPath(path), made_up_in)
        _PORTS[key] = port  # a handful of different ports: thousands of parts share them
    return port


def _part_from(row: Row[Any], below: _Below) -> Part:
    part_id: int = row.id
    kind = PartKind(row.kind)
    blocks = BLOCKS_OF_KIND[kind]
    return Part(
        number=row.number,
        maker=row.maker,
        kind=kind,
        name=row.name,
        status=PartStatus(row.status),
        superseded_by=row.superseded_by,
        superseded_by_maker=row.superseded_by_maker,
        inlet=below.ports.get((part_id, _INLET)),
        outlet=below.ports.get((part_id, _OUTLET)),
        prices=tuple(below.prices.get(part_id, ())),
        lead_time_days=row.lead_time_days,
        pack_quantity=row.pack_quantity,
        **_figures(row, "", part_id, below),
        **{block: BLOCKS[block][0](**_figures(below.data[block][part_id], block, part_id, below)) for block in blocks},
    )


def _figures(row: Row[Any], block: str, part_id: int, below: _Below) -> Columns:
    """Return the figures of a block as its class takes them."""
    found: Columns = {name: getattr(row, name) for name in _PLAIN[block]}
    for name, term in _TERMS[block]:
        word = getattr(row, name)
        found[name] = None if word is None else term(word)
    for path, name, term, many in _LISTS[block]:
        found[name] = many(map(term, below.words[path].get(part_id, ())))
    return found


# by block, worked out once: a catalogue has many parts
_PLAIN = {
    block: tuple(figure.name for figure in stored_figures(block) if not issubclass(figure.value_type, StrEnum))
    for block in FIGURE_TABLES
}
_TERMS = {
    block: tuple(
        (figure.name, figure.value_type) for figure in stored_figures(block) if issubclass(figure.value_type, StrEnum)
    )
    for block in FIGURE_TABLES
}
_LISTS = {
    block: tuple(
        (figure.path, figure.name, figure.value_type, figure.many) for figure in figures_in(block) if figure.many
    )
    for block in FIGURE_TABLES
}
