"""What is agreed in the window is what its pages and papers show, as the command line shows it.

The expectations are relations between what the program says in different places; none is a figure of the trade.
"""

from __future__ import annotations

import csv
import io
from collections import Counter
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_plans
from paper_text import text_of
from program_runs import Spoutline
from short_terms import RECONNECTABLE, SINGLE_USE, short_terms
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.agreement import AgreeDialog
from spoutline.gui.dialogs.agreements import AgreementsDialog
from spoutline.gui.dialogs.named_step import NamedStepDialog
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.decisions import refuse_part
from spoutline.gui.edits.question import Step
from spoutline.gui.pages.installer.pack_panel import PaperKind
from spoutline.gui.pages.quotation.files import FileKind
from spoutline.gui.pages.quotation.page import QuotationPage
from spoutline.gui.pages.sets_head import SetsHead
from spoutline.gui.places import Place
from spoutline.gui.roles import Role
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.agreed_sets import AgreedSets, EntryKind, SetsSource
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.survey import Survey

DAY = date(2026, 11, 25)  # of the terms: prices and validity count from it
LOW_PERMEATION = """
[[options]]
title = "Low-permeation"
breakaway = "single_use"
hose = "low_permeation"
"""
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


def test_an_edit_at_one_position_leaves_the_agreed_sets_of_the_others_as_they_are_shown(
    qtbot: QtBot, window: MainWindow, ready: Workplace
) -> None:
    agree(qtbot, window, "R. Example")
    ready.session.look_at("A1")
    plan, drawing = ready.sets.plan("A1"), ready.side_panel.drawing.drawing
    assert plan is not None
    edit_reach(ready, "A2", 3.1)
    qtbot.waitUntil(lambda: ready.sets.is_ready and ready.sets.plan("A2") is not None, timeout=20_000)
    edited = ready.sets.plan("A2")
    assert edited is not None
    assert edited.asks_otherwise
    assert ready.sets.plan("A1") is plan
    assert ready.side_panel.drawing.drawing is drawing


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
        dialog.tabs.setCurrentIndex(1)
        name = dialog.sides.index(1, 0)
        assert name.data(Role.POSITIONS) == ("A2",)
        pos = dialog.sides_tree.visualRect(name).center()
        QTest.mouseClick(dialog.sides_tree.viewport(), Qt.MouseButton.LeftButton, pos=pos)
        assert not dialog.isVisible()

    on_dialog(AgreementsDialog, read)
    window.actions_by_id[ActionId.AGREEMENTS].trigger()
    assert (ready.place, ready.context.session.label) == (Place.SURVEY, "A2")
    assert seen[:2] == ["3", "taken back"]
    assert "changed their mind" in seen
    assert seen[-4:] == ["Position", "Planned now", "Agreed", "Built"]


def test_a_position_added_later_is_planned_and_marked_so(
    qtbot: QtBot, window: MainWindow, ready: Workplace, bench: Workbench, spoutline: Spoutline, tmp_path: Path
) -> None:
    agreed = sets_of(agree(qtbot, window, "R. Example"))
    survey = ready.session.survey
    later = survey.positions[0].model_copy(update={"label": "B7", "notes": "added"})
    ready.context.edit(survey.model_copy(update={"positions": (*survey.positions, later)}), "Add", "B7")
    wait_for_plans(qtbot, ready)
    qtbot.waitUntil(lambda: ready.sets.is_ready and ready.sets.plan("B7") is not None, timeout=20_000)
    rows = ready.site_panel.model
    qtbot.waitUntil(lambda: rows.rowCount(rows.index_of("B7")) == 1)
    assert rows.index(0, 0, rows.index_of("B7")).data() == "not agreed yet"
    assert shown_sets(ready) == {**agreed, "B7": agreed["A1"]}, "it asks what A1 asks"
    counted, bill = bill_of(qtbot, ready)
    assert "planned, not agreed: B7" in bill
    assert "planned, not agreed: B7" in ready.bill_page.findChildren(SetsHead)[0].text()
    assert counted == command_line_bill(spoutline, bench, ready.session.survey, tmp_path)


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


