"""A computed quantity held against a limit, with the lines a practitioner can follow by hand."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension, Fact, Quantity


@frozen(kw_only=True)
class WorkedLine:
    """One line of a calculation: ``result = formula`` with the inputs it used.

    ``formula`` is written in trade symbols (``"v = 4 Q / (pi D^2)"``); ``inputs`` name each symbol on its right side;
    ``note`` says what the formula cannot. ``source`` names handbook, clause or judgement.
    """

    formula: str
    inputs: tuple[Quantity, ...]
    result: Quantity
    source: str
    note: str = ""


class CheckId(StrEnum):
    """Every check that a bill can carry."""

    SPOUT_DIAMETER = "spout_diameter"
    HOSE_LENGTH = "hose_length"  # against the jurisdiction's limit
    HOSE_REACH = "hose_reach"  # against the length that the fillers ask for
    GROUND_CLEARANCE_AT_REST = "ground_clearance_at_rest"
    GROUND_CLEARANCE_IN_USE = "ground_clearance_in_use"
    BEND_RADIUS = "bend_radius"
    WHIP_LENGTH = "whip_length"
    BREAKAWAY_FORCE_CLASS = "breakaway_force_class"  # window inside the jurisdiction's window
    BREAKAWAY_SERVICE_LOAD = "breakaway_service_load"
    BREAKAWAY_DRIVE_OFF = "breakaway_drive_off"
    SWIVEL_TYPE = "swivel_type"
    RESISTANCE_TOTAL = "resistance_total"
    RESISTANCE_PARTS = "resistance_parts"
    FLOW_COLD = "flow_cold"
    FLOW_HOT = "flow_hot"
    NOZZLE_MINIMUM_FLOW = "nozzle_minimum_flow"
    NOZZLE_MAXIMUM_FLOW = "nozzle_maximum_flow"
    NOZZLE_OPENING_PRESSURE = "nozzle_opening_pressure"
    GASOLINE_FLOW_LIMIT = "gasoline_flow_limit"
    VELOCITY = "velocity"
    PERMEATION = "permeation"
    RELAXATION_TIME = "relaxation_time"


class Outcome(StrEnum):
    """Whether the check passes; ``unknown`` where part data are missing (never treated as a pass)."""

    PASSES = "passes"
    FAILS = "fails"
    UNKNOWN = "unknown"
    INFORMATION = "information"


@frozen(kw_only=True)
class Bound:
    """One side of a limit with where it comes from."""

    value: float
    source: str
    status: LimitStatus


@frozen(kw_only=True)
class Check:
    """A value held against its window.

    ``value`` is SI in ``dimension`` (None where it cannot be computed); ``text`` carries a result that is a word (the
    swivel type, the force class). ``lower`` / ``upper`` are the limits; ``margin`` is the distance to the nearer limit
    in the same unit, negative when the check fails.
    """

    id: CheckId
    severity: Severity
    outcome: Outcome
    value: float | None
    dimension: Dimension
    lower: Bound | None
    upper: Bound | None
    margin: float | None
    text: str = ""
    facts: tuple[Quantity | Fact, ...] = ()
    lines: tuple[WorkedLine, ...] = ()

    @property
    def passes(self) -> bool:
        """True unless the check fails or cannot be shown."""
        return self.outcome in (Outcome.PASSES, Outcome.INFORMATION)
