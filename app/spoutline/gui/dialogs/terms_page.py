"""One page of the terms form, built from its declaration: fields two abreast, tables as wide as the page."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from itertools import groupby
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QWidget

from spoutline.catalogue.price_lists import PriceListNames
from spoutline.gui.edits.question import Option
from spoutline.gui.edits.terms_draft import DraftProblem, Spot, TermsDraft, cell_value, cell_words, empty_means
from spoutline.gui.edits.terms_fields import Known, Subject, TermsColumn, TermsEntry, TermsField, TermsTable
from spoutline.gui.models.text_rows import TextColumn, TextRows
from spoutline.gui.widgets.answer_field import (
    AnswerField,
    Choice,
    ListField,
    LongTextField,
    SuggestedField,
    TextField,
)
from spoutline.gui.widgets.cards import Card, ScrolledPage, plain_label
from spoutline.gui.widgets.cell_table import Cells
from spoutline.gui.widgets.picture_field import PictureField
from spoutline.gui.widgets.row_table import CellEditor, RowTable
from spoutline.gui.wording import tr

_TABLE_HEIGHT = 170
_SHOWN_FAULTS = 3
_MOST_ROWS = 1000  # more than any table of terms may hold
FindPicture = Callable[[str], Path | None]
NamePicture = Callable[[Path], str]


class TableSection(Card):
    """A table with its title, what can be done with its rows, and what is wrong in it.

    Signals
    -------
    written(Rows)
        A person changed the table; the rows as they should be.
    """

    written = Signal(object)

    def __init__(self, table: TermsTable, names: PriceListNames, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.declared = table
        self.body.addLayout(self._head())
        self.body.addWidget(plain_label(tr(table.help), "help", wraps=True))
        self.model = TextRows(tuple(_text_column(one) for one in table.columns), table.new_row, self)
        editors = tuple(_cell_editor(one, names) for one in table.columns)
        self.table = RowTable(tr(table.title), editors, tuple(one.share for one in table.columns), self)
        self.table.setObjectName(table.path)
        self.table.setModel(self.model)
        self.table.setMinimumHeight(_TABLE_HEIGHT)
        self.body.addWidget(self.table, 1)
        self.fault_label = plain_label("", "fault", wraps=True)
        self.fault_label.hide()
        self.body.addWidget(self.fault_label)
        self.note_label = plain_label("", "quiet", wraps=True)
        self.note_label.hide()
        self.body.addWidget(self.note_label)
        self._bind()

    def show_rows(self, rows: tuple[tuple[str, ...], ...]) -> None:
        """Show other rows; the keyboard stays in the same cell where it is still there."""
        here = self.table.currentIndex()
        cell = (here.row(), here.column())
        self.model.show_rows(rows)
        if rows and not self.table.currentIndex().isValid() and cell[0] >= 0:
            self.table.choose([(min(cell[0], len(rows) - 1), cell[1])])

    def show_problems(self, problems: Iterable[DraftProblem]) -> None:
        """Mark the cells that are not usable and say below why."""
        told = list(problems)
        cells = {(one.spot.row, one.spot.column): one.words for one in told if one.spot.row is not None}
        self.model.show_faults({(row, column or 0): words for (row, column), words in cells.items() if row is not None})
        lines = [str(one) for one in told[:_SHOWN_FAULTS]]
        if len(told) > _SHOWN_FAULTS:
            lines.append(tr("and {0} more").format(len(told) - _SHOWN_FAULTS))
        self._notify("\n".join(lines))

    def show_note(self, text: str) -> None:
        """Say below the table what it amounts to; an empty text takes it away."""
        self.note_label.setText(text)
        self.note_label.setVisible(bool(text))

    def go_to(self, spot: Spot) -> None:
        """Put the keyboard into a cell, or into the table."""
        if spot.row is None or spot.row >= self.model.rowCount():
            self.table.setFocus()
        else:
            self.table.go_to(spot.row, spot.column or 0)

    def _head(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addWidget(plain_label(tr(self.declared.title), "cardTitle"), 1)
        self.add_button = self._button(tr("Add"), tr("Add a row behind the chosen one (Insert)"))
        self.copy_button = self._button(tr("Duplicate"), tr("Copy the chosen rows (Ctrl+Shift+D)"))
        self.remove_button = self._button(tr("Remove"), tr("Remove the chosen rows (Ctrl+Delete)"))
        self.up_button = self._button(tr("Up"), tr("Move the chosen rows up (Alt+Up)"))
        self.down_button = self._button(tr("Down"), tr("Move the chosen rows down (Alt+Down)"))
        for button in (self.add_button, self.copy_button, self.remove_button, self.up_button, self.down_button):
            row.addWidget(button)
        return row

    def _button(self, words: str, hint: str) -> QPushButton:
        button = QPushButton(words, self)
        button.setAutoDefault(False)
        button.setToolTip(hint)
        button.setAccessibleName(f"{tr(self.declared.title)}: {words}")
        return button

    def _bind(self) -> None:
        table, model = self.table, self.model
        self.add_button.clicked.connect(table.ask_row)
        self.copy_button.clicked.connect(table.ask_copy)
        self.remove_button.clicked.connect(table.ask_removal)
        self.up_button.clicked.connect(lambda: table.ask_move(-1))
        self.down_button.clicked.connect(lambda: table.ask_move(1))
        table.written.connect(self._write)
        table.refused.connect(lambda fault: self._notify(str(fault)))
        table.row_wanted.connect(self._add_row)
        table.copy_wanted.connect(self._duplicate)
        table.removal_wanted.connect(model.take_away)
        table.move_wanted.connect(self._move)
        model.written.connect(self.written)

    def _write(self, cells: Cells) -> None:
        """Write cells; what reaches beyond the last column, or over too many rows, is refused as a whole."""
        rows, columns = (max(place[axis] for place in cells) + 1 for axis in (0, 1))
        wide = len(self.declared.columns)
        if columns > wide:
            words = tr("Nothing was written: choose a cell further left, or copy fewer; the table has {0} columns.")
            self._notify(words.format(wide))
        elif rows > _MOST_ROWS:
            self._notify(tr("Nothing was written: the table takes at most {0} rows.").format(_MOST_ROWS))
        else:
            self.model.write_cells(cells)

    def _notify(self, text: str) -> None:
        self.fault_label.setText(text)
        self.fault_label.setVisible(bool(text))

    def _add_row(self, place: int) -> None:
        self.model.add_row(place)
        self.table.go_to(place, 0)

    def _duplicate(self, rows: list[int]) -> None:
        column = max(self.table.currentIndex().column(), 0)
        self.model.duplicate(rows)
        self.table.choose([(rows[-1] + 1 + place, column) for place in range(len(rows))])

    def _move(self, rows: list[int], step: int) -> None:
        column = max(self.table.currentIndex().column(), 0)
        if self.model.move(rows, step):
            self.table.choose([(row + step, column) for row in rows])


class TermsPage(ScrolledPage):
    """The entries of one subject.

    Signals
    -------
    typed(str, str)
        Path of a field, and the text that a person gave.
    rows_written(str, Rows)
        Path of a table, and its rows.
    """

    typed = Signal(str, str)
    rows_written = Signal(str, object)

    def __init__(
        self,
        subject: Subject,
        names: PriceListNames,
        find: FindPicture,
        name_of: NamePicture,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.subject = subject
        self.fields: dict[str, AnswerField] = {}
        self.sections: dict[str, TableSection] = {}
        self._find, self._name_of, self._names = find, name_of, names
        self.column.addWidget(plain_label(tr(subject.title), "pageTitle"))
        self.column.addWidget(plain_label(tr(subject.lead), "quiet", wraps=True))
        for is_table, parts in groupby(subject.parts, key=lambda part: isinstance(part, TermsTable)):
            if is_table:
                for part in parts:
                    if isinstance(part, TermsTable):
                        self._add_section(part)
            else:
                self.column.addWidget(self._card([part for part in parts if isinstance(part, TermsField)]))
        if not self.sections:
            self.column.addStretch(1)

    def show_draft(self, draft: TermsDraft, before: TermsDraft | None) -> None:
        """Show a draft; a field whose text is as it was ``before`` is left alone, with what is being typed in it."""
        for path, field in self.fields.items():
            if before is None or draft.texts[path] != before.texts[path]:
                field.show_answer(draft.texts[path])
        for path, section in self.sections.items():
            section.show_rows(draft.rows[path])

    def show_problems(self, problems: Iterable[DraftProblem]) -> None:
        """Say beside every entry what is wrong with it, and nothing beside the others."""
        told = list(problems)
        for path, field in self.fields.items():
            words = next((one.words for one in told if one.spot.path == path), "")
            if words:
                field.show_fault(words)
            else:
                field.accept()
        for path, section in self.sections.items():
            section.show_problems([one for one in told if one.spot.path == path])

    def go_to(self, spot: Spot) -> None:
        """Put the keyboard into an entry."""
        field = self.fields.get(spot.path)
        if field is not None:
            field.focus_editor()
            self.ensureWidgetVisible(field)
        elif spot.path in self.sections:
            self.sections[spot.path].go_to(spot)

    def finish_typing(self) -> None:
        """Hand over what is being typed in a field or cell."""
        for path, field in self.fields.items():
            text = _being_typed(field)
            if text is not None:
                self.typed.emit(path, text)
        for section in self.sections.values():
            section.table.finish_editing()

    def _add_section(self, table: TermsTable) -> None:
        section = TableSection(table, self._names, self)
        section.written.connect(lambda rows, path=table.path: self.rows_written.emit(path, rows))
        self.sections[table.path] = section
        self.column.addWidget(section, 1)

    def _card(self, fields: list[TermsField]) -> Card:
        card = Card("", self)
        grid = QGridLayout()
        grid.setHorizontalSpacing(20)
        grid.setVerticalSpacing(12)
        grid.setColumnStretch(0, 1)
        grid.setColumnStretch(1, 1)
        row = column = 0
        for declared in fields:
            field = self._field(declared)
            if declared.is_wide:
                row += 1 if column else 0
                grid.addWidget(field, row, 0, 1, 2)
                row, column = row + 1, 0
            else:
                grid.addWidget(field, row, column)
                row, column = (row + 1, 0) if column else (row, 1)
        card.body.addLayout(grid)
        return card

    def _field(self, declared: TermsField) -> AnswerField:
        field = self._made(declared)
        field.setObjectName(declared.path)
        field.given.connect(lambda text, path=declared.path: self.typed.emit(path, text))
        self.fields[declared.path] = field
        return field

    def _made(self, declared: TermsField) -> AnswerField:
        title, help_text = tr(declared.title), tr(declared.help)
        if declared.entry is TermsEntry.PICTURE:
            return PictureField(title, help_text, self._find, self._name_of)
        if declared.entry is TermsEntry.LONG_TEXT:
            return LongTextField(title, help_text, "")
        if declared.options:
            return ListField(title, help_text, "", _choices(declared.options))
        if declared.known is not None:
            suggested = SuggestedField(title, help_text, "")
            suggested.show_suggestions(_known(declared.known, self._names))
            return suggested
        default = empty_means(declared.path)
        placeholder = tr("empty: {0}").format(default) if default else ""
        return TextField(title, help_text, "", placeholder=placeholder)


def _being_typed(field: AnswerField) -> str | None:
    """Return the text of a field that a person has changed since it was shown; None where there is none."""
    match field:
        case TextField() | PictureField():
            return field.editor.text() if field.editor.isModified() else None
        case LongTextField():
            return field.editor.toPlainText() if field.editor.document().isModified() else None
        case SuggestedField():
            line = field.editor.lineEdit()
            return line.text() if line is not None and line.isModified() else None
    return None


def _choices(options: tuple[Option, ...]) -> tuple[Choice, ...]:
    return tuple(Choice(str(option.value), tr(option.words)) for option in options)


def _text_column(column: TermsColumn) -> TextColumn:
    return TextColumn(
        title=tr(column.title),
        hint=tr(column.help),
        shown=lambda text: cell_words(text, column),
        kept=lambda text: cell_value(text, column),
        is_number=column.entry is TermsEntry.NUMBER,
    )


def _cell_editor(column: TermsColumn, names: PriceListNames) -> CellEditor:
    return CellEditor(
        choices=_choices(column.options),
        several=column.entry is TermsEntry.SEVERAL,
        suggestions=_known(column.known, names) if column.known else (),
    )


def _known(known: Known, names: PriceListNames) -> tuple[str, ...]:
    match known:
        case Known.MAKERS:
            return names.makers
        case Known.GROUPS:
            return names.groups
        case Known.CURRENCIES:
            return names.currencies
        case Known.PART_NUMBERS:
            return names.part_numbers
