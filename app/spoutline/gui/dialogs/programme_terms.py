"""What the owner of many sites sets for a programme: budget, years, carrying over, price rise, interest, deadlines."""

from __future__ import annotations

from decimal import Decimal
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QCheckBox, QGridLayout, QLabel, QLineEdit, QSpinBox, QWidget

from spoutline.gui.widgets.still_box import StillSpin
from spoutline.gui.wording import tr
from spoutline.model.programme import Programme

if TYPE_CHECKING:
    from spoutline.planning.conversion.programme_terms import ProgrammeTerms

_MOST_YEARS = 50


class ProgrammeTermsForm(QWidget):
    """Fields of the terms, each with its label; what is left empty sets nothing."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(10)
        self.budget_edit = self._field(0, 0, tr("A&nnual budget"), tr("empty: no limit"))
        self.first_year_edit = self._field(0, 2, tr("Fi&rst year"), tr("such as 2027"))
        self.years_box = StillSpin(self)
        self.years_box.setRange(1, _MOST_YEARS)
        self.years_box.setValue(5)
        self.years_box.setButtonSymbols(QSpinBox.ButtonSymbols.NoButtons)
        self._place(0, 4, tr("&Years"), self.years_box)
        self.rise_edit = self._field(1, 0, tr("&Price rise, % a year"), tr("empty: none"))
        self.interest_edit = self._field(1, 2, tr("&Interest, % a year"), tr("empty: none"))
        self.carry_box = QCheckBox(tr("Carry &over what a year leaves"), self)
        self._grid.addWidget(self.carry_box, 1, 4, 1, 2)
        hint = tr("file=year; file=year, such as north.json=2028")
        self.deadlines_edit = self._field(2, 0, tr("D&eadlines"), hint, columns=5)
        self.deadlines_edit.setToolTip(tr("They go before the deadline that a survey names among the site answers."))

    def _field(self, row: int, column: int, words: str, hint: str, *, columns: int = 1) -> QLineEdit:
        edit = QLineEdit(self)
        edit.setPlaceholderText(hint)
        self._place(row, column, words, edit, columns=columns)
        return edit

    def _place(self, row: int, column: int, words: str, field: QWidget, *, columns: int = 1) -> None:
        label = QLabel(words, self)
        label.setBuddy(field)
        field.setAccessibleName(words.replace("&", ""))
        self._grid.addWidget(label, row, column)
        self._grid.addWidget(field, row, column + 1, 1, columns)
        self._grid.setColumnStretch(column + 1, 1)

    def terms(self, name: str) -> ProgrammeTerms:
        """Return what is typed; raise ``InputFault`` naming the field that cannot be read."""
        from spoutline.planning.conversion.programme_terms import ProgrammeTerms
        from spoutline.planning.conversion.typed_terms import (
            listed_deadlines,
            typed_budget,
            typed_deadlines,
            typed_percent,
            typed_year,
        )

        return ProgrammeTerms(
            name=name,
            budget=typed_budget(self.budget_edit.text(), "annual budget"),
            years=self.years_box.value(),
            first_year=typed_year(self.first_year_edit.text(), "first year"),
            carry_over=self.carry_box.isChecked(),
            price_rise_percent=typed_percent(self.rise_edit.text(), "price rise"),
            interest_percent=typed_percent(self.interest_edit.text(), "interest"),
            deadlines=typed_deadlines(listed_deadlines(self.deadlines_edit.text()), "deadlines"),
        )

    def show_terms(self, programme: Programme) -> None:
        """Show the terms of a programme, so that the next one is made with them unless they are changed."""
        self.budget_edit.setText(_typed(programme.budget))
        self.first_year_edit.setText("" if programme.first_year is None else str(programme.first_year))
        self.rise_edit.setText(_typed(programme.price_rise_percent))
        self.interest_edit.setText(_typed(programme.interest_percent))
        self.carry_box.setChecked(programme.carry_over)


def _typed(number: Decimal | None) -> str:
    return "" if number is None else f"{number:f}"
