"""The field for the size of a port, beside its thread: what people write is read, never kept as free text."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated, Any

from pydantic import BeforeValidator, ValidationInfo

from spoutline.model.nominal_size import NominalSize
from spoutline.model.port import ThreadStandard
from spoutline.model.port_sizes import read_size, usual_size

_THREAD = "thread"  # declared before the size in every model that has both


def _size_beside(value: object, info: ValidationInfo) -> NominalSize:
    thread = info.data.get(_THREAD)
    if not isinstance(value, str):
        raise ValueError("a text is needed, such as 3/4")
    if not isinstance(thread, ThreadStandard):  # the thread's own fault is told; beside it the size cannot be judged
        return NominalSize.INCH_3_4
    return read_size(value, thread)


def usual_size_beside(data: Mapping[str, Any]) -> NominalSize:
    """Return the size of a port whose size nobody answered, from the fields before it."""
    return usual_size(data.get(_THREAD, ThreadStandard.NPT))


SIZE_MEANING = (
    "Nominal size: 3/4, 1, 34x1.5, 1-7/8-12; also as people write it, such as 0.75 in, 19 mm or DN 20. It must be a "
    "size of the thread."
)
PortSize = Annotated[NominalSize, BeforeValidator(_size_beside, json_schema_input_type=str)]
