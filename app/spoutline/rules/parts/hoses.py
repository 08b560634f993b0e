"""The rules that only a hose can break."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.calc.reach import whip_length
from spoutline.model.finding import Finding
from spoutline.model.limit import LimitId
from spoutline.model.liquid import LiquidFamily, ListingScheme
from spoutline.model.part import HoseData
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Slot
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.hose import construction_limit_id, is_on_reel, length_limit_id
from spoutline.rules.derive.turn import turn_angle_rad
from spoutline.rules.parts.candidate import Candidate, PartRule
from spoutline.rules.parts.figures import flow_ceiling_m3_s, part_resistance_ohm, passage_area_m2
from spoutline.rules.verdicts import yes_no

_TOLERANCE_M = 1e-6  # stock lengths are typed in rounded feet or metres


def _hose(candidate: Candidate) -> HoseData:
    data = candidate.part.hose
    if data is None:
        raise ValueError(f"{candidate.part.number} is judged as a hose but carries no hose data")
    return data


def built_as_asked(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the curb hose has the construction that its retrieval asks. Source: EN 1360, ISO 5772; common practice."""
    asked, construction = candidate.requirement.hose_construction, _hose(candidate).construction
    if candidate.slot is not Slot.CURB_HOSE or asked in (None, construction):
        return
    facts = (Fact("construction", construction), Fact("construction_asked", asked or ""))
    row = construction_limit_id(candidate.requirement.position)
    yield candidate.broken(RuleId.HOSE_CONSTRUCTION, *facts, limits=(row,))


