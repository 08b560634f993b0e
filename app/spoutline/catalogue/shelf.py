"""The catalogues of a book: made, drafted, published, read, exported; what has been published never changes."""

from __future__ import annotations

import threading
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from datetime import date
from itertools import islice
from typing import TYPE_CHECKING, NamedTuple

from sqlalchemy import Connection, Engine, insert, select, update

from spoutline.catalogue.cross_references import references_held
from spoutline.catalogue.editions import (
    CatalogueKey,
    OpenedEdition,
    catalogue_row,
    folded,
    held_by,
    published,
)
from spoutline.catalogue.entry_search import contents_of, count_entries, find_entries, first_entries
from spoutline.catalogue.entry_text import entry_from_text
from spoutline.catalogue.family_store import families_held
from spoutline.catalogue.list_store import lists_held
from spoutline.catalogue.part_files import content_kept
from spoutline.catalogue.publishing import create_catalogue, publish_draft
from spoutline.catalogue.schema import CATALOGUE_SCHEMA, store_faults
from spoutline.catalogue.shelf_lookup import (
    CATALOGUES,
    FIRST_STATE,
    CatalogueFacts,
    EntryChange,
    EntryCount,
    ReferenceChange,
    facts_of,
    known_catalogue,
    opened_edition,
    state_of,
    writable_catalogue,
)
from spoutline.catalogue.store import CatalogueStore, PartMemory
from spoutline.catalogue.tables import (
    CatalogueRow,
    EntryRow,
    StateRow,
)
from spoutline.database.engine import writing
from spoutline.model.catalogue_edition import DEMONSTRATION, CatalogueEdition, EditionRef, catalogue_name_fault
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.cross_reference import CrossReference
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_family import PartFamily
from spoutline.model.part_ref import PartRef
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.catalogue.draft import DraftDesk
    from spoutline.catalogue.edition_columns import EditionColumns
    from spoutline.model.pricing import PriceList

_FETCHED = 2_000  # rows that are held in memory at once


class _OnlyTried(Exception):
    """Takes back what was tried."""


