"""The stock of a firm by place: every movement is an entry that is added and never changed; stock is their sum."""

from __future__ import annotations

from datetime import datetime
from enum import StrEnum
from typing import Annotated, Final, Self

from pydantic import ConfigDict, Field, StringConstraints, model_validator

from spoutline.frozen import frozen
from spoutline.model.field_faults import fault_in
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import PlainValues

MOST_PIECES: Final = 100_000
Words = Annotated[str, StringConstraints(strip_whitespace=True, max_length=200)]
PlaceName = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=60)]
CountName = Annotated[str, StringConstraints(strip_whitespace=True, max_length=60)]
Mark = Annotated[str, StringConstraints(strip_whitespace=True, max_length=20)]


class Movement(StrEnum):
    """What an entry tells."""

    COUNTED = "counted"  # so many pieces were counted; those of one count add up
    TAKEN = "taken"  # for a job
    RECEIVED = "received"  # from a supplier, or from another place
    RETURNED = "returned"  # from a job
    UNDONE = "undone"  # another entry counts no more


MOVED: Final = (Movement.COUNTED, Movement.RECEIVED, Movement.TAKEN, Movement.RETURNED)


class _Document(PlainValues):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)


class StockEntry(_Document):
    """One movement of a part at a place."""

    place: PlaceName = Field(description="Van or store, as the firm names it.")
    movement: Movement
    part: PartRef
    quantity: int = Field(1, ge=0, le=MOST_PIECES, description="Pieces; none is counted only.")
    count: CountName = Field("", description="The count that the pieces were counted in.")
    lot: Mark = Field("", description="Batch or lot number of the package.")
    serial: Mark = Field("", description="Serial number of the piece.")
    job: Words = Field("", description="The site that pieces were taken for, or returned from.")
    done_by: Words = ""
    note: Words = ""
    undoes: int | None = Field(None, ge=1, description="The entry that counts no more.")

    @model_validator(mode="after")
    def _is_whole(self) -> Self:
        if (self.movement is Movement.UNDONE) != (self.undoes is not None):
            raise fault_in("undoes", repr(self.undoes), "an entry that undoes names the one that counts no more")
        if self.quantity == 0 and self.movement is not Movement.COUNTED:
            raise fault_in("quantity", "0", "a whole number from 1 on is needed; none is counted only")
        if bool(self.count) != (self.movement is Movement.COUNTED) and self.movement is not Movement.UNDONE:
            raise fault_in("count", repr(self.count), "counted pieces name their count, and no others")
        return self


@frozen(kw_only=True)
class StoredEntry:
    """An entry as the book holds it; ``recorded_at`` is in UTC, ``is_undone`` where a later one undoes it."""

    id: int
    entry: StockEntry
    recorded_at: datetime
    is_undone: bool = False


class StockLevel(_Document):
    """How many pieces of a part a place keeps, and how many are ordered at once."""

    place: PlaceName
    part: PartRef
    least: int = Field(ge=0, le=MOST_PIECES, description="Pieces below which more are ordered.")
    lot: int = Field(1, ge=1, le=MOST_PIECES, description="Pieces of one order: a multiple of it is ordered.")


@frozen(kw_only=True)
class StockBalance:
    """What the book knows of a part at a place; ``count`` is the count that it was counted in last, empty for none."""

    place: str
    part: PartRef
    quantity: int
    count: str
    level: StockLevel | None = None


@frozen(kw_only=True)
class StockLine:
    """A part at a place, held against what a job takes.

    ``needed`` are the pieces that the job needs of all places together, ``taken`` those that entries of the job took
    already, ``takes`` those still to come from this place, ``short`` those that no place has (told at the first place
    alone), ``order`` what is to be ordered for the place.
    """

    balance: StockBalance
    needed: int
    takes: int
    short: int
    order: int
    taken: int = 0

    @property
    def too_many(self) -> int:
        """Pieces that the job took and does not need, as after a change of its survey: they come back."""
        return max(0, self.taken - self.needed)


@frozen(kw_only=True)
class UncountedLine:
    """A part at a place that a count did not find: ``quantity`` lies there by the book, ``came`` since it began."""

    part: PartRef
    quantity: int
    came: int
