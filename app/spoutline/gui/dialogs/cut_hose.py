"""Hose cut to length: which lengths an article has and what they cost, one part for each."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QLineEdit, QWidget

from spoutline.explain.writing.money import amount
from spoutline.gui.dialogs.article_form import ArticleDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.planning.keeping.cut_lengths import CutHose, LengthUnit, cut_entries
from spoutline.planning.keeping.cut_texts import read_amounts, read_length


class CutHoseDialog(ArticleDialog[CutHose]):
    """Asks for the article as one types."""

    def __init__(self, base: CatalogueEntry, take: Callable[[CutHose], None], parent: QWidget | None = None) -> None:
        super().__init__(tr("Hose cut to length"), take, parent)
        self._base = base
        words = tr(
            "{0} is sold cut to length with its fittings: each length becomes a part that the search may choose."
        )
        self.body.addWidget(plain_label(words.format(base.ref), "quiet", wraps=True))
        self.number_edit = self.line(tr("Number of the article"))
        self.unit_box = StillBox(self)
        self.unit_box.setAccessibleName(tr("Lengths are in"))
        for unit, text in ((LengthUnit.FOOT, tr("feet")), (LengthUnit.METRE, tr("meters"))):
            self.unit_box.addItem(text, unit)
        self.unit_box.currentIndexChanged.connect(lambda _: self.check())
        self.form.addRow(tr("Lengths are in"), self.unit_box)
        self.shortest_edit = self.line(tr("Shortest"))
        self.longest_edit = self.line(tr("Longest"))
        self.step_edit = self.line(tr("Step"))
        self.price_edit = self.line(tr("Price of one foot or meter"), "4.50 USD")
        self.fitted_edit = self.line(tr("Fittings and work, once"), "18.00 USD")
        self.body.addLayout(self.form)
        self.body.addWidget(self.state_label)
        self.body.addStretch(1)
        self.add_buttons(tr("&Put the lengths into the draft"))
        self.resize(560, 420)
        self.check()

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

    def needed(self) -> tuple[QLineEdit, ...]:
        """Return all lines but that of fittings and work, which may cost nothing."""
        return self.number_edit, self.shortest_edit, self.longest_edit, self.step_edit, self.price_edit

    def told(self, article: CutHose) -> str:
        """Return how many lengths there are, with the price of the first and the last."""
        made = cut_entries(article)
        first, last = (f"{one.number} ({_prices(one)})" for one in (made[0], made[-1]))
        return tr("{0} lengths, from {1} to {2}").format(len(made), first, last)


def _prices(entry: CatalogueEntry) -> str:
    return ", ".join(f"{amount(one.minor, one.currency)} {one.currency}" for one in entry.prices)
