"""Backups of an SQLite book: made with SQLite's own backup while people work, verified by opening, kept in rotation.

They lie in a folder beside the book, ``NAME.backups``. Rotation touches daily ones only: the newest of each of the last
seven days with one, and of each of the last four weeks. Those before a migration or a restore stay, the newest five of
each; those that a person asked for stay until somebody deletes them.
"""

from __future__ import annotations

import contextlib
import os
import re
import secrets
import shutil
import sqlite3
from datetime import UTC, datetime
from enum import StrEnum
from pathlib import Path

from spoutline.book.book_file import FileKind, FileReport, damaged, inspect_file, reading
from spoutline.book.survey_text import survey_from_json
from spoutline.frozen import frozen
from spoutline.model.faults import BusyStore, DamagedStore, InputFault, InputProblem, StoreFault
from spoutline.model.worded import Worded

_DAYS, _WEEKS, _KEPT_BEFORE = 7, 4, 5
_PAGES_AT_A_TIME = 512  # a writer gets its turn between two portions
_SIDE_FILES = ("-wal", "-shm", "-journal")
_NAME = re.compile(r"(\d{8}T\d{6}Z)-([a-z-]+?)(?:-(\d+))?\.sqlite3")
_STAMP = "%Y%m%dT%H%M%SZ"


class BackupReason(StrEnum):
    """Why a backup was made."""

    DAILY = "daily"
    ASKED = "asked"
    BEFORE_MIGRATION = "before-migration"
    BEFORE_RESTORE = "before-restore"


@frozen(kw_only=True)
class Backup:
    """One backup; ``made_at`` is in UTC."""

    path: Path
    made_at: datetime
    reason: BackupReason
    size_bytes: int


@frozen(kw_only=True)
class Restored:
    """What a restore did: the backup that is the book now, and where the file that lay there went, if one did."""

    backup: Path
    set_aside: Path | None
    report: FileReport


def backup_folder(book: Path) -> Path:
    """Return the folder of a book's backups."""
    return book.with_name(f"{book.name}.backups")


def backups_of(book: Path) -> tuple[Backup, ...]:
    """Return the backups of a book, newest first."""
    found = []
    with contextlib.suppress(OSError):
        for path in backup_folder(book).iterdir():
            named = _NAME.fullmatch(path.name)
            if named is not None and named[2] in tuple(BackupReason):
                made_at = datetime.strptime(named[1], _STAMP).replace(tzinfo=UTC)
                found.append(
                    Backup(path=path, made_at=made_at, reason=BackupReason(named[2]), size_bytes=path.stat().st_size)
                )
    return tuple(sorted(found, key=lambda one: (one.made_at, one.path.name), reverse=True))


def make_backup(book: Path, reason: BackupReason, now: datetime) -> Backup:
    """Make a backup of a book that may be in use, verify it by opening, and let the older ones rotate.

    Raise ``DamagedStore`` where the book or the copy is not sound: no older backup is touched then. Raise
    ``StoreFault`` where there is no book or the backup cannot be written.
    """
    report = inspect_file(book, thorough=False)
    if report.kind is FileKind.NEW:
        raise StoreFault(Worded("There is no book at {book} to back up: {reason}.", book=book, reason=report.detail))
    if not report.is_usable:
        raise damaged(report)
    folder = backup_folder(book)
    part = folder / f".{secrets.token_hex(6)}.part"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        _copied(book, part)
        verify(part, book)
        path = _free_name(folder, reason, now)
        part.rename(path)
        _sync_folder(folder)
    except OSError as fault:
        raise StoreFault(
            Worded("The backup in {folder} cannot be written: {reason}.", folder=folder, reason=fault.strerror or fault)
        ) from fault
    finally:
        _drop(part)
    rotate(book)
    made_at = now.astimezone(UTC).replace(microsecond=0)
    return Backup(path=path, made_at=made_at, reason=reason, size_bytes=path.stat().st_size)


