"""The use cases of quotations wired to their stores: what window and command line call for a refit."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.bootstrap.once import Once
from spoutline.documents.paper_form import PaperForm
from spoutline.frozen import frozen
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from datetime import date

    from sqlalchemy.orm import Session

    from spoutline.book.quotation_records import (
        IssuedPapers,
        QuotationEntry,
        QuotationEvent,
        StoredQuotation,
    )
    from spoutline.book.quotations import QuotationBook
    from spoutline.book.terms_files import TermsFolders
    from spoutline.bootstrap.stores import EditionOf, PlannedWith
    from spoutline.catalogue.price_lists import PriceListNames
    from spoutline.catalogue.store import CatalogueStore
    from spoutline.explain.plan.story import Story
    from spoutline.model.conversion_step import StepTable
    from spoutline.model.language import Language
    from spoutline.model.limit import RuleTables
    from spoutline.model.part import Part
    from spoutline.model.pricing import PriceList
    from spoutline.model.quotation import Quotation
    from spoutline.model.quotation_status import QuotationStatus
    from spoutline.model.quotation_terms import Labour, Terms
    from spoutline.model.quoted_option import PartName, QuotedAlternate, QuotedOption
    from spoutline.model.refit import RefitPlan
    from spoutline.model.survey import Survey
    from spoutline.model.usual_terms import UsualTerms
    from spoutline.planning.pricing.labour_forecast import LabourForecast
    from spoutline.planning.protocols import Progress
    from spoutline.planning.refit.money_change import Foreseen, MoneyChange
    from spoutline.planning.refit.quote import Quoted
    from spoutline.planning.refit.revision_changes import RevisionChange
    from spoutline.planning.refit.touched import TouchedPart
    from spoutline.units.display import Display
    from spoutline.whole_files import Staged


@frozen
class Sources:
    """How the stores are reached; each opens when first asked for."""

    tables: Callable[[Survey], RuleTables]
    catalogue: EditionOf
    parts: PlannedWith
    newest: Callable[[str], CatalogueStore | None]  # edition of a catalogue; None where the book has none of it
    story: Callable[[Display, Language | None], Story]
    price_folders: tuple[Path, ...]  # of the person, whatever catalogue is planned with
    invented_prices: Path  # folder of the lists that come with the program; they price *Demonstration* alone
    quotations: Callable[[], QuotationBook]
    usual_terms: Path
    steps: Callable[[], StepTable]
    # returns what agrees on the sets of an option that is ordered, inside the unit of work that notes the order
    agree_order: Callable[[StoredQuotation, str, str, str], Callable[[Session], object]]


class QuotationService:
    """Terms, price lists, quotations and their papers. Methods may be called from several threads."""

    def __init__(self, sources: Sources) -> None:
        self._sources = sources
        self._lists = Once(self._read_price_lists)
        self._invented_lists = Once(self._read_invented_lists)

    # terms and price lists

    def read_terms(self, path: Path) -> Terms:
        """Return the terms in a TOML file, the person's usual terms where it says nothing.

        Raise ``InputFault`` naming every faulty field.
        """
        from spoutline.book.terms_text import read_terms

        return read_terms(path, self._sources.usual_terms)

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

        return read_usual_file(self._sources.usual_terms)

    def keep_usual_terms(self, usual: UsualTerms, folder: Path | None) -> Path:
        """Keep what quotations share as the usual terms, the picture with it, and return their file.

        Raise ``StoreFault`` where it cannot be written, ``InputFault`` where the file that is there is faulty.
        """
        from spoutline.book.terms_files import write_usual_file

        write_usual_file(usual, self._sources.usual_terms, self._picture_folders(folder))
        return self._sources.usual_terms

    def picture(self, name: str, folder: Path | None) -> Path | None:
        """Return the file of a letterhead's picture: in ``folder``, else beside the usual terms; None for none."""
        return self._picture_folders(folder).picture(name)

    def _picture_folders(self, folder: Path | None) -> TermsFolders:
        from spoutline.book.terms_files import TermsFolders

        return TermsFolders(folder, self._sources.usual_terms.parent)

    def price_list_names(self, survey: Survey | None = None) -> PriceListNames:
        """Return makers, discount groups, currencies and part numbers that the price lists know.

        Raise ``InputFault`` with every fault of every list.
        """
        from spoutline.catalogue.price_lists import names_in

        return names_in(self.price_lists_for(self._sources.catalogue(survey)))

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

        return tuple(one for folder in self._sources.price_folders for one in read_price_lists(folder))

    def _read_invented_lists(self) -> tuple[PriceList, ...]:
        from spoutline.catalogue.price_lists import read_price_lists

        return read_price_lists(self._sources.invented_prices)

    # planning and quoting

    def plan_refit(self, survey: Survey, stock_price_minor: int | None, progress: Progress | None = None) -> RefitPlan:
        """Plan a station at catalogue prices; choose sets together where a price per part number is given."""
        from spoutline.planning.refit.station import plan_refit, stocking_at_list_price
        from spoutline.planning.sets.supersession import with_successors

        parts = self._sources.parts(survey)
        updated, superseded = with_successors(survey, parts)
        return plan_refit(
            updated,
            self._sources.tables(survey),
            parts,
            stocking=stocking_at_list_price(stock_price_minor, survey.site.currency),
            supersessions=superseded,
            steps=self._sources.steps(),
            progress=progress,
        )

    def quote(
        self,
        survey: Survey,
        terms: Terms,
        display: Display,
        *,
        origin: tuple[int, int] | None = None,
        logo: str = "",
        progress: Progress | None = None,
    ) -> Quoted:
        """Return the quotation of a survey on terms, with the plan of each option; see ``planning.refit.quote``."""
        from spoutline.model.liquid import Liquid
        from spoutline.planning.refit.quote import quote
        from spoutline.planning.refit.quote_sources import QuoteSources
        from spoutline.planning.typed_numbers import with_current_parts

        story = self._sources.story(display, None)
        parts = self._sources.catalogue(survey)
        terms = with_current_parts(terms, parts)
        if parts.edition().ref.is_draft:
            wanted = "publish the draft first: a quotation names an edition that stays as it is"
            raise InputFault((InputProblem("", "catalogue", repr(str(parts.edition().ref)), wanted),))
        sources = QuoteSources(
            tables=self._sources.tables(survey),
            steps=self._sources.steps(),
            parts=parts,
            price_lists=self.price_lists_for(parts),
            liquid_text=lambda one: story.liquid(Liquid(one.liquid.family, one.liquid.blend_percent)),
            part_names=self._part_names(display),
        )
        return quote(survey, terms, sources, origin=origin, logo=logo, progress=progress)

    def foresee(
        self,
        before: Quotation,
        survey: Survey,
        terms: Terms | None,
        display: Display,
        *,
        origin: tuple[int, int] | None = None,
        logo: str = "",
        progress: Progress | None = None,
    ) -> Foreseen:
        """Return what a survey would be quoted at, and what that means in money beside a quotation; nothing is kept.

        Without ``terms`` those of the quotation hold, so that the survey alone makes the difference as long as catalog
        and price lists are the same. Raise what ``quote`` raises.
        """
        from spoutline.planning.refit.money_change import Foreseen, money_change

        on = before.terms if terms is None else terms
        quoted = self.quote(survey, on, display, origin=origin, logo=logo or before.logo, progress=progress)
        return Foreseen(quoted.quotation, money_change(before, quoted.quotation))

    def with_alternate(
        self, before: Quotation, taken: QuotedAlternate, display: Display, progress: Progress | None = None
    ) -> Foreseen:
        """Return a quotation again with an alternate in the place of its part, and what that means in money.

        Its own survey, in which the alternate is kept, and its own terms hold. Nothing is kept in the book.
        """
        from spoutline.planning.refit.alternates import with_alternate

        pins = before.pins
        origin = None
        if pins.survey_id is not None and pins.survey_revision is not None:
            origin = (pins.survey_id, pins.survey_revision)
        survey = with_alternate(pins.survey, before, taken)
        return self.foresee(before, survey, None, display, origin=origin, progress=progress)

    def alternate(self, quotation: Quotation, number: str) -> QuotedAlternate:
        """Return the alternate of this part number that a quotation offers; raise ``InputFault`` with those it does."""
        found = [one for one in quotation.offered_alternates if one.part_number == number or str(one.part) == number]
        if len(found) != 1:
            known = ", ".join(str(one.part) for one in quotation.offered_alternates) or "the quotation offers none"
            raise InputFault((InputProblem("", "alternate", repr(number), known),))
        return found[0]

    def _part_names(self, display: Display) -> Callable[[Part], tuple[PartName, ...]]:
        """Return what words a part in every language but the catalog's, so that a quotation is printed in any."""
        from spoutline.model.language import Language
        from spoutline.model.quoted_option import PartName

        stories = [(one, self._sources.story(display, one)) for one in Language if one is not Language.ENGLISH]
        return lambda part: tuple(PartName(language=one, name=story.part_name(part)) for one, story in stories)

    def check_prices(self, quotation: Quotation) -> None:
        """Raise ``InputFault`` naming every part without a price for which nobody answers."""
        from spoutline.book.issue_checks import check_prices

        check_prices(quotation)

    # the life of a quotation

    def quotations(
        self, text: str = "", status: QuotationStatus | None = None, due_by: date | None = None
    ) -> tuple[QuotationEntry, ...]:
        """Return quotations, last changed first, where number, customer, site or a part holds each word of ``text``.

        With ``due_by``, those alone that are to be followed up by that day.
        """
        return self._sources.quotations().entries(text, status, due_by)

    def follow_up(self, quotation_id: int, day: date | None) -> StoredQuotation:
        """Keep the day on which to ask the customer again, None for none."""
        return self._sources.quotations().follow_up(quotation_id, day)

    def stored(self, quotation_id: int) -> StoredQuotation:
        """Return the newest revision of a quotation; raise ``InputFault`` where there is none."""
        return self._sources.quotations().stored(quotation_id)

    def sent_under(self, quotation: Quotation, besides: int | None) -> QuotationEntry | None:
        """Return another quotation sent under the number of this one, which has the id ``besides``; or None."""
        return self._sources.quotations().sent_under(quotation.terms.heading.number, besides)

    def of_survey(self, survey_id: int) -> tuple[QuotationEntry, ...]:
        """Return the quotations of a survey of the book, that on which somebody last took a step first."""
        return self._sources.quotations().of_survey(survey_id)

    def of_job(self, survey_id: int) -> QuotationEntry | None:
        """Return the quotation by which the job of a survey is done: what was ordered last, else the first of them."""
        found = self.of_survey(survey_id)
        return next((one for one in found if self.ordered_revision(one.id) is not None), found[0] if found else None)

    def named(self, text: str) -> StoredQuotation:
        """Return the newest revision of the quotation with this id, or with this number printed on its paper.

        An id goes before a number. Raise ``InputFault`` where there is none, or several have the number.
        """
        from spoutline.model.faults import InputFault, InputProblem

        book = self._sources.quotations()
        known = {entry.id: entry.number for entry in book.entries()}
        if text.isdecimal() and int(text) in known:
            return book.stored(int(text))
        numbered = [one for one, number in known.items() if number == text]
        if len(numbered) == 1:
            return book.stored(numbered[0])
        ids = ", ".join(map(str, sorted(numbered)))
        wanted = (
            Worded("several have this number; name one by its id: {ids}", ids=ids)
            if ids
            else "the book holds no such quotation"
        )
        raise InputFault((InputProblem("", "quotation", text, wanted),))

    def standing(self, text: str) -> StoredQuotation:
        """Return the quotation that a person names, at the revision that was ordered where one was, else the newest.

        Raise ``InputFault``.
        """
        stored = self.named(text)
        revision = self.ordered_revision(stored.id)
        if revision is None or revision == stored.revision:
            return stored
        return replace(stored, revision=revision, quotation=self.at_revision(stored.id, revision))

    def option_ordered(self, stored: StoredQuotation) -> str:
        """Return the title of the option that was ordered of a revision; empty where none was, or only one is there."""
        steps = [one for one in self.history(stored.id) if one.revision == stored.revision]
        return next((one.option for one in reversed(steps) if one.option), "")

    def ordered_option(self, text: str) -> QuotedOption:
        """Return an option of a quotation, ``ID`` or ``ID:OPTION`` (title, or its number from 1).

        Without an option: the one that was ordered, else the only one. Raise ``InputFault`` with the titles.
        """
        name, _, title = text.partition(":")
        stored = self.standing(name)
        options = stored.quotation.options
        title = title or self.option_ordered(stored)
        if not title and len(options) == 1:
            return options[0]
        for number, one in enumerate(options, start=1):
            if title in (one.title, str(number)):
                return one
        known = ", ".join(f"“{one.title}”" for one in options)
        raise InputFault((InputProblem("", "option", repr(title), known),))

    def at_revision(self, quotation_id: int, revision: int) -> Quotation:
        """Return a quotation as it was at a revision; raise ``InputFault`` where there is none."""
        return self._sources.quotations().at_revision(quotation_id, revision)

    def history(self, quotation_id: int) -> tuple[QuotationEvent, ...]:
        """Return the steps of a quotation, oldest first."""
        return self._sources.quotations().events(quotation_id)

    def keep(self, quotation: Quotation, by: str = "") -> StoredQuotation:
        """Put a quotation into the book as a draft."""
        return self._sources.quotations().create(quotation, by)

    def save_draft(self, stored: StoredQuotation, quotation: Quotation, by: str = "") -> StoredQuotation:
        """Save over a draft; raise ``StaleQuotation`` where somebody changed it in the meantime."""
        return self._sources.quotations().save_draft(stored, quotation, by)

    def issue(
        self,
        stored: StoredQuotation,
        by: str,
        display: Display,
        write: Callable[[IssuedPapers], AbstractContextManager[Staged]] | None = None,
        incomplete: str = "",
        *,
        low_margin: str = "",
    ) -> StoredQuotation:
        """Issue a draft: its papers are set and kept byte for byte. Raise ``InputFault`` naming what blocks.

        ``incomplete`` is why ``by`` issues options that leave hoses out; paper and revision keep both.
        ``low_margin`` is why lines are issued below cost or the least margin; only the revision keeps that.
        ``write`` stages the papers as files, see ``whole_files.staged``: they are written and the quotation issued
        together, or neither.
        """
        from spoutline.book.issue_checks import check_coverage, check_margins
        from spoutline.book.quotation_records import IssuedPapers

        quotation = stored.quotation
        self.check_prices(quotation)
        if incomplete.strip() and by.strip():
            quotation = quotation.answered_by(by.strip(), incomplete.strip())
        check_coverage(quotation)
        if low_margin.strip() and by.strip():
            quotation = quotation.margin_answered_by(by.strip(), low_margin.strip())
        check_margins(quotation)
        papers = IssuedPapers(
            pdf=self.pdf(quotation, stored.revision, display),
            workbook=self.workbook(quotation, stored.revision, display),
            html=self.pdf(quotation, stored.revision, display, PaperForm.HTML),
        )
        book, words, low = self._sources.quotations(), quotation.incomplete_words, quotation.margin_words
        if write is None:
            return book.issue(stored, papers, by, words=words, margin_words=low)
        with write(papers) as files:
            return book.issue(stored, papers, by, files.place, words, margin_words=low)

    def answer(
        self, stored: StoredQuotation, answer: QuotationStatus, by: str, note: str = "", option: str = ""
    ) -> StoredQuotation:
        """Note that the customer accepted or declined; an order out of several options names the ``option``.

        The sets of the option that is ordered are agreed with it: the book keeps both or neither.
        """
        from spoutline.model.quotation_status import QuotationStatus

        quotations = self._sources.quotations()
        if answer is not QuotationStatus.ACCEPTED:
            return quotations.answer(stored, answer, by, note, option)
        agree = self._sources.agree_order(stored, option, by, note)
        return quotations.answer(stored, answer, by, note, option, with_it=agree)

    def revise(
        self, stored: StoredQuotation, quotation: Quotation, by: str, *, changes_order: bool = False
    ) -> StoredQuotation:
        """Open a new revision as a draft; with ``changes_order`` beside one that was ordered, which stays as it is."""
        return self._sources.quotations().revise(stored, quotation, by, changes_order=changes_order)

    def ordered_revision(self, quotation_id: int) -> int | None:
        """Return the revision that was ordered last, whatever became of later ones; None where none was."""
        from spoutline.model.quotation_life import standing_order

        return standing_order((one.revision, one.status) for one in self.history(quotation_id))

    def expire(self, today: date) -> tuple[int, ...]:
        """Let every issued quotation expire whose last day lies before ``today``; return their ids."""
        return self._sources.quotations().expire(today)

    def issued_papers(self, quotation_id: int, revision: int) -> IssuedPapers:
        """Return the papers of an issued revision byte for byte; raise ``InputFault`` where it was not issued."""
        return self._sources.quotations().papers(quotation_id, revision)

    def issued_html(self, quotation_id: int, revision: int, display: Display) -> bytes:
        """Return the HTML paper of an issued revision byte for byte; raise ``InputFault`` where it was not issued.

        Where the version that issued it kept none, it is made from the revision.
        """
        kept = self.issued_papers(quotation_id, revision).html
        return kept or self.pdf(self.at_revision(quotation_id, revision), revision, display, PaperForm.HTML)

    def changes(self, quotation_id: int, before: int, after: int) -> tuple[RevisionChange, ...]:
        """Return what changed between two revisions; raise ``InputFault`` where one is not there."""
        from spoutline.planning.refit.revision_changes import revision_changes

        book = self._sources.quotations()
        return revision_changes(book.at_revision(quotation_id, before), book.at_revision(quotation_id, after))

    def touched(self, today: date) -> tuple[tuple[StoredQuotation, tuple[TouchedPart, ...]], ...]:
        """Return the open quotations whose parts or prices are not what they were, with those parts."""
        from spoutline.planning.refit.touched import touched_quotations

        still_open = self._sources.quotations().open_quotations()
        found: dict[int, tuple[TouchedPart, ...]] = {}
        for name in sorted({one.quotation.pins.catalogue for one in still_open}):
            parts = self._sources.newest(name)
            mine = [one for one in still_open if one.quotation.pins.catalogue == name]
            if parts is not None:
                touched = touched_quotations(mine, parts, self.price_lists_for(parts), today)
                found.update({one.id: what for one, what in touched})
        return tuple((one, found[one.id]) for one in still_open if one.id in found)

    # papers

    def pdf(self, quotation: Quotation, revision: int, display: Display, form: PaperForm = PaperForm.PDF) -> bytes:
        """Return the quotation as PDF; the same bytes for the same arguments."""
        from spoutline.documents.quotation.papers import quotation_pdf

        return quotation_pdf(quotation, revision, self._sources.story(display, None), form)

    def pick_list(
        self,
        quotation: Quotation,
        option: int,
        revision: int,
        display: Display,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return the pick list of one option, counted from 0, as PDF."""
        from spoutline.documents.quotation.papers import pick_list_pdf

        return pick_list_pdf(quotation, option, revision, self._sources.story(display, None), form)

    def margin_sheet(
        self, quotation: Quotation, revision: int, display: Display, form: PaperForm = PaperForm.PDF
    ) -> bytes:
        """Return cost and margin of every line, option and the quotation as an internal paper."""
        from spoutline.documents.quotation.papers import margin_pdf

        return margin_pdf(quotation, revision, self._sources.story(display, None), form)

    def margin_csv(self, quotation: Quotation, revision: int) -> bytes:
        """Return cost and margin of every line as CSV, each row marked as internal."""
        from spoutline.documents.quotation.margin_tables import margin_csv

        return margin_csv(quotation, revision)

    def margin_workbook(self, quotation: Quotation, revision: int, display: Display) -> bytes:
        """Return the internal sheet as a workbook, every page headed so."""
        from spoutline.documents.quotation.margin_tables import margin_xlsx

        return margin_xlsx(quotation, revision, self._sources.story(display, None))

    def money_json(self, change: MoneyChange, quotation: Quotation, revision: int) -> str:
        """Return what a quotation made anew means in money as a JSON document, beside a quotation and its revision."""
        from spoutline.documents.json.money_change import money_change_json

        return money_change_json(change, quotation.terms.heading.number, revision)

    def margin_json(self, quotation: Quotation, revision: int) -> str:
        """Return cost and margin of every line, option and the quotation as a JSON document."""
        from spoutline.documents.json.margin import margin_json

        return margin_json(quotation, revision)

    def workbook(self, quotation: Quotation, revision: int, display: Display) -> bytes:
        """Return the quotation as a workbook whose formulas recompute every amount."""
        from spoutline.documents.quotation.papers import quotation_workbook

        return quotation_workbook(quotation, revision, self._sources.story(display, None))

    def order_csv(self, quotation: Quotation, revision: int, ordered: str = "") -> bytes:
        """Return the lines for an order system as CSV: of every option, or of the one titled ``ordered``."""
        from spoutline.documents.quotation.papers import quotation_order_csv

        return quotation_order_csv(quotation, revision, ordered)
