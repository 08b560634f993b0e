"""What a field that changed holds, as people read it: words of the trade, yes and no, lengths with their unit."""

from __future__ import annotations

import re
from enum import StrEnum
from typing import Final, get_args

from pydantic import BaseModel

from spoutline.explain.plan.words import Words
from spoutline.model.quantity import Dimension

_NUMBERED: Final = re.compile(r"\[\d+\]")
_MEASURED: Final = {
    "_m": Dimension.LENGTH,
    "_c": Dimension.TEMPERATURE,
    "_pa": Dimension.PRESSURE,
    "_n": Dimension.FORCE,
}


def changed_value(text: str, path: str, document: type[BaseModel], words: Words) -> str:
    """Return the value written as ``text`` of the field at ``path`` of a document in words; as it is where it has none.

    Names and figures without a unit in the name of their field stay as they are written; an empty text stays empty.
    """
    types = _types_at(path, document)
    for one in types:
        if isinstance(one, type) and issubclass(one, StrEnum) and text in {member.value for member in one}:
            table = words.phrases.words.get(one.__name__, {})
            return str(table.get(text, text.replace("_", " ")))
    if bool in types and text in ("True", "False"):
        return words.yes_no(text == "True")
    dimension = next((found for end, found in _MEASURED.items() if _NUMBERED.sub("", path).endswith(end)), None)
    if dimension is not None and float in types and text:
        return words.show(float(text), dimension)
    return text


def _types_at(path: str, document: type[BaseModel]) -> tuple[object, ...]:
    """Return the plain types that a field may hold; none for a path that is none of the document."""
    types: tuple[object, ...] = (document,)
    for name in _NUMBERED.sub("", path).split("."):
        models = [one for one in types if isinstance(one, type) and issubclass(one, BaseModel)]
        fields = [one.model_fields[name].annotation for one in models if name in one.model_fields]
        types = tuple(leaf for one in fields for leaf in _leaves(one))
    return types


def _leaves(annotation: object) -> tuple[object, ...]:
    inner = get_args(annotation)
    return tuple(leaf for one in inner for leaf in _leaves(one)) if inner else (annotation,)
