"""The stock kept in the book: entries and levels are added, never changed."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from collections.abc import Set as AbstractSet
from datetime import UTC, datetime
from typing import Final

from sqlalchemy import Connection, DateTime, Engine, Integer, Row, Select, String, Text, func, insert, select
from sqlalchemy.orm import Mapped, Session, mapped_column

from spoutline.book.schema import store_faults
from spoutline.book.stored_documents import ReadingNotes, read_kept
from spoutline.book.tables import BookTable
from spoutline.database.engine import shown_url, writing
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.stock_entry import Movement, StockEntry, StockLevel, StoredEntry
from spoutline.model.worded import Worded

_LOCK: Final = "spoutline stock"


class StockEntryRow(BookTable):
    """One movement; rows are only ever added. ``undoes`` is unique, so that nothing is undone twice."""

    __tablename__ = "stock_entries"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    place: Mapped[str] = mapped_column(String(60), index=True)
    document: Mapped[str] = mapped_column(Text)
    undoes: Mapped[int | None] = mapped_column(Integer, unique=True)
    recorded_at: Mapped[datetime] = mapped_column(DateTime)


class StockLevelRow(BookTable):
    """What a place keeps of a part; the newest of a part at a place holds, and rows are only ever added."""

    __tablename__ = "stock_levels"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    place: Mapped[str] = mapped_column(String(60), index=True)
    document: Mapped[str] = mapped_column(Text)
    recorded_at: Mapped[datetime] = mapped_column(DateTime)


class StockBook:
    """Entries by place, oldest first. Safe to call from several threads and processes; writers queue up."""

    def __init__(
        self, engine: Engine, url: str, now: Callable[[], datetime], notes: ReadingNotes | None = None
    ) -> None:
        self._engine, self._url, self._now = engine, url, now
        self._notes = notes or ReadingNotes()

    def add(self, entries: Sequence[StockEntry]) -> tuple[int, ...]:
        """Add entries, all or none, and return their numbers; they are on disk when this returns.

        Raises
        ------
        InputFault
            A piece with a serial number was counted already in the same count at the same place.
        """
        with store_faults(self._url), writing(self._engine, _LOCK) as connection:
            return self._add(connection, entries)

    def add_seen(self, entries_after: Callable[[tuple[StoredEntry, ...]], Sequence[StockEntry]]) -> tuple[int, ...]:
        """Add what ``entries_after`` returns for all entries as they stand, and return the numbers.

        Nobody adds in between: it raises ``InputFault`` where they are not those that the person saw.
        """
        with store_faults(self._url), writing(self._engine, _LOCK) as connection:
            undone = select(StockEntryRow.undoes).where(StockEntryRow.undoes.is_not(None))
            found = self._stored(connection.execute(_entries()).all(), set(connection.scalars(undone)))
            return self._add(connection, entries_after(found))

    def undo(self, number: int, done_by: str = "") -> StoredEntry:
        """Add an entry by which another one counts no more, and return it.

        Raise ``InputFault`` where there is no such entry, or it counts no more already, or is itself one that undoes.
        """
        with store_faults(self._url), writing(self._engine, _LOCK) as connection:
            row = connection.execute(_entries().where(StockEntryRow.id == number)).one_or_none()
            if row is None:
                raise _refused(number, "the book holds no such entry: `stock entries` lists them")
            entry = self._read(row.id, row.document)
            if entry.movement is Movement.UNDONE:
                raise _refused(number, "it undoes another entry; add a movement of your own instead")
            if connection.execute(select(StockEntryRow.id).where(StockEntryRow.undoes == number)).first() is not None:
                raise _refused(number, "it was undone already")
            counter = StockEntry(
                place=entry.place,
                movement=Movement.UNDONE,
                part=entry.part,
                quantity=max(1, entry.quantity),
                done_by=done_by,
                undoes=number,
            )
            made = self._insert(connection, counter)
        return StoredEntry(id=made, entry=counter, recorded_at=self._now().astimezone(UTC))

    def entries(self, place: str | None = None, newest: int | None = None) -> tuple[StoredEntry, ...]:
        """Return the entries of all places, or of one, oldest first; only the ``newest`` where a number is given."""
        query = _entries() if place is None else _entries().where(StockEntryRow.place == place)
        if newest is not None:
            query = query.order_by(None).order_by(StockEntryRow.id.desc()).limit(newest)
        with store_faults(self._url), Session(self._engine) as session:
            rows = session.execute(query).all()
            undone = set(session.scalars(select(StockEntryRow.undoes).where(StockEntryRow.undoes.is_not(None))))
        return self._stored(rows, undone)

    def set_level(self, level: StockLevel) -> None:
        """Say what a place keeps of a part from now on."""
        with store_faults(self._url), writing(self._engine, _LOCK) as connection:
            values = {"place": level.place, "document": level.model_dump_json(), "recorded_at": self._stamp()}
            connection.execute(insert(StockLevelRow).values(**values))

    def levels(self) -> tuple[StockLevel, ...]:
        """Return the levels that hold, by place and part."""
        query = select(StockLevelRow.id, StockLevelRow.document).order_by(StockLevelRow.id)
        with store_faults(self._url), Session(self._engine) as session:
            rows = session.execute(query).all()
        held: dict[tuple[str, PartRef], StockLevel] = {}
        for row in rows:
            place, named = Worded("stock level {row_id}", row_id=row.id), Worded("Stock level {row_id}", row_id=row.id)
            level = read_kept(row.document, StockLevel, place, self._notes, named=named, book=shown_url(self._url))
            held[level.place, level.part] = level
        return tuple(held[key] for key in sorted(held))

    def places(self) -> tuple[str, ...]:
        """Return every place that entries or levels name, sorted."""
        with store_faults(self._url), Session(self._engine) as session:
            names: Iterable[str] = (
                *session.scalars(select(StockEntryRow.place).distinct()),
                *session.scalars(select(StockLevelRow.place).distinct()),
            )
        return tuple(sorted(set(names)))

    def _add(self, connection: Connection, entries: Sequence[StockEntry]) -> tuple[int, ...]:
        for entry in entries:
            if entry.movement is Movement.COUNTED and entry.serial:
                self._check_serial(connection, entry)
        return tuple(self._insert(connection, entry) for entry in entries)

    def _stored(
        self, rows: Iterable[Row[int, str, datetime]], undone: AbstractSet[int | None]
    ) -> tuple[StoredEntry, ...]:
        """Return rows as entries, oldest first."""
        found = (
            StoredEntry(
                id=row.id,
                entry=self._read(row.id, row.document),
                recorded_at=row.recorded_at.replace(tzinfo=UTC),
                is_undone=row.id in undone,
            )
            for row in rows
        )
        return tuple(sorted(found, key=lambda one: one.id))

    def _check_serial(self, connection: Connection, entry: StockEntry) -> None:
        undone = select(StockEntryRow.undoes).where(StockEntryRow.undoes.is_not(None))
        query = _entries().where(
            StockEntryRow.place == entry.place,
            StockEntryRow.id.not_in(undone),
            StockEntryRow.document.contains(f'"serial":"{entry.serial}"', autoescape=True),
        )
        for row in connection.execute(query):
            other = self._read(row.id, row.document)
            if (other.movement, other.part, other.count, other.serial) == (
                entry.movement,
                entry.part,
                entry.count,
                entry.serial,
            ):
                wanted = Worded(
                    "the piece with serial number {serial} was counted already in this count: entry {number}",
                    serial=entry.serial,
                    number=row.id,
                )
                raise InputFault((InputProblem("", "code", repr(entry.serial), wanted),))

    def _insert(self, connection: Connection, entry: StockEntry) -> int:
        values = {
            "place": entry.place,
            "document": entry.model_dump_json(),
            "undoes": entry.undoes,
            "recorded_at": self._stamp(),
        }
        key = connection.execute(insert(StockEntryRow).values(**values)).inserted_primary_key
        return (
            int(key[0]) if key is not None else int(connection.execute(select(func.max(StockEntryRow.id))).scalar_one())
        )

    def _stamp(self) -> datetime:
        return self._now().astimezone(UTC).replace(tzinfo=None)

    def _read(self, number: int, document: str) -> StockEntry:
        place, named = Worded("stock entry {number}", number=number), Worded("Stock entry {number}", number=number)
        return read_kept(document, StockEntry, place, self._notes, named=named, book=shown_url(self._url))


def _entries() -> Select[int, str, datetime]:
    return select(StockEntryRow.id, StockEntryRow.document, StockEntryRow.recorded_at).order_by(StockEntryRow.id)


def _refused(number: int, wanted: str) -> InputFault:
    return InputFault((InputProblem("", "entry", str(number), wanted),))
