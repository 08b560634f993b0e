"""Every kind of question that a station can ask of a part: liquid, duty, vapour, retrieval, service, listing scheme.

Sizes and lengths are left out: they are matters of joints and sets, not of a part by itself.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product
from typing import Final

from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily
from spoutline.model.requirement import Refusal, Requirement
from spoutline.model.survey import (
    Climate,
    Duty,
    Outlet,
    Position,
    Retrieval,
    Service,
    Site,
    Supply,
    SurveyLiquid,
    VapourStatus,
)
from spoutline.rules.derive.requirement import requirement_for

# a blend of each listing class; the classes: UL 2586, 2586A and 2586B, scopes
_BLENDS: Final[dict[LiquidFamily, tuple[float, ...]]] = {
    LiquidFamily.GASOLINE: (0, 10, 25, 85),
    LiquidFamily.DIESEL: (0, 5, 20, 100),
    LiquidFamily.KEROSENE: (0,),
    LiquidFamily.FUEL_OIL: (0,),
    LiquidFamily.DEF: (0,),
}
_SINGLE: Final = Outlet()
_RETURN: Final = Outlet(vapour_return_available=True)
_BALANCE: Final = Outlet.model_validate({"thread": "UN", "size": "1-7/8-12", "path": "balance"})
_ASSIST: Final = Outlet.model_validate({"thread": "M", "size": "34x1.5", "path": "vacuum_assist"})
# the outlets from which each status is reached: its own, one whose vapour port is closed, one with a return beside it
_OUTLETS: Final[dict[VapourStatus, tuple[Outlet, ...]]] = {
    VapourStatus.NONE: (_SINGLE, _BALANCE, _ASSIST),
    VapourStatus.BALANCE: (_BALANCE, _RETURN),
    VapourStatus.VACUUM_ASSIST: (_ASSIST, _RETURN),
}
_MILD: Final = Climate(low_c=0.0, high_c=30.0)  # what no part that fits a harder place fails at
_WEAK: Final = Supply(pressure_kpa=100.0, maximum_flow_l_min=25.0)  # for parts that a usual dispenser asks too much of
_DUTIES: Final = (Duty.CAR, Duty.TRUCK, Duty.MARINE)  # a reel is a way of retrieval too


def requirements(tables: Sequence[RuleTables]) -> tuple[Requirement, ...]:
    """Return what each kind of question asks under each of the rule tables; those that nothing can answer left out."""
    found: dict[Requirement, None] = {}
    for one in tables:
        for position, site in _questions(one):
            asked = requirement_for(position, site, one)
            if not isinstance(asked, Refusal):
                found[asked] = None
    return tuple(found)


def _questions(tables: RuleTables) -> Iterator[tuple[Position, Site]]:
    for service, latch in ((Service.SELF, False), (Service.ATTENDED, True), (Service.ATTENDED, False)):
        site = Site(name="any", jurisdiction=tables.jurisdiction.id, service=service, climate=_MILD)
        for family, blends in _BLENDS.items():
            for blend, (status, outlet), duty, retrieval, zone in product(
                blends, _ways(family), _DUTIES, Retrieval, _zones(family)
            ):
                position = Position(
                    label="any",
                    liquid=SurveyLiquid(family=family, blend_percent=blend),
                    duty=duty,
                    vapour_today=status,
                    vapour_wanted=status,
                    outlet=outlet,
                    retrieval=retrieval,
                    hold_open_wanted=latch,
                    supply=Supply() if latch or service is Service.SELF else _WEAK,
                    in_flammable_zone=zone,
                )
                yield position, site


def _ways(family: LiquidFamily) -> tuple[tuple[VapourStatus, Outlet], ...]:
    if family is not LiquidFamily.GASOLINE:
        return ((VapourStatus.NONE, _SINGLE),)
    return tuple((status, outlet) for status, outlets in _OUTLETS.items() for outlet in outlets)


def _zones(family: LiquidFamily) -> tuple[bool | None, ...]:
    return (True, False) if family is LiquidFamily.DEF else (None,)
