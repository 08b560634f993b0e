"""Sets chosen together are the cheapest station: held against trying every combination of every chain.

The enumeration builds each chain from ports and judges it by the rules and checks alone; it knows nothing of the
model, its bounds or its price steps.
"""

from __future__ import annotations

import contextlib
import gc
import itertools
import multiprocessing
import os
import pickle
import signal
import subprocess
import sys
import threading
import time
import weakref
from collections import Counter
from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from operator import itemgetter
from pathlib import Path
from random import Random
from typing import cast

import numpy as np
import pytest

from bench.unlike_station import unlike_station
from examples import seeds
from planning.enumeration import Weighing, chains
from planning.stores import ListStore
from planning.surveys import ALL_THAT_FIT
from spoutline.catalogue.descriptions import describe, entry_of
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.faults import Cancelled
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part, Price
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Survey
from spoutline.planning.keeping.made_up import MadeUpSet, made_up_entries
from spoutline.planning.refit import station as station_module
from spoutline.planning.refit.ladders import Ladder
from spoutline.planning.refit.solver import Program, solved_by_highs
from spoutline.planning.refit.station import Stocking, plan_refit
from spoutline.planning.refit.waiting import waited_for
from spoutline.planning.sets.choice import Chooser
from spoutline.planning.sets.plan_position import PlannedPosition
from spoutline.planning.sets.pool import narrow_pool
from spoutline.rules.derive.requirement import requirement_for


def single_price(part: Part) -> Ladder:
    return ((1, part.price_minor("USD") or 0),)


