"""The firm's stock by place, wired to the book and the catalogue."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeVar

from pydantic import ValidationError

from spoutline.documents.paper_form import PaperForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.stock_entry import Movement, StockBalance, StockEntry, StockLevel, StockLine, StoredEntry

if TYPE_CHECKING:
    from spoutline.book.book import Book
    from spoutline.bootstrap.stores import EditionOf
    from spoutline.documents.pack.stock_paper import StockSheet
    from spoutline.explain.plan.story import Story
    from spoutline.model.part import Part
    from spoutline.model.part_ref import PartRef
    from spoutline.model.plan import SitePlan

ModelT = TypeVar("ModelT", StockEntry, StockLevel)


@dataclass(frozen=True, slots=True)
class Sources:
    """How the stores are reached; ``part`` finds what a number names, or raises ``InputFault`` with what would."""

    book: Callable[[], Book]
    catalogue: EditionOf
    part: Callable[[str], Part]


@dataclass(frozen=True, slots=True, kw_only=True)
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

    def lines(self, places: Sequence[str] = (), site_plan: SitePlan | None = None) -> tuple[StockLine, ...]:
        """Return what lies at places, held against what the job of a plan takes where there is one.

        Pieces are taken from the first place that has any; without places they are those of the book by name.
        """
        from spoutline.planning.pack.stock_book import balances, needed_by, stock_lines

        asked = self._checked(places) or self.places()
        if not asked:
            raise _nowhere("nothing")
        stock = self._sources.book().stock
        needed = needed_by(site_plan) if site_plan is not None else {}
        return stock_lines(balances(stock.entries(), stock.levels()), needed, asked)

    def take(self, lines: Sequence[StockLine], job: str, done_by: str = "") -> tuple[int, ...]:
        """Note what a job takes as taken, all or none, and return the numbers of the entries; nothing taken is none."""
        entries = [
            StockEntry(
                place=line.balance.place,
                movement=Movement.TAKEN,
                part=line.balance.part,
                quantity=line.takes,
                job=job[:200],
                done_by=done_by[:200],
            )
            for line in lines
            if line.takes
        ]
        return self.add(entries)

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


def _nowhere(value: str) -> InputFault:
    wanted = "the book knows no van and no store yet: count or receive something first"
    return InputFault((InputProblem("", "place", value, wanted),))


def _made(model: type[ModelT], **answers: object) -> ModelT:
    from spoutline.book.survey_faults import problems_of

    try:
        return model.model_validate(answers)
    except ValidationError as fault:
        raise InputFault(tuple(problems_of(fault, model, "", whole="entry"))) from fault
