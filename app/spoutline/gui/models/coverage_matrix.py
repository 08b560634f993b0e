"""The coverage map as a matrix: liquid, duty and vapour down, outlets across; cells come as they are answered."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from spoutline.explain.plan.coverage_text import cell_text, liquid_text, spoken_text
from spoutline.explain.plan.story import Story
from spoutline.gui.roles import Role, Tone
from spoutline.model.coverage_kinds import OutletKind
from spoutline.model.coverage_map import CellState, CoverageCell, LiquidClass
from spoutline.model.survey import Duty, VapourStatus
from spoutline.planning.keeping.coverage_map import climate_of

Index = QModelIndex | QPersistentModelIndex
_ROOT = QModelIndex()
_Row = tuple[LiquidClass, Duty, VapourStatus]
_TONES = {CellState.FITS: Tone.GOOD, CellState.NOTHING_FITS: Tone.BAD, CellState.NOT_DECIDED: Tone.QUESTION}


class CoverageMatrix(QAbstractTableModel):
    """Holds the cells of one climate band; a row appears with the first combination of it that may be asked."""

    def __init__(self, story: Story, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._story = story
        self._outlets: tuple[OutletKind, ...] = ()
        self._rows: list[_Row] = []
        self._cells: dict[tuple[_Row, OutletKind], CoverageCell] = {}

    def begin(self, outlets: Sequence[OutletKind], story: Story) -> None:
        """Show an empty map over these outlets, in these words."""
        self.beginResetModel()
        self._story, self._outlets = story, tuple(outlets)
        self._rows, self._cells = [], {}
        self.endResetModel()

    def take(self, cell: CoverageCell) -> None:
        """Show one more answer."""
        asked = cell.combination
        row: _Row = (asked.liquid, asked.duty, asked.vapour)
        self._cells[row, asked.outlet] = cell
        if row in self._rows:
            place = self.index(self._rows.index(row), self._outlets.index(asked.outlet))
            self.dataChanged.emit(place, place)
        elif cell.state is not CellState.NOT_ASKED:
            self.beginInsertRows(QModelIndex(), len(self._rows), len(self._rows))
            self._rows.append(row)
            self.endInsertRows()

    def cell(self, index: Index) -> CoverageCell | None:
        """Return the answer in a place; None while it is not there yet."""
        return self._cells.get((self._rows[index.row()], self._outlets[index.column()])) if index.isValid() else None

    def rowCount(self, parent: Index = _ROOT) -> int:
        """Qt: return the number of rows."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = _ROOT) -> int:
        """Qt: return the number of columns."""
        return 0 if parent.isValid() else len(self._outlets)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """Qt: return what a cell shows; its mark, its number and its words each say whether a set is there."""
        cell = self.cell(index)
        if cell is None:
            return "…" if index.isValid() and role == Qt.ItemDataRole.DisplayRole else None
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return cell_text(cell, self._story)
            case (
                Qt.ItemDataRole.ToolTipRole
                | Qt.ItemDataRole.AccessibleTextRole
                | Qt.ItemDataRole.AccessibleDescriptionRole
            ):
                return spoken_text(cell, climate_of(cell.combination.climate), self._story)
            case Role.TONE:
                return _TONES.get(cell.state)
            case Role.RECORD:
                return cell
        return None

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """Qt: return the outlet of a column, or liquid, duty and vapour status of a row."""
        if role not in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return None
        if orientation is Qt.Orientation.Horizontal:
            return self._story.word(self._outlets[section]) if section < len(self._outlets) else None
        if section >= len(self._rows):
            return None
        liquid, duty, vapour = self._rows[section]
        return f"{liquid_text(liquid, self._story)} · {self._story.word(duty)} · {self._story.word(vapour)}"
