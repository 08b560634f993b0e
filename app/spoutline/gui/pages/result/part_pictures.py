"""The pictures of the part in hand, and its documents to open."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QImage, QPixmap
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QWidget

from spoutline.gui.dialogs.part_files import matter_words
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.pages.context import Context
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.file_open import open_copy
from spoutline.model.part_file import PartFile
from spoutline.model.part_ref import PartRef

_KEY = JobKey(JobKind.CATALOGUE, "files of the part in hand")
_SIZE = QSize(220, 150)
_Found = tuple[tuple[PartFile, QImage | None], ...]


class PartPictures(QWidget):
    """Shows what the catalogue keeps with a part; asked for off the window's thread, hidden where there is nothing."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self._shown: PartRef | None = None
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self.pictures: list[QLabel] = []
        self.buttons: list[QPushButton] = []
        self.hide()

    def forget(self) -> None:
        """Show nothing."""
        self._shown = None
        self._context.jobs.cancel(_KEY)
        self._clear()

    def show_part(self, part: PartRef) -> None:
        """Ask for the files of a part and show them when they are there."""
        session = self._context.session
        service, survey = session.workbench.catalogues().files(), session.survey
        self._shown = part
        self._clear()

        def work(_: Ticket) -> _Found:
            found = service.shown(survey, part)
            return tuple((one.file, None if one.content is None else _small(one.content)) for one in found)

        self._context.jobs.start(_KEY, work, partial(self._show, part), lambda _: self._clear())

    def _show(self, part: PartRef, found: _Found) -> None:
        if part != self._shown:
            return
        self._clear()
        for file, image in found:
            if image is None:
                self._add_button(file)
            elif not image.isNull():
                self._add_picture(file, image)
        self._row.addStretch(1)
        self.setVisible(bool(found))

    def _add_picture(self, file: PartFile, image: QImage) -> None:
        label = QLabel(self)
        label.setPixmap(QPixmap.fromImage(image))
        label.setToolTip(file.title)
        label.setAccessibleName(file.title)
        self._row.addWidget(label)
        self.pictures.append(label)

    def _add_button(self, file: PartFile) -> None:
        button = QPushButton(f"{file.title.replace('&', '&&')} ({matter_words(file.matter)})", self)
        button.clicked.connect(lambda _=False: self._open(file))
        self._row.addWidget(button)
        self.buttons.append(button)

    def _open(self, file: PartFile) -> None:
        service = self._context.session.workbench.catalogues().files()
        content = wait_for(lambda: service.content(file))
        if content is not None:
            open_copy(file, content)

    def _clear(self) -> None:
        self.pictures, self.buttons = [], []
        while (item := self._row.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.deleteLater()
        self.hide()


def _small(content: bytes) -> QImage:
    image = QImage.fromData(content)
    if image.isNull():
        return image
    mode = Qt.AspectRatioMode.KeepAspectRatio, Qt.TransformationMode.SmoothTransformation
    return image.scaled(_SIZE, *mode)
