"""Local rules in the window: held against what they were copied from, their effect seen, published as editions."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from spoutline.bootstrap import Workbench
from spoutline.gui.dialogs.local_rules import LocalRulesDialog
from spoutline.model.limit import LimitId
from spoutline.model.survey import Position, Site, Survey

SURVEY = Survey(site=Site(name="Hollow Ford"), positions=(Position(label="1"),))


@pytest.fixture
def rules(qtbot: QtBot, bench: Workbench, request: pytest.FixtureRequest) -> LocalRulesDialog:
    """Return the dialog on a fresh copy of the general rules."""
    dialog = LocalRulesDialog(bench, "us_general", None, SURVEY)
    qtbot.addWidget(dialog)
    dialog.id_edit.setText(f"county_{abs(hash(request.node.name)) % 100_000}")
    dialog.title_edit.setText("Invented County")
    dialog.copy_button.click()
    return dialog


def change_hose_length(dialog: LocalRulesDialog, feet: str) -> None:
    rows = [limit.id for limit in dialog.model.records]
    dialog.table.selectRow(rows.index(LimitId.HOSE_LENGTH_MAX))
    dialog.value_edit.setText(feet)
    dialog.source_edit.setText("Invented County Code")
    dialog.save_button.click()
    assert dialog.row_fault.text() == ""


def test_rows_that_differ_stand_beside_the_parent(rules: LocalRulesDialog) -> None:
    assert "0 rows differ from us_general" in rules.editions.state_label.text()
    change_hose_length(rules, "15")
    assert "1 rows differ from us_general" in rules.editions.state_label.text()
    rules.editions.only_box.setChecked(True)
    assert [limit.id for limit in rules.model.records] == [LimitId.HOSE_LENGTH_MAX]
    # 18 ft: Okla. Admin. Code 165:26-2-92(a)(1)
    assert (rules.model.index(0, 1).data(), rules.model.index(0, 2).data()) == ("15 ft", "18 ft")
    rules.editions.only_box.setChecked(False)
    assert len(rules.model.records) == len(LimitId)


def test_a_row_without_a_source_is_not_saved(rules: LocalRulesDialog, bench: Workbench) -> None:
    assert rules.profile is not None
    rows = [limit.id for limit in rules.model.records]
    rules.table.selectRow(rows.index(LimitId.HOSE_LENGTH_MAX))
    rules.source_edit.clear()
    rules.save_button.click()
    assert "source" in rules.row_fault.text()
    assert bench.jurisdictions().changes(rules.profile.id) == ()


def test_an_edition_is_published_and_the_effect_of_a_change_seen(rules: LocalRulesDialog, qtbot: QtBot) -> None:
    """A hose of at most 3 ft reaches no filler at 2 m (6.6 ft): the set is lost."""
    editions = rules.editions
    editions.publish_button.click()
    assert "publisher" in editions.state_label.text()
    editions.note_edit.setText("as copied")
    editions.by_edit.setText("Ada Fenn")
    editions.publish_button.click()
    assert "Edition 1" in editions.state_label.text()
    change_hose_length(rules, "3")
    assert "Changed since." in editions.state_label.text()
    editions.effect_button.click()
    qtbot.waitUntil(lambda: "loses its set: 1" in editions.state_label.text(), timeout=60_000)
    assert "@1" in editions.state_label.text()
    rules.accept()


def test_built_in_rules_are_not_published(rules: LocalRulesDialog) -> None:
    rules.profile_box.setCurrentIndex(0)
    assert not rules.editions.publish_button.isEnabled()
