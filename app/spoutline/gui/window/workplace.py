"""The middle of the window once a survey is open: site, steps, pages, drawing."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QSplitter,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from spoutline.gui.collection import leave_out_what_is_there
from spoutline.gui.edits.question import WALK, Option, Step
from spoutline.gui.jobs import JobKey, JobKind, Jobs, Ticket
from spoutline.gui.models.plans import Plans
from spoutline.gui.models.shown_sets import ShownSets
from spoutline.gui.pages.context import Context, Notify, StoryInUse
from spoutline.gui.pages.result.side_panel import SidePanel
from spoutline.gui.pages.survey.site_panel import SitePanel
from spoutline.gui.pages.survey.step_page import StepPage
from spoutline.gui.places import PLACES, Place
from spoutline.gui.session import Changed, Session
from spoutline.gui.widgets.icons import icon
from spoutline.gui.widgets.place_bar import PlaceBar
from spoutline.gui.widgets.roomy_scroll import PageStack, RoomyScroll, Stacking
from spoutline.gui.window.agreement_steps import AgreementSteps
from spoutline.gui.window.no_set_steps import NoSetSteps
from spoutline.gui.window.pages_ahead import PagesAhead
from spoutline.gui.window.place_guide import PlaceGuide
from spoutline.gui.window.step_walk import StepWalk
from spoutline.gui.window.weighing_steps import WeighingSteps
from spoutline.gui.window.what_if_steps import WhatIfSteps
from spoutline.gui.wording import told, tr

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from spoutline.gui.pages.catalogues.page import CataloguesPage
    from spoutline.gui.pages.conversion.page import ConversionPage
    from spoutline.gui.pages.installer.page import InstallerPage
    from spoutline.gui.pages.quotation.page import QuotationPage
    from spoutline.gui.pages.result.bill_page import BillPage
    from spoutline.gui.pages.result.set_page import SetPage
    from spoutline.gui.pages.start.page import StartPage
    from spoutline.gui.pages.survey.grid_page import GridPage


_SIZES = {"whole": [250, 1160], "walk": [690, 490]}
_EDGES = 60  # pixels of margins, frames and a scroll bar around a page
_NARROW, _LOW = 980, 560  # pixels; below, parts beside the pages are shown on demand, and places in one line


class Workplace(QWidget):
    """Builds the pages over one session and brings the wanted one into view.

    Signals
    -------
    page_changed()
        Another page is in view.
    start_page_made(StartPage)
        The start view is there, to be bound to what leads out of it.
    """

    page_changed = Signal()
    start_page_made = Signal(object)

    def __init__(self, session: Session, jobs: Jobs, notify: Notify, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.recent_files: Callable[[], tuple[object, ...]] = tuple
        self._notify = notify
        self.plans = Plans(session, jobs, self)
        self.sets = ShownSets(session, self.plans, jobs, self)
        self.sets.told.connect(notify)
        self.context = Context(session, self.plans, jobs, StoryInUse(session), self.sets)
        self.agreeing = AgreementSteps(self.context, notify, self)
        self.what_if = WhatIfSteps(self.context, self)
        self.no_set = NoSetSteps(self.context, self)
        self.weighing = WeighingSteps(self.context, self.agreeing.agree_picked, self)
        self._is_narrow, self._stacking = False, Stacking()
        self._divided: dict[str, list[int]] = {}
        self._ahead = PagesAhead(self, self._is_planning)
        self._build()
        self.session.changed.connect(self._on_changed)
        self.plans.updated.connect(self._on_updated)
        self.plans.grown.connect(self._on_updated)
        self.guide = PlaceGuide(self.context, self.place_bar, self)
        self.page_changed.connect(self._on_page)
        self.refresh()
        self.show_step(Step.LIQUID)

    def _build(self) -> None:
        """Build from the outside in: under a style sheet Qt styles all below a widget anew that gets another parent."""
        column = QVBoxLayout(self)
        column.setContentsMargins(10, 6, 4, 8)
        column.setSpacing(6)
        self.splitters: dict[str, QSplitter] = {}
        self.place_bar = PlaceBar(tr("Places of the work"), [tr(one.title) for one in PLACES], self)
        whole = QSplitter(Qt.Orientation.Horizontal, self)
        whole.setChildrenCollapsible(False)
        top = QHBoxLayout()
        top.addWidget(self._site_toggle())
        top.addWidget(self.place_bar, 1)
        column.addLayout(top)
        column.addWidget(whole, 1)
        self.site_panel = SitePanel(self.context, whole)
        self.site_panel.position_opened.connect(lambda _: self._leave_site_pages())
        self.site_panel.position_wanted.connect(self.turn_to_position)
        self.room = RoomyScroll(whole)
        self.views = PageStack(self.room)
        self.walk = QSplitter(Qt.Orientation.Horizontal, self.views)
        self.walk.setChildrenCollapsible(False)
        self.steps = StepWalk(self.context, self.walk)
        self.steps.step_wanted.connect(self.show_step)
        self.steps.moved.connect(self.move_step)
        self.steps.drawing_wanted.connect(lambda _: self._fit_parts())
        self.side_panel = SidePanel(self.context, self.walk)
        self.side_panel.noted.connect(self._notify)
        self.walk.addWidget(self.steps)
        self.walk.addWidget(self.side_panel)
        self.walk.setSizes(_SIZES["walk"])
        self.walk.setStretchFactor(0, 1)
        self.walk.setStretchFactor(1, 1)
        self.views.addWidget(self.walk)
        whole.addWidget(self.site_panel)
        self.room.hold(self.views)
        whole.addWidget(self.room)
        self.splitters |= {"whole": whole, "walk": self.walk}
        whole.setSizes(_SIZES["whole"])
        whole.setStretchFactor(1, 1)

    def _site_toggle(self) -> QToolButton:
        self.site_button = QToolButton(self)
        self.site_button.setIcon(icon("site"))
        self.site_button.setCheckable(True)
        self.site_button.setAccessibleName(tr("Dispensers and positions"))
        self.site_button.setToolTip(tr("Dispensers and positions"))
        self.site_button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.site_button.toggled.connect(lambda _: self._fit_parts())
        self.site_button.hide()
        return self.site_button

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Qt: where the window is small, show one part at a time and let pages scroll."""
        super().resizeEvent(event)
        self.place_bar.show_low(is_low=self.height() < _LOW)
        is_narrow = self.width() < _NARROW
        if is_narrow != self._is_narrow:
            self._is_narrow = is_narrow
            if is_narrow:
                self._divided = {name: one.sizes() for name, one in self.splitters.items()}
            else:
                self._stacking.spread()
            self._fit_parts()
            if not is_narrow:
                self._divide()

    def _divide(self) -> None:
        """Give the parts that stand side by side again the room that they had."""
        for name, splitter in self.splitters.items():
            sizes = self._divided.get(name, [])
            splitter.setSizes(sizes if all(sizes) and sizes else _SIZES[name])

    def _fit_parts(self) -> None:
        """Show or hide the parts beside the pages as there is room for them."""
        narrow = self._is_narrow
        self.site_button.setVisible(narrow)
        self.site_panel.setVisible(not narrow or self.site_button.isChecked())
        self.room.setVisible(not narrow or not self.site_button.isChecked())
        self.side_panel.setVisible(not narrow or self.steps.drawing_button.isChecked())
        self.steps.show_narrow(is_narrow=narrow)
        if narrow and self.views.currentWidget() is not self.walk:
            self._stacking.stack(self.views.currentWidget(), self.width() - _EDGES)

    def _on_page(self) -> None:
        """Mark the place in view; in a narrow window its parts stand below each other."""
        self.guide.show_place(self.place)
        if self._is_narrow:
            self.site_button.setChecked(False)
            self._fit_parts()

    @property
    def step(self) -> Step:
        """The step in view."""
        return self.steps.step

    @property
    def place(self) -> Place:
        """The place in view; no page is made to answer this."""
        made = {
            "start_page": Place.START,
            "grid_page": Place.POSITIONS,
            "bill_page": Place.PARTS,
            "quotation_page": Place.QUOTATION,
            "conversion_page": Place.CONVERSION,
            "installer_page": Place.INSTALLER,
            "catalogues_page": Place.CATALOGUES,
        }
        shown = self.views.currentWidget()
        return next((place for name, place in made.items() if self.__dict__.get(name) is shown), Place.SURVEY)

    @property
    def bill_is_shown(self) -> bool:
        """Whether the bill is in view; it is not made to answer this."""
        return self.views.currentWidget() is self.__dict__.get("bill_page")

    @property
    def quotations_are_shown(self) -> bool:
        """Whether the quotations are in view; they are not made to answer this."""
        return self.views.currentWidget() is self.__dict__.get("quotation_page")

    def show_step(self, step: Step) -> None:
        """Bring a step, or the site's questions, into view."""
        page: QWidget = self.set_page if step is Step.SET else self.steps.pages[step]
        if isinstance(page, StepPage) and page.is_stale:
            page.refresh()  # while it is hidden, for then its fields are laid out once
        self.views.setCurrentWidget(self.walk)
        self.steps.show_page(step, page)
        if step is Step.SET:
            self.set_page.refresh()
        self.page_changed.emit()

    def show_walk(self) -> None:
        """Bring the walk through the position in hand into view, at the step that was last in view."""
        self.show_step(self.step)

    def show_bill(self) -> None:
        """Bring the bill of the site into view."""
        self.views.setCurrentWidget(self.bill_page)
        self.bill_page.refresh()
        self.page_changed.emit()

    def show_grid(self) -> None:
        """Bring all positions at once into view."""
        self.views.setCurrentWidget(self.grid_page)
        self.grid_page.refresh()
        self.page_changed.emit()

    def show_quotations(self) -> None:
        """Bring the quotations into view."""
        self.views.setCurrentWidget(self.quotation_page)
        self.quotation_page.refresh()
        self.page_changed.emit()

    def show_conversion(self) -> None:
        """Bring the conversion of the site into view."""
        self.conversion_page.refresh()  # while it is hidden, for then its fields are laid out once
        self.views.setCurrentWidget(self.conversion_page)
        self.page_changed.emit()

    def show_installer(self) -> None:
        """Bring the installer's work into view."""
        self.views.setCurrentWidget(self.installer_page)
        self.installer_page.refresh()
        self.page_changed.emit()

    def show_catalogues(self, plan_anew: Callable[[], None]) -> None:
        """Bring the catalogs of the book into view; ``plan_anew`` is called where another edition is planned with."""
        page = self.catalogues_page
        page.plan_anew = plan_anew
        self.views.setCurrentWidget(page)
        page.refresh()
        self.page_changed.emit()

    def show_start(self) -> None:
        """Bring the start view into view."""
        self.views.setCurrentWidget(self.start_page)
        self.start_page.refresh()
        self.page_changed.emit()

    @cached_property
    def start_page(self) -> StartPage:
        """The start view, made when first wanted."""
        from spoutline.gui.pages.start.page import StartPage

        page = StartPage(self.context, self.recent_files, self.views)
        self.views.addWidget(page)
        self.start_page_made.emit(page)
        return page

    @cached_property
    def catalogues_page(self) -> CataloguesPage:
        """The page of catalogues, made when first wanted."""
        from spoutline.gui.pages.catalogues.page import CataloguesPage

        page = CataloguesPage(self.context, self._notify, self.views)
        page.tabs.panel_made.connect(self._fit_parts)
        self.views.addWidget(page)
        return page

    @cached_property
    def set_page(self) -> SetPage:
        """The page of the set, made when first wanted."""
        from spoutline.gui.pages.result.set_page import SetPage

        page = self._ahead.taken(SetPage) or SetPage(self.context, self.steps.stack)
        page.agreement.agree_wanted.connect(lambda label: self.agreeing.agree_planned((label,)))
        page.outcome.agree_wanted.connect(self.agreeing.agree_planned)
        page.outcome.what_if_wanted.connect(self.what_if.ask)
        page.outcome.all_reasons_wanted.connect(self.no_set.show)
        page.why.all_wanted.connect(self.no_set.show)
        page.other_sets.weigh_wanted.connect(self.weighing.ask)
        page.agreement.history_wanted.connect(self.agreeing.show_history)
        self.steps.stack.addWidget(page)
        return page

    @cached_property
    def bill_page(self) -> BillPage:
        """The page of the bill, made when first wanted."""
        from spoutline.gui.pages.result.bill_page import BillPage

        page = BillPage(self.context, self._notify, self.views)
        self.views.addWidget(page)
        return page

    def forget_bill(self) -> None:
        """Have the bill made anew when it is next seen, if it was seen at all."""
        if "bill_page" in self.__dict__:
            self.bill_page.forget()

    @cached_property
    def installer_page(self) -> InstallerPage:
        """The page of the installer's work, made when first wanted."""
        from spoutline.gui.pages.installer.page import InstallerPage

        page = InstallerPage(self.context, self._notify, self.views)
        page.tabs.panel_made.connect(self._fit_parts)
        self.views.addWidget(page)
        return page

    @cached_property
    def conversion_page(self) -> ConversionPage:
        """The page of the conversion, made when first wanted."""
        from spoutline.gui.pages.conversion.page import ConversionPage

        page = ConversionPage(self.context, self._notify, self.views)
        page.agree_wanted.connect(self.agreeing.agree_conversion)
        page.tabs.panel_made.connect(self._fit_parts)
        self.views.addWidget(page)
        return page

    @cached_property
    def grid_page(self) -> GridPage:
        """The page of all positions, made when first wanted."""
        from spoutline.gui.pages.survey.grid_page import GridPage

        page = self._ahead.taken(GridPage) or GridPage(self.context, self.views)
        self.views.addWidget(page)
        return page

    @cached_property
    def quotation_page(self) -> QuotationPage:
        """The page of quotations, made when first wanted."""
        from spoutline.gui.pages.quotation.page import QuotationPage

        page = self._ahead.taken(QuotationPage) or QuotationPage(self.context, self._notify, parent=self.views)
        self.views.addWidget(page)
        return page

    def make_pages_ahead(self) -> None:
        """Make the pages that nobody has seen yet, part by part between what a person does."""
        self._ahead.go_through(self._pages_to_make())

    def _is_planning(self) -> bool:
        label = self.session.label
        return self.plans.plan(label) is None and not self.plans.trouble(label)

    def _pages_to_make(self) -> Iterator[object]:
        """Make a part of a page with each step; the modules of the pages are there."""
        from spoutline.gui.pages.quotation.page import QuotationPage
        from spoutline.gui.pages.result.set_page import SetPage
        from spoutline.gui.pages.survey.grid_page import GridPage

        made, context = self.__dict__, self.context
        if "set_page" not in made:
            yield from self._ahead.parts_of(SetPage(context, self.steps.stack, whole=False))
            yield self.set_page
        if "grid_page" not in made:
            yield from self._ahead.parts_of(GridPage(context, self.views, whole=False))
            yield self.grid_page
        if self.place is not Place.POSITIONS:
            self.grid_page.refresh()
            yield None
        if "quotation_page" not in made:
            yield from self._ahead.parts_of(QuotationPage(context, self._notify, parent=self.views, whole=False))
            yield self.quotation_page
        for name in ("bill_page", "conversion_page", "installer_page", "catalogues_page", "start_page"):
            yield getattr(self, name)
        leave_out_what_is_there()  # they stay to the end

    def show_part_question(self) -> None:
        """Bring the look-up of catalogue parts into view with the keyboard in its search field."""
        self.show_step(Step.SET)
        self.set_page.show_panel(self.set_page.why_not)
        self.set_page.why_not.start()
        self.set_page.why_not.focus_search()

    def move_step(self, by: int) -> None:
        """Go some steps on or back; after the last step comes the bill, after the site's questions the first step."""
        if self.bill_is_shown:
            if by < 0:
                self.show_step(Step.SET)
            return
        if self.step is Step.SITE:
            self.show_step(WALK[0])
            return
        place = WALK.index(self.step) + by
        if place >= len(WALK):
            self.show_bill()
        elif place >= 0:
            self.show_step(WALK[place])
            self.steps.focus_page()

    def move_position(self, by: int) -> None:
        """Turn to a position above or below in the order of the survey."""
        labels = [position.label for position in self.session.survey.positions]
        place = labels.index(self.session.label) + by
        if 0 <= place < len(labels):
            self.session.look_at(labels[place])
            self._leave_site_pages()

    def turn_to_position(self, label: str) -> None:
        """Bring a position into view from any page: its row where all positions are in view, else its walk."""
        if self.session.survey.position(label) is None:
            return
        if self.place is Place.POSITIONS:
            self.grid_page.show_position(label)
            return
        self.session.look_at(label)
        if self.place is Place.PARTS:
            self.show_step(Step.SET)
        elif self.step is Step.SITE:
            self.show_step(Step.LIQUID)
        elif self.place is not Place.SURVEY:
            self.show_walk()

    def refresh(self) -> None:
        """Show everything anew."""
        self.site_panel.refresh()
        self.side_panel.refresh()
        self.steps.counts.show()

    def fetch_choices(self) -> None:
        """Ask the stores for the local rules and currencies that can be chosen."""
        workbench, survey = self.session.workbench, self.session.survey
        tell = self.context.story.phrases.tell

        def work(_: Ticket) -> tuple[tuple[Option, ...], tuple[Option, ...]]:
            profiles = workbench.jurisdictions().all()
            parts = workbench.parts().search("", None, 20, survey=survey)
            currencies = sorted({price.currency for part in parts for price in part.prices})
            return (
                tuple(Option(profile.id, tell(profile.title)) for profile in profiles),
                tuple(Option(currency, currency) for currency in currencies),
            )

        self.context.jobs.start(
            JobKey(JobKind.CHOICES),
            work,
            lambda choices: self.steps.pages.show_choices(*choices),
            lambda fault: self.steps.strip.setToolTip(told(str(fault))),
        )

    def _leave_site_pages(self) -> None:
        """Bring the walk into view: a person who turns to a position wants to see it."""
        if self.bill_is_shown:
            self.show_step(Step.SET)
        elif self.step is Step.SITE:
            self.show_step(Step.LIQUID)
        elif self.quotations_are_shown:
            self.show_step(self.step)

    def _on_changed(self, what: Changed) -> None:
        if what & (Changed.SURVEY | Changed.FOCUS | Changed.UNITS):
            if what & Changed.FOCUS:
                self.steps.strip.show_figures(())
            self.steps.counts.show()
        if what is Changed.PART and self.step is Step.SET and not self.bill_is_shown:
            why_not = self.set_page.why_not
            if self.set_page.panel_in_view is not why_not:
                self.set_page.show_panel(self.set_page.part_panel)

    def _on_updated(self, label: str) -> None:
        if label == self.session.label:
            self.steps.counts.show()
