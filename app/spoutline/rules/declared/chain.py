"""The rules of pull and hose, which judge a part, and those of joint and set, declared."""

from __future__ import annotations

from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId as L
from spoutline.model.requirement import RequirementId as Asked
from spoutline.rules.declared.rule import Rule, declared
from spoutline.rules.declared.rule_ids import RuleId

_SHOULD, _ADVICE = Severity.SHOULD, Severity.ADVICE

PULL_AND_HOSE_RULES: tuple[Rule, ...] = (
    declared(
        RuleId.BREAKAWAY_PLACEMENT,
        Asked.BREAKAWAY_PLACE,
        "UL 567/567B 1.3, 18",
        facts=("placements", "place"),
    ),
    declared(
        RuleId.BREAKAWAY_RECONNECTABLE,
        Asked.RECONNECTABLE,
        "decision in the survey",
        facts=("reconnectable",),
    ),
    declared(
        RuleId.SEPARATION_WINDOW,
        Asked.SEPARATION_FORCE,
        "UL 567 6.3 (secondary); EN 13617-2 (memory)",
        L.BREAKAWAY_SEPARATION_MIN,
        L.BREAKAWAY_SEPARATION_MAX,
        facts=("separation_minimum", "separation_maximum", "allowed_minimum", "allowed_maximum"),
    ),
    declared(
        RuleId.PULL_STRENGTH_KNOWN,
        Asked.DRIVE_OFF,
        "part data",
        facts=("part",),
    ),
    declared(
        RuleId.BREAKAWAY_OWN_STRENGTH,
        Asked.DRIVE_OFF,
        "statics; margin is engineering judgment",
        L.BREAKAWAY_STRENGTH_MARGIN,
        facts=("pull_strength", "pull_demand"),
    ),
    declared(
        RuleId.ADAPTOR_ADDS_JOINT,
        Asked.JOINTS,
        "common practice, no source",
        facts=("part",),
        severity=_SHOULD,
    ),
    declared(
        RuleId.SWIVEL_PLANES,
        Asked.SWIVEL,
        "common practice, no source",
        L.SWIVEL_PLANES_CAR,
        L.SWIVEL_PLANES_TRUCK,
        L.SWIVEL_PLANES_MARINE,
        L.SWIVEL_PLANES_REEL,
        facts=("planes", "planes_asked"),
        severity=_SHOULD,
    ),
    declared(
        RuleId.HOSE_CONSTRUCTION,
        Asked.HOSE_CONSTRUCTION,
        "EN 1360, ISO 5772; common practice",
        L.HOSE_CONSTRUCTION_PLAIN,
        L.HOSE_CONSTRUCTION_RETRACTOR,
        L.HOSE_CONSTRUCTION_REEL,
        L.HOSE_CONSTRUCTION_DEF,
        L.HOSE_CONSTRUCTION_DEF_REEL,
        facts=("construction", "construction_asked"),
    ),
    declared(
        RuleId.HOSE_DRUM,
        Asked.HOSE_CONSTRUCTION,
        "part data against the drum",
        facts=("bend_radius", "drum_radius"),
    ),
    declared(
        RuleId.HOSE_LOW_PERMEATION,
        Asked.LOW_PERMEATION,
        "UL 330; CARB NVR-1",
        L.HOSE_LOW_PERMEATION,
        facts=("low_permeation",),
    ),
    declared(
        RuleId.HOSE_PERMEATION_RATE,
        Asked.LOW_PERMEATION,
        "UL 330; CARB CP-201 (memory)",
        L.HOSE_PERMEATION_MAX,
        facts=("permeation", "permeation_maximum"),
    ),
    declared(
        RuleId.HOSE_SINGLE_LENGTH,
        Asked.HOSE_LENGTH,
        "NFPA 30A 6.5; Okla. 165:26-2-92(a)",
        L.HOSE_LENGTH_MAX,
        L.HOSE_LENGTH_MAX_FENCED,
        L.HOSE_LENGTH_MAX_MARINE,
        facts=("length", "length_maximum"),
    ),
    declared(
        RuleId.WHIP_LENGTH,
        Asked.WHIP_LENGTH,
        "geometry; margin is engineering judgment",
        L.BEND_ANGLE_MARGIN,
        facts=("length", "length_minimum", "bend_radius", "turn_angle"),
    ),
    declared(
        RuleId.HOSE_VELOCITY,
        Asked.VELOCITY,
        "static guidance (memory)",
        L.FLOW_VELOCITY_MAX,
        facts=("velocity", "velocity_maximum", "flow_ceiling"),
        severity=_SHOULD,
    ),
    declared(
        RuleId.FLOW_DATA_KNOWN,
        Asked.FLOW,
        "part data",
        facts=("missing",),
    ),
    declared(
        RuleId.CONTINUITY_KNOWN,
        Asked.CONTINUITY,
        "NFPA 77 (memory)",
        L.BOND_DEF_REQUIRED,
        facts=("part",),
    ),
    declared(
        RuleId.PART_RESISTANCE,
        Asked.RESISTANCE,
        "UL 330, UL 567A 12.2",
        L.BOND_HOSE_MAX,
        L.BOND_DEVICE_MAX,
        facts=("resistance", "resistance_maximum"),
    ),
)

JOINT_AND_SET_RULES: tuple[Rule, ...] = (
    declared(
        RuleId.JOINT_THREAD,
        Asked.JOINTS,
        "ASME B1.20.1 (60 degrees); ISO 228-1 (55 degrees)",
        facts=("upstream", "downstream", "upstream_thread", "downstream_thread"),
    ),
    declared(
        RuleId.JOINT_SIZE,
        Asked.JOINTS,
        "ASME B1.20.1; ISO 228-1",
        facts=("upstream", "downstream", "upstream_size", "downstream_size"),
    ),
    declared(
        RuleId.JOINT_GENDER,
        Asked.JOINTS,
        "ASME B1.20.1; ISO 228-1",
        facts=("upstream", "downstream", "gender"),
    ),
    declared(
        RuleId.JOINT_PATH,
        Asked.JOINTS,
        "UL 330 clause 4 note",
        facts=("upstream", "downstream", "upstream_path", "downstream_path"),
    ),
    declared(
        RuleId.JOINT_MADE_UP,
        Asked.JOINTS,
        "common practice, no source",
        facts=("upstream", "downstream", "article"),
    ),
    declared(
        RuleId.CHAIN_ORDER,
        Asked.CHAIN,
        "common practice",
        facts=("chain", "chain_asked"),
    ),
    declared(
        RuleId.SPLITTER_PLACE,
        Asked.CHAIN,
        "common practice, no source",
        facts=("part",),
    ),
    declared(
        RuleId.PINNED_PART_MISSING,
        Asked.DECISION,
        "decision in the survey",
        facts=("part",),
    ),
    declared(
        RuleId.FENCED_HOSE_TO_SECURE,
        Asked.HOSE_LENGTH,
        "Okla. 165:26-2-92(a)(3)",
        L.HOSE_LENGTH_MAX_FENCED,
        facts=("length", "length_general"),
    ),
    declared(
        RuleId.FENCED_HOSE_ON_REEL,
        Asked.HOSE_LENGTH,
        "Okla. 165:26-2-92(a)(3)",
        L.HOSE_LENGTH_MAX_FENCED,
        facts=("length", "length_general"),
        severity=_ADVICE,
    ),
)
