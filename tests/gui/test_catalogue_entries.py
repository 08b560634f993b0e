"""Entries of a draft changed on the keeper's page: in a form, several at once, from a similar part, and taken back."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, Qt, QTimer, QUrl
from PySide6.QtGui import QDropEvent, QImage
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.catalogue.shelf_lookup import EntryChange
from spoutline.gui.dialogs.cut_hose import CutHoseDialog
from spoutline.gui.dialogs.entry_form import EntryDialog
from spoutline.gui.dialogs.families import FamiliesDialog
from spoutline.gui.dialogs.made_up import MadeUpDialog
from spoutline.gui.dialogs.part_files import PartFilesDialog
from spoutline.gui.dialogs.set_field import SetFieldDialog
from spoutline.gui.dialogs.similar_part import SimilarPartDialog
from spoutline.gui.pages.catalogues.entries_panel import EntriesPanel
from spoutline.gui.pages.catalogues.page import CataloguesPage
from spoutline.gui.widgets.answer_field import ListField, TextField
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry, Origin
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef

NAME = "Office list"
DRAFT = EditionRef(NAME, is_draft=True)
MAKER = "Quillwort Works"


@pytest.fixture
def bench(database_to_copy: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Workbench]:
    """Yield use cases over a book whose own draft holds three hoses of which little is known, and a described one."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    shutil.copy(database_to_copy, tmp_path / "own.sqlite3")
    bench = open_workbench(Settings(database=str(tmp_path / "own.sqlite3"), profiles=tmp_path / "profiles"))
    shelf = bench.catalogues().shelf()
    shelf.create(NAME)
    described = next(one for one in shelf.entries(EditionRef(DEMONSTRATION)) if one.kind is PartKind.CURB_HOSE)
    with shelf.draft(NAME) as desk:
        desk.put(
            CatalogueEntry(number=f"QX-{place}", maker=MAKER, kind=PartKind.CURB_HOSE, name=f"Hose {place}")
            for place in (1, 2, 3)
        )
        desk.put([described.model_copy(update={"number": "ZZ-9"})])
    yield bench
    bench.close()


