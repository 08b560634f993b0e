"""The day on which recorded work was done: records tell what happened, so it cannot lie ahead."""

from __future__ import annotations

from datetime import date, datetime, timedelta

from spoutline.model.worded import Worded

_FARTHEST_AHEAD = timedelta(hours=14)  # of universal time: no place on earth has a later day than UTC+14


def latest_day(now: datetime) -> date:
    """Return the latest day that it is anywhere on earth at ``now``, in universal time."""
    return (now.replace(tzinfo=None) + _FARTHEST_AHEAD).date()


def wanted_day(latest: date) -> Worded:
    """Return what would be right in the place of a day after ``latest``."""
    return Worded("the day on which the work was done, not after {latest}", latest=latest.isoformat())
