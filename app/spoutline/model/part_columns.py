"""The figures of parts as columns, and those of one part in the same words: what is asked of one can be asked of all.

A column is made of each declared figure of a kind; ``PartColumns`` holds those of many parts, a row each, and
``OnePart`` stands for a single one, whose columns are single values. Unknown numbers are NaN, with which nothing
compares: "unknown passes" is ``figure < limit``, "unknown fails" is ``~(figure >= limit)``.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from functools import cache, cached_property
from typing import Any, Final, Literal, Protocol

import numpy as np
from numpy.typing import NDArray

from spoutline.frozen import frozen
from spoutline.model.part import Part, PartKind, PartStatus
from spoutline.model.part_figures import BLOCKS_OF_KIND, PartFigure, figures_of, value_at
from spoutline.model.part_ref import PartRef
from spoutline.model.port import FlowPath, Port

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]
Mask = NDArray[np.bool_]
Arrays = Mapping[str, NDArray[Any]]
End = Literal["inlet", "outlet"]

ENDS: Final[tuple[End, End]] = ("inlet", "outlet")
STATUS, LEAD_TIME, MAKER, PRICE = "status", "lead_time_days", "maker", "price "
NUMBER_TEXT, NUMBER_START, NUMBER_END = "number text", "number start", "number end"
NONE = 255  # the code of no word
NO_PRICE = -1
NO_PORT = -1
_FLOAT: Any = np.float64
_TRUTH: Any = np.bool_
_INT: Any = np.int64


class PartView(Protocol):
    """Figures of one part or of many of one kind, by the paths under which they are declared."""

    @property
    def kind(self) -> PartKind:
        """The kind of all of them."""
        ...

    @property
    def derived(self) -> dict[str, Any]:
        """What others work out of the figures, once."""
        ...

    def number(self, path: str) -> Floats:
        """Return a number, SI; NaN where it is not known."""
        ...

    def flag(self, path: str) -> Mask:
        """Say where something is so; not where it is not stated."""
        ...

    def has(self, path: str, *members: StrEnum) -> Mask:
        """Say where a word is one of ``members``, or one of several words is."""
        ...

    def empty(self, path: str) -> Mask:
        """Say where a figure of several words has none."""
        ...

    def places(self, path: str) -> Sequence[Ints]:
        """Return the codes of the first words of a figure whose order counts, of the second ones, and so on."""
        ...

    def has_port(self, end: End) -> Mask:
        """Say where there is a port at an end."""
        ...

    def on_path(self, end: End, *paths: FlowPath) -> Mask:
        """Say where the port at an end is there and has one of ``paths``."""
        ...

    def price_minor(self, currency: str) -> Floats:
        """Return list prices in minor units; NaN where there is none."""
        ...

    def named(self, refs: Iterable[PartRef]) -> Mask:
        """Say where one of ``refs`` names the part."""
        ...


def code_of(member: StrEnum) -> int:
    """Return the code of a word in a column: its place in its enumeration."""
    return _places(type(member))[member]


@cache
def _places(words: type[StrEnum]) -> Mapping[StrEnum, int]:
    """Return the place of each word; kept by enumeration, for equal texts of two enumerations are equal."""
    return {member: place for place, member in enumerate(words)}


@cache
def figures_by_path(kind: PartKind) -> Mapping[str, PartFigure]:
    """Return the figures that are columns of a kind, by path."""
    return {figure.path: figure for figure in figures_of(kind)}


@frozen
class OnePart:
    """One part, whose figures are single values of numpy, so that the words of a rule are the same."""

    part: Part
    derived: dict[str, Any] = field(default_factory=dict, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Refuse a part without what its kind adds: its rules would compare what is not there."""
        _require_blocks(self.part)

    @property
    def kind(self) -> PartKind:
        """The kind of the part."""
        return self.part.kind

    def number(self, path: str) -> Floats:
        """Return a number; NaN where it is not known."""
        value: Any = value_at(self.part, path)
        found: Floats = _FLOAT(np.nan if value is None else value)
        return found

    def flag(self, path: str) -> Mask:
        """Say whether something is so."""
        found: Mask = _TRUTH(value_at(self.part, path))
        return found

    def has(self, path: str, *members: StrEnum) -> Mask:
        """Say whether a word is one of ``members``, or one of several words is."""
        value: Any = value_at(self.part, path)
        held = value in members if isinstance(value, StrEnum) else not (value or frozenset()).isdisjoint(members)
        found: Mask = _TRUTH(held)
        return found

    def empty(self, path: str) -> Mask:
        """Say whether a figure of several words has none."""
        found: Mask = _TRUTH(not value_at(self.part, path))
        return found

    def places(self, path: str) -> Sequence[Ints]:
        """Return the codes of the words of a figure whose order counts."""
        value: Any = value_at(self.part, path)
        return [_INT(code_of(member)) for member in value]

    def has_port(self, end: End) -> Mask:
        """Say whether there is a port at an end."""
        found: Mask = _TRUTH(getattr(self.part, end) is not None)
        return found

    def on_path(self, end: End, *paths: FlowPath) -> Mask:
        """Say whether the port at an end is there and has one of ``paths``."""
        port: Port | None = getattr(self.part, end)
        found: Mask = _TRUTH(port is not None and port.path in paths)
        return found

    def price_minor(self, currency: str) -> Floats:
        """Return the list price in minor units; NaN where there is none."""
        price = self.part.price_minor(currency)
        found: Floats = _FLOAT(np.nan if price is None else price)
        return found

    def named(self, refs: Iterable[PartRef]) -> Mask:
        """Say whether one of ``refs`` names the part."""
        ref = self.part.ref
        found: Mask = _TRUTH(any(one.names(ref) for one in refs))
        return found


