"""What hangs at a position today: catalogue numbers, or free text with the attributes that matter."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Self

from pydantic import (
    BaseModel,
    ConfigDict,
    Field,
    SerializerFunctionWrapHandler,
    StringConstraints,
    model_serializer,
    model_validator,
)

from spoutline.model.liquid import ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.part import (
    AdaptorData,
    BreakawayData,
    HoseData,
    NozzleData,
    PartKind,
    SwivelData,
)
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard
from spoutline.model.port_size_field import SIZE_MEANING, PortSize

HANGING_KINDS = (
    PartKind.NOZZLE,
    PartKind.SWIVEL,
    PartKind.SWIVEL_BREAKAWAY,
    PartKind.CURB_HOSE,
    PartKind.WHIP_HOSE,
    PartKind.BREAKAWAY,
    PartKind.ADAPTOR,
    PartKind.SPLITTER,
)

_Text = Annotated[str, StringConstraints(strip_whitespace=True, max_length=200)]
_Number = Annotated[str, StringConstraints(strip_whitespace=True, max_length=60)]


class InstalledCondition(StrEnum):
    """What an inspection of an installed part found."""

    GOOD = "good"
    WORN = "worn"
    DAMAGED = "damaged"
    UNKNOWN = "unknown"


class _Document(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", allow_inf_nan=False)


class InstalledPort(_Document):
    """One end of an installed part."""

    thread: ThreadStandard = Field(description="Thread standard of this end.")
    size: PortSize = Field(description=SIZE_MEANING)
    gender: Gender = Field(description="Gender of the thread.")
    path: FlowPath = Field(description="Path of this end.")

    @property
    def port(self) -> Port:
        """The end as the joint rules know it."""
        return Port(self.thread, self.size, self.gender, self.path)


class InstalledFigures(_Document):
    """Everything that a part must state before it can be re-checked in a new set; SI, the unit in the name."""

    inlet: InstalledPort = Field(description="The end towards the dispenser.")
    outlet: InstalledPort | None = Field(None, description="The end towards the vehicle; empty for a nozzle.")
    schemes: tuple[ListingScheme, ...] = Field((), description="Whose listings the part carries.")
    wetted_materials: tuple[Material, ...] = Field(min_length=1, max_length=40, description="Materials that get wet.")
    temperature_minimum_c: float = Field(ge=-100, le=100, description="Lowest temperature, degrees Celsius.")
    temperature_maximum_c: float = Field(ge=-100, le=200, description="Highest temperature, degrees Celsius.")
    maximum_pressure_pa: float = Field(gt=0, le=1e8, description="Pressure rating, Pa.")
    flow_coefficient_kv: float | None = Field(None, gt=0, le=1e4, description="Kv, m3/h at 1 bar; not for hoses.")
    mass_kg: float = Field(gt=0, le=200, description="Mass, kg.")
    resistance_ohm: float | None = Field(None, ge=0, description="Resistance from end to end, ohm.")
    length_m: float = Field(ge=0, le=60, description="Made-up length, m.")
    pull_strength_n: float | None = Field(None, gt=0, le=1e6, description="Pull that the part bears, N.")
    nozzle: NozzleData | None = None
    hose: HoseData | None = None
    breakaway: BreakawayData | None = None
    swivel: SwivelData | None = None
    adaptor: AdaptorData | None = None

    @model_serializer(mode="wrap")
    def _same_text_every_time(self, handler: SerializerFunctionWrapHandler) -> dict[str, object]:
        """Write sets sorted: their own order changes from run to run."""
        written: dict[str, object] = handler(self)
        for block, name in (("nozzle", "liquids"), ("breakaway", "placements")):
            data = written.get(block)
            if isinstance(data, dict):
                data[name] = sorted(data[name])
        return written


class InstalledPart(_Document):
    """One part of today's hanging hardware; dispenser first in the list of a position."""

    kind: PartKind = Field(description="Kind of the part: hanging hardware only.")
    number: _Number = Field("", description="Catalogue number; empty where the part is described instead.")
    description: _Text = Field("", description="Free text where the part is not in the catalogue.")
    path: FlowPath | None = Field(None, description="Path of a described part, where known.")
    listings: tuple[ListingClass, ...] | None = Field(None, description="Listing classes on the plate, where known.")
    figures: InstalledFigures | None = Field(
        None, description="All figures of a described part; without them it cannot be re-checked, so it cannot stay."
    )
    age_years: float | None = Field(None, ge=0, le=100, description="Age, years; empty where unknown.")
    condition: InstalledCondition = Field(InstalledCondition.UNKNOWN, description="What an inspection found.")

    @model_validator(mode="after")
    def _is_named(self) -> Self:
        if self.kind not in HANGING_KINDS:
            raise ValueError(f"kind {self.kind.value!r} is no hanging hardware: {', '.join(HANGING_KINDS)}")
        if not self.number and not self.description:
            raise ValueError("an installed part needs a catalogue number or a description")
        if self.number and self.figures is not None:
            raise ValueError("figures belong to a described part; a catalogue number brings its own")
        return self
