"""A tree of plain nodes as an item model: groups with rows below them."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from itertools import count

from PySide6.QtCore import QAbstractItemModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QFont

from spoutline.frozen import frozen
from spoutline.gui.models.marks import told_with_mark
from spoutline.gui.models.painted_roles import PaintedRoles
from spoutline.gui.roles import Role, Tone

Index = QModelIndex | QPersistentModelIndex
_ROOT = QModelIndex()


@frozen(kw_only=True)
class Node:
    """One row: its cells, the value behind it, the rows below it. ``spans`` lets the first cell take the whole row.

    ``positions`` are the labels of the positions that the cell in column ``names_at`` names and leads to.
    """

    cells: tuple[str, ...]
    record: object = None
    children: tuple[Node, ...] = ()
    tone: Tone | None = None
    hint: str = ""
    is_head: bool = False
    spans: bool = False
    positions: tuple[str, ...] = ()
    names_at: int = 0


_ids = count(1)  # none is given twice, so that an index kept too long names no row of later


class _Placed:
    """A node in its place, so that an index can find its parent.

    An index names it by ``id``: Qt keeps no object of Python alive, and a view may ask for a row that is gone.
    """

    __slots__ = ("children", "id", "node", "parent", "row")

    def __init__(self, node: Node, parent: _Placed | None, row: int) -> None:
        self.node, self.parent, self.row, self.id = node, parent, row, next(_ids)
        self.children = [_Placed(child, self, place) for place, child in enumerate(node.children)]


class NodeTree(PaintedRoles, QAbstractItemModel):
    """Shows nodes below titled columns.

    ``hint_of`` tells the hint of a row that has none of its own, by its record, a text; it is asked when a row is
    looked at.
    """

    def __init__(
        self, titles: Sequence[str], parent: QObject | None = None, *, hint_of: Callable[[str], str] | None = None
    ) -> None:
        super().__init__(parent)
        self._titles, self._hint_of = tuple(titles), hint_of
        self._place(())

    def show_nodes(self, nodes: Sequence[Node]) -> None:
        """Show other rows."""
        self.beginResetModel()
        self._place(nodes)
        self.endResetModel()

    def _place(self, nodes: Sequence[Node]) -> None:
        self._root = _Placed(Node(cells=(), children=tuple(nodes)), None, 0)
        self._note_places()

    def _note_places(self) -> None:
        self._by_id: dict[int, _Placed] = {}
        self._by_label: dict[str, _Placed] = {}
        for placed in self._all(self._root):
            self._by_id[placed.id] = placed
            if isinstance(placed.node.record, str):
                self._by_label.setdefault(placed.node.record, placed)

    def follow_nodes(self, nodes: Sequence[Node]) -> bool:
        """Show other rows; where none comes, goes or says another text, only their marks are told to be others.

        Returns
        -------
        bool
            Whether the rows were laid out anew, so that none is open or current any more.
        """
        if not _same_rows([placed.node for placed in self._root.children], nodes):
            self.show_nodes(nodes)
            return True
        for placed, node in zip(self._root.children, nodes, strict=True):
            self._mark_anew(placed, node)
        return False

    def fill_nodes(self, nodes: Sequence[Node], same: Callable[[object, object], bool]) -> bool:
        """Show what came since: rows whose records are the ``same`` stay where they are, open or current as they were.

        A row of one line may say more, and get rows below it; one may go, and others may come behind all. What is
        more than that is laid out anew.

        Returns
        -------
        bool
            Whether the rows were laid out anew, so that none is open or current any more.
        """
        rows = self._root.children
        kept = [placed for placed in rows if any(same(placed.node.record, node.record) for node in nodes)]
        stay = list(zip(kept, nodes, strict=False))
        if len(kept) > len(nodes) or not all(
            same(placed.node.record, node.record) and (not placed.node.children or _same_rows((placed.node,), (node,)))
            for placed, node in stay
        ):
            self.show_nodes(nodes)
            return True
        for placed in [one for one in reversed(rows) if one not in kept]:
            self._remove_rows(self._root, placed.row, placed.row)
        for placed, node in stay:
            self._fill(placed, node)
        self._add_rows(self._root, nodes[len(kept) :])
        return False

    def _fill(self, placed: _Placed, node: Node) -> None:
        if placed.children:
            self._mark_anew(placed, node)
            return
        if placed.node != node:
            placed.node = node
            last = len(self._titles) - 1
            self.dataChanged.emit(self._index_of(placed), self._index_of(placed, last))
            self._add_rows(placed, node.children)

    def _add_rows(self, above: _Placed, nodes: Sequence[Node]) -> None:
        if nodes:
            first = len(above.children)
            self.beginInsertRows(self._index_of(above), first, first + len(nodes) - 1)
            above.children.extend(_Placed(node, above, first + at) for at, node in enumerate(nodes))
            self._note_places()
            self.endInsertRows()

    def _remove_rows(self, above: _Placed, first: int, last: int) -> None:
        self.beginRemoveRows(self._index_of(above), first, last)
        del above.children[first : last + 1]
        for row, placed in enumerate(above.children):
            placed.row = row
        self._note_places()
        self.endRemoveRows()

    def _index_of(self, placed: _Placed, column: int = 0) -> QModelIndex:
        return QModelIndex() if placed is self._root else self.createIndex(placed.row, column, placed.id)

    def follow_row(self, node: Node) -> bool:
        """Mark the first row with the record of a node, a text, anew; say whether it is there with the same words."""
        placed = self._by_label.get(node.record) if isinstance(node.record, str) else None
        if placed is None or not _same_rows((placed.node,), (node,)):
            return False
        self._mark_anew(placed, node)
        return True

    def _mark_anew(self, placed: _Placed, node: Node) -> None:
        if placed.node == node:
            return
        placed.node = node
        last = len(self._titles) - 1
        self.dataChanged.emit(self.createIndex(placed.row, 0, placed.id), self.createIndex(placed.row, last, placed.id))
        for below, child in zip(placed.children, node.children, strict=True):
            self._mark_anew(below, child)

    def retitle(self, titles: Sequence[str]) -> None:
        """Give the columns other titles."""
        self.beginResetModel()
        self._titles = tuple(titles)
        self.endResetModel()

    def node_at(self, index: Index) -> Node | None:
        """Return the node of a row; None for no row."""
        placed = self._placed(index) if index.isValid() else None
        return placed.node if placed is not None else None

    def index_of(self, record: object) -> QModelIndex:
        """Return the first row with this record; an invalid index where there is none."""
        if isinstance(record, str):
            found = self._by_label.get(record)
            return self.createIndex(found.row, 0, found.id) if found is not None else QModelIndex()
        for placed in self._all(self._root):
            if placed.node.record == record and record is not None:
                return self.createIndex(placed.row, 0, placed.id)
        return QModelIndex()

    def spanning(self) -> tuple[QModelIndex, ...]:
        """Return the rows whose first cell takes the whole row."""
        return tuple(
            self.createIndex(placed.row, 0, placed.id) for placed in self._all(self._root) if placed.node.spans
        )

    def _all(self, placed: _Placed) -> Iterator[_Placed]:
        for child in placed.children:
            yield child
            if child.children:
                yield from self._all(child)

    def _placed(self, index: Index) -> _Placed | None:
        """Return the row of an index, the root for none; None for a row that is gone."""
        return self._by_id.get(index.internalId()) if index.isValid() else self._root

    def index(self, row: int, column: int, parent: Index = _ROOT) -> QModelIndex:
        """Qt: return the index of a child row."""
        above = self._placed(parent)
        children = above.children if above is not None else []
        if 0 <= row < len(children) and 0 <= column < len(self._titles):
            return self.createIndex(row, column, children[row].id)
        return QModelIndex()

    def parent(self, index: Index = _ROOT) -> QModelIndex:  # type: ignore[override]
        """Qt: return the index of the row above."""
        placed = self._placed(index) if index.isValid() else None
        above = placed.parent if placed is not None else None
        return (
            self.createIndex(above.row, 0, above.id)
            if above is not None and above.parent is not None
            else QModelIndex()
        )

    def rowCount(self, parent: Index = _ROOT) -> int:
        """Qt: return the number of rows below ``parent``."""
        placed = self._placed(parent) if parent.column() <= 0 else None
        return len(placed.children) if placed is not None else 0

    def columnCount(self, parent: Index = _ROOT) -> int:
        """Qt: return the number of columns."""
        return len(self._titles)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:  # noqa: PLR0911 - one line per role
        """Qt: return what a cell shows, or the record behind it."""
        node = self.node_at(index)
        if node is None:
            return None
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return node.cells[index.column()] if index.column() < len(node.cells) else ""
            case Qt.ItemDataRole.AccessibleTextRole:
                cell = node.cells[index.column()] if index.column() < len(node.cells) else ""
                return told_with_mark(cell, node.tone, self._hint(node)) if index.column() == 0 else cell
            case Qt.ItemDataRole.ToolTipRole:
                return self._hint(node) or None
            case Qt.ItemDataRole.FontRole if node.is_head:
                font = QFont()
                font.setBold(True)
                return font
            case Role.TONE:
                return node.tone if index.column() == 0 else None
            case Role.POSITIONS:
                return node.positions if index.column() == node.names_at else ()
            case Role.SPANS:
                return node.spans
            case Role.RECORD:
                return node.record
        return None

    def _hint(self, node: Node) -> str:
        asks = self._hint_of is not None and not node.hint and isinstance(node.record, str)
        return self._hint_of(str(node.record)) if self._hint_of is not None and asks else node.hint

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """Qt: return the title of a column."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return self._titles[section] if 0 <= section < len(self._titles) else None
        return None


def _same_rows(some: Sequence[Node], others: Sequence[Node]) -> bool:
    """Say whether nodes differ in nothing but their marks and hints."""
    if len(some) != len(others):
        return False
    return all(
        _kept_by_marks(one) == _kept_by_marks(other) and _same_rows(one.children, other.children)
        for one, other in zip(some, others, strict=True)
    )


def _kept_by_marks(node: Node) -> tuple[object, ...]:
    """Return what a row must keep to be marked anew and not laid out anew."""
    return node.cells, node.record, node.is_head, node.spans, node.positions, node.names_at
