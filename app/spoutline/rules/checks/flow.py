"""Checks of flow and pressure: what the set delivers cold and hot, and what the nozzle needs and bears."""

from __future__ import annotations

import math
from enum import StrEnum

from spoutline.calc.flow import static_pressure_line, surge_of_stop
from spoutline.calc.liquids import LiquidState, cold_points
from spoutline.calc.losses import element_loss, element_loss_pa
from spoutline.model.check import Bound, Check, CheckId, WorkedLine
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId, LimitStatus
from spoutline.model.part import NozzleOperation, Part
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Slot
from spoutline.rules.chain.set_view import Delivered, SetView
from spoutline.rules.checks.holding import bound_of, held, part_bound, stated
from spoutline.rules.derive.flow import road_limit_m3_s, wanted_flow_limit_id
from spoutline.rules.parts.figures import design_flow_m3_s, passage_area_m2, rise_m
from spoutline.rules.verdicts import limit_source

_CAPPED = "least of solved flow, dispenser and law"


class FlowText(StrEnum):
    """Words that the flow checks carry."""

    SOLVED = "solved"  # pressure and losses decide
    CAPPED = "capped"  # the dispenser or the law decides
    NOTHING_FLOWS = "nothing_flows"  # the rise takes all the pressure
    TRANSITION = "transition"  # between laminar and turbulent: uncertain by a fifth
    SOLID = "solid"  # colder than the point below which the liquid does not move


def flow_cold(view: SetView) -> Check:
    """Hold the flow (m3/s) at the cold end against the wanted flow. Source: energy balance, Darcy-Weisbach.

    Where the climate goes below the point at which the liquid moves there is no flow to judge: the check informs of
    that point and gives no verdict.
    """
    requirement = view.requirement
    solid_c = cold_points(requirement.liquid).solid_c
    if solid_c is not None and requirement.temperature_low_c < solid_c:
        return stated(
            CheckId.FLOW_COLD,
            Severity.SHOULD,
            None,
            Dimension.FLOW,
            text=FlowText.SOLID,
            facts=(
                Quantity("temperature_low", requirement.temperature_low_c, Dimension.TEMPERATURE),
                Quantity("solid_point", solid_c, Dimension.TEMPERATURE),
            ),
        )
    return _flow(view, CheckId.FLOW_COLD, None if view.delivered is None else view.delivered[0])


def flow_hot(view: SetView) -> Check:
    """Hold the flow (m3/s) at the hot end against the wanted flow. Source: energy balance, Darcy-Weisbach."""
    return _flow(view, CheckId.FLOW_HOT, None if view.delivered is None else view.delivered[1])


def _flow(view: SetView, check: CheckId, delivered: Delivered | None) -> Check:
    requirement = view.requirement
    row = view.jurisdiction.limit(wanted_flow_limit_id(requirement.position))
    surveyed = requirement.position.supply.wanted_flow_l_min is not None
    bound = Bound(
        value=requirement.wanted_flow_m3_s,
        source="wanted in the survey" if surveyed else limit_source(row),
        status=LimitStatus.VERIFIED if surveyed else row.status,
    )
    if delivered is None:
        return held(check, Severity.SHOULD, None, Dimension.FLOW, lower=bound)
    ceiling = view.views.flow_ceiling_m3_s
    return held(
        check,
        Severity.SHOULD,
        delivered.flow_m3_s,
        Dimension.FLOW,
        lower=bound,
        text=_flow_text(delivered, ceiling),
        facts=(
            Quantity("temperature", delivered.state.temperature_c, Dimension.TEMPERATURE),
            Quantity("solved_flow", delivered.solution.flow_m3_s, Dimension.FLOW),
            Quantity("flow_ceiling", ceiling, Dimension.FLOW),
        ),
        lines=(*_loss_lines(delivered), _capped_line(delivered, ceiling)),
    )