def open_survey(qtbot: QtBot, workplace: Workplace, bench: Workbench, survey: Survey) -> None:
    workplace.session.open(bench.book().create(survey))
    wait_for_plans(qtbot, workplace)
    qtbot.waitUntil(lambda: workplace.sets.is_ready, timeout=20_000)


def quotation_page(window: MainWindow, workplace: Workplace) -> QuotationPage:
    page = QuotationPage(workplace.context, window.notify, today=lambda: DAY)
    workplace.__dict__["quotation_page"] = page
    workplace.views.addWidget(page)
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    return page


def kept_quotation(qtbot: QtBot, page: QuotationPage, folder: Path, number: str) -> None:
    """Quote the survey that is open with three options and keep the quotation as a draft, by mouse and keyboard."""
    path = folder / "terms.toml"
    path.write_text(short_terms(number, SINGLE_USE, RECONNECTABLE, LOW_PERMEATION), encoding="utf-8")
    QTest.keyClicks(page.panel.name_edit, "Odile")
    page.terms.use_file(path)
    qtbot.mouseClick(page.panel.offer.make_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: page.quotation is not None and not page.is_busy, timeout=120_000)
    qtbot.mouseClick(page.panel.offer.keep_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: page.stored is not None and not page.is_busy, timeout=60_000)


def status_of(page: QuotationPage) -> QuotationStatus | None:
    return page.stored.status if page.stored is not None and not page.is_busy else None


def assert_all_papers_name(
    qtbot: QtBot, workplace: Workplace, agreed: Sets, head: str, without: set[str] = frozenset()
) -> Counter[str]:
    """Hold every page and paper against agreed sets; return the pieces on the bill. ``without`` hangs nowhere."""
    wanted = Counter(number for numbers in agreed.values() for number in numbers)
    assert shown_sets(workplace) == agreed
    counted, bill = bill_of(qtbot, workplace)
    assert all(counted[number] == count for number, count in wanted.items())
    pack, form = (paper_of(qtbot, workplace, kind) for kind in (PaperKind.PACK, PaperKind.FORM))
    page = workplace.installer_page
    page.tabs.setCurrentWidget(page.inspection_panel)
    panel = page.inspection_panel
    qtbot.waitUntil(lambda: panel._site_plan is not None and panel.due_model.rowCount() > 0, timeout=60_000)
    site_plan = panel._site_plan
    assert site_plan is not None
    inspected = {one.position.label: list(one.chosen.hanging_set.numbers) for one in site_plan.positions if one.chosen}
    assert inspected == {label: numbers for label, numbers in agreed.items() if numbers}
    for paper in (bill, pack, form, page.findChildren(SetsHead)[0].text()):
        assert head in paper
    for paper in (pack, form):
        assert [number for number in wanted if number not in paper] == []
    for paper in (bill, pack, form):
        assert [number for number in without if number in paper] == []
    for label, numbers in agreed.items():
        workplace.session.look_at(label)
        workplace.show_installer()
        page.tabs.setCurrentWidget(page.record_panel)
        page.record_panel.refresh()
        assert [row.planned.number for row in page.record_panel.fields._parts] == numbers, (
            "the record names the same parts"
        )
        page.tabs.setCurrentWidget(page.swap_panel)
        page.swap_panel.refresh()
        box = page.swap_panel.missing_box
        assert [box.itemData(place).number for place in range(box.count())] == numbers, "so does the question of a swap"
    return counted


