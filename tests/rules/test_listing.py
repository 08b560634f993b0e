"""Listing classes at and beside every boundary of the published scopes."""

from __future__ import annotations

import pytest

from rules.stations import derived, position, refused, tables
from spoutline.model.liquid import Liquid, LiquidFamily, ListingClass
from spoutline.model.material import MaterialColumn
from spoutline.model.requirement import RefusalStatus, RequirementId, WayOut
from spoutline.rules.derive.listing import ClassFound, ClassGap, class_for

G, D = LiquidFamily.GASOLINE, LiquidFamily.DIESEL
K, F = LiquidFamily.KEROSENE, LiquidFamily.FUEL_OIL


@pytest.mark.parametrize(
    ("family", "percent", "listing_class"),
    [
        (G, 0, "E10"),  # UL 2586 1.4: gasoline up to 10 % ethanol
        (G, 10, "E10"),  # UL 2586 1.4
        (G, 10.1, "E25"),  # UL 2586 1.4: above 10 % the supplement applies
        (G, 15, "E25"),  # UL 2586A 1.3: next class that covers E15
        (G, 25, "E25"),  # UL 2586A 1.3
        (G, 25.1, "E85"),  # UL 2586A 1.3
        (G, 26, "E85"),  # UL 2586A 1.3
        (G, 30, "E85"),  # UL 2586A 1.3
        (G, 85, "E85"),  # UL 2586A 1.3
        (D, 0, "B5"),  # UL 2586B 1.3
        (D, 5, "B5"),  # UL 2586B 1.3
        (D, 5.1, "B20"),  # UL 2586B 1.3
        (D, 6, "B20"),  # UL 2586B 1.3
        (D, 20, "B20"),  # UL 2586B 1.3
        (D, 99.9, "B100"),  # UL 2586B 1.3: B99.9/B100
        (D, 100, "B100"),  # UL 2586B 1.3
        (K, 0, "B5"),  # UL 2586B 1.3 names kerosene beside diesel
        (F, 0, "B5"),  # UL 2586B 1.3 names fuel oil beside diesel
        (F, 20, "B20"),  # UL 2586B 1.3
    ],
)
def test_a_blend_takes_the_next_class_that_covers_it(family: LiquidFamily, percent: float, listing_class: str) -> None:
    found = class_for(Liquid(family, percent), tables().jurisdiction)
    assert isinstance(found, ClassFound)
    assert found.listing_class == listing_class
    assert found.column is MaterialColumn(listing_class)


@pytest.mark.parametrize("percent", [20.1, 21, 50, 99, 99.8])
@pytest.mark.parametrize("family", [D, K, F])
def test_no_class_covers_biodiesel_between_b20_and_b99_9(family: LiquidFamily, percent: float) -> None:
    # UL 2586B 1.3: the scopes stop at B20 and start again at B99.9
    found = class_for(Liquid(family, percent), tables().jurisdiction)
    assert isinstance(found, ClassGap)
    assert (found.covered_up_to, found.covered_from) == (20.0, 99.9)


@pytest.mark.parametrize("percent", [85.1, 90, 100])
def test_no_class_covers_gasoline_above_e85(percent: float) -> None:
    found = class_for(Liquid(G, percent), tables().jurisdiction)  # UL 2586A 1.3: up to 85 %
    assert isinstance(found, ClassGap)
    assert found.covered_from is None


def test_a_gap_refuses_the_position_with_reason_and_ways_out() -> None:
    refusal = refused(position(D, 50))
    assert refusal.status is RefusalStatus.NO_LISTING_CLASS
    assert [found.rule_id for found in refusal.findings] == ["class_gap"]
    assert refusal.ways_out == (WayOut.USE_B20_OR_LESS, WayOut.USE_B100, WayOut.ASK_AUTHORITY_AND_MAKER)
    assert refused(position(G, 90)).ways_out == (WayOut.USE_E85_OR_LESS, WayOut.ASK_AUTHORITY_AND_MAKER)


def test_def_needs_no_flammable_liquid_class_and_no_scheme() -> None:
    # UL 87C: DEF is not flammable and falls in no fuel class
    requirement = derived(position(LiquidFamily.DEF, 0, in_flammable_zone=False))
    assert requirement.listing_class is None
    assert requirement.material_column is MaterialColumn.DEF
    assert RequirementId.LISTING_SCHEME not in {line.id for line in requirement.lines}


@pytest.mark.parametrize("jurisdiction", ["us_general", "us_vapour_rules", "us_without_recovery", "europe"])
def test_every_profile_keeps_the_published_class_boundaries(jurisdiction: str) -> None:
    for percent, wanted in ((10, ListingClass.E10), (25, ListingClass.E25), (85, ListingClass.E85)):
        found = class_for(Liquid(G, percent), tables(jurisdiction).jurisdiction)  # UL 2586 1.4, UL 2586A 1.3
        assert isinstance(found, ClassFound)
        assert found.listing_class is wanted
