"""The papers of a day of work: pack, caution sheet, form; shown as they will be printed."""

from __future__ import annotations

from collections.abc import Callable
from enum import StrEnum
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QFormLayout,
    QGridLayout,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from spoutline.book.survey_faults import made
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper, button_grid
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.local_days import day_typed
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.paper_pages import PaperPages
from spoutline.gui.pages.paper.saved_aside import save_made_aside
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.day_edit import DayEdit
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.agreed_sets import SetsSource
from spoutline.model.answered import AsAnswered
from spoutline.model.certificate import CertifiedTest
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.pack import Contact, PackJob
from spoutline.planning.pack.picked import only_positions

_FILE = JobKey(JobKind.FILE, "installer")

_DAYS = ("first_day", "last_day")


class PaperKind(StrEnum):
    """Papers of the panel."""

    PACK = "pack"
    CAUTIONS = "cautions"
    FORM = "form"
    BOND = "bond-test"
    LEAK = "leak-test"


class Scope(StrEnum):
    """What a paper is for."""

    ALL = "all"
    DISPENSER = "dispenser"
    POSITION = "position"


_TESTS = {PaperKind.BOND: CertifiedTest.BOND, PaperKind.LEAK: CertifiedTest.LEAK}


class PackPanel(QWidget):
    """Makes the paper chosen for the whole site or the position in focus, and saves or prints it."""

    def __init__(
        self, context: Context, language: Callable[[], Language], notify: Notify, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._context, self._language, self._notify = context, language, notify
        self._made_for: object = None
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        self.hands = PaperHands(
            context.session.workbench,
            context.jobs,
            self._wanted,
            key=_FILE,
            tell=notify,
            parent=self,
            refuse=self._say,
        )
        splitter.addWidget(self._choices(splitter))
        title = tr("Pages of the installer's paper")
        self.paper = PaperPages("installer", title, context.jobs, self._show_trouble, splitter)
        self.paper.document_shown.connect(self._show_count)
        self.paper.making.connect(self._show_making)
        self.paper.stopped.connect(lambda: self.state_label.setText(tr("Stopped.")))
        splitter.addWidget(self.paper)
        splitter.setSizes([360, 700])
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 6, 0, 0)
        column.addWidget(splitter)

    @property
    def document(self) -> bytes | None:
        """The paper as PDF; None while it is being made."""
        return self.paper.document

    def _choices(self, parent: QWidget) -> QWidget:
        card = Card("", parent)
        form = QFormLayout()
        self.kind_box = StillBox(self)
        for kind, words in (
            (PaperKind.PACK, tr("Installer's pack")),
            (PaperKind.CAUTIONS, tr("Caution sheet alone")),
            (PaperKind.FORM, tr("Commissioning form to fill in")),
            (PaperKind.BOND, tr("Bond test certificate")),
            (PaperKind.LEAK, tr("Leak test certificate")),
        ):
            self.kind_box.addItem(words, kind)
        self.scope_box = StillBox(self)
        self.scope_box.addItem(tr("All positions"), Scope.ALL)
        self.scope_box.addItem(tr("This dispenser only"), Scope.DISPENSER)
        self.scope_box.addItem(tr("This position only"), Scope.POSITION)
        form.addRow(tr("Paper"), self.kind_box)
        form.addRow(tr("For"), self.scope_box)
        self.fields: dict[str, QLineEdit] = {}
        for name, words in (
            ("first_day", tr("First day")),
            ("last_day", tr("Last day")),
            ("authority", tr("Authority")),
            ("adopted_codes", tr("Adopted codes")),
            ("permit_number", tr("Permit number")),
        ):
            field = DayEdit(self) if name in _DAYS else QLineEdit(self)
            field.setObjectName(f"job_{name}")
            field.editingFinished.connect(self.refresh)
            self.fields[name] = field
            form.addRow(words, field)
        self.contacts_edit = QPlainTextEdit(self)
        self.contacts_edit.setPlaceholderText(tr("One person a line: role; name; telephone"))
        self.contacts_edit.setMaximumHeight(76)
        self.contacts_edit.setTabChangesFocus(True)
        form.addRow(tr("People to call"), self.contacts_edit)
        card.body.addLayout(form)
        self.state_label = plain_label("", "quiet", wraps=True)
        card.body.addWidget(self.state_label)
        card.body.addStretch(1)
        card.body.addLayout(self._buttons())
        card.body.addWidget(self._tablet_button())
        self.kind_box.currentIndexChanged.connect(self.refresh)
        self.scope_box.currentIndexChanged.connect(self.refresh)
        return card

    def _buttons(self) -> QGridLayout:
        self.show_button = QPushButton(tr("Sho&w again"), self)
        self.show_button.clicked.connect(lambda _=False: self.show_again())
        save, print_it, mail = self.hands.buttons
        save.setObjectName("primary")
        return button_grid([save, print_it, self.show_button, mail], 2)

    def _tablet_button(self) -> QPushButton:
        self.tablet_button = QPushButton(tr("Save the form for a ta&blet…"), self)
        self.tablet_button.setToolTip(
            tr("One HTML page that is filled in without a network; what it saves is read back as a filled form.")
        )
        self.tablet_button.clicked.connect(self._ask_and_save_tablet_page)
        return self.tablet_button

    def job(self) -> PackJob:
        """Return what was written about the job; raise ``InputFault`` naming the field that cannot be used."""
        days = {name: day_typed(self.fields[name].text(), name.replace("_", " ")) for name in _DAYS}
        if days["first_day"] and days["last_day"] and days["last_day"] < days["first_day"]:
            wanted = "the last day must not come before the first"
            raise InputFault((InputProblem("", "last day", repr(self.fields["last_day"].text()), wanted),))
        return made(
            PackJob,
            first_day=days["first_day"],
            last_day=days["last_day"],
            authority=self.fields["authority"].text()[:200],
            adopted_codes=self.fields["adopted_codes"].text()[:200],
            permit_number=self.fields["permit_number"].text()[:200],
            contacts=tuple(_contacts(self.contacts_edit.toPlainText())),
        )

    def show_again(self) -> None:
        """Plan anew and make the paper anew, whatever is known: somebody else may have changed the book."""
        self._context.sets.plan_anew()
        self._made_for = None
        self.refresh()

    def refresh(self) -> None:
        """Make the paper for the survey, language and units in hand, unless it is there or on its way already."""
        session = self._context.session
        try:
            job = self.job()
        except InputFault as fault:
            self._show_trouble(fault)
            return
        sets, survey, survey_id = self._context.sets, session.survey, session.stored.id
        workbench, display, shown = session.workbench, session.display, sets.whole_site(with_alternatives=False)
        labels = self._labels()
        kind, language = PaperKind(self.kind_box.currentData()), self._language()
        wanted = (AsAnswered(survey), survey_id, display, sets.key, job, labels, kind, language)
        from_records = kind in _TESTS or sets.source is SetsSource.BUILT  # which every record changes
        if wanted == self._made_for and not from_records and self.paper.is_in_hand:
            return
        self._made_for = wanted

        def make_paper(ticket: Ticket, form: PaperForm) -> bytes:
            service = workbench.packing()
            if kind in _TESTS:  # made of records, so of the sets that hang there, whatever is shown
                built = workbench.agreeing().sets_for(survey, SetsSource.BUILT, ticket, survey_id).site_plan
                return service.certificate(only_positions(built, labels), _TESTS[kind], language, display, form=form)
            site_plan = only_positions(shown(ticket), labels)
            make: dict[PaperKind, Callable[[], bytes]] = {
                PaperKind.PACK: lambda: service.pack(site_plan, language, display, job, form=form, progress=ticket),
                PaperKind.CAUTIONS: lambda: service.caution_sheet(site_plan, language, display, form=form),
                PaperKind.FORM: lambda: service.form(site_plan, language, display, progress=ticket),
            }
            return make[kind]()

        self.paper.show_document(make_paper)

    def _labels(self) -> tuple[str, ...]:
        """Return the positions that the paper is for; none where it is for all."""
        session, scope = self._context.session, Scope(self.scope_box.currentData())
        position = session.survey.position(session.label)
        if scope is Scope.ALL or position is None:
            return ()
        if scope is Scope.POSITION:
            return (session.label,)
        return tuple(one.label for one in session.survey.positions if one.dispenser == position.dispenser)

    def save_tablet_page(self, path: Path) -> None:
        """Write the form as a page that a tablet fills in."""
        session, labels, language = self._context.session, self._labels(), self._language()
        workbench, display = session.workbench, session.display
        shown = self._context.sets.whole_site(with_alternatives=False)

        def content(ticket: Ticket) -> bytes:
            return workbench.packing().tablet_page(only_positions(shown(ticket), labels), language, display)

        save_made_aside(self._context, _FILE, path, content, notify=self._notify, refused=self._show_trouble)

    def _ask_and_save_tablet_page(self) -> None:
        stem = file_stem(self._context.session.survey.site.name)
        saving = Saving(self._context.session.workbench.files_in_use, self)
        path = saving.ask(tr("Save"), f"{stem}-tablet-{self._language()}.{FileForm.HTML}", FileForm.HTML)
        if path is not None:
            self.save_tablet_page(path)

    def _wanted(self) -> WantedPaper | None:
        name = self._context.session.survey.site.name
        kind = PaperKind(self.kind_box.currentData())
        stem = f"{file_stem(name)}-{kind}-{self._language()}"
        # a form is filled in and read back as PDF alone
        return self.paper.wanted(stem, name, only_pdf=kind is PaperKind.FORM)

    def _show_making(self) -> None:
        self.state_label.setText(tr("Making the paper…"))
        self._enable()

    def _show_count(self, pages: int) -> None:
        self.state_label.setText(tr("{0} pages").format(pages) if pages > 1 else tr("1 page"))
        self._enable()

    def _say(self, text: str) -> None:
        self.state_label.setText(text)

    def _show_trouble(self, fault: Exception) -> None:
        self._made_for = None
        self.state_label.setText(told(str(fault)))

    def _enable(self) -> None:
        self.hands.allow(self.document is not None)


def _contacts(text: str) -> list[Contact]:
    found: list[Contact] = []
    for line in text.splitlines()[:12]:
        cells = [cell.strip()[:200] for cell in line.split(";")]
        if not any(cells):
            continue
        if len(cells) < 2 or not cells[0] or not cells[1]:
            wanted = "write role; name; telephone, separated by semicolons"
            raise InputFault((InputProblem("", "people to call", repr(line), wanted),))
        telephone = cells[2] if len(cells) > 2 else ""
        found.append(made(Contact, role=cells[0], name=cells[1], telephone=telephone))
    return found
