"""From a surveyed position to what its set must be: every line with the rule and the limit rows that set it."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.frozen import frozen
from spoutline.model.check import Bound
from spoutline.model.finding import Severity, Verdict
from spoutline.model.limit import LimitId, LimitStatus, RuleTables
from spoutline.model.liquid import Liquid, LiquidFamily, is_flammable
from spoutline.model.port import FlowPath, Port
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Refusal, RefusalStatus, Requirement, Slot, Window
from spoutline.model.survey import Duty, Position, Retrieval, Site
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.climate import derive_climate
from spoutline.rules.derive.flow import derive_supply
from spoutline.rules.derive.hose import HoseAsked, derive_hose, impossible_fillers, is_on_reel
from spoutline.rules.derive.listing import ClassFound, ClassGap, class_for
from spoutline.rules.derive.nozzle import derive_nozzle
from spoutline.rules.derive.outlet import derive_outlet
from spoutline.rules.derive.reach_needed import ReachNeeded
from spoutline.rules.derive.refusal import Refused, refusal_of
from spoutline.rules.derive.turn import turn_angle_rad
from spoutline.rules.derive.vapour import derive_path, path_for
from spoutline.rules.verdicts import Derivation, yes_no

_SWIVEL_PLANES = {
    Duty.CAR: LimitId.SWIVEL_PLANES_CAR,
    Duty.TRUCK: LimitId.SWIVEL_PLANES_TRUCK,
    Duty.MARINE: LimitId.SWIVEL_PLANES_MARINE,
    Duty.REEL: LimitId.SWIVEL_PLANES_REEL,
}


@frozen(kw_only=True)
class PullAsked:
    """The chain and what pulls on it. Forces in N, angles in rad."""

    chain: tuple[Slot, ...]
    breakaway_at_nozzle: bool
    separation: Window
    swivel_planes: int | None
    outlet_pull_strength_n: float


_PLACE_OF_RULE: dict[str, int] = {rule_id: place for place, rule_id in enumerate(RuleId)}


def requirement_for(position: Position, site: Site, tables: RuleTables) -> Requirement | Refusal:
    """Return what the position asks of its set, or why nothing can be asked.

    Parameters: ``position`` and ``site`` from the survey (SI units in the names); ``tables``, the rule profile and the
    material table. Result: a requirement in SI units, or a refusal that names every reason at once.
    Sources: those of the limit rows, repeated on each line.
    """
    notes = Derivation(position=position, site=site, tables=tables)
    liquid = Liquid(position.liquid.family, position.liquid.blend_percent)
    found = class_for(liquid, tables.jurisdiction)
    reasons = (
        *_derive_class(notes, liquid, found),
        *derive_path(notes),
        *derive_outlet(notes),
        *derive_climate(notes, liquid),
        *impossible_fillers(notes),
    )
    if reasons or isinstance(found, ClassGap):
        return refusal_of(reasons, notes)
    return _requirement(notes, liquid, found)


def outlet_port(position: Position) -> Port:
    """Return the dispenser's outlet as a port.

    Parameters: ``position``, its outlet.
    """
    outlet = position.outlet
    return Port(outlet.thread, outlet.size, outlet.gender, outlet.path)


def chain_for(path: FlowPath, *, breakaway_at_nozzle: bool) -> tuple[Slot, ...]:
    """Return the slots from the dispenser to the nozzle; adaptors may stand between.

    A coaxial hose carries its swivel, so a coaxial chain has none of its own.

    Parameters: ``path`` of the set; ``breakaway_at_nozzle``, whether it parts there instead of above the curb hose.
    Source: common practice; Okla. 165:26-2-91(d) for the place with a retriever.
    """
    if path is FlowPath.SINGLE:
        if breakaway_at_nozzle:
            return (Slot.CURB_HOSE, Slot.SWIVEL_BREAKAWAY, Slot.NOZZLE)
        return (Slot.WHIP_HOSE, Slot.BREAKAWAY, Slot.CURB_HOSE, Slot.SWIVEL, Slot.NOZZLE)
    if breakaway_at_nozzle:
        return (Slot.CURB_HOSE, Slot.BREAKAWAY, Slot.NOZZLE)
    return (Slot.WHIP_HOSE, Slot.BREAKAWAY, Slot.CURB_HOSE, Slot.NOZZLE)


def _derive_class(notes: Derivation, liquid: Liquid, found: ClassFound | ClassGap) -> tuple[Refused, ...]:
    blend = (Fact("family", liquid.family), Quantity("blend_percent", liquid.blend_percent, Dimension.PERCENT))
    if isinstance(found, ClassGap):
        bounds = (("covered_up_to", found.covered_up_to), ("covered_from", found.covered_from))
        ends = tuple(Quantity(name, bound, Dimension.PERCENT) for name, bound in bounds if bound is not None)
        notes.line(RuleId.ASKS_LISTING_CLASS, *blend, Fact("listing_class", "none"), limits=found.limits)
        gap = notes.find(RuleId.CLASS_GAP, *blend, *ends, verdict=Verdict.BROKEN, limits=found.limits)
        return (Refused(RefusalStatus.NO_LISTING_CLASS, gap, found.ways_out),)
    named = found.listing_class or "not_needed"
    notes.line(RuleId.ASKS_LISTING_CLASS, *blend, Fact("listing_class", named), limits=found.limits)
    if found.listing_class is not None:
        scheme = Fact("scheme", notes.tables.jurisdiction.scheme)
        notes.line(RuleId.ASKS_LISTING_SCHEME, scheme, limits=(LimitId.LISTING_SCHEME,))
    notes.line(RuleId.ASKS_MATERIALS, Fact("column", found.column))
    return ()


def _requirement(notes: Derivation, liquid: Liquid, found: ClassFound) -> Requirement:
    position, jurisdiction = notes.position, notes.tables.jurisdiction
    path = path_for(position)
    nozzle = derive_nozzle(notes, path)
    hose = derive_hose(notes, path)
    pull = _derive_pull(notes, path, hose)
    bonding = _derive_bond(notes)
    supply = derive_supply(notes)
    _derive_sale(notes)
    urea = _derive_urea(notes)
    return Requirement(
        site=notes.site,
        position=position,
        liquid=liquid,
        listing_class=found.listing_class,
        scheme=jurisdiction.scheme,
        material_column=found.column,
        nozzle_services=nozzle.services,
        spout=nozzle.spout,
        path=path,
        outlet=outlet_port(position),
        chain=pull.chain,
        breakaway_at_nozzle=pull.breakaway_at_nozzle,
        separation=pull.separation,
        swivel_planes=pull.swivel_planes,
        hose_construction=hose.construction,
        low_permeation=hose.low_permeation,
        permeation_max_kg_m2_s=hose.permeation_max_kg_m2_s,
        automatic=nozzle.automatic,
        hold_open=nozzle.hold_open,
        attitude_device=nozzle.attitude_device,
        no_pressure_device=nozzle.no_pressure_device,
        enhanced_conventional=nozzle.enhanced_conventional,
        def_zone=nozzle.def_zone,
        bonding_severity=bonding,
        temperature_low_c=notes.site.climate.low_c,
        temperature_high_c=notes.site.climate.high_c,
        pressure_pa=supply.pressure_pa,
        supply_pressure_pa=supply.supply_pressure_pa,
        supply_flow_m3_s=supply.supply_flow_m3_s,
        wanted_flow_m3_s=supply.wanted_flow_m3_s,
        hose_length=hose.length,
        whip_length_min_m=None,  # each whip hose has its own, from its bend radius
        drive_off_angle_rad=0.0,  # a whip hose that is long enough, or a place at the nozzle, leaves none
        outlet_pull_strength_n=pull.outlet_pull_strength_n,
        lines=tuple(sorted(notes.lines, key=lambda line: _PLACE_OF_RULE[line.rule_id])),
        findings=tuple(notes.findings),
        limit_statuses=tuple(_limit_statuses(notes)),
        urea_percent=urea,
    )


def _derive_urea(notes: Derivation) -> tuple[Bound, Bound] | None:
    """Return the least and most urea of the DEF that this position dispenses; None for a fuel."""
    if notes.position.liquid.family is not LiquidFamily.DEF:
        return None
    limits = (LimitId.DEF_UREA_MIN, LimitId.DEF_UREA_MAX)
    rows = [notes.tables.jurisdiction.limit(limit_id) for limit_id in limits]
    low, high = (notes.tables.jurisdiction.number(limit_id) for limit_id in limits)
    notes.find(
        RuleId.DEF_CONCENTRATION,
        Quantity("urea_minimum", low, Dimension.PERCENT),
        Quantity("urea_maximum", high, Dimension.PERCENT),
        verdict=Verdict.NOTE,
        limits=limits,
    )
    first, last = (
        Bound(value=value, source=row.source, status=row.status) for value, row in zip((low, high), rows, strict=True)
    )
    return first, last


def _limit_statuses(notes: Derivation) -> Iterator[tuple[LimitId, LimitStatus]]:
    """Yield each limit that the lines and findings read, once, with how well it is founded."""
    of_lines = [limit_id for line in notes.lines for limit_id in line.limit_ids]
    of_findings = [limit_id for found in notes.findings for limit_id in found.limit_ids]
    for limit_id in dict.fromkeys((*of_lines, *of_findings)):
        yield limit_id, notes.tables.jurisdiction.limit(limit_id).status


def _derive_pull(notes: Derivation, path: FlowPath, hose: HoseAsked) -> PullAsked:
    jurisdiction = notes.tables.jurisdiction
    at_nozzle = _derive_breakaway_place(notes, hose.reach)
    chain = chain_for(path, breakaway_at_nozzle=at_nozzle)
    notes.line(RuleId.ASKS_CHAIN, Fact("chain", ", ".join(chain)))
    low = jurisdiction.number(LimitId.BREAKAWAY_SEPARATION_MIN)
    high = jurisdiction.number(LimitId.BREAKAWAY_SEPARATION_MAX)
    notes.line(
        RuleId.ASKS_SEPARATION_FORCE,
        Quantity("separation_minimum", low, Dimension.FORCE),
        Quantity("separation_maximum", high, Dimension.FORCE),
        severity=_breakaway_severity(notes.position),
        limits=(LimitId.BREAKAWAY_SEPARATION_MIN, LimitId.BREAKAWAY_SEPARATION_MAX),
    )
    notes.line(
        RuleId.ASKS_SERVICE_LOAD,
        Quantity("margin", jurisdiction.number(LimitId.BREAKAWAY_SERVICE_MARGIN), Dimension.RATIO),
        Quantity("user_tug", jurisdiction.number(LimitId.PULL_USER_TUG), Dimension.FORCE),
        limits=(LimitId.BREAKAWAY_SERVICE_MARGIN, LimitId.PULL_USER_TUG),
    )
    return PullAsked(
        chain=chain,
        breakaway_at_nozzle=at_nozzle,
        separation=Window(minimum=low, maximum=high),
        swivel_planes=_derive_swivel(notes, path),
        outlet_pull_strength_n=_derive_drive_off(notes, at_nozzle),
    )


def _breakaway_severity(position: Position) -> Severity:
    """Return how much the breakaway weighs: codes ask for it on fuel hoses; on a DEF hose it is common practice."""
    return Severity.MUST if is_flammable(position.liquid.family) else Severity.SHOULD


def _derive_breakaway_place(notes: Derivation, reach: ReachNeeded) -> bool:
    position, jurisdiction = notes.position, notes.tables.jurisdiction
    long_marine = position.duty is Duty.MARINE and reach.needed_m > jurisdiction.number(LimitId.HOSE_MARINE_LONG)
    at_nozzle = is_on_reel(position) or position.retrieval is Retrieval.RETRACTOR or long_marine
    length = (Quantity("needed_length", reach.needed_m, Dimension.LENGTH),) if position.duty is Duty.MARINE else ()
    notes.line(
        RuleId.ASKS_BREAKAWAY_PLACE,
        Fact("retrieval", position.retrieval),
        Fact("duty", position.duty),
        *length,
        Fact("place", "nozzle_end" if at_nozzle else "dispenser_end"),
        severity=_breakaway_severity(position),
        limits=(LimitId.BREAKAWAY_REQUIRED,) + ((LimitId.HOSE_MARINE_LONG,) if length else ()),
    )
    if position.reconnectable_wanted:
        notes.line(RuleId.ASKS_RECONNECTABLE, Fact("reconnectable", yes_no(True)))
    if is_flammable(position.liquid.family) and not jurisdiction.flag(LimitId.BREAKAWAY_REQUIRED):
        notes.find(
            RuleId.BREAKAWAY_NOT_DEMANDED,
            Fact("family", position.liquid.family),
            verdict=Verdict.NOTE,
            limits=(LimitId.BREAKAWAY_REQUIRED,),
        )
    return at_nozzle


def _derive_drive_off(notes: Derivation, at_nozzle: bool) -> float:
    position, jurisdiction = notes.position, notes.tables.jurisdiction
    stated = position.outlet.pull_strength_n
    strength = jurisdiction.number(LimitId.OUTLET_PULL_STRENGTH) if stated is None else stated
    shown = Quantity("outlet_pull_strength", strength, Dimension.FORCE)
    if stated is None:
        notes.find(
            RuleId.OUTLET_STRENGTH_ASSUMED,
            shown,
            verdict=Verdict.QUESTION,
            limits=(LimitId.OUTLET_PULL_STRENGTH,),
        )
    angle = Quantity("turn_angle", turn_angle_rad(position), Dimension.ANGLE)
    notes.line(
        RuleId.ASKS_DRIVE_OFF,
        Quantity("margin", jurisdiction.number(LimitId.BREAKAWAY_STRENGTH_MARGIN), Dimension.RATIO),
        shown,
        *(() if at_nozzle else (angle,)),
        limits=(LimitId.BREAKAWAY_STRENGTH_MARGIN,) + ((LimitId.OUTLET_PULL_STRENGTH,) if stated is None else ()),
    )
    if not at_nozzle:
        margin = Quantity("margin", jurisdiction.number(LimitId.BEND_ANGLE_MARGIN), Dimension.RATIO)
        notes.line(RuleId.ASKS_WHIP_LENGTH, angle, margin, limits=(LimitId.BEND_ANGLE_MARGIN,))
    return strength


def _derive_swivel(notes: Derivation, path: FlowPath) -> int | None:
    facts = (Fact("duty", notes.position.duty), Fact("path", path))
    if path is not FlowPath.SINGLE:
        notes.line(RuleId.ASKS_SWIVEL, *facts, Fact("planes", "built_in"))
        return None
    row = _SWIVEL_PLANES[notes.position.duty]
    planes = round(notes.tables.jurisdiction.number(row))
    notes.line(RuleId.ASKS_SWIVEL, *facts, Quantity("planes", planes, Dimension.COUNT), limits=(row,))
    return planes


def _derive_bond(notes: Derivation) -> Severity:
    jurisdiction, family = notes.tables.jurisdiction, notes.position.liquid.family
    bonded = is_flammable(family) or jurisdiction.flag(LimitId.BOND_DEF_REQUIRED)
    severity = Severity.MUST if bonded else Severity.ADVICE
    rows = (LimitId.BOND_DEF_REQUIRED,) if family is LiquidFamily.DEF else ()
    facts = (Fact("family", family), Fact("severity", severity))
    notes.line(RuleId.ASKS_CONTINUITY, *facts, severity=severity, limits=rows)
    bounds = (
        ("total_maximum", LimitId.BOND_TOTAL_MAX, Dimension.RESISTANCE),
        ("device_maximum", LimitId.BOND_DEVICE_MAX, Dimension.RESISTANCE),
        ("hose_maximum", LimitId.BOND_HOSE_MAX, Dimension.RESISTANCE_PER_LENGTH),
    )
    values = [(name, row, jurisdiction.optional_number(row), dimension) for name, row, dimension in bounds]
    notes.line(
        RuleId.ASKS_RESISTANCE,
        *(Quantity(name, value, dimension) for name, _, value, dimension in values if value is not None),
        severity=severity,
        limits=tuple(row for _, row, value, _ in values if value is not None),
    )
    return severity


def _derive_sale(notes: Derivation) -> None:
    """Add what the catalogue and the person's own decisions ask."""
    decisions = notes.position.decisions
    notes.line(RuleId.ASKS_STATUS, Fact("status", "active"))
    notes.line(RuleId.ASKS_PRICE, Fact("currency", notes.site.currency))
    notes.line(RuleId.ASKS_JOINTS, Fact("outlet", str(outlet_port(notes.position))))
    if decisions.longest_lead_time_days is not None:
        longest = Quantity("longest_lead_time", decisions.longest_lead_time_days, Dimension.DAYS)
        notes.line(RuleId.ASKS_LEAD_TIME, longest)
    if decisions.pinned or decisions.refused:
        notes.line(
            RuleId.ASKS_DECISION,
            Fact("pinned", ", ".join(map(str, decisions.pinned))),
            Fact("refused", ", ".join(map(str, decisions.refused))),
        )
