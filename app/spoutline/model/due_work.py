"""The work due at all stations of the book: what is to be looked at where, and since when it is overdue."""

from __future__ import annotations

from datetime import date
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.inspection import DueItem
from spoutline.model.survey import Site


@frozen(kw_only=True)
class StationDue:
    """One item at a position of a station; ``counted_from`` is the day from which it is counted where never done.

    ``survey_id`` is the survey of the book that the position is of.
    """

    survey_id: int
    site: Site
    counted_from: date
    due: DueItem

    def overdue_days(self, on: date) -> int:
        """Return by how many days the item is overdue on a day; 0 on the day on which it is due, and before."""
        return max(0, (on - self.due.next_due).days)


class UncountedReason(StrEnum):
    """Why nothing can be said of positions."""

    NO_RECORD = "no_record"  # the book holds no day from which to count
    NO_SET = "no_set"
    FAULT = "fault"  # the survey cannot be read or planned


@frozen(kw_only=True)
class Uncounted:
    """Positions of a station that are left out of the list; ``told`` says what is wrong where it is a fault."""

    site: str
    positions: tuple[str, ...]
    reason: UncountedReason
    told: str = ""


@frozen(kw_only=True)
class DueWork:
    """What is due at all stations as of the day ``on``, longest overdue first, and what could not be counted."""

    on: date
    rows: tuple[StationDue, ...]
    uncounted: tuple[Uncounted, ...]

    @property
    def overdue(self) -> int:
        """How many rows are overdue."""
        return sum(row.overdue_days(self.on) > 0 for row in self.rows)
