"""Why a set: the counts of each place and the next part, held against every chain of small catalogues.

The oracle (``planning.enumeration``) judges each chain by rules and checks alone and knows nothing of bounds or cuts.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from examples import each_with_seeds
from planning.enumeration import forbids, small_catalogue
from planning.surveys import ALL_THAT_FIT, CAR, TIGHT, TOO_FAR
from planning.test_substitutes import enumerated_by_part, plan_of, weighed
from spoutline.bootstrap.demos import demo_survey
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.cuts import Cut, Decider
from spoutline.model.faults import Cancelled, InputFault
from spoutline.model.limit import RuleTables
from spoutline.model.requirement import Requirement, Slot
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.funnel import set_reasons
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.pool import SLOT_KINDS
from spoutline.planning.sets.substitutes import substitutes
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts.part_rules import judge_part

SURVEYS = {**ALL_THAT_FIT, **TIGHT}


@pytest.mark.parametrize(("name", "seed"), each_with_seeds(SURVEYS, 2))
def test_every_part_is_counted_once_and_the_next_one_is_that_of_enumeration(
    name: str, seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey = SURVEYS[name]
    requirement = requirement_for(survey.positions[0], survey.site, us_tables)
    assert isinstance(requirement, Requirement)
    store = small_catalogue(catalogue, requirement, us_tables, seed)
    context = PlanningContext(us_tables, store)
    plan = plan_of(survey, context)
    if plan.chosen is None:
        return
    best = enumerated_by_part(requirement, us_tables, store)
    base = weighed(plan.chosen, requirement, us_tables)
    for place in set_reasons(plan, context).places:
        slot = place.slot
        of_kind = [part for part in store.all if part.kind is SLOT_KINDS[slot]]
        removed = {cut: sum(step.removed for step in place.steps if step.cut is cut) for cut in Cut}
        assert place.there == len(of_kind) == sum(removed.values()) + place.left
        refused = [one for one in of_kind if any(map(forbids, judge_part(one, slot, requirement, us_tables)))]
        assert removed[Cut.LINE] == len(refused)
        others = {
            number: rank for (where, number), rank in best.items() if where is slot and number != place.chosen.number
        }
        as_good = {number: rank[1] - base[1] for number, rank in others.items() if rank[0] == base[0]}
        for rival in place.rivals:
            assert as_good[rival.part.number] == rival.price_difference_minor
        assert len(as_good) - len(place.rivals) <= removed[Cut.OUTMATCHED]
        runner_up = place.runner_up
        assert (runner_up and runner_up.price_difference_minor) == min(as_good.values(), default=None)
        cheaper = [rank[1] - base[1] for rank in others.values() if rank[0] > base[0] and rank[1] < base[1]]
        assert (place.cheaper and place.cheaper.price_difference_minor) == min(cheaper, default=None)


def test_a_part_asked_for_by_name_is_left_alone_in_its_place(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    context = PlanningContext(us_tables, catalogue)
    planned = plan_of(CAR, context)
    assert planned.chosen is not None
    nozzle = planned.chosen.hanging_set.part_in(Slot.NOZZLE)
    assert nozzle is not None
    decisions = CAR.positions[0].decisions.model_copy(update={"pinned": (nozzle.ref,)})
    position = CAR.positions[0].model_copy(update={"decisions": decisions})
    plan = plan_of(CAR.model_copy(update={"positions": (position,)}), context)
    place = set_reasons(plan, context).places[-1]
    assert (place.slot, place.left, place.decider) == (Slot.NOZZLE, 1, Decider.ALONE)


def test_without_a_set_there_is_nothing_to_give_reasons_for(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    context = PlanningContext(us_tables, catalogue)
    with pytest.raises(InputFault, match="no set"):
        set_reasons(plan_of(TOO_FAR, context), context)


def test_a_person_may_stop_the_reasons(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    class Stopping:
        places = 0

        def on_progress(self, done: int, total: int) -> None:
            self.places = done

        def should_stop(self) -> bool:
            return self.places == 1

    context = PlanningContext(us_tables, catalogue)
    plan = plan_of(CAR, context)
    with pytest.raises(Cancelled):
        set_reasons(plan, context, Stopping())


def test_what_was_agreed_may_have_a_cheaper_one_behind_it(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    context = PlanningContext(us_tables, catalogue)
    plan = plan_of(CAR, context)
    first = set_reasons(plan, context).places[-1].runner_up
    assert first is not None
    agreed = replace(plan, chosen=first.substitute.judged)
    place = next(one for one in set_reasons(agreed, context).places if one.slot is Slot.NOZZLE)
    assert place.chosen.ref == first.part.ref
    assert place.decider is Decider.WHOLE or first.price_difference_minor == 0


def test_over_the_whole_catalog_the_last_parts_are_those_of_the_list_of_substitutes(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    # the list is held against enumeration in test_substitutes
    demo = demo_survey("small_town")
    position = next(one for one in demo.positions if one.label == "1A diesel")
    context = PlanningContext(us_tables, catalogue)
    plan = plan_position(position, demo.site, context, with_alternatives=False)
    saved = []
    for place in set_reasons(plan, context).places:
        fitting = substitutes(plan, place.chosen.ref, context).fitting
        more = [one.price_difference_minor for one in fitting if len(one.given_up) > len(one.kept)]
        as_good = [one.price_difference_minor for one in fitting if len(one.given_up) == len(one.kept)]
        assert (place.runner_up and place.runner_up.price_difference_minor) == min(as_good, default=None)
        least = min((price for price in more if price < 0), default=None)
        assert (place.cheaper and place.cheaper.price_difference_minor) == least
        saved.append(least)
    assert any(saved)