@dataclass(frozen=True, eq=False)
class PartColumns:
    """Parts of one kind, a row each, sorted by number and then by maker.

    Parameters
    ----------
    kind
        The kind of all of them.
    arrays
        By name: a figure under its path (numbers as floats, truth values as 1, 0 and -1 for not stated, words as
        codes, several words as bits, words whose order counts as a table of codes), an end under its name (number of
        the port), ``STATUS``, ``LEAD_TIME`` and ``MAKER`` (number of the maker), prices under ``PRICE`` and the
        currency, and the part numbers as one text with where each starts and ends.
    makers, ports
        What the numbers of makers and ports stand for.
    """

    kind: PartKind
    arrays: Arrays
    makers: tuple[str, ...]
    ports: tuple[Port, ...]
    derived: dict[str, Any] = field(default_factory=dict, repr=False)  # what others work out once, of no price

    def __len__(self) -> int:
        return len(self.arrays[MAKER])

    def number(self, path: str) -> Floats:
        """Return numbers; NaN where not known."""
        return self.arrays[path]

    def flag(self, path: str) -> Mask:
        """Say where something is so; not where it is not stated."""
        found: Mask = self.arrays[path] == 1
        return found

    def has(self, path: str, *members: StrEnum) -> Mask:
        """Say where a word is one of ``members``, or one of several words is; worked out once."""
        return self._kept((path, *members), lambda: self._has(path, members))

    def _has(self, path: str, members: tuple[StrEnum, ...]) -> Mask:
        column = self.arrays[path]
        if path == STATUS or figures_by_path(self.kind)[path].many is None:
            wanted = np.zeros(NONE + 1, np.bool_)
            wanted[[code_of(member) for member in members]] = True
            return np.take(wanted, column)
        bits = sum(1 << code_of(member) for member in set(members))
        found: Mask = (column & np.uint32(bits)) != 0
        return found

    def empty(self, path: str) -> Mask:
        """Say where a figure of several words has none."""
        found: Mask = self.arrays[path] == 0
        return found

    def places(self, path: str) -> Sequence[Ints]:
        """Return the codes of the first words of a figure whose order counts, of the second ones, and so on."""
        return list(self.arrays[path].T)

    def has_port(self, end: End) -> Mask:
        """Say where there is a port at an end; worked out once."""
        return self._kept((end,), lambda: self.arrays[end] != NO_PORT)

    def on_path(self, end: End, *paths: FlowPath) -> Mask:
        """Say where the port at an end is there and has one of ``paths``; worked out once."""
        return self._kept((end, *paths), lambda: self._at_ports(end, lambda port: port.path in paths))

    def _at_ports(self, end: End, holds: Callable[[Port], bool]) -> Mask:
        """Say where the port at an end is there and something holds of it."""
        wanted = np.array([*map(holds, self.ports), False], np.bool_)
        return np.take(wanted, self.arrays[end], mode="wrap")  # no port is -1: the last

    def _kept(self, asked: tuple[str, ...], made: Callable[[], Mask]) -> Mask:
        """Return what was worked out for the same words before; nobody may change it."""
        kept: dict[tuple[str, ...], Mask] = self.derived.setdefault("masks", {})
        if asked not in kept:
            kept[asked] = made()
            kept[asked].flags.writeable = False
        return kept[asked]

    def inside_article(self, end: End) -> Mask:
        """Say where the port at an end lies inside an article that is sold made up."""
        return self._at_ports(end, lambda port: bool(port.made_up_in))

    def price_minor(self, currency: str) -> Floats:
        """Return list prices in minor units; NaN where there is none."""
        column = self.arrays.get(PRICE + currency)
        if column is None:
            return np.full(len(self), np.nan)
        return np.where(column == NO_PRICE, np.nan, column)

    def named(self, refs: Iterable[PartRef]) -> Mask:
        """Say where one of ``refs`` names the part."""
        found = np.zeros(len(self), np.bool_)
        for ref in refs:
            found[self.rows_of(ref)] = True
        return found

    def rows_of(self, ref: PartRef) -> list[int]:
        """Return the rows of the parts that ``ref`` names; several where makers share a bare number."""
        first = bisect_left(range(len(self)), ref.number, key=self.number_at)
        found = []
        for row in range(first, len(self)):
            if self.number_at(row) != ref.number:
                break
            if ref.maker in ("", self.maker_at(row)):
                found.append(row)
        return found

    def row_of(self, ref: PartRef) -> int | None:
        """Return the row of the very part ``ref``; None where it is none of them."""
        known: dict[str, int] = self.derived.setdefault("rows", {})  # of keys that were asked for
        row = known.get(ref.key)
        return (
            row
            if row is not None
            else next((row for row in self.rows_of(ref) if self.maker_at(row) == ref.maker), None)
        )

    def is_one_of(self, refs: Iterable[PartRef]) -> Mask:
        """Say which of them are these very parts."""
        found = np.zeros(len(self), np.bool_)
        found[[row for row in map(self.row_of, refs) if row is not None]] = True
        return found

    def of_parts(self, refs: Iterable[PartRef]) -> PartColumns:
        """Return these very parts alone, as far as they are among them."""
        return self.take(self.is_one_of(refs))

    def number_at(self, row: int) -> str:
        """Return the part number of a row."""
        start, end = self.arrays[NUMBER_START][row], self.arrays[NUMBER_END][row]
        text: bytes = self.arrays[NUMBER_TEXT][start:end].tobytes()
        return text.decode()

    def maker_at(self, row: int) -> str:
        """Return the maker of a row."""
        return self.makers[int(self.arrays[MAKER][row])]

    def ref_at(self, row: int) -> PartRef:
        """Return maker and number of a row."""
        return PartRef(self.number_at(row), self.maker_at(row))

    def key_at(self, row: int) -> str:
        """Return maker and number of a row as one text, kept once it was asked for."""
        keys: dict[int, str] = self.derived.setdefault("keys", {})
        if row not in keys:
            keys[row] = self.ref_at(row).key
            self.derived.setdefault("rows", {})[keys[row]] = row
        return keys[row]

    def by_maker(self, maker: str) -> Mask:
        """Say which parts are of a maker."""
        found: Mask = self.arrays[MAKER] == (self.makers.index(maker) if maker in self.makers else -1)
        return found

    def makers_of(self, rows: Mask) -> tuple[str, ...]:
        """Return the makers of some rows, sorted."""
        return tuple(sorted(self.makers[code] for code in np.unique(self.arrays[MAKER][rows]).tolist()))

    @cached_property
    def currencies(self) -> tuple[str, ...]:
        """The currencies in which any of them has a price, sorted."""
        return tuple(sorted(name.removeprefix(PRICE) for name in self.arrays if name.startswith(PRICE)))

    def take(self, rows: Ints | Mask) -> PartColumns:
        """Return some of the rows, in their order."""
        kept = {name: column if name == NUMBER_TEXT else column[rows] for name, column in self.arrays.items()}
        return PartColumns(self.kind, kept, self.makers, self.ports)

    def at_prices(self, currency: str, minor: Ints) -> PartColumns:
        """Return the same parts with prices in one currency alone, ``NO_PRICE`` where there is none."""
        kept = {name: column for name, column in self.arrays.items() if not name.startswith(PRICE)}
        return PartColumns(self.kind, kept | {PRICE + currency: minor}, self.makers, self.ports, self.derived)


