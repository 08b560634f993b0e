"""A point that a person picked, as sets that can be agreed on: with what goes with them, position by position."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.front import FrontPoint, PositionFront, StationFront
from spoutline.model.plan import PlanStatus, PositionPlan, SitePlan
from spoutline.model.survey import Position, Survey
from spoutline.model.worded import Worded
from spoutline.planning.sets.accessories import accessory_lines
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_site import provenance_of
from spoutline.planning.sets.relabel import relabelled
from spoutline.planning.weighing.station_front import points_taken


def picked_sets(survey: Survey, found: PositionFront | StationFront, at: int, context: PlanningContext) -> SitePlan:
    """Return the sets of a point, place ``at``, as a plan of the positions that it is of.

    Raises
    ------
    InputFault
        A position asks for a part that the point does not have: it was weighed with such parts left aside.
    """
    taken: list[tuple[tuple[str, ...], PositionPlan, FrontPoint]]
    if isinstance(found, PositionFront):
        taken = [((found.label,), found.plan, found.points[at])]
    else:
        both = points_taken(found, found.points[at])
        taken = [(group.labels, group.front.plan, point) for group, point in both]
    plans: dict[str, PositionPlan] = {}
    problems: list[InputProblem] = []
    for labels, plan, point in taken:
        mine = _with(plan, point, context)
        positions = [one for one in survey.positions if one.label in labels]
        problems += (problem for one in positions for problem in _missed(one, point))
        plans |= {one.label: relabelled(mine, one) for one in positions}
    if problems:
        raise InputFault(tuple(problems))
    return SitePlan(
        survey=survey,
        jurisdiction=context.tables.jurisdiction,
        positions=tuple(plans[one.label] for one in survey.positions if one.label in plans),
        provenance=provenance_of(survey, context.tables, context.parts),
    )


def _missed(position: Position, point: FrontPoint) -> Iterator[InputProblem]:
    """Yield the parts that a position asks for and a point lacks; where they were kept every point has them."""
    hanging = point.judged.hanging_set.refs
    for ref in position.decisions.pinned:
        if not any(ref.names(part) for part in hanging):
            place = Worded("position {label}", label=position.label)
            wanted = "the set lacks this part, which is asked for here: take the set first, then agree"
            yield InputProblem(place, "pinned", str(ref), wanted)


def _with(plan: PositionPlan, point: FrontPoint, context: PlanningContext) -> PositionPlan:
    requirement = plan.requirement
    return replace(
        plan,
        status=PlanStatus.FITS,
        chosen=point.judged,
        alternatives=(),
        conflict=None,
        accessories=accessory_lines(point.judged, requirement, context) if requirement is not None else (),
    )
