"""Pressure and flow: what the dispenser gives, what is wanted, what the law allows into motor vehicles."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.finding import Verdict
from spoutline.model.limit import Jurisdiction, LimitId
from spoutline.model.liquid import LiquidFamily
from spoutline.model.quantity import Dimension, Quantity
from spoutline.model.survey import Duty, Position
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.verdicts import Derivation

_LITRES_PER_MINUTE = 1.0e-3 / 60.0  # m3/s
_KILOPASCAL = 1.0e3  # Pa
_PRINTED_ROUNDING = 1.0015  # the agency prints 10 gpm as 37.9 L/min; exactly it is 37.854

_WANTED = {
    Duty.CAR: LimitId.FLOW_WANTED_CAR,
    Duty.TRUCK: LimitId.FLOW_WANTED_TRUCK,
    Duty.MARINE: LimitId.FLOW_WANTED_MARINE,
    Duty.REEL: LimitId.FLOW_WANTED_REEL,
}
_SUPPLY = {
    Duty.CAR: LimitId.FLOW_SUPPLY_CAR,
    Duty.TRUCK: LimitId.FLOW_SUPPLY_TRUCK,
    Duty.MARINE: LimitId.FLOW_SUPPLY_MARINE,
    Duty.REEL: LimitId.FLOW_SUPPLY_REEL,
}
_HELD_TO_ROAD_LIMIT = frozenset({Duty.CAR, Duty.REEL})


@frozen(kw_only=True)
class SupplyAsked:
    """Pressures in Pa, flows in m3/s."""

    pressure_pa: float
    supply_pressure_pa: float
    supply_flow_m3_s: float
    wanted_flow_m3_s: float


def road_limit_m3_s(position: Position, jurisdiction: Jurisdiction) -> float | None:
    """Return the flow limit (m3/s) for gasoline into motor vehicles, or None where it does not apply.

    Pumps used only for heavy vehicles or boats are exempt, which truck and marine duty stand for; a reel is not.

    Parameters: ``position``, its liquid and duty; ``jurisdiction``, the limit.
    Source: 40 CFR 80.22(j), now 1090.1550; exemption 61 FR 33033.
    """
    if position.liquid.family is not LiquidFamily.GASOLINE or position.duty not in _HELD_TO_ROAD_LIMIT:
        return None
    return jurisdiction.optional_number(LimitId.FLOW_GASOLINE_ROAD_MAX)


def supply_flow_limit_id(position: Position) -> LimitId:
    """Return the row that stands for the dispenser's flow where the survey is silent.

    Parameters: ``position``, its liquid and duty.
    """
    return LimitId.FLOW_SUPPLY_DEF if position.liquid.family is LiquidFamily.DEF else _SUPPLY[position.duty]


def wanted_flow_limit_id(position: Position) -> LimitId:
    """Return the row that stands for the wanted flow where the survey is silent.

    Parameters: ``position``, its liquid and duty.
    """
    return LimitId.FLOW_WANTED_DEF if position.liquid.family is LiquidFamily.DEF else _WANTED[position.duty]


def derive_supply(notes: Derivation) -> SupplyAsked:
    """Add the lines of pressure, flow, nozzle flow and velocity, and return the figures.

    Parameters: ``notes``, the derivation under way.
    """
    position, jurisdiction = notes.position, notes.tables.jurisdiction
    stated = position.supply
    supply_pressure = (
        jurisdiction.number(LimitId.SUPPLY_PRESSURE)
        if stated.pressure_kpa is None
        else stated.pressure_kpa * _KILOPASCAL
    )
    supply_row = supply_flow_limit_id(position)
    supply_flow = (
        jurisdiction.number(supply_row)
        if stated.maximum_flow_l_min is None
        else stated.maximum_flow_l_min * _LITRES_PER_MINUTE
    )
    figures = (
        (
            LimitId.SUPPLY_PRESSURE,
            stated.pressure_kpa,
            Quantity("supply_pressure", supply_pressure, Dimension.PRESSURE),
        ),
        (supply_row, stated.maximum_flow_l_min, Quantity("supply_flow", supply_flow, Dimension.FLOW)),
    )
    assumed = tuple((row, figure) for row, surveyed, figure in figures if surveyed is None)
    if assumed:
        notes.find(
            RuleId.SUPPLY_ASSUMED,
            *(figure for _, figure in assumed),
            verdict=Verdict.QUESTION,
            limits=tuple(row for row, _ in assumed),
        )
    pressure = max(jurisdiction.number(LimitId.PART_PRESSURE_MIN), supply_pressure)
    notes.line(
        RuleId.ASKS_PRESSURE,
        Quantity("pressure", pressure, Dimension.PRESSURE),
        Quantity("supply_pressure", supply_pressure, Dimension.PRESSURE),
        limits=(LimitId.PART_PRESSURE_MIN,) + ((LimitId.SUPPLY_PRESSURE,) if stated.pressure_kpa is None else ()),
    )
    return SupplyAsked(
        pressure_pa=pressure,
        supply_pressure_pa=supply_pressure,
        supply_flow_m3_s=supply_flow,
        wanted_flow_m3_s=_derive_flow(notes, supply_flow),
    )


def _derive_flow(notes: Derivation, supply_flow: float) -> float:
    """Derive the wanted flow: a wish above the law is refused visibly and planned at the limit."""
    position, jurisdiction = notes.position, notes.tables.jurisdiction
    stated = position.supply.wanted_flow_l_min
    row = wanted_flow_limit_id(position)
    wished = jurisdiction.number(row) if stated is None else stated * _LITRES_PER_MINUTE
    road_limit = road_limit_m3_s(position, jurisdiction)
    limits = ((row,) if stated is None else ()) + ((LimitId.FLOW_GASOLINE_ROAD_MAX,) if road_limit is not None else ())
    wanted = wished if road_limit is None else min(wished, road_limit)
    ceiling = supply_flow if road_limit is None else min(supply_flow, road_limit)
    shown = Quantity("wanted_flow", wished, Dimension.FLOW)
    if stated is not None and road_limit is not None and wished > road_limit * _PRINTED_ROUNDING:
        notes.find(
            RuleId.WANTED_FLOW_ABOVE_LIMIT,
            shown,
            Quantity("flow_limit", road_limit, Dimension.FLOW),
            verdict=Verdict.NOTE,
            limits=(LimitId.FLOW_GASOLINE_ROAD_MAX,),
        )
    if road_limit is not None and supply_flow > road_limit * _PRINTED_ROUNDING:
        notes.find(
            RuleId.SUPPLY_FLOW_ABOVE_LIMIT,
            Quantity("supply_flow", supply_flow, Dimension.FLOW),
            Quantity("flow_limit", road_limit, Dimension.FLOW),
            verdict=Verdict.NOTE,
            limits=(LimitId.FLOW_GASOLINE_ROAD_MAX,),
        )
    if wanted > supply_flow:
        notes.find(
            RuleId.WANTED_FLOW_ABOVE_SUPPLY,
            Quantity("wanted_flow", wanted, Dimension.FLOW),
            Quantity("supply_flow", supply_flow, Dimension.FLOW),
            verdict=Verdict.BROKEN,
        )
    greatest = Quantity("flow_ceiling", ceiling, Dimension.FLOW)
    notes.line(
        RuleId.ASKS_FLOW,
        Quantity("wanted_flow", wanted, Dimension.FLOW),
        Quantity("supply_flow", supply_flow, Dimension.FLOW),
        greatest,
        limits=limits,
    )
    notes.line(RuleId.ASKS_NOZZLE_FLOW, greatest)
    velocity = jurisdiction.optional_number(LimitId.FLOW_VELOCITY_MAX)
    if velocity is not None:
        notes.line(
            RuleId.ASKS_VELOCITY,
            Quantity("velocity_maximum", velocity, Dimension.VELOCITY),
            limits=(LimitId.FLOW_VELOCITY_MAX,),
        )
    return wanted
