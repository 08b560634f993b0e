"""The walk through the real window, over the real catalogue, by mouse and by keyboard."""

from __future__ import annotations

from itertools import product
from pathlib import Path

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.drawing.position import position_drawing
from spoutline.gui.actions import ACTIONS, ActionId
from spoutline.gui.edits.question import Step
from spoutline.gui.pages.result.outcome_card import remedies_of
from spoutline.gui.roles import Tone
from spoutline.gui.session import Session
from spoutline.gui.widgets.answer_field import TextField, TileField
from spoutline.gui.widgets.drawing_brush import balloon_centres
from spoutline.gui.widgets.drawing_view import DrawingView
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.faults import StoreFault
from spoutline.model.liquid import ListingClass
from spoutline.model.plan import PlanStatus
from spoutline.model.requirement import Slot
from spoutline.units.accepted import UnitSystem

STEPS = (Step.LIQUID, Step.DUTY, Step.VAPOUR, Step.PLACE, Step.SET, Step.SITE)


def trigger(window: MainWindow, action_id: ActionId) -> None:
    window.actions_by_id[action_id].trigger()


def give(workplace: Workplace, step: Step, name: str, text: str) -> None:
    """Answer a question as a person does: go to the step, type or pick."""
    workplace.show_step(step)
    field = workplace.steps.pages[step].form.field(name)
    if isinstance(field, TileField):
        next(tile for tile, choice in zip(field.tiles, field._choices, strict=True) if choice.value == text).click()
    else:
        assert isinstance(field, TextField)
        field.editor.setFocus()
        field.editor.selectAll()
        QTest.keyClicks(field.editor, text)
        QTest.keyClick(field.editor, Qt.Key.Key_Return)


def planned(qtbot: QtBot, workplace: Workplace) -> None:
    qtbot.waitUntil(lambda: workplace.context.plan is not None, timeout=20_000)


def test_higher_blend_asks_for_the_next_listing_class(qtbot: QtBot, workplace: Workplace) -> None:
    # scopes of UL 2586A, 567A, 330A: above 10 up to 25 percent ethanol is class E25
    before = {figure.name: figure.left for figure in workplace.steps.strip.figures}
    give(workplace, Step.LIQUID, "liquid.blend_percent", "15")
    planned(qtbot, workplace)
    plan = workplace.context.plan
    assert plan is not None
    assert plan.requirement is not None
    assert plan.requirement.listing_class is ListingClass.E25

    def left() -> int:
        return next((one.left for one in workplace.steps.strip.figures if one.name == "Nozzle"), before["Nozzle"])

    qtbot.waitUntil(lambda: left() < before["Nozzle"], timeout=20_000)
    assert any(figure.change < 0 for figure in workplace.steps.strip.figures)
    assert plan.chosen is not None
    assert all(
        ListingClass.E25 in link.part.listings
        for link in plan.chosen.hanging_set.links
        if link.slot not in (Slot.ADAPTOR,)
    )


def test_gap_between_classes_is_refused_with_ways_out_that_can_be_taken(qtbot: QtBot, workplace: Workplace) -> None:
    # scopes of UL 2586B, 567B, 330B: no class between 20 and 99.9 percent biodiesel
    workplace.session.look_at("A2")
    give(workplace, Step.LIQUID, "liquid.blend_percent", "50")
    planned(qtbot, workplace)
    assert workplace.context.plan is not None
    assert workplace.context.plan.status is PlanStatus.NO_LISTING_CLASS
    workplace.show_step(Step.SET)
    card = workplace.set_page.outcome
    assert len(card.remedy_buttons) >= 2
    assert workplace.plans.tone("A2") is Tone.BAD
    remedies = remedies_of(workplace.context.plan, workplace.session.survey, workplace.context.story)
    to_b20 = next(place for place, one in enumerate(r for r in remedies if r.after) if _blend(one.after) == 20.0)
    card.remedy_buttons[to_b20].click()
    planned(qtbot, workplace)
    assert workplace.context.plan.status is PlanStatus.FITS
    workplace.session.undo_stack.undo()
    assert workplace.session.position.liquid.blend_percent == 50.0


def _blend(survey: object) -> float:
    return survey.position("A2").liquid.blend_percent  # type: ignore[attr-defined, no-any-return]