@pytest.fixture
def panel(window: MainWindow, workplace: Workplace, qtbot: QtBot) -> EntriesPanel:
    qtbot.keyClick(window, Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
    page: CataloguesPage = workplace.catalogues_page
    qtbot.waitUntil(lambda: bool(page.in_hand.rows), timeout=20_000)
    page.shelf_panel.table.pick_row([row.ref for row in page.in_hand.rows].index(DRAFT))
    page.tabs.setCurrentWidget(page.entries_panel)
    qtbot.waitUntil(lambda: len(page.entries_panel.model.records) == 4, timeout=20_000)
    return page.entries_panel


def click(qtbot: QtBot, widget: QWidget) -> None:
    assert widget.isEnabled(), widget
    qtbot.mouseClick(widget, Qt.MouseButton.LeftButton)


def held(bench: Workbench, number: str) -> CatalogueEntry | None:
    return bench.catalogues().shelf().entry(DRAFT, PartRef(number, MAKER))


def in_dialog(kind: type[QWidget], act: object) -> None:
    """Do something in the next dialog of a kind that is shown."""

    def when_there() -> None:
        dialog = QApplication.activeModalWidget()
        if isinstance(dialog, kind):
            try:
                act(dialog)  # type: ignore[operator]
            finally:
                told = dialog.fault_label.text() if dialog.isVisible() else ""
                dialog.close()  # a dialog that nobody closes stops the test
            assert not told
        else:
            QTimer.singleShot(20, when_there)

    QTimer.singleShot(0, when_there)


def write(qtbot: QtBot, dialog: EntryDialog, key: str, text: str) -> None:
    field = dialog.fields[key]
    assert isinstance(field, TextField)
    field.editor.selectAll()
    qtbot.keyClicks(field.editor, text)


def select(panel: EntriesPanel, *rows: int) -> None:
    panel.table.clearSelection()
    for row in rows:
        panel.table.selectRow(row) if row == rows[0] else panel.table.selectionModel().select(
            panel.model.index(row, 0),
            panel.table.selectionModel().SelectionFlag.Select | panel.table.selectionModel().SelectionFlag.Rows,
        )


def test_a_part_is_filled_in_checked_as_it_is_typed_and_the_change_taken_back(
    panel: EntriesPanel, qtbot: QtBot, bench: Workbench
) -> None:
    seen: list[str] = []

    def fill(dialog: EntryDialog) -> None:
        write(qtbot, dialog, "bore_mm", '3/4"')
        seen.append(dialog.fields["bore_mm"].note)
        write(qtbot, dialog, "length_m", "far")
        seen.append(dialog.fields["length_m"].fault)
        click(qtbot, dialog.accept_button)
        assert dialog.isVisible()
        assert held(bench, "QX-1") == before
        write(qtbot, dialog, "length_m", "12 ft")
        assert dialog.fields["length_m"].fault == ""
        click(qtbot, dialog.accept_button)

    before = held(bench, "QX-1")
    select(panel, 0)
    in_dialog(EntryDialog, fill)
    click(qtbot, panel.edit_button)
    after = held(bench, "QX-1")
    assert after is not None
    assert after.figure("length_m") == 3.6576  # 0.3048 m to the foot, NIST SP 811 B.8
    assert seen[0] == "Read as 19.05 mm."  # 25.4 mm to the inch, NIST SP 811 B.8
    assert seen[1]
    qtbot.waitUntil(panel.back_button.isEnabled, timeout=20_000)
    click(qtbot, panel.back_button)
    assert held(bench, "QX-1") == before
    assert not panel.back_button.isEnabled() or panel.steps.last is None


def test_a_new_part_gets_the_figures_of_its_kind(panel: EntriesPanel, qtbot: QtBot, bench: Workbench) -> None:
    def fill(dialog: EntryDialog) -> None:
        assert "bore_mm" not in dialog.fields
        dialog.number_edit.setText("QX-7")
        kind = dialog.fields["kind"]
        assert isinstance(kind, ListField)
        kind.editor.setFocus()
        kind.editor.setCurrentIndex(1 + list(PartKind).index(PartKind.CURB_HOSE))
        kind.editor.activated.emit(kind.editor.currentIndex())
        write(qtbot, dialog, "bore_mm", "19")
        click(qtbot, dialog.accept_button)

    in_dialog(EntryDialog, fill)
    click(qtbot, panel.new_button)
    made = held(bench, "QX-7")
    assert made is not None
    assert (made.kind, made.figure("bore_mm")) == (PartKind.CURB_HOSE, 19)


def test_a_successor_that_leads_back_is_told_at_its_field(panel: EntriesPanel, qtbot: QtBot, bench: Workbench) -> None:
    faults: list[str] = []

    def supersede(number: str) -> object:
        def fill(dialog: EntryDialog) -> None:
            write(qtbot, dialog, "superseded_by", number)
            click(qtbot, dialog.accept_button)
            if dialog.isVisible():
                faults.append(dialog.fields["superseded_by"].fault)
                dialog.reject()

        return fill

    for row, number in ((0, "QX-2"), (1, "QX-1")):
        qtbot.waitUntil(lambda: len(panel.model.records) == 4, timeout=20_000)
        select(panel, row)
        in_dialog(EntryDialog, supersede(number))
        click(qtbot, panel.edit_button)
    assert [fault.endswith("a part that does not lead back to this one") for fault in faults] == [True]
    second = held(bench, "QX-2")
    assert second is not None
    assert second.successor is None


def test_one_field_of_several_parts_is_filled_and_taken_back_as_one(
    panel: EntriesPanel, qtbot: QtBot, bench: Workbench
) -> None:
    def fill(dialog: SetFieldDialog) -> None:
        dialog.field_box.setCurrentIndex(dialog.field_box.findData("lead_days"))
        assert isinstance(dialog.answer, TextField)
        qtbot.keyClicks(dialog.answer.editor, "7")
        click(qtbot, dialog.accept_button)

    select(panel, 0, 1, 2)
    in_dialog(SetFieldDialog, fill)
    click(qtbot, panel.field_button)
    assert [getattr(held(bench, f"QX-{place}"), "lead_days", None) for place in (1, 2, 3)] == [7, 7, 7]
    qtbot.waitUntil(panel.back_button.isEnabled, timeout=20_000)
    click(qtbot, panel.back_button)
    assert [getattr(held(bench, f"QX-{place}"), "lead_days", 0) for place in (1, 2, 3)] == [None, None, None]


def test_figures_of_a_similar_part_are_taken_over_and_say_so_in_the_form(
    panel: EntriesPanel, qtbot: QtBot, bench: Workbench
) -> None:
    def choose(dialog: SimilarPartDialog) -> None:
        qtbot.keyClicks(dialog.search_edit, "zz-9")
        assert [line.entry.number for line in dialog.model.records] == ["ZZ-9"]
        click(qtbot, dialog.accept_button)

    select(panel, 0, 1)
    in_dialog(SimilarPartDialog, choose)
    click(qtbot, panel.similar_button)
    made = held(bench, "QX-2")
    assert made is not None
    assert {cell.origin for cell in made.figures} == {Origin.SIMILAR}
    told: list[str] = []

    def look(dialog: EntryDialog) -> None:
        told.append(dialog.fields["bore_mm"].help_text)
        dialog.reject()

    qtbot.waitUntil(
        lambda: len(panel.model.records) == 4 and bool(panel.model.records[1].entry.figures), timeout=20_000
    )
    select(panel, 1)
    in_dialog(EntryDialog, look)
    click(qtbot, panel.edit_button)
    assert "from the similar part" in told[0]
    assert "ZZ-9" in told[0]


def test_what_somebody_else_changed_meanwhile_is_not_written_over(
    panel: EntriesPanel, qtbot: QtBot, bench: Workbench
) -> None:
    before = held(bench, "QX-3")
    assert before is not None
    select(panel, 2)
    click(qtbot, panel.out_button)
    assert held(bench, "QX-3") is None
    newer = before.model_copy(update={"name": "By a colleague"})
    bench.catalogues().change_entries(NAME, [EntryChange(newer.ref, None, newer)])
    panel.take_back()
    assert "holds it otherwise by now" in panel.fault_label.text()
    assert held(bench, "QX-3") == newer


def test_an_edition_is_only_read(panel: EntriesPanel, workplace: Workplace, qtbot: QtBot) -> None:
    page = workplace.catalogues_page
    page.shelf_panel.table.pick_row([row.facts.name for row in page.in_hand.rows].index(DEMONSTRATION))
    qtbot.waitUntil(lambda: len(panel.model.records) == 300, timeout=20_000)
    select(panel, 0)
    for button in (panel.new_button, panel.edit_button, panel.field_button, panel.similar_button, panel.out_button):
        assert not button.isEnabled()


def test_hose_is_cut_to_length_and_taken_back(qtbot: QtBot, bench: Workbench, panel: EntriesPanel) -> None:
    numbers = [line.entry.number for line in panel.model.records]
    select(panel, numbers.index("ZZ-9"))
    maker = panel.selected[0].maker

    def lengths() -> list[str]:
        entries = bench.catalogues().shelf().entries(DRAFT)
        return [one.number for one in entries if one.number.startswith("ZC")]

    def fill(dialog: CutHoseDialog) -> None:
        for edit, text in (
            (dialog.number_edit, "ZC-7"),
            (dialog.shortest_edit, "8 ft"),
            (dialog.longest_edit, "9 ft"),
            (dialog.step_edit, "6 inch"),
            (dialog.price_edit, "4.25 USD"),
            (dialog.fitted_edit, "18 USD"),
        ):
            qtbot.keyClicks(edit, text)
        assert "step" in dialog.fault_label.text().casefold()
        assert not dialog.accept_button.isEnabled()
        dialog.step_edit.clear()
        qtbot.keyClicks(dialog.step_edit, "6 in")
        # 8 x 4.25 + 18 and 9 x 4.25 + 18
        assert "3 lengths, from ZC-7 8 ft (52.00 USD) to ZC-7 9 ft (56.25 USD)" in dialog.state_label.text()
        click(qtbot, dialog.accept_button)

    in_dialog(CutHoseDialog, fill)
    click(qtbot, panel.cut_button)
    assert lengths() == ["ZC-7 8 ft", "ZC-7 8 ft 6 in", "ZC-7 9 ft"]
    made = bench.catalogues().shelf().entry(DRAFT, PartRef("ZC-7 8 ft 6 in", maker))
    assert made is not None
    assert made.prices[0].minor == 5413  # 8.5 x 4.25 + 18 = 54.125, half a cent up
    qtbot.waitUntil(panel.back_button.isEnabled, timeout=20_000)
    click(qtbot, panel.back_button)
    assert lengths() == []


def test_a_set_is_sold_made_up_and_taken_back(qtbot: QtBot, bench: Workbench, panel: EntriesPanel) -> None:
    demonstration = bench.catalogues().shelf()
    wanted = [PartRef("TH-W102", "Thistledown Hosewrights"), PartRef("LS-B101", "Larkspindle Couplings")]
    found = [demonstration.entry(EditionRef(DEMONSTRATION), ref) for ref in wanted]
    with demonstration.draft(NAME) as desk:
        desk.put(one for one in found if one is not None)
    panel.refresh()
    qtbot.waitUntil(lambda: any(line.entry.ref == wanted[0] for line in panel.model.records), timeout=20_000)
    rows = [at for at, line in enumerate(panel.model.records) if line.entry.ref in wanted]
    select(panel, *rows)

    def made() -> dict[str, tuple[str, int]]:
        entries = demonstration.entries(DRAFT)
        return {one.number: (one.maker, one.prices[0].minor) for one in entries if one.number.startswith("ZM 1")}

    def fill(dialog: MadeUpDialog) -> None:
        first = dialog.part_list.item(0).text()
        assert "TH-W102" in first  # the whip hose hangs at the dispenser, however the list stood
        assert not dialog.accept_button.isEnabled()
        qtbot.keyClicks(dialog.number_edit, "ZM 1")
        qtbot.keyClicks(dialog.price_edit, "55.5 US")
        assert "currency" in dialog.fault_label.text()
        qtbot.keyClicks(dialog.price_edit, "D")
        click(qtbot, dialog.down_button)  # these two join either way
        assert dialog.part_list.item(1).text() == first
        click(qtbot, dialog.up_button)
        qtbot.keyClicks(dialog.maker_edit, "Zinnia Makeup")
        assert "ZM 1: Made-up set: whip hose, breakaway, 2 parts" in dialog.state_label.text()
        click(qtbot, dialog.accept_button)

    in_dialog(MadeUpDialog, fill)
    click(qtbot, panel.made_up_button)
    assert made() == {"ZM 1": ("Zinnia Makeup", 5550), "ZM 1 part 2": ("Zinnia Makeup", 0)}
    qtbot.waitUntil(panel.back_button.isEnabled, timeout=20_000)
    click(qtbot, panel.back_button)
    assert made() == {}


def test_pictures_and_documents_are_kept_with_a_part(
    qtbot: QtBot, bench: Workbench, panel: EntriesPanel, tmp_path: Path
) -> None:
    paths = tmp_path / "front.png", tmp_path / "note.txt"
    QImage(60, 40, QImage.Format.Format_RGB32).save(str(paths[0]))
    paths[1].write_text("no picture")
    select(panel, 0)
    ref = panel.selected[0].ref

    def held() -> list[str]:
        entry = bench.catalogues().shelf().entry(DRAFT, ref)
        assert entry is not None
        return [one.title for one in entry.files]

    def drop(dialog: PartFilesDialog, path: Path) -> None:
        data = QMimeData()
        data.setUrls([QUrl.fromLocalFile(str(path))])
        place, action, button = QPointF(9, 9), Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton
        dialog.dropEvent(QDropEvent(place, action, data, button, Qt.KeyboardModifier.NoModifier))

    def keep(dialog: PartFilesDialog) -> None:
        assert not dialog.out_button.isEnabled()
        qtbot.keyClicks(dialog.title_edit, "Seen from the hose")
        drop(dialog, paths[0])
        assert held() == ["Seen from the hose"]
        assert not dialog.list.item(0).icon().isNull()
        drop(dialog, paths[1])
        assert "a PNG or JPEG picture is needed" in dialog.fault_label.text()
        drop(dialog, paths[0])
        assert held() == ["Seen from the hose", "front"]
        click(qtbot, dialog.out_button)
        assert held() == ["Seen from the hose"]
        dialog.accept()

    in_dialog(PartFilesDialog, keep)
    click(qtbot, panel.files_button)
    assert held() == ["Seen from the hose"]


def test_figures_of_a_family_are_set_once_and_every_part_of_it_follows(
    panel: EntriesPanel, qtbot: QtBot, bench: Workbench
) -> None:
    def give(dialog: SetFieldDialog) -> None:
        dialog.field_box.setCurrentIndex(dialog.field_box.findData("family"))
        assert isinstance(dialog.answer, TextField)
        qtbot.keyClicks(dialog.answer.editor, "Twin braid")
        click(qtbot, dialog.accept_button)

    def make(dialog: FamiliesDialog) -> None:
        click(qtbot, dialog.new_button)
        qtbot.keyClicks(dialog.name_edit, "Twin braid")
        field = dialog.fields["bore_mm"]
        assert isinstance(field, TextField)
        qtbot.keyClicks(field.editor, "3/4 in")
        assert field.note == "Read as 19.05 mm."  # 25.4 mm to the inch, NIST SP 811 B.8
        click(qtbot, dialog.save_button)
        assert "2" in dialog.state_label.text()
        field = dialog.fields["bore_mm"]
        assert isinstance(field, TextField)
        field.editor.selectAll()
        qtbot.keyClicks(field.editor, "far")
        click(qtbot, dialog.save_button)
        assert dialog.fields["bore_mm"].fault
        field.editor.selectAll()
        qtbot.keyClicks(field.editor, "25.4")
        click(qtbot, dialog.save_button)
        assert not dialog.fields["bore_mm"].fault
        click(qtbot, dialog.back_button)  # to 3/4 in, then to no family at all
        back = held(bench, "QX-1")
        assert back is not None
        assert back.figure("bore_mm") == 19.05
        click(qtbot, dialog.back_button)
        assert not dialog.back_button.isEnabled()
        back = held(bench, "QX-1")
        assert back is not None
        assert back.figure("bore_mm") is None
        click(qtbot, dialog.new_button)
        qtbot.keyClicks(dialog.name_edit, "Twin braid")
        field = dialog.fields["bore_mm"]
        assert isinstance(field, TextField)
        qtbot.keyClicks(field.editor, "25.4")
        click(qtbot, dialog.save_button)

    select(panel, 0, 1)
    in_dialog(SetFieldDialog, give)
    click(qtbot, panel.field_button)
    in_dialog(FamiliesDialog, make)
    click(qtbot, panel.families_button)
    for number, wanted in (("QX-1", 25.4), ("QX-2", 25.4), ("QX-3", None)):
        entry = held(bench, number)
        assert entry is not None
        assert entry.figure("bore_mm") == wanted
        assert {cell.origin for cell in entry.figures} == ({Origin.FAMILY} if wanted else set())

    told: list[str] = []

    def look(dialog: EntryDialog) -> None:
        told.append(dialog.fields["bore_mm"].help_text)
        write(qtbot, dialog, "bore_mm", "19.05")
        click(qtbot, dialog.accept_button)

    qtbot.waitUntil(lambda: panel.model.records[0].entry.figure("bore_mm") == 25.4, timeout=20_000)
    select(panel, 0)
    in_dialog(EntryDialog, look)
    click(qtbot, panel.edit_button)
    assert "from the family Twin braid" in told[0]
    own = held(bench, "QX-1")
    assert own is not None
    assert [(cell.value, cell.origin) for cell in own.figures] == [(19.05, Origin.STATED)]
    qtbot.waitUntil(panel.back_button.isEnabled, timeout=20_000)
    click(qtbot, panel.back_button)
    back = held(bench, "QX-1")
    assert back is not None
    assert [(cell.value, cell.origin) for cell in back.figures] == [(25.4, Origin.FAMILY)]


def test_the_ends_of_a_part_are_drawn_as_they_are_written(panel: EntriesPanel, qtbot: QtBot) -> None:
    seen: list[str] = []

    def look(dialog: EntryDialog) -> None:
        for text in ("", "NPT 3/4 mal", "NPT 3/4 male single"):
            write(qtbot, dialog, "inlet", text) if text else None
            drawing = dialog.ends_view.drawing
            assert drawing is not None
            assert dialog.ends_view.isVisible()
            seen.append(drawing.description)
        dialog.reject()

    select(panel, 0)
    in_dialog(EntryDialog, look)
    click(qtbot, panel.edit_button)
    assert seen[0] == seen[1]  # what is no port yet is drawn as none
    assert "3/4 NPT" not in seen[1]
    assert "3/4 NPT male" in seen[2]
