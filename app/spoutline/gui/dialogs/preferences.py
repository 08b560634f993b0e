"""What a person prefers, in one place: language, units, theme, first view, catalog, local rules, data, backups."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import QComboBox, QFileDialog, QFormLayout, QHBoxLayout, QLabel, QPushButton, QWidget

from spoutline.bootstrap.preferences import OpenWith
from spoutline.frozen import frozen
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.languages import LANGUAGE_NAMES
from spoutline.gui.local_days import moment_text
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.widgets.theme import ThemeChoice, theme_words
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.language import Language
from spoutline.units.accepted import UnitSystem

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench


@frozen(kw_only=True)
class Preferred:
    """What is preferred. An empty jurisdiction means the usual one."""

    language: Language
    units: UnitSystem
    theme: ThemeChoice
    open_with: OpenWith
    catalogue: str
    jurisdiction: str


class PreferencesDialog(FormDialog):
    """Asks for all of it; ``preferred`` is what a person wants once it is accepted.

    ``keep_data_in`` takes another data folder and says whether it held a book already.
    """

    help_topic = "languages_and_units"

    def __init__(
        self,
        workbench: Workbench,
        now: Preferred,
        keep_data_in: Callable[[Path], bool],
        show_backups: Callable[[], object],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(tr("Preferences"), parent)
        self._workbench, self._keep_data_in, self._before = workbench, keep_data_in, now
        self._form = QFormLayout()
        self._form.setVerticalSpacing(10)
        self.body.addLayout(self._form)
        self.language_box = self._choice(
            tr("&Language"), [(name, one) for one, name in LANGUAGE_NAMES.items()], now.language
        )
        units = [(tr("Metric units"), UnitSystem.SI), (tr("US units"), UnitSystem.US)]
        self.units_box = self._choice(tr("U&nits"), units, now.units)
        self.theme_box = self._choice(tr("&Theme"), [(theme_words(one), one) for one in ThemeChoice], now.theme)
        self.opening_box = self._choice(tr("&Open with"), _openings(), now.open_with)
        self.catalogue_box = self._choice(tr("&Catalog the book plans with"), self._catalogues(), now.catalogue)
        self.jurisdiction_box = self._choice(tr("Local &rules of new surveys"), self._jurisdictions(), now.jurisdiction)
        self.folder_label = self._place()
        self.backup_label = self._backups(show_backups)
        self.body.addStretch(1)
        self.add_buttons(tr("&Use these"))
        self.resize(620, 420)

    @property
    def preferred(self) -> Preferred:
        """What is chosen."""
        return Preferred(
            language=Language(self.language_box.currentData()),
            units=UnitSystem(self.units_box.currentData()),
            theme=ThemeChoice(self.theme_box.currentData()),
            open_with=OpenWith(self.opening_box.currentData()),
            catalogue=str(self.catalogue_box.currentData()),
            jurisdiction=str(self.jurisdiction_box.currentData()),
        )

    def use_folder(self, folder: Path) -> None:
        """Take another data folder from the next start on, and say what that means."""
        try:
            held = wait_for(lambda: self._keep_data_in(folder))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.show_fault("")
        words = (
            tr("From the next start on the book in {0} is used; it was there already.")
            if held
            else tr("Copied. From the next start on the book in {0} is used; what lies in the folder of today stays.")
        )
        self.folder_label.setText(words.format(folder))

    def _choice(self, words: str, choices: Sequence[tuple[str, object]], now: object) -> QComboBox:
        box = StillBox(self)
        box.setAccessibleName(words.replace("&", ""))
        for title, value in choices:
            box.addItem(title, value)
        place = next((place for place, (_, value) in enumerate(choices) if value == now), 0)
        box.setCurrentIndex(place)
        box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(24)
        label = QLabel(words, self)
        label.setBuddy(box)
        self._form.addRow(label, box)
        return box

    def _catalogues(self) -> list[tuple[str, object]]:
        try:
            names = [one.name for one in wait_for(lambda: self._workbench.catalogues().all()) if one.newest is not None]
        except StoreFault as fault:
            self.show_fault(str(fault))
            names = []
        wanted = [*names, *([self._before.catalogue] if self._before.catalogue not in names else [])]
        return [(name, name) for name in wanted]

    def _jurisdictions(self) -> list[tuple[str, object]]:
        try:
            found = wait_for(lambda: self._workbench.jurisdictions().all())
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            found = ()
        return [(tr("the usual ones"), ""), *((one.title, one.id) for one in found)]

    def _place(self) -> QLabel:
        label = plain_label(self._folder_words(), "quiet", wraps=True)
        row = QHBoxLayout()
        show, other = QPushButton(tr("&Show it"), self), QPushButton(tr("Use &another folder…"), self)
        show.clicked.connect(lambda _=False: self._show_folder())
        other.clicked.connect(lambda _=False: self._ask_folder())
        for button in (show, other):
            button.setAutoDefault(False)
            row.addWidget(button)
        row.addStretch(1)
        self._form.addRow(tr("Data folder"), label)
        self._form.addRow("", row)
        return label

    def _folder_words(self) -> str:
        keeping = self._workbench.keeping()
        try:
            return tr("The book lies on a server.") if keeping.is_on_server else str(keeping.book_file())
        except (InputFault, StoreFault) as fault:
            return str(fault)

    def _show_folder(self) -> None:
        keeping = self._workbench.keeping()
        if not keeping.is_on_server:
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(keeping.book_file().parent)))

    def _ask_folder(self) -> None:
        folder = QFileDialog.getExistingDirectory(self, tr("Folder for surveys, quotations, catalogs and rules"))
        if folder:
            self.use_folder(Path(folder))

    def _backups(self, show_backups: Callable[[], object]) -> QLabel:
        label = plain_label(self._backup_words(), "quiet", wraps=True)
        button = QPushButton(tr("&Backups…"), self)
        button.setAutoDefault(False)

        def show() -> None:
            show_backups()
            label.setText(self._backup_words())

        button.clicked.connect(lambda _=False: show())
        row = QHBoxLayout()
        row.addWidget(button)
        row.addStretch(1)
        self._form.addRow(tr("Backups"), label)
        self._form.addRow("", row)
        return label

    def _backup_words(self) -> str:
        keeping = self._workbench.keeping()
        try:
            if keeping.is_on_server:
                return tr("The backups of a server are made by whoever keeps it.")
            kept = wait_for(keeping.backups)
        except (InputFault, StoreFault) as fault:
            return str(fault)
        if not kept:
            return tr("None yet; one is made each day.")
        return tr("One is made each day. The last is of {0}; {1} are kept.").format(
            moment_text(kept[0].made_at), len(kept)
        )


def _openings() -> list[tuple[str, OpenWith]]:
    return [
        (tr("the survey that was open last"), OpenWith.LAST_SURVEY),
        (tr("the start view"), OpenWith.START_VIEW),
    ]
