"""What goes to the clipboard: whole tables under their titles, and the drawing as a picture; what a drag measures."""

from __future__ import annotations

import csv
import io
import re
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide6.QtCore import QModelIndex, QPoint, Qt
from PySide6.QtGui import QGuiApplication, QImage, QStandardItem, QStandardItemModel
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from documents import plan_factory as factory
from documents.readers import story
from spoutline.documents.drawing.position import position_drawing
from spoutline.gui.widgets.cell_table import CellTable
from spoutline.gui.widgets.drawing_view import DrawingView
from spoutline.gui.widgets.lists import Table, Tree
from spoutline.gui.window.workplace import Workplace

_CTRL = Qt.KeyboardModifier.ControlModifier


def filled() -> QStandardItemModel:
    model = QStandardItemModel()
    model.setHorizontalHeaderLabels(["Part", "Price", "Note"])
    for texts in (("A-1", "12.50", "=1+1"), ("B & C", "3.00", "<b>two\nlines</b>")):
        model.appendRow([QStandardItem(text) for text in texts])
    return model


def copied_rows() -> list[list[str]]:
    text = QGuiApplication.clipboard().text()
    return list(csv.reader(io.StringIO(text, newline=""), delimiter="\t"))


def copied_html() -> list[list[str]]:
    data = QGuiApplication.clipboard().mimeData()
    assert data.hasHtml()
    table = re.search(r"<table>.*</table>", data.html(), re.DOTALL)
    assert table is not None
    root = ElementTree.fromstring(table[0].replace("<br>", "\n"))
    return [["".join(cell.itertext()) for cell in row] for row in root.iter("tr")]


WHOLE = [["Part", "Price", "Note"], ["A-1", "12.50", "'=1+1"], ["B & C", "3.00", "<b>two\nlines</b>"]]


def test_a_whole_table_is_copied_with_its_titles_and_no_cell_is_a_formula(qtbot: QtBot) -> None:
    table, model = Table("Parts"), filled()
    qtbot.addWidget(table)
    table.setModel(model)
    table.pick_row(1)
    QTest.keyClick(table, Qt.Key.Key_A, _CTRL)
    assert len(table.selectionModel().selectedRows()) == 2
    QTest.keyClick(table, Qt.Key.Key_C, _CTRL)
    assert copied_rows() == WHOLE
    assert copied_html() == WHOLE
    # the next key or click goes on with one row
    QTest.keyClick(table, Qt.Key.Key_Up)
    assert [index.row() for index in table.selectionModel().selectedRows()] == [0]
    QTest.keyClick(table, Qt.Key.Key_C, _CTRL)
    assert copied_rows() == WHOLE[:2]


def test_columns_are_copied_as_they_are_seen(qtbot: QtBot) -> None:
    table, model = Table("Parts"), filled()
    qtbot.addWidget(table)
    table.setModel(model)
    table.horizontalHeader().moveSection(1, 0)
    table.setColumnHidden(2, True)
    QTest.keyClick(table, Qt.Key.Key_A, _CTRL)
    QTest.keyClick(table, Qt.Key.Key_C, _CTRL)
    assert copied_rows() == [["Price", "Part"], ["12.50", "A-1"], ["3.00", "B & C"]]


def test_a_tree_is_copied_with_what_is_folded(qtbot: QtBot) -> None:
    tree, model = Tree("Positions", shares=(1, 1)), QStandardItemModel()
    qtbot.addWidget(tree)
    model.setHorizontalHeaderLabels(["Position", "Outcome"])
    above = QStandardItem("1A")
    above.appendRow([QStandardItem("hose"), QStandardItem("fits")])
    model.appendRow([above, QStandardItem("a set fits")])
    tree.setModel(model)
    assert not tree.isExpanded(model.index(0, 0, QModelIndex()))
    QTest.keyClick(tree, Qt.Key.Key_A, _CTRL)
    QTest.keyClick(tree, Qt.Key.Key_C, _CTRL)
    assert copied_rows() == [["Position", "Outcome"], ["1A", "a set fits"], ["    hose", "fits"]]


