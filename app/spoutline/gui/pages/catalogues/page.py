"""The keeper's page: the catalogs of the book, a supplier's table on its way into a draft, entries, health."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
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
from spoutline.gui.widgets.late_tabs import LateTabs
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
        self._context, self._notify = context, notify
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
        self.tabs = LateTabs(self)
        self.tabs.setDocumentMode(True)
        self._pages = tab_pages(self.tabs)
        self._add_tabs()
        column.addWidget(self.tabs, 1)
        self.tabs.currentChanged.connect(lambda _: self._show_panel())
        context.session.changed.connect(self._on_changed)

    def _add_tabs(self) -> None:
        context, in_hand, notify, pages, tabs = self._context, self.in_hand, self._notify, self._pages, self.tabs
        tabs.add_late(ShelfPanel, self._make_shelf, tr("&Catalogs and editions"))
        tabs.add_late(ImportPanel, self._make_import, tr("A supplier's ta&ble"))
        tabs.add_late(EntriesPanel, self._make_entries, tr("Entries"))
        references = partial(ReferencesPanel, context, in_hand, notify, pages)
        tabs.add_late(ReferencesPanel, references, tr("&Old numbers"))
        tabs.add_late(HealthPanel, self._make_health, tr("Health"))
        tabs.add_late(EffectPanel, partial(EffectPanel, context, in_hand, pages), tr("E&ffect"))
        tabs.add_late(CoveragePanel, partial(CoveragePanel, context, in_hand, notify, pages), tr("Coverage"))
        tabs.add_late(PricesPanel, partial(PricesPanel, context, in_hand, pages), tr("P&rice lists"))

    def _make_shelf(self) -> ShelfPanel:
        panel = ShelfPanel(self._context, self.in_hand, self._notify, self._pages)
        panel.picked.connect(self._on_picked)
        panel.planned_otherwise.connect(self._plan_anew)
        return panel

    def _make_import(self) -> ImportPanel:
        work = PartsWork(self._context.session.workbench.catalogues, lambda: self.in_hand.draft_name)
        panel = ImportPanel(self._context.intake, work, self._notify, self._pages)
        panel.taken_over.connect(lambda _: self.shelf_panel.refresh())
        panel.exchange_wanted.connect(self._read_exchange)
        return panel

    def _make_entries(self) -> EntriesPanel:
        panel = EntriesPanel(self._context, self.in_hand, self._pages)
        panel.draft_changed.connect(self.refresh)
        return panel

    def _make_health(self) -> HealthPanel:
        panel = HealthPanel(self._context, self.in_hand, self._pages)
        panel.entry_wanted.connect(self.show_entry)
        return panel

    @property
    def shelf_panel(self) -> ShelfPanel:
        """The catalogs and editions."""
        return self.tabs.panel(ShelfPanel)

    @property
    def import_panel(self) -> ImportPanel:
        """The way of a supplier's table into the draft."""
        return self.tabs.panel(ImportPanel)

    @property
    def entries_panel(self) -> EntriesPanel:
        """The entries."""
        return self.tabs.panel(EntriesPanel)

    @property
    def references_panel(self) -> ReferencesPanel:
        """Old numbers and what they lead to."""
        return self.tabs.panel(ReferencesPanel)

    @property
    def health_panel(self) -> HealthPanel:
        """What is wrong with the entries."""
        return self.tabs.panel(HealthPanel)

    @property
    def effect_panel(self) -> EffectPanel:
        """What another edition would change."""
        return self.tabs.panel(EffectPanel)

    @property
    def coverage_panel(self) -> CoveragePanel:
        """What the edition has sets for."""
        return self.tabs.panel(CoveragePanel)

    @property
    def prices_panel(self) -> PricesPanel:
        """The price lists."""
        return self.tabs.panel(PricesPanel)

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
