"""The flow that a path delivers at the pressure available, and its curve of flow against pressure."""

from __future__ import annotations

import math
from enum import StrEnum
from typing import NamedTuple

from spoutline.calc.constants import STANDARD_GRAVITY, Constant
from spoutline.calc.elements import Element
from spoutline.calc.friction import FlowRegime
from spoutline.calc.liquids import LiquidState
from spoutline.calc.losses import ElementLoss, element_loss, element_loss_pa, trusted_loss_curve
from spoutline.calc.ranges import OutOfRange, RangeReason, require_between, require_finite, require_positive
from spoutline.calc.root import bracketed_root
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension, Quantity

GREATEST_RESIDUAL = Constant(
    "pressure by which the solved balance may miss", 1.0, "Pa", "far below any gauge", LimitStatus.JUDGEMENT
)
FIRST_TRIAL_FLOW = Constant(
    "first trial flow of the bracket", 1e-3, "m3/s", "order of a truck dispenser", LimitStatus.JUDGEMENT
)
GREATEST_TRIAL_FLOW = Constant(
    "flow beyond which a path counts as without loss", 1e3, "m3/s", "beyond any hose", LimitStatus.JUDGEMENT
)
_WAVE_SOURCE = "sound in a liquid-filled rubber hose, low and high figure"
WAVE_SPEED_LOW = Constant("low wave speed in a hose", 300.0, "m/s", _WAVE_SOURCE, LimitStatus.JUDGEMENT)
WAVE_SPEED_HIGH = Constant("high wave speed in a hose", 500.0, "m/s", _WAVE_SOURCE, LimitStatus.JUDGEMENT)


class NoFlowReason(StrEnum):
    """Why a path delivers nothing."""

    HEAD_EXCEEDS_PRESSURE = "head_exceeds_pressure"


class FlowPoint(NamedTuple):
    """One point of a flow curve."""

    flow_m3_s: float
    pressure_pa: float


@frozen(kw_only=True)
class FlowSolution:
    """What a path delivers. ``losses`` follow the elements; ``residual_pa`` is how far the balance misses."""

    flow_m3_s: float
    available_pressure_pa: float
    static_pressure_pa: float
    losses: tuple[ElementLoss, ...]
    residual_pa: float
    in_transition: bool
    reason: NoFlowReason | None
    lines: tuple[WorkedLine, ...]


@frozen(kw_only=True)
class Surge:
    """Pressure rise of an instant stop, as a range: advice only."""

    low_pa: float
    high_pa: float
    lines: tuple[WorkedLine, ...]


def static_pressure_line(rise_m: float, state: LiquidState) -> WorkedLine:
    """Return the pressure that lifts the liquid, as a worked line: ``p = rho g h``.

    Parameters
    ----------
    rise_m : float
        Height of the end above the start [m], negative where it lies lower.
    state : LiquidState
        Density [kg/m3].

    Returns
    -------
    WorkedLine
        The line whose result is the pressure [Pa].

    Raises
    ------
    OutOfRange
        The rise is not a finite number.

    Source: hydrostatics; g is standard gravity.
    """
    require_finite("rise_m", rise_m, Dimension.LENGTH)
    return WorkedLine(
        formula="p_h = rho g h",
        inputs=(Quantity("rho", state.density_kg_m3, Dimension.DENSITY), Quantity("h", rise_m, Dimension.LENGTH)),
        result=Quantity("p_h", state.density_kg_m3 * STANDARD_GRAVITY.value * rise_m, Dimension.PRESSURE),
        source="hydrostatics",
        note="g is standard gravity",
    )


def solve_flow(
    elements: tuple[Element, ...], *, available_pressure_pa: float, rise_m: float, state: LiquidState
) -> FlowSolution:
    """Return the flow at which the losses and the rise use up the available pressure.

    ``p_available = sum(losses at Q) + rho g h``, solved by bracket and Brent's method, then checked.

    Parameters
    ----------
    elements : tuple of Element
        The path in order, at least one with a loss.
    available_pressure_pa : float
        Gauge pressure at the outlet while flowing [Pa], 0 or more.
    rise_m : float
        Height of the nozzle above the outlet [m], negative where it lies lower.
    state : LiquidState
        Density [kg/m3] and kinematic viscosity [m2/s].

    Returns
    -------
    FlowSolution
        Flow [m3/s], losses [Pa], residual [Pa], lines; flow 0 with a reason where the rise takes all the pressure.

    Raises
    ------
    OutOfRange
        Negative pressure, or a path without loss.

    Source: energy balance with Darcy-Weisbach losses.
    """
    require_between("available_pressure_pa", available_pressure_pa, Dimension.PRESSURE, low=0.0)
    static = static_pressure_line(rise_m, state)
    driving = available_pressure_pa - static.result.value
    flow = 0.0 if driving <= 0.0 else _solved_flow_m3_s(elements, driving, state)
    losses = tuple(element_loss(element, flow, state) for element in elements)
    lost = math.fsum(loss.pressure_pa for loss in losses)
    residual = driving - lost if driving > 0.0 else 0.0
    if abs(residual) > GREATEST_RESIDUAL.value:
        raise ArithmeticError(f"pressure balance misses by {residual:g} Pa at {flow:g} m3/s")
    return FlowSolution(
        flow_m3_s=flow,
        available_pressure_pa=available_pressure_pa,
        static_pressure_pa=static.result.value,
        losses=losses,
        residual_pa=residual,
        in_transition=any(loss.regime is FlowRegime.TRANSITION for loss in losses),
        reason=NoFlowReason.HEAD_EXCEEDS_PRESSURE if driving <= 0.0 else None,
        lines=(static, _balance_line(available_pressure_pa, static.result, lost, flow)),
    )


