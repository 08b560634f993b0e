"""The terms form as a person fills it in: by keyboard, with faults, taken back, saved, opened and kept for the next."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication, QShortcut
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox, QFileDialog, QLineEdit, QListWidget, QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from planning.quoting_terms import terms_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.quotations import QuotationService
from spoutline.gui.dialogs.terms import TermsDialog
from spoutline.gui.dialogs.terms_page import TableSection
from spoutline.gui.edits.terms_draft import FIELDS, TABLES, draft_of, judged_terms
from spoutline.gui.edits.terms_subjects import SUBJECTS
from spoutline.gui.roles import Role, Tone
from spoutline.gui.widgets.answer_field import AnswerField, ListField, LongTextField, TextField
from spoutline.gui.widgets.picture_field import PictureField
from spoutline.gui.widgets.theme import dress
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.charge import Charge, Per
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation_terms import FreightMethod, Terms
from spoutline.model.survey import Survey

DAY = date(2026, 11, 25)
Open = Callable[..., TermsDialog]
KEY = Qt.Key
NO, CTRL, SHIFT, ALT = (
    Qt.KeyboardModifier.NoModifier,
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.AltModifier,
)

OVERRIDES = TABLES["overrides"].columns


@pytest.fixture
def data_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Return the folder of the person's own data, empty at first."""
    folder = tmp_path / "data"
    monkeypatch.setattr("spoutline.bootstrap.workbench.user_folder", lambda: folder)
    return folder


@pytest.fixture
def service(own_workbench: Workbench, data_folder: Path) -> QuotationService:
    return own_workbench.quoting()


