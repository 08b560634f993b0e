"""Words that a person gives before a quotation is issued that leaves hoses out, or sells too low."""

from __future__ import annotations

from spoutline.documents.quotation.coverage import covers_text
from spoutline.frozen import frozen
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.quotation.guidance import low_texts
from spoutline.gui.pages.quotation.panel import QuotationPanel
from spoutline.gui.wording import tr
from spoutline.model.quotation import Quotation


@frozen
class IssueWords:
    """Why a quotation is issued all the same; empty where nobody need say."""

    incomplete: str = ""
    low_margin: str = ""


class IssueQuestions:
    """Asks for the words, and keeps the name that is given with them."""

    def __init__(self, context: Context, panel: QuotationPanel) -> None:
        self._context, self._panel = context, panel

    def ask(self, quotation: Quotation) -> IssueWords | None:
        """Return the words that a quotation needs to be issued; None where it is not to be.

        Missing prices are told by the step itself.
        """
        incomplete = low_margin = ""
        if quotation.unanswered_options and not quotation.open_lines:
            incomplete = self._word_for_incomplete(quotation)
            if not incomplete:
                return None
        if quotation.unanswered_margins and not quotation.open_lines:
            low_margin = self._word_for_margin(quotation)
            if not low_margin:
                return None
        return IssueWords(incomplete, low_margin)

    def _word_for_incomplete(self, quotation: Quotation) -> str:
        """Ask why options that leave hoses out are issued all the same; return nothing where they are not to be."""
        story = self._context.story
        left = "\n".join(
            f"{option.title}: {covers_text(option, story)}; {', '.join(one.label for one in option.without_set)}"
            for option in quotation.unanswered_options
        )
        lead = tr("These options leave hoses out:\n{0}\nYour name and reason stand on the paper.").format(left)
        return self._reason_to_issue(tr("Issue although hoses are left out"), lead)

    def _word_for_margin(self, quotation: Quotation) -> str:
        """Ask why lines are issued below cost or the least margin; return nothing where they are not to be."""
        low = "\n".join(low_texts(quotation, self._context.story))
        lead = tr(
            "These lines are sold below cost or below the least margin:\n{0}\nName and reason stay in the book alone."
        )
        return self._reason_to_issue(tr("Issue although the margin is low"), lead.format(low))

    def _reason_to_issue(self, title: str, lead: str) -> str:
        from spoutline.gui.dialogs.named_step import NamedStepDialog

        dialog = NamedStepDialog(title, lead, self._panel.name, tr("&Issue it so"), self._panel, needs_reason=True)
        accepted = dialog.exec() == NamedStepDialog.DialogCode.Accepted
        if accepted:
            self._panel.name_edit.setText(dialog.name)
        dialog.deleteLater()
        return dialog.reason if accepted else ""
