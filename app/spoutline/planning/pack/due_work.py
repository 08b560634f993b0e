"""What is due at a station whose days of handing over are those of its records, and the order of many stations."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.due_work import StationDue, Uncounted, UncountedReason
from spoutline.model.inspection import InspectionItem, InspectionItemId
from spoutline.model.inspection_needs import PositionNeeds
from spoutline.model.record import RecordedWork
from spoutline.model.survey import Site
from spoutline.planning.pack.inspection import due_of

_ORDER: Final = tuple(InspectionItemId)


@frozen(kw_only=True)
class StationWork:
    """What is due at one station, and what could not be counted there."""

    rows: tuple[StationDue, ...]
    uncounted: tuple[Uncounted, ...]


def first_day(history: Iterable[RecordedWork], position: str) -> date | None:
    """Return the first day that the records tell of a position: it was in service by then. None without a dated one."""
    days = (entry.done_on for entry in history if entry.position == position)
    return min((day for day in days if day is not None), default=None)


def due_at_station(
    survey_id: int,
    site: Site,
    needs: Sequence[PositionNeeds],
    items: Sequence[InspectionItem],
    history: Sequence[RecordedWork],
    *,
    in_service: date | None = None,
) -> StationWork:
    """Return what is due at each position of a station.

    Parameters
    ----------
    survey_id
        The survey of the book that was planned.
    site
        Its site.
    needs
        What its positions ask for by the sets that hang there.
    items
        Every item that an inspection plan can hold.
    history
        What the book holds of the site, in the order in which it was recorded.
    in_service
        Day of handing over of positions that have no dated record; without it such positions are not counted.
    """
    rows: list[StationDue] = []
    without_set: list[str] = []
    without_day: list[str] = []
    for one in needs:
        label = one.position
        day = first_day(history, label) or in_service
        if one.asked is None:
            without_set.append(label)
        elif day is None:
            without_day.append(label)
        else:
            found = due_of(one, items, history, day)
            rows.extend(StationDue(survey_id=survey_id, site=site, counted_from=day, due=due) for due in found)
    left = ((without_day, UncountedReason.NO_RECORD), (without_set, UncountedReason.NO_SET))
    uncounted = (Uncounted(site=site.name, positions=tuple(labels), reason=reason) for labels, reason in left if labels)
    return StationWork(rows=tuple(rows), uncounted=tuple(uncounted))


def in_order(rows: Iterable[StationDue]) -> tuple[StationDue, ...]:
    """Return rows by the day on which they are due, so that what is longest overdue comes first."""

    def place(row: StationDue) -> tuple[date, str, str, int]:
        return (row.due.next_due, row.site.name, row.due.position, _ORDER.index(row.due.item.id))

    return tuple(sorted(rows, key=place))
