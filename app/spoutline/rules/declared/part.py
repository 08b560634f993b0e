"""The rules that judge a part by itself, declared: as it is sold, listed and made, and the nozzle."""

from __future__ import annotations

from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId as L
from spoutline.model.requirement import RequirementId as Asked
from spoutline.rules.declared.chain import PULL_AND_HOSE_RULES
from spoutline.rules.declared.rule import Rule, declared
from spoutline.rules.declared.rule_ids import RuleId

_SHOULD, _ADVICE = Severity.SHOULD, Severity.ADVICE


_SOLD: tuple[Rule, ...] = (
    declared(RuleId.PART_IN_SLOT, Asked.CHAIN, "chain", facts=("kind", "slot")),
    declared(
        RuleId.PART_STATUS,
        Asked.STATUS,
        "catalog",
        facts=("status", "superseded_by"),
    ),
    declared(RuleId.PART_PRICE, Asked.PRICE, "catalog", facts=("currency",)),
    declared(
        RuleId.PRICE_UNUSUAL,
        Asked.PRICE,
        "engineering judgement",
        L.PRICE_USUAL_FACTOR,
        facts=("kind", "price_ratio", "price_factor"),
        severity=_SHOULD,
    ),
    declared(RuleId.PART_REFUSED, Asked.DECISION, "decision in the survey", facts=("part",)),
    declared(
        RuleId.PART_LEAD_TIME,
        Asked.LEAD_TIME,
        "decision in the survey",
        facts=("lead_time", "longest_lead_time"),
    ),
)

_LISTED: tuple[Rule, ...] = (
    declared(
        RuleId.PART_SCHEME,
        Asked.LISTING_SCHEME,
        "rule profile",
        L.LISTING_SCHEME,
        facts=("schemes", "scheme"),
    ),
    declared(
        RuleId.PART_CLASS,
        Asked.LISTING_CLASS,
        "UL 2586/330/567 and supplements A and B",
        facts=("listings", "listing_class"),
    ),
    declared(
        RuleId.PART_DEF_OFFER,
        Asked.LISTING_CLASS,
        "contamination: ISO 22241-3 (memory)",
        facts=("offered_for_def",),
    ),
    declared(
        RuleId.DEF_ZONE_NOZZLE,
        Asked.DEF_ZONE,
        "UL outline 2586C (secondary)",
        L.LISTING_DEF_ZONE,
        facts=("def_zone_evaluated",),
    ),
    declared(
        RuleId.OXYGENATE_LIMIT,
        Asked.LISTING_CLASS,
        "EN 1360:2013, EN 13483 scopes",
        L.HOSE_OXYGENATE_MAX,
        facts=("blend_percent", "oxygenate_maximum"),
        severity=_SHOULD,
    ),
    declared(
        RuleId.MATERIAL_UNSUITABLE,
        Asked.MATERIALS,
        "table of materials",
        facts=("material", "column", "suitability"),
    ),
    declared(
        RuleId.MATERIAL_AGAINST_LISTING,
        Asked.MATERIALS,
        "table of materials; a listing goes before it",
        facts=("material", "column", "suitability"),
        severity=_ADVICE,
    ),
    declared(
        RuleId.MATERIAL_CAUTION,
        Asked.MATERIALS,
        "table of materials",
        facts=("material", "column", "suitability"),
        severity=_SHOULD,
    ),
    declared(
        RuleId.TEMPERATURE_RANGE,
        Asked.TEMPERATURE,
        "part data",
        facts=("part_low", "part_high", "temperature_low", "temperature_high"),
    ),
    declared(
        RuleId.PRESSURE_RATING,
        Asked.PRESSURE,
        "UL 2586A 1.1, UL 330 1.4",
        L.PART_PRESSURE_MIN,
        facts=("maximum_pressure", "pressure"),
    ),
)

_PATH: tuple[Rule, ...] = (
    declared(
        RuleId.PART_PATH,
        Asked.PATH,
        "UL 330 clause 4 note",
        facts=("part_path", "path"),
    ),
    declared(RuleId.BELLOWS, Asked.VAPOUR_PARTS, "CARB executive orders", facts=("path",)),
    declared(
        RuleId.BREAKAWAY_CLOSES_VAPOUR,
        Asked.VAPOUR_PARTS,
        "CARB executive orders (secondary)",
        facts=("path",),
    ),
    declared(
        RuleId.ADAPTOR_CLOSES_VAPOUR,
        Asked.VAPOUR_PARTS,
        "common practice, no source",
        facts=("part_path", "path"),
    ),
    declared(
        RuleId.HOSE_BUILT_IN_SWIVEL,
        Asked.VAPOUR_PARTS,
        "common practice, no source",
        facts=("path",),
    ),
    declared(
        RuleId.SPLITTER_VAPOUR_RETURN,
        Asked.VAPOUR_PARTS,
        "common practice, no source",
        facts=("vapour_return_available",),
    ),
)

