"""Edits of what hangs at a position today: add, describe, take away, take over what was planned."""

from __future__ import annotations

from collections.abc import Callable
from enum import StrEnum

from spoutline.gui.edits.answers import with_position
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.installed import InstalledCondition, InstalledPart
from spoutline.model.part import HANGING_KINDS, Part, PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.port import FlowPath
from spoutline.model.survey import Position, Survey, SurveyLiquid
from spoutline.rules.derive.vapour import path_of

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


def with_old_number(survey: Survey, label: str, kind: PartKind, old: PartRef) -> Survey:
    """Return the survey with a part added that hangs there under an old number, whatever is offered in its place."""
    new = InstalledPart(kind=kind, number=old.number, maker=old.maker)
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


def replacing_text(position: Position, hanging_set: HangingSet, word: Callable[[StrEnum], str]) -> str:
    """Return what taking a set over as installed would put out of the record; empty where it puts out nothing.

    Recorded parts that are not in the set, and vapor recovery of another kind than the set has, are told.
    """
    left = list(hanging_set.refs)
    going = []
    for item in position.installed:
        same = next((ref for ref in left if item.ref is not None and item.ref.names(ref)), None)
        if same is None:
            going.append(f"{word(item.kind)} {item.ref or item.description}")
        else:
            left.remove(same)
    texts = []
    if going:
        texts.append(tr("These recorded parts would go: {0}.").format("; ".join(going)))
    last = hanging_set.links[-1].part
    path = last.inlet.path if last.inlet is not None else FlowPath.SINGLE
    if path is not path_of(position.vapour_today):
        told = tr("Vapor recovery today is recorded as {0}; the planned set is of another kind.")
        texts.append(told.format(word(position.vapour_today)))
    return " ".join(texts)


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
