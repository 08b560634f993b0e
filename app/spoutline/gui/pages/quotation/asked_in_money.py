"""Whether a quotation made anew takes the place of the one in hand: asked with what it means in money."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from spoutline.book.quotation_records import StoredQuotation
from spoutline.explain.plan.story import Story
from spoutline.gui.pages.quotation.alternates import TakenAlternate
from spoutline.gui.wording import tr
from spoutline.model.part_ref import told_apart
from spoutline.model.quotation_status import QuotationStatus
from spoutline.planning.refit.money_change import MoneyChange

if TYPE_CHECKING:
    from spoutline.gui.dialogs.foreseen_quote import ForeseenWords


def is_quoted_so(change: MoneyChange, number: str, story: Story, parent: QWidget) -> bool:
    """Show line by line what quoting the changed survey means in money; say whether it is wanted so."""
    from spoutline.gui.dialogs.foreseen_quote import ForeseenWords

    lead = tr("{0} as it is in hand, and as the survey and the terms in hand would be quoted now.").format(number)
    words = ForeseenWords(tr("What the change means in money"), lead, tr("&Quote it so"))
    return _is_wanted(change, story, words, parent)


def is_alternate_taken(
    taken: TakenAlternate, number: str, stored: StoredQuotation | None, story: Story, parent: QWidget
) -> bool:
    """Show what an alternate means in money; say whether it is taken. Of an order a later revision would have it."""
    from spoutline.gui.dialogs.foreseen_quote import ForeseenWords

    told = told_apart((taken.alternate.part, taken.alternate.line))
    lead = tr("{0} as it is, and with {1} instead of {2}.").format(number, *told)
    if stored is not None and stored.status is QuotationStatus.ACCEPTED:
        stands = tr(
            "The order stands: revision {0} stays as it is. Taken, revision {1} opens as a draft, to be issued."
        )
        lead = f"{lead} {stands.format(stored.revision, stored.revision + 1)}"
    words = ForeseenWords(tr("Take an alternate"), lead, tr("&Take it and quote so"))
    return _is_wanted(taken.foreseen.change, story, words, parent)


def _is_wanted(change: MoneyChange, story: Story, words: ForeseenWords, parent: QWidget) -> bool:
    from spoutline.gui.dialogs.foreseen_quote import ForeseenQuoteDialog

    dialog = ForeseenQuoteDialog(change, story, words, parent)
    is_wanted = dialog.exec() == ForeseenQuoteDialog.DialogCode.Accepted
    dialog.deleteLater()
    return is_wanted
