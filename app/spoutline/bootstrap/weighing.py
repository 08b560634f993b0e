"""The use cases of sets weighed against each other, wired to the stores; nothing is changed by looking."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm
from spoutline.frozen import frozen

if TYPE_CHECKING:
    from datetime import date

    from spoutline.bootstrap.stores import PlannedWith
    from spoutline.explain.plan.story import Story
    from spoutline.model.conversion_step import StepTable
    from spoutline.model.front import FrontAxis, PositionFront, StationFront
    from spoutline.model.limit import RuleTables
    from spoutline.model.plan import SitePlan
    from spoutline.model.pricing import PriceList
    from spoutline.model.quotation_terms import Terms
    from spoutline.model.survey import Position, Survey
    from spoutline.planning.protocols import Progress
    from spoutline.planning.sets.context import PlanningContext
    from spoutline.planning.weighing.position_front import Told
    from spoutline.planning.weighing.yearly import YearlyCost


@frozen
class Sources:
    """How the stores are reached; each opens when first asked for."""

    tables: Callable[[Survey], RuleTables]
    catalogue: PlannedWith
    steps: Callable[[], StepTable]
    price_lists: Callable[[Survey], tuple[PriceList, ...]]


class WeighingService:
    """Weighs sets of a position or a station. Methods may be called from several threads."""

    def __init__(self, sources: Sources) -> None:
        self._sources = sources

    def axes(self, survey: Survey, position: Position) -> tuple[FrontAxis, ...]:
        """Return the axes on which sets of a position can be weighed; none where its answers are refused."""
        from spoutline.model.requirement import Refusal
        from spoutline.planning.weighing.position_front import axes_at
        from spoutline.rules.derive.requirement import requirement_for

        requirement = requirement_for(position, survey.site, self._sources.tables(survey))
        if isinstance(requirement, Refusal):
            return ()
        return axes_at(requirement, yearly=True)

    def position(
        self,
        survey: Survey,
        label: str,
        axes: tuple[FrontAxis, ...],
        *,
        free: bool = False,
        terms: Terms | None = None,
        progress: Progress | None = None,
        told: Told | None = None,
    ) -> PositionFront:
        """Return the sets of a position that no other outdoes on some axes.

        ``free`` leaves aside the parts that are asked for there, ``terms`` state figures for a yearly cost, ``told`` is
        handed the answer as it grows. Raise ``InputFault`` for axes that the position does not have, and ``Cancelled``
        where ``progress`` stops.
        """
        from spoutline.planning.weighing.asking import check_axes, checked_position
        from spoutline.planning.weighing.position_front import FrontQuestion, position_front

        position, context = checked_position(survey, label), self._context(survey, progress)
        cost = self._yearly_cost(survey, context, terms, axes)
        check_axes(axes, self.axes(survey, position))
        return position_front(position, survey.site, context, FrontQuestion(axes, free, cost), told)

    def station(
        self,
        survey: Survey,
        axis: FrontAxis,
        *,
        free: bool = False,
        terms: Terms | None = None,
        progress: Progress | None = None,
    ) -> StationFront:
        """Return the price of a station against one other axis; otherwise as ``position``."""
        from spoutline.model.front import FrontAxis
        from spoutline.planning.weighing.asking import check_axes
        from spoutline.planning.weighing.station_front import StationQuestion, station_front

        context = self._context(survey, progress)
        cost = self._yearly_cost(survey, context, terms, (axis,))
        there = {one for position in survey.positions for one in self.axes(survey, position)}
        check_axes(
            (axis,), tuple(one for one in FrontAxis if one in there and one is not FrontAxis.PRICE) if there else ()
        )
        return station_front(survey, context, StationQuestion(axis, free, cost), progress)

    def picked_sets(self, survey: Survey, found: PositionFront | StationFront, at: int) -> SitePlan:
        """Return the sets of a point, place ``at``, as a plan of the positions that it is of.

        Raise ``InputFault`` where a position asks for a part that the point does not have.
        """
        from spoutline.planning.weighing.agreeing import picked_sets

        return picked_sets(survey, found, at, self._context(survey, None))

    def paper(
        self,
        survey: Survey,
        found: PositionFront | StationFront,
        story: Story,
        dated: date | None = None,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return chart and table as PDF, or in another ``form``."""
        from spoutline.documents.front.papers import front_paper
        from spoutline.planning.sets.plan_site import provenance_of

        tables, parts = self._sources.tables(survey), self._sources.catalogue(survey)
        return front_paper(found, survey, provenance_of(survey, tables, parts), story, dated=dated, form=form)

    def _context(self, survey: Survey, progress: Progress | None) -> PlanningContext:
        from spoutline.planning.sets.context import PlanningContext, stop_listener

        return PlanningContext(
            self._sources.tables(survey),
            self._sources.catalogue(survey),
            stop_listener(progress),
            survey.conversion,
            self._sources.steps(),
        )

    def _yearly_cost(
        self, survey: Survey, context: PlanningContext, terms: Terms | None, axes: Sequence[FrontAxis]
    ) -> YearlyCost | None:
        """Return what tells a yearly cost; None where neither it is weighed nor terms are there."""
        from spoutline import assets
        from spoutline.model.front import FrontAxis
        from spoutline.planning.pricing.price_book import PriceBook
        from spoutline.planning.pricing.selling import Pricer
        from spoutline.planning.weighing.yearly import yearly_basis, yearly_cost
        from spoutline.ruletables.service_lives import load_service_lives

        if terms is None and FrontAxis.YEARLY not in axes:
            return None
        basis, pricer = yearly_basis(terms, load_service_lives(assets.resources_folder())), None
        if terms is not None:
            lists = self._sources.price_lists(survey)
            pricer = Pricer(terms, PriceBook(lists, terms.heading.dated))
        return yearly_cost(basis, pricer, context.parts, survey.site.currency)
