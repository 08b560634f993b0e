"""The programmes kept in the book: added as they were worked out, never changed."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

from sqlalchemy import Engine, select
from sqlalchemy.orm import Session

from spoutline.book.schema import store_faults
from spoutline.book.stored_documents import ReadingNotes, read_kept
from spoutline.book.tables import ProgrammeRow
from spoutline.database.engine import shown_url
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.programme import Programme
from spoutline.model.worded import Worded


@frozen(kw_only=True)
class ProgrammeEntry:
    """One line of the list of programmes; ``created_at`` is in UTC."""

    id: int
    name: str
    created_at: datetime


class Programmes:
    """Programmes by id. Safe to call from several threads and processes."""

    def __init__(
        self, engine: Engine, url: str, now: Callable[[], datetime], notes: ReadingNotes | None = None
    ) -> None:
        self._engine = engine
        self._url = url
        self._now = now
        self._notes = notes or ReadingNotes()

    def entries(self) -> tuple[ProgrammeEntry, ...]:
        """Return all programmes, newest first."""
        query = select(ProgrammeRow.id, ProgrammeRow.name, ProgrammeRow.created_at).order_by(
            ProgrammeRow.created_at.desc(), ProgrammeRow.id.desc()
        )
        with store_faults(self._url), Session(self._engine) as session:
            return tuple(
                ProgrammeEntry(id=row.id, name=row.name, created_at=row.created_at.replace(tzinfo=UTC))
                for row in session.execute(query)
            )

    def add(self, programme: Programme, together: Callable[[], object] | None = None) -> int:
        """Keep a programme and return its id; it is on disk when this returns.

        ``together`` is done just before it is kept; where it fails, nothing is.
        """
        engine = self._engine.execution_options(writes=True)
        with store_faults(self._url), Session(engine) as session:
            row = ProgrammeRow(
                name=programme.name[:120],
                document=programme.model_dump_json(),
                created_at=self._now().astimezone(UTC).replace(tzinfo=None),
            )
            session.add(row)
            session.flush()
            if together is not None:
                together()
            session.commit()
            return row.id

    def programme(self, programme_id: int) -> Programme:
        """Return a programme; raise ``InputFault`` where the book has none of that id."""
        with store_faults(self._url), Session(self._engine) as session:
            row = session.get(ProgrammeRow, programme_id)
            if row is None:
                problem = InputProblem("", "programme", str(programme_id), "the book holds no such program")
                raise InputFault((problem,))
            place, named = (
                Worded("program {programme_id}", programme_id=programme_id),
                Worded("Program {programme_id}", programme_id=programme_id),
            )
            return read_kept(row.document, Programme, place, self._notes, named=named, book=shown_url(self._url))