def copy_book(book: Path, target: Path) -> None:
    """Copy a book that may be in use to where there is none, verified; raise ``DamagedStore`` or ``StoreFault``."""
    report = inspect_file(book, thorough=False)
    if not report.is_usable:
        raise damaged(report)
    part = target.parent / f".{secrets.token_hex(6)}.part"
    try:
        _copied(book, part)
        verify(part, book)
        part.rename(target)
        _sync_folder(target.parent)
    except OSError as fault:
        raise StoreFault(
            Worded("{target} cannot be written: {reason}.", target=target, reason=fault.strerror or fault)
        ) from fault
    finally:
        _drop(part)


def daily_backup(book: Path, now: datetime) -> Backup | None:
    """Make the backup of the day; None where there is one already, or no book yet."""
    today = now.astimezone(UTC).date()
    if any(one.reason is BackupReason.DAILY and one.made_at.date() == today for one in backups_of(book)):
        return None
    if inspect_file(book, thorough=False).kind is FileKind.NEW:
        return None
    return make_backup(book, BackupReason.DAILY, now)


def back_up_before_migration(
    report: FileReport, newest_book: str, newest_catalogue: str, now: datetime
) -> Backup | None:
    """Back a book up whose tables are about to be brought to another form; None where there is nothing to migrate."""
    if report.kind is not FileKind.BOOK or not report.book_revision:
        return None
    is_new = report.book_revision == newest_book and report.catalogue_revision in ("", newest_catalogue)
    return None if is_new else make_backup(report.path, BackupReason.BEFORE_MIGRATION, now)


def verify(path: Path, shown_as: Path | None = None) -> FileReport:
    """Open a file as a book and read all of it: every page, every survey. Raise ``DamagedStore`` where it is not sound.

    Surveys of a newer or older form of the program count as readable where they are the JSON of one.
    """
    report = inspect_file(path)
    shown = shown_as or path
    if report.kind is not FileKind.BOOK:
        raise DamagedStore(
            Worded("{shown} is no sound book: {reason}. Nothing was changed.", shown=shown, reason=report.detail)
        )
    try:
        with reading(path) as connection:
            faults = _unreadable_surveys(connection)
    except sqlite3.DatabaseError as fault:
        raise DamagedStore(
            Worded("{shown} is no sound book: {reason}. Nothing was changed.", shown=shown, reason=fault)
        ) from fault
    if faults:
        raise DamagedStore(
            Worded("{shown} is no sound book: {faults}. Nothing was changed.", shown=shown, faults=faults[0])
        )
    return report


def rotate(book: Path) -> tuple[Path, ...]:
    """Delete the backups that are not to be kept, and return their paths."""
    kept, all_backups = set[Path](), backups_of(book)
    daily = [one for one in all_backups if one.reason is BackupReason.DAILY]
    days = {one.made_at.date(): one for one in reversed(daily)}
    weeks = {one.made_at.isocalendar()[:2]: one for one in reversed(daily)}
    kept.update(days[day].path for day in sorted(days)[-_DAYS:])
    kept.update(weeks[week].path for week in sorted(weeks)[-_WEEKS:])
    for reason in (BackupReason.BEFORE_MIGRATION, BackupReason.BEFORE_RESTORE):
        kept.update(one.path for one in [one for one in all_backups if one.reason is reason][:_KEPT_BEFORE])
    kept.update(one.path for one in all_backups if one.reason is BackupReason.ASKED)
    gone = tuple(one.path for one in all_backups if one.path not in kept)
    for path in gone:
        with contextlib.suppress(OSError):
            path.unlink()
    return gone


def restore(book: Path, backup: Path, now: datetime) -> Restored:
    """Put a backup in the place of the book, whole or not at all; what lay there is set aside, byte for byte.

    A sound book is backed up before. Raise ``InputFault`` where there is no such backup, ``DamagedStore`` where it is
    not sound, ``StoreFault`` where it cannot be put there: the book is as it was then.
    """
    if not backup.is_file():
        wanted = Worded("name a backup; those of this book lie in {backup_folder}", backup_folder=backup_folder(book))
        raise InputFault((InputProblem("", "backup", repr(str(backup)), wanted),))
    if book.exists() and backup.samefile(book):
        raise InputFault((InputProblem("", "backup", repr(str(backup)), "this is the book itself; name a backup"),))
    verify(backup)
    if inspect_file(book, thorough=False).kind is FileKind.BOOK:
        with contextlib.suppress(DamagedStore):  # a damaged one is set aside below and needs no copy
            make_backup(book, BackupReason.BEFORE_RESTORE, now)
    part = book.with_name(f".{book.name[:40]}-{secrets.token_hex(4)}.part")
    try:
        _copied(backup, part)
        report = verify(part, backup)
        set_aside = _set_aside(book, now)
        try:
            part.rename(book)
        except OSError:
            _bring_back(book, set_aside)
            raise
        _sync_folder(book.parent)
    except OSError as fault:
        raise StoreFault(
            Worded("{book} cannot be restored: {reason}. It is as it was.", book=book, reason=fault.strerror or fault)
        ) from fault
    finally:
        _drop(part)
    return Restored(backup=backup, set_aside=set_aside, report=report)


