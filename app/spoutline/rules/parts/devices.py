"""The rules that breakaways, swivels, adaptors and splitters can break."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId
from spoutline.model.liquid import is_flammable
from spoutline.model.part import Placement
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Duty
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.parts.look import (
    EVERYWHERE,
    Breach,
    Look,
    PartRule,
    figure,
    outside,
    quantity,
    word,
    words_of,
)
from spoutline.rules.parts.sums import pull_demand_n, resistance_ohm
from spoutline.rules.verdicts import yes_no

FORCE_ROUNDING_N = 0.5  # the standards print pounds-force and whole newtons side by side

_PLANES_ROW = {
    Duty.CAR: LimitId.SWIVEL_PLANES_CAR,
    Duty.TRUCK: LimitId.SWIVEL_PLANES_TRUCK,
    Duty.MARINE: LimitId.SWIVEL_PLANES_MARINE,
    Duty.REEL: LimitId.SWIVEL_PLANES_REEL,
}
_LEAST, _MOST = "breakaway.separation_minimum_n", "breakaway.separation_maximum_n"


def marked_for_place(look: Look) -> Iterator[Breach]:
    """Ask: the breakaway's marking allows its place. Source: UL 567/567B 1.3 and 18 (secondary)."""
    place = Placement.NOZZLE_END if look.requirement.breakaway_at_nozzle else Placement.DISPENSER_END
    marked = "breakaway.placements"
    shown = words_of("placements", marked), word("place", place)
    yield look.broken(RuleId.BREAKAWAY_PLACEMENT, ~look.part.has(marked, place), *shown)


def reconnectable_where_wanted(look: Look) -> Iterator[Breach]:
    """Ask: a breakaway that can be put together again where the survey wants one. Source: decision in the survey."""
    if look.requirement.position.reconnectable_wanted:
        single_use = ~look.part.flag("breakaway.reconnectable")
        yield look.broken(RuleId.BREAKAWAY_RECONNECTABLE, single_use, word("reconnectable", yes_no(False)))


def separation_in_window(look: Look) -> Iterator[Breach]:
    """Ask: both ends of the separation window (N) lie inside the profile's; should for a liquid that does not burn.

    Source: UL 567 6.3 (secondary), written for petroleum; EN 13617-2 (memory).
    """
    part, low, high = look.part, look.requirement.separation.minimum, look.requirement.separation.maximum
    least = outside(part.number(_LEAST), low, high, FORCE_ROUNDING_N)
    yield look.broken(
        RuleId.SEPARATION_WINDOW,
        least | outside(part.number(_MOST), low, high, FORCE_ROUNDING_N),
        figure("separation_minimum", _LEAST, Dimension.FORCE),
        figure("separation_maximum", _MOST, Dimension.FORCE),
        quantity("allowed_minimum", low, Dimension.FORCE),
        quantity("allowed_maximum", high, Dimension.FORCE),
        severity=Severity.MUST if is_flammable(look.requirement.liquid.family) else Severity.SHOULD,
        limits=(LimitId.BREAKAWAY_SEPARATION_MIN, LimitId.BREAKAWAY_SEPARATION_MAX),
    )


def closes_vapour(look: Look) -> Iterator[Breach]:
    """Ask: a vapour breakaway closes the vapour path too. Source: CARB executive orders (secondary)."""
    path = look.requirement.path
    if path is not FlowPath.SINGLE:
        stays_open = ~look.part.flag("breakaway.closes_vapour")
        yield look.broken(RuleId.BREAKAWAY_CLOSES_VAPOUR, stays_open, word("path", path))


def turns_enough(look: Look) -> Iterator[Breach]:
    """Ask: the swivel turns in as many planes as the duty asks. Source: common practice."""
    asked = look.requirement.swivel_planes
    if asked is not None:
        yield look.broken(
            RuleId.SWIVEL_PLANES,
            look.part.number("swivel.planes") < asked,
            figure("planes", "swivel.planes", Dimension.COUNT),
            quantity("planes_asked", asked, Dimension.COUNT),
            limits=(_PLANES_ROW[look.requirement.position.duty],),
        )


def device_resistance(look: Look) -> Iterator[Breach]:
    """Ask: resistance (ohm) across a breakaway or swivel. Source: UL 567A 12.2 (secondary)."""
    most, stated = look.limit(LimitId.BOND_DEVICE_MAX), resistance_ohm(look.part)
    yield look.broken(
        RuleId.PART_RESISTANCE,
        stated > most * (1.0 + 1e-9),
        figure("resistance", "resistance_ohm", Dimension.RESISTANCE),
        quantity("resistance_maximum", most, Dimension.RESISTANCE),
        severity=look.requirement.bonding_severity,
        limits=(LimitId.BOND_DEVICE_MAX,),
    )


def outlasts_itself(look: Look) -> Iterator[Breach]:
    """Ask: the halves of a breakaway bear (N) its own separation with margin. Source: statics; margin judgement."""
    demand = pull_demand_n(look.part, look.slot, look.requirement, look.tables)
    yield look.broken(
        RuleId.BREAKAWAY_OWN_STRENGTH,
        look.part.number("pull_strength_n") < demand * (1.0 - 1e-9),
        figure("pull_strength", "pull_strength_n", Dimension.FORCE),
        quantity("pull_demand", demand, Dimension.FORCE),
        limits=(LimitId.BREAKAWAY_STRENGTH_MARGIN,),
    )


def adds_a_joint(look: Look) -> Iterator[Breach]:
    """Ask: no adaptor where parts that mate by themselves exist, so that sets with fewest come first.

    Source: common practice, no source.
    """
    yield look.broken(RuleId.ADAPTOR_ADDS_JOINT, EVERYWHERE, words_of("part", "number"))


def adaptor_path(look: Look) -> Iterator[Breach]:
    """Ask: an adaptor leads from the outlet's path, or the set's, to the set's; a vapour port it leaves is closed.

    Source: UL 330 clause 4 note; closing is common practice.
    """
    part, path = look.part, look.requirement.path
    has_ends = part.has_port("inlet") & part.has_port("outlet")
    leads = part.on_path("outlet", path) & part.on_path("inlet", path, look.requirement.outlet.path)
    own = words_of("part_path", "outlet.path")
    yield look.broken(RuleId.PART_PATH, has_ends & ~leads, own, word("path", path))
    leaves_vapour = ~part.on_path("inlet", FlowPath.SINGLE) & part.on_path("outlet", FlowPath.SINGLE)
    yield look.broken(
        RuleId.ADAPTOR_CLOSES_VAPOUR,
        has_ends & leaves_vapour & ~part.flag("adaptor.closes_vapour"),
        words_of("part_path", "inlet.path"),
        word("path", path),
    )


def splitter_has_return(look: Look) -> Iterator[Breach]:
    """Ask: a splitter finds a vapour return pipe at the outlet. Source: common practice."""
    if not look.requirement.position.outlet.vapour_return_available:
        needs = look.part.flag("adaptor.needs_vapour_return")
        yield look.broken(RuleId.SPLITTER_VAPOUR_RETURN, needs, word("vapour_return_available", yes_no(False)))


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
