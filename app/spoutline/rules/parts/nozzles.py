"""The rules that only a nozzle can break."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.model.finding import Finding
from spoutline.model.limit import LimitId
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import NozzleData, NozzleOperation
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.survey import Duty
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.nozzle import SPOUT_LIMITS, latch_bars, spout_window
from spoutline.rules.parts.candidate import Candidate, PartRule
from spoutline.rules.parts.figures import flow_ceiling_m3_s
from spoutline.rules.verdicts import yes_no

_TOLERANCE_M = 1e-9  # binary rounding of inches and millimetres


def _nozzle(candidate: Candidate) -> NozzleData:
    data = candidate.part.nozzle
    if data is None:
        raise ValueError(f"{candidate.part.number} is judged as a nozzle but carries no nozzle data")
    return data


def _spout(data: NozzleData) -> Quantity:
    return Quantity("spout", data.spout_outside_diameter_m, Dimension.DIAMETER)


def made_for_filler(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the nozzle's service is one that the duty's filler takes. Source: SAE J285 (secondary)."""
    data, services = _nozzle(candidate), candidate.requirement.nozzle_services
    if data.service not in services:
        yield candidate.broken(
            RuleId.NOZZLE_SERVICE, Fact("service", data.service), Fact("services", ", ".join(sorted(services)))
        )


