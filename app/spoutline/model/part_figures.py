"""The declared figures of a part as a list, and what must hold between them whichever way they come in."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from enum import StrEnum
from types import NoneType
from typing import Annotated, Any, get_args, get_origin, get_type_hints

from spoutline.frozen import frozen
from spoutline.model.figure import Bounds, Figure
from spoutline.model.part import (
    ACCESSORIES,
    BREAKAWAYS,
    HOSES,
    AccessoryData,
    AdaptorData,
    BreakawayData,
    HoseData,
    NozzleData,
    Part,
    PartKind,
    SwivelData,
)

# what each kind adds to the figures of every part: the field of ``Part`` that holds it, its class, the kinds
BLOCKS: dict[str, tuple[type, tuple[PartKind, ...]]] = {
    "nozzle": (NozzleData, (PartKind.NOZZLE,)),
    "hose": (HoseData, HOSES),
    "breakaway": (BreakawayData, BREAKAWAYS),
    "swivel": (SwivelData, (PartKind.SWIVEL, PartKind.SWIVEL_BREAKAWAY)),
    "adaptor": (AdaptorData, (PartKind.ADAPTOR, PartKind.SPLITTER)),
    "accessory": (AccessoryData, ACCESSORIES),
}
_REFERENCE = re.compile(r"\{([a-z0-9_.]+)\}")


@frozen(kw_only=True)
class PartFigure:
    """A declared figure with the name and type of its field; ``block`` is empty for the figures of every part."""

    block: str
    name: str
    kinds: tuple[PartKind, ...]
    declared: Figure
    value_type: type[Any]  # of one value: float, int, bool, an enumeration, a port
    many: type[Any] | None  # tuple where the order counts, frozenset where not, None for a single value
    may_lack: bool

    @property
    def path(self) -> str:
        """Where the figure stands in a part, as ``hose.bore_m``."""
        return f"{self.block}.{self.name}" if self.block else self.name

    @property
    def label(self) -> str:
        """The key of its label among the phrases."""
        return self.declared.label or self.name

    @property
    def choices(self) -> tuple[StrEnum, ...]:
        """The words that it may be; none for what is no choice of words."""
        return tuple(self.value_type) if issubclass(self.value_type, StrEnum) else ()

    @property
    def is_labelled(self) -> bool:
        """Whether a person sees it under a label of its own."""
        return self.declared.shown and not self.declared.follows

    @property
    def column_meaning(self) -> str:
        """What its column in the source tables holds."""
        words = self.declared.column_meaning
        if self.value_type is bool:
            return f"{words}, yes or no"
        return f"{words}, separated by blanks" if self.many else words

    @property
    def is_number(self) -> bool:
        """Whether it is a number with a dimension."""
        return self.value_type in (float, int)

    def beside(self, name: str) -> str:
        """Return the path of another figure of the same block."""
        return f"{self.block}.{name}" if self.block else name


@frozen
class FigureFault:
    """A figure that is wrong beside others, or outside its range.

    ``wanted`` says what would be right; another figure is named in it by its path in braces, so that each way in can
    put the name and the value that its reader sees.
    """

    path: str
    wanted: str

    def told(self, other: Callable[[str], str]) -> str:
        """Return ``wanted`` with the other figures as ``other`` names them."""
        return _REFERENCE.sub(lambda found: other(found.group(1)), self.wanted)


def _declared_in(owner: type, block: str, kinds: tuple[PartKind, ...]) -> Iterator[PartFigure]:
    for name, hint in get_type_hints(owner, include_extras=True).items():
        if get_origin(hint) is not Annotated:
            continue
        kept, *declared = get_args(hint)
        inner = [one for one in get_args(kept) if one is not NoneType]
        may_lack = NoneType in get_args(kept)
        whole = inner[0] if may_lack else kept
        many = get_origin(whole)
        for figure in declared:
            if isinstance(figure, Figure):
                yield PartFigure(
                    block=block,
                    name=name,
                    kinds=tuple(PartKind(kind) for kind in figure.kinds) or kinds,
                    declared=figure,
                    value_type=get_args(whole)[0] if many else whole,
                    many=many,
                    may_lack=may_lack and not figure.stated,
                )


OWN_FIGURES: tuple[PartFigure, ...] = tuple(_declared_in(Part, "", tuple(PartKind)))
FIGURES: tuple[PartFigure, ...] = (
    *OWN_FIGURES,
    *(figure for block, (data, kinds) in BLOCKS.items() for figure in _declared_in(data, block, kinds)),
)
_OF_KIND = {kind: tuple(figure for figure in FIGURES if kind in figure.kinds) for kind in PartKind}


def _orders_of(figure: PartFigure) -> Iterator[tuple[str, str, bool]]:
    """Yield the paths of a figure and of each that it must stay below, and whether it may reach that one."""
    for top, may_reach in ((figure.declared.up_to, True), (figure.declared.below, False)):
        if top:
            yield figure.path, figure.beside(top), may_reach


_ORDERS = {kind: tuple(order for one in figures for order in _orders_of(one)) for kind, figures in _OF_KIND.items()}
BLOCKS_OF_KIND: dict[PartKind, tuple[str, ...]] = {
    kind: tuple(block for block, (_data, kinds) in BLOCKS.items() if kind in kinds) for kind in PartKind
}


def figures_of(kind: PartKind) -> tuple[PartFigure, ...]:
    """Return the figures that a part of this kind has, those of every part first."""
    return _OF_KIND[kind]


def figures_in(block: str) -> tuple[PartFigure, ...]:
    """Return one entry for each field of a block, however many declarations it has."""
    found = {figure.name: figure for figure in reversed(FIGURES) if figure.block == block}
    return tuple(reversed(found.values()))


def widest_bounds(figures: Sequence[PartFigure]) -> Bounds:
    """Return the range in SI that holds the ranges of all these figures; a side that one leaves open is open."""
    return widest_of([figure.declared.bounds_si for figure in figures])


def widest_of(found: Sequence[Bounds]) -> Bounds:
    """Return the range that holds all these ranges; a side that one leaves open is open."""
    lows = [(one.above, True) if one.least is None else (one.least, False) for one in found]
    tops = [one.most for one in found if one.most is not None]
    lowest, left_out = min(((low, out) for low, out in lows if low is not None), default=(None, False))
    if any(low is None for low, _out in lows):
        lowest = None
    most = max(tops) if tops and len(tops) == len(found) else None
    return Bounds(above=lowest if left_out else None, least=None if left_out else lowest, most=most)


def value_at(owner: object, path: str) -> object:
    """Return the figure at ``path`` of a part or of anything with its fields; None where its block is missing."""
    value = owner
    for step in path.split("."):
        value = None if value is None else getattr(value, step, None)
    return value


def number_at(owner: object, path: str) -> float | None:
    """Return the number at ``path`` as ``value_at`` does; None where there is none, or something else."""
    value = value_at(owner, path)
    if type(value) is float:  # as nearly every figure is
        return value
    return value if isinstance(value, int | float) and not isinstance(value, bool) else None


def impossible_figures(owner: object, kind: PartKind) -> Iterator[FigureFault]:
    """Yield what no part can have: numbers out of range, and figures in the wrong order.

    ``owner`` is a part, or anything with its fields, of the kind ``kind``; a figure that is missing breaks nothing.
    """
    for figure in figures_of(kind):
        value = number_at(owner, figure.path)
        if value is None:
            continue
        if not figure.declared.bounds_si.admit(value):
            yield FigureFault(figure.path, f"it must be {figure.declared.bounds_si.words}")
        yield from _order_faults(owner, figure, value)


def disordered_figures(owner: object, kind: PartKind) -> Iterator[FigureFault]:
    """Yield the figures that stand in the wrong order, as ``impossible_figures`` does, without the ranges."""
    for path, top_path, may_reach in _ORDERS[kind]:
        value, top = number_at(owner, path), number_at(owner, top_path)
        if value is not None and top is not None and value >= top and not (may_reach and value == top):
            yield _order_fault(path, top_path, may_reach=may_reach)


def _order_faults(owner: object, figure: PartFigure, value: float) -> Iterator[FigureFault]:
    for path, top_path, may_reach in _orders_of(figure):
        top = number_at(owner, top_path)
        if top is not None and value >= top and not (may_reach and value == top):
            yield _order_fault(path, top_path, may_reach=may_reach)


def _order_fault(path: str, top_path: str, *, may_reach: bool) -> FigureFault:
    if may_reach:
        return FigureFault(path, f"it must not exceed {{{top_path}}}")
    return FigureFault(path, f"it must be less than {{{top_path}}}")
