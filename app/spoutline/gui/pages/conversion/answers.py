"""What a conversion rests on: answers about the site, and about the position in hand as it is today."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from spoutline.gui.edits.conversion_questions import conversion_questions, position_conversion_questions
from spoutline.gui.edits.question import Option
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.conversion.lists import OwnCostsPanel, OwnSharesPanel
from spoutline.gui.pages.survey.installed_panel import InstalledPanel
from spoutline.gui.pages.survey.question_form import QuestionForm
from spoutline.gui.widgets.cards import ScrolledPage, plain_label
from spoutline.gui.wording import tr


class SiteSide(ScrolledPage):
    """The answers about the site, with costs and shares of its own."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self.column.addWidget(plain_label(tr("What the conversion rests on"), "pageTitle"))
        lead = tr("Every answer may stay open; the report says what it lacks. The agency decides.")
        self.column.addWidget(plain_label(lead, "quiet", wraps=True))
        self.form = QuestionForm(context, self.widget())
        self.costs_panel = OwnCostsPanel(context, self.widget())
        self.shares_panel = OwnSharesPanel(context, self.widget())
        for one in (self.form, self.costs_panel, self.shares_panel):
            self.column.addWidget(one)
        self.column.addStretch(1)

    def refresh(self) -> None:
        """Show the answers of the survey in hand."""
        tables = self._context.session.workbench.converting().vapour_tables()
        tell = self._context.story.phrases.tell
        agencies = tuple(Option(row.id, tell(row.title)) for row in tables.agencies)
        self.form.show_questions(conversion_questions(agencies))
        self.costs_panel.refresh()
        self.shares_panel.refresh()


class PositionSide(ScrolledPage):
    """What hangs at the position in hand today, and what is asked of it."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self.title = plain_label("", "pageTitle")
        self.installed_panel = InstalledPanel(context, self.widget())
        self.form = QuestionForm(context, self.widget())
        for one in (self.title, self.installed_panel, self.form):
            self.column.addWidget(one)
        self.column.addStretch(1)

    def refresh(self) -> None:
        """Show the answers of the position in hand."""
        self.title.setText(tr("Position {0} today").format(self._context.session.label))
        self.form.show_questions(position_conversion_questions())
        self.installed_panel.refresh()
