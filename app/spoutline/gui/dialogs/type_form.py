"""A form of what a dispenser type answers: figures with their units, choices, and empty for what it does not say."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QComboBox, QFormLayout, QLineEdit, QScrollArea, QVBoxLayout, QWidget

from spoutline.explain.plan.story import Story
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.answered import same_answers
from spoutline.model.faults import InputFault
from spoutline.model.survey import DispenserType
from spoutline.model.type_columns import TYPE_COLUMNS, TypeColumn
from spoutline.planning.table_intake.type_answers import shown_answer, with_answers

Field = QLineEdit | QComboBox


class TypeForm(QWidget):
    """One field for each column of a type; ``read`` returns the type, or what cannot be used."""

    changed = Signal()

    def __init__(self, story: Story, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._story, self._display = story, story.display
        self._base: DispenserType | None = None
        self._shown: dict[str, str] = {}
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        inner = QWidget(area)
        rows = QFormLayout(inner)
        self._fields: dict[str, Field] = {}
        for column in TYPE_COLUMNS:
            field = self._field(column, inner)
            field.setObjectName(column.key)
            field.setAccessibleName(tr(column.title))
            self._fields[column.key] = field
            rows.addRow(self._words(column), field)
        area.setWidget(inner)
        outer.addWidget(area)

    def field(self, key: str) -> Field:
        """Return the field of a column."""
        return self._fields[key]

    @property
    def is_empty(self) -> bool:
        """Whether nothing is written in any field."""
        return not any(self._text(key) for key in self._fields)

    def focus_name(self) -> None:
        """Put the keyboard into the field of the name."""
        self._fields["name"].setFocus()

    def show_type(self, kind: DispenserType | None) -> None:
        """Show a type, or empty fields for a new one."""
        self._base = kind
        for column in TYPE_COLUMNS:
            field = self._fields[column.key]
            text = "" if kind is None else shown_answer(kind, column, self._display)
            self._shown[column.key] = text
            field.blockSignals(True)
            if isinstance(field, QComboBox):
                field.setCurrentIndex(max(field.findData(text), 0))
            else:
                field.setText(text)
            field.blockSignals(False)

    def read(self) -> DispenserType | InputFault:
        """Return the type that is written; figures that nobody touched keep every digit."""
        written = {key: self._text(key) for key in self._fields}
        changed = {key: text for key, text in written.items() if self._base is None or text != self._shown[key]}
        try:
            return with_answers(self._base, changed, self._display)
        except InputFault as fault:
            return fault

    def shows(self, kind: DispenserType | None) -> bool:
        """Say whether what is written is ``kind``."""
        read = self.read()
        return kind is not None and isinstance(read, DispenserType) and same_answers(read, kind)

    def _text(self, key: str) -> str:
        field = self._fields[key]
        return str(field.currentData() or "") if isinstance(field, QComboBox) else field.text().strip()

    def _words(self, column: TypeColumn) -> str:
        unit = self._display.asked_unit(column.dimension) if column.dimension is not None else ""
        return f"{tr(column.title)} ({unit})" if unit else tr(column.title)

    def _field(self, column: TypeColumn, parent: QWidget) -> Field:
        if column.choices is None and not column.yes_no:
            line = QLineEdit(parent)
            line.textEdited.connect(lambda _: self.changed.emit())
            return line
        box: QComboBox = StillBox(parent)
        box.addItem(tr("not said"), "")
        if column.choices is None:
            box.addItem(tr("Yes"), "yes")
            box.addItem(tr("No"), "no")
        for choice in column.choices or ():
            box.addItem(self._story.title(choice), choice.value)
        box.currentIndexChanged.connect(lambda _: self.changed.emit())
        return box