def _require_blocks(part: Part) -> None:
    missing = next((block for block in BLOCKS_OF_KIND[part.kind] if getattr(part, block) is None), None)
    if missing is not None:
        raise ValueError(f"{part.number} is a {part.kind} but carries no {missing} data")


def columns_of(kind: PartKind, parts: Iterable[Part]) -> PartColumns:
    """Return parts of one kind as columns; raise ``ValueError`` for one that lacks what its kind adds."""
    rows = sorted(parts, key=lambda part: part.ref)
    for part in rows:
        _require_blocks(part)
    raw: dict[str, Sequence[Any]] = {path: [value_at(part, path) for part in rows] for path in figures_by_path(kind)}
    raw |= {STATUS: [part.status for part in rows], LEAD_TIME: [part.lead_time_days for part in rows]}
    currencies = sorted({price.currency for part in rows for price in part.prices})
    raw |= {PRICE + currency: [part.price_minor(currency) for part in rows] for currency in currencies}
    return columns_from(kind, [part.ref for part in rows], raw)


def columns_from(kind: PartKind, refs: Sequence[PartRef], raw: Mapping[str, Sequence[Any]]) -> PartColumns:
    """Return columns of the values of each figure as a part holds them.

    Parameters
    ----------
    kind
        The kind of all parts.
    refs
        The parts, sorted.
    raw
        By path the values of a figure, None where not known; words may be texts, several words any iterable of them.
        Beside the figures ``STATUS``, ``LEAD_TIME`` and prices by currency under ``PRICE``.
    """
    ports = sorted({port for end in ENDS for port in raw.get(end, ()) if port is not None})
    makers = sorted({ref.maker for ref in refs})
    arrays: dict[str, NDArray[Any]] = dict(_number_arrays(refs))
    arrays[MAKER] = np.array([makers.index(ref.maker) for ref in refs], np.int32)
    for name, values in raw.items():
        if name == STATUS:
            arrays[name] = _codes(PartStatus, values)
        elif name == LEAD_TIME:
            arrays[name] = np.array(values, np.int64)
        elif name.startswith(PRICE):
            arrays[name] = np.array([NO_PRICE if one is None else one for one in values], np.int64)
        elif name in ENDS:
            numbers = {port: at for at, port in enumerate(ports)}
            arrays[name] = np.array([NO_PORT if port is None else numbers[port] for port in values], np.int32)
        else:
            arrays[name] = _figure_array(figures_by_path(kind)[name], values)
    for end in ENDS:
        arrays.setdefault(end, np.full(len(refs), NO_PORT, np.int32))
    return PartColumns(kind, arrays, tuple(makers), tuple(ports))


