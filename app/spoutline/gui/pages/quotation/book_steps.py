"""The steps that a quotation takes in the book: kept, issued, answered; each stands on record with a name."""

from __future__ import annotations

from collections.abc import Callable

from spoutline.bootstrap.quotations import QuotationService
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.pages.quotation.issue_words import IssueQuestions
from spoutline.gui.pages.quotation.panel import QuotationPanel
from spoutline.gui.pages.quotation.work import Steps
from spoutline.gui.wording import tr
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus


class BookSteps:
    """Asks for what a step needs and takes it; ``hand`` tells what is in hand when a person presses."""

    def __init__(self, context: Context, panel: QuotationPanel, steps: Steps, hand: Callable[[], InHand]) -> None:
        self._context, self._panel, self._steps, self._hand = context, panel, steps, hand
        self._issue_questions = IssueQuestions(context, panel)

    @property
    def _service(self) -> QuotationService:
        return self._context.session.workbench.quoting()

    def keep(self) -> None:
        """Put the quotation into the book: as a draft, over the draft looked at, or as its next revision."""
        hand, service, name = self._hand(), self._service, self._panel.name
        made, stored = hand.quotation, hand.stored
        if made is None or not hand.may_be_kept:
            return
        if stored is None or stored.status is QuotationStatus.ACCEPTED:
            self._steps.take(lambda: service.life().keep(made, name))
        elif stored.status is QuotationStatus.DRAFT:
            self._steps.take(lambda: service.life().save_draft(stored, made, name))
        else:
            self._steps.take(lambda: service.life().revise(stored, made, name))

    def keep_alternate(self, made: Quotation) -> None:
        """Keep a quotation with an alternate that was taken: of one that was accepted it changes the order."""
        stored, service, name = self._hand().stored, self._service, self._panel.name
        if stored is not None and stored.status is QuotationStatus.ACCEPTED:
            self._steps.take(lambda: service.life().revise(stored, made, name, changes_order=True))
        elif stored is not None:
            self.keep()

    def issue(self) -> None:
        """Issue the draft looked at; its papers are set off the window's thread."""
        stored, service, display = self._hand().stored, self._service, self._context.session.display
        if stored is None or not self._is_named():
            return
        words = self._issue_questions.ask(stored.quotation)
        if words is None:
            return
        name = self._panel.name
        self._steps.take(
            lambda: service.life().issue(
                stored, name, display, incomplete=words.incomplete, low_margin=words.low_margin
            )
        )

    def answer(self, answer: QuotationStatus, option: str = "") -> None:
        """Note the customer's answer with what was said; an order out of several options names one."""
        stored, service, name, note = self._hand().stored, self._service, self._panel.name, self._panel.offer.note
        if stored is not None and self._is_named():
            self._steps.take(lambda: service.life().answer(stored, answer, name, note, option))

    def _is_named(self) -> bool:
        """Say whether somebody takes the step by name; where nobody does, ask for the name."""
        if not self._panel.name:
            self._panel.say(tr("Write your name first: it stands on record with this step."))
            self._panel.name_edit.setFocus()
        return bool(self._panel.name)
