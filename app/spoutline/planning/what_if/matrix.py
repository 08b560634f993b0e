"""Several other answers to one question, each worked out as one alone is."""

from __future__ import annotations

from collections.abc import Sequence

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.plan import SitePlan
from spoutline.model.what_if import WhatIf
from spoutline.model.what_if_matrix import WhatIfMatrix
from spoutline.model.worded import Worded
from spoutline.planning.protocols import Progress
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.what_if.answer import WhatIfListening, what_if

MOST_ANSWERS = 8  # as many columns as a page has room for


@frozen
class _Part:
    """Tells of one answer among several as a part of the whole."""

    progress: Progress
    place: int
    count: int

    def on_progress(self, done: int, total: int) -> None:
        """Say how far all answers are."""
        self.progress.on_progress(self.place * total + done, self.count * total)

    def should_stop(self) -> bool:
        """Pass the question on."""
        return self.progress.should_stop()


def what_if_matrix(
    before: SitePlan, asked: Sequence[tuple[WhatIf, PlanningContext]], progress: Progress | None = None
) -> WhatIfMatrix:
    """Return several answers side by side; each comes with what it is planned by.

    Raises
    ------
    InputFault
        There are no answers, too many, or of several questions; the survey does not admit one of them.
    Cancelled
        If ``progress`` asks to stop.
    """
    check_several([one for one, _ in asked])
    listening = (_Part(progress, place, len(asked)) if progress is not None else None for place in range(len(asked)))
    columns = tuple(
        what_if(before, one, context, WhatIfListening(told))
        for (one, context), told in zip(asked, listening, strict=True)
    )
    return WhatIfMatrix(question=asked[0][0].question, before=before, columns=columns)


def check_several(asked: Sequence[WhatIf]) -> None:
    """Raise ``InputFault`` unless the answers are some, not too many, and all to one question."""
    if len({one.question for one in asked}) != 1 or len(asked) > MOST_ANSWERS:
        wanted = Worded("name 1 to {most} answers to one question", most=MOST_ANSWERS)
        raise InputFault((InputProblem("", "answers", str(len(asked)), wanted),))
