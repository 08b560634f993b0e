"""The price lists of an exchange file, made one at a time, in whatever order their prices stand."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from typing import Final

from spoutline.catalogue.exchange_archive import ExchangeArchive
from spoutline.catalogue.exchange_format import LIST_PRICES, LISTS, bare
from spoutline.catalogue.price_lists import COLUMNS, price_list_of
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.pricing import PriceList
from spoutline.model.worded import Worded

_PACKED_AT_ONCE: Final = 500  # rows


class PriceListReader:
    """Reads the price lists of an exchange file; what is wrong with them is added to ``problems``."""

    def __init__(self, archive: ExchangeArchive, problems: list[InputProblem]) -> None:
        self._archive = archive
        self._problems = problems

    def lists(self) -> Iterator[PriceList]:
        """Yield every sound price list, in the order in which the file names them."""
        rows = self._rows()
        known: set[str] = set()
        for row in self._archive.rows(LISTS):
            said = {column: bare(text) or None for column, text in row.cells.items()}
            name = str(said["id"])
            if name in known:
                place = self._archive.place(LISTS, row.line)
                self._problems.append(InputProblem(place, "id", repr(name), "each price list stands once"))
            known.add(name)
            made = self._made({**said, "supplier": said["supplier"] or ""}, rows.pop(name, ()))
            if made is not None:
                yield made
        wanted = Worded("the id of a list in {lists}.csv", lists=LISTS)
        for name in sorted(rows):
            self._problems.append(InputProblem(self._archive.place(LIST_PRICES), "list", repr(name[:80]), wanted))

    def _rows(self) -> dict[str, _PackedRows]:
        found: dict[str, _PackedRows] = {}
        for row in self._archive.rows(LIST_PRICES):
            name = bare(row.cells["list"])
            if name not in found:
                found[name] = _PackedRows()
            found[name].add(row.line, [row.cells[column] for column in COLUMNS])
        return found

    def _made(self, said: dict[str, str | None], rows: Iterable[tuple[int, list[str]]]) -> PriceList | None:
        cells = ((line, dict(zip(COLUMNS, map(bare, texts), strict=True))) for line, texts in rows)
        try:
            return price_list_of(said, cells, lambda line: self._archive.place(LIST_PRICES, line))
        except InputFault as fault:
            self._problems.extend(fault.problems)
            return None


class _PackedRows:
    """Rows with their lines, some hundred at a time as one text: a tenth of the room that their cells take."""

    def __init__(self) -> None:
        self._packed: list[bytes] = []
        self._last: list[tuple[int, list[str]]] = []

    def add(self, line: int, texts: list[str]) -> None:
        """Put a row behind the others."""
        self._last.append((line, texts))
        if len(self._last) == _PACKED_AT_ONCE:
            self._packed.append(json.dumps(self._last).encode())
            self._last.clear()

    def __iter__(self) -> Iterator[tuple[int, list[str]]]:
        """Yield the rows as they came."""
        for packed in self._packed:
            yield from json.loads(packed)
        yield from self._last
