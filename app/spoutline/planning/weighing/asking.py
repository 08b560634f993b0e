"""What people write for axes and positions, and whether it can be weighed."""

from __future__ import annotations

from collections.abc import Sequence

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.front import MOST_AXES, FrontAxis
from spoutline.model.survey import Position, Survey
from spoutline.model.worded import Worded


def axes_named(text: str, field: str) -> tuple[FrontAxis, ...]:
    """Return the axes that a text names, separated by commas.

    Raises
    ------
    InputFault
        A word is no axis, one is named twice, or there are none or too many; ``field`` is what the fault names.
    """
    words = [word.strip().casefold() for word in text.split(",") if word.strip()]
    known = {axis.value: axis for axis in FrontAxis}
    unknown = [word for word in words if word not in known]
    if unknown:
        right = Worded("use one of: {names}", names=", ".join(known))
        raise InputFault(tuple(InputProblem("", field, repr(word), right) for word in unknown))
    if not 1 <= len(words) <= MOST_AXES or len(set(words)) < len(words):
        right = Worded("name one to {count} axes, each once, such as price,lead,flow", count=MOST_AXES)
        raise InputFault((InputProblem("", field, repr(text), right),))
    return tuple(known[word] for word in words)


def check_axes(axes: Sequence[FrontAxis], there: Sequence[FrontAxis]) -> None:
    """Raise ``InputFault`` for axes that are not ``there``; none at all says that the answers are refused."""
    if not there:
        return
    reasons = {
        FrontAxis.PERMEATION: Worded(
            "it is worked out for gasoline in a climate with its middle at 0 to 45 degrees; use: {names}",
            names=", ".join(there),
        ),
    }
    other = Worded("use one of: {names}", names=", ".join(there))
    wrong = [axis for axis in axes if axis not in there]
    if wrong:
        raise InputFault(tuple(InputProblem("", "axis", repr(axis.value), reasons.get(axis, other)) for axis in wrong))


def checked_position(survey: Survey, label: str) -> Position:
    """Return a position of a survey; raise ``InputFault`` for a label that it does not have."""
    position = survey.position(label)
    if position is None:
        right = Worded("use one of: {names}", names=", ".join(one.label for one in survey.positions))
        raise InputFault((InputProblem("", "position", repr(label), right),))
    return position
