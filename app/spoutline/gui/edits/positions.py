"""Edits of the list of positions: add, duplicate, rename, remove, move between dispensers."""

from __future__ import annotations

import re

from pydantic import ValidationError

from spoutline.gui.edits.answers import with_position
from spoutline.model.answered import unanswered
from spoutline.model.copied_answers import AnswerGroup
from spoutline.model.dispenser_type import type_of_dispenser, with_type
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.survey import Position, Site, Survey
from spoutline.planning.refit.dispensers import dispenser_names, island_of, standing

MOST_POSITIONS = 5000


def new_survey(name: str, jurisdiction: str = "") -> Survey:
    """Return a survey of one position, side A of dispenser 1; raise ``InputFault`` for a name that cannot be.

    It begins with the limits of ``jurisdiction``, or with the usual ones where that is empty.
    """
    try:
        site = Site(name=name, **({"jurisdiction": jurisdiction} if jurisdiction else {}))
    except ValidationError as error:
        value = f"“{name}”" if name.strip() else "nothing"
        raise InputFault((InputProblem("", "name of the site", value, "write 1 to 60 characters"),)) from error
    return Survey(site=site, positions=(Position(label="1A"),))


GROUP_WORDS: dict[AnswerGroup, str] = {
    AnswerGroup.LIQUID: "Liquid and blend",
    AnswerGroup.DUTY: "Duty, latch, prepay, overhead",
    AnswerGroup.VAPOUR: "Vapor recovery today and in future",
    AnswerGroup.OUTLET: "Dispenser outlet",
    AnswerGroup.FILLERS: "Vehicle fillers",
    AnswerGroup.HOOK: "Nozzle hook",
    AnswerGroup.TAKE_UP: "Hose take-up",
    AnswerGroup.SUPPLY: "Pressure and flow",
    AnswerGroup.DECISIONS: "Parts kept and refused, lead time",
    AnswerGroup.TODAY: "What hangs there today",
    AnswerGroup.NOTES: "Notes",
}


def add_position(survey: Survey, label: str, dispenser: str) -> Survey:
    """Return the survey with a new position at the end; raise ``InputFault`` for a label that cannot be."""
    _check_label(survey, label, before=None)
    _check_room(survey)
    new = _position(label=label, dispenser=dispenser)
    new = standing(new, island_of(survey, new.dispenser))
    new = with_type(new, type_of_dispenser(survey, new.dispenser))
    return survey.model_copy(update={"positions": (*survey.positions, new)})


def duplicate_position(survey: Survey, label: str) -> tuple[Survey, str]:
    """Return the survey with a copy of a position below it, and the label of the copy."""
    after, (new_label,) = duplicate_positions(survey, frozenset({label}))
    return after, new_label


def duplicate_positions(survey: Survey, labels: frozenset[str]) -> tuple[Survey, tuple[str, ...]]:
    """Return the survey with copies of positions together below the last of them, and the labels of the copies."""
    _check_room(survey, len(labels))
    places = [place for place, position in enumerate(survey.positions) if position.label in labels]
    after, below = survey, places[-1] + 1
    new_labels: list[str] = []
    for place in places:
        new_labels.append(free_label(after, survey.positions[place].label))
        copy = survey.positions[place].model_copy(update={"label": new_labels[-1]})
        at = below + len(new_labels) - 1
        after = after.model_copy(update={"positions": (*after.positions[:at], copy, *after.positions[at:])})
    return after, tuple(new_labels)


def add_alike(survey: Survey, label: str, count: int) -> tuple[Survey, tuple[str, ...]]:
    """Return the survey with ``count`` further positions like one of them at the end, and their labels.

    What a person decided for the one, what hangs there today and its notes are not carried over.
    """
    origin = survey.position(label)
    if origin is None:
        raise KeyError(label)
    _check_room(survey, count)
    bare = unanswered(origin, "decisions", "installed", "notes")
    labels: list[str] = []
    for _ in range(count):
        new_label = free_label(survey, labels[-1] if labels else label)
        survey = survey.model_copy(
            update={"positions": (*survey.positions, bare.model_copy(update={"label": new_label}))}
        )
        labels.append(new_label)
    return survey, tuple(labels)


def rename_position(survey: Survey, label: str, new_label: str, dispenser: str) -> Survey:
    """Return the survey with another name and dispenser for a position; raise ``InputFault`` for a name in use."""
    _check_label(survey, new_label, before=label)
    position = survey.position(label)
    if position is None:
        raise KeyError(label)
    checked = _position(label=new_label, dispenser=dispenser)
    moves = checked.dispenser != position.dispenser and checked.dispenser in dispenser_names(survey)
    island = island_of(survey, checked.dispenser) if moves else position.island
    renamed = position.model_copy(update={"label": checked.label, "dispenser": checked.dispenser})
    if checked.dispenser != position.dispenser and checked.dispenser in dispenser_names(survey):
        renamed = with_type(renamed, type_of_dispenser(survey, checked.dispenser))
    return with_position(survey, label, standing(renamed, island))


def remove_position(survey: Survey, label: str) -> tuple[Survey, str]:
    """Return the survey without a position, and the label to look at next; the last position cannot go."""
    return remove_positions(survey, frozenset({label}))


def remove_positions(survey: Survey, labels: frozenset[str]) -> tuple[Survey, str]:
    """Return the survey without these positions, and the label below or else above them; one position has to stay."""
    gone = [position.label for position in survey.positions if position.label in labels]
    rest = tuple(position for position in survey.positions if position.label not in labels)
    if not rest:
        wanted = "a site keeps at least one position; rename it instead"
        raise InputFault((InputProblem("", "positions", ", ".join(gone), wanted),))
    last = max(place for place, position in enumerate(survey.positions) if position.label in labels)
    below = last + 1 - len(gone)
    return survey.model_copy(update={"positions": rest}), rest[min(below, len(rest) - 1)].label


def free_label(survey: Survey, label: str) -> str:
    """Return the next label of the same pattern that no position has: A2 after A1, 1B after 1A, Hose 10 after 9."""
    match = re.search(r"^(.*?)(\d+)$", label)
    stem, number = (match[1], int(match[2])) if match else (f"{label} ", 1)
    taken = {position.label for position in survey.positions}
    side = re.fullmatch(r"(\d+)([A-Y])", label)
    if side and (beside := f"{side[1]}{chr(ord(side[2]) + 1)}") not in taken:
        return beside
    while True:
        number += 1
        room = 60 - len(str(number))
        candidate = f"{stem[:room]}{number}"
        if candidate not in taken:
            return candidate


def _position(*, label: str, dispenser: str) -> Position:
    for field, text in (("name of the position", label), ("name of the dispenser", dispenser)):
        try:
            Position(label=text)
        except ValidationError as error:
            raise InputFault(
                (InputProblem("", field, f"“{text}”" if text.strip() else "nothing", "write 1 to 60 characters"),)
            ) from error
    return Position(label=label, dispenser=dispenser)


def _check_label(survey: Survey, label: str, before: str | None) -> None:
    wanted = label.strip()
    if wanted != before and survey.position(wanted) is not None:
        free = free_label(survey, wanted)
        raise InputFault(
            (InputProblem("", "name of the position", f"“{wanted}”", f"it is taken already; {free} is free"),)
        )


def _check_room(survey: Survey, more: int = 1) -> None:
    count = len(survey.positions) + more
    if count > MOST_POSITIONS:
        wanted = f"a survey holds at most {MOST_POSITIONS}"
        raise InputFault((InputProblem("", "positions", str(count), wanted),))
