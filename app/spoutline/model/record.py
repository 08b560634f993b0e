"""What an installer writes down at a position: readings, results, parts as built, photos, and who answers for it."""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from typing import Annotated, Literal

from pydantic import ConfigDict, Field, StringConstraints

from spoutline.frozen import frozen
from spoutline.model.inspection import InspectionItemId
from spoutline.model.limit import LimitStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import PlainValues
from spoutline.model.quantity import Dimension

Words = Annotated[str, StringConstraints(strip_whitespace=True, max_length=200)]
LongWords = Annotated[str, StringConstraints(strip_whitespace=True, max_length=4000)]
Name = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=60)]
Digest = Annotated[str, StringConstraints(pattern=r"^[0-9a-f]{64}$")]


class RecordItemId(StrEnum):
    """What is measured or tried before a position goes into service, in the order of the work."""

    BREAKAWAY = "breakaway"
    CLEARANCE = "clearance"
    SPOUT = "spout"
    BOND = "bond"
    VAPOUR_CLOSING = "vapour_closing"
    PRESSURE_DECAY = "pressure_decay"
    VENT_VALVE = "vent_valve"
    LEAK = "leak"
    SHUT_OFF = "shut_off"
    ATTITUDE = "attitude"
    LATCH = "latch"
    NO_PRESSURE = "no_pressure"
    LEVER_BEFORE = "lever_before"
    LEVER_PREPAID = "lever_prepaid"
    LEVER_RETURNED = "lever_returned"
    FLOW = "flow"
    CONCENTRATION = "concentration"


READING_DIMENSIONS = {
    RecordItemId.CLEARANCE: Dimension.LENGTH,
    RecordItemId.SPOUT: Dimension.DIAMETER,
    RecordItemId.BOND: Dimension.RESISTANCE,
    RecordItemId.FLOW: Dimension.FLOW,
    RecordItemId.CONCENTRATION: Dimension.PERCENT,
}


class ItemResult(StrEnum):
    """How a trial went."""

    PASSED = "passed"
    FAILED = "failed"
    NOT_DONE = "not_done"
    NOT_APPLICABLE = "not_applicable"


class ReadingVerdict(StrEnum):
    """What the program says of an entry at once."""

    WITHIN = "within"
    UNUSUAL = "unusual"  # inside the limits, far from what was computed
    OUTSIDE = "outside"  # outside a limit, or failed
    OPEN = "open"  # nothing was entered, or not done


class ChangeReason(StrEnum):
    """Why another part was fitted."""

    NOT_ON_VAN = "not_on_van"
    DAMAGED = "damaged"
    WRONG_PART = "wrong_part"
    WISH_OF_CUSTOMER = "wish_of_customer"
    DRIVE_OFF = "drive_off"
    WEAR = "wear"
    LEAK = "leak"
    NOT_STATED = "not_stated"  # a form was kept without one; nobody chooses it


# inspections that take a resistance
MEASURED_ITEMS = frozenset({InspectionItemId.CONTINUITY, InspectionItemId.AFTER_BOND})
WEAR_REASONS = (ChangeReason.DRIVE_OFF, ChangeReason.WEAR, ChangeReason.LEAK, ChangeReason.DAMAGED)
SWAP_REASONS = (
    ChangeReason.NOT_ON_VAN,
    ChangeReason.DAMAGED,
    ChangeReason.WRONG_PART,
    ChangeReason.WISH_OF_CUSTOMER,
)


@frozen(kw_only=True)
class ReadingLimit:
    """One side of what a reading must keep, SI, with its source."""

    value: float
    source: str
    status: LimitStatus = LimitStatus.VERIFIED


@frozen(kw_only=True)
class RecordItem:
    """What is asked at a position.

    With a ``dimension`` a reading is asked, ``expected`` is what was computed and the limits bound it, all in SI;
    without one only the result of a trial is asked. ``applies`` is False where the set has nothing of the kind.
    """

    id: RecordItemId
    dimension: Dimension | None
    expected: float | None
    lower: ReadingLimit | None
    upper: ReadingLimit | None
    applies: bool


class _Document(PlainValues):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class PartChange(_Document):
    """What was fitted in place of a planned part: another part, several where an adaptor came along, or none."""

    planned: PartRef = Field(description="Part of the plan.")
    fitted: tuple[PartRef, ...] = Field(max_length=6, description="Parts fitted, dispenser first; empty: left out.")
    reason: ChangeReason = Field(description="Why.")
    note: Words = ""


class PartMark(_Document):
    """What is stamped on a part as fitted, and how long its maker lets it serve; ``part`` counts the planned parts."""

    part: int = Field(ge=1, le=40, description="Place of the planned part in the chain, counted from the dispenser.")
    serial: Words = Field("", description="Serial number or date code.")
    service_until: date | None = Field(None, description="Last day of its service life, YYYY-MM-DD.")


class RecordEntry(_Document):
    """What was entered for one item; the reading is SI in the dimension of the item."""

    item: RecordItemId
    reading: float | None = Field(None, description="Reading, SI.")
    over_range: bool = Field(
        False, description="The meter showed an open circuit, or more than `reading`; such an entry is out of limit."
    )
    result: ItemResult | None = Field(None, description="Result of the trial.")
    note: Words = ""