class CatalogueShelf:
    """Keeps the catalogues of a book. Methods may be called from several threads.

    They raise ``StoreFault`` where the database fails and ``InputFault`` where a name or an edition cannot be told.
    """

    def __init__(self, engine: Engine, columns_folder: Path | None = None) -> None:
        self._engine = engine
        self._memory = PartMemory()
        self._columns_folder = columns_folder
        self._columns: dict[OpenedEdition, EditionColumns] = {}
        self._turns = threading.Lock()

    def close(self) -> None:
        """Close the connections."""
        self._engine.dispose()

    # what there is

    def catalogues(self) -> tuple[CatalogueFacts, ...]:
        """Return the catalogues of the book by name, *Demonstration* first unless it is left out."""
        with self._reading() as connection:
            left_out = state_of(connection).demonstration_left_out
            rows = [CatalogueKey(*row) for row in connection.execute(CATALOGUES.order_by(CatalogueRow.folded_name))]
            shown = [row for row in rows if not (left_out and row.name == DEMONSTRATION)]
            shown.sort(key=lambda row: row.name != DEMONSTRATION)
            return tuple(facts_of(connection, row) for row in shown)

    def catalogue(self, name: str) -> CatalogueFacts:
        """Return what is known of a catalogue."""
        with self._reading() as connection:
            return facts_of(connection, known_catalogue(connection, name))

    def opened(self, ref: EditionRef) -> OpenedEdition:
        """Return the edition that ``ref`` names; raise ``InputFault`` where there is none.

        What is the name of no catalogue may be the title of an edition, as papers print it.
        """
        with self._reading() as connection:
            return opened_edition(connection, ref)

    def parts(self, ref: EditionRef) -> CatalogueStore:
        """Return the described parts of an edition as planning reads them."""
        opened = self.opened(ref)
        return CatalogueStore(self._engine, opened, self._memory, lambda: self._columns_of(opened))

    def _columns_of(self, opened: OpenedEdition) -> EditionColumns:
        """Return the columns of an edition, the same for all who read it."""
        from spoutline.catalogue.edition_columns import EditionColumns

        with self._turns:
            if opened not in self._columns:
                self._columns[opened] = EditionColumns(self._engine, opened, self._columns_folder)
            return self._columns[opened]

    def entries(self, ref: EditionRef, *, described: bool | None = None) -> Iterator[CatalogueEntry]:
        """Yield the entries of an edition by number and maker; only the described ones, or only the others."""
        with self._reading() as connection:
            opened = opened_edition(connection, ref)
            yield from _entries(connection, opened, described)

    def count(self, ref: EditionRef) -> int:
        """Return how many entries an edition has."""
        with self._reading() as connection:
            return count_entries(connection, opened_edition(connection, ref), None)

    def entry(self, ref: EditionRef, part: PartRef) -> CatalogueEntry | None:
        """Return one entry of an edition; None where it has none of this maker and number."""
        with self._reading() as connection:
            opened = opened_edition(connection, ref)
            held = held_by(EntryRow, opened.catalogue_id, opened.at)
            query = select(EntryRow.content).where(*held, EntryRow.number == part.number, EntryRow.maker == part.maker)
            text = connection.execute(query).scalar()
        return None if text is None else entry_from_text(text)

    def find(
        self, ref: EditionRef, text: str, *, limit: int, described: bool | None = None
    ) -> tuple[tuple[CatalogueEntry, ...], EntryCount]:
        """Return the first entries that are known by what somebody typed, the nearest first, and how many are.

        An empty text finds every entry, by number and maker; ``find_entries`` says what any other does.
        """
        with self._reading() as connection:
            opened = opened_edition(connection, ref)
            if not text.strip():
                entries = tuple(islice(first_entries(connection, opened, described, limit), limit))
                return entries, EntryCount(count_entries(connection, opened, described))
            found = find_entries(connection, opened, text, described)
            contents = contents_of(connection, found.ids[:limit])
        return tuple(map(entry_from_text, contents)), EntryCount(len(found.ids), is_all=found.is_all)

    def changes(self, before: EditionRef, after: EditionRef) -> tuple[EntryChange, ...]:
        """Return what differs between two editions of the book's catalogues, by number and maker."""
        with self._reading() as connection:
            one, other = opened_edition(connection, before), opened_edition(connection, after)
            old, new = _unshared(connection, one, other), _unshared(connection, other, one)
            alike = {ref for ref, state in old.items() if ref in new and new[ref].digest == state.digest}
            for states in (old, new):
                for ref in alike:
                    del states[ref]
            contents = _contents(connection, [state.id for states in (old, new) for state in states.values()])
        was, now = ({ref: contents[state.id] for ref, state in states.items()} for states in (old, new))
        return tuple(EntryChange(ref, was.get(ref), now.get(ref)) for ref in sorted({*was, *now}))

    def references(self, ref: EditionRef) -> tuple[CrossReference, ...]:
        """Return the cross-references of an edition by old number and maker."""
        with self._reading() as connection:
            return tuple(references_held(connection, opened_edition(connection, ref)))

    def price_lists(self, ref: EditionRef) -> tuple[PriceList, ...]:
        """Return the price lists of an edition by id."""
        with self._reading() as connection:
            opened = opened_edition(connection, ref)
            return tuple(lists_held(connection, opened.catalogue_id, opened.at))

    def each_price_list(self, ref: EditionRef) -> Iterator[PriceList]:
        """Yield the price lists of an edition by id, for who needs no more than one at a time."""
        with self._reading() as connection:
            opened = opened_edition(connection, ref)
            yield from lists_held(connection, opened.catalogue_id, opened.at)

    def families(self, ref: EditionRef) -> tuple[PartFamily, ...]:
        """Return the families of parts of an edition by name."""
        with self._reading() as connection:
            opened = opened_edition(connection, ref)
            return tuple(families_held(connection, opened.catalogue_id, opened.at))

    def file_content(self, digest: str) -> bytes | None:
        """Return the content of a picture or document of a part; None where the book has it not."""
        with self._reading() as connection:
            return content_kept(connection, digest)

    def reference_changes(self, before: EditionRef, after: EditionRef) -> tuple[ReferenceChange, ...]:
        """Return which cross-references differ between two editions, by old number and maker."""
        old, new = ({one.ref: one for one in self.references(ref)} for ref in (before, after))
        return tuple(
            ReferenceChange(ref, old.get(ref), new.get(ref))
            for ref in sorted({*old, *new})
            if old.get(ref) != new.get(ref)
        )

    # what a keeper does

    def create(self, name: str) -> CatalogueFacts:
        """Make an empty catalogue; raise ``InputFault`` for a name that cannot stand or is taken."""
        told = catalogue_name_fault(name.strip())
        with self._writing() as connection:
            if not told and catalogue_row(connection, name) is not None:
                told = "another catalog of the book has this name; capitals do not count"
            if told or folded(name) == folded(DEMONSTRATION):
                wanted = told or Worded(
                    "{demonstration} is the name of the invented catalog", demonstration=DEMONSTRATION
                )
                raise InputFault((InputProblem("", "catalogue", repr(name), wanted),))
            return facts_of(connection, create_catalogue(connection, name.strip()))

    @contextmanager
    def looking(self, name: str) -> Iterator[DraftDesk]:
        """Open the draft of a catalogue for a look at what would change in it; nothing can be written meanwhile.

        Nobody else waits for it. Raise ``InputFault`` for *Demonstration*, which has no draft.
        """
        with self._reading() as connection:
            row = writable_catalogue(connection, name)
            yield _desk(connection, row)

    @contextmanager
    def draft(self, name: str, *, dry_run: bool = False) -> Iterator[DraftDesk]:
        """Open the draft of a catalogue for writing: all that is done in the block is kept, or nothing where it fails.

        A ``dry_run`` keeps nothing either way. Raise ``InputFault`` for *Demonstration*, which is only read.
        """
        try:
            with self._writing() as connection:
                row = writable_catalogue(connection, name)
                yield _desk(connection, row)
                if dry_run:
                    raise _OnlyTried
        except _OnlyTried:
            return

    def discard_draft(self, name: str) -> None:
        """Let the draft be as the newest edition again."""
        with self._writing() as connection:
            row = writable_catalogue(connection, name)
            desk = _desk(connection, row)
            families = tuple(families_held(connection, row.id, row.last_edition)) if row.last_edition else ()
            desk.families.keep_only({one.name for one in families})
            desk.families.put(families)
            draft = held_by(EntryRow, row.id, row.last_edition + 1)
            drafted = select(EntryRow.number, EntryRow.maker).where(
                *draft, EntryRow.first_edition == row.last_edition + 1
            )
            desk.take_out([PartRef(one.number, one.maker) for one in connection.execute(drafted)])
            ended = select(EntryRow.content).where(
                EntryRow.catalogue_id == row.id, EntryRow.last_edition == row.last_edition
            )
            desk.put(
                [entry_from_text(text) for text in connection.execute(ended).scalars()] if row.last_edition else []
            )
            before = published(connection, row, row.last_edition)
            kept = () if before is None else tuple(references_held(connection, before))
            desk.references.keep_only({one.ref for one in kept})
            desk.references.put(kept)
            lists = tuple(lists_held(connection, row.id, row.last_edition)) if row.last_edition else ()
            desk.price_lists.keep_only({one.id for one in lists})
            desk.price_lists.put(lists)

    def publish(self, name: str, *, notes: str, publisher: str, on: date) -> CatalogueEdition:
        """Publish the draft of a catalogue as its next edition; raise ``InputFault`` where nothing changed in it."""
        with self._writing() as connection:
            row = writable_catalogue(connection, name)
            facts = facts_of(connection, row)
            if not facts.has_changes:
                wanted = "the draft is empty: import parts first" if not facts.editions else "nothing changed in it"
                raise InputFault((InputProblem("", "catalogue", repr(row.name), wanted),))
            title = Worded("{row_name}, edition {last_edition}", row_name=row.name, last_edition=row.last_edition + 1)
            edition = publish_draft(connection, row, title=title, notes=notes, publisher=publisher, on=on)
        self._columns_of(self.opened(edition.ref)).compile()
        return edition

    # what the book plans with

    def chosen(self) -> EditionRef:
        """Return what the book plans with unasked."""
        with self._reading() as connection:
            state = state_of(connection)
        return EditionRef.from_text(state.chosen) if state.chosen else EditionRef(DEMONSTRATION)

    def choose(self, ref: EditionRef) -> EditionRef:
        """Plan with this edition unasked from here on; without a number with the newest one of its day."""
        with self._writing() as connection:
            opened = opened_edition(connection, ref)
            chosen = EditionRef(opened.edition.catalogue, ref.number, ref.is_draft)
            connection.execute(update(StateRow).values(chosen="" if chosen.catalogue == DEMONSTRATION else str(chosen)))
        return chosen

    def leave_demonstration_out(self, *, left_out: bool) -> None:
        """Do without *Demonstration* in this book, or take it in again.

        Raise ``InputFault`` where the book still plans with it: there must be another to choose.
        """
        with self._writing() as connection:
            if left_out and not state_of(connection).chosen:
                wanted = "choose another catalog of the book first"
                raise InputFault((InputProblem("", "catalogue", repr(DEMONSTRATION), wanted),))
            connection.execute(update(StateRow).values(demonstration_left_out=left_out))

    @contextmanager
    def _reading(self) -> Iterator[Connection]:
        with store_faults(self._engine), self._engine.connect() as connection:
            yield connection

    @contextmanager
    def _writing(self) -> Iterator[Connection]:
        with store_faults(self._engine), writing(self._engine, CATALOGUE_SCHEMA.lock) as connection:
            if connection.execute(select(StateRow.id)).scalar() is None:
                connection.execute(insert(StateRow), [FIRST_STATE])
            yield connection


