"""A family of parts: figures that are set once and hold for each of its parts that has none of its own."""

from __future__ import annotations

from typing import Annotated, Self

from pydantic import ConfigDict, StringConstraints, model_validator

from spoutline.model.catalogue_entry import Cell, FigureCell
from spoutline.model.field_faults import fault_in
from spoutline.model.part import PartKind
from spoutline.model.part_identity import ShownText
from spoutline.model.plain_values import PlainValues


class PartFamily(PlainValues):
    """What the parts have in common whose field *family* says ``name``; ``figures`` in the order of the columns."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)

    name: Annotated[ShownText, StringConstraints(min_length=1, max_length=120)]
    kind: PartKind
    figures: tuple[FigureCell, ...] = ()

    @model_validator(mode="after")
    def _has_each_once(self) -> Self:
        columns = [cell.column for cell in self.figures]
        twice = sorted({column for column in columns if columns.count(column) > 1})
        if twice:
            raise fault_in("figures", ", ".join(twice), "each figure of a family stands once")
        return self

    def figure(self, column: str) -> Cell | None:
        """Return the figure in a column; None where the family has none."""
        return next((cell.value for cell in self.figures if cell.column == column), None)
