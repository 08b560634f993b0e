"""The fuzzer itself: each of its sound inputs is taken, and a short run of damaged ones shows no defect.

At length: ``python tests/reliability/fuzz_inputs.py --cases N``.
"""

from __future__ import annotations

import random
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from examples import up_to
from open_stores import OpenStores
from reliability.fuzz_inputs import Fuzzer, all_targets, quiet
from reliability.fuzz_targets import Outcome, Target, Verdict
from spoutline.bootstrap import workbench


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    quiet()
    return tmp_path_factory.mktemp("fuzzed")


@pytest.fixture(scope="module")
def targets(database_to_copy: Path, folder: Path) -> Iterator[tuple[Target, ...]]:
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("XDG_DATA_HOME", str(folder / "data"))
        patch.setenv("XDG_STATE_HOME", str(folder / "state"))
        book = Path(shutil.copy(database_to_copy, folder / "book.sqlite3"))
        stores = OpenStores(book)
        patch.setattr(workbench, "Stores", stores)
        yield all_targets(book, folder)
        stores.close()


@pytest.mark.in_part
@pytest.mark.usefixtures("plans_once")  # what becomes of the inputs is planned at length in other tests
def test_a_sound_input_of_every_kind_is_taken(targets: tuple[Target, ...], folder: Path) -> None:
    assert not refused(Fuzzer(targets, folder), 1)


@pytest.mark.at_length
@pytest.mark.usefixtures("plans_once")
def test_every_sound_input_is_taken(targets: tuple[Target, ...], folder: Path) -> None:
    assert not refused(Fuzzer(targets, folder))


def refused(fuzzer: Fuzzer, most: int | None = None) -> list[tuple[str, Outcome]]:
    """Return which of the sound inputs of each target, at most so many, are not taken, and why."""
    return [
        (target.name, outcome)
        for target in fuzzer.targets
        for sound in target.sound[:most]
        if (outcome := fuzzer.try_one(target, sound)).verdict is not Verdict.TAKEN
    ]


def test_a_short_run_shows_no_defect(targets: tuple[Target, ...], folder: Path) -> None:
    fuzzer = Fuzzer(targets, folder)
    report = fuzzer.run(400, seed=20)
    chance = random.Random(21)
    for target in targets:  # those with a small share too
        fuzzer.try_one(target, target.content(chance))
    assert report.is_clean, report
    assert report.verdicts[Verdict.TAKEN], report
    assert report.verdicts[Verdict.REFUSED], report


@settings(max_examples=up_to(60), suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(data=st.data())
def test_a_damaged_input_that_shows_a_defect_is_made_small(
    targets: tuple[Target, ...], folder: Path, data: st.DataObject
) -> None:
    quick = [target for target in targets if not target.name.startswith("command")]
    target = data.draw(st.sampled_from(quick), label="target")
    chance = data.draw(st.randoms(use_true_random=False), label="chance")
    outcome = Fuzzer(targets, folder).try_one(target, target.content(chance))
    assert outcome.verdict is not Verdict.DEFECT, (target.name, outcome.where)
