"""An entry of a catalogue and the part that it describes: told apart where figures lack, and turned into each other."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Hashable, Iterator, Mapping
from enum import StrEnum
from functools import lru_cache
from typing import Any, Final, NamedTuple

from pydantic import BaseModel, ConfigDict, Field, ValidationError, create_model

from spoutline.catalogue.cells import PortCell, YesNo, words_cell
from spoutline.catalogue.entry_text import known_figure
from spoutline.catalogue.rows import columns_of, value_in_si, with_blocks
from spoutline.catalogue.table_rules import table_faults
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import CatalogueEntry, Cell, EntryPrice, FigureCell, Origin
from spoutline.model.figure import TableUnit, plain_number
from spoutline.model.part import Part, PartKind
from spoutline.model.part_figures import BLOCKS_OF_KIND, PartFigure, figures_of, value_at
from spoutline.model.part_ref import PartRef
from spoutline.model.port import Port
from spoutline.model.worded import Worded


@frozen
class EntryFault:
    """What is wrong in an entry: the column, what stands there, what would be right."""

    ref: PartRef
    column: str
    value: str
    wanted: str

    def __str__(self) -> str:
        """Return it in one line."""
        return f"{self.ref}: {self.column}: {self.value} is not usable; {self.wanted}"


@frozen
class Description:
    """How far an entry describes a part: the part, else what lacks (columns) and what is wrong."""

    part: Part | None
    lacking: tuple[str, ...] = ()
    faults: tuple[EntryFault, ...] = ()


class _Figures(BaseModel):
    """The figures of a kind, each as its column takes it; None where it is not known. None of them is a free text."""

    model_config = ConfigDict(
        frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False, str_strip_whitespace=True
    )


def _known_or_not(figure: PartFigure) -> tuple[Any, Any]:
    declared = figure.declared
    kept: Any = figure.value_type
    bounds: dict[str, Any] = {}
    if figure.many:
        kept = words_cell(kept, int(declared.at_least_one))
    elif kept is bool:
        kept = YesNo
    elif kept is Port:
        kept = PortCell
    elif figure.is_number:
        bounds = {"gt": declared.above, "ge": declared.least, "le": declared.most}
    return kept | None, Field(None, description=figure.column_meaning, **bounds)


def _figures_type(kind: PartKind) -> type[_Figures]:
    columns: dict[str, Any] = {column: _known_or_not(figure) for column, figure in COLUMNS[kind].items()}
    return create_model(f"Figures of a {kind}", __base__=_Figures, __doc__=f"The figures of a {kind}.", **columns)


# the figures of each kind by column, in the order in which tables write them
COLUMNS: dict[PartKind, dict[str, PartFigure]] = {kind: columns_of((kind,)) for kind in PartKind}
_TYPES: dict[PartKind, type[_Figures]] = {kind: _figures_type(kind) for kind in PartKind}


class _ReadCell(NamedTuple):
    """A cell as it was read: as an entry keeps it, and where and how a part holds it, in SI."""

    plain: Cell
    block: str
    name: str
    in_si: Any


# of each kind what was read of its columns' cells: a catalogue has many parts, and most of their cells stand in others;
# by type and value, since 1, 1.0 and True are equal and need not be read alike
_KNOWN: dict[PartKind, dict[str, dict[object, _ReadCell]]] = {
    kind: {column: {} for column in columns} for kind, columns in COLUMNS.items()
}
_REMEMBERED: Final = 1_000  # cells of a column


def _number_reader(figure: PartFigure) -> Callable[[object], _ReadCell | None]:
    """Return what reads the plain cells of a number as its column takes them; None for a cell that is left to that."""
    declared, block, name, unit = figure.declared, figure.block, figure.name, figure.declared.unit
    above = -math.inf if declared.above is None else declared.above
    least = -math.inf if declared.least is None else declared.least
    most = math.inf if declared.most is None else declared.most

    def read(cell: object) -> _ReadCell | None:
        if type(cell) is float:
            value = cell
        elif type(cell) is str and _PLAIN_NUMBER.fullmatch(cell):
            value = float(cell)
        else:
            return None
        if above < value and least <= value <= most and math.isfinite(value):
            return _ReadCell(value + 0.0, block, name, unit.to_si(value))  # no negative nought
        return None

    return read


_PLAIN_NUMBER: Final = re.compile(r"[0-9]{1,17}(?:\.[0-9]{1,17})?", re.ASCII)
# what few parts share are their measures: they are read without the model, which takes five times as long
_NUMBERS: Final[dict[PartKind, dict[str, Callable[[object], _ReadCell | None]]]] = {
    kind: {
        column: _number_reader(figure)
        for column, figure in columns.items()
        if figure.value_type is float and not figure.many
    }
    for kind, columns in COLUMNS.items()
}


def _read_cells(kind: PartKind, filled: Mapping[str, object]) -> dict[str, _ReadCell] | None:
    """Read cells, each by itself as its column takes it; None where one of them is wrong.

    What says nothing, such as a list without a word, is left out.
    """
    known, numbers = _KNOWN[kind], _NUMBERS[kind]
    found: dict[str, _ReadCell] = {}
    fresh: dict[str, object] = {}
    for column, cell in filled.items():
        try:
            one = known[column].get((type(cell), cell))
        except (KeyError, TypeError):  # TypeError: of a list, by which nothing can be looked up
            one = None
        if one is None and column in numbers and (one := numbers[column](cell)) is not None:
            _remember(known[column], cell, one)
        if one is None:
            fresh[column] = cell
        else:
            found[column] = one
    if not fresh:
        return found
    try:
        read = _TYPES[kind].model_validate(fresh)
    except ValidationError:
        return None
    for column, cell in fresh.items():
        one = _read_cell(getattr(read, column), COLUMNS[kind][column])
        if one is None:
            continue
        found[column] = one
        if isinstance(cell, Hashable):
            _remember(known[column], cell, one)
    return found


def _remember(known: dict[object, _ReadCell], cell: object, read: _ReadCell) -> None:
    if len(known) >= _REMEMBERED:
        known.clear()
    known[type(cell), cell] = read


def _read_cell(value: Any, figure: PartFigure) -> _ReadCell | None:  # noqa: ANN401  (as it is declared)
    plain = _plain(value, figure)
    if plain is None:
        return None
    return _ReadCell(plain, figure.block, figure.name, value_in_si(value, figure))


@lru_cache
def required_columns(kind: PartKind) -> tuple[str, ...]:
    """Return the columns that a described part of a kind must have filled, figures or not."""
    own = tuple(column for column, figure in COLUMNS[kind].items() if _is_required(figure))
    return ("name", "lead_days", *own)


def _is_required(figure: PartFigure) -> bool:
    return figure.declared.at_least_one if figure.many else not figure.may_lack


def figure_cells(
    kind: PartKind, cells: Mapping[str, object], origin: Origin = Origin.STATED, source: str = ""
) -> tuple[tuple[FigureCell, ...], tuple[tuple[str, str, str], ...]]:
    """Read figures of a kind, texts or typed values by column, and say what is wrong.

    Returns
    -------
    tuple
        The cells that can be used, in the order of the columns, and for every other one column, value and what would
        be right. Empty texts and None are figures that nobody knows.
    """
    filled = {column: value for column, value in cells.items() if value is not None and value != ""}
    wrong: list[tuple[str, str, str]] = []
    read = _read_cells(kind, filled)
    if read is None:
        known = COLUMNS[kind]
        for column in [column for column in filled if column not in known]:
            wrong.append((column, _shown(filled.pop(column)), f"a {kind} has no such figure"))
        try:
            _TYPES[kind].model_validate(filled)
        except ValidationError as fault:
            for error in fault.errors(include_url=False):
                column = str(error["loc"][0]) if error["loc"] else "row"
                said = error["msg"].removeprefix("Value error, ").replace("Input should", "it should")
                wrong.append((column, _shown(filled.get(column)), f"{known[column].column_meaning}: {said}"))
            for column, _value, _wanted in wrong:
                filled.pop(column, None)
        read = _read_cells(kind, filled) or {}
    figures = (known_figure(column, read[column].plain, origin, source) for column in COLUMNS[kind] if column in read)
    return tuple(figures), tuple(wrong)


def _plain(value: Any, figure: PartFigure) -> Cell | None:  # noqa: ANN401  (a cell holds what its declaration says)
    if value is None:
        return None
    if figure.many:
        words = tuple(word.value for word in value)
        words = words if figure.many is tuple else tuple(sorted(words))
        return words or None
    if isinstance(value, Port):
        return str(value)
    if isinstance(value, float):
        return value + 0.0  # no negative nought: it would be another text for the same figure
    return value.value if isinstance(value, StrEnum) else value


def describe(entry: CatalogueEntry) -> Description:
    """Return the part that an entry describes, or what it lacks and what is wrong in it."""
    kind = entry.kind
    if kind is None:
        return Description(None, ("kind", *(("name",) if not entry.name else ())))
    given = {cell.column: cell.value for cell in entry.figures}
    faults: list[EntryFault] = []
    if not given.keys() <= COLUMNS[kind].keys():
        wanted = Worded("a {kind} has no such figure", kind=kind)
        for column in [column for column in given if column not in COLUMNS[kind]]:
            faults.append(EntryFault(entry.ref, column, _shown(given.pop(column)), wanted))
    read = _read_cells(kind, given)
    if read is None:
        _cells, wrong = figure_cells(kind, given)
        return Description(None, faults=(*faults, *(EntryFault(entry.ref, *one) for one in wrong)))
    lacking = _lacking(entry, kind, read)
    if lacking or faults:
        return Description(None, lacking, tuple(faults))
    part = _part(entry, kind, read)
    wrong_beside = tuple(_beside(entry, kind, part, given))
    return Description(None if wrong_beside else part, faults=wrong_beside)


def _lacking(entry: CatalogueEntry, kind: PartKind, read: Mapping[str, _ReadCell]) -> tuple[str, ...]:
    if entry.name and entry.lead_days is not None and read.keys() >= _NEEDED_FIGURES[kind]:
        return ()
    has = {"name": entry.name != "", "lead_days": entry.lead_days is not None}
    return tuple(one for one in required_columns(kind) if one not in read and not has.get(one, False))


_NEEDED_FIGURES: Final = {
    kind: frozenset(column for column, figure in columns.items() if _is_required(figure))
    for kind, columns in COLUMNS.items()
}
# of each kind the figures that lack, as a part holds them: by block, and by name
_OPEN: dict[PartKind, dict[str, dict[str, Any]]] = {
    kind: {
        block: {one.name: one.many() if one.many else None for one in columns.values() if one.block == block}
        for block in ("", *BLOCKS_OF_KIND[kind])
    }
    for kind, columns in COLUMNS.items()
}


def _part(entry: CatalogueEntry, kind: PartKind, read: Mapping[str, _ReadCell]) -> Part:
    blocks = {block: dict(values) for block, values in _OPEN[kind].items()}
    for one in read.values():
        blocks[one.block][one.name] = one.in_si
    other = entry.superseded_by_maker if entry.superseded_by_maker != entry.maker else None
    return Part(
        number=entry.number,
        maker=entry.maker,
        kind=kind,
        name=entry.name,
        status=entry.status,
        superseded_by=entry.superseded_by,
        superseded_by_maker=other,
        prices=entry.list_prices,
        lead_time_days=entry.lead_days or 0,
        pack_quantity=entry.pack or 1,
        **with_blocks(kind, blocks),
    )


_COLUMN_AT: dict[PartKind, dict[str, str]] = {
    kind: {figure.path: figure.declared.column for figure in figures_of(kind)} for kind in PartKind
}


def _beside(entry: CatalogueEntry, kind: PartKind, part: Part, given: Mapping[str, Cell]) -> Iterator[EntryFault]:
    columns = _COLUMN_AT[kind]
    for fault in table_faults(part):
        column = columns[fault.path]
        wanted = fault.told(lambda path: f"{columns[path]} ({_number(given.get(columns[path]))})")
        yield EntryFault(entry.ref, column, _shown(given.get(column)), wanted)


def _number(value: Cell | None) -> str:
    return plain_number(value) if isinstance(value, int | float) else str(value)


def _shown(value: object) -> str:
    if value is None:
        return "an empty cell"
    return repr(" ".join(map(str, value)) if isinstance(value, tuple) else value)[:80]


def entry_of(part: Part) -> CatalogueEntry:
    """Return the entry that describes a part."""
    cells: dict[str, object] = {}
    for column, figure in COLUMNS[part.kind].items():
        value = value_at(part, figure.path)
        if figure.value_type is float and isinstance(value, int | float):
            value = _in_unit(float(value), figure.declared.unit)
        elif isinstance(value, tuple | frozenset):
            words = tuple(value) if figure.many is tuple else tuple(sorted(value))
            value = words or None
        cells[column] = value
    figures, wrong = figure_cells(part.kind, cells)
    if wrong:
        raise ValueError(f"{part.ref}: {wrong[0]}")
    return CatalogueEntry(
        number=part.number,
        maker=part.maker,
        name=part.name,
        kind=part.kind,
        status=part.status,
        superseded_by=part.superseded_by,
        superseded_by_maker=part.superseded_by_maker,
        lead_days=part.lead_time_days,
        pack=part.pack_quantity,
        prices=tuple(EntryPrice(currency=price.currency, minor=price.minor) for price in part.prices),
        figures=figures,
    )


def _in_unit(value: float, unit: TableUnit) -> float:
    """Return the shortest number that, written in ``unit``, is read as ``value`` again; the nearest where none is."""
    if unit is TableUnit.SI:
        return value
    near = value / unit.to_si(1.0)
    for digits in (9, 12, 15, 16, 17):
        written = float(f"{near:.{digits}g}")
        if unit.to_si(written) == value:
            return written
    return near
