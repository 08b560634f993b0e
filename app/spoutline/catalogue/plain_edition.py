"""A published edition read from an SQLite book by Python's own library, for a command that asks for little else.

To load SQLAlchemy and put its statements together takes a fifth of a short command. An edition that was opened before
needs it no more: its columns are kept as files, and what planning asks beside them are a few plain queries. What is
asked seldom, and whatever a query fails at, is left to the whole store, which also tells what is wrong.
"""

from __future__ import annotations

import sqlite3
import threading
from collections import defaultdict
from collections.abc import Callable, Mapping, Sequence
from datetime import date
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final, TypeVar
from urllib.parse import quote

from spoutline.catalogue.column_files import ColumnFiles
from spoutline.catalogue.part_assembly import IN_ONE_QUERY, load_parts
from spoutline.catalogue.source_files import fingerprint_of
from spoutline.database.revisions import newest_revision
from spoutline.frozen import frozen
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.catalogue_edition import DEMONSTRATION, CatalogueEdition, EditionRef, folded_catalogue_name
from spoutline.model.part import HANGING_KINDS, Part, PartKind, PartStatus
from spoutline.model.part_ref import PartRef

if TYPE_CHECKING:
    from spoutline.catalogue.store import CatalogueStore
    from spoutline.model.cross_reference import NumberTrace
    from spoutline.model.part_columns import PartColumns

_T = TypeVar("_T")
_WAIT_S: Final = 5.0
_HELD: Final = "catalogue_id = ? AND first_edition <= ? AND last_edition >= ?"


class _Row(sqlite3.Row):
    """A row whose columns are attributes."""

    def __getattr__(self, name: str) -> Any:  # noqa: ANN401  (what the database holds)
        try:
            return self[name]
        except IndexError:
            raise AttributeError(name) from None


@frozen
class _Found:
    """An edition in the tables: what is known of it, the key of its catalogue, its currencies."""

    edition: CatalogueEdition
    catalogue_id: int
    currencies: tuple[str, ...]


