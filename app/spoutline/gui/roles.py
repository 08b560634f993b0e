"""Item roles and tones that models set and widgets paint."""

from __future__ import annotations

from enum import IntEnum, StrEnum

from PySide6.QtCore import Qt

from spoutline.frozen import frozen


class Role(IntEnum):
    """Item roles besides Qt's own."""

    RECORD = Qt.ItemDataRole.UserRole + 1  # the value behind the row
    SORT = Qt.ItemDataRole.UserRole + 2  # something comparable
    SPANS = Qt.ItemDataRole.UserRole + 4  # true where the first cell takes the whole row
    CHOICES = Qt.ItemDataRole.UserRole + 5  # the words that a cell may hold, where only they may
    LEADS = Qt.ItemDataRole.UserRole + 6  # true where the text begins with what tells the row from its neighbours
    POSITIONS = Qt.ItemDataRole.UserRole + 7  # labels of the positions that the cell names and leads to
    TONE = Qt.ItemDataRole.UserRole + 3  # a Tone, shown as a mark of its own shape


class Tone(StrEnum):
    """What a mark says. Each tone has its own shape and its own colour."""

    GOOD = "good"
    CAUTION = "caution"
    BAD = "bad"
    QUESTION = "question"
    NOTE = "note"
    WORKING = "working"
    OPEN = "open"  # nobody surveyed it yet


@frozen
class Standing:
    """Where a place stands: a mark, and the same in a word or two."""

    tone: Tone
    words: str