def test_the_option_that_was_ordered_is_on_every_page_and_paper(
    qtbot: QtBot, window: MainWindow, ready: Workplace, bench: Workbench, spoutline: Spoutline, tmp_path: Path
) -> None:
    planned = shown_sets(ready)
    page = quotation_page(window, ready)
    kept_quotation(qtbot, page, tmp_path, "AG-1")
    qtbot.mouseClick(page.panel.offer.issue_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: status_of(page) is QuotationStatus.ISSUED, timeout=60_000)
    page.panel.offer.accept_menu.actions()[1].trigger()
    qtbot.waitUntil(lambda: status_of(page) is QuotationStatus.ACCEPTED, timeout=60_000)
    qtbot.waitUntil(lambda: ready.sets.agreed is not None, timeout=20_000)
    assert ready.sets.agreed is not None
    assert ready.sets.agreed.origin.quotation is not None
    assert ready.sets.agreed.origin.quotation.title == "Reconnectable"
    agreed = sets_of(ready.sets.agreed)
    assert agreed != planned
    gone = {one for numbers in planned.values() for one in numbers} - {
        one for numbers in agreed.values() for one in numbers
    }
    assert gone, "the plan hangs breakaways that part once"

    lines = tmp_path / "order.csv"
    page.save_as(lines, FileKind.ORDER)
    qtbot.waitUntil(lambda: lines.exists() and bool(lines.read_bytes()), timeout=20_000)
    rows = list(csv.DictReader(io.StringIO(lines.read_text("utf-8-sig"))))
    assert {row["option"] for row in rows} == {"Reconnectable"}
    ordered = Counter({row["part_number"]: int(row["quantity"]) for row in rows})

    head = "as ordered in quotation AG-1 revision 1, option 2"
    counted = assert_all_papers_name(qtbot, ready, agreed, head, gone)
    assert ordered == counted, "no spares and no packs in these terms"
    assert counted == command_line_bill(spoutline, bench, ready.session.survey, tmp_path)


def test_the_way_of_a_conversion_that_was_chosen_is_on_every_page_and_paper(
    qtbot: QtBot, window: MainWindow, ready: Workplace, bench: Workbench, spoutline: Spoutline, tmp_path: Path
) -> None:
    survey = demo_survey("conversion_assist")
    site = survey.site.model_copy(update={"name": "Converted as good practice asks"})
    answers = survey.conversion.model_copy(update={"follow": OptionKind.GOOD_PRACTICE})
    survey = survey.model_copy(update={"site": site, "conversion": answers, "positions": survey.positions[:3]})
    open_survey(qtbot, ready, bench, survey)
    window.actions_by_id[ActionId.CONVERSION].trigger()
    page = ready.conversion_page
    qtbot.waitUntil(page.agree_button.isEnabled, timeout=120_000)
    conversion = page.conversion
    assert conversion is not None
    on_dialog(AgreeDialog, lambda dialog: sign(dialog, "R. Example", "good practice"))
    qtbot.mouseClick(page.agree_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: ready.sets.agreed is not None, timeout=20_000)
    agreed = ready.sets.agreed
    assert agreed is not None
    assert agreed.origin.way == OptionKind.GOOD_PRACTICE.value
    ways = {one.position.label: one.followed(OptionKind.GOOD_PRACTICE) for one in conversion.positions}
    assert sets_of(agreed) == {
        label: list(way.judged.hanging_set.numbers) for label, way in ways.items() if way is not None
    }
    sets = sets_of(agreed)
    assert shown_sets(ready) == sets
    bought = Counter(link.part_number for one in agreed.positions for link in one.set if not link.kept)
    counted, bill = bill_of(qtbot, ready)
    chains = {number for numbers in sets.values() for number in numbers}
    assert Counter({number: counted[number] for number in counted if number in chains}) == bought
    assert counted == command_line_bill(spoutline, bench, ready.session.survey, tmp_path)
    assert "agreed by R. Example" in bill
    for kind in (PaperKind.PACK, PaperKind.FORM):
        paper = paper_of(qtbot, ready, kind)
        assert "agreed by R. Example" in paper
        assert [number for number in chains if number not in paper] == []
    check_report_of_another_way(qtbot, window, ready, sets)


