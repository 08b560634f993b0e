"""The store of surveys: what is saved stays, and newer work is never overwritten by older.

What else the book holds is loaded where somebody asks for it.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from sqlalchemy import Engine, select, update
from sqlalchemy.orm import Session

from spoutline.book.records import RemovedSurvey, SettingName, StaleSurvey, StoredSurvey, SurveyEntry
from spoutline.book.schema import BOOK_SCHEMA, store_faults
from spoutline.book.stored_documents import ReadingNotes, UnreadableDocument, read_document
from spoutline.book.survey_text import read_strictly, survey_from_json
from spoutline.book.tables import RevisionRow, SettingRow, SurveyRow
from spoutline.database.engine import open_engine, shown_url
from spoutline.database.faults import Patience
from spoutline.database.file_watch import FileIdentity, file_identity, gone, watched_path
from spoutline.model.answered import answered_document, same_answers, unanswered
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.plain_values import without_hidden_signs
from spoutline.model.survey import Survey
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.book.agreements import AgreementBook
    from spoutline.book.customers import CustomerBook
    from spoutline.book.dispenser_types import DispenserTypeBook
    from spoutline.book.programmes import Programmes
    from spoutline.book.quotations import QuotationBook
    from spoutline.book.record_book import RecordBook
    from spoutline.book.stock import StockBook
    from spoutline.book.supplier_layouts import SupplierLayoutBook


def _utc_now() -> datetime:
    return datetime.now(UTC)


def open_book(
    url: str,
    now: Callable[[], datetime] = _utc_now,
    *,
    patience: Patience = Patience.USUAL,
    may_create: bool = True,
) -> Book:
    """Open the book at ``url``, making or migrating its tables; ``now`` gives the time in UTC.

    ``patience`` is how long a step waits for a lock or a server; a missing file is made where it ``may_create`` one.
    Raise ``StoreFault`` where the database cannot be opened or migrated; it then stays as it was.
    """
    engine = open_engine(url, patience, may_create=may_create)
    try:
        BOOK_SCHEMA.bring_up_to_date(engine)
    except BaseException:
        engine.dispose()
        raise
    return Book(engine, url, now)


class Book:
    """Surveys by id, each with a revision that counts its saves. Safe to call from several threads and processes."""

    def __init__(self, engine: Engine, url: str, now: Callable[[], datetime]) -> None:
        self._engine = engine
        self._url = url
        self._now = now
        self.reading_notes = ReadingNotes()

    def close(self) -> None:
        """Let go of all connections."""
        self._engine.dispose()

    @property
    def programmes(self) -> Programmes:
        """The programmes kept in the book."""
        from spoutline.book.programmes import Programmes

        return Programmes(self._engine, self._url, self._now, self.reading_notes)

    @property
    def position_records(self) -> RecordBook:
        """The records of installers kept in the book."""
        from spoutline.book.record_book import RecordBook

        return RecordBook(self._engine, self._url, self._now, self.reading_notes)

    @property
    def dispenser_types(self) -> DispenserTypeBook:
        """The dispenser types kept in the book."""
        from spoutline.book.dispenser_types import DispenserTypeBook

        return DispenserTypeBook(self._engine, self._url, self._now, self.reading_notes)

    @property
    def customers(self) -> CustomerBook:
        """The customers kept in the book."""
        from spoutline.book.customers import CustomerBook

        return CustomerBook(self._engine, self._url, self._now, self.reading_notes)

    @property
    def supplier_layouts(self) -> SupplierLayoutBook:
        """How suppliers want their order files."""
        from spoutline.book.supplier_layouts import SupplierLayoutBook

        return SupplierLayoutBook(self._engine, self._url, self._now, self.reading_notes)

    @property
    def stock(self) -> StockBook:
        """The stock kept in the book."""
        from spoutline.book.stock import StockBook

        return StockBook(self._engine, self._url, self._now, self.reading_notes)

    @property
    def agreements(self) -> AgreementBook:
        """The agreed sets kept in the book."""
        from spoutline.book.agreements import AgreementBook

        return AgreementBook(self._engine, self._url, self._now, self.reading_notes)

    def entries(self) -> tuple[SurveyEntry, ...]:
        """Return all surveys, last changed first."""
        columns = (SurveyRow.id, SurveyRow.name, SurveyRow.revision, SurveyRow.changed_at)
        query = (
            select(*columns)
            .where(SurveyRow.removed_at.is_(None))
            .order_by(SurveyRow.changed_at.desc(), SurveyRow.id.desc())
        )
        with self._reading() as session:
            return tuple(
                SurveyEntry(
                    id=row.id,
                    name=without_hidden_signs(row.name),
                    revision=row.revision,
                    changed_at=_aware(row.changed_at),
                )
                for row in session.execute(query)
            )

    def stored(self, survey_id: int) -> StoredSurvey:
        """Return the survey with this id; raise ``InputFault`` where there is none."""
        with self._reading() as session:
            return self._stored(self._row(session, survey_id))

    def written(self, survey_id: int, revision: int | None = None) -> str:
        """Return a survey as it lies in the book, whether this version can read it or not.

        It is the last save, or that of ``revision``; also of a survey that was taken off the list. Raise
        ``InputFault`` where the book holds none.
        """
        with self._reading() as session:
            survey = session.get(SurveyRow, survey_id)
            row = survey if revision is None else session.get(RevisionRow, (survey_id, revision))
            if survey is None or row is None:
                name, value = ("survey", survey_id) if survey is None else ("revision", revision)
                raise InputFault(
                    (InputProblem("", name, str(value), Worded("the book holds no such {name}", name=name)),)
                )
            return row.document

    def unreadable(self) -> tuple[tuple[SurveyEntry, str], ...]:
        """Return the surveys on the list that this version cannot read, last changed first, each with the reason."""
        found = []
        for entry in self.entries():
            try:
                self.stored(entry.id)
            except UnreadableDocument as fault:
                found.append((entry, str(fault)))
        return tuple(found)

    def equal_to(self, survey: Survey) -> StoredSurvey | None:
        """Return the survey of the book that says just the same, last changed first; None where there is none."""
        for entry in self.entries():
            if entry.name == survey.site.name:
                with suppress(UnreadableDocument):  # what cannot be read is not this survey
                    stored = self.stored(entry.id)
                    if same_answers(stored.survey, survey):
                        return stored
        return None

    def numbered(self, survey: Survey) -> StoredSurvey | None:
        """Return the survey that the book holds under a survey's own number and that says just the same; else None."""
        if survey.survey_id is None:
            return None
        with suppress(InputFault, UnreadableDocument):  # a number of another book, or what cannot be read, is not it
            stored = self.stored(survey.survey_id)
            if same_answers(stored.survey, _own(survey)):
                return stored
        return None

    @property
    def place(self) -> FileIdentity | None:
        """What tells the file of an SQLite book from another at its path; None for a server or where none lies there.

        Where it changes, the book was deleted, restored or replaced under an open window.
        """
        path = watched_path(self._engine)
        return None if path is None else file_identity(path)

    def current_revision(self, survey_id: int) -> int:
        """Return the revision that the book holds; raise ``RemovedSurvey`` where it holds none on its list."""
        query = select(SurveyRow.revision).where(SurveyRow.id == survey_id, SurveyRow.removed_at.is_(None))
        with self._reading() as session:
            revision = session.execute(query).scalar()
        if revision is None:
            raise RemovedSurvey(survey_id)
        return revision

    def put_back(self, stored: StoredSurvey, survey: Survey) -> StoredSurvey:
        """Put a survey that was taken off the list back on it and save ``survey`` as its next revision.

        Where the book holds nothing of it at all it becomes a survey of its own. Raise ``StaleSurvey`` where it is on
        the list.
        """
        survey = _own(survey)
        with self._writing() as session:
            row = session.get(SurveyRow, stored.id)
            if row is not None and row.removed_at is None:
                raise StaleSurvey(self._stored(row))
            if row is not None:
                now, row.document = self._stamp(), _document(survey)
                row.name, row.revision, row.removed_at, row.changed_at = survey.site.name, row.revision + 1, None, now
                session.add(RevisionRow(survey_id=row.id, revision=row.revision, document=row.document, saved_at=now))
                session.commit()
                return StoredSurvey(id=row.id, revision=row.revision, survey=survey)
        return self.create(survey)

    def create(self, survey: Survey) -> StoredSurvey:
        """Add a survey; it is on disk when this returns."""
        survey = _own(survey)
        with self._writing() as session:
            now = self._stamp()
            row = SurveyRow(
                name=survey.site.name, revision=1, document=_document(survey), created_at=now, changed_at=now
            )
            session.add(row)
            session.flush()
            session.add(RevisionRow(survey_id=row.id, revision=1, document=row.document, saved_at=now))
            session.commit()
            return StoredSurvey(id=row.id, revision=1, survey=survey)

    def save(self, stored: StoredSurvey, survey: Survey) -> StoredSurvey:
        """Save ``survey`` over ``stored``; it is on disk when this returns.

        Raise ``StaleSurvey`` with what the book holds where somebody else saved in between, and ``InputFault`` where
        the survey was removed.
        """
        survey = _own(survey)
        with self._writing() as session:
            now, document, revision = self._stamp(), _document(survey), stored.revision + 1
            change = (
                update(SurveyRow)
                .where(
                    SurveyRow.id == stored.id,
                    SurveyRow.revision == stored.revision,
                    SurveyRow.removed_at.is_(None),
                )
                .values(name=survey.site.name, revision=revision, document=document, changed_at=now)
                .returning(SurveyRow.id)
            )
            if session.execute(change).first() is None:
                raise StaleSurvey(self._stored(self._row(session, stored.id)))
            session.add(RevisionRow(survey_id=stored.id, revision=revision, document=document, saved_at=now))
            session.commit()
            return StoredSurvey(id=stored.id, revision=revision, survey=survey)

    def remove(self, survey_id: int) -> None:
        """Take a survey off the list; its revisions stay. Raise ``InputFault`` where there is none."""
        with self._writing() as session:
            self._row(session, survey_id).removed_at = self._stamp()
            session.commit()

    def setting(self, name: SettingName) -> str | None:
        """Return what was remembered under ``name``; None where nothing was."""
        with self._reading() as session:
            row = session.get(SettingRow, name.value)
            return row.value if row else None

    def remember(self, name: SettingName, value: str) -> None:
        """Remember ``value`` under ``name``."""
        with self._writing() as session:
            session.merge(SettingRow(name=name.value, value=value))
            session.commit()

    def quotations(self) -> QuotationBook:
        """Return the quotations of this book."""
        from spoutline.book.quotations import QuotationBook

        return QuotationBook(self._engine, self._url, self._now, self.reading_notes)

    @contextmanager
    def _reading(self) -> Iterator[Session]:
        with store_faults(self._url), Session(self._engine) as session:
            yield session

    @contextmanager
    def _writing(self) -> Iterator[Session]:
        """Yield a unit of work: nothing is stored unless the block commits; leaving it rolls back.

        Raise ``StoreFault`` where the file was taken away or replaced meanwhile: what was committed is not in the book.
        """
        before = self.place
        with store_faults(self._url), Session(self._engine.execution_options(writes=True)) as session:
            yield session
        path = watched_path(self._engine)
        if path is not None and self.place != before:
            raise gone(path)

    def _row(self, session: Session, survey_id: int) -> SurveyRow:
        row = session.get(SurveyRow, survey_id)
        if row is None or row.removed_at is not None:
            raise RemovedSurvey(survey_id)
        return row

    def _stored(self, row: SurveyRow) -> StoredSurvey:
        return StoredSurvey(id=row.id, revision=row.revision, survey=self._survey(row.document, row.id))

    def _survey(self, document: str, survey_id: int) -> Survey:
        """Return the survey in a document of the book, healed where an older version let more in."""
        place = Worded("survey {survey_id}", survey_id=survey_id)
        try:
            return survey_from_json(document, place)
        except InputFault as fault:
            try:
                return read_document(document, Survey, place, self.reading_notes, read_strictly)
            except ValueError:
                raise UnreadableDocument(
                    Worded(
                        "Survey {survey_id} in {url} cannot be read by this version of the program: "
                        "{reason}. It stays in the book as it is.",
                        survey_id=survey_id,
                        url=shown_url(self._url),
                        reason=fault,
                    )
                ) from fault

    def _stamp(self) -> datetime:
        return self._now().astimezone(UTC).replace(tzinfo=None)


def _own(survey: Survey) -> Survey:
    """Return a survey as the book keeps it: its number is that of its row, whatever a file said."""
    return survey if survey.survey_id is None else unanswered(survey, "survey_id")


def _document(survey: Survey) -> str:
    return json.dumps(answered_document(survey), ensure_ascii=False, separators=(",", ":"))


def _aware(stored: datetime) -> datetime:
    return stored.replace(tzinfo=UTC)
