"""Whether the successors of entries can be followed in a draft: to a part that it holds, and never in a circle."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Protocol

from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.worded import Worded

_FIELD = "superseded_by"


class DraftEntries(Protocol):
    """Looks entries of a draft up."""

    def entries(self, refs: Sequence[PartRef]) -> Mapping[PartRef, CatalogueEntry]:
        """Return those of ``refs`` that the draft holds."""
        ...


def successor_problems(draft: DraftEntries, entries: Sequence[CatalogueEntry]) -> Iterator[InputProblem]:
    """Yield what is wrong with the successors of entries, each at its field."""
    for entry in entries:
        wanted = _wanted(draft, entry)
        if wanted:
            yield InputProblem(_FIELD, _FIELD, f"“{entry.successor}”", wanted)


def _wanted(draft: DraftEntries, entry: CatalogueEntry) -> str:
    seen, successor = {entry.ref}, entry.successor
    while successor is not None:
        if successor in seen:
            return "a part that does not lead back to this one"
        found = draft.entries([successor]).get(successor)
        if found is None:
            return "" if len(seen) > 1 else "number and maker of a part of the draft"
        if entry.kind is not None and found.kind is not None and found.kind is not entry.kind:
            return Worded(
                "a part of the same kind ({entry_kind}); this is a {found_kind}",
                entry_kind=entry.kind,
                found_kind=found.kind,
            )
        seen.add(successor)
        successor = found.successor
    return ""
