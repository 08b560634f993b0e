"""The bill on paper and in files, wired to the words and cautions it needs."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from datetime import date

    from spoutline.explain.plan.story import Story
    from spoutline.model.plan import SitePlan
    from spoutline.model.record import CommissioningRecord
    from spoutline.ruletables.cautions import Caution
    from spoutline.units.display import Display


class BillService:
    """Bills of a planned site; the same bytes for the same arguments. ``story`` gives the words for a display."""

    def __init__(self, story: Callable[[Display], Story]) -> None:
        self._story = story

    def cautions(self) -> tuple[Caution, ...]:
        """Return the rows from which installer caution sheets are made."""
        from spoutline import assets
        from spoutline.ruletables.cautions import load_cautions

        return load_cautions(assets.resources_folder())

    def pdf(
        self,
        site_plan: SitePlan,
        display: Display,
        dated: date | None = None,
        *,
        calculations: bool = True,
        records: Sequence[CommissioningRecord] = (),
    ) -> bytes:
        """Return the bill with checks, drawings and caution sheet as PDF.

        ``calculations`` False leaves the calculation sheets out; ``records`` are those that a plan as built was made
        from, oldest first.
        """
        from spoutline.documents.bill import bill_pdf

        return bill_pdf(
            site_plan,
            self._story(display),
            self.cautions(),
            dated=dated,
            calculations=calculations,
            records=tuple(records),
        )

    def csv(self, site_plan: SitePlan, display: Display) -> bytes:
        """Return the parts list as CSV."""
        from spoutline.documents.bill import bill_csv

        return bill_csv(site_plan, self._story(display))

    def xlsx(self, site_plan: SitePlan, display: Display) -> bytes:
        """Return the bill as a workbook."""
        from spoutline.documents.bill import bill_xlsx

        return bill_xlsx(site_plan, self._story(display))
