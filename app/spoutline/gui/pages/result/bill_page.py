"""The bill of the whole site: parts with sums, the paper as it will be printed, files to save."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QGridLayout, QPushButton, QSplitter, QVBoxLayout, QWidget

from spoutline.documents.content.totals import BillLine, position_lines, site_lines, total_of
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper, button_grid
from spoutline.gui.dialogs.saving import FilesInUse, Saving
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.marks import tone_of_plan
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.models.record_table import RecordTable, SortedRecords
from spoutline.gui.models.site_nodes import plan_words
from spoutline.gui.models.table_columns import bill_columns
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.paper_pages import PaperPages
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.pages.sets_head import SetsHead
from spoutline.gui.position_links import LinkedText
from spoutline.gui.session import Changed
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.lists import Table, Tree
from spoutline.gui.widgets.progress_row import ProgressRow
from spoutline.gui.wording import told, tr
from spoutline.model.agreed_sets import SetsSource
from spoutline.model.answered import AsAnswered, is_surveyed
from spoutline.model.plan import SitePlan

_PLAN = JobKey(JobKind.SITE_PLAN)
_FILE = JobKey(JobKind.FILE)


class BillPage(QWidget):
    """Shows the bill. It is made when the page is seen, and made anew when the survey changes while it is seen."""

    def __init__(self, context: Context, notify: Notify, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context, self._notify = context, notify
        self._site_plan: SitePlan | None = None
        self._made_for: object = None
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        workbench = context.session.workbench
        self.hands = PaperHands(workbench, context.jobs, self._wanted, key=_FILE, tell=notify, parent=self)
        splitter.addWidget(self._list_side(splitter))
        self.paper = PaperPages("bill", tr("Pages of the bill"), context.jobs, self._show_trouble, splitter)
        self.paper.document_shown.connect(lambda _: self._enable(True))
        splitter.addWidget(self.paper)
        splitter.setSizes([520, 620])
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 4, 10, 8)
        column.addWidget(splitter)
        context.session.changed.connect(self._on_changed)
        context.sets.changed.connect(lambda: self._on_changed(Changed.SURVEY))

    @property
    def document(self) -> bytes | None:
        """The bill as PDF; None while it is being made."""
        return self.paper.document

    def _list_side(self, parent: QWidget) -> QWidget:
        card = Card("", parent)
        card.body.addWidget(plain_label(tr("Parts list of the site"), "pageTitle"))
        card.body.addWidget(SetsHead(self._context, self))
        self.state_label = LinkedText("quiet", self)
        card.body.addWidget(self.state_label)
        again = tr("Make the parts list"), self.refresh
        self.progress_row = ProgressRow(
            self._context.jobs, _PLAN, tr("Positions looked at"), self._stop, card, again=again
        )
        self.progress_row.show_running(False)
        card.body.addLayout(self.progress_row)
        self.total_label = plain_label("", "price")
        card.body.addWidget(self.total_label)
        self.positions_model = NodeTree((tr("Position"), tr("Outcome"), tr("Amount")), self)
        self.positions_tree = Tree(tr("Positions on the parts list"), card, shares=(4, 4, 3))
        self.positions_tree.setModel(self.positions_model)
        self.positions_tree.setRootIsDecorated(False)
        self.positions_tree.setMaximumHeight(150)
        card.body.addWidget(self.positions_tree)
        self.model: RecordTable[BillLine] = RecordTable((), self)
        proxy = SortedRecords(self)
        proxy.setSourceModel(self.model)
        self.table = Table(tr("Parts of all positions"), card, shares=(4, 7, 2, 4, 4))
        self.table.setModel(proxy)
        self.table.setSortingEnabled(True)
        self.table.sortByColumn(-1, Qt.SortOrder.AscendingOrder)
        card.body.addWidget(self.table, 1)
        self.why_box = QCheckBox(tr("Say &why these parts"), card)
        self.why_box.setToolTip(tr("Adds an annex to the paper: what the catalog has for each place and what decided."))
        self.why_box.toggled.connect(lambda _: self._make_paper_again())
        card.body.addWidget(self.why_box)
        self.short_box = QCheckBox(tr("Sh&ort bill"), card)
        self.short_box.setToolTip(tr("Parts and verdicts alone, a page for ten hoses, with the caution sheet."))
        self.short_box.toggled.connect(self._choose_short)
        card.body.addWidget(self.short_box)
        card.body.addLayout(self._file_buttons(card))
        return card

    def _file_buttons(self, card: QWidget) -> QGridLayout:
        self.buttons: dict[str, QPushButton] = dict(zip(("pdf", "print", "mail"), self.hands.buttons, strict=True))
        for name, words in (("csv", tr("Save &CSV…")), ("xlsx", tr("Save &XLSX…"))):
            button = QPushButton(words, card)
            button.clicked.connect(lambda _=False, suffix=name: self._save_as(suffix))
            self.buttons[name] = button
        self.buttons["pdf"].setObjectName("primary")
        return button_grid([self.buttons[name] for name in ("pdf", "print", "mail", "csv", "xlsx")], 3)

    def refresh(self) -> None:
        """Make the bill for the survey and units in hand, unless it is there already."""
        session = self._context.session
        wanted = (AsAnswered(session.survey), session.display, self._context.sets.key)
        if self._made_for == wanted:
            return
        self._made_for = wanted
        self.paper.forget_document()
        self._enable(False)
        self.state_label.show_text(tr("Planning all positions…"))
        self.progress_row.show_running(True)
        work = self._context.sets.whole_site()
        self._context.jobs.start(_PLAN, work, self._show_plan, self._show_no_plan)

    def _stop(self) -> None:
        """Leave the bill unmade until it is asked for, or the page is turned to again."""
        self._context.jobs.cancel(_PLAN)
        self._made_for = None
        self.progress_row.show_stopped()
        self._show_nothing()
        self.state_label.show_text(tr("Stopped."))

    def _show_nothing(self) -> None:
        """Take list, sum and paper away: they would be those of answers that hold no more."""
        self._site_plan = None
        self.model.show_records(())
        self.positions_model.show_nodes(())
        self.total_label.clear()
        self.paper.show_nothing()

    def forget(self) -> None:
        """Make the bill anew when it is next seen: the rules have changed."""
        self._made_for = None
        if self.isVisible():
            self.refresh()

    def _show_plan(self, whole: SitePlan) -> None:
        """Show the bill of what was surveyed: nobody orders what is assumed from end to end."""
        self.progress_row.show_running(False)
        left_out = self._left_out(whole)
        plan = replace(whole, positions=tuple(one for one in whole.positions if one.position.label not in left_out))
        self._site_plan = plan
        story, currency = self._context.story, plan.survey.site.currency
        lines = site_lines(plan)
        total = total_of(lines)
        self.model.replace_columns(bill_columns(story, currency))
        self.model.show_records(lines)
        self.table.fit_columns()
        self.positions_model.show_nodes(
            tuple(
                Node(
                    cells=(
                        one.position.label,
                        story.sentence(story.verdict(one)),
                        ""
                        if one.chosen is None
                        else story.money(total_of(position_lines(one, currency)).minor, currency),
                    ),
                    record=one.position.label,
                    positions=(one.position.label,),
                    tone=tone_of_plan(one),
                    hint=plan_words(one, story),
                )
                for one in plan.positions
            )
        )
        self.positions_tree.fit_columns()
        self.total_label.setText(tr("Total {sum}").format(sum=story.money(total.minor, currency)))
        missing = sum(one.chosen is None for one in plan.positions)
        words = [
            tr("List prices with what goes with the sets; longest lead time {days}.").format(
                days=story.days(total.longest_lead_time_days)
            )
        ]
        if missing:
            words.append(
                tr("{count} of {all} positions have no set and are not in the sum.").format(
                    count=missing, all=len(plan.positions)
                )
            )
        if total.unpriced:
            words.append(tr("Without price: {parts}.").format(parts=", ".join(total.unpriced)))
        if left_open := story.still_to_save(whole):
            words.append(left_open)
        if left_out:
            words.append(tr("Not surveyed yet, and not in the list: {labels}.").format(labels=", ".join(left_out)))
        self.state_label.show_text(" ".join(words), left_out)
        if plan.positions:
            self._make_paper(plan)

    def _left_out(self, plan: SitePlan) -> tuple[str, ...]:
        """Return the positions that are planned and that nobody surveyed; what was agreed stays in."""
        if self._context.sets.source is not SetsSource.PLAN:
            return ()
        return tuple(one.position.label for one in plan.positions if not is_surveyed(one.position))

    def _make_paper(self, plan: SitePlan) -> None:
        session = self._context.session
        workbench, display = session.workbench, session.display

        with_reasons, is_short = self.why_box.isChecked(), self.short_box.isChecked()

        def work(ticket: Ticket, form: PaperForm) -> bytes:
            if is_short:
                return workbench.bills().short_pdf(plan, display, form=form)
            reasons = workbench.station_reasons(plan, ticket) if with_reasons else {}
            return workbench.bills().pdf(plan, display, None, reasons=reasons, form=form, progress=ticket)

        self.paper.show_document(work)

    def _choose_short(self, short: bool) -> None:
        """Make the short bill, which says nothing of reasons, or the full one."""
        self.why_box.setEnabled(not short)
        self._make_paper_again()

    def _make_paper_again(self) -> None:
        if self._site_plan is not None and self._site_plan.positions and self._made_for is not None:
            self.paper.forget_document()
            self._enable(False)
            self._make_paper(self._site_plan)

    def _show_no_plan(self, fault: Exception) -> None:
        self.progress_row.show_running(False)
        self._show_nothing()
        self._show_trouble(fault)

    def _show_trouble(self, fault: Exception) -> None:
        self._made_for = None
        self.state_label.show_text(told(str(fault)))
        self._notify(tr("The bill could not be made: {reason}").format(reason=fault))

    def _enable(self, ready: bool) -> None:
        for button in self.buttons.values():
            button.setEnabled(ready)

    @property
    def _files_in_use(self) -> FilesInUse:
        return self._context.session.workbench.files_in_use

    def _save_as(self, suffix: str) -> None:
        stem, saving = file_stem(self._context.session.survey.site.name), Saving(self._files_in_use, self)
        path = saving.ask(tr("Save the bill"), f"{stem}.{suffix}", FileForm(suffix))
        if path is not None:
            self.save_to(path, suffix)

    def save_to(self, path: Path, suffix: str) -> None:
        """Write the bill as a table into a file: ``csv`` or ``xlsx``. A failure leaves a file that was there."""
        plan, document = self._site_plan, self.document
        if plan is None or document is None:
            return
        workbench, display = self._context.session.workbench, self._context.session.display

        content = {
            "csv": lambda: workbench.bills().csv(plan, display, workbench.packing().recorded(plan)),
            "xlsx": lambda: workbench.bills().xlsx(plan, display, records=workbench.packing().recorded(plan)),
        }[suffix]
        save_aside(self._context, _FILE, path, content, notify=self._notify)

    def _wanted(self) -> WantedPaper | None:
        name = self._context.session.survey.site.name
        return self.paper.wanted(file_stem(name), name)

    def _on_changed(self, what: Changed) -> None:
        if self.isVisible() and what & (Changed.SURVEY | Changed.UNITS):
            self.refresh()