def cheaper_from_three(part: Part) -> Ladder:
    price = part.price_minor("USD") or 0
    return ((1, price), (3, price * 9 // 10), (5, price * 7 // 10))


def station(names: tuple[str, ...], counts: tuple[int, ...]) -> Survey:
    """Return a survey with each named position so many times."""
    positions = [
        ALL_THAT_FIT[name].positions[0].model_copy(update={"label": f"{name} {number}"})
        for name, count in zip(names, counts, strict=True)
        for number in range(count)
    ]
    return ALL_THAT_FIT[names[0]].model_copy(update={"positions": tuple(positions)})


def few_parts(store: CatalogueStore, survey: Survey, tables: RuleTables, seed: int, size: int) -> ListStore:
    """Draw a few parts of every slot of every position that are able to serve there."""
    random = Random(seed)
    drawn: dict[str, Part] = {}
    for position in survey.positions:
        requirement = requirement_for(position, survey.site, tables)
        assert isinstance(requirement, Requirement)
        pool = narrow_pool(requirement, tables, store)
        for slot in (*requirement.chain, Slot.ADAPTOR):
            able = [one.part for one in pool.of(slot) if not one.forbidden_by]
            for part in random.sample(able, min(1 if slot is Slot.ADAPTOR else size, len(able))):
                drawn[part.number] = part
    return ListStore(drawn.values())


def sound_sets(survey: Survey, label: str, store: ListStore, tables: RuleTables) -> list[HangingSet]:
    """Return every chain that keeps the musts, breaks the fewest shoulds of its parts and none of its sums."""
    position = survey.position(label)
    assert position is not None
    requirement = requirement_for(position, survey.site, tables)
    assert isinstance(requirement, Requirement)
    weighing = Weighing(requirement, tables)
    weighed = [(weight[0], one) for one in chains(requirement, store) if (weight := weighing.by_parts(one)) is not None]
    found: list[HangingSet] = []
    fewest = 0
    for broken, hanging_set in sorted(weighed, key=itemgetter(0)):
        if found and broken > fewest:
            break
        if weighing.by_checks(hanging_set) == 0:
            found.append(hanging_set)
            fewest = broken
    return found


def cost_of(sets: tuple[HangingSet, ...], counts: tuple[int, ...], stock_price: int, ladder: Callable) -> int:
    pieces: Counter[str] = Counter()
    parts: dict[str, Part] = {}
    for hanging_set, count in zip(sets, counts, strict=True):
        for link in hanging_set.links:
            parts[link.part.number] = link.part
            pieces[link.part.number] += count
    total = stock_price * len(pieces)
    for number, quantity in pieces.items():
        price = max((step for step in ladder(parts[number]) if step[0] <= quantity), key=lambda step: step[0])[1]
        total += price * quantity
    return total


CASES = [
    (("car", "car_retractor"), (2, 1)),
    (("car", "truck"), (1, 3)),
    (("truck", "car_e85"), (2, 2)),
    (("car", "car_e85", "car_retractor"), (2, 1, 1)),
]
PRICINGS = [(0, single_price), (1500, single_price), (4000, cheaper_from_three)]


@pytest.mark.parametrize(("names", "counts"), CASES)
@pytest.mark.parametrize("seed", seeds(2))
def test_no_combination_of_sound_sets_is_cheaper(
    names: tuple[str, ...], counts: tuple[int, ...], seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey = station(names, counts)
    store = few_parts(catalogue, survey, us_tables, seed, 2)
    choices = [sound_sets(survey, f"{name} 0", store, us_tables) for name in names]
    for stock_price, ladder in PRICINGS:
        plan = plan_refit(survey, us_tables, store, stocking=Stocking(price_minor=stock_price, ladder=ladder))
        chosen = {one.position.label: one.chosen.hanging_set for one in plan.site_plan.positions if one.chosen}
        if not all(choices):
            # where some position has no set that keeps every should, the enumeration has nothing to say of the sum
            assert plan.site_plan.positions
            continue
        first = tuple(chosen[f"{name} 0"] for name in names)
        best = min(cost_of(sets, counts, stock_price, ladder) for sets in itertools.product(*choices))
        assert cost_of(first, counts, stock_price, ladder) == best
        assert plan.commonality is not None
        assert plan.commonality.together.objective_minor(stock_price) == best
        for name, count, own in zip(names, counts, first, strict=True):
            assert [chosen[f"{name} {number}"].numbers for number in range(count)] == [own.numbers] * count


def with_copies(store: ListStore, seed: int) -> ListStore:
    """Return every part with a near copy of it: of another price and mass, or dearer and no better."""
    random = Random(seed)
    made = list(store.all)
    for part in store.all:
        price = part.price_minor("USD") or 0
        is_worse = random.random() < 0.3
        minor = price + 100 if is_worse else round(price * random.uniform(0.9, 1.2))
        mass_kg = part.mass_kg if is_worse or part.mass_kg is None else part.mass_kg * random.uniform(0.9, 1.2)
        prices = (Price(currency="USD", minor=minor),)
        made.append(replace(part, number=f"{part.number}-2", mass_kg=mass_kg, prices=prices))
    return ListStore(made)


@pytest.mark.parametrize("names", [("car", "car_e85"), ("car", "truck"), ("car_retractor", "car")])
@pytest.mark.parametrize("seed", seeds(3))
def test_what_is_left_out_beside_near_copies_was_in_no_optimum(
    names: tuple[str, ...], seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey, counts = station(names, (2, 1)), (2, 1)
    store = with_copies(few_parts(catalogue, survey, us_tables, seed, 1), seed)
    choices = [sound_sets(survey, f"{name} 0", store, us_tables) for name in names]
    if not all(choices):
        return
    for stock_price, ladder in PRICINGS:
        plan = plan_refit(survey, us_tables, store, stocking=Stocking(price_minor=stock_price, ladder=ladder))
        assert plan.commonality is not None
        best = min(cost_of(sets, counts, stock_price, ladder) for sets in itertools.product(*choices))
        assert plan.commonality.together.objective_minor(stock_price) == best


@pytest.mark.parametrize(("name", "count"), [("car", 2), ("car", 3)])
@pytest.mark.parametrize("seed", seeds(2))
def test_positions_that_differ_by_little_may_still_get_different_sets(
    name: str, count: int, seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """No two ask the same, and the model takes together what it cannot tell apart: each set is free all the same."""
    alike = station((name,), (count,))
    positions = tuple(
        one.model_copy(
            update={"filler": one.filler.model_copy(update={"distance_m": one.filler.distance_m + 0.001 * number})}
        )
        for number, one in enumerate(alike.positions)
    )
    survey = alike.model_copy(update={"positions": positions})
    store = few_parts(catalogue, survey, us_tables, seed, 2)
    choices = [sound_sets(survey, one.label, store, us_tables) for one in positions]
    for stock_price, ladder in PRICINGS:
        plan = plan_refit(survey, us_tables, store, stocking=Stocking(price_minor=stock_price, ladder=ladder))
        assert plan.commonality is not None
        if not all(choices):
            # where some position has no set that keeps every should, the enumeration has nothing to say of the sum
            assert plan.site_plan.positions
            continue
        best = min(cost_of(sets, (1,) * count, stock_price, ladder) for sets in itertools.product(*choices))
        assert plan.commonality.together.objective_minor(stock_price) == best


def test_unlike_positions_that_keep_their_limits_by_states_take_one_model(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """Like questions that share a row may take a long hose for one and one too short for another: a model more."""
    stocking = Stocking(price_minor=3500, ladder=single_price)
    found = plan_refit(unlike_station(12), us_tables, catalogue, stocking=stocking).commonality
    assert found is not None
    assert (found.rounds, found.floor_minor) == (1, None)


def test_a_free_stock_leaves_the_sets_as_cheap_as_alone(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    survey = station(("car", "truck"), (2, 2))
    plan = plan_refit(survey, us_tables, catalogue, stocking=Stocking(price_minor=0, ladder=single_price))
    assert plan.commonality is not None
    assert plan.commonality.costs_minor == 0
    assert plan.commonality.changed == ()


def test_a_dearer_stock_never_uses_more_part_numbers(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    """A relation of parametric minimisation: the count in an optimum falls as its weight rises."""
    survey = station(("car", "car_retractor", "truck", "car_e85"), (3, 2, 2, 1))
    used = []
    for price in (0, 1000, 5000, 30000):
        plan = plan_refit(survey, us_tables, catalogue, stocking=Stocking(price_minor=price, ladder=single_price))
        assert plan.commonality is not None
        assert plan.commonality.costs_minor <= plan.commonality.saves_minor
        used.append(plan.commonality.together.part_numbers)
    assert used == sorted(used, reverse=True)
    assert used[-1] < used[0]


@pytest.mark.parametrize("together", [False, True])
def test_what_chose_a_set_is_kept_only_for_choosing_together(
    catalogue: CatalogueStore, us_tables: RuleTables, together: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It holds the candidates of its question: at a thousand questions of a large catalogue, gigabytes."""
    choosers: list[weakref.ref[Chooser]] = []
    there_are: list[int] = []
    planned_position = station_module.planned_position

    def noted(*asked: object) -> PlannedPosition:
        gc.collect()
        there_are.append(sum(one() is not None for one in choosers))
        planned = planned_position(*asked)  # type: ignore[arg-type]
        assert planned.chooser is not None
        choosers.append(weakref.ref(planned.chooser))
        return planned

    monkeypatch.setattr(station_module, "planned_position", noted)
    names = ("car", "truck", "car_e85")
    survey = station(names, (1, 1, 1))
    stocking = Stocking(price_minor=0, ladder=single_price) if together else None
    plan_refit(survey, us_tables, catalogue, stocking=stocking)
    assert there_are == ([0, 1, 2] if together else [0, 1, 1])


def test_planning_a_station_stops_when_asked(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    class Impatient:
        def on_progress(self, done: int, total: int) -> None:
            pass

        def should_stop(self) -> bool:
            return True

    with pytest.raises(Cancelled):
        plan_refit(station(("car",), (1,)), us_tables, catalogue, progress=Impatient())


def test_a_long_call_is_left_as_soon_as_somebody_stops() -> None:
    release, asked = threading.Event(), []

    def should_stop() -> bool:
        asked.append(True)
        return len(asked) > 2

    begun = time.monotonic()
    with pytest.raises(Cancelled):
        waited_for(lambda: release.wait(60), should_stop)
    assert time.monotonic() - begun < 30
    release.set()


def test_a_long_call_hands_on_what_it_returns_or_raises() -> None:
    def fails() -> int:
        raise TimeoutError("of the call itself")

    assert waited_for(lambda: 7, lambda: False) == 7
    with pytest.raises(TimeoutError, match="of the call itself"):
        waited_for(fails, lambda: False)


def hard_program() -> Program:
    """Return a market split that no solver has soon (Cornuejols and Dawande, 1998): six rows, fifty columns."""
    random = np.random.default_rng(5)
    rows, columns = 6, 50
    share = random.integers(0, 100, (rows, columns)).astype(float)
    half = np.floor(share.sum(axis=1) / 2)
    over = np.concatenate([share, np.eye(rows), -np.eye(rows)], axis=1)
    at = np.nonzero(over)
    return Program(
        costs=np.append(np.zeros(columns), np.ones(2 * rows)),
        upper=np.append(np.ones(columns), np.full(2 * rows, 1e4)),
        whole=np.append(np.ones(columns, np.int64), np.zeros(2 * rows, np.int64)),
        rows=at[0],
        columns=at[1],
        values=over[at],
        low=half,
        high=half,
        node_limit=2_000_000_000,
    )


def test_the_solver_ends_as_soon_as_somebody_stops() -> None:
    before = set(multiprocessing.active_children())
    asked: list[set[object]] = []

    def should_stop() -> bool:
        asked.append(set(multiprocessing.active_children()))
        return len(asked) > 3

    begun = time.monotonic()
    with pytest.raises(Cancelled):
        solved_by_highs(hard_program(), should_stop)
    assert time.monotonic() - begun < 60
    assert asked[-1]  # there was a process,
    assert set(multiprocessing.active_children()) < before | asked[-1]  # and it is gone


_ASKED_BY_A_COMMAND = """
import pickle, signal, sys
from spoutline.planning.refit.solver import solved_by_highs

signal.signal(signal.SIGINT, signal.default_int_handler)  # what a shell starts in the background ignores it
try:
    solved_by_highs(pickle.load(sys.stdin.buffer), lambda: False)
except KeyboardInterrupt:
    print("interrupted")
"""


@pytest.mark.parametrize("modules_loaded", [0, 1, 2])
def test_an_interrupt_of_all_processes_ends_the_solver_without_a_word(modules_loaded: int, tmp_path: Path) -> None:
    """A terminal sends it to the solver as well, which may still be loading its modules."""
    asked = tmp_path / "program"
    asked.write_bytes(pickle.dumps(hard_program()))
    with asked.open("rb") as program:
        command = subprocess.Popen(
            [sys.executable, "-c", _ASKED_BY_A_COMMAND],
            stdin=program,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            start_new_session=True,
        )
    solver = _started_solver(command.pid)
    time.sleep(0.15 * modules_loaded)
    os.killpg(command.pid, signal.SIGINT)
    out, err = command.communicate(timeout=60)
    assert (out, err) == (b"interrupted\n", b"")
    deadline = time.monotonic() + 60
    while _is_running(solver) and time.monotonic() < deadline:
        time.sleep(0.05)
    assert not _is_running(solver)


_TAKEN_BY_ANOTHER_THREAD = """
import signal, threading, time
from spoutline.planning.refit.solver import _no_interrupt

signal.signal(signal.SIGINT, signal.default_int_handler)  # what a shell starts in the background ignores it
end = threading.Event()
other = threading.Thread(target=end.wait)
other.start()
try:
    with _no_interrupt():
        signal.pthread_kill(other.ident, signal.SIGINT)
        time.sleep(0.2)
        print("started")
    print("not heard")
except KeyboardInterrupt:
    print("interrupted")
end.set()
"""


def test_an_interrupt_that_a_thread_of_a_library_takes_waits_until_the_solver_is_started() -> None:
    """Threads of numpy block no signal; Python then interrupts its main thread, whatever that blocks."""
    command = [sys.executable, "-c", _TAKEN_BY_ANOTHER_THREAD]
    done = subprocess.run(command, capture_output=True, timeout=60, check=False)
    assert (done.stdout, done.stderr) == (b"started\ninterrupted\n", b"")


def _started_solver(command: int) -> int:
    """Return the process that a command started to solve, as soon as there is one."""
    deadline = time.monotonic() + 60
    while time.monotonic() < deadline:
        for folder in Path("/proc").glob("[0-9]*"):
            with contextlib.suppress(OSError):
                parent = int((folder / "stat").read_text(encoding="ascii").rpartition(")")[2].split()[1])
                if parent == command and b"spawn_main" in (folder / "cmdline").read_bytes():
                    return int(folder.name)
        time.sleep(0.01)
    raise AssertionError("no process was started")


_KILLED_WHILE_SOLVED = """
import multiprocessing, os, pickle, signal, sys
from spoutline.planning.refit.solver import solved_by_highs

asked = []

def should_stop():
    asked.append(1)
    if len(asked) > 20:
        with open(sys.argv[1], "w") as told:
            print(*(one.pid for one in multiprocessing.active_children()), file=told)
        os.kill(os.getpid(), signal.SIGKILL)
    return False

solved_by_highs(pickle.load(sys.stdin.buffer), should_stop)
"""


def test_the_solver_ends_with_a_program_that_was_killed(tmp_path: Path) -> None:
    told = tmp_path / "solver"
    command = [sys.executable, "-c", _KILLED_WHILE_SOLVED, str(told)]
    killed = subprocess.run(command, input=pickle.dumps(hard_program()), stdout=subprocess.DEVNULL, check=False)
    assert killed.returncode == -signal.SIGKILL
    (solver,) = map(int, told.read_text(encoding="ascii").split())
    deadline = time.monotonic() + 60
    while _is_running(solver) and time.monotonic() < deadline:
        time.sleep(0.05)
    is_left = _is_running(solver)
    if is_left:
        os.kill(solver, signal.SIGKILL)
    assert not is_left


def _is_running(process: int) -> bool:
    """Say whether a process goes on; one that ended and that nobody asked after yet does not."""
    told = Path(f"/proc/{process}/stat")
    try:
        os.kill(process, 0)
        return not told.exists() or told.read_text(encoding="ascii").rpartition(")")[2].split()[0] not in "ZX"
    except (FileNotFoundError, ProcessLookupError):
        return False


def test_a_solver_that_ends_by_itself_has_no_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    """As one does that asks for more memory than it may have."""
    killed = []

    def should_stop() -> bool:
        if not killed:
            killed.extend(multiprocessing.active_children())
            for process in killed:
                process.kill()
        return False

    assert solved_by_highs(hard_program(), should_stop) is None


def test_what_the_solver_cannot_finish_for_memory_leaves_the_sets_chosen_alone(
    catalogue: CatalogueStore, us_tables: RuleTables, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("spoutline.planning.refit.mixed_integer.solved_by_highs", lambda *_: None)
    stocking = Stocking(price_minor=3000, ladder=single_price)
    found = plan_refit(station(("car", "truck"), (1, 1)), us_tables, catalogue, stocking=stocking).commonality
    assert found is not None
    assert found.together == found.alone
    assert not found.changed
    assert found.floor_minor is not None  # of the price of each set at its lowest, and the numbers of one chain
    monkeypatch.undo()
    proved = plan_refit(station(("car", "truck"), (1, 1)), us_tables, catalogue, stocking=stocking).commonality
    assert proved is not None
    assert 0 < found.floor_minor <= proved.together.objective_minor(3000)


@pytest.mark.parametrize(("names", "size"), [(("car", "truck"), 2), (("car", "car_e85"), 1)])
@pytest.mark.parametrize("seed", seeds(2))
def test_a_model_that_is_too_large_leaves_a_floor_below_every_combination(
    names: tuple[str, ...],
    size: int,
    seed: int,
    catalogue: CatalogueStore,
    us_tables: RuleTables,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Held against every combination: the floor is no more than the cheapest, which is no more than the sets alone."""
    monkeypatch.setattr("spoutline.planning.refit.commonality._MOST_COLUMNS", 0)
    monkeypatch.setattr("spoutline.planning.refit.mixed_integer.solved_by_highs", None)  # nobody is asked
    survey, counts = station(names, (2,) * len(names)), (2,) * len(names)
    store = few_parts(catalogue, survey, us_tables, seed, size)
    choices = [sound_sets(survey, f"{name} 0", store, us_tables) for name in names]
    if not all(choices):
        return
    for stock_price, ladder in PRICINGS:
        stocking = Stocking(price_minor=stock_price, ladder=ladder)
        found = plan_refit(survey, us_tables, store, stocking=stocking).commonality
        assert found is not None
        best = min(cost_of(sets, counts, stock_price, ladder) for sets in itertools.product(*choices))
        value = found.together.objective_minor(stock_price)
        assert value - found.open_minor <= best <= value
        assert (found.floor_minor is None) == (found.open_minor == 0)


def test_choosing_together_stops_before_any_model_is_made(
    catalogue: CatalogueStore, us_tables: RuleTables, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Every case is looked at three times before a model is made of all: somebody may stop before each."""
    monkeypatch.setattr("spoutline.planning.refit.mixed_integer.solved_by_highs", None)  # nobody is asked
    stocking = Stocking(price_minor=3000, ladder=single_price)
    survey = station(("car", "truck", "car_e85"), (1, 1, 1))
    for allowed in range(9):

        class Impatient:
            def __init__(self, left: int) -> None:
                self._left, self._are_planned = left, False

            def on_progress(self, done: int, total: int) -> None:
                self._are_planned = done == total

            def should_stop(self) -> bool:
                self._left -= self._are_planned
                return self._left < 0

        with pytest.raises(Cancelled):
            plan_refit(survey, us_tables, catalogue, stocking=stocking, progress=Impatient(allowed + 1))


class Noisy:
    """Writes to the output of the process that reads it, as HiGHS does whatever it is told."""

    def __reduce__(self) -> tuple[Callable[[int, bytes], int], tuple[int, bytes]]:
        return os.write, (1, b"tmpSolver.run();")


def test_the_solver_writes_nothing_where_the_program_answers(capfd: pytest.CaptureFixture[str]) -> None:
    noisy = replace(hard_program(), node_limit=cast("int", Noisy()))
    assert solved_by_highs(noisy, lambda: False) is not None
    assert capfd.readouterr() == ("", "")


def test_choosing_together_stops_while_the_model_is_solved(
    catalogue: CatalogueStore, us_tables: RuleTables, monkeypatch: pytest.MonkeyPatch
) -> None:
    solver = "spoutline.planning.refit.mixed_integer.solved_by_highs"
    monkeypatch.setattr(solver, lambda _, should_stop: solved_by_highs(hard_program(), should_stop))
    solving = []

    class Impatient:
        def on_progress(self, done: int, total: int) -> None:
            solving.append(done == total)

        def should_stop(self) -> bool:
            return False if not solving or not solving[-1] else next(later)

    later = itertools.chain([False] * 4, itertools.repeat(True))
    stocking = Stocking(price_minor=3000, ladder=single_price)
    with pytest.raises(Cancelled):
        plan_refit(station(("car", "truck"), (1, 1)), us_tables, catalogue, stocking=stocking, progress=Impatient())


def test_a_choice_that_ran_out_of_nodes_says_what_it_leaves_open(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    survey = station(("car", "car_retractor", "truck", "car_e85"), (3, 2, 2, 1))
    hurried = Stocking(price_minor=3000, ladder=single_price, node_limit=0)
    proved = Stocking(price_minor=3000, ladder=single_price)
    plan = plan_refit(survey, us_tables, catalogue, stocking=proved)
    assert plan.commonality is not None
    assert (plan.commonality.floor_minor, plan.commonality.open_minor) == (None, 0)
    best = plan.commonality.together.objective_minor(3000)
    found = plan_refit(survey, us_tables, catalogue, stocking=hurried).commonality
    assert found is not None
    reached = found.together.objective_minor(3000)
    assert best <= reached <= found.alone.objective_minor(3000)
    assert reached - found.open_minor <= best


def test_sets_that_are_turned_down_over_and_over_end_with_what_is_left_open(
    catalogue: CatalogueStore, us_tables: RuleTables, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("spoutline.planning.refit.commonality.ROUND_LIMIT", 3)
    monkeypatch.setattr("spoutline.planning.refit.commonality.COLUMN_LIMIT", 0)
    monkeypatch.setattr("spoutline.planning.refit.commonality.is_turned_down", lambda *_: True)
    stocking = Stocking(price_minor=3000, ladder=single_price)
    found = plan_refit(station(("car", "truck"), (1, 1)), us_tables, catalogue, stocking=stocking).commonality
    assert found is not None
    assert found.rounds == 3
    assert found.together == found.alone
    monkeypatch.undo()
    proved = plan_refit(station(("car", "truck"), (1, 1)), us_tables, catalogue, stocking=stocking).commonality
    assert proved is not None
    value = found.together.objective_minor(3000)
    assert proved.together.objective_minor(3000) <= value - found.open_minor <= value


def test_an_article_is_stocked_as_one_number(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    """By hand: three pieces more cost 3 x 30.00 to stock where the article of them costs 1 x 30.00 and 10.00 more."""
    survey = station(("car",), (1,))
    pieces = plan_refit(survey, us_tables, catalogue).site_plan.positions[0].chosen
    assert pieces is not None
    parts = tuple(link.part for link in pieces.hanging_set.links)
    joined = sum(part.price_minor("USD") or 0 for part in parts[:3])
    price = Decimal(joined + 1000) / 100
    made = made_up_entries(MadeUpSet(number="KIT 7", parts=tuple(map(entry_of, parts[:3])), prices={"USD": price}))
    found = [describe(one).part for one in made]
    store = ListStore((*parts, *(part for part in found if part is not None)))
    stocking = Stocking(price_minor=3000, ladder=single_price)
    plan = plan_refit(survey, us_tables, store, stocking=stocking)
    assert plan.commonality is not None
    together = plan.commonality.together
    assert together.part_numbers == len(parts) - 2
    assert together.sets_minor == pieces.hanging_set.price_minor + 1000
    dear = Stocking(price_minor=400, ladder=single_price)  # 2 x 4.00 saved do not pay for 10.00
    alone = plan_refit(survey, us_tables, store, stocking=dear).commonality
    assert alone is not None
    assert alone.together.part_numbers == len(parts)
