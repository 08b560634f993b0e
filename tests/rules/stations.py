"""Invented stations, and the built-in rule tables with rows changed where a test says so."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

from spoutline.model.limit import LimitId, LimitValue, RuleTables
from spoutline.model.liquid import LiquidFamily
from spoutline.model.requirement import Refusal, Requirement
from spoutline.model.survey import Climate, Position, Site, SurveyLiquid
from spoutline.rules.derive.requirement import requirement_for
from spoutline.ruletables.load import load_rule_tables

RESOURCES = Path(__file__).parents[2] / "resources"


@cache
def tables(jurisdiction: str = "us_general") -> RuleTables:
    """Return the tables of a built-in profile."""
    return load_rule_tables(jurisdiction, resources=RESOURCES, own_profiles=None)


def changed(base: RuleTables, **rows: LimitValue) -> RuleTables:
    """Return the tables with rows changed; keyword names are those of ``LimitId`` members."""
    values = {LimitId[name]: value for name, value in rows.items()}
    limits = tuple(
        replace(limit, value=values[limit.id]) if limit.id in values else limit for limit in base.jurisdiction.limits
    )
    return RuleTables(replace(base.jurisdiction, limits=limits), base.materials)


def site(**fields: Any) -> Site:
    """Return an invented station with a mild climate."""
    return Site(**{"name": "Quillmere Stop", "climate": Climate(low_c=-10, high_c=35), **fields})


def position(family: LiquidFamily = LiquidFamily.GASOLINE, blend: float = 10, **fields: Any) -> Position:
    """Return an invented position that sells the liquid."""
    return Position(**{"label": "1", "liquid": SurveyLiquid(family=family, blend_percent=blend), **fields})


def derived(asked: Position, at: Site | None = None, rule_tables: RuleTables | None = None) -> Requirement:
    """Return the requirement of a position that has one."""
    result = requirement_for(asked, at or site(), rule_tables or tables())
    assert isinstance(result, Requirement), result
    return result


def refused(asked: Position, at: Site | None = None, rule_tables: RuleTables | None = None) -> Refusal:
    """Return the refusal of a position that has no requirement."""
    result = requirement_for(asked, at or site(), rule_tables or tables())
    assert isinstance(result, Refusal), result
    return result
