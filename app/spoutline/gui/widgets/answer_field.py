"""Fields for one answer each: title, editor, help and, beside it, what is wrong with what was typed."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QComboBox,
    QHBoxLayout,
    QLabel,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from spoutline.frozen import frozen
from spoutline.gui.escaping import mnemonic_safe
from spoutline.gui.widgets.editors import LineEditor, PageEditor
from spoutline.gui.widgets.steady import SteadyChange
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.widgets.tile_grid import TileGrid
from spoutline.gui.wording import told


@frozen
class Choice:
    """One choice of a field: the value handed back, and its words."""

    value: str
    words: str
    hint: str = ""


class AnswerField(QWidget):
    """Base of all fields. The text of a faulty answer stays until it is mended or another value is shown.

    Signals
    -------
    given(str)
        A person gave an answer: typed text, or the value of a choice.
    """

    given = Signal(str)

    def __init__(self, title: str, help_text: str, source: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.plain_title = title.replace("&", "")
        self._shown: str | None = None
        self._fault = ""
        self._fault_shown = SteadyChange(self._show_fault_label, self)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSpacing(4)
        self.title_label = QLabel(title, self)
        self.title_label.setObjectName("question")
        self.title_label.setWordWrap(True)
        self._fault_label = QLabel(self)
        self._fault_label.setObjectName("fault")
        self._fault_label.setTextFormat(Qt.TextFormat.PlainText)
        self._fault_label.setWordWrap(True)
        self._fault_label.hide()
        self._note_label = QLabel(self)
        self._note_label.setObjectName("quiet")
        self._note_label.setTextFormat(Qt.TextFormat.PlainText)
        self._note_label.setWordWrap(True)
        self._note_label.hide()
        self._origin_label = QLabel(self)
        self._origin_label.setObjectName("quiet")
        self._origin_label.setTextFormat(Qt.TextFormat.PlainText)
        self._origin_label.setWordWrap(True)
        self._origin_label.hide()
        self._help_label = QLabel(help_text, self)
        self._help_label.setObjectName("help")
        self._help_label.setTextFormat(Qt.TextFormat.PlainText)
        self._help_label.setWordWrap(True)
        self._help_label.setToolTip(f"{help_text}\n{source}")
        if source:
            self._help_label.setText(f"{help_text}  [{source}]" if help_text else f"[{source}]")
        self._description = f"{help_text} {source}".strip()

    @property
    def fault(self) -> str:
        """What is wrong with the answer; empty where nothing is."""
        return self._fault

    @property
    def note(self) -> str:
        """How the answer was understood; empty where it stands as it was typed."""
        return self._note_label.text()

    @property
    def help_text(self) -> str:
        """The help with its source, as shown."""
        return self._help_label.text()

    def show_answer(self, text: str) -> None:
        """Show an answer. A faulty text that a person still works on is kept while the answer stays the same."""
        if self.fault and text == self._shown:
            return
        if text != self._shown:
            self.show_note("")
        self._shown = text
        self._clear_fault()
        self._set_editor(text)

    def show_note(self, text: str) -> None:
        """Say beside the field how the answer was understood; it stays until another answer is shown."""
        self._note_label.setText(text)
        self._note_label.setVisible(bool(text))
        self._editor().setAccessibleDescription(f"{text} {self._description}".strip())

    @property
    def origin(self) -> str:
        """From where the answer is that nobody gave here; empty for any other."""
        return self._origin_label.text()

    def show_origin(self, text: str) -> None:
        """Say beside the field from where its answer is; an empty text takes it away."""
        self._origin_label.setText(text)
        self._origin_label.setVisible(bool(text))

    def show_fault(self, text: str) -> None:
        """Say beside the field what is wrong and what would be right."""
        self.show_note("")
        text = told(text)
        self._fault = text
        self._fault_shown.ask()
        self._mark_editor(True)
        self._editor().setAccessibleDescription(f"{text} {self._description}")

    def accept(self) -> None:
        """Take the fault away: the answer was taken."""
        self._clear_fault()

    def name_within(self, group: str) -> None:
        """Tell a screen reader in which group the field stands, where others are called alike."""
        self._editor().setAccessibleName(f"{group}: {self.plain_title}")

    def focus_editor(self) -> None:
        """Put the keyboard into the field."""
        self._editor().setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _finish_layout(self, body: QWidget) -> None:
        below = (self._fault_label, self._origin_label, self._note_label, self._help_label)
        for widget in (self.title_label, body, *below):
            self._layout.addWidget(widget)
        self._layout.addStretch(1)
        editor = self._editor()
        editor.setAccessibleName(self.plain_title)
        editor.setAccessibleDescription(self._description)
        self.title_label.setBuddy(editor)

    def _clear_fault(self) -> None:
        if self.fault:
            self._fault = ""
            self._fault_shown.ask()
            self._mark_editor(False)
            self._editor().setAccessibleDescription(self._description)

    def _show_fault_label(self) -> None:
        self._fault_label.setText(self._fault)
        self._fault_label.setVisible(bool(self._fault))

    def _mark_editor(self, faulty: bool) -> None:
        editor = self._editor()
        editor.setProperty("faulty", faulty)
        editor.style().unpolish(editor)
        editor.style().polish(editor)

    def _editor(self) -> QWidget:
        raise TypeError(f"{type(self).__name__} is only a base")

    def _set_editor(self, text: str) -> None:
        raise TypeError(f"{type(self).__name__} is only a base")


class TextField(AnswerField):
    """One line of text or a quantity with its unit beside it."""

    def __init__(
        self, title: str, help_text: str, source: str, *, placeholder: str = "", parent: QWidget | None = None
    ) -> None:
        super().__init__(title, help_text, source, parent)
        body = QWidget(self)
        row = QHBoxLayout(body)
        row.setContentsMargins(0, 0, 0, 0)
        self.editor = LineEditor(body)
        self.editor.setPlaceholderText(placeholder)
        self.editor.editingFinished.connect(self._finished)
        row.addWidget(self.editor)
        self._finish_layout(body)

    def _finished(self) -> None:
        if self.editor.text() != self._shown or self.fault:
            self.given.emit(self.editor.text())

    def _editor(self) -> QWidget:
        return self.editor

    def _set_editor(self, text: str) -> None:
        self.editor.show_text(text)
        if not self.editor.hasFocus():
            self.editor.setCursorPosition(0)  # a text longer than the field is read from its start


class LongTextField(AnswerField):
    """Several lines of text, handed over when the field is left."""

    def __init__(self, title: str, help_text: str, source: str, parent: QWidget | None = None) -> None:
        super().__init__(title, help_text, source, parent)
        self.editor = PageEditor()
        self.editor.setFixedHeight(64)
        self.editor.installEventFilter(self)
        self._finish_layout(self.editor)

    def commit(self) -> None:
        """Hand the text over if it differs from the answer."""
        if self.editor.toPlainText() != self._shown or self.fault:
            self.given.emit(self.editor.toPlainText())

    def _editor(self) -> QWidget:
        return self.editor

    def _set_editor(self, text: str) -> None:
        self.editor.show_text(text)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Qt: hand the text over when the field is left."""
        if watched is self.editor and event.type() == QEvent.Type.FocusOut:
            self.commit()
        return super().eventFilter(watched, event)


