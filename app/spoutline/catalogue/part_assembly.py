"""Parts put together from the rows of the catalogue's tables, whoever reads the rows."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Any, Final, Protocol

from spoutline.model.nominal_size import NominalSize
from spoutline.model.part import Part, PartKind, PartStatus, Price
from spoutline.model.part_figures import BLOCKS, BLOCKS_OF_KIND, PartFigure, figures_in
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard

# columns of a row under the names of the table; only the database driver sees them
Columns = dict[str, Any]
INLET: Final = "inlet"
OUTLET: Final = "outlet"
IN_ONE_QUERY: Final = 10_000  # ids or numbers bound in one query: below the 32 766 values of SQLite
PARTS: Final = "catalogue_part"
PORTS: Final = "catalogue_port"
PRICES: Final = "catalogue_price"
MATERIALS: Final = "catalogue_material"

# tables of the figures that a kind adds, by block, and of the figures that hold several words, one row each
BLOCK_TABLES: Final = {block: f"catalogue_{block}" for block in BLOCKS}
WORD_TABLES: Final = {
    "listings": "catalogue_listing",
    "schemes": "catalogue_scheme",
    "wetted_materials": MATERIALS,
    "nozzle.liquids": "catalogue_nozzle_liquid",
    "breakaway.placements": "catalogue_placement",
    "accessory.label_classes": "catalogue_label_class",
}


class PartRows(Protocol):
    """Reads rows whose columns are attributes."""

    def of(self, table: str, key: str, ids: Sequence[int], order: str = "") -> Sequence[Any]:
        """Return the rows of a table whose column ``key`` is one of ``ids``, in the order of a column if one is named.

        At most ``IN_ONE_QUERY`` ids are asked for at once.
        """
        ...


def stored_figures(block: str) -> tuple[PartFigure, ...]:
    """Return the figures of a block that are columns of its table."""
    return tuple(figure for figure in figures_in(block) if not figure.many and figure.value_type is not Port)


def load_parts(rows: PartRows, part_ids: Sequence[int]) -> dict[int, Part]:
    """Return the parts with these keys. One query per table and ten thousand parts, never one per part."""
    loaded: dict[int, Part] = {}
    for start in range(0, len(part_ids), IN_ONE_QUERY):
        below = _below(rows, part_ids[start : start + IN_ONE_QUERY])
        for row in below.parts:
            loaded[row.id] = _part_from(row, below)
    return loaded


_Words = Mapping[int, Sequence[str]]


@dataclass(slots=True)
class _Below:
    """The rows of a chunk of parts, sorted under their part; words by path, what a kind adds by block."""

    parts: Sequence[Any]
    ports: dict[tuple[int, str], Port] = field(default_factory=dict)
    prices: dict[int, list[Price]] = field(default_factory=lambda: defaultdict(list))
    words: dict[str, _Words] = field(default_factory=dict)
    data: dict[str, dict[int, Any]] = field(default_factory=dict)


_WORDS_OF_BLOCK = {
    block: tuple(path for path in WORD_TABLES if path.rpartition(".")[0] == block) for block in ("", *BLOCKS)
}


def _below(rows: PartRows, part_ids: Sequence[int]) -> _Below:
    below = _Below(rows.of(PARTS, "id", part_ids))
    blocks = ["", *sorted({block for row in below.parts for block in BLOCKS_OF_KIND[PartKind(row.kind)]})]
    for port in rows.of(PORTS, "part_id", part_ids):
        below.ports[port.part_id, port.end] = port_from(port.thread, port.size, port.gender, port.path, port.made_up_in)
    for price in rows.of(PRICES, "part_id", part_ids, "currency"):
        below.prices[price.part_id].append(Price(currency=price.currency, minor=price.minor))
    for block in blocks:
        for path in _WORDS_OF_BLOCK[block]:
            below.words[path] = _words(rows, WORD_TABLES[path], part_ids)
        if block:
            below.data[block] = {row.part_id: row for row in rows.of(BLOCK_TABLES[block], "part_id", part_ids)}
    return below


def _words(rows: PartRows, table: str, part_ids: Sequence[int]) -> _Words:
    words: dict[int, list[str]] = defaultdict(list)
    for row in rows.of(table, "part_id", part_ids, "place" if table == MATERIALS else "word"):
        words[row.part_id].append(row.word)
    return words


_PORTS: dict[tuple[str, str, str, str, str], Port] = {}


def port_from(thread: str, size: str, gender: str, path: str, made_up_in: str = "") -> Port:
    """Return a port as the table of ports writes it; equal ones are one object."""
    key = (thread, size, gender, path, made_up_in)
    port = _PORTS.get(key)
    if port is None:
        port = Port(ThreadStandard(thread), NominalSize(size), Gender(gender), FlowPath(path), made_up_in)
        _PORTS[key] = port  # a handful of different ports: thousands of parts share them
    return port


def _part_from(row: Any, below: _Below) -> Part:  # noqa: ANN401  (of whatever reads it)
    part_id: int = row.id
    kind = PartKind(row.kind)
    blocks = BLOCKS_OF_KIND[kind]
    return Part(
        number=row.number,
        maker=row.maker,
        kind=kind,
        name=row.name,
        status=PartStatus(row.status),
        superseded_by=row.superseded_by,
        superseded_by_maker=row.superseded_by_maker,
        inlet=below.ports.get((part_id, INLET)),
        outlet=below.ports.get((part_id, OUTLET)),
        prices=tuple(below.prices.get(part_id, ())),
        lead_time_days=row.lead_time_days,
        pack_quantity=row.pack_quantity,
        **_figures(row, "", part_id, below),
        **{block: BLOCKS[block][0](**_figures(below.data[block][part_id], block, part_id, below)) for block in blocks},
    )


def _figures(row: Any, block: str, part_id: int, below: _Below) -> Columns:  # noqa: ANN401  (of whatever reads it)
    """Return the figures of a block as its class takes them."""
    found: Columns = {name: getattr(row, name) for name in _PLAIN[block]}
    for name in _YES_NO[block]:
        found[name] = None if found[name] is None else bool(found[name])  # a number where no driver says what it means
    for name, term in _TERMS[block]:
        word = getattr(row, name)
        found[name] = None if word is None else term(word)
    for path, name, term, many in _LISTS[block]:
        found[name] = many(map(term, below.words[path].get(part_id, ())))
    return found


# by block, worked out once: a catalogue has many parts
_PLAIN = {
    block: tuple(figure.name for figure in stored_figures(block) if not issubclass(figure.value_type, StrEnum))
    for block in ("", *BLOCKS)
}
_YES_NO = {
    block: tuple(figure.name for figure in stored_figures(block) if figure.value_type is bool)
    for block in ("", *BLOCKS)
}
_TERMS = {
    block: tuple(
        (figure.name, figure.value_type) for figure in stored_figures(block) if issubclass(figure.value_type, StrEnum)
    )
    for block in ("", *BLOCKS)
}
_LISTS = {
    block: tuple(
        (figure.path, figure.name, figure.value_type, figure.many) for figure in figures_in(block) if figure.many
    )
    for block in ("", *BLOCKS)
}
