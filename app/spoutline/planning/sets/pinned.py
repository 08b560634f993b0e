"""Why the parts that a person asked for leave no set: the rule that one breaks, or the lines that shut it out."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.model.plan import PinnedPart
from spoutline.model.requirement import Refusal, Requirement
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.conflicts import ConflictFinder
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.part_here import findings_here, forbids, places_for
from spoutline.planning.sets.pool import whole_pool
from spoutline.planning.sets.set_query import Held
from spoutline.rules.derive.requirement import requirement_for


def pinned_in_the_way(requirement: Requirement, context: PlanningContext) -> tuple[PinnedPart, ...]:
    """Return the pinned parts that cannot serve here, each with its reason.

    Where each of them could serve by itself they are all returned, without a reason: no set holds them together.

    Parameters: ``requirement`` of a position without a set; ``context``, catalogue and tables.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    judged = tuple(_judged(requirement, context))
    guilty = tuple(one for one in judged if one.findings or one.lines or not one.slots)
    return guilty or judged


def _judged(requirement: Requirement, context: PlanningContext) -> Iterator[PinnedPart]:
    free = _without_pins(requirement, context)
    if free is None:
        return
    finder: ConflictFinder | None = None
    for part in context.parts.parts(requirement.position.decisions.pinned):
        slots = places_for(part, free)
        broken = tuple(filter(forbids, findings_here(part, slots, free, context)))
        if broken or not slots:
            yield PinnedPart(part=part, slots=slots, findings=broken, lines=())
            continue
        finder = finder or _finder(free, context)
        found = [finder.lines(Held(slot, part.ref)) for slot in slots]
        yield PinnedPart(part=part, slots=slots, findings=(), lines=min(found, key=len))


def _without_pins(requirement: Requirement, context: PlanningContext) -> Requirement | None:
    position = requirement.position
    decisions = position.decisions.model_copy(update={"pinned": ()})
    free = requirement_for(position.model_copy(update={"decisions": decisions}), requirement.site, context.tables)
    return None if isinstance(free, Refusal) else free


def _finder(requirement: Requirement, context: PlanningContext) -> ConflictFinder:
    pool = whole_pool(requirement, context.tables, context.parts)
    search = ChainSearch(requirement, pool, LoadModel(requirement, context.tables))
    return ConflictFinder(search, context.listener)
