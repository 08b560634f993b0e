"""The book's lists as papers: quotations, customers."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm
from spoutline.units.accepted import UnitSystem

if TYPE_CHECKING:
    from spoutline.book.quotation_records import QuotationEntry
    from spoutline.explain.plan.story import Story
    from spoutline.model.customer import Customer
    from spoutline.units.display import Display


class BookLists:
    """Papers of lists. They are on US letter paper where units are those of the US, else on A4."""

    def __init__(self, story: Callable[[Display], Story]) -> None:
        self._story = story

    def quotations(
        self, entries: Sequence[QuotationEntry], display: Display, on: date, form: PaperForm = PaperForm.PDF
    ) -> bytes:
        """Return quotations in the order given, those to follow up by ``on`` marked; internal, for its margins."""
        from spoutline.documents.quotation.lists import quotation_list

        return quotation_list(entries, self._story(display), on, on_letter=_on_letter(display), form=form)

    def customers(
        self, customers: Sequence[Customer], display: Display, on: date, form: PaperForm = PaperForm.PDF
    ) -> bytes:
        """Return customers in the order given, with what papers have of them."""
        from spoutline.documents.quotation.lists import customer_list

        return customer_list(customers, self._story(display), on, on_letter=_on_letter(display), form=form)


def _on_letter(display: Display) -> bool:
    return display.system is UnitSystem.US
