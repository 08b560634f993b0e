"""The use cases of other answers, wired to the stores: looked at before anybody accepts one."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Protocol

from spoutline.documents.paper_form import PaperForm
from spoutline.frozen import frozen
from spoutline.model.catalogue_edition import EditionRef

if TYPE_CHECKING:
    from datetime import date

    from spoutline.bootstrap.stores import PlannedWith
    from spoutline.catalogue.store import CatalogueStore
    from spoutline.explain.plan.story import Story
    from spoutline.model.conversion_step import StepTable
    from spoutline.model.limit import RuleTables
    from spoutline.model.plan import PositionPlan, SitePlan
    from spoutline.model.survey import Survey
    from spoutline.model.what_if import WhatIf, WhatIfResult
    from spoutline.model.what_if_matrix import WhatIfMatrix
    from spoutline.planning.protocols import Progress
    from spoutline.planning.sets.context import PlanningContext
    from spoutline.planning.typed_numbers import NumberedParts
    from spoutline.planning.what_if.answer import WhatIfListening


class TablesOf(Protocol):
    """Returns the rule tables of a survey that is planned with a catalogue, its names checked."""

    def __call__(self, survey: Survey, catalogue: NumberedParts) -> RuleTables:
        """Return the tables; raise ``InputFault`` for a name that nothing stands behind."""
        ...


@frozen
class Sources:
    """How the stores are reached; each opens when first asked for."""

    tables: TablesOf
    catalogue: PlannedWith
    edition: Callable[[EditionRef], CatalogueStore]
    steps: Callable[[], StepTable]


class WhatIfService:
    """Answers what another answer would do. Methods may be called from several threads."""

    def __init__(self, sources: Sources) -> None:
        self._sources = sources

    def ask(self, before: SitePlan, asked: WhatIf, listening: WhatIfListening | None = None) -> WhatIfResult:
        """Return what becomes of the sets of ``before`` under another answer; nothing is changed.

        Raise ``InputFault`` where the survey does not admit the answer, or ``Cancelled`` where the listener stops.
        """
        from spoutline.planning.what_if.answer import what_if
        from spoutline.planning.what_if.answers import changed_survey
        from spoutline.planning.what_if.lasting import lasting_sets

        context = self._context(changed_survey(before.survey, asked), asked, listening)
        return (lasting_sets if asked.lasting else what_if)(before, asked, context, listening)

    def ask_several(self, before: SitePlan, asked: Sequence[WhatIf], progress: Progress | None = None) -> WhatIfMatrix:
        """Return several answers to one question side by side; nothing is changed.

        Raise ``InputFault`` where the survey does not admit one of them, or ``Cancelled`` where ``progress`` stops.
        """
        from spoutline.planning.what_if.answer import WhatIfListening
        from spoutline.planning.what_if.answers import changed_survey
        from spoutline.planning.what_if.matrix import check_several, what_if_matrix

        check_several(asked)
        listening = WhatIfListening(progress)
        planned_by = [(one, self._context(changed_survey(before.survey, one), one, listening)) for one in asked]
        return what_if_matrix(before, planned_by, progress)

    def today(self, survey: Survey, plans: Sequence[PositionPlan]) -> SitePlan:
        """Return plans that were made already, one of each position in survey order, as the plan of the survey."""
        from spoutline.model.plan import SitePlan
        from spoutline.planning.sets.plan_site import provenance_of

        parts = self._sources.catalogue(survey)
        tables = self._sources.tables(survey, parts)
        return SitePlan(
            survey=survey,
            jurisdiction=tables.jurisdiction,
            positions=tuple(plans),
            provenance=provenance_of(survey, tables, parts),
        )

    def paper(
        self,
        found: WhatIfResult,
        story: Story,
        dated: date | None = None,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return today and then side by side as PDF, or in another ``form``."""
        from spoutline.documents.what_if.papers import what_if_paper

        return what_if_paper(found, story, dated, form)

    def matrix_paper(
        self, found: WhatIfMatrix, story: Story, dated: date | None = None, form: PaperForm = PaperForm.PDF
    ) -> bytes:
        """Return several answers on one page as PDF, or in another ``form``."""
        from spoutline.documents.what_if.papers import matrix_paper

        return matrix_paper(found, story, dated, form)

    def _context(self, changed: Survey, asked: WhatIf, listening: WhatIfListening | None) -> PlanningContext:
        from spoutline.planning.sets.context import PlanningContext, stop_listener

        named = asked.value if isinstance(asked.value, EditionRef) else None
        parts = self._sources.edition(named) if named is not None else self._sources.catalogue(changed)
        return PlanningContext(
            self._sources.tables(changed, parts),
            parts,
            stop_listener(listening.progress if listening else None),
            changed.conversion,
            self._sources.steps(),
        )
