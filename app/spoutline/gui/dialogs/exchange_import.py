"""What an exchange file would do to a draft, told before it is done."""

from __future__ import annotations

from PySide6.QtWidgets import QRadioButton, QWidget

from spoutline.bootstrap.exchange_intake import ExchangeCounts
from spoutline.catalogue.draft import DraftCounts
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr


class ExchangeImportDialog(FormDialog):
    """Asks how a file goes into a draft; ``keeps_others`` says what was answered once it is accepted."""

    help_topic = "catalog"

    def __init__(self, name: str, file_name: str, counts: ExchangeCounts, parent: QWidget | None = None) -> None:
        super().__init__(tr("Read an exchange file"), parent)
        self.body.addWidget(plain_label(tr("{file} into the draft of {catalog}").format(file=file_name, catalog=name)))
        self.beside_button = self._choice(tr("Keep the parts that the file does not hold"), counts.beside)
        self.alone_button = self._choice(tr("Let the draft hold what the file holds and nothing else"), counts.alone)
        self.beside_button.setChecked(True)
        self.add_buttons(tr("&Read it in"))
        self.resize(560, 220)

    def _choice(self, words: str, counts: DraftCounts) -> QRadioButton:
        button = QRadioButton(words, self)
        self.body.addWidget(button)
        told = tr("{new} new, {changed} changed, {same} as they were, {gone} taken out")
        lists = tr("price lists new, changed or taken out: {lists}").format(lists=counts.price_lists)
        self.body.addWidget(
            plain_label(
                told.format(new=counts.new, changed=counts.changed, same=counts.unchanged, gone=counts.gone), "quiet"
            )
        )
        if counts.price_lists:
            self.body.addWidget(plain_label(lists, "quiet"))
        return button

    @property
    def keeps_others(self) -> bool:
        """Whether parts that the file does not hold stay in the draft."""
        return self.beside_button.isChecked()
