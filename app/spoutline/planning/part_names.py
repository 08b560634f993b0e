"""What people call parts, held against the catalogue: a number that nothing or too much stands behind is told."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.worded import Worded
from spoutline.planning.protocols import PartStore


def wrong_refs(refs: Iterable[PartRef], parts: PartStore) -> dict[PartRef, str]:
    """Return the references that do not name exactly one part of the catalogue, each with what would be right."""
    asked = tuple(dict.fromkeys(refs))
    known = [part.ref for part in parts.parts(asked)] if asked else []
    wrong: dict[PartRef, str] = {}
    for ref in asked:
        named = [one for one in known if ref.names(one)]
        if len(named) > 1:
            wrong[ref] = _several_makers(named)
        elif not named:
            wrong[ref] = _unknown(ref, parts)
    return wrong


def shared_numbers(refs: Iterable[PartRef], parts: PartStore) -> dict[PartRef, str]:
    """Return the bare numbers that several makers have, each with what would be right; unknown numbers are left out."""
    bare = tuple(dict.fromkeys(ref for ref in refs if not ref.maker))
    known = [part.ref for part in parts.parts(bare)] if bare else []
    named = {ref: [one for one in known if ref.names(one)] for ref in bare}
    return {ref: _several_makers(found) for ref, found in named.items() if len(found) > 1}


def installed_parts(refs: Iterable[PartRef], parts: PartStore) -> dict[PartRef, Part]:
    """Return the catalogue parts that hang at positions, by what names them there: other numbers of theirs too."""
    asked = sorted(set(refs))
    known = {ref: part for part in parts.parts(asked) for ref in asked if ref.names(part.ref)}
    unknown = [ref for ref in asked if ref not in known]
    return {**known, **(parts.under_other_numbers(unknown) if unknown else {})}


def namesakes(refs: Iterable[PartRef], parts: PartStore) -> tuple[PartRef, ...]:
    """Return every part of the catalogue whose number one of ``refs`` has: what tells whether a number is unique."""
    numbers = tuple(dict.fromkeys(PartRef(ref.number) for ref in refs))
    return tuple(part.ref for part in parts.parts(numbers)) if numbers else ()


def _several_makers(named: Sequence[PartRef]) -> str:
    """Return what would be right in place of a bare number that all of ``named`` have."""
    makers = ", ".join(one.maker for one in named)
    wanted = Worded("'{named}', or in a document `maker` beside `number`", named=named[0])
    return Worded(
        "several makers have this number: {makers}; name the maker too: {wanted}", makers=makers, wanted=wanted
    )


def _unknown(ref: PartRef, parts: PartStore) -> str:
    others = [part.ref.maker for part in parts.parts((PartRef(ref.number),))] if ref.maker else []
    if others:
        return Worded("this number is of {others}, not of {maker}", others=" and ".join(others), maker=ref.maker)
    near = parts.nearest_numbers(ref.number)
    hint = Worded("; near it are {near}", near=", ".join(near)) if near else ""
    return Worded("it must be a part number of the catalog{hint}", hint=hint)
