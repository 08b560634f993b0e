"""No letter goes with Alt for two things in view: every page, tab, menu and dialog, in every language.

Windows' and GNOME's guidelines for access keys ask for letters that are unique in a window; where two share one, Qt
gives neither, and only moves the keyboard from one to the other.
"""

from __future__ import annotations

import importlib
import pkgutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QFileDialog,
    QGroupBox,
    QLabel,
    QMenu,
    QMessageBox,
    QPushButton,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)
from pytestqt.qtbot import QtBot

from gui.mnemonics import clashes, letter_of, texts_in_view, texts_of_menus, with_inner_views
from gui.page_rooms import settle
from planning.quoting_terms import DAY, terms_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.exchange_intake import ExchangeCounts
from spoutline.catalogue.draft import DraftCounts
from spoutline.gui import dialogs as dialogs_package
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs.article_form import ArticleDialog
from spoutline.gui.dialogs.close_count import CloseCountDialog
from spoutline.gui.dialogs.customers import CustomersDialog
from spoutline.gui.dialogs.cut_hose import CutHoseDialog
from spoutline.gui.dialogs.dispenser_types import DispenserTypesDialog
from spoutline.gui.dialogs.entry_form import EntryDialog
from spoutline.gui.dialogs.exchange_import import ExchangeImportDialog
from spoutline.gui.dialogs.families import FamiliesDialog
from spoutline.gui.dialogs.fault import FaultDialog
from spoutline.gui.dialogs.foreseen_quote import ForeseenQuoteDialog, ForeseenWords
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.dialogs.installed_figures import InstalledFiguresDialog
from spoutline.gui.dialogs.made_up import MadeUpDialog
from spoutline.gui.dialogs.named_step import NamedStepDialog
from spoutline.gui.dialogs.no_set import NoSetDialog, NoSetTools
from spoutline.gui.dialogs.part_files import PartFilesDialog
from spoutline.gui.dialogs.set_field import SetFieldDialog
from spoutline.gui.dialogs.similar_part import SimilarPartDialog
from spoutline.gui.dialogs.supplier_orders import OrderedFrom, SupplierOrdersDialog
from spoutline.gui.dialogs.table_repair import TableRepairDialog
from spoutline.gui.dialogs.terms import TermsDialog
from spoutline.gui.dialogs.unsaved import UnsavedDialog
from spoutline.gui.edits.installed_questions import described_questions
from spoutline.gui.edits.question import WALK, Step
from spoutline.gui.places import PLACES, Place
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.start_choice import StartChoice
from spoutline.gui.window.workplace import Workplace
from spoutline.gui.wording import tr
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.language import Language
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.stock_entry import UncountedLine
from spoutline.model.survey import InstalledPart
from spoutline.planning.refit.money_change import money_change
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

DRAFT = "Letters of a draft"
SI = Display(UnitSystem.SI)
# nothing of their own comes into view, or the system's own dialog
WITHOUT_A_VIEW = {
    ActionId.QUIT, ActionId.IMPORT_SURVEY, ActionId.EXPORT_SURVEY, ActionId.UNITS_SI, ActionId.UNITS_US,
    ActionId.REMOVE_POSITION, ActionId.WITHDRAW, ActionId.RECENT, ActionId.IMPORT_TABLE,
}  # fmt: skip
View = tuple[str, list[str]]


@pytest.fixture
def unasked(monkeypatch: pytest.MonkeyPatch) -> list[QDialog]:
    """Return the dialogs that would have waited for a person, each shown and left as it is."""
    shown: list[QDialog] = []

    def show(dialog: QDialog) -> int:
        dialog.show()
        dialog.deleteLater = lambda: None  # type: ignore[method-assign] - whoever asked is done with it; the test is not
        shown.append(dialog)
        return int(QDialog.DialogCode.Rejected)

    monkeypatch.setattr(QDialog, "exec", show)
    for name in ("question", "warning", "information", "critical"):
        monkeypatch.setattr(QMessageBox, name, lambda *_, **__: QMessageBox.StandardButton.No)
    for name in ("getOpenFileName", "getSaveFileName"):
        monkeypatch.setattr(QFileDialog, name, lambda *_, **__: ("", ""))
    monkeypatch.setattr(QMenu, "exec", lambda *_, **__: None)
    monkeypatch.setattr(QMenu, "popup", lambda *_, **__: None)
    return shown


