"""Which row of a table gives the titles, and what stands above it."""

from __future__ import annotations

from collections.abc import Sequence

from spoutline.planning.survey_import.fields import FIELDS, names_of, normal

_LOOKED_AT = 15  # rows; a table begins below no longer heading
_ENOUGH = 2  # titles that name a field make a row of titles; one may be chance

_NAMES = {name: field.key for field in FIELDS for name in names_of(field)}


def title_place(rows: Sequence[Sequence[str]]) -> int:
    """Return which row gives the titles: of the first rows the one that names most fields, else the very first."""
    looked_at = rows[: min(_LOOKED_AT, len(rows) - 1)]
    named = [len({_NAMES[name] for cell in cells if (name := normal(cell)) in _NAMES}) for cells in looked_at]
    return named.index(max(named)) if named and max(named) >= _ENOUGH else 0


def heads_over(titles: Sequence[str], above: Sequence[str]) -> tuple[str, ...]:
    """Return what the row above says over each title; a cell over several titles fills only the first of them."""
    found, head = [], ""
    for column in range(len(titles)):
        head = (above[column] if column < len(above) else "") or head
        found.append(head)
    return tuple(found)
