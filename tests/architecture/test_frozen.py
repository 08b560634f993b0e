"""``@frozen`` declares what Python's own frozen dataclass with slots declares, which is the oracle here."""

from __future__ import annotations

import copy
import pickle
import re
import threading
from collections.abc import Callable
from dataclasses import FrozenInstanceError, asdict, astuple, dataclass, field, fields, replace
from pathlib import Path
from typing import Any, ClassVar

import pytest

import spoutline
from spoutline.frozen import frozen

PROGRAM = Path(spoutline.__file__).parent


Declared = Callable[[Any], Any]


class Plain:
    """What a frozen class may derive from; it notes who was made."""

    seen: ClassVar[list[str]] = []

    def __post_init__(self) -> None:
        Plain.seen.append(type(self).__name__)


def declared_by(simple: Declared, by_name: Declared) -> dict[str, Any]:
    """Return classes with fields of every sort, declared by the decorators."""

    @simple
    class Whole(Plain):
        """Fields of every sort."""

        first: int
        second: str = "two"
        many: tuple[int, ...] = ()
        listed: list[int] = field(default_factory=list, compare=False)
        hidden: int = field(default=4, repr=False)
        set_apart: int = field(default=5, init=False)
        made: dict[str, int] = field(default_factory=dict, init=False, compare=False)
        told: int = field(default=6, kw_only=True)
        count: ClassVar[int] = 0

    @by_name
    class Derived(Whole):
        """Fields that a derived class adds, all told by name."""

        third: float
        fourth: bool = True

    @simple
    class Empty:
        """No field."""

    @simple
    class OwnMethods:
        """Methods that a class defines itself stay."""

        first: int

        def __repr__(self) -> str:
            return "own"

        def __eq__(self, other: object) -> bool:
            return isinstance(other, type(self))

        def __hash__(self) -> int:
            return 3

    kinds = (Whole, Derived, Empty, OwnMethods)
    for kind in kinds:
        kind.__qualname__ = kind.__name__  # as of classes of a module, where pickle finds them
    return {kind.__name__: kind for kind in kinds}


OURS = declared_by(frozen, frozen(kw_only=True))
PYTHONS = declared_by(dataclass(frozen=True, slots=True), dataclass(frozen=True, slots=True, kw_only=True))
globals().update(OURS)  # where pickle finds them

STATEMENTS = [
    "Whole(1)",
    "Whole(1, 'x', (1, 2), [3], 9, told=7)",
    "Whole(first=1, hidden=2)",
    "Whole(1).listed is Whole(1).listed",
    "Whole(1).made",
    "Whole(1) == Whole(1, listed=[9])",
    "Whole(1) == Whole(1, hidden=9)",
    "Whole(1) != Whole(2)",
    "Whole(1) == Derived(1, third=1.0)",
    "Whole(1).__eq__(1)",
    "Whole(1) < Whole(2)",
    "hash(Whole(1)) == hash(Whole(1, listed=[9]))",
    "hash(Whole(1))",
    "hash(Whole(1, many=[1]))",
    "Derived(1, third=2.0)",
    "Derived(1, third=2.0, told=3, fourth=False)",
    "Derived(1, 'two', (), [], 4, 2.0)",
    "Derived(1)",
    "hash(Derived(1, third=2.0))",
    "Whole()",
    "Whole(1, unknown=2)",
    "Whole(1, set_apart=2)",
    "setattr(Whole(1), 'first', 2)",
    "delattr(Whole(1), 'first')",
    "hasattr(Whole(1), '__dict__')",
    "Whole.__slots__, Derived.__slots__, Whole.__match_args__, Whole.__name__, Whole.__qualname__",
    "[one.name for one in fields(Derived)]",
    "replace(Whole(1), second='x')",
    "replace(Whole(1), set_apart=2)",
    "asdict(Whole(1)), astuple(Derived(1, third=2.0))",
    "copy.copy(Whole(1)), copy.deepcopy(Derived(1, third=2.0))",
    "Empty(), Empty() == Empty(), hash(Empty())",
    "Empty(1)",
    "OwnMethods(1), OwnMethods(1) == OwnMethods(2), hash(OwnMethods(1))",
    "OwnMethods(1) == 1",
    "(Whole(1), seen[-1:], Derived(1, third=1.0), seen[-1:])",
]


def _outcome(statement: str, declared: dict[str, Any]) -> str:
    Plain.seen.clear()
    known = {**declared, "copy": copy, "fields": fields, "replace": replace, "asdict": asdict, "astuple": astuple}
    try:
        return repr(eval(statement, {**known, "seen": Plain.seen}))  # the statements above
    except (TypeError, ValueError, AttributeError, FrozenInstanceError) as fault:
        return f"{type(fault).__name__}: {fault}".replace("declared_by.<locals>.", "")


@pytest.mark.parametrize("statement", STATEMENTS)
def test_a_frozen_class_does_what_pythons_own_does(statement: str) -> None:
    assert _outcome(statement, OURS) == _outcome(statement, PYTHONS)
    assert _outcome(statement, OURS) == _outcome(statement, PYTHONS)  # with the methods compiled meanwhile


def test_a_frozen_value_takes_no_field_that_is_not_declared() -> None:
    with pytest.raises(FrozenInstanceError, match="foreign"):  # Python's own raises a TypeError of its making here
        OURS["Whole"](1).foreign = 2


def test_a_frozen_value_goes_to_another_process_and_back() -> None:
    value = OURS["Derived"](1, third=2.0, listed=[7])
    back = pickle.loads(pickle.dumps(value))
    assert back == value
    assert back.listed == [7]


def test_a_method_is_compiled_once_it_is_called() -> None:
    @frozen
    class Late:
        """A class that nobody made yet."""

        first: int

    waiting = Late.__init__
    assert Late(1).first == 1
    assert Late.__init__ is not waiting
    assert Late.__init__.__qualname__ == waiting.__qualname__
    waiting(Late(1), 2)  # whoever still holds the waiting one gets the same


def test_threads_that_make_the_first_value_at_once_all_get_one() -> None:
    for _ in range(50):
        kind = declared_by(frozen, frozen)["Whole"]
        start, made = threading.Barrier(4), []

        def make(kind: Any = kind, start: threading.Barrier = start, made: list[Any] = made) -> None:
            start.wait()
            made.append((kind(1, hidden=3), hash(kind(1))))

        threads = [threading.Thread(target=make) for _ in range(4)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        assert len(made) == 4
        assert len(set(made)) == 1


def test_frozen_values_with_slots_are_declared_in_one_way() -> None:
    otherwise = re.compile(r"dataclass\(frozen=True, slots=True(, kw_only=True)?\)\n")
    sources = [path for path in PROGRAM.rglob("*.py") if path.name != "frozen.py"]
    found = [str(path.relative_to(PROGRAM)) for path in sources if otherwise.search(path.read_text(encoding="utf-8"))]
    assert not found, f"declare with @frozen of spoutline.frozen: {found}"
