"""The price of a whole station against one other axis: fronts of its positions put together."""

from __future__ import annotations

from collections.abc import Sequence

from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled, InputFault, InputProblem
from spoutline.model.front import WORST_COUNTS, FrontAxis, FrontGroup, FrontPoint, StationFront, StationPoint
from spoutline.model.survey import Position, Survey
from spoutline.planning.protocols import Progress
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_site import provenance_of
from spoutline.planning.sets.relabel import same_question
from spoutline.planning.weighing.combining import Choosable, combined
from spoutline.planning.weighing.position_front import FrontQuestion, position_front
from spoutline.planning.weighing.yearly import YearlyCost


@frozen
class StationQuestion:
    """What is asked of a station: the axis beside the price; the rest as of ``FrontQuestion``."""

    axis: FrontAxis
    free: bool = False
    yearly_cost: YearlyCost | None = None


def station_front(
    survey: Survey, context: PlanningContext, asked: StationQuestion, progress: Progress | None = None
) -> StationFront:
    """Return the combinations of sets of a station that no other outdoes in price and in one other figure.

    Positions that ask the same get the same set. Prices add up, and so do the other figures, but for lead time and loss
    of pressure, of which that of the worst position counts. A position without the axis counts nothing on it.

    Raises
    ------
    InputFault
        The axis is the price itself.
    Cancelled
        If ``progress`` or the listener asks to stop.
    """
    if asked.axis is FrontAxis.PRICE:
        raise InputFault((InputProblem("", "axis", repr(asked.axis.value), "name another axis than the price"),))
    groups: list[FrontGroup] = []
    without: list[str] = []
    by_question = _questions(survey)
    for done, labels in enumerate(by_question):
        if progress is not None:
            if progress.should_stop():
                raise Cancelled
            progress.on_progress(done, len(by_question))
        group = _group(survey, labels, context, asked)
        if group.front.points:
            groups.append(group)
        else:
            without += labels
    if progress is not None:
        progress.on_progress(len(by_question), len(by_question))
    adds = asked.axis not in WORST_COUNTS
    found = combined([_choosable(one, asked.axis) for one in groups], adds=adds)
    rows = zip(found.price.tolist(), found.other.tolist(), found.choices.tolist(), strict=True)
    points = [StationPoint(price=price, other=other, choices=tuple(choices)) for price, other, choices in rows]
    return StationFront(
        survey=survey,
        axis=asked.axis,
        groups=tuple(groups),
        points=tuple(sorted(points, key=lambda one: (one.price, one.other))) if groups else (),
        planned=_planned(groups, asked.axis, adds=adds),
        gap_minor=found.gap,
        without_set=tuple(without),
        made_from=provenance_of(survey, context.tables, context.parts),
    )


def _questions(survey: Survey) -> list[tuple[str, ...]]:
    """Return the labels of the positions that ask the same, in the order in which they are first met."""
    known: dict[Position, list[str]] = {}
    for one in survey.positions:
        known.setdefault(same_question(one), []).append(one.label)
    return [tuple(labels) for labels in known.values()]


def _group(survey: Survey, labels: tuple[str, ...], context: PlanningContext, asked: StationQuestion) -> FrontGroup:
    position = next(one for one in survey.positions if one.label == labels[0])
    both = FrontQuestion((FrontAxis.PRICE, asked.axis), asked.free, asked.yearly_cost)
    front = position_front(position, survey.site, context, both)
    if not front.points and front.plan.chosen is not None:  # it has no such axis: the cheapest will do
        alone = FrontQuestion((FrontAxis.PRICE,), asked.free, asked.yearly_cost)
        front = position_front(position, survey.site, context, alone)
    return FrontGroup(labels=labels, front=front)


def other_of(group: FrontGroup, figures: Sequence[int]) -> int:
    """Return the figure of the axis beside the price; 0 where the position does not have it."""
    return figures[1] if len(group.front.axes) > 1 else 0


def points_taken(found: StationFront, point: StationPoint) -> tuple[tuple[FrontGroup, FrontPoint], ...]:
    """Return what each group takes at a point of the station."""
    return tuple((group, group.front.points[at]) for group, at in zip(found.groups, point.choices, strict=True))


def _choosable(group: FrontGroup, axis: FrontAxis) -> Choosable:
    points = tuple((one.figures[0], other_of(group, one.figures)) for one in group.front.points)
    return Choosable(points, len(group.labels))


def _planned(groups: Sequence[FrontGroup], axis: FrontAxis, *, adds: bool) -> tuple[int, int] | None:
    """Return price and other figure of the plan's own sets; None where one of them states no figure."""
    price, others = 0, []
    for group in groups:
        figures = group.front.planned_figures
        if figures is None:
            return None
        price += len(group.labels) * figures[0]
        others.append(other_of(group, figures) * (len(group.labels) if adds else 1))
    return (price, sum(others) if adds else max(others, default=0)) if groups else None