def check_report_of_another_way(qtbot: QtBot, window: MainWindow, ready: Workplace, sets: dict[str, list[str]]) -> None:
    """Let the survey name another way: the report stays with what is agreed until the planned sets are shown."""
    page, session = ready.conversion_page, ready.session
    answers = session.survey.conversion.model_copy(update={"follow": OptionKind.LEAST_COST})
    make_edit(session, session.survey.model_copy(update={"conversion": answers}), "another way")
    window.actions_by_id[ActionId.CONVERSION].trigger()
    qtbot.waitUntil(lambda: page.document is not None, timeout=120_000)
    conversion = page.conversion
    assert conversion is not None
    shown = {one.position.label: one.followed(OptionKind.LEAST_COST) for one in conversion.positions}
    assert {label: list(way.judged.hanging_set.numbers) for label, way in shown.items() if way is not None} == sets
    assert "agreed by R. Example" in page.sets_label.text()
    assert not page.agree_button.isEnabled()
    ready.sets.choose(SetsSource.PLAN)
    qtbot.waitUntil(page.agree_button.isEnabled, timeout=120_000)
    assert "agreed by" not in page.sets_label.text().split("Other papers")[0]


def test_what_was_replaced_is_shown_as_built_and_never_changes_what_was_agreed(
    qtbot: QtBot, window: MainWindow, ready: Workplace, bench: Workbench, spoutline: Spoutline, tmp_path: Path
) -> None:
    agreed = sets_of(agree(qtbot, window, "R. Example"))
    removed, fitted = agreed["A1"][-1], "QW-N104"
    ready.session.look_at("A1")
    window.actions_by_id[ActionId.INSTALLER].trigger()
    page = ready.installer_page
    page.tabs.setCurrentWidget(page.inspection_panel)
    panel = page.inspection_panel
    panel.removed_box.setCurrentText(removed)
    QTest.keyClicks(panel.fitted_edit, fitted)
    qtbot.mouseClick(panel.wear_button, Qt.MouseButton.LeftButton)
    box = ready.site_panel.sets_box
    box.setFocus()
    qtbot.keyClick(box, Qt.Key.Key_Down)  # from "as agreed" to "as built"
    assert ready.sets.source is SetsSource.BUILT
    qtbot.waitUntil(lambda: ready.sets.plan("A1") is not None, timeout=20_000)
    assert shown_sets(ready) == {"A1": [*agreed["A1"][:-1], fitted], "A2": agreed["A2"]}
    counted, bill = bill_of(qtbot, ready)
    assert "as built" in bill
    assert counted == command_line_bill(spoutline, bench, ready.session.survey, tmp_path, "--sets", "built")
    assert ready.sets.agreed is not None
    assert sets_of(ready.sets.agreed) == agreed


def test_an_option_that_leaves_hoses_out_asks_for_a_word_before_it_is_issued(
    qtbot: QtBot, window: MainWindow, ready: Workplace, bench: Workbench, tmp_path: Path
) -> None:
    survey = demo_survey("conversion_balance")  # one position takes a reconnectable breakaway alone
    site = survey.site.model_copy(update={"name": "Incomplete options"})
    open_survey(qtbot, ready, bench, survey.model_copy(update={"site": site}))
    page = quotation_page(window, ready)
    kept_quotation(qtbot, page, tmp_path, "AG-2")
    offer = page.panel.offer
    titles = [row.title for row in offer.amounts.records]
    covered = offer.amounts.records[titles.index("Hoses covered")]
    assert covered.cells == ("4 / 5", "5 / 5", "4 / 5")
    assert "leave hoses out" in offer.next_label.text()
    on_dialog(NamedStepDialog, lambda dialog: dialog.reject())
    qtbot.mouseClick(offer.issue_button, Qt.MouseButton.LeftButton)
    assert status_of(page) is QuotationStatus.DRAFT

    def give_word(dialog: QDialog) -> None:
        assert isinstance(dialog, NamedStepDialog)
        assert not dialog.accept_button.isEnabled(), "a reason is needed"
        sign(dialog, "Odile", "customer keeps that hose")

    on_dialog(NamedStepDialog, give_word)
    qtbot.mouseClick(offer.issue_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: status_of(page) is QuotationStatus.ISSUED, timeout=60_000)
    assert page.stored is not None
    words = bench.quoting().life().at_revision(page.stored.id, page.stored.revision).incomplete_words
    assert [(one.option, one.by, one.reason) for one in words] == [
        ("Single-use", "Odile", "customer keeps that hose"),
        ("Low-permeation", "Odile", "customer keeps that hose"),
    ]
