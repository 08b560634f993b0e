"""What a catalogue holds under names: put into its draft, held by its editions, changed as a whole."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any

from sqlalchemy import Connection, delete, func, insert, or_, select, update

from spoutline.catalogue.editions import CatalogueKey, held_by
from spoutline.catalogue.tables import OPEN, FamilyRow, PriceListRow

NamedTable = type[PriceListRow] | type[FamilyRow]


class NamedStates:
    """Puts texts under names into the draft of one catalogue and takes others out, in the caller's transaction."""

    def __init__(self, connection: Connection, table: NamedTable, catalogue_id: int, last_edition: int) -> None:
        self._connection = connection
        self._table: Any = table
        self._catalogue_id = catalogue_id
        self._published = last_edition
        self._draft = last_edition + 1

    def names(self) -> set[str]:
        """Return the names that the draft holds."""
        held = held_by(self._table, self._catalogue_id, self._draft)
        return set(self._connection.execute(select(self._table.name).where(*held)).scalars())

    def text(self, name: str) -> str | None:
        """Return what the draft holds under a name; None where it has none."""
        held = self._content(name, *held_by(self._table, self._catalogue_id, self._draft))
        return None if held is None else held[1]

    def put(self, name: str, text: str) -> bool:
        """Let the draft hold a text under a name, in the place of what it held; return whether that was another."""
        now = self._content(name, *held_by(self._table, self._catalogue_id, self._draft))
        if now is not None and now[1] == text:
            return False
        self.take_out((name,))
        table = self._table
        before = self._content(name, table.catalogue_id == self._catalogue_id, table.last_edition == self._published)
        if before is not None and before[1] == text:  # as it was published: that state goes on
            self._set_last(before[0], OPEN)
            return True
        last: int = self._connection.execute(select(func.max(table.id))).scalar() or 0
        held = {"catalogue_id": self._catalogue_id, "first_edition": self._draft, "last_edition": OPEN}
        self._connection.execute(insert(table), [held | {"id": last + 1, "name": name, "content": text}])
        return True

    def take_out(self, names: Iterable[str]) -> int:
        """Take out what stands under names and return how many; a name that the draft has not is passed over."""
        table, gone = self._table, 0
        for name in names:
            held = held_by(table, self._catalogue_id, self._draft)
            query = select(table.id, table.first_edition).where(*held, table.name == name)
            for key, first in self._connection.execute(query).all():
                if first == self._draft:
                    self._connection.execute(delete(table).where(table.id == key))
                else:
                    self._set_last(key, self._published)
                gone += 1
        return gone

    def _content(self, name: str, *conditions: Any) -> tuple[int, str] | None:  # noqa: ANN401  (of SQLAlchemy)
        query = select(self._table.id, self._table.content).where(self._table.name == name, *conditions)
        row = self._connection.execute(query).first()
        return None if row is None else (row.id, row.content)

    def _set_last(self, key: int, last: int) -> None:
        self._connection.execute(update(self._table).where(self._table.id == key).values(last_edition=last))


def states_held(connection: Connection, table: NamedTable, catalogue_id: int, at: int) -> Iterator[tuple[str, str]]:
    """Yield names and texts of an edition, by name."""
    query = select(table.name, table.content).where(*held_by(table, catalogue_id, at)).order_by(table.name)
    for row in connection.execute(query):
        yield row.name, row.content


def states_changed(connection: Connection, table: NamedTable, row: CatalogueKey) -> bool:
    """Say whether what the draft holds is other than what the newest edition holds."""
    touched = [table.first_edition == row.last_edition + 1]
    if row.last_edition:
        touched.append(table.last_edition == row.last_edition)
    query = select(func.count()).select_from(table).where(table.catalogue_id == row.id, or_(*touched))
    return connection.execute(query).scalar_one() > 0
