from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_names, demo_survey
from spoutline.gui.dialogs.copy_answers import CopyAnswersDialog
from spoutline.gui.dialogs.keys import AboutDialog, KeysDialog
from spoutline.gui.dialogs.local_rules import LocalRulesDialog
from spoutline.gui.dialogs.position_name import PositionNameDialog
from spoutline.gui.dialogs.surveys import SurveysDialog
from spoutline.gui.edits.positions import GROUP_WORDS
from spoutline.model.copied_answers import AnswerGroup
from spoutline.model.language import Language
from spoutline.model.limit import LimitId, LimitStatus
from spoutline.model.survey import Position, Site, Survey


def row_of(dialog: LocalRulesDialog, limit_id: LimitId) -> int:
    return next(row for row, limit in enumerate(dialog.model.records) if limit.id is limit_id)


@pytest.fixture
def rules(qtbot: QtBot, bench: Workbench) -> LocalRulesDialog:
    dialog = LocalRulesDialog(bench, "us_general")
    qtbot.addWidget(dialog)
    return dialog


def copied(dialog: LocalRulesDialog, new_id: str) -> LocalRulesDialog:
    dialog.id_edit.setText(new_id)
    dialog.title_edit.setText("Invented County")
    dialog.copy_button.click()
    assert dialog.profile is not None
    assert dialog.profile.id == new_id
    return dialog


def test_built_in_rules_can_be_read_and_not_changed(rules: LocalRulesDialog) -> None:
    assert rules.profile is not None
    assert rules.profile.id == "us_general"
    assert len(rules.model.records) == len(LimitId)
    assert not rules.save_button.isEnabled()
    assert not rules.remove_button.isEnabled()
    rules.table.selectRow(row_of(rules, LimitId.HOSE_LENGTH_MAX))
    # 18 ft: Okla. Admin. Code 165:26-2-92(a)(1)
    assert (rules.value_edit.text(), rules.unit_edit.text()) == ("18", "ft")


def test_row_of_a_copy_is_changed_and_kept(rules: LocalRulesDialog, bench: Workbench) -> None:
    dialog = copied(rules, "county_changed")
    dialog.table.selectRow(row_of(dialog, LimitId.HOSE_LENGTH_MAX))
    dialog.value_edit.setText("15")
    dialog.source_edit.setText("Invented County Code")
    dialog.save_button.click()
    assert dialog.row_fault.text() == ""
    limit = bench.jurisdictions().one("county_changed").limit(LimitId.HOSE_LENGTH_MAX)
    assert limit.value == pytest.approx(4.572)  # 15 x 0.3048 m, NIST SP 811 B.8
    assert limit.source == "Invented County Code"
    assert dialog.changed
    assert dialog.limit is not None
    assert dialog.limit.id is LimitId.HOSE_LENGTH_MAX


def test_a_new_figure_does_not_inherit_the_standing_of_the_old_one(rules: LocalRulesDialog, bench: Workbench) -> None:
    dialog = copied(rules, "county_unsourced")
    dialog.table.selectRow(row_of(dialog, LimitId.HOSE_LENGTH_MAX))
    assert dialog.limit is not None
    assert dialog.limit.status is LimitStatus.VERIFIED  # Okla. 165:26-2-92(a)(1)
    dialog.value_edit.setText("15")
    dialog.save_button.click()
    assert bench.jurisdictions().one("county_unsourced").limit(LimitId.HOSE_LENGTH_MAX).status is LimitStatus.MEMORY


