"""Calendar files after RFC 5545, written by the icalendar library; the same bytes for the same events."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from icalendar import Event


def calendar_bytes(name: str, product: str, events: Iterable[Event]) -> bytes:
    """Return a calendar.

    Parameters
    ----------
    name
        What a calendar program calls it.
    product
        What made it, for ``PRODID``.
    events
        In the order in which they stand in the file.
    """
    from icalendar import Calendar, vText

    calendar = Calendar()
    calendar.add("version", "2.0")
    calendar.add("prodid", f"-//Spoutline//{product}//EN")
    calendar.add("calscale", "GREGORIAN")
    calendar.add("x-wr-calname", vText(plain_text(name)))
    for event in events:
        calendar.add_component(event)
    return bytes(calendar.to_ical(sorted=False))


def plain_text(text: str) -> str:
    """Return a text without the control characters that a calendar must not hold; line breaks and tabs stay."""
    return "".join(one for one in text.replace("\r", "") if one in "\t\n" or one >= " ")
