"""What hangs at the position in focus today: parts by number, their condition, the liquid sold today."""

from __future__ import annotations

from PySide6.QtWidgets import QHBoxLayout, QMessageBox, QPushButton, QVBoxLayout, QWidget

from spoutline.explain.conversion.story import ConversionStory
from spoutline.gui.dialogs.installed_figures import InstalledFiguresDialog
from spoutline.gui.edits.installed_parts import (
    replacing_text,
    with_age,
    with_condition,
    with_described_part,
    with_installed_part,
    with_liquid_today,
    with_old_number,
    with_set_installed,
    without_installed_part,
)
from spoutline.gui.edits.installed_questions import described_questions
from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.pages.context import Context
from spoutline.gui.session import Changed
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import Card, plain_label
from spoutline.gui.widgets.editors import LineEditor
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.part_number_edit import PartNumberEdit
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.installed import InstalledCondition
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.part import HANGING_KINDS, Part, PartKind
from spoutline.model.survey import SurveyLiquid

_MOST_OFFERED = 12
_USUAL_LIQUIDS = (
    (LiquidFamily.GASOLINE, 0.0),
    (LiquidFamily.GASOLINE, 10.0),
    (LiquidFamily.GASOLINE, 15.0),
    (LiquidFamily.GASOLINE, 85.0),
    (LiquidFamily.DIESEL, 5.0),
    (LiquidFamily.DIESEL, 20.0),
    (LiquidFamily.DIESEL, 100.0),
    (LiquidFamily.KEROSENE, 0.0),
    (LiquidFamily.FUEL_OIL, 0.0),
    (LiquidFamily.DEF, 0.0),
)


