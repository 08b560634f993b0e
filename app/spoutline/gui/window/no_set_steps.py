"""Why a position has no set: shown in a dialog, a way out accepted as one change of the survey that can be undone."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QDialog, QWidget

from spoutline.gui.pages.context import Context
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.wording import tr

if TYPE_CHECKING:
    from spoutline.gui.dialogs.no_set import NoSetDialog


class NoSetSteps(QObject):
    """Opens the dialog for the position in focus and takes what comes of it."""

    def __init__(self, context: Context, window: QWidget) -> None:
        super().__init__(window)
        self._context, self._window = context, window
        self.dialog: NoSetDialog | None = None

    def show(self) -> None:
        """Let a person look at reasons and ways out; the survey changes only where a way out is accepted."""
        from spoutline.gui.dialogs.no_set import NoSetDialog, NoSetTools

        context, session, plan = self._context, self._context.session, self._context.plan
        if plan is None or not plan.is_without_set:
            return
        stem = f"{file_stem(session.survey.site.name)}-{file_stem(plan.position.label)}-why"
        tools = NoSetTools(session.workbench, context.jobs, context.story, stem)
        self.dialog = NoSetDialog(session.survey, plan, tools, self._window)
        accepted = self.dialog.exec() == QDialog.DialogCode.Accepted
        after = self.dialog.after
        self.dialog.deleteLater()
        self.dialog = None
        if accepted and after is not None:
            context.edit(after, tr("Way out"))
