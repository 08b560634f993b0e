"""The rules that breakaways, swivels, adaptors and splitters can break."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.model.finding import Finding, Severity
from spoutline.model.limit import LimitId
from spoutline.model.liquid import is_flammable
from spoutline.model.part import Placement
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.survey import Duty
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.parts.candidate import Candidate, PartRule
from spoutline.rules.parts.figures import part_resistance_ohm, pull_demand_n
from spoutline.rules.verdicts import yes_no

FORCE_ROUNDING_N = 0.5  # the standards print pounds-force and whole newtons side by side

_PLANES_ROW = {
    Duty.CAR: LimitId.SWIVEL_PLANES_CAR,
    Duty.TRUCK: LimitId.SWIVEL_PLANES_TRUCK,
    Duty.MARINE: LimitId.SWIVEL_PLANES_MARINE,
    Duty.REEL: LimitId.SWIVEL_PLANES_REEL,
}


def marked_for_place(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the breakaway's marking allows its place. Source: UL 567/567B 1.3 and 18 (secondary)."""
    data = candidate.part.breakaway
    place = Placement.NOZZLE_END if candidate.requirement.breakaway_at_nozzle else Placement.DISPENSER_END
    if data is not None and place not in data.placements:
        named = Fact("placements", ", ".join(sorted(data.placements)))
        yield candidate.broken(RuleId.BREAKAWAY_PLACEMENT, named, Fact("place", place))


def reconnectable_where_wanted(candidate: Candidate) -> Iterator[Finding]:
    """Ask: a breakaway that can be put together again where the survey wants one. Source: decision in the survey."""
    data = candidate.part.breakaway
    if candidate.requirement.position.reconnectable_wanted and data is not None and not data.reconnectable:
        yield candidate.broken(RuleId.BREAKAWAY_RECONNECTABLE, Fact("reconnectable", yes_no(False)))


def separation_in_window(candidate: Candidate) -> Iterator[Finding]:
    """Ask: both ends of the separation window (N) lie inside the profile's; should for a liquid that does not burn.

    Source: UL 567 6.3 (secondary), written for petroleum; EN 13617-2 (memory).
    """
    data, allowed = candidate.part.breakaway, candidate.requirement.separation
    if data is None:
        return
    ends = (data.separation_minimum_n, data.separation_maximum_n)
    if all(allowed.holds(end, tolerance=FORCE_ROUNDING_N) for end in ends):
        return
    bounds = (("allowed_minimum", allowed.minimum), ("allowed_maximum", allowed.maximum))
    yield candidate.broken(
        RuleId.SEPARATION_WINDOW,
        Quantity("separation_minimum", data.separation_minimum_n, Dimension.FORCE),
        Quantity("separation_maximum", data.separation_maximum_n, Dimension.FORCE),
        *(Quantity(name, bound, Dimension.FORCE) for name, bound in bounds if bound is not None),
        severity=Severity.MUST if is_flammable(candidate.requirement.liquid.family) else Severity.SHOULD,
        limits=(LimitId.BREAKAWAY_SEPARATION_MIN, LimitId.BREAKAWAY_SEPARATION_MAX),
    )


def closes_vapour(candidate: Candidate) -> Iterator[Finding]:
    """Ask: a vapour breakaway closes the vapour path too. Source: CARB executive orders (secondary)."""
    data, path = candidate.part.breakaway, candidate.requirement.path
    if data is not None and path is not FlowPath.SINGLE and not data.closes_vapour:
        yield candidate.broken(RuleId.BREAKAWAY_CLOSES_VAPOUR, Fact("path", path))


