"""What is agreed in the window is what its pages and papers show, as the command line shows it.

The expectations are relations between what the program says in different places; none is a figure of the trade.
"""

from __future__ import annotations

import csv
import io
from collections import Counter
from collections.abc import Callable
from pathlib import Path

import pypdf
import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_plans
from program_runs import Spoutline
from spoutline.bootstrap import Workbench
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.agreement import AgreeDialog
from spoutline.gui.dialogs.agreements import AgreementsDialog
from spoutline.gui.dialogs.named_step import NamedStepDialog
from spoutline.gui.edits.decisions import refuse_part
from spoutline.gui.edits.question import Step
from spoutline.gui.pages.installer.pack_panel import PaperKind
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.agreed_sets import AgreedSets, EntryKind, SetsSource
from spoutline.model.survey import Survey

Sets = dict[str, list[str]]


@pytest.fixture
def survey(survey: Survey, request: pytest.FixtureRequest) -> Survey:
    """Return the station under a name of its own: agreements are found by name too."""
    site = survey.site.model_copy(update={"name": f"Agreed {request.node.name}"[:60]})
    return survey.model_copy(update={"site": site})


@pytest.fixture
def ready(qtbot: QtBot, workplace: Workplace) -> Workplace:
    qtbot.waitUntil(lambda: workplace.sets.is_ready, timeout=20_000)
    return workplace


def on_dialog(kind: type[QDialog], act: Callable[[QDialog], None]) -> None:
    """Act on a dialog as soon as it stands."""

    def look() -> None:
        dialog = QApplication.activeModalWidget()
        if isinstance(dialog, kind) and dialog.isVisible():
            try:
                act(dialog)
            except BaseException:
                dialog.reject()  # a test that fails must not leave the run waiting in the dialog
                raise
        else:
            QTimer.singleShot(20, look)

    QTimer.singleShot(20, look)


def sign(dialog: QDialog, name: str, reason: str = "") -> None:
    """Write name and reason by the keyboard and press the button of the step."""
    assert isinstance(dialog, NamedStepDialog)
    assert not dialog.accept_button.isEnabled() or dialog.name
    dialog.name_edit.selectAll()
    QTest.keyClicks(dialog.name_edit, name)
    QTest.keyClicks(dialog.reason_edit, reason)
    QTest.mouseClick(dialog.accept_button, Qt.MouseButton.LeftButton)


def agree(
    qtbot: QtBot, window: MainWindow, name: str, reason: str = "", labels: tuple[str, ...] | None = None
) -> AgreedSets:
    """Agree by key on all planned sets, or on those of ``labels``."""
    workplace = window.workplace
    assert workplace is not None
    before = workplace.sets.agreed

    def act(dialog: QDialog) -> None:
        assert isinstance(dialog, AgreeDialog)
        for row in range(dialog.list.count()) if labels is not None else ():
            item = dialog.list.item(row)
            picked = item.data(Qt.ItemDataRole.UserRole) in labels
            item.setCheckState(Qt.CheckState.Checked if picked else Qt.CheckState.Unchecked)
        sign(dialog, name, reason)

    on_dialog(AgreeDialog, act)
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    qtbot.keyClick(window, Qt.Key.Key_G, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier)
    qtbot.waitUntil(lambda: workplace.sets.agreed not in (None, before), timeout=30_000)
    assert workplace.sets.agreed is not None
    return workplace.sets.agreed


def sets_of(agreed: AgreedSets) -> Sets:
    return {one.label: [link.part_number for link in one.set] for one in agreed.positions}


def shown_sets(workplace: Workplace) -> Sets:
    found = {}
    for position in workplace.session.survey.positions:
        plan = workplace.sets.plan(position.label)
        assert plan is not None
        found[position.label] = list(plan.chosen.hanging_set.numbers) if plan.chosen else []
    return found


def text_of(document: bytes) -> str:
    return " ".join(" ".join(page.extract_text() for page in pypdf.PdfReader(io.BytesIO(document)).pages).split())


def bill_of(qtbot: QtBot, workplace: Workplace) -> tuple[Counter[str], str]:
    """Return the pieces on the bill page, and the text of its paper."""
    workplace.show_bill()
    page = workplace.bill_page
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    assert page.document is not None
    counted: Counter[str] = Counter()
    for line in page.model.records:
        counted[line.part.number] += line.quantity
    return counted, text_of(page.document)


