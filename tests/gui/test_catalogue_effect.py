"""What an edition does, shown before it is published; exchange files and the invented catalog on the keeper's page."""

from __future__ import annotations

import shutil
import threading
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.catalogues import CatalogueService
from spoutline.gui.dialogs.exchange_import import ExchangeImportDialog
from spoutline.gui.pages.catalogues.chosen import DIFFERENCE, EFFECT, SHELF, SURVEYS
from spoutline.gui.pages.catalogues.effect_panel import EffectPanel
from spoutline.gui.pages.catalogues.page import CataloguesPage
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.faults import Cancelled
from spoutline.model.part import PartKind
from spoutline.planning.keeping.effect import Effect

pytestmark = pytest.mark.plans_anew  # a draft has no fingerprint by which plans of it could be told apart
NAME = "Office list"
DRAFT = EditionRef(NAME, is_draft=True)


@pytest.fixture(scope="module")
def with_own_catalogue(database_to_copy: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a book whose own catalog has one edition, the parts of the invented one; made once, to copy."""
    folder = tmp_path_factory.mktemp("office")
    path = Path(shutil.copy(database_to_copy, folder / "office.sqlite3"))
    bench = open_workbench(Settings(database=str(path), profiles=folder))
    service = bench.catalogues()
    service.create(NAME)
    with service.shelf().draft(NAME) as desk:
        desk.put(service.shelf().entries(EditionRef(DEMONSTRATION)))
    service.publish(NAME, notes="as invented", publisher="Ada Fenn", on=date(2026, 11, 2))
    bench.close()
    return path


@pytest.fixture
def bench(with_own_catalogue: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Workbench]:
    """Yield use cases over a copy of the book with a catalog of its own."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    shutil.copy(with_own_catalogue, tmp_path / "own.sqlite3")
    bench = open_workbench(Settings(database=str(tmp_path / "own.sqlite3"), profiles=tmp_path / "profiles"))
    yield bench
    bench.close()


@pytest.fixture
def page(window: MainWindow, workplace: Workplace, qtbot: QtBot) -> CataloguesPage:
    qtbot.keyClick(window, Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
    page = workplace.catalogues_page
    qtbot.waitUntil(lambda: page.in_hand.row is not None, timeout=20_000)
    return page


def click(qtbot: QtBot, widget: QWidget) -> None:
    assert widget.isEnabled(), widget
    qtbot.mouseClick(widget, Qt.MouseButton.LeftButton)


def begin_planning(qtbot: QtBot, workplace: Workplace, panel: EffectPanel) -> None:
    """Press the button once all is read: catalogs that are read anew forget what was planned before."""
    jobs = workplace.context.jobs
    qtbot.waitUntil(lambda: not any(map(jobs.is_at_work, (SHELF, DIFFERENCE, SURVEYS))), timeout=20_000)
    click(qtbot, panel.plan_button)


def plan_with_both(qtbot: QtBot, workplace: Workplace, panel: EffectPanel) -> None:
    """Plan the chosen surveys with both editions and wait for what it says of each."""
    begin_planning(qtbot, workplace, panel)
    qtbot.waitUntil(lambda: not workplace.context.jobs.is_at_work(EFFECT), timeout=120_000)
    assert panel.effect_model.records, panel.state_label.text()


def take_in_hand(page: CataloguesPage, qtbot: QtBot, ref: EditionRef) -> None:
    """Read the catalogs anew and pick a row of them."""
    page.refresh()
    qtbot.waitUntil(lambda: ref in [row.ref for row in page.in_hand.rows], timeout=20_000)
    page.shelf_panel.table.pick_row([row.ref for row in page.in_hand.rows].index(ref))
    qtbot.waitUntil(lambda: page.in_hand.row is not None and page.in_hand.row.ref == ref, timeout=20_000)


def change_draft(bench: Workbench, *, without: PartKind, cheaper: PartKind) -> None:
    """Take every part of a kind out of the draft, and a cent of every price of another kind."""
    shelf = bench.catalogues().shelf()
    entries = list(shelf.entries(DRAFT))
    with shelf.draft(NAME) as desk:
        desk.take_out([entry.ref for entry in entries if entry.kind is without])
        desk.put(
            entry.model_copy(
                update={"prices": tuple(price.model_copy(update={"minor": price.minor - 1}) for price in entry.prices)}
            )
            for entry in entries
            if entry.kind is cheaper
        )


def test_sets_that_break_are_told_with_the_part_that_is_gone(
    page: CataloguesPage, workplace: Workplace, qtbot: QtBot, bench: Workbench
) -> None:
    change_draft(bench, without=PartKind.NOZZLE, cheaper=PartKind.SWIVEL)
    take_in_hand(page, qtbot, DRAFT)
    panel = page.effect_panel
    page.tabs.setCurrentWidget(panel)
    assert panel.pair == (EditionRef(NAME, 1), DRAFT)
    qtbot.waitUntil(lambda: workplace.session.stored.id in panel.survey_ids, timeout=20_000)
    plan_with_both(qtbot, workplace, panel)
    rows = panel.effect_model.records
    labels = [position.label for position in workplace.session.survey.positions]
    assert [row.position.label for row in rows if row.position] == labels
    assert {row.position.effect for row in rows if row.position} == {Effect.BREAKS}
    nozzle = rows[0].position.before[-1] if rows[0].position else None
    told = panel.detail.toPlainText()
    assert f"{nozzle} is gone" in told
    assert "no set" in told


def test_a_cheaper_part_makes_the_set_cheaper_by_as_much(
    page: CataloguesPage, workplace: Workplace, qtbot: QtBot, bench: Workbench
) -> None:
    change_draft(bench, without=PartKind.LABEL, cheaper=PartKind.SWIVEL)  # a label hangs in no set
    take_in_hand(page, qtbot, DRAFT)
    panel = page.effect_panel
    page.tabs.setCurrentWidget(panel)
    kinds = {entry.ref: entry.kind for entry in bench.catalogues().shelf().entries(DRAFT)}
    qtbot.waitUntil(lambda: bool(panel.difference_model.records), timeout=20_000)
    differ = [change for change in panel.difference_model.records if change.after is not None]
    assert {kinds[change.ref] for change in differ} == {PartKind.SWIVEL}
    qtbot.waitUntil(lambda: bool(panel.survey_ids), timeout=20_000)
    plan_with_both(qtbot, workplace, panel)
    found = [row.position for row in panel.effect_model.records if row.position is not None]
    assert found
    for effect in found:
        swivels = sum(kinds[ref] is PartKind.SWIVEL for ref in effect.after)
        assert (effect.effect, effect.difference_minor) == (Effect.CHEAPER, -swivels)
        assert {change.ref for change in effect.because} <= set(effect.after)


def test_planning_with_both_is_stopped(
    page: CataloguesPage, workplace: Workplace, qtbot: QtBot, bench: Workbench
) -> None:
    take_in_hand(page, qtbot, DRAFT)
    panel = page.effect_panel
    page.tabs.setCurrentWidget(panel)
    qtbot.waitUntil(lambda: bool(panel.survey_ids), timeout=20_000)
    begin_planning(qtbot, workplace, panel)
    assert panel.stop_button.isVisible()
    click(qtbot, panel.stop_button)
    assert not workplace.context.jobs.is_at_work(EFFECT)
    assert panel.state_label.text().startswith("Stopped.")
    assert panel.plan_button.isEnabled()


def test_a_survey_that_cannot_be_planned_is_told_and_the_others_go_on(
    page: CataloguesPage, workplace: Workplace, qtbot: QtBot, bench: Workbench
) -> None:
    there = workplace.session.stored.id
    site = workplace.session.survey.site.model_copy(update={"currency": "SEK", "name": "Elsewhere"})
    other = bench.book().create(workplace.session.survey.model_copy(update={"site": site})).id
    take_in_hand(page, qtbot, DRAFT)
    panel = page.effect_panel
    page.tabs.setCurrentWidget(panel)
    qtbot.waitUntil(lambda: panel.survey_list.count() == 2, timeout=20_000)
    panel.survey_list.item(0).setCheckState(Qt.CheckState.Checked)
    panel.survey_list.item(1).setCheckState(Qt.CheckState.Checked)
    assert set(panel.survey_ids) == {there, other}
    plan_with_both(qtbot, workplace, panel)
    (row,) = panel.effect_model.records
    assert row.site == "Elsewhere"
    assert "SEK" in row.fault
    assert panel.state_label.text() == "2 positions: as before: 2. 1 surveys cannot be planned with both."


@pytest.mark.parametrize("keeps_others", [True, False])
def test_an_exchange_file_goes_into_a_draft_as_a_person_says(
    page: CataloguesPage,
    qtbot: QtBot,
    bench: Workbench,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    keeps_others: bool,
) -> None:
    service = bench.catalogues()
    path = tmp_path / "office.zip"
    path.write_bytes(service.export(EditionRef(NAME, 1)))
    count = sum(1 for _ in service.shelf().entries(EditionRef(NAME, 1)))
    service.create("Second list")
    other = next(service.shelf().entries(EditionRef(NAME, 1))).model_copy(update={"number": "ZZ 1"})
    with service.shelf().draft("Second list") as desk:
        desk.put([other])
    draft = EditionRef("Second list", is_draft=True)
    take_in_hand(page, qtbot, draft)
    asked: list[ExchangeImportDialog] = []

    def answer(dialog: ExchangeImportDialog) -> int:
        asked.append(dialog)
        (dialog.beside_button if keeps_others else dialog.alone_button).click()
        dialog.accept()
        return dialog.result()

    monkeypatch.setattr(ExchangeImportDialog, "exec", answer)
    page.shelf_panel.read_from(path)
    wanted = count + 1 if keeps_others else count
    qtbot.waitUntil(
        lambda: page.in_hand.row is not None and page.in_hand.row.facts.draft_parts == wanted, timeout=60_000
    )
    assert len(asked) == 1
    assert (service.shelf().entry(draft, other.ref) is not None) is keeps_others


@pytest.mark.parametrize("step", ["import", "publish"])
def test_a_long_step_says_how_far_it_is_and_a_person_stops_it(
    page: CataloguesPage, qtbot: QtBot, bench: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    """A catalog of 100,000 parts takes a minute; the window goes on meanwhile, and one step is at work at a time."""
    service, panel = bench.catalogues(), page.shelf_panel
    begun, go_on = threading.Event(), threading.Event()

    def slow(*given: object, **_: object) -> None:
        watching = next(one for one in given if hasattr(one, "should_stop"))
        watching.on_progress(3, 100)
        begun.set()
        while not watching.should_stop():
            go_on.wait(0.01)
        raise Cancelled

    told: list[str] = []
    monkeypatch.setattr(panel, "_notify", told.append)
    monkeypatch.setattr(CatalogueService, "look_at_exchange" if step == "import" else "publish", slow)
    with service.shelf().draft(NAME) as desk:
        desk.put([next(service.shelf().entries(EditionRef(NAME, 1))).model_copy(update={"number": "ZZ 2"})])
    page.refresh()
    take_in_hand(page, qtbot, DRAFT)
    qtbot.waitUntil(panel.publish_button.isEnabled)
    if step == "import":
        panel.read_from(tmp_path / "office.zip")
    else:
        panel.publish_button.click()
    row = panel.progress_row
    qtbot.waitUntil(lambda: (row.bar.value(), row.bar.maximum()) == (3, 100))
    assert row.stop_button.isVisibleTo(panel)
    panel.name_edit.setText("Third list")
    for button in (panel.read_button, panel.publish_button, panel.create_button, panel.book_button):
        assert not button.isEnabled()
    row.stop_button.click()
    qtbot.waitUntil(row.bar.isHidden)
    assert told == ["Stopped: nothing was changed."]
    qtbot.waitUntil(panel.publish_button.isEnabled)
    assert panel.create_button.isEnabled()


def test_an_exchange_file_chosen_as_a_table_is_read_as_what_it_is(
    page: CataloguesPage, qtbot: QtBot, bench: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "office.zip"
    path.write_bytes(bench.catalogues().export(EditionRef(NAME, 1)))
    take_in_hand(page, qtbot, DRAFT)
    page.show_import()
    asked: list[str] = []

    def choose(*given: object) -> tuple[str, str]:
        asked.append(str(given[-1]))
        return str(path), ""

    monkeypatch.setattr(QFileDialog, "getOpenFileName", choose)
    monkeypatch.setattr(ExchangeImportDialog, "exec", lambda dialog: asked.append(dialog.windowTitle()) or 0)
    page.import_panel.ask_for_file()
    qtbot.waitUntil(lambda: len(asked) == 2, timeout=60_000)
    assert "*.zip" in asked[0]
    assert asked[1] == "Read an exchange file"
    assert page.tabs.currentWidget() is page.shelf_panel


def test_a_file_that_is_no_exchange_file_changes_nothing_and_is_told(
    page: CataloguesPage, qtbot: QtBot, tmp_path: Path
) -> None:
    path = tmp_path / "office.zip"
    path.write_bytes(b"no archive")
    take_in_hand(page, qtbot, DRAFT)
    page.shelf_panel.read_from(path)
    qtbot.waitUntil(lambda: "office.zip" in page.shelf_panel.fault_label.text(), timeout=20_000)


def test_the_invented_catalog_goes_only_where_the_book_plans_with_another(
    page: CataloguesPage, qtbot: QtBot, bench: Workbench
) -> None:
    panel = page.shelf_panel
    assert panel.demonstration_box.isChecked()
    panel.demonstration_box.click()
    qtbot.waitUntil(lambda: "choose another catalog" in panel.fault_label.text(), timeout=20_000)
    assert panel.demonstration_box.isChecked()
    take_in_hand(page, qtbot, EditionRef(NAME, 1))
    click(qtbot, panel.book_button)
    qtbot.waitUntil(lambda: bench.catalogues().chosen() == EditionRef(NAME), timeout=20_000)
    panel.demonstration_box.click()
    qtbot.waitUntil(lambda: DEMONSTRATION not in [row.facts.name for row in page.in_hand.rows], timeout=20_000)
    assert not panel.demonstration_box.isChecked()
    panel.demonstration_box.click()
    qtbot.waitUntil(lambda: DEMONSTRATION in [row.facts.name for row in page.in_hand.rows], timeout=20_000)


def test_an_edition_is_never_compared_with_itself_unsaid(page: CataloguesPage, qtbot: QtBot, bench: Workbench) -> None:
    panel = page.effect_panel
    take_in_hand(page, qtbot, EditionRef(DEMONSTRATION, 1))
    page.tabs.setCurrentWidget(panel)
    assert panel.pair == (EditionRef(DEMONSTRATION, 1), EditionRef(DEMONSTRATION, 1))
    assert "same edition" in panel.state_label.text()
    qtbot.waitUntil(lambda: bool(panel.survey_ids), timeout=20_000)
    assert not panel.plan_button.isEnabled()
    bench.catalogues().choose(EditionRef(NAME))
    page.refresh()
    qtbot.waitUntil(lambda: any(row.by_book and row.ref.catalogue == NAME for row in page.in_hand.rows), timeout=20_000)
    take_in_hand(page, qtbot, EditionRef(NAME, 1))
    panel.refresh()
    assert panel.pair == (EditionRef(NAME, 1), DRAFT)  # the only edition, which the book plans with, and its draft
    assert panel.state_label.text() == ""
    assert panel.plan_button.isEnabled()
