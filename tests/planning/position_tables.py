"""Tables of positions as tests read them: opened as a person opens one, every report raised."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path

from spoutline.model.faults import InputFault
from spoutline.model.survey import DispenserType, Position, Survey
from spoutline.planning.table_intake.column_map import TableMap
from spoutline.planning.table_intake.intake_fields import TableSubject
from spoutline.planning.table_intake.into_draft import OpenedTable, open_supplier_table
from spoutline.planning.table_intake.into_survey import IntoSurvey, PositionsRead, read_positions
from spoutline.planning.table_intake.raw_table import pasted_table
from spoutline.planning.table_intake.table_look import opened_rows
from spoutline.units.accepted import UnitSystem


def opened(
    path: Path, choices: Mapping[str, str] | None = None, system: UnitSystem | None = UnitSystem.SI, **said: object
) -> OpenedTable:
    """Return a table of positions as its titles suggest."""
    given = {"subject": TableSubject.POSITIONS, "units": system, **said}
    return open_supplier_table(path, (), given, choices or {})


def pasted(rows: Sequence[Sequence[str]], system: UnitSystem = UnitSystem.SI) -> OpenedTable:
    """Return pasted rows as their titles suggest."""
    plain = TableMap(subject=TableSubject.POSITIONS, units=system)
    return opened_rows(pasted_table("clipboard", rows), (), plain)


def read(
    table: OpenedTable,
    survey: Survey | None = None,
    template: Position | None = None,
    types: Mapping[str, DispenserType] | None = None,
    *,
    take_out_missing: bool = False,
) -> PositionsRead:
    """Return what a table makes of a survey."""
    into = IntoSurvey(survey=survey, template=template, types=types or {}, take_out_missing=take_out_missing)
    return read_positions(into, table)


def positions_of_table(table: OpenedTable, template: Position | None = None) -> tuple[Position, ...]:
    """Return the positions of a table; raise ``InputFault`` with every report."""
    done = read(table, template=template)
    if not done.report.is_sound:
        raise InputFault(tuple(one.problem() for one in done.report.reports))
    return done.positions
