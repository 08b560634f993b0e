"""When each inspection of a position is next due."""

from __future__ import annotations

import calendar
from collections.abc import Iterable, Iterator, Mapping, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import replace
from datetime import date, timedelta

from spoutline.model.caution import CautionCondition
from spoutline.model.inspection import DueItem, InspectionCause, InspectionInterval, InspectionItem, InspectionItemId
from spoutline.model.inspection_needs import PositionNeeds
from spoutline.model.liquid import ListingScheme
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.quantity import Dimension
from spoutline.model.record import CommissioningRecord, InspectionEntry, RecordedWork
from spoutline.planning.pack.after_work import lines_that_settle, open_after_work
from spoutline.rules.work.job_conditions import job_conditions

# a month is 30 days where the source counts days (Oklahoma Administrative Code 165:26-2-92(c))
_DAYS = {InspectionInterval.DAILY: 1, InspectionInterval.WEEKLY: 7, InspectionInterval.MONTHLY: 30}


_BY_TIME = frozenset({InspectionCause.TIME, InspectionCause.WINTER})
# the day before which what must stand the frost is looked at. Source: common practice, no source
_BEFORE_WINTER = (10, 1)
_AFTER_WINTER = (4, 1)


def items_for(
    conditions: AbstractSet[CautionCondition], items: Iterable[InspectionItem], scheme: ListingScheme | None
) -> tuple[InspectionItem, ...]:
    """Return the items that a position with these conditions asks for under a listing scheme."""
    return tuple(item for item in items if item.applies <= conditions and (not item.schemes or scheme in item.schemes))


def before_winter(day: date) -> date:
    """Return the day by which what must stand the frost is looked at: 1 October; at once where it is winter.

    Source: common practice, no source; it is the autumn of the northern half of the earth, as every profile is.
    """
    if (day.month, day.day) < _AFTER_WINTER or (day.month, day.day) >= _BEFORE_WINTER:
        return day
    return date(day.year, *_BEFORE_WINTER)


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
    site_plan: SitePlan, items: Iterable[InspectionItem], history: Sequence[RecordedWork], in_service: date
) -> tuple[DueItem, ...]:
    """Return what is to be inspected at each position that has a set, and when next.

    Parameters
    ----------
    site_plan
        The plan; the conditions of each position say which items it asks for.
    items
        Every item that an inspection plan can hold.
    history
        What the book holds of the site, in the order in which it was recorded: forms, replacements, inspections.
    in_service
        Day of handing over, from which an item never done is counted.
    """
    items = tuple(items)
    return tuple(one for needs in needs_of(site_plan, items) for one in due_of(needs, items, history, in_service))


def needs_of(site_plan: SitePlan, items: Iterable[InspectionItem]) -> tuple[PositionNeeds, ...]:
    """Return what each position of a plan asks for; ``items`` are all that an inspection plan can hold."""
    items = tuple(items)
    return tuple(_needs(plan, site_plan, items) for plan in site_plan.positions)


def due_of(
    needs: PositionNeeds, items: Iterable[InspectionItem], history: Sequence[RecordedWork], in_service: date
) -> tuple[DueItem, ...]:
    """Return what is to be inspected at one position, and when next; parameters as of ``due_at_site``."""
    if needs.asked is None:
        return ()
    label, asked = needs.position, [item for item in items if item.id in needs.asked]
    inspected = [entry for entry in history if isinstance(entry, InspectionEntry)]
    by_time = tuple(item for item in asked if item.cause in _BY_TIME)
    due = due_items(label, by_time, in_service=in_service, done=last_done(inspected, label))
    ends = _service_end(label, history)
    counted = (_by_service_life(_with_bounds(one, needs), ends) for one in due)
    return (*counted, *open_after_work(needs, asked, history))


def _needs(plan: PositionPlan, site_plan: SitePlan, items: tuple[InspectionItem, ...]) -> PositionNeeds:
    if plan.chosen is None:
        return PositionNeeds(position=plan.position.label, asked=None)
    scheme = plan.requirement.scheme if plan.requirement is not None else None
    asked = items_for(job_conditions(replace(site_plan, positions=(plan,))), items, scheme)
    return PositionNeeds(
        position=plan.position.label,
        asked=frozenset(item.id for item in asked),
        urea=plan.requirement.urea_percent if plan.requirement is not None else None,
        on_form=lines_that_settle(plan),
    )


def _service_end(label: str, history: Sequence[RecordedWork]) -> date | None:
    """Return the first day on which a part of the newest form of a position comes to the end of its service life."""
    forms = [one for one in history if isinstance(one, CommissioningRecord) and one.position == label]
    ends = [mark.service_until for mark in forms[-1].marks if mark.service_until is not None] if forms else []
    return min(ends, default=None)


def _by_service_life(due: DueItem, end: date | None) -> DueItem:
    """Return the look at the ages of the parts no later than the day on which one of them has served its life."""
    if due.item.id is not InspectionItemId.BREAKAWAY_AGE or end is None or end >= due.next_due:
        return due
    return replace(due, next_due=end)


def _with_bounds(due: DueItem, needs: PositionNeeds) -> DueItem:
    """Return an item with the bounds of what is read for it, where it is a figure."""
    if due.item.id is not InspectionItemId.DEF_CONCENTRATION or needs.urea is None:
        return due
    return replace(due, dimension=Dimension.PERCENT, lower=needs.urea[0], upper=needs.urea[1])


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
        if item.cause is InspectionCause.WINTER:
            due = before_winter(in_service) if last is None else _next_winter(last)
        else:
            due = next_day(last or in_service, item.interval)
        yield DueItem(position=position, item=item, last_done=last, next_due=due)


def _next_winter(last: date) -> date:
    """Return the day before the winter after the one for which an item was last done."""
    autumn = date(last.year, *_BEFORE_WINTER)
    return autumn.replace(year=last.year + 1) if (last.month, last.day) >= _AFTER_WINTER else autumn
