"""What goes with a set besides its chain."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from rules.invented_parts import on_path, plain_set, swivel
from rules.stations import derived, position, tables
from spoutline.model.liquid import LiquidFamily, ListingClass
from spoutline.model.material import Material
from spoutline.model.part import AccessoryData, Part, PartKind
from spoutline.model.plan import HangingSet, JudgedSet
from spoutline.model.port import FlowPath, Gender, ThreadStandard
from spoutline.model.requirement import Requirement
from spoutline.model.survey import Outlet, Retrieval, VapourStatus
from spoutline.rules.chain.accessories import AccessoryNeed, accessory_needs, joints_to_seal
from spoutline.rules.chain.joints import joints_of
from spoutline.rules.declared.registry import AccessoryReason


def needs(hanging_set: HangingSet, requirement: Requirement) -> dict[PartKind, AccessoryNeed]:
    joints = joints_of(hanging_set.links, requirement.outlet)
    judged = JudgedSet(hanging_set=hanging_set, joints=joints, findings=(), checks=())
    return {need.kind: need for need in accessory_needs(judged, requirement, tables())}


def accessory(kind: PartKind, **data: Any) -> Part:
    fields: dict[str, Any] = {
        "fits_diameter_minimum_m": None,
        "fits_diameter_maximum_m": None,
        "label_classes": frozenset(),
        "label_def": False,
    }
    made = AccessoryData(**{**fields, **data})
    return replace(swivel("XX-Z1"), kind=kind, inlet=None, outlet=None, swivel=None, accessory=made)


def test_taper_threads_take_sealant_of_the_class_and_coaxial_threads_none() -> None:
    # ASME B1.20.1 3.1: NPT is tight with sealant; coaxial threads seal on O-rings
    found = needs(plain_set(), derived(position()))
    assert found[PartKind.SEALANT].listing_class is ListingClass.E10
    balance = plain_set()
    coaxial = replace(
        balance,
        links=tuple(replace(link, part=on_path(link.part, FlowPath.BALANCE)) for link in balance.links),
    )
    outlet = Outlet(thread=ThreadStandard.UN, size="1-7/8-12", gender=Gender.FEMALE, path=FlowPath.BALANCE)
    asked = derived(position(vapour_wanted=VapourStatus.BALANCE, outlet=outlet))
    assert PartKind.SEALANT not in needs(coaxial, asked)


def test_sealant_carries_the_class_or_for_def_no_barred_material() -> None:
    fuel = needs(plain_set(), derived(position(blend=85)))[PartKind.SEALANT]
    assert not fuel.is_met_by(accessory(PartKind.SEALANT))  # listed for E10 only
    urea = needs(plain_set(), derived(position(LiquidFamily.DEF, 0)))[PartKind.SEALANT]
    tape = replace(accessory(PartKind.SEALANT), wetted_materials=(Material.PTFE,))
    assert urea.is_met_by(tape)
    # copper is barred in DEF (ISO 22241-3, memory)
    assert not urea.is_met_by(replace(tape, wetted_materials=(Material.COPPER_BRONZE,)))


def staying(hanging_set: HangingSet, *bought: int) -> HangingSet:
    links = tuple(replace(link, kept=place not in bought) for place, link in enumerate(hanging_set.links))
    return replace(hanging_set, links=links)


def test_parts_that_all_stay_want_neither_sealant_nor_label_but_for_another_liquid() -> None:
    stays = staying(plain_set())
    assert needs(stays, derived(position())) == {}
    other = position(liquid_today={"family": "gasoline", "blend_percent": 0})
    assert set(needs(stays, derived(other))) == {PartKind.LABEL}


@pytest.mark.parametrize(("bought", "joints"), [((), 0), ((4,), 1), ((2,), 2), ((0, 1), 3), ((0, 1, 2, 3, 4), 5)])
def test_only_joints_that_are_made_up_anew_take_sealant(bought: tuple[int, ...], joints: int) -> None:
    # ASME B1.20.1 3.1: an NPT joint is tight with sealant; one that nobody opens keeps its own
    hanging_set = staying(plain_set(), *bought)
    made = joints_of(hanging_set.links, derived(position()).outlet)
    assert joints_to_seal(JudgedSet(hanging_set=hanging_set, joints=made, findings=(), checks=())) == joints


def test_a_retractor_wants_a_clamp_that_fits_the_hose() -> None:
    assert PartKind.HOSE_CLAMP not in needs(plain_set(), derived(position()))
    clamp = needs(plain_set(), derived(position(retrieval=Retrieval.RETRACTOR)))[PartKind.HOSE_CLAMP]
    assert clamp.diameter_m == pytest.approx(0.03)
    wide = {"fits_diameter_minimum_m": 0.028, "fits_diameter_maximum_m": 0.032}
    assert clamp.is_met_by(accessory(PartKind.HOSE_CLAMP, **wide))
    assert not clamp.is_met_by(accessory(PartKind.HOSE_CLAMP, **{**wide, "fits_diameter_maximum_m": 0.029}))
    assert not clamp.is_met_by(accessory(PartKind.CAP))
    reel = derived(position(retrieval=Retrieval.REEL))
    assert PartKind.HOSE_CLAMP not in needs(plain_set(), reel)


def test_every_position_wants_the_label_of_its_liquid() -> None:
    fuel = needs(plain_set(), derived(position(blend=15)))[PartKind.LABEL]
    assert fuel.reason is AccessoryReason.CLASS_LABEL
    assert fuel.is_met_by(accessory(PartKind.LABEL, label_classes=frozenset({ListingClass.E25})))
    assert not fuel.is_met_by(accessory(PartKind.LABEL, label_classes=frozenset({ListingClass.E10})))
    urea = needs(plain_set(), derived(position(LiquidFamily.DEF, 0)))[PartKind.LABEL]
    assert urea.reason is AccessoryReason.DEF_LABEL
    assert urea.is_met_by(accessory(PartKind.LABEL, label_def=True))


def test_a_vapour_return_that_nothing_joins_is_capped() -> None:
    conversion = position(vapour_today=VapourStatus.BALANCE, outlet=Outlet(vapour_return_available=True))
    assert needs(plain_set(), derived(conversion))[PartKind.CAP].reason is AccessoryReason.VAPOUR_PORT_CAP
    assert PartKind.CAP not in needs(plain_set(), derived(position()))


def test_a_diesel_label_does_not_name_kerosene() -> None:
    # ASTM D3699 kerosene and D396 fuel oil are liquids of their own (UL 2586B 1.3 names them separately).
    classes = frozenset({ListingClass.B5})
    need = AccessoryNeed(
        kind=PartKind.LABEL,
        reason=AccessoryReason.CLASS_LABEL,
        quantity=1,
        listing_class=ListingClass.B5,
        label_family=LiquidFamily.KEROSENE,
    )
    assert not need.is_met_by(accessory(PartKind.LABEL, label_classes=classes))
    assert need.is_met_by(accessory(PartKind.LABEL, label_classes=classes, label_family=LiquidFamily.KEROSENE))