def paper_of(qtbot: QtBot, workplace: Workplace, kind: PaperKind) -> str:
    workplace.show_installer()
    panel = workplace.installer_page.pack_panel
    workplace.installer_page.tabs.setCurrentWidget(panel)
    panel.kind_box.setCurrentIndex(panel.kind_box.findData(kind))
    panel.refresh()
    qtbot.waitUntil(lambda: panel.document is not None, timeout=60_000)
    assert panel.document is not None
    return text_of(panel.document)


def command_line_bill(spoutline: Spoutline, bench: Workbench, survey: Survey, folder: Path, *more: str) -> Counter[str]:
    path, target = folder / "survey.json", folder / "bill.csv"
    path.write_text(survey.model_dump_json(round_trip=True))
    target.unlink(missing_ok=True)
    done = spoutline("--database", bench._settings.database, "bill", path, "--csv", target, *more)
    assert target.exists(), done.err
    counted: Counter[str] = Counter()
    for row in csv.DictReader(io.StringIO(target.read_text("utf-8-sig"))):
        counted[row["Part number"]] += int(row["Qty"])
    return counted


def edit_reach(workplace: Workplace, label: str, distance_m: float) -> None:
    survey = workplace.session.survey
    positions = tuple(
        one.model_copy(update={"filler": one.filler.model_copy(update={"distance_m": distance_m})})
        if one.label == label
        else one
        for one in survey.positions
    )
    workplace.context.edit(survey.model_copy(update={"positions": positions}), "Reach")


def test_agreed_in_the_window_is_shown_everywhere_as_the_command_line_shows_it(
    qtbot: QtBot, window: MainWindow, ready: Workplace, bench: Workbench, spoutline: Spoutline, tmp_path: Path
) -> None:
    assert ready.sets.source is SetsSource.PLAN
    assert "not agreed" in ready.bill_page.findChildren(type(ready.set_page.outcome.sets_head))[0].text()
    agreed = agree(qtbot, window, "R. Example", "as talked over")
    assert (agreed.origin.by, agreed.origin.reason) == ("R. Example", "as talked over")
    assert ready.sets.source is SetsSource.AGREED
    assert ready.site_panel.sets_box.currentData() == SetsSource.AGREED
    assert shown_sets(ready) == sets_of(agreed)

    counted, bill = bill_of(qtbot, ready)
    assert "agreed by R. Example" in bill
    survey = ready.session.survey
    assert counted == command_line_bill(spoutline, bench, survey, tmp_path)
    for kind in (PaperKind.PACK, PaperKind.FORM):
        paper = paper_of(qtbot, ready, kind)
        assert "agreed by R. Example" in paper
        assert all(number in paper for numbers in sets_of(agreed).values() for number in numbers)


def test_an_edit_is_told_in_the_list_and_on_the_page_and_a_new_plan_stands_beside(
    qtbot: QtBot, window: MainWindow, ready: Workplace
) -> None:
    first = sets_of(agree(qtbot, window, "R. Example"))
    ready.session.look_at("A1")
    ready.show_step(Step.SET)
    edit_reach(ready, "A1", 9.0)  # no hose of a car position reaches that far
    qtbot.waitUntil(lambda: ready.sets.is_ready and ready.sets.plan("A1") is not None, timeout=20_000)
    plan = ready.sets.plan("A1")
    assert plan is not None
    assert plan.chosen is not None
    assert list(plan.chosen.hanging_set.numbers) == first["A1"], "the agreed set stays shown"
    rows = ready.site_panel.model
    index = rows.index_of("A1")
    qtbot.waitUntil(lambda: rows.rowCount(rows.index_of("A1")) == 1)
    index = rows.index_of("A1")
    assert rows.index(0, 0, index).data() == "edited; agreed set breaks a must"
    assert rows.rowCount(rows.index_of("A2")) == 0

    button = ready.set_page.outcome.again_button
    assert button is not None
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    panel = ready.set_page.agreement
    assert ready.set_page.tabs.currentWidget() is panel
    assert "no longer keeps every must" in panel.state_label.text()
    wait_for_plans(qtbot, ready)
    assert ready.sets.agreed is not None
    assert sets_of(ready.sets.agreed) == first, "planning again agrees on nothing"

    edit_reach(ready, "A1", 2.0)
    wait_for_plans(qtbot, ready)
    qtbot.waitUntil(lambda: ready.sets.is_ready, timeout=20_000)
    ready.session.undo_stack.undo()
    ready.session.undo_stack.undo()
    qtbot.waitUntil(lambda: ready.sets.is_ready, timeout=20_000)
    qtbot.waitUntil(lambda: rows.rowCount(rows.index_of("A1")) == 0)
    assert ready.set_page.outcome.again_button is None