def inner_views(page: QWidget, window: MainWindow, shown: QWidget, named: str) -> Iterator[View]:
    for inner in with_inner_views(page, named):
        settle(window)
        yield inner, texts_in_view(shown)


def views_of_pages(window: MainWindow, place: Workplace) -> Iterator[View]:
    """Bring every page into view with its steps and tabs; yield where we are and the texts there."""
    for step in (*WALK, Step.SITE):
        place.show_step(step)
        settle(window)
        yield from inner_views(place.steps.stack.currentWidget(), window, window, f"step {step}")
    for record in PLACES:
        if record.place is not Place.SURVEY:
            window.actions_by_id[record.action].trigger()
            settle(window)
            yield from inner_views(place.views.currentWidget(), window, window, str(record.place))


def views_of_dialogs(window: MainWindow, dialogs: list[QDialog]) -> Iterator[View]:
    for dialog in dialogs:
        dialog.show()
        settle(window)
        yield from inner_views(dialog, window, dialog, type(dialog).__name__)
        dialog.hide()


def by_commands(window: MainWindow, shown: list[QDialog]) -> list[QDialog]:
    """Return the dialogs that commands of the menus open."""
    for action in ActionId:
        if action not in WITHOUT_A_VIEW:
            window.actions_by_id[action].trigger()
            settle(window)
    tops = [one for one in QApplication.topLevelWidgets() if isinstance(one, QDialog) and one.isVisible()]
    return list({id(one): one for one in (*shown, *tops)}.values())


def by_hand(qtbot: QtBot, window: MainWindow, place: Workplace, bench: Workbench, folder: Path) -> list[QDialog]:
    """Return the dialogs that buttons on pages open."""
    session, story, service = place.session, place.context.story, bench.catalogues()
    own, entries = EditionRef("Demonstration"), {}
    for entry in service.shelf().entries(own):
        entries.setdefault(entry.kind, entry)
    if DRAFT not in {one.name for one in service.all()}:
        service.create(DRAFT)
    counts = ExchangeCounts(DraftCounts(), DraftCounts())
    described = InstalledPart(kind=PartKind.NOZZLE, description="Nozzle as found")
    first, *others = session.survey.positions
    there = first.model_copy(update={"installed": (described,)})
    recorded = session.survey.model_copy(update={"positions": (there, *others)})
    plan = place.context.plan
    assert plan is not None
    quoting = bench.quoting()
    made = quoting.quote(session.survey, terms_of(heading={"number": "L-1", "dated": DAY}), SI).quotation
    money = ForeseenWords("Title", "Lead", tr("&Quote it so"))
    types = DispenserTypesDialog(session, place.context.intake, window)
    intake = types.import_dialog()
    intake.show()
    intake.open_file(bench.dispenser_types().demo_table())
    qtbot.waitUntil(lambda: intake.panel.look is not None, timeout=20_000)
    assert intake.panel.opened is not None
    mapping = intake.panel.opened.mapping
    dialogs: list[QDialog] = [
        *(EntryDialog(entry, lambda _: None, story.title, window) for entry in entries.values()),
        SetFieldDialog(list(entries.values())[:1], story.word, window),
        SimilarPartDialog(lambda text: service.find(own, text, limit=5), story, 1, window),
        FamiliesDialog(service, DRAFT, story.title, window),
        PartFilesDialog(service, EditionRef(DRAFT, is_draft=True), entries[PartKind.NOZZLE].ref, window),
        PartFilesDialog(service, own, entries[PartKind.NOZZLE].ref, window),
        CutHoseDialog(entries[PartKind.CURB_HOSE], lambda _: None, window),
        MadeUpDialog([entries[PartKind.WHIP_HOSE], entries[PartKind.BREAKAWAY]], lambda _: None, window),
        ExchangeImportDialog(DRAFT, "parts.zip", counts, window),
        CustomersDialog(bench, window.jobs, may_choose=True, display=SI, today=DAY, parent=window),
        TermsDialog(bench.quoting(), None, folder, window, today=DAY, survey=session.survey),
        FaultDialog("It did not work.", ValueError("x"), window),
        NamedStepDialog("Title", "Lead", "Ada", tr("&Issue it so"), window, needs_reason=True),
        NamedStepDialog("Title", "Lead", "Ada", tr("&Undo it"), window),
        UnsavedDialog(session, lambda: False, is_closing=True, parent=window),
        UnsavedDialog(session, lambda: False, is_closing=False, parent=window),
        InstalledFiguresDialog(recorded, first.label, 0, described_questions(PartKind.NOZZLE, story.word), SI, window),
        types,
        intake,
        TableRepairDialog(mapping, mapping[0].slot, "x", parent=window),
        ForeseenQuoteDialog(money_change(made, made), story, money, window),
        SupplierOrdersDialog(
            bench.supplier_orders(), OrderedFrom.of_option(made, 1, made.options[0].title), tuple, window
        ),
        CloseCountDialog("Van", "November", (UncountedLine(part=PartRef("QW-N103"), quantity=3, came=0),), window),
        NoSetDialog(session.survey, plan, NoSetTools(bench, window.jobs, story, "why"), window),
    ]
    return dialogs


