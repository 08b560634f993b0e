"""When the parts of an option can be there: the longest lead time among its lines, counted from a day.

A lead time is a number of calendar days from the order to the delivery, as makers' lists state it (common practice, no
source); no week-end or holiday is left out. The plan of a conversion counts it so too.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef
from spoutline.model.quoted_option import QuotedLine


@frozen(kw_only=True)
class Delivery:
    """``lead_days`` is the longest lead time, ``waits_for`` the parts that have it, ``earliest`` the day it ends."""

    lead_days: int
    waits_for: tuple[PartRef, ...]
    earliest: date


def delivery_of(lines: Sequence[QuotedLine], ordered_on: date) -> Delivery | None:
    """Return when all lines can be there if ordered on a day; None without lines, or past the last day there is."""
    if not lines:
        return None
    days = max(line.lead_time_days for line in lines)
    try:
        earliest = ordered_on + timedelta(days=days)
    except OverflowError:
        return None
    waits_for = tuple(line.part for line in lines if line.lead_time_days == days)
    return Delivery(lead_days=days, waits_for=waits_for, earliest=earliest)