class UnreadField(_Document):
    """A field of a form that could not be read, as it was written: it is asked for again."""

    field: Words = Field(description="Name of the field in the form.")
    value: LongWords = Field("", description="What was written there.")
    wanted: LongWords = Field(description="What would be right.")


class PhotoNote(_Document):
    """A photo that belongs to a record; the picture itself lies beside it, known by its SHA-256."""

    name: Words = Field(min_length=1, description="Name of the file.")
    sha256: Digest
    caption: Words = ""


class CommissioningRecord(_Document):
    """A commissioning form as filled in."""

    format: Literal["spoutline-commissioning"] = "spoutline-commissioning"
    version: Literal[1] = 1
    site: Name
    position: Name
    plan_revision: Annotated[str, StringConstraints(pattern=r"^[0-9a-f]{16}$")] = Field(
        description="Fingerprint of the survey that the plan was made from."
    )
    parts: tuple[PartRef, ...] = Field((), max_length=40, description="Parts as planned, dispenser first.")
    changes: tuple[PartChange, ...] = Field((), max_length=40)
    marks: tuple[PartMark, ...] = Field((), max_length=40, description="Serial numbers, date codes, service lives.")
    entries: tuple[RecordEntry, ...] = Field((), max_length=20)
    photos: tuple[PhotoNote, ...] = Field((), max_length=60)
    done_on: date | None = Field(None, description="Day of the work, YYYY-MM-DD.")
    done_by: Words = Field("", description="Who did the work.")
    licence: Words = Field("", description="License of who did the work.")
    instruments: Words = Field("", description="Instruments used, with their numbers.")
    signed_by: Words = Field("", description="Name typed as signature.")
    remarks: LongWords = ""
    unread: tuple[UnreadField, ...] = Field((), max_length=400, description="Fields of the form that are asked again.")
    catalogue_edition: Words = Field("", description="Catalog that the parts are of; empty in records of old.")
    found: tuple[LongWords, ...] = Field((), max_length=80, description="What was found wrong when it was recorded.")

    @property
    def is_filled(self) -> bool:
        """True where somebody wrote into the form; the page of a position where nobody was is no record."""
        return bool(self.entries or self.changes or self.marks or self.done_on or self.done_by or self.unread)

    @property
    def has_faults(self) -> bool:
        """Whether a trial failed, or something was found wrong when it was recorded."""
        return bool(self.found) or any(entry.result is ItemResult.FAILED for entry in self.entries)

    @property
    def as_built(self) -> tuple[PartRef, ...]:
        """Parts as fitted, dispenser first."""
        return tuple(part for planned in self.parts for part in self._fitted_for(planned))

    def mark(self, place: int) -> PartMark:
        """Return what is stamped on the part at a place of the planned chain, counted from 1; empty for nothing."""
        return next((mark for mark in self.marks if mark.part == place), PartMark(part=place))

    def _fitted_for(self, planned: PartRef) -> tuple[PartRef, ...]:
        return next((change.fitted for change in self.changes if change.planned.names(planned)), (planned,))

    def entry(self, item: RecordItemId) -> RecordEntry | None:
        """Return what was entered for ``item``; None where nothing was."""
        return next((entry for entry in self.entries if entry.item is item), None)


class WearEntry(_Document):
    """One replacement after commissioning: what, when and why."""

    site: Name
    position: Name
    done_on: date
    removed: PartRef = Field(description="Part taken off.")
    fitted: PartRef | Literal[""] = Field("", description="Part put on; empty where the position was closed.")
    reason: ChangeReason
    note: Words = ""
    done_by: Words = ""
    catalogue_edition: Words = Field("", description="Catalog that the parts are of; empty in entries of old.")
    found: tuple[LongWords, ...] = Field((), max_length=80, description="What was found wrong when it was recorded.")


class InspectionEntry(_Document):
    """One inspection as done: which item, when, by whom, with what result."""

    site: Name
    position: Name
    item: InspectionItemId
    done_on: date
    result: ItemResult = ItemResult.PASSED
    note: Words = ""
    done_by: Words = ""
    instruments: Words = Field("", description="Instruments used, with their numbers.")
    reading: float | None = Field(None, description="Reading, SI, of an item that takes one.")
    over_range: bool = Field(False, description="The meter showed an open circuit, or more than `reading`.")


# what the book keeps of a position, each as it was entered
RecordedWork = CommissioningRecord | WearEntry | InspectionEntry


@frozen(kw_only=True)
class ReadingBand:
    """How far from its computed value a reading may lie before it is unusual, as a ratio of the two."""

    item: RecordItemId
    far_ratio: float
    source: str
    status: LimitStatus


@frozen(kw_only=True)
class JudgedEntry:
    """An item with what was entered and what the program says of it."""

    item: RecordItem
    entry: RecordEntry | None
    verdict: ReadingVerdict


@frozen(kw_only=True)
class JudgedRecord:
    """A record with every item judged; ``faults`` says in words what else is wrong with it."""

    record: CommissioningRecord
    entries: tuple[JudgedEntry, ...]
    faults: tuple[str, ...] = ()

    @property
    def is_clear(self) -> bool:
        """True where nothing is out of limit, open, or asked for again."""
        sound = (ReadingVerdict.WITHIN, ReadingVerdict.UNUSUAL)
        return not (self.record.unread or self.faults) and all(one.verdict in sound for one in self.entries)
