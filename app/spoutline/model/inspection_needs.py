"""What inspections the positions of a station ask for, whatever the day: all that days due are counted from."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.check import Bound
from spoutline.model.inspection import InspectionItemId
from spoutline.model.record import RecordItem


@frozen(kw_only=True)
class PositionNeeds:
    """What one position asks for.

    ``asked`` are the items of every cause; None where the position has no set. ``urea`` bounds the urea content of a
    position of DEF, percent by mass. ``on_form`` are the lines of a commissioning form whose entries settle an item.
    """

    position: str
    asked: frozenset[InspectionItemId] | None
    urea: tuple[Bound, Bound] | None = None
    on_form: tuple[RecordItem, ...] = ()
