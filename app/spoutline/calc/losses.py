"""Pressure loss of one element of the path at a flow."""

from __future__ import annotations

import math
from collections.abc import Callable

from spoutline.calc.constants import BAR, KV_REFERENCE_DENSITY, SECONDS_PER_HOUR
from spoutline.calc.elements import AnnularRun, Element, FlowCoefficient, HoseRun, LossCoefficient
from spoutline.calc.friction import (
    ANNULUS_SOURCE,
    COIL_SOURCE,
    LAMINAR_ROUND,
    STRAIGHT_SOURCE,
    FlowRegime,
    annulus_laminar_constant,
    regime_of,
    trusted_coil_friction_factor,
    trusted_friction_curve,
)
from spoutline.calc.liquids import LiquidState
from spoutline.calc.ranges import require_between, require_positive
from spoutline.frozen import frozen
from spoutline.model.check import WorkedLine
from spoutline.model.quantity import Dimension, Quantity

_DARCY = "Darcy-Weisbach"
_BOW_LEFT_OUT = "the bow of the hanging hose is left out: at most 6 % more with gasoline, 15 % with cold diesel"
_CONCENTRIC = "tubes taken as concentric; a displaced inner tube loses less"
_DEFINITION = "definition"


@frozen(kw_only=True)
class ElementLoss:
    """Pressure loss of an element with the numbers it came from; no velocity where only Kv is known."""

    pressure_pa: float
    velocity_m_s: float | None
    reynolds: float | None
    regime: FlowRegime | None
    lines: tuple[WorkedLine, ...]


def velocity_m_s(flow_m3_s: float, bore_m: float) -> float:
    """Return the mean velocity ``v = 4 Q / (pi D^2)``.

    Parameters
    ----------
    flow_m3_s : float
        Flow [m3/s], 0 or more.
    bore_m : float
        Bore [m].

    Returns
    -------
    float
        Velocity [m/s].

    Raises
    ------
    OutOfRange
        Negative flow, or a bore that is not above zero.

    Source: continuity.
    """
    require_between("flow_m3_s", flow_m3_s, Dimension.FLOW, low=0.0)
    require_positive("bore_m", bore_m, Dimension.DIAMETER)
    return 4.0 * flow_m3_s / (math.pi * bore_m**2)


def velocity_line(flow_m3_s: float, bore_m: float) -> WorkedLine:
    """Return the velocity in a bore as a worked line.

    Parameters
    ----------
    flow_m3_s : float
        Flow [m3/s], 0 or more.
    bore_m : float
        Bore [m].

    Returns
    -------
    WorkedLine
        The line whose result is the velocity [m/s].

    Raises
    ------
    OutOfRange
        Negative flow, or a bore that is not above zero.

    Source: continuity.
    """
    return WorkedLine(
        formula="v = 4 Q / (pi D^2)",
        inputs=(Quantity("Q", flow_m3_s, Dimension.FLOW), Quantity("D", bore_m, Dimension.DIAMETER)),
        result=Quantity("v", velocity_m_s(flow_m3_s, bore_m), Dimension.VELOCITY),
        source="continuity",
    )


def element_loss_pa(element: Element, flow_m3_s: float, state: LiquidState) -> float:
    """Return the pressure loss of an element. Called once per part by the search: some microseconds.

    Parameters
    ----------
    element : Element
        What the liquid passes.
    flow_m3_s : float
        Flow [m3/s], 0 or more.
    state : LiquidState
        Density [kg/m3] and kinematic viscosity [m2/s].

    Returns
    -------
    float
        Pressure loss [Pa]; rises strictly with flow.

    Raises
    ------
    OutOfRange
        Negative or non-finite flow.

    Source: Darcy-Weisbach; definition of Kv; definition of the loss coefficient.
    """
    if not 0.0 <= flow_m3_s < math.inf:
        require_between("flow_m3_s", flow_m3_s, Dimension.FLOW, low=0.0)
    return trusted_loss_curve(element, state)(flow_m3_s)


def trusted_loss_curve(element: Element, state: LiquidState) -> Callable[[float], float]:
    """Return the pressure loss by flow of one element, for whoever asks it many times.

    Parameters
    ----------
    element : Element
        What the liquid passes.
    state : LiquidState
        Density [kg/m3] and kinematic viscosity [m2/s].

    Returns
    -------
    callable
        Pressure loss [Pa] of a finite flow [m3/s], 0 or more.

    Source: as ``element_loss_pa``.
    """
    if isinstance(element, FlowCoefficient):
        return _kv_curve(element, state)
    if isinstance(element, LossCoefficient):
        return _fitting_curve(element, state)
    return _hose_curve(element, state) if isinstance(element, HoseRun) else _ring_curve(element, state)


