"""Quotation and pick list as bytes; heavy libraries are imported when one is asked for."""

from __future__ import annotations

from spoutline.documents.paper_form import PaperForm
from spoutline.explain.plan.story import Story
from spoutline.model.quotation import Quotation


def quotation_pdf(quotation: Quotation, revision: int, story: Story, form: PaperForm = PaperForm.PDF) -> bytes:
    """Return the quotation as PDF, or in another ``form``; equal arguments give equal bytes.

    Raises
    ------
    InputFault
        The letterhead's picture cannot be read.
    StoreFault
        A font that comes with the program is missing.
    """
    from spoutline.documents.paper import paper_bytes
    from spoutline.documents.quotation.content import quotation_content

    return paper_bytes(quotation_content(quotation, revision, story), form)


def pick_list_pdf(
    quotation: Quotation, option: int, revision: int, story: Story, form: PaperForm = PaperForm.PDF
) -> bytes:
    """Return what to take from which maker for one option, counted from 0, in ``form``.

    Equal arguments give equal bytes.
    """
    from spoutline.documents.paper import paper_bytes
    from spoutline.documents.quotation.content import pick_list_content

    return paper_bytes(pick_list_content(quotation, option, revision, story), form)


def margin_pdf(quotation: Quotation, revision: int, story: Story, form: PaperForm = PaperForm.PDF) -> bytes:
    """Return the internal sheet of cost and margin in ``form``; equal arguments give equal bytes."""
    from spoutline.documents.paper import paper_bytes
    from spoutline.documents.quotation.margin_sheet import margin_content

    return paper_bytes(margin_content(quotation, revision, story), form)


def quotation_workbook(quotation: Quotation, revision: int, story: Story) -> bytes:
    """Return the quotation as a workbook with formulas; equal arguments give equal bytes."""
    from spoutline.documents.quotation.xlsx import quotation_xlsx

    return quotation_xlsx(quotation, revision, story)


def quotation_order_csv(quotation: Quotation, revision: int, ordered: str = "") -> bytes:
    """Return the lines for an order system, of the option ``ordered`` alone where one is named.

    Equal arguments give equal bytes.
    """
    from spoutline.documents.quotation.csv_order import quotation_csv

    return quotation_csv(quotation, revision, ordered)
