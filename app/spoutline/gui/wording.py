"""Text of the window on its way into its language: the window's own through Qt, refusals through their tables."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QCoreApplication

from spoutline.explain.phrases.refusal_words import ENGLISH_REFUSALS, RefusalWords


def tr(text: str) -> str:
    """Return ``text`` in the language of the window; the English text where no translation is loaded."""
    return QCoreApplication.translate("window", text)


class Refusing:
    """In which words the window refuses; exchanged with its language."""

    def __init__(self) -> None:
        self.words: RefusalWords = ENGLISH_REFUSALS


REFUSING: Final = Refusing()


def told(text: str) -> str:
    """Return what a fault says in the language of the window; a text of the window itself as it is."""
    return REFUSING.words.told(text)
