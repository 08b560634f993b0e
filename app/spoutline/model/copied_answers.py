"""Answers of one position given to others, group by group, and which positions sell the same product."""

from __future__ import annotations

from enum import StrEnum

from spoutline.model.answered import AssumedTopic, assumed_topics, same_answers, with_answers_from
from spoutline.model.dispenser_type import inheriting
from spoutline.model.survey import Position, Survey


class AnswerGroup(StrEnum):
    """Groups of answers that can be copied to other positions together."""

    LIQUID = "liquid"
    DUTY = "duty"
    VAPOUR = "vapour"
    OUTLET = "outlet"
    FILLERS = "fillers"
    HOOK = "hook"
    TAKE_UP = "take_up"
    SUPPLY = "supply"
    DECISIONS = "decisions"
    TODAY = "today"
    NOTES = "notes"


GROUP_FIELDS: dict[AnswerGroup, tuple[str, ...]] = {
    AnswerGroup.LIQUID: ("liquid", "grade", "tank", "in_flammable_zone"),
    AnswerGroup.DUTY: ("duty", "hold_open_wanted", "prepay", "overhead"),
    AnswerGroup.VAPOUR: ("vapour_today", "vapour_wanted"),
    AnswerGroup.OUTLET: ("outlet",),
    AnswerGroup.FILLERS: ("filler", "other_fillers"),
    AnswerGroup.HOOK: ("hook",),
    AnswerGroup.TAKE_UP: ("retrieval", "retractor", "reel"),
    AnswerGroup.SUPPLY: ("supply",),
    AnswerGroup.DECISIONS: ("decisions",),
    AnswerGroup.TODAY: ("installed", "liquid_today", "exists_today", "reconnectable_wanted"),
    AnswerGroup.NOTES: ("notes",),
}


def copy_answers(survey: Survey, source: str, groups: frozenset[AnswerGroup], targets: frozenset[str]) -> Survey:
    """Return the survey in which the target positions have the source's answers of the chosen groups."""
    origin = survey.position(source)
    if origin is None:
        raise KeyError(source)
    copied = tuple(field for group in groups for field in GROUP_FIELDS[group])
    positions = tuple(
        inheriting(with_answers_from(position, origin, copied)) if position.label in targets else position
        for position in survey.positions
    )
    return survey.model_copy(update={"positions": positions})


def same_product(survey: Survey, source: str) -> frozenset[str]:
    """Return the other positions that sell the liquid and blend of the source, as somebody answered for both of them.

    What nobody answered is assumed, and an assumed liquid is no product: such positions are left out.
    """
    origin = survey.position(source)
    if origin is None:
        raise KeyError(source)
    if not has_known_product(origin):
        return frozenset()
    return frozenset(
        position.label
        for position in survey.positions
        if position.label != source and has_known_product(position) and position.liquid == origin.liquid
    )


def has_known_product(position: Position) -> bool:
    """Say whether somebody answered which liquid a position sells, and where it has one its blend."""
    silent = {AssumedTopic.LIQUID, AssumedTopic.BLEND}
    return silent.isdisjoint(assumed_topics(position))


def changed_positions(before: Survey, after: Survey) -> tuple[str, ...]:
    """Return the labels of the positions whose values differ, or of whose answers others were given, in their order."""
    pairs = zip(before.positions, after.positions, strict=True)
    return tuple(one.label for one, other in pairs if not same_answers(one, other))
