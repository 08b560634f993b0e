"""What to measure on site: how sure the verdicts on sets are, and the list for a visit on paper."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from spoutline.bootstrap.once import Once
from spoutline.documents.paper_form import PaperForm

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from spoutline.explain.plan.story import Story
    from spoutline.model.doubt import StationDoubts
    from spoutline.model.language import Language
    from spoutline.model.limit import RuleTables
    from spoutline.model.plan import PositionPlan, SitePlan
    from spoutline.model.site_figure import SiteRanges
    from spoutline.model.survey import Survey
    from spoutline.planning.protocols import Progress
    from spoutline.units.display import Display


class SiteVisitService:
    """Looks at planned sets. ``tables`` are those that a survey is planned with; ``story`` gives the words."""

    def __init__(
        self, tables: Callable[[Survey], RuleTables], story: Callable[[Display, Language | None], Story]
    ) -> None:
        self._tables, self._story = tables, story
        self._ranges = Once(_read_ranges)

    def doubts(self, survey: Survey, plans: Sequence[PositionPlan], progress: Progress | None = None) -> StationDoubts:
        """Return what the verdicts on sets of a survey rest on that nobody measured.

        Raise ``Cancelled`` where ``progress`` asks to stop.
        """
        from spoutline.planning.sets.doubts import station_doubts

        return station_doubts(plans, survey.site, self._tables(survey), self._ranges(), progress)

    def pdf(
        self,
        site_plan: SitePlan,
        doubts: StationDoubts,
        display: Display,
        dated: date | None = None,
        *,
        language: Language | None = None,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return the list for a visit as a paper, one page; the same bytes for the same arguments."""
        from spoutline.documents.content.site_visit import site_visit_content
        from spoutline.documents.paper import paper_bytes

        return paper_bytes(site_visit_content(site_plan, doubts, self._story(display, language), dated=dated), form)


def _read_ranges() -> SiteRanges:
    from spoutline import assets
    from spoutline.ruletables.site_ranges import load_site_ranges

    return load_site_ranges(assets.resources_folder())
