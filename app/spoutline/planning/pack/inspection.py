"""When each inspection of a position is next due."""

from __future__ import annotations

import calendar
from collections.abc import Iterable, Iterator, Mapping
from collections.abc import Set as AbstractSet
from datetime import date, timedelta

from spoutline.model.inspection import DueItem, InspectionInterval, InspectionItem, InspectionItemId
from spoutline.model.record import InspectionEntry
from spoutline.ruletables.cautionwords import CautionCondition

# a month is 30 days where the source counts days (Oklahoma Administrative Code 165:26-2-92(c))
_DAYS = {InspectionInterval.DAILY: 1, InspectionInterval.WEEKLY: 7, InspectionInterval.MONTHLY: 30}


def items_for(conditions: AbstractSet[CautionCondition], items: Iterable[InspectionItem]) -> tuple[InspectionItem, ...]:
    """Return the items that a position with these conditions asks for."""
    known = {condition.value for condition in conditions}
    return tuple(item for item in items if item.applies <= known)


def next_day(last: date, interval: InspectionInterval) -> date:
    """Return the day an interval after ``last``; a year later is the same day, 28 February after a leap day."""
    if interval is not InspectionInterval.YEARLY:
        return last + timedelta(days=_DAYS[interval])
    leap_day = (last.month, last.day) == (2, 29) and not calendar.isleap(last.year + 1)
    return last.replace(year=last.year + 1, day=28 if leap_day else last.day)


def last_done(entries: Iterable[InspectionEntry], position: str) -> Mapping[InspectionItemId, date]:
    """Return when each item of a position was last done."""
    found: dict[InspectionItemId, date] = {}
    for entry in entries:
        if entry.position == position:
            found[entry.item] = max(entry.done_on, found.get(entry.item, entry.done_on))
    return found


def due_items(
    position: str,
    items: Iterable[InspectionItem],
    *,
    in_service: date,
    done: Mapping[InspectionItemId, date],
) -> Iterator[DueItem]:
    """Yield the items of a position with their next day.

    Parameters
    ----------
    position
        Label of the position.
    items
        What the position asks for.
    in_service
        Day of handing over, from which an item never done is counted.
    done
        When items were last done.
    """
    for item in items:
        last = done.get(item.id)
        due = next_day(last or in_service, item.interval)
        yield DueItem(position=position, item=item, last_done=last, next_due=due)
