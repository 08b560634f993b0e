"""What an agency, a jurisdiction or the survey asks for beyond the usual: a paper names it with its source."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.plan import SitePlan
from spoutline.model.quantity import Fact
from spoutline.model.requirement import RequirementId, RequirementLine

DEMANDS = (RequirementId.LOW_PERMEATION, RequirementId.ENHANCED_CONVENTIONAL, RequirementId.RECONNECTABLE)
_YES = "yes"


@frozen(kw_only=True)
class Demand:
    """One demand, who makes it, and the positions that it is made of."""

    id: RequirementId
    source: str
    labels: tuple[str, ...]


def demands_of(site_plan: SitePlan) -> tuple[Demand, ...]:
    """Return the demands on a station, those of one kind and source together, in the order of ``DEMANDS``."""
    found: dict[tuple[RequirementId, str], list[str]] = {}
    for plan in site_plan.positions:
        for line in plan.requirement.lines if plan.requirement else ():
            if line.id in DEMANDS and _is_made(line):
                found.setdefault((line.id, line.source), []).append(plan.position.label)
    ordered = sorted(found.items(), key=lambda item: DEMANDS.index(item[0][0]))
    return tuple(Demand(id=line, source=source, labels=tuple(labels)) for (line, source), labels in ordered)


def _is_made(line: RequirementLine) -> bool:
    return any(isinstance(fact, Fact) and fact.name == line.id.value and fact.value == _YES for fact in line.facts)
