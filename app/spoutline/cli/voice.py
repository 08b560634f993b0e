"""The language in which a command answers, refuses and notes; set once it is known, English before."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from typing import Final

from spoutline.explain.phrases.refusal_words import ENGLISH_REFUSALS, RefusalWords
from spoutline.model.worded import Worded

Words = Callable[[], RefusalWords]  # read when something is refused, so that a command that works reads none
_WORDS: Final[ContextVar[Words]] = ContextVar("refusal words", default=lambda: ENGLISH_REFUSALS)


@contextmanager
def refusing_in(words: Words) -> Iterator[None]:
    """Refuse in these words meanwhile."""
    before = _WORDS.set(words)
    try:
        yield
    finally:
        _WORDS.reset(before)


def words() -> RefusalWords:
    """Return the words of this command."""
    return _WORDS.get()()


def told(text: str) -> str:
    """Return a text in the language of this command."""
    return words().told(text)


def said(template: str, /, **figures: object) -> str:
    """Return a line of an answer, its figures filled in, in the language of this command."""
    return told(Worded(template, **figures))


def counted(none: str, one: str, several: str, /, count: int, **figures: object) -> str:
    """Return the line for so many, told as ``said`` tells; each of the three may name ``count``."""
    return said(none if not count else one if count == 1 else several, count=count, **figures)
