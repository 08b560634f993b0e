"""The use cases of the installer wired to their stores: what window and command line call for a day of work."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.bootstrap.once import Once, OnceEach
from spoutline.documents.paper_form import PaperForm
from spoutline.frozen import frozen
from spoutline.model.language import Language

if TYPE_CHECKING:
    from datetime import date

    from spoutline.book.book import Book
    from spoutline.book.record_book import RecordBook
    from spoutline.bootstrap.part_files import PartFileService
    from spoutline.bootstrap.phrase_tables import PhraseTables
    from spoutline.bootstrap.stores import EditionOf
    from spoutline.documents.pack.content import PackWords
    from spoutline.documents.pack.tablet_reading import FilledForm
    from spoutline.explain.plan.story import Story
    from spoutline.model.certificate import Certificate, CertifiedTest
    from spoutline.model.inspection import DueItem
    from spoutline.model.limit import RuleTables
    from spoutline.model.pack import PackJob
    from spoutline.model.part_ref import PartRef
    from spoutline.model.plan import PositionPlan, SitePlan
    from spoutline.model.record import (
        CommissioningRecord,
        JudgedRecord,
        PhotoNote,
        ReadingBand,
        ReadingVerdict,
        RecordEntry,
        RecordItem,
        RecordItemId,
        WearEntry,
    )
    from spoutline.model.shown_files import FilesOfParts
    from spoutline.model.stock import Stock, SwapOption
    from spoutline.model.survey import Survey
    from spoutline.planning.pack.scanned import FoundPosition
    from spoutline.planning.protocols import Progress
    from spoutline.planning.sets.context import PlanningContext
    from spoutline.units.display import Display

_MOST_FOUND = 80


@frozen
class Sources:
    """How the stores are reached; each opens when first asked for."""

    tables: Callable[[Survey], RuleTables]
    catalogue: EditionOf
    book: Callable[[], Book]
    phrases: PhraseTables
    part_files: Callable[[], PartFileService]


class InstallerService:
    """Packs, caution sheets and records. Methods may be called from several threads; tables are read once."""

    def __init__(self, sources: Sources) -> None:
        self._sources = sources
        self._words = OnceEach(self._read_words)
        self._bands = Once(_read_bands)

    def read_job(self, path: Path) -> PackJob:
        """Return what a person wrote about the job in a TOML file; raise ``InputFault`` naming every faulty field."""
        from spoutline.book.pack_job_text import read_pack_job

        return read_pack_job(path)

    def words(self, language: Language, display: Display) -> PackWords:
        """Return the words of one language, figures in ``display``'s units; raise ``InputFault`` or ``StoreFault``."""
        return self._words((language, display))

    def _read_words(self, wanted: tuple[Language, Display]) -> PackWords:
        from spoutline import assets
        from spoutline.documents.pack.content import PackWords
        from spoutline.explain.plan.story import Story
        from spoutline.ruletables.caution_signs import load_caution_signs

        language, display = wanted
        phrases = self._sources.phrases.pack(language)
        story = Story(phrases, display.written(Language(phrases.language)))
        cautions = self._sources.phrases.cautions(Language(phrases.language))
        return PackWords(story, cautions, load_caution_signs(assets.resources_folder()))

    def pack(
        self,
        site_plan: SitePlan,
        language: Language,
        display: Display,
        job: PackJob,
        dated: date | None = None,
        *,
        form: PaperForm = PaperForm.PDF,
        progress: Progress | None = None,
    ) -> bytes:
        """Return the installer's pack as PDF, or in another ``form``; the same bytes for the same arguments.

        Raise ``Cancelled`` where ``progress``, which hears how far it is, asks to stop.
        """
        from spoutline.documents.pack.papers import pack_pdf

        words = self.words(language, display)
        files = self.files_of(site_plan)
        return pack_pdf(site_plan, words, job, dated=dated, form=form, files=files, progress=progress)

    def files_of(self, site_plan: SitePlan) -> FilesOfParts:
        """Return the pictures and documents that the catalogue keeps with the parts of a plan's sets."""
        from spoutline.model.catalogue_edition import EditionRef

        made_from = site_plan.provenance
        if made_from.is_demonstration:
            return {}
        edition = EditionRef(made_from.catalogue, made_from.edition, made_from.edition is None)
        chosen = (plan.chosen.hanging_set.refs for plan in site_plan.positions if plan.chosen is not None)
        return self._sources.part_files().of_parts(edition, sorted({ref for refs in chosen for ref in refs}))

    def caution_sheet(
        self,
        site_plan: SitePlan,
        language: Language,
        display: Display,
        dated: date | None = None,
        *,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return the caution sheet by itself as PDF, or in another ``form``; the same bytes for the same arguments."""
        from spoutline.documents.pack.papers import caution_pdf

        return caution_pdf(site_plan, self.words(language, display), dated=dated, form=form)

    def find(self, code: str) -> FoundPosition:
        """Return the survey and position that a scanned code names; one that is as printed goes before a changed one.

        Raises
        ------
        InputFault
            The text is no code of a position sheet, or the book has no such site or position.
        """
        from spoutline.planning.pack.scanned import scanned_position

        return scanned_position(code, self._sources.book())

    # records

    def items(self, plan: PositionPlan) -> tuple[RecordItem, ...]:
        """Return what is measured and tried at a position before it goes into service."""
        from spoutline.rules.work.records import record_items

        return record_items(plan)

    def verdict(self, item: RecordItem, entry: RecordEntry | None) -> ReadingVerdict:
        """Return what is to be said of an entry at once."""
        from spoutline.rules.work.records import judged_entry

        return judged_entry(item, entry, self._bands().get(item.id))

    def records(self) -> RecordBook:
        """Return the records kept in the book."""
        return self._sources.book().position_records

    def recorded(self, site_plan: SitePlan) -> tuple[CommissioningRecord, ...]:
        """Return the records of a plan as built, oldest first; none of any other plan."""
        from spoutline.model.agreed_sets import SetsSource

        if site_plan.sets_from.source is not SetsSource.BUILT:
            return ()
        return tuple(one.record for one in self.records().commissioning(site_plan.survey.site.name))

    def form(
        self,
        site_plan: SitePlan,
        language: Language,
        display: Display,
        dated: date | None = None,
        *,
        progress: Progress | None = None,
    ) -> bytes:
        """Return the fillable commissioning form as PDF; raise ``InputFault`` where no position has a set.

        Raise ``Cancelled`` where ``progress`` asks to stop.
        """
        from spoutline.documents.pack.papers import form_pdf
        from spoutline.planning.part_names import namesakes

        known = namesakes(site_plan.refs, self._sources.catalogue(site_plan.survey))
        words = self.words(language, display)
        return form_pdf(site_plan, words, dated=dated, namesakes=known, progress=progress)

    def tablet_page(self, site_plan: SitePlan, language: Language, display: Display) -> bytes:
        """Return the form as an HTML page for a tablet without a network; errors as ``form``."""
        from spoutline.documents.pack.tablet_page import tablet_html
        from spoutline.planning.part_names import namesakes

        known = namesakes(site_plan.refs, self._sources.catalogue(site_plan.survey))
        return tablet_html(site_plan, self.words(language, display), self._bands(), namesakes=known)

    def read_form(self, path: Path, language: Language = Language.ENGLISH) -> FilledForm:
        """Return the records of a filled form, fields that cannot be used among them, and its pictures.

        It is a PDF, or what the page for a tablet saved; ``language`` is that of the words under a drawn signature.
        Raise ``InputFault``.
        """
        from spoutline.book.record_files import form_content, is_saved_page, saved_page_text
        from spoutline.documents.pack.form_reading import records_from_form
        from spoutline.documents.pack.tablet_reading import FilledForm, form_from_page
        from spoutline.explain.pack.words import PackWord
        from spoutline.model.day_of_work import latest_day
        from spoutline.planning.pack.recorded import with_known_parts, with_past_day

        catalogue = self._sources.catalogue()
        if is_saved_page(path):
            signature = self._sources.phrases.pack(language).word(PackWord.SIGNATURE)
            form = form_from_page(saved_page_text(path), str(path), signature, catalogue.read_refs)
        else:
            form = FilledForm(records_from_form(form_content(path), str(path), catalogue.read_refs), {})
        latest = latest_day(datetime.now(UTC))
        known = (with_past_day(with_known_parts(record, catalogue), latest) for record in form.records)
        return replace(form, records=tuple(known))

    def read_photo(self, path: Path) -> tuple[PhotoNote, bytes]:
        """Return a photo (PNG or JPEG) with the note that a record keeps of it; raise ``InputFault``."""
        from spoutline.book.record_files import photo_of

        return photo_of(path)

    def judge(self, record: CommissioningRecord, site_plan: SitePlan) -> JudgedRecord:
        """Return a record held against the plan it was made from.

        Raises
        ------
        InputFault
            The record is of another site, position or revision than the plan, or several makers have a number in it.
        """
        from spoutline.planning.pack.picked import plan_of, with_makers
        from spoutline.rules.work.records import judged_record, record_items

        plan = plan_of(record, site_plan)
        named = with_makers(record, plan, self._sources.catalogue(site_plan.survey))
        return judged_record(named, record_items(plan), self._bands())

    def judge_built(
        self, record: CommissioningRecord, plan: PositionPlan, survey: Survey, words: PackWords, story: Story
    ) -> JudgedRecord:
        """Return a record held against the plan of its position, with all that was found wrong in it.

        The parts fitted are judged as a set; ``words`` are those of the form, ``story`` tells what rules find. Raise
        ``InputFault`` where a part cannot be told, or is no part of a chain.
        """
        from spoutline.documents.pack.record_faults import entry_faults, paper_faults
        from spoutline.explain.plan.agreed_words import broken_musts
        from spoutline.planning.pack.as_built import built_position
        from spoutline.planning.pack.picked import with_makers
        from spoutline.rules.work.records import judged_record, record_items

        context = self._context(survey)
        named = with_makers(record, plan, context.parts)
        judged = judged_record(named, record_items(plan), self._bands())
        if not record.is_filled:
            return judged
        built = built_position(plan, named, context)
        fitted = broken_musts(built, story, named=True) if built is not plan else ()
        faults = (*fitted, *paper_faults(named, words.story))
        found = (*entry_faults(judged, words.story), *faults)[:_MOST_FOUND]
        return replace(judged, record=named.model_copy(update={"found": found}), faults=faults)

    def judge_wear(self, entry: WearEntry, plan: PositionPlan | None, survey: Survey | None, story: Story) -> WearEntry:
        """Return a replacement with what is found wrong with the set that hangs there then.

        Without a plan only the kinds of the parts are looked at. Raise ``InputFault`` where the part taken off does not
        hang there, or another kind of part was put on.
        """
        from spoutline.explain.plan.agreed_words import broken_musts
        from spoutline.planning.pack.recorded import check_kinds, replaced

        if plan is None or survey is None:
            check_kinds(entry, self._sources.catalogue())
            return entry
        known = self.records()
        records = [one.record for one in known.commissioning(entry.site)]
        built = replaced(entry, plan, records, known.wear(entry.site), self._context(survey))
        found = broken_musts(built, story, named=True)[:_MOST_FOUND] if entry.fitted else ()
        return entry.model_copy(update={"found": found})

    def hanging(self, plan: PositionPlan | None, survey: Survey) -> tuple[PartRef, ...]:
        """Return the parts that hang at a position now: by the records, else by the survey, else by the set shown."""
        from spoutline.planning.pack.recorded import hanging_parts

        if plan is None:
            return ()
        records = self.records()
        known = [one.record for one in records.commissioning(survey.site.name)]
        return hanging_parts(plan, known, records.wear(survey.site.name), self._context(survey))

    def _context(self, survey: Survey) -> PlanningContext:
        from spoutline.planning.sets.context import PlanningContext

        return PlanningContext(self._sources.tables(survey), self._sources.catalogue(survey))

    def record_sheet(
        self,
        judged: Sequence[JudgedRecord],
        site_plan: SitePlan,
        photos: Mapping[str, bytes],
        language: Language,
        display: Display,
        *,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return the records of positions with their photos, each from a new page on."""
        from spoutline.documents.pack.papers import record_pdf

        return record_pdf(site_plan, self.words(language, display), judged, photos, form=form)

    def certificates(self, site_plan: SitePlan, test: CertifiedTest) -> tuple[Certificate, ...]:
        """Return what the book holds of a test, for each dispenser of a plan with the sets that hang there.

        Raise ``InputFault`` where a position has no measurement, or none since a part was replaced.
        """
        from spoutline.planning.pack.certificates import certificates

        history = self.records().history(site_plan.survey.site.name)
        return certificates(site_plan, history, test, self._bands())

    def certificate(
        self,
        site_plan: SitePlan,
        test: CertifiedTest,
        language: Language,
        display: Display,
        dated: date | None = None,
        *,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return the certificates of a test as PDF, or in another ``form``; errors as ``certificates``."""
        from spoutline.documents.pack.papers import certificate_pdf

        found = self.certificates(site_plan, test)
        return certificate_pdf(site_plan, self.words(language, display), found, dated=dated, form=form)

    def as_built(self, site_plan: SitePlan, records: Sequence[CommissioningRecord]) -> SitePlan:
        """Return the plan with the parts that the records say were fitted, each changed set judged anew."""
        from spoutline.planning.pack.as_built import as_built_plan
        from spoutline.planning.sets.context import PlanningContext

        context = PlanningContext(self._sources.tables(site_plan.survey), self._sources.catalogue(site_plan.survey))
        return as_built_plan(site_plan, {record.position: record for record in records}, context)

    # inspections

    def due(self, site_plan: SitePlan, in_service: date) -> tuple[DueItem, ...]:
        """Return what is to be inspected at each position that has a set, and when next.

        The book says when it was last done, and what a replaced part or a drive-off left to be done.
        """
        from spoutline import assets
        from spoutline.planning.pack.inspection import due_at_site
        from spoutline.ruletables.inspection_items import load_inspection_items

        items = load_inspection_items(assets.resources_folder())
        history = self.records().history(site_plan.survey.site.name)
        return due_at_site(site_plan, items, history, in_service)

    def inspection_plan(
        self,
        site_plan: SitePlan,
        due: Sequence[DueItem],
        language: Language,
        display: Display,
        dated: date | None = None,
        *,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return the inspection plan with the site's wear log as PDF, or in another ``form``."""
        from spoutline.documents.pack.papers import inspection_pdf

        wear = self.records().wear(site_plan.survey.site.name)
        return inspection_pdf(site_plan, self.words(language, display), due, wear, dated=dated, form=form)

    def inspection_calendar(
        self, site_plan: SitePlan, due: Sequence[DueItem], language: Language, display: Display
    ) -> bytes:
        """Return the inspections as a calendar file of recurring days."""
        from spoutline.documents.pack.inspection_calendar import inspection_calendar

        return inspection_calendar(due, site_plan.survey.site, self.words(language, display).story)

    # swaps

    def read_stock(self, path: Path) -> Stock:
        """Return the stock list in a CSV file; raise ``InputFault`` with every fault and its line."""
        from spoutline.book.stock_text import read_stock

        return read_stock(path, self._sources.catalogue().read_ref)

    def stock_from_csv(self, text: str, place: str) -> Stock:
        """Return the stock list in a CSV text; raise ``InputFault`` with every fault and its line."""
        from spoutline.book.stock_text import stock_from_csv

        return stock_from_csv(text, place, self._sources.catalogue().read_ref)

    def swap_options(
        self, survey: Survey, plan: PositionPlan, missing: PartRef | str, stock: Stock
    ) -> tuple[SwapOption, ...]:
        """Return what of the stock would do in place of a missing part, each re-checked; raise ``InputFault``."""
        from spoutline.planning.pack.swap import swap_options
        from spoutline.planning.sets.context import PlanningContext
        from spoutline.planning.typed_numbers import followed

        catalogue = self._sources.catalogue(survey)
        asked = catalogue.as_written(missing) if isinstance(missing, str) else missing
        wanted, _trace = followed(asked, catalogue)
        return swap_options(plan, wanted, stock, PlanningContext(self._sources.tables(survey), catalogue))


def _read_bands() -> Mapping[RecordItemId, ReadingBand]:
    from spoutline import assets
    from spoutline.ruletables.inspection_items import load_reading_bands

    return load_reading_bands(assets.resources_folder())
