"""The set first, other sets when they come: what a person reads stays, and nothing of former answers is shown."""

from __future__ import annotations

import itertools
import threading
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_whole_plan
from spoutline.bootstrap import Workbench
from spoutline.gui.edits.question import Step
from spoutline.gui.jobs import Ticket
from spoutline.gui.models.other_sets import kind_of
from spoutline.gui.pages.result.other_sets_panel import OtherSetsPanel
from spoutline.gui.window.workplace import Workplace
from spoutline.model.faults import Cancelled
from spoutline.model.plan import Alternative, AlternativeKind
from spoutline.model.staged_plan import StagedPlan
from spoutline.model.survey import Survey


class Gate:
    """Lets the first stages of a plan through and holds back what comes after them."""

    def __init__(self) -> None:
        self.opened = threading.Event()
        self.waiting = 0
        self.first = 1

    def let_through(self, stages: Iterator[StagedPlan], ticket: Ticket) -> Iterator[StagedPlan]:
        for count in itertools.count():
            self.waiting += count == self.first
            while count >= self.first and not self.opened.wait(0.005):
                if ticket.should_stop():
                    raise Cancelled
            staged = next(stages, None)
            if staged is None:
                return
            yield staged


@pytest.fixture
def gate(workplace: Workplace, monkeypatch: pytest.MonkeyPatch) -> Iterator[Gate]:
    """Hold back what comes after the set of every plan that is made from now on."""
    gate, plan_stages = Gate(), Workbench.plan_stages

    def held_back(bench: Workbench, survey: Survey, label: str, ticket: Ticket) -> Iterator[StagedPlan]:
        return gate.let_through(plan_stages(bench, survey, label, ticket), ticket)

    monkeypatch.setattr(Workbench, "plan_stages", held_back)
    yield gate
    gate.opened.set()


def move_filler(workplace: Workplace, distance_m: float) -> None:
    """Put the filler of the position in focus elsewhere."""
    survey, position = workplace.session.survey, workplace.session.position
    filler = position.filler.model_copy(update={"distance_m": distance_m})
    moved = position.model_copy(update={"filler": filler})
    positions = tuple(moved if one.label == position.label else one for one in survey.positions)
    workplace.context.edit(survey.model_copy(update={"positions": positions}), "Move the filler")


def wait_for_set(qtbot: QtBot, workplace: Workplace) -> None:
    qtbot.waitUntil(lambda: workplace.context.plan is not None, timeout=60_000)


def other_sets(workplace: Workplace) -> OtherSetsPanel:
    """Bring the other sets into view."""
    workplace.show_step(Step.SET)
    workplace.set_page.show_panel(workplace.set_page.other_sets)
    return workplace.set_page.other_sets


def shown(panel: OtherSetsPanel) -> tuple[Alternative, ...]:
    rows = (panel.model.node_at(panel.model.index(row, 0)) for row in range(panel.model.rowCount()))
    return tuple(node.record for node in rows if node is not None and isinstance(node.record, Alternative))


def kinds(panel: OtherSetsPanel) -> list[AlternativeKind | None]:
    rows = (panel.model.node_at(panel.model.index(row, 0)) for row in range(panel.model.rowCount()))
    return [kind_of(node.record) for node in rows if node is not None]


def row_texts(panel: OtherSetsPanel, row: int) -> list[str]:
    """Return what a screen reader says of the cells of a row."""
    spoken = (
        panel.model.index(row, column).data(Qt.ItemDataRole.AccessibleTextRole)
        for column in range(panel.model.columnCount())
    )
    return [str(text) for text in spoken]


def parts_below(panel: OtherSetsPanel, row: int) -> list[str]:
    above = panel.model.index(row, 0)
    return [str(panel.model.index(part, 0, above).data()) for part in range(panel.model.rowCount(above))]


def looked_for(workplace: Workplace) -> tuple[AlternativeKind, ...]:
    """Return the kinds of other sets of which it is not known yet whether there is one."""
    staged = workplace.plans.staged(workplace.session.label)
    return staged.sought if staged is not None else ()


