"""A part is not on the van: what else of the stock would do here, re-checked at once."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QFileDialog,
    QFormLayout,
    QHBoxLayout,
    QPlainTextEdit,
    QPushButton,
    QWidget,
)

from spoutline.explain.plan.story import Story
from spoutline.gui.jobs import JobKey, JobKind
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.pages.context import Context
from spoutline.gui.roles import Tone
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault
from spoutline.model.finding import Severity, Verdict
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.plan import PositionPlan
from spoutline.model.record import SWAP_REASONS, ChangeReason
from spoutline.model.stock import SwapOption

_SWAP = JobKey(JobKind.WHY_NOT, "swap")
_HEAD = "part_number,quantity"


class SwapPanel(QWidget):
    """Asks which part is missing and what is in stock, and shows what would do.

    Signals
    -------
    fitted(PartRef, object, str)
        A swap was decided: the planned part, the parts fitted in its place, the reason.
    """

    fitted = Signal(object, object, str)

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self._asked_for: PartRef | None = None
        self._asked_of: PositionPlan | None = None  # whose set the answer shown is about
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 6, 0, 0)
        row.addWidget(self._question_card(), 2)
        row.addWidget(self._answer_card(), 3)

    def _question_card(self) -> Card:
        card = Card(tr("What is missing, and what is there"), self)
        form = QFormLayout()
        self.missing_box = StillBox(self)
        self.missing_box.setObjectName("missingPart")
        self.missing_box.activated.connect(lambda _: self._forget_other())
        form.addRow(tr("Part that is not on the truck"), self.missing_box)
        card.body.addLayout(form)
        card.body.addWidget(plain_label(tr("Stock list: part number and quantity, one part a line"), "quiet"))
        self.stock_edit = QPlainTextEdit(self)
        self.stock_edit.setAccessibleName(tr("Stock list"))
        self.stock_edit.setPlaceholderText("QW-N105,2")
        self.stock_edit.setTabChangesFocus(True)
        card.body.addWidget(self.stock_edit, 1)
        row = QHBoxLayout()
        self.file_button = QPushButton(tr("Read a sto&ck list…"), self)
        self.file_button.clicked.connect(self._ask_file)
        self.ask_button = QPushButton(tr("What else would &do here"), self)
        self.ask_button.setObjectName("primary")
        self.ask_button.clicked.connect(self.ask)
        row.addWidget(self.file_button, 1)
        row.addWidget(self.ask_button, 1)
        card.body.addLayout(row)
        return card

    def _answer_card(self) -> Card:
        card = Card(tr("What else would do here"), self)
        self.state_label = plain_label("", "quiet", wraps=True)
        card.body.addWidget(self.state_label)
        self.model = NodeTree((tr("Part"), tr("At hand"), tr("Change")), self)
        self.tree = Tree(tr("Stocked parts in place of the missing one"), self, shares=(6, 2, 5))
        self.tree.setModel(self.model)
        self.tree.picked.connect(lambda _: self._show_choice())
        card.body.addWidget(self.tree, 1)
        row = QHBoxLayout()
        self.reason_box = StillBox(self)
        self.reason_box.setAccessibleName(tr("Reason for the replacement"))
        self.fit_button = QPushButton(tr("&Fit it and note it in the record"), self)
        self.fit_button.clicked.connect(self.fit)
        row.addWidget(plain_label(tr("Reason"), "quiet"))
        row.addWidget(self.reason_box, 1)
        row.addWidget(self.fit_button)
        card.body.addLayout(row)
        return card

    def refresh(self) -> None:
        """Offer the parts of the position in focus."""
        story, session = self._context.story, self._context.session
        plan = self._context.sets.plan(session.label)
        links = plan.chosen.hanging_set.links if plan is not None and plan.chosen is not None else ()
        current = self.missing_box.currentData()
        self.missing_box.clear()
        refs = [link.part.ref for link in links]
        for link, shown in zip(links, told_apart(refs), strict=True):
            self.missing_box.addItem(f"{story.title(link.slot)}{story.writing.colon} {shown}", link.part.ref)
        place = refs.index(current) if current in refs else -1
        self.missing_box.setCurrentIndex(max(0, place) if links else -1)
        if self.reason_box.count() == 0:
            words = session.workbench.packing().words(session.workbench.language, session.display).story
            for reason in SWAP_REASONS:
                self.reason_box.addItem(words.word(reason), reason)
        self.ask_button.setEnabled(bool(links))
        if plan is not self._asked_of or plan is None:
            self._say_why_empty(self._teaching(has_set=bool(links)))
        self._forget_other()

    def use_stock(self, path: Path) -> None:
        """Take the stock from a file."""
        try:
            stock = self._context.session.workbench.packing().read_stock(path)
        except InputFault as fault:
            self.state_label.setText(told(str(fault)))
            return
        self.stock_edit.setPlainText("\n".join(f"{line.part},{line.quantity}" for line in stock.lines))

    def ask(self) -> None:
        """Search the stock for what would do."""
        session, missing = self._context.session, self.missing_box.currentData()
        plan = self._context.sets.plan(session.label)
        if plan is None or missing is None:
            return
        workbench, survey = session.workbench, session.survey
        written = self.stock_edit.toPlainText().strip()
        text = written if written.lower().startswith("part_number") else f"{_HEAD}\n{written}\n"
        try:
            stock = workbench.packing().stock_from_csv(text, tr("stock list"))
        except InputFault as fault:
            self._say_why_empty(told(str(fault)))
            return
        self._say_why_empty(tr("Checking every stocked part…"))
        self._asked_for, self._asked_of = missing, plan
        self._context.jobs.start(
            _SWAP,
            lambda _: workbench.packing().swap_options(survey, plan, missing, stock),
            lambda options: self._show_options(options, missing, plan),
            lambda fault: self._say_why_empty(told(str(fault))),
        )

    def fit(self) -> None:
        """Note the picked part as fitted, with the reason."""
        option = self.tree.current_record()
        if not isinstance(option, SwapOption) or option.judged is None:
            return
        reason = ChangeReason(self.reason_box.currentData())
        self.fitted.emit(self._asked_for, option.put_in, reason.value)
        for part in option.taken_out:
            if part != self._asked_for:
                self.fitted.emit(part, (), reason.value)

    def _forget_other(self) -> None:
        """Take an answer away that is about another part than the one picked."""
        if self._asked_for is not None and self._asked_for != self.missing_box.currentData():
            self._say_why_empty(self._teaching(has_set=self.missing_box.count() > 0))
        self._show_choice()

    def _teaching(self, *, has_set: bool) -> str:
        if not has_set:
            return tr("No set was chosen for this position, so there is no part to replace.")
        return tr("Pick the missing part, list what is in stock, and ask: what would do stands here.")

    def _say_why_empty(self, words: str) -> None:
        """Empty the list; an answer that still comes is about a question that nobody asks any more."""
        self._asked_for = self._asked_of = None
        self.model.show_nodes(())
        self.state_label.setText(words)
        self._show_choice()

    def _show_options(self, options: tuple[SwapOption, ...], missing: PartRef, plan: PositionPlan) -> None:
        if missing != self._asked_for or plan is not self._asked_of:
            return
        story, currency = self._context.story, self._context.session.survey.site.currency
        self.model.show_nodes(tuple(_node(option, currency, story) for option in options))
        self.tree.expandAll()
        self.tree.fit_columns()
        fitting = sum(option.judged is not None for option in options)
        words = tr("{0} of {1} stocked parts of this kind would do.").format(fitting, len(options))
        undecided = sum(option.is_undecided for option in options)
        if undecided:
            words = f"{words} {tr('Not decided for {0} of them.').format(undecided)}"
        self.state_label.setText(words if options else tr("The stock holds no other part of this kind."))
        if options:
            self.tree.pick(self.model.index(0, 0))
        self._show_choice()

    def _show_choice(self) -> None:
        option = self.tree.current_record()
        self.fit_button.setEnabled(isinstance(option, SwapOption) and option.judged is not None)

    def _ask_file(self) -> None:
        path, _ = QFileDialog.getOpenFileName(self, tr("Read a stock list"), "", "CSV (*.csv)")
        if path:
            self.use_stock(Path(path))


def _node(option: SwapOption, currency: str, story: Story) -> Node:
    details = tuple(Node(cells=(text, "", ""), tone=Tone.NOTE) for text in _details(option, story))
    tone = Tone.BAD if option.judged is None else Tone.GOOD
    if option.is_undecided:
        change, tone = tr("not decided whether it would do"), Tone.QUESTION
    elif option.judged is None:
        change = tr("would not do")
    else:
        price = story.money(option.judged.hanging_set.price_minor, currency)
        change = tr("put in {0}; set {1}").format(", ".join(_shown(option)), price)
    return Node(
        cells=(story.part(option.part), str(option.quantity), change),
        record=option,
        tone=tone,
        children=details,
    )


def _shown(option: SwapOption) -> tuple[str, ...]:
    """Return what comes, each part with its maker where one that goes has the same number."""
    return told_apart((*option.taken_out, *option.put_in))[len(option.taken_out) :]


def _details(option: SwapOption, story: Story) -> Iterator[str]:
    """Return the musts that a refused part breaks, what is left open, or the checks that an offered set fails."""
    yield from (story.finding(finding).sentence for finding in option.left_open)
    if option.is_undecided:
        return
    if option.judged is None:
        for finding in option.findings:
            if finding.verdict is Verdict.BROKEN and finding.severity is Severity.MUST:
                yield story.finding(finding).sentence
        if option.misfit.finding is None and not option.left_open:
            yield story.misfit(option.misfit)
        return
    for check in option.judged.checks:
        if not check.passes:
            cells = story.check(check)
            yield f"{cells.title}: {cells.value}, {cells.limit} ({cells.outcome_word})"
