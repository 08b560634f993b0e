"""The work due at all stations of the book, wired to its surveys, their sets and records."""

from __future__ import annotations

from collections.abc import Callable, Sequence, Set
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm
from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled, InputFault

if TYPE_CHECKING:
    from datetime import date

    from spoutline.book.book import Book
    from spoutline.book.records import SurveyEntry
    from spoutline.bootstrap.agreements import AgreementService
    from spoutline.bootstrap.kept_needs import KeptNeeds, NeedsKeys
    from spoutline.documents.pack.content import PackWords
    from spoutline.explain.plan.story import Story
    from spoutline.model.due_work import DueWork
    from spoutline.model.inspection import InspectionInterval, InspectionItem
    from spoutline.model.inspection_needs import PositionNeeds
    from spoutline.model.record import RecordedWork
    from spoutline.model.survey import Survey
    from spoutline.planning.pack.due_work import StationWork
    from spoutline.planning.protocols import Progress


@frozen
class _Within:
    """Asks to stop as the work around does; the steps inside a station are not told."""

    around: Progress | None

    def on_progress(self, done: int, total: int) -> None:
        """Say nothing."""

    def should_stop(self) -> bool:
        return self.around is not None and self.around.should_stop()


@frozen
class _Looking:
    """One look at all stations."""

    keys: NeedsKeys
    kept: KeptNeeds
    items: tuple[InspectionItem, ...]
    in_service: date | None
    progress: Progress | None


class DueWorkService:
    """Due work. Methods may be called from several threads; bad input raises ``InputFault``."""

    def __init__(
        self,
        book: Callable[[], Book],
        agreeing: Callable[[], AgreementService],
        keys: Callable[[], NeedsKeys],
        kept: Callable[[], KeptNeeds],
    ) -> None:
        self._book, self._agreeing = book, agreeing
        self._keys, self._kept = keys, kept

    def due(
        self,
        on: date,
        *,
        until: date | None = None,
        in_service: date | None = None,
        every: Set[InspectionInterval] = frozenset(),
        progress: Progress | None = None,
    ) -> DueWork:
        """Return what is due at every station of the book, longest overdue first.

        Several surveys of one site are one station: the one changed last counts, as for its records. A station is
        planned where what it rests on changed since the last look; else what it asks for is read as it was kept.

        Parameters
        ----------
        on
            The day as of which is counted what is overdue.
        until
            Only what is due by this day.
        in_service
            Day of handing over of positions of which the book holds no dated record.
        every
            Only items that come round so; empty for all.
        progress
            Told of each station; where it asks to stop, ``Cancelled`` is raised.
        """
        from spoutline import assets
        from spoutline.model.due_work import DueWork
        from spoutline.planning.pack.due_work import in_order
        from spoutline.ruletables.inspection_items import load_inspection_items

        items = load_inspection_items(assets.resources_folder())
        newest = {entry.name: entry for entry in reversed(self._book().entries())}
        looking = _Looking(self._keys(), self._kept(), items, in_service, progress)
        found = []
        for done, name in enumerate(sorted(newest)):
            if progress is not None:
                progress.on_progress(done, len(newest))
                if progress.should_stop():
                    looking.kept.write(is_whole=False)
                    raise Cancelled
            found.append(self._station(newest[name], looking))
        looking.kept.write(is_whole=True)
        if progress is not None:
            progress.on_progress(len(newest), len(newest))
        rows = in_order(row for one in found for row in one.rows)
        shown = (row for row in rows if until is None or row.due.next_due <= until)
        return DueWork(
            on=on,
            rows=tuple(row for row in shown if not every or row.due.item.interval in every),
            uncounted=tuple(left for one in found for left in one.uncounted),
        )

    def _station(self, entry: SurveyEntry, looking: _Looking) -> StationWork:
        from spoutline.book.stored_documents import UnreadableDocument
        from spoutline.model.due_work import Uncounted, UncountedReason
        from spoutline.planning.pack.due_work import StationWork, due_at_station, first_day

        labels: tuple[str, ...] = ()
        try:
            survey = self._book().stored(entry.id).survey
            labels = tuple(position.label for position in survey.positions)
            history = self._book().position_records.history(entry.name)
            if looking.in_service is None and not any(first_day(history, label) for label in labels):
                # nothing to count from: the station need not be planned
                left = Uncounted(site=entry.name, positions=labels, reason=UncountedReason.NO_RECORD)
                return StationWork(rows=(), uncounted=(left,))
            needs = self._needs(entry.id, survey, history, looking)
            return due_at_station(entry.id, survey.site, needs, looking.items, history, in_service=looking.in_service)
        except (InputFault, UnreadableDocument) as fault:
            left = Uncounted(site=entry.name, positions=labels, reason=UncountedReason.FAULT, told=str(fault))
            return StationWork(rows=(), uncounted=(left,))

    def _needs(
        self, survey_id: int, survey: Survey, history: Sequence[RecordedWork], looking: _Looking
    ) -> tuple[PositionNeeds, ...]:
        """Return what the positions of a station ask for: as it was kept, else by its sets as they hang there."""
        from spoutline.model.agreed_sets import SetsSource
        from spoutline.planning.pack.inspection import needs_of

        key = looking.keys.key(survey_id, survey, history)
        known = looking.kept.needs(key) if key is not None else None
        if known is not None:
            return known
        shown = self._agreeing().sets_for(
            survey, SetsSource.BUILT, _Within(looking.progress), survey_id, with_alternatives=False
        )
        needs = needs_of(shown.site_plan, looking.items)
        if key is not None:
            looking.kept.keep(key, needs)
        return needs

    def paper(self, work: DueWork, words: PackWords, *, on_letter: bool, form: PaperForm = PaperForm.PDF) -> bytes:
        """Return the list as PDF, or in another ``form``, overdue work first; ``on_letter`` on US letter paper."""
        from spoutline.documents.pack.due_paper import due_paper

        return due_paper(work, words.story, on_letter=on_letter, form=form)

    def csv(self, work: DueWork, english: Story) -> bytes:
        """Return the list as CSV for other programs, in English."""
        from spoutline.documents.pack.due_work import due_csv

        return due_csv(work, english)

    def json(self, work: DueWork, english: Story) -> bytes:
        """Return the list as a JSON document."""
        from spoutline.documents.pack.due_work import due_json

        return due_json(work, english)

    def calendar(self, work: DueWork, story: Story) -> bytes:
        """Return the list as a calendar file; what is overdue stands on the day of the list."""
        from spoutline.documents.pack.inspection_calendar import stations_calendar

        return stations_calendar(work, story)
