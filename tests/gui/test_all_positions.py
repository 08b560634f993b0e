"""All positions at once: spreadsheet habits, filter and sort, the forecourt, dispensers repeated, tables read."""

from __future__ import annotations

import threading

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QGuiApplication, QPainter
from PySide6.QtWidgets import QLineEdit, QScrollArea
from pytestqt.qtbot import QtBot

from gui.table_dialogs import drive, take
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.dispensers import MirrorDialog, RepeatDialog, names_in
from spoutline.gui.dialogs.table_intake import TableIntakeDialog
from spoutline.gui.edits.command import make_edit
from spoutline.gui.models import position_grid
from spoutline.gui.pages.survey.grid_page import GridPage
from spoutline.gui.roles import Role, Tone
from spoutline.gui.session import SaveState, Session
from spoutline.gui.widgets import forecourt_view
from spoutline.gui.widgets.forecourt_view import Box, ForecourtView, Group, Tile
from spoutline.gui.widgets.legend import Legend
from spoutline.gui.widgets.marks import Mark
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.survey import Position, Survey
from spoutline.planning.refit.dispensers import with_copies
from spoutline.planning.survey_import.fields import FIELDS
from spoutline.units.accepted import UnitSystem

COLUMN = {field.key: number for number, field in enumerate(FIELDS)}


@pytest.fixture
def survey() -> Survey:
    """Return a station of four gasoline positions on two dispensers."""
    first = demo_survey("small_town").positions[0]
    labels = ("1A regular", "1B regular", "2A regular", "2B regular")
    positions = tuple(first.model_copy(update={"label": label, "dispenser": label[0]}) for label in labels)
    asked = ConversionAnswers(under_living_quarters=True)
    return demo_survey("small_town").model_copy(update={"positions": positions, "conversion": asked})


@pytest.fixture
def page(workplace: Workplace) -> GridPage:
    workplace.show_grid()
    return workplace.grid_page


def column_of(session: Session, key: str) -> list[object]:
    def answer(position: Position) -> object:
        value: object = position
        for name in key.split("."):
            value = getattr(value, name)
        return value

    return [answer(position) for position in session.survey.positions]


def choose(page: GridPage, key: str, *rows: int) -> None:
    page.table.setFocus()
    page.table.choose([(row, COLUMN[key]) for row in rows])


def press(qtbot: QtBot, page: GridPage, key: Qt.Key) -> None:
    qtbot.keyClick(page.table, key, Qt.KeyboardModifier.ControlModifier)


def test_a_cell_typed_is_one_edit_that_can_be_taken_back(page: GridPage, session: Session) -> None:
    index = page.proxy.index(1, COLUMN["liquid.blend_percent"])
    assert page.proxy.setData(index, "15 %")
    assert column_of(session, "liquid.blend_percent") == [10, 15, 10, 10]
    session.undo_stack.undo()
    assert column_of(session, "liquid.blend_percent") == [10, 10, 10, 10]


def test_fill_down_takes_the_uppermost_cell(qtbot: QtBot, page: GridPage, session: Session) -> None:
    """1 ft = 0.3048 m exactly (international yard and pound agreement, 1959)."""
    page.proxy.setData(page.proxy.index(0, COLUMN["outlet.height_m"]), "7 ft")
    choose(page, "outlet.height_m", 0, 1, 2)
    press(qtbot, page, Qt.Key.Key_D)
    heights = column_of(session, "outlet.height_m")
    assert heights[:3] == pytest.approx([7 * 0.3048] * 3, abs=1e-9)
    assert heights[3] != heights[0]
    assert len(session.survey.positions) == 4  # the menu's own Ctrl+D did not act


def test_copy_and_paste_go_through_the_clipboard_as_a_spreadsheet_writes_it(
    qtbot: QtBot, page: GridPage, session: Session
) -> None:
    QGuiApplication.clipboard().setText("E85\t85\nE15\t15\n")
    page.table.setFocus()
    page.table.choose([(1, COLUMN["grade"])])
    page.table.choose([(1, COLUMN["liquid.family"])])
    QGuiApplication.clipboard().setText("diesel\t20\ngasoline\t15\n")
    press(qtbot, page, Qt.Key.Key_V)
    assert column_of(session, "liquid.family") == ["gasoline", "diesel", "gasoline", "gasoline"]
    assert column_of(session, "liquid.blend_percent") == [10, 20, 15, 10]
    page.table.choose([(1, COLUMN["liquid.family"]), (1, COLUMN["liquid.blend_percent"])])
    press(qtbot, page, Qt.Key.Key_C)
    assert QGuiApplication.clipboard().text() == "diesel\t20 %\n"
    choose(page, "liquid.blend_percent", 0, 2, 3)
    QGuiApplication.clipboard().setText("0")
    press(qtbot, page, Qt.Key.Key_V)
    assert column_of(session, "liquid.blend_percent") == [0, 20, 0, 0]


