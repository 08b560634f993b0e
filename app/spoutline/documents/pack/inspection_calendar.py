"""The inspection plan as a calendar file after RFC 5545: one recurring event for each item."""

from __future__ import annotations

import uuid
from collections.abc import Iterable
from datetime import UTC, datetime, time
from typing import TYPE_CHECKING, Final

from spoutline.documents.calendar import calendar_bytes, plain_text
from spoutline.documents.pack.inspection_sheet import due_groups, item_text
from spoutline.documents.pack.setting_words import sourced
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
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


def _event(group: tuple[DueItem, ...], site: Site, story: Story) -> Event:
    from icalendar import Event, vRecur

    first = group[0]
    labels = ", ".join(one.position for one in group)
    event = Event()
    event.add("uid", str(uuid.uuid5(_NAMESPACE, f"{site.name}|{site.address}|{first.item.id}|{labels}")))
    # no clock is read: the stamp is the day on which the event starts
    event.add("dtstamp", datetime.combine(first.next_due, time(), UTC))
    event.add("dtstart", first.next_due)
    if first.item.interval is not InspectionInterval.ONCE:
        event.add("rrule", vRecur.from_ical(_RULES[first.item.interval]))
    event.add("summary", plain_text(f"{site.name}: {item_text(first, story)}"))
    source = sourced(first.item.source, first.item.status, story)
    rows = ((Word.POSITIONS, labels), (Word.SOURCE, source))
    text = "\n".join(f"{story.word(word)}{story.writing.colon} {told}" for word, told in rows)
    event.add("description", plain_text(text))
    if site.address.strip():
        event.add("location", plain_text(site.address.strip()))
    event.add("transp", "TRANSPARENT")
    return event
