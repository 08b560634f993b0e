"""All positions as a table that can be written into, like a spreadsheet: one row each, one column for each answer."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from enum import StrEnum

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, QSortFilterProxyModel, Qt

from spoutline.explain.plan.words import Words
from spoutline.gui.models.marks import told_with_mark
from spoutline.gui.models.painted_roles import LEFT, RIGHT, PaintedProxy, PaintedRoles
from spoutline.gui.roles import Role, Tone
from spoutline.gui.wording import tr
from spoutline.model.faults import Cancelled
from spoutline.model.survey import Position, Survey
from spoutline.planning.survey_import.cells import cell_text, cell_value, edit_text
from spoutline.planning.survey_import.fields import BY_KEY, FIELDS, ImportField
from spoutline.units.display import Display

Index = QModelIndex | QPersistentModelIndex
Written = Mapping[tuple[str, str], str]
_ROOT = QModelIndex()


class PositionGrid(PaintedRoles, QAbstractTableModel):
    """Shows the survey; whatever is written goes to ``write``, which edits the survey through the undo stack.

    The label of a row is under ``Role.RECORD`` in every column; the first column carries the mark of the position.
    """

    def __init__(
        self,
        write: Callable[[Written], bool],
        tone: Callable[[str], Tone],
        words: Callable[[], Words],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._write, self._tone, self._words = write, tone, words
        self._positions: tuple[Position, ...] = ()
        self._display: Display | None = None
        self._texts: dict[str, tuple[Position, str]] = {}  # by label, what the filter looks through

    @property
    def fields(self) -> tuple[ImportField, ...]:
        """The fields, one for each column."""
        return FIELDS

    def show_survey(self, survey: Survey, display: Display) -> None:
        """Show a survey; where only cells differ the view keeps its selection and place."""
        same_rows = len(survey.positions) == len(self._positions) and display == self._display
        if same_rows:
            changed = [
                row
                for row, pair in enumerate(zip(self._positions, survey.positions, strict=True))
                if pair[0] is not pair[1] and pair[0] != pair[1]
            ]
            self._positions = survey.positions
            for row in changed:
                self.dataChanged.emit(self.index(row, 0), self.index(row, len(FIELDS) - 1))
            return
        self.beginResetModel()
        if display != self._display:
            self._texts.clear()
        self._positions, self._display = survey.positions, display
        self.endResetModel()

    def unread(self) -> tuple[Position, ...]:
        """Return the positions whose texts nobody has put together yet."""
        return tuple(one for one in self._positions if self._text_known(one) is None)

    def take_texts(self, texts: Mapping[str, tuple[Position, str]], display: Display) -> None:
        """Keep what ``row_texts`` put together for these units."""
        if display == self._display:
            self._texts.update(texts)

    def row_text(self, row: int) -> str:
        """Return all answers of a row, as they are shown, in small letters."""
        position = self._positions[row]
        known = self._text_known(position)
        if known is None and self._display is not None:
            known = row_text(position, self._display, self._words())
            self._texts[position.label] = position, known
        return known or ""

    def _text_known(self, position: Position) -> str | None:
        of, known = self._texts.get(position.label, (None, ""))
        return known if of is position else None

    def mark_changed(self, label: str) -> None:
        """Paint the mark of a position anew."""
        for row, position in enumerate(self._positions):
            if position.label == label:
                self.dataChanged.emit(self.index(row, 0), self.index(row, 0), [int(Role.TONE)])

    def row_of(self, label: str) -> int:
        """Return the row of a position; -1 where there is none."""
        return next((row for row, position in enumerate(self._positions) if position.label == label), -1)

    def rowCount(self, parent: Index = _ROOT) -> int:
        """Qt: return the number of positions."""
        return 0 if parent.isValid() else len(self._positions)

    def columnCount(self, parent: Index = _ROOT) -> int:
        """Qt: return the number of fields."""
        return 0 if parent.isValid() else len(FIELDS)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:  # noqa: PLR0911 - one line per role
        """Qt: return what a cell shows."""
        if not index.isValid() or self._display is None:
            return None
        position, field = self._positions[index.row()], FIELDS[index.column()]
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return self._worded(position, field) or cell_text(position, field, self._display)
            case Qt.ItemDataRole.EditRole:
                return self._worded(position, field) or edit_text(position, field, self._display)
            case Qt.ItemDataRole.ToolTipRole:
                return self._hint(field)
            case Qt.ItemDataRole.TextAlignmentRole:
                return RIGHT if field.dimension else LEFT
            case Qt.ItemDataRole.AccessibleTextRole:
                shown = self._worded(position, field) or cell_text(position, field, self._display)
                return told_with_mark(shown, self._tone(position.label) if index.column() == 0 else None)
            case Role.SORT:
                value = cell_value(position, field)
                return value if isinstance(value, int | float) else str(value or "").casefold()
            case Role.CHOICES:
                return self._choices(field)
            case Role.TONE:
                return self._tone(position.label) if index.column() == 0 else None
            case Role.RECORD:
                return position.label
        return None

    def setData(self, index: Index, value: object, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Qt: write one cell."""
        if not index.isValid() or role != Qt.ItemDataRole.EditRole:
            return False
        return self._write({(self._positions[index.row()].label, FIELDS[index.column()].key): str(value)})

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Qt: every cell can be written."""
        return super().flags(index) | Qt.ItemFlag.ItemIsEditable

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """Qt: return the title of a column, or the number of a row."""
        if role == Qt.ItemDataRole.DisplayRole:
            return tr(FIELDS[section].title) if orientation is Qt.Orientation.Horizontal else str(section + 1)
        return None

    def _choices(self, field: ImportField) -> tuple[str, ...]:
        return tuple(self._stored_by_word(field))

    def _worded(self, position: Position, field: ImportField) -> str:
        return _worded(position, field, self._words())

    def _stored_by_word(self, field: ImportField) -> dict[str, str]:
        """Return, by the words that a person reads, what a survey holds for them."""
        words = self._words()
        if field.choices is not None:
            return {words.word(member): member.value for member in field.choices}
        return {words.yes_no(True): "yes", words.yes_no(False): "no"} if field.yes_no else {}

    def as_stored(self, written: Written) -> dict[tuple[str, str], str]:
        """Return texts for cells with the words of choices put back into those of the survey; others stay as typed."""
        found = {}
        for (label, key), text in written.items():
            words = {word.casefold(): stored for word, stored in self._stored_by_word(BY_KEY[key]).items()}
            found[label, key] = words.get(" ".join(text.casefold().split()), text)
        return found

    def _hint(self, field: ImportField) -> str:
        if field.choices is not None:
            return ", ".join(self._choices(field))
        return tr("yes or no") if field.yes_no else tr(field.title)


def _worded(position: Position, field: ImportField, words: Words) -> str:
    """Return the answer of a choice in the language of the window; empty for what is no choice, or no answer."""
    value = cell_value(position, field)
    if isinstance(value, bool):
        return words.yes_no(value)
    return words.word(value) if field.choices is not None and isinstance(value, StrEnum) else ""


def row_text(position: Position, display: Display, words: Words) -> str:
    """Return all answers of a position, as their cells show them, in small letters."""
    cells = (_worded(position, field, words) or cell_text(position, field, display) or "" for field in FIELDS)
    return " ".join(cells).casefold()


def row_texts(
    positions: Sequence[Position], display: Display, words: Words, should_stop: Callable[[], bool]
) -> dict[str, tuple[Position, str]]:
    """Return what the rows of positions say, by label: of a big station off the window's thread.

    Raise ``Cancelled`` where ``should_stop`` says so.
    """
    found = {}
    for one in positions:
        if should_stop():
            raise Cancelled
        found[one.label] = one, row_text(one, display, words)
    return found


class FilteredGrid(PaintedProxy, QSortFilterProxyModel):
    """Sorts by comparable values; shows the rows any of whose cells holds every word of the filter."""

    def __init__(self, grid: PositionGrid, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._grid = grid
        self.setSourceModel(grid)
        self.setSortRole(Role.SORT)
        self.setDynamicSortFilter(False)  # a row must not leap away while a person writes into it
        self._words: tuple[str, ...] = ()

    def filter_by(self, text: str) -> None:
        """Show the rows that hold every word of ``text``."""
        self._words = tuple(text.casefold().split())
        self.invalidate()

    def filterAcceptsRow(self, row: int, parent: Index) -> bool:
        """Qt: say whether a row is shown."""
        if not self._words:
            return True
        text = self._grid.row_text(row)
        return all(word in text for word in self._words)

    def lessThan(self, left: Index, right: Index) -> bool:
        """Qt: compare two cells; an answer of another kind sorts by its text."""
        first, second = left.data(Role.SORT), right.data(Role.SORT)
        if type(first) is type(second) or (isinstance(first, int | float) and isinstance(second, int | float)):
            return bool(first < second)
        return str(first) < str(second)