def winds_onto_the_drum(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the drum (m, center line of the hose) keeps the least bend radius of the hose. Source: part data."""
    data, position = _hose(candidate), candidate.requirement.position
    if candidate.slot is not Slot.CURB_HOSE or not is_on_reel(position):
        return
    drum = position.reel.drum_diameter_m / 2.0
    if data.minimum_bend_radius_m > drum + _TOLERANCE_M:
        yield candidate.broken(
            RuleId.HOSE_DRUM,
            Quantity("bend_radius", data.minimum_bend_radius_m, Dimension.LENGTH),
            Quantity("drum_radius", drum, Dimension.LENGTH),
        )


def low_permeation_as_asked(candidate: Candidate) -> Iterator[Finding]:
    """Ask: marking and stated rate (kg/(m2.s)) of a low-permeation hose. Source: UL 330; CARB (memory)."""
    requirement, data = candidate.requirement, _hose(candidate)
    if not requirement.low_permeation:
        return
    if not data.low_permeation:
        fact = Fact("low_permeation", yes_no(False))
        yield candidate.broken(RuleId.HOSE_LOW_PERMEATION, fact, limits=(LimitId.HOSE_LOW_PERMEATION,))
    most = requirement.permeation_max_kg_m2_s
    if most is None or (data.permeation_kg_m2_s is not None and data.permeation_kg_m2_s <= most * (1.0 + 1e-9)):
        return
    stated = (
        Fact("permeation", "not_stated")
        if data.permeation_kg_m2_s is None
        else Quantity("permeation", data.permeation_kg_m2_s, Dimension.PERMEATION)
    )
    maximum = Quantity("permeation_maximum", most, Dimension.PERMEATION)
    yield candidate.broken(RuleId.HOSE_PERMEATION_RATE, stated, maximum, limits=(LimitId.HOSE_PERMEATION_MAX,))


def within_length_limit(candidate: Candidate) -> Iterator[Finding]:
    """Ask: one hose (m) alone stays within the limit for all. Source: NFPA 30A 6.5; Okla. 165:26-2-92(a)."""
    requirement, length = candidate.requirement, _hose(candidate).length_m
    most = requirement.hose_length.maximum
    if most is not None and length > most + _TOLERANCE_M:
        yield candidate.broken(
            RuleId.HOSE_SINGLE_LENGTH,
            Quantity("length", length, Dimension.LENGTH),
            Quantity("length_maximum", most, Dimension.LENGTH),
            limits=(length_limit_id(requirement.position, requirement.site),),
        )


def whip_long_enough(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the whip hose (m) can turn the breakaway into the line of a drive-off.

    Source: geometry; margin judgement.
    """
    if candidate.slot is not Slot.WHIP_HOSE:
        return
    data = _hose(candidate)
    angle = turn_angle_rad(candidate.requirement.position)
    needed = whip_length(
        bend_radius_m=data.minimum_bend_radius_m,
        turn_angle_rad=angle,
        margin=candidate.jurisdiction.number(LimitId.BEND_ANGLE_MARGIN),
    ).length_m
    if data.length_m < needed - _TOLERANCE_M:
        yield candidate.broken(
            RuleId.WHIP_LENGTH,
            Quantity("length", data.length_m, Dimension.LENGTH),
            Quantity("length_minimum", needed, Dimension.LENGTH),
            Quantity("bend_radius", data.minimum_bend_radius_m, Dimension.LENGTH),
            Quantity("turn_angle", angle, Dimension.ANGLE),
            limits=(LimitId.BEND_ANGLE_MARGIN,),
        )


def slow_enough(candidate: Candidate) -> Iterator[Finding]:
    """Ask: velocity (m/s) at the greatest flow that can come. Source: static guidance for pipes (memory)."""
    most = candidate.jurisdiction.optional_number(LimitId.FLOW_VELOCITY_MAX)
    area = passage_area_m2(_hose(candidate), candidate.part.path or FlowPath.SINGLE)
    if most is None or area is None:
        return
    ceiling = flow_ceiling_m3_s(candidate.requirement, candidate.tables)
    if ceiling / area > most:
        yield candidate.broken(
            RuleId.HOSE_VELOCITY,
            Quantity("velocity", ceiling / area, Dimension.VELOCITY),
            Quantity("velocity_maximum", most, Dimension.VELOCITY),
            Quantity("flow_ceiling", ceiling, Dimension.FLOW),
            limits=(LimitId.FLOW_VELOCITY_MAX,),
        )


def within_oxygenates(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the blend stays within the oxygenates (percent) of the hose standard. Source: EN 1360:2013 scope."""
    liquid = candidate.requirement.liquid
    most = candidate.jurisdiction.optional_number(LimitId.HOSE_OXYGENATE_MAX)
    if most is None or liquid.family is not LiquidFamily.GASOLINE or ListingScheme.EN not in candidate.part.schemes:
        return
    if liquid.blend_percent > most:
        yield candidate.broken(
            RuleId.OXYGENATE_LIMIT,
            Quantity("blend_percent", liquid.blend_percent, Dimension.PERCENT),
            Quantity("oxygenate_maximum", most, Dimension.PERCENT),
            limits=(LimitId.HOSE_OXYGENATE_MAX,),
        )


def carries_its_swivel(candidate: Candidate) -> Iterator[Finding]:
    """Ask: a vapour curb hose has its swivel built in: the chain has no other. Source: common practice."""
    path = candidate.requirement.path
    if candidate.slot is Slot.CURB_HOSE and path is not FlowPath.SINGLE and not _hose(candidate).built_in_swivel:
        yield candidate.broken(RuleId.HOSE_BUILT_IN_SWIVEL, Fact("path", path))


def resistance_per_length(candidate: Candidate) -> Iterator[Finding]:
    """Ask: resistance per metre (ohm/m) of a hose. Source: UL 330; PEI RP400 (memory)."""
    most = candidate.jurisdiction.optional_number(LimitId.BOND_HOSE_MAX)
    total = part_resistance_ohm(candidate.part)
    if most is None or total is None:
        return
    per_metre = _hose(candidate).resistance_ohm_m
    stated = total / _hose(candidate).length_m if per_metre is None else per_metre
    if stated > most * (1.0 + 1e-9):
        yield candidate.broken(
            RuleId.PART_RESISTANCE,
            Quantity("resistance", stated, Dimension.RESISTANCE_PER_LENGTH),
            Quantity("resistance_maximum", most, Dimension.RESISTANCE_PER_LENGTH),
            severity=candidate.requirement.bonding_severity,
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
