"""The inspection plan as a calendar file after RFC 5545: one recurring event for each item."""

from __future__ import annotations

import uuid
from collections.abc import Iterable
from datetime import UTC, date, datetime, time
from itertools import groupby
from typing import TYPE_CHECKING, Final

from spoutline.documents.calendar import calendar_bytes, plain_text
from spoutline.documents.pack.inspection_sheet import due_groups, item_text
from spoutline.documents.pack.setting_words import sourced
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.due_work import DueWork
from spoutline.model.inspection import DueItem, InspectionInterval
from spoutline.model.survey import Site

if TYPE_CHECKING:
    from icalendar import Event

_RULES: Final = {
    InspectionInterval.DAILY: "FREQ=DAILY",
    InspectionInterval.WEEKLY: "FREQ=WEEKLY",
    InspectionInterval.MONTHLY: "FREQ=DAILY;INTERVAL=30",
    InspectionInterval.YEARLY: "FREQ=YEARLY",
}
# names of events are made from site and item, so that a new export moves events instead of doubling them
_NAMESPACE: Final = uuid.uuid5(uuid.NAMESPACE_DNS, "inspection.spoutline.invalid")


def inspection_calendar(due: Iterable[DueItem], site: Site, story: Story) -> bytes:
    """Return the inspections as whole-day events that recur from their next day on; what is due once does not."""
    name = f"{story.word(Word.INSPECTION)}{story.writing.colon} {site.name}"
    return calendar_bytes(name, "inspection plan", (_event(group, site, story) for group in due_groups(due)))


def stations_calendar(work: DueWork, story: Story) -> bytes:
    """Return the work due at all stations as such events, what is overdue on the day of the list.

    An event has the name that it has in the calendar of its station, so that one calendar takes both.
    """
    found: list[tuple[Event, date]] = []
    for _, rows in groupby(sorted(work.rows, key=lambda row: row.survey_id), key=lambda row: row.survey_id):
        station = tuple(rows)
        groups = due_groups(row.due for row in station)
        found.extend((_event(group, station[0].site, story, work.on), group[0].next_due) for group in groups)
    found.sort(key=lambda one: (one[1], str(one[0]["summary"]), str(one[0]["uid"])))
    return calendar_bytes(story.word(Word.DUE_WORK), "due work", (event for event, _ in found))


def _event(group: tuple[DueItem, ...], site: Site, story: Story, on: date | None = None) -> Event:
    """Return the event of a group; with ``on``, one that was due before stands on that day and says so."""
    from icalendar import Event, vRecur

    first = group[0]
    labels = ", ".join(one.position for one in group)
    is_late = on is not None and first.next_due < on
    start = on if on is not None and is_late else first.next_due
    event = Event()
    event.add("uid", str(uuid.uuid5(_NAMESPACE, f"{site.name}|{site.address}|{first.item.id}|{labels}")))
    # no clock is read: the stamp is the day on which the event starts
    event.add("dtstamp", datetime.combine(start, time(), UTC))
    event.add("dtstart", start)
    if first.item.interval is not InspectionInterval.ONCE:
        event.add("rrule", vRecur.from_ical(_RULES[first.item.interval]))
    late = f"{story.word(Word.OVERDUE)}{story.writing.colon} " if is_late else ""
    event.add("summary", plain_text(f"{late}{site.name}: {item_text(first, story)}"))
    source = sourced(first.item.source, first.item.status, story)
    rows = [(Word.POSITIONS, labels), (Word.SOURCE, source)]
    if is_late:
        rows.insert(1, (Word.NEXT_DUE, story.day(first.next_due)))
    text = "\n".join(f"{story.word(word)}{story.writing.colon} {told}" for word, told in rows)
    event.add("description", plain_text(text))
    if site.address.strip():
        event.add("location", plain_text(site.address.strip()))
    event.add("transp", "TRANSPARENT")
    return event