@pytest.fixture
def opened(
    qtbot: QtBot, qapp: QApplication, service: QuotationService, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Open:
    # a form that a test leaves open is closed behind it, whatever was typed
    monkeypatch.setattr(QMessageBox, "question", lambda *_: QMessageBox.StandardButton.Yes)

    if not qapp.styleSheet():
        dress(qapp, dark=False)

    def make(start: Terms | None = None, folder: Path | None = None, survey: Survey | None = None) -> TermsDialog:
        dialog = TermsDialog(service, start, folder or tmp_path, today=DAY, survey=survey)
        qtbot.addWidget(dialog)
        dialog.show()
        return dialog

    return make


def go(dialog: TermsDialog, subject: str) -> None:
    dialog.subject_list.setCurrentRow([one.name for one in SUBJECTS].index(subject))


def field(dialog: TermsDialog, path: str) -> AnswerField:
    page = next(one for one in dialog.pages if path in one.fields)
    go(dialog, page.subject.name)
    return page.fields[path]


def section(dialog: TermsDialog, path: str) -> TableSection:
    page = next(one for one in dialog.pages if path in one.sections)
    go(dialog, page.subject.name)
    return page.sections[path]


def write(qtbot: QtBot, dialog: TermsDialog, path: str, text: str) -> None:
    """Type a text into a field in place of what stands there, and leave it by Tab."""
    entry = field(dialog, path)
    assert isinstance(entry, TextField | LongTextField | PictureField)
    entry.editor.setFocus()
    entry.editor.selectAll()
    qtbot.keyClick(entry.editor, KEY.Key_Delete)
    for place, line in enumerate(text.split("\n")):
        if place:
            qtbot.keyClick(entry.editor, KEY.Key_Return)
        qtbot.keyClicks(entry.editor, line)
    qtbot.keyClick(entry.editor, KEY.Key_Tab)
    if isinstance(entry, TextField | PictureField):
        entry.editor.editingFinished.emit()  # the offscreen platform moves the keyboard without telling
    else:
        entry.commit()


def edit_cell(qtbot: QtBot, part: TableSection, row: int, column: int) -> QWidget:
    """Open the editor of a cell by Return, and return it."""
    part.table.go_to(row, column)
    qtbot.keyClick(part.table, KEY.Key_Return)
    editor = part.table.indexWidget(part.table.currentIndex())
    assert editor is not None
    return editor


def write_cell(qtbot: QtBot, part: TableSection, row: int, column: int, text: str) -> None:
    editor = edit_cell(qtbot, part, row, column)
    assert isinstance(editor, QLineEdit)
    editor.selectAll()
    qtbot.keyClicks(editor, text)
    qtbot.keyClick(editor, KEY.Key_Return)
    qtbot.waitUntil(lambda: part.model.rows[row][column] == text)


def fill_in_names(qtbot: QtBot, dialog: TermsDialog) -> None:
    write(qtbot, dialog, "seller.name", "Hedgerow Supply")
    write(qtbot, dialog, "customer.name", "Hollow Ford Fuels")
    write(qtbot, dialog, "heading.number", "HS-7")


def tone(dialog: TermsDialog, subject: str) -> str:
    row = [one.name for one in SUBJECTS].index(subject)
    return str(dialog.subject_list.item(row).data(Role.TONE))


def test_every_field_of_the_terms_stands_on_a_page_once() -> None:
    """The model's own fields are the list to hold the form against."""
    leaves: set[str] = set()
    for name, info in Terms.model_fields.items():
        if name in TABLES or name in FIELDS:
            leaves.add(name)
            continue
        inner = getattr(info.annotation, "model_fields", None)
        if inner is None and name == "drive_offs":
            from spoutline.model.quotation_terms import DriveOffs

            inner = DriveOffs.model_fields
        leaves |= {f"{name}.{one}" for one in inner or {}}
    shown = [part.path for subject in SUBJECTS for part in subject.parts]
    assert len(shown) == len(set(shown))
    assert set(shown) == leaves


def test_ready_terms_go_through_the_form_unchanged(service: QuotationService) -> None:
    terms = service.terms().read_terms(service.terms().demo_terms())
    assert judged_terms(draft_of(terms)).terms == terms


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("QX 12 B", PartRef("QX 12 B")),
        ("  QX 12 B ", PartRef("QX 12 B")),
        ("Quillmere Forgeworks QX 12 B", PartRef("QX 12 B", "Quillmere Forgeworks")),
        ("quillmere forgeworks QW-N101", PartRef("QW-N101", "Quillmere Forgeworks")),
        ("QW-N101", PartRef("QW-N101")),
    ],
)
def test_a_part_number_may_hold_blanks_and_stand_behind_its_maker(
    service: QuotationService, typed: str, meant: PartRef
) -> None:
    makers = service.terms().price_list_names().makers
    row = tuple({"part": typed, "by": "Odile"}.get(one.name, "") for one in OVERRIDES)
    draft = draft_of(service.terms().read_terms(service.terms().demo_terms()), makers=makers).with_rows(
        "overrides", (row,)
    )
    terms = judged_terms(draft).terms
    assert terms is not None
    assert [one.part for one in terms.overrides] == [meant]
    assert judged_terms(draft_of(terms)).terms == terms  # its own makers are known, whatever price lists say


def test_terms_are_made_from_nothing_by_typing(qtbot: QtBot, opened: Open) -> None:
    dialog = opened()
    fill_in_names(qtbot, dialog)
    write(qtbot, dialog, "customer.address", "1 Mill Lane\nHollow Ford")
    write(qtbot, dialog, "heading.valid_days", "45")
    write(qtbot, dialog, "labour.hourly_rate", "88.50")
    freight = field(dialog, "freight.method")
    assert isinstance(freight, ListField)
    qtbot.keyClick(freight.editor, KEY.Key_Down)
    freight.editor.activated.emit(freight.editor.currentIndex())
    write(qtbot, dialog, "freight.amount", "2.5")
    dialog.accept_button.click()
    terms = dialog.terms
    assert terms is not None
    assert (terms.seller.name, terms.customer.name, terms.heading.number) == (
        "Hedgerow Supply",
        "Hollow Ford Fuels",
        "HS-7",
    )
    assert terms.customer.address == "1 Mill Lane\nHollow Ford"
    assert (terms.heading.dated, terms.heading.valid_days) == (DAY, 45)
    assert terms.labour.hourly_rate == Decimal("88.50")
    assert (terms.freight.method, terms.freight.amount) == (FreightMethod.PERCENT_OF_GOODS, Decimal("2.5"))
    assert terms.drive_offs is None
    assert dialog.path is None


