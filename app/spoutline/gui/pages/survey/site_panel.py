"""The site at the left: dispensers and positions with their marks, and what can be done with positions."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from PySide6.QtCore import QModelIndex, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QStandardItemModel
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QToolButton, QVBoxLayout, QWidget

from spoutline.explain.plan.agreed_words import standing_short
from spoutline.explain.plan.assumed import station_lines
from spoutline.gui.actions import ActionId, action_record
from spoutline.gui.help_place import explained_by
from spoutline.gui.models.node_tree import NodeTree
from spoutline.gui.models.site_nodes import RowWords, plan_words, position_node, site_nodes, tone_words
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.sets_head import SetsHead
from spoutline.gui.roles import Role, Tone
from spoutline.gui.session import Changed
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.icons import icon
from spoutline.gui.widgets.lists import Tree
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.agreed_sets import SetsSource
from spoutline.model.liquid import LiquidFamily
from spoutline.model.survey import Position, Survey
from spoutline.planning.agreement.standing import is_to_be_looked_at, standing_of

_BUTTONS = (
    (ActionId.ADD_POSITION, "add"),
    (ActionId.DUPLICATE_POSITION, "duplicate"),
    (ActionId.RENAME_POSITION, "rename"),
    (ActionId.REMOVE_POSITION, "remove"),
    (ActionId.COPY_ANSWERS, "copy_to"),
)
_SHORT = {
    LiquidFamily.GASOLINE: "E",
    LiquidFamily.DIESEL: "B",
    LiquidFamily.KEROSENE: "kerosene",
    LiquidFamily.FUEL_OIL: "fuel oil",
    LiquidFamily.DEF: "DEF",
}
_AT_ONCE = 60  # positions that are shown anew without being felt
_NOW_AND_THEN_MS = 200
_SELDOM_MS = 1_000  # for what all plans together say


def liquid_words(position: Position) -> str:
    """Return liquid and blend as the trade writes them: E10, B5, DEF."""
    liquid = position.liquid
    short = _SHORT[liquid.family]
    if liquid.family in (LiquidFamily.GASOLINE, LiquidFamily.DIESEL):
        return f"{short}{liquid.blend_percent:g}"
    return short


class SitePanel(QFrame):
    """Shows the site.

    Signals
    -------
    asked(ActionId)
        A person pressed the button of a command.
    position_opened(str)
        A person turned to a position; its label.
    position_wanted(str)
        A person clicked a position, or pressed Return on it, to have it in view; its label.
    """

    asked = Signal(object)
    position_opened = Signal(str)
    position_wanted = Signal(str)

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._context = context
        self._showing = False
        self._words = RowWords(tone=context.sets.tone, liquid=self._liquid, told=self._told)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._follow)
        self._assumed_later = QTimer(self)
        self._assumed_later.setSingleShot(True)
        self._assumed_later.setInterval(_SELDOM_MS)
        self._assumed_later.timeout.connect(self._show_assumed)
        self._planned: set[str] = set()  # positions of which a plan came since the last look
        self._shown: Survey | None = None
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 12, 12, 10)
        self.title_label = plain_label("", "siteTitle", wraps=True)
        self.place_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.title_label)
        column.addWidget(self.place_label)
        self.site_button = self._wide_button(ActionId.SITE, "site", column)
        column.addLayout(self._sets_row())
        column.addWidget(SetsHead(context, self))
        self.model = NodeTree((tr("Position"), tr("Liquid")), self, hint_of=self._hint)
        self.tree = Tree(tr("Dispensers and positions"), self, shares=(3, 1))
        self.tree.setModel(self.model)
        self.tree.header().hide()
        self.tree.picked.connect(self._pick)
        self.tree.clicked.connect(lambda index: self._click(index.siblingAtColumn(0).data(Role.RECORD)))
        self.tree.opened.connect(self._click)
        column.addWidget(self.tree, 1)
        row = QHBoxLayout()
        row.setSpacing(2)
        for action, name in _BUTTONS:
            row.addWidget(self._tool_button(action, name))
        row.addStretch(1)
        column.addLayout(row)
        self.station_label = plain_label("", "help", wraps=True)
        column.addWidget(self.station_label)
        self.bill_button = self._wide_button(ActionId.BILL, "bill", column)
        self.bill_button.setObjectName("primary")
        self.save_label = plain_label("", "help", wraps=True)
        column.addWidget(self.save_label)
        context.session.changed.connect(self._on_changed)
        context.sets.updated.connect(self._on_updated)

    def _sets_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.sets_box = StillBox(self)
        self.sets_box.setObjectName("shownSets")
        self.sets_box.setAccessibleName(tr("Sets shown on pages and papers"))
        explained_by(self.sets_box, "agreed_sets")
        self.sets_box.setToolTip(tr("Sets shown on pages and papers"))
        for source, words in (
            (SetsSource.PLAN, tr("as planned")),
            (SetsSource.AGREED, tr("as agreed")),
            (SetsSource.BUILT, tr("as built")),
        ):
            self.sets_box.addItem(words, source)
        self.sets_box.activated.connect(
            lambda place: self._context.sets.choose(SetsSource(self.sets_box.itemData(place)))
        )
        self._context.sets.changed.connect(self._show_choice)
        row.addWidget(plain_label(tr("Sets shown"), "quiet"))
        row.addWidget(self.sets_box, 1)
        self._show_choice()
        return row

    def _show_choice(self) -> None:
        """Mark what is shown; sets that nobody agreed on cannot be chosen."""
        sets, model = self._context.sets, self.sets_box.model()
        for place in range(self.sets_box.count()):
            source = SetsSource(self.sets_box.itemData(place))
            if isinstance(model, QStandardItemModel):
                model.item(place).setEnabled(sets.may_be_shown(source))
            if source is sets.source:
                self.sets_box.setCurrentIndex(place)
        self._shown = None
        self._later.start(0)

    def _wide_button(self, action: ActionId, name: str, column: QVBoxLayout) -> QPushButton:
        record = action_record(action)
        button = QPushButton(tr(record.title).rstrip("…").replace("&", ""), self)
        if action is not ActionId.BILL:
            button.setIcon(icon(name))
        button.setToolTip(f"{tr(record.hint)} ({record.keys})")
        button.clicked.connect(self._asker(action))
        column.addWidget(button)
        return button

    def _tool_button(self, action: ActionId, name: str) -> QToolButton:
        record = action_record(action)
        button = QToolButton(self)
        button.setIcon(icon(name))
        button.setIconSize(QSize(18, 18))
        words = tr(record.title).replace("&", "").rstrip("…")
        button.setAccessibleName(f"{tr('Position')}: {words}")
        button.setToolTip(f"{words}: {tr(record.hint)} ({record.keys})")
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        button.clicked.connect(self._asker(action))
        return button

    def _asker(self, action: ActionId) -> Callable[[], None]:
        return lambda: self.asked.emit(action)

    def refresh(self) -> None:
        """Show the site as it is; the position in focus stays marked."""
        session = self._context.session
        before, survey = self._shown, session.survey
        is_big, self._shown = len(survey.positions) > _AT_ONCE, survey
        self._planned.clear()
        self.title_label.setText(survey.site.name)
        self.place_label.setText(survey.site.address or tr("no address yet"))
        if before is None or before.site.name != survey.site.name:
            self.station_label.clear()
        if is_big:
            self._assumed_later.start()
        else:
            self._show_assumed()
        if is_big:
            self.tree.scroll_by_rows(True)
        nodes = site_nodes(survey, self._words_of_all())
        self._showing = True
        keyboard_here = self.tree.hasFocus()
        as_before = not self.model.follow_nodes(nodes)
        self.tree.scroll_by_rows(is_big)  # smoothly once few rows are left: all of them are measured for it
        if not as_before:
            self.tree.span_rows(self.model.spanning())
            self.tree.expandAll()
            self.tree.fit_columns()
            self.tree.pick(self.model.index_of(session.label))
            self._bring_into_view(self.tree.currentIndex())
        else:
            self.tree.pick(self.model.index_of(session.label))
        if keyboard_here:
            self.tree.setFocus()
        self._showing = False

    def _words_of_all(self) -> RowWords:
        """Return what rows show, put together for all of them at once where each would ask the same."""
        words = replace(self._words, tone=self._context.sets.tones().__getitem__)
        return words if self._context.sets.agreed is not None else replace(words, told=lambda _: "")

    def _refresh_soon(self) -> None:
        """Show the site as it is: of a big one in a turn of its own, so that the drawing need not wait for the list."""
        if len(self._context.session.survey.positions) > _AT_ONCE:
            self._later.start(0)
        else:
            self.refresh()

    def _bring_into_view(self, current: QModelIndex) -> None:
        """Have the current row in view, the first one below its dispenser: a tree not laid out yet would hide that."""
        if current.row() == 0 and current.parent().row() <= 0:
            self.tree.scrollToTop()
        else:
            self.tree.scrollTo(current)

    def _show_assumed(self) -> None:
        plans, survey = self._context.sets, self._context.session.survey
        shown = [plan for one in survey.positions if (plan := plans.plan(one.label)) is not None]
        self.station_label.setText("\n".join(one.text for one in station_lines(shown, self._context.story)))

    def _on_updated(self, label: str) -> None:
        """Show soon what came of a position; where many come, now and then and not after each."""
        self._planned.add(label)
        if not self._later.isActive():
            is_big = len(self._context.session.survey.positions) > _AT_ONCE
            self._later.start(_NOW_AND_THEN_MS if is_big else 0)

    def _follow(self) -> None:
        """Mark anew the positions of which a plan came; look at the whole site where more than marks is another."""
        survey, planned = self._context.session.survey, tuple(self._planned)
        self._planned.clear()
        if survey is not self._shown or len(planned) > _AT_ONCE:
            self.refresh()
            return
        self._showing = True
        known = [label for label in planned if survey.position(label) is not None]
        as_before = self._mark_rows(known)
        self._showing = False
        if not as_before:
            self.refresh()
        elif len(survey.positions) <= _AT_ONCE:
            self._show_assumed()
        elif not self._assumed_later.isActive():
            self._assumed_later.start()

    def _mark_rows(self, labels: Sequence[str]) -> bool:
        """Mark positions anew; say whether nothing but their marks is another."""
        return all(self.model.follow_row(position_node(label, self._words)) for label in labels)

    def _follow_edit(self) -> bool:
        """Mark the positions that an edit wrote into anew, where nothing else of the site is another by it."""
        sets, survey, before = self._context.sets, self._context.session.survey, self._shown
        if before is None or sets.agreed is not None or sets.source is not SetsSource.PLAN or survey.site.stock_price:
            return False
        labels = _written_alone(before, survey)
        if labels is None or not self._mark_rows(labels):
            return False
        self._shown = survey
        if len(survey.positions) > _AT_ONCE:
            self._assumed_later.start()
        else:
            self._show_assumed()
        return True

    def _liquid(self, label: str) -> str:
        position = self._context.session.survey.position(label)
        return liquid_words(position) if position is not None else ""

    def _hint(self, label: str) -> str:
        """Return what the mark of a position says."""
        plans = self._context.sets
        tone = plans.tone(label)
        if tone is Tone.OPEN or plans.trouble(label):
            return f"{label}: {tone_words(tone)}"
        return f"{label}: {plan_words(plans.plan(label), self._context.story)}"

    def _told(self, label: str) -> str:
        """Return what is to be said of the agreed set of a position; nothing where it is as agreed."""
        plan = self._context.sets.agreed_plan(label)
        standing = standing_of(plan) if plan is not None and is_to_be_looked_at(plan) else None
        return standing_short(standing, self._context.story) if standing is not None else ""

    def _pick(self, record: object) -> None:
        if isinstance(record, str) and not self._showing:
            self._context.session.look_at(record)
            self.position_opened.emit(record)

    def _click(self, record: object) -> None:
        """Have a position in view, the one in hand too: another page may be in its place."""
        if isinstance(record, str):
            self.position_wanted.emit(record)

    def _on_changed(self, what: Changed) -> None:
        if what & Changed.SURVEY and not self._follow_edit():
            self._refresh_soon()
        elif what & Changed.FOCUS:
            self._showing = True
            self.tree.pick(self.model.index_of(self._context.session.label))
            self._showing = False


def _written_alone(before: Survey, now: Survey) -> list[str] | None:
    """Return the positions that say something else, where they are few and nothing else does; None for all else."""
    if before.site != now.site or len(before.positions) != len(now.positions):
        return None
    written = [(old, new) for old, new in zip(before.positions, now.positions, strict=True) if old is not new]
    if len(written) > _AT_ONCE or any((old.label, old.dispenser) != (new.label, new.dispenser) for old, new in written):
        return None
    return [new.label for _, new in written]
