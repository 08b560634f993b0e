"""The stores: each opens when first used, and then stays open."""

from __future__ import annotations

import os
import threading
from datetime import UTC, datetime
from typing import TYPE_CHECKING, Protocol

from spoutline.bootstrap.once import Once, OnceEach
from spoutline.bootstrap.settings import Settings, cache_folder, user_folder

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.book.book import Book
    from spoutline.book.book_file import FileReport
    from spoutline.book.plain_book import BookReader, PlainBook
    from spoutline.book.quotations import QuotationBook
    from spoutline.catalogue.plain_edition import PlainEdition
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.catalogue.store import CatalogueStore
    from spoutline.model.agreed_sets import AgreedSets
    from spoutline.model.catalogue_edition import EditionRef
    from spoutline.model.faults import InputNote
    from spoutline.model.survey import Survey
    from spoutline.planning.typed_numbers import NumberedParts


class EditionOf(Protocol):
    """Returns the edition that a survey is planned with; without a survey the one that the book plans with."""

    def __call__(self, survey: Survey | None = None) -> CatalogueStore:
        """Return it; raise ``InputFault`` or ``StoreFault``."""
        ...


class PlannedWith(Protocol):
    """Returns the edition that a survey is planned with, for planning alone; see ``Stores.parts_to_plan_with``."""

    def __call__(self, survey: Survey | None = None) -> NumberedParts:
        """Return it; raise ``InputFault`` or ``StoreFault``."""
        ...


