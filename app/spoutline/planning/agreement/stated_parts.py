"""A part read back from the text that says everything that the catalogue stated about it."""

from __future__ import annotations

import dataclasses
import json
import types
from enum import Enum
from functools import cache
from typing import Any, Union, get_args, get_origin, get_type_hints

from spoutline.model.part import Part
from spoutline.model.worded import Worded


def part_from_text(text: str) -> Part:
    """Return the part that ``refit.pins.part_text`` wrote; raise ``ValueError`` where the text is none of its texts."""
    try:
        made = _made(Part, json.loads(text))
    except (KeyError, TypeError, AttributeError) as fault:
        raise ValueError(Worded("no part: {reason}", reason=fault)) from fault
    if not isinstance(made, Part):
        raise ValueError("no part")
    return made


@cache
def _hints(kind: type) -> dict[str, Any]:
    return get_type_hints(kind)


def _made(hint: Any, value: Any) -> Any:  # noqa: ANN401 - the hints of a dataclass are of every kind
    """Return ``value``, as JSON gives it, as what ``hint`` says."""
    origin, inside = get_origin(hint), get_args(hint)
    if origin in (Union, types.UnionType):
        wanted = next(one for one in inside if one is not type(None))
        return None if value is None else _made(wanted, value)
    if origin in (tuple, frozenset):
        return origin(_made(inside[0], one) for one in value)
    if dataclasses.is_dataclass(hint) and isinstance(hint, type):
        hints = _hints(hint)
        unknown = value.keys() - hints.keys()
        if unknown:
            raise ValueError(Worded("unknown: {unknown}", unknown=", ".join(sorted(unknown))))
        return hint(**{name: _made(hints[name], one) for name, one in value.items()})
    if isinstance(hint, type) and issubclass(hint, Enum):
        return hint(value)
    if hint is float and isinstance(value, int) and not isinstance(value, bool):
        return float(value)
    if isinstance(hint, type) and not isinstance(value, hint):
        raise ValueError(Worded("{value!r} is no {hint_name}", value=value, hint_name=hint.__name__))
    return value
