"""Sets weighed in the window: chart and table tell the same, one taken is one change, keyboard and words suffice."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog
from pytestqt.qtbot import QtBot

from paper_text import text_of
from spoutline.bootstrap.weighing import WeighingService
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.agreement import AgreeDialog
from spoutline.gui.dialogs.weighing import WeighingDialog
from spoutline.gui.edits.question import Step
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.agreed_sets import AgreedStanding
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.front import FrontAxis, PositionFront, StationFront
from spoutline.model.yearly_cost import YearlyPart
from spoutline.planning.agreement.standing import standing_of
from spoutline.planning.weighing.station_front import points_taken


@pytest.fixture
def dialog(qtbot: QtBot, workplace: Workplace) -> WeighingDialog:
    """Return the dialog as the window opens it, without the loop that waits for its end."""
    shown: list[WeighingDialog] = []

    def keep(dialog: WeighingDialog) -> int:
        shown.append(dialog)
        return 0

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(WeighingDialog, "exec", keep)
        patch.setattr(WeighingDialog, "deleteLater", lambda _: None)
        workplace.weighing.ask()
    qtbot.addWidget(shown[0])
    shown[0].show()
    return shown[0]


def done(qtbot: QtBot, dialog: WeighingDialog) -> None:
    """Wait until the whole answer is there."""

    def is_done() -> bool:
        found = dialog.found
        if isinstance(found, PositionFront):
            return found.unchecked == 0 and not dialog.progress_row.bar.isVisible()
        return found is not None and not dialog.progress_row.bar.isVisible()

    qtbot.waitUntil(is_done, timeout=60_000)


def front_of(dialog: WeighingDialog) -> PositionFront:
    assert isinstance(dialog.found, PositionFront)
    return dialog.found


def test_a_set_taken_is_one_change_that_can_be_undone_and_is_planned_then(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    session = workplace.session
    before, steps = session.survey, session.undo_stack.count()
    taken: list[tuple[object, ...]] = []

    def take() -> None:
        dialog = workplace.weighing.dialog
        assert dialog is not None
        done(qtbot, dialog)
        found = front_of(dialog)
        assert session.survey is before
        last = len(found.points) - 1
        assert last > 0
        dialog.pick(last)
        taken.append(found.points[last].judged.hanging_set.refs)
        QTest.mouseClick(dialog.accept_button, Qt.MouseButton.LeftButton)

    QTimer.singleShot(0, take)
    window.actions_by_id[ActionId.WEIGH].trigger()
    position = session.survey.position(session.label)
    assert position is not None
    assert set(position.decisions.pinned) == set(taken[0])
    assert session.undo_stack.count() == steps + 1
    workplace.show_step(Step.SET)
    qtbot.waitUntil(lambda: workplace.context.plan is not None, timeout=60_000)
    plan = workplace.context.plan
    assert plan is not None
    assert plan.chosen is not None
    assert plan.chosen.hanging_set.refs == taken[0]
    session.undo_stack.undo()
    assert session.survey == before


@pytest.mark.parametrize("is_station", [False, True])
def test_a_point_picked_becomes_the_agreed_set(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, monkeypatch: pytest.MonkeyPatch, is_station: bool
) -> None:
    session = workplace.session
    named = f"Agreed among those weighed, {'all' if is_station else 'one'}"
    workplace.context.edit(
        session.survey.model_copy(update={"site": session.survey.site.model_copy(update={"name": named})}), "Name"
    )
    survey = session.survey
    wanted: dict[str, tuple[object, ...]] = {}

    def pick() -> None:
        dialog = workplace.weighing.dialog
        assert dialog is not None
        if is_station:
            dialog.scope_box.setCurrentIndex(1)
            dialog.scope_box.activated.emit(1)
        done(qtbot, dialog)
        found = dialog.found
        assert found is not None
        last = len(found.points) - 1
        assert last > 0
        dialog.pick(last)
        if isinstance(found, StationFront):
            taken = points_taken(found, found.points[last])
            wanted.update({one: point.judged.hanging_set.refs for group, point in taken for one in group.labels})
        else:
            wanted[found.label] = found.points[last].judged.hanging_set.refs
        QTest.mouseClick(dialog.agree_button, Qt.MouseButton.LeftButton)

    def sign(dialog: AgreeDialog) -> int:
        assert set(dialog.labels) == set(wanted)
        dialog.name_edit.setText("O. Owner")
        return int(AgreeDialog.DialogCode.Accepted)

    monkeypatch.setattr(AgreeDialog, "exec", sign)
    QTimer.singleShot(0, pick)
    window.actions_by_id[ActionId.WEIGH].trigger()
    qtbot.waitUntil(lambda: workplace.sets.agreed is not None and workplace.sets.is_ready, timeout=60_000)
    assert session.survey is survey, "agreeing changes no answer"
    agreed = workplace.sets.agreed
    assert agreed is not None
    assert {one.label: tuple(link.ref for link in one.set) for one in agreed.positions} == wanted
    for label in wanted:
        plan = workplace.sets.agreed_plan(label)
        assert plan is not None
        assert standing_of(plan) is AgreedStanding.HOLDS


def test_chart_and_table_hold_the_same_points_in_hand(qtbot: QtBot, dialog: WeighingDialog) -> None:
    done(qtbot, dialog)
    found = front_of(dialog)
    assert found.axes == (FrontAxis.PRICE, FrontAxis.LEAD, FrontAxis.FLOW)
    assert dialog.model.rowCount() == len(found.points)
    assert dialog.picked == found.planned
    dialog.chart.setFocus()
    QTest.keyClick(dialog.chart, Qt.Key.Key_End)
    at = dialog.picked
    assert at is not None
    assert dialog.tree.current_record() == at
    assert found.points[at].figures[0] == max(one.figures[0] for one in found.points)
    told = dialog.chart.accessibleDescription()
    for number in found.points[at].judged.hanging_set.numbers:
        assert number in told
    assert f"Chart of {len(found.points)} points" in told
    dialog.tree.pick(dialog.model.index(0, 0))
    assert dialog.picked == 0
    view = dialog.chart.view()
    assert view is not None
    place = view.point(dialog.chart._places[at])
    QTest.mouseClick(dialog.chart, Qt.MouseButton.LeftButton, pos=QPoint(round(place.x()), round(place.y())))
    assert found.points[dialog.picked or 0].figures[:2] == found.points[at].figures[:2]


def test_axes_are_chosen_and_each_once(qtbot: QtBot, dialog: WeighingDialog) -> None:
    done(qtbot, dialog)
    dialog.y_box.setCurrentIndex(dialog.y_box.findData(FrontAxis.PRICE.value))
    dialog.y_box.activated.emit(dialog.y_box.currentIndex())
    assert len(set(dialog.axes)) == len(dialog.axes)
    assert dialog.axes[1] is FrontAxis.PRICE
    dialog.size_box.setCurrentIndex(0)
    dialog.size_box.activated.emit(0)
    done(qtbot, dialog)
    found = front_of(dialog)
    assert found.axes == dialog.axes
    assert len(found.axes) == 2


def test_a_yearly_cost_tells_its_parts_and_terms_add_to_them(
    qtbot: QtBot, dialog: WeighingDialog, workplace: Workplace
) -> None:
    done(qtbot, dialog)
    assert "drive-offs" not in dialog.told_label.toolTip()
    dialog.use_terms(workplace.session.workbench.quoting().terms().demo_terms())
    at = dialog.y_box.findData(FrontAxis.YEARLY.value)
    assert at >= 0
    dialog.y_box.setCurrentIndex(at)
    dialog.y_box.activated.emit(at)
    done(qtbot, dialog)
    assert FrontAxis.YEARLY in front_of(dialog).axes
    assert "drive-offs" in dialog.told_label.toolTip().split("Not in the yearly cost")[0]
    point = front_of(dialog).points[0]
    assert set(point.yearly) == {YearlyPart.WEAR, YearlyPart.DRIVE_OFFS}
    first, last = dialog.model.index(0, 0), len(front_of(dialog).axes) + 1
    told = dialog.model.index(0, last, first).data()
    assert "= wear" in told
    assert "+ drive-offs" in told


def test_a_station_is_weighed_by_its_price(qtbot: QtBot, dialog: WeighingDialog, tmp_path: Path) -> None:
    done(qtbot, dialog)
    dialog.scope_box.setCurrentIndex(1)
    dialog.scope_box.activated.emit(1)
    done(qtbot, dialog)
    found = dialog.found
    assert isinstance(found, StationFront)
    assert dialog.axes == (FrontAxis.PRICE, FrontAxis.LEAD)
    assert "All combinations" in dialog.told_label.text()
    path = tmp_path / "weighed.pdf"
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(path), "PDF (*.pdf)"))
        dialog.hands.save_button.click()
        qtbot.waitUntil(path.exists, timeout=60_000)
    told = " ".join(text_of(path.read_bytes()).split())
    assert "All combinations" in told


def test_leaving_changes_nothing(qtbot: QtBot, dialog: WeighingDialog, workplace: Workplace) -> None:
    before, steps = workplace.session.survey, workplace.session.undo_stack.count()
    done(qtbot, dialog)
    dialog.stop()
    dialog.reject()
    assert workplace.session.survey is before
    assert workplace.session.undo_stack.count() == steps


def test_a_dialog_that_is_left_while_sets_are_picked_agrees_on_nothing(qtbot: QtBot, dialog: WeighingDialog) -> None:
    done(qtbot, dialog)
    jobs = dialog._tools.jobs
    qtbot.waitUntil(lambda: not jobs._waiting, timeout=60_000)
    dialog.agree()
    with qtbot.waitSignal(jobs.busy_changed, check_params_cb=lambda busy: not busy, timeout=60_000):
        dialog.reject()
    assert dialog.agreed is None
    assert dialog.result() == WeighingDialog.DialogCode.Rejected


def test_sets_that_cannot_be_agreed_on_leave_the_search_going(
    qtbot: QtBot, dialog: WeighingDialog, monkeypatch: pytest.MonkeyPatch
) -> None:
    done(qtbot, dialog)

    def refuse(*_: object) -> None:
        raise InputFault((InputProblem("", "pinned", "'P-1'", "the set lacks this part"),))

    monkeypatch.setattr(WeighingService, "picked_sets", refuse)
    show, asked = dialog._show, []

    def show_and_agree(found: PositionFront | StationFront) -> None:
        show(found)
        if not asked and found.points:
            asked.append(found)
            dialog.agree()

    monkeypatch.setattr(dialog, "_show", show_and_agree)
    dialog.ask()
    qtbot.waitUntil(lambda: "the set lacks this part" in dialog.fault_label.text(), timeout=60_000)
    qtbot.waitUntil(lambda: front_of(dialog).unchecked == 0, timeout=60_000)
    assert asked[0].unchecked is None, "the first sets stand before the search has ended"
