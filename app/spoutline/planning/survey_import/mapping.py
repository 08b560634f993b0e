"""Which column answers which question: suggested from the titles, corrected by the person."""

from __future__ import annotations

import difflib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from spoutline.model.faults import InputFault, InputProblem
from spoutline.planning.survey_import.fields import BY_KEY, FIELDS, ImportField, names_of, normal, unit_in
from spoutline.planning.survey_import.sheet import Sheet, column_name

_ALIKE = 0.86  # of a title and a field's word: a letter or two mistyped, no more


@dataclass(frozen=True, slots=True)
class ColumnMapping:
    """One column of a sheet; ``field`` None leaves it out. ``unit`` holds for cells that carry none."""

    column: int
    title: str
    field: ImportField | None
    unit: str


def suggested(sheet: Sheet) -> tuple[ColumnMapping, ...]:
    """Return the mapping that the titles suggest, each field once, exact names before mistyped ones."""
    titles = [normal(title) for title in sheet.titles]
    under = [normal(f"{head} {title}") for head, title in zip(sheet.heads, titles, strict=True)]
    taken: dict[int, ImportField] = {}
    free = list(FIELDS)
    for find, names in ((_exact, under), (_exact, titles), (_near, titles)):
        for column, title in enumerate(names):
            field = find(title, free) if title and column not in taken else None
            if field is not None:
                taken[column] = field
                free.remove(field)
    return tuple(
        ColumnMapping(column, title, taken.get(column), unit_in(title)) for column, title in enumerate(sheet.titles)
    )


def has_titles(rows: Sequence[Sequence[str]]) -> bool:
    """Say whether rows begin with titles: at least two of the first are names of fields, one of them the label's."""
    known = [field.key for title in rows[0] if (field := _exact(normal(title), list(FIELDS))) is not None]
    return len(rows) > 1 and "label" in known and len(set(known)) > 1


def corrected(mapping: tuple[ColumnMapping, ...], choices: Mapping[str, str], place: str) -> tuple[ColumnMapping, ...]:
    """Return ``mapping`` with a person's corrections: a column's letters or title to a field, or to nothing.

    A field given to one column is taken away from any other. Raise ``InputFault`` for columns and fields that are not
    there, with the nearest known name.
    """
    problems: list[InputProblem] = []
    chosen: dict[int, ImportField | None] = {}
    for name, key in choices.items():
        columns = [one.column for one in mapping if name in (column_name(one.column), one.title)]
        if len(columns) != 1:
            known = ", ".join(f"{column_name(one.column)} ({one.title})" for one in mapping)
            problems.append(InputProblem(place, "mapping, column", repr(name), f"name one column of: {known}"))
        elif key and key not in BY_KEY:
            near = difflib.get_close_matches(key, BY_KEY, n=1)
            hint = f"did you mean {near[0]}? " if near else ""
            wanted = f"{hint}use one of: {', '.join(BY_KEY)}"
            problems.append(InputProblem(place, "mapping, field", repr(key), wanted))
        else:
            chosen[columns[0]] = BY_KEY[key] if key else None
    if problems:
        raise InputFault(tuple(problems))
    given = {field for field in chosen.values() if field is not None}
    return tuple(ColumnMapping(one.column, one.title, _after(one, chosen, given), one.unit) for one in mapping)


def _after(one: ColumnMapping, chosen: Mapping[int, ImportField | None], given: set[ImportField]) -> ImportField | None:
    if one.column in chosen:
        return chosen[one.column]
    return None if one.field in given else one.field


def _exact(title: str, free: list[ImportField]) -> ImportField | None:
    return next((field for field in free if title in names_of(field)), None)


def _near(title: str, free: list[ImportField]) -> ImportField | None:
    scored = [
        (max(difflib.SequenceMatcher(None, title, name).ratio() for name in names_of(field)), -number, field)
        for number, field in enumerate(free)
    ]
    best = max(scored, default=None, key=lambda one: one[:2])
    return best[2] if best is not None and best[0] >= _ALIKE else None
