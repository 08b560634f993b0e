"""The papers and tables of a quotation, those of the customer and the internal ones, in the words of the workbench."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm

if TYPE_CHECKING:
    from spoutline.explain.plan.story import Story
    from spoutline.model.language import Language
    from spoutline.model.quotation import Quotation
    from spoutline.planning.refit.money_change import MoneyChange
    from spoutline.units.display import Display


class QuotationPapers:
    """What a quotation is written as. Methods may be called from several threads."""

    def __init__(self, story: Callable[[Display, Language | None], Story]) -> None:
        self._story = story

    def pdf(self, quotation: Quotation, revision: int, display: Display, form: PaperForm = PaperForm.PDF) -> bytes:
        """Return the quotation as PDF; the same bytes for the same arguments."""
        from spoutline.documents.quotation.papers import quotation_pdf

        return quotation_pdf(quotation, revision, self._story(display, None), form)

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

        return pick_list_pdf(quotation, option, revision, self._story(display, None), form)

    def margin_sheet(
        self, quotation: Quotation, revision: int, display: Display, form: PaperForm = PaperForm.PDF
    ) -> bytes:
        """Return cost and margin of every line, option and the quotation as an internal paper."""
        from spoutline.documents.quotation.papers import margin_pdf

        return margin_pdf(quotation, revision, self._story(display, None), form)

    def margin_csv(self, quotation: Quotation, revision: int) -> bytes:
        """Return cost and margin of every line as CSV, each row marked as internal."""
        from spoutline.documents.quotation.margin_tables import margin_csv

        return margin_csv(quotation, revision)

    def margin_workbook(self, quotation: Quotation, revision: int, display: Display) -> bytes:
        """Return the internal sheet as a workbook, every page headed so."""
        from spoutline.documents.quotation.margin_tables import margin_xlsx

        return margin_xlsx(quotation, revision, self._story(display, None))

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

        return quotation_workbook(quotation, revision, self._story(display, None))

    def order_csv(self, quotation: Quotation, revision: int, ordered: str = "") -> bytes:
        """Return the lines for an order system as CSV: of every option, or of the one titled ``ordered``."""
        from spoutline.documents.quotation.papers import quotation_order_csv

        return quotation_order_csv(quotation, revision, ordered)
