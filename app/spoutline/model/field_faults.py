"""A validation error of a field that is wrong only beside others."""

from __future__ import annotations

from pydantic_core import PydanticCustomError

FAULT_BESIDE_OTHERS = "fault_beside_others"  # the type of a validation error that carries its own field and value


def fault_in(field: str, value: str, wanted: str) -> PydanticCustomError:
    """Return a validation error of a field that is wrong only beside others; ``field`` is relative to its model."""
    context = {"field": field, "value": value, "wanted": wanted}
    return PydanticCustomError(FAULT_BESIDE_OTHERS, "{field} {value}: {wanted}", context)
