"""Positions that ask the same and got the same answer, told once."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable

from spoutline.frozen import frozen
from spoutline.model.plan import PositionPlan
from spoutline.model.survey import Position
from spoutline.planning.sets.relabel import relabelled, same_question


@frozen
class LikePositions:
    """A plan and the positions, its own first, that it holds for."""

    plan: PositionPlan
    positions: tuple[Position, ...]


def like_positions(plans: Iterable[PositionPlan]) -> tuple[LikePositions, ...]:
    """Return ``plans`` in groups that differ in label, dispenser and notes alone, in order of their first."""
    groups: list[tuple[PositionPlan, list[Position]]] = []
    by_question: dict[Position, list[int]] = defaultdict(list)  # what was found before, so that none asks all others
    for plan in plans:
        asked_before = by_question[same_question(plan.position)]
        for place in asked_before:
            first, positions = groups[place]
            if relabelled(first, plan.position) == plan:
                positions.append(plan.position)
                break
        else:
            asked_before.append(len(groups))
            groups.append((plan, [plan.position]))
    return tuple(LikePositions(first, tuple(positions)) for first, positions in groups)
