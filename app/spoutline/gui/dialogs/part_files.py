"""Pictures and documents of one part of a draft: shown, added by button or by dropping files, taken away, opened."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QIcon, QImage, QPixmap
from PySide6.QtWidgets import (
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QWidget,
)

from spoutline.bootstrap.catalogues import CatalogueService
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.file_open import open_copy
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.part_file import TITLE_LENGTH, FileMatter, PartFile
from spoutline.model.part_ref import PartRef

_ICON = QSize(96, 72)


def matter_words(matter: FileMatter) -> str:
    """Return what a file is, in the language of the window."""
    return {
        FileMatter.PICTURE: tr("picture"),
        FileMatter.INSTRUCTIONS: tr("instructions"),
        FileMatter.DATA_SHEET: tr("data sheet"),
        FileMatter.CERTIFICATE: tr("listing certificate"),
    }[matter]


class PartFilesDialog(FormDialog):
    """Keeps the files of one part; ``has_changed`` says whether the draft did. Without a draft it only shows them."""

    help_topic = "catalog"

    def __init__(
        self, service: CatalogueService, ref: EditionRef, part: PartRef, parent: QWidget | None = None
    ) -> None:
        super().__init__(tr("Pictures and documents of {0}").format(part), parent)
        self._service, self._ref, self._part = service, ref, part
        self.has_changed = False
        self.files: tuple[PartFile, ...] = ()
        words = tr("Pictures (PNG, JPEG) and documents (PDF) are checked and kept with the part; files may be dropped.")
        self.body.addWidget(plain_label(words, "quiet", wraps=True))
        self.list = QListWidget(self)
        self.list.setAccessibleName(tr("Files of the part"))
        self.list.setIconSize(_ICON)
        self.list.currentRowChanged.connect(lambda _: self._enable())
        self.list.itemActivated.connect(lambda _: self.open_file())
        self.body.addWidget(self.list, 1)
        self.body.addLayout(self._fields())
        row = QHBoxLayout()
        self.add_button = self._button(tr("&Add a file…"), self.choose_file)
        self.open_button = self._button(tr("&Open"), self.open_file)
        self.out_button = self._button(tr("&Take away"), self.take_away)
        for button in (self.add_button, self.open_button, self.out_button):
            row.addWidget(button)
        row.addStretch(1)
        self.body.addLayout(row)
        self.add_close()
        self.setAcceptDrops(ref.is_draft)
        self.resize(640, 520)
        self._show(wait_for(lambda: service.shelf().entry(ref, part)))

    def _fields(self) -> QFormLayout:
        form = QFormLayout()
        self.title_edit = QLineEdit(self)
        self.title_edit.setAccessibleName(tr("Title of the next file"))
        self.title_edit.setPlaceholderText(tr("the name of the file"))
        self.title_edit.setMaxLength(TITLE_LENGTH)
        form.addRow(tr("Title of the next file"), self.title_edit)
        self.matter_box = StillBox(self)
        self.matter_box.setAccessibleName(tr("It is"))
        self.matter_box.addItem(tr("what its kind says"), None)
        for matter in FileMatter:
            self.matter_box.addItem(matter_words(matter), matter)
        form.addRow(tr("It is"), self.matter_box)
        for field in (self.title_edit, self.matter_box):
            field.setEnabled(self._ref.is_draft)
        return form

    def _button(self, words: str, act: object) -> QPushButton:
        button = QPushButton(words, self)
        button.setAutoDefault(False)
        button.clicked.connect(act)
        return button

    def _show(self, entry: CatalogueEntry | None) -> None:
        self.files = () if entry is None else entry.files
        self.list.clear()
        for file in self.files:
            item = QListWidgetItem(f"{file.title}\n{matter_words(file.matter)}")
            if file.is_picture:
                item.setIcon(self._icon(file))
            self.list.addItem(item)
        self.list.setCurrentRow(len(self.files) - 1)
        self._enable()

    def _icon(self, file: PartFile) -> QIcon:
        def small() -> QImage:
            content = self._service.files().content(file)
            image = QImage() if content is None else QImage.fromData(content)
            return image if image.isNull() else image.scaled(_ICON, Qt.AspectRatioMode.KeepAspectRatio)

        return QIcon(QPixmap.fromImage(wait_for(small)))

    def _enable(self) -> None:
        chosen = 0 <= self.list.currentRow() < len(self.files)
        self.add_button.setEnabled(self._ref.is_draft)
        self.open_button.setEnabled(chosen)
        self.out_button.setEnabled(chosen and self._ref.is_draft)

    def choose_file(self) -> None:
        """Ask for a file and keep it with the part."""
        ask = tr("Picture or document of the part")
        path, _ = QFileDialog.getOpenFileName(self, ask, "", "PNG, JPEG, PDF (*.png *.jpg *.jpeg *.pdf)")
        if path:
            self.add(Path(path))

    def add(self, path: Path) -> None:
        """Keep a file with the part; what cannot be kept is told."""
        title, matter = self.title_edit.text(), self.matter_box.currentData()
        meant = None if matter is None else FileMatter(matter)
        try:
            done = wait_for(
                lambda: self._service.files().attach(self._ref.catalogue, self._part, path, title=title, matter=meant)
            )
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self._done(done.after)
        self.title_edit.clear()

    def take_away(self) -> None:
        """Take the marked file from the part."""
        title = self.files[self.list.currentRow()].title
        try:
            done = wait_for(lambda: self._service.files().detach(self._ref.catalogue, self._part, title))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self._done(done.after)

    def _done(self, after: CatalogueEntry | None) -> None:
        self.show_fault("")
        self.has_changed = True
        self._show(after)

    def open_file(self) -> None:
        """Let the desktop open a copy of the marked file."""
        file = self.files[self.list.currentRow()]
        content = wait_for(lambda: self._service.files().content(file))
        if content is None:
            self.show_fault(tr("The book has not the content of this file."))
            return
        open_copy(file, content)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Qt: take files."""
        if event.mimeData().hasUrls():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Qt: keep the files that were dropped, one after the other."""
        event.acceptProposedAction()
        for url in event.mimeData().urls():
            if url.isLocalFile():
                self.add(Path(url.toLocalFile()))
