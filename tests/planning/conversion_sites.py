"""Sites for the tests of a conversion, and the context that works them out."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import Any

from spoutline.model.conversion_step import StepTable
from spoutline.model.limit import RuleTables
from spoutline.model.survey import Survey
from spoutline.model.vapour_figures import VapourTables
from spoutline.planning.conversion.convert_position import ConversionContext
from spoutline.planning.protocols import PartStore
from spoutline.planning.sets.context import PlanningContext
from spoutline.ruletables.conversion_steps import load_step_table
from spoutline.ruletables.load import load_rule_tables, load_vapour_tables

RESOURCES = Path(__file__).resolve().parents[2] / "resources"
OUTLETS: dict[str, dict[str, Any]] = {
    "none": {"thread": "NPT", "size": "3/4", "path": "single"},
    "balance": {"thread": "UN", "size": "1-7/8-12", "path": "balance"},
    "vacuum_assist": {"thread": "M", "size": "34x1.5", "path": "vacuum_assist"},
}
E10 = {"family": "gasoline", "blend_percent": 10}


@lru_cache(maxsize=1)
def vapour_tables() -> VapourTables:
    return load_vapour_tables(RESOURCES)


@lru_cache(maxsize=1)
def step_table() -> StepTable:
    return load_step_table(RESOURCES)


@lru_cache(maxsize=8)
def rule_tables(jurisdiction: str) -> RuleTables:
    return load_rule_tables(jurisdiction, resources=RESOURCES, own_profiles=None)


def context_for(survey: Survey, parts: PartStore) -> ConversionContext:
    return ConversionContext(
        PlanningContext(rule_tables(survey.site.jurisdiction), parts), vapour_tables(), step_table()
    )


def position(label: str, *, today: str = "none", wanted: str = "none", **changes: Any) -> dict[str, Any]:
    return {
        "label": label,
        "liquid": E10,
        "vapour_today": today,
        "vapour_wanted": wanted,
        "outlet": OUTLETS[today],
        "filler": {"distance_m": 1.8},
        **changes,
    }


def site_of(*positions: dict[str, Any], jurisdiction: str = "us_general", **conversion: Any) -> Survey:
    return Survey.model_validate(
        {
            "site": {"name": "Hollow Ford", "jurisdiction": jurisdiction},
            "positions": positions,
            "conversion": conversion,
        }
    )


def installed(*parts: tuple[str, str], **changes: Any) -> list[dict[str, Any]]:
    return [{"kind": kind, "number": number, "condition": "good", **changes} for kind, number in parts]


PLAIN_CHAIN = (
    ("whip_hose", "TH-W101"),
    ("breakaway", "LS-B101"),
    ("curb_hose", "TH-H101"),
    ("swivel", "LS-S101"),
    ("nozzle", "QW-N101"),
)
