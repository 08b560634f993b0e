"""Dispenser types in the window: kept by hand and as tables, chosen for a dispenser, told beside its answers."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLineEdit
from pytestqt.qtbot import QtBot

from gui.table_dialogs import drive, take
from spoutline.bootstrap import Workbench
from spoutline.gui.dialogs.dispenser_types import DispenserTypesDialog
from spoutline.gui.dialogs.table_intake import TableIntakeDialog
from spoutline.gui.edits.question import Step
from spoutline.gui.session import Session
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.dispenser_type import type_of_dispenser, with_dispenser_type
from spoutline.model.survey import DispenserType

NAME = "Rushwater 7"


@pytest.fixture(autouse=True)
def no_types_stay(bench: Workbench) -> Iterator[None]:
    """Take out of the shared book what a test put in."""
    yield
    for kind in bench.dispenser_types().all():
        bench.dispenser_types().remove(kind.name)


@pytest.fixture
def dialog(qtbot: QtBot, workplace: Workplace) -> DispenserTypesDialog:
    made = DispenserTypesDialog(workplace.session, workplace.context.intake)
    qtbot.addWidget(made)
    made.show()
    return made


def write(qtbot: QtBot, dialog: DispenserTypesDialog, key: str, text: str) -> None:
    field = dialog.form.field(key)
    if isinstance(field, QComboBox):
        field.setCurrentIndex(field.findData(text))
        return
    assert isinstance(field, QLineEdit)
    field.clear()
    qtbot.keyClicks(field, text)


def click(qtbot: QtBot, button: object) -> None:
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def test_a_type_is_written_saved_and_chosen(
    qtbot: QtBot, bench: Workbench, session: Session, dialog: DispenserTypesDialog
) -> None:
    assert not dialog.save_button.isEnabled()
    click(qtbot, dialog.new_button)
    write(qtbot, dialog, "name", NAME)
    write(qtbot, dialog, "outlet.height_m", "90 m")
    assert "less than or equal to 6" in dialog.fault_label.text()
    assert not dialog.save_button.isEnabled()
    write(qtbot, dialog, "outlet.height_m", "7 ft")
    write(qtbot, dialog, "retrieval", "reel")
    assert dialog.fault_label.text() == ""
    assert not dialog.choose_button.isEnabled()  # what is chosen must be in the book first
    click(qtbot, dialog.save_button)
    kept = bench.dispenser_types().named(NAME)
    assert kept.outlet.height_m == pytest.approx(7 * 0.3048)  # 1 ft = 0.3048 m exactly
    dialog.take_all_box.setChecked(True)
    click(qtbot, dialog.choose_button)
    assert dialog.after is not None
    chosen = type_of_dispenser(dialog.after, session.position.dispenser)
    assert chosen is not None
    assert chosen.name == NAME
    assert dialog.after.positions[0].retrieval == "reel"


def test_a_figure_that_nobody_touched_keeps_every_digit(qtbot: QtBot, bench: Workbench, workplace: Workplace) -> None:
    bench.dispenser_types().put([DispenserType.model_validate({"name": NAME, "outlet": {"height_m": 2.123456}})])
    dialog = DispenserTypesDialog(workplace.session, workplace.context.intake)
    qtbot.addWidget(dialog)
    write(qtbot, dialog, "maker", "Rushwater")
    click(qtbot, dialog.save_button)
    assert bench.dispenser_types().named(NAME).outlet.height_m == 2.123456


def test_tables_go_in_and_out(
    qtbot: QtBot, bench: Workbench, dialog: DispenserTypesDialog, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    drive(monkeypatch, qtbot, bench.dispenser_types().demo_table())
    click(qtbot, dialog.import_button)
    assert dialog.list.count() == len(bench.dispenser_types().all()) > 1
    path = tmp_path / "types.csv"
    dialog.export_to(path)
    drive(monkeypatch, qtbot, path)
    click(qtbot, dialog.import_button)
    assert dialog.state_label.text().startswith("0 new, 0 changed")
    path.write_text("name,retrieval\nX,rel\n", encoding="utf-8")

    def mend(intake: TableIntakeDialog) -> None:
        (report,) = intake.panel.look.reports
        assert report.nearest == "reel"
        click(qtbot, intake.panel.findings.replace_button)
        take(qtbot, intake)

    drive(monkeypatch, qtbot, path, mend)
    click(qtbot, dialog.import_button)
    assert dialog.state_label.text().startswith("1 new")
    assert bench.dispenser_types().named("X").retrieval == "reel"


def test_the_origin_of_an_answer_stands_beside_its_field(qtbot: QtBot, session: Session, workplace: Workplace) -> None:
    kind = DispenserType.model_validate({"name": NAME, "hook": {"distance_m": 0.4}, "outlet": {"height_m": 2.2}})
    dispenser = session.position.dispenser
    typed = with_dispenser_type(session.survey, [dispenser], kind, overrides_too=True)
    assert workplace.context.edit(typed, "choose")
    workplace.show_step(Step.PLACE)
    form = workplace.steps.pages[Step.PLACE].form
    assert form.field("outlet.height_m").origin == f"From dispenser type {NAME}"
    assert form.field("filler.distance_m").origin == ""
    field = form.field("outlet.height_m")
    field.given.emit("2 m")
    qtbot.waitUntil(lambda: session.position.outlet.height_m == 2.0)
    assert form.field("outlet.height_m").origin == f"Otherwise than dispenser type {NAME}"


def test_a_type_changed_in_the_book_is_told_and_taken_only_when_asked(
    qtbot: QtBot, bench: Workbench, session: Session, window: MainWindow, workplace: Workplace
) -> None:
    kind = DispenserType.model_validate({"name": NAME, "hook": {"distance_m": 0.4}})
    bench.dispenser_types().put([kind])
    dispenser = session.position.dispenser
    workplace.context.edit(with_dispenser_type(session.survey, [dispenser], kind, overrides_too=True), "choose")
    bench.dispenser_types().put([DispenserType.model_validate({"name": NAME, "hook": {"distance_m": 0.6}})])
    window.verbs.positions.tell_changed_types()  # type: ignore[attr-defined]
    assert NAME in window.notices.text
    assert session.position.hook.distance_m == 0.4
    window.verbs.positions._take_new_figures()  # type: ignore[attr-defined]
    assert session.position.hook.distance_m == 0.6
