"""A page of the walk that asks the questions of one step."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QPushButton, QWidget

from spoutline.gui.edits.answers import with_filler, without_filler
from spoutline.gui.edits.question import Option, Question, Step
from spoutline.gui.edits.questions import questions_of
from spoutline.gui.edits.site_questions import site_questions
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.survey.question_form import QuestionForm
from spoutline.gui.session import Changed
from spoutline.gui.widgets.cards import ScrolledPage, plain_label
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault


class StepPage(ScrolledPage):
    """Asks the questions of a step about the position in focus. A page out of sight is filled when it is next seen."""

    def __init__(self, context: Context, step: Step, title: str, lead: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context, self.step = context, step
        self.is_stale = True
        self.form = QuestionForm(context, self)
        self.column.addWidget(plain_label(title, "pageTitle"))
        self.column.addWidget(plain_label(lead, "quiet", wraps=True))
        self.column.addWidget(self.form)
        self.column.addStretch(1)
        context.session.changed.connect(self._on_changed)

    def refresh(self) -> None:
        """Show the present answers."""
        self.is_stale = False
        self.form.show_questions(self._questions())

    def showEvent(self, event: QShowEvent) -> None:
        """Fill the page where something changed while it was out of sight."""
        if self.is_stale:
            self.refresh()
        super().showEvent(event)

    def _questions(self) -> tuple[Question, ...]:
        return questions_of(self.step, self._context.session.position)

    def _on_changed(self, what: Changed) -> None:
        if what & (Changed.SURVEY | Changed.FOCUS | Changed.UNITS):
            self.refresh_if_seen()

    def refresh_if_seen(self) -> None:
        """Show the present answers, now or when the page is next seen: an edit must not wait for pages out of view."""
        self.is_stale = True
        if self.isVisible():
            self.refresh()


class PlacePage(StepPage):
    """The step about place and reach, with fillers that can be added and taken away."""

    def __init__(self, context: Context, title: str, lead: str, parent: QWidget | None = None) -> None:
        super().__init__(context, Step.PLACE, title, lead, parent)
        self.add_button = QPushButton(tr("Add a further f&iller"), self)
        self.add_button.setObjectName("addFiller")
        self.add_button.clicked.connect(self._add_filler)
        self._removers: list[QPushButton] = []
        self.column.insertWidget(self.column.count() - 1, self.add_button)

    def refresh(self) -> None:
        """Show the present answers and one button per further filler."""
        super().refresh()
        wanted = len(self._context.session.position.other_fillers)
        while len(self._removers) > wanted:
            button = self._removers.pop()
            button.hide()
            button.deleteLater()
        for index in range(len(self._removers), wanted):
            button = QPushButton(tr("Remove this filler"))
            button.setAccessibleName(tr("Remove further filler {number}").format(number=index + 1))
            button.clicked.connect(self._remover(index))
            self.form.add_button(f"Further filler {index + 1}", button)
            self._removers.append(button)

    def _remover(self, index: int) -> Callable[[], None]:
        return lambda: self._remove_filler(index)

    def _add_filler(self) -> None:
        session = self._context.session
        try:
            after = with_filler(session.survey, session.label)
        except InputFault as fault:
            self.add_button.setToolTip(told(str(fault)))
            return
        self._context.edit(after, tr("Add a filler"))

    def _remove_filler(self, index: int) -> None:
        session = self._context.session
        self._context.edit(without_filler(session.survey, session.label, index), tr("Remove a filler"))


class SitePage(StepPage):
    """The questions about the site; its choices come from the stores once they are open."""

    def __init__(self, context: Context, title: str, lead: str, parent: QWidget | None = None) -> None:
        self._jurisdictions: tuple[Option, ...] = ()
        self._currencies: tuple[Option, ...] = ()
        super().__init__(context, Step.SITE, title, lead, parent)

    def show_choices(self, jurisdictions: tuple[Option, ...], currencies: tuple[Option, ...]) -> None:
        """Offer these local rules and currencies."""
        if (jurisdictions, currencies) != (self._jurisdictions, self._currencies):
            self._jurisdictions, self._currencies = jurisdictions, currencies
            self.form.show_questions(())
            self.refresh_if_seen()

    def _questions(self) -> tuple[Question, ...]:
        site = self._context.session.survey.site
        return site_questions(
            _with_present(self._jurisdictions, site.jurisdiction), _with_present(self._currencies, site.currency)
        )


def _with_present(options: tuple[Option, ...], present: str) -> tuple[Option, ...]:
    """Return the options, the present value among them even where the stores do not know it."""
    if any(option.value == present for option in options):
        return options
    return (*options, Option(present, present, "not known here" if options else ""))