def _flow_text(delivered: Delivered, ceiling_m3_s: float) -> FlowText:
    if delivered.solution.reason is not None:
        return FlowText.NOTHING_FLOWS
    if delivered.solution.flow_m3_s > ceiling_m3_s:
        return FlowText.CAPPED
    return FlowText.TRANSITION if delivered.solution.in_transition else FlowText.SOLVED


def _loss_lines(delivered: Delivered) -> tuple[WorkedLine, ...]:
    losses = tuple(line for loss in delivered.solution.losses for line in loss.lines)
    return (*delivered.state.lines, *losses, *delivered.solution.lines)


def _capped_line(delivered: Delivered, ceiling_m3_s: float) -> WorkedLine:
    return WorkedLine(
        formula="Q_d = min(Q, Q_max)",
        inputs=(
            Quantity("Q", delivered.solution.flow_m3_s, Dimension.FLOW),
            Quantity("Q_max", ceiling_m3_s, Dimension.FLOW),
        ),
        result=Quantity("Q_d", delivered.flow_m3_s, Dimension.FLOW),
        source=_CAPPED,
    )


def nozzle_minimum_flow(view: SetView) -> Check | None:
    """Hold the lesser delivered flow (m3/s) against the least at which the nozzle shuts off. Source: part data."""
    nozzle = view.nozzle
    if nozzle is None or nozzle.nozzle is None:
        return None
    least = nozzle.nozzle.minimum_flow_m3_s
    if least is None:
        if nozzle.nozzle.operation is NozzleOperation.MANUAL:
            return None
        missing = (Fact("unknown", nozzle.number),)
        return held(CheckId.NOZZLE_MINIMUM_FLOW, Severity.MUST, None, Dimension.FLOW, facts=missing)
    worst = None if view.delivered is None else min(view.delivered, key=lambda delivered: delivered.flow_m3_s)
    return held(
        CheckId.NOZZLE_MINIMUM_FLOW,
        Severity.MUST,
        None if worst is None else worst.flow_m3_s,
        Dimension.FLOW,
        lower=part_bound(least, nozzle),
        facts=() if worst is None else (_temperature(worst.state),),
    )


def nozzle_maximum_flow(view: SetView) -> Check | None:
    """Hold the greater delivered flow (m3/s) against the nozzle's greatest. Source: part data."""
    nozzle = view.nozzle
    if nozzle is None or nozzle.nozzle is None:
        return None
    most = None if view.delivered is None else max(view.delivered, key=lambda delivered: delivered.flow_m3_s)
    return held(
        CheckId.NOZZLE_MAXIMUM_FLOW,
        Severity.MUST,
        None if most is None else most.flow_m3_s,
        Dimension.FLOW,
        upper=part_bound(nozzle.nozzle.maximum_flow_m3_s, nozzle),
        facts=() if most is None else (_temperature(most.state),),
    )


def _temperature(state: LiquidState) -> Quantity:
    return Quantity("temperature", state.temperature_c, Dimension.TEMPERATURE)


def nozzle_opening_pressure(view: SetView) -> Check | None:
    """Hold the pressure (Pa) left at the nozzle against what opens its no-pressure device. Source: part data.

    At the design flow, the wanted flow or the nozzle's least where that is more, and at the worse temperature.
    """
    nozzle = view.nozzle
    if nozzle is None or nozzle.nozzle is None or not nozzle.nozzle.no_pressure_device:
        return None
    opening = nozzle.nozzle.opening_pressure_pa
    if opening is None or view.elements is None:
        missing = (Fact("unknown", nozzle.number),)
        return held(CheckId.NOZZLE_OPENING_PRESSURE, Severity.MUST, None, Dimension.PRESSURE, facts=missing)
    flow = design_flow_m3_s(nozzle, view.requirement, view.tables)
    left = [_pressure_at_nozzle(view, flow, state) for state in view.states.both]
    worst, state = min(zip(left, view.states.both, strict=True), key=lambda pair: pair[0].result.value)
    return held(
        CheckId.NOZZLE_OPENING_PRESSURE,
        Severity.MUST,
        worst.result.value,
        Dimension.PRESSURE,
        lower=part_bound(opening, nozzle),
        facts=(Quantity("design_flow", flow, Dimension.FLOW), _temperature(state)),
        lines=(static_pressure_line(rise_m(view.requirement), state), *_upstream_lines(view, flow, state), worst),
    )


