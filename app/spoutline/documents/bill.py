"""The bill of a site on paper and as tables; heavy libraries are imported when one is asked for."""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from spoutline.explain.plan.story import Story
    from spoutline.model.funnel import SetReasons
    from spoutline.model.no_set import NoSetReasons
    from spoutline.model.plan import SitePlan
    from spoutline.model.record import CommissioningRecord
    from spoutline.planning.protocols import Progress
    from spoutline.ruletables.cautions import Caution


def bill_pdf(
    site_plan: SitePlan,
    story: Story,
    cautions: tuple[Caution, ...],
    *,
    dated: date | None = None,
    calculations: bool = True,
    records: tuple[CommissioningRecord, ...] = (),
    reasons: Mapping[str, SetReasons | NoSetReasons] = MappingProxyType({}),
    form: PaperForm = PaperForm.PDF,
    progress: Progress | None = None,
) -> bytes:
    """Return the bill as PDF, or in another ``form``; it ends with the installer caution sheet.

    Equal arguments give equal bytes.

    Parameters
    ----------
    site_plan
        The plan of the site.
    story
        Words and unit system.
    cautions
        The reviewed cautions; those that fit the site make up the sheet.
    dated
        The date to print; None prints none.
    calculations
        Whether the calculation sheets are printed; the first page says where they are left out.
    records
        The records that a plan as built was made from; the bill is titled so and names their days and people.
    reasons
        Why the parts of a position were chosen, by its label; an annex tells it.
    form
        The form of the paper.
    progress
        Hears how many groups of positions are written, then how much is set on pages.

    Raises
    ------
    StoreFault
        A font that comes with the program is missing.
    Cancelled
        If ``progress`` asks to stop.
    """
    from spoutline.documents.content.bill_content import bill_content
    from spoutline.documents.paper import paper_bytes

    content = bill_content(
        site_plan,
        story,
        cautions,
        dated=dated,
        calculations=calculations,
        records=records,
        reasons=reasons,
        progress=progress,
    )
    return paper_bytes(content, form, progress)


def short_bill_pdf(
    site_plan: SitePlan,
    story: Story,
    cautions: tuple[Caution, ...],
    *,
    dated: date | None = None,
    records: tuple[CommissioningRecord, ...] = (),
    form: PaperForm = PaperForm.PDF,
) -> bytes:
    """Return parts and verdicts alone, a page for ten hoses at most, then the caution sheet.

    Arguments and errors as ``bill_pdf``.
    """
    from spoutline.documents.content.short_bill import short_bill_content
    from spoutline.documents.paper import paper_bytes

    return paper_bytes(short_bill_content(site_plan, story, cautions, dated=dated, records=records), form)


def bill_csv(site_plan: SitePlan, story: Story, records: tuple[CommissioningRecord, ...] = ()) -> bytes:
    """Return the parts of every position as CSV, UTF-8 with a byte order mark; equal arguments give equal bytes."""
    from spoutline.documents.tabular.csv_bill import csv_bytes

    return csv_bytes(site_plan, story, records)


def bill_xlsx(site_plan: SitePlan, story: Story, records: tuple[CommissioningRecord, ...] = ()) -> bytes:
    """Return the bill as a workbook of parts, positions and checks; equal arguments give equal bytes."""
    from spoutline.documents.tabular.xlsx_bill import xlsx_bytes

    return xlsx_bytes(site_plan, story, records)