class InstalledPanel(QWidget):
    """Lists the installed parts; every change is an edit that undo takes back."""

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._context = context
        card = Card(tr("What hangs here today"), self)
        self.model = NodeTree((tr("Part"), tr("Kind"), tr("Condition"), tr("Age")), self)
        self.tree = Tree(tr("Installed parts"), self, shares=(4, 3, 3, 2))
        self.tree.setModel(self.model)
        self.tree.setRootIsDecorated(False)
        self.tree.setMinimumHeight(130)
        self.tree.selectionModel().currentChanged.connect(lambda *_: self._show_chosen())
        self.model.modelReset.connect(self._show_chosen)
        card.body.addWidget(self.tree)
        card.body.addLayout(self._add_row())
        self.way_label = plain_label("", "quiet", wraps=True)
        card.body.addWidget(self.way_label)
        card.body.addLayout(self._describe_row())
        card.body.addLayout(self._change_row())
        self.figures_button = QPushButton(tr("Plate and figures of the chosen part…"), self)
        self.figures_button.setToolTip(tr("For a part without a catalog number."))
        self.figures_button.clicked.connect(self._ask_figures)
        card.body.addWidget(self.figures_button)
        self.fault_label = plain_label("", "fault", wraps=True)
        self.fault_label.hide()
        card.body.addWidget(self.fault_label)
        card.body.addWidget(plain_label(tr("Liquid sold today"), "question"))
        self.liquid_box = StillBox(self)
        self.liquid_box.setAccessibleName(tr("Liquid sold today"))
        self.liquid_box.activated.connect(self._choose_liquid)
        card.body.addWidget(self.liquid_box)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(card)
        context.session.changed.connect(self._on_changed)

    def _add_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.number_edit = PartNumberEdit(self._parts_like, self)
        self.number_edit.setPlaceholderText(tr("Catalog number"))
        self.number_edit.setAccessibleName(tr("Catalog number of an installed part"))
        self.number_edit.returnPressed.connect(self._add)
        self.add_button = QPushButton(tr("&Add part"), self)
        self.add_button.clicked.connect(self._add)
        self.planned_button = QPushButton(tr("Ta&ke over the planned set"), self)
        self.planned_button.setToolTip(tr("Where the set that is planned hangs here already."))
        self.planned_button.clicked.connect(self._take_planned)
        row.addWidget(self.number_edit, 1)
        row.addWidget(self.add_button)
        row.addWidget(self.planned_button)
        return row

    def _describe_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.kind_box = StillBox(self)
        self.kind_box.setAccessibleName(tr("Kind of a part without a catalog number"))
        self.description_edit = LineEditor(self)
        self.description_edit.setPlaceholderText(tr("What its plate says"))
        self.description_edit.setAccessibleName(tr("Description of an installed part"))
        self.description_edit.returnPressed.connect(self._describe)
        self.describe_button = QPushButton(tr("&Describe part"), self)
        self.describe_button.clicked.connect(self._describe)
        row.addWidget(self.kind_box)
        row.addWidget(self.description_edit, 1)
        row.addWidget(self.describe_button)
        return row

    def _change_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.condition_box = StillBox(self)
        self.condition_box.setAccessibleName(tr("Condition of the chosen part"))
        self.condition_box.activated.connect(self._choose_condition)
        self.remove_button = QPushButton(tr("Remove it &from the list"), self)
        self.remove_button.clicked.connect(self._remove)
        self.age_edit = LineEditor(self)
        self.age_edit.setPlaceholderText(tr("Age, years"))
        self.age_edit.setAccessibleName(tr("Age of the chosen part, years"))
        self.age_edit.setMaximumWidth(110)
        self.age_edit.returnPressed.connect(self._change_age)
        row.addWidget(self.condition_box, 1)
        row.addWidget(self.age_edit)
        row.addWidget(self.remove_button)
        return row

    def refresh(self) -> None:
        """Show what is recorded for the position in focus."""
        session, words = self._context.session, self._words()
        story = self._context.story
        chosen = self._chosen()
        self.model.show_nodes(
            tuple(
                Node(
                    cells=(
                        str(item.ref) if item.ref else item.description,
                        story.word(item.kind),
                        words.word(item.condition),
                        "" if item.age_years is None else words.say("age", years=f"{item.age_years:g}"),
                    ),
                    record=index,
                )
                for index, item in enumerate(session.position.installed)
            )
        )
        self.tree.fit_columns()
        if chosen is not None:
            self.tree.setCurrentIndex(self.model.index_of(chosen))
        if self.condition_box.count() == 0:
            for condition in InstalledCondition:
                self.condition_box.addItem(words.word(condition), condition)
            for kind in HANGING_KINDS:
                self.kind_box.addItem(story.word(kind), kind)
        self._show_liquids()
        self._show_chosen()
        some = bool(session.position.installed)
        self.condition_box.setEnabled(some)
        self.age_edit.setEnabled(some)
        self.remove_button.setEnabled(some)
        self.figures_button.setEnabled(some)

    def _show_liquids(self) -> None:
        story, today = self._context.story, self._context.session.position.liquid_today
        self.liquid_box.clear()
        self.liquid_box.addItem(tr("The same as wanted"), None)
        choices = [SurveyLiquid(family=family, blend_percent=blend) for family, blend in _USUAL_LIQUIDS]
        if today is not None and today not in choices:
            choices.append(today)
        for place, liquid in enumerate(choices, start=1):
            self.liquid_box.addItem(story.liquid(Liquid(liquid.family, liquid.blend_percent)), liquid)
            if liquid == today:
                self.liquid_box.setCurrentIndex(place)

    def _show_chosen(self) -> None:
        """Show condition and age of the chosen part as they are recorded; nothing where none is chosen."""
        chosen, installed = self._chosen(), self._context.session.position.installed
        item = installed[chosen] if chosen is not None and chosen < len(installed) else None
        self.condition_box.setCurrentIndex(-1 if item is None else self.condition_box.findData(item.condition))
        known = item is not None and item.age_years is not None
        self.age_edit.setText(f"{item.age_years:g}" if item is not None and known else "")

    def _parts_like(self, text: str) -> tuple[Part, ...]:
        """Return the hanging hardware of the catalogue that holds what is typed; none where it cannot be read."""
        session = self._context.session
        try:
            found = wait_for(lambda: session.workbench.parts().search(text, limit=_MOST_OFFERED * 2))
        except (InputFault, StoreFault):
            return ()
        return tuple(part for part in found if part.kind in HANGING_KINDS)[:_MOST_OFFERED]

    def _words(self) -> ConversionStory:
        session = self._context.session
        return session.workbench.converting().words(session.display)

    def _chosen(self) -> int | None:
        node = self.model.node_at(self.tree.currentIndex())
        return node.record if node is not None and isinstance(node.record, int) else None

    def _say(self, text: str) -> None:
        self.fault_label.setText(text)
        self.fault_label.setVisible(bool(text))

    def _add(self) -> None:
        session, number = self._context.session, self.number_edit.text().strip()
        try:
            found = wait_for(lambda: session.workbench.parts().old_number(number, session.survey))
            if found is not None:
                after = with_old_number(session.survey, session.label, found.part.kind, found.old)
            else:
                part = wait_for(lambda: session.workbench.parts().part(number, session.survey))
                after = with_installed_part(session.survey, session.label, part)
        except (InputFault, StoreFault) as fault:
            self._say(str(fault))
            return
        self._say("")
        self.number_edit.clear()
        self.way_label.setText("" if found is None else self._context.story.number_trace(found.trace))
        self._context.edit(after, tr("Record an installed part"))

    def _describe(self) -> None:
        session = self._context.session
        try:
            after = with_described_part(
                session.survey, session.label, PartKind(self.kind_box.currentData()), self.description_edit.text()
            )
        except InputFault as fault:
            self._say(str(fault))
            return
        self._say("")
        self.description_edit.clear()
        self._context.edit(after, tr("Describe an installed part"))

    def _change_age(self) -> None:
        chosen, session = self._chosen(), self._context.session
        if chosen is None:
            return
        try:
            after = with_age(session.survey, session.label, chosen, self.age_edit.text())
        except InputFault as fault:
            self._say(str(fault))
            return
        self._say("")
        self.age_edit.clear()
        self._context.edit(after, tr("Age of an installed part"))

    def _take_planned(self) -> None:
        plan = self._context.plan_to_show
        if plan is None or plan.chosen is None:
            self._say(tr("No set is planned for this position."))
            return
        self._say("")
        session = self._context.session
        told = replacing_text(session.position, plan.chosen.hanging_set, self._context.story.word)
        if told and not self._confirms(told):
            return
        after = with_set_installed(session.survey, session.label, plan.chosen.hanging_set)
        self._context.edit(after, tr("Record the planned set as installed"))

    def _confirms(self, told: str) -> bool:
        """Ask whether what is recorded may go; a person who does not answer keeps it."""
        buttons = QMessageBox.StandardButton
        title = tr("Replace what is recorded?")
        answer = QMessageBox.question(self, title, told, buttons.Yes | buttons.No, buttons.No)
        return answer == buttons.Yes

    def figures_dialog(self) -> InstalledFiguresDialog | None:
        """Return the dialog for the chosen part; None, with a word why, where no described part is chosen."""
        chosen, session = self._chosen(), self._context.session
        if chosen is None or session.position.installed[chosen].number:
            self._say(tr("Choose a part without a catalog number; a number brings its own figures."))
            return None
        self._say("")
        questions = described_questions(session.position.installed[chosen].kind, self._context.story.word)
        return InstalledFiguresDialog(session.survey, session.label, chosen, questions, session.display, self)

    def take_figures(self, dialog: InstalledFiguresDialog) -> None:
        """Carry out the edit of an accepted dialog."""
        if dialog.after is not None:
            self._context.edit(dialog.after, tr("Figures of an installed part"))

    def _ask_figures(self) -> None:
        dialog = self.figures_dialog()
        if dialog is not None and dialog.exec():
            self.take_figures(dialog)

    def _remove(self) -> None:
        chosen, session = self._chosen(), self._context.session
        if chosen is not None:
            after = without_installed_part(session.survey, session.label, chosen)
            self._context.edit(after, tr("Remove an installed part from the list"))

    def _choose_condition(self, place: int) -> None:
        chosen, session = self._chosen(), self._context.session
        condition = self.condition_box.itemData(place)
        if chosen is not None:
            after = with_condition(session.survey, session.label, chosen, InstalledCondition(condition))
            self._context.edit(after, tr("Condition of an installed part"))

    def _choose_liquid(self, place: int) -> None:
        session = self._context.session
        after = with_liquid_today(session.survey, session.label, self.liquid_box.itemData(place))
        self._context.edit(after, tr("Liquid sold today"))

    def _on_changed(self, what: Changed) -> None:
        if self.isVisible() and what & (Changed.SURVEY | Changed.FOCUS | Changed.UNITS):
            self.refresh()
