"""Parts in a survey's decisions that their makers replaced: the successor takes their place, and the plan says so."""

from __future__ import annotations

from spoutline.model.part import Part, PartStatus
from spoutline.model.refit import Supersession
from spoutline.model.survey import Survey
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


def with_successors(survey: Survey, parts: PartStore) -> tuple[Survey, tuple[Supersession, ...]]:
    """Return the survey with every pinned part that was superseded replaced, and what was replaced where.

    A part without a usable successor stays, so that the plan names it in its conflict.
    """
    replaced: dict[tuple[str, str], list[str]] = {}
    positions = []
    for position in survey.positions:
        pinned = []
        for number in position.decisions.pinned:
            part = parts.part(number)
            follower = successor_of(part, parts) if part is not None else None
            now = follower.number if follower is not None else number
            if now != number:
                replaced.setdefault((number, now), []).append(position.label)
            if now not in pinned:
                pinned.append(now)
        decisions = position.decisions.model_copy(update={"pinned": tuple(pinned)})
        positions.append(position.model_copy(update={"decisions": decisions}))
    found = tuple(
        Supersession(number_before=before, number_now=now, positions=tuple(labels))
        for (before, now), labels in sorted(replaced.items())
    )
    return survey.model_copy(update={"positions": tuple(positions)}), found
