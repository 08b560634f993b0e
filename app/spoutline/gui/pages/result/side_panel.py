"""Beside every step: the live drawing, the flow chart and the parts of the set in hand."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QSplitter, QTabWidget, QToolButton, QVBoxLayout, QWidget

from spoutline.documents.drawing.shapes import Drawing
from spoutline.explain.plan.story import Story
from spoutline.gui.dialogs.saving import Saving
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.record_table import RecordTable
from spoutline.gui.models.site_nodes import tone_words
from spoutline.gui.models.table_columns import SetRow, set_columns, set_rows
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.pages.paper.saved_aside import save_aside
from spoutline.gui.roles import Tone
from spoutline.gui.session import Changed
from spoutline.gui.widgets.cards import plain_label, tab_pages
from spoutline.gui.widgets.drawing_view import DrawingView
from spoutline.gui.widgets.icons import icon
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.page_images import png_bytes
from spoutline.gui.wording import tr
from spoutline.model.plan import JudgedSet, PositionPlan
from spoutline.model.quantity import Dimension

_PICTURE = JobKey(JobKind.FILE, "picture")


class SidePanel(QWidget):
    """Shows what the answers lead to, whatever step is open.

    Signals
    -------
    noted(str)
        What became of a picture that was to be saved.
    """

    noted = Signal(str)

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self._is_due = False
        self._drawn: tuple[PositionPlan, Story] | None = None  # of what drawing and chart are
        self._told_by: Story | None = None  # in whose words the columns are
        self.position_label = plain_label("", "siteTitle", wraps=True)
        splitter = QSplitter(Qt.Orientation.Vertical, self)
        splitter.setChildrenCollapsible(False)
        self.tabs = QTabWidget(splitter)
        pages = tab_pages(self.tabs)
        self.tabs.addTab(self._drawing_side(pages), tr("Drawing"))
        self.chart = DrawingView(tr("Flow against pressure"), pages)
        self.chart.saving_wanted.connect(lambda: self._ask_and_save(self.chart))
        self.tabs.addTab(self.chart, tr("Flow"))
        self.tabs.tabBar().setAccessibleName(tr("Drawing or flow chart"))
        self.tabs.currentChanged.connect(lambda _: self._on_tab())
        splitter.addWidget(self.tabs)
        splitter.addWidget(self._set_side(splitter))
        splitter.setSizes([520, 250])
        splitter.setStretchFactor(0, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 4, 10, 8)
        column.addWidget(self.position_label)
        column.addWidget(splitter, 1)
        context.session.changed.connect(self._on_changed)
        context.sets.updated.connect(self._on_updated)

    def _drawing_side(self, parent: QWidget) -> QWidget:
        side = QFrame(parent)
        side.setObjectName("drawingCard")
        self.drawing = DrawingView(tr("Drawing of the position"), side)
        self.drawing.part_picked.connect(self._context.session.look_at_part)
        self.drawing.saving_wanted.connect(lambda: self._ask_and_save(self.drawing))
        self.drawing.length_words = lambda length_m: self._context.session.display.show(length_m, Dimension.LENGTH)
        column = QVBoxLayout(side)
        column.setContentsMargins(1, 1, 1, 1)
        column.setSpacing(0)
        row = QHBoxLayout()
        row.setContentsMargins(8, 4, 8, 0)
        self._note_label = plain_label("", "help")
        row.addWidget(self._note_label, 1)
        for name, words, act in (
            ("reduce", tr("Drawing smaller"), self.drawing.reduce),
            ("enlarge", tr("Drawing larger"), self.drawing.enlarge),
            ("whole", tr("Whole drawing"), self.drawing.show_whole),
        ):
            button = QToolButton(side)
            button.setIcon(icon(name))
            button.setIconSize(QSize(18, 18))
            button.setToolTip(words)
            button.setAccessibleName(words)
            button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
            button.clicked.connect(act)
            row.addWidget(button)
        self.measure_button = QToolButton(side)
        self.measure_button.setIcon(icon("measure"))
        self.measure_button.setIconSize(QSize(18, 18))
        words = tr("Measure a distance: drag from one point to the other (M)")
        self.measure_button.setToolTip(words)
        self.measure_button.setAccessibleName(words)
        self.measure_button.setCheckable(True)
        self.measure_button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.measure_button.toggled.connect(self.drawing.measure)
        self.drawing.measuring.connect(self.measure_button.setChecked)
        row.addWidget(self.measure_button)
        column.addLayout(row)
        column.addWidget(self.drawing, 1)
        return side

    def _ask_and_save(self, view: DrawingView) -> None:
        session = self._context.session
        stem = f"{file_stem(session.survey.site.name)}-{file_stem(session.label)}"
        path = Saving(session.workbench.files_in_use, self).ask_picture(tr("Save the picture"), stem)
        if path is not None:
            self.save_picture(view, path)

    def save_picture(self, view: DrawingView, path: Path) -> None:
        """Write a drawing as SVG, as large as on paper, or what is shown of it as PNG, by the ending of the name."""
        drawing = view.drawing
        if drawing is None:
            return
        image = view.picture()

        def content() -> bytes:
            if path.suffix.lower() == ".svg":
                from spoutline.documents.html.svg import drawing_file

                return drawing_file(drawing)
            return png_bytes(image)

        save_aside(self._context, _PICTURE, path, content, notify=self.noted.emit)

    def _set_side(self, parent: QWidget) -> QWidget:
        side = QWidget(parent)
        self.model: RecordTable[SetRow] = RecordTable((), self)
        # number and price are read here; the name, which the set page tells too, gives way to them
        self.table = Table(
            tr("Parts of the set in hand"), side, shares=(3, 8, 7, 7, 7), whole=(1, 2, 4), gives_way=(3, 0)
        )
        self.table.setModel(self.model)
        self.table.picked.connect(self._pick)
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 6, 0, 0)
        column.setSpacing(4)
        row = QHBoxLayout()
        row.addWidget(plain_label(tr("Set in hand"), "cardTitle"))
        row.addStretch(1)
        self.total_label = QLabel(side)
        self.total_label.setObjectName("cardTitle")
        row.addWidget(self.total_label)
        column.addLayout(row)
        column.addWidget(self.table)
        return side

    def showEvent(self, event: QShowEvent) -> None:
        """Qt: show what changed while nobody saw it."""
        super().showEvent(event)
        if self._is_due:
            self.refresh()

    def refresh(self) -> None:
        """Show drawing, chart and parts of the plan in focus; what is shown already stays as it is."""
        self._is_due = False
        self._show_position()
        plan, story = self._context.plan_to_show, self._context.story
        stale = self._context.plan is None
        trouble = self._context.sets.trouble(self._context.session.label)
        if plan is None or trouble:
            note = trouble or tr("Looking for sets…")
            self.drawing.show_drawing(None, note)
            self.chart.show_drawing(None, note)
            self.model.show_records(())
            self.total_label.clear()
            self._drawn = None
            return
        self._draw(plan, story, stale=stale)
        self.drawing.show_picked(self._context.session.part)
        self._show_set(plan, story)
        self.total_label.setText(self._price_words(plan.chosen))
        self._mark_row()

    def _show_position(self) -> None:
        position = self._context.session.position
        self.position_label.setText(f"{position.label} · {tr('dispenser')} {position.dispenser}")

    def _draw(self, plan: PositionPlan, story: Story, *, stale: bool) -> None:
        """Show the drawing of a plan, and its chart where that is in view, unless they are there."""
        from spoutline.documents.drawing.position import position_drawing

        known = self._drawn is not None and self._drawn[0] is plan and self._drawn[1] is story
        drawing = self.drawing.drawing if known else position_drawing(plan, story)
        self.drawing.show_drawing(drawing, stale=stale)
        self._drawn = plan, story
        if not known and self.tabs.currentWidget() is self.chart:
            self._draw_chart(plan)

    def _show_set(self, plan: PositionPlan, story: Story) -> None:
        rows = set_rows(plan)
        if story is not self._told_by:
            self._told_by = story
            self.model.replace_columns(set_columns(story))
        elif rows == self.model.records:
            return
        self.model.show_records(rows)
        self.table.fit_columns()

    def _on_tab(self) -> None:
        self.refresh()
        if self.tabs.currentWidget() is self.chart and self._drawn is not None:
            self._draw_chart(self._drawn[0])

    def _price_words(self, chosen: JudgedSet | None) -> str:
        """Return the price of the set; that of a position which nobody surveyed means nothing."""
        if self._context.sets.tone(self._context.session.label) is Tone.OPEN:
            return tone_words(Tone.OPEN)
        if chosen is None:
            return tr("no set")
        return self._context.story.money(chosen.hanging_set.price_minor, chosen.hanging_set.currency)

    def _draw_chart(self, plan: PositionPlan) -> None:
        story = self._context.story

        def work(_: Ticket) -> Drawing | None:
            from spoutline.documents.drawing.flow_chart import flow_chart

            return flow_chart(plan, story)

        def deliver(drawing: Drawing | None) -> None:
            self.chart.show_drawing(drawing, tr("There is no set whose flow could be shown."))

        def fail(fault: Exception) -> None:
            self.chart.show_drawing(None, tr("The flow cannot be shown here: {reason}").format(reason=fault))

        self._context.jobs.start(JobKey(JobKind.CHART), work, deliver, fail)

    def _pick(self, record: object) -> None:
        if isinstance(record, SetRow):
            self._context.session.look_at_part(record.link.part.ref)

    def _mark_row(self) -> None:
        part = self._context.session.part
        rows = [row for row, record in enumerate(self.model.records) if record.link.part.ref == part]
        if rows:
            self.table.pick_row(rows[0])

    def _on_changed(self, what: Changed) -> None:
        if what is Changed.PART:
            self.drawing.show_picked(self._context.session.part)
            self._mark_row()
        elif what is Changed.SURVEY and self._drawn is not None and self._is_being_made():
            self._show_position()
            self.drawing.show_stale_soon()
        else:
            self._refresh_if_seen()

    def _is_being_made(self) -> bool:
        """Whether a plan is on its way, so that what is shown need not be shown once more before it comes."""
        return self._context.plan is None and not self._context.sets.trouble(self._context.session.label)

    def _on_updated(self, label: str) -> None:
        if label == self._context.session.label:
            self._refresh_if_seen()

    def _refresh_if_seen(self) -> None:
        """Show what changed, now or when somebody sees it."""
        self._is_due = True
        if self.isVisible():
            self.refresh()
