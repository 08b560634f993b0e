"""How one cell of a source table is read: yes and no, lists of words, ports, prices."""

from __future__ import annotations

from decimal import Decimal
from enum import StrEnum
from functools import lru_cache
from typing import Annotated, TypeVar

from pydantic import AfterValidator, BeforeValidator, Field, StringConstraints

from spoutline.model.part_identity import made_up_fault
from spoutline.model.port import MADE_UP_IN, FlowPath, Gender, Port, ThreadStandard
from spoutline.model.port_sizes import path_of_thread, read_size
from spoutline.model.worded import Worded

_Choice = TypeVar("_Choice", bound=StrEnum)


def listed(choices: type[StrEnum]) -> str:
    """Return the values of an enumeration as a person reads them."""
    return ", ".join(choice.value for choice in choices)


def _words(cell: object) -> object:
    return tuple(cell.split()) if isinstance(cell, str) else cell


def _yes_or_no(cell: object) -> object:
    answers = {"yes": True, "no": False}
    if isinstance(cell, str):
        if cell not in answers:
            raise ValueError("write yes or no")
        return answers[cell]
    return cell


def _one_of(text: str, choices: type[_Choice], what: str) -> _Choice:
    try:
        return choices(text)
    except ValueError:
        raise ValueError(Worded("{what} must be one of {listed}", what=what, listed=listed(choices))) from None


def port_from(cell: object) -> object:
    """Return the port that a text says; anything else as it is. Raise ``ValueError`` for a text that says none."""
    return _port_from(cell) if isinstance(cell, str) else cell


@lru_cache(maxsize=4096)  # a catalogue has many parts and few different ports
def _port_from(text: str) -> Port:
    own, inside, article = text.partition(f" {MADE_UP_IN} ")
    words = own.split()
    if inside and (fault := made_up_fault(article.strip())):
        raise ValueError(
            Worded("after {made_up_in!r} stands a joint of an article: {reason}", made_up_in=MADE_UP_IN, reason=fault)
        )
    if len(words) != 4:
        raise ValueError("write thread standard, size, gender and path, such as: NPT 3/4 male single")
    thread = _one_of(words[0], ThreadStandard, "the thread standard")
    size = read_size(words[1], thread)
    path = _one_of(words[3], FlowPath, "the path")
    if path is not path_of_thread(thread):
        raise ValueError(
            Worded(
                "a {thread} thread carries the path {path_of_thread}",
                thread=thread,
                path_of_thread=path_of_thread(thread),
            )
        )
    gender = _one_of(words[2], Gender, "the gender")
    return Port(thread=thread, size=size, gender=gender, path=path, made_up_in=article.strip())


def _no_word_twice(words: tuple[_Choice, ...]) -> tuple[_Choice, ...]:
    if len(set(words)) != len(words):
        raise ValueError("name each word once")
    return words


YesNo = Annotated[bool, BeforeValidator(_yes_or_no)]
PortCell = Annotated[Port, BeforeValidator(port_from)]
Name = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=120)]
MakerPrefix = Annotated[str, StringConstraints(pattern=r"^[A-Z]{2}$")]
PartNumber = Annotated[str, StringConstraints(pattern=r"^[A-Z]{2}-[A-Z][0-9]{3,6}$")]
PriceCell = Annotated[Decimal, Field(ge=0, le=100_000, decimal_places=2)]


def words_cell(choices: type[StrEnum], least: int) -> object:
    """Return the type of a cell that holds several words of ``choices``, each once, at least ``least`` of them."""
    return Annotated[
        tuple[choices, ...],  # type: ignore[valid-type]  # known only when the tables are declared
        BeforeValidator(_words),
        AfterValidator(_no_word_twice),
        Field(min_length=least),
    ]
