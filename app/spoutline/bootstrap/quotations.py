"""A station planned for a refit and quoted, wired to the stores; hands out the other use cases of quotations."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.bootstrap.quotation_life import AgreeOrder, QuotationLife
from spoutline.bootstrap.quotation_papers import QuotationPapers
from spoutline.bootstrap.quotation_terms import QuotationTerms
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from spoutline.book.quotations import QuotationBook
    from spoutline.bootstrap.stores import EditionOf, PlannedWith
    from spoutline.catalogue.store import CatalogueStore
    from spoutline.explain.plan.story import Story
    from spoutline.model.conversion_step import StepTable
    from spoutline.model.language import Language
    from spoutline.model.limit import RuleTables
    from spoutline.model.part import Part
    from spoutline.model.quotation import Quotation
    from spoutline.model.quotation_terms import Terms
    from spoutline.model.quoted_option import PartName, QuotedAlternate
    from spoutline.model.refit import RefitPlan
    from spoutline.model.survey import Survey
    from spoutline.planning.protocols import Progress
    from spoutline.planning.refit.money_change import Foreseen
    from spoutline.planning.refit.quote import Quoted
    from spoutline.units.display import Display


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
    agree_order: AgreeOrder


class QuotationService:
    """Plans and quotes, and keeps nothing. Methods may be called from several threads."""

    def __init__(self, sources: Sources) -> None:
        self._sources = sources
        self._terms = QuotationTerms(
            sources.usual_terms, sources.catalogue, sources.price_folders, sources.invented_prices
        )
        self._papers = QuotationPapers(sources.story)
        self._life = QuotationLife(sources.quotations, sources.newest, sources.agree_order, self._terms, self._papers)

    def terms(self) -> QuotationTerms:
        """Return the use cases of terms and price lists."""
        return self._terms

    def life(self) -> QuotationLife:
        """Return the use cases of quotations that the book keeps."""
        return self._life

    def papers(self) -> QuotationPapers:
        """Return what a quotation is written as."""
        return self._papers

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
            price_lists=self._terms.price_lists_for(parts),
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
