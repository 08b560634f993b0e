"""The rules that only a nozzle can break."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np

from spoutline.model.limit import LimitId
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import NozzleOperation, NozzleService
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Duty
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.nozzle import SPOUT_LIMITS, latch_bars, spout_window
from spoutline.rules.parts.figures import flow_ceiling_m3_s
from spoutline.rules.parts.look import Breach, Look, PartRule, figure, outside, quantity, word, words_of
from spoutline.rules.verdicts import yes_no

_TOLERANCE_M = 1e-9  # binary rounding of inches and millimetres
_SPOUT_M = "nozzle.spout_outside_diameter_m"
_SPOUT = figure("spout", _SPOUT_M, Dimension.DIAMETER)


def made_for_filler(look: Look) -> Iterator[Breach]:
    """Ask: the nozzle's service is one that the duty's filler takes. Source: SAE J285 (secondary)."""
    services = look.requirement.nozzle_services
    shown = words_of("service", "nozzle.service"), word("services", ", ".join(sorted(services)))
    yield look.broken(RuleId.NOZZLE_SERVICE, ~look.part.has("nozzle.service", *services), *shown)


def made_for_liquid(look: Look) -> Iterator[Breach]:
    """Ask: the maker names the liquid. Source: part data."""
    family = look.requirement.liquid.family
    shown = words_of("liquids", "nozzle.liquids"), word("family", family)
    yield look.broken(RuleId.NOZZLE_LIQUID, ~look.part.has("nozzle.liquids", family), *shown)


def spout_in_window(look: Look) -> Iterator[Breach]:
    """Ask: the spout (m) lies inside the window of its service. Source: limit rows (40 CFR 1090.1550, SAE J285)."""
    part, services = look.part, look.requirement.nozzle_services
    for service in NozzleService:
        own = service in services
        window = spout_window(service, look.jurisdiction) if own else look.requirement.spout
        asked = (service,) if own else sorted(services)
        is_outside = outside(part.number(_SPOUT_M), window.minimum, window.maximum)
        yield look.broken(
            RuleId.SPOUT_DIAMETER,
            part.has("nozzle.service", service) & is_outside,
            _SPOUT,
            quantity("spout_minimum", window.minimum, Dimension.DIAMETER),
            quantity("spout_maximum", window.maximum, Dimension.DIAMETER),
            limits=tuple(limit for one in asked for limit in SPOUT_LIMITS[one]),
        )


def gasoline_spout_end(look: Look) -> Iterator[Breach]:
    """Ask: straight section and spring distance (m) of a gasoline spout. Source: 40 CFR 1090.1550 (memory)."""
    if look.requirement.liquid.family is not LiquidFamily.GASOLINE:
        return
    straight, at_least = "nozzle.spout_straight_length_m", look.limit(LimitId.SPOUT_GASOLINE_STRAIGHT_MIN)
    yield look.broken(
        RuleId.SPOUT_STRAIGHT_LENGTH,
        look.part.number(straight) < at_least - _TOLERANCE_M,
        figure("straight_length", straight, Dimension.DIAMETER),
        quantity("straight_minimum", at_least, Dimension.DIAMETER),
        limits=(LimitId.SPOUT_GASOLINE_STRAIGHT_MIN,),
    )
    spring, at_least = "nozzle.spring_distance_m", look.limit(LimitId.SPOUT_GASOLINE_SPRING_DISTANCE)
    yield look.broken(
        RuleId.SPOUT_SPRING_DISTANCE,
        look.part.number(spring) < at_least - _TOLERANCE_M,
        figure("spring_distance", spring, Dimension.DIAMETER),
        quantity("spring_minimum", at_least, Dimension.DIAMETER),
        limits=(LimitId.SPOUT_GASOLINE_SPRING_DISTANCE,),
    )


def spout_stays_out_of_wrong_filler(look: Look) -> Iterator[Breach]:
    """Ask: the spout (m) is too thick for a filler of another liquid, where a diameter can bar it.

    Diesel spouts stay out of gasoline fillers and every fuel spout out of DEF fillers. A gasoline or DEF spout is
    thinner than the other openings, so its diameter bars nothing there. Source: SAE J285 scope.
    """
    family = look.requirement.liquid.family
    barred: list[tuple[LimitId, str]] = []
    if family is not LiquidFamily.DEF:
        barred.append((LimitId.FILLER_DEF_OPENING, "def"))
    if family not in (LiquidFamily.DEF, LiquidFamily.GASOLINE):
        barred.append((LimitId.FILLER_GASOLINE_OPENING, "gasoline"))
    for limit, filler in barred:
        opening = look.limit(limit)
        yield look.broken(
            RuleId.SPOUT_WRONG_FILLER,
            look.part.number(_SPOUT_M) <= opening + _TOLERANCE_M,
            _SPOUT,
            quantity("opening", opening, Dimension.DIAMETER),
            word("wrong_filler", filler),
            limits=(limit,),
        )


def spout_enters_own_filler(look: Look) -> Iterator[Breach]:
    """Ask: the spout (m) is thin enough for the filler it serves: cars and DEF; other tanks have wide openings.

    Source: SAE J285 scope; ISO 22241-4 (memory).
    """
    family, duty = look.requirement.liquid.family, look.requirement.position.duty
    if family is LiquidFamily.DEF:
        limit, filler = LimitId.FILLER_DEF_OPENING, "def"
    elif duty is not Duty.CAR:
        return
    elif family is LiquidFamily.GASOLINE:
        limit, filler = LimitId.FILLER_GASOLINE_OPENING, "gasoline"
    else:
        limit, filler = LimitId.FILLER_DIESEL_CAR_OPENING, "diesel_car"
    opening = look.limit(limit)
    yield look.broken(
        RuleId.SPOUT_OWN_FILLER,
        look.part.number(_SPOUT_M) > opening + _TOLERANCE_M,
        _SPOUT,
        quantity("opening", opening, Dimension.DIAMETER),
        word("own_filler", filler),
        limits=(limit,),
    )


def def_opens_only_in_def_filler(look: Look) -> Iterator[Breach]:
    """Ask: a DEF spout enters every fuel filler, so an interlock is advised. Source: ISO 22241-4 (memory)."""
    if look.requirement.liquid.family is LiquidFamily.DEF:
        yield look.broken(RuleId.MISFILL_INTERLOCK, ~look.part.flag("nozzle.misfill_interlock"), _SPOUT)


def evaluated_for_zone(look: Look) -> Iterator[Breach]:
    """Ask: a DEF nozzle in the flammable zone was evaluated for it. Source: UL outline 2586C (secondary)."""
    if look.requirement.def_zone:
        yield look.broken(
            RuleId.DEF_ZONE_NOZZLE,
            ~look.part.flag("nozzle.def_zone_evaluated"),
            word("def_zone_evaluated", yes_no(False)),
            limits=(LimitId.LISTING_DEF_ZONE,),
        )


def bellows_on_balance(look: Look) -> Iterator[Breach]:
    """Ask: a balance nozzle has bellows. Source: CARB executive orders (secondary)."""
    path = look.requirement.path
    if path is FlowPath.BALANCE:
        yield look.broken(RuleId.BELLOWS, ~look.part.flag("nozzle.bellows"), word("path", path))


def shuts_off(look: Look) -> Iterator[Breach]:
    """Ask: the nozzle closes by itself except in the manual cases. Source: NFPA 30A (secondary)."""
    if look.requirement.automatic:
        yield look.broken(
            RuleId.AUTOMATIC_SHUT_OFF,
            ~look.part.has("nozzle.operation", NozzleOperation.AUTOMATIC),
            words_of("operation", "nozzle.operation"),
            limits=(LimitId.NOZZLE_AUTOMATIC_REQUIRED, LimitId.NOZZLE_MANUAL_CASES),
        )


def latch_as_asked(look: Look) -> Iterator[Breach]:
    """Ask: a latch exactly where it is both wanted and allowed. Source: survey; NFPA 30A (secondary)."""
    requirement, latch = look.requirement, look.part.flag("nozzle.hold_open")
    wanted = word("wanted", yes_no(requirement.position.hold_open_wanted))
    if requirement.hold_open:
        yield look.broken(RuleId.LATCH_MISSING, ~latch, wanted)
    else:
        barring = latch_bars(requirement.position, requirement.site, look.jurisdiction)
        yield look.broken(RuleId.LATCH_UNWANTED, latch, wanted, limits=barring)


def closes_out_of_the_filler(look: Look) -> Iterator[Breach]:
    """Ask: a latch on an overhead hose comes with an attitude device. Source: IFC 2306.7.6, exception (memory)."""
    if look.requirement.attitude_device:
        yield look.broken(
            RuleId.LATCH_WITHOUT_ATTITUDE_DEVICE,
            look.part.flag("nozzle.hold_open") & ~look.part.flag("nozzle.attitude_device"),
            word("attitude_device", yes_no(False)),
            limits=(LimitId.HOLD_OPEN_OVERHEAD, LimitId.HOLD_OPEN_OVERHEAD_DEVICE),
        )


def shuts_without_pressure(look: Look) -> Iterator[Breach]:
    """Ask: the no-pressure device where a latch or prepay asks for it. Source: NFPA 30A (secondary)."""
    requirement = look.requirement
    if requirement.no_pressure_device:
        yield look.broken(
            RuleId.NO_PRESSURE_DEVICE,
            ~look.part.flag("nozzle.no_pressure_device"),
            word("hold_open", yes_no(requirement.hold_open)),
            word("prepay", yes_no(requirement.position.prepay)),
            word("service", requirement.site.service),
            limits=(LimitId.NO_PRESSURE_DEVICE_WITH_HOLD_OPEN, LimitId.NO_PRESSURE_DEVICE_WITH_PREPAY),
        )


def enhanced_where_asked(look: Look) -> Iterator[Breach]:
    """Ask: an enhanced conventional nozzle where the profile asks. Source: CARB NVR-1, CP-207."""
    if look.requirement.enhanced_conventional:
        yield look.broken(
            RuleId.ENHANCED_CONVENTIONAL,
            ~look.part.flag("nozzle.enhanced_conventional"),
            word("path", look.requirement.path),
            limits=(LimitId.ENHANCED_CONVENTIONAL,),
        )


def takes_the_flow(look: Look) -> Iterator[Breach]:
    """Ask: the nozzle's greatest flow (m3/s) covers what the dispenser gives within the law. Source: part data."""
    most, ceiling = "nozzle.maximum_flow_m3_s", flow_ceiling_m3_s(look.requirement, look.tables)
    yield look.broken(
        RuleId.NOZZLE_MAXIMUM_FLOW,
        look.part.number(most) < ceiling * (1.0 - 1e-9),
        figure("maximum_flow", most, Dimension.FLOW),
        quantity("flow_ceiling", ceiling, Dimension.FLOW),
    )


