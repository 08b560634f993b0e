"""The keeper's work on the catalogues of a book: made, filled, checked, compared, published, handed on."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from spoutline.bootstrap.whole_tables import taken_whole
from spoutline.frozen import frozen
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import Cancelled, InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from datetime import date
    from pathlib import Path

    from spoutline.bootstrap.articles import ArticleService
    from spoutline.bootstrap.exchange_intake import ExchangeCounts
    from spoutline.bootstrap.old_numbers import OldNumberService
    from spoutline.bootstrap.part_files import PartFileService
    from spoutline.bootstrap.price_lists import PriceListService
    from spoutline.bootstrap.table_maps import TableMaps
    from spoutline.catalogue.descriptions import EntryFault
    from spoutline.catalogue.draft import DraftCounts, DraftDesk
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.catalogue.shelf_lookup import CatalogueFacts, EntryChange
    from spoutline.model.catalogue_edition import CatalogueEdition
    from spoutline.model.catalogue_entry import CatalogueEntry
    from spoutline.model.limit import RuleTables
    from spoutline.model.part_family import PartFamily
    from spoutline.model.part_ref import PartRef
    from spoutline.model.plan import SitePlan
    from spoutline.model.pricing import PriceList
    from spoutline.model.survey import Survey
    from spoutline.planning.keeping.effect import PositionEffect
    from spoutline.planning.keeping.health import HealthNote
    from spoutline.planning.protocols import Progress
    from spoutline.planning.table_intake.column_map import TableMap
    from spoutline.planning.table_intake.intake import Progress as RowsRead
    from spoutline.planning.table_intake.into_draft import OpenedTable, TableResult
    from spoutline.planning.table_intake.raw_table import TextEncoding
    from spoutline.planning.table_intake.table_look import TableFile, TableLook

_MOST_TOLD = 200
_ENTRIES_A_LOOK = 500  # between two words on how many are checked


@frozen
class Sources:
    """How the stores are reached; each opens when first asked for."""

    shelf: Callable[[], CatalogueShelf]
    jurisdictions: Callable[[], tuple[str, ...]]
    tables: Callable[[str], RuleTables]  # of a jurisdiction
    price_lists: Callable[[str], tuple[PriceList, ...]]  # of the folders that price a catalogue
    lists_that_come_with: Callable[[str], tuple[PriceList, ...]]  # those of the program for a catalogue
    plan: Callable[[Survey, EditionRef, Progress | None], SitePlan]
    planned_with: Callable[[Survey | None], EditionRef]
    survey: Callable[[int], Survey]  # of the book, by its key
    maps: TableMaps


@frozen
class EntryLine:
    """An entry with the columns that it lacks to be a described part, and what is wrong in it."""

    entry: CatalogueEntry
    lacking: tuple[str, ...]
    faults: tuple[EntryFault, ...]


@frozen
class EntriesFound:
    """The first entries that were looked for, and how many there are, more than counted where not ``is_all``."""

    lines: tuple[EntryLine, ...]
    count: int
    is_all: bool = True


@frozen
class SurveyEffect:
    """What becomes of the positions of one survey of the book; ``fault`` says why it cannot be planned with both."""

    survey_id: int
    positions: tuple[PositionEffect, ...]
    fault: str = ""


class CatalogueService:
    """Catalogues and editions. Methods may be called from several threads.

    Bad input raises ``InputFault`` and changes nothing, a failing environment ``StoreFault``.
    """

    def __init__(self, sources: Sources) -> None:
        self._sources = sources

    def shelf(self) -> CatalogueShelf:
        """Return the catalogues themselves: entries are read from them, and put into a draft through it."""
        return self._sources.shelf()

    def files(self) -> PartFileService:
        """Return what keeps pictures and documents with parts."""
        from spoutline.bootstrap.part_files import PartFileService

        return PartFileService(self._sources.shelf, self._sources.planned_with)

    def articles(self) -> ArticleService:
        """Return what puts articles into a draft: hose cut to length, sets sold made up."""
        from spoutline.bootstrap.articles import ArticleService

        return ArticleService(self._sources.shelf)

    def prices(self) -> PriceListService:
        """Return what keeps price lists, and answers what a part costs."""
        from spoutline.bootstrap.price_lists import PriceListService

        return PriceListService(self._sources.shelf, self._sources.price_lists)

    def old_numbers(self) -> OldNumberService:
        """Return what keeps the numbers that lead to parts."""
        from spoutline.bootstrap.old_numbers import OldNumberService

        return OldNumberService(self._sources.shelf)

    def all(self) -> tuple[CatalogueFacts, ...]:
        """Return the catalogues of the book."""
        return self.shelf().catalogues()

    def create(self, name: str) -> CatalogueFacts:
        """Begin an empty catalogue."""
        return self.shelf().create(name)

    def chosen(self) -> EditionRef:
        """Return what the book plans with unasked."""
        return self.shelf().chosen()

    def choose(self, ref: EditionRef) -> EditionRef:
        """Let the book plan with an edition unasked."""
        return self.shelf().choose(ref)

    def planned_with(self, survey: Survey | None = None) -> EditionRef:
        """Return what names the edition that a survey is planned with; the settings go before survey and book."""
        return self._sources.planned_with(survey)

    def find(self, ref: EditionRef, text: str, *, limit: int, only_not_described: bool = False) -> EntriesFound:
        """Return the entries of an edition that are known by ``text``, the nearest first, with what each lacks."""
        from spoutline.catalogue.descriptions import describe

        described = False if only_not_described else None
        entries, count = self.shelf().find(ref, text, limit=limit, described=described)
        told = ((entry, describe(entry)) for entry in entries)
        lines = tuple(EntryLine(entry, found.lacking, found.faults) for entry, found in told)
        return EntriesFound(lines, count.number, is_all=count.is_all)

    def begin(self, name: str, *, without_demonstration: bool = False) -> EditionRef:
        """Let the book plan with a catalogue of a person's own, a new one where it has none of this name.

        Before its first edition that is the draft; what is published first takes its place.
        """
        from spoutline.catalogue.editions import folded

        known = {folded(facts.name): facts for facts in self.all()}
        facts = known.get(folded(name.strip()))
        if facts is None or facts.is_demonstration:
            facts = self.create(name)
        chosen = self.choose(EditionRef(facts.name, is_draft=facts.newest is None))
        if without_demonstration:
            self.leave_demonstration_out(left_out=True)
        return chosen

    def change_entries(self, name: str, changes: Sequence[EntryChange]) -> tuple[EntryChange, ...]:
        """Bring entries of a draft from one state to another, all of them or none; return them as they stand then.

        A part then has what it inherits of its family.

        Raise ``InputFault`` where the draft holds one otherwise than ``before`` says, for somebody changed it
        since, and where a successor is no part of the draft or leads back to where it began.
        """
        from spoutline.planning.keeping.draft_check import successor_problems

        with self.shelf().draft(name) as desk:
            refs = [change.ref for change in changes]
            held = desk.entries(refs)
            wanted = "the draft holds it otherwise by now: look at it again"
            stale = [one.ref for one in changes if held.get(one.ref) != one.before]
            if stale:
                raise InputFault(tuple(InputProblem("", "part", str(ref), wanted) for ref in stale))
            desk.take_out(change.ref for change in changes if change.after is None)
            desk.put(change.after for change in changes if change.after is not None)
            problems = tuple(successor_problems(desk, [one.after for one in changes if one.after is not None]))
            if problems:
                raise InputFault(problems)
            written = desk.entries(refs)
        return tuple(replace(change, after=written.get(change.ref)) for change in changes)

    def families(self, ref: EditionRef) -> tuple[PartFamily, ...]:
        """Return the families of an edition by name."""
        return self.shelf().families(ref)

    def put_family(self, name: str, family: PartFamily, *, renamed_from: str = "") -> int:
        """Put a family into the draft of a catalogue and return how many of its parts follow it.

        Under another name its parts go with it. Raise ``InputFault`` where a part of it would be faulty.
        """
        from spoutline.planning.keeping.family_editing import faulty_parts

        with self.shelf().draft(name) as desk:
            if renamed_from and renamed_from != family.name:
                if family.name in desk.families.all():
                    wanted = "another family of the draft has this name"
                    raise InputFault((InputProblem("name", "name", repr(family.name), wanted),))
                moved = [
                    one.model_copy(update={"family": family.name}) for one in desk.families.parts_of([renamed_from])
                ]
                desk.families.take_out([renamed_from])
                desk.families.put([family])
                desk.put(moved)
            else:
                desk.families.put([family])
            parts = tuple(desk.families.parts_of([family.name]))
            problems = faulty_parts(parts)
            if problems:
                raise InputFault(problems[:_MOST_TOLD])
        return sum(one.kind is family.kind for one in parts)

    def remove_family(self, name: str, family: str) -> None:
        """Take a family out of the draft, and what its parts inherit; raise ``InputFault`` where it has none of it."""
        with self.shelf().draft(name) as desk:
            known = desk.families.all()
            if family not in known:
                wanted = Worded("one of: {known}", known=", ".join(known) or "the draft has no family")
                raise InputFault((InputProblem("", "family", repr(family), wanted),))
            desk.families.take_out([family])

    def leave_demonstration_out(self, *, left_out: bool) -> None:
        """Do without the invented catalogue in this book, or take it in again."""
        self.shelf().leave_demonstration_out(left_out=left_out)

    def check(self, ref: EditionRef, progress: Progress | None = None) -> tuple[EntryFault, ...]:
        """Return what keeps an edition from being published; nothing for one that was. Raise ``Cancelled``.

        The progress counts entries.
        """
        from spoutline.catalogue.checking import edition_faults

        return edition_faults(self._entries(ref, progress), self.shelf().references(ref))

    def _entries(self, ref: EditionRef, progress: Progress | None) -> Iterator[CatalogueEntry]:
        """Yield the entries of an edition and tell how many were taken; raise ``Cancelled``."""
        shelf = self.shelf()
        entries = shelf.entries(ref)
        if progress is None:
            yield from entries
            return
        total = shelf.count(ref)
        for done, entry in enumerate(entries):
            if done % _ENTRIES_A_LOOK == 0:
                progress.on_progress(done, total)
                if progress.should_stop():
                    raise Cancelled
            yield entry

    def health(self, ref: EditionRef, today: date, jurisdiction: str = "") -> tuple[HealthNote, ...]:
        """Return what a keeper should look at before an edition is published; a part that lacks figures among it.

        What no station can choose is told by the rules of ``jurisdiction``, or else of all.
        """
        from spoutline.planning.keeping.health import health_of

        tables = [
            self._sources.tables(one) for one in ((jurisdiction,) if jurisdiction else self._sources.jurisdictions())
        ]
        return health_of(self.shelf().entries(ref), tables, self.prices().lists(ref), today)

    def effects(
        self, before: EditionRef, after: EditionRef, surveys: Iterable[Survey], progress: Progress | None = None
    ) -> tuple[PositionEffect, ...]:
        """Plan surveys with two editions and return what becomes of each position; raise ``Cancelled``."""
        from spoutline.planning.keeping.effect import effects

        changes = self.changes(before, after)
        plan = self._sources.plan
        return tuple(
            one
            for survey in surveys
            for one in effects(plan(survey, before, progress), plan(survey, after, progress), changes)
        )

    def effects_on_book(
        self, before: EditionRef, after: EditionRef, survey_ids: Sequence[int], progress: Progress
    ) -> Iterator[SurveyEffect]:
        """Plan surveys of the book with two editions, one after the other; raise ``Cancelled``.

        A survey that cannot be planned with one of them is told, and the others go on. The progress counts surveys.
        """
        from spoutline.planning.keeping.effect import effects
        from spoutline.planning.keeping.quiet_progress import QuietProgress

        changes, plan, asking = self.changes(before, after), self._sources.plan, QuietProgress(progress)
        for place, key in enumerate(survey_ids):
            progress.on_progress(place, len(survey_ids))
            try:
                survey = self._sources.survey(key)
                yield SurveyEffect(key, effects(plan(survey, before, asking), plan(survey, after, asking), changes))
            except InputFault as fault:
                yield SurveyEffect(key, (), "; ".join(map(str, fault.problems)))

    def changes(self, before: EditionRef, after: EditionRef) -> tuple[EntryChange, ...]:
        """Return what differs between two editions, by number and maker."""
        return self.shelf().changes(before, after)

    def publish(
        self, name: str, progress: Progress | None = None, *, notes: str, publisher: str, on: date
    ) -> CatalogueEdition:
        """Publish the draft of a catalogue; raise ``InputFault`` where it is faulty, unsigned or unchanged.

        The progress counts entries that were checked; where it asks to stop before all of them were, ``Cancelled`` is
        raised and nothing was published.

        A book that planned with the draft because there was no edition yet plans with the editions from the first on.
        """
        problems = [
            InputProblem("", field, "nothing", wanted)
            for field, text, wanted in (
                ("note", notes, "say what is new in this edition"),
                ("publisher", publisher, "say who publishes it"),
            )
            if not text.strip()
        ]
        faults = self.check(EditionRef(name, is_draft=True), progress)
        problems += [InputProblem(str(one.ref), one.column, one.value, one.wanted) for one in faults[:_MOST_TOLD]]
        if problems:
            raise InputFault(tuple(problems))
        edition = self.shelf().publish(name, notes=notes.strip(), publisher=publisher.strip(), on=on)
        if edition.number == 1 and self.chosen() == EditionRef(edition.catalogue, is_draft=True):
            self.choose(EditionRef(edition.catalogue))
        return edition

    def discard_draft(self, name: str) -> None:
        """Let the draft be as the newest edition again."""
        self.shelf().discard_draft(name)

    def export(self, ref: EditionRef) -> bytes:
        """Return the exchange file of an edition: the same bytes for equal editions.

        The price lists that come with *Demonstration* go with it: a copy is quoted by them until it has others.
        """
        from spoutline.catalogue.exchange import exchange_bytes

        shelf = self.shelf()

        def lists() -> Iterator[PriceList]:
            own: set[str] = set()
            for one in shelf.each_price_list(ref):
                own.add(one.id)
                yield one
            # those beside the edition's; one of the same id gives way to it
            yield from (one for one in self._sources.lists_that_come_with(ref.catalogue) if one.id not in own)

        return exchange_bytes(
            shelf.entries(ref), shelf.references(ref), lists(), shelf.families(ref), content_of=shelf.file_content
        )

    def import_table(
        self,
        name: str,
        opened: OpenedTable,
        progress: RowsRead | None = None,
        *,
        take_out_missing: bool = False,
        dry_run: bool = False,
    ) -> TableResult:
        """Take a supplier's table into the draft of a catalogue: all of it, or nothing where a cell is wrong or open.

        Its report says which. A ``dry_run`` changes nothing either way; ``take_out_missing`` takes out the parts of the
        table's makers that it does not hold. Raise ``Stopped`` where the progress asks to stop; nothing changed then.
        """
        from spoutline.planning.table_intake.into_draft import take_in

        def take(desk: DraftDesk) -> TableResult:
            return take_in(desk, opened, progress, take_out_missing=take_out_missing)

        return taken_whole(self.shelf().draft(name, dry_run=dry_run), take)

    def open_table(
        self, path: Path, sheet: str = "", encoding: TextEncoding | None = None, plain: TableMap | None = None
    ) -> TableFile:
        """Return a supplier's table as it was read last time where its titles are known, else as they suggest.

        ``plain`` says what its rows are and what else is known of it; parts and prices where it is None.
        """
        from spoutline.planning.table_intake.column_map import TableMap

        return self._sources.maps.open(path, sheet, encoding, plain or TableMap())

    def look_at_table(self, name: str, opened: OpenedTable, progress: RowsRead | None = None) -> TableLook:
        """Return what a table would change in the draft of a catalogue, and how its cells are read; change nothing.

        Raise ``Stopped`` where the progress asks to stop.
        """
        from spoutline.planning.table_intake.table_look import look_at

        with self.shelf().looking(name) as desk:
            return look_at(desk, opened, progress)

    def remember_map(self, opened: OpenedTable) -> Path:
        """Remember how a table was read for the next one with its titles; return the file."""
        return self._sources.maps.remember(opened)

    def named_part(self, ref: EditionRef, text: str) -> PartRef:
        """Return maker and number of the entry that a person names; raise ``InputFault`` for none or several."""
        found, _ = self.shelf().find(ref, text, limit=_MOST_TOLD)
        exact = [one.ref for one in found if text.strip() in (one.number, str(one.ref))]
        if len(exact) != 1:
            several = ", ".join(str(one) for one in exact) or ", ".join(str(one.ref) for one in found[:5])
            wanted = Worded(
                "number, or maker and number, of one entry: {several}", several=several or "none is known by this"
            )
            raise InputFault((InputProblem("", "part number", repr(text), wanted),))
        return exact[0]

    def import_exchange(
        self,
        path: Path,
        name: str,
        progress: Progress | None = None,
        *,
        keep_others: bool = False,
        dry_run: bool = False,
    ) -> DraftCounts:
        """Let the draft of a catalogue hold what an exchange file holds; all of it or, where a row is faulty, nothing.

        With ``keep_others`` the entries that the file has not stay; a ``dry_run`` only counts. Raise ``Cancelled``
        where the progress asks to stop; nothing changed then. It counts in percent how much of the file is read.
        Others can write to the book meanwhile; where one of them changed this draft, ``InputFault`` is raised.
        """
        from spoutline.bootstrap.exchange_intake import take_in

        if dry_run:
            counts = self.look_at_exchange(path, name, progress)
            return counts.beside if keep_others else counts.alone
        return take_in(self.shelf(), name, path, progress, keep_others=keep_others)

    def look_at_exchange(self, path: Path, name: str, progress: Progress | None = None) -> ExchangeCounts:
        """Return what an exchange file would do to the draft of a catalogue; change nothing and hold nobody up.

        Raise ``InputFault`` with every fault of the file, ``Cancelled`` where the progress asks to stop.
        """
        from spoutline.bootstrap.exchange_intake import look_into

        with self.shelf().looking(name) as desk:
            return look_into(desk, path, progress)
