"""What comes back at the next start, and what is preferred, in one place."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from spoutline.book.address import DEFAULT_FILE
from spoutline.book.records import SettingName
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.data_folder import use_data_folder
from spoutline.bootstrap.preferences import (
    OpenWith,
    Preference,
    home_folder,
    keep_preference,
    preference,
    preferred_opening,
)
from spoutline.bootstrap.settings import user_folder
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.preferences import PreferencesDialog, Preferred
from spoutline.gui.dialogs.surveys import SurveysDialog
from spoutline.gui.dialogs.undo_list import UndoListDialog
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.question import Step
from spoutline.gui.places import Place
from spoutline.gui.widgets.theme import DARK_CONTRAST, LIGHT_CONTRAST, ThemeChoice, colours_now, dress
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.memory import LastView, WindowMemory
from spoutline.gui.window.start import ShownWindow
from spoutline.gui.window.theme_keeper import ThemeKeeper
from spoutline.gui.window.workplace import Workplace
from spoutline.model.faults import InputFault
from spoutline.model.language import Language
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem


@pytest.fixture
def light_again(qapp: QApplication) -> Iterator[None]:
    hook = sys.excepthook
    yield
    sys.excepthook = hook
    dress(qapp, dark=False)


def shown_over(qtbot: QtBot, bench: Workbench) -> tuple[ShownWindow, Workplace]:
    shown = ShownWindow(lambda: bench, None, Language.ENGLISH)
    qtbot.waitUntil(lambda: shown.window.workplace is not None, timeout=30_000)
    assert shown.window.workplace is not None
    return shown, shown.window.workplace


def test_size_page_position_and_step_come_back(
    qtbot: QtBot, qapp: QApplication, bench: Workbench, survey: Survey, plans_once: None, light_again: None
) -> None:
    stored = bench.book().create(survey)
    bench.book().remember(SettingName.LAST_SURVEY, str(stored.id))
    first, place = shown_over(qtbot, bench)
    assert place.place is Place.SURVEY
    first.window.resize(780, 700)  # what the screen of a test holds
    place.session.look_at("A2")
    place.show_step(Step.PLACE)
    place.show_grid()
    place.splitters["whole"].setSizes([300, 460])
    qapp.processEvents()
    kept = place.splitters["whole"].sizes()
    first.window.close()
    second, place = shown_over(qtbot, bench)
    assert place.session.stored.id == stored.id
    assert place.place is Place.POSITIONS
    assert place.session.label == "A2"
    place.show_walk()
    assert place.step is Step.PLACE
    assert second.window.height() == 700
    qapp.processEvents()
    assert place.splitters["whole"].sizes() == kept
    second.window.close()
    # of another survey nothing is brought back
    other = bench.book().create(survey.model_copy(update={"notes": "another"}))
    bench.book().remember(SettingName.LAST_SURVEY, str(other.id))
    third, place = shown_over(qtbot, bench)
    assert place.place is Place.SURVEY
    assert place.session.label == "A1"
    third.window.close()


def test_the_window_opens_with_the_start_view_or_where_it_was_left(
    qtbot: QtBot, qapp: QApplication, bench: Workbench, survey: Survey, plans_once: None, light_again: None
) -> None:
    stored = bench.book().create(survey)
    bench.book().remember(SettingName.LAST_SURVEY, str(stored.id))
    first, place = shown_over(qtbot, bench)
    assert place.place is Place.SURVEY  # nothing was chosen yet
    place.show_grid()
    first.window.close()
    keep_preference(Preference.OPEN_WITH, OpenWith.START_VIEW.value)
    second, place = shown_over(qtbot, bench)
    assert place.place is Place.START
    assert place.session.stored.id == stored.id  # the rest of the window has it in hand
    place.show_grid()
    # another language builds the window anew and goes on where it was
    second.switch(Language.GERMAN.value)
    qtbot.waitUntil(lambda: second.window.workplace is not None, timeout=30_000)
    assert second.window.workplace is not None
    assert second.window.workplace.place is Place.POSITIONS
    second.window.close()
    # what the command line names goes before the preference, and is not kept
    third = ShownWindow(lambda: bench, None, Language.ENGLISH, open_with=OpenWith.LAST_SURVEY)
    qtbot.waitUntil(lambda: third.window.workplace is not None, timeout=30_000)
    assert third.window.workplace is not None
    assert third.window.workplace.place is Place.POSITIONS
    third.window.close()
    # a survey that is named is shown
    named = ShownWindow(lambda: bench, survey, Language.ENGLISH)
    qtbot.waitUntil(lambda: named.window.workplace is not None, timeout=30_000)
    assert named.window.workplace is not None
    assert named.window.workplace.place is Place.SURVEY
    named.window.close()
    assert preferred_opening() is OpenWith.START_VIEW
    keep_preference(Preference.OPEN_WITH, "an unknown view")
    assert preferred_opening() is OpenWith.LAST_SURVEY


def test_the_size_of_a_window_comes_back_from_the_file(qtbot: QtBot, tmp_path: Path) -> None:
    for size in ((500, 400), (640, 320)):
        window = QWidget()
        qtbot.addWidget(window)
        window.resize(*size)
        window.show()
        WindowMemory(tmp_path / "window.ini").keep_window(window)
        other = QWidget()
        qtbot.addWidget(other)
        assert WindowMemory(tmp_path / "window.ini").give_window_back(other)
        assert (other.width(), other.height()) == size


def test_memory_without_a_view_or_with_a_spoilt_one_tells_of_none(tmp_path: Path) -> None:
    file = tmp_path / "window.ini"
    assert WindowMemory(file).last_view() is None
    file.write_text("[view]\nsurvey=1\nlabel=A\nplace=nowhere\nstep=liquid\n", encoding="utf-8")
    assert WindowMemory(file).last_view() is None
    view = LastView(survey_id=3, label="1 / Ä", place=Place.PARTS, step=Step.SET)
    WindowMemory(file).keep_view(view)
    assert WindowMemory(file).last_view() == view


def test_files_used_last_are_offered_newest_first(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, tmp_path: Path
) -> None:
    for name in ("one", "two"):
        assert window.saving is not None
        assert window.saving.write_file(tmp_path / f"{name}.json")
    assert [one.name for one in window.memory.files] == ["two.json", "one.json"]
    window.recent_menu.aboutToShow.emit()
    assert [one.text() for one in window.recent_menu.actions()] == ["two.json", "one.json"]
    (tmp_path / "two.json").unlink()
    assert [one.name for one in window.memory.files] == ["one.json"]
    window.recent_menu.aboutToShow.emit()
    before = workplace.session.stored.id
    window.recent_menu.actions()[0].trigger()
    qtbot.waitUntil(lambda: workplace.session.stored.id != before, timeout=20_000)


def test_redo_has_the_keys_of_both_habits(window: MainWindow) -> None:
    keys = {one.toString() for one in window.actions_by_id[ActionId.REDO].shortcuts()}
    assert keys == {"Ctrl+Y", "Ctrl+Shift+Z"}


def test_the_list_of_steps_goes_back_to_any_of_them(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    session = workplace.session
    for name in ("Ada Quill", "Ben Oak"):
        site = session.survey.site.model_copy(update={"customer": name})
        make_edit(session, session.survey.model_copy(update={"site": site}), f"Customer {name}")
    dialog = UndoListDialog(session.undo_stack, window)
    qtbot.addWidget(dialog)
    dialog.show()
    model = dialog.view.model()
    assert [model.index(row, 0).data() for row in range(3)] == [
        "As the survey was opened", "Customer Ada Quill", "Customer Ben Oak",
    ]  # fmt: skip
    dialog.view.setCurrentIndex(model.index(1, 0))
    assert session.survey.site.customer == "Ada Quill"
    QTest.keyClick(dialog.view, Qt.Key.Key_Down)
    assert session.survey.site.customer == "Ben Oak"


def test_no_two_commands_share_a_key(window: MainWindow) -> None:
    keys = [one.toString() for action in window.actions_by_id.values() for one in action.shortcuts()]
    assert sorted(keys) == sorted(set(keys))
    assert QKeySequence("Ctrl+K").toString() in keys


def test_preferences_are_put_into_effect(
    qtbot: QtBot, qapp: QApplication, window: MainWindow, workplace: Workplace, bench: Workbench, light_again: None
) -> None:
    verbs = window.verbs  # type: ignore[attr-defined]
    keeper = ThemeKeeper(qapp)
    window.theme_wanted.connect(lambda tag: keeper.use(ThemeChoice(tag)))
    now = Preferred(
        language=Language.ENGLISH,
        units=UnitSystem.SI,
        theme=ThemeChoice.DESKTOP,
        open_with=OpenWith.LAST_SURVEY,
        catalogue="Demonstration",
        jurisdiction="",
    )
    dialog = PreferencesDialog(bench, now, lambda _: False, lambda: None, window)
    qtbot.addWidget(dialog)
    assert dialog.preferred == now
    for box, words in (
        (dialog.units_box, "US units"), (dialog.theme_box, "High contrast"), (dialog.jurisdiction_box, "Europe"),
        (dialog.opening_box, "start view"),
    ):  # fmt: skip
        [place] = [one for one in range(box.count()) if words in box.itemText(one)][:1]
        box.setCurrentIndex(place)
    wanted = dialog.preferred
    assert wanted.units is UnitSystem.US
    verbs.preferences.prefer(now, wanted)
    assert workplace.session.display.system is UnitSystem.US
    assert colours_now() in (LIGHT_CONTRAST, DARK_CONTRAST)
    assert preference(Preference.THEME) == "contrast"
    assert preferred_opening() is OpenWith.START_VIEW
    qtbot.waitUntil(lambda: bench.usual_jurisdiction() == wanted.jurisdiction, timeout=10_000)
    # a survey begun from here on stands under these rules
    surveys = SurveysDialog(bench, None, window)
    qtbot.addWidget(surveys)
    surveys.name_edit.setText("Begun under own rules")
    surveys.start_button.click()
    assert surveys.chosen is not None
    assert surveys.chosen.survey.site.jurisdiction == wanted.jurisdiction
    bench.book().remember(SettingName.JURISDICTION, "")
    verbs.use_units(UnitSystem.SI)


def test_one_preference_leaves_the_others_alone() -> None:
    keep_preference(Preference.LANGUAGE, "de")
    keep_preference(Preference.THEME, "dark")
    assert (preference(Preference.LANGUAGE), preference(Preference.THEME)) == ("de", "dark")
    keep_preference(Preference.LANGUAGE, "")
    assert (preference(Preference.LANGUAGE), preference(Preference.THEME)) == ("", "dark")
    (home_folder() / "window.toml").write_bytes(b"\xff not a table")
    assert preference(Preference.THEME) == ""


def test_data_moves_into_another_folder(tmp_path: Path, shared_database: Path, survey: Survey) -> None:
    before = user_folder()
    own = open_workbench(Settings())
    stored = own.book().create(survey)
    (before / "jurisdictions").mkdir(exist_ok=True)
    (before / "jurisdictions" / "note.txt").write_text("kept", encoding="utf-8")
    with pytest.raises(InputFault, match="choose a folder that is there"):
        use_data_folder(tmp_path / "missing")
    assert user_folder() == before
    wanted = tmp_path / "elsewhere"
    wanted.mkdir()
    assert use_data_folder(wanted) is False
    own.close()
    assert user_folder() == wanted
    moved = open_workbench(Settings())
    assert moved.book().stored(stored.id).survey.positions == stored.survey.positions
    assert moved.keeping().book_file() == wanted / DEFAULT_FILE
    moved.close()
    assert (wanted / "jurisdictions" / "note.txt").read_text(encoding="utf-8") == "kept"
    assert (before / DEFAULT_FILE).is_file()  # nothing was taken away
    assert use_data_folder(before) is True
    assert user_folder() == before


def test_a_file_that_cannot_be_looked_at_any_more_is_not_offered(tmp_path: Path) -> None:
    """A name too long fails, whoever asks, as one does in a folder that may no longer be entered."""
    memory = WindowMemory(tmp_path / "memory.ini")
    there = tmp_path / "there.json"
    there.write_text("{}", encoding="utf-8")
    memory.add_file(there)
    memory.add_file(tmp_path / ("x" * 300 + ".json"))
    assert memory.files == (there,)
