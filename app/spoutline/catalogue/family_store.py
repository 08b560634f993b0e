"""A family of parts as the tables keep it: a text under its name; what its parts have of it is in ``families``."""

from __future__ import annotations

import json
from collections.abc import Iterator

from sqlalchemy import Connection

from spoutline.catalogue.entry_text import plain_cell
from spoutline.catalogue.named_states import states_held
from spoutline.catalogue.tables import FamilyRow
from spoutline.model.catalogue_entry import FigureCell
from spoutline.model.part import PartKind
from spoutline.model.part_family import PartFamily


def families_held(connection: Connection, catalogue_id: int, at: int) -> Iterator[PartFamily]:
    """Yield the families of an edition by name."""
    for _name, text in states_held(connection, FamilyRow, catalogue_id, at):
        yield family_from_text(text)


def family_text(family: PartFamily) -> str:
    """Return a family as it is stored; the same text for equal ones."""
    figures = {cell.column: cell.value for cell in family.figures}
    said = {"name": family.name, "kind": family.kind.value, "figures": figures}
    return json.dumps(said, ensure_ascii=False, separators=(",", ":"))


def family_from_text(text: str) -> PartFamily:
    """Return a stored family; it was checked before it was stored."""
    said = json.loads(text)
    figures = tuple(FigureCell(column=column, value=plain_cell(value)) for column, value in said["figures"].items())
    return PartFamily.model_construct(name=said["name"], kind=PartKind(said["kind"]), figures=figures)
