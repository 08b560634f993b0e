"""The owner's cost lines and onboard shares: rows come, change and go, undo takes them back, faults stay visible."""

from __future__ import annotations

from decimal import Decimal

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QWidget
from pytestqt.qtbot import QtBot

from spoutline.gui.edits.conversion_lists import with_own_cost, with_own_share, without_own_share
from spoutline.gui.jobs import Jobs
from spoutline.gui.models.plans import Plans
from spoutline.gui.models.shown_sets import ShownSets
from spoutline.gui.pages.context import Context, StoryInUse
from spoutline.gui.pages.conversion.lists import OwnCostsPanel, OwnSharesPanel
from spoutline.gui.session import Session
from spoutline.model.conversion_answers import OwnCost, YearShare
from spoutline.model.faults import InputFault
from spoutline.model.survey import Survey


@pytest.fixture
def context(qtbot: QtBot, session: Session) -> Context:
    """Return what pages are given, over a survey in hand; nothing is planned."""
    jobs = Jobs()
    plans = Plans(session, jobs)
    return Context(session, plans, jobs, StoryInUse(session), ShownSets(session, plans, jobs))


def write(panel: OwnCostsPanel | OwnSharesPanel, **texts: str) -> None:
    for name, text in texts.items():
        panel.fields[name].editor.setText(text)


def test_a_cost_line_is_added_changed_and_taken_off_and_undo_brings_each_back(
    qtbot: QtBot, session: Session, context: Context
) -> None:
    panel = OwnCostsPanel(context)
    qtbot.addWidget(panel)
    panel.refresh()
    assert not panel.change_button.isEnabled()
    write(panel, label="Test of tightness", amount="1250.50")
    panel.eligible_box.setChecked(True)
    panel.add_button.click()
    first = OwnCost(label="Test of tightness", amount=Decimal("1250.50"), eligible=True)
    assert session.survey.conversion.money.own_costs == (first,)
    assert panel.fields["label"].editor.text() == ""
    panel.table.pick_row(0)
    assert panel.fields["amount"].editor.text() == "1250.50"
    write(panel, amount="1300")
    panel.eligible_box.setChecked(False)
    panel.change_button.click()
    changed = OwnCost(label="Test of tightness", amount=Decimal(1300))
    assert session.survey.conversion.money.own_costs == (changed,)
    panel.remove_button.click()
    assert not session.survey.conversion.money.own_costs
    for there in ((changed,), (first,), ()):
        session.undo_stack.undo()
        assert session.survey.conversion.money.own_costs == there
        panel.refresh()
        assert panel.model.records == there


def test_faults_of_a_cost_line_are_said_at_their_fields(qtbot: QtBot, session: Session, context: Context) -> None:
    panel = OwnCostsPanel(context)
    qtbot.addWidget(panel)
    before = session.survey
    write(panel, label=" ", amount="a lot")
    panel.add_button.click()
    assert "what it pays for" in panel.fields["label"].fault
    assert "a lot" in panel.fields["amount"].fault
    assert session.survey == before
    write(panel, label="Permit", amount="80")
    panel.add_button.click()
    assert panel.fields["label"].fault == panel.fields["amount"].fault == ""
    assert len(session.survey.conversion.money.own_costs) == 1


@pytest.mark.parametrize("amount", ["-1", "1.2345", "NaN", "Infinity", "", "1,5"])
def test_an_odd_amount_is_refused(survey: Survey, amount: str) -> None:
    with pytest.raises(InputFault) as caught:
        with_own_cost(survey, None, "Permit", amount, eligible=False)
    assert [problem.field for problem in caught.value.problems] == ["amount"]


def test_shares_stand_in_the_order_of_their_years_and_each_year_once(
    qtbot: QtBot, session: Session, context: Context
) -> None:
    panel = OwnSharesPanel(context)
    qtbot.addWidget(panel)
    for year, share in (("2023", "0.91"), ("2022", "0.9")):
        write(panel, year=year, share=share)
        panel.add_button.click()
    rows = (YearShare(year=2022, share=0.9), YearShare(year=2023, share=0.91))
    assert session.survey.conversion.emissions.own_shares == panel.model.records == rows
    write(panel, year="2022", share="0.5")
    panel.add_button.click()
    assert "change it" in panel.fields["year"].fault
    panel.table.pick_row(1)
    write(panel, year="2021")
    panel.change_button.click()
    assert [row.year for row in session.survey.conversion.emissions.own_shares] == [2021, 2022]
    session.undo_stack.undo()
    assert session.survey.conversion.emissions.own_shares == rows


@pytest.mark.parametrize(
    ("year", "share", "fields"),
    [
        ("soon", "0.5", ["year"]),
        ("1989", "0.5", ["year"]),
        ("2020", "85 %", ["share"]),
        ("", "1.01", ["year", "share"]),
    ],
)
def test_an_odd_share_is_refused(survey: Survey, year: str, share: str, fields: list[str]) -> None:
    with pytest.raises(InputFault) as caught:
        with_own_share(survey, None, year, share)
    assert [problem.field for problem in caught.value.problems] == fields


def test_a_list_ends_at_a_hundred_rows(survey: Survey) -> None:
    for year in range(1990, 2090):
        survey = with_own_share(survey, None, str(year), "0.5")
    with pytest.raises(InputFault, match="at most 100"):
        with_own_share(survey, None, "2150", "0.5")
    assert len(without_own_share(survey, 0).conversion.emissions.own_shares) == 99


def test_every_part_of_the_lists_has_a_name_and_the_keyboard_reaches_it_in_turn(qtbot: QtBot, context: Context) -> None:
    for panel in (OwnCostsPanel(context), OwnSharesPanel(context)):
        qtbot.addWidget(panel)
        wanted: list[QWidget] = [panel.table, *(field.editor for field in panel.fields.values())]
        wanted += [*panel.findChildren(QCheckBox), panel.add_button, panel.change_button, panel.remove_button]
        assert all(one.accessibleName() or getattr(one, "text", str)() for one in wanted)
        assert [one for one in keyboard_order(panel.table) if one in wanted] == wanted


def keyboard_order(start: QWidget) -> list[QWidget]:
    """Return what the Tab key leads to from ``start``, once round."""
    found, here = [start], start.nextInFocusChain()
    while here is not None and here is not start:
        if here.focusPolicy() & Qt.FocusPolicy.TabFocus:
            found.append(here)
        here = here.nextInFocusChain()
    return found
