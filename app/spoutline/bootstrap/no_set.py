"""The use case of positions without a set: why there is none, and every way out on trial."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from time import monotonic
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm

if TYPE_CHECKING:
    from datetime import date

    from spoutline.explain.plan.story import Story
    from spoutline.model.funnel import SetReasons
    from spoutline.model.limit import Jurisdiction
    from spoutline.model.no_set import NoSetReasons
    from spoutline.model.plan import PositionPlan, Provenance, SitePlan
    from spoutline.model.survey import Position, Survey
    from spoutline.planning.no_set.listening import NoSetListening
    from spoutline.planning.protocols import Progress
    from spoutline.planning.sets.context import PlanningContext


class NoSetService:
    """Explains positions without a set. Methods may be called from several threads.

    ``context`` returns what a survey is planned with, given who may stop it, ``made_from`` whose rules hold there and
    what its results are made from.
    """

    def __init__(
        self,
        context: Callable[[Survey, Progress | None], PlanningContext],
        made_from: Callable[[Survey], tuple[Jurisdiction, Provenance]],
    ) -> None:
        self._context, self._made_from = context, made_from

    def ask(
        self,
        survey: Survey,
        plan: PositionPlan,
        progress: Progress | None = None,
        listening: NoSetListening | None = None,
        *,
        seconds: float | None = None,
    ) -> NoSetReasons:
        """Return everything that keeps a planned position from a set, and every way out; nothing is changed.

        ``seconds`` bounds the search: what was found until then is told. Raise ``Cancelled`` where ``progress`` stops.
        """
        from spoutline.planning.no_set.listening import NoSetListening
        from spoutline.planning.no_set.why_no_set import why_no_set

        listening = listening or NoSetListening()
        if seconds is not None:
            end = monotonic() + seconds
            listening = replace(listening, out_of_time=lambda: monotonic() > end)
        return why_no_set(plan, survey, self._context(survey, progress), listening)

    def paper(
        self,
        survey: Survey,
        plan: PositionPlan,
        reasons: SetReasons | NoSetReasons,
        story: Story,
        *,
        dated: date | None = None,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return why a position has no set, or why it has its parts, as a paper; equal arguments give equal bytes."""
        from spoutline.documents.content.reasons_paper import reasons_content
        from spoutline.documents.paper import paper_bytes
        from spoutline.model.plan import SitePlan

        jurisdiction, provenance = self._made_from(survey)
        about = SitePlan(survey=survey, jurisdiction=jurisdiction, positions=(plan,), provenance=provenance)
        return paper_bytes(reasons_content(about, reasons, story, dated=dated), form)

    def station(self, site_plan: SitePlan, progress: Progress | None = None) -> dict[str, NoSetReasons]:
        """Return the reasons of each position that was planned without a set, by label; equal questions are asked once.

        Raise ``Cancelled`` where ``progress`` asks to stop.
        """
        from spoutline.planning.sets.relabel import same_question

        found: dict[str, NoSetReasons] = {}
        asked: list[tuple[Position, str]] = []
        for plan in site_plan.positions:
            if not plan.is_without_set:
                continue
            question, label = same_question(plan.position), plan.position.label
            first = next((one for known, one in asked if known == question), None)
            found[label] = self.ask(site_plan.survey, plan, progress) if first is None else found[first]
            if first is None:
                asked.append((question, label))
        return found
