"""What a phrasebook must hold: the lists of trade words, and the placeholders of each sentence."""

from __future__ import annotations

from enum import StrEnum
from typing import Final

from spoutline.calc.flow import NoFlowReason
from spoutline.calc.friction import FlowRegime
from spoutline.calc.liquid_hazards import ConductivityClass, FlashClass
from spoutline.calc.liquids import LiquidWarning
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.phrases.part_words import PartWord
from spoutline.explain.phrases.quotation_words import QuotationWord
from spoutline.model.check import CheckId, Outcome
from spoutline.model.finding import Severity, SubjectKind, Verdict
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material, MaterialColumn, Suitability
from spoutline.model.part import HoseConstruction, NozzleOperation, NozzleService, PartKind, PartStatus, Placement
from spoutline.model.plan import AlternativeKind, PlanStatus
from spoutline.model.port import FlowPath, Gender, Seal, ThreadStandard
from spoutline.model.pricing import GapReason
from spoutline.model.quotation import QuotationStatus
from spoutline.model.quotation_terms import Charge, Per
from spoutline.model.requirement import RefusalStatus, RequirementId, Slot, WayOut
from spoutline.model.survey import Duty, OutletDirection, Retrieval, Service, VapourStatus
from spoutline.rules.checks.flow import FlowText
from spoutline.rules.checks.pull import DriveOffText
from spoutline.rules.checks.reach import HangText
from spoutline.rules.checks.spout import ForceClass, SwivelType
from spoutline.rules.declared.rule_ids import AccessoryReason

_LISTS: Final[tuple[type[StrEnum], ...]] = (
    LiquidFamily,
    ListingClass,
    ListingScheme,
    Duty,
    VapourStatus,
    Retrieval,
    Service,
    OutletDirection,
    Slot,
    PartKind,
    PartStatus,
    NozzleOperation,
    NozzleService,
    HoseConstruction,
    Placement,
    ThreadStandard,
    Gender,
    FlowPath,
    Seal,
    Material,
    MaterialColumn,
    Suitability,
    Severity,
    Verdict,
    SubjectKind,
    Outcome,
    LimitStatus,
    PlanStatus,
    RefusalStatus,
    WayOut,
    AlternativeKind,
    RequirementId,
    CheckId,
    AccessoryReason,
    FlowText,
    FlowRegime,
    NoFlowReason,
    DriveOffText,
    HangText,
    SwivelType,
    ForceClass,
    ConductivityClass,
    FlashClass,
    LiquidWarning,
    PaperWord,
    QuotationWord,
    QuotationStatus,
    GapReason,
    Per,
    Charge,
    PartWord,
)

VOCABULARY: Final[dict[str, type[StrEnum]]] = {members.__name__: members for members in _LISTS}

# key of a sentence -> the placeholders that the story fills
TEXT_PLACEHOLDERS: Final[dict[str, tuple[str, ...]]] = {
    "language": (),
    "sets_title": (),
    "sets_planned": (),
    "sets_ordered": ("number", "revision", "option"),
    "sets_quoted": ("number", "revision", "option"),
    "sets_agreed": ("by", "day"),
    "sets_agreed_by": ("by",),
    "sets_built": (),
    "sets_built_on": ("day",),
    "sets_not_agreed": ("positions",),
    "entry_agreed": (),
    "entry_withdrawn": (),
    "entry_person": (),
    "entry_station": (),
    "entry_conversion": ("way",),
    "entry_quotation": ("number", "revision", "option", "title"),
    "standing_holds": (),
    "standing_edited_holds": (),
    "standing_broken": (),
    "standing_edited_broken": (),
    "standing_not_agreed": (),
    "standing_not_ordered": (),
    "standing_short_holds": (),
    "standing_short_edited_holds": (),
    "standing_short_broken": (),
    "standing_short_edited_broken": (),
    "standing_short_not_agreed": (),
    "standing_short_not_ordered": (),
    "advice": (),
    "no_answer": (),
    "unknown_value": (),
    "nothing": (),
    "outlet": (),
    "or": (),
    "liquid_with_ethanol": ("liquid", "percent"),
    "liquid_with_biodiesel": ("liquid", "percent"),
    "value_of_part": ("value", "limit", "part"),
    "own_limit": (),
    "margin_less": ("step",),
    "margin_short": ("step",),
    "permeation_year": ("temperature", "loss", "low"),
    "lies_on_ground": ("length",),
    "does_not_move": ("temperature",),
    "hangs_below_ground": ("length",),
    "reel_on_ground": ("length",),
    "on_ground": (),
    "on_ground_caution": (),
    "below_ground_caution": (),
    "line_again": ("numbers",),
    "lines_again": ("numbers",),
    "note_again": ("number",),
    "all_but": ("positions",),
    "built_by": ("day", "by", "positions"),
    "shoulds_not_met": ("count",),
    "shoulds_not_shown": ("count",),
    "blend_ethanol": ("liquid", "percent"),
    "blend_biodiesel": ("liquid", "percent"),
    "no_limit": (),
    "at_least": (),
    "at_most": (),
    "between": ("low", "high"),
    "price_missing": ("currency",),
    "and_more": ("text", "count"),
    "at_condition": ("value", "condition"),
    "outlet_data": ("port", "height"),
    "height_above": ("height",),
    "height_below": ("height",),
    "filler_data": ("label", "distance", "height"),
    "superseded": ("status", "number"),
    "yes": (),
    "no": (),
    "with_inputs": (),
    "days_one": ("count",),
    "days_many": ("count",),
    "in_stock": (),
    "conflict_opening": (),
    "conflict_together": ("requirements",),
    "conflict_single": ("requirements",),
    "pinned_lines": ("part", "requirements"),
    "pinned_together": ("numbers",),
    "pinned_no_set": ("numbers",),
    "conflict_slot_one": ("slot", "requirement", "count", "title"),
    "conflict_slot_many": ("slot", "requirement", "count", "title"),
    "conflict_only": ("numbers",),
    "conflict_nearest": ("numbers",),
    "conflict_no_relaxation": (),
    "relaxation_value": ("requirement", "from_value", "to_value"),
    "relaxation_whole": ("requirement",),
    "relaxation_successor": ("before", "now"),
    "relaxation_price": ("price", "numbers"),
    "relaxation_numbers": ("numbers",),
    "verdict_in_set": ("part",),
    "verdict_fits": ("part", "price", "numbers"),
    "verdict_fits_not_chosen": (),
    "verdict_fits_no_set": ("part",),
    "verdict_no_slot": ("part", "kind"),
    "verdict_broken_one": ("part", "count"),
    "verdict_broken_many": ("part", "count"),
    "misfit_line": ("requirements",),
    "misfit_lines": ("requirements",),
    "misfit_checks": (),
    "change_exchanged": ("slot", "before", "after"),
    "change_added": ("slot", "part"),
    "change_left_out": ("slot", "part"),
    "counted_line": ("line", "count"),
    "alternative_dearer": ("difference",),
    "alternative_cheaper": ("difference",),
    "alternative_same": (),
    "alternative_other_parts": ("numbers",),
    "refusal_opening": ("status",),
    "drawing_description": ("label", "height", "reach", "parts"),
    "drawing_too_short": (),
    "drawing_taut_on_reel": (),
    "drawing_on_the_ground": (),
    "drawing_approximate": (),
    "drawing_unfolded": (),
}
