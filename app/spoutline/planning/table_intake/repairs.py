"""Repairs of a table: small typed steps that can be done again on the next file, and undone by leaving them out."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from typing import Annotated, Final, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints

from spoutline.planning.table_intake.intake_fields import BY_KEY, CellKind

_Text = Annotated[str, StringConstraints(max_length=4_000)]
_Key = Annotated[str, StringConstraints(min_length=1, max_length=60)]
_PARTS_WORDS: Final = " ,;/|"


class _Step(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)


class SetCell(_Step):
    """Write a text into one cell. It holds only where the cell still shows ``was``: another file is another cell."""

    do: Literal["set_cell"] = "set_cell"
    row: int = Field(ge=1)
    field: _Key
    was: _Text = ""
    to: _Text


class ReplaceWord(_Step):
    """Replace a word in every cell of a field: the whole text, or one word of several."""

    do: Literal["replace_word"] = "replace_word"
    field: _Key
    word: Annotated[str, StringConstraints(min_length=1, max_length=4_000)]
    by: _Text


class ChangeWhere(_Step):
    """Write a text into a field of every row that shows ``shows`` in the field ``where``."""

    do: Literal["change_where"] = "change_where"
    where: _Key
    shows: _Text
    field: _Key
    to: _Text


class SkipRow(_Step):
    """Leave out one row, where its number, or what else names it, still is ``number``."""

    do: Literal["skip_row"] = "skip_row"
    row: int = Field(ge=1)
    number: _Text = ""


class SkipWhere(_Step):
    """Leave out every row that shows ``shows`` in the field ``where``."""

    do: Literal["skip_where"] = "skip_where"
    where: _Key
    shows: _Text


Repair = Annotated[SetCell | ReplaceWord | ChangeWhere | SkipRow | SkipWhere, Field(discriminator="do")]


class Repairs:
    """Does the steps on one row after the other, in their order; a row is named by what its ``key`` shows."""

    def __init__(self, steps: Iterable[Repair], key: str = "number") -> None:
        self._steps, self._key = tuple(steps), key
        self._general: list[ReplaceWord | ChangeWhere | SkipWhere] = []
        self._of_row: dict[int, list[SetCell | SkipRow]] = defaultdict(list)
        for step in self._steps:
            if isinstance(step, SetCell | SkipRow):
                self._of_row[step.row].append(step)
            else:
                self._general.append(step)

    def done(self, row: int, texts: Mapping[str, str]) -> dict[str, str] | None:
        """Return the texts of a row after all steps; None where a step leaves the row out."""
        steps: Iterable[Repair] = self._general
        if row in self._of_row:
            own = set(map(id, self._of_row[row]))
            steps = [step for step in self._steps if not isinstance(step, SetCell | SkipRow) or id(step) in own]
        elif not self._general:
            return dict(texts)
        made = dict(texts)
        for step in steps:
            if _leaves_out(step, made, self._key):
                return None
            _change(step, made)
        return made


def _leaves_out(step: Repair, texts: Mapping[str, str], key: str) -> bool:
    if isinstance(step, SkipRow):
        return texts.get(key, "") == step.number
    return isinstance(step, SkipWhere) and _same(texts.get(step.where, ""), step.shows)


def _change(step: Repair, texts: dict[str, str]) -> None:
    if isinstance(step, SetCell):
        if texts.get(step.field, "") == step.was:
            texts[step.field] = step.to
    elif isinstance(step, ReplaceWord):
        text = texts.get(step.field)
        if text:
            texts[step.field] = _replaced(text, step)
    elif isinstance(step, ChangeWhere) and _same(texts.get(step.where, ""), step.shows):
        texts[step.field] = step.to


def _replaced(text: str, step: ReplaceWord) -> str:
    if _same(text, step.word):
        return step.by
    field = BY_KEY.get(step.field)
    if field is None or field.cell is not CellKind.WORDS:
        return text
    made, word = [], ""
    for sign in f"{text}\n":
        if sign in _PARTS_WORDS or sign == "\n":
            made.append(step.by if word and _same(word, step.word) else word)
            made.append("" if sign == "\n" else sign)
            word = ""
        else:
            word += sign
    return "".join(made)


def _same(text: str, other: str) -> bool:
    return " ".join(text.casefold().split()) == " ".join(other.casefold().split())
