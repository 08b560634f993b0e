"""The cases of a conversion: what would be otherwise in each, their figures side by side, the report of one of them."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from spoutline.documents.conversion.case_section import case_cells, case_titles, case_told
from spoutline.explain.conversion.case_words import CaseWords
from spoutline.explain.conversion.story import ConversionStory
from spoutline.gui.edits.case_list import TypedCase, with_case, without_case
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.models.record_table import Column
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.conversion.lists import ListPanel
from spoutline.gui.widgets.cards import Card, ScrolledPage, plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import tr
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_case import ConversionCase
from spoutline.model.faults import Cancelled
from spoutline.model.survey import Survey
from spoutline.planning.conversion.cases import CaseResult

_RUN = JobKey(JobKind.SITE_PLAN, "cases")
_PER_ROW = 2  # fields side by side: more need more room than the page has in a language of long words
_TABLE_HEIGHT_PX = 190
_SHOWN = (0, 1, 3, 5, 7)  # of the cells: case, cost, days, emissions, departures
_SHARES = (5, 4, 2, 3, 3)


class CasesPanel(ListPanel[ConversionCase]):
    """The named cases that the survey keeps."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        columns: tuple[Column[ConversionCase], ...] = (
            Column(title=tr("Case"), text=lambda row: row.name, hint=lambda row: row.name),
            Column(title=tr("What is otherwise"), text=self._told, hint=self._told),
        )
        lead = tr("What the survey asks is worked out anyway; a case says what would be otherwise beside it.")
        super().__init__(context, tr("Named cases"), lead, columns, parent, stretch=1)
        owner = tr("The owner's own question")
        self.add_field("name", tr("Case"), tr("Printed in the report."), owner)
        self.add_field("keep_islands", tr("Islands that keep recovery"), tr("Parted by semicolons."), owner)
        self.add_field("sold_after_years", tr("Sold after years"), tr("Only these years count then."), owner)
        self.add_field("ethanol_percent", tr("Percent ethanol"), tr("Such as 15; not for boats."), owner)
        self.add_field("biodiesel_percent", tr("Percent biodiesel"), tr("Such as 20."), owner)
        for place, field in enumerate(self.fields.values()):
            self._grid.addWidget(field, place // _PER_ROW, place % _PER_ROW)
            self._grid.setColumnStretch(place, int(place < _PER_ROW))
        self.retention_box = self.add_check(tr("The agency demands that recovery stays"))
        self._grid.addWidget(self.retention_box, len(self.fields), 0, 1, _PER_ROW)
        self.arrange_keys()

    def _told(self, row: ConversionCase) -> str:
        session = self._context.session
        return CaseWords(session.workbench.converting().words(session.display)).changes(row)

    def rows_of(self, survey: Survey) -> tuple[ConversionCase, ...]:
        """Return the cases."""
        return survey.conversion.cases

    def show_in_fields(self, row: ConversionCase | None) -> None:
        """Put a case into the fields."""
        texts = {
            "name": row.name if row else "",
            "keep_islands": "; ".join(row.keep_islands) if row else "",
            "ethanol_percent": _typed(row.ethanol_percent) if row else "",
            "biodiesel_percent": _typed(row.biodiesel_percent) if row else "",
            "sold_after_years": _typed(row.sold_after_years) if row else "",
        }
        for name, text in texts.items():
            self.fields[name].editor.setText(text)
        self.retention_box.setChecked(bool(row and row.retention))

    def edited(self, survey: Survey, place: int | None) -> Survey:
        """Return the survey with the case in the fields."""
        texts = {name: field.editor.text() for name, field in self.fields.items()}
        return with_case(survey, place, TypedCase(retention=self.retention_box.isChecked(), **texts))

    def shortened(self, survey: Survey, place: int) -> Survey:
        """Return the survey without a case."""
        return without_case(survey, place)


class CasesSide(ScrolledPage):
    """The cases, worked out on request, and which of them the report shows.

    Signals
    -------
    report_wanted(object, object)
        The report of this ``SiteConversion`` is wanted, beside these results; None for both: of the survey alone.
    """

    report_wanted = Signal(object, object)

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        self.results: tuple[CaseResult, ...] = ()
        self._base: SiteConversion | None = None
        self.column.addWidget(plain_label(tr("What would be otherwise"), "pageTitle"))
        self.panel = CasesPanel(context, self.widget())
        self.column.addWidget(self.panel)
        self.column.addWidget(self._figures())
        self.column.addStretch(1)

    def _figures(self) -> QWidget:
        card = Card(tr("The cases side by side"), self.widget())
        row = QHBoxLayout()
        self.compare_button = QPushButton(tr("&Work out the cases"), card)
        self.compare_button.clicked.connect(lambda _: self.compare())
        self.report_button = QPushButton(tr("Report of the chosen row"), card)
        self.report_button.clicked.connect(lambda _: self._want_report())
        row.addWidget(self.compare_button)
        row.addWidget(self.report_button)
        row.addStretch(1)
        card.body.addLayout(row)
        self.state_label = plain_label("", "quiet", wraps=True)
        card.body.addWidget(self.state_label)
        self.model = NodeTree((tr("Case"), tr("Cost"), tr("Days"), tr("Emissions"), tr("Departures")), self)
        self.tree = Tree(tr("The cases side by side"), card, shares=_SHARES)
        self.tree.setModel(self.model)
        self.tree.setMinimumHeight(_TABLE_HEIGHT_PX)
        self.tree.picked.connect(lambda _: self._enable())
        card.body.addWidget(self.tree)
        return card

    def refresh(self) -> None:
        """Show the cases of the survey in hand."""
        self.panel.refresh()
        self._enable()

    def show_base(self, conversion: SiteConversion | None) -> None:
        """Take the conversion that the page shows; cases worked out beside another one are gone."""
        if conversion is not self._base:
            self._base, self.results = conversion, ()
            self.model.show_nodes(())
            self.state_label.setText("")
        self._enable()

    def compare(self) -> None:
        """Work out all cases of the survey."""
        base, session = self._base, self._context.session
        if base is None or base.survey != session.survey:
            return
        survey, service = session.survey, session.workbench.converting()
        self.compare_button.setEnabled(False)
        self.state_label.setText(tr("Working out the cases…"))

        def work(ticket: Ticket) -> tuple[CaseResult, ...]:
            return service.cases(survey, base, survey.conversion.cases, ticket)

        self._context.jobs.start(_RUN, work, self._show_results, self._show_trouble)

    def _show_results(self, results: tuple[CaseResult, ...]) -> None:
        if not results or results[0].conversion is not self._base:
            return
        self.results = results
        session = self._context.session
        words = session.workbench.converting().words(session.display)
        self.model.show_nodes(tuple(_node(place, one, words) for place, one in enumerate(results)))
        self.tree.span_rows(self.model.spanning())
        self.tree.fit_columns()
        self.state_label.setText(words.say("cases_lead"))
        self._enable()
        self.report_wanted.emit(results[0].conversion, results)

    def _show_trouble(self, fault: Exception) -> None:
        if not isinstance(fault, Cancelled):
            self.state_label.setText(str(fault))
        self._enable()

    def _want_report(self) -> None:
        chosen = self._chosen()
        if chosen is not None:
            self.report_wanted.emit(chosen.conversion, self.results)

    def _enable(self) -> None:
        self.compare_button.setEnabled(self._base is not None and bool(self._context.session.survey.conversion.cases))
        self.report_button.setEnabled(self._chosen() is not None)

    def _chosen(self) -> CaseResult | None:
        """Return the case of the current row."""
        node = self.model.node_at(self.tree.currentIndex())
        return self.results[node.record] if node is not None and isinstance(node.record, int) else None


def _node(place: int, one: CaseResult, words: ConversionStory) -> Node:
    """Return a case with its main figures in a row, the others and what is otherwise below it."""
    titles, cells = case_titles(words), case_cells(one, words)
    colon, told = words.story.writing.colon, case_told(one, words)
    below = (f"{titles[at]}{colon} {cells[at]}" for at in range(len(cells)) if at not in _SHOWN)
    texts = (*below, *((told,) if told else ()))
    return Node(
        cells=tuple(cells[at] for at in _SHOWN),
        record=place,
        children=tuple(Node(cells=(text, *[""] * (len(_SHOWN) - 1)), spans=True, hint=text) for text in texts),
        is_head=one.case is None,
        hint=told,
    )


def _typed(number: float | None) -> str:
    return "" if number is None else f"{number:g}"
