"""One position: in which ways it is converted, how, and what that means for every part that hangs there."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from spoutline.frozen import frozen
from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.conversion_step import StepTable
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PlanStatus, PositionPlan
from spoutline.model.position_conversion import (
    ConversionKind,
    ConversionOption,
    DifferenceAction,
    DifferenceLine,
    PositionConversion,
    PositionOutcome,
)
from spoutline.model.removal_standing import RemovalStanding, Standing
from spoutline.model.requirement import Refusal, Requirement
from spoutline.model.survey import Position, Site, Survey
from spoutline.model.vapour_figures import VapourTables
from spoutline.planning.conversion.differences import difference_lines
from spoutline.planning.conversion.memory import ConversionMemory
from spoutline.planning.conversion.options import PositionOptions
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.installed_units import installed_units, unit_verdict
from spoutline.planning.sets.plan_position import conflict_of, plan_position, slot_counts
from spoutline.planning.sets.staying import WorkPrice
from spoutline.rules.conversion.kinds import conversion_kinds
from spoutline.rules.conversion.standing import takes_recovery_away
from spoutline.rules.derive.requirement import requirement_for
from spoutline.search.effort import Exhausted

_OUTCOMES = {
    PlanStatus.NOT_ALLOWED: PositionOutcome.NOT_ALLOWED,
    PlanStatus.NO_SET: PositionOutcome.NO_SET,
    PlanStatus.NOT_DECIDED: PositionOutcome.NOT_DECIDED,
}


@frozen
class ConversionContext:
    """What a conversion works with: the context of planning, the tables on vapour recovery, the table of steps.

    ``memory`` is given where many sites are worked out and added up: nothing is found then but what a programme counts.
    ``basis`` tells what answers rest on beside the survey; None where that may change, so that none are remembered.
    """

    planning: PlanningContext
    vapour: VapourTables
    steps: StepTable
    memory: ConversionMemory | None = None
    basis: str | None = None


def convert_position(
    position: Position,
    survey: Survey,
    standing: RemovalStanding,
    known: Mapping[PartRef, Part],
    context: ConversionContext,
    *,
    shown: PositionPlan | None = None,
) -> PositionConversion:
    """Return the conversion of one position.

    Parameters
    ----------
    position, survey
        The position and the survey that it belongs to.
    standing
        Whether recovery may be taken away on this site.
    known
        Catalogue parts by what names them in the survey.
    context
        Tables, part store and listener.
    shown
        The plan whose set the position is converted to; without it the way that the survey names is followed.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    forbidden = takes_recovery_away(position) and standing.standing is Standing.NOT_ALLOWED
    return _worked_out(position, survey, known, context, forbidden=forbidden, shown=shown)


def _worked_out(
    position: Position,
    survey: Survey,
    known: Mapping[PartRef, Part],
    context: ConversionContext,
    *,
    forbidden: bool,
    shown: PositionPlan | None = None,
) -> PositionConversion:
    site, answers, tables = survey.site, survey.conversion, context.planning.tables
    kinds = conversion_kinds(position, answers, known)
    if not kinds and not position.installed:
        untouched = _untouched(position, site, context.planning)
        return untouched if shown is None else replace(untouched, renewal=shown)
    requirement = requirement_for(position, site, tables)
    if isinstance(requirement, Refusal) or forbidden:
        return _without_set(position, site, kinds, forbidden=forbidden, context=context.planning)
    options = options_for(requirement, survey, known, context)
    try:
        return _converted(options, kinds, answers, shown)
    except Exhausted:
        return _not_decided(options, kinds)


def options_for(
    requirement: Requirement,
    survey: Survey,
    known: Mapping[PartRef, Part],
    context: ConversionContext,
    *,
    counted: bool = False,
) -> PositionOptions:
    """Return the ways to convert a position; ``counted`` leaves out what is only shown of them."""
    answers, tables = survey.conversion, context.planning.tables
    units = installed_units(requirement.position, known)
    verdicts = tuple(unit_verdict(unit, requirement, tables, answers) for unit in units)
    work = WorkPrice.of(answers, context.steps, survey.site.currency)
    return PositionOptions(requirement, verdicts, work, context.planning, counted=counted)


