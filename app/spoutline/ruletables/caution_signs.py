"""Which sign stands beside each caution: a shape after ISO 3864-1 and a pictogram of our own."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from pathlib import Path

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.ruletables.files import read_text
from spoutline.ruletables.nearness import nearest
from spoutline.ruletables.schema import read_toml

_FILE = Path("pack", "signs.toml")


class SignShape(StrEnum):
    """Geometric shapes of safety signs (ISO 3864-1): their meaning is readable without colour."""

    WARNING = "warning"  # triangle
    PROHIBITION = "prohibition"  # ring with a bar
    MANDATORY = "mandatory"  # disc


class Pictogram(StrEnum):
    """What a sign shows."""

    BOOK = "book"
    PERSON = "person"
    PADLOCK = "padlock"
    SWITCH = "switch"
    CONE = "cone"
    FLAME = "flame"
    DROP = "drop"
    GLOVE = "glove"
    WRENCH = "wrench"
    SPARK = "spark"
    LEAK = "leak"
    ARROWS_APART = "arrows_apart"
    VEHICLE = "vehicle"
    MAGNIFIER = "magnifier"
    COIL = "coil"
    FALL = "fall"
    WAVES = "waves"
    ATTACK = "attack"
    TAG = "tag"
    CLOUD = "cloud"
    BURST = "burst"
    CAP = "cap"
    FROST = "frost"
    MIX = "mix"
    CLIPBOARD = "clipboard"


@frozen
class CautionSign:
    """A sign: shape and pictogram."""

    shape: SignShape
    pictogram: Pictogram


def load_caution_signs(resources: Path) -> Mapping[str, CautionSign]:
    """Return the sign of each caution by the caution's id.

    Raises
    ------
    InputFault
        With every fault of the table.
    StoreFault
        The table cannot be read.
    """
    return caution_signs_from_toml(read_text(resources / _FILE), _FILE.name)


def caution_signs_from_toml(text: str, place: str) -> Mapping[str, CautionSign]:
    """Return the signs of a TOML text; raise ``InputFault`` with every fault of it."""
    table = read_toml(text, place).get("signs")
    problems: list[InputProblem] = []
    if not isinstance(table, Mapping) or not table:
        raise InputFault((InputProblem(place, "signs", repr(table), "write the table [signs]"),))
    signs: dict[str, CautionSign] = {}
    for caution_id, words in table.items():
        field = f"signs.{caution_id}"
        if not isinstance(words, list) or len(words) != 2 or not all(isinstance(word, str) for word in words):
            problems.append(InputProblem(place, field, repr(words), "write [shape, pictogram]"))
            continue
        shape, pictogram = words
        for word, members in ((shape, SignShape), (pictogram, Pictogram)):
            known = [member.value for member in members]
            if word not in known:
                problems.append(InputProblem(place, field, repr(word), nearest(word, known)))
        if not problems:
            signs[caution_id] = CautionSign(SignShape(shape), Pictogram(pictogram))
    if problems:
        raise InputFault(tuple(problems))
    return signs
