"""The rules that only a hose can break."""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np

from spoutline.model.limit import LimitId
from spoutline.model.liquid import LiquidFamily, ListingScheme
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Slot
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.hose import construction_limit_id, is_on_reel, length_limit_id
from spoutline.rules.derive.turn import turn_angle_rad
from spoutline.rules.parts.figures import flow_ceiling_m3_s
from spoutline.rules.parts.look import Breach, Look, PartRule, figure, quantity, word, words_of
from spoutline.rules.parts.sums import passages, resistance_ohm
from spoutline.rules.verdicts import yes_no

_TOLERANCE_M = 1e-6  # stock lengths are typed in rounded feet or metres
_LENGTH, _BEND_RADIUS = "hose.length_m", "hose.minimum_bend_radius_m"


def built_as_asked(look: Look) -> Iterator[Breach]:
    """Ask: the curb hose has the construction that its retrieval asks. Source: EN 1360, ISO 5772; common practice."""
    asked = look.requirement.hose_construction
    if look.slot is not Slot.CURB_HOSE or asked is None:
        return
    yield look.broken(
        RuleId.HOSE_CONSTRUCTION,
        ~look.part.has("hose.construction", asked),
        words_of("construction", "hose.construction"),
        word("construction_asked", asked),
        limits=(construction_limit_id(look.requirement.position),),
    )


def winds_onto_the_drum(look: Look) -> Iterator[Breach]:
    """Ask: the drum (m, center line of the hose) keeps the least bend radius of the hose. Source: part data."""
    position = look.requirement.position
    if look.slot is not Slot.CURB_HOSE or not is_on_reel(position):
        return
    drum = position.reel.drum_diameter_m / 2.0
    yield look.broken(
        RuleId.HOSE_DRUM,
        look.part.number(_BEND_RADIUS) > drum + _TOLERANCE_M,
        figure("bend_radius", _BEND_RADIUS, Dimension.LENGTH),
        quantity("drum_radius", drum, Dimension.LENGTH),
    )


def low_permeation_as_asked(look: Look) -> Iterator[Breach]:
    """Ask: marking and stated rate (kg/(m2.s)) of a low-permeation hose. Source: UL 330; CARB (memory)."""
    requirement = look.requirement
    if not requirement.low_permeation:
        return
    yield look.broken(
        RuleId.HOSE_LOW_PERMEATION,
        ~look.part.flag("hose.low_permeation"),
        word("low_permeation", yes_no(False)),
        limits=(LimitId.HOSE_LOW_PERMEATION,),
    )
    most = requirement.permeation_max_kg_m2_s
    if most is not None:
        rate = "hose.permeation_kg_m2_s"
        yield look.broken(
            RuleId.HOSE_PERMEATION_RATE,
            ~(look.part.number(rate) <= most * (1.0 + 1e-9)),  # unknown is never taken as good
            figure("permeation", rate, Dimension.PERMEATION, unknown="not_stated"),
            quantity("permeation_maximum", most, Dimension.PERMEATION),
            limits=(LimitId.HOSE_PERMEATION_MAX,),
        )


def within_length_limit(look: Look) -> Iterator[Breach]:
    """Ask: one hose (m) alone stays within the limit for all. Source: NFPA 30A 6.5; Okla. 165:26-2-92(a)."""
    requirement, most = look.requirement, look.requirement.hose_length.maximum
    if most is not None:
        yield look.broken(
            RuleId.HOSE_SINGLE_LENGTH,
            look.part.number(_LENGTH) > most + _TOLERANCE_M,
            figure("length", _LENGTH, Dimension.LENGTH),
            quantity("length_maximum", most, Dimension.LENGTH),
            limits=(length_limit_id(requirement.position, requirement.site),),
        )