def test_the_labour_table_is_written_like_a_spreadsheet(qtbot: QtBot, opened: Open) -> None:
    dialog = opened(terms_of())
    part = section(dialog, "labour.tasks")
    part.add_button.click()
    write_cell(qtbot, part, 0, 0, "Leak test")
    per = edit_cell(qtbot, part, 0, 1)
    assert isinstance(per, QComboBox)
    per.setCurrentIndex(per.findText("dispenser"))
    per.activated.emit(per.currentIndex())
    write_cell(qtbot, part, 0, 2, "0.25")
    kinds = edit_cell(qtbot, part, 0, 3)
    assert isinstance(kinds, QListWidget)
    qtbot.keyClick(kinds, KEY.Key_Space)
    qtbot.keyClick(kinds, KEY.Key_Down)
    qtbot.keyClick(kinds, KEY.Key_Space)
    qtbot.keyClick(kinds, KEY.Key_Return)
    qtbot.waitUntil(lambda: part.model.rows[0][3] != "")
    assert part.model.index(0, 3).data() == "nozzle, swivel"
    qtbot.keyClick(part.table, KEY.Key_Insert)
    write_cell(qtbot, part, 1, 0, "Journey")
    write_cell(qtbot, part, 1, 2, "4")
    dialog.accept_button.click()
    assert dialog.terms is not None
    first, second = dialog.terms.labour.tasks
    assert (first.title, first.per, first.hours) == ("Leak test", Per.DISPENSER, Decimal("0.25"))
    assert first.kinds == (PartKind.NOZZLE, PartKind.SWIVEL)
    assert (second.title, second.per, second.hours, second.kinds) == ("Journey", Per.POSITION, 4, ())


def test_the_labour_table_says_what_it_comes_to_at_the_station(qtbot: QtBot, opened: Open, survey: Survey) -> None:
    """Two positions at one dispenser: 2 x 0.4 + 0.5 + 4 = 5.3 hours; with 1.5 for the journey 2.8."""
    positions = tuple(one.model_copy(update={"dispenser": "1"}) for one in survey.positions)
    tasks = [
        {"title": "Exchange", "hours": "0.4"},
        {"title": "Lock out", "per": "dispenser", "hours": "0.5"},
        {"title": "Journey", "per": "site", "hours": 4},
    ]
    dialog = opened(terms_of(labour={"tasks": tasks}), survey=survey.model_copy(update={"positions": positions}))
    part = section(dialog, "labour.tasks")
    assert "(positions: 2, dispensers: 1): 5.3 hours" in part.note_label.text()
    write_cell(qtbot, part, 2, 2, "1.5")
    assert "2.8 hours" in part.note_label.text()
    part.model.write_cells({(0, 3): "swivel"})
    assert "at most 2.8 hours" in part.note_label.text()
    write_cell(qtbot, part, 2, 2, "long")
    assert part.note_label.isHidden()


def test_rows_are_copied_moved_and_taken_away_by_keys(qtbot: QtBot, opened: Open) -> None:
    taxes = [{"name": "A", "percent": 1}, {"name": "B", "percent": 2}, {"name": "C", "percent": 3}]
    dialog = opened(terms_of(taxes=taxes))
    part = section(dialog, "taxes")
    names = lambda: [row[0] for row in part.model.rows]  # noqa: E731 - read again after every key
    part.table.go_to(2, 1)
    qtbot.keyClick(part.table, KEY.Key_Up, ALT)
    assert names() == ["A", "C", "B"]
    assert (part.table.currentIndex().row(), part.table.currentIndex().column()) == (1, 1)
    qtbot.keyClick(part.table, KEY.Key_Up, ALT)
    qtbot.keyClick(part.table, KEY.Key_Up, ALT)
    assert names() == ["C", "A", "B"]
    qtbot.keyClick(part.table, KEY.Key_Down, ALT)
    qtbot.keyClick(part.table, KEY.Key_D, CTRL | SHIFT)
    assert names() == ["A", "C", "C", "B"]
    qtbot.keyClick(part.table, KEY.Key_Delete, CTRL)
    assert names() == ["A", "C", "B"]
    dialog.accept_button.click()
    assert dialog.terms is not None
    assert [one.name for one in dialog.terms.taxes] == ["A", "C", "B"]


