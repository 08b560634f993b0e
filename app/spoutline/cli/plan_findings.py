"""What was found about a position, gathered from its refusal, its requirement and its set."""

from __future__ import annotations

from spoutline.model.finding import Finding
from spoutline.model.plan import PositionPlan


def findings_of(plan: PositionPlan) -> tuple[Finding, ...]:
    """Return what was found about the position itself, then about its set; each finding once."""
    found: list[Finding] = []
    if plan.refusal:
        found += plan.refusal.findings
    if plan.requirement:
        found += plan.requirement.findings
    if plan.chosen:
        found += plan.chosen.findings
    return tuple(dict.fromkeys(found))
