"""The survey in which something is given up: a wish, a decision, an answer; what is measured or ruled stays."""

from __future__ import annotations

import math
from collections.abc import Iterable

from spoutline.model.no_set import AskedAnswer, Demand, DemandKind, OtherAnswer
from spoutline.model.requirement import RequirementId
from spoutline.model.survey import Position, Service, Site, Survey
from spoutline.planning.no_set.other_answers import put_right

_WISHES = {
    RequirementId.HOLD_OPEN: "hold_open_wanted",
    RequirementId.NO_PRESSURE_DEVICE: "hold_open_wanted",
    RequirementId.RECONNECTABLE: "reconnectable_wanted",
}
_NAMED_ANSWERS = (AskedAnswer.LIQUID, AskedAnswer.VAPOUR)  # the others are measured anew, not chosen


def after_line(position: Position, site: Site, line: RequirementId, to_value: float | None) -> Position | None:
    """Return the position in which a requirement line is given up; None where no answer of a person does that.

    ``to_value`` is what the figure of the line becomes, SI or days; None gives it up as a whole. What is measured
    (reach, strength of the outlet, pressure, climate), sold (liquid and blend) or ruled stays.
    """
    if line is RequirementId.NO_PRESSURE_DEVICE and (position.prepay or site.service is Service.UNATTENDED):
        return None  # the way of paying asks for it
    if line in _WISHES:
        return position.model_copy(update={_WISHES[line]: False})
    match line:
        case RequirementId.DECISION:
            return _deciding(position, pinned=(), refused=())
        case RequirementId.LEAD_TIME:
            return _deciding(position, longest_lead_time_days=None if to_value is None else math.ceil(to_value))
        case RequirementId.FLOW:
            return _with_wanted_flow(position, to_value)
        case _:
            return None


def after_giving_up(
    survey: Survey,
    label: str,
    given_up: Iterable[Demand],
    answers: Iterable[OtherAnswer],
    figures: dict[RequirementId, float],
) -> Survey | None:
    """Return the survey without some demands of a position; None where an answer of a person does not do all of it."""
    position = survey.position(label)
    if position is None:
        raise KeyError(label)
    before, others = position, {other.answer: other for other in answers}
    for demand in given_up:
        after = _after(position, survey.site, demand, others, figures)
        if after is None:
            return None
        position = after
    return with_position(survey, position) if position != before else None


def with_position(survey: Survey, position: Position) -> Survey:
    """Return the survey in which a position stands in the place of the one with its label."""
    positions = tuple(position if old.label == position.label else old for old in survey.positions)
    return survey.model_copy(update={"positions": positions})


def _after(
    position: Position,
    site: Site,
    demand: Demand,
    others: dict[AskedAnswer, OtherAnswer],
    figures: dict[RequirementId, float],
) -> Position | None:
    decisions = position.decisions
    match demand.kind:
        case DemandKind.LINE if demand.line is not None:
            return after_line(position, site, demand.line, figures.get(demand.line))
        case DemandKind.PINNED:
            return _deciding(position, pinned=tuple(one for one in decisions.pinned if one != demand.part))
        case DemandKind.REFUSED:
            return _deciding(position, refused=tuple(one for one in decisions.refused if one != demand.part))
        case _:
            other = others.get(demand.answer) if demand.answer in _NAMED_ANSWERS else None
            return None if other is None else put_right(position, site, other)[0]


def _deciding(position: Position, **decided: object) -> Position:
    return position.model_copy(update={"decisions": position.decisions.model_copy(update=decided)})


def _with_wanted_flow(position: Position, flow_m3_s: float | None) -> Position:
    if flow_m3_s is None:
        return position
    # rounded down, so that the wish stays within what the freed set delivers
    litres_per_minute = math.floor(flow_m3_s * 60_000.0 * 10.0) / 10.0
    if litres_per_minute <= 0:
        return position
    return position.model_copy(
        update={"supply": position.supply.model_copy(update={"wanted_flow_l_min": litres_per_minute})}
    )
