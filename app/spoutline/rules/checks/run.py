"""Every check that a bill carries, in the order of ``CheckId``."""

from __future__ import annotations

from collections.abc import Callable

from spoutline.model.check import Check, CheckId
from spoutline.model.limit import RuleTables
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Requirement
from spoutline.rules.chain.set_view import SetView, view_of
from spoutline.rules.checks.bond import relaxation, resistance_parts, resistance_total
from spoutline.rules.checks.flow import (
    flow_cold,
    flow_hot,
    gasoline_flow_limit,
    nozzle_maximum_flow,
    nozzle_minimum_flow,
    nozzle_opening_pressure,
    velocity,
)
from spoutline.rules.checks.permeation import permeation
from spoutline.rules.checks.pull import breakaway_drive_off, breakaway_service_load
from spoutline.rules.checks.reach import (
    bend_radius,
    ground_clearance_at_rest,
    ground_clearance_in_use,
    hose_length,
    hose_reach,
    whip_hose_length,
)
from spoutline.rules.checks.spout import breakaway_force_class, spout_diameter, swivel_type

CHECKS: dict[CheckId, Callable[[SetView], Check | None]] = {
    CheckId.SPOUT_DIAMETER: spout_diameter,
    CheckId.HOSE_LENGTH: hose_length,
    CheckId.HOSE_REACH: hose_reach,
    CheckId.GROUND_CLEARANCE_AT_REST: ground_clearance_at_rest,
    CheckId.GROUND_CLEARANCE_IN_USE: ground_clearance_in_use,
    CheckId.BEND_RADIUS: bend_radius,
    CheckId.WHIP_LENGTH: whip_hose_length,
    CheckId.BREAKAWAY_FORCE_CLASS: breakaway_force_class,
    CheckId.BREAKAWAY_SERVICE_LOAD: breakaway_service_load,
    CheckId.BREAKAWAY_DRIVE_OFF: breakaway_drive_off,
    CheckId.SWIVEL_TYPE: swivel_type,
    CheckId.RESISTANCE_TOTAL: resistance_total,
    CheckId.RESISTANCE_PARTS: resistance_parts,
    CheckId.FLOW_COLD: flow_cold,
    CheckId.FLOW_HOT: flow_hot,
    CheckId.NOZZLE_MINIMUM_FLOW: nozzle_minimum_flow,
    CheckId.NOZZLE_MAXIMUM_FLOW: nozzle_maximum_flow,
    CheckId.NOZZLE_OPENING_PRESSURE: nozzle_opening_pressure,
    CheckId.GASOLINE_FLOW_LIMIT: gasoline_flow_limit,
    CheckId.VELOCITY: velocity,
    CheckId.PERMEATION: permeation,
    CheckId.RELAXATION_TIME: relaxation,
}


def checks_of(view: SetView) -> tuple[Check, ...]:
    """Return every check that applies to a set, as ``checks_for``.

    Parameters: ``view`` of the set; views of several sets at one position are made by one ``SetViews``.
    """
    return tuple(check for run in CHECKS.values() if (check := run(view)) is not None)


def checks_for(hanging_set: HangingSet, requirement: Requirement, tables: RuleTables) -> tuple[Check, ...]:
    """Return every check that applies to the set, in the order of ``CheckId``, each with its worked lines.

    A check whose part data are missing comes out UNKNOWN, which is never a pass; one that has nothing to say about
    this set (no whip hose, no no-pressure device, no gasoline) is left out.

    Parameters: ``hanging_set``; ``requirement`` of the position; ``tables``, limits and materials.
    """
    return checks_of(view_of(hanging_set, requirement, tables))
