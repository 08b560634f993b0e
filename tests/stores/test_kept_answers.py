"""The file of answers: shared by threads, bounded, of no harm where it is cut off, damaged, full or missing."""

from __future__ import annotations

import hashlib
import sqlite3
import threading
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from spoutline.bootstrap import kept_answers
from spoutline.bootstrap.kept_answers import SharedAnswers, answers_for_run
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.part_ref import PartRef
from spoutline.model.position_conversion import ConversionKind, PositionOutcome
from spoutline.model.requirement import Slot
from spoutline.planning.conversion.position_answer import AnsweredPart, PositionAnswer


def key_of(number: int) -> str:
    return hashlib.sha256(str(number).encode()).hexdigest()


def answer_of(number: int) -> PositionAnswer:
    return PositionAnswer(
        outcome=PositionOutcome.CONVERTS,
        kinds=(ConversionKind.DECOMMISSION,),
        way=OptionKind.GOOD_PRACTICE,
        parts=(
            AnsweredPart(slot=Slot.CURB_HOSE, new=PartRef(f"H-{number}", "Invented Hoses")),
            AnsweredPart(slot=Slot.NOZZLE, stays=2),
        ),
        departures=number,
    )


def never() -> PositionAnswer:
    raise AssertionError("it was kept")


def made(number: int) -> Callable[[], PositionAnswer]:
    return lambda: answer_of(number)


def filled(folder: Path, count: int) -> Path:
    """Return the file of answers, so many of them kept."""
    with answers_for_run(folder) as path, closing(SharedAnswers(path)) as kept:
        for number in range(count):
            kept.answer(key_of(number), made(number))
    return path


def known(path: Path, count: int) -> list[int]:
    """Return which answers a run reads, each of which must be the one that was kept."""
    found = list(range(count))
    with answers_for_run(path.parent) as here, closing(SharedAnswers(here)) as kept:
        for number in range(count):

            def work(number: int = number) -> PositionAnswer:
                found.remove(number)
                return answer_of(number)

            assert kept.answer(key_of(number), work) == answer_of(number)
    return found


def test_an_answer_is_kept_from_run_to_run(tmp_path: Path) -> None:
    path = filled(tmp_path, 20)
    assert known(path, 21) == list(range(20))
    assert known(path, 21) == list(range(21))


@pytest.mark.parametrize("share", [0.0, 0.3, 0.6, 0.97])
def test_a_file_that_was_cut_off_serves_with_what_is_sound_or_is_made_anew(tmp_path: Path, share: float) -> None:
    path = filled(tmp_path, 300)
    content = path.read_bytes()
    path.write_bytes(content[: int(len(content) * share)])
    known(path, 300)
    assert known(path, 300) == list(range(300))


def test_a_file_of_something_else_is_made_anew(tmp_path: Path) -> None:
    path = filled(tmp_path, 3)
    path.write_bytes(b"Dear all, this is a letter\n" * 400)
    assert known(path, 3) == []
    assert known(path, 3) == [0, 1, 2]
    with closing(sqlite3.connect(path)) as file:
        file.execute("PRAGMA user_version = 99")
    assert known(path, 3) == []


def test_an_answer_that_is_not_as_it_was_written_does_not_count(tmp_path: Path) -> None:
    path = filled(tmp_path, 3)
    with closing(sqlite3.connect(path)) as file:
        file.execute("UPDATE answers SET answer = replace(answer, 'H-1', 'H-7') WHERE rowid = 2")
        file.commit()
    assert known(path, 3) == [0, 2]
    with closing(sqlite3.connect(path)) as file:  # a true digest over what is no answer
        asked, text = bytes.fromhex(key_of(0)), b'{"outcome":"perhaps"}'
        file.execute("REPLACE INTO answers VALUES (?, ?, ?)", (asked, text, kept_answers._digest(asked, text)))
        file.commit()
    assert known(path, 3) == [1, 2]


def test_the_file_stays_within_its_bound_and_the_oldest_answers_make_room(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    largest = 200_000
    monkeypatch.setattr(kept_answers, "_LARGEST", largest)
    path = filled(tmp_path, 1000)
    assert path.stat().st_size <= largest
    with closing(sqlite3.connect(path)) as file:
        (full,) = file.execute("SELECT count(*) FROM answers").fetchone()
    assert 0 < full < 1000
    with answers_for_run(tmp_path), closing(sqlite3.connect(path)) as file:
        lowest, left = file.execute("SELECT min(rowid), count(*) FROM answers").fetchone()
    assert 0.3 * full < left < 0.7 * full
    assert lowest == full - left + 1
    with answers_for_run(tmp_path), closing(SharedAnswers(path)) as kept:
        kept.answer(key_of(5000), made(5000))
        assert kept.answer(key_of(5000), never) == answer_of(5000)
    assert path.stat().st_size <= largest


def test_where_no_file_can_be_kept_one_lasts_for_the_run(tmp_path: Path) -> None:
    (tmp_path / "taken").write_text("a file, no folder", encoding="utf-8")
    with answers_for_run(tmp_path / "taken") as path:
        with closing(SharedAnswers(path)) as kept:
            kept.answer(key_of(1), made(1))
        with closing(SharedAnswers(path)) as kept:
            assert kept.answer(key_of(1), never) == answer_of(1)
    assert not path.exists()
    assert (tmp_path / "taken").read_text(encoding="utf-8") == "a file, no folder"


def test_a_file_that_goes_away_within_a_run_costs_nothing_but_time(tmp_path: Path) -> None:
    with closing(SharedAnswers(tmp_path / "missing" / "answers.sqlite3")) as kept:
        assert kept.answer(key_of(1), made(1)) == answer_of(1)
    path = filled(tmp_path, 3)
    with closing(SharedAnswers(path)) as kept:
        with closing(sqlite3.connect(path)) as file:
            file.execute("DROP TABLE answers")
        assert kept.answer(key_of(1), made(1)) == answer_of(1)
        assert kept.answer(key_of(2), made(2)) == answer_of(2)


def test_of_two_who_ask_the_same_at_once_one_works_and_both_have_it(tmp_path: Path) -> None:
    started, worked, found = threading.Barrier(2), list[int](), list[PositionAnswer]()
    turns = tuple(threading.Lock() for _ in range(4))

    def work() -> PositionAnswer:
        worked.append(1)
        return answer_of(7)

    with answers_for_run(tmp_path) as path:

        def asks() -> None:
            with closing(SharedAnswers(path, turns)) as kept:
                for number in range(50):
                    started.wait()
                    found.append(kept.answer(key_of(number), work))

        threads = [threading.Thread(target=asks) for _ in range(2)]
        for one in threads:
            one.start()
        for one in threads:
            one.join()
    assert len(worked) == 50
    assert found == [answer_of(7)] * 100
