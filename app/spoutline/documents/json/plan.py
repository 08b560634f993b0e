"""The plan as a stable JSON document: what `plan --json` prints and `schema --output` describes.

Every number is SI with the unit in its name or in a ``unit`` beside it. Fields are added in later versions, never
renamed; ``version`` counts changes that a reader must know of.
"""

from __future__ import annotations

from typing import Literal

from pydantic import Field, SerializerFunctionWrapHandler, model_serializer

from spoutline.documents.json.head import ProvenanceRecord, Record
from spoutline.model.agreed_sets import SetsFrom
from spoutline.model.check import CheckId, Outcome
from spoutline.model.finding import Severity, SubjectKind, Verdict
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.part import HoseConstruction, NozzleOperation, NozzleService, PartKind, PartStatus, Placement
from spoutline.model.plan import AlternativeKind, PlanStatus
from spoutline.model.port import FlowPath, Gender, Seal, ThreadStandard
from spoutline.model.requirement import RequirementId, Slot, WayOut
from spoutline.rules.declared.rule_ids import AccessoryReason


class FactRecord(Record):
    """A named figure or word behind a finding or line; ``unit`` is empty for words and bare numbers."""

    name: str
    value: float | str
    unit: str


class PortRecord(Record):
    """One end of a part."""

    thread: ThreadStandard
    size: str
    gender: Gender
    path: FlowPath


class PartAttributes(Record):
    """What the catalogue states about a part; a field is left out for kinds that do not have it.

    null means that the maker states nothing.
    """

    status: PartStatus
    inlet: PortRecord | None
    outlet: PortRecord | None
    listings: tuple[ListingClass, ...]
    schemes: tuple[ListingScheme, ...]
    wetted_materials: tuple[Material, ...]
    temperature_minimum_c: float
    temperature_maximum_c: float
    maximum_pressure_pa: float
    flow_coefficient_kv: float | None = Field(description="m3/h at 1 bar; null for hoses, computed from their bore.")
    mass_kg: float
    resistance_ohm: float | None
    length_m: float
    pull_strength_n: float | None
    lead_time_days: int
    serial_or_date_code_marked: bool | None = None
    offered_for_def: bool | None = None
    tightening_torque_n_m: float | None = None
    # nozzle
    operation: NozzleOperation | None = None
    service: NozzleService | None = None
    liquids: tuple[LiquidFamily, ...] | None = None
    spout_outside_diameter_m: float | None = None
    spout_straight_length_m: float | None = None
    spring_distance_m: float | None = None
    hold_open: bool | None = None
    no_pressure_device: bool | None = None
    attitude_device: bool | None = None
    bellows: bool | None = None
    misfill_interlock: bool | None = None
    enhanced_conventional: bool | None = None
    def_zone_evaluated: bool | None = None
    minimum_flow_m3_s: float | None = None
    maximum_flow_m3_s: float | None = None
    opening_pressure_pa: float | None = None
    # hose
    construction: HoseConstruction | None = None
    bore_m: float | None = None
    outside_diameter_m: float | None = None
    minimum_bend_radius_m: float | None = None
    mass_kg_m: float | None = None
    resistance_ohm_m: float | None = None
    permeation_kg_m2_s: float | None = None
    low_permeation: bool | None = None
    built_in_swivel: bool | None = None
    inner_tube_bore_m: float | None = None
    inner_tube_outside_diameter_m: float | None = None
    # breakaway and swivel-breakaway
    separation_minimum_n: float | None = None
    separation_maximum_n: float | None = None
    reconnectable: bool | None = None
    closes_vapour: bool | None = None
    omnidirectional: bool | None = None
    seal_diameter_m: float | None = None
    placements: tuple[Placement, ...] | None = None
    # swivel
    planes: int | None = None
    # adaptor and splitter
    needs_vapour_return: bool | None = None

    @model_serializer(mode="wrap")
    def _only_what_its_kind_has(self, dump: SerializerFunctionWrapHandler) -> dict[str, object]:
        fields: dict[str, object] = dump(self)
        return {name: value for name, value in fields.items() if name in self.model_fields_set}


class LinkRecord(Record):
    """One part in its place; links stand in chain order, dispenser first."""

    slot: Slot
    part_number: str
    maker: str
    kind: PartKind
    name: str
    unit_price_minor: int | None = Field(
        description="List price in minor units (cents) of the site's currency; 0 for a part that stays."
    )
    kept: bool = Field(False, description="The part hangs there today and stays: nobody buys it.")
    attributes: PartAttributes


class JointRecord(Record):
    """Two ends made up; ``upstream`` is empty for the dispenser's outlet."""

    upstream: str
    downstream: str
    upstream_port: PortRecord
    downstream_port: PortRecord
    seal: Seal
    upstream_maker: str
    downstream_maker: str


class BoundRecord(Record):
    """One side of a limit."""

    value: float
    source: str
    status: LimitStatus


class LimitRecord(Record):
    """The window of a check; null leaves a side open."""

    lower: BoundRecord | None
    upper: BoundRecord | None


class CheckRecord(Record):
    """A value held against its window. ``value`` is null where it is a word or cannot be computed."""

    id: CheckId
    severity: Severity
    outcome: Outcome
    passes: bool
    value: float | None
    unit: str
    text: str
    limit: LimitRecord
    margin: float | None


