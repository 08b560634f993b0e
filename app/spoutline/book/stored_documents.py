"""Documents of a book read as they were written, by this version or an older one, and healed where that let more in.

Older versions took signs that nobody sees and numbers that measure nothing. Such a document opens all the same: each
hidden sign is shown as U+FFFD, each such number is read as nought, or left out where nought cannot be. What was read
otherwise than it is written is told, and what lies in the book stays as it is until somebody saves over it.
"""

from __future__ import annotations

import json
import threading
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any, Final, TypeVar

from pydantic import BaseModel, ValidationError

from spoutline.book.survey_faults import field_path
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.json_text import json_object
from spoutline.model.faults import InputFault, InputNote, StoreFault
from spoutline.model.plain_values import measures_nothing, without_hidden_signs
from spoutline.model.worded import Worded

ModelT = TypeVar("ModelT", bound=BaseModel)
Location = tuple[int | str, ...]

_ROUNDS: Final = 4  # of reading and healing: a sign, a number, a number left out, a label
_MOST_NOTES: Final = 200
_LONGEST_LABEL: Final = 60
_SHOWN: Final = 60
_PART_REF: Final = frozenset({"maker", "number"})  # how a reference to a part is written, besides as a text


class UnreadableDocument(StoreFault):
    """A document of the book cannot be read by this version; it stays in the book as it is."""


class ReadingNotes:
    """What was read otherwise than it is written, until somebody asks. Safe to call from several threads."""

    def __init__(self) -> None:
        self._turn = threading.Lock()
        self._told: set[InputNote] = set()
        self._open: list[InputNote] = []

    def add(self, notes: Iterable[InputNote]) -> None:
        """Keep notes that were not told before."""
        with self._turn:
            for note in notes:
                if note not in self._told and len(self._told) < _MOST_NOTES:
                    self._told.add(note)
                    self._open.append(note)

    def take(self) -> tuple[InputNote, ...]:
        """Return the notes that nobody has taken yet, oldest first."""
        with self._turn:
            taken, self._open = tuple(self._open), []
            return taken


def read_document(
    text: str,
    model: type[ModelT],
    place: str,
    notes: ReadingNotes,
    read: Callable[[str], ModelT] | None = None,
) -> ModelT:
    """Return the document in a text of the book, healed where it must be.

    Parameters
    ----------
    text, model
        The text and what it is read as.
    place
        Which document it is, named in every note.
    notes
        Hears what was read otherwise than it is written.
    read
        How it is read where the model's own reading is not strict enough; may raise only ``ValidationError``.

    Raises
    ------
    ValueError
        It cannot be read, healed or not.
    """
    if len(text) > BOUNDS.document_bytes:
        raise ValueError(
            Worded("it has {count} characters; at most {most} are read", count=len(text), most=BOUNDS.document_bytes)
        )
    reading = read or model.model_validate_json
    try:
        return reading(text)
    except ValidationError as fault:
        healing = _Healing(_tree(text, fault), place)
        document = healing.healed(reading, fault)
        notes.add(healing.notes.values())
        return document


def read_kept(
    text: str, model: type[ModelT], place: str, notes: ReadingNotes, *, named: str, book: str, stays: str = ""
) -> ModelT:
    """Return a document that the book keeps; see ``read_document``.

    Raises
    ------
    UnreadableDocument
        It cannot be read: told by its name ``named``, the ``book`` as it is shown, and what can be done all the same
        (``stays``).
    """
    try:
        return read_document(text, model, place, notes)
    except ValueError as fault:
        count = Worded(" ({count} faults)", count=fault.error_count()) if isinstance(fault, ValidationError) else ""
        told = Worded(
            "{named} in {book} cannot be read by this version of the program{count}.",
            named=named,
            book=book,
            count=count,
        )
        raise UnreadableDocument(" ".join(filter(None, (told, stays)))) from fault


def _tree(text: str, fault: ValidationError) -> Any:  # noqa: ANN401 - a value of JSON
    """Return the values of a text; raise the fault of reading it where it is no JSON at all, or far beyond a bound."""
    try:
        json_object(text, "", "document", "")
        return json.loads(text)
    except (InputFault, ValueError, RecursionError):
        raise fault from None


