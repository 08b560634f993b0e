"""Which ports make up, and what a chain finds in its joints and order."""

from __future__ import annotations

from dataclasses import replace

import pytest

from rules.invented_parts import (
    FEMALE,
    MALE,
    adaptor,
    breakaway,
    chain,
    hose,
    nozzle,
    plain_set,
    splitter,
    swivel,
    whip,
)
from rules.stations import derived, position, tables
from spoutline.model.plan import SetLink
from spoutline.model.port import FlowPath, Gender, Port, Seal, ThreadStandard
from spoutline.model.requirement import Slot
from spoutline.model.survey import Decisions, Outlet
from spoutline.rules.chain.joints import OUTLET, joint_findings, joints_of, mates
from spoutline.rules.chain.order import set_findings
from spoutline.rules.declared.registry import RuleId


def test_a_male_and_a_female_of_one_thread_mate_either_way_round() -> None:
    assert mates(MALE, FEMALE)
    assert mates(FEMALE, MALE)


@pytest.mark.parametrize("size", ["1/2", "3/4", "1"])
def test_npt_never_mates_with_g_of_the_same_size(size: str) -> None:
    # BSP-07: 60 against 55 degrees (ASME B1.20.1, ISO 228-1); 14 threads per inch at 1/2 and 3/4 change nothing
    npt = Port(ThreadStandard.NPT, size, Gender.MALE, FlowPath.SINGLE)
    g = Port(ThreadStandard.G, size, Gender.FEMALE, FlowPath.SINGLE)
    assert not mates(npt, g)
    assert not mates(g, npt)


@pytest.mark.parametrize(
    ("other", "rule"),
    [
        (replace(FEMALE, thread=ThreadStandard.G), RuleId.JOINT_THREAD),
        (replace(FEMALE, size="1"), RuleId.JOINT_SIZE),
        (MALE, RuleId.JOINT_GENDER),
        (replace(FEMALE, path=FlowPath.BALANCE), RuleId.JOINT_PATH),
    ],
)
def test_one_property_that_differs_keeps_ports_apart_and_is_named(other: Port, rule: RuleId) -> None:
    assert not mates(MALE, other)
    links = (SetLink(slot=Slot.WHIP_HOSE, part=whip()), SetLink(slot=Slot.BREAKAWAY, part=breakaway(inlet=other)))
    found = joint_findings(links, FEMALE, tables())
    assert [finding.rule_id for finding in found] == [rule]
    assert found[0].subject == "XX-W1 > XX-B1"


def test_every_property_that_differs_is_named() -> None:
    other = Port(ThreadStandard.UN, "1-7/8-12", Gender.MALE, FlowPath.BALANCE)
    links = (SetLink(slot=Slot.WHIP_HOSE, part=whip()), SetLink(slot=Slot.BREAKAWAY, part=breakaway(inlet=other)))
    assert {finding.rule_id for finding in joint_findings(links, FEMALE, tables())} == {
        RuleId.JOINT_THREAD,
        RuleId.JOINT_SIZE,
        RuleId.JOINT_GENDER,
        RuleId.JOINT_PATH,
    }


def test_a_plain_chain_has_five_joints_sealed_on_the_thread() -> None:
    joints = joints_of(plain_set().links, FEMALE)
    assert [joint.downstream for joint in joints] == ["XX-W1", "XX-B1", "XX-H1", "XX-S1", "XX-N1"]
    assert joints[0].upstream == OUTLET
    assert {joint.seal for joint in joints} == {Seal.SEALANT}  # ASME B1.20.1 3.1: NPT is tight with sealant
    assert joint_findings(plain_set().links, FEMALE, tables()) == ()


def test_g_and_coaxial_threads_stay_free_of_sealant() -> None:
    g_port = Port(ThreadStandard.G, "3/4", Gender.MALE, FlowPath.SINGLE)
    links = (SetLink(slot=Slot.WHIP_HOSE, part=whip(inlet=g_port)),)
    joint = joints_of(links, replace(g_port, gender=Gender.FEMALE))[0]
    assert joint.seal is Seal.FLAT_GASKET  # ISO 228-1 scope: tightness is not made on the thread


def test_an_adaptor_makes_up_an_outlet_of_another_size() -> None:
    big = Port(ThreadStandard.NPT, "1", Gender.FEMALE, FlowPath.SINGLE)
    with_adaptor = chain((Slot.ADAPTOR, adaptor()), (Slot.WHIP_HOSE, whip()))
    assert joint_findings(with_adaptor.links, big, tables()) == ()
    assert [one.rule_id for one in joint_findings((with_adaptor.links[1],), big, tables())] == [RuleId.JOINT_SIZE]


def test_the_order_of_the_chain_is_asked() -> None:
    requirement = derived(position())
    assert set_findings(plain_set(), requirement, tables()) == ()
    swapped = chain(
        (Slot.CURB_HOSE, hose()),
        (Slot.BREAKAWAY, breakaway()),
        (Slot.WHIP_HOSE, whip()),
        (Slot.SWIVEL, swivel()),
        (Slot.NOZZLE, nozzle()),
    )
    assert [found.rule_id for found in set_findings(swapped, requirement, tables())] == [RuleId.CHAIN_ORDER]


def test_a_splitter_stands_at_the_outlet_only() -> None:
    requirement = derived(position(outlet=Outlet(vapour_return_available=True)))
    links = plain_set().links
    split = SetLink(slot=Slot.SPLITTER, part=splitter())
    first = replace(plain_set(), links=(split, *links))
    later = replace(plain_set(), links=(links[0], split, *links[1:]))
    assert set_findings(first, requirement, tables()) == ()
    assert [found.rule_id for found in set_findings(later, requirement, tables())] == [RuleId.SPLITTER_PLACE]


def test_a_pinned_part_that_is_missing_is_named() -> None:
    requirement = derived(position(decisions=Decisions(pinned=("XX-N1", "XX-N7"))))
    found = set_findings(plain_set(), requirement, tables())
    assert [(one.rule_id, one.facts[0].value) for one in found] == [(RuleId.PINNED_PART_MISSING, "XX-N7")]
