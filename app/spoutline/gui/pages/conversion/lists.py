"""The lists of a conversion as small tables: the owner's cost lines and onboard shares; add, change, take off a row."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise
from typing import Generic, TypeVar

from PySide6.QtWidgets import QCheckBox, QGridLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.gui.edits.conversion_lists import with_own_cost, with_own_share, without_own_cost, without_own_share
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.answer_field import TextField
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import tr
from spoutline.model.conversion_answers import OwnCost, YearShare
from spoutline.model.faults import InputFault
from spoutline.model.survey import Survey
from spoutline.model.worded import Worded

RowT = TypeVar("RowT")


class ListPanel(QWidget, Generic[RowT]):
    """A table of rows over the fields of one row. The row chosen in the table is in the fields; each button is an edit.

    ``fields`` are named as the edit names them in a fault. The column ``stretch`` takes the room that is left.
    """

    def __init__(
        self,
        context: Context,
        title: str,
        lead: str,
        columns: Sequence[Column[RowT]],
        parent: QWidget | None = None,
        *,
        stretch: int = 0,
    ) -> None:
        super().__init__(parent)
        self._context, self._title = context, title
        self.fields: dict[str, TextField] = {}
        self._boxes: list[QCheckBox] = []
        self.card = Card(title, self)
        self.card.body.addWidget(plain_label(lead, "quiet", wraps=True))
        self.model: RecordTable[RowT] = RecordTable(columns, self)
        self.table = Table(title, self, stretch=stretch)
        self.table.setModel(self.model)
        self.table.setMinimumHeight(120)
        self.table.fit_columns()
        self.table.selectionModel().currentRowChanged.connect(lambda now, _: self._show_row(now.row()))
        self.card.body.addWidget(self.table)
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(20)
        self.card.body.addLayout(self._grid)
        self.card.body.addLayout(self._button_row())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.card)

    def add_field(self, name: str, title: str, help_text: str, source: str) -> TextField:
        """Add the field of one cell of a row; Return in it does what fits: change the chosen row, or add one."""
        field = TextField(title, help_text, source, parent=self)
        field.setObjectName(f"{type(self).__name__}.{name}")
        field.editor.returnPressed.connect(lambda: self._change() if self._place is not None else self._add())
        self._grid.addWidget(field, 0, len(self.fields))
        self._grid.setColumnStretch(len(self.fields), 1)
        self.fields[name] = field
        return field

    def add_check(self, words: str) -> QCheckBox:
        """Add a tick box below the fields."""
        box = QCheckBox(words, self)
        self._grid.addWidget(box, 1, 0, 1, 2)
        self._boxes.append(box)
        return box

    def arrange_keys(self) -> None:
        """Lead the Tab key from the table over the fields to the buttons, as they stand."""
        order: list[QWidget] = [self.table, *(field.editor for field in self.fields.values()), *self._boxes]
        order += [self.add_button, self.change_button, self.remove_button]
        for before, after in pairwise(order):
            QWidget.setTabOrder(before, after)

    def refresh(self) -> None:
        """Show the rows of the survey in hand; what is being typed stays where the rows are the same."""
        rows = self.rows_of(self._context.session.survey)
        if rows != self.model.records:
            place = self._place
            self.model.show_records(rows)
            self.table.fit_columns()
            if place is not None and place < len(rows):
                self.table.pick_row(place)
            else:
                self._show_row(-1)
        self._enable()

    def rows_of(self, survey: Survey) -> tuple[RowT, ...]:
        """Return the rows of the list; each panel says which."""
        raise TypeError(f"{type(self).__name__} is only a base")

    def show_in_fields(self, row: RowT | None) -> None:
        """Put a row into the fields; None empties them."""
        raise TypeError(f"{type(self).__name__} is only a base")

    def edited(self, survey: Survey, place: int | None) -> Survey:
        """Return the survey with what the fields hold at a place, or added."""
        raise TypeError(f"{type(self).__name__} is only a base")

    def shortened(self, survey: Survey, place: int) -> Survey:
        """Return the survey without the row at a place."""
        raise TypeError(f"{type(self).__name__} is only a base")

    def _button_row(self) -> QGridLayout:
        """Return the buttons, two in a row: three need more room than the page has in a language of long words."""
        grid = QGridLayout()
        self.add_button = self._button(tr("Add a row"), self._add)
        self.change_button = self._button(tr("Change the chosen row"), self._change)
        self.remove_button = self._button(tr("Remove it from the list"), self._remove)
        for place, button in enumerate((self.add_button, self.change_button, self.remove_button)):
            button.setAccessibleDescription(self._title)
            grid.addWidget(button, place // 2, place % 2)
        grid.setColumnStretch(2, 1)
        return grid

    def _button(self, words: str, act: Callable[[], None]) -> QPushButton:
        button = QPushButton(words, self)
        button.clicked.connect(lambda _: act())
        return button

    @property
    def _place(self) -> int | None:
        index = self.table.currentIndex()
        return index.row() if index.isValid() else None

    def _show_row(self, place: int) -> None:
        rows = self.model.records
        for field in self.fields.values():
            field.accept()
        self.show_in_fields(rows[place] if 0 <= place < len(rows) else None)
        self._enable()

    def _enable(self) -> None:
        for button in (self.change_button, self.remove_button):
            button.setEnabled(self._place is not None)

    def _add(self) -> None:
        self._write(None)

    def _change(self) -> None:
        if self._place is not None:
            self._write(self._place)

    def _write(self, place: int | None) -> None:
        session = self._context.session
        for field in self.fields.values():
            field.accept()
        try:
            after = self.edited(session.survey, place)
        except InputFault as fault:
            for problem in fault.problems:
                figures = {"value": f"“{problem.value}”", "wanted": problem.wanted}
                self.fields[problem.field].show_fault(Worded("{value} is not usable here; {wanted}.", **figures))
            self.fields[fault.problems[0].field].focus_editor()
            return
        self._context.edit(after, self._title)
        self.refresh()
        if place is None:  # ready for the next row
            self.table.setCurrentIndex(self.model.index(-1, -1))
            self._show_row(-1)
            next(iter(self.fields.values())).focus_editor()

    def _remove(self) -> None:
        place, session = self._place, self._context.session
        if place is not None:
            self._context.edit(self.shortened(session.survey, place), self._title)
            self.refresh()


class OwnCostsPanel(ListPanel[OwnCost]):
    """The owner's own cost lines."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        columns: tuple[Column[OwnCost], ...] = (
            Column(title=tr("What it pays for"), text=lambda row: row.label, hint=lambda row: row.label),
            Column(title=tr("Amount"), text=lambda row: f"{row.amount:f}", is_number=True),
            Column(title=tr("Towards a grant"), text=lambda row: tr("yes") if row.eligible else tr("no")),
        )
        lead = tr("Tests, permits, closing: costs that the owner knows, in the currency of the site.")
        super().__init__(context, tr("Further costs"), lead, columns, parent)
        self.add_field("label", tr("What it pays for"), tr("Printed in the report."), tr("Owner's offers"))
        self.add_field("amount", tr("Amount"), tr("In the currency of the site."), tr("Owner's offers"))
        self.eligible_box = self.add_check(tr("Counts towards a grant"))
        self.arrange_keys()

    def rows_of(self, survey: Survey) -> tuple[OwnCost, ...]:
        """Return the cost lines."""
        return survey.conversion.money.own_costs

    def show_in_fields(self, row: OwnCost | None) -> None:
        """Put a cost line into the fields."""
        self.fields["label"].editor.setText(row.label if row else "")
        self.fields["amount"].editor.setText(f"{row.amount:f}" if row else "")
        self.eligible_box.setChecked(bool(row and row.eligible))

    def edited(self, survey: Survey, place: int | None) -> Survey:
        """Return the survey with the cost line in the fields."""
        label, amount = (self.fields[name].editor.text() for name in ("label", "amount"))
        return with_own_cost(survey, place, label, amount, eligible=self.eligible_box.isChecked())

    def shortened(self, survey: Survey, place: int) -> Survey:
        """Return the survey without a cost line."""
        return without_own_cost(survey, place)


