"""What the position asks of its nozzle: filler, spout, shut-off, latch, no-pressure device."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.finding import Severity, Verdict
from spoutline.model.limit import Jurisdiction, LimitId
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import NozzleService
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Window
from spoutline.model.survey import Duty, Position, Service, Site
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.verdicts import Derivation, yes_no

SPOUT_LIMITS: dict[NozzleService, tuple[LimitId, LimitId]] = {
    NozzleService.GASOLINE: (LimitId.SPOUT_GASOLINE_OD_MIN, LimitId.SPOUT_GASOLINE_OD_MAX),
    NozzleService.DIESEL_CAR: (LimitId.SPOUT_DIESEL_CAR_OD_MIN, LimitId.SPOUT_DIESEL_CAR_OD_MAX),
    NozzleService.DIESEL_TRUCK: (LimitId.SPOUT_DIESEL_TRUCK_OD_MIN, LimitId.SPOUT_DIESEL_TRUCK_OD_MAX),
    NozzleService.DEF: (LimitId.SPOUT_DEF_OD_MIN, LimitId.SPOUT_DEF_OD_MAX),
}

_HOLD_OPEN_BY_SERVICE = {
    Service.SELF: LimitId.HOLD_OPEN_SELF,
    Service.ATTENDED: LimitId.HOLD_OPEN_ATTENDED,
    Service.UNATTENDED: LimitId.HOLD_OPEN_UNATTENDED,
}


@frozen(kw_only=True)
class NozzleAsked:
    """The derived part of the requirement that only a nozzle answers. Spout in metres."""

    services: frozenset[NozzleService]
    spout: Window
    automatic: bool
    hold_open: bool
    attitude_device: bool
    no_pressure_device: bool
    enhanced_conventional: bool
    def_zone: bool


def services_for(family: LiquidFamily, duty: Duty) -> frozenset[NozzleService]:
    """Return the nozzle services whose spout suits the filler that the duty meets.

    Gasoline keeps the gasoline spout at every duty. On boats and at reels both diesel fillers are met.

    Parameters: ``family``; ``duty``. Source: SAE J285 (secondary); boats and reels common practice, no source.
    """
    if family is LiquidFamily.GASOLINE:
        return frozenset({NozzleService.GASOLINE})
    if family is LiquidFamily.DEF:
        return frozenset({NozzleService.DEF})
    if duty is Duty.CAR:
        return frozenset({NozzleService.DIESEL_CAR})
    if duty is Duty.TRUCK:
        return frozenset({NozzleService.DIESEL_TRUCK})
    return frozenset({NozzleService.DIESEL_CAR, NozzleService.DIESEL_TRUCK})


def spout_window(service: NozzleService, jurisdiction: Jurisdiction) -> Window:
    """Return the outside diameters (m) that a spout of this service may have.

    Parameters: ``service``; ``jurisdiction``, the bounds (an empty row leaves a side open).
    Source: 40 CFR 1090.1550, SAE J285, ISO 22241-4 through the limit rows.
    """
    low, high = SPOUT_LIMITS[service]
    return Window(minimum=jurisdiction.optional_number(low), maximum=jurisdiction.optional_number(high))


def derive_nozzle(notes: Derivation, path: FlowPath) -> NozzleAsked:
    """Add the nozzle's lines and return what they ask.

    Parameters: ``notes``, the derivation under way; ``path``, the path of the set.
    """
    position = notes.position
    family = position.liquid.family
    services = services_for(family, position.duty)
    named = ", ".join(sorted(services))
    duty = (Fact("family", family), Fact("duty", position.duty))
    notes.line(RuleId.ASKS_LIQUID_SERVICE, *duty, Fact("services", named))
    spout = _derive_spout(notes, services, duty)
    notes.line(RuleId.ASKS_FILLER, *duty, limits=_filler_limits(family, position.duty))
    hold_open = _derive_hold_open(notes)
    return NozzleAsked(
        services=services,
        spout=spout,
        automatic=_derive_operation(notes),
        hold_open=hold_open,
        attitude_device=hold_open and latch_asks_attitude_device(position, notes.tables.jurisdiction),
        no_pressure_device=_derive_no_pressure_device(notes, hold_open),
        enhanced_conventional=_derive_enhanced_conventional(notes, path),
        def_zone=_derive_def_zone(notes),
    )


def _derive_spout(notes: Derivation, services: frozenset[NozzleService], duty: tuple[Fact, ...]) -> Window:
    windows = [spout_window(service, notes.tables.jurisdiction) for service in services]
    lows = [window.minimum for window in windows]
    highs = [window.maximum for window in windows]
    spout = Window(
        minimum=None if None in lows else min(low for low in lows if low is not None),
        maximum=None if None in highs else max(high for high in highs if high is not None),
    )
    sides = (("spout_minimum", spout.minimum), ("spout_maximum", spout.maximum))
    sizes = tuple(Quantity(name, side, Dimension.DIAMETER) for name, side in sides if side is not None)
    limits = tuple(limit for service in sorted(services) for limit in SPOUT_LIMITS[service])
    if NozzleService.GASOLINE in services:
        limits += (LimitId.SPOUT_GASOLINE_STRAIGHT_MIN, LimitId.SPOUT_GASOLINE_SPRING_DISTANCE)
    notes.line(RuleId.ASKS_SPOUT, *duty, *sizes, limits=limits)
    return spout


def _filler_limits(family: LiquidFamily, duty: Duty) -> tuple[LimitId, ...]:
    if family is LiquidFamily.DEF:
        return (LimitId.FILLER_DEF_OPENING,)
    if family is LiquidFamily.GASOLINE:
        return (LimitId.FILLER_GASOLINE_OPENING, LimitId.FILLER_DEF_OPENING)
    own = (LimitId.FILLER_DIESEL_CAR_OPENING,) if duty is Duty.CAR else ()
    return (LimitId.FILLER_GASOLINE_OPENING, LimitId.FILLER_DEF_OPENING, *own)


def _derive_operation(notes: Derivation) -> bool:
    position, jurisdiction = notes.position, notes.tables.jurisdiction
    case = f"{notes.site.service}:{position.duty}:{position.liquid.family}"
    required = jurisdiction.flag(LimitId.NOZZLE_AUTOMATIC_REQUIRED)
    automatic = required and case not in jurisdiction.texts(LimitId.NOZZLE_MANUAL_CASES)
    notes.line(
        RuleId.ASKS_OPERATION,
        Fact("service", notes.site.service),
        Fact("duty", position.duty),
        Fact("family", position.liquid.family),
        Fact("automatic", yes_no(automatic)),
        limits=(LimitId.NOZZLE_AUTOMATIC_REQUIRED, LimitId.NOZZLE_MANUAL_CASES),
    )
    return automatic


def hold_open_limits(position: Position, site: Site) -> tuple[LimitId, ...]:
    """Return the rows that must all allow a latch at this position.

    Parameters: ``position``, its duty and whether it hangs overhead; ``site``, who fuels.
    Source: NFPA 30A (secondary); IFC 2306.7.6 for overhead hoses, 29 CFR 1910.106(g)(4) for boats (memory).
    """
    rows = [_HOLD_OPEN_BY_SERVICE[site.service]]
    if position.duty is Duty.MARINE:
        rows.append(LimitId.HOLD_OPEN_MARINE)
    if position.overhead:
        rows.append(LimitId.HOLD_OPEN_OVERHEAD)
    return tuple(rows)


def latch_bars(position: Position, site: Site, jurisdiction: Jurisdiction) -> tuple[LimitId, ...]:
    """Return the rows that bar a latch here, whatever else the nozzle has; empty where one may be.

    Parameters: ``position``; ``site``, who fuels; ``jurisdiction``.
    Source: as for ``hold_open_limits``; the exception for an attitude device is in IFC 2306.7.6 (memory).
    """
    barring = (row for row in hold_open_limits(position, site) if not jurisdiction.flag(row))
    return tuple(
        row
        for row in barring
        if row is not LimitId.HOLD_OPEN_OVERHEAD or not jurisdiction.flag(LimitId.HOLD_OPEN_OVERHEAD_DEVICE)
    )


def latch_asks_attitude_device(position: Position, jurisdiction: Jurisdiction) -> bool:
    """Say whether a latch is allowed only on a nozzle that closes when it leaves the filler.

    Parameters: ``position``, whether it hangs overhead; ``jurisdiction``. Source: IFC 2306.7.6, exception (memory).
    """
    return position.overhead and not jurisdiction.flag(LimitId.HOLD_OPEN_OVERHEAD)


def _derive_hold_open(notes: Derivation) -> bool:
    position, jurisdiction = notes.position, notes.tables.jurisdiction
    barring = latch_bars(position, notes.site, jurisdiction)
    hold_open = position.hold_open_wanted and not barring
    with_device = hold_open and latch_asks_attitude_device(position, jurisdiction)
    exception = (LimitId.HOLD_OPEN_OVERHEAD_DEVICE,) if with_device else ()
    notes.line(
        RuleId.ASKS_HOLD_OPEN,
        Fact("wanted", yes_no(position.hold_open_wanted)),
        Fact("allowed", yes_no(not barring)),
        Fact("hold_open", yes_no(hold_open)),
        Fact("attitude_device", yes_no(with_device)),
        limits=barring or (*hold_open_limits(position, notes.site), *exception),
    )
    if position.hold_open_wanted and barring:
        notes.find(
            RuleId.HOLD_OPEN_NOT_ALLOWED,
            Fact("service", notes.site.service),
            Fact("duty", position.duty),
            Fact("overhead", yes_no(position.overhead)),
            verdict=Verdict.NOTE,
            limits=barring,
        )
    return hold_open


def _derive_no_pressure_device(notes: Derivation, hold_open: bool) -> bool:
    position, jurisdiction = notes.position, notes.tables.jurisdiction
    stopped_elsewhere = position.prepay or notes.site.service is Service.UNATTENDED
    with_latch = hold_open and jurisdiction.flag(LimitId.NO_PRESSURE_DEVICE_WITH_HOLD_OPEN)
    with_prepay = stopped_elsewhere and jurisdiction.flag(LimitId.NO_PRESSURE_DEVICE_WITH_PREPAY)
    wanted = with_latch or with_prepay
    notes.line(
        RuleId.ASKS_NO_PRESSURE_DEVICE,
        Fact("hold_open", yes_no(hold_open)),
        Fact("prepay", yes_no(position.prepay)),
        Fact("service", notes.site.service),
        Fact("no_pressure_device", yes_no(wanted)),
        limits=(LimitId.NO_PRESSURE_DEVICE_WITH_HOLD_OPEN, LimitId.NO_PRESSURE_DEVICE_WITH_PREPAY),
    )
    return wanted


def _derive_enhanced_conventional(notes: Derivation, path: FlowPath) -> bool:
    if notes.position.liquid.family is not LiquidFamily.GASOLINE:
        return False
    wanted = path is FlowPath.SINGLE and notes.tables.jurisdiction.flag(LimitId.ENHANCED_CONVENTIONAL)
    notes.line(
        RuleId.ASKS_ENHANCED_CONVENTIONAL,
        Fact("path", path),
        Fact("enhanced_conventional", yes_no(wanted)),
        limits=(LimitId.ENHANCED_CONVENTIONAL,),
    )
    return wanted


def _derive_def_zone(notes: Derivation) -> bool:
    """Ask for an evaluated DEF nozzle in the zone; an open answer is planned as outside, and asked."""
    position = notes.position
    if position.liquid.family is not LiquidFamily.DEF:
        return False
    asked_here = notes.tables.jurisdiction.flag(LimitId.LISTING_DEF_ZONE)
    answer = position.in_flammable_zone
    wanted = asked_here and answer is True
    limits = (LimitId.LISTING_DEF_ZONE,)
    notes.line(
        RuleId.ASKS_DEF_ZONE,
        Fact("in_flammable_zone", "not_answered" if answer is None else yes_no(answer)),
        Fact("evaluated_nozzle_wanted", yes_no(wanted)),
        severity=Severity.MUST,
        limits=limits,
    )
    if asked_here and answer is None:
        notes.find(RuleId.DEF_ZONE_UNANSWERED, Fact("planned_as", "outside"), verdict=Verdict.QUESTION, limits=limits)
    return wanted
