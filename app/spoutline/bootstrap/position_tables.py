"""Tables of positions taken into surveys: what they would change, and the survey after it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from spoutline.bootstrap.dispenser_types import DispenserTypeService
    from spoutline.bootstrap.table_maps import TableMaps
    from spoutline.planning.table_intake.column_map import TableMap
    from spoutline.planning.table_intake.intake import Progress
    from spoutline.planning.table_intake.into_draft import OpenedTable
    from spoutline.planning.table_intake.into_survey import IntoSurvey, PositionsRead
    from spoutline.planning.table_intake.table_look import TableLook
    from spoutline.units.accepted import UnitSystem


class PositionTableService:
    """Tables of positions. Methods may be called from several threads; a survey is a value, nothing is written."""

    def __init__(self, maps: TableMaps, types: Callable[[], DispenserTypeService]) -> None:
        self.maps = maps
        self._types = types

    def plain_map(self, units: UnitSystem) -> TableMap:
        """Return the map of a table of positions of which nothing is known but whose units its bare numbers have."""
        from spoutline.planning.table_intake.column_map import TableMap
        from spoutline.planning.table_intake.intake_fields import TableSubject

        return TableMap(subject=TableSubject.POSITIONS, units=units)

    def read(self, into: IntoSurvey, opened: OpenedTable, progress: Progress | None = None) -> PositionsRead:
        """Return the positions that a table makes of a survey; see ``read_positions``."""
        from spoutline.planning.table_intake.into_survey import read_positions

        return read_positions(self._with_types(into, opened), opened, progress)

    def look(self, into: IntoSurvey, opened: OpenedTable, progress: Progress | None = None) -> TableLook:
        """Return what a table would change, and how its cells are read; raise as ``read`` does."""
        from spoutline.planning.table_intake.into_survey import read_positions
        from spoutline.planning.table_intake.table_look import look_through

        known = self._with_types(into, opened)
        return look_through(opened, lambda seen: read_positions(known, opened, progress, seen=seen).result, progress)

    def _with_types(self, into: IntoSurvey, opened: OpenedTable) -> IntoSurvey:
        """Let rows name the types of the book; it is not opened for a table that names none."""
        from spoutline.model.dispenser_type import folded_type_name
        from spoutline.planning.table_intake.intake_fields import DISPENSER_TYPE

        if all(one.field is None or one.field.key != DISPENSER_TYPE for one in opened.mapping):
            return into
        return replace(into, types={folded_type_name(one.name): one for one in self._types().all()})
