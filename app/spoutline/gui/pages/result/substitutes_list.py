"""Other parts for a place of the set in hand: everything that could hang there, filled while the search goes on."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, Qt, QTimer, Signal
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.explain.plan.what_differs import ListedParts
from spoutline.gui.edits.decisions import keep_part
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.record_table import RecordTable, SortedRecords
from spoutline.gui.models.substitute_rows import SubstituteRow, details, substitute_columns
from spoutline.gui.pages.context import Context
from spoutline.gui.roles import Role
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.wording import told, tr
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan
from spoutline.model.substitute import Misfit, Substitute, Substitutes
from spoutline.planning.sets.substitutes import Listening

_JOB = JobKey(JobKind.SUBSTITUTES)
_FILL_MS = 120  # rows that come meanwhile are shown together
_BY_PRICE = 2
_HEIGHT = 210


class SubstitutesList(QWidget):
    """Lists the parts for the place of the part in hand.

    Signals
    -------
    asked_why(PartRef)
        A person wants to read what speaks against this part.
    """

    asked_why = Signal(object)

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self._plan: PositionPlan | None = None
        self._part: PartRef | None = None
        self._rows: list[SubstituteRow] = []
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        head = QHBoxLayout()
        head.addWidget(plain_label(tr("Other parts for this place"), "cardTitle"))
        head.addStretch(1)
        self.misfits_box = QCheckBox(tr("&Also those that do not fit"), self)
        self.misfits_box.toggled.connect(lambda _: self._ask())
        head.addWidget(self.misfits_box)
        column.addLayout(head)
        column.addLayout(self._buttons())
        self.model: RecordTable[SubstituteRow] = RecordTable((), self)
        self.proxy = SortedRecords(self)
        self.proxy.setSourceModel(self.model)
        self.table = Table(tr("Other parts for this place"), self, shares=(19, 34, 16, 14, 17))
        self.table.setModel(self.proxy)
        self.table.setSortingEnabled(True)
        self.table.sortByColumn(_BY_PRICE, Qt.SortOrder.AscendingOrder)
        self.table.setFixedHeight(_HEIGHT)
        self.table.picked.connect(lambda _: self._show_marked())
        self.table.opened.connect(self._act)
        column.addWidget(self.table)
        self.detail_label = plain_label("", wraps=True)
        column.addWidget(self.detail_label)
        self._fill = QTimer(self)
        self._fill.setSingleShot(True)
        self._fill.setInterval(_FILL_MS)
        self._fill.timeout.connect(self._show_rows)
        context.jobs.progressed.connect(self._on_progress)

    def _buttons(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.hang_button = QPushButton(tr("Ha&ng this one"), self)
        self.hang_button.clicked.connect(lambda: self._hang(self._marked()))
        self.why_button = QPushButton(tr("Wh&y not?"), self)
        self.why_button.clicked.connect(lambda: self._ask_why(self._marked()))
        row.addWidget(self.hang_button)
        row.addWidget(self.why_button)
        self.state_label = plain_label("", "quiet", wraps=True)
        row.addWidget(self.state_label, 1)
        return row

    def show_place(self, plan: PositionPlan, part: PartRef) -> None:
        """Show what could hang in place of a part of a plan's set; a question already asked is not asked again."""
        if plan is self._plan and part == self._part:
            self._show_rows()
            return
        self._plan, self._part = plan, part
        self._ask()

    def stop_looking(self) -> None:
        """Drop the search in hand and leave what was found in view: the set is being looked for anew."""
        self._context.jobs.cancel(_JOB)
        self._plan = None  # so that the place is asked about again, whatever set comes

    def forget(self) -> None:
        """Show nothing and drop the search in hand: the set is being looked for anew, or there is none."""
        self._context.jobs.cancel(_JOB)
        self._plan, self._part = None, None
        self._rows.clear()
        self._show_rows()
        self.state_label.setText(tr("Looking for sets…"))

    def _ask(self) -> None:
        plan, part, session = self._plan, self._part, self._context.session
        if plan is None or part is None:
            return
        self._rows.clear()
        self._show_rows()
        self.state_label.setText(tr("Trying the parts of the catalog…"))
        survey, with_misfits = session.survey, self.misfits_box.isChecked()

        def work(ticket: Ticket) -> Substitutes:
            ticket.rest()
            listening = Listening(ticket, ticket.hand_over, ticket.hand_over)
            return session.workbench.substitutes(survey, plan, part, listening, with_misfits=with_misfits)

        self._context.jobs.start(_JOB, work, self._finish, self._fail, partly=self._add, priority=3)

    def _add(self, result: Substitute | Misfit) -> None:
        self._rows.append(SubstituteRow(result))
        if not self._fill.isActive():
            self._fill.start()

    def _finish(self, found: Substitutes) -> None:
        self._fill.stop()
        self._rows = [SubstituteRow(fitting) for fitting in found.fitting]
        self._rows.extend(SubstituteRow(misfit) for misfit in found.misfits or ())
        self._show_rows()
        count = len(found.fitting)
        if found.misfits is None:
            text = tr("{count} other parts could hang here.") if count else tr("No other part could hang here.")
            self.state_label.setText(text.format(count=count))
        else:
            text = tr("{count} other parts could hang here, {misfits} of the kind could not.")
            self.state_label.setText(text.format(count=count, misfits=len(found.misfits)))
        if found.not_decided:
            numbers = ", ".join(one.number for one in found.not_decided)
            phrases = self._context.story.phrases
            self.state_label.setText(
                f"{self.state_label.text()} {phrases.fill('substitutes_not_decided', numbers=numbers)}"
            )

    def _fail(self, fault: Exception) -> None:
        self._fill.stop()
        self.state_label.setText(told(str(fault)))

    def _on_progress(self, key: JobKey, done: int, total: int) -> None:
        if key == _JOB and done < total:
            self.state_label.setText(tr("Tried {done} of {total} parts…").format(done=done, total=total))

    def _show_rows(self) -> None:
        """Show the rows that are there; the marked part stays marked, the list stays where it was scrolled to."""
        marked, scrolled = self._marked(), self.table.verticalScrollBar().value()
        with QSignalBlocker(self.table):
            currency = self._context.session.survey.site.currency
            listed = ListedParts((*self._part_in_hand(), *(row.part for row in self._rows)), self._context.story)
            self.model.replace_columns(substitute_columns(self._context.story, currency, listed))
            self.model.show_records(self._rows)
            self.table.fit_columns()
            self._mark_again(marked)
        self.table.verticalScrollBar().setValue(scrolled)
        self._show_marked()

    def _part_in_hand(self) -> tuple[Part, ...]:
        """Return the part in whose place the others could hang: they are told apart from it too."""
        chosen = self._plan.chosen if self._plan is not None else None
        links = chosen.hanging_set.links if chosen is not None else ()
        return tuple(link.part for link in links if link.part.ref == self._part)

    def _mark_again(self, marked: SubstituteRow | None) -> None:
        if marked is None:
            return
        for row in range(self.proxy.rowCount()):
            record = self.proxy.index(row, 0).data(Role.RECORD)
            if isinstance(record, SubstituteRow) and record.part.ref == marked.part.ref:
                self.table.pick_row(row)
                return

    def _marked(self) -> SubstituteRow | None:
        record = self.table.current_record()
        return record if isinstance(record, SubstituteRow) else None

    def _show_marked(self) -> None:
        row = self._marked()
        self.hang_button.setEnabled(row is not None and row.fits)
        self.why_button.setEnabled(row is not None and not row.fits)
        self.detail_label.setText("\n".join(details(row, self._context.story)) if row is not None else "")
        self.detail_label.setVisible(row is not None)

    def _act(self, record: object) -> None:
        """Return or a double-click does what can be done with the row."""
        if isinstance(record, SubstituteRow):
            (self._hang if record.fits else self._ask_why)(record)

    def _hang(self, row: SubstituteRow | None) -> None:
        """Keep the part in place of the one in hand: a decision like any other, and undone like any other."""
        if row is None or not row.fits or self._part is None:
            return
        session, part = self._context.session, row.part.ref
        after = keep_part(session.survey, session.label, part, instead_of=(self._part,))
        self._context.edit(after, tr("Hang {part}").format(part=part.number))
        session.look_at_part(part)

    def _ask_why(self, row: SubstituteRow | None) -> None:
        if row is not None:
            self.asked_why.emit(row.part.ref)
