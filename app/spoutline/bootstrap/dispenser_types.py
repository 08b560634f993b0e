"""The firm's dispenser types: kept in the book, imported and exported as tables, chosen for dispensers of a survey."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING

from pydantic import ValidationError

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.book.book import Book
    from spoutline.bootstrap.table_maps import TableMaps
    from spoutline.model.dispenser_type import ChangedType
    from spoutline.model.survey import DispenserType, Survey
    from spoutline.planning.table_intake.column_map import TableMap
    from spoutline.planning.table_intake.intake import IntakeReport, Progress, Seen
    from spoutline.planning.table_intake.into_draft import OpenedTable
    from spoutline.planning.table_intake.table_look import TableLook
    from spoutline.units.accepted import UnitSystem


@frozen
class TypesTaken:
    """What a table of types did to the book, or would do; nothing where ``report`` is not sound."""

    report: IntakeReport
    new: int = 0
    changed: int = 0
    unchanged: int = 0


class DispenserTypeService:
    """Dispenser types. Methods may be called from several threads; bad input raises ``InputFault``, nothing changes."""

    def __init__(self, book: Callable[[], Book], maps: TableMaps) -> None:
        self._book, self.maps = book, maps

    def all(self) -> tuple[DispenserType, ...]:
        """Return the types of the book by name."""
        return self._book().dispenser_types.all()

    def named(self, name: str) -> DispenserType:
        """Return a type of the book, whatever the capitals of its name."""
        return self._book().dispenser_types.named(name)

    def put(self, kinds: Iterable[DispenserType]) -> tuple[int, int, int]:
        """Put types into the book, each in the place of the one of its name; return new, changed, unchanged."""
        return self._book().dispenser_types.put(kinds)

    def remove(self, name: str) -> DispenserType:
        """Take a type out of the book; surveys keep what they have of it."""
        return self._book().dispenser_types.remove(name)

    def import_table(
        self, opened: OpenedTable, progress: Progress | None = None, *, dry_run: bool = False
    ) -> TypesTaken:
        """Take a table of types into the book: all of it, or nothing where a cell is wrong or open.

        Raise ``Stopped`` where the progress asks to stop.
        """
        from spoutline.model.answered import same_answers
        from spoutline.model.dispenser_type import folded_type_name
        from spoutline.planning.table_intake.into_types import read_types

        read = read_types(opened, progress)
        if not read.report.is_sound:
            return TypesTaken(read.report)
        if not dry_run:
            return TypesTaken(read.report, *self.put(read.kinds))
        known = self._book().dispenser_types.known()
        before = [known.get(folded_type_name(kind.name)) for kind in read.kinds]
        same = sum(was is not None and same_answers(was, kind) for was, kind in zip(before, read.kinds, strict=True))
        new = before.count(None)
        return TypesTaken(read.report, new, len(before) - new - same, same)

    def plain_map(self, units: UnitSystem | None = None) -> TableMap:
        """Return the map of a table of types of which nothing is known but whose units its bare numbers have."""
        from spoutline.planning.table_intake.column_map import TableMap
        from spoutline.planning.table_intake.intake_fields import TableSubject

        return TableMap(subject=TableSubject.DISPENSER_TYPES, units=units)

    def look_at_table(self, opened: OpenedTable, progress: Progress | None = None) -> TableLook:
        """Return what a table of types would change in the book, and how its cells are read; change nothing.

        Raise ``Stopped`` where the progress asks to stop.
        """
        from spoutline.planning.table_intake.into_draft import TableResult
        from spoutline.planning.table_intake.into_types import read_types, type_changes
        from spoutline.planning.table_intake.table_look import look_through

        known = self._book().dispenser_types.known()

        def look(seen: Seen) -> TableResult:
            done = read_types(opened, progress, seen=seen)
            return TableResult(opened, done.report, type_changes(done, known))

        return look_through(opened, look, progress)

    def csv(self, kinds: Iterable[DispenserType]) -> bytes:
        """Return types as a CSV table that is taken in again without a question."""
        from spoutline.documents.tabular.plain_table import table_csv
        from spoutline.model.type_columns import TYPE_COLUMNS
        from spoutline.planning.table_intake.into_types import type_cells

        return table_csv([column.key for column in TYPE_COLUMNS], map(type_cells, kinds))

    def xlsx(self, kinds: Iterable[DispenserType]) -> bytes:
        """Return types as a workbook; see ``csv``."""
        from spoutline.documents.tabular.plain_table import table_xlsx
        from spoutline.model.type_columns import TYPE_COLUMNS
        from spoutline.planning.table_intake.into_types import type_cells

        columns = [column.key for column in TYPE_COLUMNS]
        return table_xlsx("Dispenser types", columns, [type_cells(kind) for kind in kinds])

    def demo_table(self) -> Path:
        """Return the table of invented types."""
        from spoutline import assets

        return assets.resources_folder() / "demo" / "dispenser_types.csv"

    def chosen(self, survey: Survey, dispensers: Iterable[str], name: str, *, overrides_too: bool = False) -> Survey:
        """Return the survey with a type of the book chosen for dispensers; none for an empty name.

        With ``overrides_too`` answers of the positions go where the type has one of its own. Raise ``InputFault`` for a
        dispenser or type that is not there, and where answers do not hold together with the type.
        """
        from spoutline.model.dispenser_type import with_dispenser_type
        from spoutline.planning.refit.dispensers import positions_of

        named = tuple(dispensers)
        for dispenser in named:
            positions_of(survey, dispenser)
        kind = self.named(name) if name else None
        try:
            return with_dispenser_type(survey, named, kind, overrides_too=overrides_too)
        except ValidationError as fault:
            raise InputFault(_contradictions(fault, name)) from fault

    def changed(self, survey: Survey) -> tuple[ChangedType, ...]:
        """Return which types of a survey the book knows otherwise now."""
        from spoutline.model.dispenser_type import changed_types

        if all(position.dispenser_type is None for position in survey.positions):
            return ()
        return changed_types(survey, self._book().dispenser_types.known())

    def with_current(self, survey: Survey) -> Survey:
        """Return the survey with the figures that its types have in the book now; own answers of positions stay."""
        from spoutline.model.dispenser_type import with_current_types

        try:
            return with_current_types(survey, self._book().dispenser_types.known())
        except ValidationError as fault:
            raise InputFault(_contradictions(fault, "")) from fault


def _contradictions(fault: ValidationError, name: str) -> tuple[InputProblem, ...]:
    problems = []
    for error in fault.errors(include_url=False):
        context = error.get("ctx") or {}
        wanted = str(context.get("wanted") or error["msg"]).removeprefix("Value error, ")
        field = str(context.get("field") or ".".join(map(str, error["loc"])) or "dispenser type")
        problems.append(InputProblem("", field, str(context.get("value") or repr(name)), wanted))
    return tuple(problems)
