"""Sets weighed against each other: a chart whose axes are chosen, the same as a table, and one of them taken."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QCheckBox, QComboBox, QFileDialog, QHBoxLayout, QPushButton, QSplitter, QWidget

from spoutline.documents.drawing.front_chart import (
    Charted,
    charted_front,
    charted_station,
    front_chart,
    places_of_points,
)
from spoutline.documents.paper_form import PaperForm
from spoutline.explain.plan.front_text import (
    axis_notes,
    figures_text,
    front_sentences,
    set_text,
    station_sentences,
    title_text,
)
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.dialogs.handing import PaperHands, WantedPaper
from spoutline.gui.dialogs.weighing_tools import WeighingTools
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.front_nodes import front_nodes, front_titles, station_nodes
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.front_chart_view import FrontChartView
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.progress_row import ProgressRow
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.front import FrontAxis, PositionFront, StationFront
from spoutline.model.plan import SitePlan
from spoutline.model.quotation_terms import Terms
from spoutline.model.survey import Survey

_ASK, _PICK, _FILE = JobKey(JobKind.WEIGH), JobKey(JobKind.WEIGH, "picked"), JobKey(JobKind.FILE, "weighing")
_USUAL = (FrontAxis.PRICE, FrontAxis.LEAD, FrontAxis.FLOW)


class WeighingDialog(FormDialog):
    """Weighs sets; once accepted, one of two things was wanted.

    ``after`` is the survey that asks for the parts taken, ``said`` names the change. ``agreed`` are the sets to agree
    on, as a plan of their positions.
    """

    help_topic = "weighing"

    def __init__(self, survey: Survey, label: str, tools: WeighingTools, parent: QWidget | None = None) -> None:
        super().__init__(tr("Weigh sets"), parent)
        self._survey, self._label, self._tools = survey, label, tools
        self._terms: Terms | None = None
        self.found: PositionFront | StationFront | None = None
        self.after: Survey | None = None
        self.agreed: SitePlan | None = None
        self.said = ""
        lead = tr("Every set shown is one that no other outdoes on the axes chosen. Taking one asks for its parts.")
        self.body.addWidget(plain_label(lead, "quiet", wraps=True))
        self.body.addLayout(self._choices())
        self.body.addLayout(self._wishes())
        self.progress_row = ProgressRow(tools.jobs, _ASK, tr("Sets looked at"), self.stop, self)
        self.body.addLayout(self.progress_row)
        self.body.addWidget(self._answer(), 1)
        self.told_label = plain_label("", "quiet", wraps=True)
        self.body.addWidget(self.told_label)
        self.hands = PaperHands(
            tools.workbench,
            tools.jobs,
            self._wanted,
            key=_FILE,
            tell=self.told_label.setText,
            parent=self,
            refuse=self.show_fault,
        )
        for place, button in enumerate(self.hands.buttons):
            self.foot.insertWidget(place, button)
        self.agree_button = QPushButton(tr("A&gree on this set…"), self)
        self.agree_button.setToolTip(
            tr("Papers show it from then on. At a station, the sets of all positions at once.")
        )
        self.agree_button.setAutoDefault(False)
        self.agree_button.clicked.connect(self.agree)
        self.add_buttons(tr("&Take this set"))
        self.foot.insertWidget(self.foot.count() - 1, self.agree_button)
        self.accept_button.setDefault(False)
        self.accept_button.setAutoDefault(False)
        self.resize(1080, 640)
        self._offer_axes()
        self.ask()

    # what is chosen

    def _choices(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.scope_box, self.x_box, self.y_box, self.size_box = (StillBox(self) for _ in range(4))
        for words, box, name in (
            (tr("Weigh"), self.scope_box, tr("What is weighed")),
            (tr("to the right"), self.x_box, tr("Axis to the right")),
            (tr("upward"), self.y_box, tr("Axis upward")),
            (tr("size"), self.size_box, tr("Axis told by the size of the points")),
        ):
            row.addWidget(plain_label(words, "quiet"))
            row.addWidget(box, 1)
            box.setAccessibleName(name)
            box.setMinimumContentsLength(8)
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.scope_box.addItem(tr("position {0}").format(self._label), False)
        self.scope_box.addItem(tr("the whole station"), True)
        self.scope_box.activated.connect(lambda _: self._turn())
        for box in (self.x_box, self.y_box, self.size_box):
            box.activated.connect(lambda _, changed=box: self._on_axis(changed))
        return row

    def _wishes(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.free_box = QCheckBox(tr("Leave &aside the parts asked for"), self)
        self.free_box.setToolTip(tr("Other parts can then take their places."))
        self.free_box.toggled.connect(lambda _: self.ask())
        self.terms_button = QPushButton(tr("Terms for the yearly &cost…"), self)
        self.terms_button.setToolTip(
            tr("Without terms the yearly cost is wear alone. Terms add drive-offs, losses through hoses and spares.")
        )
        self.terms_button.setAutoDefault(False)
        self.terms_button.clicked.connect(self.choose_terms)
        row.addWidget(self.free_box)
        row.addStretch(1)
        row.addWidget(self.terms_button)
        return row

    def _answer(self) -> QSplitter:
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        self.chart = FrontChartView(tr("Chart of the sets"), splitter)
        self.chart.point_picked.connect(self.pick)
        self.chart.point_opened.connect(lambda _: self.accept())
        self.model = NodeTree(("",) * 5, self)
        self.tree = Tree(tr("The sets of the chart as a table"), splitter, shares=(2, 4, 4, 4, 9))
        self.tree.setModel(self.model)
        self.tree.picked.connect(self._on_row)
        splitter.addWidget(self.chart)
        splitter.addWidget(self.tree)
        splitter.setSizes([480, 580])
        return splitter

    @property
    def is_station(self) -> bool:
        """Whether the whole station is weighed."""
        return bool(self.scope_box.currentData())

    @property
    def axes(self) -> tuple[FrontAxis, ...]:
        """The axes chosen: to the right, upward, and that of the size where there is one."""
        chosen = (box.currentData() for box in (self.x_box, self.y_box, self.size_box))
        return tuple(FrontAxis(one) for one in chosen if one is not None)

    def _there(self) -> tuple[FrontAxis, ...]:
        position = self._survey.position(self._label)
        if position is None:
            return ()
        try:
            return self._tools.workbench.weighing().axes(self._survey, position)
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return ()

    def _offer_axes(self) -> None:
        """Offer the axes that there are; those chosen before stay where they can."""
        before = self.axes or _USUAL
        there = self._there() or _USUAL
        story, station = self._tools.story, self.is_station
        for box in (self.x_box, self.y_box, self.size_box):
            box.clear()
        self.size_box.addItem(tr("none"), None)
        for axis in there:
            for box in (self.x_box, self.y_box, self.size_box):
                box.addItem(story.title(axis), axis.value)
        wanted = [axis for axis in before if axis in there]
        wanted += [axis for axis in there if axis not in wanted]
        if station:
            wanted = [FrontAxis.PRICE, *(axis for axis in wanted if axis is not FrontAxis.PRICE)]
        for box, axis in zip((self.x_box, self.y_box), wanted, strict=False):
            box.setCurrentIndex(box.findData(axis.value))
        third = before[2] if len(before) > 2 and before[2] in there else None
        third = None if station or third in wanted[:2] else third
        self.size_box.setCurrentIndex(0 if third is None else self.size_box.findData(third.value))
        self.x_box.setEnabled(not station)
        self.size_box.setEnabled(not station)

    def _on_axis(self, changed: QComboBox) -> None:
        """Keep each axis chosen once: the box that had it takes another."""
        for box in (self.x_box, self.y_box, self.size_box):
            if box is not changed and box.currentData() is not None and box.currentData() == changed.currentData():
                taken = {one.currentData() for one in (self.x_box, self.y_box, self.size_box) if one is not box}
                free = [at for at in range(box.count()) if box.itemData(at) not in taken]
                box.setCurrentIndex(free[0] if free else -1)
        if self.is_station and self.y_box.currentData() == FrontAxis.PRICE.value:
            self.y_box.setCurrentIndex(self.y_box.findData(FrontAxis.LEAD.value))
            self.x_box.setCurrentIndex(self.x_box.findData(FrontAxis.PRICE.value))
        self.ask()

    def _turn(self) -> None:
        self._offer_axes()
        self.ask()

    def choose_terms(self) -> None:
        """Ask for a file of terms, whose figures the yearly cost is reckoned from."""
        path, _ = QFileDialog.getOpenFileName(self, tr("Terms for the yearly cost"), "", "TOML (*.toml)")
        if path:
            self.use_terms(Path(path))

    def use_terms(self, path: Path) -> None:
        """Take the terms of a file; a fault of it is told and the terms in hand stay."""
        try:
            self._terms = self._tools.workbench.quoting().terms().read_terms(path)
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.show_fault("")
        self._offer_axes()
        self.ask()

    # the answer

    def ask(self) -> None:
        """Weigh anew; what was shown goes until the first part of the answer is there."""
        self._tools.jobs.cancel(_ASK)
        self._show_nothing()
        self.show_fault("")
        service, survey, label = self._tools.workbench.weighing(), self._survey, self._label
        axes, free, terms, station = self.axes, self.free_box.isChecked(), self._terms, self.is_station

        def work(ticket: Ticket) -> PositionFront | StationFront:
            if station:
                return service.station(survey, axes[1], free=free, terms=terms, progress=ticket)
            told = ticket.hand_over
            return service.position(survey, label, axes, free=free, terms=terms, progress=ticket, told=told)

        self.progress_row.show_running(True)
        self._tools.jobs.start(_ASK, work, self._finish, self._fail, partly=self._show)

    def stop(self) -> None:
        """Ask the work to stop; what is known stays in view."""
        self._tools.jobs.cancel(_ASK)
        self.progress_row.show_running(False)
        self.told_label.setText(f"{tr('Stopped.')} {self.told_label.text()}")

    def _finish(self, found: PositionFront | StationFront) -> None:
        self.progress_row.show_running(False)
        self._show(found)

    def _show(self, found: PositionFront | StationFront) -> None:
        picked = self.picked
        before = self._figures(picked) if picked is not None and self.found is not None else None
        self.found = found
        story = self._tools.story
        if isinstance(found, PositionFront):
            charted, axes, nodes = charted_front(found), found.axes, front_nodes(found, story)
            sentences: Sequence[str] = tuple(front_sentences(found, story))
        else:
            charted, axes, nodes = charted_station(found), (FrontAxis.PRICE, found.axis), station_nodes(found, story)
            sentences = tuple(station_sentences(found, story))
        self._show_chart(charted, " ".join(sentences))
        self.model.retitle(front_titles(axes, story))
        self.model.show_nodes(nodes)
        self.tree.fit_columns()
        self.told_label.setText(" ".join(sentences))
        self.told_label.setToolTip("\n".join(axis_notes(found, story)))
        self.hands.allow(bool(found.points))
        again = next((at for at in range(len(found.points)) if self._figures(at) == before), None)
        planned = found.planned if isinstance(found, PositionFront) else 0
        if found.points:
            self.pick(again if again is not None else planned or 0)

    def _show_chart(self, charted: Charted | None, note: str) -> None:
        story = self._tools.story
        if charted is None:
            self.chart.show_chart(None, (), note)
        else:
            self.chart.show_chart(front_chart(charted, story), places_of_points(charted, story))

    def _figures(self, at: int) -> tuple[int, ...]:
        found = self.found
        if isinstance(found, StationFront):
            return found.points[at].price, found.points[at].other
        return found.points[at].figures if found is not None else ()

    def _show_nothing(self) -> None:
        self.found = None
        self.chart.show_chart(None)
        self.model.show_nodes(())
        self.told_label.clear()
        for button in (self.accept_button, self.agree_button):
            button.setEnabled(False)
        self.hands.allow(False)
        self.progress_row.show_running(False)

    def _fail(self, fault: Exception) -> None:
        self.progress_row.show_running(False)
        self.show_fault(str(fault))

    # one of them

    @property
    def picked(self) -> int | None:
        """The point in hand; None for none."""
        return self.chart.picked

    def pick(self, at: int) -> None:
        """Take a point in hand, in the chart and in the table."""
        found, story = self.found, self._tools.story
        if found is None or not 0 <= at < len(found.points):
            return
        axes = found.axes if isinstance(found, PositionFront) else (FrontAxis.PRICE, found.axis)
        words = f"{at + 1}{story.writing.colon} {figures_text(axes, self._figures(at), found.currency, story)}."
        if isinstance(found, PositionFront):
            words = f"{words} {set_text(found.points[at].judged.hanging_set)}."
        self.chart.show_picked(at, words)
        self.tree.pick(self.model.index(at, 0))
        self.accept_button.setEnabled(True)
        self.agree_button.setEnabled(True)

    def _on_row(self, record: object) -> None:
        if isinstance(record, int) and record != self.picked:
            self.pick(record)

    def accept(self) -> None:
        """Close with the survey that asks for the parts of the set in hand."""
        from spoutline.planning.weighing.taking import station_taking, survey_taking

        found, at = self.found, self.picked
        if found is None or at is None:
            return
        if isinstance(found, PositionFront):
            self.after = survey_taking(self._survey, (found.label,), found.points[at])
        else:
            self.after = station_taking(found, found.points[at])
        self.said = f"{title_text(found, self._tools.story)}, {at + 1}"
        super().accept()

    def agree(self) -> None:
        """Close with the set in hand, or with those of all positions, as sets to agree on; a fault is told."""
        found, at, service, survey = self.found, self.picked, self._tools.workbench.weighing(), self._survey
        if found is None or at is None:
            return

        def close(picked: SitePlan) -> None:
            self.agreed = picked
            self.said = f"{title_text(found, self._tools.story)}, {at + 1}"
            super(WeighingDialog, self).accept()

        self._tools.jobs.start(_PICK, lambda _: service.picked_sets(survey, found, at), close, self._fail)

    def _wanted(self) -> WantedPaper | None:
        """Return chart and table."""
        found, story, service, survey = self.found, self._tools.story, self._tools.workbench.weighing(), self._survey
        if found is None:
            return None
        dated = date.today()

        def make(_: Ticket, form: PaperForm) -> bytes:
            return service.paper(survey, found, story, dated, form)

        return WantedPaper(make=make, stem="weighing", name=survey.site.name)

    def done(self, result: int) -> None:
        """Qt: close; what is under way ends."""
        for job in (_ASK, _PICK):
            self._tools.jobs.cancel(job)
        super().done(result)
