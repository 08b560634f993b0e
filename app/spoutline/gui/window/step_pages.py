"""The pages of the walk's steps: each is made when it is first wanted, and then stays."""

from __future__ import annotations

from functools import cached_property
from typing import Final

from PySide6.QtWidgets import QStackedWidget

from spoutline.frozen import frozen
from spoutline.gui.edits.question import Option, Step
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.survey.step_page import PlacePage, SitePage, StepPage
from spoutline.gui.wording import tr


@frozen
class StepWords:
    """What a step is called and what it is about."""

    rail: str
    title: str
    lead: str


STEP_WORDS: Final[dict[Step, StepWords]] = {
    Step.LIQUID: StepWords(
        "Liquid", "Liquid and blend", "What flows through the hose decides listing class and seals."
    ),
    Step.DUTY: StepWords(
        "Duty", "Duty and take-up", "What the hose serves, how it is stowed, and what the dispenser gives."
    ),
    Step.VAPOUR: StepWords(
        "Vapor", "Vapor recovery", "What hangs there today, what is to hang there, and what the outlet offers."
    ),
    Step.PLACE: StepWords(
        "Place and reach",
        "Place and reach",
        "Measure from the point on the ground below the outlet. The drawing follows.",
    ),
    Step.SET: StepWords("Set", "Set", ""),
    Step.SITE: StepWords("Site", "Site data", "Counts for every position of the site."),
}


class StepPages(dict[Step, StepPage]):
    """The pages that were made, by step; asked for another step, it makes the page and puts it into the stack."""

    def __init__(self, context: Context, stack: QStackedWidget) -> None:
        super().__init__()
        self._context, self._stack = context, stack
        self._choices: tuple[tuple[Option, ...], tuple[Option, ...]] | None = None

    def __missing__(self, step: Step) -> StepPage:
        """Make the page of a step; raise ``KeyError`` for the set, which has another page."""
        if step is Step.SITE:
            return self.site
        if step is Step.PLACE:
            return self.place
        if step not in STEP_WORDS or step is Step.SET:
            raise KeyError(step)
        title, lead = _words(step)
        page = self[step] = StepPage(self._context, step, title, lead, self._stack)
        self._stack.addWidget(page)
        return page

    @cached_property
    def site(self) -> SitePage:
        """The questions about the site."""
        page = self[Step.SITE] = SitePage(self._context, *_words(Step.SITE), self._stack)
        if self._choices is not None:
            page.show_choices(*self._choices)
        self._stack.addWidget(page)
        return page

    @cached_property
    def place(self) -> PlacePage:
        """The questions about place and reach."""
        page = self[Step.PLACE] = PlacePage(self._context, *_words(Step.PLACE), self._stack)
        self._stack.addWidget(page)
        return page

    def show_choices(self, jurisdictions: tuple[Option, ...], currencies: tuple[Option, ...]) -> None:
        """Offer these local rules and currencies on the page of the site, now or when it is made."""
        self._choices = jurisdictions, currencies
        if Step.SITE in self:
            self.site.show_choices(jurisdictions, currencies)


def _words(step: Step) -> tuple[str, str]:
    """Return title and lead of a page in the language of the window."""
    words = STEP_WORDS[step]
    return tr(words.title), tr(words.lead)
