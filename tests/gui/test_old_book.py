"""The window over a book of an older version: what was healed is told, what needs repair keeps nobody out."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot
from sqlalchemy import text

from gui.conftest import wait_for_plans
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.gui.dialogs.surveys import SurveysDialog
from spoutline.gui.session import Session
from spoutline.gui.window.first_survey import survey_to_show
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.verbs import Verbs
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem


@pytest.fixture
def old(database_to_copy: Path, tmp_path: Path) -> Iterator[Workbench]:
    path = Path(shutil.copy(database_to_copy, tmp_path / "old.sqlite3"))
    bench = open_workbench(Settings(database=str(path), profiles=tmp_path / "profiles"))
    yield bench
    bench.close()


def changed(bench: Workbench, survey_id: int, document: dict[str, object]) -> None:
    with bench.book()._engine.begin() as connection:
        sql = text("UPDATE surveys SET document = :document WHERE id = :id")
        connection.execute(sql, {"document": json.dumps(document), "id": survey_id})


def opened(qtbot: QtBot, bench: Workbench) -> MainWindow:
    """Open the window as the program does."""
    session = Session(bench, survey_to_show(bench, None), UnitSystem.SI)
    window = MainWindow()
    qtbot.addWidget(window)
    workplace = window.attach(session)
    window.verbs = Verbs(window, workplace)  # type: ignore[attr-defined]
    window.show()
    wait_for_plans(qtbot, workplace)
    return window


def test_a_healed_survey_opens_and_says_what_was_read_otherwise(qtbot: QtBot, old: Workbench, survey: Survey) -> None:
    stored = old.book().create(survey)
    document = json.loads(survey.model_dump_json())
    document["site"]["name"] = "Elm\u202eStreet"
    changed(old, stored.id, document)
    window = opened(qtbot, old)
    assert "hidden sign" in window.notices.text
    assert window.workplace is not None
    assert window.workplace.session.survey.site.name == "Elm\ufffdStreet"
    window.jobs.close()


def test_a_survey_that_needs_repair_is_told_and_another_one_opens(qtbot: QtBot, old: Workbench, survey: Survey) -> None:
    other = old.book().create(survey)
    broken = old.book().create(survey.model_copy(update={"site": survey.site.model_copy(update={"name": "Broken"})}))
    changed(old, broken.id, {"site": {"name": "Broken"}, "positions": []})
    window = opened(qtbot, old)
    assert window.workplace is not None
    assert window.workplace.session.stored.id == other.id
    assert "needs repair" in window.notices.text
    window.jobs.close()


def test_a_survey_that_cannot_be_read_is_marked_in_the_list_and_saved_as_it_is_written(
    qtbot: QtBot, old: Workbench, survey: Survey, tmp_path: Path
) -> None:
    broken = old.book().create(survey.model_copy(update={"site": survey.site.model_copy(update={"name": "Broken"})}))
    document = {"site": {"name": "Broken"}, "positions": []}
    changed(old, broken.id, document)
    dialog = SurveysDialog(old, None)
    qtbot.addWidget(dialog)
    dialog.show()
    assert not dialog.rescue_button.isVisible()
    dialog._mark(broken.id)
    dialog.open_button.click()
    assert dialog.chosen is None
    assert "stays in the book as it is" in dialog.fault_label.text()
    assert dialog.table.currentIndex().siblingAtColumn(0).data() == "Broken  (cannot be read)"
    assert dialog.rescue_button.isVisible()
    entry = dialog._marked()
    assert entry is not None
    path = tmp_path / "broken.txt"
    dialog.rescue_to(path, entry)
    assert path.read_text(encoding="utf-8") == json.dumps(document)
    assert str(path) in dialog.fault_label.text()
