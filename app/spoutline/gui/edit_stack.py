"""The stack of the edits of a survey or a form, which goes before what stands around it."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtGui import QUndoStack
from shiboken6 import isValid


class EditStack(QUndoStack):
    """Holds edits and deletes them, each once, whoever goes first: they, the stack or its owner.

    Python's collector clears the objects of a cycle in any order. A command that went before its stack would be deleted
    by Qt once more with the stack, and so would one whose going takes the owner of the stack along: commands hold that
    weakly.
    """

    def __init__(self, owner: QObject) -> None:
        super().__init__(owner)
        self._last_will = _LastWill(self)


class _LastWill:
    """Empties a stack as soon as the collector has found it, before it clears anything.

    It asks only objects of Python's own for their last will so early, and none of Qt's.
    """

    _is_there = staticmethod(isValid)  # modules may be gone where the program ends

    def __init__(self, stack: EditStack) -> None:
        self._stack = stack

    def __del__(self) -> None:
        """Empty the stack, and tell nobody: whoever listened goes as well."""
        if self._is_there(self._stack):
            self._stack.blockSignals(True)
            self._stack.clear()
