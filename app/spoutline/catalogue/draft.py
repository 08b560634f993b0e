"""Writing to the draft of a catalogue: entries put and taken out, in the transaction that the caller opened."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import islice
from typing import Any, Final, NamedTuple, TypeVar

from sqlalchemy import Connection, delete, select, update

from spoutline.catalogue.cross_references import ReferenceDesk
from spoutline.catalogue.draft_stamp import draft_stamp
from spoutline.catalogue.editions import held_by
from spoutline.catalogue.entry_rows import ENTRY_COLUMNS, EntryRows, rows_of_entry
from spoutline.catalogue.entry_text import digest_of, entry_from_text, entry_text
from spoutline.catalogue.families import FamilyDesk, with_family
from spoutline.catalogue.list_store import PriceListDesk
from spoutline.catalogue.many_rows import Row, insert_rows
from spoutline.catalogue.part_files import keep_content
from spoutline.catalogue.part_records import ROW_COLUMNS, TABLE_NAMED
from spoutline.catalogue.tables import OPEN, CatalogueTable, EntryRow, PartRecord, StateRow
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.part_family import PartFamily
from spoutline.model.part_file import PartFile
from spoutline.model.part_ref import PartRef

_T = TypeVar("_T")
_CHUNK = 2_000  # entries whose rows are held in memory at once


@dataclass(slots=True)
class DraftCounts:
    """What writing did to a draft, by entries; ``price_lists`` are counted beside."""

    new: int = 0
    changed: int = 0
    unchanged: int = 0
    gone: int = 0
    price_lists: int = 0  # that are new, changed or gone


@frozen
class _State:
    """A stored state of an entry: its key, the edition that it began with, what tells its content."""

    id: int
    first_edition: int
    digest: str


class Prepared(NamedTuple):
    """An entry as it is to stand in a draft: number, maker, what tells its content, and its rows (``EntryRows``).

    It has no rows where the draft holds it so already.
    """

    number: str
    maker: str
    digest: str
    rows: tuple[Row, tuple[tuple[str, Row], ...]] | None


class DraftDesk:
    """Puts entries into the draft of one catalogue and takes others out; nothing published changes by it.

    It works in the caller's transaction: where that is rolled back, nothing was done.
    """

    def __init__(self, connection: Connection, catalogue_id: int, last_edition: int) -> None:
        self._connection = connection
        self._catalogue_id = catalogue_id
        self._published = last_edition
        self._draft = last_edition + 1
        self.counts = DraftCounts()
        self.references = ReferenceDesk(connection, catalogue_id, last_edition)
        self.price_lists = PriceListDesk(connection, catalogue_id, last_edition)
        self.families = FamilyDesk(connection, catalogue_id, last_edition, self._rewrite)

    def put(self, entries: Iterable[CatalogueEntry]) -> None:
        """Put entries in, each in the place of the one with its maker and number; two of one reference are a defect.

        They are taken as they come, some thousands at a time, each with what it inherits of its family.
        """
        for chunk in in_chunks(entries):
            self._put(chunk)

    def keep_file(self, file: PartFile, content: bytes) -> None:
        """Keep the content of a file that an entry names."""
        keep_content(self._connection, file, content)

    def keep_only(self, refs: set[PartRef]) -> None:
        """Take out every entry that is not one of ``refs``."""
        self.take_out(sorted(self.refs() - refs))

    def refs(self) -> set[PartRef]:
        """Return number and maker of every entry that the draft holds."""
        held = held_by(EntryRow, self._catalogue_id, self._draft)
        query = select(EntryRow.number, EntryRow.maker).where(*held)
        return {PartRef(row.number, row.maker) for row in self._connection.execute(query)}

    def entries(self, refs: Sequence[PartRef]) -> dict[PartRef, CatalogueEntry]:
        """Return those of some thousand entries that the draft holds, as it holds them now."""
        held = held_by(EntryRow, self._catalogue_id, self._draft)
        query = select(EntryRow.content).where(*held, EntryRow.number.in_({ref.number for ref in refs}))
        asked = set(refs)
        found = (entry_from_text(text) for text in self._connection.execute(query).scalars())
        return {entry.ref: entry for entry in found if entry.ref in asked}

    def digests(self, refs: Sequence[PartRef]) -> dict[PartRef, str]:
        """Return what tells the content of those of some thousand entries that the draft holds."""
        return {ref: state.digest for ref, state in self._held(refs).items()}

    def take_out(self, refs: Iterable[PartRef]) -> None:
        """Take entries out; a reference that no entry has is passed over."""
        for chunk in in_chunks(refs):
            held = self._held(chunk)
            self._end(list(held.values()))
            self.counts.gone += len(held)

    def _rewrite(self, entries: Iterable[CatalogueEntry]) -> None:
        """Let parts have what they inherit now; they are no change that the caller made."""
        counts, self.counts = self.counts, DraftCounts()
        self.put(entries)
        self.counts = counts

    def _put(self, entries: Sequence[CatalogueEntry]) -> None:
        families = self.families.all()
        entries = [with_family(entry, families) for entry in entries]
        texts = [entry_text(entry) for entry in entries]
        digests = [digest_of(text) for text in texts]
        fresh = self._let_hold([entry.ref for entry in entries], digests)
        self._insert([rows_of_entry(entries[one], texts[one], digests[one], self._catalogue_id) for one in fresh])

    def stamp(self) -> str:
        """Return what tells this state of the draft from every other."""
        return draft_stamp(self._connection, self._catalogue_id, self._published)

    def prepared(
        self, entries: Sequence[CatalogueEntry], families: Mapping[str, PartFamily]
    ) -> Iterator[tuple[Any, ...]]:
        """Yield some thousand entries as ``put_prepared`` takes them, of a draft that is to hold these families.

        Nothing is written: whatever takes time besides writing is done here.
        """
        held = self._held([entry.ref for entry in entries])
        for entry in entries:
            whole = with_family(entry, families)
            text, now = entry_text(whole), held.get(entry.ref)
            digest = digest_of(text)
            rows = None
            if now is None or now.digest != digest:
                rows = tuple(rows_of_entry(whole, text, digest, self._catalogue_id))
            yield entry.number, entry.maker, digest, rows

    def put_prepared(self, entries: Iterable[tuple[Any, ...]]) -> None:
        """Put in some thousand entries that were prepared for the draft as it stands, families apart."""
        prepared = [Prepared(*one) for one in entries]
        refs = [PartRef(one.number, one.maker) for one in prepared]
        fresh = self._let_hold(refs, [one.digest for one in prepared])
        rows = [one for place in fresh if (one := prepared[place].rows) is not None]
        if len(rows) < len(fresh):
            raise ValueError("these entries were prepared for another state of the draft")
        self._insert([EntryRows(*one) for one in rows])

    def _let_hold(self, refs: Sequence[PartRef], digests: Sequence[str]) -> list[int]:
        """Count what becomes of entries, end the states in their place, and return the places of those to be written.

        What is again as it was published goes on in that state.
        """
        held, before = self._held(refs), self._closed(refs)
        fresh: list[int] = []
        ended: list[_State] = []
        reopened: list[int] = []
        for place, (ref, digest) in enumerate(zip(refs, digests, strict=True)):
            now, was = held.get(ref), before.get(ref)
            if now is not None and now.digest == digest:
                self.counts.unchanged += 1
                continue
            if now is None:
                self.counts.new += 1
            else:
                self.counts.changed += 1
                ended.append(now)
            if was is not None and was.digest == digest:
                reopened.append(was.id)
            else:
                fresh.append(place)
        self._end(ended)
        self._set_last(reopened, OPEN)
        return fresh

    def _held(self, refs: Sequence[PartRef]) -> dict[PartRef, _State]:
        return self._rows(refs, held_by(EntryRow, self._catalogue_id, self._draft))

    def _closed(self, refs: Sequence[PartRef]) -> dict[PartRef, _State]:
        """Return the states that the newest edition holds and the draft does not."""
        ended = (EntryRow.catalogue_id == self._catalogue_id, EntryRow.last_edition == self._published)
        return self._rows(refs, ended) if self._published else {}

    def _rows(self, refs: Sequence[PartRef], conditions: tuple[Any, ...]) -> dict[PartRef, _State]:
        columns = (EntryRow.id, EntryRow.number, EntryRow.maker, EntryRow.first_edition, EntryRow.digest)
        query = select(*columns).where(*conditions, EntryRow.number.in_({ref.number for ref in refs}))
        asked = set(refs)
        found = {
            PartRef(row.number, row.maker): _State(row.id, row.first_edition, row.digest)
            for row in self._connection.execute(query)
        }
        return {ref: state for ref, state in found.items() if ref in asked}

    def _end(self, rows: Sequence[_State]) -> None:
        """Let states hold no longer: those of the draft alone go, published ones end with the newest edition."""
        drafted = [row.id for row in rows if row.first_edition == self._draft]
        if drafted:
            self._connection.execute(delete(EntryRow).where(EntryRow.id.in_(drafted)))
        self._set_last([row.id for row in rows if row.first_edition != self._draft], self._published)

    def _set_last(self, ids: Sequence[int], last: int) -> None:
        if ids:
            for table in (EntryRow, PartRecord):
                self._connection.execute(update(table).where(table.id.in_(ids)).values(last_edition=last))

    def _insert(self, fresh: Sequence[EntryRows]) -> None:
        if not fresh:
            return
        first_id = self._next_ids(len(fresh))
        held = (self._catalogue_id, self._draft, OPEN)
        known: list[Row] = []
        rows: dict[type[CatalogueTable], list[Row]] = defaultdict(list)
        for entry_id, one in enumerate(fresh, first_id):
            known.append((entry_id, *held, *one.entry))
            for name, row in one.part:
                table = TABLE_NAMED[name]
                rows[table].append((entry_id, *held, *row) if table is PartRecord else (entry_id, *row))
        insert_rows(self._connection, EntryRow, (*_HELD, *ENTRY_COLUMNS), known, fires_triggers=True)
        first = (PartRecord,) if rows else ()  # what the others refer to
        for table in (*first, *(table for table in rows if table is not PartRecord)):
            insert_rows(self._connection, table, ROW_COLUMNS[table], rows[table])

    def _next_ids(self, count: int) -> int:
        """Return the first of ``count`` keys that nothing had before."""
        last: int = self._connection.execute(select(StateRow.last_entry_id)).scalar_one()
        self._connection.execute(update(StateRow).values(last_entry_id=last + count))
        return last + 1


_HELD: Final = ("id", "catalogue_id", "first_edition", "last_edition")


def in_chunks(items: Iterable[_T]) -> Iterator[list[_T]]:
    """Yield items some thousands at a time, as many as are held in memory at once."""
    rest = iter(items)
    while chunk := list(islice(rest, _CHUNK)):
        yield chunk