_NOZZLE: tuple[Rule, ...] = (
    declared(
        RuleId.NOZZLE_SERVICE,
        Asked.LIQUID_SERVICE,
        "SAE J285 (secondary)",
        facts=("service", "services"),
    ),
    declared(
        RuleId.NOZZLE_LIQUID,
        Asked.LIQUID_SERVICE,
        "part data",
        facts=("liquids", "family"),
    ),
    declared(
        RuleId.SPOUT_DIAMETER,
        Asked.SPOUT,
        "40 CFR 1090.1550; SAE J285; ISO 22241-4",
        L.SPOUT_GASOLINE_OD_MIN,
        L.SPOUT_GASOLINE_OD_MAX,
        L.SPOUT_DIESEL_CAR_OD_MIN,
        L.SPOUT_DIESEL_CAR_OD_MAX,
        L.SPOUT_DIESEL_TRUCK_OD_MIN,
        L.SPOUT_DIESEL_TRUCK_OD_MAX,
        L.SPOUT_DEF_OD_MIN,
        L.SPOUT_DEF_OD_MAX,
        facts=("spout", "spout_minimum", "spout_maximum"),
    ),
    declared(
        RuleId.SPOUT_STRAIGHT_LENGTH,
        Asked.SPOUT,
        "40 CFR 1090.1550",
        L.SPOUT_GASOLINE_STRAIGHT_MIN,
        facts=("straight_length", "straight_minimum"),
    ),
    declared(
        RuleId.SPOUT_SPRING_DISTANCE,
        Asked.SPOUT,
        "40 CFR 1090.1550",
        L.SPOUT_GASOLINE_SPRING_DISTANCE,
        facts=("spring_distance", "spring_minimum"),
    ),
    declared(
        RuleId.SPOUT_WRONG_FILLER,
        Asked.FILLER,
        "SAE J285 scope",
        L.FILLER_GASOLINE_OPENING,
        L.FILLER_DEF_OPENING,
        facts=("spout", "opening", "wrong_filler"),
    ),
    declared(
        RuleId.SPOUT_OWN_FILLER,
        Asked.FILLER,
        "SAE J285 scope",
        L.FILLER_GASOLINE_OPENING,
        L.FILLER_DIESEL_CAR_OPENING,
        L.FILLER_DEF_OPENING,
        facts=("spout", "opening", "own_filler"),
    ),
    declared(
        RuleId.MISFILL_INTERLOCK,
        Asked.FILLER,
        "ISO 22241-4 (memory)",
        facts=("spout",),
        severity=_ADVICE,
    ),
    declared(
        RuleId.AUTOMATIC_SHUT_OFF,
        Asked.OPERATION,
        "NFPA 30A (secondary); UL 2586",
        L.NOZZLE_AUTOMATIC_REQUIRED,
        L.NOZZLE_MANUAL_CASES,
        facts=("operation",),
    ),
    declared(
        RuleId.LATCH_UNWANTED,
        Asked.HOLD_OPEN,
        "NFPA 30A (secondary)",
        L.HOLD_OPEN_SELF,
        L.HOLD_OPEN_ATTENDED,
        L.HOLD_OPEN_UNATTENDED,
        L.HOLD_OPEN_MARINE,
        L.HOLD_OPEN_OVERHEAD,
        facts=("wanted",),
    ),
    declared(
        RuleId.LATCH_MISSING,
        Asked.HOLD_OPEN,
        "survey",
        facts=("wanted",),
    ),
    declared(
        RuleId.LATCH_WITHOUT_ATTITUDE_DEVICE,
        Asked.HOLD_OPEN,
        "IFC 2306.7.6, exception (memory)",
        L.HOLD_OPEN_OVERHEAD,
        L.HOLD_OPEN_OVERHEAD_DEVICE,
        facts=("attitude_device",),
    ),
    declared(
        RuleId.NO_PRESSURE_DEVICE,
        Asked.NO_PRESSURE_DEVICE,
        "NFPA 30A (secondary)",
        L.NO_PRESSURE_DEVICE_WITH_HOLD_OPEN,
        L.NO_PRESSURE_DEVICE_WITH_PREPAY,
        facts=("hold_open", "prepay", "service"),
    ),
    declared(
        RuleId.ENHANCED_CONVENTIONAL,
        Asked.ENHANCED_CONVENTIONAL,
        "CARB NVR-1, CP-207",
        L.ENHANCED_CONVENTIONAL,
        facts=("path",),
    ),
    declared(
        RuleId.NOZZLE_MAXIMUM_FLOW,
        Asked.NOZZLE_FLOW,
        "part data",
        L.FLOW_GASOLINE_ROAD_MAX,
        facts=("maximum_flow", "flow_ceiling"),
    ),
    declared(
        RuleId.NOZZLE_MINIMUM_FLOW,
        Asked.NOZZLE_FLOW,
        "part data",
        L.FLOW_GASOLINE_ROAD_MAX,
        facts=("minimum_flow", "flow_ceiling"),
    ),
    declared(
        RuleId.NOZZLE_MINIMUM_FLOW_KNOWN,
        Asked.NOZZLE_FLOW,
        "part data",
        facts=("operation",),
    ),
    declared(
        RuleId.NOZZLE_OPENING_PRESSURE_KNOWN,
        Asked.NOZZLE_FLOW,
        "part data",
        facts=("no_pressure_device",),
    ),
)

PART_RULES: tuple[Rule, ...] = (*_SOLD, *_LISTED, *_PATH, *_NOZZLE, *PULL_AND_HOSE_RULES)
