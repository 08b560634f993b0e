"""Headings, labels and sentences of the installer's papers, in every language of the pack."""

from __future__ import annotations

from enum import StrEnum
from typing import Final

from spoutline.explain.phrases.part_terms import PartTerm
from spoutline.model.check import CheckId, Outcome
from spoutline.model.inspection import InspectionInterval, InspectionItemId
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import LiquidFamily
from spoutline.model.pack import Tool, VanBox
from spoutline.model.part import HoseConstruction, NozzleOperation, NozzleService, PartKind
from spoutline.model.part_file import FileMatter
from spoutline.model.plan import PlanStatus
from spoutline.model.port import FlowPath, Gender, Seal, ThreadStandard
from spoutline.model.record import ChangeReason, ItemResult, ReadingVerdict, RecordItemId
from spoutline.model.requirement import RequirementId, Slot, WayOut
from spoutline.model.survey import Duty, Retrieval, Service, VapourStatus
from spoutline.rules.checks.spout import SwivelType
from spoutline.rules.declared.rule_ids import AccessoryReason, RuleId


class PackWord(StrEnum):
    """Every fixed text of the installer's papers."""

    PACK = "pack"
    PACK_SUBJECT = "pack_subject"
    ADVICE = "advice"
    SITE = "site"
    ADDRESS = "address"
    CUSTOMER = "customer"
    FIRST_DAY = "first_day"
    LAST_DAY = "last_day"
    PRINTED = "printed"
    REVISION = "revision"
    JURISDICTION = "jurisdiction"
    SERVICE = "service"
    ASKED_HERE = "asked_here"
    ASKED_LOW_PERMEATION = "asked_low_permeation"
    ASKED_ENHANCED = "asked_enhanced"
    ASKED_RECONNECTABLE = "asked_reconnectable"
    CONTACTS = "contacts"
    EMERGENCY = "emergency"
    ROLE = "role"
    NAME = "name"
    TELEPHONE = "telephone"
    LOCAL_CODE = "local_code"
    LOCAL_CODE_NOTE = "local_code_note"
    AUTHORITY = "authority"
    ADOPTED_CODES = "adopted_codes"
    PERMIT = "permit"
    ASKED_OF = "asked_of"
    ASKED_ON = "asked_on"
    LICENCE = "licence"
    NOTES = "notes"
    POSITIONS = "positions"
    POSITION = "position"
    DISPENSER = "dispenser"
    LIQUID = "liquid"
    DUTY = "duty"
    STATUS = "status"
    DONE = "done"
    LOADING = "loading"
    LOADING_NOTE = "loading_note"
    LOADING_COUNTS = "loading_counts"
    QUANTITY = "quantity"
    WEIGHT = "weight"
    SPARE = "spare"
    O_RING = "o_ring"
    GASKET = "gasket"
    UNDERSTOOD = "understood"
    PART_NUMBER = "part_number"
    PART_NAME = "part_name"
    FOR_POSITIONS = "for_positions"
    FOR_KITS = "for_kits"
    KIT = "kit"
    KITS = "kits"
    KITS_NOTE = "kits_note"
    LOADED = "loaded"
    TOOLS = "tools"
    VAPOUR = "vapour"
    LISTING_CLASS = "listing_class"
    SCAN = "scan"
    EXPLODED = "exploded"
    EXPLODED_NOTE = "exploded_note"
    DISPENSER_OUTLET = "dispenser_outlet"
    DROOP = "droop"
    SCALE = "scale"
    HOSE_LENGTHS = "hose_lengths"
    ON_SITE = "on_site"
    WHAT = "what"
    BY_PLAN = "by_plan"
    LIMIT = "limit"
    FOUND = "found"
    SPOUT_DIAMETER = "spout_diameter"
    OUTLET_STRENGTH = "outlet_strength"
    HOSE_LENGTH = "hose_length"
    FORCE_CLASS = "force_class"
    SWIVEL = "swivel"
    NOZZLE_RESISTANCE = "nozzle_resistance"
    FLOW = "flow"
    PARTS = "parts"
    NUMBER = "number"
    PLACE = "place"
    ORIENTATION = "orientation"
    ORIENTATION_WHIP = "orientation_whip"
    ORIENTATION_NOZZLE = "orientation_nozzle"
    ORIENTATION_OUTLET = "orientation_outlet"
    SEPARATES = "separates"
    REMOVED = "removed"
    STAYS = "stays"
    REMOVED_NOT_RECORDED = "removed_not_recorded"
    VAPOUR_REMOVED = "vapour_removed"
    NO_SET = "no_set"
    CAUTION_SHEET = "caution_sheet"
    CAUTION_LEAD = "caution_lead"
    DANGER = "danger"
    WARNING = "warning"
    CAUTION = "caution"
    NOTICE = "notice"
    FORM = "form"
    FORM_SUBJECT = "form_subject"
    FORM_LEAD = "form_lead"
    EXPECTED = "expected"
    READING = "reading"
    RESULT = "result"
    NOTE = "note"
    AS_BUILT = "as_built"
    PLANNED = "planned"
    FITTED = "fitted"
    SERIAL = "serial"
    SERVICE_UNTIL = "service_until"
    REASON = "reason"
    DONE_BY = "done_by"
    DONE_ON = "done_on"
    INSTRUMENTS = "instruments"
    SIGNED_BY = "signed_by"
    SIGNATURE = "signature"
    REMARKS = "remarks"
    PHOTOS = "photos"
    RECORD = "record"
    RECORD_SUBJECT = "record_subject"
    RECORD_LEAD = "record_lead"
    VERDICT = "verdict"
    NO_CHANGES = "no_changes"
    NOT_ENTERED = "not_entered"
    OUT_OF_LIMIT = "out_of_limit"
    ASKED_AGAIN = "asked_again"
    UNSIGNED = "unsigned"
    UNDATED = "undated"
    BOND_CERTIFICATE = "bond_certificate"
    LEAK_CERTIFICATE = "leak_certificate"
    CERTIFICATE_SUBJECT = "certificate_subject"
    CERTIFICATE_LEAD = "certificate_lead"
    MEASURED = "measured"
    LEAK_LIMIT = "leak_limit"
    LIMIT_SOURCE = "limit_source"
    OPEN_CIRCUIT = "open_circuit"
    TABLET_LEAD = "tablet_lead"
    TABLET_NO_SCRIPT = "tablet_no_script"
    TABLET_SHEET = "tablet_sheet"
    TABLET_SIGN = "tablet_sign"
    TABLET_CLEAR = "tablet_clear"
    TABLET_ADD_PHOTO = "tablet_add_photo"
    TABLET_CAPTION = "tablet_caption"
    TABLET_REMOVE = "tablet_remove"
    TABLET_FULL = "tablet_full"
    TABLET_NO_PICTURE = "tablet_no_picture"
    TABLET_UNREADABLE = "tablet_unreadable"
    TABLET_SAVE = "tablet_save"
    TABLET_OPEN = "tablet_open"
    TABLET_EMPTY = "tablet_empty"
    TABLET_EMPTY_ASK = "tablet_empty_ask"
    TABLET_UNSAVED = "tablet_unsaved"
    TABLET_SAVED = "tablet_saved"
    TABLET_KEPT = "tablet_kept"
    TABLET_OTHER = "tablet_other"
    INSPECTION = "inspection"
    INSPECTION_LEAD = "inspection_lead"
    EVERY = "every"
    NEXT_DUE = "next_due"
    OVERDUE = "overdue"
    DUE_WORK = "due_work"
    STOCK = "stock"
    STOCK_LEAD = "stock_lead"
    STOCK_PLACE = "stock_place"
    AT_HAND = "at_hand"
    TO_TAKE = "to_take"
    NEEDED = "needed"
    TAKEN_BEFORE = "taken_before"
    BRING_BACK = "bring_back"
    SHORT = "short"
    LEAST = "least"
    LOT = "lot"
    COUNTED_IN = "counted_in"
    TO_ORDER = "to_order"
    DUE_WORK_LEAD = "due_work_lead"
    DUE_LATER = "due_later"
    DUE_NONE = "due_none"
    NOT_COUNTED = "not_counted"
    NO_RECORD = "no_record"
    NO_SET_HERE = "no_set_here"
    LAST_DONE = "last_done"
    SOURCE = "source"
    WEAR_LOG = "wear_log"
    DATE = "date"
    TAKEN_OFF = "taken_off"
    PAGE_OF = "page_of"
    FILES = "files"


