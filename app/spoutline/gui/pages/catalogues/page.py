"""The keeper's page: the catalogs of the book, a supplier's table on its way into a draft, entries, health."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from spoutline.gui.intake.import_panel import ImportPanel
from spoutline.gui.intake.works import PartsWork
from spoutline.gui.models.catalogue_rows import EditionRow
from spoutline.gui.pages.catalogues.chosen import InHand
from spoutline.gui.pages.catalogues.coverage_panel import CoveragePanel
from spoutline.gui.pages.catalogues.effect_panel import EffectPanel
from spoutline.gui.pages.catalogues.entries_panel import EntriesPanel
from spoutline.gui.pages.catalogues.health_panel import HealthPanel
from spoutline.gui.pages.catalogues.prices_panel import PricesPanel
from spoutline.gui.pages.catalogues.references_panel import ReferencesPanel
from spoutline.gui.pages.catalogues.shelf_panel import ShelfPanel
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.session import Changed
from spoutline.gui.widgets.cards import plain_label, tab_pages
from spoutline.gui.widgets.roomy_scroll import PageTabs
from spoutline.gui.wording import tr

# the panels that show the edition in hand
_OF_EDITION = EntriesPanel | HealthPanel | ImportPanel | ReferencesPanel | EffectPanel | CoveragePanel | PricesPanel


def _nothing() -> None:
    """Plan nothing anew: nobody said how."""


class CataloguesPage(QWidget):
    """Holds the panels; the edition picked in the first is what the others show.

    ``plan_anew`` is called where the book plans with another edition from now on.
    """

    def __init__(self, context: Context, notify: Notify, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self.plan_anew: Callable[[], None] = _nothing
        self.in_hand = InHand()
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 10, 8)
        head = QHBoxLayout()
        head.addWidget(plain_label(tr("Catalogs"), "pageTitle"))
        head.addStretch(1)
        self.chosen_label = plain_label("", "quiet")
        head.addWidget(self.chosen_label)
        column.addLayout(head)
        self.tabs = PageTabs(self)
        self.tabs.setDocumentMode(True)
        pages = tab_pages(self.tabs)
        self.shelf_panel = ShelfPanel(context, self.in_hand, notify, pages)
        self.import_panel = ImportPanel(
            context.intake,
            PartsWork(context.session.workbench.catalogues, lambda: self.in_hand.draft_name),
            notify,
            pages,
        )
        self.entries_panel = EntriesPanel(context, self.in_hand, pages)
        self.references_panel = ReferencesPanel(context, self.in_hand, notify, pages)
        self.health_panel = HealthPanel(context, self.in_hand, pages)
        self.effect_panel = EffectPanel(context, self.in_hand, pages)
        self.prices_panel = PricesPanel(context, self.in_hand, pages)
        self.coverage_panel = CoveragePanel(context, self.in_hand, notify, pages)
        for panel, words in (
            (self.shelf_panel, tr("&Catalogs and editions")),
            (self.import_panel, tr("A supplier's ta&ble")),
            (self.entries_panel, tr("Entries")),
            (self.references_panel, tr("&Old numbers")),
            (self.health_panel, tr("Health")),
            (self.effect_panel, tr("E&ffect")),
            (self.coverage_panel, tr("Coverage")),
            (self.prices_panel, tr("P&rice lists")),
        ):
            self.tabs.addTab(panel, words)
        column.addWidget(self.tabs, 1)
        self.shelf_panel.picked.connect(self._on_picked)
        self.shelf_panel.planned_otherwise.connect(self._plan_anew)
        self.import_panel.taken_over.connect(lambda _: self.shelf_panel.refresh())
        self.import_panel.exchange_wanted.connect(self._read_exchange)
        self.entries_panel.draft_changed.connect(self.shelf_panel.refresh)
        self.health_panel.entry_wanted.connect(self.show_entry)
        self.tabs.currentChanged.connect(lambda _: self._show_panel())
        context.session.changed.connect(self._on_changed)

    def refresh(self) -> None:
        """Read the catalogs of the book anew and show them."""
        self.shelf_panel.refresh()

    def show_import(self) -> None:
        """Bring the way of a supplier's table into the draft into view."""
        self.tabs.setCurrentWidget(self.import_panel)

    def _read_exchange(self, path: Path) -> None:
        self.tabs.setCurrentWidget(self.shelf_panel)
        self.shelf_panel.read_from(path)

    def show_entry(self, text: str) -> None:
        """Bring the entries that are known by ``text`` into view."""
        self.entries_panel.search_edit.setText(text)
        self.tabs.setCurrentWidget(self.entries_panel)

    def _plan_anew(self) -> None:
        self.plan_anew()

    def _on_picked(self, row: EditionRow) -> None:
        edition = tr("draft") if row.edition is None else tr("edition {0}").format(row.edition.number)
        self.chosen_label.setText(tr("In hand: {catalog}, {edition}").format(catalog=row.facts.name, edition=edition))
        self._show_panel()

    def _show_panel(self) -> None:
        panel = self.tabs.currentWidget()
        if isinstance(panel, _OF_EDITION):
            panel.refresh()

    def _on_changed(self, what: Changed) -> None:
        if self.isVisible() and what & (Changed.SURVEY | Changed.UNITS):
            self.refresh()
