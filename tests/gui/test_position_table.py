"""A table of positions in the window: read, mapped, repaired in place, taken in one step that can be undone."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QStandardItem, QStandardItemModel
from pytestqt.qtbot import QtBot

from gui.table_dialogs import drive, looked, take
from spoutline.bootstrap import Workbench
from spoutline.gui.dialogs.table_intake import TableIntakeDialog
from spoutline.gui.session import Session
from spoutline.gui.widgets.cell_table import CellTable
from spoutline.gui.widgets.marks import MarkDelegate
from spoutline.gui.window.main_window import MainWindow
from spoutline.model.survey import DispenserType
from spoutline.planning.table_intake.repairs import ReplaceWord
from spoutline.units.accepted import UnitSystem

MESSY = (
    "Fern Hollow; hoses\n"
    "Hose;Pump;Fuel;Percent;Outlet height;Pump model\n"
    "Island 1\n"
    "9A;9;gasolin;10;7 ft;Rushwater 2\n"
    "9B;9;gasolin;10,5;2,1 m;\n"
    "Total;;;2;;\n"
)


@pytest.fixture(autouse=True)
def maps_of_their_own(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Remember tables in a folder of the test."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))


def positions(session: Session) -> dict[str, float]:
    return {one.label: one.liquid.blend_percent for one in session.survey.positions}


def test_a_messy_table_is_repaired_in_place_and_taken_in_one_step(
    qtbot: QtBot,
    bench: Workbench,
    window: MainWindow,
    session: Session,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    bench.dispenser_types().put(
        [DispenserType.model_validate({"name": "Rushwater II", "hook": {"height_m": 1.05, "distance_m": 0.3}})]
    )
    path = tmp_path / "hoses.csv"
    path.write_text(MESSY, encoding="utf-8")
    before = session.survey

    def repair(dialog: TableIntakeDialog) -> None:
        panel = dialog.panel
        assert not panel.take_button.isEnabled()
        told = {one.address.rsplit(" ", 1)[1]: one for one in panel.look.reports}
        assert set(told) == {"C4", "C5", "D5", "E5", "F4"}
        assert (told["C4"].nearest, told["F4"].nearest) == ("gasoline", "Rushwater II")
        place = next(n for n, one in enumerate(panel.look.reports) if one.field == "liquid.family")
        panel.findings.report_table.pick_row(place)
        assert "(2)" in panel.findings.replace_button.text()
        qtbot.mouseClick(panel.findings.replace_button, Qt.MouseButton.LeftButton)
        looked(qtbot, dialog)
        qtbot.mouseClick(panel.options.comma_box, Qt.MouseButton.LeftButton)
        looked(qtbot, dialog)
        panel.repair(ReplaceWord(field="dispenser_type", word="Rushwater 2", by="Rushwater II"))
        looked(qtbot, dialog)
        assert [str(one.problem()) for one in panel.look.reports] == []
        height = next(place for place, one in enumerate(panel.preview.columns) if one.slot == "outlet.height_m")
        assert panel.preview.index(1, height).data() == "2.134 m"  # 7 x 0.3048
        box = panel.options.units_box
        box.setCurrentIndex(box.findData(UnitSystem.US))
        box.activated.emit(box.currentIndex())
        looked(qtbot, dialog)
        assert panel.preview.index(1, height).data() == "7 ft"
        kinds = [row.kind.value for row in panel.look.rows]
        assert kinds == ["section", "part", "part", "total"]
        changes = panel.look.result.changes
        assert (changes.new, changes.changed, changes.missing) == (2, 0, len(before.positions))
        take(qtbot, dialog)

    drive(monkeypatch, qtbot, None, repair)
    window.verbs.positions.read_table(path)  # type: ignore[attr-defined]
    assert len(session.survey.positions) == len(before.positions) + 2
    first, second = session.survey.positions[-2:]
    assert (first.label, first.outlet.height_m) == ("9A", pytest.approx(7 * 0.3048))  # 1 ft = 0.3048 m exactly
    assert (second.liquid.blend_percent, second.outlet.height_m) == (10.5, 2.1)
    assert [one.dispenser_type.name for one in (first, second) if one.dispenser_type] == ["Rushwater II"] * 2
    assert second.hook.height_m == 1.05
    session.undo_stack.undo()
    assert session.survey == before


def test_a_table_is_read_again_as_it_was_and_changes_what_is_there(
    qtbot: QtBot, window: MainWindow, session: Session, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "list.csv"
    path.write_text("Hose,Stuff,Share\n9A,diesel,5\n9B,gasoline,10\n", encoding="utf-8")

    def map_columns(dialog: TableIntakeDialog) -> None:
        boxes = dialog.panel.column_list.field_boxes
        for place, key in ((1, "liquid.family"), (2, "liquid.blend_percent")):
            boxes[place].setCurrentIndex(boxes[place].findData(key))
            boxes[place].activated.emit(boxes[place].currentIndex())
        take(qtbot, dialog)

    monkeypatch.setattr(TableIntakeDialog, "exec", lambda dialog: run_when_open(qtbot, dialog, map_columns))
    window.verbs.positions.read_table(path)  # type: ignore[attr-defined]
    assert positions(session)["9A"] == 5
    path.write_text("Hose,Stuff,Share\n9A,diesel,20\n9B,gasoline,10\n", encoding="utf-8")
    seen: list[tuple[str, str, str]] = []

    def again(dialog: TableIntakeDialog) -> None:
        assert dialog.panel.opened is not None
        assert dialog.panel.opened.is_recognised
        changed = [one for one in dialog.panel.look.result.changes.changes if one.kind == "changed"]
        seen.extend((one.name, one.fields[0].before, one.fields[0].after) for one in changed)
        qtbot.mouseClick(dialog.panel.missing_box, Qt.MouseButton.LeftButton)
        take(qtbot, dialog)

    drive(monkeypatch, qtbot, None, again)
    window.verbs.positions.read_table(path)  # type: ignore[attr-defined]
    assert seen == [("9A", "5", "20")]
    assert positions(session) == {"9A": 20, "9B": 10}


def run_when_open(qtbot: QtBot, dialog: TableIntakeDialog, act: object) -> int:
    """Do something once the columns are shown, though the table cannot be looked at yet."""
    qtbot.waitUntil(lambda: bool(dialog.panel.column_list.field_boxes), timeout=20_000)
    act(dialog)  # type: ignore[operator]
    return int(dialog.result())


def test_columns_of_a_long_table_are_as_wide_as_some_of_its_rows(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    """Measured by all of a thousand rows of a dozen columns, the window stands still for seconds."""
    model = QStandardItemModel(1_000, 12)
    model.setItem(3, 0, QStandardItem("1A regular, near side of the first dispenser"))
    table = CellTable("Rows")
    qtbot.addWidget(table)
    table.setModel(model)
    measured = []
    size = MarkDelegate.sizeHint

    def counted(one: MarkDelegate, *given: object) -> QSize:
        measured.append(1)
        return size(one, *given)  # type: ignore[arg-type]

    monkeypatch.setattr(MarkDelegate, "sizeHint", counted)
    table.resizeColumnsToContents()
    assert table.columnWidth(0) > 2 * table.columnWidth(1)
    assert len(measured) < 150 * model.columnCount()
