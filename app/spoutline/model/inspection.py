"""The inspection plan of a position: what is looked at, how often, by which source, and when it is next due."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from spoutline.model.caution import CautionCondition
from spoutline.model.limit import LimitStatus


class InspectionInterval(StrEnum):
    """How often an item comes round."""

    DAILY = "daily"
    WEEKLY = "weekly"
    MONTHLY = "monthly"
    YEARLY = "yearly"


class InspectionItemId(StrEnum):
    """Every item that an inspection plan can hold."""

    HOSE_SURFACE = "hose_surface"
    NOZZLE_LOOK = "nozzle_look"
    VAPOUR_LOOK = "vapour_look"
    SPILL_AND_DRIPS = "spill_and_drips"
    SWIVEL_TURNS = "swivel_turns"
    BREAKAWAY_LOOK = "breakaway_look"
    RETRACTOR_LOOK = "retractor_look"
    REEL_LOOK = "reel_look"
    HOSE_PULLED_OUT = "hose_pulled_out"
    LABELS = "labels"
    HOLD_OPEN_TRIAL = "hold_open_trial"
    DEF_CRYSTALS = "def_crystals"
    DEF_HEATING = "def_heating"
    CONTINUITY = "continuity"
    SHUT_OFF_TRIAL = "shut_off_trial"
    SHEAR_VALVE = "shear_valve"
    FLOW_READING = "flow_reading"
    BREAKAWAY_AGE = "breakaway_age"


@dataclass(frozen=True, slots=True, kw_only=True)
class InspectionItem:
    """One item with its source; ``applies`` names conditions that must all hold, empty for always."""

    id: InspectionItemId
    interval: InspectionInterval
    applies: frozenset[CautionCondition]
    source: str
    status: LimitStatus


@dataclass(frozen=True, slots=True, kw_only=True)
class DueItem:
    """An item at a position with the day on which it is next due; ``last_done`` is None before the first time."""

    position: str
    item: InspectionItem
    last_done: date | None
    next_due: date
