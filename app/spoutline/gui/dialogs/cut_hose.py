"""Hose cut to length: which lengths an article has and what they cost, one part for each."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QComboBox, QFormLayout, QLineEdit, QWidget

from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault, StoreFault
from spoutline.planning.keeping.cut_lengths import CutHose, LengthUnit, cut_entries
from spoutline.planning.keeping.cut_texts import read_amounts, read_length

Take = Callable[[CutHose], None]


class CutHoseDialog(FormDialog):
    """Asks for the article as one types; accepted once ``take`` took it, which may raise ``InputFault``."""

    def __init__(self, base: CatalogueEntry, take: Take, parent: QWidget | None = None) -> None:
        super().__init__(tr("Hose cut to length"), parent)
        self._base, self._make = base, take
        words = tr(
            "{0} is sold cut to length with its fittings: each length becomes a part that the search may choose."
        )
        self.body.addWidget(plain_label(words.format(base.ref), "quiet", wraps=True))
        form = QFormLayout()
        self.number_edit = self._line(tr("Number of the article"), form)
        self.unit_box = QComboBox(self)
        self.unit_box.setAccessibleName(tr("Lengths are in"))
        for unit, text in ((LengthUnit.FOOT, tr("feet")), (LengthUnit.METRE, tr("meters"))):
            self.unit_box.addItem(text, unit)
        self.unit_box.currentIndexChanged.connect(lambda _: self._check())
        form.addRow(tr("Lengths are in"), self.unit_box)
        self.shortest_edit = self._line(tr("Shortest"), form)
        self.longest_edit = self._line(tr("Longest"), form)
        self.step_edit = self._line(tr("Step"), form)
        self.price_edit = self._line(tr("Price of one foot or meter"), form, "4.50 USD")
        self.fitted_edit = self._line(tr("Fittings and work, once"), form, "18.00 USD")
        self.body.addLayout(form)
        self.state_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.state_label)
        self.body.addStretch(1)
        self.add_buttons(tr("&Put the lengths into the draft"))
        self.resize(560, 420)
        self._check()

    def _line(self, words: str, form: QFormLayout, hint: str = "") -> QLineEdit:
        line = QLineEdit(self)
        line.setAccessibleName(words)
        line.setPlaceholderText(hint)
        line.setMaxLength(120)
        line.textChanged.connect(lambda _: self._check())
        form.addRow(words, line)
        return line

    def article(self) -> CutHose:
        """Return the article as it is written; raise ``InputFault``."""
        unit = LengthUnit(self.unit_box.currentData())
        return CutHose(
            number=self.number_edit.text().strip(),
            base=self._base,
            unit=unit,
            shortest=read_length(self.shortest_edit.text(), unit, tr("Shortest")),
            longest=read_length(self.longest_edit.text(), unit, tr("Longest")),
            step=read_length(self.step_edit.text(), unit, tr("Step")),
            by_length=read_amounts(self.price_edit.text(), tr("Price of one foot or meter")),
            fitted=read_amounts(self.fitted_edit.text(), tr("Fittings and work, once")),
        )

    def _check(self) -> None:
        needed = (self.number_edit, self.shortest_edit, self.longest_edit, self.step_edit, self.price_edit)
        if not all(line.text().strip() for line in needed):
            self._show("", "")
            return
        try:
            made = cut_entries(self.article())
        except InputFault as fault:
            self._show("", str(fault.problems[0]))
            return
        first, last = (f"{one.number} ({_prices(one)})" for one in (made[0], made[-1]))
        self._show(tr("{0} lengths, from {1} to {2}").format(len(made), first, last), "")

    def _show(self, told: str, fault: str) -> None:
        self.state_label.setText(told)
        self.show_fault(fault)
        self.accept_button.setEnabled(bool(told))

    def accept(self) -> None:
        """Qt: take the article, or say why it cannot be taken."""
        try:
            self._make(self.article())
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        super().accept()


def _prices(entry: CatalogueEntry) -> str:
    return ", ".join(f"{one.minor / 100:.2f} {one.currency}" for one in entry.prices)
