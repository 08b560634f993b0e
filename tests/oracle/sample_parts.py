"""Hand-built parts for the inspector's own tests: a plain single-path set that breaks nothing. Invented."""

from __future__ import annotations

from typing import Any, Final

from rules.invented_parts import breakaway, nozzle, swivel
from rules.invented_parts import hose as invented_hose
from spoutline.model.material import Material
from spoutline.model.part import Part, PartKind
from spoutline.model.plan import SetLink
from spoutline.model.requirement import Slot
from spoutline.model.survey import Position, Site

_PLAIN: Final[dict[str, Any]] = {
    "maker": "Nowhere Works",
    "name": "sample",
    "wetted_materials": (Material.ALUMINIUM, Material.FKM),
    "temperature_minimum_c": -40.0,
    "temperature_maximum_c": 60.0,
    "lead_time_days": 3,
}
_FITTING: Final[dict[str, Any]] = _PLAIN | {"mass_kg": 0.4, "length_m": 0.08}


def hose(kind: PartKind, number: str, length_m: float) -> Part:
    """Return a 3/4 in hose with male ends."""
    return invented_hose(
        number,
        kind,
        length_m,
        outside_diameter_m=0.029,
        minimum_bend_radius_m=0.09,
        resistance_ohm_m=50e3,
        permeation_kg_m2_s=None,
        resistance_ohm=50e3 * length_m,
        **_PLAIN,
    )


SWIVEL = swivel("ZZ-SW", **_FITTING)
BREAKAWAY = breakaway("ZZ-BA", separation_minimum_n=700.0, separation_maximum_n=1200.0, **_FITTING)
NOZZLE = nozzle("ZZ-NZ", spout_straight_length_m=0.070, minimum_flow_m3_s=2e-4, maximum_flow_m3_s=7e-4, **_PLAIN)
CURB_HOSE = hose(PartKind.CURB_HOSE, "ZZ-CH", 2.4)
WHIP_HOSE = hose(PartKind.WHIP_HOSE, "ZZ-WH", 0.30)

SAMPLE_SET = (
    SetLink(slot=Slot.WHIP_HOSE, part=WHIP_HOSE),
    SetLink(slot=Slot.BREAKAWAY, part=BREAKAWAY),
    SetLink(slot=Slot.CURB_HOSE, part=CURB_HOSE),
    SetLink(slot=Slot.SWIVEL, part=SWIVEL),
    SetLink(slot=Slot.NOZZLE, part=NOZZLE),
)
SAMPLE_SITE = Site.model_validate({"name": "Sample", "jurisdiction": "us_general"})


def sample_position(**changes: object) -> Position:
    """Return a position on regular gasoline for cars with ``changes`` to its fields."""
    return Position.model_validate({"label": "1A", "liquid": {"family": "gasoline", "blend_percent": 10}} | changes)


def swapped(part: Part) -> tuple[SetLink, ...]:
    """Return the sample set with the part of this kind replaced."""
    return tuple(SetLink(slot=x.slot, part=part if x.part.kind is part.kind else x.part) for x in SAMPLE_SET)