def test_rows_are_pasted_from_a_spreadsheet(qtbot: QtBot, opened: Open) -> None:
    dialog = opened(terms_of())
    part = section(dialog, "taxes")
    QGuiApplication.clipboard().setText("City tax\t1.25\tGoods, Labor\nState tax\t6\tgoods\n")
    part.table.setFocus()
    qtbot.keyClick(part.table, KEY.Key_V, CTRL)
    dialog.accept_button.click()
    assert dialog.terms is not None
    city, state = dialog.terms.taxes
    assert (city.name, city.percent, city.on) == ("City tax", Decimal("1.25"), (Charge.GOODS, Charge.LABOUR))
    assert (state.percent, state.on) == (6, (Charge.GOODS,))


@pytest.mark.parametrize(
    ("copied", "words"),
    [
        ("City tax\t1.25\tgoods\tone too many\n", "the table has 3 columns"),
        ("City tax\n" * 1001, "at most 1000 rows"),
    ],
)
def test_a_paste_beyond_the_table_is_refused_as_a_whole(qtbot: QtBot, opened: Open, copied: str, words: str) -> None:
    part = section(opened(terms_of(taxes=[{"name": "State tax", "percent": 6}])), "taxes")
    before = part.model.rows
    QGuiApplication.clipboard().setText(copied)
    part.table.choose([(0, 0)])
    part.table.setFocus()
    qtbot.keyClick(part.table, KEY.Key_V, CTRL)
    assert part.model.rows == before
    assert words in part.fault_label.text()
    assert not part.fault_label.isHidden()


def test_a_faulty_cell_is_named_and_marked_and_what_was_typed_stays(qtbot: QtBot, opened: Open) -> None:
    dialog = opened(terms_of(labour={"tasks": [{"title": "Journey", "hours": 4}]}))
    part = section(dialog, "labour.tasks")
    write_cell(qtbot, part, 0, 2, "0,4")
    assert "Task 1, Hours: “0,4”" in part.fault_label.text()
    assert "decimal point" in part.fault_label.text()
    assert part.model.index(0, 2).data(Role.TONE) == Tone.BAD
    assert part.model.index(0, 2).data() == "0,4"
    assert tone(dialog, "labour") == Tone.BAD
    go(dialog, "customer")
    dialog.accept_button.click()
    assert dialog.terms is None
    assert dialog.isVisible()
    assert "Labor, Task 1, Hours" in dialog.fault_label.text()
    assert dialog.stack.currentWidget() is dialog.page("labour")
    assert (part.table.currentIndex().row(), part.table.currentIndex().column()) == (0, 2)
    write_cell(qtbot, part, 0, 2, "1001")
    assert "at least 0 and at most 1000" in part.fault_label.text()
    write_cell(qtbot, part, 0, 2, "0.4")
    assert part.fault_label.isHidden()
    assert tone(dialog, "labour") == Tone.GOOD
    assert dialog.fault_label.isHidden()


@pytest.mark.parametrize(
    ("path", "text", "words"),
    [
        ("heading.dated", "25.11.2026", "year-month-day"),
        ("heading.dated", "2026-02-30", "year-month-day"),
        ("heading.valid_days", "0", "at least 1 and at most 730"),
        ("heading.valid_days", "two weeks", "whole number"),
        ("selling.percent", "101", "at least 0 and at most 100"),
        ("freight.amount", "NaN", "write a number"),
        ("stock_price", "1e3", "write a number"),
        ("rounding.unit_step", "0", "above 0"),
    ],
)
def test_a_faulty_field_says_what_would_be_right(path: str, text: str, words: str, qtbot: QtBot, opened: Open) -> None:
    dialog = opened(terms_of())
    write(qtbot, dialog, path, text)
    entry = field(dialog, path)
    assert words in entry.fault
    assert text in entry.fault
    dialog.accept_button.click()
    assert dialog.terms is None
    assert isinstance(entry, TextField)
    assert entry.editor.text() == text
    write(qtbot, dialog, path, {"heading.dated": "2026-12-01"}.get(path, "1"))
    assert entry.fault == ""
    dialog.accept_button.click()
    assert dialog.terms is not None


