"""One edition of a catalogue as planning sees it: indexed filters, parts in SI, safe from several threads.

This is the one seam between planning and how editions are stored.
"""

from __future__ import annotations

import difflib
import re
import threading
from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping, Sequence
from functools import lru_cache
from typing import TYPE_CHECKING

from sqlalchemy import ColumnElement, Connection, Engine, func, select

from spoutline.catalogue.editions import OpenedEdition, currencies_of, held_by
from spoutline.catalogue.entry_search import find_entries
from spoutline.catalogue.list_store import lists_held
from spoutline.catalogue.numbers import NumberIndex
from spoutline.catalogue.part_assembly import IN_ONE_QUERY
from spoutline.catalogue.part_records import load_parts
from spoutline.catalogue.schema import store_faults
from spoutline.catalogue.tables import ListingRow, PartRecord, SchemeRow
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.catalogue_edition import CatalogueEdition
from spoutline.model.cross_reference import NumberTrace
from spoutline.model.part import Part, PartKind, PartStatus
from spoutline.model.part_ref import PartRef

if TYPE_CHECKING:
    from spoutline.catalogue.edition_columns import EditionColumns
    from spoutline.model.part_columns import PartColumns
    from spoutline.model.pricing import PriceList

_NEAREST = 3
_LOOK_ALIKE = str.maketrans("oil", "011")
_ANSWERS = 64  # answers kept: the positions of a station ask for a few kinds of part under a few conditions


class PartMemory:
    """Parts once read, under keys that the database never gives to another part; the editions of a book share it."""

    def __init__(self) -> None:
        self._known: dict[int, Part] = {}
        self._filling = threading.Lock()

    def read(self, connection: Connection, part_ids: Sequence[int]) -> list[Part]:
        """Return the parts with these keys, from memory where they were read before."""
        missing = [part_id for part_id in part_ids if part_id not in self._known]
        if missing:
            loaded = load_parts(connection, missing)
            with self._filling:
                self._known.update(loaded)
        return [self._known[part_id] for part_id in part_ids]


