"""What a column of a spreadsheet may hold, declared: its place in a position, its words, and what it measures."""

from __future__ import annotations

import re
from enum import StrEnum
from functools import cache

from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.liquid import LiquidFamily
from spoutline.model.port import FlowPath, Gender, ThreadStandard
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Duty, OutletDirection, Retrieval, VapourStatus


@frozen(kw_only=True)
class ImportField:
    """One field. ``factor`` is SI per unit of the survey's own field where that is not SI (kPa, L/min)."""

    path: tuple[str, ...]
    title: str
    words: tuple[str, ...] = ()
    choices: type[StrEnum] | None = None
    dimension: Dimension | None = None
    factor: float = 1.0
    yes_no: bool = False

    @property
    def key(self) -> str:
        """The field as a person writes it in a mapping: ``outlet.height_m``."""
        return ".".join(self.path)


_LENGTH, _PRESSURE, _FLOW = Dimension.LENGTH, Dimension.PRESSURE, Dimension.FLOW
_LITRE_PER_MINUTE = 1e-3 / 60.0

FIELDS: tuple[ImportField, ...] = (
    ImportField(path=("label",), title="Position", words=("label", "hose", "name", "position label")),
    ImportField(path=("dispenser",), title="Dispenser", words=("dispenser number", "dispenser name", "pump")),
    ImportField(path=("island",), title="Island", words=("island number", "island name", "lane", "quay")),
    ImportField(
        path=("liquid", "family"),
        title="Liquid",
        words=("product", "fuel", "liquid family", "family"),
        choices=LiquidFamily,
    ),
    ImportField(
        path=("liquid", "blend_percent"),
        title="Blend",
        words=("blend percent", "ethanol", "biodiesel", "percent", "blend %"),
        dimension=Dimension.PERCENT,
    ),
    ImportField(path=("tank",), title="Tank", words=("tank number", "tank name", "fed by tank")),
    ImportField(path=("grade",), title="Grade", words=("grade name",)),
    ImportField(path=("duty",), title="Duty", words=("service duty", "vehicle"), choices=Duty),
    ImportField(
        path=("vapour_today",),
        title="Vapor today",
        words=("vapour today", "vapor recovery", "vapour recovery"),
        choices=VapourStatus,
    ),
    ImportField(path=("vapour_wanted",), title="Vapor wanted", words=("vapour wanted",), choices=VapourStatus),
    ImportField(
        path=("outlet", "thread"),
        title="Outlet thread",
        words=("thread", "thread standard"),
        choices=ThreadStandard,
    ),
    ImportField(path=("outlet", "size"), title="Outlet size", words=("size", "thread size", "nominal size")),
    ImportField(path=("outlet", "gender"), title="Outlet gender", words=("gender",), choices=Gender),
    ImportField(path=("outlet", "path"), title="Outlet path", words=("path",), choices=FlowPath),
    ImportField(
        path=("outlet", "height_m"),
        title="Outlet height",
        words=("height", "outlet height m", "height of outlet"),
        dimension=_LENGTH,
    ),
    ImportField(path=("outlet", "direction"), title="Outlet direction", words=("direction",), choices=OutletDirection),
    ImportField(
        path=("outlet", "pull_strength_n"),
        title="Outlet pull strength",
        words=("pull strength",),
        dimension=Dimension.FORCE,
    ),
    ImportField(
        path=("outlet", "vapour_return_available"),
        title="Vapor return available",
        words=("vapour return available", "vapor return", "vapour return"),
        yes_no=True,
    ),
    ImportField(path=("filler", "label"), title="Filler", words=("filler name",)),
    ImportField(
        path=("filler", "distance_m"),
        title="Filler distance",
        words=("reach", "distance", "distance to filler"),
        dimension=_LENGTH,
    ),
    ImportField(path=("filler", "height_m"), title="Filler height", words=("height of filler",), dimension=_LENGTH),
    ImportField(path=("hook", "distance_m"), title="Hook distance", words=("hook away",), dimension=_LENGTH),
    ImportField(path=("hook", "height_m"), title="Hook height", words=("nozzle hook height",), dimension=_LENGTH),
    ImportField(path=("retrieval",), title="Retrieval", words=("hose retrieval", "take up"), choices=Retrieval),
    ImportField(
        path=("supply", "pressure_kpa"),
        title="Supply pressure",
        words=("pressure", "outlet pressure"),
        dimension=_PRESSURE,
        factor=1e3,
    ),
    ImportField(
        path=("supply", "maximum_flow_l_min"),
        title="Maximum flow",
        words=("max flow", "dispenser flow"),
        dimension=_FLOW,
        factor=_LITRE_PER_MINUTE,
    ),
    ImportField(
        path=("supply", "wanted_flow_l_min"),
        title="Wanted flow",
        words=("flow", "flow wanted"),
        dimension=_FLOW,
        factor=_LITRE_PER_MINUTE,
    ),
    ImportField(path=("hold_open_wanted",), title="Hold-open wanted", words=("hold open", "latch"), yes_no=True),
    ImportField(path=("prepay",), title="Prepay", words=("prepaid", "card"), yes_no=True),
    ImportField(path=("overhead",), title="Overhead", words=("overhead outlet",), yes_no=True),
    ImportField(
        path=("in_flammable_zone",), title="In flammable zone", words=("flammable zone", "def zone"), yes_no=True
    ),
    ImportField(path=("notes",), title="Notes", words=("note", "remark", "remarks", "comment")),
)

BY_KEY = {field.key: field for field in FIELDS}


def normal(text: str) -> str:
    """Return a title without case, unit in brackets, signs and double blanks: what is compared with field words."""
    if len(text) > BOUNDS.title_characters:
        return ""  # no title, and looking for one in it takes time with the square of its length
    without_unit = re.sub(r"\([^)]*\)|\[[^]]*\]", " ", text)
    return " ".join(re.sub(r"[^0-9a-zà-ÿ%]+", " ", without_unit.casefold()).split())


@cache
def names_of(field: ImportField) -> tuple[str, ...]:
    """Return everything that a column of this field may be called."""
    return tuple(dict.fromkeys(normal(word) for word in (field.title, field.key, *field.words)))


def unit_in(title: str) -> str:
    """Return the unit that a title carries in brackets; empty where it carries none."""
    if len(title) > BOUNDS.title_characters:
        return ""
    found = re.search(r"[(\[]\s*([^)\]]+?)\s*[)\]]\s*$", title)
    return found.group(1) if found else ""
