"""What a price rests on, whether a part of the catalogue was made or only its row is looked at."""

from __future__ import annotations

import math
from typing import Protocol

from spoutline.frozen import frozen
from spoutline.model.part import PartKind
from spoutline.model.part_columns import ENDS, NO_PORT, PartColumns
from spoutline.model.part_ref import PartRef


class Sellable(Protocol):
    """A part as a price list, a discount and an article know it."""

    @property
    def ref(self) -> PartRef:
        """Maker and number."""
        ...

    @property
    def kind(self) -> PartKind:
        """The kind of the part."""
        ...

    @property
    def is_included(self) -> bool:
        """Whether it comes in an article under another number, which carries the price of all."""
        ...

    def price_minor(self, currency: str) -> int | None:
        """Return the plain price of the catalogue in minor units of ``currency``; None where it has none."""
        ...


@frozen
class PartRow:
    """A part of some columns that was not made: pricing ten thousand parts makes none of them."""

    columns: PartColumns
    row: int

    @property
    def ref(self) -> PartRef:
        """Maker and number."""
        return self.columns.ref_at(self.row)

    @property
    def kind(self) -> PartKind:
        """The kind of the part."""
        return self.columns.kind

    @property
    def is_included(self) -> bool:
        """Whether it comes in an article: its end towards the dispenser lies inside one."""
        port = int(self.columns.arrays[ENDS[0]][self.row])
        return port != NO_PORT and bool(self.columns.ports[port].made_up_in)

    def price_minor(self, currency: str) -> int | None:
        """Return the plain price of the catalogue in minor units of ``currency``; None where it has none."""
        price = float(self.columns.price_minor(currency)[self.row])
        return None if math.isnan(price) else int(price)