def element_loss(element: Element, flow_m3_s: float, state: LiquidState) -> ElementLoss:
    """Return the pressure loss of an element with its worked lines.

    ``p = f L/D rho v^2/2`` in hoses, ``p = K rho v^2/2`` in fittings, ``p = (rho/1000) (Q/Kv)^2`` where Kv is stated.

    Parameters
    ----------
    element : Element
        What the liquid passes.
    flow_m3_s : float
        Flow [m3/s], 0 or more.
    state : LiquidState
        Density [kg/m3] and kinematic viscosity [m2/s].

    Returns
    -------
    ElementLoss
        Pressure loss [Pa], velocity [m/s], Reynolds number [-], lines.

    Raises
    ------
    OutOfRange
        Negative or non-finite flow.

    Source: Darcy-Weisbach with Colebrook 1939; definition of Kv; definition of the loss coefficient.
    """
    require_between("flow_m3_s", flow_m3_s, Dimension.FLOW, low=0.0)
    pressure = element_loss_pa(element, flow_m3_s, state)
    if isinstance(element, FlowCoefficient):
        line = _kv_line(element, flow_m3_s, state, pressure)
        return ElementLoss(pressure_pa=pressure, velocity_m_s=None, reynolds=None, regime=None, lines=(line,))
    if isinstance(element, LossCoefficient):
        return _fitting_loss(element, flow_m3_s, state, pressure)
    if isinstance(element, HoseRun):
        return _hose_loss(element, flow_m3_s, state, pressure)
    return _ring_loss(element, flow_m3_s, state, pressure)


def _dynamic_pa(state: LiquidState, velocity: float) -> float:
    return state.density_kg_m3 * velocity**2 / 2.0


def _kv_curve(element: FlowCoefficient, state: LiquidState) -> Callable[[float], float]:
    at_kv_pa, kv, hour_s = (
        BAR.value * state.density_kg_m3 / KV_REFERENCE_DENSITY.value,
        element.kv,
        SECONDS_PER_HOUR.value,
    )

    def loss_pa(flow_m3_s: float) -> float:
        ratio = flow_m3_s * hour_s / kv
        return at_kv_pa * ratio**2

    return loss_pa


def _fitting_curve(element: LossCoefficient, state: LiquidState) -> Callable[[float], float]:
    four_areas_m2 = math.pi * element.bore_m**2
    return lambda flow_m3_s: element.k * _dynamic_pa(state, 4.0 * flow_m3_s / four_areas_m2)


def _hose_curve(element: HoseRun, state: LiquidState) -> Callable[[float], float]:
    bore_m, four_areas_m2 = element.bore_m, math.pi * element.bore_m**2
    weighted = _hose_friction_lengths_m(element)

    def loss_pa(flow_m3_s: float) -> float:
        if flow_m3_s == 0.0:
            return 0.0
        velocity = 4.0 * flow_m3_s / four_areas_m2
        reynolds = velocity * bore_m / state.kinematic_viscosity_m2_s
        return sum(weighted(reynolds)) / bore_m * _dynamic_pa(state, velocity)

    return loss_pa


def _ring_curve(element: AnnularRun, state: LiquidState) -> Callable[[float], float]:
    gap_m, area_m2 = element.outer_diameter_m - element.inner_diameter_m, _ring_area_m2(element)
    factor = _ring_friction(element)

    def loss_pa(flow_m3_s: float) -> float:
        if flow_m3_s == 0.0:
            return 0.0
        velocity = flow_m3_s / area_m2
        reynolds = velocity * gap_m / state.kinematic_viscosity_m2_s
        return factor(reynolds) * element.length_m / gap_m * _dynamic_pa(state, velocity)

    return loss_pa