def test_the_set_is_shown_before_its_other_sets(qtbot: QtBot, workplace: Workplace, gate: Gate) -> None:
    panel = other_sets(workplace)
    before = workplace.side_panel.drawing.drawing
    move_filler(workplace, 2.05)
    wait_for_set(qtbot, workplace)
    plan, drawing = workplace.context.plan, workplace.side_panel.drawing
    assert plan is not None
    assert plan.chosen is not None
    assert drawing.drawing is not before
    assert not drawing.is_stale
    assert drawing.parts() == tuple(dict.fromkeys(plan.chosen.hanging_set.refs))
    price = workplace.context.story.money(plan.chosen.hanging_set.price_minor, plan.chosen.hanging_set.currency)
    assert workplace.set_page.outcome.price_label.text() == price
    assert shown(panel) == ()
    assert panel.model.rowCount() > 1
    assert not panel.take_button.isEnabled()
    assert panel.take_button.toolTip()
    gate.opened.set()
    wait_for_whole_plan(qtbot, workplace)
    assert shown(panel)
    assert workplace.context.plan is plan
    assert panel.take_button.isEnabled()
    assert not panel.take_button.toolTip()


def test_other_sets_that_come_leave_what_is_read_as_it_is(qtbot: QtBot, workplace: Workplace, gate: Gate) -> None:
    workplace.show_step(Step.SET)
    page = workplace.set_page
    page.show_panel(page.checks)
    move_filler(workplace, 2.1)
    wait_for_set(qtbot, workplace)
    tree = page.checks.tree
    tree.setFocus()
    row = page.checks.model.index(2, 0)
    tree.setCurrentIndex(row)
    tree.expand(row)
    tree.verticalScrollBar().setValue(7)
    scrolled, drawing = tree.verticalScrollBar().value(), workplace.side_panel.drawing.drawing
    laid_out_anew: list[str] = []
    page.checks.model.modelReset.connect(lambda: laid_out_anew.append("checks"))
    workplace.side_panel.model.modelReset.connect(lambda: laid_out_anew.append("set in hand"))
    gate.opened.set()
    wait_for_whole_plan(qtbot, workplace)
    assert laid_out_anew == []
    assert tree.currentIndex() == row
    assert tree.isExpanded(row)
    assert tree.verticalScrollBar().value() == scrolled
    assert QApplication.focusWidget() in (tree, None)  # None where the machine gives no window the keyboard
    assert workplace.side_panel.drawing.drawing is drawing


def test_the_other_set_marked_before_is_marked_again_when_they_come(
    qtbot: QtBot, workplace: Workplace, gate: Gate
) -> None:
    panel = other_sets(workplace)
    last = panel.model.rowCount() - 1
    assert last > 0
    panel.tree.setCurrentIndex(panel.model.index(last, 0))
    kind = shown(panel)[last].kind
    move_filler(workplace, workplace.session.position.filler.distance_m + 0.01)
    wait_for_set(qtbot, workplace)
    gate.opened.set()
    wait_for_whole_plan(qtbot, workplace)
    assert kind in [one.kind for one in shown(panel)]
    current = panel.model.node_at(panel.tree.currentIndex().siblingAtColumn(0))
    assert current is not None
    assert isinstance(current.record, Alternative)
    assert current.record.kind is kind