def test_one_value_goes_into_all_chosen_cells_as_one_edit(qtbot: QtBot, page: GridPage, session: Session) -> None:
    choose(page, "prepay", 0, 2, 3)
    page.value_edit.setText("no")
    page.write_button.click()
    assert column_of(session, "prepay") == [False, True, False, False]
    assert session.undo_stack.undoText() == "Write 3 cells"
    choose(page, "supply.pressure_kpa", 0, 1)
    page.value_edit.setText("200 kPa")
    page.write_button.click()
    assert column_of(session, "supply.pressure_kpa")[:2] == [200, 200]
    qtbot.keyClick(page.table, Qt.Key.Key_Delete)
    assert column_of(session, "supply.pressure_kpa")[:2] == [None, None]


def test_what_cannot_be_written_is_told_and_nothing_is(page: GridPage, session: Session) -> None:
    before = session.survey
    choose(page, "liquid.blend_percent", 0, 1)
    page.table.write_all("120")
    assert session.survey == before
    assert "1A regular, Blend" in page.fault_label.text()
    choose(page, "label", 0, 1)
    page.table.write_all("same")
    assert "label of its own" in page.fault_label.text()
    choose(page, "label", 0)
    page.table.write_all("1A super")
    assert column_of(session, "label")[0] == "1A super"
    assert page.fault_label.isHidden()


def written(qtbot: QtBot, page: GridPage, text: str) -> None:
    """Type into the cell that is being written and press Return."""
    editor = page.table.viewport().findChildren(QLineEdit)[-1]  # the field before may not be gone yet
    editor.clear()
    qtbot.keyClicks(editor, text)
    qtbot.keyClick(editor, Qt.Key.Key_Return)


def test_return_goes_on_to_the_cell_below(qtbot: QtBot, page: GridPage, session: Session) -> None:
    choose(page, "grade", 0)
    for row, text in enumerate(("Plain", "Super"), start=1):
        page.table.edit(page.table.currentIndex())
        written(qtbot, page, text)
        qtbot.waitUntil(lambda at=row: page.table.currentIndex().row() == at)  # Qt commits after the key was handled
    assert column_of(session, "grade")[:3] == ["Plain", "Super", session.survey.positions[2].grade]
    assert page.table.currentIndex().row() == 2
    qtbot.keyClick(page.table, Qt.Key.Key_Return)
    assert page.table.currentIndex().row() == 3
    qtbot.keyClick(page.table, Qt.Key.Key_Return, Qt.KeyboardModifier.ShiftModifier)
    assert page.table.currentIndex().row() == 2


def test_a_choice_is_completed_as_it_is_typed(qtbot: QtBot, page: GridPage, session: Session) -> None:
    choose(page, "liquid.family", 1)
    page.table.edit(page.table.currentIndex())
    written(qtbot, page, "di")
    qtbot.waitUntil(lambda: column_of(session, "liquid.family")[1] == "diesel")


def test_a_liquid_written_as_its_label_brings_its_blend(page: GridPage, session: Session) -> None:
    """E85 is 85 percent ethanol in gasoline (16 CFR 306)."""
    page.proxy.setData(page.proxy.index(1, COLUMN["liquid.family"]), "E85")
    assert column_of(session, "liquid.blend_percent") == [10, 85, 10, 10]
    page.proxy.setData(page.proxy.index(1, COLUMN["liquid.family"]), "B20")
    assert (column_of(session, "liquid.family")[1], column_of(session, "liquid.blend_percent")[1]) == ("diesel", 20)
    page.table.choose([(0, COLUMN["liquid.family"])])
    QGuiApplication.clipboard().setText("E15\t10\n")
    page.table.paste_cells()
    assert column_of(session, "liquid.blend_percent")[0] == 10
    assert "E15 says 15 %" in page.fault_label.text()


