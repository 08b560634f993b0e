"""What a part in another's place changes, and why one cannot hang there, in sentences."""

from __future__ import annotations

from dataclasses import replace

from documents import plan_factory as factory
from documents.readers import story
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.quantity import Dimension, Quantity
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.substitute import Misfit, SlotChange


def test_a_misfit_tells_the_rule_it_breaks_with_its_figures() -> None:
    finding = Finding(
        rule_id="spout_diameter",
        severity=Severity.MUST,
        verdict=Verdict.BROKEN,
        subject_kind=SubjectKind.PART,
        subject="QW-N101",
        facts=(Quantity("spout", 0.0238, Dimension.DIAMETER),),
        limit_ids=(),
        source="40 CFR 1090.1550",
    )
    sentence = story().misfit(Misfit(part=factory.nozzle(), finding=finding, lines=()))
    assert sentence == story().finding(finding).sentence
    assert "23.8 mm" in sentence


def test_a_misfit_without_a_broken_rule_tells_the_lines_that_leave_no_set_with_it() -> None:
    one = Misfit(part=factory.nozzle(), finding=None, lines=(RequirementId.DRIVE_OFF,))
    assert story().misfit(one) == "No set with it meets this: drive-off strength."
    two = replace(one, lines=(RequirementId.JOINTS, RequirementId.MATERIALS))
    assert story().misfit(two) == "No set with it meets these together: joints, wetted materials."
    assert "check" in story().misfit(replace(one, lines=()))


def test_a_change_tells_what_goes_and_what_comes() -> None:
    before, after = factory.swivel(), replace(factory.swivel(), number="NEW-1")
    change = SlotChange(slot=Slot.SWIVEL, taken_out=before, put_in=after)
    assert story().slot_change(change) == f"Swivel: {before.number} → NEW-1"
    assert story().slot_change(replace(change, put_in=None)) == f"Swivel: {before.number} goes"
    assert story().slot_change(replace(change, taken_out=None)) == "Swivel: NEW-1 comes"


def test_lines_given_up_are_named_once_each() -> None:
    lines = (RequirementId.FLOW, RequirementId.SERVICE_LOAD, RequirementId.FLOW)
    assert story().line_names(lines) == "flow (2 times), service load on the breakaway"
    assert story().line_names(()) == ""
