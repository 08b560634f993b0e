"""Rows of texts on the clipboard, and whether they begin with titles of questions."""

from __future__ import annotations

import csv
from collections.abc import Iterable, Sequence
from io import StringIO

from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.tables import csv_rows
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded
from spoutline.planning.survey_import.fields import FIELDS, names_of, normal

_CLIPBOARD = "clipboard"
_NAMES = {name: field.key for field in reversed(FIELDS) for name in names_of(field)}


def pasted_rows(text: str) -> list[list[str]]:
    """Return what a spreadsheet puts on the clipboard: rows by line, cells by tabulator, quoted where they need it.

    Raise ``InputFault`` for far more of it than a table of positions has.
    """
    if len(text) > BOUNDS.pasted_characters:
        wanted = Worded(
            "at most {most} characters are pasted; import the table from its file instead",
            most=BOUNDS.pasted_characters,
        )
        raise _fault("text", Worded("{count} characters", count=len(text)), wanted)
    reader = csv.reader(StringIO(text, newline=""), delimiter="\t")
    return _bounded_rows(
        csv_rows(reader, lambda: Worded("{clipboard}, line {line_num}", clipboard=_CLIPBOARD, line_num=reader.line_num))
    )


def has_titles(rows: Sequence[Sequence[str]]) -> bool:
    """Say whether rows begin with titles: at least two of the first are names of fields, one of them the label's."""
    known = {key for title in rows[0] if (key := _NAMES.get(normal(title))) is not None}
    return len(rows) > 1 and "label" in known and len(known) > 1


def _bounded_rows(found: Iterable[list[str]]) -> list[list[str]]:
    rows: list[list[str]] = []
    count = 0
    for cells in found:
        rows.append(cells[: BOUNDS.table_columns])
        count += len(rows[-1])
        if any(len(text) > BOUNDS.cell_characters for text in rows[-1]):
            wanted = Worded("a cell of at most {most} characters is read", most=BOUNDS.cell_characters)
            raise _fault(Worded("row {count}, cell", count=len(rows)), "a far too long text", wanted)
        for found_count, most, what in (
            (count, BOUNDS.table_cells, "cells"),
            (len(rows), BOUNDS.table_rows, "rows"),
        ):
            if found_count > most:
                raise _fault(
                    what,
                    Worded("more than {most}", most=most),
                    Worded("at most {most} {what} are read", most=most, what=what),
                )
    return rows


def _fault(field: str, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(_CLIPBOARD, field, value, wanted),))
