"""Columns give the same chains in the same order as enumeration, and the optimum of two independent solvers."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace
from random import Random

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import seeds, up_to
from search.cp_sat import cp_sat_optimum
from search.problems import enumerated, integer_optimum, problems, random_problem, shuffled
from spoutline.model.faults import Cancelled
from spoutline.search import walk
from spoutline.search.chain import Chain
from spoutline.search.columns import Columns, columns_of
from spoutline.search.finder import Finder
from spoutline.search.graph import MAJOR, NO_PORT, Item, Layer, Path, Problem, divided
from spoutline.search.item_table import Ints, ItemsOf, Mask, Names, split_costs, table_of
from spoutline.search.listener import Listener
from spoutline.search.optimum import Answer, any_chain, best_chain, chains_in_order

Place = tuple[int, tuple[str, ...]]  # cost, keys by layer


def place(path: Path) -> Place:
    return path.cost, tuple("" if item is None else item.key for item in path.items)


def in_columns(problem: Problem) -> tuple[Columns, Names]:
    columns = columns_of(problem)
    assert columns is not None
    assert columns.is_exact()
    return columns, Names(ItemsOf(problem))


def placed(chain: Chain, names: Names) -> Place:
    return chain.major * MAJOR + chain.cost, tuple("" if row < 0 else names[row] for row in chain.rows)


def best_of(problem: Problem, most_labels: int | None = None) -> Answer:
    return best_chain(*in_columns(problem), most_labels=most_labels)


def with_costs(problem: Problem, seed: int) -> Problem:
    """Return the problem with many equal costs, some of them negative, and majors."""
    random = Random(seed)
    step = random.choice((1, 20, 60))
    majors = random.choice(((0,), (0, 0, 1), (0, 1, 2), (1, 2)))
    layers = [
        replace(
            layer,
            items=tuple(
                replace(item, cost=item.cost // step * step - random.choice((0, 0, 40)) + MAJOR * random.choice(majors))
                for item in layer.items
            ),
        )
        for layer in problem.layers
    ]
    return replace(problem, layers=tuple(layers))


@given(problems, st.integers(0, 10_000))
@settings(max_examples=up_to(60), deadline=None)
def test_chains_come_as_enumeration_sorts_them(problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    wanted = sorted(map(place, enumerated(costed)))
    columns, names = in_columns(costed)
    for labels in (0, 250):  # all at once, then by plain steps first
        with pytest.MonkeyPatch.context() as patch:
            patch.setattr("spoutline.search.level_search.FEW_LABELS", labels)
            patch.setattr("spoutline.search.level_order.FEW_LABELS", labels)
            assert [placed(chain, names) for chain in chains_in_order(columns, names)] == wanted
            answer = best_chain(columns, names)
        assert answer.is_proved
        assert [placed(one, names) for one in (answer.chain,) if one] == wanted[:1]


@given(problems, st.integers(0, 10_000), st.integers(0, 3), st.integers(-90, 400))
@settings(max_examples=up_to(60), deadline=None)
def test_whether_there_is_a_chain_and_one_that_costs_little(problem: Problem, seed: int, major: int, rest: int) -> None:
    costed = with_costs(problem, seed)
    wanted = sorted(map(place, enumerated(costed)))
    columns, names = in_columns(costed)
    assert (any_chain(columns, names) is not None) == bool(wanted)
    assert (Finder(costed).any_chain() is not None) == bool(wanted)
    allowed = [one for one in wanted if one[0] <= major * MAJOR + rest][:1]
    best = best_chain(columns, names, most=(major, rest)).chain
    assert [placed(one, names) for one in (best,) if one] == allowed
    for few in (0, 500):  # the columns, then the walk
        with pytest.MonkeyPatch.context() as patch:
            patch.setattr("spoutline.search.finder._FEW_ITEMS", few)
            found = Finder(costed).cheapest(most_cost=major * MAJOR + rest).proven
            assert [place(one) for one in (found,) if one] == allowed


@given(problems, st.integers(0, 10_000), st.integers(0, 3), st.integers(0, 3), st.integers(-90, 400))
@settings(max_examples=up_to(60), deadline=None)
def test_what_is_known_of_majors_changes_no_answer(
    problem: Problem, seed: int, known: int, major: int, rest: int
) -> None:
    costed = with_costs(problem, seed)
    chains = list(enumerated(costed))
    fewest = min((sum(divided(item.cost)[0] for item in one.items if item) for one in chains), default=known)
    wanted = sorted(map(place, chains))
    columns, names = in_columns(costed)
    best = best_chain(columns, names, fewest=min(known, fewest)).chain
    assert [placed(one, names) for one in (best,) if one] == wanted[:1]
    best = best_chain(columns, names, most=(major, rest), fewest=min(known, fewest)).chain
    assert [placed(one, names) for one in (best,) if one] == [
        one for one in wanted[:1] if one[0] <= major * MAJOR + rest
    ]


@given(problems, st.integers(0, 10_000))
@settings(max_examples=up_to(60), deadline=None)
def test_one_of_the_cheapest_costs_no_more_than_the_first_of_them(problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    wanted = sorted(map(place, enumerated(costed)))
    columns, names = in_columns(costed)
    best = best_chain(columns, names, any_of_equals=True).chain
    found = [best and placed(best, names)]
    for few in (0, 500):  # what is left of the columns, then the walk over all
        with pytest.MonkeyPatch.context() as patch:
            patch.setattr("spoutline.search.finder._FEW_ITEMS", few)
            one = Finder(costed).one_of_the_cheapest().proven
            found.append(one and place(one))
    for one in found:
        assert (one and one[0]) == (wanted[0][0] if wanted else None)
        assert one is None or one in wanted


@given(problems, st.integers(0, 10_000), st.sampled_from((None, 0.0, 3.0, math.inf)))
@settings(max_examples=up_to(60), deadline=None)
def test_strengths_may_be_left_aside_or_the_start_made_weaker(
    problem: Problem, seed: int, start_bears: float | None
) -> None:
    costed = with_costs(problem, seed)
    whole = replace(costed, start_bears=math.inf)
    tables = tuple(replace(layer, items=table_of(layer, len(costed.limits)) or ()) for layer in whole.layers)
    finder = Finder(replace(whole, layers=tables)).with_strengths(start_bears)
    other = replace(whole, start_bears=math.inf if start_bears is None else start_bears)
    if start_bears is None:
        free = [tuple(replace(one, bears=math.inf, demands=0.0) for one in layer.items) for layer in whole.layers]
        other = replace(
            other, layers=tuple(replace(one, items=items) for one, items in zip(whole.layers, free, strict=True))
        )
    wanted = sorted(map(place, enumerated(other)))
    assert list(map(place, finder.in_order())) == wanted
    columns = finder.columns()
    assert columns is not None
    assert (any_chain(columns, Names(ItemsOf(whole))) is not None) == bool(wanted)


@given(problems, st.integers(0, 10_000))
@settings(max_examples=up_to(60), deadline=None)
def test_the_walk_keeps_the_same_order(problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    wanted = sorted(map(place, enumerated(costed)))
    assert [place(path) for path in walk.best_first(costed)] == wanted
    best = walk.cheapest(costed)
    assert [place(one) for one in (best,) if one] == wanted[:1]


@given(problems, st.lists(st.sampled_from((-math.inf, -3.0, 0.0, 7.0, math.inf)), min_size=4, max_size=4))
@settings(max_examples=up_to(60), deadline=None)
def test_limits_may_be_infinite_or_out_of_reach(problem: Problem, limits: list[float]) -> None:
    limited = replace(problem, limits=tuple(limits[: len(problem.limits)]))
    wanted = min(map(place, enumerated(limited)), default=None)
    answer = best_of(limited)
    assert (answer.chain and answer.chain.cost) == (wanted and wanted[0])
    found = Finder(problem).within(limited.limits).cheapest().proven
    assert (found and place(found)) == wanted


@given(problems, st.integers(0, 1000))
@settings(max_examples=up_to(40), deadline=None)
def test_order_of_rows_never_changes_the_result(problem: Problem, seed: int) -> None:
    columns, names = in_columns(problem)
    again, other_names = in_columns(shuffled(problem, seed))
    assert [placed(one, names) for one in chains_in_order(columns, names)] == [
        placed(one, other_names) for one in chains_in_order(again, other_names)
    ]


@pytest.mark.parametrize("kept", [1_000, 2])
@given(problem=problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(40), deadline=None)
def test_chains_that_do_not_pass_a_test_are_left_out_and_no_others(kept: int, problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    columns, names = in_columns(costed)
    weight = np.append(np.random.default_rng(seed).integers(0, 9, len(items_named(costed))), 0)

    def even(chains: Ints) -> Mask:
        return np.asarray(weight[chains].sum(axis=1) % 2 == 0)

    keys = {place: number for number, place in enumerate(items_named(costed))}
    wanted = [
        place(path)
        for path in enumerated(costed)
        if sum(weight[keys[depth, one.key]] for depth, one in enumerate(path.items) if one) % 2 == 0
    ]
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.level_order._KEPT", kept)
        found = [placed(chain, names) for chain in chains_in_order(columns, names, test=even)]
        assert found == sorted(wanted)
        assert [place(path) for path in Finder(costed).passing(even)] == sorted(wanted)


@given(problems, st.integers(0, 10_000), st.sampled_from((0, 0, 1, 60)), st.sampled_from((0, 0, 1)))
@settings(max_examples=up_to(60), deadline=None)
def test_a_cost_that_no_chain_is_known_to_go_below_changes_no_order(
    problem: Problem, seed: int, below: int, majors_below: int
) -> None:
    costed = with_costs(problem, seed)
    columns, names = in_columns(costed)
    wanted = sorted(map(place, enumerated(costed)))
    least = (wanted[0][0] if wanted else MAJOR) - below - majors_below * MAJOR
    assert [placed(one, names) for one in chains_in_order(columns, names, least=divided(least))] == wanted

    assert [place(one) for one in Finder(costed).in_order(least_cost=least)] == wanted
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.finder._ITEMS_IN_ORDER", 0)  # the columns, without a walk before
        assert [place(one) for one in Finder(costed).in_order(least_cost=least)] == wanted


def test_a_chain_that_passes_at_the_very_cost_known_is_met_first(monkeypatch: pytest.MonkeyPatch) -> None:
    for few in ("QUICK_ITEMS", "ITEMS"):  # so that the cost rises from what is known
        monkeypatch.setattr(f"spoutline.search.level_search.{few}", 1)
        monkeypatch.setattr(f"spoutline.search.level_order.{few}", 1)

    def odd(chains: Ints) -> Mask:
        return np.asarray(chains.sum(axis=1) % 2 == 1)

    for seed in range(60):
        costed = with_costs(random_problem(seed, layers=3, items=5, ports=2, loads=2, tightness=0.6), seed)
        columns, names = in_columns(costed)
        least = min((one.cost for one in enumerated(costed)), default=0)
        wanted = [placed(one, names) for one in chains_in_order(columns, names, test=odd)]
        assert [place(one) for one in Finder(costed).passing(odd, least_cost=least)] == wanted


def items_named(problem: Problem) -> list[tuple[int, str]]:
    """Return layer and key of each item, in the order in which columns count them."""
    return [(depth, item.key) for depth, layer in enumerate(problem.layers) for item in layer.items]


def test_an_empty_layer_that_must_be_filled_leaves_no_chain_and_one_that_need_not_be_is_passed() -> None:
    end = Layer("end", (Item("e", 3, 0, NO_PORT, ()),))
    mates = {0: frozenset({0})}
    assert best_of(Problem(0, (Layer("none", ()), end), mates, ())).chain is None
    passed = best_of(Problem(0, (Layer("none", (), optional=True), end), mates, ()))
    assert passed.chain == Chain(0, 3, (-1, 0))
    assert best_of(Problem(0, (Layer("none", (), optional=True),), mates, (1.0,))).chain == Chain(0, 0, (-1,))
    assert best_of(Problem(0, (Layer("none", (), optional=True),), mates, (-1.0,))).chain is None


def test_of_equal_chains_the_first_by_name_is_taken_whatever_binds() -> None:
    # b1 with a2 and b2 with a1 cost the same; a1 with b1 is too heavy
    first = Layer("first", (Item("a2", 5, 0, 0, (1.0,)), Item("a1", 5, 0, 0, (2.0,))))
    second = Layer("second", (Item("b1", 5, 0, NO_PORT, (2.0,)), Item("b2", 5, 0, NO_PORT, (1.0,))))
    problem = Problem(0, (first, second), {0: frozenset({0})}, (3.0,))
    columns, names = in_columns(problem)
    assert [placed(one, names)[1] for one in chains_in_order(columns, names)] == [
        ("a1", "b2"),
        ("a2", "b1"),
        ("a2", "b2"),
    ]


@pytest.mark.parametrize("seed", seeds(24))
def test_optimum_agrees_with_two_independent_solvers(seed: int) -> None:
    # Oracles: HiGHS (scipy.optimize.milp) and CP-SAT (OR-tools), on chains too large to enumerate (25^5 choices).
    problem = random_problem(seed, layers=5, items=25, ports=4, loads=3, tightness=(0.15, 0.25, 0.35, 0.6)[seed % 4])
    answer = best_of(problem)
    cost = answer.chain and answer.chain.cost
    assert cost == integer_optimum(problem)
    assert cost == cp_sat_optimum(problem)


@pytest.mark.parametrize("tightness", [0.2, 0.4])
def test_optimum_of_more_items_agrees_with_cp_sat(tightness: float) -> None:
    problem = random_problem(11, layers=5, items=60, ports=4, loads=4, tightness=tightness)
    answer = best_of(problem)
    assert (answer.chain and answer.chain.cost) == cp_sat_optimum(problem)


def test_a_figure_that_frees_a_sum_hides_no_other_limit() -> None:
    # one ending frees the second sum by far; all others bind on it: the optimum by hand is a2 with the dear ending
    first = Layer("first", (Item("a1", 1, 0, 0, (9.0, 9.0)), Item("a2", 4, 0, 0, (2.0, 2.0))))
    last = Layer("last", (Item("free", 90, 0, NO_PORT, (1.0, -1e15)), Item("plain", 5, 0, NO_PORT, (2.0, 2.0))))
    problem = Problem(0, (first, last), {0: frozenset({0})}, (11.0, 5.0))
    answer = best_of(problem)
    assert answer.chain is not None
    assert answer.chain.cost == 9
    heavier = replace(problem, limits=(11.0, 3.0))
    answer = best_of(heavier)
    assert answer.chain is not None
    assert answer.chain.cost == 91


def test_labels_that_run_out_leave_the_best_so_far_and_its_floor() -> None:
    problem = random_problem(15, layers=5, items=300, ports=2, loads=5, tightness=0.3)
    whole = best_of(problem)
    assert whole.chain is not None
    cut = [best_of(problem, most_labels=labels) for labels in (1, 50, 500, 2_000, 5_000)]
    assert not cut[0].is_proved
    for answer in cut:
        assert answer.floor_cost <= whole.chain.cost
        assert answer.chain is None or answer.chain.cost >= whole.chain.cost
        if answer.is_proved:
            assert answer.chain == whole.chain


def test_a_listener_can_stop_the_columns() -> None:
    class Impatient(Listener):
        def should_stop(self) -> bool:
            return True

    columns, names = in_columns(random_problem(1, layers=4, items=9, ports=2, loads=2, tightness=1.0))
    with pytest.raises(Cancelled):
        best_chain(columns, names, Impatient())
    with pytest.raises(Cancelled):
        list(chains_in_order(columns, names, Impatient()))


def test_costs_too_large_for_floats_are_left_to_the_walk() -> None:
    first = Layer("first", (Item("a", 2**55 + 1, 0, 0, ()), Item("b", 2**55, 0, 0, ())))
    last = Layer("last", (Item("c", 10**22, 0, NO_PORT, ()), Item("d", 10**30, 0, NO_PORT, ())))
    problem = Problem(0, (first, last), {0: frozenset({0})}, ())
    columns = columns_of(problem)
    assert columns is None or not columns.is_exact()
    best = Finder(problem).cheapest().proven
    assert best is not None
    assert best.keys == ("b", "c")


@pytest.mark.parametrize("few", [0, 10_000])
@given(problem=problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(40), deadline=None)
def test_where_the_walk_hands_over_never_shows(few: int, problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    wanted = sorted(map(place, enumerated(costed)))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.finder._FEW_ITEMS", few)
        patch.setattr("spoutline.search.finder._ITEMS_IN_ORDER", few)
        patch.setattr("spoutline.search.finder._CHEAPEST_LABELS", 3)
        patch.setattr("spoutline.search.finder._ORDER_LABELS", 5)
        patch.setattr("spoutline.search.ways._ASK_EVERY", 1)
        patch.setattr("spoutline.search.level_order._KEPT", 4)
        finder = Finder(costed)
        assert [place(path) for path in finder.in_order()] == wanted
        best = finder.cheapest().proven
        assert [place(one) for one in (best,) if one] == wanted[:1]


def in_tables(problem: Problem) -> Problem:
    tables = [table_of(layer, len(problem.limits)) for layer in problem.layers]
    pairs = zip(problem.layers, tables, strict=True)
    return replace(problem, layers=tuple(replace(layer, items=table or ()) for layer, table in pairs))


@pytest.mark.parametrize("few", [0, 10_000])
@given(problem=problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(40), deadline=None)
def test_some_items_at_other_costs_answer_as_a_problem_of_their_own(few: int, problem: Problem, seed: int) -> None:
    random, costed = Random(seed), with_costs(problem, seed)
    masks = [np.array([random.random() < 0.7 for _ in layer.items], np.bool_) for layer in problem.layers]
    kept = [
        replace(layer, items=tuple(item for item, keeps in zip(layer.items, mask, strict=True) if keeps))
        for layer, mask in zip(costed.layers, masks, strict=True)
    ]
    wanted = sorted(map(place, enumerated(replace(costed, layers=tuple(kept)))))
    split = [split_costs([item.cost for item in layer.items]) for layer in costed.layers]
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.finder._FEW_ITEMS", few)
        patch.setattr("spoutline.search.finder._ITEMS_IN_ORDER", few)
        whole = Finder(in_tables(problem)).at_costs([costs for costs in split if costs is not None])
        assert [place(path) for path in whole.in_order()] == sorted(map(place, enumerated(costed)))
        finder = whole.only(masks)
        assert [place(path) for path in finder.in_order()] == wanted
        best = finder.cheapest().proven
        assert [place(one) for one in (best,) if one] == wanted[:1]
        assert [place(path) for path in Finder(finder.problem).in_order()] == wanted
        tight = whole.of_limits(whole.binding())
        hope = tight.hopeful()
        assert hope is not None
        hoped = tight.only(hope).only([mask & may for mask, may in zip(masks, hope, strict=True)])
        assert [place(path) for path in hoped.in_order()] == wanted
        best = hoped.cheapest().proven
        assert [place(one) for one in (best,) if one] == wanted[:1]


@given(problem=problems)
@settings(max_examples=up_to(60), deadline=None)
def test_no_item_of_any_chain_is_without_hope(problem: Problem) -> None:
    finder = Finder(in_tables(problem))
    hope = finder.hopeful()
    assert hope is not None
    hoped = [
        {item.key for item, may in zip(layer.items, mask, strict=True) if may}
        for layer, mask in zip(problem.layers, hope, strict=True)
    ]
    for path in enumerated(problem):
        assert all(item is None or item.key in keys for item, keys in zip(path.items, hoped, strict=True))


def test_what_exceeds_a_limit_by_itself_is_without_hope() -> None:
    first = Layer("first", (Item("light", 1, 0, 0, (1.0,)), Item("heavy", 1, 0, 0, (3.5,))))
    last = Layer("last", (Item("end", 1, 0, NO_PORT, (1.0,)),))
    hope = Finder(in_tables(Problem(0, (first, last), {0: frozenset({0})}, (4.0,)))).hopeful()
    assert hope is not None
    assert [mask.tolist() for mask in hope] == [[True, False], [True]]


@given(problem=problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(60), deadline=None)
def test_the_cheapest_chains_hold_nothing_outdone(problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    columns, names = in_columns(costed)
    least = min((path.cost for path in enumerated(costed)), default=None)
    fewest = None if least is None else round(least / MAJOR)
    level = columns if fewest is None else columns.only(columns.major == 0)
    if fewest not in (None, 0):
        return  # more majors are a limit of their own, so that costs alone do not tell
    wanted = sorted(place(path) for path in enumerated(costed) if path.cost == least)
    kept = chains_in_order(level.not_outdone(), names)
    assert [placed(chain, names) for chain in itertools.islice(kept, len(wanted))] == wanted


def test_a_dearer_item_that_is_better_in_nothing_is_outdone_and_an_equal_one_is_not() -> None:
    first = Layer(
        "first",
        (
            Item("plain", 5, 0, 0, (2.0,), bears=9.0),
            Item("equal", 5, 0, 0, (2.0,), bears=9.0),
            Item("dear", 6, 0, 0, (2.0,), bears=9.0),
            Item("light", 7, 0, 0, (1.0,), bears=9.0),
            Item("strong", 8, 0, 0, (2.0,), bears=10.0),
            Item("asking", 9, 0, 0, (2.0,), bears=9.0, demands=1.0),
            Item("other end", 9, 0, 1, (2.0,), bears=9.0),
        ),
    )
    last = Layer("last", (Item("end", 1, 0, NO_PORT, (1.0,)), Item("other", 1, 1, NO_PORT, (1.0,))))
    columns, names = in_columns(Problem(0, (first, last), {0: frozenset({0}), 1: frozenset({1})}, (4.0,)))
    left = {names[row] for row in columns.not_outdone().row.tolist()}
    assert left == {"plain", "equal", "light", "strong", "other end", "end", "other"}


@pytest.mark.parametrize("labels", [0, 3, 40])
@given(problem=problems, seed=st.integers(0, 10_000))
@settings(max_examples=up_to(40), deadline=None)
def test_whether_a_quick_look_suffices_never_shows(labels: int, problem: Problem, seed: int) -> None:
    costed = with_costs(problem, seed)
    wanted = sorted(map(place, enumerated(costed)))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.level_search._QUICK_LABELS", labels)
        patch.setattr("spoutline.search.level_search._LOOK_LABELS", labels)
        patch.setattr("spoutline.search.level_search.QUICK_ITEMS", 1)
        patch.setattr("spoutline.search.level_order.QUICK_ITEMS", 1)
        patch.setattr("spoutline.search.level_search.ITEMS", 2)
        patch.setattr("spoutline.search.level_order.ITEMS", 2)
        columns, names = in_columns(costed)
        best = best_chain(columns, names).chain
        assert [placed(one, names) for one in (best,) if one] == wanted[:1]
        assert (any_chain(columns, names) is not None) == bool(wanted)
        assert [placed(chain, names) for chain in chains_in_order(columns, names)] == wanted


@given(problems)
@settings(max_examples=up_to(30), deadline=None)
def test_small_portions_change_nothing(problem: Problem) -> None:
    wanted = sorted(map(place, enumerated(problem)))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("spoutline.search.enumeration._PORTION", 2)
        patch.setattr("spoutline.search.enumeration._PAIRS", 4)
        columns, names = in_columns(problem)
        assert [placed(chain, names) for chain in chains_in_order(columns, names)] == wanted


def test_a_demand_among_many_is_borne_by_all_others() -> None:
    # more distinct demands than there are bands; by hand: hose h7 bears 7.5, so breakaways asking up to 7 may hang
    breakaways = Layer(
        "breakaway", tuple(Item(f"b{asks:02}", 100 - asks, 0, 0, (), demands=float(asks)) for asks in range(1, 31))
    )
    hoses = Layer(
        "hose", tuple(Item(f"h{bears}", 1 + 3 * bears, 0, NO_PORT, (), bears=bears + 0.5) for bears in (2, 7, 20))
    )
    problem = Problem(0, (breakaways, hoses), {0: frozenset({0})}, ())
    answer = best_of(problem)
    assert answer.chain is not None
    assert answer.chain.cost == min(100 - 2 + 7, 100 - 7 + 22, 100 - 20 + 61)
