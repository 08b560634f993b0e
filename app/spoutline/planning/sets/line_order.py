"""The requirement lines as demands, those first that a person can least change."""

from __future__ import annotations

from spoutline.model.requirement import RequirementId

# What no answer of a person changes: it holds while the other lines are asked, unless it is itself in conflict.
GIVEN = (
    RequirementId.CHAIN,
    RequirementId.JOINTS,
    RequirementId.LISTING_CLASS,
    RequirementId.LISTING_SCHEME,
    RequirementId.DEF_ZONE,
    RequirementId.MATERIALS,
    RequirementId.LIQUID_SERVICE,
    RequirementId.SPOUT,
    RequirementId.FILLER,
    RequirementId.PATH,
    RequirementId.VAPOUR_PARTS,
    RequirementId.OPERATION,
    RequirementId.CONTINUITY,
    RequirementId.SEPARATION_FORCE,
    RequirementId.BREAKAWAY_PLACE,
    RequirementId.PRESSURE,
    RequirementId.TEMPERATURE,
)
# What a person, a site or a jurisdiction can change, the hardest first.
CHANGEABLE = (
    RequirementId.NO_PRESSURE_DEVICE,
    RequirementId.RESISTANCE,
    RequirementId.SERVICE_LOAD,
    RequirementId.DRIVE_OFF,
    RequirementId.ENHANCED_CONVENTIONAL,
    RequirementId.LOW_PERMEATION,
    RequirementId.RECONNECTABLE,
    RequirementId.STATUS,
    RequirementId.HOSE_LENGTH,
    RequirementId.REACH,
    RequirementId.WHIP_LENGTH,
    RequirementId.HOSE_CONSTRUCTION,
    RequirementId.SWIVEL,
    RequirementId.GROUND_CLEARANCE,
    RequirementId.NOZZLE_FLOW,
    RequirementId.FLOW,
    RequirementId.VELOCITY,
    RequirementId.HOLD_OPEN,
    RequirementId.PRICE,
    RequirementId.LEAD_TIME,
    RequirementId.DECISION,
)
