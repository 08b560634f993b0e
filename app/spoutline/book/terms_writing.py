"""Terms of a quotation written as TOML: exact, in one order, over a person's own file without losing its comments."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from datetime import date
from decimal import Decimal
from enum import Enum
from typing import TYPE_CHECKING, TypeAlias

from pydantic import BaseModel

from spoutline.model.part_ref import PartRef
from spoutline.model.quotation_terms import Terms
from spoutline.model.usual_terms import UsualTerms

if TYPE_CHECKING:
    from tomlkit.container import Container
    from tomlkit.items import AoT, Array, Item, String, Table

COMPLETE = "complete"  # a file with this key set says everything itself: the usual terms add nothing to it

Plain: TypeAlias = "str | bool | int | Decimal | date | list[Plain] | dict[str, Plain]"

_ALWAYS = ("format", "version", "currency", "options")
_HEAD = {
    True: "Terms of a quotation. They are complete: the usual terms add nothing to this file.",
    False: "Usual terms: what every quotation takes from here where its own terms say nothing.",
}
_SHORT_ARRAY = 60  # characters in one line
_SHARED_HEADING = ("valid_days", "prepared_by", "exclusions", "conditions")
_UNSHARED = ("format", "version", "customer", "heading", "options", "overrides", "alternates")


def terms_to_toml(terms: Terms, over: str = "") -> str:
    """Return terms as the text of a file that says everything itself.

    A table that is as it is without a word is left out. Reading the text gives equal terms, whatever the usual terms.

    Parameters
    ----------
    terms
        The terms of one quotation.
    over
        Text of the file that is replaced: comments beside what did not change stay, and so does the order. A text
        that is no TOML is replaced as a whole.
    """
    return _written({COMPLETE: True, **_plain_of(terms)}, over, is_complete=True)


def usual_to_toml(usual: UsualTerms, over: str = "") -> str:
    """Return usual terms as the text of their file.

    Parameters
    ----------
    usual
        What quotations share.
    over
        Text of the file that is replaced: what quotations do not share (customer, number, options) stays as it is
        there, and so do comments beside what did not change.
    """
    wanted = _plain_of(usual)
    wanted.pop("options", None)
    old = _parsed(over)
    kept = {name: value for name, value in old.items() if name in _UNSHARED}
    heading, new_heading = old.get("heading", {}), wanted.get("heading", {})
    if isinstance(heading, dict) and isinstance(new_heading, dict):
        others = {name: value for name, value in heading.items() if name not in _SHARED_HEADING}
        kept["heading"] = others | new_heading
    if not kept.get("heading"):
        kept.pop("heading", None)
    return _written(wanted | kept, over, is_complete=False)


def _written(wanted: dict[str, Plain], over: str, *, is_complete: bool) -> str:
    """Return the text of a plain document; over the old text where the library manages it to the last value."""
    import tomlkit
    from tomlkit.exceptions import TOMLKitError

    if over.strip():
        try:
            document = tomlkit.parse(over)
            _update(document, _parsed(over), wanted)
            text = tomlkit.dumps(document)
            if _parsed(text) == wanted:
                return text
        except (TOMLKitError, ValueError):
            pass  # the file is odd enough for the library to give up: it is written anew
    document = tomlkit.document()
    document.add(tomlkit.comment(_HEAD[is_complete]))
    _update(document, {}, wanted)
    return tomlkit.dumps(document)


def _plain_of(terms: Terms | UsualTerms) -> dict[str, Plain]:
    """Return terms as plain values, scalars first as TOML asks; what says nothing new is left out."""
    found: dict[str, Plain] = {}
    for name, field in type(terms).model_fields.items():
        value = getattr(terms, name)
        if value is not None and (name in _ALWAYS or value != field.default):
            found[name] = _plain(value)
    return dict(sorted(found.items(), key=lambda pair: _is_table(pair[1])))


def _plain(value: object) -> Plain:
    match value:
        case BaseModel():
            return {
                name: _plain(inner)
                for name, field in type(value).model_fields.items()
                if not _is_silent(inner := getattr(value, name), field.default)
            }
        case PartRef():
            return {"maker": value.maker, "number": value.number} if value.maker else value.number
        case Enum():
            return str(value.value)
        case str() | int() | Decimal() | date():
            return value
        case tuple():
            return [_plain(one) for one in value]
    raise TypeError(f"{type(value).__name__} has no place in a terms file")


def _is_silent(value: object, default: object) -> bool:
    """Say whether a field of a table that stands is left out: it is empty, and empty is what its absence means."""
    return value is None or (value in ("", ()) and value == default)


def _is_table(value: Plain) -> bool:
    return isinstance(value, dict) or _is_tables(value)


def _is_tables(value: Plain) -> bool:
    return isinstance(value, list) and bool(value) and all(isinstance(one, dict) for one in value)


def _parsed(text: str) -> dict[str, Plain]:
    """Return a text as plain values; nothing where it is no TOML."""
    try:
        return tomllib.loads(text, parse_float=Decimal)
    except (ValueError, ArithmeticError, RecursionError):
        return {}


def _update(place: Container | Table, old: Mapping[str, Plain], wanted: Mapping[str, Plain]) -> None:
    """Bring a document or table from ``old`` to ``wanted``; an equal value keeps its spelling and comment."""
    for name in old:
        if name not in wanted:
            place.remove(name)
    for name, value in wanted.items():
        before = old.get(name)
        if name in old and before == value and type(before) is type(value):
            continue
        if isinstance(before, dict) and isinstance(value, dict):
            _update(place[name], before, value)
        elif before is not None and _is_tables(before) and _is_tables(value):
            _update_rows(place[name], before, value)  # type: ignore[arg-type]
        elif before is not None and not _is_table(before) and not _is_table(value):
            _replace(place, name, value)
        else:
            if before is not None:
                place.remove(name)
            _add(place, name, value)


def _update_rows(rows: AoT, old: list[dict[str, Plain]], wanted: list[dict[str, Plain]]) -> None:
    """Bring a list of tables to what is wanted; a table that stays, stays with its comments."""
    present = list(rows)
    unused = {at: row for at, row in enumerate(old) if row not in wanted}
    equal = {at: row for at, row in enumerate(old) if row in wanted}
    found: list[Table] = []
    for at, row in enumerate(wanted):
        twin = next((place for place, one in equal.items() if one == row), None)
        if twin is not None:
            del equal[twin]
            found.append(present[twin])
            continue
        alike = _alike(row, at, unused)
        if alike is None:
            found.append(_table(row))
        else:
            _update(present[alike], unused.pop(alike), row)
            found.append(present[alike])
    del rows[:]
    rows.extend(found)


def _alike(row: dict[str, Plain], at: int, others: Mapping[int, dict[str, Plain]]) -> int | None:
    """Return the place of the row that this one was: one with the same name first, else the one in its place."""
    name = next(iter(row.items()))
    namesake = next((place for place, other in others.items() if name in other.items()), None)
    return namesake if namesake is not None else at if at in others else None


def _add(place: Container | Table, name: str, value: Plain) -> None:
    """Add a value behind the last one; comments that follow it belong to what comes next and stay there."""
    from tomlkit.items import Comment, Whitespace
    from tomlkit.items import Table as TableItem

    body = place.value.body if isinstance(place, TableItem) else []
    tail: list[Comment | Whitespace] = []
    while body and isinstance(last := body[-1][1], Comment | Whitespace):
        tail.insert(0, last)
        body.pop()
    place.add(name, _item(value))
    for item in tail:
        place.add(item)


def _replace(place: Container | Table, name: str, value: Plain) -> None:
    """Write another value in the place of one; the comment after it stays."""
    from tomlkit.items import Item as AnyItem

    item, old = _item(value), place[name]
    if isinstance(old, AnyItem):
        item.trivia.comment_ws, item.trivia.comment = old.trivia.comment_ws, old.trivia.comment
    place[name] = item


def _item(value: Plain) -> Item:
    import tomlkit

    if isinstance(value, dict):
        return _table(value)
    if _is_tables(value):
        rows = tomlkit.aot()
        for row in value:  # type: ignore[union-attr]
            rows.append(_table(row))  # type: ignore[arg-type]
        return rows
    if isinstance(value, list):
        return _array(value)
    if isinstance(value, Decimal):
        return tomlkit.value(format(value.copy_abs() if value == 0 else value, "f"))
    if isinstance(value, str):
        return _string(value)
    return tomlkit.item(value)


def _table(values: Mapping[str, Plain]) -> Table:
    import tomlkit

    table = tomlkit.table()
    for name, value in sorted(values.items(), key=lambda pair: _is_table(pair[1])):
        table.add(name, _item(value))
    return table


def _array(values: list[Plain]) -> Array:
    import tomlkit

    array = tomlkit.array()
    for value in values:
        array.append(_item(value))
    array.multiline(sum(len(str(value)) for value in values) > _SHORT_ARRAY)
    return array


def _string(text: str) -> String:
    """Return a text in quotes; one of several lines keeps them where TOML would not alter its line breaks."""
    import tomlkit

    keeps_lines = "\n" in text and "\r" not in text and not text.startswith("\n")
    return tomlkit.string(text, multiline=keeps_lines)
