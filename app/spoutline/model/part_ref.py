"""How a part is referred to: by its maker and the maker's number, for two makers may give one number."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic_core import CoreSchema, PydanticKnownError, core_schema

_NUMBER_LENGTH = 80
_MAKER_LENGTH = 200
_BETWEEN = "\0"  # sorts before every character of a number


@dataclass(frozen=True, slots=True, order=True)
class PartRef:
    """The number of a part and its maker; sorted by number first, so that makers only part equal numbers.

    An empty ``maker`` is a bare number: it names whatever part has the number, and serves where only one maker does.
    The catalogue and its edition are those of the document that a reference stands in, which says them once for all:
    agreed sets, the pins of a quotation, records, lines of the wear log and every exported document have a field
    ``catalogue_edition``; a survey, which is planned anew each time, means the catalogue in hand.

    In JSON a bare number is its text, any other ``{"maker": ..., "number": ...}``; both are read, and a text is a bare
    number.
    """

    number: str
    maker: str = ""

    def __str__(self) -> str:
        """Return how a person writes it: maker, blank, number; the bare number where no maker is named."""
        return f"{self.maker} {self.number}" if self.maker else self.number

    def names(self, part: PartRef) -> bool:
        """Say whether this reference names ``part``, which has its maker."""
        return self.number == part.number and self.maker in ("", part.maker)

    @classmethod
    def from_text(cls, text: str, makers: Iterable[str]) -> PartRef:
        """Return what a person who writes ``text`` refers to: a number, or a maker, a blank and a number.

        Capitals in a maker's name do not count. What starts with none of ``makers`` is a number as it stands, blanks
        and all: they may stand in numbers and in makers' names alike.
        """
        text = text.strip()
        for maker in sorted(makers, key=len, reverse=True):
            if maker and text.casefold().startswith(f"{maker.casefold()} "):
                return cls(text[len(maker) :].strip(), maker)
        return cls(text)

    @property
    def key(self) -> str:
        """The reference in one text: equal for equal references, and sorted as they are."""
        return f"{self.number}{_BETWEEN}{self.maker}"

    @classmethod
    def from_key(cls, key: str) -> PartRef:
        """Return the reference that a key stands for."""
        number, _, maker = key.partition(_BETWEEN)
        return cls(number, maker)

    @classmethod
    def __get_pydantic_core_schema__(cls, _source: object, _handler: GetCoreSchemaHandler) -> CoreSchema:
        """Read a text, an object with maker and number, or a reference; write JSON."""

        def text(longest: int, shortest: int) -> CoreSchema:
            return core_schema.str_schema(strip_whitespace=True, min_length=shortest, max_length=longest)

        written = core_schema.typed_dict_schema(
            {
                "number": core_schema.typed_dict_field(text(_NUMBER_LENGTH, 1)),
                "maker": core_schema.typed_dict_field(text(_MAKER_LENGTH, 0), required=False),
            },
            extra_behavior="forbid",
        )
        return core_schema.no_info_before_validator_function(
            _as_written,
            core_schema.no_info_after_validator_function(lambda parts: cls(**parts), written),
            serialization=core_schema.plain_serializer_function_ser_schema(_as_json, when_used="json"),
        )

    @classmethod
    def __get_pydantic_json_schema__(cls, _schema: CoreSchema, _handler: GetJsonSchemaHandler) -> dict[str, Any]:
        """Return the JSON Schema of both ways to write a reference."""
        number = {"type": "string", "minLength": 1, "maxLength": _NUMBER_LENGTH}
        named = {
            "type": "object",
            "properties": {"maker": {"type": "string", "maxLength": _MAKER_LENGTH}, "number": number},
            "required": ["number"],
            "additionalProperties": False,
        }
        return {"anyOf": [number, named]}


def any_names(refs: Iterable[PartRef], part: PartRef) -> bool:
    """Say whether one of ``refs`` names ``part``."""
    return any(ref.names(part) for ref in refs)


def told_apart(refs: Iterable[PartRef], among: Iterable[PartRef] = ()) -> tuple[str, ...]:
    """Return the numbers of ``refs`` in their order, each with its maker where another part has the same number.

    The other part is one of ``refs`` or of ``among``.
    """
    known = tuple(refs)
    makers = Counter(ref.number for ref in {*known, *among})
    return tuple(str(ref) if makers[ref.number] > 1 else ref.number for ref in known)


def _number(text: str) -> str:
    """Return a bare number; raise the fault here, so that it names the entry and not a field within."""
    if not text:
        raise PydanticKnownError("string_too_short", {"min_length": 1})
    if len(text) > _NUMBER_LENGTH:
        raise PydanticKnownError("string_too_long", {"max_length": _NUMBER_LENGTH})
    return text


def _as_written(value: object) -> object:
    if isinstance(value, str):
        return {"number": _number(value.strip())}
    if isinstance(value, PartRef):
        return {"number": value.number, "maker": value.maker}
    if not isinstance(value, dict):
        raise PydanticKnownError("string_type")
    return value


def _as_json(ref: PartRef) -> str | dict[str, str]:
    return {"maker": ref.maker, "number": ref.number} if ref.maker else ref.number
