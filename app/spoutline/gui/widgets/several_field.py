"""A field for any number of choices, each with a box to tick."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox, QGridLayout, QWidget

from spoutline.gui.escaping import mnemonic_safe
from spoutline.gui.widgets.answer_field import AnswerField, Choice


class SeveralField(AnswerField):
    """Boxes in columns; the answer is the values ticked, in the order of the choices, separated by semicolons."""

    def __init__(
        self,
        title: str,
        help_text: str,
        source: str,
        choices: tuple[Choice, ...],
        *,
        columns: int = 4,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(title, help_text, source, parent)
        body = QWidget(self)
        grid = QGridLayout(body)
        grid.setContentsMargins(0, 2, 0, 2)
        self.boxes: dict[str, QCheckBox] = {}
        for place, choice in enumerate(choices):
            box = QCheckBox(mnemonic_safe(choice.words), body)
            box.clicked.connect(lambda _: self.given.emit(self.text))
            grid.addWidget(box, place // columns, place % columns)
            self.boxes[choice.value] = box
        self._finish_layout(body)
        for choice in choices:
            self.boxes[choice.value].setAccessibleName(f"{self.plain_title}: {choice.words}")

    @property
    def text(self) -> str:
        """The values ticked, separated by semicolons."""
        return ";".join(value for value, box in self.boxes.items() if box.isChecked())

    def _editor(self) -> QWidget:
        return next(iter(self.boxes.values()))

    def _set_editor(self, text: str) -> None:
        ticked = text.split(";")
        for value, box in self.boxes.items():
            box.setChecked(value in ticked)
