"""Which sentence tells a requirement line: for each line the cases, told apart by the facts that the line carries."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.requirement import RequirementId as Asked

LIQUID: Final = "liquid"  # stands for the facts family and blend_percent together


@frozen
class Case:
    """One sentence of the phrasebook and when it fits.

    ``key`` names the sentence in the table ``asks``; ``shows`` are the facts that fill its places; ``when`` the bare
    values that facts must have; ``alike`` two facts that must read the same. The first case that fits is told.
    """

    key: str
    asked: Asked
    shows: tuple[str, ...] = ()
    when: Mapping[str, str] = field(default_factory=dict)
    alike: tuple[str, str] | None = None


CASES: Final[tuple[Case, ...]] = (
    Case("class_missing", Asked.LISTING_CLASS, (LIQUID,), {"listing_class": "none"}),
    Case("class_not_needed", Asked.LISTING_CLASS, (LIQUID,), {"listing_class": "not_needed"}),
    Case("class_asked", Asked.LISTING_CLASS, (LIQUID, "listing_class")),
    Case("scheme_ul", Asked.LISTING_SCHEME, (), {"scheme": "UL"}),
    Case("scheme_en", Asked.LISTING_SCHEME, (), {"scheme": "EN"}),
    Case("def_zone_unanswered", Asked.DEF_ZONE, (), {"in_flammable_zone": "not_answered"}),
    Case("def_zone_outside", Asked.DEF_ZONE, (), {"in_flammable_zone": "no"}),
    Case("def_zone_evaluated", Asked.DEF_ZONE, (), {"evaluated_nozzle_wanted": "yes"}),
    Case("def_zone_not_asked", Asked.DEF_ZONE, (), {"evaluated_nozzle_wanted": "no"}),
    Case("liquid_service", Asked.LIQUID_SERVICE, ("family", "duty", "services")),
    Case("spout_window", Asked.SPOUT, ("spout_minimum", "spout_maximum")),
    Case("spout_at_most", Asked.SPOUT, ("spout_maximum",)),
    Case("spout_at_least", Asked.SPOUT, ("spout_minimum",)),
    Case("spout_open", Asked.SPOUT),
    Case("filler", Asked.FILLER),
    Case("materials", Asked.MATERIALS, ("column",)),
    Case("temperature", Asked.TEMPERATURE, ("temperature_low", "temperature_high")),
    Case("pressure", Asked.PRESSURE, ("pressure", "supply_pressure")),
    Case("path_none", Asked.PATH, (), {"vapour_today": "none", "vapour_wanted": "none"}),
    Case("path_removed", Asked.PATH, ("vapour_today",), {"vapour_wanted": "none"}),
    Case("path_recovered", Asked.PATH, ("vapour_wanted", "path")),
    Case("vapour_parts_none", Asked.VAPOUR_PARTS, (), {"path": "single", "outlet_path": "single"}),
    Case("vapour_parts_closed", Asked.VAPOUR_PARTS, ("outlet_path",), {"path": "single"}),
    Case("vapour_parts_bellows", Asked.VAPOUR_PARTS, (), {"bellows": "yes"}),
    Case("vapour_parts_no_bellows", Asked.VAPOUR_PARTS, (), {"bellows": "no"}),
    Case("operation_automatic", Asked.OPERATION, (), {"automatic": "yes"}),
    Case("operation_manual", Asked.OPERATION, ("service", "duty", "family"), {"automatic": "no"}),
    Case("latch_attitude", Asked.HOLD_OPEN, (), {"hold_open": "yes", "attitude_device": "yes"}),
    Case("latch", Asked.HOLD_OPEN, (), {"hold_open": "yes"}),
    Case("latch_unwanted", Asked.HOLD_OPEN, (), {"wanted": "no"}),
    Case("latch_not_allowed", Asked.HOLD_OPEN, (), {"allowed": "no"}),
    Case(
        "device_both", Asked.NO_PRESSURE_DEVICE, (), {"no_pressure_device": "yes", "hold_open": "yes", "prepay": "yes"}
    ),
    Case("device_prepay", Asked.NO_PRESSURE_DEVICE, (), {"no_pressure_device": "yes", "prepay": "yes"}),
    Case("device_latch", Asked.NO_PRESSURE_DEVICE, (), {"no_pressure_device": "yes", "hold_open": "yes"}),
    Case("device_unattended", Asked.NO_PRESSURE_DEVICE, (), {"no_pressure_device": "yes", "service": "unattended"}),
    Case("device_no_reason", Asked.NO_PRESSURE_DEVICE, (), {"hold_open": "no", "prepay": "no", "service": "self"}),
    Case("device_no_reason", Asked.NO_PRESSURE_DEVICE, (), {"hold_open": "no", "prepay": "no", "service": "attended"}),
    Case("device_not_asked", Asked.NO_PRESSURE_DEVICE, (), {"no_pressure_device": "no"}),
    Case("low_spillage", Asked.ENHANCED_CONVENTIONAL, (), {"enhanced_conventional": "yes"}),
    Case("low_spillage_not_asked", Asked.ENHANCED_CONVENTIONAL, (), {"path": "single"}),
    Case("low_spillage_recovered", Asked.ENHANCED_CONVENTIONAL, (), {"enhanced_conventional": "no"}),
    Case("chain", Asked.CHAIN, ("chain",)),
    Case("breakaway_retractor", Asked.BREAKAWAY_PLACE, (), {"place": "nozzle_end", "retrieval": "retractor"}),
    Case("breakaway_reel", Asked.BREAKAWAY_PLACE, (), {"place": "nozzle_end", "retrieval": "reel"}),
    Case("breakaway_reel", Asked.BREAKAWAY_PLACE, (), {"place": "nozzle_end", "duty": "reel"}),
    Case("breakaway_marine", Asked.BREAKAWAY_PLACE, ("needed_length",), {"place": "nozzle_end", "duty": "marine"}),
    Case("breakaway_dispenser", Asked.BREAKAWAY_PLACE, (), {"place": "dispenser_end"}),
    Case("reconnectable", Asked.RECONNECTABLE, (), {"reconnectable": "yes"}),
    Case("separation_force", Asked.SEPARATION_FORCE, ("separation_minimum", "separation_maximum")),
    Case("service_load", Asked.SERVICE_LOAD, ("margin", "user_tug")),
    Case("drive_off_turned", Asked.DRIVE_OFF, ("margin", "outlet_pull_strength", "turn_angle")),
    Case("drive_off", Asked.DRIVE_OFF, ("margin", "outlet_pull_strength")),
    Case("swivel_built_in", Asked.SWIVEL, (), {"planes": "built_in"}),
    Case("swivel_one_plane", Asked.SWIVEL, ("duty",), {"planes": "1"}),
    Case("swivel_planes", Asked.SWIVEL, ("duty", "planes")),
    Case("hose_any", Asked.HOSE_CONSTRUCTION, ("retrieval",), {"construction": "any"}),
    Case("hose_construction", Asked.HOSE_CONSTRUCTION, ("retrieval", "construction")),
    Case("permeation_limit", Asked.LOW_PERMEATION, ("permeation_maximum",), {"low_permeation": "yes"}),
    Case("permeation_asked", Asked.LOW_PERMEATION, (), {"low_permeation": "yes"}),
    Case("permeation_not_asked", Asked.LOW_PERMEATION, (), {"low_permeation": "no"}),
    Case("hose_length_fenced", Asked.HOSE_LENGTH, ("length_maximum",), {"fenced": "yes"}),
    Case("hose_length", Asked.HOSE_LENGTH, ("length_maximum",)),
    Case("hose_length_unknown", Asked.HOSE_LENGTH),
    Case("reach", Asked.REACH, ("filler", "taut_length", "needed_length")),
    Case("ground_clearance", Asked.GROUND_CLEARANCE, ("clearance",)),
    Case("whip_length", Asked.WHIP_LENGTH, ("turn_angle", "margin")),
    Case("continuity", Asked.CONTINUITY, (), {"severity": "must"}),
    Case("continuity_advice", Asked.CONTINUITY, ("family",), {"severity": "advice"}),
    Case("resistance_each", Asked.RESISTANCE, ("total_maximum", "device_maximum", "hose_maximum")),
    Case("resistance_device", Asked.RESISTANCE, ("total_maximum", "device_maximum")),
    Case("resistance_hose", Asked.RESISTANCE, ("total_maximum", "hose_maximum")),
    Case("resistance_total", Asked.RESISTANCE, ("total_maximum",)),
    Case("flow_supply", Asked.FLOW, ("wanted_flow", "supply_flow"), alike=("supply_flow", "flow_ceiling")),
    Case("flow_limited", Asked.FLOW, ("wanted_flow", "supply_flow", "flow_ceiling")),
    Case("nozzle_flow", Asked.NOZZLE_FLOW, ("flow_ceiling",)),
    Case("velocity", Asked.VELOCITY, ("velocity_maximum",)),
    Case("status", Asked.STATUS),
    Case("lead_time", Asked.LEAD_TIME, ("longest_lead_time",)),
    Case("decision_refused", Asked.DECISION, ("refused",), {"pinned": ""}),
    Case("decision_pinned", Asked.DECISION, ("pinned",), {"refused": ""}),
    Case("decision_both", Asked.DECISION, ("pinned", "refused")),
    Case("price", Asked.PRICE, ("currency",)),
    Case("joints", Asked.JOINTS, ("outlet",)),
)

ASK_PLACEHOLDERS: Final[dict[str, tuple[str, ...]]] = {case.key: case.shows for case in CASES}
