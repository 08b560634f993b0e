"""A field for the file of a picture: its name, a button to pick one, and the picture as it will look."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QImageReader, QPixmap
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QLabel, QPushButton, QWidget

from spoutline.gui.widgets.answer_field import AnswerField
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.wording import tr

_PREVIEW = QSize(170, 64)
_FILES = "PNG, JPEG (*.png *.jpg *.jpeg)"
_FORMATS = ("png", "jpeg", "jpg")


class PictureField(AnswerField):
    """The name of a picture file. ``find`` leads from a name to the file, ``name_of`` from a picked file to a name."""

    def __init__(
        self,
        title: str,
        help_text: str,
        find: Callable[[str], Path | None],
        name_of: Callable[[Path], str],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(title, help_text, "", parent)
        self._find, self._name_of = find, name_of
        body = QWidget(self)
        row = QHBoxLayout(body)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(8)
        self.editor = LineEditor(body)
        self.editor.setPlaceholderText(tr("empty: no picture"))
        self.editor.editingFinished.connect(self._finished)
        self.pick_button = QPushButton(tr("Pick a &file…"), body)
        self.pick_button.setAutoDefault(False)
        self.pick_button.clicked.connect(self._ask)
        self.preview = QLabel(body)
        self.preview.setObjectName("quiet")
        self.preview.setFixedSize(_PREVIEW)
        self.preview.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.preview.setWordWrap(True)
        self.preview.setTextFormat(Qt.TextFormat.PlainText)
        row.addWidget(self.editor, 1)
        row.addWidget(self.pick_button)
        row.addWidget(self.preview)
        self._finish_layout(body)

    def pick(self, path: Path) -> None:
        """Take a picture file."""
        self.given.emit(self._name_of(path))

    def show_preview(self) -> None:
        """Show the picture that the present name leads to, or say why there is none."""
        name = self.editor.text().strip()
        path = self._find(name)
        self.preview.setPixmap(QPixmap())
        self.preview.setVisible(bool(name))
        if not name:
            self.preview.setText("")
        elif path is None:
            self.preview.setText(tr("There is no such file here."))
        else:
            self._show_file(path)
        self.preview.setAccessibleName(self.preview.text() or tr("Picture of the letterhead"))

    def _show_file(self, path: Path) -> None:
        reader = QImageReader(str(path))
        reader.setDecideFormatFromContent(True)
        size = reader.size()
        if bytes(reader.format().data()).decode("ascii", "replace") not in _FORMATS or not size.isValid():
            self.preview.setText(tr("This is no PNG or JPEG picture."))
            return
        reader.setScaledSize(size.scaled(_PREVIEW, Qt.AspectRatioMode.KeepAspectRatio))
        image = reader.read()
        if image.isNull():
            self.preview.setText(tr("This picture cannot be read."))
        else:
            self.preview.setPixmap(QPixmap.fromImage(image))

    def _ask(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, tr("Picture of the letterhead"), "", _FILES)
        if path:
            self.pick(Path(path))

    def _finished(self) -> None:
        if self.editor.text() != self._shown or self.fault:
            self.given.emit(self.editor.text())

    def _editor(self) -> QWidget:
        return self.editor

    def _set_editor(self, text: str) -> None:
        self.editor.show_text(text)
        self.show_preview()
