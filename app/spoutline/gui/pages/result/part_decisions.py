"""What a person decides about a part at the position in focus: it is used, excluded, or left open again."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from spoutline.frozen import frozen
from spoutline.gui.edits.decisions import keep_part, refuse_part, release_part
from spoutline.gui.pages.context import Context
from spoutline.gui.wording import tr
from spoutline.model.part_ref import PartRef, any_names
from spoutline.model.survey import Decisions, Survey


@frozen(kw_only=True)
class DecisionTexts:
    """What the three buttons say."""

    keep: str
    refuse: str
    release: str


class PartDecisions(QObject):
    """Three buttons, in ``row``; each makes one edit of the part that ``part`` returns, None for none."""

    def __init__(
        self, context: Context, texts: DecisionTexts, part: Callable[[], PartRef | None], parent: QWidget
    ) -> None:
        super().__init__(parent)
        self._context, self._part = context, part
        self.keep_button = QPushButton(texts.keep, parent)
        self.refuse_button = QPushButton(texts.refuse, parent)
        self.release_button = QPushButton(texts.release, parent)
        self.keep_button.clicked.connect(lambda: self._decide(keep_part, tr("Use {part}")))
        self.refuse_button.clicked.connect(lambda: self._decide(refuse_part, tr("Exclude {part}")))
        self.release_button.clicked.connect(lambda: self._decide(release_part, tr("Leave {part} open")))
        self.buttons = (self.keep_button, self.refuse_button, self.release_button)
        self.row = QHBoxLayout()
        for button in self.buttons:
            self.row.addWidget(button)
        self.row.addStretch(1)

    def allow(self, decisions: Decisions, part: PartRef, *, may_refuse: bool, may_keep: bool = True) -> None:
        """Let those be pressed that change what is decided of a part."""
        self.keep_button.setEnabled(may_keep and not any_names(decisions.pinned, part))
        self.refuse_button.setEnabled(may_refuse)
        self.release_button.setEnabled(any_names((*decisions.pinned, *decisions.refused), part))

    def _decide(self, decided: Callable[[Survey, str, PartRef], Survey], words: str) -> None:
        session, part = self._context.session, self._part()
        if part is not None:
            self._context.edit(decided(session.survey, session.label, part), words.format(part=part.number))
