"""What falls due at once after a drive-off or a replaced part, until a form or an inspection says that it was done."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from typing import Final

from spoutline.model.inspection import DueItem, InspectionCause, InspectionItem, InspectionItemId
from spoutline.model.inspection_needs import PositionNeeds
from spoutline.model.plan import PositionPlan
from spoutline.model.record import (
    ChangeReason,
    CommissioningRecord,
    InspectionEntry,
    ItemResult,
    ReadingVerdict,
    RecordedWork,
    RecordItem,
    RecordItemId,
    WearEntry,
)
from spoutline.rules.work.records import judged_entry, record_items

# which line of a signed form says that an item was done
_ON_THE_FORM: Final = {
    InspectionItemId.AFTER_BOND: RecordItemId.BOND,
    InspectionItemId.AFTER_LEAK: RecordItemId.LEAK,
    InspectionItemId.AFTER_SHUT_OFF: RecordItemId.SHUT_OFF,
    InspectionItemId.AFTER_BREAKAWAY: RecordItemId.BREAKAWAY,
}
_SOUND: Final = frozenset({ReadingVerdict.WITHIN, ReadingVerdict.UNUSUAL})


def lines_that_settle(plan: PositionPlan) -> tuple[RecordItem, ...]:
    """Return the lines of the form of a position that say that an item was done, with their limits."""
    return tuple(one for one in record_items(plan) if one.id in _ON_THE_FORM.values())


def open_after_work(
    needs: PositionNeeds, items: Iterable[InspectionItem], history: Sequence[RecordedWork]
) -> Iterator[DueItem]:
    """Yield what a replaced part or a drive-off at a position left to be done, due on the day of the work.

    An inspection that passed, or a signed and dated form whose line is inside its limits, settles an item: of a later
    day, or of the same day and recorded after the work.

    Parameters
    ----------
    needs
        The position, whose limits judge the forms.
    items
        What the position asks for, items of every cause among them.
    history
        What the book holds of the site, in the order in which it was recorded.
    """
    label = needs.position
    here = [entry for entry in history if entry.position == label]
    for item in items:
        due = _open_since(item, needs, here)
        if due is not None:
            yield DueItem(position=label, item=item, last_done=None, next_due=due)


def _open_since(item: InspectionItem, needs: PositionNeeds, here: Sequence[RecordedWork]) -> date | None:
    opened: date | None = None  # the day of the work that is not settled
    for place, entry in enumerate(here):
        if not isinstance(entry, WearEntry) or not _makes_due(item, entry):
            continue
        settled = any(
            _day(other) > entry.done_on or (_day(other) == entry.done_on and at > place)
            for at, other in enumerate(here)
            if _settles(other, item, needs)
        )
        if not settled:
            opened = entry.done_on if opened is None else max(opened, entry.done_on)
    return opened


def _makes_due(item: InspectionItem, entry: WearEntry) -> bool:
    if item.cause is InspectionCause.REPLACEMENT:
        return True
    return item.cause is InspectionCause.DRIVE_OFF and entry.reason is ChangeReason.DRIVE_OFF


def _day(entry: RecordedWork) -> date:
    return entry.done_on or date.min


def _settles(entry: RecordedWork, item: InspectionItem, needs: PositionNeeds) -> bool:
    if isinstance(entry, InspectionEntry):
        return entry.item is item.id and entry.result is ItemResult.PASSED
    line = _ON_THE_FORM.get(item.id)
    if not isinstance(entry, CommissioningRecord) or line is None or not entry.signed_by or entry.done_on is None:
        return False
    asked = next((one for one in needs.on_form if one.id is line), None)
    return asked is not None and asked.applies and judged_entry(asked, entry.entry(line), None) in _SOUND