def test_each_step_shows_its_questions_and_can_be_gone_to_at_any_time(qtbot: QtBot, workplace: Workplace) -> None:
    for step, name in (
        (Step.PLACE, "outlet.height_m"),
        (Step.LIQUID, "liquid.family"),
        (Step.VAPOUR, "vapour_wanted"),
        (Step.DUTY, "duty"),
        (Step.SITE, "name"),
    ):
        workplace.show_step(step)
        assert workplace.step is step
        assert workplace.steps.pages[step].form.field(name).isVisible()
    workplace.show_step(Step.SET)
    assert workplace.set_page.outcome.headline_label.text() != ""


def test_retractor_asks_for_its_cord_and_moves_the_breakaway_to_the_nozzle(qtbot: QtBot, workplace: Workplace) -> None:
    form = workplace.steps.pages[Step.DUTY].form
    workplace.show_step(Step.DUTY)
    assert "retractor.height_m" not in form.names
    give(workplace, Step.DUTY, "retrieval", "retractor")
    assert form.field("retractor.height_m").isVisible()
    planned(qtbot, workplace)
    assert workplace.context.plan is not None
    assert workplace.context.plan.requirement is not None
    assert Slot.SWIVEL_BREAKAWAY in workplace.context.plan.requirement.chain


def test_unusable_text_stays_beside_its_message_and_the_survey_stays_as_it_was(
    qtbot: QtBot, workplace: Workplace
) -> None:
    before = workplace.session.survey
    give(workplace, Step.PLACE, "outlet.height_m", "tall")
    field = workplace.steps.pages.place.form.field("outlet.height_m")
    assert isinstance(field, TextField)
    assert field.editor.text() == "tall"
    assert "tall" in field.fault
    assert "write a number and a unit" in field.fault
    assert workplace.session.survey == before
    assert workplace.session.undo_stack.count() == 0
    field.editor.setText("2.4 m")
    QTest.keyClick(field.editor, Qt.Key.Key_Return)
    assert field.fault == ""
    assert workplace.session.position.outlet.height_m == 2.4


def test_unusable_text_of_one_position_never_lands_in_another(qtbot: QtBot, workplace: Workplace) -> None:
    give(workplace, Step.PLACE, "outlet.height_m", "tall")
    before = workplace.session.survey
    workplace.session.look_at("A2")
    field = workplace.steps.pages.place.form.field("outlet.height_m")
    assert isinstance(field, TextField)
    assert field.fault == ""
    assert field.editor.text() != "tall"
    assert workplace.session.survey == before