def test_a_wrong_entry_is_taken_back_and_made_again(qtbot: QtBot, opened: Open) -> None:
    dialog = opened(terms_of(labour={"hourly_rate": "88.00", "tasks": [{"title": "Journey", "hours": 4}]}))
    part = section(dialog, "labour.tasks")
    write_cell(qtbot, part, 0, 2, "many")
    go(dialog, "customer")
    dialog.undo()
    assert part.model.rows == (("Journey", "position", "4", ""),)
    assert dialog.stack.currentWidget() is dialog.page("labour")
    assert part.fault_label.isHidden()
    dialog.redo()
    assert part.model.rows[0][2] == "many"
    dialog.undo()
    part.remove_button.click()
    part.table.go_to(0, 0)
    part.remove_button.click()
    assert part.model.rows == ()
    dialog.undo()
    write(qtbot, dialog, "labour.hourly_rate", "99")
    dialog.undo()
    dialog.accept_button.click()
    assert dialog.terms == terms_of(labour={"hourly_rate": "88.00", "tasks": [{"title": "Journey", "hours": 4}]})


def test_what_is_still_needed_is_only_pointed_at_when_the_terms_are_to_be_used(qtbot: QtBot, opened: Open) -> None:
    dialog = opened()
    assert field(dialog, "customer.name").fault == ""
    assert tone(dialog, "customer") == Tone.QUESTION
    dialog.accept_button.click()
    assert dialog.stack.currentWidget() is dialog.page("seller")
    assert field(dialog, "customer.name").fault == "Write it."
    assert tone(dialog, "customer") == Tone.BAD
    assert "2 more entries" in dialog.fault_label.text()
    fill_in_names(qtbot, dialog)
    assert tone(dialog, "customer") == Tone.GOOD
    dialog.accept_button.click()
    assert dialog.terms is not None


def test_rows_left_empty_are_no_fault_and_a_row_half_written_is_one(qtbot: QtBot, opened: Open) -> None:
    dialog = opened(terms_of())
    part = section(dialog, "overrides")
    part.add_button.click()
    part.add_button.click()
    write_cell(qtbot, part, 1, 0, "ZZ-9")
    dialog.accept_button.click()
    assert dialog.terms is None
    assert "Price 2, Who answers for it" in part.fault_label.text()
    write_cell(qtbot, part, 1, 2, "Odile")
    dialog.accept_button.click()
    assert dialog.terms is not None
    (override,) = dialog.terms.overrides
    assert (override.part, override.unit_price, override.by) == (PartRef("ZZ-9"), None, "Odile")


def test_options_are_one_to_four_and_each_once(qtbot: QtBot, opened: Open) -> None:
    dialog = opened(terms_of())
    part = section(dialog, "options")
    part.table.go_to(0, 0)
    part.copy_button.click()
    assert "Option 2, Option: 'Offer'" in part.fault_label.text()
    for name in "BCDE":
        part.add_button.click()
        write_cell(qtbot, part, part.table.currentIndex().row(), 0, name)
    part.table.go_to(0, 0)
    part.remove_button.click()
    assert "at most 4" in part.fault_label.text()
    part.table.go_to(0, 0)
    part.remove_button.click()
    assert part.fault_label.isHidden()
    dialog.accept_button.click()
    assert dialog.terms is not None
    assert sorted(option.title for option in dialog.terms.options) == ["B", "C", "D", "E"]


def test_price_lists_offer_their_makers_and_groups(qtbot: QtBot, opened: Open, service: QuotationService) -> None:
    dialog = opened(terms_of())
    part = section(dialog, "buying")
    part.add_button.click()
    editor = edit_cell(qtbot, part, 0, 0)
    assert isinstance(editor, QLineEdit)
    completer = editor.completer()
    model = completer.model()
    offered = [str(model.index(row, 0).data()) for row in range(model.rowCount())]
    assert offered == sorted({one.maker for one in service.terms().price_lists(DEMONSTRATION)})


