"""Rows of a table or tree on the clipboard: as text for spreadsheets, and as a table of HTML for letters and mails."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator, Sequence

from PySide6.QtCore import QAbstractItemModel, QMimeData, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableView, QTreeView

from spoutline.documents.tabular.cells import shielded
from spoutline.gui.escaping import rich

Index = QModelIndex | QPersistentModelIndex
_CELLS = "application/x-spoutline-cells"
_INDENT = "    "  # of a row below another
_HORIZONTAL, _SHOWN = Qt.Orientation.Horizontal, Qt.ItemDataRole.DisplayRole


def copy_rows(view: QTableView | QTreeView, *, whole: bool) -> None:
    """Put the chosen rows, or the whole table, on the clipboard under the titles of its columns, as they are seen.

    Columns stand in the order of the screen; rows of a tree follow their parents, folded ones too, set in below them.
    """
    titles, rows = _seen(view, None if whole else {_row_key(index) for index in view.selectedIndexes()})
    if rows:
        _put_on_clipboard(titles, rows)


def copy_matrix(view: QTableView) -> None:
    """Put a whole matrix on the clipboard, its columns and its rows under their names."""
    titles, rows = _seen(view, None)
    names = [str(view.model().headerData(row, Qt.Orientation.Vertical, _SHOWN) or "") for row in range(len(rows))]
    if rows:
        _put_on_clipboard(["", *titles], [[name, *cells] for name, cells in zip(names, rows, strict=True)])


def copy_whole(view: QTableView, *, cells: str) -> None:
    """Put a whole table on the clipboard under the titles of its columns, and beside it its bare ``cells``."""
    _put_on_clipboard(*_seen(view, None), cells=cells)


def copied_cells() -> str:
    """Return the bare cells of a whole table that was copied in the program; empty for anything else."""
    data = QGuiApplication.clipboard().mimeData()
    return bytes(data.data(_CELLS).data()).decode("utf-8") if data.hasFormat(_CELLS) else ""


def _seen(view: QTableView | QTreeView, chosen: set[tuple[int, ...]] | None) -> tuple[list[str], list[list[str]]]:
    """Return titles and rows; of the ``chosen`` rows alone where such are named."""
    header = view.horizontalHeader() if isinstance(view, QTableView) else view.header()
    columns = _columns(header)
    titles = [str(view.model().headerData(column, _HORIZONTAL, _SHOWN) or "") for column in columns]
    rows = [
        _cells(index, columns, depth)
        for index, depth in _rows(view.model())
        if chosen is None or _row_key(index) in chosen
    ]
    return titles, rows


def _put_on_clipboard(titles: Sequence[str], rows: Sequence[Sequence[str]], cells: str = "") -> None:
    """Put titles and rows on the clipboard, parted by tabulators, and as HTML; no text is taken for a formula.

    ``cells`` are the same without titles, as they are, for tables of the program.
    """
    buffer = io.StringIO(newline="")
    writer = csv.writer(buffer, delimiter="\t", lineterminator="\n")
    for row in (titles, *rows) if any(titles) else rows:
        writer.writerow([shielded(text) for text in row])
    data = QMimeData()
    data.setText(buffer.getvalue())
    data.setHtml(_table(titles, rows))
    if cells:
        data.setData(_CELLS, cells.encode("utf-8"))
    QGuiApplication.clipboard().setMimeData(data)


def _table(titles: Sequence[str], rows: Sequence[Sequence[str]]) -> str:
    head = "".join(f'<th scope="col">{rich(title)}</th>' for title in titles)
    body = "".join(f"<tr>{''.join(f'<td>{rich(shielded(text))}</td>' for text in row)}</tr>" for row in rows)
    heading = f"<thead><tr>{head}</tr></thead>" if any(titles) else ""
    return f"<table>{heading}<tbody>{body}</tbody></table>"


def _columns(header: QHeaderView) -> list[int]:
    seen = (header.logicalIndex(place) for place in range(header.count()))
    return [column for column in seen if not header.isSectionHidden(column)]


def _rows(model: QAbstractItemModel, parent: Index | None = None, depth: int = 0) -> Iterator[tuple[QModelIndex, int]]:
    above = QModelIndex() if parent is None else parent
    for row in range(model.rowCount(above)):
        index = model.index(row, 0, above)
        yield index, depth
        yield from _rows(model, index, depth + 1)


def _row_key(index: Index) -> tuple[int, ...]:
    above = index.parent()
    return (*(_row_key(above) if above.isValid() else ()), index.row())


def _cells(index: QModelIndex, columns: Sequence[int], depth: int) -> list[str]:
    texts = [str(index.siblingAtColumn(column).data(_SHOWN) or "") for column in columns]
    return [f"{_INDENT * depth}{texts[0]}", *texts[1:]] if texts else texts


class WholeRows:
    """What Ctrl+A and Ctrl+C do in a view of which one row at a time is chosen: all rows for once, then one again."""

    def __init__(self, view: QTableView | QTreeView) -> None:
        self._view = view
        self._all = False

    def choose_all(self) -> None:
        """Choose all rows until the next click or key."""
        self._all = True
        self._view.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self._view.selectAll()

    def choose_one(self) -> None:
        """Choose the current row alone again."""
        if not self._all:
            return
        self._all = False
        self._view.clearSelection()
        self._view.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        here = self._view.currentIndex()
        if here.isValid():
            flags = self._view.selectionModel().SelectionFlag
            rows = self._view.selectionBehavior() is QAbstractItemView.SelectionBehavior.SelectRows
            chosen = flags.ClearAndSelect | flags.Rows if rows else flags.ClearAndSelect
            self._view.selectionModel().select(here, chosen)

    def copy(self) -> None:
        """Put what is chosen on the clipboard."""
        copy_rows(self._view, whole=self._all)
