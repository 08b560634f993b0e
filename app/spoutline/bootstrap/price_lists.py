"""The price lists of a catalogue: taken into its draft, looked at, printed, and asked what a part costs on a day."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from datetime import date
    from pathlib import Path

    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.explain.plan.story import Story
    from spoutline.model.part_ref import PartRef
    from spoutline.model.pricing import PriceList
    from spoutline.planning.pricing.applying import PriceAnswer, PriceAsked
    from spoutline.planning.table_intake.intake import Progress as RowsRead
    from spoutline.planning.table_intake.intake import Seen
    from spoutline.planning.table_intake.into_draft import OpenedTable, TableResult
    from spoutline.planning.table_intake.into_price_list import PriceTableResult
    from spoutline.planning.table_intake.table_look import TableLook


class PriceListService:
    """Price lists of editions and drafts. Methods may be called from several threads.

    Bad input raises ``InputFault`` and changes nothing, a failing environment ``StoreFault``.
    """

    def __init__(self, shelf: Callable[[], CatalogueShelf], of_folders: Callable[[str], tuple[PriceList, ...]]) -> None:
        self._shelf = shelf
        self._of_folders = of_folders

    def lists(self, ref: EditionRef) -> tuple[PriceList, ...]:
        """Return the price lists by which an edition is quoted: its own, and those of the folders with other ids."""
        from spoutline.catalogue.price_lists import joined

        return joined(self._shelf().price_lists(ref), self._of_folders(ref.catalogue))

    def pdf(
        self,
        ref: EditionRef,
        story: Story,
        list_id: str = "",
        dated: date | None = None,
        *,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return the price lists of an edition as a paper, or one of them; raise ``InputFault`` where it has none.

        ``dated`` is printed where given.
        """
        from spoutline.documents.keeper.price_lists import price_lists_content
        from spoutline.documents.paper import paper_bytes

        shelf = self._shelf()
        lists = shelf.price_lists(ref)
        if list_id and list_id not in {one.id for one in lists}:
            wanted = Worded(
                "one of: {lists}", lists=", ".join(one.id for one in lists) or "the edition has no price list"
            )
            raise InputFault((InputProblem("", "price list", repr(list_id), wanted),))
        chosen = tuple(one for one in lists if list_id in ("", one.id))
        listed = {(one.maker, row.part_number) for one in chosen for row in one.rows}
        names = {
            entry.ref: entry.name
            for entry in (shelf.entries(ref) if listed else ())
            if (entry.maker, entry.number) in listed
        }
        edition = shelf.opened(ref).edition
        return paper_bytes(price_lists_content(edition, chosen, names, story, dated), form)

    def price(self, ref: EditionRef, asked: PriceAsked) -> PriceAnswer:
        """Return which price of a part applies on a day, and why."""
        from spoutline.planning.pricing.applying import price_answer

        return price_answer(asked, self.lists(ref))

    def plain(self, ref: EditionRef, part: PartRef) -> tuple[tuple[str, str], ...]:
        """Return the plain prices of an entry as currency and amount: what sets are chosen by."""
        from spoutline.explain.writing.money import amount

        entry = self._shelf().entry(ref, part)
        prices = () if entry is None else entry.prices
        return tuple((one.currency, str(amount(one.minor, one.currency))) for one in prices)

    def look_at_table(
        self, name: str, opened: OpenedTable, head: Mapping[str, object], progress: RowsRead | None = None
    ) -> TableLook:
        """Return what a table of prices would change in its list, as ``CatalogueService.look_at_table`` does."""
        from spoutline.planning.table_intake.into_draft import TableResult
        from spoutline.planning.table_intake.into_price_list import price_changes, price_list_in
        from spoutline.planning.table_intake.table_look import look_through

        with self._shelf().looking(name) as desk:
            before = desk.price_lists.all().get(str(head["id"]))

            def read(seen: Seen) -> TableResult:
                done = price_list_in(opened, head, progress, seen=seen)
                return TableResult(opened, done.report, price_changes(done, before))

            return look_through(opened, read, progress)

    def import_file(self, name: str, path: Path, head: Mapping[str, object], *, dry_run: bool = False) -> PriceList:
        """Take a file of prices and breaks into the draft as a price list; raise ``InputFault`` with every fault."""
        from spoutline.catalogue.price_lists import price_list_from_file

        made = price_list_from_file(path, head)
        with self._shelf().draft(name, dry_run=dry_run) as desk:
            desk.price_lists.put((made,))
        return made

    def import_table(
        self,
        name: str,
        opened: OpenedTable,
        head: Mapping[str, object],
        progress: RowsRead | None = None,
        *,
        dry_run: bool = False,
    ) -> PriceTableResult:
        """Take a supplier's table of prices into the draft as a price list: all of it, or nothing."""
        from spoutline.planning.table_intake.into_price_list import price_list_in

        result = price_list_in(opened, head, progress)
        if result.price_list is not None:
            with self._shelf().draft(name, dry_run=dry_run) as desk:
                desk.price_lists.put((result.price_list,))
        return result

    def of_no_part(self, name: str, one: PriceList) -> tuple[str, ...]:
        """Return the numbers of a price list that no part of its maker has in the draft, sorted."""
        with self._shelf().looking(name) as desk:
            known = {ref.number for ref in desk.refs() if ref.maker == one.maker}
        return tuple(sorted(row.part_number for row in one.rows if row.part_number not in known))

    def remove(self, name: str, list_id: str) -> None:
        """Take a price list out of the draft of a catalogue; raise ``InputFault`` where it has none of this id."""
        with self._shelf().draft(name) as desk:
            known = desk.price_lists.all()
            if list_id not in known:
                wanted = Worded("one of: {known}", known=", ".join(known) or "the draft has no price list")
                raise InputFault((InputProblem("", "price list", repr(list_id), wanted),))
            desk.price_lists.take_out((list_id,))