@dataclass(slots=True)
class _Healing:
    """One document on its way: its values, and what was changed in them by place."""

    tree: Any
    place: str
    notes: dict[Location, InputNote] = field(default_factory=dict)
    _zeroed: set[Location] = field(default_factory=set)

    def healed(self, read: Callable[[str], ModelT], fault: ValidationError) -> ModelT:
        """Return the document; raise the last ``ValidationError`` where healing does not help."""
        for _ in range(_ROUNDS):
            if fault.error_count() > BOUNDS.problems:
                raise fault
            errors = fault.errors(include_url=False)
            whole = any(error["type"] == "json_invalid" for error in errors)  # halves of signs, wherever they stand
            places = list(_texts(self.tree)) if whole else [self._location(error["loc"]) for error in errors]
            left_out = [place for place in places if place in self._zeroed]
            changed = [self._heal_at(place) for place in places if place not in self._zeroed]
            changed += [self._heal_at(place) for place in reversed(left_out)]  # from the end: each moves what is behind
            if not any(changed):
                raise fault
            try:
                return read(json.dumps(self.tree))
            except ValidationError as next_fault:
                fault = next_fault
        raise fault

    def _location(self, named: Location) -> Location:
        """Return the steps of a location that lead to a value: others name a member of a union."""
        here: Any = self.tree
        steps: list[int | str] = []
        for step in named:
            is_there = step in here if isinstance(here, dict) else isinstance(here, list) and step in range(len(here))
            if is_there:
                here = here[step]
                steps.append(step)
        return tuple(steps)

    def _heal_at(self, place: Location) -> bool:
        """Heal the value at a place, or those in it where it is a list; say whether anything changed."""
        try:
            value = self._value(place)
        except (LookupError, TypeError):  # what was left out before it moved it; the next round finds it where it is
            return False
        if isinstance(value, str):
            return self._heal_text(place, value)
        if isinstance(value, float | int) and not isinstance(value, bool):
            return self._heal_number(place, float(value))
        if isinstance(value, dict) and _PART_REF.issuperset(value):
            texts = [step for step in value if isinstance(value[step], str)]
            healed = [self._heal_text((*place, step), value[step]) for step in texts]
            return any(healed)
        if isinstance(value, list):  # from the end, as one may be left out
            changed = [
                self._heal_at((*place, step))
                for step in reversed(range(len(value)))
                if not isinstance(value[step], list)
            ]
            return any(changed)
        return False

    def _value(self, place: Location) -> Any:  # noqa: ANN401 - a value of JSON
        here = self.tree
        for step in place:
            here = here[step]
        return here

    def _put(self, place: Location, value: object, told: str) -> bool:
        holder = self._value(place[:-1])
        before = self.notes[place].value if place in self.notes else _shown(holder[place[-1]])
        holder[place[-1]] = value
        self.notes[place] = InputNote(self.place, field_path(place), before, told)
        return True

    def _heal_text(self, place: Location, text: str) -> bool:
        healed = without_hidden_signs(text)
        if healed == text or not place:
            return False
        if place[-1] == "label":
            healed = self._own_label(place, healed)
        return self._put(place, healed, Worded("holds a hidden sign and is read as {healed!r}", healed=healed[:_SHOWN]))

    def _own_label(self, place: Location, label: str) -> str:
        """Return a label that no neighbour has: two may have differed only in what nobody sees."""
        beside = self._value(place[:-2]) if len(place) > 2 else ()
        others = [
            one.get("label") for place_of, one in enumerate(beside) if isinstance(one, dict) and place_of != place[-2]
        ]
        taken = {one for one in others if isinstance(one, str)}
        free, number = label[:_LONGEST_LABEL], 1
        while free in taken:
            number += 1
            ending = f" ({number})"
            free = f"{label[: _LONGEST_LABEL - len(ending)]}{ending}"
        return free

    def _heal_number(self, place: Location, number: float) -> bool:
        if place in self._zeroed:  # nought cannot be here: as if nobody had answered
            holder = self._value(place[:-1])
            before = self.notes[place].value
            del holder[place[-1]]
            self._zeroed.discard(place)
            told = "measures nothing and is left out"
            self.notes[place] = InputNote(self.place, field_path(place), before, told)
            return True
        if not place or not measures_nothing(number):
            return False
        self._zeroed.add(place)
        return self._put(place, 0.0, "measures nothing and is read as 0")


def _texts(tree: Any) -> Iterator[Location]:  # noqa: ANN401 - a value of JSON
    """Yield the place of every text in a tree."""
    ahead: list[Location] = [()]
    while ahead:
        place = ahead.pop()
        value = tree
        for step in place:
            value = value[step]
        if isinstance(value, str):
            yield place
        elif isinstance(value, dict | list):
            steps: Iterable[int | str] = value if isinstance(value, dict) else range(len(value))
            ahead.extend((*place, step) for step in steps)


def _shown(value: object) -> str:
    text = repr(value)
    return text if len(text) <= _SHOWN else f"{text[: _SHOWN - 1]}…"
