"""The agreed sets kept in the book: rows are only ever added."""

from __future__ import annotations

from collections.abc import Callable, Collection
from datetime import UTC, datetime

from sqlalchemy import DateTime, Engine, Integer, String, Text, func, or_, select
from sqlalchemy.exc import IntegrityError
from sqlalchemy.orm import Mapped, Session, mapped_column

from spoutline.book.schema import store_faults
from spoutline.book.stored_documents import ReadingNotes, read_kept
from spoutline.book.tables import BookTable
from spoutline.database.engine import shown_url
from spoutline.model.agreed_sets import AgreedSets
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

_MEANWHILE = "somebody agreed on other sets in the meantime: look at them, then agree again"


class AgreementRow(BookTable):
    """One entry in the history of a survey's agreed sets; ``line`` tells one history from another."""

    __tablename__ = "agreements"

    line: Mapped[int] = mapped_column(Integer, primary_key=True, autoincrement=False)
    serial: Mapped[int] = mapped_column(Integer, primary_key=True, autoincrement=False)
    survey_id: Mapped[int | None] = mapped_column(Integer, index=True)
    site: Mapped[str] = mapped_column(String(60), index=True)
    agreed_at: Mapped[datetime] = mapped_column(DateTime)
    document: Mapped[str] = mapped_column(Text)


class AgreementBook:
    """Agreed sets by line. Safe to call from several threads and processes; an entry is on disk when it returns."""

    def __init__(
        self, engine: Engine, url: str, now: Callable[[], datetime], notes: ReadingNotes | None = None
    ) -> None:
        self._engine = engine
        self._url = url
        self._now = now
        self._notes = notes or ReadingNotes()

    def now(self) -> datetime:
        """Return the time of an entry made now, whole seconds of UTC."""
        return self._now().astimezone(UTC).replace(microsecond=0)

    def extent(self) -> tuple[int, int]:
        """Return how many histories and entries there are; none ever changes, so this tells states apart."""
        query = select(func.count(AgreementRow.line.distinct()), func.count())
        with store_faults(self._url), Session(self._engine) as session:
            lines, entries = session.execute(query.select_from(AgreementRow)).one()
        return lines, entries

    def lines(self, site: str, survey_id: int | None = None) -> dict[int, tuple[AgreedSets, ...]]:
        """Return every history that ever named the site or the survey, oldest entry first, by its number."""
        named = AgreementRow.site == site
        wanted = named if survey_id is None else or_(named, AgreementRow.survey_id == survey_id)
        lines = select(AgreementRow.line).where(wanted)
        query = (
            select(AgreementRow).where(AgreementRow.line.in_(lines)).order_by(AgreementRow.line, AgreementRow.serial)
        )
        found: dict[int, tuple[AgreedSets, ...]] = {}
        with store_faults(self._url), Session(self._engine) as session:
            for row in session.scalars(query):
                found[row.line] = (*found.get(row.line, ()), self._read(row))
        return found

    def add(self, line: int | None, entry: AgreedSets, known: Collection[int] | None = None) -> int:
        """Add the next entry of a line, or the first of a new one for None, and return the number of the line.

        ``known`` are the lines of the site or survey that whoever begins a new one has looked at. Raise ``InputFault``
        where somebody else added an entry under this serial, or began such a line, in the meantime.
        """
        engine = self._engine.execution_options(writes=True)
        with store_faults(self._url), Session(engine) as session:
            number = self.write(session, line, entry, known)
            session.commit()
            return number

    def write(self, session: Session, line: int | None, entry: AgreedSets, known: Collection[int] | None = None) -> int:
        """Write the next entry of a line as part of somebody's unit of work; see ``add``."""
        if session.get_bind().dialect.name == "postgresql":
            session.execute(select(func.pg_advisory_xact_lock(func.hashtext("spoutline agreements"))))
        number = line
        if number is None:
            if known is not None:
                self._check_lines(session, entry, known)
            number = (session.scalar(select(func.max(AgreementRow.line))) or 0) + 1
        session.add(
            AgreementRow(
                line=number,
                serial=entry.serial,
                survey_id=entry.survey_id,
                site=entry.site,
                agreed_at=entry.agreed_at.astimezone(UTC).replace(tzinfo=None),
                document=entry.model_dump_json(),
            )
        )
        try:
            session.flush()
        except IntegrityError as fault:
            raise InputFault((InputProblem("", "serial", str(entry.serial), _MEANWHILE),)) from fault
        return number

    @staticmethod
    def _check_lines(session: Session, entry: AgreedSets, known: Collection[int]) -> None:
        """Raise ``InputFault`` where the site or survey has a line that nobody has looked at yet."""
        named = AgreementRow.site == entry.site
        if entry.survey_id is not None:
            named = or_(named, AgreementRow.survey_id == entry.survey_id)
        if set(session.scalars(select(AgreementRow.line).where(named))) - set(known):
            raise InputFault((InputProblem("", "serial", str(entry.serial), _MEANWHILE),))

    def _read(self, row: AgreementRow) -> AgreedSets:
        place, named = (
            Worded("agreement {serial} of {site}", serial=row.serial, site=row.site),
            Worded("Agreement {serial} of line {line}", serial=row.serial, line=row.line),
        )
        return read_kept(row.document, AgreedSets, place, self._notes, named=named, book=shown_url(self._url))