def shuts_off_at_the_flow(look: Look) -> Iterator[Breach]:
    """Ask: the shut-off works at a flow (m3/s) that the dispenser can give within the law. Source: part data."""
    least, ceiling = "nozzle.minimum_flow_m3_s", flow_ceiling_m3_s(look.requirement, look.tables)
    yield look.broken(
        RuleId.NOZZLE_MINIMUM_FLOW,
        look.part.number(least) > ceiling * (1.0 + 1e-9),
        figure("minimum_flow", least, Dimension.FLOW),
        quantity("flow_ceiling", ceiling, Dimension.FLOW),
    )


def states_its_flow_data(look: Look) -> Iterator[Breach]:
    """Ask: the least flow and the opening pressure are stated where they decide; unknown is never taken as zero."""
    part = look.part
    automatic = part.has("nozzle.operation", NozzleOperation.AUTOMATIC)
    yield look.broken(
        RuleId.NOZZLE_MINIMUM_FLOW_KNOWN,
        automatic & np.isnan(part.number("nozzle.minimum_flow_m3_s")),
        words_of("operation", "nozzle.operation"),
    )
    yield look.broken(
        RuleId.NOZZLE_OPENING_PRESSURE_KNOWN,
        part.flag("nozzle.no_pressure_device") & np.isnan(part.number("nozzle.opening_pressure_pa")),
        word("no_pressure_device", yes_no(True)),
    )


NOZZLE_RULES: tuple[PartRule, ...] = (
    made_for_filler,
    made_for_liquid,
    spout_in_window,
    gasoline_spout_end,
    spout_stays_out_of_wrong_filler,
    spout_enters_own_filler,
    def_opens_only_in_def_filler,
    evaluated_for_zone,
    bellows_on_balance,
    shuts_off,
    latch_as_asked,
    closes_out_of_the_filler,
    shuts_without_pressure,
    enhanced_where_asked,
    takes_the_flow,
    shuts_off_at_the_flow,
    states_its_flow_data,
)
