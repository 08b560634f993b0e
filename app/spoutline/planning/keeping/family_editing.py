"""Families of parts as a person changes them: by a form of figures, read and checked as those of a part are."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Final

from pydantic import ValidationError

from spoutline.catalogue.descriptions import describe
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import PartKind
from spoutline.model.part_family import PartFamily
from spoutline.planning.keeping.entry_editing import edited
from spoutline.planning.keeping.entry_fields import shown_texts

_NOBODY: Final = "family"  # number and maker of the part that stands for the family in the form of a part


def edited_family(before: PartFamily | None, name: str, kind: PartKind, texts: Mapping[str, str]) -> PartFamily:
    """Return a family with what its form says.

    ``texts`` are figures by column as a person writes them; an empty one is none of the family. Of another kind than
    before it keeps the figures that this kind has too. Raise ``InputFault`` whose ``place`` is the column, or ``name``.
    """
    like = stand_in(before)
    unknown = [key for key in texts if key in CatalogueEntry.model_fields or key == "price"]
    if unknown:
        wanted = "a family has figures alone; set it in its parts"
        raise InputFault(tuple(InputProblem(key, key, f"“{texts[key]}”", wanted) for key in unknown))
    figures = edited(like, {**texts, "kind": kind.value}).figures
    try:
        return PartFamily(name=name.strip(), kind=kind, figures=figures)
    except ValidationError:
        wanted = "a name of up to 120 characters, as it stands in the field family of its parts"
        raise InputFault((InputProblem("name", "name", repr(name[:130]), wanted),)) from None


def stand_in(family: PartFamily | None) -> CatalogueEntry:
    """Return a part that has the figures of a family and nothing else."""
    if family is None:
        return CatalogueEntry(number=_NOBODY, maker=_NOBODY)
    return CatalogueEntry(number=_NOBODY, maker=_NOBODY, kind=family.kind, figures=family.figures)


def family_texts(family: PartFamily) -> dict[str, str]:
    """Return the figures of a family as its form shows them, by column."""
    shown = shown_texts(stand_in(family))
    return {cell.column: shown[cell.column] for cell in family.figures}


def faulty_parts(entries: Iterable[CatalogueEntry]) -> tuple[InputProblem, ...]:
    """Return what is wrong in parts with what they inherit."""
    return tuple(
        InputProblem(str(one.ref), one.column, one.value, one.wanted)
        for entry in entries
        for one in describe(entry).faults
    )
