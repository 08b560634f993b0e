"""Every table of the window goes to the clipboard whole: Ctrl+A and Ctrl+C, with its headings, as text and as HTML.

What is copied is held against what the views' own models tell, cell by cell; views that have nothing to show yet are
given rows that are written here.
"""

from __future__ import annotations

import ast
import csv
import io
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide6.QtCore import QAbstractItemModel, QModelIndex, Qt
from PySide6.QtGui import QGuiApplication, QStandardItem, QStandardItemModel
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QHeaderView, QTableView, QTreeView
from pytestqt.qtbot import QtBot

from gui.page_rooms import make_late_panels, settle
from spoutline import gui
from spoutline.gui.widgets.lists import Matrix
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace

SHOWN = Qt.ItemDataRole.DisplayRole
View = QTableView | QTreeView
_LAID_OVER = "heldColumn"  # the first column of a table laid over it; the keyboard is always in the table
_PAGES: tuple[Callable[[Workplace], None], ...] = (
    Workplace.show_start,
    Workplace.show_walk,
    Workplace.show_grid,
    Workplace.show_bill,
    Workplace.show_quotations,
    Workplace.show_conversion,
    Workplace.show_installer,
    lambda place: place.show_catalogues(lambda: None),
)


def stand_in() -> QStandardItemModel:
    model = QStandardItemModel()
    model.setHorizontalHeaderLabels(["Part", "Note"])
    model.setVerticalHeaderLabels(["first", "second"])
    for texts in (("A-1", "=1+1"), ("B & C", "two\nlines")):
        model.appendRow([QStandardItem(text) for text in texts])
    return model


def rows_of(model: QAbstractItemModel, parent: QModelIndex, depth: int = 0) -> Iterator[tuple[QModelIndex, int]]:
    for row in range(model.rowCount(parent)):
        index = model.index(row, 0, parent)
        yield index, depth
        yield from rows_of(model, index, depth + 1)


def guarded(text: str) -> str:
    """Return a text as a spreadsheet takes it for no formula (OWASP, CSV injection): an apostrophe in front."""
    return f"'{text}" if text.lstrip(" \n")[:1] in tuple("=+-@\t\r＝＋－＠") and text.strip() else text


def told(view: View) -> list[list[str]]:
    """Return headings and cells of a view in the order of the screen, as its model tells them."""
    header: QHeaderView = view.horizontalHeader() if isinstance(view, QTableView) else view.header()
    columns = [header.logicalIndex(at) for at in range(header.count())]
    columns = [one for one in columns if not header.isSectionHidden(one)]
    model = view.model()
    heads = [str(model.headerData(one, Qt.Orientation.Horizontal, SHOWN) or "") for one in columns]
    cells = [
        [
            f"{'    ' * depth if not at else ''}{index.siblingAtColumn(one).data(SHOWN) or ''}"
            for at, one in enumerate(columns)
        ]
        for index, depth in rows_of(model, QModelIndex())
    ]
    return [[guarded(text) for text in row] for row in ([heads, *cells] if any(heads) else cells)]


def copied(view: View) -> tuple[list[list[str]], list[list[str]]]:
    QGuiApplication.clipboard().clear()
    QTest.keyClick(view, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClick(view, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    QApplication.processEvents()
    data = QGuiApplication.clipboard().mimeData()
    text = list(csv.reader(io.StringIO(data.text(), newline=""), delimiter="\t"))
    table = re.search(r"<table>.*</table>", data.html(), re.DOTALL)
    if table is None:
        return text, []
    root = ElementTree.fromstring(table[0].replace("<br>", "\n").replace("&nbsp;", " "))
    return text, [["".join(cell.itertext()) for cell in row] for row in root.iter("tr")]


def is_matrix(view: View) -> bool:
    """Say whether the rows of a view are named at their left: the coverage map copies those names too."""
    return isinstance(view, Matrix)


def test_every_table_of_every_page_is_copied_with_its_headings(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    seen: set[View] = set()
    filled = 0
    for show in _PAGES:
        show(workplace)
        make_late_panels(window)
        settle(window)
        for view in (*window.findChildren(QTableView), *window.findChildren(QTreeView)):
            if view in seen or view.objectName() == _LAID_OVER or view.model() is None:
                continue
            seen.add(view)
            if not view.model().rowCount():
                view.setModel(stand_in())
            else:
                filled += 1
            wanted = told(view)
            if is_matrix(view):
                names = [view.model().headerData(row, Qt.Orientation.Vertical, SHOWN) for row in range(len(wanted) - 1)]
                wanted = [[first, *row] for first, row in zip(["", *map(str, names)], wanted, strict=True)]
            for form, found in zip(("text", "html"), copied(view), strict=True):
                plain = [[" ".join(cell.split()) for cell in row] for row in found]
                assert plain == [[" ".join(cell.split()) for cell in row] for row in wanted], (
                    view.accessibleName(),
                    form,
                )
    assert len(seen) > 25
    assert filled > 5


def test_no_table_is_made_but_of_the_kinds_that_are_copied_whole() -> None:
    """Walk the source of the window: a bare view of Qt would bring its own manners."""
    folder, found = Path(gui.__file__).parent, []
    for path in sorted(folder.rglob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            is_call = isinstance(node, ast.Call) and isinstance(node.func, ast.Name)
            if is_call and node.func.id in {"QTableView", "QTreeView", "QTableWidget", "QTreeWidget"}:
                found.append(path.name)
    assert found == []


@pytest.mark.parametrize("bare", ["QTableWidget", "QTreeWidget"])
def test_tables_are_views_over_models(bare: str) -> None:
    texts = (path.read_text(encoding="utf-8") for path in Path(gui.__file__).parent.rglob("*.py"))
    assert not any(re.search(rf"\bclass \w+\({bare}\)", text) for text in texts)
