"""The outcome of a position at a glance: mark, headline, price; where nothing fits, why and what would help."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from spoutline.explain.plan.agreed_words import broken_musts, standing_sentence
from spoutline.explain.plan.assumed import origin_sentences
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.edits.remedies import after_relaxation, after_way_out
from spoutline.gui.models.marks import lead_time_days, tone_of_plan
from spoutline.gui.models.site_nodes import plan_words, tone_words
from spoutline.gui.pages.context import Context
from spoutline.gui.pages.sets_head import SetsHead
from spoutline.gui.roles import Tone
from spoutline.gui.widgets.cards import empty_layout, plain_label
from spoutline.gui.widgets.fitted_scroll import FittedScroll
from spoutline.gui.widgets.marks import Mark
from spoutline.gui.widgets.steady import SteadyChange
from spoutline.gui.wording import tr
from spoutline.model.agreed_sets import SetBasis, SetsSource
from spoutline.model.plan import PlanStatus, PositionPlan, Relaxation
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Survey
from spoutline.planning.agreement.standing import is_to_be_looked_at, standing_of

_LEADING_SENTENCES = 2  # that nothing fits, and what cannot be met together; what would help comes next


@frozen
class Remedy:
    """Something that would help, in words, and the survey after it where it is a change of an answer.

    ``act`` is what the button that changes it says.
    """

    words: str
    after: Survey | None
    act: str


def remedies_of(plan: PositionPlan, survey: Survey, story: Story) -> tuple[Remedy, ...]:
    """Return the ways out of a refusal or the relaxations of a conflict."""
    label = plan.position.label
    if plan.refusal is not None:
        return tuple(
            Remedy(story.way_out(way), after_way_out(survey, label, way), tr("Do this"))
            for way in plan.refusal.ways_out
        )
    if plan.conflict is not None:
        currency = survey.site.currency
        return tuple(
            Remedy(story.relaxation(change, currency), after_relaxation(survey, label, change), _act(change))
            for change in plan.conflict.relaxations
        )
    return ()


def _act(relaxation: Relaxation) -> str:
    numbers = ", ".join(one.now.number for one in relaxation.successions)
    return tr("Take its successor {numbers}").format(numbers=numbers) if numbers else tr("Do this")


def _name(button: QPushButton) -> str:
    return button.accessibleName() or button.text()


def _show_now(button: QPushButton) -> None:
    """Show a button and its row: what a layout shows only later takes no focus until then."""
    row = button.parentWidget()
    if row is not None:
        row.show()
    button.show()


def headline(plan: PositionPlan, tone: Tone, story: Story) -> str:
    """Return the outcome in one line."""
    if plan.status is PlanStatus.FITS and plan.basis is SetBasis.AGREED and not plan.keeps_every_must:
        return tr("The agreed set breaks a must")
    if plan.status is PlanStatus.FITS:
        opening = {
            Tone.BAD: tr("A set was found, but a must is broken"),
            Tone.QUESTION: tr("A set fits; a question is open"),
        }.get(tone, tr("A set fits"))
        return story.writing.listed((opening, *story.good_practice(plan)))
    return story.title(plan.status)


class OutcomeCard(QFrame):
    """Shows the outcome of the position in focus.

    Signals
    -------
    plan_again_wanted()
        A person wants to see a new plan beside the agreed set.
    agree_wanted()
        A person wants to agree on planned sets.
    what_if_wanted()
        A person wants to see what another answer would do.
    all_reasons_wanted()
        A person wants to see everything that keeps the position from a set.
    """

    plan_again_wanted = Signal()
    agree_wanted = Signal()
    what_if_wanted = Signal()
    all_reasons_wanted = Signal()

    def __init__(self, context: Context, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("card")
        self._context = context
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 12)
        row = QHBoxLayout()
        self._mark = Mark(self, 30)
        self.headline_label = plain_label("", "pageTitle", wraps=True)
        self._facts_label = plain_label("", "quiet", wraps=True)
        self.price_label = QLabel(self)
        self.price_label.setObjectName("price")
        self.price_label.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        words = QVBoxLayout()
        words.setSpacing(2)
        words.addWidget(self.headline_label)
        words.addWidget(self._facts_label)
        row.addWidget(self._mark)
        row.addSpacing(6)
        row.addLayout(words, 1)
        row.addWidget(self.price_label)
        column.addLayout(row)
        self.sets_head = SetsHead(context, self)
        self.agree_button = QPushButton(tr("Agree on these sets…"), self)
        self.agree_button.clicked.connect(lambda _=False: self.agree_wanted.emit())
        self.what_if_button = QPushButton(tr("What if…"), self)
        self.what_if_button.setToolTip(tr("What another answer would do, before the survey is changed."))
        self.what_if_button.clicked.connect(lambda _=False: self.what_if_wanted.emit())
        foot = QHBoxLayout()
        foot.addWidget(self.sets_head, 1)
        foot.addWidget(self.what_if_button)
        foot.addWidget(self.agree_button)
        column.addLayout(foot)
        self._scroll = FittedScroll(self)
        self._reasons = self._scroll.column
        self._reasons.setSpacing(6)
        column.addWidget(self._scroll)
        self.is_waiting = False  # for why nothing fits
        self.remedy_buttons: list[QPushButton] = []
        self.again_button: QPushButton | None = None
        self.reasons_button: QPushButton | None = None
        self._change = SteadyChange(self._lay_out, self)

    def refresh(self) -> None:
        """Show the present outcome; what is pressed stays until the mouse is let go."""
        self._change.ask()

    def _lay_out(self) -> None:
        focused = next((_name(one) for one in self._buttons() if one.hasFocus()), "")
        self.is_waiting = False
        empty_layout(self._reasons)
        self.remedy_buttons.clear()
        self.again_button = self.reasons_button = None
        self.agree_button.setVisible(self._context.sets.source is SetsSource.PLAN)
        self._show_outcome()
        self._scroll.setVisible(self._reasons.count() > 0)
        self._scroll.fit()
        for button in self._buttons():
            if _name(button) == focused:  # one that was there before further ways out came
                _show_now(button)
                button.setFocus()

    def _buttons(self) -> tuple[QPushButton, ...]:
        """Return the buttons that are made anew with every outcome."""
        others = (one for one in (self.again_button, self.reasons_button) if one is not None)
        return *self.remedy_buttons, *others

    def _show_outcome(self) -> None:
        trouble = self._context.sets.trouble(self._context.session.label)
        plan = self._context.plan
        if trouble or plan is None:
            tone = Tone.BAD if trouble else Tone.WORKING
            self._mark.show_tone(tone, tone_words(tone))
            self.headline_label.setText(tr("No plan can be made") if trouble else tr("Looking for sets…"))
            self._facts_label.setText(trouble)
            self.price_label.clear()
            return
        if self._is_open():
            self._show_open()
        else:
            self._show_plan(plan)
            self._show_standing(plan)
        self._show_assumed()
        if plan.requirement is not None:
            words = tr("Limits behind it: {0}").format(self._context.story.footing(plan.requirement))
            self._reasons.addWidget(plain_label(words, "quiet", wraps=True))

    def _show_standing(self, plan: PositionPlan) -> None:
        """Say whether an agreed set still serves, and if not, why; offer a new plan beside it."""
        standing = standing_of(plan)
        if standing is None or not is_to_be_looked_at(plan):
            return
        story = self._context.story
        row = QWidget(self)
        layout = QHBoxLayout(row)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(plain_label(standing_sentence(standing, story), wraps=True), 1)
        self.again_button = QPushButton(tr("Plan this pos&ition again"), row)
        self.again_button.clicked.connect(lambda _=False: self.plan_again_wanted.emit())
        layout.addWidget(self.again_button, 0, Qt.AlignmentFlag.AlignTop)
        self._reasons.addWidget(row)
        if plan.refusal is None and plan.chosen is not None and not plan.keeps_every_must:
            self._add_sentences(broken_musts(plan, story))

    def _is_open(self) -> bool:
        """Whether nobody surveyed the position in focus, so that its planned set says nothing."""
        sets, label = self._context.sets, self._context.session.label
        return sets.source is SetsSource.PLAN and sets.tone(label) is Tone.OPEN

    def _show_open(self) -> None:
        """Say what is missing before a set means anything; no price, since nobody asked for this set."""
        self._mark.show_tone(Tone.OPEN, tone_words(Tone.OPEN))
        self.headline_label.setText(tr("Not surveyed yet"))
        self._facts_label.setText(
            tr("Say what this position sells, for what, and whether vapor is recovered. Until then it is not quoted.")
        )
        self.price_label.clear()

    def _show_assumed(self) -> None:
        position = self._context.session.survey.position(self._context.session.label)
        for told in origin_sentences(position, self._context.story) if position is not None else ():
            self._reasons.addWidget(plain_label(told, "quiet", wraps=True))

    def _show_plan(self, plan: PositionPlan) -> None:
        story, tone = self._context.story, tone_of_plan(plan)
        self._mark.show_tone(tone, plan_words(plan, story))
        self.headline_label.setText(headline(plan, tone, story))
        if plan.chosen is not None:
            chosen = plan.chosen.hanging_set
            mass = sum(link.part.mass_kg for link in chosen.links)
            self.price_label.setText(story.money(chosen.price_minor, chosen.currency))
            self._facts_label.setText(
                tr("{count} parts · lead time {days} · mass {mass} · list prices").format(
                    count=len(chosen.links),
                    days=story.days(lead_time_days(plan.chosen)),
                    mass=story.show(mass, Dimension.MASS),
                )
            )
        else:
            self.price_label.clear()
            self._facts_label.setText(tr("No list of parts is offered until this is settled."))
            self._show_reasons(plan, story)

    def _show_reasons(self, plan: PositionPlan, story: Story) -> None:
        sentences: tuple[str, ...] = ()
        waits_for = ""
        if plan.refusal is not None:
            sentences = story.refusal(plan.refusal)
        elif plan.conflict is not None:
            sentences = story.conflict(plan.conflict)
        elif self._context.obstacle is not None:
            plan = replace(plan, conflict=self._context.obstacle)
            sentences = story.conflict(self._context.obstacle, ways_may_come=True)
            waits_for = tr("Looking for what would help…")
        elif not self._context.is_explained:
            waits_for = tr("Looking for the reasons and for what would help…")
        self._add_sentences(sentences[:_LEADING_SENTENCES])
        remedies = remedies_of(plan, self._context.session.survey, story)
        if remedies:
            self._reasons.addWidget(plain_label(tr("What would help"), "cardTitle"))
        for remedy in remedies:
            self._reasons.addWidget(self._remedy_row(remedy))
        self.is_waiting = bool(waits_for)
        if waits_for:
            self._add_sentences((waits_for,))
        if plan.is_without_set:
            self._add_reasons_button()
        if remedies and len(sentences) > _LEADING_SENTENCES:
            self._reasons.addWidget(plain_label(tr("In detail"), "cardTitle"))
        self._add_sentences(sentences[_LEADING_SENTENCES:])

    def _add_reasons_button(self) -> None:
        """Offer everything that keeps the position from a set: the sentences here tell the first obstacle alone."""
        self.reasons_button = QPushButton(tr("All reasons and &ways out…"), self)
        self.reasons_button.setToolTip(tr("Every obstacle with its numbers, and every way out with its set and price."))
        self.reasons_button.clicked.connect(lambda _=False: self.all_reasons_wanted.emit())
        self._reasons.addWidget(self.reasons_button, 0, Qt.AlignmentFlag.AlignLeft)

    def _add_sentences(self, sentences: tuple[str, ...]) -> None:
        for sentence in sentences:
            self._reasons.addWidget(plain_label(sentence, wraps=True))

    def _remedy_row(self, remedy: Remedy) -> QWidget:
        row = QWidget(self)
        layout = QHBoxLayout(row)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(plain_label(remedy.words, wraps=True), 1)
        if remedy.after is not None:
            button = QPushButton(remedy.act, row)
            button.setAccessibleName(f"{remedy.act}: {remedy.words}")
            button.clicked.connect(self._doer(remedy))
            layout.addWidget(button, 0, Qt.AlignmentFlag.AlignTop)
            self.remedy_buttons.append(button)
        return row

    def _doer(self, remedy: Remedy) -> Callable[[], None]:
        def act() -> None:
            if remedy.after is not None:
                self._context.edit(remedy.after, tr("Way out"))

        return act
