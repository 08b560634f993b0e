"""The revisions of a quotation: its steps, older revisions to read, and what changed between two of them."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from spoutline.book.quotation_records import QuotationEvent
from spoutline.frozen import frozen
from spoutline.gui.jobs import JobKey, JobKind
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.quotation_changes import change_nodes, change_titles
from spoutline.gui.models.quotation_columns import event_columns
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table, Tree
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.quotation import Quotation
from spoutline.planning.refit.revision_changes import RevisionChange, revision_changes

_COMPARE = JobKey(JobKind.QUOTATION, "compare")


@frozen
class Choice:
    """A revision to compare; None stands for what was quoted again and is not kept yet."""

    revision: int | None

    @property
    def words(self) -> str:
        """How the revision is named."""
        return tr("not kept yet") if self.revision is None else tr("r{0}").format(self.revision)


class HistoryPanel(QWidget):
    """Steps above, comparison below; compares off the window's thread.

    Signals
    -------
    revision_wanted(int)
        A person wants to read this revision.
    """

    revision_wanted = Signal(int)

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self._hand = InHand()
        self._made: Quotation | None = None  # quoted again and not kept yet
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 10)
        self.model: RecordTable[QuotationEvent] = RecordTable((), self)
        self.table = Table(tr("Steps of the quotation"), self, stretch=4)
        self.table.setModel(self.model)
        self.table.teach(tr("Every step of a quotation comes here once it is saved in the book."))
        self.table.opened.connect(lambda _: self._read())
        self.table.picked.connect(lambda _: self._enable())
        column.addWidget(self.table, 2)
        self.read_button = QPushButton(tr("Read a revision"), self)
        self.read_button.clicked.connect(self._read)
        column.addWidget(self.read_button)
        column.addWidget(self._choice_row())
        self.change_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.change_label)
        self.changes = NodeTree(change_titles("", ""), self)
        self.tree = Tree(tr("What changed between the two revisions"), self, shares=(5, 4, 4))
        self.tree.setModel(self.changes)
        column.addWidget(self.tree, 3)

    def show_hand(self, hand: InHand) -> None:
        """Show the revisions of another quotation, or of the same one after a step."""
        same = self._hand.stored is not None and hand.stored is not None and self._hand.stored.id == hand.stored.id
        grown = self._hand.stored != hand.stored or self._hand.events != hand.events
        self._hand = hand
        if not hand.is_older:
            made = hand.quotation if hand.stored is not None and not hand.is_kept else None
            grown = grown or made is not self._made
            self._made = made
        if not (same and not grown):
            self.model.replace_columns(event_columns(self._context.story))
            self.model.show_records(tuple(reversed(hand.events)))
            self.table.fit_columns()
            self._offer_choices()
        self._enable()

    def _choice_row(self) -> QWidget:
        self.choice_bar = QWidget(self)
        row = QHBoxLayout(self.choice_bar)
        row.setContentsMargins(0, 0, 0, 0)
        self.before_box, self.after_box = StillBox(self), StillBox(self)
        for box, name in ((self.before_box, tr("Revision before")), (self.after_box, tr("Revision after"))):
            box.setAccessibleName(name)
            box.currentIndexChanged.connect(lambda _: self.compare())
        row.addWidget(plain_label(tr("What changed from"), "quiet"))
        row.addWidget(self.before_box, 1)
        row.addWidget(plain_label(tr("to"), "quiet"))
        row.addWidget(self.after_box, 1)
        return self.choice_bar

    def _offer_choices(self) -> None:
        """Offer every revision; the newest against the one before is chosen."""
        stored = self._hand.stored
        choices = [Choice(number) for number in range(1, stored.revision + 1)] if stored is not None else []
        if self._made is not None:
            choices.append(Choice(None))
        for box, back in ((self.before_box, 2), (self.after_box, 1)):
            box.blockSignals(True)
            box.clear()
            for choice in choices:
                box.addItem(choice.words, choice)
            box.setCurrentIndex(max(0, len(choices) - back))
            box.blockSignals(False)
        for widget in (self.choice_bar, self.tree):
            widget.setVisible(len(choices) > 1)
        self.compare()

    def compare(self) -> None:
        """Show what changed between the two revisions chosen."""
        stored, before, after = self._hand.stored, self.before_box.currentData(), self.after_box.currentData()
        self._context.jobs.cancel(_COMPARE)
        self.changes.show_nodes(())
        if stored is None or not isinstance(before, Choice) or not isinstance(after, Choice) or before == after:
            self.change_label.setText(self._alone())
            return
        self.change_label.setText(tr("Comparing…"))
        titles = change_titles(before.words, after.words)
        read = self._reader(stored.id)
        self._context.jobs.start(
            _COMPARE,
            lambda _: revision_changes(read(before), read(after)),
            lambda changes: self._show_changes(changes, titles),
            lambda fault: self.change_label.setText(told(str(fault))),
        )

    def _reader(self, quotation_id: int) -> Callable[[Choice], Quotation]:
        """Return what reads a revision; called off the window's thread."""
        service, made = self._context.session.workbench.quoting(), self._made

        def read(choice: Choice) -> Quotation:
            if choice.revision is None and made is not None:
                return made
            return service.life().at_revision(quotation_id, choice.revision or 1)

        return read

    def _alone(self) -> str:
        if self._hand.stored is None:
            return tr("A quotation in the book has revisions; keep this one or look one up.")
        return tr("One revision so far.") if self.before_box.count() < 2 else tr("Choose two different revisions.")

    def _show_changes(self, changes: tuple[RevisionChange, ...], titles: tuple[str, str, str]) -> None:
        self.change_label.setText(
            tr("{0} differences").format(len(changes)) if changes else tr("Nothing differs between the two.")
        )
        self.changes.retitle(titles)
        self.changes.show_nodes(change_nodes(changes, self._context.story))
        self.tree.span_rows(self.changes.spanning())
        self.tree.expandAll()
        self.tree.fit_columns()

    def _marked(self) -> QuotationEvent | None:
        record = self.table.current_record()
        return record if isinstance(record, QuotationEvent) else None

    def _enable(self) -> None:
        event = self._marked()
        self.read_button.setEnabled(event is not None)
        words = tr("Read revision {0}").format(event.revision) if event is not None else tr("Read a revision")
        self.read_button.setText(words)

    def _read(self) -> None:
        event = self._marked()
        if event is not None:
            self.revision_wanted.emit(event.revision)
