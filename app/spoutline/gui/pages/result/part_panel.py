"""The part in hand: its data, what was found about it, and other parts for its place."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from spoutline.explain.plan.story import Story
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.result_nodes import finding_titles, grouped_findings
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.result.part_decisions import DecisionTexts, PartDecisions
from spoutline.gui.pages.result.part_pictures import PartPictures
from spoutline.gui.pages.result.substitutes_list import SubstitutesList
from spoutline.gui.widgets.cards import NamedTexts, ScrolledPage, plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import tr
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan


class PartPanel(ScrolledPage):
    """Shows the part that is picked in the drawing or the list."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent, margin=12)
        self._context = context
        self.title_label = plain_label("", "siteTitle", wraps=True)
        self._maker_label = plain_label("", "quiet", wraps=True)
        self.column.addWidget(self.title_label)
        self.column.addWidget(self._maker_label)
        texts = DecisionTexts(keep=tr("&Use this part"), refuse=tr("E&xclude this part"), release=tr("&Leave it open"))
        self.decisions = PartDecisions(context, texts, lambda: context.session.part, self)
        self.column.addLayout(self.decisions.row)
        self.others = SubstitutesList(context, self)
        self._findings_label = plain_label(tr("What was found about it"), "cardTitle")
        self.findings_model = NodeTree(finding_titles(), self)
        self.findings_tree = Tree(tr("Findings about this part"), self, shares=(6, 2, 4))
        self.findings_tree.setModel(self.findings_model)
        self.findings_tree.setMinimumHeight(110)
        self.pictures = PartPictures(context, self)
        self._data_label = plain_label(tr("Catalog data"), "cardTitle")
        self._data = NamedTexts(self)
        for widget in (
            self.others,
            self._findings_label,
            self.findings_tree,
            self.pictures,
            self._data_label,
            self._data,
        ):
            self.column.addWidget(widget)
        self.column.addStretch(1)

    def refresh(self) -> None:
        """Show the part in hand for the present plan."""
        plan, ref = self._context.plan_to_show, self._context.session.part
        link = None
        if plan is not None and plan.chosen is not None:
            link = next((one for one in plan.chosen.hanging_set.links if one.part.ref == ref), None)
        self._show_presence(link is not None)
        if plan is None or link is None:
            self.others.forget()
            self.pictures.forget()
            has_set = plan is not None and plan.chosen is not None
            self.title_label.setText(
                tr("Pick a part in the drawing or the list.") if has_set else tr("There is no set to pick a part from.")
            )
            self._maker_label.clear()
            return
        story, part = self._context.story, link.part
        self.title_label.setText(f"{part.number}  {story.part_name(part)}")
        self._maker_label.setText(f"{story.title(link.slot)} · {part.maker}")
        self.decisions.allow(plan.position.decisions, part.ref, may_refuse=True)
        self._show_others(part.ref)
        self._show_findings(plan, part.ref, story)
        self.pictures.show_part(part.ref)
        self._data.show_rows((row.label, row.text) for row in story.part_data(part))

    def _show_presence(self, present: bool) -> None:
        for widget in (
            *self.decisions.buttons,
            self.others,
            self._findings_label,
            self.findings_tree,
            self._data_label,
            self._data,
        ):
            if widget.isHidden() is present:
                widget.setVisible(present)

    def _show_others(self, part: PartRef) -> None:
        """Ask for other parts only while they can be seen, and only of a set that is up to date."""
        plan = self._context.plan
        if plan is None:
            self.others.forget()
        elif self.isVisible():
            self.others.show_place(plan, part)

    def _show_findings(self, plan: PositionPlan, part: PartRef, story: Story) -> None:
        findings = () if plan.chosen is None else tuple(f for f in plan.chosen.findings if f.part == part)
        self.findings_model.show_nodes(grouped_findings(findings, story))
        self.findings_tree.span_rows(self.findings_model.spanning())
        self.findings_tree.expandAll()
        self.findings_tree.fit_columns()
        for widget in (self._findings_label, self.findings_tree):
            widget.setVisible(bool(findings))
