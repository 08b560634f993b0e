"""All commands with their keys, and what this program can and cannot say."""

from __future__ import annotations

from PySide6.QtWidgets import QPlainTextEdit, QWidget

from spoutline.bootstrap.licenses import PackageLicense, license_text, package_licenses
from spoutline.gui.actions import ACTIONS, ActionRecord
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import tr


class KeysDialog(FormDialog):
    """Lists the commands."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(tr("Keys"), parent)
        columns: tuple[Column[ActionRecord], ...] = (
            Column(title=tr("Keys"), text=lambda record: record.keys),
            Column(title=tr("Command"), text=lambda record: tr(record.title).replace("&", "").rstrip("…")),
            Column(title=tr("What it does"), text=lambda record: tr(record.hint)),
        )
        self.model: RecordTable[ActionRecord] = RecordTable(columns, self)
        self.model.show_records([record for record in ACTIONS if record.keys])
        self.table = Table(tr("Commands with their keys"), self, stretch=2)
        self.table.setModel(self.model)
        self.table.fit_columns()
        self.body.addWidget(self.table, 1)
        words = tr(
            "Alt+1 to Alt+5 go to a step. In the drawing: Space picks the next part, plus and minus change its size, "
            "arrows move it, 0 shows all of it."
        )
        self.body.addWidget(plain_label(words, "quiet", wraps=True))
        self.add_close()
        self.resize(780, 560)


class AboutDialog(FormDialog):
    """Says what the program is for and what it leaves to others. ``advice`` is the safety sentence of all papers."""

    def __init__(self, version: str, advice: str, parent: QWidget | None = None) -> None:
        super().__init__(tr("About and safety"), parent)
        self.body.addWidget(plain_label(f"Spoutline {version}", "pageTitle"))
        purpose = tr("Specifies the hanging hardware of motor-fuel dispensers: what fits, why, and what it costs.")
        self.body.addWidget(plain_label(purpose, wraps=True))
        self.body.addWidget(plain_label(advice, wraps=True))
        told = tr("The catalog Demonstration, its makers and prices are invented.")
        self.body.addWidget(plain_label(told, "quiet", wraps=True))
        self.body.addWidget(plain_label(tr("Made with these packages; open one to read its license."), wraps=True))
        columns: tuple[Column[PackageLicense], ...] = (
            Column(title=tr("Package"), text=lambda one: one.name),
            Column(title=tr("Version"), text=lambda one: one.version),
            Column(title=tr("License"), text=lambda one: one.license, hint=lambda one: one.license),
        )
        self.model: RecordTable[PackageLicense] = RecordTable(columns, self)
        self.model.show_records(package_licenses())
        self.table = Table(tr("Packages with their licenses"), self, shares=(3, 2, 5))
        self.table.setModel(self.model)
        self.table.opened.connect(self._show_text)
        self.table.picked.connect(self._show_text)
        self.text = QPlainTextEdit(self)
        self.text.setReadOnly(True)
        self.text.setAccessibleName(tr("Text of the license"))
        self.body.addWidget(self.table, 2)
        self.body.addWidget(self.text, 2)
        self.table.fit_columns()
        self.add_close()
        self.resize(720, 620)

    def _show_text(self, record: object) -> None:
        if isinstance(record, PackageLicense):
            self.text.setPlainText(license_text(record.name) or tr("This package brings no text of its license."))
