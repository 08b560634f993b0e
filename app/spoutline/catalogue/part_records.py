"""A part taken apart into the rows of the catalogue's tables, and those of parts read again."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from sqlalchemy import Connection, select

from spoutline.catalogue import part_assembly
from spoutline.catalogue.part_assembly import INLET, OUTLET, Columns, stored_figures
from spoutline.catalogue.tables import (
    FIGURE_TABLES,
    WORD_TABLES,
    CatalogueTable,
    MaterialRow,
    PartRecord,
    PortRow,
    PriceRow,
)
from spoutline.model.part import Part
from spoutline.model.part_figures import BLOCKS, value_at


def rows_of(part: Part, part_id: int, held: Columns) -> Iterator[tuple[type[CatalogueTable], Columns]]:
    """Yield every table row that stores ``part`` under the key ``part_id``; ``held`` says in which editions."""
    yield PartRecord, _part_columns(part, part_id) | held
    for end, port in ((INLET, part.inlet), (OUTLET, part.outlet)):
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
    return part_assembly.load_parts(_TableRows(connection), part_ids)


class _TableRows:
    """Reads rows through SQLAlchemy; implements ``part_assembly.PartRows``."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection

    def of(self, table: str, key: str, ids: Sequence[int], order: str = "") -> Sequence[Any]:
        """Return the rows whose ``key`` is one of ``ids``."""
        columns = CatalogueTable.metadata.tables[table].c
        query = select(CatalogueTable.metadata.tables[table]).where(columns[key].in_(ids))
        return self._connection.execute(query.order_by(columns[order]) if order else query).all()
