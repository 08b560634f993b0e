"""The papers of a conversion; heavy libraries are imported when one is asked for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from spoutline.explain.conversion.story import ConversionStory
    from spoutline.model.conversion import SiteConversion
    from spoutline.planning.conversion.cases import CaseResult
    from spoutline.planning.protocols import Progress
    from spoutline.ruletables.cautions import Caution


def conversion_pdf(
    conversion: SiteConversion,
    words: ConversionStory,
    cautions: tuple[Caution, ...],
    *,
    dated: date | None = None,
    form: PaperForm = PaperForm.PDF,
    cases: Sequence[CaseResult] = (),
    progress: Progress | None = None,
) -> bytes:
    """Return the owner's report as PDF, or in another ``form``; equal arguments give equal bytes.

    Raise ``StoreFault`` for a missing font, ``Cancelled`` where ``progress``, which hears how far it is, asks to stop.
    """
    from spoutline.documents.conversion.content import conversion_content
    from spoutline.documents.paper import paper_bytes

    content = conversion_content(conversion, words, cautions, dated=dated, cases=cases, progress=progress)
    return paper_bytes(content, form, progress)


def one_page_pdf(
    conversion: SiteConversion,
    words: ConversionStory,
    *,
    dated: date | None = None,
    form: PaperForm = PaperForm.PDF,
    progress: Progress | None = None,
) -> bytes:
    """Return the station on one page as PDF, or in another ``form``; equal arguments give equal bytes.

    Its tables are set as wide as one sheet allows; a station that asks for more takes a second: nothing is left out.
    Raise ``Cancelled`` where ``progress`` asks to stop.
    """
    from spoutline.documents.conversion.one_page import Setting, one_page_content

    if form is not PaperForm.PDF:
        from spoutline.documents.paper import paper_bytes

        return paper_bytes(one_page_content(conversion, words, dated=dated), form)
    from spoutline.documents.pdf.render import pdf_with_pages

    content = b""
    for setting in Setting:
        content, pages = pdf_with_pages(one_page_content(conversion, words, setting, dated=dated), progress)
        if pages == 1:
            break
    return content
