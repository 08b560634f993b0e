"""What hangs at a position today: catalogue numbers, or free text with the attributes that matter."""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum
from typing import TYPE_CHECKING, Annotated, Any, Self

from pydantic import (
    ConfigDict,
    Field,
    SerializerFunctionWrapHandler,
    StringConstraints,
    create_model,
    model_serializer,
    model_validator,
)

from spoutline.model.field_faults import fault_in
from spoutline.model.figure import Described
from spoutline.model.liquid import ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.part import (
    HANGING_KINDS,
    AdaptorData,
    BreakawayData,
    HoseData,
    NozzleData,
    PartKind,
    SwivelData,
)
from spoutline.model.part_figures import (
    BLOCKS_OF_KIND,
    FIGURES,
    OWN_FIGURES,
    FigureFault,
    PartFigure,
    figures_of,
    impossible_figures,
    number_at,
    widest_bounds,
)
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import PlainValues
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard
from spoutline.model.port_size_field import SIZE_MEANING, PortSize

_Text = Annotated[str, StringConstraints(strip_whitespace=True, max_length=200)]
_Number = Annotated[str, StringConstraints(strip_whitespace=True, max_length=60)]


class InstalledCondition(StrEnum):
    """What an inspection of an installed part found."""

    GOOD = "good"
    WORN = "worn"
    DAMAGED = "damaged"
    UNKNOWN = "unknown"


class _Document(PlainValues):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class InstalledPort(_Document):
    """One end of an installed part."""

    thread: ThreadStandard = Field(description="Thread standard of this end.")
    size: PortSize = Field(description=SIZE_MEANING)
    gender: Gender = Field(description="Gender of the thread.")
    path: FlowPath = Field(description="Path of this end.")

    @property
    def port(self) -> Port:
        """The end as the joint rules know it."""
        return Port(self.thread, self.size, self.gender, self.path)


class _Structure(_Document):
    """What an installed part states beside single figures."""

    inlet: InstalledPort = Field(description="The end towards the dispenser.")
    outlet: InstalledPort | None = Field(None, description="The end towards the vehicle; empty for a nozzle.")
    schemes: tuple[ListingScheme, ...] = Field((), description="Whose listings the part carries.")
    wetted_materials: tuple[Material, ...] = Field(min_length=1, max_length=40, description="Materials that get wet.")


def _single_figures() -> Iterator[tuple[str, Any]]:
    """Yield the figures of every part as fields; ranges that differ by kind are checked where the kind is known."""
    structure = _Structure.model_fields
    for name in dict.fromkeys(figure.name for figure in OWN_FIGURES if figure.name not in structure):
        same = [figure for figure in OWN_FIGURES if figure.name == name and not figure.many]
        of_kinds = [figure for figure in same if set(figure.kinds) & set(HANGING_KINDS)]
        if of_kinds:
            first = of_kinds[0]
            meaning = Described("; ".join(dict.fromkeys(_meaning_in_si(figure) for figure in of_kinds)))
            kept: Any = first.value_type
            inner: Any = Annotated[kept, *widest_bounds(of_kinds).constraints, meaning]
            yield name, (inner | None, None) if first.may_lack else (inner, ...)


def _meaning_in_si(figure: PartFigure) -> str:
    """Return what the figure is and which kinds have it; the unit of the JSON stands in its name."""
    said = figure.declared.meaning
    few = set(HANGING_KINDS) - set(figure.kinds)
    kinds = f" ({', '.join(kind for kind in HANGING_KINDS if kind in figure.kinds)})" if few else ""
    bounds = figure.declared.bounds_si.words
    return f"{said}{kinds}, {bounds}" if bounds else f"{said}{kinds}"


if TYPE_CHECKING:
    _Figures = _Structure
else:
    _Figures = create_model("_Figures", __base__=_Structure, **dict(_single_figures()))


