"""A part taken apart into the rows of the catalogue's tables, and those of parts read again."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from enum import StrEnum
from operator import attrgetter
from typing import Any, Final

from sqlalchemy import Connection, select

from spoutline.catalogue import part_assembly
from spoutline.catalogue.many_rows import Row
from spoutline.catalogue.part_assembly import INLET, OUTLET, stored_figures
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
from spoutline.model.part_figures import BLOCKS, BLOCKS_OF_KIND


def rows_of(part: Part) -> Iterator[tuple[str, Row]]:
    """Yield every row that stores ``part`` with the name of its table, in the order of ``ROW_COLUMNS``.

    The keys that these begin with (of ``PartRecord`` the editions too) are left out.
    """
    yield _NAMES[PartRecord], (*_part_values(part), *_VALUES_OF[""](part))
    for end, port in ((INLET, part.inlet), (OUTLET, part.outlet)):
        if port is not None:
            where = (end, port.thread.value, port.size.value)
            yield _NAMES[PortRow], (*where, port.gender.value, port.path.value, port.made_up_in)
    for place, material in enumerate(part.wetted_materials):
        yield _NAMES[MaterialRow], (place, material.value)
    for price in part.prices:
        yield _NAMES[PriceRow], (price.currency, price.minor)
    for block in ("", *BLOCKS_OF_KIND[part.kind]):
        data = getattr(part, block) if block else part
        for name, table in _WORDS_IN[block]:
            for word in sorted(getattr(data, name)):
                yield _NAMES[table], (word.value,)
        if block:
            yield _NAMES[FIGURE_TABLES[block]], _VALUES_OF[block](data)


def _part_values(part: Part) -> Row:
    return (
        part.number,
        part.maker,
        part.kind.value,
        part.name,
        part.status.value,
        part.superseded_by,
        part.superseded_by_maker,
        None if part.path is None else part.path.value,
        part.lead_time_days,
        part.pack_quantity,
    )


_PART_COLUMNS: Final = (
    *("id", "catalogue_id", "first_edition", "last_edition", "number", "maker", "kind", "name", "status"),
    *("superseded_by", "superseded_by_maker", "path", "lead_time_days", "pack_quantity"),
)


def _values_of(block: str) -> Callable[[object], Row]:
    """Return what takes the figures of a block that its table holds, words as texts."""
    figures = stored_figures(block)
    read = attrgetter(*(figure.name for figure in figures))
    values = read if len(figures) > 1 else lambda owner: (read(owner),)
    if not any(figure.choices for figure in figures):
        return values

    def with_texts(owner: object) -> Row:
        return tuple(value.value if isinstance(value, StrEnum) else value for value in values(owner))

    return with_texts


_BLOCKS: Final = ("", *BLOCKS)
_VALUES_OF: Final = {block: _values_of(block) for block in _BLOCKS}
# of each block the lists of words whose order does not count, each with its table
_WORDS_IN: Final = {
    block: tuple(
        (path.rpartition(".")[2], table)
        for path, table in WORD_TABLES.items()
        if path.rpartition(".")[0] == block and table is not MaterialRow
    )
    for block in _BLOCKS
}
# the columns of each table whose rows ``rows_of`` yields, in the order of their values
ROW_COLUMNS: Final[dict[type[CatalogueTable], tuple[str, ...]]] = {
    PartRecord: (*_PART_COLUMNS, *(figure.name for figure in stored_figures(""))),
    PortRow: ("part_id", "end", "thread", "size", "gender", "path", "made_up_in"),
    MaterialRow: ("part_id", "place", "word"),
    PriceRow: ("part_id", "currency", "minor"),
    **{table: ("part_id", "word") for table in WORD_TABLES.values() if table is not MaterialRow},
    **{FIGURE_TABLES[block]: ("part_id", *(one.name for one in stored_figures(block))) for block in BLOCKS},
}
_NAMES: Final = {table: str(table.__table__.name) for table in ROW_COLUMNS}  # plain texts
TABLE_NAMED: Final = {name: table for table, name in _NAMES.items()}


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
