"""The installer's papers as bytes: the same bytes for the same arguments."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date
from types import MappingProxyType
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from spoutline.documents.pack.content import PackWords
    from spoutline.model.certificate import Certificate
    from spoutline.model.inspection import DueItem
    from spoutline.model.pack import PackJob
    from spoutline.model.part_ref import PartRef
    from spoutline.model.plan import SitePlan
    from spoutline.model.record import JudgedRecord, WearEntry
    from spoutline.model.shown_files import FilesOfParts
    from spoutline.planning.protocols import Progress


def pack_pdf(
    site_plan: SitePlan,
    words: PackWords,
    job: PackJob,
    *,
    dated: date | None = None,
    form: PaperForm = PaperForm.PDF,
    files: FilesOfParts = MappingProxyType({}),
    progress: Progress | None = None,
) -> bytes:
    """Return the installer's pack as PDF, or in another ``form``; it ends with the caution sheet.

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
    form
        The form of the paper.
    files
        Pictures and documents of the parts.
    progress
        Hears how many sheets are written, then how much is set on pages.

    Raises
    ------
    StoreFault
        A font that comes with the program is missing.
    Cancelled
        If ``progress`` asks to stop.
    """
    from spoutline.documents.pack.content import pack_content
    from spoutline.documents.paper import paper_bytes

    content = pack_content(site_plan, words, job, dated=dated, files=files, progress=progress)
    return paper_bytes(content, form, progress)


def caution_pdf(
    site_plan: SitePlan, words: PackWords, *, dated: date | None = None, form: PaperForm = PaperForm.PDF
) -> bytes:
    """Return the caution sheet by itself; see ``pack_pdf``."""
    from spoutline.documents.pack.content import caution_content
    from spoutline.documents.paper import paper_bytes

    return paper_bytes(caution_content(site_plan, words, dated=dated), form)


def form_pdf(
    site_plan: SitePlan,
    words: PackWords,
    *,
    dated: date | None = None,
    namesakes: tuple[PartRef, ...] = (),
    progress: Progress | None = None,
) -> bytes:
    """Return the fillable commissioning form of every position that has a set.

    A part is shown with its maker where another one of the site or of ``namesakes`` has its number.

    Raises
    ------
    InputFault
        No position has a set, so there is nothing to put into service.
    StoreFault
        A font that comes with the program is missing.
    Cancelled
        If ``progress`` asks to stop.
    """
    from spoutline.documents.pack.commissioning_form import form_blocks
    from spoutline.documents.pack.content import paper
    from spoutline.documents.pdf.render import pdf_bytes
    from spoutline.explain.pack.words import PackWord

    story = words.story
    blocks = list(form_blocks(site_plan, story, namesakes))
    if not blocks:
        wanted = "a position with a set is needed: a form without one would record nothing"
        raise InputFault((InputProblem("", "positions", "none with a set", wanted),))
    title, subject = story.word(PackWord.FORM), story.word(PackWord.FORM_SUBJECT)
    return pdf_bytes(paper(title, subject, site_plan, story, blocks, dated=dated), progress)


def record_pdf(
    site_plan: SitePlan,
    words: PackWords,
    judged: Sequence[JudgedRecord],
    photos: Mapping[str, bytes],
    *,
    form: PaperForm = PaperForm.PDF,
) -> bytes:
    """Return the records of positions as PDF, or in another ``form``, each from a new page on, with their photos.

    The foot names the SHA-256 of what was recorded, and the day where all are of one day.
    """
    from spoutline.documents.content.blocks import Block, PageBreak
    from spoutline.documents.pack.content import paper
    from spoutline.documents.pack.cover import sets_note
    from spoutline.documents.pack.record_sheet import record_blocks, records_digest
    from spoutline.documents.paper import paper_bytes
    from spoutline.explain.pack.words import PackWord

    story = words.story
    blocks: list[Block] = []
    by_label = {plan.position.label: plan for plan in site_plan.positions}
    for one in judged:
        here = replace(site_plan, positions=(by_label[one.record.position],))
        sheet = tuple(record_blocks(one, photos, story, sets_note(here, story)))
        blocks.extend((PageBreak(), *sheet) if blocks else sheet)
    title, subject = story.word(PackWord.RECORD), story.word(PackWord.RECORD_SUBJECT)
    days = {one.record.done_on for one in judged}
    document = paper(title, subject, site_plan, story, blocks, dated=days.pop() if len(days) == 1 else None)
    foot = f"{document.running_foot} · SHA-256 {records_digest([one.record for one in judged])[:24]}"
    return paper_bytes(replace(document, running_foot=foot), form)


def certificate_pdf(
    site_plan: SitePlan,
    words: PackWords,
    certificates: Sequence[Certificate],
    *,
    dated: date | None = None,
    form: PaperForm = PaperForm.PDF,
) -> bytes:
    """Return certificates of one test as PDF, or in another ``form``, a page for each dispenser.

    ``site_plan`` is the plan that limits the readings; ``certificates`` has at least one.
    """
    from spoutline.documents.pack.certificate import TITLES, certificate_blocks
    from spoutline.documents.pack.content import paper
    from spoutline.documents.paper import paper_bytes
    from spoutline.explain.pack.words import PackWord

    story = words.story
    blocks = list(certificate_blocks(certificates, site_plan, story))
    title, subject = story.word(TITLES[certificates[0].test]), story.word(PackWord.CERTIFICATE_SUBJECT)
    return paper_bytes(paper(title, subject, site_plan, story, blocks, dated=dated), form)


def inspection_pdf(
    site_plan: SitePlan,
    words: PackWords,
    due: Sequence[DueItem],
    wear: Sequence[WearEntry],
    *,
    dated: date | None = None,
    form: PaperForm = PaperForm.PDF,
) -> bytes:
    """Return the inspection plan with the wear log; see ``pack_pdf``."""
    from spoutline.documents.pack.content import paper
    from spoutline.documents.pack.inspection_sheet import inspection_blocks
    from spoutline.documents.paper import paper_bytes
    from spoutline.explain.pack.words import PackWord

    story = words.story
    blocks = list(inspection_blocks(site_plan, due, wear, story))
    title, subject = story.word(PackWord.INSPECTION), story.word(PackWord.INSPECTION_LEAD)
    return paper_bytes(paper(title, subject, site_plan, story, blocks, dated=dated), form)