def test_units_switch_everywhere_at_once(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    workplace.show_step(Step.PLACE)
    field = workplace.steps.pages.place.form.field("filler.distance_m")
    assert isinstance(field, TextField)
    assert field.editor.text().endswith(" m")
    trigger(window, ActionId.UNITS_US)
    assert field.editor.text().endswith(" in")
    texts = [shape.text for shape in workplace.side_panel.drawing.drawing.shapes if hasattr(shape, "text")]  # type: ignore[union-attr]
    assert any(text.endswith(" ft") for text in texts)
    assert not any(text.endswith(" m") for text in texts)
    assert workplace.session.undo_stack.count() == 0


def test_picking_a_part_marks_it_in_drawing_list_and_panel(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.show_step(Step.SET)
    plan = workplace.context.plan
    assert plan is not None
    assert plan.chosen is not None
    breakaway = plan.chosen.hanging_set.part_in(Slot.BREAKAWAY)
    assert breakaway is not None
    workplace.side_panel.drawing.part_picked.emit(breakaway.ref)
    assert breakaway.number in workplace.set_page.part_panel.title_label.text()
    row = workplace.side_panel.table.currentIndex().row()
    assert workplace.side_panel.model.records[row].link.part == breakaway


def test_clicking_a_balloon_of_the_drawing_picks_its_part(qtbot: QtBot, workplace: Workplace) -> None:
    from spoutline.documents.drawing.shapes import Balloon

    view = workplace.side_panel.drawing
    assert view.drawing is not None
    placed = view.view()
    assert placed is not None
    centres = balloon_centres(view.drawing, placed)
    balloons = [shape for shape in view.drawing.shapes if isinstance(shape, Balloon)]
    assert len(balloons) >= 4
    for balloon in balloons:
        QTest.mouseClick(view, Qt.MouseButton.LeftButton, pos=centres[balloon].toPoint())
        assert workplace.session.part == balloon.mark.part


def test_drawing_is_enlarged_and_shown_whole_again(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    view = workplace.side_panel.drawing
    trigger(window, ActionId.ENLARGE)
    assert view.zoom > 1
    trigger(window, ActionId.FIT_DRAWING)
    assert view.zoom == 1


def test_other_set_is_taken_as_an_answer_and_undone(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.show_step(Step.SET)
    workplace.set_page.show_panel(workplace.set_page.other_sets)
    plan, staged = workplace.context.plan, workplace.plans.staged(workplace.session.label)
    assert staged is not None
    assert staged.others
    wanted = staged.others[0].judged.hanging_set.refs
    panel = workplace.set_page.other_sets
    panel.tree.setCurrentIndex(panel.model.index(0, 0))
    panel.take_button.click()
    assert workplace.session.position.decisions.pinned == tuple(sorted(set(wanted)))
    planned(qtbot, workplace)
    assert workplace.context.plan is not None
    assert workplace.context.plan.chosen is not None
    assert workplace.context.plan.chosen.hanging_set.refs == wanted
    workplace.session.undo_stack.undo()
    assert workplace.context.plan == plan


def test_other_set_stays_marked_when_the_panel_is_filled_again(workplace: Workplace) -> None:
    workplace.show_step(Step.SET)
    panel = workplace.set_page.other_sets
    workplace.set_page.show_panel(panel)
    last = panel.model.rowCount() - 1
    assert last >= 1
    panel.tree.setCurrentIndex(panel.model.index(last, 0))
    record = panel.tree.current_record()
    panel.refresh()
    assert panel.tree.current_record() == record
    assert panel.tree.selectionModel().isSelected(panel.model.index(last, 0))


def test_first_other_set_is_seen_to_be_marked_before_it_can_be_taken(workplace: Workplace) -> None:
    workplace.show_step(Step.SET)
    panel = workplace.set_page.other_sets
    workplace.set_page.show_panel(panel)
    assert panel.take_button.isEnabled()
    assert panel.tree.selectionModel().isSelected(panel.model.index(0, 0))


def test_empty_list_of_other_sets_says_that_kept_parts_leave_none(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.show_step(Step.SET)
    panel = workplace.set_page.other_sets
    workplace.set_page.show_panel(panel)
    panel.take_button.click()
    planned(qtbot, workplace)
    qtbot.waitUntil(lambda: panel.model.rowCount() == 0, timeout=20_000)
    assert not panel.take_button.isEnabled()

    def says_so() -> bool:
        return any("kept by choice" in label.text() for label in panel.findChildren(QLabel))

    qtbot.waitUntil(says_so, timeout=20_000)  # other sets are looked for when the set is there


def test_return_in_the_part_search_asks_about_the_part_found(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    trigger(window, ActionId.PART_QUESTION)
    panel = workplace.set_page.why_not
    number = workplace.session.workbench.parts().search("swivel", None, 5)[0].number
    panel.search_edit.setText(number)
    QTest.keyClick(panel.search_edit, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: panel.verdict_title.text().startswith(number), timeout=10_000)
    assert panel.verdict_label.text()


def test_checks_open_to_their_worked_lines_and_sources(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.show_step(Step.SET)
    checks = workplace.set_page.checks
    workplace.set_page.show_panel(checks)
    assert checks.model.rowCount() >= 10
    worked = 0
    for row in range(checks.model.rowCount()):
        index = checks.model.index(row, 0)
        node = checks.model.node_at(index)
        assert node is not None
        assert len(node.cells) == 5
        assert node.children
        worked += any("=" in child.cells[0] for child in node.children)
    assert worked >= 8


def test_requirement_lines_name_rule_and_source(qtbot: QtBot, workplace: Workplace) -> None:
    workplace.show_step(Step.SET)
    workplace.set_page.show_panel(workplace.set_page.requirement)
    model = workplace.set_page.requirement.model
    nodes = [model.node_at(model.index(row, 0)) for row in range(model.rowCount())]
    assert len(nodes) > 15
    assert all(node is not None and len(node.children) == 2 for node in nodes)


def test_why_not_tells_the_rules_that_a_part_breaks(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    trigger(window, ActionId.PART_QUESTION)
    panel = workplace.set_page.why_not
    panel.search_edit.setText("diesel nozzle")
    qtbot.waitUntil(lambda: bool(panel.model.records) and "diesel" in panel.model.records[0].name.lower())
    panel.table.selectRow(0)
    qtbot.waitUntil(lambda: "rule" in panel.verdict_label.text(), timeout=10_000)
    assert "breaks" in panel.verdict_label.text()


def test_question_about_a_part_of_the_set_says_that_it_is_chosen(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    plan = workplace.context.plan
    assert plan is not None
    assert plan.chosen is not None
    number = plan.chosen.hanging_set.numbers[0]
    trigger(window, ActionId.PART_QUESTION)
    panel = workplace.set_page.why_not
    panel.search_edit.setText(number)
    qtbot.waitUntil(lambda: [part.number for part in panel.model.records] == [number])
    panel.table.selectRow(0)
    qtbot.waitUntil(lambda: "set chosen" in panel.verdict_label.text(), timeout=10_000)


def test_hostile_names_are_shown_as_text(qtbot: QtBot, workplace: Workplace) -> None:
    give(workplace, Step.SITE, "name", "<b>Bold</b> & <img src=x>")
    assert workplace.site_panel.title_label.text() == "<b>Bold</b> & <img src=x>"
    assert workplace.site_panel.title_label.textFormat() is Qt.TextFormat.PlainText


def test_failed_save_is_told_and_the_change_stays(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(*_: object) -> None:
        raise StoreFault("The disk is full.")

    with monkeypatch.context() as patch:
        patch.setattr(workplace.session.workbench.saving_book(), "save", fail)
        give(workplace, Step.LIQUID, "liquid.blend_percent", "7")
        workplace.session.settle()
        assert "The disk is full." in window.notices.text
        assert workplace.session.position.liquid.blend_percent == 7.0
        assert window.save_label.text() == "NOT saved"
    again = next(button for button in window.notices.findChildren(QAbstractButton) if button.text() == "Save again")
    again.click()
    assert workplace.session.settle()
    assert window.notices.text == ""
    stored = workplace.session.workbench.book().stored(workplace.session.stored.id)
    assert stored.survey == workplace.session.survey


def test_late_plan_of_an_older_answer_is_not_shown(
    qtbot: QtBot, workplace: Workplace, monkeypatch: pytest.MonkeyPatch
) -> None:
    import threading

    gate = threading.Event()
    real = workplace.session.workbench.plan_position

    def slow(survey: object, label: str, progress: object = None) -> object:
        if survey.position(label).liquid.blend_percent == 7.0:  # type: ignore[attr-defined]
            gate.wait(10)
        return real(survey, label, progress)  # type: ignore[arg-type]

    monkeypatch.setattr(workplace.session.workbench, "plan_position", slow)
    give(workplace, Step.LIQUID, "liquid.blend_percent", "7")
    give(workplace, Step.LIQUID, "liquid.blend_percent", "15")
    planned(qtbot, workplace)
    gate.set()
    qtbot.waitUntil(lambda: not workplace.context.jobs.is_busy("plan"))  # type: ignore[arg-type]
    assert workplace.context.plan is not None
    assert workplace.context.plan.position.liquid.blend_percent == 15.0


def keyboard_walk_targets(window: QWidget) -> list[QWidget]:
    """Return what Tab reaches, starting from the window's first focus widget."""
    reached: list[QWidget] = []
    first = QApplication.focusWidget()
    for _ in range(400):
        QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Tab)
        now = QApplication.focusWidget()
        if now is None or now in reached:
            break
        reached.append(now)
        if now is first:
            break
    return reached


def test_keyboard_alone_does_the_whole_job(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, tmp_path: Path
) -> None:
    window.activateWindow()
    qtbot.waitActive(window)
    press(window, Qt.Key.Key_4, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: workplace.step is Step.PLACE)  # Qt clicks a button's mnemonic a moment later
    press(window, Qt.Key.Key_U, Qt.KeyboardModifier.AltModifier)  # mnemonic of the outlet's height
    editor = QApplication.focusWidget()
    assert isinstance(editor, QLineEdit)
    assert editor.accessibleName() == "Outlet height"
    editor.selectAll()
    QTest.keyClicks(editor, "2.45 m")
    QTest.keyClick(editor, Qt.Key.Key_Tab)
    assert workplace.session.position.outlet.height_m == 2.45
    press(window, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
    assert workplace.session.label == "A2"
    press(window, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert workplace.step is Step.SET
    press(window, Qt.Key.Key_B, Qt.KeyboardModifier.ControlModifier)
    assert workplace.bill_is_shown
    qtbot.waitUntil(lambda: workplace.bill_page.document is not None, timeout=30_000)
    press(window, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert workplace.step is Step.SET
    press(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert workplace.session.survey.positions[0].outlet.height_m != 2.45


def press(window: MainWindow, key: Qt.Key, modifier: Qt.KeyboardModifier) -> None:
    QTest.keyClick(window.windowHandle(), key, modifier)


def test_tab_reaches_every_answer_of_each_step(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    window.activateWindow()
    qtbot.waitActive(window)
    for step in STEPS:
        workplace.show_step(step)
        workplace.site_panel.site_button.setFocus()
        reached = keyboard_walk_targets(window)
        assert workplace.side_panel.drawing in reached, step
        assert workplace.side_panel.table in reached, step
        if step in workplace.steps.pages:
            for name in workplace.steps.pages[step].form.names:
                field = workplace.steps.pages[step].form.field(name)
                assert any(field.isAncestorOf(widget) for widget in reached), name
        else:
            assert workplace.set_page.tabs.tabBar() in reached


def unnamed(root: QWidget) -> list[str]:
    """Return the widgets that take the keyboard and have no name for a screen reader."""
    found = []
    for widget in [root, *root.findChildren(QWidget)]:
        takes = widget.focusPolicy() != Qt.FocusPolicy.NoFocus and widget.isVisibleTo(root)
        if not takes or widget is root or widget.focusProxy() is not None:
            continue
        interface = QAccessible.queryAccessibleInterface(widget)
        if interface is not None and not interface.text(QAccessible.Text.Name).strip():
            found.append(f"{type(widget).__name__} {widget.objectName()} in {type(widget.parent()).__name__}")
    return found


def test_nothing_that_takes_the_keyboard_lacks_a_name(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    for step in STEPS:
        workplace.show_step(step)
        assert unnamed(window) == [], step
    workplace.show_step(Step.SET)
    for place in range(workplace.set_page.tabs.count()):
        workplace.set_page.tabs.setCurrentIndex(place)
        assert unnamed(window) == [], place
    workplace.show_bill()
    assert unnamed(window) == []


def mnemonics(window: MainWindow) -> list[str]:
    """Return the letters that Alt goes with in what is visible: menus, buttons, titles of fields."""
    menus = [action.text() for action in window.menuBar().actions()]
    buttons = [one.text() for one in window.findChildren(QAbstractButton) if one.isVisible()]
    labels = [one.text() for one in window.findChildren(QLabel) if one.isVisible() and one.buddy() is not None]
    texts = [text.replace("&&", "") for text in (*menus, *buttons, *labels)]
    return sorted(text[text.index("&") + 1].lower() for text in texts if "&" in text)


def test_no_letter_goes_with_alt_for_two_things_in_view(qtbot: QtBot, workplace: Workplace, window: MainWindow) -> None:
    for retrieval, step in product(("retractor", "reel"), STEPS):
        give(workplace, Step.DUTY, "retrieval", retrieval)
        workplace.show_step(step)
        for place in range(workplace.set_page.tabs.count() if step is Step.SET else 1):
            workplace.set_page.tabs.setCurrentIndex(place)
            letters = mnemonics(window)
            assert len(letters) == len(set(letters)), (step, letters)
    workplace.show_bill()
    letters = mnemonics(window)
    assert len(letters) == len(set(letters)), letters


def test_every_command_is_bound_and_no_two_share_keys(window: MainWindow) -> None:
    assert set(window.actions_by_id) == set(ActionId)
    keys = [record.keys for record in ACTIONS if record.keys]
    assert len(keys) == len(set(keys))
    verbs = window.verbs  # type: ignore[attr-defined]
    assert set(verbs._calls) == set(ActionId)


def test_undo_menu_names_the_change(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> None:
    assert not window.actions_by_id[ActionId.UNDO].isEnabled()
    give(workplace, Step.LIQUID, "liquid.blend_percent", "7")
    assert window.actions_by_id[ActionId.UNDO].text() == "&Undo: How much blend is in it"
    trigger(window, ActionId.UNDO)
    assert window.actions_by_id[ActionId.REDO].isEnabled()


def test_positions_are_duplicated_and_removed_by_command(
    qtbot: QtBot, window: MainWindow, workplace: Workplace
) -> None:
    trigger(window, ActionId.DUPLICATE_POSITION)
    assert [one.label for one in workplace.session.survey.positions] == ["A1", "A3", "A2"]
    assert workplace.session.label == "A3"
    trigger(window, ActionId.REMOVE_POSITION)
    assert [one.label for one in workplace.session.survey.positions] == ["A1", "A2"]
    trigger(window, ActionId.REMOVE_POSITION)
    trigger(window, ActionId.REMOVE_POSITION)
    assert len(workplace.session.survey.positions) == 1
    assert "at least one position" in window.notices.text


def test_fillers_are_added_and_taken_away_on_the_page(qtbot: QtBot, workplace: Workplace) -> None:
    before = workplace.session.survey
    workplace.show_step(Step.PLACE)
    count = len(workplace.session.position.other_fillers)
    workplace.steps.pages.place.add_button.click()
    assert len(workplace.session.position.other_fillers) == count + 1
    assert workplace.steps.pages.place.form.field(f"other_fillers.{count}.distance_m").isVisible()
    removers = workplace.steps.pages.place.findChildren(QPushButton)
    (remover,) = (one for one in removers if one.accessibleName() == f"Remove further filler {count + 1}")
    remover.click()
    assert workplace.session.survey == before


def test_site_tree_shows_marks_and_turns_to_positions(qtbot: QtBot, workplace: Workplace) -> None:
    model = workplace.site_panel.model
    index = model.index_of("A2")
    qtbot.waitUntil(lambda: model.node_at(model.index_of("A2")).tone is not Tone.WORKING)  # type: ignore[union-attr]
    index = model.index_of("A2")
    workplace.site_panel.tree.setCurrentIndex(index)
    assert workplace.session.label == "A2"


def test_good_practice_that_is_not_met_stands_beside_the_verdict(qtbot: QtBot, workplace: Workplace) -> None:
    # from half a metre above the ground the hose must lie on it, at rest and drawn out: two lines of good practice
    workplace.session.look_at("A1")
    give(workplace, Step.PLACE, "outlet.height_m", "0.5 m")
    planned(qtbot, workplace)
    workplace.show_step(Step.SET)
    assert "good-practice lines not met: 2" in workplace.set_page.outcome.headline_label.text()
    model = workplace.site_panel.model
    hint = model.index_of("A1").data(Qt.ItemDataRole.ToolTipRole)
    assert hint.startswith("A1: ")
    assert hint.endswith("; good-practice lines not met: 2")


def test_reopened_book_holds_the_last_change(qtbot: QtBot, workplace: Workplace, bench: Workbench) -> None:
    give(workplace, Step.LIQUID, "liquid.blend_percent", "7")
    assert workplace.session.settle()
    stored = bench.book().stored(workplace.session.stored.id)
    assert stored.survey.positions[0].liquid.blend_percent == 7.0


def test_session_survives_a_survey_with_an_unknown_jurisdiction(
    qtbot: QtBot, session: Session, window: MainWindow
) -> None:
    workplace = window.workplace
    assert workplace is not None
    site = session.survey.site.model_copy(update={"jurisdiction": "nowhere"})
    session.replace_survey(session.survey.model_copy(update={"site": site}), "A1")
    qtbot.waitUntil(lambda: workplace.plans.trouble("A1") != "")
    assert "nowhere" in workplace.plans.trouble("A1")
    workplace.show_step(Step.SET)
    assert "nowhere" in workplace.set_page.outcome._facts_label.text()
    assert session.display.system is UnitSystem.SI


def test_window_opens_within_a_small_screen(window: MainWindow) -> None:
    room = window.screen().availableSize()
    fresh = MainWindow()
    try:
        assert fresh.width() <= room.width()
        assert fresh.height() <= room.height()
    finally:
        fresh.jobs.close()
        fresh.deleteLater()


@pytest.mark.parametrize("demo", ["small_town", "conversion_balance"])  # the second has an adapter, and a balloon more
@pytest.mark.parametrize("size", [QSize(404, 246), QSize(404, 280), QSize(470, 470), QSize(900, 600)])
def test_balloons_of_the_whole_drawing_stay_inside_the_widget(workplace: Workplace, size: QSize, demo: str) -> None:
    survey = demo_survey(demo)
    plan = workplace.session.workbench.plan_position(survey, survey.positions[0].label)
    drawing = position_drawing(plan, workplace.context.story)
    view = DrawingView("Drawing")
    view.resize(size)
    view.show_drawing(drawing)
    now = view.view()
    assert now is not None
    centres = balloon_centres(drawing, now).values()
    assert len(centres) >= 5
    assert all(10 <= centre.y() <= size.height() - 10 for centre in centres)
    assert all(10 <= centre.x() <= size.width() - 10 for centre in centres)