def _entries(connection: Connection, opened: OpenedEdition, described: bool | None) -> Iterator[CatalogueEntry]:
    query = select(EntryRow.content).where(*held_by(EntryRow, opened.catalogue_id, opened.at))
    if described is not None:
        query = query.where(EntryRow.is_described == described)
    query = query.order_by(EntryRow.number, EntryRow.maker).execution_options(yield_per=_FETCHED)
    for text in connection.execute(query).scalars():
        yield entry_from_text(text)


class _State(NamedTuple):
    """A stored state of an entry, and what tells its content."""

    id: int
    digest: str


def _unshared(connection: Connection, one: OpenedEdition, other: OpenedEdition) -> dict[PartRef, _State]:
    """Return the entries of ``one`` whose state ``other`` does not hold; another catalogue shares none."""
    columns = (EntryRow.number, EntryRow.maker, EntryRow.id, EntryRow.digest)
    held = select(*columns).where(*held_by(EntryRow, one.catalogue_id, one.at))
    shared = select(EntryRow.id).where(*held_by(EntryRow, other.catalogue_id, other.at))
    rows = connection.execute(held.where(EntryRow.id.not_in(shared)))
    return {PartRef(row.number, row.maker): _State(row.id, row.digest) for row in rows}


def _contents(connection: Connection, ids: Sequence[int]) -> dict[int, CatalogueEntry]:
    """Return the entries that states hold, some thousands asked for at once."""
    found: dict[int, CatalogueEntry] = {}
    for start in range(0, len(ids), _FETCHED):
        query = select(EntryRow.id, EntryRow.content).where(EntryRow.id.in_(ids[start : start + _FETCHED]))
        found |= {row.id: entry_from_text(row.content) for row in connection.execute(query)}
    return found


def _desk(connection: Connection, row: CatalogueKey) -> DraftDesk:
    """Return the draft of a catalogue; what describes parts is imported where somebody writes, never to plan."""
    from spoutline.catalogue.draft import DraftDesk

    return DraftDesk(connection, row.id, row.last_edition)