def test_a_position_renamed_in_the_table_stays_the_one_looked_at(page: GridPage, session: Session) -> None:
    session.look_at("2A regular")
    page.proxy.setData(page.proxy.index(2, COLUMN["label"]), "2A plain")
    assert session.label == "2A plain"
    session.undo_stack.undo()
    assert session.label == "2A regular"


def test_rows_that_are_added_leave_the_place(page: GridPage, session: Session) -> None:
    choose(page, "liquid.family", 2)
    assert session.label == "2A regular"
    make_edit(session, with_copies(session.survey, "1", ("3",)), "Repeat dispenser 1")
    page.table.setFocus()
    assert session.label == "2A regular"
    assert page.table.currentIndex().row() == 2


def test_rows_pasted_beyond_the_end_become_positions(qtbot: QtBot, page: GridPage, session: Session) -> None:
    rows = "".join(f"{number}A regular\t{number}\tNorth\tgasoline\t15\n" for number in range(2, 50))
    choose(page, "label", 2)
    QGuiApplication.clipboard().setText(rows)
    press(qtbot, page, Qt.Key.Key_V)
    assert len(session.survey.positions) == 50
    assert column_of(session, "label")[2:] == [f"{number}A regular" for number in range(2, 50)]
    assert set(column_of(session, "liquid.blend_percent")[2:]) == {15}
    assert session.survey.positions[-1].outlet == session.survey.positions[1].outlet
    session.undo_stack.undo()
    assert len(session.survey.positions) == 4


def test_what_does_not_fit_into_the_table_is_not_cut_off(qtbot: QtBot, page: GridPage, session: Session) -> None:
    before = session.survey
    choose(page, "notes", 0)
    QGuiApplication.clipboard().setText("worn\tblue\n")
    press(qtbot, page, Qt.Key.Key_V)
    assert session.survey == before
    assert "further left" in page.fault_label.text()
    choose(page, "liquid.family", 3)
    QGuiApplication.clipboard().setText("diesel\t5\nbenzine\t5\n")
    press(qtbot, page, Qt.Key.Key_V)
    assert session.survey == before
    assert "Liquid: 'benzine'" in page.fault_label.text()


def test_one_row_is_pasted_into_every_chosen_row(qtbot: QtBot, page: GridPage, session: Session) -> None:
    page.table.setFocus()
    page.table.choose([(row, COLUMN["liquid.family"]) for row in (0, 2, 3)])
    QGuiApplication.clipboard().setText("diesel\t20\n")
    press(qtbot, page, Qt.Key.Key_V)
    assert column_of(session, "liquid.family") == ["diesel", "gasoline", "diesel", "diesel"]
    assert column_of(session, "liquid.blend_percent") == [20, 10, 20, 20]


def test_rows_pasted_with_titles_are_mapped(
    qtbot: QtBot, page: GridPage, session: Session, monkeypatch: pytest.MonkeyPatch
) -> None:
    def replace_all(dialog: TableIntakeDialog) -> None:
        qtbot.mouseClick(dialog.panel.missing_box, Qt.MouseButton.LeftButton)
        take(qtbot, dialog)

    drive(monkeypatch, qtbot, None, replace_all)
    choose(page, "label", 0)
    QGuiApplication.clipboard().setText("Product\tHose\tBlend\tIsland\ndiesel\t7A\t5\tWest\nDEF\t7B\t\t\n")
    press(qtbot, page, Qt.Key.Key_V)
    assert column_of(session, "label") == ["7A", "7B"]
    assert column_of(session, "liquid.family") == ["diesel", "def"]
    assert session.undo_stack.undoText() == "Paste positions"


def test_rows_are_filtered_and_sorted_and_written_where_they_stand(page: GridPage, session: Session) -> None:
    page.filter_edit.setText("2 REGULAR 2b")
    assert page.proxy.rowCount() == 1
    choose(page, "notes", 0)
    page.table.write_all("worn")
    assert column_of(session, "notes") == ["", "", "", "worn"]
    page.filter_edit.clear()
    page.table.sortByColumn(0, Qt.SortOrder.DescendingOrder)
    assert page.proxy.index(0, 0).data(Role.RECORD) == "2B regular"


