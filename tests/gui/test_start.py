from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import threading
from collections.abc import Iterator
from datetime import date
from importlib import import_module
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from gui.test_dropped_files import drop, local
from spoutline.book.records import SettingName
from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.bootstrap.fault_log import FaultLog
from spoutline.gui.dialogs.fault import FaultDialog
from spoutline.gui.edits.question import Step
from spoutline.gui.places import Place
from spoutline.gui.widgets.theme import dress
from spoutline.gui.window.faults import UnexpectedFault
from spoutline.gui.window.first_survey import survey_to_show, units_to_show
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.memory import LastView, WindowMemory
from spoutline.gui.window.start import Opening
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.faults import StoreFault
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem


def opening(
    qtbot: QtBot, qapp: QApplication, factory: object, tmp_path: Path, survey: Survey | None = None
) -> tuple[MainWindow, Opening]:
    dress(qapp, dark=False)
    window = MainWindow()
    qtbot.addWidget(window)
    window.show()
    faults = UnexpectedFault(window, FaultLog(tmp_path / "log"))
    return window, Opening(window, factory, survey, faults)  # type: ignore[arg-type]


def test_window_is_there_before_the_stores_are_opened(
    qtbot: QtBot, qapp: QApplication, bench: Workbench, survey: Survey, tmp_path: Path
) -> None:
    window, start = opening(qtbot, qapp, lambda: bench, tmp_path, survey)
    assert window.isVisible()
    assert window.workplace is None
    assert "Opening" in window.waiting_label.text()
    start.start()
    qtbot.waitUntil(lambda: window.workplace is not None, timeout=20_000)
    assert window.workplace is not None
    assert window.workplace.session.survey == survey
    window.jobs.close()


