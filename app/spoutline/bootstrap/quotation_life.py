"""The life of a quotation in the book: from draft to answer, its revisions, and what catalogs change under it."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager
from dataclasses import replace
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm
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
    from spoutline.bootstrap.quotation_papers import QuotationPapers
    from spoutline.bootstrap.quotation_terms import QuotationTerms
    from spoutline.catalogue.store import CatalogueStore
    from spoutline.model.quotation import Quotation
    from spoutline.model.quotation_status import QuotationStatus
    from spoutline.model.quoted_option import QuotedOption
    from spoutline.planning.refit.revision_changes import RevisionChange
    from spoutline.planning.refit.touched import TouchedPart
    from spoutline.units.display import Display
    from spoutline.whole_files import Staged

# returns what agrees on the sets of an option that is ordered, inside the unit of work that notes the order
AgreeOrder = Callable[["StoredQuotation", str, str, str], Callable[["Session"], object]]


class QuotationLife:
    """The quotations that the book keeps. Methods may be called from several threads.

    ``newest`` returns the edition of a catalogue, None where the book has none of it.
    """

    def __init__(
        self,
        book: Callable[[], QuotationBook],
        newest: Callable[[str], CatalogueStore | None],
        agree_order: AgreeOrder,
        terms: QuotationTerms,
        papers: QuotationPapers,
    ) -> None:
        self._book, self._newest, self._agree_order = book, newest, agree_order
        self._terms, self._papers = terms, papers

    def quotations(
        self, text: str = "", status: QuotationStatus | None = None, due_by: date | None = None
    ) -> tuple[QuotationEntry, ...]:
        """Return quotations, last changed first, where number, customer, site or a part holds each word of ``text``.

        With ``due_by``, those alone that are to be followed up by that day.
        """
        return self._book().entries(text, status, due_by)

    def follow_up(self, quotation_id: int, day: date | None) -> StoredQuotation:
        """Keep the day on which to ask the customer again, None for none."""
        return self._book().follow_up(quotation_id, day)

    def stored(self, quotation_id: int) -> StoredQuotation:
        """Return the newest revision of a quotation; raise ``InputFault`` where there is none."""
        return self._book().stored(quotation_id)

    def sent_under(self, quotation: Quotation, besides: int | None) -> QuotationEntry | None:
        """Return another quotation sent under the number of this one, which has the id ``besides``; or None."""
        return self._book().sent_under(quotation.terms.heading.number, besides)

    def check_unsent(self, quotation: Quotation, revision: int) -> None:
        """Raise ``InputFault`` where something else was sent under the number of a quotation that the book has not.

        The same once more, as that revision, is nothing else.
        """
        other = self.sent_under(quotation, None)
        if other is None or self._was_sent(quotation, other.id, revision):
            return
        wanted = Worded(
            "another was sent under this number, to {customer} for {site}: revise that one with {command}, or give "
            "this one its own number",
            customer=other.customer,
            site=other.site,
            command=f"`spoutline quotation revise {other.id}`",
        )
        raise InputFault((InputProblem("", "heading.number", other.number, wanted),))

    def _was_sent(self, quotation: Quotation, quotation_id: int, revision: int) -> bool:
        """Say whether a quotation would be the paper of a revision that was issued."""
        from spoutline.model.quotation_status import QuotationStatus

        issued = {one.revision for one in self.history(quotation_id) if one.status is QuotationStatus.ISSUED}
        return revision in issued and quotation.says_the_same_as(self.at_revision(quotation_id, revision))

    def of_survey(self, survey_id: int) -> tuple[QuotationEntry, ...]:
        """Return the quotations of a survey of the book, that on which somebody last took a step first."""
        return self._book().of_survey(survey_id)

    def of_job(self, survey_id: int) -> QuotationEntry | None:
        """Return the quotation by which the job of a survey is done: what was ordered last, else the first of them."""
        found = self.of_survey(survey_id)
        return next((one for one in found if self.ordered_revision(one.id) is not None), found[0] if found else None)

    def named(self, text: str) -> StoredQuotation:
        """Return the newest revision of the quotation with this id, or with this number printed on its paper.

        An id goes before a number. Raise ``InputFault`` where there is none, or several have the number.
        """
        book = self._book()
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
        return self._book().at_revision(quotation_id, revision)

    def history(self, quotation_id: int) -> tuple[QuotationEvent, ...]:
        """Return the steps of a quotation, oldest first."""
        return self._book().events(quotation_id)

    def keep(self, quotation: Quotation, by: str = "") -> StoredQuotation:
        """Put a quotation into the book as a draft."""
        return self._book().create(quotation, by)

    def save_draft(self, stored: StoredQuotation, quotation: Quotation, by: str = "") -> StoredQuotation:
        """Save over a draft; raise ``StaleQuotation`` where somebody changed it in the meantime."""
        return self._book().save_draft(stored, quotation, by)

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
        from spoutline.book.issue_checks import check_coverage, check_margins, check_prices
        from spoutline.book.quotation_records import IssuedPapers

        quotation = stored.quotation
        check_prices(quotation)
        if incomplete.strip() and by.strip():
            quotation = quotation.answered_by(by.strip(), incomplete.strip())
        check_coverage(quotation)
        if low_margin.strip() and by.strip():
            quotation = quotation.margin_answered_by(by.strip(), low_margin.strip())
        check_margins(quotation)
        papers = IssuedPapers(
            pdf=self._papers.pdf(quotation, stored.revision, display),
            workbook=self._papers.workbook(quotation, stored.revision, display),
            html=self._papers.pdf(quotation, stored.revision, display, PaperForm.HTML),
        )
        book, words, low = self._book(), quotation.incomplete_words, quotation.margin_words
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

        quotations = self._book()
        if answer is not QuotationStatus.ACCEPTED:
            return quotations.answer(stored, answer, by, note, option)
        agree = self._agree_order(stored, option, by, note)
        return quotations.answer(stored, answer, by, note, option, with_it=agree)

    def revise(
        self, stored: StoredQuotation, quotation: Quotation, by: str, *, changes_order: bool = False
    ) -> StoredQuotation:
        """Open a new revision as a draft; with ``changes_order`` beside one that was ordered, which stays as it is."""
        return self._book().revise(stored, quotation, by, changes_order=changes_order)

    def ordered_revision(self, quotation_id: int) -> int | None:
        """Return the revision that was ordered last, whatever became of later ones; None where none was."""
        from spoutline.model.quotation_life import standing_order

        return standing_order((one.revision, one.status) for one in self.history(quotation_id))

    def expire(self, today: date) -> tuple[int, ...]:
        """Let every issued quotation expire whose last day lies before ``today``; return their ids."""
        return self._book().expire(today)

    def issued_papers(self, quotation_id: int, revision: int) -> IssuedPapers:
        """Return the papers of an issued revision byte for byte; raise ``InputFault`` where it was not issued."""
        return self._book().papers(quotation_id, revision)

    def issued_html(self, quotation_id: int, revision: int, display: Display) -> bytes:
        """Return the HTML paper of an issued revision byte for byte; raise ``InputFault`` where it was not issued.

        Where the version that issued it kept none, it is made from the revision.
        """
        kept = self.issued_papers(quotation_id, revision).html
        return kept or self._papers.pdf(self.at_revision(quotation_id, revision), revision, display, PaperForm.HTML)

    def changes(self, quotation_id: int, before: int, after: int) -> tuple[RevisionChange, ...]:
        """Return what changed between two revisions; raise ``InputFault`` where one is not there."""
        from spoutline.planning.refit.revision_changes import revision_changes

        book = self._book()
        return revision_changes(book.at_revision(quotation_id, before), book.at_revision(quotation_id, after))

    def touched(self, today: date) -> tuple[tuple[StoredQuotation, tuple[TouchedPart, ...]], ...]:
        """Return the open quotations whose parts or prices are not what they were, with those parts."""
        from spoutline.planning.refit.touched import touched_quotations

        still_open = self._book().open_quotations()
        found: dict[int, tuple[TouchedPart, ...]] = {}
        for name in sorted({one.quotation.pins.catalogue for one in still_open}):
            parts = self._newest(name)
            mine = [one for one in still_open if one.quotation.pins.catalogue == name]
            if parts is not None:
                touched = touched_quotations(mine, parts, self._terms.price_lists_for(parts), today)
                found.update({one.id: what for one, what in touched})
        return tuple((one, found[one.id]) for one in still_open if one.id in found)
