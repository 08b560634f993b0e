"""The installer's work: papers to take along, the record of each position, swaps, inspections."""

from __future__ import annotations

from functools import partial

from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.installer.inspection_panel import InspectionPanel
from spoutline.gui.pages.installer.pack_panel import PackPanel
from spoutline.gui.pages.installer.record_panel import RecordPanel
from spoutline.gui.pages.installer.stations_panel import StationsPanel
from spoutline.gui.pages.installer.stock_panel import StockPanel
from spoutline.gui.pages.installer.swap_panel import SwapPanel
from spoutline.gui.pages.sets_head import SetsHead
from spoutline.gui.session import Changed
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label, tab_pages
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.late_tabs import LateTabs
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.due_work import StationDue
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.language import Language
from spoutline.model.part_ref import PartRef

# each language is named in itself, so that who reads it finds it
_LANGUAGES = {
    Language.ENGLISH: "English",
    Language.SPANISH: "Español",
    Language.GERMAN: "Deutsch",
    Language.FRENCH: "Français",
}


class InstallerPage(QWidget):
    """Holds the six panels, the language of the papers, and the field for a scanned code."""

    def __init__(self, context: Context, notify: Notify, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context, self._notify = context, notify
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 10, 8)
        column.addLayout(self._head())
        column.addWidget(SetsHead(context, self))
        self.state_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.state_label)
        self.tabs = LateTabs(self)
        self.tabs.setDocumentMode(True)
        self._pages = tab_pages(self.tabs)
        self._add_tabs()
        column.addWidget(self.tabs, 1)
        context.sets.changed.connect(lambda: self._on_changed(Changed.SURVEY))
        self.language_box.currentIndexChanged.connect(self.refresh)
        self.tabs.currentChanged.connect(self.refresh)
        context.session.changed.connect(self._on_changed)
        context.sets.updated.connect(self._on_updated)

    def _add_tabs(self) -> None:
        context, notify, pages, tabs = self._context, self._notify, self._pages, self.tabs
        tabs.add_late(PackPanel, partial(PackPanel, context, self.language, notify, pages), tr("P&apers"))
        tabs.add_late(RecordPanel, self._make_record, tr("&Record of the position"))
        tabs.add_late(SwapPanel, self._make_swap, tr("Part not on the tr&uck"))
        tabs.add_late(InspectionPanel, self._make_inspection, tr("&Inspections and wear"))
        tabs.add_late(StationsPanel, self._make_stations, tr("A&ll stations"))
        tabs.add_late(StockPanel, partial(StockPanel, context, self.language, notify, pages), tr("Van and store"))

    def _make_record(self) -> RecordPanel:
        panel = RecordPanel(self._context, self.language, self._notify, self._pages)
        panel.kept.connect(self._on_kept)
        return panel

    def _make_swap(self) -> SwapPanel:
        panel = SwapPanel(self._context, self._pages)
        panel.fitted.connect(self._on_fitted)
        return panel

    def _make_inspection(self) -> InspectionPanel:
        panel = InspectionPanel(self._context, self.language, self._notify, self._pages)
        panel.noted.connect(self._context.sets.refresh)
        return panel

    def _make_stations(self) -> StationsPanel:
        panel = StationsPanel(self._context, self.language, self._notify, self._pages)
        panel.opened.connect(self.open_due)
        return panel

    def _on_kept(self) -> None:
        """Count inspections and judge sets anew by a record that was kept."""
        inspections = self.tabs.made(InspectionPanel)
        if inspections is not None:
            inspections.refresh()
        self._context.sets.refresh()

    @property
    def pack_panel(self) -> PackPanel:
        """The papers."""
        return self.tabs.panel(PackPanel)

    @property
    def record_panel(self) -> RecordPanel:
        """The record of the position."""
        return self.tabs.panel(RecordPanel)

    @property
    def swap_panel(self) -> SwapPanel:
        """What to fit in place of a part."""
        return self.tabs.panel(SwapPanel)

    @property
    def inspection_panel(self) -> InspectionPanel:
        """Inspections and wear."""
        return self.tabs.panel(InspectionPanel)

    @property
    def stations_panel(self) -> StationsPanel:
        """The work due at all stations."""
        return self.tabs.panel(StationsPanel)

    @property
    def stock_panel(self) -> StockPanel:
        """What van and store hold."""
        return self.tabs.panel(StockPanel)

    def _head(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.addWidget(plain_label(tr("Installer's work"), "pageTitle"))
        row.addStretch(1)
        self.code_edit = LineEditor(self)
        self.code_edit.setObjectName("scannedCode")
        self.code_edit.setPlaceholderText(tr("Scanned code of a sheet"))
        self.code_edit.setAccessibleName(tr("Scanned code of a sheet"))
        self.code_edit.setMinimumWidth(260)
        self.code_button = QPushButton(tr("&Open"), self)
        self.code_edit.returnPressed.connect(self.open_code)
        self.code_button.clicked.connect(self.open_code)
        self.language_box = StillBox(self)
        self.language_box.setAccessibleName(tr("Language of the papers"))
        for language, name in _LANGUAGES.items():
            self.language_box.addItem(name, language)
        self.language_box.setCurrentIndex(self.language_box.findData(self._context.session.workbench.language))
        row.addWidget(self.code_edit)
        row.addWidget(self.code_button)
        row.addSpacing(12)
        row.addWidget(plain_label(tr("Language of the papers"), "quiet"))
        row.addWidget(self.language_box)
        return row

    def language(self) -> Language:
        """Return the language in which papers are made."""
        return Language(self.language_box.currentData())

    def refresh(self) -> None:
        """Show the panel in view for the survey, position and units in hand."""
        panel = self.tabs.currentWidget()
        if isinstance(panel, PackPanel | RecordPanel | SwapPanel | InspectionPanel | StationsPanel | StockPanel):
            panel.refresh()

    def open_code(self) -> None:
        """Turn to the survey and position that the scanned code names."""
        code = self.code_edit.text().strip()
        if not code:
            return
        try:
            found = wait_for(lambda: self._context.session.workbench.packing().find(code))
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return
        session = self._context.session
        if found.stored.id != session.stored.id and not session.turn_to(found.stored):
            return
        session.look_at(found.position)
        self.code_edit.clear()
        words = (
            tr("{0}: the survey is as it was when the sheet was printed.")
            if found.is_as_printed
            else tr("{0}: the survey has changed since the sheet was printed. Print it anew before working by it.")
        )
        self.state_label.setText(words.format(found.position))
        self.tabs.setCurrentWidget(self.record_panel)
        self.refresh()

    def open_due(self, row: StationDue) -> None:
        """Turn to the station and position of a row of the due work, counted from the day that its records tell."""
        session = self._context.session
        try:
            stored = wait_for(lambda: session.workbench.book().stored(row.survey_id))
        except (InputFault, StoreFault) as fault:
            self.state_label.setText(told(str(fault)))
            return
        if stored.id != session.stored.id and not session.turn_to(stored):
            return
        session.look_at(row.due.position)
        self.inspection_panel.service_edit.show_day(row.counted_from)
        self.tabs.setCurrentWidget(self.inspection_panel)
        self.refresh()

    def _on_fitted(self, planned: PartRef, fitted: tuple[PartRef, ...], reason: str) -> None:
        self.record_panel.set_fitted(planned, fitted, reason)
        self.tabs.setCurrentWidget(self.record_panel)

    def _on_changed(self, what: Changed) -> None:
        if self.isVisible() and what & Changed.ALL:
            self.refresh()

    def _on_updated(self, label: str) -> None:
        if self.isVisible() and label == self._context.session.label:
            self.refresh()
