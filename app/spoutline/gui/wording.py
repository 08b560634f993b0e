"""Text of the window on its way through Qt's translation."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication


def tr(text: str) -> str:
    """Return ``text`` in the language of the window; the English text where no translation is loaded."""
    return QCoreApplication.translate("window", text)
