"""The stores: each opens when first used, and then stays open."""

from __future__ import annotations

import threading
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from spoutline.bootstrap.settings import Settings, user_folder

if TYPE_CHECKING:
    from spoutline.book.book import Book
    from spoutline.book.quotations import QuotationBook
    from spoutline.catalogue.store import CatalogueStore


class Stores:
    """Opens the book and the catalogue once, whichever thread asks first.

    Each method raises ``StoreFault`` where the environment fails, ``InputFault`` where what it reads is faulty.
    """

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        self._opening = threading.RLock()
        self._book: Book | None = None
        self._saving_book: Book | None = None
        self._catalogue: CatalogueStore | None = None
        self._is_checked = False

    def book(self) -> Book:
        """Return the book of surveys, its tables made or migrated."""
        with self._opening:
            if self._book is None:
                from spoutline.book.book import open_book

                self._book = open_book(self._sound_url())
            return self._book

    def saving_book(self) -> Book:
        """Return the book for a writer that shows its state: it gives up soon where the book does not answer.

        It never makes a file: where the one of an open book is missing, that is a fault to be told.
        """
        self.book()
        with self._opening:
            if self._saving_book is None:
                from spoutline.book.book import open_book
                from spoutline.database.faults import Patience

                self._saving_book = open_book(self.database_url(), patience=Patience.SHORT, may_create=False)
            return self._saving_book

    def quotations(self) -> QuotationBook:
        """Return the quotations of the book."""
        return self.book().quotations()

    def catalogue(self) -> CatalogueStore:
        """Return the catalogue, compiled anew where its source changed."""
        with self._opening:
            if self._catalogue is None:
                from spoutline import assets
                from spoutline.catalogue.build import ensure_catalogue

                url, may_create = self._sound_url(), self._book is None  # a file that an open book misses is a fault
                self._catalogue = ensure_catalogue(url, assets.catalogue_folder(), may_create=may_create)
            return self._catalogue

    def close(self) -> None:
        """Close what was opened; it opens again when next used."""
        with self._opening:
            for book in (self._book, self._saving_book):
                if book is not None:
                    book.close()
            if self._catalogue is not None:
                self._catalogue.close()
            self._book = self._saving_book = None
            self._catalogue = None
            self._is_checked = False

    def _sound_url(self) -> str:
        """Return the address of the database; raise ``DamagedStore`` where what lies there is no sound book.

        A book that is about to be migrated is backed up first.
        """
        url = self.database_url()
        if not self._is_checked:
            from spoutline.book.backups import back_up_before_migration
            from spoutline.book.book_file import check_usable
            from spoutline.book.schema import BOOK_SCHEMA
            from spoutline.catalogue.schema import CATALOGUE_SCHEMA
            from spoutline.database.engine import file_of

            path = file_of(url)
            if path is not None:
                newest = BOOK_SCHEMA.newest, CATALOGUE_SCHEMA.newest
                back_up_before_migration(check_usable(path), *newest, datetime.now(UTC))
            self._is_checked = True
        return url

    def database_url(self) -> str:
        """Return the address of the database as SQLAlchemy opens it."""
        from spoutline.book.address import database_url

        return database_url(self._settings.database, user_folder())