def test_note_is_told_in_the_language_and_kept_as_it_was_written(qtbot: QtBot, bench: Workbench) -> None:
    spoken, typed = bench.language, "Ask Vik; the county differs."
    bench.speak(Language.SPANISH)
    try:
        dialog = LocalRulesDialog(bench, "us_general")
        qtbot.addWidget(dialog)
        copied(dialog, "county_told")
        dialog.table.selectRow(row_of(dialog, LimitId.HOSE_LENGTH_MAX))
        assert dialog.limit is not None
        english = dialog.limit.note
        assert english.startswith("One state's text")  # resources/rules/limits/hose.toml
        assert dialog.note_edit.text().startswith("Texto de un estado")  # resources/phrases/es.toml
        dialog.value_edit.setText("15")
        dialog.save_button.click()
        assert bench.jurisdictions().one("county_told").limit(LimitId.HOSE_LENGTH_MAX).note == english
        dialog.note_edit.setText(typed)
        dialog.save_button.click()
        assert bench.jurisdictions().one("county_told").limit(LimitId.HOSE_LENGTH_MAX).note == typed
        assert dialog.note_edit.text() == typed
    finally:
        bench.speak(spoken)


@pytest.mark.parametrize(("value", "unit"), [("long", "ft"), ("18", "psi"), ("-3", "ft")])
def test_unusable_row_is_told_beside_the_field_and_text_is_kept(
    rules: LocalRulesDialog, bench: Workbench, value: str, unit: str
) -> None:
    dialog = copied(rules, f"county_{abs(hash((value, unit))) % 10_000}")
    dialog.table.selectRow(row_of(dialog, LimitId.HOSE_LENGTH_MAX))
    dialog.value_edit.setText(value)
    dialog.unit_edit.setText(unit)
    dialog.save_button.click()
    assert dialog.row_fault.text() != ""
    assert (dialog.value_edit.text(), dialog.unit_edit.text()) == (value, unit)
    assert dialog.profile is not None
    kept = bench.jurisdictions().one(dialog.profile.id)
    assert kept.number(LimitId.HOSE_LENGTH_MAX) == pytest.approx(5.4864)  # 18 ft


def test_own_rules_are_removed_after_a_question(
    rules: LocalRulesDialog, bench: Workbench, monkeypatch: pytest.MonkeyPatch
) -> None:
    dialog = copied(rules, "county_removed")
    monkeypatch.setattr(QMessageBox, "question", lambda *_: QMessageBox.StandardButton.No)
    dialog.remove_button.click()
    assert "county_removed" in bench.jurisdictions().ids()
    monkeypatch.setattr(QMessageBox, "question", lambda *_: QMessageBox.StandardButton.Yes)
    dialog.remove_button.click()
    assert "county_removed" not in bench.jurisdictions().ids()


@pytest.mark.parametrize("new_id", ["us_general", "", "has space"])
def test_copy_under_an_unusable_name_is_refused(rules: LocalRulesDialog, bench: Workbench, new_id: str) -> None:
    before = bench.jurisdictions().ids()
    rules.id_edit.setText(new_id)
    rules.title_edit.setText("Invented County")
    rules.copy_button.click()
    assert rules.fault_label.text() != ""
    assert bench.jurisdictions().ids() == before


@pytest.fixture
def surveys(qtbot: QtBot, bench: Workbench, survey: Survey) -> SurveysDialog:
    stored = bench.book().create(survey)
    dialog = SurveysDialog(bench, stored.id)
    qtbot.addWidget(dialog)
    return dialog


def test_new_survey_is_started_by_name(surveys: SurveysDialog, bench: Workbench) -> None:
    surveys.name_edit.setText("Invented Quay")
    surveys.start_button.click()
    assert surveys.chosen is not None
    assert bench.book().stored(surveys.chosen.id).survey.site.name == "Invented Quay"


def test_survey_without_a_name_is_refused(surveys: SurveysDialog) -> None:
    surveys.name_edit.setText("   ")
    surveys.start_button.click()
    assert surveys.chosen is None
    assert "1 to 60 characters" in surveys.fault_label.text()


def test_ready_station_is_put_into_the_book_under_its_name_and_turned_to(
    surveys: SurveysDialog, bench: Workbench
) -> None:
    """The marina's file names the site Wobblefin Marina and lists six positions."""
    surveys.ready_choice.setCurrentIndex(surveys.ready_choice.findText("Wobblefin Marina, 6 positions"))
    surveys.ready_button.click()
    assert surveys.chosen is not None
    assert surveys.chosen.survey == demo_survey("marina")
    assert bench.book().stored(surveys.chosen.id).survey.site.name == "Wobblefin Marina"
    assert surveys.ready_choice.count() == len(demo_names())