def turns_enough(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the swivel turns in as many planes as the duty asks. Source: common practice."""
    data, asked = candidate.part.swivel, candidate.requirement.swivel_planes
    if data is not None and asked is not None and data.planes < asked:
        yield candidate.broken(
            RuleId.SWIVEL_PLANES,
            Quantity("planes", data.planes, Dimension.COUNT),
            Quantity("planes_asked", asked, Dimension.COUNT),
            limits=(_PLANES_ROW[candidate.requirement.position.duty],),
        )


def device_resistance(candidate: Candidate) -> Iterator[Finding]:
    """Ask: resistance (ohm) across a breakaway or swivel. Source: UL 567A 12.2 (secondary)."""
    most = candidate.jurisdiction.optional_number(LimitId.BOND_DEVICE_MAX)
    stated = part_resistance_ohm(candidate.part)
    if most is not None and stated is not None and stated > most * (1.0 + 1e-9):
        yield candidate.broken(
            RuleId.PART_RESISTANCE,
            Quantity("resistance", stated, Dimension.RESISTANCE),
            Quantity("resistance_maximum", most, Dimension.RESISTANCE),
            severity=candidate.requirement.bonding_severity,
            limits=(LimitId.BOND_DEVICE_MAX,),
        )


def outlasts_itself(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the halves of a breakaway bear (N) its own separation with margin. Source: statics; margin judgement."""
    part = candidate.part
    demand = pull_demand_n(part, candidate.slot, candidate.requirement, candidate.tables)
    if part.pull_strength_n is not None and part.pull_strength_n < demand * (1.0 - 1e-9):
        yield candidate.broken(
            RuleId.BREAKAWAY_OWN_STRENGTH,
            Quantity("pull_strength", part.pull_strength_n, Dimension.FORCE),
            Quantity("pull_demand", demand, Dimension.FORCE),
            limits=(LimitId.BREAKAWAY_STRENGTH_MARGIN,),
        )


def adds_a_joint(candidate: Candidate) -> Iterator[Finding]:
    """Ask: no adaptor where parts that mate by themselves exist, so that sets with fewest come first.

    Source: common practice, no source.
    """
    yield candidate.broken(RuleId.ADAPTOR_ADDS_JOINT, Fact("part", candidate.part.number))


def adaptor_path(candidate: Candidate) -> Iterator[Finding]:
    """Ask: an adaptor leads from the outlet's path, or the set's, to the set's; a vapour port it leaves is closed.

    Source: UL 330 clause 4 note; closing is common practice.
    """
    part, path = candidate.part, candidate.requirement.path
    if part.inlet is None or part.outlet is None:
        return
    enters = (path, candidate.requirement.outlet.path)
    if part.outlet.path is not path or part.inlet.path not in enters:
        yield candidate.broken(RuleId.PART_PATH, Fact("part_path", part.outlet.path), Fact("path", path))
    leaves_vapour = part.inlet.path is not FlowPath.SINGLE and part.outlet.path is FlowPath.SINGLE
    if leaves_vapour and part.adaptor is not None and not part.adaptor.closes_vapour:
        yield candidate.broken(RuleId.ADAPTOR_CLOSES_VAPOUR, Fact("part_path", part.inlet.path), Fact("path", path))


def splitter_has_return(candidate: Candidate) -> Iterator[Finding]:
    """Ask: a splitter finds a vapour return pipe at the outlet. Source: common practice."""
    data, outlet = candidate.part.adaptor, candidate.requirement.position.outlet
    if data is not None and data.needs_vapour_return and not outlet.vapour_return_available:
        yield candidate.broken(RuleId.SPLITTER_VAPOUR_RETURN, Fact("vapour_return_available", yes_no(False)))


BREAKAWAY_RULES: tuple[PartRule, ...] = (
    marked_for_place,
    reconnectable_where_wanted,
    separation_in_window,
    closes_vapour,
    outlasts_itself,
    device_resistance,
)
SWIVEL_RULES: tuple[PartRule, ...] = (turns_enough, device_resistance)
SWIVEL_BREAKAWAY_RULES: tuple[PartRule, ...] = (*BREAKAWAY_RULES, turns_enough)
ADAPTOR_RULES: tuple[PartRule, ...] = (adaptor_path, adds_a_joint)
SPLITTER_RULES: tuple[PartRule, ...] = (adaptor_path, splitter_has_return)
