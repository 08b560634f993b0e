"""The part in hand: its data, what was found about it, and other parts for its place."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from spoutline.explain.story import Story
from spoutline.gui.edits.decisions import keep_part, refuse_part, release_part
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.models.result_nodes import finding_titles, grouped_findings, signed_money
from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.cards import NamedTexts, ScrolledPage, plain_label
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.wording import tr
from spoutline.model.part import Part
from spoutline.model.plan import HangingSet, PositionPlan
from spoutline.model.requirement import Slot


@dataclass(frozen=True, slots=True)
class OtherPart:
    """A part that takes the place of the one in hand in another set, and what that set costs more."""

    part: Part
    difference_minor: int
    currency: str


def other_parts(plan: PositionPlan, slot: Slot) -> tuple[OtherPart, ...]:
    """Return the parts that the other sets have in a place, cheapest set first, each part once."""
    if plan.chosen is None:
        return ()
    present = plan.chosen.hanging_set.part_in(slot)
    found: dict[str, OtherPart] = {}
    for alternative in sorted(plan.alternatives, key=lambda one: one.price_difference_minor):
        other = alternative.judged.hanging_set
        part = other.part_in(slot)
        if part is not None and part != present and part.number not in found:
            found[part.number] = OtherPart(part, alternative.price_difference_minor, other.currency)
    return tuple(found.values())


def slot_of(hanging_set: HangingSet, number: str) -> Slot | None:
    """Return the place of a part in a set; None where the set does not hold it."""
    return next((link.slot for link in hanging_set.links if link.part.number == number), None)


class PartPanel(ScrolledPage):
    """Shows the part that is picked in the drawing or the list."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent, margin=12)
        self._context = context
        self.title_label = plain_label("", "siteTitle", wraps=True)
        self._maker_label = plain_label("", "quiet", wraps=True)
        self.column.addWidget(self.title_label)
        self.column.addWidget(self._maker_label)
        row = QHBoxLayout()
        self.keep_button = QPushButton(tr("&Keep this part"), self)
        self.refuse_button = QPushButton(tr("Re&fuse this part"), self)
        self.release_button = QPushButton(tr("&Leave it open"), self)
        self.keep_button.clicked.connect(lambda: self._keep(self._context.session.part_number))
        self.refuse_button.clicked.connect(self._refuse)
        self.release_button.clicked.connect(self._release)
        for button in (self.keep_button, self.refuse_button, self.release_button):
            row.addWidget(button)
        row.addStretch(1)
        self.column.addLayout(row)
        self._others_label = plain_label(tr("Other parts for this place"), "cardTitle")
        self.others_model = NodeTree((tr("Part"), tr("Name"), tr("Set costs")), self)
        self.others_tree = Tree(tr("Other parts for this place"), self, shares=(3, 7, 3))
        self.others_tree.setModel(self.others_model)
        self.others_tree.setRootIsDecorated(False)
        self.others_tree.setFixedHeight(118)
        self.others_tree.opened.connect(self._take_other)
        self.take_button = QPushButton(tr("&Use the marked part instead"), self)
        self.take_button.clicked.connect(lambda: self._take_other(self.others_tree.current_record()))
        self._findings_label = plain_label(tr("What was found about it"), "cardTitle")
        self.findings_model = NodeTree(finding_titles(), self)
        self.findings_tree = Tree(tr("Findings about this part"), self, shares=(6, 2, 4))
        self.findings_tree.setModel(self.findings_model)
        self.findings_tree.setMinimumHeight(110)
        self._data_label = plain_label(tr("Catalogue data"), "cardTitle")
        self._data = NamedTexts(self)
        for widget in (
            self._others_label,
            self.others_tree,
            self.take_button,
            self._findings_label,
            self.findings_tree,
            self._data_label,
            self._data,
        ):
            self.column.addWidget(widget)
        self.column.addStretch(1)

    def refresh(self) -> None:
        """Show the part in hand for the present plan."""
        plan, number = self._context.plan_to_show, self._context.session.part_number
        link = None
        if plan is not None and plan.chosen is not None:
            link = next((one for one in plan.chosen.hanging_set.links if one.part.number == number), None)
        self._show_presence(link is not None)
        if plan is None or link is None:
            has_set = plan is not None and plan.chosen is not None
            self.title_label.setText(
                tr("Pick a part in the drawing or the list.") if has_set else tr("There is no set to pick a part from.")
            )
            self._maker_label.clear()
            return
        story, part = self._context.story, link.part
        self.title_label.setText(f"{part.number}  {part.name}")
        self._maker_label.setText(f"{story.title(link.slot)} · {part.maker}")
        decisions = plan.position.decisions
        self.keep_button.setEnabled(number not in decisions.pinned)
        self.release_button.setEnabled(number in (*decisions.pinned, *decisions.refused))
        self._show_others(plan, link.slot, story)
        self._show_findings(plan, number, story)
        self._data.show_rows((row.label, row.text) for row in story.part_data(part))

    def _show_presence(self, present: bool) -> None:
        for widget in (
            self.keep_button,
            self.refuse_button,
            self.release_button,
            self._others_label,
            self.others_tree,
            self.take_button,
            self._findings_label,
            self.findings_tree,
            self._data_label,
            self._data,
        ):
            widget.setVisible(present)

    def _show_others(self, plan: PositionPlan, slot: Slot, story: Story) -> None:
        others = other_parts(plan, slot)
        self.others_model.show_nodes(
            tuple(
                Node(
                    cells=(
                        other.part.number,
                        other.part.name,
                        signed_money(other.difference_minor, other.currency, story),
                    ),
                    record=other.part.number,
                )
                for other in others
            )
        )
        self.others_tree.fit_columns()
        for widget in (self._others_label, self.others_tree, self.take_button):
            widget.setVisible(bool(others))

    def _show_findings(self, plan: PositionPlan, number: str, story: Story) -> None:
        findings = () if plan.chosen is None else tuple(f for f in plan.chosen.findings if f.subject == number)
        self.findings_model.show_nodes(grouped_findings(findings, story))
        self.findings_tree.span_rows(self.findings_model.spanning())
        self.findings_tree.expandAll()
        self.findings_tree.fit_columns()
        for widget in (self._findings_label, self.findings_tree):
            widget.setVisible(bool(findings))

    def _keep(self, number: str) -> None:
        session = self._context.session
        self._context.edit(keep_part(session.survey, session.label, number), tr("Keep {part}").format(part=number))

    def _refuse(self) -> None:
        session = self._context.session
        number = session.part_number
        self._context.edit(refuse_part(session.survey, session.label, number), tr("Refuse {part}").format(part=number))

    def _release(self) -> None:
        session = self._context.session
        number = session.part_number
        self._context.edit(
            release_part(session.survey, session.label, number), tr("Leave {part} open").format(part=number)
        )

    def _take_other(self, record: object) -> None:
        if isinstance(record, str):
            session = self._context.session
            after = keep_part(session.survey, session.label, record, instead_of=(session.part_number,))
            self._context.edit(after, tr("Use {part}").format(part=record))
            session.look_at_part(record)