class PlainEdition:
    """Reads the described parts of a published edition; implements ``planning.protocols.PartStore``.

    Parts come sorted by number, equal numbers by maker. Methods may be called from several threads.
    """

    def __init__(
        self,
        connection: sqlite3.Connection,
        found: _Found,
        files: ColumnFiles,
        whole: Callable[[EditionRef], CatalogueStore],
    ) -> None:
        self._connection, self._found, self._files, self._open = connection, found, files, whole
        number = found.edition.number
        self._held = (found.catalogue_id, number, number)
        self._columns: dict[PartKind, PartColumns] = {}
        self._known: dict[int, Part] = {}
        self._counted: dict[PartKind, int] | None = None
        self._turns = threading.RLock()

    def close(self) -> None:
        """Let go of the file."""
        with self._turns:
            self._connection.close()

    def edition(self) -> CatalogueEdition:
        """Return the edition that it reads."""
        return self._found.edition

    def currencies(self) -> tuple[str, ...]:
        """Return the currencies in which the catalogue has prices, sorted."""
        return self._found.currencies

    def columns(self, kind: PartKind) -> PartColumns:
        """Return the figures of all parts of a kind that hangs, as columns; always the same object."""
        with self._turns:
            if kind not in self._columns:
                kept = self._files.read(kind, self._found.edition.fingerprint)
                self._columns[kind] = kept if kept is not None else self._whole().columns(kind)
            return self._columns[kind]

    def candidates(self, wanted: CandidateFilter) -> tuple[Part, ...]:
        """Return the parts that pass the filter."""
        condition, values = _conditions(wanted)
        return self._asked(lambda: self._where(condition, *values), lambda store: store.candidates(wanted))

    def count(self, kind: PartKind) -> int:
        """Return how many parts of this kind the catalogue holds."""
        return self._asked(lambda: self._counts()[kind], lambda store: store.count(kind))

    def part(self, ref: PartRef) -> Part | None:
        """Return the part that ``ref`` names; None where there is none, or several have a bare number."""
        found = self.parts((ref,))
        return found[0] if len(found) == 1 else None

    def parts(self, refs: Sequence[PartRef]) -> tuple[Part, ...]:
        """Return every part that one of ``refs`` names: none for an unknown one, several for a shared bare number."""
        return self._asked(lambda: self._read(refs), lambda store: store.parts(refs))

    def under_other_numbers(self, refs: Sequence[PartRef]) -> Mapping[PartRef, Part]:
        """Return the parts that have other numbers: item number, GTIN, an old number of the very part."""
        return self._whole().under_other_numbers(refs)

    def nearest_numbers(self, number: str) -> tuple[str, ...]:
        """Return up to three known numbers close to a mistyped one."""
        return self._whole().nearest_numbers(number)

    def traces(self, asked: PartRef) -> tuple[NumberTrace, ...]:
        """Return every way that an item number, a GTIN or an old number leads to a part of the catalogue."""
        return self._whole().traces(asked)

    def _asked(self, plainly: Callable[[], _T], otherwise: Callable[[CatalogueStore], _T]) -> _T:
        """Return what the plain way finds, or the whole store where that fails."""
        try:
            with self._turns:
                return plainly()
        except sqlite3.Error:
            return otherwise(self._whole())

    def _whole(self) -> CatalogueStore:
        """Return the whole store of this very edition, whatever the book plans with by now."""
        return self._open(self._found.edition.ref)

    def _counts(self) -> dict[PartKind, int]:
        if self._counted is None:
            query = f"SELECT kind, count(*) FROM catalogue_part WHERE {_HELD} GROUP BY kind"  # noqa: S608  (constants)
            counted = dict(self._connection.execute(query, self._held).fetchall())
            self._counted = {kind: counted.get(kind.value, 0) for kind in PartKind}
        return self._counted

    def _read(self, refs: Sequence[PartRef]) -> tuple[Part, ...]:
        makers: dict[str, set[str]] = defaultdict(set)
        for ref in refs:
            makers[ref.number].add(ref.maker)
        numbers = sorted(makers)
        found: list[Part] = []
        for start in range(0, len(numbers), IN_ONE_QUERY):
            chunk = numbers[start : start + IN_ONE_QUERY]
            found += self._where(f"number IN ({_marks(chunk)})", *chunk)
        return tuple(part for part in found if not makers[part.number].isdisjoint(("", part.maker)))

    def _where(self, condition: str, *values: object) -> tuple[Part, ...]:
        query = f"SELECT id FROM catalogue_part WHERE {_HELD} AND {condition}"  # noqa: S608  (values are bound)
        ids = [row[0] for row in self._connection.execute(query, (*self._held, *values))]
        missing = [one for one in ids if one not in self._known]
        if missing:
            self._known |= load_parts(_PlainRows(self._connection), missing)
        return tuple(sorted((self._known[one] for one in ids), key=lambda part: (part.number, part.maker)))


class _PlainRows:
    """Reads rows of an SQLite database; implements ``part_assembly.PartRows``."""

    def __init__(self, connection: sqlite3.Connection) -> None:
        self._connection = connection

    def of(self, table: str, key: str, ids: Sequence[int], order: str = "") -> Sequence[Any]:
        """Return the rows whose ``key`` is one of ``ids``."""
        query = f"SELECT * FROM {table} WHERE {key} IN ({_marks(ids)})"  # noqa: S608  (names are the program's own)
        return self._connection.execute(f"{query} ORDER BY {order}" if order else query, ids).fetchall()


