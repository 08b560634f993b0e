"""The catalogue parts that meet the accessory needs of a set."""

from __future__ import annotations

from spoutline.model.part import Part, PartStatus
from spoutline.model.plan import AccessoryLine, JudgedSet
from spoutline.model.requirement import Requirement
from spoutline.planning.protocols import CandidateFilter
from spoutline.planning.sets.context import PlanningContext
from spoutline.rules.chain.accessories import AccessoryNeed, accessory_needs


def accessory_lines(judged: JudgedSet, requirement: Requirement, context: PlanningContext) -> tuple[AccessoryLine, ...]:
    """Return the cheapest part on sale for every need of the set.

    A need that the catalogue cannot meet gives no line.
    """
    currency = requirement.site.currency
    lines = []
    for need in accessory_needs(judged, requirement, context.tables):
        part = _cheapest(need, currency, context)
        if part is not None:
            lines.append(AccessoryLine(part=part, quantity=need.quantity, reason=need.reason))
    return tuple(lines)


def _cheapest(need: AccessoryNeed, currency: str, context: PlanningContext) -> Part | None:
    fitting = [
        part
        for part in context.parts.candidates(CandidateFilter(kind=need.kind, active_only=True))
        if part.status is PartStatus.ACTIVE and part.price_minor(currency) is not None and need.is_met_by(part)
    ]
    return min(fitting, key=lambda part: (part.price_minor(currency) or 0, part.ref), default=None)
