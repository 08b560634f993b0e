"""Sets that also last for a later liquid: held against every chain of small catalogues under both requirements at once.

The oracle (``planning.enumeration``) joins ports and asks the rules and checks of each requirement by itself.
"""

from __future__ import annotations

import pytest

from planning.enumeration import Weighing, chains
from planning.surveys import CAR, CAR_E85, CAR_RETRACTOR, LOW_PRESSURE, MARINA, REEL, TRUCK
from planning.test_substitutes import weighed
from planning.test_what_if import STATION, small_store
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.coverage_kinds import OutletKind
from spoutline.model.faults import Cancelled
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import ListingClass
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Requirement
from spoutline.model.survey import Survey
from spoutline.model.what_if import PartFate, WhatIf, WhatIfEffect, WhatIfQuestion, WhatIfResult
from spoutline.planning.protocols import PartStore
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_site import plan_site
from spoutline.planning.what_if.answer import WhatIfListening
from spoutline.planning.what_if.answers import blend_of, changed_survey
from spoutline.planning.what_if.lasting import lasting_sets
from spoutline.rules.derive.requirement import requirement_for


def lasting(name: str, *labels: str) -> WhatIf:
    return WhatIf(WhatIfQuestion.BLEND, blend_of(name, "blend"), labels, lasting=True)


def asked_of(survey: Survey, asked: WhatIf, tables: RuleTables, parts: PartStore) -> WhatIfResult:
    return lasting_sets(plan_site(survey, tables, parts), asked, PlanningContext(tables, parts))


CASES = {
    "car_e15": (CAR, "E15"),
    "car_e85": (CAR, "E85"),
    "retractor_e85": (CAR_RETRACTOR, "E85"),
    "little_pressure_e85": (LOW_PRESSURE, "E85"),
    "marina_e85": (MARINA, "E85"),
    "truck_b100": (TRUCK, "B100"),
    "reel_b20": (REEL, "B20"),
    "e85_car_e10": (CAR_E85, "E10"),
}


@pytest.mark.parametrize("name", CASES)
def test_the_lasting_set_is_the_best_of_all_that_keep_every_must_of_both(
    name: str, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey, blend = CASES[name]
    changed = changed_survey(survey, lasting(blend))
    now, then = (requirement_for(one.positions[0], one.site, us_tables) for one in (survey, changed))
    assert isinstance(now, Requirement)
    assert isinstance(then, Requirement)
    store = small_store(survey, changed, us_tables, catalogue)
    today, later = Weighing(now, us_tables), Weighing(then, us_tables)

    def weight(hanging_set: HangingSet) -> tuple[int, int] | None:
        if later.by_parts(hanging_set) is None or later.by_checks(hanging_set) is None:
            return None
        by_parts = today.by_parts(hanging_set)
        by_checks = None if by_parts is None else today.by_checks(hanging_set)
        return None if by_parts is None or by_checks is None else (by_parts[0] + by_checks, by_parts[1])

    weights = [found for one in chains(now, store) if (found := weight(one)) is not None]
    (one,) = asked_of(survey, lasting(blend), us_tables, store).positions
    assert (one.after.chosen is None) is (not weights)
    if one.after.chosen is not None:
        assert weighed(one.after.chosen, now, us_tables) == min(weights)
        assert one.after.position == survey.positions[0]
    if one.before.chosen is not None and one.after.chosen is not None:
        plain, found = one.before.chosen.hanging_set, one.after.chosen.hanging_set
        assert one.effect is (WhatIfEffect.LASTS if plain.refs == found.refs else WhatIfEffect.OTHER_LASTS)
        assert one.difference_minor == found.price_minor - plain.price_minor


def test_every_part_of_a_lasting_set_carries_both_classes_and_accepting_asks_for_its_parts(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """The listing of each part is read in the catalog itself (classes: UL 2586, 2586A, scopes)."""
    found = asked_of(STATION, lasting("E85"), us_tables, catalogue)
    assert [one.label for one in found.positions] == ["1", "2", "4"]
    first, last = found.positions[0], found.positions[-1]
    assert first.after.chosen is not None
    parts = first.after.chosen.hanging_set.bought
    assert all({ListingClass.E10, ListingClass.E85} <= part.listings for part in parts)
    assert {
        change.fate for change in first.parts if change.before and ListingClass.E85 not in change.before.listings
    } == {PartFate.MUST_GO}
    assert last.effect is WhatIfEffect.NO_SET
    position = found.changed.position("1")
    assert position is not None
    assert position.liquid == STATION.positions[0].liquid, "the answer of today stays"
    assert set(position.decisions.pinned) == set(first.after.chosen.hanging_set.refs)
    planned = plan_site(found.changed, us_tables, catalogue).positions[0].chosen
    assert planned is not None
    assert planned.hanging_set.refs == first.after.chosen.hanging_set.refs
    assert found.changed.position("3") == STATION.position("3")


def test_sets_last_for_a_liquid_and_the_work_can_be_stopped(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    with pytest.raises(TypeError):
        WhatIf(WhatIfQuestion.OUTLET, OutletKind.NPT_1, lasting=True)

    class Impatient:
        def on_progress(self, done: int, total: int) -> None:
            raise AssertionError("asked whether to stop first")

        def should_stop(self) -> bool:
            return True

    before = plan_site(CAR, us_tables, catalogue)
    with pytest.raises(Cancelled):
        lasting_sets(before, lasting("E85"), PlanningContext(us_tables, catalogue), WhatIfListening(Impatient()))