class InstalledFigures(_Figures):
    """Everything that a part must state before it can be re-checked in a new set; SI, the unit in the name."""

    nozzle: NozzleData | None = None
    hose: HoseData | None = None
    breakaway: BreakawayData | None = None
    swivel: SwivelData | None = None
    adaptor: AdaptorData | None = None

    @model_serializer(mode="wrap")
    def _same_text_every_time(self, handler: SerializerFunctionWrapHandler) -> dict[str, object]:
        """Write sets sorted: their own order changes from run to run."""
        written: dict[str, object] = handler(self)
        for figure in FIGURES:
            data = written.get(figure.block)
            if figure.many is frozenset and isinstance(data, dict):
                data[figure.name] = sorted(data[figure.name])
        return written


class InstalledPart(_Document):
    """One part of today's hanging hardware; dispenser first in the list of a position."""

    kind: PartKind = Field(description="Kind of the part: hanging hardware only.")
    number: _Number = Field("", description="Catalog number; empty where the part is described instead.")
    maker: _Text = Field("", description="Maker of the catalog number; empty where one maker only has the number.")
    description: _Text = Field("", description="Free text where the part is not in the catalog.")
    path: FlowPath | None = Field(None, description="Path of a described part, where known.")
    listings: tuple[ListingClass, ...] | None = Field(None, description="Listing classes on the plate, where known.")
    figures: InstalledFigures | None = Field(
        None, description="All figures of a described part; without them it cannot be re-checked, so it cannot stay."
    )
    age_years: float | None = Field(None, ge=0, le=100, description="Age, years; empty where unknown.")
    condition: InstalledCondition = Field(InstalledCondition.UNKNOWN, description="What an inspection found.")

    @model_validator(mode="after")
    def _is_named(self) -> Self:
        if self.kind not in HANGING_KINDS:
            raise ValueError(f"kind {self.kind.value!r} is no hanging hardware: {', '.join(HANGING_KINDS)}")
        if not self.number and not self.description:
            raise ValueError("an installed part needs a catalog number or a description")
        if self.number and self.figures is not None:
            raise ValueError("figures belong to a described part; a catalog number brings its own")
        if self.maker and not self.number:
            raise ValueError("a maker belongs to a catalog number; write the maker of a described part into its text")
        return self

    @property
    def ref(self) -> PartRef | None:
        """The catalogue part that it is; None for a described part."""
        return PartRef(self.number, self.maker) if self.number else None

    @model_serializer(mode="wrap")
    def _without_unknown_maker(self, handler: SerializerFunctionWrapHandler) -> dict[str, object]:
        """Write a bare number as it always was written."""
        written: dict[str, object] = handler(self)
        if not self.maker:
            written.pop("maker", None)
        return written

    @model_validator(mode="after")
    def _figures_are_possible(self) -> Self:
        fault = next(figure_faults(self), None)
        if fault is None:
            return self
        told = fault.told(lambda path: f"{path.rpartition('.')[2]} ({_shown(self.figures, path)})")
        raise fault_in(f"figures.{fault.path}", _shown(self.figures, fault.path), told)


def _shown(figures: InstalledFigures | None, path: str) -> str:
    return f"{number_at(figures, path):g}"


def figure_faults(part: InstalledPart) -> Iterator[FigureFault]:
    """Yield which figures of a described part no part of its kind can have."""
    if part.figures is not None:
        yield from impossible_figures(part.figures, part.kind)


def missing_figures(part: InstalledPart) -> tuple[str, ...]:
    """Return the names of what a described part lacks for a re-check."""
    figures = part.figures
    if figures is None:
        return ("figures",)
    found = [block for block in BLOCKS_OF_KIND[part.kind] if getattr(figures, block) is None]
    if part.listings is None:
        found.append("listings")
    stated = {figure.name for figure in figures_of(part.kind) if figure.declared.stated}
    return (*found, *sorted(name for name in stated if getattr(figures, name) is None))