def test_one_position_is_agreed_alone_and_the_last_agreement_is_undone_with_its_reason(
    qtbot: QtBot, window: MainWindow, ready: Workplace
) -> None:
    agree(qtbot, window, "A. Example")
    edit_reach(ready, "A2", 3.1)
    wait_for_plans(qtbot, ready)
    qtbot.waitUntil(lambda: ready.sets.is_ready, timeout=20_000)
    second = agree(qtbot, window, "B. Example", "moved island", ("A2",))
    assert second.serial == 2
    assert second.position("A1") is not None, "what was agreed of the others stays"

    on_dialog(NamedStepDialog, lambda dialog: sign(dialog, "C. Example", "changed their mind"))
    window.actions_by_id[ActionId.WITHDRAW].trigger()
    qtbot.waitUntil(lambda: ready.sets.agreed is not None and ready.sets.agreed.serial == 1, timeout=20_000)
    line = ready.sets.line
    assert line is not None
    assert [one.entry for one in line.entries] == [EntryKind.AGREED, EntryKind.AGREED, EntryKind.WITHDRAWN]
    assert line.entries[2].origin.reason == "changed their mind"

    seen: list[str] = []

    def read(dialog: QDialog) -> None:
        assert isinstance(dialog, AgreementsDialog)
        model = dialog.model
        seen.extend(str(model.index(0, column).data()) for column in range(model.columnCount()))
        seen.append(dialog.difference_label.text())
        qtbot.waitUntil(lambda: dialog.sides.rowCount() == 2, timeout=60_000)
        titles = [dialog.sides.headerData(at, Qt.Orientation.Horizontal) for at in range(4)]
        seen.extend(map(str, titles))
        dialog.accept()

    on_dialog(AgreementsDialog, read)
    window.actions_by_id[ActionId.AGREEMENTS].trigger()
    assert seen[:2] == ["3", "taken back"]
    assert "changed their mind" in seen
    assert seen[-4:] == ["Position", "Planned now", "Agreed", "Built"]


def test_another_choice_of_sets_holds_for_pages_and_papers(
    qtbot: QtBot, window: MainWindow, ready: Workplace, bench: Workbench, spoutline: Spoutline, tmp_path: Path
) -> None:
    first = agree(qtbot, window, "R. Example")
    agreed_set = first.position("A1")
    assert agreed_set is not None
    nozzle = agreed_set.set[-1].ref
    ready.context.edit(refuse_part(ready.session.survey, "A1", nozzle), "Exclude")
    wait_for_plans(qtbot, ready)
    qtbot.waitUntil(lambda: ready.sets.is_ready, timeout=20_000)
    agreed, _ = bill_of(qtbot, ready)
    box = ready.site_panel.sets_box
    box.setFocus()
    qtbot.keyClick(box, Qt.Key.Key_Up)  # from "as agreed" to "as planned"
    assert ready.sets.source is SetsSource.PLAN
    qtbot.waitUntil(lambda: ready.bill_page.document is not None, timeout=60_000)
    planned, bill = bill_of(qtbot, ready)
    assert "as planned, not agreed" in bill
    survey = ready.session.survey
    assert planned == command_line_bill(spoutline, bench, survey, tmp_path, "--sets", "plan")
    assert agreed == command_line_bill(spoutline, bench, survey, tmp_path, "--sets", "agreed")
    assert planned != agreed, "the plan hangs another nozzle now"
    assert "as planned, not agreed" in paper_of(qtbot, ready, PaperKind.PACK)