def test_the_first_frame_of_the_workplace_is_laid_out(
    qtbot: QtBot,
    qapp: QApplication,
    bench: Workbench,
    survey: Survey,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    window, start = opening(qtbot, qapp, lambda: bench, tmp_path, survey)
    window.resize(1280, 720)
    let_go = window.jobs.let_go
    monkeypatch.setattr(window.jobs, "let_go", lambda: None)  # no answer of a job changes what is in view meanwhile
    seen: list[tuple[object, ...]] = []

    def places() -> tuple[object, ...]:
        assert window.workplace is not None
        room, panel = window.workplace.room, window.workplace.site_panel
        bars = room.horizontalScrollBar().isVisible(), room.verticalScrollBar().isVisible()
        inside = [(one.objectName(), one.geometry().getRect()) for one in room.findChildren(QWidget) if one.isVisible()]
        return bars, panel.geometry().getRect(), window.workplace.views.geometry().getRect(), inside

    class Watch(QObject):
        def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802  (Qt's name)
            if event.type() is QEvent.Type.Paint and watched is window.workplace and not seen:
                seen.append(places())
            return False

    watch = Watch(window)
    qapp.installEventFilter(watch)
    start.start()
    qtbot.waitUntil(lambda: bool(seen), timeout=20_000)
    qapp.removeEventFilter(watch)
    QApplication.sendPostedEvents(None, QEvent.Type.LayoutRequest.value)
    assert seen == [places()]
    let_go()
    window.jobs.close()


def test_first_paint_needs_neither_database_nor_surveys_nor_pdf_nor_units() -> None:
    heavy = ("sqlalchemy", "alembic", "reportlab", "pint", "fluids", "numpy", "scipy", "openpyxl", "pypdfium2")
    heavy += ("pydantic", "spoutline.model.survey", "logging.handlers")
    wanted = "import spoutline.gui.window.start; import spoutline.bootstrap.workbench; import spoutline.cli.main"
    code = f"import sys; {wanted}; print([name for name in {heavy!r} if name in sys.modules])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


def test_no_module_is_loaded_on_the_windows_thread_as_it_opens_and_as_pages_are_turned(
    own_database: Path, tmp_path: Path
) -> None:
    """Each takes some milliseconds, and the window does not answer meanwhile; a job loads them before."""
    runner = Path(__file__).with_name("module_loads.py")
    environment = os.environ | {"HOME": str(tmp_path)}
    environment |= {f"XDG_{name}_HOME": str(tmp_path / name) for name in ("CONFIG", "DATA", "STATE", "CACHE")}
    done = subprocess.run(
        [sys.executable, str(runner), str(own_database)], env=environment, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout.splitlines()[-1]) == {"opening": [], "turning": []}


def test_no_source_is_searched_while_the_window_loads_its_modules() -> None:
    code = (
        "import inspect; from spoutline.gui.plain_imports import leave_sources_unread; leave_sources_unread();"
        "read = []; inspect.getsource = lambda module: read.append(module) or '';"
        "import spoutline.gui.window.start, sqlite3; print(len(read))"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "0"


def test_failing_book_is_told_and_can_be_tried_again(
    qtbot: QtBot, qapp: QApplication, bench: Workbench, survey: Survey, tmp_path: Path
) -> None:
    answers: list[object] = [StoreFault("The folder cannot be written."), bench]

    def factory() -> Workbench:
        answer = answers.pop(0)
        if isinstance(answer, Exception):
            raise answer
        return answer  # type: ignore[return-value]

    window, start = opening(qtbot, qapp, factory, tmp_path, survey)
    start.start()
    qtbot.waitUntil(lambda: window.notices.text != "")
    assert window.notices.text == "The folder cannot be written."
    start.start()
    qtbot.waitUntil(lambda: window.workplace is not None, timeout=20_000)
    window.jobs.close()


def test_empty_book_starts_with_a_demo_and_then_with_the_survey_used_last(
    tmp_path: Path, shared_database: Path
) -> None:
    bench = open_workbench(Settings(database=str(tmp_path / "new.sqlite3"), profiles=tmp_path))
    try:
        first = survey_to_show(bench, None)
        assert first.survey == demo_survey()
        other = bench.book().create(demo_survey("marina"))
        bench.book().remember(SettingName.LAST_SURVEY, str(first.id))
        assert survey_to_show(bench, None).id == first.id
        bench.book().remember(SettingName.LAST_SURVEY, str(other.id))
        assert survey_to_show(bench, None).id == other.id
        bench.book().remove(other.id)
        assert survey_to_show(bench, None).id == first.id
        assert survey_to_show(bench, demo_survey()).id == first.id
        assert len(bench.book().entries()) == 1
    finally:
        bench.close()


@pytest.fixture
def empty_book(tmp_path: Path, database_to_copy: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Workbench]:
    """Yield use cases over a book that holds the invented catalog and no survey."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    shutil.copy(database_to_copy, tmp_path / "empty.sqlite3")
    bench = open_workbench(Settings(database=str(tmp_path / "empty.sqlite3"), profiles=tmp_path))
    for entry in bench.book().entries():
        bench.book().remove(entry.id)
    yield bench
    bench.close()


def asked(qtbot: QtBot, qapp: QApplication, bench: Workbench, tmp_path: Path) -> tuple[MainWindow, Opening]:
    """Open the window over an empty book; it asks how to begin, and nothing was written."""
    window, start = opening(qtbot, qapp, lambda: bench, tmp_path)
    start.start()
    qtbot.waitUntil(lambda: start.choice is not None and start.choice.isVisible(), timeout=20_000)
    assert bench.book().entries() == ()
    assert window.workplace is None
    return window, start


def test_over_an_empty_book_a_person_looks_at_the_demonstration(
    qtbot: QtBot, qapp: QApplication, empty_book: Workbench, tmp_path: Path, plans_once: None
) -> None:
    window, start = asked(qtbot, qapp, empty_book, tmp_path)
    assert start.choice is not None
    qtbot.mouseClick(start.choice.demonstration_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: window.workplace is not None, timeout=20_000)
    assert window.workplace is not None
    assert window.workplace.session.survey == demo_survey()
    assert empty_book.catalogues().chosen() == EditionRef(DEMONSTRATION)
    window.jobs.close()


def test_over_an_empty_book_a_person_begins_their_own(
    qtbot: QtBot, qapp: QApplication, empty_book: Workbench, tmp_path: Path
) -> None:
    window, start = asked(qtbot, qapp, empty_book, tmp_path)
    choice = start.choice
    assert choice is not None
    assert not choice.own_button.isEnabled()
    qtbot.keyClicks(choice.catalogue_edit, "Demonstration")
    qtbot.keyClicks(choice.site_edit, "Fernhollow Fuels")
    qtbot.mouseClick(choice.own_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: "has this name" in choice.fault_label.text(), timeout=20_000)
    assert empty_book.book().entries() == ()
    choice.catalogue_edit.clear()
    qtbot.keyClicks(choice.catalogue_edit, "Office list")
    choice.without_box.click()
    qtbot.keyClick(choice.site_edit, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: window.workplace is not None, timeout=20_000)
    assert window.workplace is not None
    assert window.workplace.session.survey.site.name == "Fernhollow Fuels"
    service = empty_book.catalogues()
    assert [facts.name for facts in service.all()] == ["Office list"]
    assert service.chosen() == EditionRef("Office list", is_draft=True)
    page = window.workplace.catalogues_page
    qtbot.waitUntil(lambda: page.in_hand.draft_name == "Office list", timeout=20_000)
    assert page.isVisible()
    window.jobs.close()


def test_who_names_a_catalog_that_has_parts_is_shown_the_survey(
    qtbot: QtBot, qapp: QApplication, empty_book: Workbench, tmp_path: Path
) -> None:
    """A book whose catalogue came from elsewhere, such as an exchange file: nothing is left to fill."""
    service = empty_book.catalogues()
    service.create("Office list")
    with service.shelf().draft("Office list") as desk:
        desk.put(list(service.shelf().entries(EditionRef(DEMONSTRATION)))[:1])
    window, start = asked(qtbot, qapp, empty_book, tmp_path)
    choice = start.choice
    assert choice is not None
    assert choice.catalogue_edit.text() == "Office list"
    qtbot.keyClicks(choice.site_edit, "Fernhollow Fuels")
    qtbot.keyClick(choice.site_edit, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: window.workplace is not None, timeout=20_000)
    assert window.workplace is not None
    assert window.workplace.steps.isVisible()
    window.jobs.close()


def test_what_is_published_first_takes_the_place_of_the_draft_that_the_book_plans_with(empty_book: Workbench) -> None:
    service = empty_book.catalogues()
    service.begin("Office list")
    with service.shelf().draft("Office list") as desk:
        desk.put(list(service.shelf().entries(EditionRef(DEMONSTRATION)))[:1])
    service.publish("Office list", notes="first", publisher="Ada Fenn", on=date(2026, 11, 2))
    assert service.chosen() == EditionRef("Office list")
    assert service.begin("office LIST") == EditionRef("Office list")


def test_units_are_the_remembered_ones_or_those_of_the_place() -> None:
    assert units_to_show("SI", UnitSystem.US) is UnitSystem.SI
    assert units_to_show(None, UnitSystem.US) is UnitSystem.US
    assert units_to_show("furlongs", UnitSystem.SI) is UnitSystem.SI


def test_fault_of_the_program_is_told_without_a_traceback_and_written_down(
    qtbot: QtBot, qapp: QApplication, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    told: list[str] = []
    monkeypatch.setattr(FaultDialog, "exec", lambda dialog: told.append(dialog.words_label.text()))
    window = MainWindow()
    qtbot.addWidget(window)
    window.save_label.setText("All changes are in the book")
    hook = UnexpectedFault(window, FaultLog(tmp_path))
    try:
        raise ZeroDivisionError("hose of no length")
    except ZeroDivisionError as fault:
        hook(type(fault), fault, fault.__traceback__)
    assert len(told) == 1
    assert "Traceback" not in told[0]
    assert "ZeroDivisionError" not in told[0]
    assert "All changes are in the book" in told[0]
    noted = (tmp_path / "faults.log").read_text()
    assert "builtins.ZeroDivisionError" in noted
    assert "test_fault_of_the_program_is_told" in noted
    assert "hose of no length" not in noted.replace('raise ZeroDivisionError("hose of no length")', "")


def test_the_report_is_shown_before_it_is_copied_and_holds_no_words_unless_they_are_added(
    qtbot: QtBot, qapp: QApplication
) -> None:
    site = "Maple Ferry Fuels"
    try:
        int(site)
    except ValueError as fault:
        dialog = FaultDialog("It did not work.", fault)
    qtbot.addWidget(dialog)
    dialog.copy_button.click()
    assert qapp.clipboard().text() == dialog.report_edit.toPlainText()
    assert "builtins.ValueError" in qapp.clipboard().text()
    assert "Maple" not in qapp.clipboard().text()
    dialog.words_box.click()
    assert "Maple Ferry Fuels" in dialog.report_edit.toPlainText()
    dialog.copy_button.click()
    assert "Maple Ferry Fuels" in qapp.clipboard().text()


def test_fault_is_told_even_where_nothing_can_be_written(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    told: list[str] = []
    monkeypatch.setattr(FaultDialog, "exec", lambda dialog: told.append(dialog.words_label.text()))
    (tmp_path / "file").write_text("in the way")
    window = MainWindow()
    qtbot.addWidget(window)
    UnexpectedFault(window, FaultLog(tmp_path / "file")).show(ValueError("x"))
    assert len(told) == 1


def test_over_an_empty_book_a_dropped_survey_opens_and_a_table_says_what_it_needs(
    qtbot: QtBot, qapp: QApplication, empty_book: Workbench, tmp_path: Path, plans_once: None
) -> None:
    window, start = asked(qtbot, qapp, empty_book, tmp_path)
    assert start.choice is not None
    table, survey = tmp_path / "hoses.csv", tmp_path / "marina.json"
    table.write_text("position,liquid\n9A,gasoline\n", encoding="utf-8")
    survey.write_text(survey_to_json(demo_survey("marina")), encoding="utf-8")
    assert drop(window, local(table))
    assert "hoses.csv" in start.choice.fault_label.text()
    assert empty_book.book().entries() == ()
    assert drop(window, local(survey))
    qtbot.waitUntil(lambda: window.workplace is not None, timeout=20_000)
    assert window.workplace is not None
    assert window.workplace.session.survey == demo_survey("marina")
    assert len(empty_book.book().entries()) == 1  # read once, though two could have taken it
    window.jobs.close()


def test_a_window_that_opens_its_book_takes_no_file_yet(
    qtbot: QtBot, qapp: QApplication, empty_book: Workbench, tmp_path: Path
) -> None:
    window, _ = opening(qtbot, qapp, lambda: empty_book, tmp_path)
    assert not drop(window, local(tmp_path / "marina.json"))


def test_the_page_that_was_in_view_last_is_loaded_by_the_job_that_opens_the_book(
    qtbot: QtBot, qapp: QApplication, own_workbench: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    loaded: dict[str, int] = {}

    def load(name: str) -> object:
        loaded.setdefault(name, threading.get_ident())
        return import_module(name)

    monkeypatch.setattr("spoutline.gui.window.start.import_module", load)
    stored = own_workbench.book().create(demo_survey())
    window, start = opening(qtbot, qapp, lambda: own_workbench, tmp_path)
    view = LastView(survey_id=stored.id, label=stored.survey.positions[0].label, place=Place.PARTS, step=Step.SET)
    window.memory = WindowMemory(tmp_path / "window.ini")
    window.memory.keep_view(view)
    start.start()
    qtbot.waitUntil(lambda: window.workplace is not None, timeout=20_000)
    pages = ("spoutline.gui.pages.result.set_page", "spoutline.gui.pages.result.bill_page")
    assert set(loaded) == set(pages)
    assert threading.get_ident() not in loaded.values()
    assert window.workplace is not None
    assert window.workplace.place is Place.PARTS
    window.jobs.close()