class CatalogueStore:
    """Reads the described parts of one edition; implements ``planning.protocols.PartStore``.

    Parts come sorted by number, equal numbers by maker. A part once read is kept, so that a later question costs one
    query for keys; of a published edition, which never changes, the last answers are kept too. Every method may be
    called from several threads and raises ``StoreFault`` where the database fails.
    """

    def __init__(
        self,
        engine: Engine,
        opened: OpenedEdition,
        memory: PartMemory | None = None,
        columns: Callable[[], EditionColumns] | None = None,
    ) -> None:
        self._engine = engine
        self._opened = opened
        self._memory = memory or PartMemory()
        self._held = held_by(PartRecord, opened.catalogue_id, opened.at)
        self._numbers = NumberIndex(engine, opened)
        self._columns = columns
        self._own_columns: EditionColumns | None = None
        is_published = opened.edition.number is not None
        self._passing = lru_cache(_ANSWERS)(self._find) if is_published else self._find
        self._by_ref: dict[PartRef, Part] | None = {} if is_published else None
        self._counted = lru_cache(1)(self._count_kinds) if is_published else self._count_kinds

    def close(self) -> None:
        """Close the connections."""
        self._engine.dispose()

    @property
    def opened(self) -> OpenedEdition:
        """Which edition it reads; its content never changes, except for a draft."""
        return self._opened

    def edition(self) -> CatalogueEdition:
        """Return the edition that it reads."""
        return self._opened.edition

    def candidates(self, wanted: CandidateFilter) -> tuple[Part, ...]:
        """Return the parts that pass the filter; one indexed query for keys, and the rows of parts not yet read."""
        return self._passing(wanted)

    def columns(self, kind: PartKind) -> PartColumns:
        """Return the figures of all parts of a kind that hangs, as columns; the same object while nothing changed."""
        if self._columns is not None:
            return self._columns().of(kind)
        if self._own_columns is None:
            from spoutline.catalogue.edition_columns import EditionColumns  # numpy is loaded where it is used

            self._own_columns = EditionColumns(self._engine, self._opened)
        return self._own_columns.of(kind)

    def count(self, kind: PartKind) -> int:
        """Return how many parts of this kind the catalogue holds."""
        return self._counted()[kind]

    def _find(self, wanted: CandidateFilter) -> tuple[Part, ...]:
        return self._where(*_conditions(wanted))

    def _count_kinds(self) -> Mapping[PartKind, int]:
        query = select(PartRecord.kind, func.count()).where(*self._held).group_by(PartRecord.kind)
        with store_faults(self._engine), self._engine.connect() as connection:
            counted = {kind: count for kind, count in connection.execute(query)}  # noqa: C416  (a result is no list of pairs)
        return {kind: counted.get(kind.value, 0) for kind in PartKind}

    def part(self, ref: PartRef) -> Part | None:
        """Return the part that ``ref`` names; None where there is none, or several have a bare number."""
        found = self.parts((ref,))
        return found[0] if len(found) == 1 else None

    def parts(self, refs: Sequence[PartRef]) -> tuple[Part, ...]:
        """Return every part that one of ``refs`` names: none for an unknown one, several for a shared bare number."""
        known = self._known(refs)
        return self._read(refs) if known is None else known

    def _known(self, refs: Sequence[PartRef]) -> tuple[Part, ...] | None:
        """Return the parts of a published edition that were asked for before; None where one must be looked up."""
        if self._by_ref is None:
            return None
        found = {ref: self._by_ref.get(ref) if ref.maker else None for ref in refs}  # a bare number names many
        parts = [part for part in found.values() if part is not None]
        return tuple(sorted(parts, key=_place)) if len(parts) == len(found) else None

    def _read(self, refs: Sequence[PartRef]) -> tuple[Part, ...]:
        makers: dict[str, set[str]] = defaultdict(set)
        for ref in refs:
            makers[ref.number].add(ref.maker)
        numbers = sorted(makers)
        chunks = [numbers[start : start + IN_ONE_QUERY] for start in range(0, len(numbers), IN_ONE_QUERY)]
        found = (part for chunk in chunks for part in self._where(PartRecord.number.in_(chunk)))
        parts = tuple(part for part in found if not makers[part.number].isdisjoint(("", part.maker)))
        if self._by_ref is not None:
            self._by_ref.update((part.ref, part) for part in parts)
        return parts

    def traces(self, asked: PartRef) -> tuple[NumberTrace, ...]:
        """Return every way that an item number, a GTIN or an old number leads to a part of the catalogue."""
        return self._numbers.traces(asked)

    def under_other_numbers(self, refs: Sequence[PartRef]) -> Mapping[PartRef, Part]:
        """Return the described parts that have other numbers: item number, GTIN, an old number of the very part.

        A number that several parts have so is left out, and one of a part in whose place another is offered.
        """
        found: dict[PartRef, Part] = {}
        for ref in dict.fromkeys(refs):
            items = {one.item for one in self.traces(ref) if one.is_same_part}
            part = self.part(item) if len(items) == 1 and (item := next(iter(items))) is not None else None
            if part is not None:
                found[ref] = part
        return found

    def read_ref(self, text: str) -> PartRef:
        """Return what a person who writes ``text`` refers to, by the makers of the catalogue; see ``PartRef``.

        Another number of the very part, such as its item number or its GTIN, is the part.
        """
        ref = self.as_written(text)
        if self.parts((ref,)):
            return ref
        part = self.under_other_numbers((ref,)).get(ref)
        return ref if part is None else part.ref

    def as_written(self, text: str) -> PartRef:
        """Return number and maker as a person writes them, whatever stands behind them."""
        if " " not in text.strip():
            return PartRef(text.strip())
        with store_faults(self._engine), self._engine.connect() as connection:
            makers = connection.execute(select(PartRecord.maker).where(*self._held).distinct()).scalars().all()
        return PartRef.from_text(text, makers)

    def read_refs(self, text: str) -> tuple[PartRef, ...]:
        """Return every part that a person names in one line, separated by commas, semicolons, plus signs or blanks.

        A number that holds a plus sign or blanks itself is taken whole where a part has it.
        """
        pieces = filter(None, map(str.strip, re.split(r"[,;\n]", text)))
        return tuple(ref for piece in pieces for ref in self._refs_in(piece))

    def _refs_in(self, text: str) -> Iterator[PartRef]:
        ref = self.read_ref(text)
        if not re.search(r"[ +]", text) or self.parts((ref,)):
            yield ref
        elif "+" in text:
            between = " + " if " + " in text else "+"  # a number may hold one, and seldom with blanks about it
            for piece in filter(None, map(str.strip, text.split(between))):
                yield from self._refs_in(piece)
        elif ref.maker:
            yield ref
        else:
            yield from map(PartRef, text.split())

    def search(self, text: str, kind: PartKind | None, limit: int) -> tuple[Part, ...]:
        """Return up to ``limit`` described parts that are known by what somebody typed, the nearest first.

        An empty text finds every part, by number; ``find_entries`` says what any other does.
        """
        most = max(limit, 0)
        if not text.strip():
            return self._first(kind, most)
        with store_faults(self._engine), self._engine.connect() as connection:
            found = find_entries(connection, self._opened, text, described=True, kind=kind)
            return tuple(self._memory.read(connection, found.ids[:most]))

    def _first(self, kind: PartKind | None, most: int) -> tuple[Part, ...]:
        """Return the first parts by number and maker, of one kind or of all; no other is read."""
        query = select(PartRecord.id, PartRecord.number, PartRecord.maker).where(*self._held)
        if kind is not None:
            query = query.where(PartRecord.kind == kind.value)
        with store_faults(self._engine), self._engine.connect() as connection:
            rows = sorted(connection.execute(query).all(), key=lambda row: (row.number, row.maker))
            return tuple(self._memory.read(connection, [row.id for row in rows[:most]]))

    def currencies(self) -> tuple[str, ...]:
        """Return the currencies in which the catalogue has prices, sorted."""
        if self._opened.currencies is not None:
            return self._opened.currencies
        with store_faults(self._engine), self._engine.connect() as connection:
            return currencies_of(connection, self._opened.catalogue_id, self._opened.at)

    def price_lists(self) -> tuple[PriceList, ...]:
        """Return the price lists that the edition holds, by id."""
        with store_faults(self._engine), self._engine.connect() as connection:
            return tuple(lists_held(connection, self._opened.catalogue_id, self._opened.at))

    def nearest_numbers(self, number: str) -> tuple[str, ...]:
        """Return up to three known numbers close to a mistyped one, the closest first."""
        with store_faults(self._engine), self._engine.connect() as connection:
            known = {_as_heard(text): text for text in self._all_numbers(connection)}
        near = difflib.get_close_matches(_as_heard(number), sorted(known), n=_NEAREST)
        return tuple(known[text] for text in near)

    def _all_numbers(self, connection: Connection) -> Sequence[str]:
        return connection.execute(select(PartRecord.number).where(*self._held)).scalars().all()

    def _where(self, *conditions: ColumnElement[bool]) -> tuple[Part, ...]:
        with store_faults(self._engine), self._engine.connect() as connection:
            query = select(PartRecord.id).where(*self._held, *conditions)
            parts = self._memory.read(connection, connection.execute(query).scalars().all())
        return tuple(sorted(parts, key=_place))


def _place(part: Part) -> tuple[str, str]:
    return part.number, part.maker


def _as_heard(number: str) -> str:
    """Make alike what people mix up: capitals, the letter O and nought, the letters I and L and one."""
    return number.strip().casefold().translate(_LOOK_ALIKE)


def _conditions(wanted: CandidateFilter) -> list[ColumnElement[bool]]:
    conditions: list[ColumnElement[bool]] = [PartRecord.kind == wanted.kind.value]
    if wanted.path is not None:
        conditions.append(PartRecord.path == wanted.path.value)
    if wanted.active_only:
        conditions.append(PartRecord.status == PartStatus.ACTIVE.value)
    if wanted.temperature_low_c is not None:
        conditions.append(PartRecord.temperature_minimum_c <= wanted.temperature_low_c)
    if wanted.temperature_high_c is not None:
        conditions.append(PartRecord.temperature_maximum_c >= wanted.temperature_high_c)
    for table, word in ((ListingRow, wanted.listing_class), (SchemeRow, wanted.scheme)):
        if word is not None:
            carrying = select(table.part_id).where(table.word == word.value)
            conditions.append(PartRecord.id.in_(carrying))
    return conditions