def _number_arrays(refs: Sequence[PartRef]) -> Iterator[tuple[str, NDArray[Any]]]:
    texts = [ref.number.encode() for ref in refs]
    ends = np.cumsum([len(text) for text in texts], dtype=np.int64)
    yield NUMBER_TEXT, np.frombuffer(b"".join(texts), np.uint8)
    yield NUMBER_START, np.concatenate([np.zeros(min(1, len(texts)), np.int64), ends[:-1]])
    yield NUMBER_END, ends


def _figure_array(figure: PartFigure, values: Sequence[Any]) -> NDArray[Any]:
    if figure.many is tuple:
        return _ordered_codes(figure.value_type, values)
    if figure.many is not None:
        bits = {member: np.uint32(1 << code_of(member)) for member in figure.choices}
        several = {one: sum(bits[word] for word in one) for one in {frozenset(value) for value in values}}
        return np.array([several[frozenset(value)] for value in values], np.uint32)
    if figure.choices:
        return _codes(figure.value_type, values)
    if figure.value_type is bool:
        return np.array([-1 if value is None else value for value in values], np.int8)
    return np.array(values, np.float64)  # None becomes NaN


def _codes(words: type[StrEnum], values: Sequence[Any]) -> NDArray[Any]:
    codes: dict[Any, int] = {member: code_of(member) for member in words} | {None: NONE}
    return np.array([codes[value] for value in values], np.uint8)


def _ordered_codes(words: type[StrEnum], values: Sequence[Sequence[Any]]) -> NDArray[Any]:
    """Return a table of codes: a row for each part, a column for each place, ``NONE`` where it has fewer words."""
    codes: dict[Any, int] = {member: code_of(member) for member in words}
    table = np.full((len(values), max(map(len, values), default=0)), NONE, np.uint8)
    for row, value in enumerate(values):
        table[row, : len(value)] = [codes[word] for word in value]
    return table
