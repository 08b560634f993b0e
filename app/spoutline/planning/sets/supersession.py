"""Parts in a survey's decisions that their makers replaced: the successor takes their place, and the plan says so."""

from __future__ import annotations

from spoutline.model.part import Part, PartStatus
from spoutline.model.plan import Succession
from spoutline.model.refit import Supersession
from spoutline.model.survey import Position, Survey
from spoutline.planning.protocols import PartStore


def successor_of(part: Part, parts: PartStore) -> Part | None:
    """Return the part at the end of a chain of supersessions; None where it is lost or runs in a circle."""
    seen = {part.number}
    while part.status is PartStatus.SUPERSEDED and part.superseded_by is not None:
        follower = parts.part(part.superseded_by)
        if follower is None or follower.number in seen:
            return None
        seen.add(follower.number)
        part = follower
    return part


def successors_at(position: Position, parts: PartStore) -> tuple[Position, tuple[Succession, ...]]:
    """Return the position with every pinned part that was superseded replaced, and what was replaced.

    A part without a usable successor stays, so that the plan names it in its conflict.
    """
    pinned: list[str] = []
    found = []
    for number in position.decisions.pinned:
        part = parts.part(number)
        follower = successor_of(part, parts) if part is not None else None
        now = follower.number if follower is not None else number
        if now != number:
            found.append(Succession(number_before=number, number_now=now))
        if now not in pinned:
            pinned.append(now)
    decisions = position.decisions.model_copy(update={"pinned": tuple(pinned)})
    return position.model_copy(update={"decisions": decisions}), tuple(found)


def with_successors(survey: Survey, parts: PartStore) -> tuple[Survey, tuple[Supersession, ...]]:
    """Return the survey with every pinned part that was superseded replaced, and what was replaced where."""
    replaced: dict[tuple[str, str], list[str]] = {}
    positions = []
    for position in survey.positions:
        updated, successions = successors_at(position, parts)
        positions.append(updated)
        for one in successions:
            replaced.setdefault((one.number_before, one.number_now), []).append(position.label)
    found = tuple(
        Supersession(number_before=before, number_now=now, positions=tuple(labels))
        for (before, now), labels in sorted(replaced.items())
    )
    return survey.model_copy(update={"positions": tuple(positions)}), found
