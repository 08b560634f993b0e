"""The stores: each opens when first used, and then stays open."""

from __future__ import annotations

import threading
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from spoutline.bootstrap.once import Once
from spoutline.bootstrap.settings import Settings, user_folder

if TYPE_CHECKING:
    from spoutline.book.book import Book
    from spoutline.book.quotations import QuotationBook
    from spoutline.catalogue.store import CatalogueStore
    from spoutline.model.faults import InputNote


class Stores:
    """Opens the book and the catalogue once, whichever thread asks first.

    Each method raises ``StoreFault`` where the environment fails, ``InputFault`` where what it reads is faulty.
    """

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        turns = threading.RLock()  # all stores may lie in one database: they are opened one after the other
        self._sound_url = Once(self._checked_url, turns)
        self._book = Once(self._open_book, turns)
        self._saving_book = Once(self._open_saving_book, turns)
        self._catalogue = Once(self._open_catalogue, turns)
        self._turns = turns

    def book(self) -> Book:
        """Return the book of surveys, its tables made or migrated."""
        return self._book()

    def saving_book(self) -> Book:
        """Return the book for a writer that shows its state: it gives up soon where the book does not answer.

        It never makes a file: where the one of an open book is missing, that is a fault to be told.
        """
        return self._saving_book()

    def reading_notes(self) -> tuple[InputNote, ...]:
        """Return what was read from the book otherwise than it is written, each once; nothing is opened for it."""
        books = [store() for store in (self._book, self._saving_book) if store.is_made]
        return tuple(note for book in books for note in book.reading_notes.take())

    def quotations(self) -> QuotationBook:
        """Return the quotations of the book."""
        return self.book().quotations()

    def catalogue(self) -> CatalogueStore:
        """Return the catalogue, compiled anew where its source changed."""
        return self._catalogue()

    def close(self) -> None:
        """Close what was opened; it opens again when next used."""
        with self._turns:
            for book in (*self._book.forget(), *self._saving_book.forget()):
                book.close()
            for catalogue in self._catalogue.forget():
                catalogue.close()
            self._sound_url.forget()

    def _open_book(self) -> Book:
        from spoutline.book.book import open_book

        return open_book(self._sound_url())

    def _open_saving_book(self) -> Book:
        from spoutline.book.book import open_book
        from spoutline.database.faults import Patience

        self.book()
        return open_book(self.database_url(), patience=Patience.SHORT, may_create=False)

    def _open_catalogue(self) -> CatalogueStore:
        from spoutline import assets
        from spoutline.catalogue.build import ensure_catalogue

        may_create = not self._book.is_made  # a file that an open book misses is a fault
        return ensure_catalogue(self._sound_url(), assets.catalogue_folder(), may_create=may_create)

    def _checked_url(self) -> str:
        """Return the address of the database; raise ``DamagedStore`` where what lies there is no sound book.

        A book that is about to be migrated is backed up first.
        """
        from spoutline.book.backups import back_up_before_migration
        from spoutline.book.book_file import check_usable
        from spoutline.book.schema import BOOK_SCHEMA
        from spoutline.catalogue.schema import CATALOGUE_SCHEMA
        from spoutline.database.engine import file_of

        url = self.database_url()
        path = file_of(url)
        if path is not None:
            newest = BOOK_SCHEMA.newest, CATALOGUE_SCHEMA.newest
            back_up_before_migration(check_usable(path), *newest, datetime.now(UTC))
        return url

    def database_url(self) -> str:
        """Return the address of the database as SQLAlchemy opens it."""
        from spoutline.book.address import database_url

        return database_url(self._settings.database, user_folder())
