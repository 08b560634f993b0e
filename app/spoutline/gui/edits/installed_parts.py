"""Edits of what hangs at a position today: add, describe, take away, take over what was planned."""

from __future__ import annotations

from spoutline.gui.edits.answers import with_position
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.installed import InstalledCondition, InstalledPart
from spoutline.model.part import HANGING_KINDS, Part, PartKind
from spoutline.model.plan import HangingSet
from spoutline.model.survey import Position, Survey, SurveyLiquid

_MOST = 40
_OLDEST = 100


def _position(survey: Survey, label: str) -> Position:
    position = survey.position(label)
    if position is None:
        raise KeyError(label)
    return position


def _with(survey: Survey, label: str, installed: tuple[InstalledPart, ...]) -> Survey:
    if len(installed) > _MOST:
        wanted = f"a position holds at most {_MOST} installed parts"
        raise InputFault((InputProblem("", "installed parts", str(len(installed)), wanted),))
    return with_position(survey, label, _position(survey, label).model_copy(update={"installed": installed}))


def with_installed_part(survey: Survey, label: str, part: Part) -> Survey:
    """Return the survey with a catalogue part added to what hangs at a position; raise ``InputFault`` for others."""
    if part.kind not in HANGING_KINDS:
        wanted = "hanging hardware only: nozzle, swivel, hose, breakaway, adapter, splitter"
        raise InputFault((InputProblem("", "installed part", part.number, wanted),))
    new = InstalledPart(kind=part.kind, number=part.number, maker=part.maker)
    return _with(survey, label, (*_position(survey, label).installed, new))


def with_described_part(survey: Survey, label: str, kind: PartKind, description: str) -> Survey:
    """Return the survey with a part that is not in the catalogue added; raise ``InputFault`` without a description."""
    if not description.strip():
        problem = InputProblem("", "description", "nothing", "describe the part: what it is and what its plate says")
        raise InputFault((problem,))
    new = InstalledPart(kind=kind, description=description.strip()[:200])
    return _with(survey, label, (*_position(survey, label).installed, new))


def with_age(survey: Survey, label: str, index: int, typed: str) -> Survey:
    """Return the survey with the age (years) of an installed part; empty for unknown. Raise ``InputFault``."""
    text = typed.strip()
    try:
        age = float(text) if text else None
    except ValueError:
        age = -1.0
    if age is not None and not 0 <= age <= _OLDEST:
        problem = InputProblem("", "age", repr(text), f"write years from 0 to {_OLDEST}, or leave it empty")
        raise InputFault((problem,))
    installed = _position(survey, label).installed
    changed = installed[index].model_copy(update={"age_years": age})
    return _with(survey, label, (*installed[:index], changed, *installed[index + 1 :]))


def with_set_installed(survey: Survey, label: str, hanging_set: HangingSet) -> Survey:
    """Return the survey in which the parts of a set hang at a position."""
    parts = (link.part for link in hanging_set.links)
    installed = tuple(InstalledPart(kind=part.kind, number=part.number, maker=part.maker) for part in parts)
    return _with(survey, label, installed)


def without_installed_part(survey: Survey, label: str, index: int) -> Survey:
    """Return the survey without one of the installed parts."""
    kept = tuple(item for place, item in enumerate(_position(survey, label).installed) if place != index)
    return _with(survey, label, kept)


def with_condition(survey: Survey, label: str, index: int, condition: InstalledCondition) -> Survey:
    """Return the survey in which an installed part is in another condition."""
    installed = _position(survey, label).installed
    changed = installed[index].model_copy(update={"condition": condition})
    return _with(survey, label, (*installed[:index], changed, *installed[index + 1 :]))


def with_liquid_today(survey: Survey, label: str, liquid: SurveyLiquid | None) -> Survey:
    """Return the survey in which another liquid is sold at a position today; None for the same."""
    return with_position(survey, label, _position(survey, label).model_copy(update={"liquid_today": liquid}))