class FindingRecord(Record):
    """One rule's verdict; ``subject`` is a position label, part number, joint or slot."""

    rule_id: str
    severity: Severity
    verdict: Verdict
    subject_kind: SubjectKind
    subject: str
    facts: tuple[FactRecord, ...]
    limit_ids: tuple[str, ...]
    source: str
    text: str
    maker: str = Field(description="Maker of the part that it is about; empty for other subjects.")


class LineRecord(Record):
    """One derived line of the requirement."""

    id: RequirementId
    severity: Severity
    rule_id: str
    facts: tuple[FactRecord, ...]
    limit_ids: tuple[str, ...]
    source: str
    text: str


class RequirementRecord(Record):
    """What the position asks. ``listing_class`` is null where none is asked (DEF) or none exists."""

    listing_class: ListingClass | None
    listing_scheme: ListingScheme | None
    path: FlowPath | None
    chain: tuple[Slot, ...]
    lines: tuple[LineRecord, ...]
    footing: dict[LimitStatus, int] = Field(
        default_factory=dict, description="How many limits of the lines have each status; empty where none is derived."
    )


class AccessoryRecord(Record):
    """A consumable or fitting that goes with the set."""

    part_number: str
    maker: str
    kind: PartKind
    name: str
    quantity: int
    unit_price_minor: int | None
    reason: AccessoryReason


class AlternativeRecord(Record):
    """Another set that fits, and how it differs from the chosen one."""

    kind: AlternativeKind
    part_numbers: tuple[str, ...]
    makers: tuple[str, ...] = Field(description="Of the part numbers, one each.")
    price_minor: int
    price_difference_minor: int
    mass_kg: float
    lead_time_days: int
    text: str


class ExclusionRecord(Record):
    """How many parts of a slot a requirement line excludes, and the last to go."""

    slot: Slot
    requirement: RequirementId
    rule_id: str
    excluded: int
    nearest: tuple[str, ...]
    nearest_makers: tuple[str, ...]


class SuccessionRecord(Record):
    """A part that its maker replaced, and the one that took its place."""

    part_before: str
    part_now: str
    maker_before: str
    maker_now: str


class RelaxationRecord(Record):
    """The smallest change that would free a set."""

    requirement: RequirementId
    also: tuple[RequirementId, ...]
    from_value: float | None
    to_value: float | None
    unit: str
    price_minor: int | None
    part_numbers: tuple[str, ...]
    makers: tuple[str, ...]
    successions: tuple[SuccessionRecord, ...]
    text: str


class PinnedRecord(Record):
    """A part asked for that leaves no set: the rules that it breaks, or the lines that shut it out."""

    part_number: str
    maker: str
    findings: tuple[FindingRecord, ...]
    requirements: tuple[RequirementId, ...]


class ConflictRecord(Record):
    """Why no set exists: requirement lines that cannot hold together."""

    requirements: tuple[RequirementId, ...]
    pinned: tuple[PinnedRecord, ...] = ()
    exclusions: tuple[ExclusionRecord, ...]
    relaxations: tuple[RelaxationRecord, ...]
    text: tuple[str, ...]


class WayOutRecord(Record):
    """What a person can do where no requirement can be derived."""

    id: WayOut
    text: str


class CountRecord(Record):
    """How far a slot is narrowed."""

    slot: Slot
    in_catalogue: int
    remaining: int


class PositionRecord(Record):
    """The plan of one position. ``set`` is empty unless ``status`` is fits."""

    label: str
    dispenser: str
    status: PlanStatus
    assumed: tuple[str, ...] = Field((), description="Fields of the survey that decide the set and nobody answered.")
    inherited: tuple[str, ...] = Field((), description="Fields of the survey that are of the dispenser's type.")
    dispenser_type: str = Field("", description="Name of the dispenser's type; empty where none was chosen.")
    keeps_every_must: bool = Field(description="True where a set is chosen and no must is broken or left unproved.")
    requirement: RequirementRecord | None
    set: tuple[LinkRecord, ...]
    price_minor: int | None
    joints: tuple[JointRecord, ...]
    accessories: tuple[AccessoryRecord, ...]
    alternatives: tuple[AlternativeRecord, ...]
    checks: tuple[CheckRecord, ...]
    findings: tuple[FindingRecord, ...]
    conflict: ConflictRecord | None
    ways_out: tuple[WayOutRecord, ...]
    counts: tuple[CountRecord, ...]


class SiteRecord(Record):
    """The station as far as the plan needs it."""

    name: str
    jurisdiction: str
    jurisdiction_title: str
    currency: str
    assumed: tuple[str, ...] = Field((), description="Fields of the station that decide sets and nobody answered.")


class PlanDocument(Record):
    """A planned site. The program advises: local codes and the authority having jurisdiction decide."""

    format: Literal["spoutline-plan"] = "spoutline-plan"
    version: Literal[1] = 1
    provenance: ProvenanceRecord
    sets_from: SetsFrom = Field(SetsFrom(), description="Which sets the document shows.")
    site: SiteRecord
    positions: tuple[PositionRecord, ...]
    still_to_save_minor: int = Field(
        0,
        description="What a better choice of sets chosen together could at most still save; 0 where this one is best.",
    )
