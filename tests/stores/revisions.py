"""Earlier revisions of a survey, which the book keeps and the program hands out only as they are written."""

from __future__ import annotations

from sqlalchemy import select

from spoutline.book.book import Book
from spoutline.book.tables import RevisionRow
from spoutline.model.survey import Survey


def survey_at(book: Book, survey_id: int, revision: int) -> Survey:
    """Return a survey as it was at a revision; raise ``InputFault`` where there is none."""
    return book._survey(book.written(survey_id, revision), survey_id)


def revisions_of(book: Book, survey_id: int) -> list[int]:
    """Return the numbers of the revisions that the book holds of a survey, newest first."""
    query = select(RevisionRow.revision).where(RevisionRow.survey_id == survey_id).order_by(RevisionRow.revision.desc())
    with book._engine.connect() as connection:
        return list(connection.execute(query).scalars())