class PackQuestion(StrEnum):
    """What a plan may leave open, by the rule that asks it."""

    OUTLET_STRENGTH_ASSUMED = RuleId.OUTLET_STRENGTH_ASSUMED
    SUPPLY_ASSUMED = RuleId.SUPPLY_ASSUMED
    FENCED_HOSE_TO_SECURE = RuleId.FENCED_HOSE_TO_SECURE
    DEF_ZONE_UNANSWERED = RuleId.DEF_ZONE_UNANSWERED
    HOSE_LIMIT_UNKNOWN = RuleId.HOSE_LIMIT_UNKNOWN
    VAPOUR_REMOVAL_TO_ASK = RuleId.VAPOUR_REMOVAL_TO_ASK
    VAPOUR_EXEMPTION_TO_SHOW = RuleId.VAPOUR_EXEMPTION_TO_SHOW
    VAPOUR_RECOVERY_TO_ASK = RuleId.VAPOUR_RECOVERY_TO_ASK
    PRICE_UNUSUAL = RuleId.PRICE_UNUSUAL


PACK_LISTS: Final[tuple[type[StrEnum], ...]] = (
    PackWord,
    PackQuestion,
    RequirementId,
    WayOut,
    VanBox,
    Tool,
    Slot,
    PartKind,
    PartTerm,
    NozzleOperation,
    NozzleService,
    HoseConstruction,
    ThreadStandard,
    Gender,
    FlowPath,
    Seal,
    LiquidFamily,
    Duty,
    VapourStatus,
    Retrieval,
    Service,
    PlanStatus,
    Outcome,
    CheckId,
    LimitStatus,
    SwivelType,
    AccessoryReason,
    RecordItemId,
    ItemResult,
    ReadingVerdict,
    ChangeReason,
    InspectionInterval,
    InspectionItemId,
    FileMatter,
)
PACK_VOCABULARY: Final = {members.__name__: members for members in PACK_LISTS}

