"""The sequence as a calendar file after RFC 5545: one event for each task, the same bytes for the same plan."""

from __future__ import annotations

import uuid
from collections.abc import Iterator
from datetime import date, datetime, time, timedelta

from spoutline.explain.conversion.story import ConversionStory
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_sequence import Moment, PlannedTask, Sequence
from spoutline.model.faults import InputFault, InputProblem

_OCTETS_PER_LINE = 75  # RFC 5545 section 3.1, without the line break
_DAY_STARTS = time(8, 0)
_ESCAPES = {"\\": "\\\\", ";": "\\;", ",": "\\,", "\n": "\\n", "\r": ""}
# names of events are made from the site and the task, so that a changed plan moves events instead of doubling them
_NAMESPACE = uuid.uuid5(uuid.NAMESPACE_DNS, "spoutline.invalid")


def conversion_calendar(conversion: SiteConversion, words: ConversionStory) -> bytes:
    """Return the tasks as a calendar of floating local times.

    Parameters
    ----------
    conversion
        With a first day; its survey names the site.
    words
        Sentences for descriptions.

    Raises
    ------
    InputFault
        Where nothing is planned, or no first day is known: a calendar needs dates.
    """
    sequence = conversion.sequence
    if sequence is None:
        raise _fault("conversion, sequence", "nothing is planned for this site, so there is no calendar")
    if sequence.first_day is None:
        raise _fault("conversion, sequence, start_date", "write the first day of the plan: a calendar needs dates")
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Spoutline//conversion plan//EN", "CALSCALE:GREGORIAN"]
    site = conversion.survey.site.name
    lines.append(f"X-WR-CALNAME:{escaped(words.say('report_title', site=site))}")
    for task in sequence.tasks:
        lines.extend(_event(task, sequence.first_day, sequence, conversion, words))
    lines.append("END:VCALENDAR")
    return "".join(f"{folded(line)}\r\n" for line in lines).encode("utf-8")


def escaped(text: str) -> str:
    """Return a TEXT value with backslash, semicolon, comma and line break escaped (RFC 5545 section 3.3.11)."""
    plain = "".join(_ESCAPES.get(character, character) for character in text)
    return "".join(character for character in plain if character == "\t" or character >= " ")


def folded(line: str) -> str:
    """Return a content line folded to 75 octets, never inside a character (RFC 5545 section 3.1)."""
    parts: list[str] = []
    current, size, most = "", 0, _OCTETS_PER_LINE
    for character in line:
        octets = len(character.encode("utf-8"))
        if size + octets > most:
            parts.append(current)
            current, size, most = "", 0, _OCTETS_PER_LINE - 1  # the folding blank counts
        current += character
        size += octets
    parts.append(current)
    return "\r\n ".join(parts)


def _event(
    task: PlannedTask, first_day: date, sequence: Sequence, conversion: SiteConversion, words: ConversionStory
) -> Iterator[str]:
    site = conversion.survey.site
    name = task.title if task.phase is None else f"{words.say('phase')} {task.phase}: {task.title}"
    yield "BEGIN:VEVENT"
    yield f"UID:{uuid.uuid5(_NAMESPACE, f'{site.name}|{site.address}|{task.id}')}"
    # no clock is read: the stamp is the first day of the plan
    yield f"DTSTAMP:{first_day:%Y%m%d}T000000Z"
    yield from _times(task, first_day)
    yield f"SUMMARY:{escaped(f'{site.name}: {name}')}"
    yield f"DESCRIPTION:{escaped(_description(task, words))}"
    if site.address.strip():
        yield f"LOCATION:{escaped(site.address.strip())}"
    yield f"CATEGORIES:{escaped(words.word(task.role))}"
    yield "TRANSP:TRANSPARENT" if task.waits_days else "TRANSP:OPAQUE"
    yield "END:VEVENT"


def _times(task: PlannedTask, first_day: date) -> Iterator[str]:
    start, finish = _clock(task.start, first_day), _clock(task.finish, first_day)
    if task.waits_days:
        last = max(finish.date(), start.date() + timedelta(days=1))
        yield f"DTSTART;VALUE=DATE:{start:%Y%m%d}"
        yield f"DTEND;VALUE=DATE:{last:%Y%m%d}"
        return
    yield f"DTSTART:{start:%Y%m%dT%H%M%S}"
    if finish > start:
        yield f"DTEND:{finish:%Y%m%dT%H%M%S}"


def _clock(moment: Moment, first_day: date) -> datetime:
    return datetime.combine(first_day, _DAY_STARTS) + timedelta(days=moment.day, minutes=moment.minute)


def _description(task: PlannedTask, words: ConversionStory) -> str:
    texts = [words.word(task.role)]
    if task.places:
        texts.append(", ".join(task.places))
    if task.critical:
        texts.append(words.say("critical"))
    texts.append(words.story.sourced(task.source, task.status))
    texts.append(words.say("foot"))
    return "\n".join(texts)


def _fault(field: str, wanted: str) -> InputFault:
    return InputFault((InputProblem("", field, "nothing", wanted),))
