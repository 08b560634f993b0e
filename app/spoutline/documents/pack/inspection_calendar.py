"""The inspection plan as a calendar file after RFC 5545: one recurring event for each item."""

from __future__ import annotations

import uuid
from collections.abc import Iterable, Iterator
from typing import Final

from spoutline.documents.conversion.icalendar import escaped, folded
from spoutline.documents.pack.inspection_sheet import due_groups
from spoutline.documents.pack.setting_words import sourced
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.inspection import DueItem, InspectionInterval
from spoutline.model.survey import Site

_RULES: Final = {
    InspectionInterval.DAILY: "FREQ=DAILY",
    InspectionInterval.WEEKLY: "FREQ=WEEKLY",
    InspectionInterval.MONTHLY: "FREQ=DAILY;INTERVAL=30",
    InspectionInterval.YEARLY: "FREQ=YEARLY",
}
# names of events are made from site and item, so that a new export moves events instead of doubling them
_NAMESPACE: Final = uuid.uuid5(uuid.NAMESPACE_DNS, "inspection.spoutline.invalid")


def inspection_calendar(due: Iterable[DueItem], site: Site, story: Story) -> bytes:
    """Return the inspections as whole-day events that recur from their next day on."""
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Spoutline//inspection plan//EN", "CALSCALE:GREGORIAN"]
    lines.append(f"X-WR-CALNAME:{escaped(f'{story.word(Word.INSPECTION)}: {site.name}')}")
    for group in due_groups(due):
        lines.extend(_event(group, site, story))
    lines.append("END:VCALENDAR")
    return "".join(f"{folded(line)}\r\n" for line in lines).encode("utf-8")


def _event(group: tuple[DueItem, ...], site: Site, story: Story) -> Iterator[str]:
    first = group[0]
    labels = ", ".join(one.position for one in group)
    name = f"{site.name}|{site.address}|{first.item.id}|{labels}"
    yield "BEGIN:VEVENT"
    yield f"UID:{uuid.uuid5(_NAMESPACE, name)}"
    # no clock is read: the stamp is the day on which the event starts
    yield f"DTSTAMP:{first.next_due:%Y%m%d}T000000Z"
    yield f"DTSTART;VALUE=DATE:{first.next_due:%Y%m%d}"
    yield f"RRULE:{_RULES[first.item.interval]}"
    yield f"SUMMARY:{escaped(f'{site.name}: {story.word(first.item.id)}')}"
    source = sourced(first.item.source, first.item.status, story)
    text = f"{story.word(Word.POSITIONS)}: {labels}\n{story.word(Word.SOURCE)}: {source}"
    yield f"DESCRIPTION:{escaped(text)}"
    if site.address.strip():
        yield f"LOCATION:{escaped(site.address.strip())}"
    yield "TRANSP:TRANSPARENT"
    yield "END:VEVENT"