def _copied(source: Path, target: Path) -> None:
    """Copy a database that may be in use, as one state of it, onto the disk."""
    try:
        with reading(source) as read, contextlib.closing(sqlite3.connect(target)) as written:
            read.backup(written, pages=_PAGES_AT_A_TIME, sleep=0.01)
            written.execute("PRAGMA journal_mode = DELETE")  # one file, with no log beside it
    except sqlite3.DatabaseError as fault:
        code = int(getattr(fault, "sqlite_errorcode", 0) or 0) & 0xFF
        if code in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
            raise BusyStore(
                Worded("The database {source} does not answer for now: {reason}.", source=source, reason=fault)
            ) from fault
        if code in (sqlite3.SQLITE_FULL, sqlite3.SQLITE_IOERR, sqlite3.SQLITE_CANTOPEN, sqlite3.SQLITE_READONLY):
            raise StoreFault(
                Worded("The backup {parent} cannot be written: {reason}.", parent=target.parent, reason=fault)
            ) from fault
        raise DamagedStore(
            Worded("{source} is no sound book: {reason}. Nothing was changed.", source=source, reason=fault)
        ) from fault
    with target.open("rb+") as stream:
        os.fsync(stream.fileno())


def _unreadable_surveys(connection: sqlite3.Connection) -> list[str]:
    tables = {name for (name,) in connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    faults: list[str] = []
    if "surveys" in tables:
        for survey_id, document in connection.execute("SELECT id, document FROM surveys ORDER BY id"):
            try:
                survey_from_json(document, Worded("survey {survey_id}", survey_id=survey_id))
            except InputFault as fault:
                if not str(document).lstrip().startswith("{"):
                    faults.append(
                        Worded(
                            "survey {survey_id} cannot be read ({problems})",
                            survey_id=survey_id,
                            problems=fault.problems[0],
                        )
                    )
    for table in sorted(tables):  # every row of every table comes off the disk
        for _ in connection.execute(f'SELECT * FROM "{table}"'):  # noqa: S608  (a name that the database itself gives)
            pass
    return faults


def _free_name(folder: Path, reason: BackupReason, now: datetime) -> Path:
    stem = f"{now.astimezone(UTC).strftime(_STAMP)}-{reason.value}"
    path, number = folder / f"{stem}.sqlite3", 1
    while path.exists():
        number += 1
        path = folder / f"{stem}-{number}.sqlite3"
    return path


def _drop(part: Path) -> None:
    for ending in ("", *_SIDE_FILES):
        with contextlib.suppress(OSError):
            part.with_name(part.name + ending).unlink()


def _set_aside(book: Path, now: datetime) -> Path | None:
    """Move the file of a book, with its log, out of the way; None where there is none."""
    if not book.exists():
        return None
    stem = f"{book.name}.set-aside-{now.astimezone(UTC).strftime(_STAMP)}"
    aside, number = book.with_name(stem), 1
    while aside.exists():
        number += 1
        aside = book.with_name(f"{stem}-{number}")
    for ending in (*_SIDE_FILES, ""):
        with contextlib.suppress(FileNotFoundError):
            book.with_name(book.name + ending).rename(aside.with_name(aside.name + ending))
    return aside


def _bring_back(book: Path, aside: Path | None) -> None:
    if aside is not None:
        for ending in ("", *_SIDE_FILES):
            with contextlib.suppress(OSError):
                shutil.move(aside.with_name(aside.name + ending), book.with_name(book.name + ending))


def _sync_folder(folder: Path) -> None:
    """Let a rename last through a loss of power, where the system can do so for folders."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