def flow_curve(
    elements: tuple[Element, ...], *, rise_m: float, state: LiquidState, flows: tuple[float, ...]
) -> tuple[FlowPoint, ...]:
    """Return the pressure that the path needs at its outlet for each flow.

    Parameters
    ----------
    elements : tuple of Element
        The path in order.
    rise_m : float
        Height of the nozzle above the outlet [m], negative where it lies lower.
    state : LiquidState
        Density [kg/m3] and kinematic viscosity [m2/s].
    flows : tuple of float
        Flows [m3/s], 0 or more.

    Returns
    -------
    tuple of FlowPoint
        Flow [m3/s] and pressure [Pa], in the order of ``flows``.

    Raises
    ------
    OutOfRange
        A negative flow.

    Source: energy balance with Darcy-Weisbach losses.
    """
    static_pa = static_pressure_line(rise_m, state).result.value
    return tuple(
        FlowPoint(flow, static_pa + math.fsum(element_loss_pa(element, flow, state) for element in elements))
        for flow in flows
    )


def surge_of_stop(*, velocity_m_s: float, state: LiquidState) -> Surge:
    """Return the pressure rise of an instant stop, ``p = rho c v``; nozzles close slower, so this is advice.

    Parameters
    ----------
    velocity_m_s : float
        Velocity before the stop [m/s], 0 or more.
    state : LiquidState
        Density [kg/m3].

    Returns
    -------
    Surge
        Pressure rise for the low and the high wave speed [Pa].

    Raises
    ------
    OutOfRange
        Negative velocity.

    Source: Joukowsky 1898; wave speed in rubber hose 300-500 m/s is engineering judgement.
    """
    require_between("velocity_m_s", velocity_m_s, Dimension.VELOCITY, low=0.0)
    require_positive("density_kg_m3", state.density_kg_m3, Dimension.DENSITY)
    lines = tuple(
        WorkedLine(
            formula="p = rho c v",
            inputs=(
                Quantity("rho", state.density_kg_m3, Dimension.DENSITY),
                Quantity("c", speed.value, Dimension.VELOCITY),
                Quantity("v", velocity_m_s, Dimension.VELOCITY),
            ),
            result=Quantity("p", state.density_kg_m3 * speed.value * velocity_m_s, Dimension.PRESSURE),
            source=f"Joukowsky; {speed.origin}",
            note="instant stop; a nozzle closes slower",
        )
        for speed in (WAVE_SPEED_LOW, WAVE_SPEED_HIGH)
    )
    return Surge(low_pa=lines[0].result.value, high_pa=lines[1].result.value, lines=lines)


def _solved_flow_m3_s(elements: tuple[Element, ...], driving_pa: float, state: LiquidState) -> float:
    curves = [trusted_loss_curve(element, state) for element in elements]

    def excess_pa(flow: float) -> float:
        return math.fsum([curve(flow) for curve in curves]) - driving_pa

    high = FIRST_TRIAL_FLOW.value
    while excess_pa(high) < 0.0:
        high *= 2.0
        if high > GREATEST_TRIAL_FLOW.value:
            raise OutOfRange(
                field="elements",
                value=0.0,
                low=None,
                high=None,
                dimension=Dimension.PRESSURE,
                reason=RangeReason.NO_RESISTANCE,
            )
    return bracketed_root(excess_pa, low=0.0, high=high, tolerance=1e-15)


def _balance_line(available_pa: float, static: Quantity, lost_pa: float, flow_m3_s: float) -> WorkedLine:
    return WorkedLine(
        formula="Q from p_available = sum(p) + p_h",
        inputs=(
            Quantity("p_available", available_pa, Dimension.PRESSURE),
            Quantity("sum(p)", lost_pa, Dimension.PRESSURE),
            static,
        ),
        result=Quantity("Q", flow_m3_s, Dimension.FLOW),
        source="energy balance, solved by Brent's method",
        note="the rise takes all the pressure: nothing flows" if available_pa <= static.value else "",
    )
