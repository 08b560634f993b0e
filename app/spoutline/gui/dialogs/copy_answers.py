"""Choose which answers to copy to which positions."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.edits.positions import GROUP_WORDS
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr
from spoutline.model.copied_answers import AnswerGroup, copy_answers, same_product
from spoutline.model.survey import Survey


class CopyAnswersDialog(FormDialog):
    """Asks for groups of answers and for positions; the survey after it is in ``after`` once accepted."""

    def __init__(self, survey: Survey, source: str, parent: QWidget | None = None) -> None:
        super().__init__(tr("Copy answers of {label}").format(label=source), parent)
        self._survey, self._source = survey, source
        self.after: Survey | None = None
        self.boxes: dict[AnswerGroup, QCheckBox] = {}
        row = QHBoxLayout()
        row.addWidget(self._groups_side(), 1)
        row.addWidget(self._targets_side(), 1)
        self.body.addLayout(row)
        self.count_label = plain_label("", "quiet")
        self.body.addWidget(self.count_label)
        self.add_buttons(tr("&Copy"))
        self._recount()
        self.resize(640, 430)

    def _groups_side(self) -> QWidget:
        side = QGroupBox(tr("Which answers"), self)
        grid = QGridLayout(side)
        for row, group in enumerate(AnswerGroup):
            box = QCheckBox(tr(GROUP_WORDS[group]), side)
            box.toggled.connect(lambda _: self._recount())
            self.boxes[group] = box
            grid.addWidget(box, row, 0)
        grid.setRowStretch(len(AnswerGroup), 1)
        return side

    def _targets_side(self) -> QWidget:
        side = QGroupBox(tr("To which positions"), self)
        column = QVBoxLayout(side)
        self.targets = QListWidget(side)
        self.targets.setAccessibleName(tr("Positions that get the answers"))
        for position in self._survey.positions:
            if position.label != self._source:
                item = QListWidgetItem(f"{position.label}  ({tr('dispenser')} {position.dispenser})")
                item.setData(Qt.ItemDataRole.UserRole, position.label)
                item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
                item.setCheckState(Qt.CheckState.Unchecked)
                self.targets.addItem(item)
        self.targets.itemChanged.connect(lambda _: self._recount())
        column.addWidget(self.targets)
        self.same_button = QPushButton(tr("Same &product"), side)
        self.same_button.setAutoDefault(False)
        self.same_button.setToolTip(tr("Every position of the same liquid and blend"))
        self.same_button.setEnabled(bool(same_product(self._survey, self._source)))
        self.same_button.clicked.connect(self._check_same_product)
        column.addWidget(self.same_button)
        row = QHBoxLayout()
        for words, state in ((tr("&All"), Qt.CheckState.Checked), (tr("N&one"), Qt.CheckState.Unchecked)):
            button = QPushButton(words, side)
            button.setAutoDefault(False)
            button.clicked.connect(lambda _=False, wanted=state: self._check_all(wanted))
            row.addWidget(button)
        column.addLayout(row)
        return side

    @property
    def groups(self) -> frozenset[AnswerGroup]:
        """The groups chosen."""
        return frozenset(group for group, box in self.boxes.items() if box.isChecked())

    @property
    def labels(self) -> frozenset[str]:
        """The labels of the positions chosen."""
        items = (self.targets.item(row) for row in range(self.targets.count()))
        return frozenset(
            str(item.data(Qt.ItemDataRole.UserRole)) for item in items if item.checkState() is Qt.CheckState.Checked
        )

    def accept(self) -> None:
        """Close with the survey after the copy."""
        self.after = copy_answers(self._survey, self._source, self.groups, self.labels)
        super().accept()

    def _check_same_product(self) -> None:
        """Choose every position of the same liquid and blend, and no other."""
        wanted = same_product(self._survey, self._source)
        for row in range(self.targets.count()):
            item = self.targets.item(row)
            is_on = item.data(Qt.ItemDataRole.UserRole) in wanted
            item.setCheckState(Qt.CheckState.Checked if is_on else Qt.CheckState.Unchecked)

    def _check_all(self, state: Qt.CheckState) -> None:
        for row in range(self.targets.count()):
            self.targets.item(row).setCheckState(state)

    def _recount(self) -> None:
        after = copy_answers(self._survey, self._source, self.groups, self.labels)
        changed = sum(old != new for old, new in zip(self._survey.positions, after.positions, strict=True))
        self.count_label.setText(tr("{count} positions would change.").format(count=changed))
        self.accept_button.setEnabled(changed > 0)
