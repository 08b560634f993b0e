"""Ways out of a refusal and relaxations of a conflict that are a change of an answer."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from spoutline.gui.edits.answers import with_position
from spoutline.gui.edits.decisions import keep_part
from spoutline.model.plan import Relaxation, Succession
from spoutline.model.requirement import RequirementId, WayOut
from spoutline.model.survey import Position, Survey, VapourStatus
from spoutline.planning.no_set.giving_up import after_line

_Change = Callable[[Position], Position]


def _blend(percent: float) -> _Change:
    return lambda position: _updated(position, liquid=position.liquid.model_copy(update={"blend_percent": percent}))


def _updated(position: Position, **fields: object) -> Position:
    return position.model_copy(update=fields)


_WAYS_OUT: dict[WayOut, _Change] = {
    WayOut.USE_B20_OR_LESS: _blend(20.0),
    WayOut.USE_B100: _blend(100.0),
    WayOut.USE_E85_OR_LESS: _blend(85.0),
    WayOut.DROP_VAPOUR_RECOVERY: lambda position: _updated(position, vapour_wanted=VapourStatus.NONE),
    WayOut.KEEP_VAPOUR_RECOVERY: lambda position: _updated(position, vapour_wanted=position.vapour_today),
    WayOut.DROP_HOLD_OPEN: lambda position: _updated(position, hold_open_wanted=False),
}


def after_way_out(survey: Survey, label: str, way: WayOut) -> Survey | None:
    """Return the survey after a way out; None where it is not a change of an answer, or changes nothing."""
    change = _WAYS_OUT.get(way)
    return _changed(survey, label, change) if change is not None else None


def after_relaxation(survey: Survey, label: str, relaxation: Relaxation) -> Survey | None:
    """Return the survey after a relaxation; None where it is no change of a wish.

    A wish may be given up with a button: latch, flow, lead time, breakaway that can be reconnected, kept and refused
    parts. What is measured (reach, strength of the outlet, pressure, climate), sold (liquid and blend) or ruled stays:
    no answer makes it otherwise.
    """
    if relaxation.successions:
        return _after_successions(survey, label, relaxation.successions)
    after: Survey | None = _after_line(survey, label, relaxation.requirement, relaxation.to_value)
    for requirement in relaxation.also:  # lines that free a set only together
        after = None if after is None else _after_line(after, label, requirement, None)
    return after


def _after_successions(survey: Survey, label: str, successions: Iterable[Succession]) -> Survey | None:
    """Return the survey in which the kept parts gave way to those that took their place; all others stay kept."""
    after = survey
    for one in successions:
        after = keep_part(after, label, one.now, instead_of=(one.before,))
    return after if after != survey else None


def _after_line(survey: Survey, label: str, requirement: RequirementId, to_value: float | None) -> Survey | None:
    position = survey.position(label)
    if position is None:
        raise KeyError(label)
    after = after_line(position, survey.site, requirement, to_value)
    goes_with_latch = requirement is RequirementId.NO_PRESSURE_DEVICE  # which may have been given up just before
    if after is None or (after == position and not goes_with_latch):
        return None
    return with_position(survey, label, after)


def _changed(survey: Survey, label: str, change: _Change) -> Survey | None:
    position = survey.position(label)
    if position is None:
        raise KeyError(label)
    after = change(position)
    return with_position(survey, label, after) if after != position else None
