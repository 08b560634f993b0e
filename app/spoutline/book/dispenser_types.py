"""The dispenser types that the firm keeps in its book, by name; capitals do not count in one."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import UTC, datetime

from sqlalchemy import Boolean, DateTime, Engine, Integer, String, Text, select
from sqlalchemy.orm import Mapped, Session, mapped_column

from spoutline.book.schema import store_faults
from spoutline.book.stored_documents import ReadingNotes, read_kept
from spoutline.book.tables import BookTable
from spoutline.database.engine import shown_url
from spoutline.model.answered import same_answers
from spoutline.model.dispenser_type import folded_type_name
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.survey import DispenserType
from spoutline.model.worded import Worded

MOST_TYPES = 5_000


class DispenserTypeRow(BookTable):
    """A type as last saved; ``removed`` takes it off the list, and a type of its name put in later takes its row."""

    __tablename__ = "dispenser_types"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    folded_name: Mapped[str] = mapped_column(String(180), unique=True)
    document: Mapped[str] = mapped_column(Text)
    changed_at: Mapped[datetime] = mapped_column(DateTime)
    removed: Mapped[bool] = mapped_column(Boolean)


class DispenserTypeBook:
    """Types by name. Safe to call from several threads and processes; what was put is on disk when it returns."""

    def __init__(
        self, engine: Engine, url: str, now: Callable[[], datetime], notes: ReadingNotes | None = None
    ) -> None:
        self._engine = engine
        self._url = url
        self._now = now
        self._notes = notes or ReadingNotes()

    def all(self) -> tuple[DispenserType, ...]:
        """Return every type by name."""
        query = select(DispenserTypeRow).where(DispenserTypeRow.removed.is_(False))
        with store_faults(self._url), Session(self._engine) as session:
            found = [self._read(row) for row in session.scalars(query)]
        return tuple(sorted(found, key=lambda one: (folded_type_name(one.name), one.name)))

    def known(self) -> dict[str, DispenserType]:
        """Return every type by its folded name."""
        return {folded_type_name(one.name): one for one in self.all()}

    def named(self, name: str) -> DispenserType:
        """Return the type of this name; raise ``InputFault`` with the names that there are."""
        known = self.known()
        found = known.get(folded_type_name(name))
        if found is None:
            names = ", ".join(one.name for one in known.values())
            wanted = (
                Worded("use one of: {names}", names=names)
                if names
                else "the book has no dispenser types yet: add or import them"
            )
            raise InputFault((InputProblem("", "dispenser type", repr(name), wanted),))
        return found

    def put(self, kinds: Iterable[DispenserType]) -> tuple[int, int, int]:
        """Put types in, each in the place of the one of its name, all or none; return new, changed, unchanged.

        Raise ``InputFault`` where the book would hold too many of them.
        """
        new = changed = unchanged = 0
        engine = self._engine.execution_options(writes=True)
        with store_faults(self._url), Session(engine) as session:
            rows = {row.folded_name: row for row in session.scalars(select(DispenserTypeRow))}
            for kind in kinds:
                key = folded_type_name(kind.name)
                row = rows.get(key)
                if row is not None and not row.removed and same_answers(self._read(row), kind):
                    unchanged += 1
                    continue
                if row is None or row.removed:
                    new += 1
                else:
                    changed += 1
                rows[key] = self._write(session, row, key, kind)
            if sum(not row.removed for row in rows.values()) > MOST_TYPES:
                wanted = Worded("a book holds at most {most_types}", most_types=MOST_TYPES)
                raise InputFault((InputProblem("", "dispenser types", str(len(rows)), wanted),))
            session.commit()
        return new, changed, unchanged

    def remove(self, name: str) -> DispenserType:
        """Take a type off the list and return it; surveys keep what they have of it. Raise ``InputFault``."""
        kind = self.named(name)
        engine = self._engine.execution_options(writes=True)
        with store_faults(self._url), Session(engine) as session:
            query = select(DispenserTypeRow).where(DispenserTypeRow.folded_name == folded_type_name(name))
            session.scalars(query).one().removed = True
            session.commit()
        return kind

    def _write(self, session: Session, row: DispenserTypeRow | None, key: str, kind: DispenserType) -> DispenserTypeRow:
        kept = row or DispenserTypeRow(folded_name=key)
        kept.document = kind.model_dump_json(exclude_unset=True)
        kept.changed_at = self._now().astimezone(UTC).replace(tzinfo=None)
        kept.removed = False
        session.add(kept)
        return kept

    def _read(self, row: DispenserTypeRow) -> DispenserType:
        place, named = (
            Worded("dispenser type {row_id}", row_id=row.id),
            Worded("Dispenser type {row_id}", row_id=row.id),
        )
        return read_kept(row.document, DispenserType, place, self._notes, named=named, book=shown_url(self._url))
