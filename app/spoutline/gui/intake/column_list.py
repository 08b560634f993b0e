"""What each column of a supplier's table holds: suggested, and changed by a person."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QGridLayout, QScrollArea, QWidget

from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.planning.table_intake.column_map import MappedColumn, measures
from spoutline.planning.table_intake.intake_fields import TableSubject, fields_of
from spoutline.planning.table_intake.raw_table import column_letters

_MOST_WIDTH = 440  # the rows of the table need room beside it
_TITLE_ROOM = 18  # characters of a title; the whole one is its hint


class ColumnList(QScrollArea):
    """A line for each column: its title, what it holds, and the unit or currency of numbers that name none.

    Signals
    -------
    held(int, str, str)
        A person said what the column at a place holds (empty: nothing), and in which unit or currency.
    """

    held = Signal(int, str, str)

    def __init__(self, subject: TableSubject = TableSubject.PARTS, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._fields = tuple(fields_of(subject).by_key.values())
        self.setWidgetResizable(True)
        self.setAccessibleName(tr("What the columns hold"))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._shown: tuple[MappedColumn, ...] = ()
        self.field_boxes: list[StillBox] = []
        self.measure_boxes: list[StillBox] = []

    def show_columns(self, mapping: tuple[MappedColumn, ...]) -> None:
        """Show other columns, or the same ones with what they hold now."""
        if [one.column for one in mapping] != [one.column for one in self._shown]:
            self._build(mapping)
        self._shown = mapping
        for one, field_box, measure_box in zip(mapping, self.field_boxes, self.measure_boxes, strict=True):
            field_box.setCurrentIndex(max(0, field_box.findData("" if one.field is None else one.field.key)))
            known = () if one.field is None else measures(one.field)
            measure_box.clear()
            measure_box.addItems(["", *known])
            measure_box.setCurrentIndex(max(0, measure_box.findText(one.unit or one.currency)))
            measure_box.setEnabled(bool(known))

    def _build(self, mapping: tuple[MappedColumn, ...]) -> None:
        side = QWidget(self)
        side.setObjectName("page")
        grid = QGridLayout(side)
        grid.setContentsMargins(6, 6, 6, 6)
        grid.setVerticalSpacing(4)
        grid.setColumnStretch(1, 1)
        self.field_boxes, self.measure_boxes = [], []
        for row, one in enumerate(mapping):
            title = " / ".join(filter(None, (one.column.head, one.column.title)))
            words = f"{column_letters(one.place)}  {title or tr('(no title)')}"
            label = plain_label(words if len(words) <= _TITLE_ROOM else f"{words[: _TITLE_ROOM - 1]}…")
            label.setToolTip(words)
            field_box, measure_box = StillBox(side), StillBox(side)
            for box in (field_box, measure_box):
                box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
            field_box.setMinimumContentsLength(10)
            field_box.setAccessibleName(words)
            field_box.addItem(tr("left out"), "")
            for field in self._fields:
                field_box.addItem(tr(field.title), field.key)
            measure_box.setMinimumContentsLength(4)
            measure_box.setAccessibleName(tr("Unit or currency of {0}").format(words))
            for box in (field_box, measure_box):
                box.activated.connect(partial(self._tell, row))
            grid.addWidget(label, row, 0)
            grid.addWidget(field_box, row, 1)
            grid.addWidget(measure_box, row, 2)
            self.field_boxes.append(field_box)
            self.measure_boxes.append(measure_box)
        grid.setRowStretch(len(mapping), 1)
        self.setWidget(side)
        bar = self.verticalScrollBar().sizeHint().width()
        self.setMinimumWidth(min(side.sizeHint().width() + bar, _MOST_WIDTH))

    def _tell(self, row: int, _chosen: int) -> None:
        one = self._shown[row]
        key = str(self.field_boxes[row].currentData())
        is_same = one.field is not None and one.field.key == key
        measure = self.measure_boxes[row].currentText() if is_same else ""
        self.held.emit(one.place, key, measure)
