"""Earlier revisions of a survey, which the book keeps and the program hands out only as they are written."""

from __future__ import annotations

from spoutline.book.book import Book
from spoutline.model.survey import Survey


def survey_at(book: Book, survey_id: int, revision: int) -> Survey:
    """Return a survey as it was at a revision; raise ``InputFault`` where there is none."""
    return book._survey(book.written(survey_id, revision), survey_id)
