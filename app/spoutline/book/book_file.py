"""What lies at the path of a book: looked at without changing a byte, told as what it is."""

from __future__ import annotations

import contextlib
import sqlite3
from collections.abc import Iterator
from enum import StrEnum
from pathlib import Path
from urllib.parse import quote

from spoutline.database.file_watch import APPLICATION_ID
from spoutline.database.raw_header import first_bytes
from spoutline.frozen import frozen
from spoutline.model.faults import BusyStore, DamagedStore
from spoutline.model.worded import Worded

_HEADER = b"SQLite format 3\x00"  # https://www.sqlite.org/fileformat2.html#the_database_header
_HEADER_BYTES = 100
_OWN_TABLES = frozenset({"book_version", "catalogue_version"})
_BUSY_MS = 5_000
# checked page by page at each start, which takes a quarter of a second; a larger book only when it is backed up
THOROUGH_UP_TO_BYTES = 64 * 2**20


class FileKind(StrEnum):
    """What a file is."""

    BOOK = "book"
    NEW = "new"  # no file, or a database without any table: a book may begin there
    EMPTY = "empty"
    CUT_OFF = "cut_off"
    DAMAGED = "damaged"
    FOREIGN = "foreign"
    OTHER_DATABASE = "other_database"


@frozen(kw_only=True)
class FileReport:
    """What was found at a path. ``detail`` is for a person; the counts are 0 where there is no book."""

    path: Path
    kind: FileKind
    detail: str
    size_bytes: int = 0
    book_revision: str = ""
    catalogue_revision: str = ""
    surveys: int = 0
    quotations: int = 0

    @property
    def is_usable(self) -> bool:
        """Whether the program may work with the file."""
        return self.kind in (FileKind.BOOK, FileKind.NEW)


def inspect_file(path: Path, *, thorough: bool = True) -> FileReport:
    """Return what lies at ``path``; ``thorough`` reads every page. Raise ``BusyStore`` where it is locked."""
    try:
        size = path.stat().st_size
        header = first_bytes(path, _HEADER_BYTES)
    except FileNotFoundError:
        return FileReport(path=path, kind=FileKind.NEW, detail="there is no file")
    except OSError as fault:
        return FileReport(
            path=path,
            kind=FileKind.DAMAGED,
            detail=Worded("it cannot be read ({reason})", reason=fault.strerror or fault),
        )
    if size == 0:
        return FileReport(path=path, kind=FileKind.EMPTY, detail="it is empty: 0 bytes")
    if not header.startswith(_HEADER):
        is_cut = size < len(_HEADER) and _HEADER.startswith(header)
        kind, detail = (
            (FileKind.CUT_OFF, Worded("it ends after {size} bytes", size=size))
            if is_cut
            else (FileKind.FOREIGN, "it is no database: its first bytes are those of another kind of file")
        )
        return FileReport(path=path, kind=kind, detail=detail, size_bytes=size)
    missing = _missing_bytes(path, header, size)
    if missing:
        detail = Worded(
            "it is cut off: {missing} of {size} bytes are missing at its end", missing=missing, size=size + missing
        )
        return FileReport(path=path, kind=FileKind.CUT_OFF, detail=detail, size_bytes=size)
    return _looked_into(path, size, thorough=thorough)


def check_usable(path: Path) -> FileReport:
    """Return what lies at ``path``; raise ``DamagedStore`` where the program must keep its hands off it."""
    with contextlib.suppress(FileNotFoundError):
        thorough = path.stat().st_size <= THOROUGH_UP_TO_BYTES
        report = inspect_file(path, thorough=thorough)
        if not report.is_usable:
            raise damaged(report)
        return report
    return inspect_file(path)


def damaged(report: FileReport) -> DamagedStore:
    """Return the fault for a file that is no sound book."""
    if report.kind in (FileKind.FOREIGN, FileKind.OTHER_DATABASE):
        wanted = "Name another file: this one is not the program's own."
    else:
        wanted = "Restore a backup (`spoutline book restore`, or Survey > Backups in the window)"
        wanted += ", or move the file away to begin a new book." if report.kind is FileKind.EMPTY else "."
    return DamagedStore(
        Worded(
            "The database {path} cannot be used: {reason}. It was left as it is, byte for byte. {wanted}",
            path=report.path,
            reason=report.detail,
            wanted=wanted,
        )
    )