@pytest.mark.plans_anew
def test_other_sets_come_one_by_one_and_move_nothing_that_came_before(
    qtbot: QtBot, workplace: Workplace, gate: Gate
) -> None:
    """Whoever reads or has marked a row keeps it, wherever on the screen, until all have come; closed ones stay so."""
    panel, session = other_sets(workplace), workplace.session
    gate.first = 2  # set and counts
    move_filler(workplace, 2.07)
    wait_for_set(qtbot, workplace)
    sought = kinds(panel)
    assert len(sought) > 3
    assert all(row_texts(panel, row)[1] == "looking…" for row in range(len(sought)))
    assert all(row_texts(panel, row)[0] == workplace.context.story.title(kind) for row, kind in enumerate(sought))
    assert not panel.take_button.isEnabled()
    qtbot.waitUntil(lambda: (staged := workplace.plans.staged(session.label)) is not None and bool(staged.counts))
    for _ in range(5):
        QApplication.processEvents()  # what stands above has its room

    def above() -> tuple[str, QPoint]:
        return panel.lead_text, panel.tree.mapTo(workplace, QPoint())

    stood = above()
    anew: list[str] = []
    panel.model.modelReset.connect(lambda: anew.append(panel.lead_text))
    seen: list[tuple[Alternative, QRect, list[str]]] = []
    marked: Alternative | None = None
    while len(looked_for(workplace)) > 1:
        left = len(looked_for(workplace))
        gate.first += 1
        qtbot.waitUntil(lambda left=left: len(looked_for(workplace)) < left, timeout=60_000)
        assert above() == stood
        for row, (alternative, place, texts) in enumerate(seen):
            index = panel.model.index(row, 0)
            assert shown(panel)[row] is alternative
            assert panel.tree.visualRect(index) == place
            assert [*row_texts(panel, row), *parts_below(panel, row)] == texts
        if marked is not None:
            assert panel.tree.current_record() is marked
            assert panel.take_button.isEnabled()
        for row, alternative in list(enumerate(shown(panel)))[len(seen) :]:
            index = panel.model.index(row, 0)
            assert panel.tree.isExpanded(index)
            assert all(panel.tree.isFirstColumnSpanned(part, index) for part in range(panel.model.rowCount(index)))
            if marked is None:
                marked = alternative
                panel.tree.setCurrentIndex(index)
            if len(seen) == 1:
                panel.tree.collapse(index)
            texts = [*row_texts(panel, row), *parts_below(panel, row)]
            seen.append((alternative, panel.tree.visualRect(index), texts))
    assert len(seen) > 2
    gate.opened.set()
    wait_for_whole_plan(qtbot, workplace)
    staged = workplace.plans.staged(session.label)
    assert staged is not None
    assert anew == []
    assert shown(panel) == staged.others
    assert len(kinds(panel)) == len(staged.others)
    assert not panel.tree.isExpanded(panel.model.index(1, 0))
    assert panel.tree.current_record() is marked


@pytest.mark.plans_anew
def test_a_kind_marked_before_its_set_came_stays_marked_and_is_taken_only_then(
    qtbot: QtBot, workplace: Workplace, gate: Gate
) -> None:
    panel = other_sets(workplace)
    gate.first = 2
    move_filler(workplace, 2.08)
    wait_for_set(qtbot, workplace)
    kind = AlternativeKind.NEXT_CHEAPEST
    row = kinds(panel).index(kind)
    panel.tree.setCurrentIndex(panel.model.index(row, 0))
    panel.tree.setFocus()
    pinned = workplace.session.position.decisions.pinned
    panel.tree.activated.emit(panel.model.index(row, 0))  # a person presses Return
    assert workplace.session.position.decisions.pinned == pinned
    assert not panel.take_button.isEnabled()
    gate.opened.set()
    wait_for_whole_plan(qtbot, workplace)
    marked = panel.tree.current_record()
    assert isinstance(marked, Alternative)
    assert marked.kind is kind
    assert panel.tree.selectionModel().isSelected(panel.tree.currentIndex())
    assert panel.take_button.isEnabled()
    assert QApplication.focusWidget() in (panel.tree, None)


@pytest.mark.plans_anew
def test_other_sets_found_stay_when_somebody_turns_away_and_back(
    qtbot: QtBot, workplace: Workplace, gate: Gate
) -> None:
    panel, session = other_sets(workplace), workplace.session
    first, behind = session.label, session.survey.positions[1].label
    gate.first = 2
    move_filler(workplace, 2.09)
    wait_for_set(qtbot, workplace)
    while not shown(panel):
        left = len(looked_for(workplace))
        gate.first += 1
        qtbot.waitUntil(lambda left=left: len(looked_for(workplace)) < left, timeout=60_000)
    found, left = shown(panel), looked_for(workplace)
    session.look_at(behind)
    gate.first = 2
    session.look_at(first)
    assert shown(panel) == found
    assert looked_for(workplace) == left
    gate.opened.set()
    wait_for_whole_plan(qtbot, workplace)
    assert shown(panel)[: len(found)] == found


