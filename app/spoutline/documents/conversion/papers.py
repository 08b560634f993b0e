"""The papers of a conversion; heavy libraries are imported when one is asked for."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from datetime import date

    from spoutline.explain.conversion.story import ConversionStory
    from spoutline.model.conversion import SiteConversion
    from spoutline.ruletables.cautions import Caution


def conversion_pdf(
    conversion: SiteConversion, words: ConversionStory, cautions: tuple[Caution, ...], *, dated: date | None = None
) -> bytes:
    """Return the owner's report as PDF; equal arguments give equal bytes. Raise ``StoreFault`` for a missing font."""
    from spoutline.documents.conversion.content import conversion_content
    from spoutline.documents.pdf.render import pdf_bytes

    return pdf_bytes(conversion_content(conversion, words, cautions, dated=dated))
