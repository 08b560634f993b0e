"""What is made once: whichever thread asks first, once only, and again after a fault or when it is forgotten."""

from __future__ import annotations

import threading
from concurrent.futures import ThreadPoolExecutor

import pytest

from spoutline.bootstrap.once import Once, OnceEach


def test_threads_that_ask_at_once_get_the_one_value() -> None:
    together, made = threading.Barrier(8), []

    def make() -> object:
        made.append(object())
        threading.Event().wait(0.02)  # long enough for the others to ask meanwhile
        return made[-1]

    value = Once(make)

    def ask(_number: int) -> object:
        together.wait()
        return value()

    with ThreadPoolExecutor(8) as pool:
        assert set(pool.map(ask, range(8))) == set(made)
    assert len(made) == 1
    assert value.is_made


def test_a_fault_is_not_kept() -> None:
    answers = iter((None, "read"))

    def make() -> str:
        answer = next(answers)
        if answer is None:
            raise OSError("the disk is away")
        return answer

    value = Once(make)
    with pytest.raises(OSError, match="disk"):
        value()
    assert not value.is_made
    assert value() == "read"


def test_what_is_forgotten_is_handed_back_and_made_anew() -> None:
    numbers = iter(range(9))
    value = Once(lambda: next(numbers))
    assert value.forget() == ()
    assert [value(), value()] == [0, 0]
    assert value.forget() == (0,)
    assert value() == 1


def test_each_key_has_a_value_of_its_own_and_may_need_another() -> None:
    asked: list[int] = []

    def factorial(number: int) -> int:
        asked.append(number)
        return number * values(number - 1) if number else 1

    values: OnceEach[int, int] = OnceEach(factorial)
    assert [values(5), values(3)] == [120, 6]
    assert asked == [5, 4, 3, 2, 1, 0]