# sentences that the shared drawings and the story ask for, and those of the pack; with the placeholders that get filled
PACK_SENTENCES: Final[dict[str, tuple[str, ...]]] = {
    "language": (),
    "no_answer": (),
    "nothing": (),
    "outlet": (),
    "no_limit": (),
    "at_least": (),
    "at_most": (),
    "between": ("low", "high"),
    "blend_ethanol": ("liquid", "percent"),
    "blend_biodiesel": ("liquid", "percent"),
    "outlet_data": ("port", "height"),
    "lies_on_ground": ("length",),
    "hangs_below_ground": ("length",),
    "reel_on_ground": ("length",),
    "on_ground": (),
    "drawing_description": ("label", "height", "reach", "parts"),
    "drawing_too_short": (),
    "drawing_taut_on_reel": (),
    "drawing_on_the_ground": (),
    "drawing_approximate": (),
    "drawing_unfolded": (),
    "questions_open": ("count",),
    "good_practice_open": ("lines",),
    "reason_together": ("requirements",),
    "reason_single": ("requirements",),
    "reason_pinned": ("numbers",),
    "reason_change": ("changes",),
    "reason_given_up": ("requirement",),
    "assumed_figure": (),
    "make_up_both": ("bench", "dispenser"),
    "make_up_one": ("joints",),
    "torque_by_makers": (),
    "torque_stated": ("torques",),
    "torque_of": ("number", "torque"),
    "clamp_place": ("length",),
    "spare_seals": ("seal", "size", "count"),
    "sets_title": (),
    "demonstration_notice": (),
    "sets_planned": (),
    "sets_ordered": ("number", "revision", "option"),
    "sets_quoted": ("number", "revision", "option"),
    "sets_agreed": ("by", "day"),
    "sets_agreed_by": ("by",),
    "sets_built": (),
    "sets_built_on": ("day",),
    "sets_not_agreed": ("positions",),
    "nothing_to_inspect": ("positions",),
    "set_breaks_must": (),
    "shoulds_not_met": ("count",),
    "shoulds_not_shown": ("count",),
    "must_broken": ("checks",),
    "each_for": ("position", "count"),
    "box": ("number", "contents"),
    "source_title_only": (),
    "source_interval": (),
    "source_makers": (),
    "source_decision": (),
    "due_on": ("count", "overdue", "day"),
    "overdue_days": ("days",),
    "recorded_at_revision": ("positions",),
    "hose_of": ("name", "length"),
}
