"""Parts in a survey's decisions that their makers replaced: the successor takes their place, and the plan says so."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoutline.model.part import Part, PartStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import Succession
from spoutline.model.survey import Position, Survey
from spoutline.planning.protocols import PartStore

if TYPE_CHECKING:
    from spoutline.model.refit import Supersession


def successor_of(part: Part, parts: PartStore) -> Part | None:
    """Return the part at the end of a chain of supersessions; None where it is lost or runs in a circle."""
    seen = {part.ref}
    while part.status is PartStatus.SUPERSEDED and part.successor is not None:
        follower = parts.part(part.successor)
        if follower is None or follower.ref in seen:
            return None
        seen.add(follower.ref)
        part = follower
    return part


def successors_at(position: Position, parts: PartStore) -> tuple[Position, tuple[Succession, ...]]:
    """Return the position with every pinned part that was superseded replaced, and what was replaced.

    A part without a usable successor stays, so that the plan names it in its conflict.
    """
    pinned: list[PartRef] = []
    found = []
    for asked in position.decisions.pinned:
        part = parts.part(asked)
        follower = successor_of(part, parts) if part is not None else None
        now = asked if follower is None or asked.names(follower.ref) else follower.ref
        if part is not None and now != asked:
            found.append(Succession(before=part.ref, now=now))
        if not any(one.names(now) or now.names(one) for one in pinned):
            pinned.append(now)
    decisions = position.decisions.model_copy(update={"pinned": tuple(pinned)})
    return position.model_copy(update={"decisions": decisions}), tuple(found)


def with_successors(survey: Survey, parts: PartStore) -> tuple[Survey, tuple[Supersession, ...]]:
    """Return the survey with every pinned part that was superseded replaced, and what was replaced where."""
    from spoutline.model.refit import Supersession  # results of whole stations; no plan of a position needs them

    replaced: dict[tuple[PartRef, PartRef], list[str]] = {}
    positions = []
    for position in survey.positions:
        updated, successions = successors_at(position, parts)
        positions.append(updated)
        for one in successions:
            replaced.setdefault((one.before, one.now), []).append(position.label)
    found = tuple(
        Supersession(before=before, now=now, positions=tuple(labels))
        for (before, now), labels in sorted(replaced.items())
    )
    return survey.model_copy(update={"positions": tuple(positions)}), found