def _upstream(view: SetView) -> list[tuple[Part, int]]:
    return [(link.part, place) for place, link in enumerate(view.links) if link.slot is not Slot.NOZZLE]


def _pressure_at_nozzle(view: SetView, flow_m3_s: float, state: LiquidState) -> WorkedLine:
    elements = view.elements or ()
    losses = tuple(
        Quantity(
            f"p({part.number})",
            math.fsum(element_loss_pa(element, flow_m3_s, state) for element in elements[place]),
            Dimension.PRESSURE,
        )
        for part, place in _upstream(view)
    )
    supply = Quantity("p_available", view.requirement.supply_pressure_pa, Dimension.PRESSURE)
    static = static_pressure_line(rise_m(view.requirement), state).result
    left = supply.value - static.value - math.fsum(loss.value for loss in losses)
    return WorkedLine(
        formula="p_nozzle = p_available - p_h - sum(p)",
        inputs=(supply, static, *losses),
        result=Quantity("p_nozzle", left, Dimension.PRESSURE),
        source="energy balance",
    )


def _upstream_lines(view: SetView, flow_m3_s: float, state: LiquidState) -> tuple[WorkedLine, ...]:
    elements = view.elements or ()
    return tuple(
        line
        for _, place in _upstream(view)
        for element in elements[place]
        for line in element_loss(element, flow_m3_s, state).lines
    )


def gasoline_flow_limit(view: SetView) -> Check | None:
    """Hold the delivered flow (m3/s) against the road limit for gasoline. Source: 40 CFR 1090.1550.

    The limit may be met anywhere in the dispensing system; where pressure and losses alone would give more than is
    delivered, the word says that the dispenser has to hold it.
    """
    limit = road_limit_m3_s(view.requirement.position, view.jurisdiction)
    if limit is None or view.delivered is None:
        return None
    most = max(view.delivered, key=lambda delivered: delivered.flow_m3_s)
    return held(
        CheckId.GASOLINE_FLOW_LIMIT,
        Severity.MUST,
        most.flow_m3_s,
        Dimension.FLOW,
        upper=bound_of(LimitId.FLOW_GASOLINE_ROAD_MAX, view.jurisdiction),
        text=_flow_text(most, view.views.flow_ceiling_m3_s),
        facts=(Quantity("solved_flow", most.solution.flow_m3_s, Dimension.FLOW),),
    )


def velocity(view: SetView) -> Check | None:
    """Hold the velocity (m/s) in the narrowest hose at the greater flow. Source: static guidance (memory).

    The worked lines go on to the pressure rise of an instant stop at that velocity: advice, no limit is set for it.
    """
    bound = bound_of(LimitId.FLOW_VELOCITY_MAX, view.jurisdiction)
    areas = [
        (area, link.part.number)
        for link in view.links
        if link.part.hose is not None
        and (area := passage_area_m2(link.part.hose, link.part.path or FlowPath.SINGLE)) is not None
    ]
    if not areas or view.delivered is None:
        return None
    area, number = min(areas)
    most = max(view.delivered, key=lambda delivered: delivered.flow_m3_s)
    flow = most.flow_m3_s
    line = WorkedLine(
        formula="v = Q / A",
        inputs=(Quantity("Q", flow, Dimension.FLOW), Quantity("A", area, Dimension.AREA)),
        result=Quantity("v", flow / area, Dimension.VELOCITY),
        source="continuity",
    )
    return held(
        CheckId.VELOCITY,
        Severity.SHOULD,
        line.result.value,
        Dimension.VELOCITY,
        upper=bound,
        text=number,
        lines=(line, *surge_of_stop(velocity_m_s=line.result.value, state=most.state).lines),
    )
