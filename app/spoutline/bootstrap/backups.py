"""Keeping the book: its backups, whether it is sound, putting a backup back, and the roles of a shared one."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.frozen import frozen
from spoutline.model.faults import DamagedStore, InputFault, InputProblem, StoreFault
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.book.backups import Backup, BackupReason, Restored
    from spoutline.book.book import Book


@frozen(kw_only=True)
class BookCheck:
    """What a check of the book found. ``fault`` is empty where it is sound; ``place`` is shown to a person."""

    place: str
    fault: str
    surveys: int = 0
    quotations: int = 0
    backups: int = 0

    @property
    def is_sound(self) -> bool:
        """Whether nothing wrong was found."""
        return not self.fault


class KeepingService:
    """Backs the book up, checks it and restores it. Nothing here needs the book to be openable."""

    def __init__(
        self,
        url: Callable[[], str],
        book: Callable[[], Book],
        close: Callable[[], None],
        now: Callable[[], datetime] = lambda: datetime.now(UTC),
    ) -> None:
        self._url, self._book, self._close, self._now = url, book, close, now

    def book_file(self) -> Path:
        """Return the file of the book; raise ``InputFault`` where it lies on a server, which keeps its own backups."""
        path = self._file_or_none()
        if path is None:
            from spoutline.database.engine import shown_url

            wanted = (
                "this book lies on a PostgreSQL server, and its backups are the server's. Whoever keeps the server "
                "makes one with `pg_dump --format=custom --file=book.dump DATABASE` and puts it back into an empty "
                "database with `pg_restore --clean --if-exists --dbname=DATABASE book.dump`; a daily run of pg_dump "
                "belongs into the server's schedule"
            )
            raise InputFault((InputProblem("", "database", shown_url(self._url()), wanted),))
        return path

    @property
    def is_on_server(self) -> bool:
        """Whether the book lies on a server."""
        return self._file_or_none() is None

    def backups(self) -> tuple[Backup, ...]:
        """Return the backups of the book, newest first."""
        from spoutline.book.backups import backups_of

        return backups_of(self.book_file())

    def back_up(self, reason: BackupReason | None = None) -> Backup:
        """Make a verified backup now; raise ``DamagedStore`` where the book is not sound."""
        from spoutline.book.backups import BackupReason, make_backup

        return make_backup(self.book_file(), reason or BackupReason.ASKED, self._now())

    def back_up_daily(self) -> Backup | None:
        """Make the backup of the day; None where there is one, no book yet, or a server that keeps its own."""
        from spoutline.book.backups import daily_backup

        path = self._file_or_none()
        return None if path is None else daily_backup(path, self._now())

    def check(self, path: Path | None = None) -> BookCheck:
        """Read all of the book, or of the file ``path``, and say what is wrong with it, if anything is.

        Raise ``InputFault`` where there is no such file, ``StoreFault`` where the server cannot be reached.
        """
        if path is None and self.is_on_server:
            return self._checked_on_server()
        from spoutline.book.backups import backups_of, verify
        from spoutline.book.book_file import FileKind, inspect_file

        book = path or self.book_file()
        if not book.is_file():
            wanted = "there is no book here yet; name the file of one"
            raise InputFault((InputProblem("", "database", repr(str(book)), wanted),))
        report = inspect_file(book, thorough=False)
        kept = len(backups_of(book))
        if report.kind is FileKind.NEW:
            return BookCheck(place=str(book), fault="", backups=kept)
        try:
            report = verify(book)
        except DamagedStore as fault:
            return BookCheck(place=str(book), fault=str(fault), backups=kept)
        return BookCheck(place=str(book), fault="", surveys=report.surveys, quotations=report.quotations, backups=kept)

    def restore(self, backup: Path | None = None) -> Restored:
        """Put a backup, or the newest one that is sound, in the place of the book; what lay there is set aside.

        Raise ``InputFault`` where there is none, ``DamagedStore`` where the one named is not sound.
        """
        from spoutline.book.backups import backup_folder, restore

        book = self.book_file()
        if backup is None:
            kept = self.backups()
            if not kept:
                wanted = Worded(
                    "there is none in {backup_folder}; name the file of one", backup_folder=backup_folder(book)
                )
                raise InputFault((InputProblem("", "backup", "none", wanted),))
            backup = self._newest_sound(kept)
        self._close()
        return restore(book, backup, self._now())

    def roles_sql(self, schema: str) -> str:
        """Return the SQL that makes the roles of a shared book on a PostgreSQL server."""
        from spoutline.book.all_tables import BookTable
        from spoutline.book.roles import roles_sql
        from spoutline.catalogue.tables import CatalogueTable

        return roles_sql(
            (table.name for table in BookTable.metadata.sorted_tables),
            [*(table.name for table in CatalogueTable.metadata.sorted_tables), "catalogue_version"],
            schema,
        )

    def _newest_sound(self, kept: tuple[Backup, ...]) -> Path:
        from spoutline.book.backups import verify

        for one in kept:
            try:
                verify(one.path)
            except DamagedStore:
                continue
            return one.path
        raise DamagedStore(
            Worded(
                "None of the {count} backups in {parent} is sound. Nothing was changed.",
                count=len(kept),
                parent=kept[0].path.parent,
            )
        )

    def _checked_on_server(self) -> BookCheck:
        from spoutline.database.engine import shown_url

        book, place = self._book(), shown_url(self._url())
        entries = book.entries()
        try:
            for entry in entries:
                book.stored(entry.id)
            quotations = book.quotations().entries()
        except StoreFault as fault:
            return BookCheck(place=place, fault=str(fault))
        return BookCheck(place=place, fault="", surveys=len(entries), quotations=len(quotations))

    def _file_or_none(self) -> Path | None:
        from spoutline.database.engine import file_of

        return file_of(self._url())