def test_cells_that_can_be_pasted_back_are_copied_as_they_are_and_as_a_table(qtbot: QtBot) -> None:
    table, model = CellTable("Cells"), filled()
    qtbot.addWidget(table)
    table.setModel(model)
    table.selectAll()
    QTest.keyClick(table, Qt.Key.Key_C, _CTRL)
    assert copied_rows() == WHOLE
    assert copied_html() == WHOLE
    # pasted back the cells are what they were, without titles
    written: list[dict[tuple[int, int], str]] = []
    table.written.connect(written.append)
    table.choose([(0, 0)])
    table.paste_cells()
    bare = [["A-1", "12.50", "=1+1"], ["B & C", "3.00", "<b>two\nlines</b>"]]
    assert written == [{(row, column): bare[row][column] for row in range(2) for column in range(3)}]
    table.choose([(0, 0)])
    QTest.keyClick(table, Qt.Key.Key_C, _CTRL)
    assert copied_rows() == [["A-1"]]
    assert not QGuiApplication.clipboard().mimeData().hasHtml()


@pytest.fixture
def view(qtbot: QtBot) -> DrawingView:
    view = DrawingView("Drawing")
    qtbot.addWidget(view)
    view.resize(520, 380)
    view.show()
    view.show_drawing(position_drawing(factory.fitting_plan(), story()))
    return view


def test_the_drawing_is_copied_as_a_picture(view: DrawingView) -> None:
    QGuiApplication.clipboard().clear()
    QTest.keyClick(view, Qt.Key.Key_C, _CTRL)
    image = QGuiApplication.clipboard().image()
    assert (image.width(), image.height()) == (1040, 760)
    colours = {image.pixelColor(x, y).name() for x in range(0, 1040, 7) for y in range(0, 760, 7)}
    assert len(colours) > 3  # a sheet with lines on it


def test_a_drag_measures_a_true_distance_and_moves_the_drawing_again_afterwards(view: DrawingView) -> None:
    """Against the view's own scale, which the test of the drawing's sizes holds: pixels over pixels per metre."""
    now = view.view()
    assert now is not None
    QTest.keyClick(view, Qt.Key.Key_M)
    assert view.is_measuring
    QTest.mousePress(view, Qt.MouseButton.LeftButton, pos=QPoint(100, 100))
    QTest.mouseMove(view, QPoint(130, 140))
    QTest.mouseRelease(view, Qt.MouseButton.LeftButton, pos=QPoint(130, 140))
    assert view.measured_m == pytest.approx(50.0 / now.across)  # 3, 4, 5
    assert view.view() == now
    words: list[float] = []
    view.length_words = lambda length_m: words.append(length_m) or "a length"  # type: ignore[func-returns-value]
    view.grab()
    assert words == [view.measured_m]
    QTest.keyClick(view, Qt.Key.Key_Escape)
    assert not view.is_measuring
    assert view.measured_m is None


def test_the_menu_offers_to_copy_save_and_measure(view: DrawingView, qtbot: QtBot) -> None:
    menu = view.menu()
    copied, saved, measured = menu.actions()
    QGuiApplication.clipboard().clear()
    copied.trigger()
    assert not QGuiApplication.clipboard().image().isNull()
    with qtbot.waitSignal(view.saving_wanted):
        saved.trigger()
    measured.trigger()
    assert view.is_measuring
    assert view.menu().actions()[2].isChecked()


def test_the_drawing_of_a_position_is_saved_as_svg_and_png(
    qtbot: QtBot, workplace: Workplace, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    side = workplace.side_panel
    said: list[str] = []
    side.noted.connect(said.append)
    qtbot.waitUntil(lambda: side.drawing.drawing is not None, timeout=20_000)
    svg, png = tmp_path / "set.svg", tmp_path / "set.png"
    for name, kind in (("set.svg", "SVG (*.svg)"), ("set", "PNG (*.png)")):
        chosen = (str(tmp_path / name), kind)
        monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_, chosen=chosen: chosen)
        side.drawing.saving_wanted.emit()
        target = svg if kind.startswith("SVG") else png
        qtbot.waitUntil(lambda: bool(said), timeout=20_000)
        assert target.exists(), said
        said.clear()
    root = ElementTree.parse(svg).getroot()
    assert root.tag == "{http://www.w3.org/2000/svg}svg"
    texts = "".join(root.itertext())
    drawing = side.drawing.drawing
    assert drawing is not None
    assert drawing.title in texts
    assert QImage(str(png)).width() == 2 * side.drawing.width()