def test_ready_station_still_as_it_came_is_not_put_into_the_book_twice(
    qtbot: QtBot, surveys: SurveysDialog, bench: Workbench
) -> None:
    surveys.ready_choice.setCurrentIndex(surveys.ready_choice.findData("truck_stop"))
    surveys.ready_button.click()
    again = SurveysDialog(bench, None)
    qtbot.addWidget(again)
    again.ready_choice.setCurrentIndex(again.ready_choice.findData("truck_stop"))
    again.ready_button.click()
    assert (again.chosen, surveys.chosen) == (surveys.chosen, again.chosen)
    assert surveys.chosen is not None
    own = surveys.chosen.survey.model_copy(update={"positions": surveys.chosen.survey.positions[:1]})
    bench.book().save(surveys.chosen, own)
    again.ready_button.click()
    assert again.chosen is not None
    assert again.chosen.id != surveys.chosen.id  # work on the first copy stays what it is


def test_survey_file_is_read_into_the_book(surveys: SurveysDialog, tmp_path: Path) -> None:
    path = tmp_path / "marina.json"
    path.write_text(survey_to_json(demo_survey("marina")), encoding="utf-8")
    surveys.read_file(path)
    assert surveys.chosen is not None
    assert surveys.chosen.survey == demo_survey("marina")


def test_faulty_survey_file_names_the_field(surveys: SurveysDialog, tmp_path: Path) -> None:
    path = tmp_path / "bad.json"
    text = survey_to_json(demo_survey("marina")).replace('"marine"', '"marien"')
    path.write_text(text, encoding="utf-8")
    surveys.read_file(path)
    assert surveys.chosen is None
    assert "duty" in surveys.fault_label.text()
    assert "marine" in surveys.fault_label.text()


def test_open_survey_stays_on_the_list(surveys: SurveysDialog, bench: Workbench) -> None:
    rows = surveys.table.model().rowCount()
    for row in range(rows):
        surveys.table.selectRow(row)
        surveys.table.setCurrentIndex(surveys.table.model().index(row, 0))
        if surveys._marked().id == surveys._present_id:  # type: ignore[union-attr]
            break
    surveys.remove_button.click()
    assert "is open" in surveys.fault_label.text()
    assert len(bench.book().entries()) == rows


def test_names_of_a_position_are_checked_before_the_dialog_closes(qtbot: QtBot, survey: Survey) -> None:
    dialog = PositionNameDialog(survey, "A1", proposal="A1", dispenser="1")
    qtbot.addWidget(dialog)
    dialog.label_edit.setText("A2")
    dialog.accept_button.click()
    assert dialog.after is None
    assert "A3 is free" in dialog.fault_label.text()
    dialog.label_edit.setText("Pump A")
    dialog.accept_button.click()
    assert dialog.after is not None
    assert [position.label for position in dialog.after.positions] == ["Pump A", "A2"]


def test_an_island_holds_for_the_whole_dispenser(qtbot: QtBot, survey: Survey) -> None:
    dialog = PositionNameDialog(survey, "", proposal="A3", dispenser="1")
    qtbot.addWidget(dialog)
    dialog.island_edit.setText("North")
    dialog.accept_button.click()
    assert dialog.after is not None
    on_north = [one.label for one in dialog.after.positions if one.island == "North"]
    assert on_north == [*(one.label for one in survey.positions if one.dispenser == "1"), "A3"]
    again = PositionNameDialog(dialog.after, "", proposal="B1", dispenser="1")
    qtbot.addWidget(again)
    assert again.island_edit.text() == "North"
    again.dispenser_box.setEditText("9")  # a new dispenser keeps what is written
    assert again.island_edit.text() == "North"
    again.accept_button.click()
    assert again.after is not None
    assert again.after.positions[-1].island == "North"


