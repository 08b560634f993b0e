"""The language of the window: Qt's translators, put in at start and exchanged at run time."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QTranslator

from spoutline import assets
from spoutline.bootstrap.phrase_tables import refusals_in
from spoutline.gui.wording import REFUSING
from spoutline.model.language import Language


class WindowLanguage:
    """Holds the translators of one language: the program's own texts, and those of Qt's dialogs.

    A text that has no translation, and all of English, stays as it is written in the code.
    """

    def __init__(self) -> None:
        self._installed: list[QTranslator] = []

    def use(self, language: Language) -> None:
        """Translate what is built from here on; what is on the screen already stays as it is."""
        REFUSING.words = refusals_in(language)
        for translator in self._installed:
            QCoreApplication.removeTranslator(translator)
        self._installed.clear()
        own = str(assets.resources_folder() / "translations" / f"window_{language}.qm")
        qt = f"{QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)}/qtbase_{language}.qm"
        for file in (qt, own):
            translator = QTranslator()
            if language is not Language.ENGLISH and translator.load(file):
                QCoreApplication.installTranslator(translator)
                self._installed.append(translator)
