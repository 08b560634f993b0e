"""When each inspection of a position is next due."""

from __future__ import annotations

import calendar
from collections.abc import Iterable, Iterator, Mapping
from collections.abc import Set as AbstractSet
from dataclasses import replace
from datetime import date, timedelta

from spoutline.model.caution import CautionCondition
from spoutline.model.inspection import DueItem, InspectionInterval, InspectionItem, InspectionItemId
from spoutline.model.plan import SitePlan
from spoutline.model.record import InspectionEntry
from spoutline.rules.work.job_conditions import job_conditions

# a month is 30 days where the source counts days (Oklahoma Administrative Code 165:26-2-92(c))
_DAYS = {InspectionInterval.DAILY: 1, InspectionInterval.WEEKLY: 7, InspectionInterval.MONTHLY: 30}


def items_for(conditions: AbstractSet[CautionCondition], items: Iterable[InspectionItem]) -> tuple[InspectionItem, ...]:
    """Return the items that a position with these conditions asks for."""
    return tuple(item for item in items if item.applies <= conditions)


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


def due_at_site(
    site_plan: SitePlan, items: Iterable[InspectionItem], entries: Iterable[InspectionEntry], in_service: date
) -> tuple[DueItem, ...]:
    """Return what is to be inspected at each position that has a set, and when next.

    Parameters
    ----------
    site_plan
        The plan; the conditions of each position say which items it asks for.
    items
        Every item that an inspection plan can hold.
    entries
        What was inspected at the site so far.
    in_service
        Day of handing over, from which an item never done is counted.
    """
    items, entries = tuple(items), tuple(entries)
    return tuple(
        due
        for plan in site_plan.positions
        if plan.chosen is not None
        for due in due_items(
            plan.position.label,
            items_for(job_conditions(replace(site_plan, positions=(plan,))), items),
            in_service=in_service,
            done=last_done(entries, plan.position.label),
        )
    )


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
