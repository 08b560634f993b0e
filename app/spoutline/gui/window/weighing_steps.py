"""Sets weighed in a dialog; one taken is one change of the survey, one picked becomes the agreed set."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QDialog, QWidget

from spoutline.gui.pages.context import Context

if TYPE_CHECKING:
    from spoutline.gui.dialogs.weighing import WeighingDialog
    from spoutline.model.plan import SitePlan


class WeighingSteps(QObject):
    """Opens the dialog for the survey in hand and takes what comes of it; ``agree`` asks who agrees on picked sets."""

    def __init__(self, context: Context, agree: Callable[[SitePlan, str], None], window: QWidget) -> None:
        super().__init__(window)
        self._context, self._agree, self._window = context, agree, window
        self.dialog: WeighingDialog | None = None

    def ask(self) -> None:
        """Let a person weigh sets; the survey changes only where one is taken."""
        from spoutline.gui.dialogs.weighing import WeighingDialog
        from spoutline.gui.dialogs.weighing_tools import WeighingTools

        context, session = self._context, self._context.session
        tools = WeighingTools(session.workbench, context.jobs, context.story)
        self.dialog = WeighingDialog(session.survey, session.label, tools, self._window)
        accepted = self.dialog.exec() == QDialog.DialogCode.Accepted
        after, agreed, said = self.dialog.after, self.dialog.agreed, self.dialog.said
        self.dialog.deleteLater()
        self.dialog = None
        if accepted and after is not None:
            context.edit(after, said)
        elif accepted and agreed is not None:
            self._agree(agreed, said)