def _hose_friction_lengths_m(element: HoseRun) -> Callable[[float], tuple[float, float]]:
    """Friction factor times length, of the straight and of the coiled part, by Reynolds number."""
    straight_m, coiled_m = element.length_m - element.coiled_length_m, element.coiled_length_m
    bore_m, drum_m, roughness_m = element.bore_m, element.coil_diameter_m, element.roughness_m
    factor = trusted_friction_curve(roughness_m / bore_m, LAMINAR_ROUND.value)
    if drum_m is None or coiled_m == 0.0:
        return lambda reynolds: (factor(reynolds) * straight_m, 0.0)

    def lengths_m(reynolds: float) -> tuple[float, float]:
        coil = trusted_coil_friction_factor(reynolds, bore_m, drum_m, roughness_m)
        return factor(reynolds) * straight_m, coil * coiled_m

    return lengths_m


def _ring_area_m2(element: AnnularRun) -> float:
    return math.pi / 4.0 * (element.outer_diameter_m**2 - element.inner_diameter_m**2)


def _ring_friction(element: AnnularRun) -> Callable[[float], float]:
    gap = element.outer_diameter_m - element.inner_diameter_m
    constant = annulus_laminar_constant(element.inner_diameter_m / element.outer_diameter_m)
    return trusted_friction_curve(element.roughness_m / gap, constant)


def _kv_line(element: FlowCoefficient, flow_m3_s: float, state: LiquidState, pressure_pa: float) -> WorkedLine:
    return WorkedLine(
        formula="p = p1 (rho / rho_w) (Q / Q1)^2",
        inputs=(
            Quantity("p1", BAR.value, Dimension.PRESSURE),
            Quantity("rho", state.density_kg_m3, Dimension.DENSITY),
            Quantity("rho_w", KV_REFERENCE_DENSITY.value, Dimension.DENSITY),
            Quantity("Q", flow_m3_s, Dimension.FLOW),
            Quantity("Q1", element.kv / SECONDS_PER_HOUR.value, Dimension.FLOW),
        ),
        result=Quantity("p", pressure_pa, Dimension.PRESSURE),
        source="definition of the flow coefficient Kv",
        note="Q1 is the flow of water that the maker states for a loss of p1",
    )


def _fitting_loss(element: LossCoefficient, flow_m3_s: float, state: LiquidState, pressure_pa: float) -> ElementLoss:
    velocity = velocity_line(flow_m3_s, element.bore_m)
    reynolds = _reynolds_line(velocity.result.value, Quantity("D", element.bore_m, Dimension.DIAMETER), state)
    loss = WorkedLine(
        formula="p = K rho v^2 / 2",
        inputs=(
            Quantity("K", element.k, Dimension.RATIO),
            Quantity("rho", state.density_kg_m3, Dimension.DENSITY),
            velocity.result,
        ),
        result=Quantity("p", pressure_pa, Dimension.PRESSURE),
        source="definition of the loss coefficient",
        note="K holds for turbulent flow; below Re 2000 the loss is larger",
    )
    return ElementLoss(
        pressure_pa=pressure_pa,
        velocity_m_s=velocity.result.value,
        reynolds=reynolds.result.value,
        regime=regime_of(reynolds.result.value),
        lines=(velocity, reynolds, loss),
    )


def _reynolds_line(velocity: float, diameter: Quantity, state: LiquidState) -> WorkedLine:
    return WorkedLine(
        formula=f"Re = v {diameter.name} / nu",
        inputs=(
            Quantity("v", velocity, Dimension.VELOCITY),
            diameter,
            Quantity("nu", state.kinematic_viscosity_m2_s, Dimension.KINEMATIC_VISCOSITY),
        ),
        result=Quantity("Re", velocity * diameter.value / state.kinematic_viscosity_m2_s, Dimension.RATIO),
        source=_DEFINITION,
    )


def _friction_line(
    reynolds: Quantity, roughness_m: float, diameter: Quantity, factor: Quantity, *, formula: str, source: str
) -> WorkedLine:
    transition = regime_of(reynolds.value) is FlowRegime.TRANSITION
    return WorkedLine(
        formula=formula,
        inputs=(reynolds, Quantity("e", roughness_m, Dimension.DIAMETER), diameter),
        result=factor,
        source=source,
        note="transition between laminar and turbulent: uncertain by 20 %" if transition else "",
    )


def _darcy_line(
    factor: Quantity, length_m: float, diameter: Quantity, state: LiquidState, velocity: float, *, note: str
) -> WorkedLine:
    pressure = factor.value * length_m / diameter.value * _dynamic_pa(state, velocity)
    return WorkedLine(
        formula=f"p = {factor.name} L / {diameter.name} rho v^2 / 2",
        inputs=(
            factor,
            Quantity("L", length_m, Dimension.LENGTH),
            diameter,
            Quantity("rho", state.density_kg_m3, Dimension.DENSITY),
            Quantity("v", velocity, Dimension.VELOCITY),
        ),
        result=Quantity("p", pressure, Dimension.PRESSURE),
        source=_DARCY,
        note=note,
    )


