"""The conversion of the site: what stays and goes, the answers it rests on, the owner's report, files to save."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TypeVar

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QGridLayout, QHBoxLayout, QPushButton, QSplitter, QVBoxLayout, QWidget

from spoutline.documents.conversion.summary import result_rows
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper, button_grid
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.conversion_nodes import STANDING_TONES, conversion_nodes, way_nodes
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.conversion.answers import PositionSide, SiteSide
from spoutline.gui.pages.conversion.cases import CasesSide
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.paper_pages import PaperPages
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.session import Changed
from spoutline.gui.widgets.cards import Card, NamedTexts, ScrolledPage, WholeLabel, plain_label, tab_pages
from spoutline.gui.widgets.late_tabs import LateTabs
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.marks import Mark
from spoutline.gui.widgets.progress_row import ProgressRow
from spoutline.gui.wording import told, tr
from spoutline.model.agreed_sets import SetsSource
from spoutline.model.answered import AsAnswered
from spoutline.model.conversion import SiteConversion
from spoutline.model.faults import Cancelled
from spoutline.model.removal_standing import Standing
from spoutline.planning.conversion.cases import CaseResult

_Form = TypeVar("_Form", SiteSide, PositionSide)

_PLAN = JobKey(JobKind.SITE_PLAN, "conversion")
_FILE = JobKey(JobKind.FILE, "conversion")
_FIGURES_LEAST_PX = 30  # two lines in sight; the rest is scrolled to
_WAYS_HEIGHT_PX = 124  # the head and three ways


class ConversionPage(QWidget):
    """Worked out when the page is seen, and anew when the survey changes while it is seen.

    Signals
    -------
    agree_wanted(object, str)
        A person wants to agree on the way that this ``SiteConversion`` follows; the name of the way.
    """

    agree_wanted = Signal(object, str)

    def __init__(self, context: Context, notify: Notify, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context, self._notify = context, notify
        self._conversion: SiteConversion | None = None
        self._made_for: object = None
        self._reported: SiteConversion | None = None  # of a case, where its report is wanted
        self._cases: tuple[CaseResult, ...] = ()  # shown beside it
        self._source = SetsSource.PLAN  # of the conversion shown
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        workbench = context.session.workbench
        self.hands = PaperHands(workbench, context.jobs, self._wanted, key=_FILE, tell=notify, parent=self)
        self.tabs = LateTabs(splitter)
        self._pages = pages = tab_pages(self.tabs)
        self.tabs.addTab(self._result_side(pages), tr("Resu&lt"))
        self.tabs.addTab(self._part_side(pages), tr("Stays and g&oes"))
        self.tabs.add_late(SiteSide, partial(self._make_form, SiteSide), tr("Site a&nswers"))
        self.tabs.add_late(PositionSide, partial(self._make_form, PositionSide), tr("Pos&ition today"))
        self.tabs.add_late(CasesSide, self._make_cases, tr("Cases"))
        self.tabs.currentChanged.connect(lambda _: self._show_answers())
        splitter.addWidget(self.tabs)
        title = tr("Pages of the conversion report")
        self.paper = PaperPages("conversion", title, context.jobs, self._show_trouble, splitter)
        self.paper.document_shown.connect(lambda _: self._enable(True))
        splitter.addWidget(self.paper)
        splitter.setSizes([620, 520])
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 10, 8)
        column.addWidget(splitter)
        context.session.changed.connect(self._on_changed)

    @property
    def conversion(self) -> SiteConversion | None:
        """The conversion shown; None while it is worked out."""
        return self._conversion

    @property
    def document(self) -> bytes | None:
        """The report, or the station on one page, as PDF; None while it is being made."""
        return self.paper.document

    def _result_side(self, parent: QWidget) -> QWidget:
        card = Card("", parent)
        card.body.addWidget(plain_label(tr("Conversion of the site"), "pageTitle"))
        head = QHBoxLayout()
        self.standing_mark = Mark(self)
        self.standing_label = WholeLabel("question", self)
        head.addWidget(self.standing_mark, 0, Qt.AlignmentFlag.AlignTop)
        head.addWidget(self.standing_label, 1)
        card.body.addLayout(head)
        self.state_label = WholeLabel("quiet", self)
        card.body.addWidget(self.state_label)
        again = tr("Work out the conversion"), self.refresh
        self.progress_row = ProgressRow(
            self._context.jobs, _PLAN, tr("Positions looked at"), self._stop, card, again=again
        )
        self.progress_row.show_running(False)
        card.body.addLayout(self.progress_row)
        self.ways_model = NodeTree((tr("Way"), tr("Bought"), tr("Kept"), tr("Departures")), self)
        self.ways_tree = Tree(tr("Ways to convert"), card, shares=(4, 3, 2, 2))
        self.ways_tree.setModel(self.ways_model)
        self.ways_tree.setRootIsDecorated(False)
        self.ways_tree.setFixedHeight(_WAYS_HEIGHT_PX)
        card.body.addWidget(self.ways_tree)
        row = QHBoxLayout()
        self.agree_button = QPushButton(tr("Agree on the &way shown…"), self)
        self.agree_button.setToolTip(tr("Agree on the sets of the way that the report follows, in bold above"))
        self.agree_button.clicked.connect(lambda _=False: self._agree())
        self.sets_label = WholeLabel("quiet", self)
        self._context.sets.changed.connect(self._on_sets)
        row.addWidget(self.sets_label, 1)
        row.addWidget(self.agree_button)
        card.body.addLayout(row)
        self.figures = NamedTexts(self)
        scroll = ScrolledPage(
            card, margin=0
        )  # in a small window, and in a language of long words, the texts need more room
        scroll.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        scroll.setAccessibleName(tr("Conversion of the site"))
        scroll.setMinimumHeight(_FIGURES_LEAST_PX)
        scroll.column.addWidget(self.figures)
        scroll.column.addStretch(1)
        card.body.addWidget(scroll, 1)
        self.one_page_box = QCheckBox(tr("St&ation on one page"), card)
        self.one_page_box.setToolTip(
            tr("For a bank or an agency, in place of the report: what hangs, what comes, when, at what cost.")
        )
        self.one_page_box.toggled.connect(lambda _: self._make_paper_again())
        card.body.addWidget(self.one_page_box)
        card.body.addLayout(self._file_buttons(card))
        return card

    def _part_side(self, parent: QWidget) -> QWidget:
        card = Card("", parent)
        card.body.addWidget(plain_label(tr("Keep or replace"), "pageTitle"))
        self.positions_model = NodeTree((tr("Position"), tr("Outcome or part"), tr("Why")), self)
        self.positions_tree = Tree(tr("Positions and parts"), card, shares=(5, 5, 8))
        self.positions_tree.setModel(self.positions_model)
        self.positions_tree.picked.connect(self._look_at)
        card.body.addWidget(self.positions_tree, 1)
        return card

    def _file_buttons(self, card: QWidget) -> QGridLayout:
        self.buttons: dict[str, QPushButton] = dict(zip(("pdf", "print", "mail"), self.hands.buttons, strict=True))
        for name, words in (("ics", tr("Save &calendar…")), ("xlsx", tr("Save ta&ble…"))):
            button = QPushButton(words, card)
            button.clicked.connect(lambda _=False, suffix=name: self._save_as(suffix))
            self.buttons[name] = button
        self.buttons["pdf"].setObjectName("primary")
        return button_grid([self.buttons[name] for name in ("pdf", "print", "mail", "ics", "xlsx")], 3)

    def _make_form(self, kind: type[_Form]) -> _Form:
        """Return a form with its answers: filled while it is out of view its fields are laid out once."""
        side = kind(self._context, self._pages)
        side.refresh()
        return side

    def _make_cases(self) -> CasesSide:
        side = CasesSide(self._context, self._pages)
        side.report_wanted.connect(self._show_report)
        side.refresh()
        side.show_base(self._conversion)
        return side

    @property
    def site_side(self) -> SiteSide:
        """The answers about the site."""
        return self.tabs.panel(SiteSide)

    @property
    def position_side(self) -> PositionSide:
        """The answers about the position in hand."""
        return self.tabs.panel(PositionSide)

    @property
    def cases(self) -> CasesSide:
        """The cases."""
        return self.tabs.panel(CasesSide)

    # working out

    def refresh(self) -> None:
        """Work the conversion out for the survey and units in hand, unless it is there already."""
        session = self._context.session
        self._show_answers()
        source = self._context.sets.source
        # a conversion by the survey's way is the same whatever the book holds
        of_sets = None if source is SetsSource.PLAN else (source, self._context.sets.key)
        wanted = (AsAnswered(session.survey), session.display, of_sets)
        if self._made_for == wanted:
            return
        self._made_for, self._conversion = wanted, None
        self._show_base(None)
        self.paper.forget_document()
        self._enable(False)
        self.state_label.setText(tr("Working out all positions…"))
        self.progress_row.show_running(True)
        survey, service = session.survey, session.workbench.converting()

        def work(ticket: Ticket) -> SiteConversion:
            if source is SetsSource.PLAN:
                return service.convert(survey, ticket)
            return service.convert_shown(survey, source.value, ticket)[0]

        self._source = source
        self._context.jobs.start(
            _PLAN,
            work,
            self._show_conversion,
            self._show_trouble,
        )

    def _stop(self) -> None:
        """Leave the conversion unmade until it is asked for, and take away that of answers before."""
        self._context.jobs.cancel(_PLAN)
        self._made_for = None
        self.progress_row.show_stopped()
        self.state_label.setText(tr("Stopped."))
        self.standing_label.clear()
        self.standing_mark.hide()
        self.ways_model.show_nodes(())
        self.positions_model.show_nodes(())
        self.figures.show_rows(())
        self.paper.show_nothing()

    def _show_conversion(self, conversion: SiteConversion) -> None:
        self.progress_row.show_running(False)
        self._conversion, self._reported, self._cases = conversion, None, ()
        self._show_base(conversion)
        self._show_sets()
        session = self._context.session
        words = session.workbench.converting().words(session.display)
        standing = conversion.standing.standing
        self.standing_mark.show_tone(STANDING_TONES[standing], words.title(standing))
        self.standing_mark.show()
        concerned = standing is not Standing.NOT_CONCERNED
        told = (words.kept_against_rule(conversion.standing), words.standing(conversion.standing))
        self.standing_label.setText(" ".join(text for text in told if text))
        self.state_label.setText(words.what_to_do(standing) if concerned else words.say("defers"))
        self.ways_model.show_nodes(way_nodes(conversion, words))
        self.ways_tree.fit_columns()
        rows = result_rows(conversion, words) if conversion.sequence is not None else ()
        self.figures.show_rows((row.label, row.text) for row in rows)
        self.positions_model.show_nodes(conversion_nodes(conversion, words))
        self.positions_tree.fit_columns()
        self.positions_tree.expand(self.positions_model.index_of(session.label))
        self._make_paper(conversion)

    def _make_paper(self, conversion: SiteConversion) -> None:
        session = self._context.session
        service, display, cases = session.workbench.converting(), session.display, self._cases
        on_one_page = self.one_page_box.isChecked()

        def work(ticket: Ticket, form: PaperForm) -> bytes:
            if on_one_page:
                return service.one_page(conversion, display, form=form, progress=ticket)
            return service.pdf(conversion, display, form=form, cases=cases, progress=ticket)

        self.paper.show_document(work)

    def _make_paper_again(self) -> None:
        """Make the report, or the station on one page, of the conversion shown."""
        if self._conversion is not None:
            self.paper.forget_document()
            self._enable(False)
            self._make_paper(self._reported or self._conversion)

    def _show_report(self, conversion: SiteConversion, cases: tuple[CaseResult, ...]) -> None:
        """Make the papers of a case, or of what the survey asks, with all cases beside it."""
        self._reported, self._cases = conversion, cases
        self._make_paper_again()

    def _show_trouble(self, fault: Exception) -> None:
        if isinstance(fault, Cancelled):
            return
        self._made_for = None
        self.progress_row.show_running(False)
        self.state_label.setText(told(str(fault)))
        self._notify(tr("The conversion could not be worked out: {reason}").format(reason=fault))

    def _show_sets(self) -> None:
        """Say which sets the report shows, and which the other papers."""
        conversion, session = self._conversion, self._context.session
        if conversion is None:
            return
        words = session.workbench.converting().words(session.display)
        way = words.word(conversion.survey.conversion.follow)
        head = self._context.sets.head(self._context.story)
        if self._source is not SetsSource.PLAN:
            self.sets_label.setText(head)
            return
        self.sets_label.setText(tr("Sets of this report: {0}. Other papers: {1}.").format(way, head))

    def _on_sets(self) -> None:
        """Follow the sets that all papers show; the way of the survey is worked out where they are planned ones."""
        if self.isVisible():
            self.refresh()
        self._show_sets()

    def _agree(self) -> None:
        conversion, session = self._conversion, self._context.session
        if conversion is not None and conversion.survey == session.survey:
            words = session.workbench.converting().words(session.display)
            self.agree_wanted.emit(conversion, words.word(conversion.survey.conversion.follow))

    # answers

    def _show_answers(self) -> None:
        """Show the answers in view; those of another tab are shown when it is turned to."""
        side = self.tabs.currentWidget()
        if isinstance(side, SiteSide | PositionSide | CasesSide):
            side.refresh()

    def _show_base(self, conversion: SiteConversion | None) -> None:
        """Tell the cases which conversion they are held against."""
        cases = self.tabs.made(CasesSide)
        if cases is not None:
            cases.show_base(conversion)

    def _look_at(self, record: object) -> None:
        if isinstance(record, str):
            self._context.session.look_at(record)

    # files

    def _enable(self, ready: bool) -> None:
        for button in self.buttons.values():
            button.setEnabled(ready)
        # what is agreed or built already is not a way to agree on: show the planned sets for that
        self.agree_button.setEnabled(ready and self._source is SetsSource.PLAN)

    def _save_as(self, suffix: str) -> None:
        session = self._context.session
        stem = f"{file_stem(session.survey.site.name)}-conversion"
        saving = Saving(session.workbench.files_in_use, self)
        if suffix == FileForm.XLSX:
            named = saving.ask_table(tr("Save"), stem)
            if named is not None:
                self.save_to(*named)
            return
        if session.survey.conversion.sequence.start_date is None:
            self._ask_first_day()
            return
        path = saving.ask(tr("Save"), f"{stem}.{suffix}", FileForm(suffix))
        if path is not None:
            self.save_to(path, suffix)

    def _ask_first_day(self) -> None:
        """Go to the question without whose answer there is no calendar."""
        self._notify(tr("A calendar needs dates: write the first day of the plan here, then save it."))
        side = self.tabs.panel(SiteSide)
        self.tabs.setCurrentWidget(side)
        field = side.form.field("sequence.start_date")
        side.ensureWidgetVisible(field)
        field.focus_editor()

    def save_to(self, path: Path, suffix: str) -> None:
        """Write the calendar (``ics``) or the tasks (``xlsx``, ``csv``) into a file."""
        conversion, document = self._reported or self._conversion, self.document
        if conversion is None or document is None:
            return
        session = self._context.session
        service, display = session.workbench.converting(), session.display

        def content() -> bytes:
            makers = {"ics": service.calendar, "xlsx": service.tasks_xlsx, "csv": service.tasks_csv}
            return makers[suffix](conversion, display)

        save_aside(self._context, _FILE, path, content, notify=self._notify)

    def _wanted(self) -> WantedPaper | None:
        name = self._context.session.survey.site.name
        paper = "one-page" if self.one_page_box.isChecked() else "conversion"
        return self.paper.wanted(f"{file_stem(name)}-{paper}", name)

    def _on_changed(self, what: Changed) -> None:
        if self.isVisible() and what & (Changed.SURVEY | Changed.UNITS | Changed.FOCUS):
            self.refresh()
