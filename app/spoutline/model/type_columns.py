"""What a table of dispenser types has in its columns: each answer of a type by its path, with what it measures."""

from __future__ import annotations

from enum import StrEnum
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.figure import TableUnit
from spoutline.model.port import FlowPath, Gender, ThreadStandard
from spoutline.model.quantity import Dimension
from spoutline.model.survey import DispenserType, OutletDirection, Retrieval


@frozen(kw_only=True)
class TypeColumn:
    """One answer of a dispenser type: its path, what it is called, and how it is written."""

    path: tuple[str, ...]
    title: str
    names: tuple[str, ...] = ()
    choices: type[StrEnum] | None = None
    dimension: Dimension | None = None
    unit: TableUnit = TableUnit.SI
    yes_no: bool = False

    @property
    def key(self) -> str:
        """The path in one word, as a table has it: ``outlet.height_m``."""
        return ".".join(self.path)

    def value(self, kind: DispenserType) -> object:
        """Return the answer of a type, said or not."""
        value: object = kind
        for step in self.path:
            value = getattr(value, step)
        return value


_LENGTH, _FORCE, _FLOW = Dimension.LENGTH, Dimension.FORCE, Dimension.FLOW
# names besides the title: trade usage, from memory
TYPE_COLUMNS: Final[tuple[TypeColumn, ...]] = (
    TypeColumn(path=("name",), title="Dispenser type", names=("type", "model", "dispenser model", "name")),
    TypeColumn(path=("maker",), title="Maker", names=("manufacturer", "make", "brand")),
    TypeColumn(path=("outlet", "thread"), title="Outlet thread", names=("thread",), choices=ThreadStandard),
    TypeColumn(path=("outlet", "size"), title="Outlet size", names=("size", "thread size")),
    TypeColumn(path=("outlet", "gender"), title="Outlet gender", names=("gender",), choices=Gender),
    TypeColumn(path=("outlet", "path"), title="Outlet path", names=("path",), choices=FlowPath),
    TypeColumn(path=("outlet", "height_m"), title="Outlet height", names=("height",), dimension=_LENGTH),
    TypeColumn(path=("outlet", "direction"), title="Outlet direction", names=("direction",), choices=OutletDirection),
    TypeColumn(
        path=("outlet", "pull_strength_n"),
        title="Outlet pull strength",
        names=("pull strength", "strength"),
        dimension=_FORCE,
    ),
    TypeColumn(
        path=("outlet", "vapour_return_available"),
        title="Vapor return available",
        names=("vapor return", "vapour return"),
        yes_no=True,
    ),
    TypeColumn(path=("hook", "distance_m"), title="Hook distance", names=("hook away",), dimension=_LENGTH),
    TypeColumn(path=("hook", "height_m"), title="Hook height", names=("nozzle hook height",), dimension=_LENGTH),
    TypeColumn(path=("retrieval",), title="Retrieval", names=("hose retrieval", "take up"), choices=Retrieval),
    TypeColumn(path=("retractor", "height_m"), title="Retractor height", dimension=_LENGTH),
    TypeColumn(path=("retractor", "clamp_fraction"), title="Retractor clamp fraction", names=("clamp fraction",)),
    TypeColumn(path=("retractor", "force_n"), title="Retractor force", names=("retractor pull",), dimension=_FORCE),
    TypeColumn(
        path=("reel", "drum_diameter_m"), title="Reel drum diameter", names=("drum diameter",), dimension=_LENGTH
    ),
    TypeColumn(path=("reel", "turns_left"), title="Reel turns left", names=("turns left",)),
    TypeColumn(
        path=("supply", "pressure_kpa"),
        title="Supply pressure",
        names=("pressure", "outlet pressure"),
        dimension=Dimension.PRESSURE,
        unit=TableUnit.KILOPASCAL,
    ),
    TypeColumn(
        path=("supply", "maximum_flow_l_min"),
        title="Maximum flow",
        names=("max flow", "dispenser flow", "flow"),
        dimension=_FLOW,
        unit=TableUnit.LITRE_PER_MINUTE,
    ),
    TypeColumn(path=("overhead",), title="Overhead", names=("overhead outlet",), yes_no=True),
    TypeColumn(path=("remark",), title="Remark", names=("remarks", "note", "notes", "comment")),
)
TEXT_COLUMNS: Final = frozenset({"name", "maker", "remark", "outlet.size"})
