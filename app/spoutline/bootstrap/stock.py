"""The firm's stock by place, wired to the book and the catalogue."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from dataclasses import field
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from pydantic import ValidationError

from spoutline.documents.paper_form import PaperForm
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.stock_entry import (
    Movement,
    StockBalance,
    StockEntry,
    StockLevel,
    StockLine,
    StoredEntry,
    UncountedLine,
)
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.book.book import Book
    from spoutline.bootstrap.quotations import QuotationService
    from spoutline.bootstrap.stores import EditionOf
    from spoutline.documents.pack.stock_paper import StockSheet
    from spoutline.explain.plan.story import Story
    from spoutline.model.part import Part
    from spoutline.model.part_ref import PartRef
    from spoutline.model.plan import SitePlan

ModelT = TypeVar("ModelT", StockEntry, StockLevel)


@frozen
class Sources:
    """How the stores are reached; ``part`` finds what a number names, or raises ``InputFault`` with what would."""

    book: Callable[[], Book]
    quoting: Callable[[], QuotationService]
    catalogue: EditionOf
    part: Callable[[str], Part]


@frozen(kw_only=True)
class Asked:
    """One movement as a person or a scanner enters it.

    ``quantity`` is None where nobody said it: then it is the count of the code, else one piece.
    """

    place: str
    movement: Movement
    code: str
    quantity: int | None = None
    count: str = ""
    job: str = ""
    done_by: str = ""
    note: str = ""


@frozen(kw_only=True)
class Job:
    """A job as stock is held against it: its name, the plan of its sets, and spares that go with it.

    The name is that by which entries belong to it. With ``again`` everything is taken once more, whatever was taken.
    """

    name: str
    site_plan: SitePlan
    spares: Mapping[PartRef, int] = field(default_factory=dict)
    again: bool = False


class StockService:
    """Stock. Methods may be called from several threads; bad input raises ``InputFault``, and nothing is added then."""

    def __init__(self, sources: Sources) -> None:
        self._sources = sources

    def entry(self, asked: Asked) -> StockEntry:
        """Return the entry that a movement makes; raise ``InputFault`` where its code names no part."""
        from spoutline.model.part_identity import GTIN_LENGTHS, gtin_fault
        from spoutline.model.scanned_item import scanned_item

        item = scanned_item(asked.code)
        try:
            part = self._sources.part(item.number)
        except InputFault as fault:
            told = gtin_fault(item.number) if item.number.isdigit() and len(item.number) in GTIN_LENGTHS else ""
            if item.is_gtin:
                told = (
                    "no part of the catalog has this GTIN; write it at its part, or as an old number of the part, "
                    "or scan the part number"
                )
            if not told:
                raise
            raise InputFault((InputProblem("", "code", repr(item.number), told),)) from fault
        quantity = asked.quantity if asked.quantity is not None else item.count
        return _made(
            StockEntry,
            place=asked.place,
            movement=asked.movement,
            part=part.ref,
            quantity=1 if quantity is None else quantity,
            count=asked.count if asked.movement is Movement.COUNTED else "",
            lot=item.lot,
            serial=item.serial,
            job=asked.job,
            done_by=asked.done_by,
            note=asked.note,
        )

    def add(self, entries: Sequence[StockEntry]) -> tuple[int, ...]:
        """Add entries, all or none, and return their numbers."""
        return self._sources.book().stock.add(entries)

    def undo(self, number: int, done_by: str = "") -> StoredEntry:
        """Add the entry by which another one counts no more, and return it."""
        return self._sources.book().stock.undo(number, done_by)

    def entries(self, place: str | None = None, newest: int | None = None) -> tuple[StoredEntry, ...]:
        """Return entries of all places or of one, oldest first, only the ``newest`` ones where a number is given."""
        return self._sources.book().stock.entries(place, newest)

    def set_level(self, place: str, code: str, least: int, lot: int) -> StockLevel:
        """Say what a place keeps of a part, and how many pieces are ordered at once; return it."""
        from spoutline.model.scanned_item import scanned_item

        part = self._sources.part(scanned_item(code).number)
        level = _made(StockLevel, place=place, part=part.ref, least=least, lot=lot)
        self._sources.book().stock.set_level(level)
        return level

    def places(self) -> tuple[str, ...]:
        """Return every place that the book knows, sorted."""
        return self._sources.book().stock.places()

    def balances(self, places: Sequence[str] = ()) -> tuple[StockBalance, ...]:
        """Return what lies at the places, at all of them where none is named; raise for a place that the book lacks."""
        from spoutline.planning.pack.stock_book import balances

        self._checked(places)
        stock = self._sources.book().stock
        found = balances(stock.entries(), stock.levels())
        return tuple(one for one in found if not places or one.place in places)

    def lines(self, places: Sequence[str] = (), job: Job | None = None) -> tuple[StockLine, ...]:
        """Return what lies at places, held against what a job takes where there is one.

        Pieces are taken from the first place that has any; without places they are those of the book by name. What
        entries took for the job already is left out.
        """
        from spoutline.planning.pack.stock_book import balances, needed_by, stock_lines, taken_for

        asked = self._checked(places) or self.places()
        if not asked:
            raise _nowhere("nothing")
        stock = self._sources.book().stock
        entries, levels = stock.entries(), stock.levels()
        if job is None:
            return stock_lines(balances(entries, levels), {}, asked)
        needed = Counter(needed_by(job.site_plan)) + Counter(job.spares)
        taken = taken_for(entries, job_name(job.name))
        return stock_lines(balances(entries, levels), needed, asked, taken, again=job.again)

    def spares(self, source: str, site_plan: SitePlan) -> dict[PartRef, int]:
        """Return the spares that go with a job beside what it fits.

        ``source`` is ``quotation:ID`` or ``quotation:ID:OPTION``, whose spares were quoted, or ``file:PATH`` of terms,
        whose rules are applied to the sets of the plan. Raise ``InputFault`` for anything else.
        """
        from spoutline.planning.refit.quantities import part_quantities

        kind, _, rest = source.partition(":")
        if kind == "quotation" and rest:
            option = self._sources.quoting().life().ordered_option(rest)
            return {line.part: line.spares for line in option.lines if line.spares}
        if kind == "file" and rest:
            terms = self._sources.quoting().terms().read_terms(Path(rest))
            return {one.part.ref: one.spares for one in part_quantities(site_plan.positions, terms) if one.spares}
        wanted = Worded("write one of {ways}", ways="quotation:ID, quotation:ID:OPTION, file:TERMS.toml")
        raise InputFault((InputProblem("", "--spares", repr(source), wanted),))

    def take(self, lines: Sequence[StockLine], job: str, done_by: str = "") -> tuple[int, ...]:
        """Note what a job takes as taken, all or none, and return the numbers of the entries; nothing taken is none.

        Raise ``InputFault`` where somebody took for the job since the lines were made, or a place has less by now.
        """
        from spoutline.planning.pack.stock_book import balances, taken_for

        name = job_name(job)

        def taking(entries: tuple[StoredEntry, ...]) -> list[StockEntry]:
            taken = taken_for(entries, name)
            there = {(one.place, one.part): one.quantity for one in balances(entries, ())}
            for line in lines:
                part, place = line.balance.part, line.balance.place
                if taken.get(part, 0) != line.taken or there.get((place, part), 0) < line.takes:
                    wanted = "somebody moved pieces of it in the meantime: look again, then take"
                    raise InputFault((InputProblem(place, "part", repr(str(part)), wanted),))
            return [
                StockEntry(
                    place=line.balance.place,
                    movement=Movement.TAKEN,
                    part=line.balance.part,
                    quantity=line.takes,
                    job=name,
                    done_by=done_by[:200],
                )
                for line in lines
                if line.takes
            ]

        return self._sources.book().stock.add_seen(taking)

    def uncounted(self, place: str, count: str) -> tuple[UncountedLine, ...]:
        """Return the parts of a place that a count did not find, by part; raise for a place or count that is none."""
        self._checked((place,))
        return _not_found(self.entries(place), place, count.strip())

    def close_count(
        self, place: str, count: str, lines: Sequence[UncountedLine], done_by: str = "", note: str = ""
    ) -> tuple[int, ...]:
        """Count as none what a count did not find, as a person saw and confirmed it; return the numbers of the entries.

        Raise ``InputFault`` where somebody scanned or moved something at the place in the meantime.
        """
        from spoutline.planning.pack.stock_book import closing

        name = count.strip()

        def closed(entries: tuple[StoredEntry, ...]) -> list[StockEntry]:
            if _not_found(entries, place, name) != tuple(lines):
                wanted = "somebody counted or moved pieces there in the meantime: look again, then close the count"
                raise InputFault((InputProblem("", "place", repr(place), wanted),))
            return closing(lines, place, name, done_by[:200], note[:200])

        return self._sources.book().stock.add_seen(closed)

    def parts(self, refs: Sequence[PartRef]) -> Mapping[PartRef, Part]:
        """Return the parts of the catalogue that references name; those that it lacks are left out."""
        return {part.ref: part for part in self._sources.catalogue().parts(refs)} if refs else {}

    # papers and tables

    def paper(self, sheet: StockSheet, story: Story, *, on_letter: bool, form: PaperForm = PaperForm.PDF) -> bytes:
        """Return a list as PDF, or in another ``form``; the same bytes for the same arguments."""
        from spoutline.documents.pack.stock_paper import stock_paper

        return stock_paper(sheet, story, on_letter=on_letter, form=form)

    def csv(self, lines: Sequence[StockLine]) -> bytes:
        """Return lines as CSV for other programs; those of one place serve as a stock list for swaps."""
        from spoutline.documents.pack.stock_tables import lines_csv

        return lines_csv(lines, self.parts([line.balance.part for line in lines]))

    def entries_csv(self, entries: Sequence[StoredEntry]) -> bytes:
        """Return entries as CSV for other programs."""
        from spoutline.documents.pack.stock_tables import entries_csv

        return entries_csv(entries)

    def _checked(self, places: Sequence[str]) -> tuple[str, ...]:
        from spoutline.book.choices import not_one_of

        known = self.places() if places else ()
        for place in places:
            if not known:
                raise _nowhere(repr(place))
            if place not in known:
                raise not_one_of(place, known, field="place")
        return tuple(dict.fromkeys(places))


def job_name(name: str) -> str:
    """Return the name of a job as entries hold it."""
    return name.strip()[:200].strip()


def _not_found(entries: Sequence[StoredEntry], place: str, count: str) -> tuple[UncountedLine, ...]:
    from spoutline.planning.pack.stock_book import uncounted

    found = uncounted(entries, place, count)
    if found is None:
        names = dict.fromkeys(
            one.entry.count for one in entries if one.entry.place == place and one.entry.count and not one.is_undone
        )
        wanted = Worded("a count of this place is needed: {names}", names=", ".join(names) or "–")
        raise InputFault((InputProblem("", "count", repr(count), wanted),))
    return found


def _nowhere(value: str) -> InputFault:
    wanted = "the book knows no van and no store yet: count or receive something first"
    return InputFault((InputProblem("", "place", value, wanted),))


def _made(model: type[ModelT], **answers: object) -> ModelT:
    from spoutline.book.survey_faults import problems_of

    try:
        return model.model_validate(answers)
    except ValidationError as fault:
        raise InputFault(tuple(problems_of(fault, model, "", whole="entry"))) from fault
