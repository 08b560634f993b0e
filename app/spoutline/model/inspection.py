"""The inspection plan of a position: what is looked at, how often, by which source, and when it is next due."""

from __future__ import annotations

from datetime import date
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.caution import CautionCondition
from spoutline.model.check import Bound
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import ListingScheme
from spoutline.model.quantity import Dimension


class InspectionInterval(StrEnum):
    """How often an item comes round."""

    DAILY = "daily"
    WEEKLY = "weekly"
    MONTHLY = "monthly"
    YEARLY = "yearly"
    ONCE = "once"  # before the position goes back into service


class InspectionCause(StrEnum):
    """What makes an item due."""

    TIME = "time"
    WINTER = "winter"  # the first time before the first winter, then every year before the frost
    REPLACEMENT = "replacement"  # a part was replaced, in a drive-off or otherwise
    DRIVE_OFF = "drive_off"


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
    DEF_HOSE = "def_hose"
    DEF_CONCENTRATION = "def_concentration"
    COLD_LOOK = "cold_look"
    STAGE_TWO_TEST = "stage_two_test"
    AFTER_BOND = "after_bond"
    AFTER_LEAK = "after_leak"
    AFTER_SHUT_OFF = "after_shut_off"
    AFTER_BREAKAWAY = "after_breakaway"
    AFTER_HOSE = "after_hose"
    AFTER_OUTLET = "after_outlet"
    AFTER_SHEAR_VALVE = "after_shear_valve"


@frozen(kw_only=True)
class InspectionItem:
    """One item with its source.

    ``applies`` names conditions that must all hold, empty for always; ``schemes`` the listing schemes under which it
    is asked, empty for all.
    """

    id: InspectionItemId
    interval: InspectionInterval
    applies: frozenset[CautionCondition]
    source: str
    status: LimitStatus
    cause: InspectionCause = InspectionCause.TIME
    schemes: frozenset[ListingScheme] = frozenset()


@frozen(kw_only=True)
class DueItem:
    """An item at a position with the day on which it is next due; ``last_done`` is None before the first time.

    Where a figure is read, ``dimension`` says of what, and the bounds hold it, in SI.
    """

    position: str
    item: InspectionItem
    last_done: date | None
    next_due: date
    dimension: Dimension | None = None
    lower: Bound | None = None
    upper: Bound | None = None
