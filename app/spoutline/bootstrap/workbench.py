"""What window, command line and tests call: plans of sites, and a service for each other subject."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from spoutline.bootstrap.bills import BillService
from spoutline.bootstrap.jurisdictions import JurisdictionService
from spoutline.bootstrap.once import Once
from spoutline.bootstrap.phrase_tables import PhraseTables
from spoutline.bootstrap.settings import Settings, user_folder
from spoutline.bootstrap.site_planning import SitePlanning
from spoutline.bootstrap.site_visits import SiteVisitService
from spoutline.bootstrap.stores import Stores
from spoutline.bootstrap.survey_basis import SurveyBasis
from spoutline.model.language import Language

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.book.book import Book
    from spoutline.book.plain_book import BookReader
    from spoutline.bootstrap.agreements import AgreementService
    from spoutline.bootstrap.backups import KeepingService
    from spoutline.bootstrap.book_lists import BookLists
    from spoutline.bootstrap.catalogues import CatalogueService
    from spoutline.bootstrap.conversions import ConversionService
    from spoutline.bootstrap.coverage import CoverageService
    from spoutline.bootstrap.customers import CustomerService
    from spoutline.bootstrap.dispenser_types import DispenserTypeService
    from spoutline.bootstrap.due_work import DueWorkService
    from spoutline.bootstrap.installer import InstallerService
    from spoutline.bootstrap.mailing import MailService
    from spoutline.bootstrap.manual import Manual
    from spoutline.bootstrap.position_tables import PositionTableService
    from spoutline.bootstrap.quotations import QuotationService
    from spoutline.bootstrap.standing import StationStanding
    from spoutline.bootstrap.stock import StockService
    from spoutline.bootstrap.stock_orders import StockOrderService
    from spoutline.bootstrap.supplier_orders import SupplierOrderService
    from spoutline.bootstrap.table_maps import TableMaps
    from spoutline.bootstrap.weighing import WeighingService
    from spoutline.bootstrap.what_if import WhatIfService
    from spoutline.explain.phrases.field_words import FieldWords
    from spoutline.explain.plan.story import Story
    from spoutline.model.faults import InputNote
    from spoutline.model.survey import Survey
    from spoutline.units.display import Display
    from spoutline.whole_files import InUse


def open_workbench(settings: Settings) -> Workbench:
    """Return the wired use cases. Nothing is opened yet: each store opens when first used, and then stays open."""
    return Workbench(settings)


def open_converting(settings: Settings) -> ConversionService:
    """Open the use cases of conversions in a worker process."""
    return open_workbench(settings).converting()


class Workbench(SitePlanning):
    """Plans sites and hands out the services, for whoever asks: window, command line, tests.

    Methods may be called from several threads. Bad input raises ``InputFault``, a failing environment ``StoreFault``.
    """

    def __init__(self, settings: Settings) -> None:
        stores, jurisdictions = Stores(settings), JurisdictionService(settings.profiles)
        super().__init__(stores, jurisdictions, SurveyBasis(stores, jurisdictions, self.converting))
        self._settings = settings
        self._language = settings.language
        self._phrases = PhraseTables(_resources)
        self._bills = BillService(self.story, self._phrases)
        self._site_visits = SiteVisitService(self._basis.tables, self.story)
        self._quoting = Once(self._wire_quoting)
        self._converting = Once(self._wire_converting)
        self._packing = Once(self._wire_packing)
        self._covering = Once(self._wire_covering)

    # words

    @property
    def language(self) -> Language:
        """The language of answers and papers where none is named for one of them."""
        return self._language

    def speak(self, language: Language) -> None:
        """Answer in another language from here on."""
        self._language = language

    def field_words(self) -> FieldWords:
        """Return what fields are called that are told by their paths, in the language in use."""
        return self._phrases.fields(self.language)

    def story(self, display: Display, language: Language | None = None) -> Story:
        """Return the words for findings, checks and conflicts, with quantities shown in ``display``'s units.

        Words, numbers and days are those of ``language``, or of the workbench; documents for other programs ask for
        English, so that they never change with it.
        """
        from spoutline.explain.plan.story import Story

        phrases = self._phrases.plan(language or self._language)
        return Story(phrases, display.written(Language(phrases.language)))

    # the book and the services

    def book(self) -> Book:
        """Return the book: surveys with their revisions, programmes, and what the program remembers."""
        return self._stores.book()

    def book_to_read(self) -> BookReader:
        """Return the book for reading surveys and what is remembered; see ``Stores.book_to_read``."""
        return self._stores.book_to_read()

    def open_parts(self) -> None:
        """Open the parts that the book plans with, compiled where that was not done yet."""
        self._stores.parts_to_plan_with()

    def saving_book(self) -> Book:
        """Return the book for a writer that shows its state; see ``Stores.saving_book``."""
        return self._stores.saving_book()

    def reading_notes(self) -> tuple[InputNote, ...]:
        """Return what was read from the book or put on paper otherwise than it is written, each note once."""
        from spoutline.bootstrap.printing import printing_notes

        return (*self._stores.reading_notes(), *printing_notes())

    def keeping(self) -> KeepingService:
        """Return the use cases of keeping the book: backups, check, restore, roles."""
        from spoutline.bootstrap.backups import KeepingService

        return KeepingService(self._stores.database_url, self._stores.book, self._stores.close)

    def jurisdictions(self) -> JurisdictionService:
        """Return the local rules, built in and the person's own."""
        return self._jurisdictions

    def usual_jurisdiction(self) -> str:
        """Return whose limits a new survey begins with, as chosen for the book; empty where nothing was."""
        from spoutline.book.records import SettingName

        chosen = self.book().setting(SettingName.JURISDICTION) or ""
        return chosen if chosen in self._jurisdictions.ids() else ""

    def manual(self, display: Display, jurisdiction: str, language: Language | None = None) -> Manual:
        """Return the manual, its page of rules with the limits of a jurisdiction in ``display``'s units."""
        from spoutline.bootstrap.manual import Manual

        wanted = language or self._language
        return Manual(wanted, lambda: self.story(display, wanted), lambda: self._jurisdictions.one(jurisdiction))

    def files_in_use(self) -> tuple[InUse, ...]:
        """Return the files that the program draws on: no output may take the place of one."""
        from spoutline.bootstrap.files_in_use import files_in_use

        return files_in_use(self._settings, self._jurisdictions.folder(), self._price_folders())

    def site_visits(self) -> SiteVisitService:
        """Return the service for what to measure on a visit to a station."""
        return self._site_visits

    def bills(self) -> BillService:
        """Return the papers of a planned site."""
        return self._bills

    def mailing(self) -> MailService:
        """Return what hands papers to mail."""
        from spoutline.bootstrap.mailing import MailService

        return MailService(self._phrases)

    def catalogues(self) -> CatalogueService:
        """Return the use cases of catalogues and their editions."""
        from spoutline.bootstrap.catalogues import CatalogueService, Sources

        return CatalogueService(
            Sources(
                shelf=self._stores.shelf,
                jurisdictions=self._jurisdictions.ids,
                tables=self._jurisdictions.tables,
                price_lists=lambda catalogue: self.quoting().terms().price_lists(catalogue),
                lists_that_come_with=lambda catalogue: self.quoting().terms().lists_that_come_with(catalogue),
                plan=self.plan_with,
                planned_with=self._stores.planned_with,
                survey=lambda key: self._stores.book().stored(key).survey,
                maps=self.table_maps(),
            )
        )

    def customers(self) -> CustomerService:
        """Return the use cases of the firm's customers."""
        from spoutline.bootstrap.customers import CustomerService

        return CustomerService(self._stores.book)

    def book_lists(self) -> BookLists:
        """Return the papers of the book's lists."""
        from spoutline.bootstrap.book_lists import BookLists

        return BookLists(self.story)

    def supplier_orders(self) -> SupplierOrderService:
        """Return the use cases of suppliers' order files."""
        from spoutline.bootstrap.supplier_orders import SupplierOrderService

        return SupplierOrderService(self._stores.book)

    def dispenser_types(self) -> DispenserTypeService:
        """Return the use cases of the firm's dispenser types."""
        from spoutline.bootstrap.dispenser_types import DispenserTypeService

        return DispenserTypeService(self._stores.book, self.table_maps())

    def table_maps(self) -> TableMaps:
        """Return what is remembered of tables."""
        from spoutline.bootstrap.table_maps import TableMaps

        return TableMaps(lambda: user_folder() / "table_maps")

    def position_tables(self) -> PositionTableService:
        """Return the use cases of tables of positions."""
        from spoutline.bootstrap.position_tables import PositionTableService

        return PositionTableService(self.table_maps(), self.dispenser_types)

    def covering(self) -> CoverageService:
        """Return the use cases of coverage maps, which remember what they answered."""
        return self._covering()

    def quoting(self) -> QuotationService:
        """Return the use cases of quotations, wired to the stores of this workbench."""
        return self._quoting()

    def standing(self, survey: Survey, survey_id: int) -> StationStanding:
        """Return where the work on a station stands, as the book knows it: ``survey_id`` is its number there."""
        from spoutline.bootstrap.standing import station_standing

        return station_standing(survey, survey_id, self._stores.book, self._stores.planned_with)

    def agreeing(self) -> AgreementService:
        """Return the use cases of agreed sets: the one door to the sets of a station."""
        from spoutline.bootstrap.agreements import AgreementService, Sources

        return AgreementService(
            Sources(
                tables=self._basis.tables,
                catalogue=self._stores.parts_to_plan_with,
                book=self._stores.book,
                agreed_lines=self._stores.agreed_lines,
                quoting=self.quoting,
                converting=self.converting,
                plan=lambda survey, progress, others: self.plan_site(survey, progress, with_alternatives=others),
                steps=self._basis.steps,
            )
        )

    def converting(self) -> ConversionService:
        """Return the use cases of conversions, wired to the stores of this workbench."""
        return self._converting()

    def packing(self) -> InstallerService:
        """Return the use cases of the installer, wired to the stores of this workbench."""
        return self._packing()

    def what_if(self) -> WhatIfService:
        """Return the use cases of other answers, looked at before anybody accepts one."""
        from spoutline.bootstrap.what_if import Sources, WhatIfService

        return WhatIfService(
            Sources(
                tables=self._basis.tables,
                catalogue=self._stores.parts_to_plan_with,
                edition=self._stores.edition,
                steps=self._basis.steps,
            )
        )

    def weighing(self) -> WeighingService:
        """Return the use cases of sets weighed against each other."""
        from spoutline.bootstrap.weighing import Sources, WeighingService

        return WeighingService(
            Sources(
                tables=self._basis.tables,
                catalogue=self._stores.parts_to_plan_with,
                steps=self._basis.steps,
                price_lists=lambda survey: self.quoting().terms().price_lists_for(self._stores.catalogue(survey)),
            )
        )

    def due_work(self) -> DueWorkService:
        """Return the use cases of the work due at all stations of the book."""
        from spoutline.bootstrap.due_work import DueWorkService
        from spoutline.bootstrap.kept_needs import KeptNeeds, NeedsKeys
        from spoutline.bootstrap.settings import cache_folder

        return DueWorkService(
            self._stores.book,
            self.agreeing,
            keys=lambda: NeedsKeys(self._stores, self._jurisdictions.folder()),
            kept=lambda: KeptNeeds(cache_folder() / "inspection_needs", self._stores.database_url()),
        )

    def stock(self) -> StockService:
        """Return the use cases of the firm's stock by place."""
        from spoutline.bootstrap.stock import Sources, StockService

        return StockService(
            Sources(
                book=self._stores.book, quoting=self.quoting, catalogue=self._stores.catalogue, part=self.parts().part
            )
        )

    def stock_orders(self) -> StockOrderService:
        """Return the use cases of ordering what the stock lacks."""
        from spoutline.bootstrap.stock_orders import StockOrderService

        return StockOrderService(self.quoting, self._stores.catalogue)

    def close(self) -> None:
        """Close the stores that were opened."""
        self._stores.close()

    # what is wired when first asked for

    def _wire_quoting(self) -> QuotationService:
        from spoutline.bootstrap.quotations import QuotationService, Sources

        return QuotationService(
            Sources(
                tables=self._basis.tables,
                catalogue=self._stores.catalogue,
                parts=self._stores.parts_to_plan_with,
                newest=self._stores.newest,
                story=self.story,
                price_folders=self._price_folders(),
                invented_prices=_invented_prices(),
                quotations=self._stores.quotations,
                steps=self._basis.steps,
                usual_terms=user_folder() / "usual_terms.toml",
                agree_order=lambda *order: self.agreeing().agree_order(*order),
            )
        )

    def _wire_covering(self) -> CoverageService:
        from spoutline.bootstrap.coverage import CoverageService

        return CoverageService(self._stores.edition, self._jurisdictions.tables)

    def _wire_converting(self) -> ConversionService:
        from spoutline.bootstrap.conversions import ConversionService, Sources

        return ConversionService(
            Sources(
                tables=self._basis.tables,
                catalogue=self._stores.catalogue,
                story=self.story,
                phrases=self._phrases,
                book=self._stores.book,
                open_converter=partial(open_converting, self._settings),
                close=self._stores.close,
                sets_for=lambda *asked: self.agreeing().handed_in(*asked),
                made_with=self._run_basis,
                rules_digest=self._rules_digest,
            )
        )

    def _rules_digest(self) -> bytes:
        from spoutline.bootstrap.run_basis import rule_files_digest

        kept = _resources()
        return rule_files_digest((kept / "rules", kept / "conversion", self._jurisdictions.folder()))

    def _run_basis(self) -> str:
        from spoutline.bootstrap.run_basis import run_basis

        return run_basis(self._stores, self._rules_digest())

    def _wire_packing(self) -> InstallerService:
        from spoutline.bootstrap.installer import InstallerService, Sources

        return InstallerService(
            Sources(
                tables=self._basis.tables,
                catalogue=self._stores.catalogue,
                book=self._stores.book,
                phrases=self._phrases,
                part_files=lambda: self.catalogues().files(),
            )
        )

    def _price_folders(self) -> tuple[Path, ...]:
        """Return the person's folders of price lists: that of the data folder, if any, those of the settings."""
        own = user_folder() / "prices"
        return (*((own,) if own.is_dir() else ()), *self._settings.price_lists)


def _invented_prices() -> Path:
    from spoutline import assets

    return assets.catalogue_folder() / "prices"


def _resources() -> Path:
    from spoutline import assets

    return assets.resources_folder()