def test_the_rows_of_a_big_station_are_read_for_the_filter_off_the_windows_thread(
    page: GridPage, session: Session, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    first = session.survey.positions[0]
    many = tuple(first.model_copy(update={"label": f"{number}A", "notes": f"Nr{number}"}) for number in range(80))
    make_edit(session, session.survey.model_copy(update={"positions": many}), "Many")
    threads: list[int] = []
    read = position_grid.row_text

    def noted(*given: object) -> str:
        threads.append(threading.get_ident())
        return read(*given)  # type: ignore[arg-type]

    monkeypatch.setattr(position_grid, "row_text", noted)
    page.filter_edit.setText("nr7")
    qtbot.waitUntil(lambda: page.proxy.rowCount() == 11)
    assert threading.get_ident() not in threads
    assert len(threads) == 80
    page.filter_edit.setText("NR79 gasoline")  # what was read is looked through at once
    assert page.proxy.rowCount() == 1
    edited = tuple(one.model_copy(update={"notes": "worn"}) if one.label == "3A" else one for one in many)
    make_edit(session, session.survey.model_copy(update={"positions": edited}), "Note")
    page.filter_edit.setText("worn")
    assert page.proxy.rowCount() == 1
    assert threads[80:] == [threading.get_ident()]  # the one row that was written into
    session.use_units(UnitSystem.SI if session.display.system is UnitSystem.US else UnitSystem.US)
    page.filter_edit.setText("nr8")
    qtbot.waitUntil(lambda: page.proxy.rowCount() == 1)
    assert len(threads) == 161
    page.filter_edit.clear()
    assert page.proxy.rowCount() == 80


def test_of_a_big_forecourt_no_more_is_painted_than_is_in_view(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    """Of a station of a thousand positions the window would stand still with every plan that comes."""
    painted: list[str] = []
    paint_mark = forecourt_view.paint_mark

    def noted(painter: QPainter, box: QRectF, *look: object) -> None:
        painted.append(f"{box.top():g}")
        paint_mark(painter, box, *look)  # type: ignore[arg-type]

    monkeypatch.setattr(forecourt_view, "paint_mark", noted)
    view, scroll = ForecourtView("Forecourt"), QScrollArea()
    qtbot.addWidget(scroll)
    scroll.setWidget(view)
    scroll.setWidgetResizable(True)
    scroll.resize(600, 200)
    boxes = [
        Box(f"D{number}", (Tile(f"{number}A", Tone.GOOD, "fits"),), (Tile(f"{number}B", Tone.BAD, "no set"),))
        for number in range(500)
    ]
    view.show_groups(tuple(Group("", tuple(boxes[start : start + 5])) for start in range(0, 500, 5)), "0A")
    with qtbot.waitExposed(scroll):
        scroll.show()
    painted.clear()
    view.repaint()
    first = set(painted)
    assert 10 <= len(painted) < 100
    scroll.verticalScrollBar().setValue(scroll.verticalScrollBar().maximum())
    painted.clear()
    view.repaint()
    assert 10 <= len(painted) < 100
    assert not first & set(painted)


def test_the_forecourt_shows_every_position_with_its_mark(qtbot: QtBot, page: GridPage, workplace: Workplace) -> None:
    tiles = {tile.key: tile for tile in page.forecourt.tiles}
    assert list(tiles) == ["1A regular", "1B regular", "2A regular", "2B regular"]
    assert tiles["1A regular"].tone is workplace.plans.tone("1A regular")
    assert "1A regular" in tiles["1A regular"].hint
    qtbot.mouseClick(page.forecourt, Qt.MouseButton.LeftButton, pos=page.forecourt.place_of("2A regular").toPoint())
    assert workplace.session.label == "2A regular"
    page.forecourt.setFocus()
    qtbot.keyClick(page.forecourt, Qt.Key.Key_Right)
    assert workplace.session.label == "2B regular"
    upper, lower = page.forecourt.place_of("1A regular").y(), page.forecourt.place_of("1B regular").y()
    assert upper < lower
    page.island_spin.setValue(1)
    assert page.forecourt.place_of("2A regular").y() > lower


def group_names(page: GridPage) -> tuple[str, ...]:
    return tuple(name for _, name in page.forecourt._frames)


def test_islands_that_are_named_are_drawn_and_the_rest_stands_in_rows(page: GridPage, session: Session) -> None:
    assert group_names(page) == ()
    assert not page.island_spin.isHidden()
    choose(page, "island", 2)
    page.table.write_all("South")
    assert group_names(page) == ("Island South",)
    assert [tile.key for tile in page.forecourt.tiles] == ["2A regular", "2B regular", "1A regular", "1B regular"]
    choose(page, "island", 0, 1)
    page.table.write_all("North")
    assert group_names(page) == ("Island North", "Island South")
    assert page.island_spin.isHidden()  # nothing is left for it to arrange
    session.undo_stack.undo()
    session.undo_stack.undo()
    assert group_names(page) == ()


def test_a_dispenser_said_to_stand_on_two_islands_shows_on_both(page: GridPage) -> None:
    choose(page, "island", 0)
    page.table.write_all("North")
    choose(page, "island", 1)
    page.table.write_all("South")
    assert group_names(page) == ("Island North", "Island South")
    heights = [page.forecourt.place_of(label).y() for label in ("1A regular", "1B regular")]
    assert heights[0] < heights[1]


def test_the_marks_of_the_forecourt_are_explained(page: GridPage) -> None:
    told = {(mark.tone, mark.accessibleName()) for mark in page.findChild(Legend).findChildren(Mark)}
    assert {tone for tone, _ in told} == set(Tone) - {Tone.NOTE}
    assert (Tone.BAD, "no set") in told


def test_the_page_opens_from_the_menu(window: MainWindow, workplace: Workplace) -> None:
    window.actions_by_id[ActionId.GRID].trigger()
    assert workplace.views.currentWidget() is workplace.grid_page
    window.actions_by_id[ActionId.NEXT_STEP].trigger()
    assert workplace.views.currentWidget() is workplace.walk


def test_names_of_dispensers_may_be_runs() -> None:
    assert names_in("2-4, 9E ,") == ("2", "3", "4", "9E")
    assert names_in("1-99999999") == ("1-99999999",)


def test_dispensers_are_repeated_and_mirrored_in_dialogs(qtbot: QtBot, survey: Survey) -> None:
    dialog = RepeatDialog(survey, "1")
    qtbot.addWidget(dialog)
    dialog.names_edit.setText("2")
    dialog.accept()
    assert "name of its own" in dialog.fault_label.text()
    dialog.names_edit.setText("3-4")
    dialog.accept()
    assert dialog.after is not None
    assert len(dialog.after.positions) == 8
    dialog.islands_edit.setText("1, 2, 3")
    dialog.accept()
    assert "one for each of the 2" in dialog.fault_label.text()
    dialog.islands_edit.setText("1, 2")
    dialog.accept()
    assert [one.island for one in dialog.after.positions[4:]] == ["1", "1", "2", "2"]
    mirror = MirrorDialog(survey, "1")
    qtbot.addWidget(mirror)
    mirror.accept()
    assert "this label is taken" in mirror.fault_label.text()
    mirror.other_edit.setText("C")
    mirror.accept()
    assert mirror.after is not None
    assert mirror.after.position("1C regular") is not None


# two people edit one survey


def somebody_else(bench: Workbench, session: Session, **changes: object) -> None:
    """Save another edit of the same survey behind the window's back."""
    stored = bench.book().stored(session.stored.id)
    first = stored.survey.positions[0].model_copy(update=changes)
    bench.book().save(stored, stored.survey.model_copy(update={"positions": (first, *stored.survey.positions[1:])}))


def write(page: GridPage, key: str, text: str) -> None:
    choose(page, key, 0)
    page.table.write_all(text)


def offer(window: MainWindow, words: str) -> None:
    button = next(button for button in window.notices._buttons if button.text() == words)
    button.click()


def test_edits_of_two_people_are_merged(bench: Workbench, window: MainWindow, page: GridPage, session: Session) -> None:
    somebody_else(bench, session, hold_open_wanted=True, notes="theirs")
    write(page, "notes", "mine")
    session.settle()
    assert session.save_state is SaveState.STALE
    offer(window, "Merge both")
    assert session.settle()
    kept = bench.book().stored(session.stored.id).survey.positions[0]
    assert (kept.hold_open_wanted, kept.notes) == (True, "mine")
    assert "1A regular Wishes · Notes: mine / theirs" in window.notices.text
    assert not session.undo_stack.canUndo()


def test_or_both_are_kept(bench: Workbench, window: MainWindow, page: GridPage, session: Session) -> None:
    theirs_id = session.stored.id
    somebody_else(bench, session, notes="theirs")
    write(page, "notes", "mine")
    session.settle()
    offer(window, "Keep both")
    assert session.stored.id != theirs_id
    assert session.survey.positions[0].notes == "mine"
    assert session.survey.site.name.endswith("(own copy)")
    assert bench.book().stored(theirs_id).survey.positions[0].notes == "theirs"
