"""What every page is given: the session, the plans, the workers and the words."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.edits.command import make_edit
from spoutline.gui.jobs import Jobs
from spoutline.gui.models.plans import Plans
from spoutline.gui.models.shown_sets import ShownSets
from spoutline.gui.session import Session
from spoutline.model.plan import Conflict, PositionPlan
from spoutline.model.survey import Survey
from spoutline.units.display import Display

if TYPE_CHECKING:
    from spoutline.gui.intake.import_panel import IntakeTools

Notify = Callable[[str], None]  # shows a notice above the page


class StoryInUse:
    """The story in the units in use, made once per unit system."""

    def __init__(self, session: Session) -> None:
        self._session = session
        self._story: Story | None = None
        self._shown_in: Display | None = None

    def story(self) -> Story:
        """Return the words with figures in the units in use."""
        display = self._session.display
        if self._story is None or self._shown_in != display:
            self._story, self._shown_in = self._session.workbench.story(display), display
        return self._story


@frozen
class Context:
    """Handed from the window to its pages; none of them keeps state of its own."""

    session: Session
    plans: Plans
    jobs: Jobs
    words: StoryInUse
    sets: ShownSets

    @property
    def story(self) -> Story:
        """The words with figures in the units in use."""
        return self.words.story()

    @property
    def intake(self) -> IntakeTools:
        """What the view of a table works with."""
        from spoutline.gui.intake.import_panel import IntakeTools

        return IntakeTools(self.jobs, self.story)

    @property
    def plan(self) -> PositionPlan | None:
        """What is shown of the position in focus: planned, agreed or built; None while it is being made."""
        return self.sets.plan(self.session.label)

    @property
    def is_explained(self) -> bool:
        """Whether it is known why the position in focus has no planned set; True where it has one."""
        staged = self.plans.staged(self.session.label)
        return staged is None or staged.is_explained

    @property
    def obstacle(self) -> Conflict | None:
        """What is in the way of the position in focus, while ways out are still looked for."""
        staged = self.plans.staged(self.session.label)
        return staged.obstacle if staged is not None and not staged.is_explained else None

    @property
    def plan_to_show(self) -> PositionPlan | None:
        """What is shown of the position in focus or, while it is made anew, what was shown before."""
        return self.plan or self.sets.plan_before(self.session.label)

    def edit(self, after: Survey, text: str, focus: str | None = None) -> bool:
        """Carry out an edit through the undo stack."""
        return make_edit(self.session, after, text, focus)
