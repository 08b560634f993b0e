"""What if an answer were another: asked in a dialog, accepted as one change of the survey that can be undone."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QDialog, QWidget

from spoutline.gui.jobs import Ticket
from spoutline.gui.pages.context import Context
from spoutline.model.agreed_sets import SetsSource
from spoutline.model.plan import SitePlan

if TYPE_CHECKING:
    from spoutline.gui.dialogs.what_if import WhatIfDialog


class WhatIfSteps(QObject):
    """Opens the dialog for the survey in hand and takes what comes of it."""

    def __init__(self, context: Context, window: QWidget) -> None:
        super().__init__(window)
        self._context, self._window = context, window
        self.dialog: WhatIfDialog | None = None

    def ask(self) -> None:
        """Let a person look at other answers; the survey changes only where one is accepted."""
        from spoutline.gui.dialogs.what_if import WhatIfDialog
        from spoutline.gui.dialogs.what_if_tools import TodaysSets, WhatIfTools

        context, session = self._context, self._context.session
        tools = WhatIfTools(session.workbench, context.jobs, context.story, TodaysSets(self._today()))
        self.dialog = WhatIfDialog(session.survey, session.label, tools, self._window)
        accepted = self.dialog.exec() == QDialog.DialogCode.Accepted
        after, said = self.dialog.after, self.dialog.said
        self.dialog.deleteLater()
        self.dialog = None
        if accepted and after is not None:
            context.edit(after, said)

    def _today(self) -> Callable[[Ticket], SitePlan]:
        """Return work that gives the sets of today: those planned already, where the window has all of them."""
        sets, session = self._context.sets, self._context.session
        whole_site = sets.whole_site()
        found = [sets.plan(one.label) for one in session.survey.positions]
        plans = [one for one in found if one is not None]
        if sets.source is not SetsSource.PLAN or len(plans) < len(found) or not self._is_explained():
            return whole_site
        service, survey = session.workbench.what_if(), session.survey
        return lambda _: service.today(survey, plans)

    def _is_explained(self) -> bool:
        """Say whether it is known of every position without a set why it has none."""
        plans, survey = self._context.plans, self._context.session.survey
        return all((staged := plans.staged(one.label)) and staged.is_explained for one in survey.positions)
