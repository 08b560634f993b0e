"""What is said of a supplier's table as a whole: sheet, encoding, decimal sign, maker, supplier, kind, currency."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.explain.plan.story import Story
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.roomy_scroll import ElidedLabel
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.part import PartKind
from spoutline.planning.table_intake.column_map import CURRENCIES
from spoutline.planning.table_intake.intake_fields import TableSubject, fields_of
from spoutline.planning.table_intake.raw_table import TextEncoding
from spoutline.planning.table_intake.table_look import TableFile
from spoutline.units.accepted import UnitSystem


class TableOptions(QWidget):
    """Two rows of fields.

    Signals
    -------
    file_wanted()
        A person wants to choose a file.
    reading_said(str, str)
        The file is to be read otherwise: its sheet and its encoding.
    said(str, object)
        Something was said of the table, by its name in a map.
    """

    file_wanted = Signal()
    reading_said = Signal(str, str)
    said = Signal(str, object)

    def __init__(self, story: Story, subject: TableSubject, file_hint: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._file_hint = file_hint
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(self._file_row())
        column.addLayout(self._said_row(story))
        self._show_for(subject)

    def _show_for(self, subject: TableSubject) -> None:
        """Show what can be said of a table of this subject."""
        is_parts, has_maker = subject is TableSubject.PARTS, fields_of(subject).has_maker
        for widget, is_shown in (
            (self.maker_edit, has_maker),
            (self.supplier_edit, has_maker),
            (self.kind_box, is_parts),
            (self.currency_box, is_parts),
            (self.units_box, not has_maker),
        ):
            widget.setVisible(is_shown)

    def _file_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.choose_button = QPushButton(tr("Choose &a file…"), self)
        self.choose_button.clicked.connect(lambda _=False: self.file_wanted.emit())
        self.file_label = ElidedLabel(self._file_hint, self)
        self.file_label.setTextFormat(Qt.TextFormat.PlainText)
        self.file_label.setObjectName("quiet")
        self.file_label.setMinimumWidth(120)  # else a long name would widen the window
        self.sheet_box = StillBox(self)
        self.sheet_box.setAccessibleName(tr("Sheet"))
        self.sheet_box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.sheet_box.activated.connect(lambda _: self._tell_reading())
        self.encoding_box = StillBox(self)
        self.encoding_box.setAccessibleName(tr("Encoding of a text file"))
        for encoding in TextEncoding:
            words = tr("Encoding: as found") if encoding is TextEncoding.AUTOMATIC else encoding.value
            self.encoding_box.addItem(words, encoding.value)
        self.encoding_box.activated.connect(lambda _: self._tell_reading())
        self.comma_box = QCheckBox(tr("A comma is the decimal sign"), self)
        self.comma_box.clicked.connect(lambda on: self.said.emit("decimal_comma", on))
        row.addWidget(self.choose_button)
        row.addWidget(self.file_label, 1)
        for widget in (self.sheet_box, self.encoding_box, self.comma_box):
            row.addWidget(widget)
        return row

    def _said_row(self, story: Story) -> QHBoxLayout:
        row = QHBoxLayout()
        self.maker_edit = self._line("maker", tr("Maker of rows that name none"))
        self.supplier_edit = self._line("supplier", tr("Who supplies the parts"))
        self.kind_box = StillBox(self)
        self.kind_box.setAccessibleName(tr("Kind of rows that name none"))
        self.kind_box.addItem(tr("Kind: as the rows say"), "")
        for kind in PartKind:
            self.kind_box.addItem(story.title(kind), kind.value)
        self.kind_box.activated.connect(lambda _: self.said.emit("kind", self.kind_box.currentData() or None))
        self.currency_box = StillBox(self)
        self.currency_box.setAccessibleName(tr("Currency of prices that name none"))
        self.currency_box.addItem(tr("Currency: as the table says"), "")
        for currency in CURRENCIES:
            self.currency_box.addItem(currency, currency)
        self.currency_box.activated.connect(lambda _: self.said.emit("currency", self.currency_box.currentData()))
        self.units_box = StillBox(self)
        self.units_box.setAccessibleName(tr("Units of numbers that name none"))
        self.units_box.addItem(tr("Units: as the titles say"), None)
        for system, words in ((UnitSystem.SI, tr("Units: SI")), (UnitSystem.US, tr("Units: US"))):
            self.units_box.addItem(words, system)
        self.units_box.activated.connect(lambda _: self.said.emit("units", self.units_box.currentData()))
        for box in (self.kind_box, self.currency_box, self.units_box):
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            box.setMinimumContentsLength(21)
        row.addWidget(self.maker_edit, 1)
        row.addWidget(self.supplier_edit, 1)
        row.addWidget(self.kind_box)
        row.addWidget(self.currency_box)
        row.addWidget(self.units_box)
        row.addStretch(0)
        return row

    def _line(self, name: str, words: str) -> LineEditor:
        line = LineEditor(self)
        line.setPlaceholderText(words)
        line.setAccessibleName(words)
        line.setToolTip(words)
        line.setMaxLength(120)
        line.editingFinished.connect(partial(self._tell_line, name, line))
        return line

    def _tell_line(self, name: str, line: LineEditor) -> None:
        self.said.emit(name, line.text().strip())

    def _tell_reading(self) -> None:
        self.reading_said.emit(str(self.sheet_box.currentData() or ""), str(self.encoding_box.currentData()))

    def show_file(self, file: TableFile) -> None:
        """Show another file with its sheets."""
        self.file_label.setText(file.path.name)
        self.file_label.setToolTip(str(file.path))
        self.sheet_box.clear()
        for sheet in file.sheets:
            hidden = f"  {tr('(hidden)')}" if sheet.is_hidden else ""
            self.sheet_box.addItem(f"{sheet.name or tr('(one table)')}{hidden}", sheet.name)
        self.sheet_box.setEnabled(len(file.sheets) > 1)
        self.encoding_box.setEnabled(file.path.suffix.lower() != ".xlsx")

    def show_no_file(self) -> None:
        """Say that the rows in hand are no file that could be read otherwise."""
        for widget in (self.sheet_box, self.encoding_box):
            widget.setEnabled(False)

    def show_said(self, file: TableFile) -> None:
        """Show what is said of the table in hand."""
        if file.opened is None:
            return
        table_map = file.opened.table_map
        self.sheet_box.setCurrentIndex(max(0, self.sheet_box.findData(file.opened.table.sheet.name)))
        self.encoding_box.setCurrentIndex(self.encoding_box.findData(table_map.encoding.value))
        self.comma_box.setChecked(table_map.decimal_comma)
        self.maker_edit.show_text(table_map.maker)
        self.supplier_edit.show_text(table_map.supplier)
        self.kind_box.setCurrentIndex(max(0, self.kind_box.findData(table_map.kind.value if table_map.kind else "")))
        self.currency_box.setCurrentIndex(max(0, self.currency_box.findData(table_map.currency)))
        self.units_box.setCurrentIndex(max(0, self.units_box.findData(table_map.units)))
