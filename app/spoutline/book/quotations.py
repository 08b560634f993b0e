"""The store of quotations: drafts that change, revisions that stay, and the steps between them."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from datetime import UTC, date, datetime

from sqlalchemy import ColumnElement, Engine, and_, delete, func, or_, select, update
from sqlalchemy.orm import Session

from spoutline.book.issue_checks import check_coverage, check_margins, check_prices
from spoutline.book.quotation_columns import describe, entry_of, list_amounts
from spoutline.book.quotation_numbers import check_number, keeping_number, numbered, sent_under
from spoutline.book.quotation_records import (
    IssuedPapers,
    QuotationEntry,
    QuotationEvent,
    StaleQuotation,
    StoredQuotation,
)
from spoutline.book.quotation_tables import (
    QuotationEventRow,
    QuotationPartRow,
    QuotationRevisionRow,
    QuotationRow,
)
from spoutline.book.schema import store_faults
from spoutline.book.stored_documents import ReadingNotes, read_kept
from spoutline.book.tables import SurveyRow
from spoutline.database.engine import shown_url
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.plain_values import hidden_sign
from spoutline.model.quotation import IncompleteWord, MarginWord, Quotation
from spoutline.model.quotation_life import OPEN, check_step, ordered_option
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.worded import Worded


class QuotationBook:
    """Quotations by id. Safe to call from several threads and processes; every step is on disk when it returns.

    Each changing method takes the quotation as its caller knows it and raises ``StaleQuotation`` where the book holds a
    newer one, and ``InputFault`` where the step is none that a quotation takes.
    """

    def __init__(
        self, engine: Engine, url: str, now: Callable[[], datetime], notes: ReadingNotes | None = None
    ) -> None:
        self._engine = engine
        self._url = url
        self._now = now
        self._notes = notes or ReadingNotes()

    # reading

    def entries(
        self, text: str = "", status: QuotationStatus | None = None, due_by: date | None = None
    ) -> tuple[QuotationEntry, ...]:
        """Return quotations, last changed first, where number, customer, site or a part holds each word of ``text``.

        With ``due_by``, those alone that are to be followed up by that day.
        """
        conditions: list[ColumnElement[bool]] = []
        for word in text.casefold().split():
            with_part = select(QuotationPartRow.quotation_id).where(
                QuotationPartRow.revision == QuotationRow.revision,
                QuotationPartRow.part_number.icontains(word, autoescape=True),
            )
            named = QuotationRow.search_text.contains(word, autoescape=True)
            conditions.append(or_(named, QuotationRow.id.in_(with_part)))
        if status is not None:
            conditions.append(QuotationRow.status == status.value)
        if due_by is not None:
            conditions.append(QuotationRow.follow_up <= due_by)
        query = select(QuotationRow).where(*conditions)
        with self._reading() as session:
            rows = session.scalars(query.order_by(QuotationRow.changed_at.desc(), QuotationRow.id.desc()))
            return tuple(entry_of(row) for row in rows)

    def of_survey(self, survey_id: int) -> tuple[QuotationEntry, ...]:
        """Return the quotations of a survey of the book, that on which somebody last took a step first.

        That an offer expired is nobody's step. A quotation that was kept from a file knows no survey: it is one of this
        survey where its site has this name and no other survey of the book has.
        """
        step = (
            select(func.max(QuotationEventRow.id))
            .where(QuotationEventRow.quotation_id == QuotationRow.id)
            .where(QuotationEventRow.status != QuotationStatus.EXPIRED.value)
            .scalar_subquery()
        )
        name = select(SurveyRow.name).where(SurveyRow.id == survey_id).scalar_subquery()
        others = select(SurveyRow.id).where(
            SurveyRow.name == QuotationRow.site, SurveyRow.id != survey_id, SurveyRow.removed_at.is_(None)
        )
        from_file = and_(QuotationRow.survey_id.is_(None), QuotationRow.site == name, ~others.exists())
        query = select(QuotationRow).where(or_(QuotationRow.survey_id == survey_id, from_file)).order_by(step.desc())
        with self._reading() as session:
            return tuple(entry_of(row) for row in session.scalars(query))

    def stored(self, quotation_id: int) -> StoredQuotation:
        """Return the newest revision of a quotation; raise ``InputFault`` where there is none."""
        with self._reading() as session:
            return self._stored(session, self._row(session, quotation_id))

    def sent_under(self, number: str, besides: int | None) -> QuotationEntry | None:
        """Return the first quotation that was sent under a number, that with the id ``besides`` left out; or None."""
        with self._reading() as session:
            row = sent_under(session, number, besides)
            return None if row is None else entry_of(row)

    def at_revision(self, quotation_id: int, revision: int) -> Quotation:
        """Return a quotation as it was at a revision; raise ``InputFault`` where there is none."""
        with self._reading() as session:
            return self._read(self._revision(session, quotation_id, revision))

    def papers(self, quotation_id: int, revision: int) -> IssuedPapers:
        """Return the papers of a revision as they were issued; raise ``InputFault`` where it was not."""
        with self._reading() as session:
            row = self._revision(session, quotation_id, revision)
            if row.pdf is None or row.workbook is None:
                wanted = "only an issued revision has papers to print again"
                raise InputFault((InputProblem("", "revision", str(revision), wanted),))
            return IssuedPapers(pdf=row.pdf, workbook=row.workbook, html=row.html or b"")

    def events(self, quotation_id: int) -> tuple[QuotationEvent, ...]:
        """Return the steps of a quotation, oldest first."""
        query = (
            select(QuotationEventRow)
            .where(QuotationEventRow.quotation_id == quotation_id)
            .order_by(QuotationEventRow.id)
        )
        with self._reading() as session:
            return tuple(
                QuotationEvent(
                    revision=row.revision,
                    status=QuotationStatus(row.status),
                    at=row.at.replace(tzinfo=UTC),
                    by=row.by,
                    note=row.note,
                    option=row.option,
                )
                for row in session.scalars(query)
            )

    def open_quotations(self) -> tuple[StoredQuotation, ...]:
        """Return the drafts and the issued quotations with their documents, by id."""
        query = select(QuotationRow).where(QuotationRow.status.in_(sorted(OPEN))).order_by(QuotationRow.id)
        with self._reading() as session:
            return tuple(self._stored(session, row) for row in session.scalars(query))

    # the life of a quotation

    def create(self, quotation: Quotation, by: str = "") -> StoredQuotation:
        """Add a draft as revision 1; where its number is a pattern, it gets the next one that nobody has had."""
        with self._writing() as session:
            now = self._stamp()
            quotation = numbered(session, quotation)
            row = QuotationRow(revision=1, version=1, status=QuotationStatus.DRAFT.value, created_at=now)
            describe(row, quotation, now)
            session.add(row)
            session.flush()
            session.add(QuotationRevisionRow(quotation_id=row.id, revision=1, document=quotation.model_dump_json()))
            self._note_parts(session, row, quotation)
            self._note(session, row, by, "")
            session.commit()
            return self._stored(session, row)

    def save_draft(self, stored: StoredQuotation, quotation: Quotation, by: str = "") -> StoredQuotation:
        """Replace a draft; it keeps its number where the new one is a pattern."""
        with self._step(stored, QuotationStatus.DRAFT, only_from=QuotationStatus.DRAFT) as (session, row):
            quotation = keeping_number(quotation, row)
            describe(row, quotation, self._stamp())
            self._revision(session, row.id, row.revision).document = quotation.model_dump_json()
            self._note_parts(session, row, quotation)
            self._note(session, row, by, "")
            session.commit()
            return self._stored(session, row)

    def issue(
        self,
        stored: StoredQuotation,
        papers: IssuedPapers,
        by: str,
        together: Callable[[], object] | None = None,
        words: tuple[IncompleteWord, ...] = (),
        *,
        margin_words: tuple[MarginWord, ...] = (),
    ) -> StoredQuotation:
        """Issue a draft with its papers; raise ``InputFault`` naming every price and option that blocks it.

        ``together`` is done just before the step is kept; where it fails, the draft is one still. ``words`` are those
        of persons about options that leave hoses out, ``margin_words`` about lines below cost or the least margin; the
        revision keeps them.
        """
        _check_name(by)
        for said, why in [(one.by, one.reason) for one in words] + [(one.by, one.reason) for one in margin_words]:
            _check_name(said, why)
        with self._step(stored, QuotationStatus.ISSUED) as (session, row):
            revision = self._revision(session, row.id, row.revision)
            quotation = self._read(revision)
            if words or margin_words:
                told = {"incomplete_words": words, "margin_words": margin_words}
                quotation = quotation.model_copy(update=told)
                revision.document = quotation.model_dump_json()
            check_prices(quotation)
            check_coverage(quotation)
            check_margins(quotation)
            check_number(session, row)
            revision.issued_at = self._stamp()
            revision.pdf, revision.workbook, revision.html = papers.pdf, papers.workbook, papers.html or None
            self._note(session, row, by, "")
            session.flush()
            if together is not None:
                together()
            session.commit()
            return self._stored(session, row)

    def answer(
        self,
        stored: StoredQuotation,
        answer: QuotationStatus,
        by: str,
        note: str = "",
        option: str = "",
        *,
        with_it: Callable[[Session], object] | None = None,
    ) -> StoredQuotation:
        """Note that the customer accepted or declined; ``option`` is the title of the one ordered out of several.

        ``with_it`` writes what belongs to the answer into the same unit of work: both are kept, or neither is. A day on
        which the customer was to be asked again is over with the answer.
        """
        _check_name(by, note)
        if answer not in (QuotationStatus.ACCEPTED, QuotationStatus.DECLINED):
            wanted = Worded(
                "an answer is {accepted} or {declined}",
                accepted=QuotationStatus.ACCEPTED,
                declined=QuotationStatus.DECLINED,
            )
            raise InputFault((InputProblem("", "answer", answer.value, wanted),))
        ordered = ordered_option([one.title for one in stored.quotation.options], answer, option)
        with self._step(stored, answer) as (session, row):
            self._note(session, row, by, note, ordered)
            if ordered:
                list_amounts(row, self._read(self._revision(session, row.id, row.revision)), ordered)
            row.follow_up = None  # the customer has answered
            if with_it is not None:
                with_it(session)
            session.commit()
            return self._stored(session, row)

    def revise(
        self, stored: StoredQuotation, quotation: Quotation, by: str, *, changes_order: bool = False
    ) -> StoredQuotation:
        """Open a new revision, a draft, of a quotation that was issued, declined or has expired.

        With ``changes_order`` of an accepted one too: the revision that was ordered stays as it is.
        """
        if stored.status is QuotationStatus.DRAFT:
            wanted = "this is a draft still; save over it"
            raise InputFault((InputProblem("", "status", stored.status.value, wanted),))
        with self._step(stored, QuotationStatus.DRAFT, changes_order=changes_order) as (session, row):
            row.revision += 1
            quotation = keeping_number(quotation, row)
            describe(row, quotation, self._stamp())
            session.add(
                QuotationRevisionRow(quotation_id=row.id, revision=row.revision, document=quotation.model_dump_json())
            )
            self._note_parts(session, row, quotation)
            self._note(session, row, by, "")
            session.commit()
            return self._stored(session, row)

    def follow_up(self, quotation_id: int, day: date | None) -> StoredQuotation:
        """Keep the day on which to ask the customer again, None for none; the quotation itself stays as it is.

        Raise ``InputFault`` where there is no such quotation.
        """
        with self._writing() as session:
            row = self._row(session, quotation_id)
            row.follow_up = day
            session.commit()
            return self._stored(session, row)

    def expire(self, today: date) -> tuple[int, ...]:
        """Let every issued quotation expire whose last day lies before ``today``; return their ids."""
        late = (QuotationRow.status == QuotationStatus.ISSUED.value, QuotationRow.valid_to < today)
        with self._writing() as session:
            rows = session.scalars(select(QuotationRow).where(*late).order_by(QuotationRow.id)).all()
            for row in rows:
                row.status = QuotationStatus.EXPIRED.value
                row.version += 1
                row.changed_at = self._stamp()
                self._note(session, row, "", "")
            session.commit()
            return tuple(row.id for row in rows)

    # inside

    @contextmanager
    def _reading(self) -> Iterator[Session]:
        with store_faults(self._url), Session(self._engine) as session:
            yield session

    @contextmanager
    def _writing(self) -> Iterator[Session]:
        engine = self._engine.execution_options(writes=True)
        with store_faults(self._url), Session(engine, expire_on_commit=False) as session:
            yield session

    @contextmanager
    def _step(
        self,
        stored: StoredQuotation,
        wanted: QuotationStatus,
        only_from: QuotationStatus | None = None,
        *,
        changes_order: bool = False,
    ) -> Iterator[tuple[Session, QuotationRow]]:
        """Yield a unit of work on the row, status and version moved on already; nothing is kept unless committed."""
        with self._writing() as session:
            change = (
                update(QuotationRow)
                .where(QuotationRow.id == stored.id, QuotationRow.version == stored.version)
                .values(version=stored.version + 1, status=wanted.value, changed_at=self._stamp())
                .returning(QuotationRow.id)
            )
            if session.execute(change).first() is None:
                raise StaleQuotation(self._stored(session, self._row(session, stored.id)))
            check_step(stored.status, wanted, changes_order=changes_order)
            if only_from is not None and stored.status is not only_from:
                wanted_text = Worded(
                    "only a {only_from} can be saved over; revise the quotation instead", only_from=only_from
                )
                raise InputFault((InputProblem("", "status", stored.status.value, wanted_text),))
            yield session, self._row(session, stored.id)

    def _row(self, session: Session, quotation_id: int) -> QuotationRow:
        row = session.get(QuotationRow, quotation_id, populate_existing=True)
        if row is None:
            raise InputFault((InputProblem("", "quotation", str(quotation_id), "the book holds no such quotation"),))
        return row

    def _revision(self, session: Session, quotation_id: int, revision: int) -> QuotationRevisionRow:
        row = session.get(QuotationRevisionRow, (quotation_id, revision))
        if row is None:
            raise InputFault((InputProblem("", "revision", str(revision), "the book holds no such revision"),))
        return row

    def _stored(self, session: Session, row: QuotationRow) -> StoredQuotation:
        return StoredQuotation(
            id=row.id,
            revision=row.revision,
            version=row.version,
            status=QuotationStatus(row.status),
            quotation=self._read(self._revision(session, row.id, row.revision)),
            follow_up=row.follow_up,
        )

    def _read(self, row: QuotationRevisionRow) -> Quotation:
        return read_kept(
            row.document,
            Quotation,
            Worded(
                "quotation {quotation_id}, revision {revision}", quotation_id=row.quotation_id, revision=row.revision
            ),
            self._notes,
            named=Worded(
                "Quotation {quotation_id}, revision {revision},", quotation_id=row.quotation_id, revision=row.revision
            ),
            book=shown_url(self._url),
            stays="Its issued papers can still be printed.",
        )

    def _note_parts(self, session: Session, row: QuotationRow, quotation: Quotation) -> None:
        here = (QuotationPartRow.quotation_id == row.id, QuotationPartRow.revision == row.revision)
        session.execute(delete(QuotationPartRow).where(*here))
        numbers: Sequence[str] = quotation.part_numbers
        session.add_all(
            QuotationPartRow(quotation_id=row.id, revision=row.revision, part_number=number) for number in numbers
        )

    def _note(self, session: Session, row: QuotationRow, by: str, note: str, option: str = "") -> None:
        session.add(
            QuotationEventRow(
                quotation_id=row.id,
                revision=row.revision,
                status=row.status,
                at=self._stamp(),
                by=by,
                note=note,
                option=option,
            )
        )

    def _stamp(self) -> datetime:
        return self._now().astimezone(UTC).replace(tzinfo=None)


def _check_name(by: str, note: str = "") -> None:
    if not by.strip():
        raise InputFault((InputProblem("", "by", "nothing", "the name of the person who takes this step is needed"),))
    for field, text in (("by", by), ("note", note)):
        if told := hidden_sign(text):
            raise InputFault((InputProblem("", field, repr(text[:60]), told),))
