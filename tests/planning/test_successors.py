"""A kept part that its maker replaced: the plan offers the part that took its place, where that frees a set.

The catalogue's file of swivels says: LS-S113 is superseded by LS-S101; neither is listed for E85.
"""

from __future__ import annotations

from planning.surveys import survey_of
from spoutline.bootstrap import Workbench
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PlanStatus, Succession
from spoutline.model.requirement import RequirementId

E10 = {"family": "gasoline", "blend_percent": 10}
E85 = {"family": "gasoline", "blend_percent": 85}

LARKSPINDLE = "Larkspindle Couplings"


def test_the_successor_of_a_kept_part_is_the_first_way_out(workbench: Workbench) -> None:
    plan = workbench.plan_position(survey_of(liquid=E10, decisions={"pinned": ("LS-S113",)}), "1A")
    assert plan.status is PlanStatus.DOES_NOT_FIT
    assert plan.conflict is not None
    first, *others = plan.conflict.relaxations
    assert first.successions == (
        Succession(before=PartRef("LS-S113", LARKSPINDLE), now=PartRef("LS-S101", LARKSPINDLE)),
    )
    assert "LS-S101" in [part.number for part in first.parts]
    assert RequirementId.DECISION in {one.requirement for one in others}
    after = workbench.plan_position(survey_of(liquid=E10, decisions={"pinned": ("LS-S101",)}), "1A")
    assert after.chosen is not None
    assert after.chosen.hanging_set.refs == first.parts
    assert after.chosen.hanging_set.price_minor == first.price_minor


def test_a_successor_that_frees_no_set_is_not_offered(workbench: Workbench) -> None:
    plan = workbench.plan_position(survey_of(liquid=E85, decisions={"pinned": ("LS-S113",)}), "1A")
    assert plan.conflict is not None
    assert not any(one.successions for one in plan.conflict.relaxations)


def test_other_kept_parts_stay_kept_beside_the_successor(workbench: Workbench) -> None:
    free = workbench.plan_position(survey_of(liquid=E10), "1A")
    assert free.chosen is not None
    nozzle = free.chosen.hanging_set.numbers[-1]
    plan = workbench.plan_position(survey_of(liquid=E10, decisions={"pinned": (nozzle, "LS-S113")}), "1A")
    assert plan.conflict is not None
    assert {nozzle, "LS-S101"} <= {part.number for part in plan.conflict.relaxations[0].parts}