def _converted(
    options: PositionOptions,
    kinds: tuple[ConversionKind, ...],
    answers: ConversionAnswers,
    shown: PositionPlan | None,
) -> PositionConversion:
    position = options.requirement.position
    least, good = options.least_cost(), options.good_practice()
    if least and good and least.judged.hanging_set.identity == good.judged.hanging_set.identity:
        good = None
    renewed = options.renewal()
    found = PositionConversion(
        position=position,
        kinds=kinds,
        outcome=PositionOutcome.NO_SET if least is None and shown is None else PositionOutcome.CONVERTS,
        least_cost=least,
        good_practice=good,
        renewal=_renewal_plan(options, renewed[1] if renewed else None),
        renewal_option=renewed[1] if renewed else None,
        differences=(),
        shown=None if shown is None else options.of_plan(shown),
        shown_plan=shown,
    )
    followed = found.followed(answers.follow)
    differences = difference_lines(options, followed)
    nothing = followed is not None and not kinds and keeps_everything(differences)
    has_none = shown is not None and followed is None
    outcome = PositionOutcome.NO_SET if has_none else found.outcome
    return replace(
        found,
        outcome=PositionOutcome.NOTHING_TO_DO if nothing else outcome,
        differences=differences,
    )


def _untouched(position: Position, site: Site, context: PlanningContext) -> PositionConversion:
    """Leave a position alone of which nothing changes and nothing is recorded."""
    plan = plan_position(position, site, context, with_alternatives=False)
    return PositionConversion(
        position=position,
        kinds=(),
        outcome=PositionOutcome.NOTHING_TO_DO,
        least_cost=None,
        good_practice=None,
        renewal=plan,
        renewal_option=None,
        differences=(),
    )


def _not_decided(options: PositionOptions, kinds: tuple[ConversionKind, ...]) -> PositionConversion:
    requirement = options.requirement
    plan = PositionPlan(
        position=requirement.position,
        status=PlanStatus.NOT_DECIDED,
        requirement=requirement,
        refusal=options.not_decided(),
        chosen=None,
        alternatives=(),
        conflict=None,
        counts=slot_counts(requirement, options.new_pool, options.context.parts),
        accessories=(),
    )
    return PositionConversion(
        position=requirement.position,
        kinds=kinds,
        outcome=PositionOutcome.NOT_DECIDED,
        least_cost=None,
        good_practice=None,
        renewal=plan,
        renewal_option=None,
        differences=(),
    )


def keeps_everything(differences: Iterable[DifferenceLine]) -> bool:
    """Say whether every part stays; what goes with a set anyway, such as a label, is no work of a conversion."""
    return all(
        line.action is DifferenceAction.KEEP or line.reason is DifferenceReason.ACCESSORY for line in differences
    )


def _renewal_plan(options: PositionOptions, option: ConversionOption | None) -> PositionPlan:
    requirement = options.requirement
    return PositionPlan(
        position=requirement.position,
        status=PlanStatus.FITS if option else PlanStatus.DOES_NOT_FIT,
        requirement=requirement,
        refusal=None,
        chosen=option.judged if option else None,
        alternatives=(),
        conflict=None if option else conflict_of(requirement, options.context),
        counts=slot_counts(requirement, options.new_pool, options.context.parts),
        accessories=option.accessories if option else (),
    )


def _without_set(
    position: Position, site: Site, kinds: tuple[ConversionKind, ...], *, forbidden: bool, context: PlanningContext
) -> PositionConversion:
    plan = plan_position(position, site, context, with_alternatives=False)
    outcome = outcome_without_set(plan.status, forbidden=forbidden)
    return PositionConversion(
        position=position,
        kinds=kinds,
        outcome=outcome,
        least_cost=None,
        good_practice=None,
        renewal=plan,
        renewal_option=None,
        differences=(),
    )


def outcome_without_set(status: PlanStatus, *, forbidden: bool) -> PositionOutcome:
    """Return how a conversion ends that is ``forbidden``, or whose plan is refused with this status."""
    return PositionOutcome.NOT_ALLOWED if forbidden else _OUTCOMES.get(status, PositionOutcome.REFUSED)