def test_a_second_edit_never_shows_other_sets_of_the_first(
    qtbot: QtBot, workplace: Workplace, bench: Workbench, gate: Gate
) -> None:
    panel, session = other_sets(workplace), workplace.session
    seen: list[tuple[Survey, tuple[Alternative, ...]]] = []
    panel.model.modelReset.connect(lambda: seen.append((session.survey, shown(panel))))
    move_filler(workplace, 2.0)
    wait_for_set(qtbot, workplace)
    qtbot.waitUntil(lambda: gate.waiting == 1, timeout=10_000)
    first = session.survey
    move_filler(workplace, 3.4)
    assert shown(panel) == ()
    gate.opened.set()
    wait_for_whole_plan(qtbot, workplace)
    wanted = bench.plan_position(session.survey, session.label).alternatives
    assert wanted
    assert set(shown(panel)) == set(wanted)
    assert all(alternatives == () for survey, alternatives in seen if survey is first)
    assert all(set(alternatives) <= set(wanted) for survey, alternatives in seen if survey is session.survey)


@pytest.mark.plans_anew
def test_that_nothing_fits_is_told_before_the_reasons(qtbot: QtBot, workplace: Workplace, gate: Gate) -> None:
    workplace.show_step(Step.SET)
    outcome = workplace.set_page.outcome
    move_filler(workplace, 8.0)
    wait_for_set(qtbot, workplace)
    assert outcome.is_waiting
    assert outcome.remedy_buttons == []
    gate.opened.set()
    wait_for_whole_plan(qtbot, workplace)
    assert not outcome.is_waiting
    assert outcome.reasons_button is not None


@pytest.mark.plans_anew
def test_what_is_in_the_way_is_told_before_all_that_would_help(
    qtbot: QtBot, workplace: Workplace, gate: Gate, bench: Workbench
) -> None:
    gate.first = 4  # nothing fits, counts, what is in the way, the first way out
    workplace.show_step(Step.SET)
    outcome = workplace.set_page.outcome

    def told() -> set[str]:
        return {label.text() for label in outcome.findChildren(QLabel)}

    move_filler(workplace, 8.0)
    wait_for_set(qtbot, workplace)
    session, context = workplace.session, workplace.context
    qtbot.waitUntil(lambda: context.obstacle is not None and len(context.obstacle.relaxations) == 1, timeout=60_000)
    whole = bench.plan_position(session.survey, session.label).conflict
    assert whole is not None
    assert len(whole.relaxations) > 1
    assert outcome.is_waiting
    assert context.obstacle is not None
    assert context.obstacle.requirements == whole.requirements
    currency, waits = session.survey.site.currency, "Looking for what would help…"
    ways = {context.story.relaxation(one, currency) for one in whole.relaxations}
    assert {*context.story.conflict(whole), context.story.relaxation(whole.relaxations[0], currency), waits} <= told()
    assert not ways <= told()
    assert outcome.reasons_button is not None
    focused = outcome.reasons_button
    qtbot.waitUntil(focused.isVisible, timeout=10_000)
    focused.setFocus()
    assert focused.hasFocus()
    gate.opened.set()
    wait_for_whole_plan(qtbot, workplace)
    assert not outcome.is_waiting
    assert context.obstacle is None
    assert {*context.story.conflict(whole), *ways} <= told()
    qtbot.waitUntil(lambda: waits not in told(), timeout=10_000)
    assert outcome.reasons_button is not focused  # laid out anew, and the focus is where a person left it
    assert outcome.reasons_button.hasFocus()


def test_a_position_behind_gets_its_other_sets_when_it_is_turned_to(qtbot: QtBot, workplace: Workplace) -> None:
    plans, session = workplace.plans, workplace.session
    behind = session.survey.positions[1].label
    before = plans.staged(behind)
    assert before is not None
    assert before.counts
    assert before.alternatives is None
    session.look_at(behind)
    assert workplace.context.plan is before.plan  # shown at once
    wait_for_whole_plan(qtbot, workplace)
    after = plans.staged(behind)
    assert after is not None
    assert after.alternatives
    assert after.plan is before.plan
    assert after.counts is before.counts
