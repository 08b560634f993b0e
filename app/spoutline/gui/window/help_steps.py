"""The manual, the words of the trade, the keys and the tour: where a person finds help."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from spoutline.gui.help_place import topic_of
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.gui.wording import tr

if TYPE_CHECKING:
    from spoutline.bootstrap.manual import Manual
    from spoutline.gui.models.command_search import Found


class HelpSteps:
    """Opens what explains the program, over the window or a dialog."""

    def __init__(self, window: MainWindow, workplace: Workplace) -> None:
        self._window, self._workplace = window, workplace

    def show_help(self) -> None:
        """Open the page of the manual that fits what has the keyboard."""
        self.open_help(topic_of(self._window.focusWidget(), self._workplace.place), self._window)

    def open_help(self, topic: str, over: QWidget) -> None:
        """Open a page of the manual over a window, in the help that is open there already or in a new one."""
        from spoutline.gui.dialogs.help_window import HelpWindow

        found = over.findChild(HelpWindow, options=Qt.FindChildOption.FindDirectChildrenOnly)
        help_window = found if found is not None else HelpWindow(self._manual(), self._workplace.context.story, over)
        help_window.show_topic(topic)
        help_window.show()
        help_window.raise_()
        help_window.activateWindow()

    def help_found(self) -> tuple[Found, ...]:
        """Return the pages of help and the words of the trade as the one search offers them."""
        from spoutline.gui.models.command_search import Found, FoundKind

        manual = self._manual()

        def opener(topic: str) -> Callable[[], object]:
            return lambda: self.open_help(topic, self._window)

        pages = [
            Found(kind=FoundKind.HELP, title=one.title, told=tr("Page of help"), go=opener(one.name))
            for one in manual.topics
        ]
        terms = [
            Found(kind=FoundKind.HELP, title=one.word, told=one.meaning, go=opener("glossary")) for one in manual.terms
        ]
        return (*pages, *terms)

    def show_keys(self) -> None:
        """List all commands with their keys."""
        from spoutline.gui.dialogs.keys import KeysDialog

        KeysDialog(self._window).exec()

    def show_about(self) -> None:
        """Say what the program is for and what it leaves to others."""
        import spoutline
        from spoutline.gui.dialogs.keys import AboutDialog

        advice = self._workplace.context.story.phrases.text["advice"]
        AboutDialog(spoutline.__version__, advice, self._window).exec()

    def show_tour(self) -> None:
        """Show in pictures how each of three people works here."""
        from spoutline.gui.dialogs.tour import TourDialog

        TourDialog(self._window).exec()

    def _manual(self) -> Manual:
        session = self._workplace.session
        return session.workbench.manual(session.display, session.survey.site.jurisdiction)
