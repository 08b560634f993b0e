"""The language in which a command refuses and notes; set once it is known, English before."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from typing import Final

from spoutline.explain.phrases.refusal_words import ENGLISH_REFUSALS, RefusalWords

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
