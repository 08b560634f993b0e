"""Stores of any number of generated parts: what is not shown is columns alone, and a part is made of its row."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np

from bench.generated_parts import generated_parts
from spoutline.catalogue.column_files import ColumnFiles
from spoutline.model.catalogue_edition import CatalogueEdition
from spoutline.model.part import HANGING_KINDS, Part, PartKind, PartStatus, Price
from spoutline.model.part_columns import (
    ENDS,
    LEAD_TIME,
    NO_PRICE,
    NUMBER_END,
    NUMBER_START,
    NUMBER_TEXT,
    PRICE,
    STATUS,
    PartColumns,
    columns_of,
    figures_by_path,
)
from spoutline.model.part_figures import BLOCKS, BLOCKS_OF_KIND
from spoutline.model.part_ref import PartRef
from spoutline.planning.protocols import CandidateFilter

_MOST_MADE = 100_000  # parts made one by one; more are copies with figures of their own


@cache
def generated_columns(count: int) -> Mapping[PartKind, PartColumns]:
    """Return so many generated parts as columns."""
    parts = generated_parts(min(count, _MOST_MADE), seed=7)
    made = {kind: columns_of(kind, (part for part in parts if part.kind is kind)) for kind in HANGING_KINDS}
    times = -(-count // _MOST_MADE)
    return made if times == 1 else {kind: _multiplied(columns, times) for kind, columns in made.items()}


def _multiplied(columns: PartColumns, times: int) -> PartColumns:
    """Return the parts so many times, each time under other numbers, at other prices, masses and strengths."""
    chance = np.random.default_rng(11)
    arrays = {name: np.concatenate([array] * times) for name, array in columns.arrays.items()}
    texts = [columns.number_at(row) for row in range(len(columns))]
    numbers = [f"{copy}{text}".encode() for copy in range(times) for text in texts]
    ends = np.cumsum([len(number) for number in numbers], dtype=np.int64)
    arrays[NUMBER_TEXT] = np.frombuffer(b"".join(numbers), np.uint8)
    arrays[NUMBER_START] = np.concatenate([[0], ends[:-1]]).astype(np.int64)[: len(numbers)]
    arrays[NUMBER_END] = ends
    for name in (*(f"{PRICE}{currency}" for currency in columns.currencies), "mass_kg", "pull_strength_n"):
        moved = arrays[name] * chance.uniform(0.7, 1.5, len(numbers))
        arrays[name] = np.rint(moved).astype(np.int64) if name.startswith(PRICE) else moved
    return PartColumns(columns.kind, arrays, columns.makers, columns.ports)


class ColumnStore:
    """A part store over columns alone, which keeps parts that were asked for, as a store of an edition does."""

    def __init__(self, columns: Mapping[PartKind, PartColumns]) -> None:
        self._columns = columns
        self._parts: dict[PartRef, Part] = {}

    @classmethod
    def mapped(cls, count: int, folder: Path) -> ColumnStore:
        """Return a store whose columns are mapped from files that are there."""
        found = {kind: ColumnFiles(folder).read(kind, str(count)) for kind in HANGING_KINDS}
        return cls({kind: columns for kind, columns in found.items() if columns is not None})

    def edition(self) -> CatalogueEdition:
        return CatalogueEdition(catalogue="Columns", number=1, title="columns")

    def columns(self, kind: PartKind) -> PartColumns:
        return self._columns[kind]

    def candidates(self, wanted: CandidateFilter) -> tuple[Part, ...]:
        if wanted.kind in self._columns:
            raise AssertionError("a plan makes no part before it is shown")
        return ()

    def count(self, kind: PartKind) -> int:
        return len(self._columns[kind]) if kind in self._columns else 0

    def part(self, ref: PartRef) -> Part | None:
        found = self.parts((ref,))
        return found[0] if len(found) == 1 else None

    def parts(self, refs: Sequence[PartRef]) -> tuple[Part, ...]:
        if not all(ref in self._parts for ref in refs):
            rows = {(kind, row) for ref in refs for kind, one in self._columns.items() for row in one.rows_of(ref)}
            found = [part_at(self._columns[kind], row) for kind, row in sorted(rows)]
            self._parts.update({part.ref: part for part in found})
            return tuple(found)
        return tuple(sorted((self._parts[ref] for ref in dict.fromkeys(refs)), key=lambda part: part.ref))

    def under_other_numbers(self, refs: Sequence[PartRef]) -> Mapping[PartRef, Part]:
        return {}

    def currencies(self) -> tuple[str, ...]:
        return tuple(sorted({one for columns in self._columns.values() for one in columns.currencies}))

    def nearest_numbers(self, number: str) -> tuple[str, ...]:
        return ()


def part_at(columns: PartColumns, row: int) -> Part:
    """Return the part of a row."""
    values: dict[str, dict[str, Any]] = {block: {} for block in ("", *BLOCKS_OF_KIND[columns.kind])}
    for path, figure in figures_by_path(columns.kind).items():
        block, _, name = path.rpartition(".")
        if path not in ENDS:
            values[block][name] = _value(columns.arrays[path][row], figure.choices, figure.many, figure.value_type)
    ports = {end: columns.ports[columns.arrays[end][row]] if columns.arrays[end][row] >= 0 else None for end in ENDS}
    prices = ((currency, int(columns.arrays[PRICE + currency][row])) for currency in columns.currencies)
    own = {"flow_coefficient_kv": None} | values[""]
    return Part(
        number=columns.number_at(row),
        maker=columns.maker_at(row),
        kind=columns.kind,
        name=columns.number_at(row),
        status=list(PartStatus)[columns.arrays[STATUS][row]],
        superseded_by=None,
        prices=tuple(Price(currency=currency, minor=minor) for currency, minor in prices if minor != NO_PRICE),
        lead_time_days=int(columns.arrays[LEAD_TIME][row]),
        pack_quantity=1,
        **ports,
        **own,
        **{block: BLOCKS[block][0](**values[block]) for block in BLOCKS_OF_KIND[columns.kind]},
    )


def _value(held: Any, choices: Sequence[Any], many: type | None, value_type: type) -> Any:
    if many is tuple:
        return tuple(choices[code] for code in held.tolist() if code < len(choices))
    if many is not None:
        return frozenset(word for place, word in enumerate(choices) if int(held) >> place & 1)
    if choices:
        return choices[held] if held < len(choices) else None
    if value_type is bool:
        return None if held < 0 else bool(held)
    return None if math.isnan(held) else value_type(held)
