"""Names elide where they are equal, not where they differ; columns hold their headers; empty tables teach."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, Qt
from PySide6.QtGui import QStandardItemModel
from PySide6.QtWidgets import QApplication, QHeaderView, QStyleOptionViewItem, QTableView
from pytestqt.qtbot import QtBot

from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.quotation_amounts import AmountRow
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.pages.quotation.offer import OfferPanel
from spoutline.gui.places import PLACES
from spoutline.gui.widgets.eliding import elided_where_equal, widths_by_need, widths_with_room
from spoutline.gui.widgets.lists import Table, Tree
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.language import Language

NOZZLES = [
    "Automatic gasoline nozzle 3/4 in, E10, no latch",
    "Automatic gasoline nozzle 3/4 in, E10, three-notch latch",
    "Automatic gasoline nozzle 1 in, E25, no latch",
]


def elided(text: str, room: int, among: list[str] = NOZZLES) -> str:
    return elided_where_equal(text, among, lambda shown: len(shown) <= room)


def test_what_names_share_goes_and_what_tells_them_apart_stays() -> None:
    assert [elided(one, 30) for one in NOZZLES] == [
        "Automatic … no latch",
        "Automatic … three-notch latch",
        "Automatic … 1 in, E25, no latch",
    ]
    assert len({elided(one, 12) for one in NOZZLES}) == 3


def test_what_fits_or_shares_nothing_stays_as_it_is() -> None:
    assert elided(NOZZLES[0], 60) == NOZZLES[0]
    assert elided("Swivel of great length", 5, ["Hose", "Swivel"]) == "Swivel of great length"
    assert elided("Swivel", 2, ["Swivel"]) == "Swivel"
    assert elided("Hose", 2, []) == "Hose"


@given(st.lists(st.text(alphabet="ab c", min_size=1, max_size=12), min_size=1, max_size=6), st.integers(0, 12))
def test_a_text_keeps_its_end(texts: list[str], room: int) -> None:
    for text in texts:
        shown = elided(text, room, texts)
        assert shown == text or text.endswith(shown.partition(" … ")[2])


@given(st.lists(st.tuples(st.integers(0, 400), st.integers(1, 200)), min_size=1, max_size=8), st.integers(1, 2000))
def test_columns_hold_their_headers_where_the_room_holds_them_all(pairs: list[tuple[int, int]], room: int) -> None:
    wanted, least = [one for one, _ in pairs], [low for _, low in pairs]
    widths = widths_with_room(wanted, least, room)
    if sum(least) < room:
        assert all(width >= low for width, low in zip(widths, least, strict=True))
        assert sum(widths) <= max(room, sum(wanted)) or sum(widths) == room
        assert sum(widths) <= room or sum(wanted) <= room
    else:
        assert sum(widths) <= room


def test_a_narrow_column_shows_the_ends_of_names(qtbot: QtBot, qapp: QApplication) -> None:
    table = Table("Nozzles", shares=(1,))
    qtbot.addWidget(table)
    model: RecordTable[str] = RecordTable((Column(title="Name", text=lambda one: one),))
    model.show_records(NOZZLES)
    table.setModel(model)
    table.resize(230, 200)
    table.show()
    shown = QStyleOptionViewItem()
    shown.widget, shown.font = table, table.font()
    table.itemDelegate().initStyleOption(shown, model.index(0, 0))
    assert shown.text == "Automatic … no latch"
    assert model.index(0, 0).data() == NOZZLES[0]  # what is copied and told stays whole


def test_an_empty_table_says_what_comes_here(qtbot: QtBot, qapp: QApplication) -> None:
    table = Table("Wear", shares=(1,))
    qtbot.addWidget(table)
    model: RecordTable[str] = RecordTable((Column(title="Part", text=lambda one: one),))
    table.setModel(model)
    table.resize(400, 200)
    table.show()
    bare = table.grab().toImage()
    table.teach("Parts that were replaced come here.")
    assert table.grab().toImage() != bare
    assert table.accessibleDescription() == "Parts that were replaced come here."


@pytest.mark.parametrize("size", [(1280, 720), (1440, 900)])
def test_no_header_of_a_table_in_view_is_cut_off(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, size: tuple[int, int]
) -> None:
    cut = []
    for record in PLACES:
        window.actions_by_id[record.action].trigger()
        window.resize(*size)
        QApplication.processEvents()
        for table in workplace.views.currentWidget().findChildren(QTableView):
            header: QHeaderView = table.horizontalHeader()
            if not table.isVisible() or not header.isVisible() or table.horizontalScrollBar().maximum():
                continue
            cut += [
                (record.place, table.accessibleName(), table.model().headerData(column, Qt.Orientation.Horizontal))
                for column in range(header.count())
                if header.sectionSize(column)
                < header.fontMetrics().horizontalAdvance(
                    str(table.model().headerData(column, Qt.Orientation.Horizontal))
                )
                + 12  # what the style sheet leaves free on both sides of a title
            ]
    assert cut == []


def test_an_empty_quotation_page_teaches_and_begins(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.show_quotations()
    page = workplace.quotation_page
    offer = page.panel.offer
    assert offer.empty.isVisible()
    assert "terms" in offer.empty.words_label.text()
    page.terms.use_file(workplace.session.workbench.quoting().terms().demo_terms())
    qtbot.waitUntil(lambda: offer.empty.button.text().replace("&", "") == "Quote this survey", timeout=10_000)
    offer.empty.button.click()
    qtbot.waitUntil(lambda: page.quotation is not None, timeout=60_000)
    assert offer.amount_table.isVisible()
    assert not offer.empty.isVisible()


def test_a_text_that_begins_with_what_tells_it_apart_keeps_its_beginning(qtbot: QtBot) -> None:
    pulls = ["135–247 lbf, single-use, 3/4 NPT, E10 B5 B20", "135–247 lbf, reconnectable, 3/4 NPT, E10 B5 B20"]
    shown = [painted(qtbot, pulls, leads=leads) for leads in (True, False)]
    assert shown[0] == pulls  # what has no room is then cut at its end
    assert not any(text.startswith("135–247 lbf, ") for text in shown[1])


def painted(qtbot: QtBot, texts: list[str], *, leads: bool) -> list[str]:
    """Return what is given to the painter of a narrow cell, row by row."""
    model: RecordTable[str] = RecordTable((Column(title="Differs in", text=str, leads=leads),))
    model.show_records(texts)
    table = Table("Parts")
    qtbot.addWidget(table)
    table.setModel(model)
    table.setColumnWidth(0, 90)
    found = []
    for row in range(len(texts)):
        option = QStyleOptionViewItem()
        table.initViewItemOption(option)
        table.itemDelegate().initStyleOption(option, model.index(row, 0))
        found.append(option.text)
    return found


TITLES = (  # of the row of drive-offs, in the four languages of the window
    "◆ Drive-offs expected, all years",
    "◆ Arranques con manguera esperados, todos los años",
    "◆ Erwartete Abrisse, alle Jahre",
    "◆ Départs attendus, toutes années",
)


def test_titles_of_amounts_are_read_whole_however_narrow_their_column_is(qtbot: QtBot) -> None:
    offer = OfferPanel()
    qtbot.addWidget(offer)
    table, short = offer.amount_table, "Total"
    columns: tuple[Column[AmountRow], ...] = tuple(
        Column(title=str(at), text=lambda row, at=at: row.title if not at else "1,234.50") for at in range(5)
    )
    rows = [AmountRow(title, ("",) * 4, differs=True) for title in (short, *TITLES)]
    many = [AmountRow(f"{number} part of a name that needs some room", ("",) * 4, True) for number in range(200)]
    offer.middle.setCurrentWidget(table)
    offer.amounts.replace_columns(columns)
    offer.amounts.show_records([*rows, *many])
    offer.show()
    for width in (900, 520, 380):
        offer.resize(width, 700)
        QApplication.processEvents()
        table.fit_columns()
        room = QRect(0, 0, table.columnWidth(0) - 16, 10_000)
        for row, title in enumerate((short, *TITLES)):
            option = QStyleOptionViewItem()
            table.initViewItemOption(option)
            table.itemDelegate().initStyleOption(option, table.model().index(row, 0))
            assert option.text == title  # type: ignore[attr-defined]
            assert option.features & QStyleOptionViewItem.ViewItemFeature.WrapText  # type: ignore[attr-defined]
            needed = table.fontMetrics().boundingRect(room, int(Qt.TextFlag.TextWordWrap), title).height()
            assert table.rowHeight(row) >= needed + 4
        assert table.rowHeight(0) == table.rowHeight(199)  # one line is as high as ever, and none far down is measured
    assert table.rowHeight(2) > table.rowHeight(0)


def test_a_tree_gives_each_column_the_room_of_its_title(qtbot: QtBot) -> None:
    tree, model = (
        Tree("Checks", shares=(30, 25, 22, 16, 13)),
        NodeTree(("Check", "Value", "Limit", "Margin", "Outcome")),
    )
    qtbot.addWidget(tree)
    tree.setModel(model)
    tree.resize(440, 200)
    tree.show()
    tree.fit_columns()
    heads = tree.header().fontMetrics()
    for column in range(5):
        title = str(model.headerData(column, Qt.Orientation.Horizontal))
        assert tree.columnWidth(column) >= heads.horizontalAdvance(title) + 12
    assert sum(tree.columnWidth(column) for column in range(5)) <= tree.viewport().width()


def test_what_a_field_asks_for_is_read_whole(qtbot: QtBot, spoken: tuple[Language, MainWindow]) -> None:
    _, window = spoken
    workplace = window.workplace
    assert workplace is not None
    window.resize(1280, 800)
    workplace.show_catalogues(lambda: None)
    references = workplace.catalogues_page.references_panel
    workplace.catalogues_page.tabs.setCurrentWidget(references)
    QApplication.processEvents()
    workplace.show_installer()
    inspections = workplace.installer_page.inspection_panel
    workplace.installer_page.tabs.setCurrentWidget(inspections)
    QApplication.processEvents()
    fields = (*references.edits, references.remark_edit, inspections.done_by_edit, inspections.reading_edit)
    assert [
        field.placeholderText()
        for field in (*fields, inspections.instruments_edit)
        if field.fontMetrics().horizontalAdvance(field.placeholderText()) > field.width() - 14
    ] == []


def test_a_list_that_is_being_read_says_so(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.context.jobs.hold()  # nothing is read yet
    workplace.show_catalogues(lambda: None)
    page = workplace.catalogues_page
    assert page.shelf_panel.table.accessibleDescription() == "Looking…"
    workplace.context.jobs.let_go()
    qtbot.waitUntil(lambda: bool(page.shelf_panel.model.records), timeout=10_000)
    assert page.shelf_panel.table.accessibleDescription() == ""
    workplace.context.jobs.hold()
    page.tabs.setCurrentWidget(page.entries_panel)
    table = page.entries_panel.table
    assert table.accessibleDescription().startswith("Reading Demonstration")
    workplace.context.jobs.let_go()
    qtbot.waitUntil(lambda: bool(page.entries_panel.model.records), timeout=10_000)
    assert table.accessibleDescription().startswith("The parts of the catalog in hand come here.")


@given(st.lists(st.tuples(st.integers(0, 400), st.integers(0, 400)), min_size=1, max_size=6))
def test_a_column_gives_what_it_does_not_need_to_those_that_lack(columns: list[tuple[int, int]]) -> None:
    wanted, needed = [one for one, _ in columns], [one for _, one in columns]
    widths = widths_by_need(wanted, needed)
    assert sum(wanted) - len(columns) <= sum(widths) <= sum(wanted)
    for width, share, need in zip(widths, wanted, needed, strict=True):
        low, high = sorted((share, need))
        assert low - 1 <= width <= high or width == share  # no column gains beyond its need, none falls below it
    if sum(needed) <= sum(wanted):
        assert all(width >= need - 1 for width, need in zip(widths, needed, strict=True))


def test_the_name_takes_the_room_that_the_other_columns_do_not_need(qtbot: QtBot) -> None:
    columns = tuple(Column[str](title=title, text=text) for title, text in (("Part", lambda _: "QW-1"), ("Name", str)))
    model: RecordTable[str] = RecordTable(columns)
    model.show_records((NOZZLES[0],))
    table = Table("Parts", shares=(1, 1), whole=(0,))
    qtbot.addWidget(table)
    table.setModel(model)
    needed = table.sizeHintForColumn(1)
    table.resize(needed + 150, 200)
    table.show()
    table.fit_columns()
    assert table.columnWidth(1) >= needed
    assert table.columnWidth(0) >= table.sizeHintForColumn(0)


class _Asked(QStandardItemModel):
    """Rows that note which of them were asked for their text."""

    def __init__(self, rows: int, columns: int) -> None:
        super().__init__(rows, columns)
        self.rows_asked: dict[int, set[int]] = {column: set() for column in range(columns)}

    def data(self, index: QModelIndex | QPersistentModelIndex, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        if role == Qt.ItemDataRole.DisplayRole:
            self.rows_asked[index.column()].add(index.row())
        return super().data(index, role)


def test_of_texts_that_may_be_cut_only_those_about_the_view_are_measured(qtbot: QtBot) -> None:
    """A stock of thousands of rows would hold the window up at each change of its size."""
    model = _Asked(3_000, 4)
    table = Table("Stock", shares=(3, 5, 3, 3), whole=(1,))
    qtbot.addWidget(table)
    table.setModel(model)
    table.resize(800, 300)
    table.show()
    table.fit_columns()
    assert len(model.rows_asked[1]) > 500  # never cut, so measured farther
    assert all(0 < len(model.rows_asked[column]) < 200 for column in (0, 2, 3))
