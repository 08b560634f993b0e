"""Questions that admit nothing but what another admits, held against every chain and against pools of their own."""

from __future__ import annotations

import itertools
from dataclasses import replace
from random import Random

import pytest

from examples import seeds
from planning.enumeration import Weighing, chains, small_catalogue
from planning.stores import ListStore
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.coverage_kinds import ClimateBand, OutletKind
from spoutline.model.coverage_map import Combination, LiquidClass
from spoutline.model.limit import RuleTables
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Refusal, Requirement
from spoutline.model.survey import Duty, VapourStatus
from spoutline.planning.keeping.alike_questions import AlikeQuestions
from spoutline.planning.keeping.coverage_map import survey_of
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.loads import LoadModel, SetLimit
from spoutline.planning.sets.narrower import is_narrower
from spoutline.planning.sets.pool import narrow_pool
from spoutline.rules.derive.requirement import requirement_for


def asked_for(combination: Combination, tables: RuleTables) -> Requirement | Refusal:
    survey = survey_of(combination, tables.jurisdiction.id, "USD")
    return requirement_for(survey.positions[0], survey.site, tables)


def in_climate(liquid: LiquidClass, duty: Duty, climate: ClimateBand, tables: RuleTables) -> Requirement:
    found = asked_for(Combination(liquid, duty, VapourStatus.NONE, OutletKind.NPT_3_4, climate), tables)
    assert isinstance(found, Requirement)
    return found


def search_of(
    requirement: Requirement, tables: RuleTables, store: ListStore, limits: tuple[SetLimit, ...]
) -> ChainSearch:
    model = LoadModel(requirement, tables)
    model.__dict__["set_limits"] = limits
    return ChainSearch(requirement, narrow_pool(requirement, tables, store), model)


def is_one(weighing: Weighing, search: ChainSearch, one: HangingSet) -> bool:
    """Say by its parts and plain sums whether a chain is one of the sets of a question."""
    sums = ((search.model.load_of(one, limit.load), limit.limit) for limit in search.model.set_limits)
    return weighing.by_parts(one) is not None and all(load <= limit for load, limit in sums)


@pytest.mark.parametrize("seed", seeds(4))
@pytest.mark.parametrize(
    ("liquid", "duty"),
    [(LiquidClass.E10, Duty.CAR), (LiquidClass.B5, Duty.REEL)],
    ids=["car", "reel"],
)
def test_a_narrower_question_has_no_chain_that_the_other_has_not(
    liquid: LiquidClass, duty: Duty, seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """Two climates and limits drawn among the sums of the chains themselves, so that they part them."""
    random = Random(seed)
    asked = [in_climate(liquid, duty, climate, us_tables) for climate in ClimateBand]
    drawn_anew = (small_catalogue(catalogue, asked[0], us_tables, seed + 1 + 100 * again) for again in range(20))
    store, every = next((one, found) for one in drawn_anew if (found := list(chains(asked[0], one))))
    weighed = [Weighing(one, us_tables) for one in asked]
    narrower = wider = 0
    for _ in range(60):
        mine, theirs = random.choices(range(len(asked)), k=2)
        models = [LoadModel(asked[which], us_tables) for which in (mine, theirs)]
        drawn = random.sample(models[0].set_limits, 2)
        shift = random.choice((0.0, 0.0, 0.01, 0.3))
        here, there = (
            tuple(
                replace(limit, limit=model.load_of(random.choice(every), limit.load) * (1.0 + sign * shift))
                for limit in drawn
            )
            for model, sign in zip(models, (-1, 1), strict=True)
        )
        one, other = (
            search_of(asked[which], us_tables, store, limits) for which, limits in ((mine, here), (theirs, there))
        )
        if not is_narrower(one, other):
            continue
        narrower += 1
        for chain in every:
            kept = is_one(weighed[theirs], other, chain)
            assert kept or not is_one(weighed[mine], one, chain)
            wider += kept and not is_one(weighed[mine], one, chain)
    assert narrower
    assert wider or duty is not Duty.CAR  # those that are narrower are not all the same question


def test_what_outlets_share_is_what_each_has_by_itself(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    """Parts and their broken rules, loads and limits; whatever rule read the thread of an outlet would tell here."""
    context = PlanningContext(us_tables, catalogue)
    for liquid, duty, vapour, climate in itertools.product(
        (LiquidClass.E10, LiquidClass.DEF), (Duty.CAR, Duty.REEL), VapourStatus, (ClimateBand.MILD, ClimateBand.WIDE)
    ):
        alike = AlikeQuestions(context)
        for outlet in OutletKind:
            requirement = asked_for(Combination(liquid, duty, vapour, outlet, climate), us_tables)
            if isinstance(requirement, Refusal):
                continue
            ground, own = alike.ground(requirement), narrow_pool(requirement, us_tables, catalogue)
            model = LoadModel(requirement, us_tables)
            assert ground.pool.requirement == ground.model.requirement == ground.reach.requirement == requirement
            assert ground.model.set_limits == model.set_limits
            for shared, alone in zip(ground.pool.all_portions(), own.all_portions(), strict=True):
                assert (shared.inside == alone.inside).all()
                assert (shared.forbidden == alone.forbidden).all()
                assert (shared.regrets == alone.regrets).all()
                mine, theirs = (one.loads(alone.columns, alone.slot, 1e-3) for one in (ground.model, model))
                assert all((one == other).all() for one, other in zip(mine.columns, theirs.columns, strict=True))
                assert (mine.demands == theirs.demands).all()
