"""Sites and positions planned, and why a plan is as it is: what everybody asks of the stores first."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from spoutline.bootstrap.jurisdictions import JurisdictionService
    from spoutline.bootstrap.no_set import NoSetService
    from spoutline.bootstrap.part_lookup import PartLookup
    from spoutline.bootstrap.stores import Stores
    from spoutline.bootstrap.survey_basis import SurveyBasis
    from spoutline.model.catalogue_edition import EditionRef
    from spoutline.model.funnel import SetReasons
    from spoutline.model.no_set import NoSetReasons
    from spoutline.model.part_ref import PartRef
    from spoutline.model.plan import PartVerdict, PositionPlan, Provenance, SitePlan, SlotCount
    from spoutline.model.staged_plan import StagedPlan
    from spoutline.model.substitute import Substitutes
    from spoutline.model.survey import Position, Survey
    from spoutline.planning.keeping.effect import PositionEffect
    from spoutline.planning.protocols import Progress
    from spoutline.planning.sets.substitutes import Listening


class SitePlanning:
    """The use cases of planning, wired to the stores. Methods may be called from several threads."""

    def __init__(self, stores: Stores, jurisdictions: JurisdictionService, basis: SurveyBasis) -> None:
        self._stores, self._jurisdictions, self._basis = stores, jurisdictions, basis

    def plan_position(
        self, survey: Survey, label: str, progress: Progress | None = None, *, with_alternatives: bool = True
    ) -> PositionPlan:
        """Plan one position of a survey; raise ``InputFault``, or ``Cancelled`` where ``progress`` asks to stop.

        Without ``with_alternatives`` they are not looked for; a plan of the station has them all the same.
        """
        if survey.site.stock_price:  # the set of each depends on those of the others
            _position(survey, label)
            return next(plan for plan in self.plan_site(survey, progress).positions if plan.position.label == label)
        from spoutline.planning.sets.plan_position import plan_position

        context = self._basis.context(survey, progress)
        return plan_position(_position(survey, label), survey.site, context, with_alternatives=with_alternatives)

    def plan_stages(self, survey: Survey, label: str, progress: Progress | None = None) -> Iterator[StagedPlan]:
        """Yield what is known of one position as it stands, its set first; raise as ``plan_position`` does.

        With a stock price the set of each position depends on those of the others: all comes at once.
        """
        if survey.site.stock_price:
            from spoutline.model.staged_plan import StagedPlan

            yield StagedPlan.of(self.plan_position(survey, label, progress))
            return
        from spoutline.planning.sets.plan_position import plan_stages

        yield from plan_stages(_position(survey, label), survey.site, self._basis.context(survey, progress))

    def plan_site(
        self, survey: Survey, progress: Progress | None = None, *, with_alternatives: bool = True
    ) -> SitePlan:
        """Plan every position of a survey; raise ``InputFault``, or ``Cancelled`` where ``progress`` asks to stop.

        Without ``with_alternatives`` they are not looked for, which takes a third of the time.
        """
        from spoutline.planning.refit.station_plan import station_plan

        parts = self._stores.parts_to_plan_with(survey)
        tables, steps = self._basis.tables(survey, parts), self._basis.steps_for(survey)
        return station_plan(survey, tables, parts, progress, steps=steps, with_alternatives=with_alternatives)

    def plan_with(self, survey: Survey, edition: EditionRef, progress: Progress | None = None) -> SitePlan:
        """Plan every position with an edition of a catalogue, whatever survey, settings and book name."""
        from spoutline.planning.refit.station_plan import station_plan

        catalogue = self._stores.edition(edition)
        tables, steps = self._basis.tables(survey, catalogue), self._basis.steps_for(survey)
        return station_plan(survey, tables, catalogue, progress, steps=steps)

    def rule_effects(
        self, before: str, after: str, surveys: Iterable[Survey], progress: Progress | None = None
    ) -> tuple[PositionEffect, ...]:
        """Plan surveys under two jurisdictions, or editions of one, and return what becomes of each position."""
        from spoutline.planning.keeping.effect import effects

        def under(survey: Survey, jurisdiction: str) -> SitePlan:
            site = survey.site.model_copy(update={"jurisdiction": jurisdiction})
            return self.plan_site(survey.model_copy(update={"site": site}), progress)

        return tuple(one for survey in surveys for one in effects(under(survey, before), under(survey, after), ()))

    def counts(self, survey: Survey, label: str) -> tuple[SlotCount, ...]:
        """Return how many parts remain per slot of a position's chain; empty where no requirement can be derived."""
        from spoutline.planning.sets.plan_position import counts_for

        return counts_for(_position(survey, label), survey.site, self._basis.context(survey))

    def why_not(
        self, survey: Survey, label: str, named: PartRef | str, progress: Progress | None = None
    ) -> PartVerdict:
        """Return every rule that a catalogue part breaks at a position, or how it could serve there."""
        from spoutline.planning.sets.why_not import why_not

        lookup, position = self.parts(), _position(survey, label)
        part = lookup.part(lookup.found_ref(named, survey)[0], survey)
        return why_not(position, survey.site, part, self._basis.context(survey, progress))

    def substitutes(
        self,
        survey: Survey,
        plan: PositionPlan,
        named: PartRef | str,
        listening: Listening | None = None,
        *,
        with_misfits: bool = False,
    ) -> Substitutes:
        """Return what else could hang in place of the part ``named`` of a planned set; raise ``InputFault``.

        Raise ``Cancelled`` where the listener asks to stop.
        """
        from spoutline.planning.sets.substitutes import substitutes

        context = self._basis.context(survey, listening.progress if listening else None)
        return substitutes(
            plan, self.parts().found_ref(named, survey)[0], context, listening, with_misfits=with_misfits
        )

    def set_reasons(self, survey: Survey, plan: PositionPlan, progress: Progress | None = None) -> SetReasons:
        """Return why each part of a planned set hangs in its place; raise ``InputFault`` without a set.

        Raise ``Cancelled`` where ``progress`` asks to stop.
        """
        from spoutline.planning.sets.funnel import set_reasons

        return set_reasons(plan, self._basis.context(survey, progress), progress)

    def station_reasons(
        self, site_plan: SitePlan, progress: Progress | None = None
    ) -> dict[str, SetReasons | NoSetReasons]:
        """Return why the parts of each position were chosen, or why no set fits there, by label.

        Raise ``Cancelled`` where ``progress`` asks to stop.
        """
        from spoutline.planning.sets.funnel import station_reasons

        found = station_reasons(site_plan.positions, self._basis.context(site_plan.survey, progress), progress)
        return {**found, **self.no_set().station(site_plan, progress)}

    def provenance(self, survey: Survey) -> Provenance:
        """Return what a result for a survey is made from."""
        from spoutline.planning.sets.plan_site import provenance_of

        parts = self._stores.parts_to_plan_with(survey)
        return provenance_of(survey, self._basis.tables(survey, parts), parts)

    def parts(self) -> PartLookup:
        """Return what finds parts by what people type."""
        from spoutline.bootstrap.part_lookup import PartLookup

        return PartLookup(self._stores, self._jurisdictions.tables)

    def no_set(self) -> NoSetService:
        """Return the use case of positions without a set."""
        from spoutline.bootstrap.no_set import NoSetService

        return NoSetService(
            self._basis.context, lambda survey: (self._basis.tables(survey).jurisdiction, self.provenance(survey))
        )


def _position(survey: Survey, label: str) -> Position:
    from spoutline.book.choices import not_one_of

    position = survey.position(label)
    if position is None:
        labels = tuple(known.label for known in survey.positions)
        raise not_one_of(label, labels, field="position")
    return position