def made_for_liquid(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the maker names the liquid. Source: part data."""
    data, family = _nozzle(candidate), candidate.requirement.liquid.family
    if family not in data.liquids:
        yield candidate.broken(
            RuleId.NOZZLE_LIQUID, Fact("liquids", ", ".join(sorted(data.liquids))), Fact("family", family)
        )


def spout_in_window(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the spout (m) lies inside the window of its service. Source: limit rows (40 CFR 1090.1550, SAE J285)."""
    data = _nozzle(candidate)
    services = candidate.requirement.nozzle_services
    own = data.service in services
    window = spout_window(data.service, candidate.jurisdiction) if own else candidate.requirement.spout
    if window.holds(data.spout_outside_diameter_m):
        return
    sides = (("spout_minimum", window.minimum), ("spout_maximum", window.maximum))
    bounds = tuple(Quantity(name, side, Dimension.DIAMETER) for name, side in sides if side is not None)
    asked = (data.service,) if own else tuple(sorted(services))
    limits = tuple(limit for service in asked for limit in SPOUT_LIMITS[service])
    yield candidate.broken(RuleId.SPOUT_DIAMETER, _spout(data), *bounds, limits=limits)


def gasoline_spout_end(candidate: Candidate) -> Iterator[Finding]:
    """Ask: straight section and spring distance (m) of a gasoline spout. Source: 40 CFR 1090.1550 (memory)."""
    if candidate.requirement.liquid.family is not LiquidFamily.GASOLINE:
        return
    data = _nozzle(candidate)
    straight = candidate.jurisdiction.optional_number(LimitId.SPOUT_GASOLINE_STRAIGHT_MIN)
    if straight is not None and data.spout_straight_length_m < straight - _TOLERANCE_M:
        yield candidate.broken(
            RuleId.SPOUT_STRAIGHT_LENGTH,
            Quantity("straight_length", data.spout_straight_length_m, Dimension.DIAMETER),
            Quantity("straight_minimum", straight, Dimension.DIAMETER),
            limits=(LimitId.SPOUT_GASOLINE_STRAIGHT_MIN,),
        )
    spring = candidate.jurisdiction.optional_number(LimitId.SPOUT_GASOLINE_SPRING_DISTANCE)
    if spring is not None and data.spring_distance_m is not None and data.spring_distance_m < spring - _TOLERANCE_M:
        yield candidate.broken(
            RuleId.SPOUT_SPRING_DISTANCE,
            Quantity("spring_distance", data.spring_distance_m, Dimension.DIAMETER),
            Quantity("spring_minimum", spring, Dimension.DIAMETER),
            limits=(LimitId.SPOUT_GASOLINE_SPRING_DISTANCE,),
        )


def spout_stays_out_of_wrong_filler(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the spout (m) is too thick for a filler of another liquid, where a diameter can bar it.

    Diesel spouts stay out of gasoline fillers and every fuel spout out of DEF fillers. A gasoline or DEF spout is
    thinner than the other openings, so its diameter bars nothing there. Source: SAE J285 scope.
    """
    data, family = _nozzle(candidate), candidate.requirement.liquid.family
    barred: list[tuple[LimitId, str]] = []
    if family is not LiquidFamily.DEF:
        barred.append((LimitId.FILLER_DEF_OPENING, "def"))
    if family not in (LiquidFamily.DEF, LiquidFamily.GASOLINE):
        barred.append((LimitId.FILLER_GASOLINE_OPENING, "gasoline"))
    for limit, filler in barred:
        opening = candidate.jurisdiction.optional_number(limit)
        if opening is not None and data.spout_outside_diameter_m <= opening + _TOLERANCE_M:
            yield candidate.broken(
                RuleId.SPOUT_WRONG_FILLER,
                _spout(data),
                Quantity("opening", opening, Dimension.DIAMETER),
                Fact("wrong_filler", filler),
                limits=(limit,),
            )


def spout_enters_own_filler(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the spout (m) is thin enough for the filler it serves: cars and DEF; other tanks have wide openings.

    Source: SAE J285 scope; ISO 22241-4 (memory).
    """
    family, duty = candidate.requirement.liquid.family, candidate.requirement.position.duty
    if family is LiquidFamily.DEF:
        limit, filler = LimitId.FILLER_DEF_OPENING, "def"
    elif duty is not Duty.CAR:
        return
    elif family is LiquidFamily.GASOLINE:
        limit, filler = LimitId.FILLER_GASOLINE_OPENING, "gasoline"
    else:
        limit, filler = LimitId.FILLER_DIESEL_CAR_OPENING, "diesel_car"
    data, opening = _nozzle(candidate), candidate.jurisdiction.optional_number(limit)
    if opening is not None and data.spout_outside_diameter_m > opening + _TOLERANCE_M:
        yield candidate.broken(
            RuleId.SPOUT_OWN_FILLER,
            _spout(data),
            Quantity("opening", opening, Dimension.DIAMETER),
            Fact("own_filler", filler),
            limits=(limit,),
        )


def def_opens_only_in_def_filler(candidate: Candidate) -> Iterator[Finding]:
    """Ask: a DEF spout enters every fuel filler, so an interlock is advised. Source: ISO 22241-4 (memory)."""
    data = _nozzle(candidate)
    if candidate.requirement.liquid.family is LiquidFamily.DEF and not data.misfill_interlock:
        yield candidate.broken(RuleId.MISFILL_INTERLOCK, _spout(data))


def evaluated_for_zone(candidate: Candidate) -> Iterator[Finding]:
    """Ask: a DEF nozzle in the flammable zone was evaluated for it. Source: UL outline 2586C (secondary)."""
    if candidate.requirement.def_zone and not _nozzle(candidate).def_zone_evaluated:
        yield candidate.broken(
            RuleId.DEF_ZONE_NOZZLE, Fact("def_zone_evaluated", yes_no(False)), limits=(LimitId.LISTING_DEF_ZONE,)
        )


def bellows_on_balance(candidate: Candidate) -> Iterator[Finding]:
    """Ask: a balance nozzle has bellows. Source: CARB executive orders (secondary)."""
    if candidate.requirement.path is FlowPath.BALANCE and not _nozzle(candidate).bellows:
        yield candidate.broken(RuleId.BELLOWS, Fact("path", candidate.requirement.path))


def shuts_off(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the nozzle closes by itself except in the manual cases. Source: NFPA 30A (secondary)."""
    data = _nozzle(candidate)
    if candidate.requirement.automatic and data.operation is not NozzleOperation.AUTOMATIC:
        limits = (LimitId.NOZZLE_AUTOMATIC_REQUIRED, LimitId.NOZZLE_MANUAL_CASES)
        yield candidate.broken(RuleId.AUTOMATIC_SHUT_OFF, Fact("operation", data.operation), limits=limits)


def latch_as_asked(candidate: Candidate) -> Iterator[Finding]:
    """Ask: a latch exactly where it is both wanted and allowed. Source: survey; NFPA 30A (secondary)."""
    requirement, data = candidate.requirement, _nozzle(candidate)
    wanted = Fact("wanted", yes_no(requirement.position.hold_open_wanted))
    if data.hold_open and not requirement.hold_open:
        barring = latch_bars(requirement.position, requirement.site, candidate.jurisdiction)
        yield candidate.broken(RuleId.LATCH_UNWANTED, wanted, limits=barring)
    if requirement.hold_open and not data.hold_open:
        yield candidate.broken(RuleId.LATCH_MISSING, wanted)


def closes_out_of_the_filler(candidate: Candidate) -> Iterator[Finding]:
    """Ask: a latch on an overhead hose comes with an attitude device. Source: IFC 2306.7.6, exception (memory)."""
    data = _nozzle(candidate)
    if candidate.requirement.attitude_device and data.hold_open and not data.attitude_device:
        limits = (LimitId.HOLD_OPEN_OVERHEAD, LimitId.HOLD_OPEN_OVERHEAD_DEVICE)
        yield candidate.broken(
            RuleId.LATCH_WITHOUT_ATTITUDE_DEVICE, Fact("attitude_device", yes_no(False)), limits=limits
        )


def shuts_without_pressure(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the no-pressure device where a latch or prepay asks for it. Source: NFPA 30A (secondary)."""
    requirement = candidate.requirement
    if requirement.no_pressure_device and not _nozzle(candidate).no_pressure_device:
        yield candidate.broken(
            RuleId.NO_PRESSURE_DEVICE,
            Fact("hold_open", yes_no(requirement.hold_open)),
            Fact("prepay", yes_no(requirement.position.prepay)),
            Fact("service", requirement.site.service),
            limits=(LimitId.NO_PRESSURE_DEVICE_WITH_HOLD_OPEN, LimitId.NO_PRESSURE_DEVICE_WITH_PREPAY),
        )


def enhanced_where_asked(candidate: Candidate) -> Iterator[Finding]:
    """Ask: an enhanced conventional nozzle where the profile asks. Source: CARB NVR-1, CP-207."""
    if candidate.requirement.enhanced_conventional and not _nozzle(candidate).enhanced_conventional:
        path = Fact("path", candidate.requirement.path)
        yield candidate.broken(RuleId.ENHANCED_CONVENTIONAL, path, limits=(LimitId.ENHANCED_CONVENTIONAL,))


def takes_the_flow(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the nozzle's greatest flow (m3/s) covers what the dispenser gives within the law. Source: part data."""
    data = _nozzle(candidate)
    ceiling = flow_ceiling_m3_s(candidate.requirement, candidate.tables)
    if data.maximum_flow_m3_s < ceiling * (1.0 - 1e-9):
        yield candidate.broken(
            RuleId.NOZZLE_MAXIMUM_FLOW,
            Quantity("maximum_flow", data.maximum_flow_m3_s, Dimension.FLOW),
            Quantity("flow_ceiling", ceiling, Dimension.FLOW),
        )


def shuts_off_at_the_flow(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the shut-off works at a flow (m3/s) that the dispenser can give within the law. Source: part data."""
    least = _nozzle(candidate).minimum_flow_m3_s
    ceiling = flow_ceiling_m3_s(candidate.requirement, candidate.tables)
    if least is not None and least > ceiling * (1.0 + 1e-9):
        yield candidate.broken(
            RuleId.NOZZLE_MINIMUM_FLOW,
            Quantity("minimum_flow", least, Dimension.FLOW),
            Quantity("flow_ceiling", ceiling, Dimension.FLOW),
        )


def states_its_flow_data(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the least flow and the opening pressure are stated where they decide; unknown is never taken as zero."""
    data = _nozzle(candidate)
    if data.operation is NozzleOperation.AUTOMATIC and data.minimum_flow_m3_s is None:
        yield candidate.broken(RuleId.NOZZLE_MINIMUM_FLOW_KNOWN, Fact("operation", data.operation))
    if data.no_pressure_device and data.opening_pressure_pa is None:
        yield candidate.broken(RuleId.NOZZLE_OPENING_PRESSURE_KNOWN, Fact("no_pressure_device", yes_no(True)))


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
