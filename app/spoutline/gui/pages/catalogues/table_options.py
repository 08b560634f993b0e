"""What is said of a supplier's table as a whole: sheet, encoding, decimal sign, maker, supplier, kind, currency."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QComboBox, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.explain.plan.story import Story
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.wording import tr
from spoutline.model.part import PartKind
from spoutline.planning.table_intake.column_map import CURRENCIES
from spoutline.planning.table_intake.raw_table import TextEncoding
from spoutline.planning.table_intake.table_look import TableFile


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

    def __init__(self, story: Story, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(self._file_row())
        column.addLayout(self._said_row(story))

    def _file_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.choose_button = QPushButton(tr("Choose a &file…"), self)
        self.choose_button.clicked.connect(lambda _=False: self.file_wanted.emit())
        self.file_label = plain_label(tr("CSV or XLSX, as the supplier sends it"), "quiet")
        self.file_label.setMinimumWidth(120)  # else a long name would widen the window
        self.sheet_box = QComboBox(self)
        self.sheet_box.setAccessibleName(tr("Sheet"))
        self.sheet_box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.sheet_box.activated.connect(lambda _: self._tell_reading())
        self.encoding_box = QComboBox(self)
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
        self.kind_box = QComboBox(self)
        self.kind_box.setAccessibleName(tr("Kind of rows that name none"))
        self.kind_box.addItem(tr("Kind: as the rows say"), "")
        for kind in PartKind:
            self.kind_box.addItem(story.title(kind), kind.value)
        self.kind_box.activated.connect(lambda _: self.said.emit("kind", self.kind_box.currentData() or None))
        self.currency_box = QComboBox(self)
        self.currency_box.setAccessibleName(tr("Currency of prices that name none"))
        self.currency_box.addItem(tr("Currency: as the table says"), "")
        for currency in CURRENCIES:
            self.currency_box.addItem(currency, currency)
        self.currency_box.activated.connect(lambda _: self.said.emit("currency", self.currency_box.currentData()))
        for box in (self.kind_box, self.currency_box):
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            box.setMinimumContentsLength(21)
        row.addWidget(self.maker_edit, 1)
        row.addWidget(self.supplier_edit, 1)
        row.addWidget(self.kind_box)
        row.addWidget(self.currency_box)
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