class Stores:
    """Opens the book and its catalogues once, whichever thread asks first.

    Each method raises ``StoreFault`` where the environment fails, ``InputFault`` where what it reads is faulty.
    """

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        turns = threading.RLock()  # all stores may lie in one database: they are opened one after the other
        self._sound_url = Once(self._checked_url, turns)
        self._book = Once(self._open_book, turns)
        self._saving_book = Once(self._open_saving_book, turns)
        self._shelf = Once(self._open_shelf, turns)
        self._editions: OnceEach[EditionRef, CatalogueStore] = OnceEach(lambda ref: self.shelf().parts(ref), turns)
        self._reports = OnceEach(_looked_at, turns)
        self._plain: OnceEach[EditionRef | None, PlainEdition | None] = OnceEach(self._opened_plainly, turns)
        self._turns = turns

    def book(self) -> Book:
        """Return the book of surveys, its tables made or migrated."""
        return self._book()

    def saving_book(self) -> Book:
        """Return the book for a writer that shows its state: it gives up soon where the book does not answer.

        It never makes a file: where the one of an open book is missing, that is a fault to be told.
        """
        return self._saving_book()

    def book_to_read(self) -> BookReader:
        """Return the book for reading surveys and what is remembered: read plainly where no store is open."""
        return self._plain_book() or self.book()

    def agreed_lines(self, site: str, survey_id: int | None) -> dict[int, tuple[AgreedSets, ...]]:
        """Return every history of agreed sets that ever named the site or the survey, by its number.

        No store is opened to learn that there is none.
        """
        plain = self._plain_book()
        if plain is not None and not plain.names_agreement(site, survey_id):
            return {}
        return self.book().agreements.lines(site, survey_id)

    def reading_notes(self) -> tuple[InputNote, ...]:
        """Return what was read from the book otherwise than it is written, each once; nothing is opened for it."""
        books = [store() for store in (self._book, self._saving_book) if store.is_made]
        return tuple(note for book in books for note in book.reading_notes.take())

    def quotations(self) -> QuotationBook:
        """Return the quotations of the book."""
        return self.book().quotations()

    def shelf(self) -> CatalogueShelf:
        """Return the catalogues of the book, *Demonstration* compiled anew where its source changed."""
        return self._shelf()

    def catalogue(self, survey: Survey | None = None) -> CatalogueStore:
        """Return the edition that a survey is planned with: that of the settings, else of the survey, else of the book.

        Raise ``InputFault`` where the book has no such catalogue or edition.
        """
        return self.edition(self.planned_with(survey))

    def parts_to_plan_with(self, survey: Survey | None = None) -> NumberedParts:
        """Return the edition that a survey is planned with, for planning alone: read plainly where no store is open.

        One that was opened plainly stays in use while it is the edition asked for, with all that was made of its
        columns. Otherwise as ``catalogue``.
        """
        named = self._named_by(survey)
        if not self._shelf.is_made:
            return self._plain(named) or self.catalogue(survey)
        plain, store = self._plain.kept(named), self.catalogue(survey)
        return plain if plain is not None and plain.edition() == store.edition() else store

    def planned_with(self, survey: Survey | None = None) -> EditionRef:
        """Return what names the edition that a survey is planned with."""
        named = self._named_by(survey)
        return self.shelf().chosen() if named is None else named

    def _named_by(self, survey: Survey | None) -> EditionRef | None:
        """Return what settings or survey name; None where the book is left to say."""
        if self._settings.catalogue is not None:
            return self._settings.catalogue
        if survey is not None and survey.catalogue:
            from spoutline.model.catalogue_edition import EditionRef

            return EditionRef.from_text(survey.catalogue, "survey.catalogue")
        return None

    def edition(self, ref: EditionRef) -> CatalogueStore:
        """Return an edition as planning reads it; a published one stays open."""
        opened = self.shelf().opened(ref)
        if opened.edition.number is None:
            return self.shelf().parts(ref)  # a draft changes under whoever reads it
        return self._editions(opened.edition.ref)

    def newest(self, name: str) -> CatalogueStore | None:
        """Return the newest edition of a catalogue; None where the book has none of this name, or no edition of it."""
        from spoutline.model.catalogue_edition import EditionRef
        from spoutline.model.faults import InputFault

        try:
            return self.edition(EditionRef(name))
        except InputFault:
            return None

    def close(self) -> None:
        """Close what was opened; it opens again when next used."""
        with self._turns:
            for book in (*self._book.forget(), *self._saving_book.forget()):
                book.close()
            self._editions.forget()
            for shelf in self._shelf.forget():
                shelf.close()
            for plain in self._plain.forget():
                if plain is not None:
                    plain.close()
            self._sound_url.forget()
            self._reports.forget()

    def _open_book(self) -> Book:
        from spoutline.book.book import open_book

        return open_book(self._sound_url())

    def _open_saving_book(self) -> Book:
        from spoutline.book.book import open_book
        from spoutline.database.faults import Patience

        self.book()
        return open_book(self.database_url(), patience=Patience.SHORT, may_create=False)

    def _open_shelf(self) -> CatalogueShelf:
        from spoutline import assets
        from spoutline.catalogue.build import open_shelf

        may_create = not self._book.is_made  # a file that an open book misses is a fault
        columns = cache_folder() / "columns"
        return open_shelf(self._sound_url(), assets.catalogue_folder(), may_create=may_create, columns=columns)

    def _opened_plainly(self, named: EditionRef | None) -> PlainEdition | None:
        """Return an edition that needs no store opened; None where one must be, if only to tell what is wrong."""
        from spoutline import assets
        from spoutline.book.book_file import FileKind

        path = self._own_file()
        if path is None or self._reports(path).kind is not FileKind.BOOK:
            return None
        from spoutline.catalogue.plain_edition import open_plainly

        columns, source = cache_folder() / "columns", assets.catalogue_folder()
        return open_plainly(path, named, source, columns, self.edition)

    def _plain_book(self) -> PlainBook | None:
        """Return the book that needs no store opened; None where one is open or must be, if only to tell of faults."""
        path = None if self._book.is_made else self._own_file()
        if path is None:
            return None
        from spoutline.book.plain_book import read_plainly

        return read_plainly(self._reports(path), self.book)

    def _own_file(self) -> Path | None:
        """Return the file of the database; None where a server keeps it or there is none yet."""
        from spoutline.book.address import file_given

        path = file_given(self._settings.database, user_folder())
        # in a folder that may not be entered there is none to read plainly; the whole store tells what is wrong
        return path if path is not None and os.path.isfile(path) else None  # noqa: PTH113

    def _checked_url(self) -> str:
        """Return the address of the database; raise ``DamagedStore`` where what lies there is no sound book.

        A book that is about to be migrated is backed up first.
        """
        from spoutline.book.backups import back_up_before_migration
        from spoutline.book.schema import BOOK_SCHEMA
        from spoutline.catalogue.schema import CATALOGUE_SCHEMA
        from spoutline.database.engine import file_of

        url = self.database_url()
        path = file_of(url)
        if path is not None:
            newest = BOOK_SCHEMA.newest, CATALOGUE_SCHEMA.newest
            back_up_before_migration(self._reports(path), *newest, datetime.now(UTC))
        return url

    def database_url(self) -> str:
        """Return the address of the database as SQLAlchemy opens it."""
        from spoutline.book.address import database_url

        return database_url(self._settings.database, user_folder())


def _looked_at(path: Path) -> FileReport:
    """Return what lies at the path of a book; raise ``DamagedStore`` where it is no sound one."""
    from spoutline.book.book_file import check_usable

    return check_usable(path)
