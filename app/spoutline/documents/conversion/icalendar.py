"""The sequence as a calendar file after RFC 5545: one event for each task, the same bytes for the same plan."""

from __future__ import annotations

import uuid
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING

from spoutline.documents.calendar import calendar_bytes, plain_text
from spoutline.explain.conversion.case_words import titled
from spoutline.explain.conversion.story import ConversionStory
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_sequence import Deadline, Moment, PlannedTask
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.removal_standing import Standing
from spoutline.model.survey import Survey

if TYPE_CHECKING:
    from icalendar import Event

_DAY_STARTS = time(8, 0)
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
    first = conversion.survey.conversion.sequence.start_date
    if sequence is None and first is not None and conversion.standing.standing is Standing.NOT_ALLOWED:
        title = titled(words.say("report_title", site=conversion.survey.site.name), conversion, words)
        return calendar_bytes(title, "conversion plan", (_retention(first, conversion, words),))
    if sequence is None:
        raise _fault("conversion, sequence", "nothing is planned for this site, so there is no calendar")
    if sequence.first_day is None:
        raise _no_first_day()
    name = titled(words.say("report_title", site=conversion.survey.site.name), conversion, words)
    first_day = sequence.first_day
    events = [_event(task, first_day, conversion, words) for task in sequence.tasks]
    events += [_deadline_event(one, first_day, conversion, words) for one in sequence.deadlines]
    return calendar_bytes(name, "conversion plan", events)


def require_first_day(survey: Survey) -> None:
    """Raise ``InputFault`` where no calendar could be made of the survey's conversion, before it is worked out."""
    if survey.conversion.sequence.start_date is None:
        raise _no_first_day()


def _no_first_day() -> InputFault:
    return _fault("conversion, sequence, start_date", "write the first day of the plan: a calendar needs dates")


def _deadline_event(one: Deadline, first_day: date, conversion: SiteConversion, words: ConversionStory) -> Event:
    day = first_day + timedelta(days=one.day)
    text = "\n".join((words.deadline(one, first_day), words.story.sourced(one.source, one.status), words.say("foot")))
    return _day_event(f"deadline {one.kind}", day, words.word(one.kind).format(days=one.days), text, conversion)


def _retention(first_day: date, conversion: SiteConversion, words: ConversionStory) -> Event:
    """Return what a calendar says where recovery has to stay: that nothing is planned, on what grounds."""
    standing = conversion.standing
    texts = [words.standing(standing), *map(words.ground, standing.grounds), words.what_to_do(standing.standing)]
    return _day_event("retention", first_day, words.say("retention"), "\n".join(texts), conversion)


def _day_event(name: str, day: date, summary: str, description: str, conversion: SiteConversion) -> Event:
    """Return an event of a whole day, made of the site and ``name``."""
    from icalendar import Event

    site = conversion.survey.site
    event = Event()
    event.add("uid", str(uuid.uuid5(_NAMESPACE, f"{_named(conversion)}|{site.address}|{name}")))
    event.add("dtstamp", datetime.combine(conversion.survey.conversion.sequence.start_date or day, time(), UTC))
    event.add("dtstart", day)
    event.add("dtend", day + timedelta(days=1))
    event.add("summary", plain_text(f"{_named(conversion)}: {summary}"))
    event.add("description", plain_text(description))
    event.add("transp", "TRANSPARENT")
    return event


def _event(task: PlannedTask, first_day: date, conversion: SiteConversion, words: ConversionStory) -> Event:
    from icalendar import Event

    site = conversion.survey.site
    name = words.task(task)
    event = Event()
    event.add("uid", str(uuid.uuid5(_NAMESPACE, f"{_named(conversion)}|{site.address}|{task.id}")))
    # no clock is read: the stamp is the first day of the plan
    event.add("dtstamp", datetime.combine(first_day, time(), UTC))
    _add_times(event, task, first_day)
    event.add("summary", plain_text(f"{_named(conversion)}: {name}"))
    event.add("description", plain_text(_description(task, words)))
    if site.address.strip():
        event.add("location", plain_text(site.address.strip()))
    event.add("categories", [words.word(task.role)])
    event.add("transp", "TRANSPARENT" if task.waits_days else "OPAQUE")
    return event


def _named(conversion: SiteConversion) -> str:
    """Return the site, with the case that the plan is of: its events never take the place of the survey's."""
    name = conversion.survey.site.name
    return name if conversion.case is None else f"{name} ({conversion.case.name})"


def _add_times(event: Event, task: PlannedTask, first_day: date) -> None:
    start, finish = _clock(task.start, first_day), _clock(task.finish, first_day)
    if task.waits_days:
        event.add("dtstart", start.date())
        event.add("dtend", max(finish.date(), start.date() + timedelta(days=1)))
        return
    event.add("dtstart", start)
    if finish > start:
        event.add("dtend", finish)


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
