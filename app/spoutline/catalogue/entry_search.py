"""Entries of an edition found as somebody types: exact numbers first, then beginnings of numbers, then words.

SQLite looks in ``catalogue_find``, a full-text table (FTS5) over the tokens in ``catalogue_entry.search_text`` that
triggers keep in step; PostgreSQL in its own text search over the same tokens. Old numbers are looked up by their index.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from enum import IntEnum
from itertools import chain
from typing import Any, Final

from sqlalchemy import ColumnElement, Connection, Select, and_, collate, func, select, text

from spoutline.catalogue.editions import OpenedEdition, held_by
from spoutline.catalogue.entry_text import entry_from_text
from spoutline.catalogue.search_words import JOINING, PIECE, WHOLE, Typed, is_token, narrowing, typed
from spoutline.catalogue.tables import OPEN, CrossReferenceRow, EntryRow
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.cross_reference import folded_number
from spoutline.model.part import PartKind

MOST_ORDERED: Final = 1_000  # entries that are put in order and counted; of more, those that were entered first
_LAST_SIGN: Final = "\U0010ffff"
_FIND: Final = {
    "sqlite": text(
        "SELECT e.id, e.number, e.maker FROM catalogue_find AS f CROSS JOIN catalogue_entry AS e ON e.id = f.rowid "
        "WHERE f.catalogue_find MATCH :asked AND e.first_edition <= :at AND e.last_edition >= :at "
        "ORDER BY f.rowid LIMIT :most"
    ),
    "postgresql": text(
        "SELECT id, number, maker FROM catalogue_entry "
        "WHERE array_to_tsvector(string_to_array(search_text, ' ')) @@ CAST(:asked AS tsquery) "
        "AND first_edition <= :at AND last_edition >= :at ORDER BY id LIMIT :most"
    ),
}


class _Closeness(IntEnum):
    EXACT = 0
    NUMBER = 1  # a number begins so
    WORDS = 2


@frozen
class FoundEntries:
    """The keys of entries in the order in which they are told; ``is_all`` is false where there are more."""

    ids: tuple[int, ...]
    is_all: bool


@frozen
class _Narrowed:
    """Which entries of which edition come into question."""

    opened: OpenedEdition
    described: bool | None
    kind: PartKind | None

    @property
    def held(self) -> tuple[ColumnElement[bool], ...]:
        conditions = held_by(EntryRow, self.opened.catalogue_id, self.opened.at)
        if self.described is not None:
            conditions += (EntryRow.is_described == self.described,)
        return conditions if self.kind is None else (*conditions, EntryRow.kind == self.kind.value)


def find_entries(
    connection: Connection,
    opened: OpenedEdition,
    asked: str,
    described: bool | None = None,
    kind: PartKind | None = None,
) -> FoundEntries:
    """Return the entries that are known by what somebody typed.

    Every word of it begins a word of the entry's name, maker or supplier, or a piece of one of its numbers; or the
    whole begins one of its numbers or an old number that leads to it. Capitals, accents and, in numbers, signs do not
    count. A text without a letter or digit finds nothing.
    """
    looked_for = typed(asked)
    if not looked_for.words:
        return FoundEntries((), is_all=True)
    among = _Narrowed(opened, described, kind)
    found: dict[int, tuple[int, str, str]] = {}
    steps = (
        (_Closeness.EXACT, chain(_matching(connection, among, _exactly(looked_for)), _old(connection, among, asked))),
        (_Closeness.NUMBER, _matching(connection, among, _beginning(looked_for))),
        (_Closeness.NUMBER, _old(connection, among, asked, begins=True)),
        (_Closeness.WORDS, _matching(connection, among, _worded(looked_for))),
    )
    for closeness, rows in steps:
        for key, number, maker in rows:
            found.setdefault(key, (closeness, number, maker))
        if len(found) > MOST_ORDERED:
            break
    ids = sorted(found, key=found.__getitem__)
    return FoundEntries(tuple(ids[:MOST_ORDERED]), is_all=len(ids) <= MOST_ORDERED)


# an expression is made of tokens alone, in alternatives of which one must be there: (token, whether more may follow)
_Expression = tuple[tuple[tuple[str, bool], ...], ...]


def _exactly(asked: Typed) -> _Expression:
    return (((WHOLE + asked.number, False),),)


def _beginning(asked: Typed) -> _Expression:
    return (((WHOLE + asked.number, True),),)


def _worded(asked: Typed) -> _Expression:
    numbers = ["".join(sign for sign in word if sign not in JOINING) for word in asked.words]
    found: _Expression = tuple(
        ((word, True), (PIECE + number, True)) for word, number in zip(asked.words, numbers, strict=True)
    )
    if len(asked.words) == 1:
        return found
    whole = (PIECE + asked.number, True)
    return tuple((*alternatives, whole) for alternatives in found)  # (a or n) and (b or n) is (a and b) or n


def _matching(connection: Connection, among: _Narrowed, expression: _Expression) -> Iterator[tuple[int, str, str]]:
    only = narrowing(among.opened.catalogue_id, among.described, among.kind)
    whole: _Expression = (*expression, *(((token, False),) for token in only))
    dialect = connection.dialect.name
    written = _fts5(whole) if dialect == "sqlite" else _tsquery(whole)
    values = {"asked": written, "at": among.opened.at, "most": MOST_ORDERED + 1}
    yield from map(_plainly, connection.execute(_FIND[dialect], values))


def _plainly(row: Any) -> tuple[int, str, str]:  # noqa: ANN401  (a row of three columns)
    key, number, maker = row
    return key, number, maker


def _fts5(expression: _Expression) -> str:
    return " AND ".join(
        "(" + " OR ".join(f'"{_safe(token)}"{"*" if begins else ""}' for token, begins in alternatives) + ")"
        for alternatives in expression
    )


def _tsquery(expression: _Expression) -> str:
    return " & ".join(
        "(" + " | ".join(f"'{_safe(token)}'{':*' if begins else ''}" for token, begins in alternatives) + ")"
        for alternatives in expression
    )


def _safe(token: str) -> str:
    if not is_token(token):
        raise ValueError(token)
    return token


def _old(
    connection: Connection, among: _Narrowed, asked: str, *, begins: bool = False
) -> Iterator[tuple[int, str, str]]:
    """Yield the entries to which an old number leads, over further old numbers where need be."""
    folded = folded_number(asked)
    if not folded:
        return
    references = CrossReferenceRow
    column: Any = references.folded_number
    if connection.dialect.name == "postgresql":
        column = collate(column, "C")
    named = and_(column >= folded, column < folded + _LAST_SIGN) if begins else references.folded_number == folded
    held = held_by(references, among.opened.catalogue_id, among.opened.at)
    leading = select(references.part_number, references.part_maker).where(*held)
    ways = leading.where(named).cte("ways", recursive=True)
    on_the_way = and_(references.number == ways.c.part_number, references.maker == ways.c.part_maker)
    ways = ways.union(leading.where(on_the_way))
    ended = and_(EntryRow.number == ways.c.part_number, EntryRow.maker == ways.c.part_maker)
    query = select(EntryRow.id, EntryRow.number, EntryRow.maker).join(ways, ended).where(*among.held)
    yield from map(_plainly, connection.execute(query.order_by(EntryRow.id).limit(MOST_ORDERED + 1)))


def contents_of(connection: Connection, ids: Sequence[int]) -> tuple[str, ...]:
    """Return the contents of some thousand entries, in the order of their keys as given."""
    query = select(EntryRow.id, EntryRow.content).where(EntryRow.id.in_(ids))
    contents = {row.id: row.content for row in connection.execute(query)}
    return tuple(contents[key] for key in ids)


def first_entries(
    connection: Connection, opened: OpenedEdition, described: bool | None, limit: int
) -> Iterator[CatalogueEntry]:
    """Yield at least the first ``limit`` entries of an edition by number and maker."""
    if opened.edition.number is None:  # a draft: its index lists both sorts in this order, each for itself
        wanted = (True, False) if described is None else (described,)
        at_end = (EntryRow.catalogue_id == opened.catalogue_id, EntryRow.last_edition == OPEN)
        queries = [_listed(*at_end, EntryRow.is_described == one) for one in wanted]
    else:  # walks along the numbers: as good as all that a number ever had is held or was not long ago
        own, at = EntryRow.catalogue_id == opened.catalogue_id, opened.at
        held = (own, EntryRow.first_edition + 0 <= at, EntryRow.last_edition + 0 >= at)
        queries = [_listed(*held, *(() if described is None else (EntryRow.is_described == described,)))]
    rows = [row for query in queries for row in connection.execute(query.limit(limit))]
    for row in sorted(rows, key=lambda row: (row.number, row.maker)):
        yield entry_from_text(row.content)


def _listed(*conditions: ColumnElement[bool]) -> Select[str, str, str]:
    query = select(EntryRow.number, EntryRow.maker, EntryRow.content).where(*conditions)
    return query.order_by(EntryRow.number, EntryRow.maker)


def count_entries(connection: Connection, opened: OpenedEdition, described: bool | None) -> int:
    """Return how many entries an edition has."""
    edition = opened.edition
    if edition.number is not None:
        rest = edition.parts_count - edition.described_count
        return edition.parts_count if described is None else edition.described_count if described else rest
    query = select(func.count()).where(EntryRow.catalogue_id == opened.catalogue_id, EntryRow.last_edition == OPEN)
    if described is not None:
        query = query.where(EntryRow.is_described == described)
    return connection.execute(query).scalar_one()
