"""An entry of a catalogue out of the texts of its cells: a text is read once, however many parts have it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import lru_cache
from typing import Any, Final

from pydantic import ValidationError, create_model
from pydantic_core import PydanticCustomError

from spoutline.catalogue.table_schema import IDENTITY_COLUMNS
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice, FigureCell
from spoutline.model.part import PartKind
from spoutline.model.part_file import MOST_FILES, PartFile
from spoutline.model.plain_values import PlainValues


def entry_of_cells(
    texts: Mapping[str, str],
    *,
    kind: PartKind | None,
    prices: tuple[EntryPrice, ...],
    figures: tuple[FigureCell, ...],
    files: tuple[PartFile, ...],
) -> CatalogueEntry:
    """Return the entry whose cells hold ``texts``, by column; empty ones are left out.

    Raise ``ValidationError`` with everything that is wrong, as ``CatalogueEntry`` does of the same values.
    """
    values: dict[str, Any] = {"kind": kind, "prices": prices, "figures": figures, "files": files}
    try:
        read = {column: _READ[column](text) for column, text in texts.items()}
        if {"number", "maker"} <= read.keys() and len(files) <= MOST_FILES:
            entry = _BLANK.model_copy(update=values | read)
            entry.check_together()
            return entry
    except (ValidationError, PydanticCustomError):
        pass
    return CatalogueEntry(**values, **texts)  # tells every fault under the name of its column


def _reader(column: str) -> Callable[[str], Any]:
    """Return what reads the cells of a column as the field of its name does."""
    field = CatalogueEntry.model_fields[column]
    declared: dict[str, Any] = {column: (field.annotation, field)}
    one = create_model(f"Cell of {column}", __base__=PlainValues, **declared)

    @lru_cache(maxsize=_REMEMBERED)
    def read(text: str) -> Any:  # noqa: ANN401  (as it is declared)
        return getattr(one.model_validate({column: text}), column)

    return read


_REMEMBERED: Final = 5_000  # texts of a column
_READ: Final = {column: _reader(column) for column in IDENTITY_COLUMNS}
_BLANK: Final = CatalogueEntry.model_construct(number="", maker="")