def test_copying_answers_says_how_many_positions_change(qtbot: QtBot, survey: Survey) -> None:
    dialog = CopyAnswersDialog(survey, "A1")
    qtbot.addWidget(dialog)
    assert not dialog.accept_button.isEnabled()
    dialog.boxes[AnswerGroup.LIQUID].setChecked(True)
    dialog.targets.item(0).setCheckState(Qt.CheckState.Checked)
    assert dialog.count_label.text().startswith("1 ")
    dialog.accept_button.click()
    assert dialog.after is not None
    assert dialog.after.positions[1].liquid == survey.positions[0].liquid
    assert dialog.after.positions[1].duty == survey.positions[1].duty


def test_same_product_chooses_every_position_of_the_liquid_and_blend(qtbot: QtBot) -> None:
    def one(label: str, **answers: object) -> Position:
        return Position.model_validate({"label": label, **answers})

    e10 = {"liquid": {"family": "gasoline", "blend_percent": 10}}
    survey = Survey(
        site=Site(name="Same Product"),
        positions=(
            one("1A", **e10),
            one("1B", liquid={"family": "gasoline", "blend_percent": 85}),
            one("2A", **e10, duty="truck"),
            one("2B", liquid={"family": "diesel", "blend_percent": 10}),
            one("3A", liquid={"family": "gasoline"}),  # nobody said which blend
            one("3B"),
            one("4A", **e10),
        ),
    )
    dialog = CopyAnswersDialog(survey, "1A")
    qtbot.addWidget(dialog)
    dialog.targets.item(0).setCheckState(Qt.CheckState.Checked)
    dialog.same_button.click()
    assert dialog.labels == {"2A", "4A"}
    dialog.boxes[AnswerGroup.DUTY].setChecked(True)
    dialog.accept_button.click()
    assert dialog.after is not None
    assert dialog.after.positions[2].duty == "car"
    nobody_said = CopyAnswersDialog(survey, "3B")
    qtbot.addWidget(nobody_said)
    assert not nobody_said.same_button.isEnabled()


def unnamed(root: QWidget) -> list[str]:
    found = []
    for widget in root.findChildren(QWidget):
        takes = widget.focusPolicy() != Qt.FocusPolicy.NoFocus and widget.isVisibleTo(root)
        interface = QAccessible.queryAccessibleInterface(widget) if takes and widget.focusProxy() is None else None
        if interface is not None and not interface.text(QAccessible.Text.Name).strip():
            found.append(f"{type(widget).__name__} in {type(widget.parent()).__name__}")
    return found


def test_dialogs_name_everything_that_takes_the_keyboard(
    qtbot: QtBot, rules: LocalRulesDialog, surveys: SurveysDialog, survey: Survey
) -> None:
    dialogs: tuple[QWidget, ...] = (
        rules,
        surveys,
        CopyAnswersDialog(survey, "A1"),
        PositionNameDialog(survey, "A1", proposal="A1", dispenser="1"),
        KeysDialog(),
        AboutDialog("1.0", "Advice only."),
    )
    for dialog in dialogs:
        qtbot.addWidget(dialog)
        assert unnamed(dialog) == [], type(dialog).__name__


def test_the_groups_of_answers_to_copy_are_named_in_the_language(qtbot: QtBot, survey: Survey) -> None:
    from spoutline.gui.window.language import WindowLanguage

    language = WindowLanguage()
    language.use(Language.SPANISH)
    try:
        dialog = CopyAnswersDialog(survey, survey.positions[0].label)
        qtbot.addWidget(dialog)
        said = {group: box.text() for group, box in dialog.boxes.items()}
    finally:
        language.use(Language.ENGLISH)
    assert said[AnswerGroup.LIQUID] == "Líquido y mezcla"
    assert {group for group, text in said.items() if text == GROUP_WORDS[group]} == set()
