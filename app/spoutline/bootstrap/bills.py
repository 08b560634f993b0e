"""The bill on paper and in files, wired to the words and cautions it needs."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from types import MappingProxyType
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm
from spoutline.model.language import Language

if TYPE_CHECKING:
    from datetime import date

    from spoutline.bootstrap.phrase_tables import PhraseTables
    from spoutline.explain.plan.story import Story
    from spoutline.model.funnel import SetReasons
    from spoutline.model.no_set import NoSetReasons
    from spoutline.model.plan import SitePlan
    from spoutline.model.record import CommissioningRecord
    from spoutline.planning.protocols import Progress
    from spoutline.units.display import Display


class BillService:
    """Bills of a planned site; the same bytes for the same arguments. ``story`` gives the words for a display."""

    def __init__(self, story: Callable[[Display, Language | None], Story], phrases: PhraseTables) -> None:
        self._story, self._phrases = story, phrases

    def pdf(
        self,
        site_plan: SitePlan,
        display: Display,
        dated: date | None = None,
        *,
        calculations: bool = True,
        records: Sequence[CommissioningRecord] = (),
        language: Language | None = None,
        reasons: Mapping[str, SetReasons | NoSetReasons] = MappingProxyType({}),
        form: PaperForm = PaperForm.PDF,
        progress: Progress | None = None,
    ) -> bytes:
        """Return the bill with checks, drawings and caution sheet as PDF, or in another ``form``.

        ``calculations`` False leaves the calculation sheets out; ``records`` are those that a plan as built was made
        from, oldest first; ``reasons`` why the parts of positions were chosen, or no set fits, by label. Raise
        ``Cancelled`` where ``progress``, which hears how far it is, asks to stop.
        """
        from spoutline.documents.bill import bill_pdf

        story = self._story(display, language)
        return bill_pdf(
            site_plan,
            story,
            self._phrases.cautions(Language(story.phrases.language)),
            dated=dated,
            calculations=calculations,
            records=tuple(records),
            reasons=reasons,
            form=form,
            progress=progress,
        )

    def short_pdf(
        self,
        site_plan: SitePlan,
        display: Display,
        dated: date | None = None,
        *,
        records: Sequence[CommissioningRecord] = (),
        language: Language | None = None,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return parts and verdicts alone, then the caution sheet; arguments as ``pdf``."""
        from spoutline.documents.bill import short_bill_pdf

        story = self._story(display, language)
        cautions = self._phrases.cautions(Language(story.phrases.language))
        return short_bill_pdf(site_plan, story, cautions, dated=dated, records=tuple(records), form=form)

    def csv(self, site_plan: SitePlan, display: Display, records: Sequence[CommissioningRecord] = ()) -> bytes:
        """Return the parts list as CSV for an order system, the same in every language; ``records`` as of ``pdf``."""
        from spoutline.documents.bill import bill_csv

        return bill_csv(site_plan, self._story(display, Language.ENGLISH), tuple(records))

    def xlsx(
        self,
        site_plan: SitePlan,
        display: Display,
        language: Language | None = None,
        records: Sequence[CommissioningRecord] = (),
    ) -> bytes:
        """Return the bill as a workbook; ``records`` as of ``pdf``."""
        from spoutline.documents.bill import bill_xlsx

        return bill_xlsx(site_plan, self._story(display, language), tuple(records))
