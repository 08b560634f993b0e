"""The figures of an edition's parts as columns, read from its tables without a part being made."""

from __future__ import annotations

import math
import threading
from array import array
from collections.abc import Iterator, MutableSequence, Sequence
from pathlib import Path
from sys import intern
from typing import Any, Final

from sqlalchemy import Connection, Engine, select

from spoutline.catalogue.column_files import ColumnFiles
from spoutline.catalogue.editions import OpenedEdition, held_by
from spoutline.catalogue.part_assembly import port_from, stored_figures
from spoutline.catalogue.schema import store_faults
from spoutline.catalogue.tables import (
    FIGURE_TABLES,
    WORD_TABLES,
    CatalogueTable,
    MaterialRow,
    PartRecord,
    PortRow,
    PriceRow,
)
from spoutline.model.part import HANGING_KINDS, PartKind
from spoutline.model.part_columns import LEAD_TIME, PRICE, STATUS, PartColumns, columns_from, figures_by_path
from spoutline.model.part_figures import BLOCKS_OF_KIND, PartFigure
from spoutline.model.part_ref import PartRef

_IN_ONE_QUERY: Final = 2_000  # ids bound in one query: all rows that answer it lie in memory at once
_Column = MutableSequence[Any]  # the values of a figure, a part each


class EditionColumns:
    """Columns of one edition, kind by kind, made when first asked for; of a draft again whenever it changed."""

    def __init__(self, engine: Engine, opened: OpenedEdition, folder: Path | None = None) -> None:
        self._engine = engine
        self._opened = opened
        self._files = None if folder is None or opened.edition.number is None else ColumnFiles(folder)
        self._held = held_by(PartRecord, opened.catalogue_id, opened.at)
        self._known: dict[PartKind, tuple[tuple[int, ...], PartColumns]] = {}
        self._turns = threading.Lock()

    def of(self, kind: PartKind) -> PartColumns:
        """Return the columns of a kind; raise ``StoreFault`` where the database fails."""
        with self._turns, store_faults(self._engine):
            if self._opened.edition.number is None:
                return self._of_draft(kind)
            if kind not in self._known:
                self._known[kind] = (), self._of_edition(kind)
            return self._known[kind][1]

    def compile(self) -> None:
        """Keep the columns of all kinds as files, if there are to be any; raise ``StoreFault``."""
        if self._files is None:
            return
        with self._turns, store_faults(self._engine):
            for kind in HANGING_KINDS:
                if self._files.read(kind, self._opened.edition.fingerprint) is None:
                    self._files.write(self._opened.edition.fingerprint, self._of_tables(kind))

    def _of_edition(self, kind: PartKind) -> PartColumns:
        """Return the columns of a file, or of the tables where no sound file has them."""
        if self._files is None:
            return self._of_tables(kind)
        fingerprint = self._opened.edition.fingerprint
        kept = self._files.read(kind, fingerprint)
        if kept is not None:
            return kept
        made = self._of_tables(kind)
        self._files.write(fingerprint, made)
        return self._files.read(kind, fingerprint) or made  # mapped, so that processes share it

    def _of_tables(self, kind: PartKind) -> PartColumns:
        with self._engine.connect() as connection:
            return read_columns(connection, kind, self._ids(connection, kind))

    def _of_draft(self, kind: PartKind) -> PartColumns:
        with self._engine.connect() as connection:
            ids = self._ids(connection, kind)
            known = self._known.get(kind)
            if known is None or known[0] != ids:  # a changed part has another id
                known = self._known[kind] = ids, read_columns(connection, kind, ids)
        return known[1]

    def _ids(self, connection: Connection, kind: PartKind) -> tuple[int, ...]:
        query = select(PartRecord.id, PartRecord.number, PartRecord.maker)
        rows = connection.execute(query.where(*self._held, PartRecord.kind == kind.value)).all()
        return tuple(row.id for row in sorted(rows, key=lambda row: (row.number, row.maker)))


def read_columns(connection: Connection, kind: PartKind, ids: Sequence[int]) -> PartColumns:
    """Return the parts with these keys as columns; they come sorted by number and maker."""
    place = {part_id: row for row, part_id in enumerate(ids)}
    refs: list[PartRef] = [PartRef("")] * len(ids)
    raw: dict[str, _Column] = {path: _empty(figure, len(ids)) for path, figure in figures_by_path(kind).items()}
    raw |= {STATUS: [None] * len(ids), LEAD_TIME: [None] * len(ids)}
    for row in _rows(connection, PartRecord, ids):
        at = place[row.id]
        refs[at] = PartRef(row.number, intern(row.maker))
        raw[STATUS][at], raw[LEAD_TIME][at] = intern(row.status), row.lead_time_days
    for block in ("", *BLOCKS_OF_KIND[kind]):
        _put_figures(connection, block, ids, place, raw)
    for path, table in WORD_TABLES.items():
        if path in raw:
            _put_words(connection, table, ids, place, raw[path])
    for row in _rows(connection, PortRow, ids):
        if row.end in raw:
            raw[row.end][place[row.part_id]] = port_from(row.thread, row.size, row.gender, row.path, row.made_up_in)
    for row in _rows(connection, PriceRow, ids):
        column = raw.setdefault(PRICE + row.currency, [None] * len(ids))
        column[place[row.part_id]] = row.minor
    return columns_from(kind, refs, raw)


def _empty(figure: PartFigure, count: int) -> _Column:
    """Return room for a figure of so many parts: numbers as such, since as objects they take four times as much."""
    if figure.many is not None:
        return [()] * count
    return array("d", [math.nan]) * count if figure.is_number else [None] * count


def _put_figures(
    connection: Connection, block: str, ids: Sequence[int], place: dict[int, int], raw: dict[str, _Column]
) -> None:
    table = FIGURE_TABLES[block]
    key = "part_id" if block else "id"
    columns = [(f"{block}.{one.name}" if block else one.name, one.name) for one in stored_figures(block)]
    wanted = [(raw[path], name) for path, name in columns if path in raw]
    for row in _rows(connection, table, ids):
        at = place[getattr(row, key)]
        for column, name in wanted:
            value = getattr(row, name)
            if value is not None:
                column[at] = intern(value) if isinstance(value, str) else value


def _put_words(
    connection: Connection, table: type[CatalogueTable], ids: Sequence[int], place: dict[int, int], column: _Column
) -> None:
    known: dict[tuple[str, ...], tuple[str, ...]] = {}
    for row in _rows(connection, table, ids):
        at = place[row.part_id]
        words = (*column[at], intern(row.word))
        column[at] = known.setdefault(words, words)  # parts mostly have the words of others


def _rows(connection: Connection, table: type[CatalogueTable], ids: Sequence[int]) -> Iterator[Any]:
    """Yield the rows of some parts; their materials in order, since those of a part come with one query."""
    key = table.__table__.c.id if table is PartRecord else table.__table__.c.part_id
    query = select(table.__table__)
    if table is MaterialRow:
        query = query.order_by(MaterialRow.place)
    for start in range(0, len(ids), _IN_ONE_QUERY):
        yield from connection.execute(query.where(key.in_(ids[start : start + _IN_ONE_QUERY])))
