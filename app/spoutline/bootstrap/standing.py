"""What the book knows of where the work on a station stands: its quotations, its records, what it is planned with."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoutline.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Callable

    from spoutline.book.book import Book
    from spoutline.book.quotation_records import QuotationEntry
    from spoutline.model.catalogue_edition import EditionRef
    from spoutline.model.survey import Survey


@frozen(kw_only=True)
class StationStanding:
    """Where the work on a station stands.

    ``surveys`` counts those of the book; ``quotations`` are those of its survey, that of the last step first;
    ``recorded`` are the labels of positions with a commissioning record, ``faulty`` those of them whose newest one
    says that something failed or was found wrong; ``planned_with`` is the edition that plans draw on.
    """

    surveys: int
    quotations: tuple[QuotationEntry, ...]
    recorded: frozenset[str]
    faulty: frozenset[str]
    planned_with: EditionRef


def station_standing(
    survey: Survey, survey_id: int, book: Callable[[], Book], planned_with: Callable[[Survey], EditionRef]
) -> StationStanding:
    """Read where the work on a station of the book stands; raise ``StoreFault`` where the book cannot be read."""
    name, opened = survey.site.name, book()
    labels = {one.label for one in survey.positions}
    newest = {one.record.position: one.record for one in opened.position_records.commissioning(name)}
    faulty = {label for label, record in newest.items() if record.has_faults}
    return StationStanding(
        surveys=len(opened.entries()),
        quotations=opened.quotations().of_survey(survey_id),
        recorded=frozenset(labels & newest.keys()),
        faulty=frozenset(labels & faulty),
        planned_with=planned_with(survey),
    )
