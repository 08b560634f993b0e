"""Old numbers of a catalogue that lead to its parts: followed, put into its draft, taken out, handed on."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from spoutline.bootstrap.whole_tables import taken_whole
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.catalogue.draft import DraftDesk
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.model.cross_reference import CrossReference, NumberTrace
    from spoutline.model.part_ref import PartRef
    from spoutline.planning.table_intake.intake import Progress as RowsRead
    from spoutline.planning.table_intake.intake import Seen
    from spoutline.planning.table_intake.into_draft import OpenedTable, TableResult
    from spoutline.planning.table_intake.into_references import ReferenceResult
    from spoutline.planning.table_intake.table_look import TableLook


class OldNumberService:
    """Cross-references of editions and drafts. Methods may be called from several threads.

    Bad input raises ``InputFault`` and changes nothing, a failing environment ``StoreFault``.
    """

    def __init__(self, shelf: Callable[[], CatalogueShelf]) -> None:
        self._shelf = shelf

    def traces(self, ref: EditionRef, text: str) -> tuple[NumberTrace, ...]:
        """Return every way that a typed number leads to a part of an edition."""
        parts = self._shelf().parts(ref)
        return parts.traces(parts.as_written(text))

    def put(self, name: str, one: CrossReference) -> None:
        """Put one cross-reference into the draft of a catalogue; raise ``InputFault`` where it leads in a circle."""
        from spoutline.catalogue.cross_references import going_round

        with self._shelf().draft(name) as desk:
            if one.ref in desk.refs():
                wanted = "an old number; a part of the draft has it: name the successor in the part"
                raise InputFault((InputProblem("", "number", repr(str(one.ref)), wanted),))
            if one in going_round({**desk.references.all(), one.ref: one}):
                wanted = "a number that does not lead back to this one"
                raise InputFault((InputProblem("", "part_number", repr(str(one.leads_to)), wanted),))
            desk.references.put((one,))

    def take_out(self, name: str, ref: PartRef) -> PartRef:
        """Take a cross-reference out of the draft of a catalogue; without a maker the only one of the number.

        Raise ``InputFault`` where there is none, or several makers have the number.
        """
        with self._shelf().draft(name) as desk:
            named = sorted(one for one in desk.references.all() if ref.names(one))
            if len(named) != 1:
                wanted = (
                    Worded("name the maker: {named}", named=", ".join(one.maker for one in named))
                    if named
                    else Worded("an old number in the draft of {name}", name=name)
                )
                raise InputFault((InputProblem("", "number", repr(str(ref)), wanted),))
            desk.references.take_out(named)
            return named[0]

    def csv(self, ref: EditionRef) -> bytes:
        """Return the old numbers of an edition as a CSV table that is taken in again without a question."""
        from spoutline.documents.tabular.plain_table import table_csv
        from spoutline.model.cross_reference import COLUMNS

        found = self._shelf().references(ref)
        return table_csv(COLUMNS, [[str(getattr(one, column)) for column in COLUMNS] for one in found])

    def look_at_table(self, name: str, opened: OpenedTable, progress: RowsRead | None = None) -> TableLook:
        """Return what a table of old numbers would change in a draft, as ``CatalogueService.look_at_table`` does."""
        from spoutline.planning.table_intake.into_draft import TableResult
        from spoutline.planning.table_intake.into_references import reference_changes, take_in_references
        from spoutline.planning.table_intake.table_look import look_through

        with self._shelf().looking(name) as desk:
            parts = desk.refs()

            def read(seen: Seen) -> TableResult:
                done = take_in_references(desk.references, parts, opened, progress, only_looks=True, seen=seen)
                return TableResult(opened, done.report, reference_changes(done))

            return look_through(opened, read, progress)

    def import_table(
        self,
        name: str,
        opened: OpenedTable,
        progress: RowsRead | None = None,
        *,
        take_out_missing: bool = False,
        dry_run: bool = False,
    ) -> ReferenceResult:
        """Take a table of old numbers into the draft of a catalogue; otherwise as ``CatalogueService.import_table``."""
        from spoutline.planning.table_intake.into_references import take_in_references

        def take(desk: DraftDesk) -> ReferenceResult:
            references, parts = desk.references, desk.refs()
            return take_in_references(references, parts, opened, progress, take_out_missing=take_out_missing)

        return taken_whole(self._shelf().draft(name, dry_run=dry_run), take)
