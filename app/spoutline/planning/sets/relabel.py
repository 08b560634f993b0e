"""The plan of one position, whole or as far as it is known, handed to another that asks exactly the same."""

from __future__ import annotations

from dataclasses import replace

from spoutline.model.finding import Finding, SubjectKind
from spoutline.model.plan import JudgedSet, PositionPlan
from spoutline.model.staged_plan import StagedPlan
from spoutline.model.survey import Position, Site

_BY_LABEL = (SubjectKind.POSITION, SubjectKind.SET)  # findings about these name the position


def same_question(position: Position) -> Position:
    """Return ``position`` without what has no bearing on its set: two equal results have the same plan."""
    return position.model_copy(
        update={
            "label": "-",
            "dispenser": "-",
            "island": "",
            "notes": "",
            "grade": "",
            "tank": "",
            "liquid_today": None,
            "exists_today": True,
            "dispenser_type": None,
        }
    )


def same_site(site: Site) -> Site:
    """Return ``site`` without what has no bearing on the sets of its positions: name, address and customer."""
    return site.model_copy(update={"name": "-", "address": "", "customer": ""})


def relabelled(plan: PositionPlan, position: Position) -> PositionPlan:
    """Return ``plan`` as the plan of ``position``, which asks the same under another label."""

    def findings(found: tuple[Finding, ...]) -> tuple[Finding, ...]:
        return tuple(replace(one, subject=position.label) if one.subject_kind in _BY_LABEL else one for one in found)

    def judged(one: JudgedSet) -> JudgedSet:
        return replace(one, findings=findings(one.findings))

    requirement, refusal = plan.requirement, plan.refusal
    return replace(
        plan,
        position=position,
        requirement=requirement and replace(requirement, position=position, findings=findings(requirement.findings)),
        refusal=refusal and replace(refusal, findings=findings(refusal.findings)),
        chosen=plan.chosen and judged(plan.chosen),
        alternatives=tuple(replace(one, judged=judged(one.judged)) for one in plan.alternatives),
        left_open=findings(plan.left_open),
    )


def relabelled_stage(staged: StagedPlan, position: Position) -> StagedPlan:
    """Return what is known of a plan as what is known of that of ``position``, which asks the same."""
    taken = StagedPlan.of(relabelled(staged.whole, position))
    if staged.alternatives is None:
        return replace(staged, plan=taken.plan, found=taken.alternatives or (), left_open=taken.left_open)
    return replace(staged, plan=taken.plan, alternatives=taken.alternatives, left_open=taken.left_open)
