"""The switcher between places: always in sight, where each stands, by mouse and keyboard."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QObject, QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from planning.quoting_terms import DAY, terms_of
from spoutline.bootstrap import Workbench
from spoutline.gui.actions import ActionId
from spoutline.gui.edits.command import make_edit
from spoutline.gui.places import PLACES, Place
from spoutline.gui.roles import Standing, Tone
from spoutline.gui.widgets.notice_bar import Offer
from spoutline.gui.widgets.place_bar import PlaceBar, PlaceButton
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.agreed_sets import SetsSource
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.record import CommissioningRecord, ItemResult, RecordEntry, RecordItemId
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

NUMBERS = {one.place: number for number, one in enumerate(PLACES)}


def button(workplace: Workplace, place: Place) -> PlaceButton:
    return workplace.place_bar.buttons[NUMBERS[place]]


def standing(workplace: Workplace, place: Place) -> Standing:
    return button(workplace, place).standing


def test_every_place_is_reached_by_the_mouse_and_marked(qtbot: QtBot, workplace: Workplace) -> None:
    for record in PLACES:
        QTest.mouseClick(button(workplace, record.place), Qt.MouseButton.LeftButton)
        assert workplace.place is record.place
        assert workplace.place_bar.current == NUMBERS[record.place]
        assert not any(one.hasFocus() and not one.isChecked() for one in workplace.place_bar.buttons)
        assert workplace.place_bar.isVisible()
        assert [one.isChecked() for one in workplace.place_bar.buttons].count(True) == 1


def test_commands_of_the_menu_move_the_mark_too(window: MainWindow, workplace: Workplace) -> None:
    for record in PLACES:
        window.actions_by_id[record.action].trigger()
        assert workplace.place_bar.current == NUMBERS[record.place]


def test_arrow_keys_go_along_and_return_goes_there(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    first, second = workplace.place_bar.buttons[1:3]
    window.activateWindow()
    first.setFocus()
    QTest.keyClick(first, Qt.Key.Key_Right)
    qtbot.waitUntil(second.hasFocus)
    assert workplace.place is Place.SURVEY  # looking along the places builds no page
    QTest.keyClick(second, Qt.Key.Key_Return)
    assert workplace.place is Place.POSITIONS
    QTest.keyClick(second, Qt.Key.Key_End)
    qtbot.waitUntil(workplace.place_bar.buttons[-1].hasFocus)


def test_the_survey_comes_back_at_the_step_that_was_in_view(window: MainWindow, workplace: Workplace) -> None:
    window.actions_by_id[ActionId.NEXT_STEP].trigger()
    step = workplace.step
    window.actions_by_id[ActionId.GRID].trigger()
    QTest.mouseClick(button(workplace, Place.SURVEY), Qt.MouseButton.LeftButton)
    assert workplace.step is step


def test_where_the_survey_and_its_sets_stand(qtbot: QtBot, workplace: Workplace) -> None:
    session = workplace.session
    site = session.survey.site.model_copy(update={"name": "Switcher Lane"})  # a site of which the book has no record
    assert make_edit(session, session.survey.model_copy(update={"site": site}), "Name")
    qtbot.waitUntil(lambda: session.save_state.is_saved, timeout=15_000)
    workplace.guide.refresh()
    for place, words in (
        (Place.SURVEY, Standing(Tone.GOOD, "2 of 2 surveyed")),
        (Place.INSTALLER, Standing(Tone.OPEN, "0 of 2 built")),
        (Place.QUOTATION, Standing(Tone.OPEN, "none yet")),
    ):
        qtbot.waitUntil(lambda: standing(workplace, place) == words, timeout=15_000)  # noqa: B023 - waited for here
    qtbot.waitUntil(lambda: standing(workplace, Place.POSITIONS).words == "2 of 2 fit", timeout=15_000)
    assert standing(workplace, Place.CATALOGUES).words == "Demonstration"
    assert standing(workplace, Place.PARTS).words == "planned, not agreed"


def test_agreeing_and_quoting_move_where_a_place_stands(qtbot: QtBot, workplace: Workplace, bench: Workbench) -> None:
    session, si = workplace.session, Display(UnitSystem.SI)
    site = session.survey.site.model_copy(update={"name": "Switcher Yard"})
    assert make_edit(session, session.survey.model_copy(update={"site": site}), "Name")
    qtbot.waitUntil(lambda: session.save_state.is_saved, timeout=15_000)
    service = bench.quoting()
    made = service.quote(session.survey, terms_of(heading={"number": "PLACE-1", "dated": DAY}), si).quotation
    kept = service.life().keep(made)
    workplace.guide.refresh()
    qtbot.waitUntil(lambda: standing(workplace, Place.QUOTATION) == Standing(Tone.NOTE, "PLACE-1 drafted"))
    issued = service.life().issue(kept, "Odile", si)
    workplace.show_quotations()  # whoever looks at a place sees it as it stands
    qtbot.waitUntil(lambda: standing(workplace, Place.QUOTATION).words == "PLACE-1 issued", timeout=15_000)
    service.life().answer(issued, QuotationStatus.ACCEPTED, "Odile")
    workplace.sets.follow_book()
    qtbot.waitUntil(
        lambda: standing(workplace, Place.QUOTATION) == Standing(Tone.GOOD, "PLACE-1 accepted"), timeout=15_000
    )
    qtbot.waitUntil(lambda: workplace.sets.source is SetsSource.AGREED, timeout=15_000)
    qtbot.waitUntil(lambda: standing(workplace, Place.PARTS) == Standing(Tone.GOOD, "agreed"))


def test_a_record_that_failed_is_not_told_as_built(qtbot: QtBot, workplace: Workplace, bench: Workbench) -> None:
    session = workplace.session
    name = "Switcher Rise"
    site = session.survey.site.model_copy(update={"name": name})
    assert make_edit(session, session.survey.model_copy(update={"site": site}), "Name")
    qtbot.waitUntil(lambda: session.save_state.is_saved, timeout=15_000)
    for result, words in (
        (ItemResult.FAILED, Standing(Tone.BAD, "1 of 2, 1 faulty")),
        (ItemResult.PASSED, Standing(Tone.NOTE, "1 of 2 built")),  # tried again: the newest record counts
    ):
        entry = RecordEntry(item=RecordItemId.LEAK, result=result)
        record = CommissioningRecord(site=name, position="A1", plan_revision="0" * 16, entries=(entry,))
        bench.book().position_records.add_commissioning(record, {})
        workplace.guide.refresh()
        qtbot.waitUntil(lambda: standing(workplace, Place.INSTALLER) == words, timeout=15_000)  # noqa: B023


def test_a_screen_reader_is_told_where_a_place_stands(qtbot: QtBot, workplace: Workplace) -> None:
    one = button(workplace, Place.SURVEY)
    qtbot.waitUntil(lambda: one.accessibleDescription() == "2 of 2 surveyed")
    assert one.accessibleName() == "Survey"


def test_a_standing_that_is_shown_again_lays_nothing_out_and_paints_nothing(qtbot: QtBot) -> None:
    seen: list[QEvent.Type] = []

    class Watch(QObject):
        def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802  (Qt's name)
            seen.append(event.type())
            return False

    bar, watch = PlaceBar("places", ["Survey", "Quotation"]), Watch()
    qtbot.addWidget(bar)
    bar.show()
    shown = Standing(Tone.GOOD, "3 of 3 surveyed")
    for again in (False, True):
        bar.buttons[0].show_standing(shown, "Ctrl+1")
        qtbot.wait(50)
        if again:
            bar.removeEventFilter(watch)
            bar.buttons[0].removeEventFilter(watch)
        else:
            bar.installEventFilter(watch)
            bar.buttons[0].installEventFilter(watch)
    assert QEvent.Type.Paint not in seen
    assert QEvent.Type.LayoutRequest not in seen


@pytest.mark.parametrize("width", [1280, 1920])
def test_names_of_places_are_whole(qtbot: QtBot, window: MainWindow, workplace: Workplace, width: int) -> None:
    window.resize(width, 720)
    QApplication.processEvents()
    qtbot.waitUntil(lambda: standing(workplace, Place.CATALOGUES).words != "")
    assert [one.text() for one in workplace.place_bar.buttons if one.width() < one.sizeHint().width()] == []


def test_a_notice_moves_nothing(window: MainWindow, workplace: Workplace) -> None:
    window.notify("Something.")
    QApplication.processEvents()
    window.notices.put_away()
    QApplication.processEvents()
    before = workplace.steps.next_button.mapTo(window, workplace.steps.next_button.rect().topLeft())
    size = workplace.size()
    window.notify("Something that a person should read. " * 6)
    QApplication.processEvents()
    assert window.notices.isVisible()
    assert workplace.steps.next_button.mapTo(window, workplace.steps.next_button.rect().topLeft()) == before
    assert workplace.size() == size
    assert window.centralWidget().rect().contains(window.notices.geometry())
    QTest.keyClick(window.notices, Qt.Key.Key_Escape)
    assert window.notices.text == ""


def test_what_was_done_is_told_at_the_foot_and_covers_nothing(window: MainWindow, workplace: Workplace) -> None:
    window.resize(1280, 720)
    window.show_trouble("The disk is full.")
    assert window.notices.isVisible()
    window.notify("Saved as /tmp/bill.pdf")
    assert not window.notices.isVisible()  # it tells of what is over
    assert (window.foot_line.told, window.notices.text) == ("Saved as /tmp/bill.pdf", "Saved as /tmp/bill.pdf")
    window.notify("Removed.", offers=(Offer("Undo", lambda: None),))  # what offers something has buttons
    assert (window.foot_line.told, window.notices.isVisible()) == ("", True)
    window.notify("A sentence that the foot has no room for. " * 6)
    assert (window.foot_line.told, window.notices.isVisible()) == ("", True)
    window.notify("Saved.")
    workplace.show_bill()
    assert window.foot_line.text().startswith("Advice only")


def test_a_short_notice_lies_over_what_stands_at_the_left_alone(window: MainWindow, workplace: Workplace) -> None:
    window.resize(1280, 720)
    QApplication.processEvents()
    window.show_trouble("The disk is full.")
    assert window.notices.geometry().right() <= workplace.site_panel.mapTo(window, QPoint(250, 0)).x()
