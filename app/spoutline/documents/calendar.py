"""Calendar files after RFC 5545, written by the icalendar library; the same bytes for the same events."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from icalendar import Event, vText


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
    from icalendar import Calendar

    calendar = Calendar()
    calendar.add("version", "2.0")
    calendar.add("prodid", f"-//Spoutline//{product}//EN")
    calendar.add("calscale", "GREGORIAN")
    calendar.add("x-wr-calname", plain_text(name))
    for event in events:
        calendar.add_component(event)
    return bytes(calendar.to_ical(sorted=False))


def plain_text(text: str) -> vText:
    """Return a text as a property value, without the control characters that a calendar must not hold.

    Line breaks and tabs stay. The library takes a written backslash and N for a line break; here it stays what it is
    (RFC 5545 section 3.3.11).
    """
    from icalendar import vText

    class Text(vText):
        def to_ical(self) -> bytes:
            return _escaped(str(self)).encode("utf-8")  # RFC 5545 section 3.1.4

    return Text("".join(one for one in text.replace("\r", "") if one in "\t\n" or one >= " "))


def _escaped(text: str) -> str:
    for plain in ("\\", ";", ","):
        text = text.replace(plain, f"\\{plain}")
    return text.replace("\n", "\\n")
