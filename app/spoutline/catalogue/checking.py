"""What is wrong in an edition as a whole: figures, successors, numbers that name two parts."""

from __future__ import annotations

import difflib
from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping

from spoutline.catalogue.cross_references import going_round
from spoutline.catalogue.descriptions import EntryFault, describe
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.cross_reference import CrossReference
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.worded import Worded


@frozen
class _Known:
    kind: PartKind | None
    successor: PartRef | None


def edition_faults(
    entries: Iterable[CatalogueEntry], references: Iterable[CrossReference] = ()
) -> tuple[EntryFault, ...]:
    """Return what keeps a draft from being published, by number and maker; a figure that lacks is no fault."""
    known: dict[PartRef, _Known] = {}
    items: dict[str, list[PartRef]] = defaultdict(list)
    gtins: dict[str, list[PartRef]] = defaultdict(list)
    found: list[EntryFault] = []
    for entry in entries:
        known[entry.ref] = _Known(entry.kind, entry.successor)
        if entry.item_number:
            items[entry.item_number].append(entry.ref)
        if entry.gtin:
            gtins[entry.gtin].append(entry.ref)
        found.extend(describe(entry).faults)
    found.extend(_successor_faults(known))
    found.extend(_reference_faults({one.ref: one for one in references}, known))
    for column, named in (("item_number", items), ("gtin", gtins)):
        for value, refs in named.items():
            others = ", ".join(map(str, refs))
            wanted = Worded("it names one part; {others} have it", others=others)
            found.extend(EntryFault(ref, column, repr(value), wanted) for ref in refs[1:])
    return tuple(sorted(found, key=lambda fault: (fault.ref, fault.column, fault.wanted)))


def _successor_faults(known: dict[PartRef, _Known]) -> Iterator[EntryFault]:
    numbers = [ref.number for ref in known] if any(one.successor for one in known.values()) else []
    for ref, one in known.items():
        if one.successor is None:
            continue
        successor = known.get(one.successor)
        shown = repr(str(one.successor))
        if successor is None:
            near = difflib.get_close_matches(one.successor.number, numbers, n=1)
            wanted = (
                Worded("number and maker of a part of the catalog; the nearest is {near}", near=near[0])
                if near
                else Worded("number and maker of a part of the catalog")
            )
            yield EntryFault(ref, "superseded_by", shown, wanted)
        elif None not in (one.kind, successor.kind) and one.kind is not successor.kind:
            wanted = Worded("a part of the same kind ({kind}); this is a {other}", kind=one.kind, other=successor.kind)
            yield EntryFault(ref, "superseded_by", shown, wanted)
        elif _comes_back(ref, known):
            yield EntryFault(ref, "superseded_by", shown, "a part that does not lead back to this one")


def _reference_faults(
    references: Mapping[PartRef, CrossReference], known: Mapping[PartRef, _Known]
) -> Iterator[EntryFault]:
    for one in references.values():
        if one.ref in known:
            wanted = "an old number; a part of the catalog has it: name the part's successor in the part"
            yield EntryFault(one.ref, "number", repr(str(one.ref)), wanted)
        if one.leads_to not in known and one.leads_to not in references:
            wanted = "number and maker of a part of the catalog, or of another old number"
            yield EntryFault(one.ref, "part_number", repr(str(one.leads_to)), wanted)
    for one in going_round(references):
        yield EntryFault(
            one.ref, "part_number", repr(str(one.leads_to)), "a number that does not lead back to this one"
        )


def _comes_back(ref: PartRef, known: dict[PartRef, _Known]) -> bool:
    """Say whether the successors of a part lead back to it."""
    seen: set[PartRef] = set()
    step = known[ref].successor
    while step is not None and step in known and step not in seen:
        if step == ref:
            return True
        seen.add(step)
        step = known[step].successor
    return False