def open_plainly(
    path: Path, named: EditionRef | None, source: Path, columns: Path, whole: Callable[[EditionRef], CatalogueStore]
) -> PlainEdition | None:
    """Open an edition of the book at ``path`` to read; ``named`` is None for the one that the book plans with.

    Return None where the whole store must be opened: tables of another form, *Demonstration* compiled from another
    text than ``source`` has, a draft, an edition that is not there, none of its columns kept in the folder ``columns``.
    Where those of some kinds are kept, others that are asked for later are read, and kept, by the store of that very
    edition, which ``whole`` opens. Raise ``InputFault`` where ``source`` cannot be read.
    """
    try:
        address = f"file:{quote(str(path))}?mode=ro"
        connection = sqlite3.connect(address, uri=True, timeout=_WAIT_S, check_same_thread=False)
    except sqlite3.Error:
        return None
    connection.row_factory = _Row
    files = ColumnFiles(columns)
    try:
        found = _found(connection, named, source)
    except sqlite3.Error:
        found = None
    except BaseException:
        connection.close()
        raise
    if found is not None and any(files.holds(kind, found.edition.fingerprint) for kind in HANGING_KINDS):
        return PlainEdition(connection, found, files, whole)
    connection.close()
    return None


def _found(connection: sqlite3.Connection, named: EditionRef | None, source: Path) -> _Found | None:
    version = connection.execute("SELECT version_num FROM catalogue_version").fetchone()
    if version is None or version[0] != newest_revision(Path(__file__).parent / "migrations"):
        return None
    state = connection.execute("SELECT chosen, demonstration_left_out FROM catalogue_state").fetchone()
    chosen, is_left_out = ("", False) if state is None else (state.chosen, bool(state.demonstration_left_out))
    if not is_left_out and _compiled_from(connection) != fingerprint_of(source):
        return None
    ref = named or (EditionRef.from_text(chosen) if chosen else EditionRef(DEMONSTRATION))
    query = "SELECT id, name, last_edition FROM catalogue_catalogue WHERE folded_name = ?"
    catalogue = connection.execute(query, (folded_catalogue_name(ref.catalogue),)).fetchone()
    if ref.is_draft or catalogue is None or (is_left_out and catalogue.name == DEMONSTRATION):
        return None
    query = "SELECT * FROM catalogue_edition WHERE catalogue_id = ? AND number = ?"
    row = connection.execute(query, (catalogue.id, ref.number or catalogue.last_edition)).fetchone()
    return None if row is None else _Found(_edition(catalogue.name, row), catalogue.id, tuple(row.currencies.split()))


def _compiled_from(connection: sqlite3.Connection) -> str | None:
    query = "SELECT source_fingerprint FROM catalogue_catalogue WHERE name = ?"
    row = connection.execute(query, (DEMONSTRATION,)).fetchone()
    return None if row is None else row[0]


def _edition(catalogue: str, row: Any) -> CatalogueEdition:  # noqa: ANN401  (what the database holds)
    return CatalogueEdition(
        catalogue=catalogue,
        number=row.number,
        title=row.title,
        fingerprint=row.fingerprint,
        published_on=None if row.published_on is None else date.fromisoformat(row.published_on),
        notes=row.notes,
        publisher=row.publisher,
        parts_count=row.parts_count,
        described_count=row.described_count,
    )


def _conditions(wanted: CandidateFilter) -> tuple[str, list[object]]:
    """Return the condition on parts and the values that it binds."""
    bounds: tuple[tuple[str, object], ...] = (
        ("kind = ?", _word(wanted.kind)),
        ("path = ?", _word(wanted.path)),
        ("status = ?", PartStatus.ACTIVE.value if wanted.active_only else None),
        ("temperature_minimum_c <= ?", wanted.temperature_low_c),
        ("temperature_maximum_c >= ?", wanted.temperature_high_c),
        ("id IN (SELECT part_id FROM catalogue_listing WHERE word = ?)", _word(wanted.listing_class)),
        ("id IN (SELECT part_id FROM catalogue_scheme WHERE word = ?)", _word(wanted.scheme)),
    )
    asked = [(condition, value) for condition, value in bounds if value is not None]
    return " AND ".join(condition for condition, _ in asked), [value for _, value in asked]


def _word(term: StrEnum | None) -> str | None:
    return None if term is None else term.value


def _marks(values: Sequence[object]) -> str:
    return ", ".join("?" * len(values))
