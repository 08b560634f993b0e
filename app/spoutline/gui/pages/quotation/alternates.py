"""Taking an alternate: the quotation made again with it, shown in money before it replaces the one in hand."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QMenu, QPushButton, QWidget

from spoutline.bootstrap.quotations import QuotationService
from spoutline.documents.quotation.alternates import difference_of
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.edits.command import make_edit
from spoutline.gui.escaping import mnemonic_safe
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.wording import tr
from spoutline.model.answered import surveyed_only
from spoutline.model.part_ref import told_apart
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedAlternate
from spoutline.planning.refit.alternates import with_alternate
from spoutline.planning.refit.money_change import Foreseen
from spoutline.units.display import Display

ALTERNATE = JobKey(JobKind.SITE_PLAN, "alternate")


@frozen
class TakenAlternate:
    """A quotation made with an alternate, beside the one that was in hand."""

    alternate: QuotedAlternate
    hand: InHand
    foreseen: Foreseen


class AlternateButton(QPushButton):
    """Offers the alternates of the quotation in hand; out of sight where it has none.

    Signals
    -------
    taken(object)
        The alternate that is to take the place of its part.
    """

    taken = Signal(object)

    def __init__(self, parent: QWidget) -> None:
        super().__init__(tr("Take an alternate"), parent)
        self.setToolTip(tr("Keep an alternate in place of its part and quote so; the money is shown first"))
        self.choices = QMenu(self)
        self.setMenu(self.choices)
        self.hide()

    def show_quotation(self, quotation: Quotation | None, story: Story, *, is_older: bool) -> None:
        """Offer what a quotation offers; nothing of an older revision."""
        offered = quotation.offered_alternates if quotation is not None and not is_older else ()
        self.choices.clear()
        self.setVisible(bool(offered))
        if quotation is None:
            return
        for one in offered:
            words = tr("{0} instead of {1}").format(*told_apart((one.part, one.line)))
            told = f"{words}  {difference_of(one, quotation.terms.currency, story)}"
            self.choices.addAction(mnemonic_safe(told)).triggered.connect(lambda _=False, it=one: self.taken.emit(it))


def taking(
    service: QuotationService, hand: InHand, alternate: QuotedAlternate, display: Display
) -> Callable[[Ticket], TakenAlternate]:
    """Return the work that quotes again with an alternate."""
    before = hand.quotation
    if before is None:
        raise ValueError("an alternate is taken of a quotation")
    return lambda ticket: TakenAlternate(
        alternate, hand, service.with_alternate(before, alternate, display, progress=ticket)
    )


def keep_in_survey(context: Context, taken: TakenAlternate) -> Quotation:
    """Return the quotation made with an alternate, once the survey that is open keeps it too.

    That is an edit that can be undone. Another survey, or one that was changed since, stays as it is.
    """
    session, before, made = context.session, taken.hand.quotation, taken.foreseen.quotation
    is_open = before is not None and before.pins.survey_id == session.stored.id
    # values decide: the quotation is made anew for the answers that were given since, which the survey keeps
    if before is None or not is_open or surveyed_only(session.survey) != before.pins.survey:
        return made
    words = tr("Take {0} instead of {1}").format(*told_apart((taken.alternate.part, taken.alternate.line)))
    make_edit(session, with_alternate(session.survey, before, taken.alternate), words)
    session.settle()  # only what is in the book has a revision
    kept = surveyed_only(session.survey)
    return made.of_survey_revision(session.stored.revision, made.pins.survey if kept is None else kept)
