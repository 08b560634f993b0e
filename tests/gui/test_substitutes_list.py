"""Other parts for a place, in the window: filled while the search goes on, hung with one button, undone."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QModelIndex, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_plans
from spoutline.gui.edits.question import Step
from spoutline.gui.models.substitute_rows import SubstituteRow
from spoutline.gui.pages.result.substitutes_list import SubstitutesList
from spoutline.gui.roles import Role, Tone
from spoutline.gui.window.workplace import Workplace
from spoutline.model.part_ref import PartRef
from spoutline.model.requirement import Slot
from spoutline.model.substitute import Substitute, Substitutes
from spoutline.units.accepted import UnitSystem

PART, COSTS = 0, 2


@pytest.fixture
def others(qtbot: QtBot, workplace: Workplace) -> SubstitutesList:
    """Return the list for the swivel of the first position, filled."""
    workplace.show_step(Step.SET)
    workplace.set_page.show_panel(workplace.set_page.part_panel)
    look_at(workplace, Slot.SWIVEL)
    others = workplace.set_page.part_panel.others
    wait_for_rows(qtbot, others)
    return others


def look_at(workplace: Workplace, slot: Slot) -> PartRef:
    part = chosen_part(workplace, slot)
    workplace.session.look_at_part(part)
    return part


def chosen_part(workplace: Workplace, slot: Slot) -> PartRef:
    plan = workplace.context.plan
    assert plan is not None
    assert plan.chosen is not None
    part = plan.chosen.hanging_set.part_in(slot)
    assert part is not None
    return part.ref


def wait_for_rows(qtbot: QtBot, others: SubstitutesList) -> None:
    qtbot.waitUntil(lambda: "could" in others.state_label.text(), timeout=20_000)


def answer(workplace: Workplace, *, with_misfits: bool = False) -> Substitutes:
    session, plan = workplace.session, workplace.context.plan
    assert plan is not None
    return session.workbench.substitutes(session.survey, plan, session.part, with_misfits=with_misfits)


def shown(others: SubstitutesList) -> list[SubstituteRow]:
    return [others.proxy.index(row, 0).data(Role.RECORD) for row in range(others.proxy.rowCount())]


def mark(others: SubstitutesList, number: str) -> None:
    row = [one.part.number for one in shown(others)].index(number)
    others.table.pick_row(row)


def test_every_part_that_could_hang_there_is_listed_cheapest_set_first(
    workplace: Workplace, others: SubstitutesList
) -> None:
    found = answer(workplace)
    rows = shown(others)
    assert {row.part.number for row in rows} == {one.part.number for one in found.fitting}
    differences = [row.result.price_difference_minor for row in rows if isinstance(row.result, Substitute)]
    assert differences == sorted(differences)
    assert len(differences) == len(found.fitting) > 3
    cautions = {row.part.number for row in rows if others.model.data(index_of(others, row), Role.TONE) is Tone.CAUTION}
    assert cautions == {one.part.number for one in found.fitting if one.given_up}


def index_of(others: SubstitutesList, row: SubstituteRow) -> QModelIndex:
    return others.model.index(others.model.records.index(row), 0)


def test_rows_can_be_sorted_by_number_and_price_in_both_directions(others: SubstitutesList) -> None:
    others.table.sortByColumn(PART, Qt.SortOrder.AscendingOrder)
    numbers = [row.part.number for row in shown(others)]
    assert numbers == sorted(numbers, key=str.casefold)
    others.table.sortByColumn(COSTS, Qt.SortOrder.DescendingOrder)
    dearest = shown(others)[0].result
    assert isinstance(dearest, Substitute)
    assert dearest.price_difference_minor == max(
        row.result.price_difference_minor for row in shown(others) if isinstance(row.result, Substitute)
    )


def test_the_marked_part_hangs_after_one_press_and_undo_brings_the_other_back(
    qtbot: QtBot, workplace: Workplace, others: SubstitutesList
) -> None:
    before = workplace.session.survey
    wanted = next(row.result for row in shown(others) if isinstance(row.result, Substitute) and row.result.changes)
    mark(others, wanted.part.number)
    assert not others.why_button.isEnabled()
    for change in wanted.changes:
        assert workplace.context.story.slot_change(change) in others.detail_label.text()
    QTest.mouseClick(others.hang_button, Qt.MouseButton.LeftButton)
    assert workplace.session.position.decisions.pinned == (wanted.part.ref,)
    wait_for_plans(qtbot, workplace)
    assert workplace.context.plan is not None
    assert workplace.context.plan.chosen is not None
    assert workplace.context.plan.chosen.hanging_set.numbers == wanted.judged.hanging_set.numbers
    assert workplace.context.plan.chosen.hanging_set.price_minor == wanted.judged.hanging_set.price_minor
    workplace.session.undo_stack.undo()
    assert workplace.session.survey == before


def test_hanging_another_one_lets_the_first_go(qtbot: QtBot, workplace: Workplace, others: SubstitutesList) -> None:
    home = workplace.session.part
    mark(others, shown(others)[0].part.number)
    others.hang_button.click()
    wait_for_plans(qtbot, workplace)
    qtbot.waitUntil(lambda: home in [row.part.ref for row in shown(others)], timeout=20_000)
    mark(others, home.number)
    others.hang_button.click()
    assert workplace.session.position.decisions.pinned == (home,)


def test_those_that_do_not_fit_come_on_request_with_the_reason_and_lead_to_why_not(
    qtbot: QtBot, workplace: Workplace, others: SubstitutesList
) -> None:
    assert all(row.fits for row in shown(others))
    others.misfits_box.click()
    qtbot.waitUntil(lambda: "could not" in others.state_label.text(), timeout=20_000)
    found = answer(workplace, with_misfits=True)
    assert found.misfits
    rows = shown(others)
    assert [row.fits for row in rows] == [True] * len(found.fitting) + [False] * len(found.misfits)
    misfit = found.misfits[0]
    mark(others, misfit.part.number)
    assert workplace.context.story.misfit(misfit) in others.detail_label.text()
    assert not others.hang_button.isEnabled()
    others.why_button.click()
    why_not = workplace.set_page.why_not
    assert workplace.set_page.panel_in_view is why_not
    qtbot.waitUntil(lambda: why_not.verdict_title.text().startswith(misfit.part.number + "  "), timeout=20_000)
    assert why_not.verdict_label.text() != ""


def test_an_answer_for_the_part_before_is_dropped(qtbot: QtBot, workplace: Workplace, others: SubstitutesList) -> None:
    look_at(workplace, Slot.CURB_HOSE)
    part = look_at(workplace, Slot.BREAKAWAY)
    wait_for_rows(qtbot, others)
    found = answer(workplace)
    assert found.part.ref == part
    assert {row.part.number for row in shown(others)} == {one.part.number for one in found.fitting}


def test_nothing_of_an_old_set_stays_once_an_answer_has_changed(
    qtbot: QtBot, workplace: Workplace, others: SubstitutesList
) -> None:
    others.misfits_box.click()  # a longer search, still in hand when the answer changes
    session = workplace.session
    position = session.position.model_copy(update={"prepay": not session.position.prepay})
    workplace.context.edit(session.survey.model_copy(update={"positions": (position, session.survey.positions[1])}), "")
    assert shown(others) == []
    wait_for_plans(qtbot, workplace)
    qtbot.waitUntil(lambda: bool(shown(others)) and "could not" in others.state_label.text(), timeout=20_000)
    found = answer(workplace, with_misfits=True)
    assert found.misfits is not None
    assert len(shown(others)) == len(found.fitting) + len(found.misfits)


def test_another_unit_system_words_the_rows_anew_without_a_new_search(
    workplace: Workplace, others: SubstitutesList
) -> None:
    before = others.model.records
    workplace.session.use_units(UnitSystem.US)
    assert others.model.records == before
    assert "could hang here" in others.state_label.text()


def test_the_marked_row_stays_marked_when_rows_are_shown_again(workplace: Workplace, others: SubstitutesList) -> None:
    number = shown(others)[2].part.number
    mark(others, number)
    workplace.set_page.refresh()
    record = others.table.current_record()
    assert isinstance(record, SubstituteRow)
    assert record.part.number == number


def test_why_not_finds_the_part_asked_about_in_whatever_order_the_parts_found_stand(
    qtbot: QtBot, workplace: Workplace, others: SubstitutesList
) -> None:
    panel = workplace.set_page.why_not
    panel.start()
    qtbot.waitUntil(lambda: len(panel.model.records) > 10, timeout=20_000)
    panel.table.sortByColumn(PART, Qt.SortOrder.DescendingOrder)
    number = panel.model.records[3].number
    row = panel._row_named(number)
    assert panel.table.model().index(row, PART).data() == number
    assert row == panel.table.model().rowCount() - 4
    assert panel._row_named("no such part") == 0


def test_rows_tell_what_parts_differ_in_and_the_name_is_in_the_hint(
    workplace: Workplace, others: SubstitutesList
) -> None:
    found, rows = answer(workplace), shown(others)
    name = next(at for at in range(others.proxy.columnCount()) if head(others, at) == "Differs in")
    texts = [others.proxy.index(row, name).data() for row in range(len(rows))]
    assert len(set(texts)) == len(rows) > 3
    # the swivels of the invented catalog turn in one plane or in two (its column "planes"): all of them say which
    planes = [row.part.swivel.planes for row in rows if row.part.swivel is not None]
    assert {1, 2} <= {*planes, found.part.swivel.planes if found.part.swivel else 0}
    assert all(
        text.startswith({1: "single-plane", 2: "two-plane"}[one]) for text, one in zip(texts, planes, strict=True)
    )
    for at, row in enumerate(rows):
        assert row.part.name in others.proxy.index(at, name).data(Qt.ItemDataRole.ToolTipRole)


def head(others: SubstitutesList, column: int) -> str:
    return str(others.proxy.headerData(column, Qt.Orientation.Horizontal))
