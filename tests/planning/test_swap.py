"""What of the stock would do: held against every rule, and against the same question asked another way."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest

from planning.surveys import CAR, CAR_RETRACTOR, TOO_FAR
from spoutline.bootstrap import Workbench
from spoutline.cli.swap import option_lines
from spoutline.model.check import Outcome
from spoutline.model.faults import InputFault
from spoutline.model.finding import Severity, Verdict
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.record import ChangeReason, CommissioningRecord, PartChange
from spoutline.model.requirement import Slot
from spoutline.model.stock import Stock, StockLine, SwapOption
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


def stock_of(*numbers: str, quantity: int = 1) -> Stock:
    return Stock(lines=tuple(StockLine(part=PartRef(number), quantity=quantity) for number in numbers))


@cache
def planned(workbench: Workbench, survey: Survey) -> PositionPlan:
    return workbench.plan_position(survey, "1A")


def missing_in(plan: PositionPlan, slot: Slot) -> str:
    assert plan.chosen is not None
    part = plan.chosen.hanging_set.part_in(slot)
    assert part is not None
    return part.number


def whole_kind(workbench: Workbench, plan: PositionPlan, slot: Slot) -> Stock:
    assert plan.chosen is not None
    part = plan.chosen.hanging_set.part_in(slot)
    assert part is not None
    return stock_of(*(one.number for one in workbench.parts().search("", part.kind, 400)))


@cache
def options(workbench: Workbench, survey: Survey, slot: Slot, stock: Stock) -> tuple[SwapOption, ...]:
    """Return what of a stock would do; the same question is asked once, whatever is held against the answer."""
    plan = planned(workbench, survey)
    return workbench.packing().swap_options(survey, plan, missing_in(plan, slot), stock)


@pytest.mark.parametrize("slot", [Slot.NOZZLE, Slot.CURB_HOSE])
def test_every_part_that_would_not_do_has_a_reason(workbench: Workbench, slot: Slot) -> None:
    plan, story = planned(workbench, CAR), workbench.story(Display(UnitSystem.SI))
    refused = [one for one in options(workbench, CAR, slot, whole_kind(workbench, plan, slot)) if one.judged is None]
    assert any(one.misfit.finding is None for one in refused)  # some break no rule by themselves
    for one in refused:
        assert one.misfit.finding is not None or one.lines
        told = [line for line in option_lines(one, "USD", story) if line.startswith("    ")]
        assert told, one.part.number


@pytest.mark.parametrize("slot", [Slot.NOZZLE, Slot.BREAKAWAY, Slot.SWIVEL, Slot.CURB_HOSE])
def test_every_offered_swap_keeps_every_must_and_every_refused_one_does_not(workbench: Workbench, slot: Slot) -> None:
    plan = planned(workbench, CAR)
    found = options(workbench, CAR, slot, whole_kind(workbench, plan, slot))
    assert any(option.judged for option in found)
    assert any(option.judged is None for option in found)
    for option in found:
        if option.judged is not None:
            assert option.part.number in option.judged.hanging_set.numbers
            assert not any(
                one.verdict is Verdict.BROKEN and one.severity is Severity.MUST for one in option.judged.findings
            )
            assert all(
                check.outcome in (Outcome.PASSES, Outcome.INFORMATION)
                for check in option.judged.checks
                if check.severity is Severity.MUST
            )


@pytest.mark.parametrize(
    "every", [pytest.param(4, marks=pytest.mark.in_part), pytest.param(1, marks=pytest.mark.at_length)]
)
def test_the_answer_is_that_of_planning_with_the_other_parts_pinned(every: int, workbench: Workbench) -> None:
    # the same question asked of the planner: pin the other parts and the stocked one, and see whether a set exists
    plan = planned(workbench, CAR)
    assert plan.chosen is not None
    missing = missing_in(plan, Slot.SWIVEL)
    others = tuple(ref for ref in plan.chosen.hanging_set.refs if ref.number != missing)
    stock = whole_kind(workbench, plan, Slot.SWIVEL)
    found = options(workbench, CAR, Slot.SWIVEL, stock)
    for option in (one for at, one in enumerate(found) if at % every == 0 or one.judged is not None):
        decisions = plan.position.decisions.model_copy(update={"pinned": (*others, option.part.ref)})
        position = plan.position.model_copy(update={"decisions": decisions})
        again = workbench.plan_position(Survey(site=CAR.site, positions=(position,)), "1A")
        with_adaptors = again.chosen is not None and len(again.chosen.hanging_set.links) > len(others) + 1
        if not with_adaptors:  # adaptors are not in this stock
            assert (again.chosen is not None) is (option.judged is not None), option.part.number


def test_what_would_do_comes_first_and_changes_are_named(workbench: Workbench) -> None:
    plan = planned(workbench, CAR)
    found = options(workbench, CAR, Slot.BREAKAWAY, whole_kind(workbench, plan, Slot.BREAKAWAY))
    fitting = [option.judged is not None for option in found]
    assert fitting == sorted(fitting, reverse=True)
    assert plan.chosen is not None
    before = plan.chosen.hanging_set.refs
    for option in found:
        if option.judged is not None:
            after = option.judged.hanging_set.refs
            assert set(option.taken_out) == set(before) - set(after)
            assert set(option.put_in) == set(after) - set(before)


def test_an_empty_box_and_the_missing_part_itself_are_no_answer(workbench: Workbench) -> None:
    plan = planned(workbench, CAR)
    missing = missing_in(plan, Slot.NOZZLE)
    empty = replace(stock_of("QW-N106"), lines=(StockLine(part=PartRef("QW-N106"), quantity=0),))
    assert options(workbench, CAR, Slot.NOZZLE, empty) == ()
    assert options(workbench, CAR, Slot.NOZZLE, stock_of(missing)) == ()
    assert options(workbench, CAR, Slot.NOZZLE, Stock(lines=())) == ()


def test_a_refused_part_tells_the_rules_that_it_breaks(workbench: Workbench) -> None:
    # the retractor's swivel-breakaway with a bolt that parts above 1557 N (350 lbf, UL 567:2021 6.3 as reported)
    (option,) = options(workbench, CAR_RETRACTOR, Slot.SWIVEL_BREAKAWAY, stock_of("LS-J106"))
    assert option.judged is None
    assert any(one.severity is Severity.MUST and one.verdict is Verdict.BROKEN for one in option.findings)


@pytest.mark.parametrize(
    ("missing", "stock", "words"),
    [
        ("QW-N999", stock_of("QW-N106"), "name a part of the set"),
        ("", stock_of("QW-N106"), "name a part of the set"),
    ],
)
def test_a_part_that_is_not_in_the_set_is_refused(workbench: Workbench, missing: str, stock: Stock, words: str) -> None:
    plan = planned(workbench, CAR)
    with pytest.raises(InputFault, match=words):
        workbench.packing().swap_options(CAR, plan, missing, stock)


def test_an_unknown_number_in_the_stock_is_named_with_near_ones(workbench: Workbench) -> None:
    plan = planned(workbench, CAR)
    with pytest.raises(InputFault, match=r"QW-N10Z.*near it are"):
        workbench.packing().swap_options(CAR, plan, missing_in(plan, Slot.NOZZLE), stock_of("QW-N10Z"))


def test_a_position_without_a_set_has_nothing_to_swap(workbench: Workbench) -> None:
    plan = planned(workbench, TOO_FAR)
    assert plan.chosen is None
    with pytest.raises(InputFault, match="no set"):
        workbench.packing().swap_options(TOO_FAR, plan, "QW-N103", stock_of("QW-N106"))


def record_of(site_plan: SitePlan, planned_number: str, *fitted: str) -> CommissioningRecord:
    plan = site_plan.positions[0]
    assert plan.chosen is not None
    return CommissioningRecord(
        site=site_plan.survey.site.name,
        position="1A",
        plan_revision=site_plan.provenance.survey_fingerprint,
        parts=plan.chosen.hanging_set.numbers,
        changes=(PartChange(planned=planned_number, fitted=fitted, reason=ChangeReason.NOT_ON_VAN),),
    )


def test_the_swap_goes_into_the_bill_as_built_with_its_own_checks(workbench: Workbench) -> None:
    site_plan = workbench.plan_site(CAR)
    plan = site_plan.positions[0]
    missing = missing_in(plan, Slot.BREAKAWAY)
    option = options(workbench, CAR, Slot.BREAKAWAY, whole_kind(workbench, plan, Slot.BREAKAWAY))[0]
    built = workbench.packing().as_built(site_plan, (record_of(site_plan, missing, option.part.number),))
    chosen = built.positions[0].chosen
    assert chosen is not None
    assert option.judged is not None
    assert chosen.hanging_set.numbers == option.judged.hanging_set.numbers
    assert chosen.checks == option.judged.checks
    assert missing not in chosen.hanging_set.numbers


def test_a_wrong_part_as_built_shows_the_broken_must(workbench: Workbench) -> None:
    site_plan = workbench.plan_site(CAR)
    missing = missing_in(site_plan.positions[0], Slot.NOZZLE)
    built = workbench.packing().as_built(site_plan, (record_of(site_plan, missing, "QW-N143"),))  # a truck nozzle
    assert not built.positions[0].keeps_every_must


@pytest.mark.parametrize(
    ("fitted", "words"), [("QW-N10Z", "part number of the catalog"), ("GR-P101", "no part of the chain")]
)
def test_a_record_with_no_usable_part_is_refused(workbench: Workbench, fitted: str, words: str) -> None:
    site_plan = workbench.plan_site(CAR)
    missing = missing_in(site_plan.positions[0], Slot.NOZZLE)
    with pytest.raises(InputFault, match=words):
        workbench.packing().as_built(site_plan, (record_of(site_plan, missing, fitted),))


def test_a_record_of_another_revision_is_refused(workbench: Workbench) -> None:
    site_plan = workbench.plan_site(CAR)
    record = record_of(site_plan, missing_in(site_plan.positions[0], Slot.NOZZLE), "QW-N106")
    stale = record.model_copy(update={"plan_revision": "0" * 16})
    with pytest.raises(InputFault, match="printed from"):
        workbench.packing().judge(stale, site_plan)