def whip_long_enough(look: Look) -> Iterator[Breach]:
    """Ask: the whip hose (m) can turn the breakaway into the line of a drive-off.

    Source: arc of the least bend radius, as ``calc.reach.whip_length``; margin judgement.
    """
    if look.slot is not Slot.WHIP_HOSE:
        return
    angle, margin = turn_angle_rad(look.requirement.position), look.jurisdiction.number(LimitId.BEND_ANGLE_MARGIN)
    needed = margin * look.part.number(_BEND_RADIUS) * angle
    yield look.broken(
        RuleId.WHIP_LENGTH,
        look.part.number(_LENGTH) < needed - _TOLERANCE_M,
        figure("length", _LENGTH, Dimension.LENGTH),
        quantity("length_minimum", needed, Dimension.LENGTH),
        figure("bend_radius", _BEND_RADIUS, Dimension.LENGTH),
        quantity("turn_angle", angle, Dimension.ANGLE),
        limits=(LimitId.BEND_ANGLE_MARGIN,),
    )


def slow_enough(look: Look) -> Iterator[Breach]:
    """Ask: velocity (m/s) at the greatest flow that can come. Source: static guidance for pipes (memory)."""
    most = look.limit(LimitId.FLOW_VELOCITY_MAX)
    ceiling = flow_ceiling_m3_s(look.requirement, look.tables)
    velocity = passages(look.part).of_each(lambda outer, inner: ceiling / (math.pi / 4.0 * (outer**2 - inner**2)))
    yield look.broken(
        RuleId.HOSE_VELOCITY,
        velocity > most,
        quantity("velocity", velocity, Dimension.VELOCITY),
        quantity("velocity_maximum", most, Dimension.VELOCITY),
        quantity("flow_ceiling", ceiling, Dimension.FLOW),
        limits=(LimitId.FLOW_VELOCITY_MAX,),
    )


def within_oxygenates(look: Look) -> Iterator[Breach]:
    """Ask: the blend stays within the oxygenates (percent) of the hose standard. Source: EN 1360:2013 scope."""
    liquid, most = look.requirement.liquid, look.limit(LimitId.HOSE_OXYGENATE_MAX)
    if liquid.family is LiquidFamily.GASOLINE and liquid.blend_percent > most:
        yield look.broken(
            RuleId.OXYGENATE_LIMIT,
            look.part.has("schemes", ListingScheme.EN),
            quantity("blend_percent", liquid.blend_percent, Dimension.PERCENT),
            quantity("oxygenate_maximum", most, Dimension.PERCENT),
            limits=(LimitId.HOSE_OXYGENATE_MAX,),
        )


def carries_its_swivel(look: Look) -> Iterator[Breach]:
    """Ask: a vapour curb hose has its swivel built in: the chain has no other. Source: common practice."""
    path = look.requirement.path
    if look.slot is Slot.CURB_HOSE and path is not FlowPath.SINGLE:
        yield look.broken(RuleId.HOSE_BUILT_IN_SWIVEL, ~look.part.flag("hose.built_in_swivel"), word("path", path))


def resistance_per_length(look: Look) -> Iterator[Breach]:
    """Ask: resistance per metre (ohm/m) of a hose. Source: UL 330; PEI RP400 (memory)."""
    most, total = look.limit(LimitId.BOND_HOSE_MAX), resistance_ohm(look.part)
    per_metre = look.part.number("hose.resistance_ohm_m")
    stated = np.where(np.isnan(per_metre), total / look.part.number(_LENGTH), per_metre)
    yield look.broken(
        RuleId.PART_RESISTANCE,
        ~np.isnan(total) & (stated > most * (1.0 + 1e-9)),
        quantity("resistance", stated, Dimension.RESISTANCE_PER_LENGTH),
        quantity("resistance_maximum", most, Dimension.RESISTANCE_PER_LENGTH),
        severity=look.requirement.bonding_severity,
        limits=(LimitId.BOND_HOSE_MAX,),
    )


HOSE_RULES: tuple[PartRule, ...] = (
    built_as_asked,
    winds_onto_the_drum,
    low_permeation_as_asked,
    within_length_limit,
    whip_long_enough,
    slow_enough,
    within_oxygenates,
    carries_its_swivel,
    resistance_per_length,
)