@contextlib.contextmanager
def reading(path: Path) -> Iterator[sqlite3.Connection]:
    """Open a database to read; the file itself is never written."""
    connection = sqlite3.connect(f"file:{quote(str(path))}?mode=ro", uri=True, timeout=_BUSY_MS / 1000)
    try:
        yield connection
    finally:
        connection.close()


def _missing_bytes(path: Path, header: bytes, size: int) -> int:
    """Return how many bytes the header counts beyond the end of the file; 0 where a log may hold them."""
    if len(header) < _HEADER_BYTES:
        return _HEADER_BYTES - size
    with contextlib.suppress(OSError):
        if path.with_name(path.name + "-wal").stat().st_size > 0:
            return 0
    grown = size
    with contextlib.suppress(OSError):  # measured after the log is gone: what it held is in the file by now
        grown = path.stat().st_size
    page = int.from_bytes(header[16:18], "big")
    pages = int.from_bytes(header[28:32], "big")
    is_counted = header[24:28] == header[92:96]  # else an old program wrote last, and the count is not kept
    return max(0, (65_536 if page == 1 else page) * pages - grown) if is_counted else 0


def _looked_into(path: Path, size: int, *, thorough: bool) -> FileReport:
    try:
        with reading(path) as connection:
            return _report(connection, path, size, thorough=thorough)
    except sqlite3.DatabaseError as fault:
        code = int(getattr(fault, "sqlite_errorcode", 0) or 0) & 0xFF
        if code in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
            raise BusyStore(
                Worded("The database {path} does not answer for now: {reason}.", path=path, reason=fault)
            ) from fault
        if code in (sqlite3.SQLITE_READONLY, sqlite3.SQLITE_PERM):  # a log needs a folder that may be written
            from spoutline.database.faults import store_fault  # brings SQLAlchemy, which a start does without

            raise store_fault(fault, str(path)) from fault
        return FileReport(
            path=path, kind=FileKind.DAMAGED, detail=Worded("it is damaged ({reason})", reason=fault), size_bytes=size
        )


def _report(connection: sqlite3.Connection, path: Path, size: int, *, thorough: bool) -> FileReport:
    tables = {str(name) for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    own_mark = connection.execute("PRAGMA application_id").fetchone()[0] == APPLICATION_ID
    if not tables:
        return FileReport(path=path, kind=FileKind.NEW, detail="it holds no table yet", size_bytes=size)
    if not tables & _OWN_TABLES and not own_mark:
        named = ", ".join(sorted(tables)[:4])
        detail = Worded("it is the database of another program (its tables: {named})", named=named)
        return FileReport(path=path, kind=FileKind.OTHER_DATABASE, detail=detail, size_bytes=size)
    if thorough:
        faults = [str(line) for (line,) in connection.execute("PRAGMA integrity_check(3)")]
        if faults != ["ok"]:
            detail = Worded("it is damaged ({faults})", faults="; ".join(" ".join(fault.split()) for fault in faults))
            return FileReport(path=path, kind=FileKind.DAMAGED, detail=detail, size_bytes=size)
    return FileReport(
        path=path,
        kind=FileKind.BOOK,
        detail="every page of it is sound" if thorough else "it opens",
        size_bytes=size,
        book_revision=_single(connection, "book_version", tables, "SELECT version_num FROM book_version"),
        catalogue_revision=_single(
            connection, "catalogue_version", tables, "SELECT version_num FROM catalogue_version"
        ),
        surveys=int(
            _single(connection, "surveys", tables, "SELECT count(*) FROM surveys WHERE removed_at IS NULL") or 0
        ),
        quotations=int(_single(connection, "quotations", tables, "SELECT count(*) FROM quotations") or 0),
    )


def _single(connection: sqlite3.Connection, table: str, tables: set[str], query: str) -> str:
    row = connection.execute(query).fetchone() if table in tables else None
    return "" if row is None else str(row[0])
