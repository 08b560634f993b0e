"""How the size of the outlet was understood, told beside its question."""

from __future__ import annotations

from collections.abc import Mapping

from spoutline.gui.edits.question import Question
from spoutline.gui.wording import tr
from spoutline.model.port_sizes import understood_words
from spoutline.model.survey import Survey

THREAD, SIZE = ("outlet", "thread"), ("outlet", "size")


def size_readings(question: Question, text: str, after: Survey, label: str) -> Mapping[str, str]:
    """Return, by the name of a question, what is to be said beside it after an answer was taken.

    Parameters
    ----------
    question, text
        What was asked, and the answer as it was typed.
    after, label
        The survey with the answer, and the position that it belongs to.
    """
    position = after.position(label)
    if position is None or question.path not in (THREAD, SIZE):
        return {}
    outlet = position.outlet
    name = ".".join(SIZE)
    if question.path == SIZE:
        told = tr("Read as {0}.").format(understood_words(outlet.size, outlet.thread))
        return {name: told if text.strip() != outlet.size else ""}
    return {name: tr("Size for this thread: {0}.").format(understood_words(outlet.size, outlet.thread))}