class SuggestedField(AnswerField):
    """A text with suggestions to choose from."""

    def __init__(self, title: str, help_text: str, source: str, parent: QWidget | None = None) -> None:
        super().__init__(title, help_text, source, parent)
        self.editor = StillBox(self)
        self.editor.setLineEdit(LineEditor())
        self.editor.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.editor.textActivated.connect(self._taken)
        line = self.editor.lineEdit()
        if line is not None:
            line.editingFinished.connect(lambda: self._taken(self.editor.currentText()))
            line.setAccessibleName(self.plain_title)
        self._finish_layout(self.editor)

    def show_suggestions(self, suggestions: tuple[str, ...]) -> None:
        """Offer other suggestions."""
        if suggestions != tuple(self.editor.itemText(row) for row in range(self.editor.count())):
            text = self.editor.currentText()
            self.editor.clear()
            self.editor.addItems(suggestions)
            self.editor.setEditText(text)

    def _taken(self, text: str) -> None:
        if text != self._shown or self.fault:
            self.given.emit(text)

    def _editor(self) -> QWidget:
        return self.editor

    def _set_editor(self, text: str) -> None:
        self.editor.setEditText(text)


class ListField(AnswerField):
    """One of many choices, in a drop-down list."""

    def __init__(
        self, title: str, help_text: str, source: str, choices: tuple[Choice, ...], parent: QWidget | None = None
    ) -> None:
        super().__init__(title, help_text, source, parent)
        self.editor = StillBox(self)
        self._choices = choices
        self.editor.addItems([choice.words for choice in choices])
        self.editor.activated.connect(lambda row: self.given.emit(self._choices[row].value))
        self._finish_layout(self.editor)

    def _editor(self) -> QWidget:
        return self.editor

    def _set_editor(self, text: str) -> None:
        values = [choice.value for choice in self._choices]
        self.editor.setCurrentIndex(values.index(text) if text in values else -1)


class TileField(AnswerField):
    """One of a few choices, all in view; arrow keys move between them."""

    def __init__(
        self,
        title: str,
        help_text: str,
        source: str,
        choices: tuple[Choice, ...],
        *,
        columns: int = 3,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(title, help_text, source, parent)
        self._choices = choices
        body = TileGrid(columns, self)
        self.group = QButtonGroup(self)
        self.tiles: list[QRadioButton] = []
        for place, choice in enumerate(choices):
            words = mnemonic_safe(f"{choice.words}\n{choice.hint}" if choice.hint else choice.words)
            tile = QRadioButton(words, body)
            tile.setObjectName("tile")
            tile.setAccessibleName(f"{self.plain_title}: {choice.words}")
            tile.setAccessibleDescription(choice.hint)
            self.group.addButton(tile, place)
            body.add(tile)
            self.tiles.append(tile)
        self.group.idToggled.connect(self._toggled)
        self._finish_layout(body)
        for tile, choice in zip(self.tiles, choices, strict=True):
            tile.setAccessibleName(f"{self.plain_title}: {choice.words}")

    def _toggled(self, place: int, checked: bool) -> None:
        if checked:
            self.title_label.setBuddy(self.tiles[place])
            if self._choices[place].value != self._shown:
                self.given.emit(self._choices[place].value)

    def _editor(self) -> QWidget:
        checked = self.group.checkedButton()
        return checked if checked is not None else self.tiles[0]

    def _set_editor(self, text: str) -> None:
        for tile, choice in zip(self.tiles, self._choices, strict=True):
            if choice.value == text:
                tile.setChecked(True)
