"""Terms of quotations and the price lists they are priced by, as files: what window and command line read and keep."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.bootstrap.once import Once
from spoutline.model.catalogue_edition import DEMONSTRATION

if TYPE_CHECKING:
    from spoutline.book.terms_files import TermsFolders
    from spoutline.bootstrap.stores import EditionOf
    from spoutline.catalogue.price_lists import PriceListNames
    from spoutline.catalogue.store import CatalogueStore
    from spoutline.model.pricing import PriceList
    from spoutline.model.quotation_terms import Labour, Terms
    from spoutline.model.survey import Survey
    from spoutline.model.usual_terms import UsualTerms
    from spoutline.planning.pricing.labour_forecast import LabourForecast


class QuotationTerms:
    """Terms and price lists. Methods may be called from several threads."""

    def __init__(
        self, usual_terms: Path, catalogue: EditionOf, price_folders: tuple[Path, ...], invented_prices: Path
    ) -> None:
        self._usual_file, self._catalogue = usual_terms, catalogue
        self._price_folders, self._invented_prices = price_folders, invented_prices
        self._lists = Once(self._read_price_lists)
        self._invented_lists = Once(self._read_invented_lists)

    def read_terms(self, path: Path) -> Terms:
        """Return the terms in a TOML file, the person's usual terms where it says nothing.

        Raise ``InputFault`` naming every faulty field.
        """
        from spoutline.book.terms_text import read_terms

        return read_terms(path, self._usual_file)

    def write_terms(self, terms: Terms, path: Path, folder: Path | None) -> Terms:
        """Write terms into a file, whole or not at all, and return them as they stand there.

        The letterhead's picture, looked for in ``folder`` or beside the usual terms, is put beside the file. Comments
        in a file that is written over stay beside what did not change. Raise ``StoreFault`` where that fails.
        """
        from spoutline.book.terms_files import write_terms_file

        return write_terms_file(terms, path, self._picture_folders(folder))

    def usual_terms(self) -> UsualTerms:
        """Return the person's usual terms, empty ones where none are kept; raise ``InputFault`` with every fault."""
        from spoutline.book.terms_files import read_usual_file

        return read_usual_file(self._usual_file)

    def keep_usual_terms(self, usual: UsualTerms, folder: Path | None) -> Path:
        """Keep what quotations share as the usual terms, the picture with it, and return their file.

        Raise ``StoreFault`` where it cannot be written, ``InputFault`` where the file that is there is faulty.
        """
        from spoutline.book.terms_files import write_usual_file

        write_usual_file(usual, self._usual_file, self._picture_folders(folder))
        return self._usual_file

    def picture(self, name: str, folder: Path | None) -> Path | None:
        """Return the file of a letterhead's picture: in ``folder``, else beside the usual terms; None for none."""
        return self._picture_folders(folder).picture(name)

    def _picture_folders(self, folder: Path | None) -> TermsFolders:
        from spoutline.book.terms_files import TermsFolders

        return TermsFolders(folder, self._usual_file.parent)

    def price_list_names(self, survey: Survey | None = None) -> PriceListNames:
        """Return makers, discount groups, currencies and part numbers that the price lists know.

        Raise ``InputFault`` with every fault of every list.
        """
        from spoutline.catalogue.price_lists import names_in

        return names_in(self.price_lists_for(self._catalogue(survey)))

    def labour_forecast(self, labour: Labour, survey: Survey) -> LabourForecast:
        """Return the hours of a labour table at a station before its sets are chosen."""
        from spoutline.planning.pricing.labour_forecast import labour_forecast

        return labour_forecast(labour.tasks, survey.positions)

    def demo_terms(self) -> Path:
        """Return the ready terms file that fits the demo surveys."""
        from spoutline import assets

        return assets.resources_folder() / "terms" / "refit.toml"

    def logo(self, terms: Terms, folder: Path | None) -> str:
        """Return the letterhead's picture in base 64; empty where the terms name none.

        It is read in ``folder``, or else beside the person's usual terms. Raise ``InputFault`` where it cannot be read.
        """
        from spoutline.book.terms_files import read_logo

        return read_logo(terms, self._picture_folders(folder))

    def price_lists_for(self, parts: CatalogueStore) -> tuple[PriceList, ...]:
        """Return the price lists by which an edition is quoted: its own, and those of the folders with other ids."""
        from spoutline.catalogue.price_lists import joined

        return joined(parts.price_lists(), self.price_lists(parts.edition().catalogue))

    def price_lists(self, catalogue: str) -> tuple[PriceList, ...]:
        """Return the price lists of the folders that price a catalogue; they are read once.

        Raise ``InputFault`` with every fault of every list.
        """
        from spoutline.catalogue.price_lists import joined

        return joined(self._lists(), self.lists_that_come_with(catalogue))

    def lists_that_come_with(self, catalogue: str) -> tuple[PriceList, ...]:
        """Return the price lists that come with the program beside a catalogue: none but those of *Demonstration*.

        An own catalogue that holds parts of the same names has its own prices.
        """
        return self._invented_lists() if catalogue == DEMONSTRATION else ()

    def forget_price_lists(self) -> None:
        """Read the price lists anew when they are next needed: a person may have put others in their folder."""
        self._lists.forget()

    def _read_price_lists(self) -> tuple[PriceList, ...]:
        from spoutline.catalogue.price_lists import read_price_lists

        return tuple(one for folder in self._price_folders for one in read_price_lists(folder))

    def _read_invented_lists(self) -> tuple[PriceList, ...]:
        from spoutline.catalogue.price_lists import read_price_lists

        return read_price_lists(self._invented_prices)