def _hose_loss(element: HoseRun, flow_m3_s: float, state: LiquidState, pressure_pa: float) -> ElementLoss:
    bore = Quantity("D", element.bore_m, Dimension.DIAMETER)
    velocity = velocity_line(flow_m3_s, element.bore_m)
    reynolds = _reynolds_line(velocity.result.value, bore, state)
    lines = [velocity, reynolds]
    if flow_m3_s > 0.0:
        lines += _hose_friction_lines(element, reynolds.result, bore, state, velocity.result.value)
    return ElementLoss(
        pressure_pa=pressure_pa,
        velocity_m_s=velocity.result.value,
        reynolds=reynolds.result.value,
        regime=regime_of(reynolds.result.value),
        lines=tuple(lines),
    )


def _hose_friction_lines(
    element: HoseRun, reynolds: Quantity, bore: Quantity, state: LiquidState, velocity: float
) -> list[WorkedLine]:
    straight_m = element.length_m - element.coiled_length_m
    on_straight, on_coil = _hose_friction_lengths_m(element)(reynolds.value)
    lines: list[WorkedLine] = []
    if straight_m > 0.0:
        factor = Quantity("f", on_straight / straight_m, Dimension.RATIO)
        lines.append(
            _friction_line(
                reynolds, element.roughness_m, bore, factor, formula="f = f(Re, e/D)", source=STRAIGHT_SOURCE
            )
        )
        lines.append(_darcy_line(factor, straight_m, bore, state, velocity, note=_BOW_LEFT_OUT))
    if element.coiled_length_m > 0.0 and element.coil_diameter_m is not None:
        factor = Quantity("f_coil", on_coil / element.coiled_length_m, Dimension.RATIO)
        drum = Quantity("Dc", element.coil_diameter_m, Dimension.DIAMETER)
        line = _friction_line(
            reynolds, element.roughness_m, bore, factor, formula="f_coil = f(Re, e/D, D/Dc)", source=COIL_SOURCE
        )
        lines.append(
            WorkedLine(
                formula=line.formula,
                inputs=(*line.inputs, drum),
                result=line.result,
                source=line.source,
                note=line.note,
            )
        )
        lines.append(_darcy_line(factor, element.coiled_length_m, bore, state, velocity, note=""))
    return lines


def _ring_loss(element: AnnularRun, flow_m3_s: float, state: LiquidState, pressure_pa: float) -> ElementLoss:
    outer = Quantity("Do", element.outer_diameter_m, Dimension.DIAMETER)
    inner = Quantity("di", element.inner_diameter_m, Dimension.DIAMETER)
    hydraulic = Quantity("Dh", outer.value - inner.value, Dimension.DIAMETER)
    velocity = WorkedLine(
        formula="v = 4 Q / (pi (Do^2 - di^2))",
        inputs=(Quantity("Q", flow_m3_s, Dimension.FLOW), outer, inner),
        result=Quantity("v", flow_m3_s / _ring_area_m2(element), Dimension.VELOCITY),
        source="continuity",
    )
    diameter = WorkedLine(formula="Dh = Do - di", inputs=(outer, inner), result=hydraulic, source="definition 4 A / P")
    reynolds = _reynolds_line(velocity.result.value, hydraulic, state)
    lines = [velocity, diameter, reynolds]
    if flow_m3_s > 0.0:
        factor = Quantity("f", _ring_friction(element)(reynolds.result.value), Dimension.RATIO)
        lines.append(
            _friction_line(
                reynolds.result,
                element.roughness_m,
                hydraulic,
                factor,
                formula="f = f(Re, e/Dh, di/Do)",
                source=ANNULUS_SOURCE,
            )
        )
        lines.append(_darcy_line(factor, element.length_m, hydraulic, state, velocity.result.value, note=_CONCENTRIC))
    return ElementLoss(
        pressure_pa=pressure_pa,
        velocity_m_s=velocity.result.value,
        reynolds=reynolds.result.value,
        regime=regime_of(reynolds.result.value),
        lines=tuple(lines),
    )
