"""The colours of the program: as chosen, and as the desktop is set, whenever either changes."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication

from spoutline.bootstrap.preferences import Preference, keep_preference, preference
from spoutline.gui.widgets.theme import ThemeChoice, dress


class ThemeKeeper(QObject):
    """Dresses the application, and dresses it anew when the desktop turns dark, light or to high contrast."""

    def __init__(self, app: QApplication) -> None:
        super().__init__(app)
        self._app = app
        kept = preference(Preference.THEME)
        self.choice = ThemeChoice(kept) if kept in tuple(ThemeChoice) else ThemeChoice.DESKTOP
        hints = app.styleHints()
        hints.colorSchemeChanged.connect(lambda _: self.dress())
        if hasattr(hints, "accessibility"):  # from Qt 6.10 on
            hints.accessibility().contrastPreferenceChanged.connect(lambda _: self.dress())
        self.dress()

    def dress(self) -> None:
        """Put the colours of the choice on."""
        dress(self._app, self.choice)

    def use(self, choice: ThemeChoice) -> None:
        """Put other colours on and keep them; raise ``StoreFault`` where they cannot be kept."""
        self.choice = choice
        self.dress()
        keep_preference(Preference.THEME, choice.value)