class OwnSharesPanel(ListPanel[YearShare]):
    """The owner's own onboard shares."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        columns: tuple[Column[YearShare], ...] = (
            Column(title=tr("Year"), text=lambda row: str(row.year)),
            Column(title=tr("Share of gasoline"), text=lambda row: f"{row.share!r}", is_number=True),
        )
        lead = tr("Share of gasoline into vehicles with onboard recovery, year by year; it goes before the table.")
        super().__init__(context, tr("Own onboard shares"), lead, columns, parent)
        self.add_field("year", tr("Year"), tr("Each year once."), tr("Owner's source, named above"))
        self.add_field("share", tr("Share of gasoline"), tr("Between 0 and 1."), tr("Owner's source, named above"))
        self.arrange_keys()

    def rows_of(self, survey: Survey) -> tuple[YearShare, ...]:
        """Return the shares."""
        return survey.conversion.emissions.own_shares

    def show_in_fields(self, row: YearShare | None) -> None:
        """Put a share into the fields."""
        self.fields["year"].editor.setText(str(row.year) if row else "")
        self.fields["share"].editor.setText(repr(row.share) if row else "")

    def edited(self, survey: Survey, place: int | None) -> Survey:
        """Return the survey with the share in the fields."""
        return with_own_share(survey, place, self.fields["year"].editor.text(), self.fields["share"].editor.text())

    def shortened(self, survey: Survey, place: int) -> Survey:
        """Return the survey without a share."""
        return without_own_share(survey, place)
