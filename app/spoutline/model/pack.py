"""The installer's pack: the boxes of the van, the tools, and what a person enters about the job."""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from typing import Annotated, Self

from pydantic import ConfigDict, Field, StringConstraints, model_validator

from spoutline.frozen import frozen
from spoutline.model.part import Part
from spoutline.model.plain_values import PlainValues


class VanBox(StrEnum):
    """How parts are sorted in the van: by the way they are carried and looked for."""

    HOSES = "hoses"
    COUPLINGS = "couplings"  # breakaways, swivels
    NOZZLES = "nozzles"
    FITTINGS = "fittings"  # adaptors, splitters, caps, clamps
    CONSUMABLES = "consumables"  # sealant, labels


class Tool(StrEnum):
    """What a job needs besides parts."""

    LOCK_OUT_KIT = "lock_out_kit"
    BARRIERS = "barriers"
    EXTINGUISHER = "extinguisher"
    SPILL_KIT = "spill_kit"
    METAL_CONTAINER = "metal_container"
    METAL_FUNNEL = "metal_funnel"
    WRENCHES = "wrenches"
    OHMMETER = "ohmmeter"
    CALLIPER = "calliper"
    TAPE_MEASURE = "tape_measure"
    TEST_CAN = "test_can"
    GLOVES = "gloves"
    GAS_TESTER = "gas_tester"
    DEF_CONTAINER = "def_container"
    PLATFORM = "platform"
    FLOATING_BOOM = "floating_boom"


Words = Annotated[str, StringConstraints(strip_whitespace=True, max_length=200)]
LongWords = Annotated[str, StringConstraints(strip_whitespace=True, max_length=2000)]


class _Document(PlainValues):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class Contact(_Document):
    """Somebody to call on the day."""

    role: Words = Field(min_length=1, description="What the person is to the job.")
    name: Words = Field(min_length=1, description="Name of the person.")
    telephone: Words = Field("", description="Telephone number.")


class PackJob(_Document):
    """What the cover of a pack says besides the survey."""

    first_day: date | None = Field(None, description="First day of work, YYYY-MM-DD.")
    last_day: date | None = Field(None, description="Last day of work, YYYY-MM-DD.")
    authority: Words = Field("", description="Authority having jurisdiction, as the installer must ask it.")
    adopted_codes: Words = Field("", description="Codes and editions adopted at this place.")
    permit_number: Words = Field("", description="Number of the permit.")
    contacts: tuple[Contact, ...] = Field((), max_length=12, description="People to call.")
    notes: LongWords = Field("", description="Anything else for the cover.")

    @model_validator(mode="after")
    def _days_in_order(self) -> Self:
        if self.first_day is not None and self.last_day is not None and self.last_day < self.first_day:
            raise ValueError(f"last_day ({self.last_day}) must not come before first_day ({self.first_day})")
        return self


@frozen(kw_only=True)
class PickLine:
    """A part to load, how many, and for which positions with how many each."""

    part: Part
    quantity: int
    positions: tuple[tuple[str, int], ...]


@frozen(kw_only=True)
class Kit:
    """What some positions take alike, of every part how many; one is packed for each of them."""

    parts: tuple[tuple[Part, int], ...]
    positions: tuple[str, ...]


@frozen(kw_only=True)
class BoxList:
    """What lies in one box of the van."""

    box: VanBox
    lines: tuple[PickLine, ...]