def test_terms_are_saved_over_a_persons_file_and_opened_again(qtbot: QtBot, opened: Open, tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text(
        '# the mill job\n[seller]\nname = "Hedgerow Supply" # ours\n[customer]\nname = "Hollow Ford Fuels"\n'
        '[heading]\nnumber = "HS-1"\ndated = 2026-11-25\n',
        encoding="utf-8",
    )
    dialog = opened()
    dialog.open_file(path)
    assert dialog.path == path
    write(qtbot, dialog, "heading.number", "HS-2")
    assert dialog.path is None
    dialog.save_as(path)
    assert dialog.path == path
    assert str(path) in dialog.said_label.text()
    text = path.read_text(encoding="utf-8")
    assert "# the mill job" in text
    assert "# ours" in text
    dialog.accept_button.click()
    assert (dialog.path, dialog.folder) == (path, tmp_path)
    again = opened()
    again.open_file(path)
    again.accept_button.click()
    assert again.terms == dialog.terms
    assert again.terms is not None
    assert again.terms.heading.number == "HS-2"


def test_a_faulty_file_leaves_the_form_as_it_is(opened: Open, tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text('currency = "dollars"\n', encoding="utf-8")
    dialog = opened(terms_of())
    before = dialog.draft
    dialog.open_file(path)
    assert "currency" in dialog.fault_label.text()
    assert dialog.draft == before


def test_a_place_that_cannot_be_written_is_told(opened: Open, tmp_path: Path) -> None:
    dialog = opened(terms_of())
    dialog.save_as(tmp_path / "nowhere" / "job.toml")
    assert "cannot be written" in dialog.fault_label.text()
    assert dialog.path is None


def test_the_files_are_asked_for_and_nothing_is_asked_where_terms_are_faulty(
    opened: Open, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[str] = []

    def name(*arguments: object) -> tuple[str, str]:
        asked.append(str(arguments[1]))
        return str(tmp_path / "kept.toml"), ""

    monkeypatch.setattr(QFileDialog, "getSaveFileName", name)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", name)
    unfinished = opened()
    unfinished.save_button.click()
    assert asked == []
    assert "Letterhead, Name" in unfinished.fault_label.text()
    dialog = opened(terms_of())
    dialog.save_button.click()
    assert (tmp_path / "kept.toml").is_file()
    unfinished.open_button.click()
    unfinished.accept_button.click()
    assert unfinished.terms == terms_of()


def test_usual_terms_are_kept_from_an_unfinished_form_and_stand_in_the_next(
    qtbot: QtBot, opened: Open, data_folder: Path
) -> None:
    dialog = opened()
    write(qtbot, dialog, "seller.name", "Hedgerow Supply")
    write(qtbot, dialog, "heading.conditions", "Payment 30 days net.")
    write(qtbot, dialog, "heading.number", "HS-9")
    write(qtbot, dialog, "stock_price", "35.00")
    part = section(dialog, "taxes")
    part.add_button.click()
    write_cell(qtbot, part, 0, 0, "Sales tax")
    dialog.usual_button.click()
    assert "usual terms are as they were: Freight and taxes, Tax 1, Percent" in dialog.fault_label.text()
    write_cell(qtbot, part, 0, 1, "6.25")
    dialog.usual_button.click()
    assert str(data_folder / "usual_terms.toml") in dialog.said_label.text()
    fresh = opened()
    assert fresh.draft.texts["seller.name"] == "Hedgerow Supply"
    assert fresh.draft.texts["heading.conditions"] == "Payment 30 days net."
    assert fresh.draft.texts["heading.number"] == ""
    assert fresh.draft.texts["heading.dated"] == "2026-11-25"
    assert fresh.draft.texts["stock_price"] == "35.00"
    assert fresh.draft.rows["taxes"] == (("Sales tax", "6.25", "goods;labour;freight"),)


def test_faulty_usual_terms_are_told_and_not_written_over(qtbot: QtBot, opened: Open, data_folder: Path) -> None:
    data_folder.mkdir()
    (data_folder / "usual_terms.toml").write_text("[labour]\nhourly_rate = -1\n", encoding="utf-8")
    dialog = opened()
    assert "labour.hourly_rate" in dialog.fault_label.text()
    assert dialog.draft.texts["labour.hourly_rate"] == "0"
    write(qtbot, dialog, "seller.name", "Hedgerow Supply")
    dialog.usual_button.click()
    assert "labour.hourly_rate" in dialog.fault_label.text()
    assert "-1" in (data_folder / "usual_terms.toml").read_text(encoding="utf-8")


def test_a_picture_is_picked_shown_and_comes_along_with_the_file(
    qtbot: QtBot, opened: Open, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for place in ("pictures", "jobs"):
        (tmp_path / place).mkdir()
    Image.new("RGB", (400, 100), "teal").save(tmp_path / "pictures" / "own.png")
    dialog = opened(terms_of(), folder=tmp_path / "jobs")
    entry = field(dialog, "seller.logo")
    assert isinstance(entry, PictureField)
    picked = str(tmp_path / "pictures" / "own.png")
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (picked, ""))
    entry.pick_button.click()
    assert entry.editor.text() == picked
    assert (entry.preview.pixmap().width(), entry.preview.pixmap().height()) == (170, 42)  # 4:1 in 170 by 64
    dialog.save_as(tmp_path / "jobs" / "job.toml")
    assert entry.editor.text() == "own.png"
    assert not entry.preview.pixmap().isNull()
    dialog.accept_button.click()
    assert dialog.terms is not None
    assert dialog.terms.seller.logo == "own.png"
    assert (tmp_path / "jobs" / "own.png").is_file()


def test_a_picture_that_is_none_is_told(qtbot: QtBot, opened: Open, tmp_path: Path) -> None:
    (tmp_path / "text.png").write_text("no picture", encoding="utf-8")
    dialog = opened(terms_of())
    write(qtbot, dialog, "seller.logo", "lost.png")
    entry = field(dialog, "seller.logo")
    assert isinstance(entry, PictureField)
    assert "no such file" in entry.preview.text()
    write(qtbot, dialog, "seller.logo", "text.png")
    assert "no PNG or JPEG" in entry.preview.text()


def test_leaving_asks_before_what_was_typed_is_lost(
    qtbot: QtBot, opened: Open, monkeypatch: pytest.MonkeyPatch
) -> None:
    answers = [QMessageBox.StandardButton.No, QMessageBox.StandardButton.Yes]
    untouched = opened(terms_of())
    monkeypatch.setattr(QMessageBox, "question", lambda *_: answers.pop(0))
    untouched.reject()
    assert not untouched.isVisible()
    dialog = opened(terms_of())
    entry = field(dialog, "heading.number")
    assert isinstance(entry, TextField)
    entry.editor.setFocus()
    qtbot.keyClicks(entry.editor, "X")  # not even left yet
    dialog.reject()
    assert dialog.isVisible()
    dialog.reject()
    assert not dialog.isVisible()
    assert dialog.terms is None


def test_return_alone_loses_nothing_that_was_typed(qtbot: QtBot, opened: Open, monkeypatch: pytest.MonkeyPatch) -> None:
    """Escape, then Return in a hurry: the form is still there."""
    dialog = opened(terms_of())
    entry = field(dialog, "heading.number")
    assert isinstance(entry, TextField)
    entry.editor.setFocus()
    qtbot.keyClicks(entry.editor, "X")
    defaults: list[object] = []

    def question(*arguments: object) -> QMessageBox.StandardButton:
        defaults.append(arguments[-1])
        return QMessageBox.StandardButton.No

    monkeypatch.setattr(QMessageBox, "question", question)
    qtbot.keyClick(dialog, KEY.Key_Escape)
    assert defaults == [QMessageBox.StandardButton.No]
    assert dialog.isVisible()
    monkeypatch.setattr(QMessageBox, "question", lambda *_: QMessageBox.StandardButton.Yes)


def test_a_press_that_takes_a_fault_away_still_reaches_its_button(qtbot: QtBot, opened: Open) -> None:
    """The line of a fault goes only when the mouse is let go, so that no button moves from below it."""
    dialog = opened(terms_of(labour={"hourly_rate": 85, "tasks": []}))
    part = section(dialog, "labour.tasks")
    rate = field(dialog, "labour.hourly_rate")
    assert isinstance(rate, TextField)
    rate.editor.setFocus()
    rate.editor.selectAll()
    qtbot.keyClicks(rate.editor, "eighty")
    qtbot.keyClick(rate.editor, KEY.Key_Return)
    assert rate.fault
    rate.editor.selectAll()
    qtbot.keyClicks(rate.editor, "80")
    QApplication.processEvents()
    handle = dialog.windowHandle()
    place = part.add_button.mapTo(dialog, part.add_button.rect().center())
    QTest.mousePress(handle, Qt.MouseButton.LeftButton, NO, place)
    qtbot.wait(60)
    assert not rate.fault
    QTest.mouseRelease(handle, Qt.MouseButton.LeftButton, NO, place)
    qtbot.waitUntil(lambda: part.model.rowCount() == 1, timeout=2000)
    qtbot.waitUntil(lambda: not rate._fault_label.isVisible(), timeout=2000)


def test_typing_that_is_not_left_yet_counts(qtbot: QtBot, opened: Open) -> None:
    dialog = opened(terms_of(labour={"tasks": [{"title": "Journey", "hours": 4}]}))
    part = section(dialog, "labour.tasks")
    editor = edit_cell(qtbot, part, 0, 2)
    assert isinstance(editor, QLineEdit)
    editor.setText("5")
    dialog.accept()
    assert dialog.terms is not None
    assert dialog.terms.labour.tasks[0].hours == 5


def test_subjects_are_turned_by_keys_and_return_does_not_end_the_form(qtbot: QtBot, opened: Open) -> None:
    dialog = opened(terms_of())
    qtbot.keyClick(dialog, KEY.Key_Return)
    assert dialog.isVisible()
    keys = {one.key().toString(): one for one in dialog.findChildren(QShortcut)}
    for key in ("Ctrl+PgDown", "Ctrl+PgUp", "Ctrl+PgUp"):
        keys[key].activated.emit()
    assert dialog.subject_list.currentRow() == len(SUBJECTS) - 1
    write(qtbot, dialog, "heading.number", "HS-5")
    keys["Ctrl+Z"].activated.emit()
    assert dialog.draft.texts["heading.number"] == "HS-1"
    keys["Ctrl+Return"].activated.emit()
    assert dialog.terms == terms_of()


def test_tab_goes_through_a_page_in_reading_order_and_leaves_a_table_behind_its_last_cell(
    qtbot: QtBot, opened: Open
) -> None:
    dialog = opened(terms_of(labour={"tasks": [{"title": "Journey", "hours": 4}]}))
    part = section(dialog, "labour.tasks")
    chain = [dialog.subject_list]
    while len(chain) < 5000:
        following = chain[-1].nextInFocusChain()
        if following is dialog.subject_list:
            break
        chain.append(following)
    order = [one for one in chain if one.focusPolicy() & Qt.FocusPolicy.TabFocus and one.isVisibleTo(dialog)]
    rate = field(dialog, "labour.hourly_rate")
    assert isinstance(rate, TextField)
    wanted = [dialog.subject_list, rate.editor, part.add_button, part.table, dialog.accept_button]
    assert [one for one in order if one in wanted] == wanted
    part.table.go_to(0, 3)
    qtbot.keyClick(part.table, KEY.Key_Tab)
    assert dialog.focusWidget() is not part.table


@pytest.mark.parametrize("start", [True, False])
def test_the_form_fits_a_small_screen(start: bool, opened: Open) -> None:
    dialog = opened(terms_of() if start else None)
    least = dialog.minimumSizeHint()
    assert least.width() <= 1240
    assert least.height() <= 660