def views_of_a_quotation(window: MainWindow, place: Workplace, bench: Workbench, number: str) -> Iterator[View]:
    """Show a quotation of the station as a draft, then issued: each brings other buttons into view."""
    service = bench.quoting()
    made = service.quote(place.session.survey, terms_of(heading={"number": number, "dated": DAY}), SI).quotation
    draft = service.life().keep(made)
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    for named in ("draft", "issued"):
        place.quotation_page.look_at(draft.id)
        settle(window)
        yield from inner_views(place.quotation_page, window, window, f"quotation, {named}")
        if named == "draft":
            service.life().issue(draft, "Ada", SI)


def kinds_of_dialogs(base: type[QDialog] = FormDialog) -> set[type[QDialog]]:
    """Return every kind of dialog that the program shows."""
    for module in pkgutil.iter_modules(dialogs_package.__path__, f"{dialogs_package.__name__}."):
        importlib.import_module(module.name)
    found = {base} if base not in {FormDialog, ArticleDialog} and base.__module__.startswith("spoutline") else set()
    return found.union(*map(kinds_of_dialogs, base.__subclasses__()))


def test_no_letter_goes_with_alt_for_two_things_in_view(
    spoken: tuple[Language, MainWindow], qtbot: QtBot, bench: Workbench, unasked: list[QDialog], tmp_path: Path
) -> None:
    language, window = spoken
    place = window.workplace
    assert place is not None
    views = [*views_of_pages(window, place), *views_of_a_quotation(window, place, bench, f"L-{language}")]
    dialogs = [*by_commands(window, unasked), *by_hand(qtbot, window, place, bench, tmp_path)]
    assert kinds_of_dialogs() <= {type(one) for one in dialogs}
    views += views_of_dialogs(window, dialogs)
    beginning = StartChoice(())
    qtbot.addWidget(beginning)
    beginning.show()
    views += inner_views(beginning, window, beginning, "beginning")
    titles = [action.text() for action in window.menuBar().actions()]  # which stand above it in the window
    views.append(("beginning, below the menus", [*titles, *texts_in_view(beginning)]))
    views += [(f"menu {name}", texts) for one in (window, *dialogs) for name, texts in texts_of_menus(one)]
    assert len(views) > 120
    assert sum(len(texts) for _, texts in views) > 1_000  # the walk went somewhere
    found = {shared: name for name, texts in views for shared in clashes(texts)}
    assert found == {}
    for dialog in dialogs:
        dialog.deleteLater()


def test_two_that_share_a_letter_would_be_found(qtbot: QtBot) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    column = QVBoxLayout(window)
    tabs, label, group, hidden = QTabWidget(), QLabel("Na&me"), QGroupBox("&Rest"), QPushButton("&Make")
    button = QPushButton("Prices && &more")
    label.setBuddy(button)
    tabs.addTab(QWidget(), "&Rows")
    for one in (tabs, label, group, hidden, button):
        column.addWidget(one)
    window.show()
    hidden.hide()
    assert clashes(texts_in_view(window)) == [("Na&me", "Prices && &more"), ("&Rest", "&Rows")]
    assert [letter_of(text) for text in ("Prices && more", "Plain", "&Öffnen", "E&xit")] == ["", "", "ö", "x"]
