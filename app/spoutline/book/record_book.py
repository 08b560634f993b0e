"""The records of installers kept in the book: added as they were entered, never changed."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Mapping, Sequence
from datetime import UTC, date, datetime
from typing import TypeVar

from sqlalchemy import Engine, select
from sqlalchemy.orm import Session

from spoutline.book.record_tables import RecordPhotoRow, RecordRow
from spoutline.book.schema import store_faults
from spoutline.book.stored_documents import ReadingNotes, read_kept
from spoutline.database.engine import shown_url
from spoutline.frozen import frozen
from spoutline.model.day_of_work import latest_day, wanted_day
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.record import CommissioningRecord, InspectionEntry, RecordedWork, WearEntry
from spoutline.model.worded import Worded

_COMMISSIONING, _WEAR, _INSPECTION = "commissioning", "wear", "inspection"

DocumentT = TypeVar("DocumentT", CommissioningRecord, WearEntry, InspectionEntry)


@frozen(kw_only=True)
class StoredRecord:
    """A commissioning record as the book holds it; ``recorded_at`` is in UTC."""

    id: int
    record: CommissioningRecord
    recorded_at: datetime


class RecordBook:
    """Records by site, oldest first. Safe to call from several threads and processes."""

    def __init__(
        self, engine: Engine, url: str, now: Callable[[], datetime], notes: ReadingNotes | None = None
    ) -> None:
        self._engine = engine
        self._url = url
        self._now = now
        self._notes = notes or ReadingNotes()

    def add_commissioning(self, record: CommissioningRecord, photos: Mapping[str, bytes]) -> int:
        """Keep a record with its photos (by SHA-256) and return its id; see ``add_commissionings``."""
        return self.add_commissionings(((record, photos),))[0]

    def add_commissionings(
        self,
        records: Sequence[tuple[CommissioningRecord, Mapping[str, bytes]]],
        together: Callable[[], object] | None = None,
    ) -> tuple[int, ...]:
        """Keep records with their photos (by SHA-256), all or none, and return their ids; they are on disk then.

        ``together`` is done just before they are kept; where it fails, none is.

        Raises
        ------
        InputFault
            A photo that a record names is missing, or is another than its SHA-256 says; or its day lies ahead.
        """
        documents = [(record, _checked_photos(record, photos)) for record, photos in records]
        return self._add(_COMMISSIONING, documents, together)

    def commissioning(self, site: str, position: str | None = None) -> tuple[StoredRecord, ...]:
        """Return the commissioning records of a site, or of one position."""
        return tuple(
            StoredRecord(
                id=row.id,
                record=self._read(row, CommissioningRecord),
                recorded_at=row.recorded_at.replace(tzinfo=UTC),
            )
            for row in self._rows(_COMMISSIONING, site)
            if position is None or row.position == position
        )

    def photos(self, record_id: int) -> Mapping[str, bytes]:
        """Return the photos of a record by SHA-256."""
        query = select(RecordPhotoRow).where(RecordPhotoRow.record_id == record_id)
        with store_faults(self._url), Session(self._engine) as session:
            return {row.sha256: row.content for row in session.scalars(query)}

    def add_wear(self, entry: WearEntry) -> int:
        """Add a line to the wear log and return its id; raise ``InputFault`` where its day lies ahead."""
        return self._add(_WEAR, [(entry, {})])[0]

    def wear(self, site: str) -> tuple[WearEntry, ...]:
        """Return the wear log of a site."""
        return tuple(self._read(row, WearEntry) for row in self._rows(_WEAR, site))

    def add_inspection(self, entry: InspectionEntry) -> int:
        """Note an inspection as done and return its id; raise ``InputFault`` where its day lies ahead."""
        return self._add(_INSPECTION, [(entry, {})])[0]

    def inspections(self, site: str) -> tuple[InspectionEntry, ...]:
        """Return what was inspected on a site."""
        return tuple(self._read(row, InspectionEntry) for row in self._rows(_INSPECTION, site))

    def history(self, site: str) -> tuple[RecordedWork, ...]:
        """Return everything that was recorded of a site, in the order in which it was."""
        query = select(RecordRow).where(RecordRow.site == site).order_by(RecordRow.id)
        with store_faults(self._url), Session(self._engine) as session:
            rows = session.scalars(query).all()
        return tuple(self._read_any(row) for row in rows)

    def _add(
        self,
        kind: str,
        documents: Sequence[tuple[CommissioningRecord | WearEntry | InspectionEntry, Mapping[str, bytes]]],
        together: Callable[[], object] | None = None,
    ) -> tuple[int, ...]:
        engine = self._engine.execution_options(writes=True)
        _check_days([document for document, _ in documents], latest_day(self._now().astimezone(UTC)))
        with store_faults(self._url), Session(engine) as session:
            rows = [self._row(kind, document) for document, _ in documents]
            for row, (_, photos) in zip(rows, documents, strict=True):
                session.add(row)
                session.flush()
                session.add_all(
                    RecordPhotoRow(record_id=row.id, sha256=digest, content=content)
                    for digest, content in photos.items()
                )
            session.flush()
            if together is not None:
                together()
            session.commit()
            return tuple(row.id for row in rows)

    def _row(self, kind: str, document: CommissioningRecord | WearEntry | InspectionEntry) -> RecordRow:
        return RecordRow(
            kind=kind,
            site=document.site,
            position=document.position,
            done_on=document.done_on,
            document=document.model_dump_json(),
            recorded_at=self._now().astimezone(UTC).replace(tzinfo=None),
        )

    def _rows(self, kind: str, site: str) -> Sequence[RecordRow]:
        query = select(RecordRow).where(RecordRow.kind == kind, RecordRow.site == site).order_by(RecordRow.id)
        with store_faults(self._url), Session(self._engine) as session:
            return session.scalars(query).all()

    def _read_any(self, row: RecordRow) -> RecordedWork:
        match row.kind:
            case "wear":
                return self._read(row, WearEntry)
            case "inspection":
                return self._read(row, InspectionEntry)
            case _:
                return self._read(row, CommissioningRecord)

    def _read(self, row: RecordRow, document_type: type[DocumentT]) -> DocumentT:
        place, named = Worded("record {row_id}", row_id=row.id), Worded("Record {row_id}", row_id=row.id)
        return read_kept(row.document, document_type, place, self._notes, named=named, book=shown_url(self._url))


def _check_days(documents: Sequence[RecordedWork], latest: date) -> None:
    """Raise ``InputFault`` naming every day that lies ahead: nothing is ever taken back from the records."""
    problems = [
        InputProblem(
            "", Worded("day of the work, {position}", position=one.position), str(one.done_on), wanted_day(latest)
        )
        for one in documents
        if one.done_on is not None and one.done_on > latest
    ]
    if problems:
        raise InputFault(tuple(problems))


def _checked_photos(record: CommissioningRecord, photos: Mapping[str, bytes]) -> dict[str, bytes]:
    """Return the photos that a record names; raise ``InputFault`` where one is missing or another."""
    problems = [
        InputProblem(
            "",
            Worded("photo {note_name}", note_name=note.name),
            note.sha256[:12],
            "the picture that the record names must come along",
        )
        for note in record.photos
        if hashlib.sha256(photos.get(note.sha256, b"")).hexdigest() != note.sha256
    ]
    if problems:
        raise InputFault(tuple(problems))
    return {note.sha256: photos[note.sha256] for note in record.photos}
