"""A dispenser as a template: its positions repeated along an island, or on its other side."""

from __future__ import annotations

import re
from collections.abc import Sequence

from spoutline.model.answered import unanswered
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.installed import InstalledCondition
from spoutline.model.survey import Position, Survey
from spoutline.model.worded import Worded

MOST_COPIES = 500
_LONGEST_LABEL = 60  # as the survey's model says; a test holds the two together


def dispenser_names(survey: Survey) -> tuple[str, ...]:
    """Return the names of the dispensers in the order of the survey."""
    return tuple(dict.fromkeys(position.dispenser for position in survey.positions))


def positions_of(survey: Survey, dispenser: str) -> tuple[Position, ...]:
    """Return the positions of a dispenser; raise ``InputFault`` where there is none of that name."""
    found = tuple(position for position in survey.positions if position.dispenser == dispenser)
    if not found:
        known = ", ".join(dispenser_names(survey))
        raise InputFault((InputProblem("", "dispenser", repr(dispenser), Worded("use one of: {known}", known=known)),))
    return found


def islands_of(survey: Survey) -> tuple[str, ...]:
    """Return the island of each position; one that names none stands where its dispenser does, empty if nowhere."""
    known: dict[str, str] = {}
    for position in survey.positions:
        if position.island:
            known.setdefault(position.dispenser, position.island)
    return tuple(position.island or known.get(position.dispenser, "") for position in survey.positions)


def island_of(survey: Survey, dispenser: str) -> str:
    """Return the island of a dispenser: the first that one of its positions names; empty where none does."""
    return next((one.island for one in survey.positions if one.dispenser == dispenser and one.island), "")


def on_island(survey: Survey, dispenser: str, island: str) -> Survey:
    """Return the survey with every position of a dispenser on ``island``; raise ``InputFault`` for too long a name."""
    _check_islands((island,))
    return survey.model_copy(
        update={
            "positions": tuple(
                standing(one, island.strip()) if one.dispenser == dispenser else one for one in survey.positions
            )
        }
    )


def standing(position: Position, island: str) -> Position:
    """Return the position on an island; an empty name leaves the island unanswered."""
    return position.model_copy(update={"island": island}) if island else unanswered(position, "island")


def with_copies(survey: Survey, dispenser: str, names: Sequence[str], islands: Sequence[str] | None = None) -> Survey:
    """Return the survey with the dispenser repeated under each of ``names``, its copies at the end.

    ``islands`` says where the copies stand: one island for all of them or one for each; None leaves them on the island
    of the dispenser.

    A label that begins with the dispenser's name begins with the new one; any other gets it in front. The parts
    that hang there today come along, their condition unknown; what a person decided for one position does not. Raise
    ``InputFault`` for names and labels that are taken.
    """
    template = positions_of(survey, dispenser)
    stand = [island_of(survey, dispenser)] if islands is None else [name.strip() for name in islands]
    problems = []
    if len(stand) not in {1, len(names)}:
        wanted = Worded("name one island for all copies, or one for each of the {count}", count=len(names))
        problems.append(InputProblem("", "islands", ", ".join(stand) or "nothing", wanted))
    if not 1 <= len(names) <= MOST_COPIES:
        problems.append(
            InputProblem(
                "",
                "names",
                str(len(names)),
                Worded("name between 1 and {most_copies} dispensers", most_copies=MOST_COPIES),
            )
        )
    for name in names:
        if name in dispenser_names(survey) or list(names).count(name) > 1 or not name.strip():
            problems.append(InputProblem("", "names", repr(name), "each new dispenser needs a name of its own"))
        elif len(name) > _LONGEST_LABEL:
            problems.append(
                InputProblem(
                    "",
                    "names",
                    repr(name),
                    Worded("a name has at most {longest_label} characters", longest_label=_LONGEST_LABEL),
                )
            )
    if problems:
        raise InputFault(tuple(problems))
    _check_islands(stand)
    copies = [
        standing(_copy(position, _renamed(position.label, dispenser, name), name), island)
        for name, island in zip(names, stand if len(stand) == len(names) else stand * len(names), strict=True)
        for position in template
    ]
    return _extended(survey, copies)


def with_other_side(survey: Survey, dispenser: str, side: str, other: str) -> Survey:
    """Return the survey with every position of one side repeated on the other, behind the dispenser's own positions.

    The side is the letter or word that stands behind the dispenser's name in a label, as in ``3A diesel``. Raise
    ``InputFault`` where no label names the side, or a label is taken.
    """
    mine = positions_of(survey, dispenser)
    begin = re.compile(rf"^({re.escape(dispenser)}[\s\-]?){re.escape(side)}(?![A-Za-z0-9])")
    pairs = [
        (position, begin.sub(lambda found: f"{found.group(1)}{other}", position.label))
        for position in mine
        if begin.match(position.label)
    ]
    if not pairs or not other.strip():
        wanted = Worded(
            "labels of this side begin with {dispenser}{side}, such as {dispenser}{side} diesel",
            dispenser=dispenser,
            side=side,
        )
        raise InputFault((InputProblem("", "side", repr(side if not pairs else other), wanted),))
    return _extended(survey, [_copy(position, label, dispenser) for position, label in pairs])


def _check_islands(islands: Sequence[str]) -> None:
    problems = [
        InputProblem(
            "",
            "island",
            repr(name),
            Worded("a name has at most {longest_label} characters", longest_label=_LONGEST_LABEL),
        )
        for name in dict.fromkeys(islands)
        if len(name.strip()) > _LONGEST_LABEL
    ]
    if problems:
        raise InputFault(tuple(problems))


def _renamed(label: str, before: str, now: str) -> str:
    rest = label[len(before) :] if label.startswith(before) else None
    # dispenser 1 must not claim the labels of dispenser 10
    if rest is not None and not (before[-1:].isdigit() and rest[:1].isdigit()):
        return f"{now}{rest}"
    return f"{now} {label}"


def _copy(position: Position, label: str, dispenser: str) -> Position:
    """Return the position under another label, with the parts that hang there; nobody has looked at their condition."""
    bare = unanswered(position, "decisions", "notes")
    parts = tuple(one.model_copy(update={"condition": InstalledCondition.UNKNOWN}) for one in position.installed)
    hanging = {"installed": parts} if parts else {}
    return bare.model_copy(update={"label": label, "dispenser": dispenser, **hanging})


def _extended(survey: Survey, copies: Sequence[Position]) -> Survey:
    taken = {position.label for position in survey.positions}
    problems = [
        InputProblem("", "label", repr(copy.label), "this label is taken; rename or remove the position that has it")
        for copy in copies
        if copy.label in taken
    ]
    problems += [
        InputProblem(
            "",
            "label",
            repr(copy.label),
            Worded("a label has at most {longest_label} characters", longest_label=_LONGEST_LABEL),
        )
        for copy in copies
        if len(copy.label) > _LONGEST_LABEL
    ]
    if problems:
        raise InputFault(tuple(problems))
    return survey.model_copy(update={"positions": (*survey.positions, *copies)})
