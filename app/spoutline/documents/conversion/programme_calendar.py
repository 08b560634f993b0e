"""A programme as a calendar file after RFC 5545: one event for each visit, one for each deadline."""

from __future__ import annotations

import uuid
from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING

from spoutline.documents.calendar import calendar_bytes, plain_text
from spoutline.explain.conversion.programme_words import ProgrammeWords
from spoutline.explain.conversion.story import ConversionStory
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.programme import Programme, RankedSite, Visit

if TYPE_CHECKING:
    from icalendar import Event

# names of events are made from the program and the site, so that a program worked out anew moves them
_NAMESPACE = uuid.uuid5(uuid.NAMESPACE_DNS, "spoutline.invalid")
_MONDAY = 0


def programme_calendar(programme: Programme, words: ConversionStory) -> bytes:
    """Return the visits as events of whole days, from the first Monday of their year on, and the deadlines.

    Raises
    ------
    InputFault
        Where the years are only counted: a calendar needs those of the calendar.
    """
    if programme.first_year is None:
        wanted = "name the first calendar year, such as 2027: a calendar needs dates"
        raise InputFault((InputProblem("", "first year", "nothing", wanted),))
    events = tuple(_events(ProgrammeWords(programme, words)))
    return calendar_bytes(words.say("program_title", name=programme.name), "conversion program", events)


def first_monday(year: int) -> date:
    """Return the first Monday of a calendar year."""
    day = date(year, 1, 1)
    return day + timedelta(days=(_MONDAY - day.weekday()) % 7)


def _events(words: ProgrammeWords) -> Iterator[Event]:
    for one in words.programme.ranked:
        for number, visit in enumerate(one.visits, start=1):
            yield _visit(words, one, visit, number)
        if one.deadline is not None:
            yield _deadline(words, one)


def _visit(words: ProgrammeWords, one: RankedSite, visit: Visit, number: int) -> Event:
    say, year = words.words.say, words.programme.calendar_year(visit.year)
    days = one.site.work.days if one.site.work is not None else 0
    start = first_monday(year)
    end = min(start + timedelta(days=max(days, 1)), date(year + 1, 1, 1))
    told = (
        words.visit_line(one, visit),
        words.why(one),
        words.deadline(one),
        words.waiting(one),
        say("program_event_days", days=days) if days else "",
        say("program_advice"),
    )
    summary = say("program_event", year=year)
    where = words.dispensers(visit)
    named = f"{one.site.name}: {summary}{f', {where}' if where else ''}"
    return _event(words, f"{one.site.place}|visit {number}", (start, end), named, told)


def _deadline(words: ProgrammeWords, one: RankedSite) -> Event:
    day = date(one.deadline or 1, 12, 31)
    named = f"{one.site.name}: {words.words.say('program_event_deadline')}"
    told = (words.deadline(one), words.words.say("program_advice"))
    return _event(words, f"{one.site.place}|deadline", (day, day + timedelta(days=1)), named, told)


def _event(words: ProgrammeWords, name: str, days: tuple[date, date], summary: str, told: tuple[str, ...]) -> Event:
    from icalendar import Event

    programme, event = words.programme, Event()
    event.add("uid", str(uuid.uuid5(_NAMESPACE, f"programme|{programme.name}|{name}")))
    # no clock is read: the stamp is the first day of the first year
    event.add("dtstamp", datetime.combine(date(programme.first_year or 1, 1, 1), time(), UTC))
    event.add("dtstart", days[0])
    event.add("dtend", days[1])
    event.add("summary", plain_text(summary))
    event.add("description", plain_text("\n".join(text for text in told if text)))
    event.add("transp", "TRANSPARENT")
    return event
