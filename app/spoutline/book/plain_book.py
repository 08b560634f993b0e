"""What a window asks of an SQLite book before it shows anything, read by Python's own library.

To load SQLAlchemy takes a fifth of the time until the first drawing. What is asked until then are a few plain queries;
whatever one of them fails at is left to the whole book, which also tells what is wrong.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Sequence
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any, Protocol, TypeVar

from spoutline.book.book_file import FileKind, FileReport, reading
from spoutline.book.records import SettingName, StoredSurvey, SurveyEntry
from spoutline.book.survey_text import survey_from_json
from spoutline.database.revisions import newest_revision
from spoutline.model.faults import InputFault
from spoutline.model.plain_values import without_hidden_signs
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.book.book import Book

_T = TypeVar("_T")


class BookReader(Protocol):
    """Reads surveys and what is remembered: the whole book, or the plain one."""

    def entries(self) -> tuple[SurveyEntry, ...]:
        """Return all surveys, last changed first."""
        ...

    def stored(self, survey_id: int) -> StoredSurvey:
        """Return the survey with this id; raise ``InputFault`` where there is none."""
        ...

    def setting(self, name: SettingName) -> str | None:
        """Return what was remembered under ``name``; None where nothing was."""
        ...


def read_plainly(report: FileReport, whole: Callable[[], Book]) -> PlainBook | None:
    """Return the book that was looked at, to be read; None where ``whole`` must open it.

    That is so where there is none yet, or where its tables have another form than today's.
    """
    is_of_today = report.book_revision == newest_revision(Path(__file__).parent / "migrations")
    return PlainBook(report.path, whole) if report.kind is FileKind.BOOK and is_of_today else None


class PlainBook:
    """Reads a book whose tables have the form of today; implements ``BookReader``.

    Each method opens the file, reads and lets go of it, and may be called from any thread.
    """

    def __init__(self, path: Path, whole: Callable[[], Book]) -> None:
        self._path, self._whole = path, whole

    def entries(self) -> tuple[SurveyEntry, ...]:
        """Return all surveys, last changed first."""
        query = (
            "SELECT id, name, revision, changed_at FROM surveys WHERE removed_at IS NULL "
            "ORDER BY changed_at DESC, id DESC"
        )

        def plainly() -> tuple[SurveyEntry, ...]:
            return tuple(
                SurveyEntry(
                    id=number,
                    name=without_hidden_signs(name),
                    revision=revision,
                    changed_at=datetime.fromisoformat(changed_at).replace(tzinfo=UTC),
                )
                for number, name, revision, changed_at in self._rows(query)
            )

        return _asked(plainly, lambda: self._whole().entries())

    def stored(self, survey_id: int) -> StoredSurvey:
        """Return the survey with this id; raise ``InputFault`` where there is none.

        One that must be healed, or cannot be read, is left to the whole book.
        """
        query = "SELECT revision, document FROM surveys WHERE id = ? AND removed_at IS NULL"

        def plainly() -> StoredSurvey | None:
            for revision, document in self._rows(query, survey_id):
                survey = survey_from_json(document, Worded("survey {survey_id}", survey_id=survey_id))
                return StoredSurvey(id=survey_id, revision=revision, survey=survey)
            return None

        return _asked(plainly, lambda: None) or self._whole().stored(survey_id)

    def setting(self, name: SettingName) -> str | None:
        """Return what was remembered under ``name``; None where nothing was."""
        query = "SELECT value FROM settings WHERE name = ?"

        def plainly() -> str | None:
            return next((str(value) for (value,) in self._rows(query, name.value)), None)

        return _asked(plainly, lambda: self._whole().setting(name))

    def names_agreement(self, site: str, survey_id: int | None) -> bool:
        """Return whether agreed sets ever named the site or the survey, or that cannot be told."""
        query = "SELECT count(*) FROM agreements WHERE site = ? OR survey_id = ?"
        return _asked(lambda: self._rows(query, site, survey_id) != [(0,)], lambda: True)

    def _rows(self, query: str, *values: object) -> Sequence[Any]:
        with reading(self._path) as connection:
            return connection.execute(query, values).fetchall()


def _asked(plainly: Callable[[], _T], otherwise: Callable[[], _T]) -> _T:
    """Return what the plain way finds, or the other where that fails."""
    try:
        return plainly()
    except (sqlite3.Error, InputFault, ValueError):
        return otherwise()
