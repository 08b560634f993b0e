"""The installer's papers as bytes: the same bytes for the same arguments."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from spoutline.documents.pack.content import PackWords
    from spoutline.model.pack import PackJob
    from spoutline.model.plan import SitePlan


def pack_pdf(site_plan: SitePlan, words: PackWords, job: PackJob, *, dated: date | None = None) -> bytes:
    """Return the installer's pack as PDF; it ends with the caution sheet.

    Parameters
    ----------
    site_plan
        The plan of the site; a plan of one position makes the pack of that position.
    words
        Story, cautions and signs of one language.
    job
        What the cover says besides the survey.
    dated
        The date to print; None prints none.

    Raises
    ------
    StoreFault
        A font that comes with the program is missing.
    """
    from spoutline.documents.pack.content import pack_content
    from spoutline.documents.pdf.render import pdf_bytes

    return pdf_bytes(pack_content(site_plan, words, job, dated=dated))


def caution_pdf(site_plan: SitePlan, words: PackWords, *, dated: date | None = None) -> bytes:
    """Return the caution sheet by itself as PDF; see ``pack_pdf``."""
    from spoutline.documents.pack.content import caution_content
    from spoutline.documents.pdf.render import pdf_bytes

    return pdf_bytes(caution_content(site_plan, words, dated=dated))
