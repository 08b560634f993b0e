"""What entries put into a draft would change there, counted without writing anything."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from spoutline.catalogue.draft import DraftCounts, DraftDesk, in_chunks
from spoutline.catalogue.entry_text import digest_of, entry_text
from spoutline.catalogue.families import with_family
from spoutline.catalogue.list_store import list_text
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.part_family import PartFamily
from spoutline.model.pricing import PriceList


class DraftLook:
    """Counts what putting families, then entries, then price lists into a draft would do; as ``DraftDesk`` counts.

    ``families`` are all that the draft is to hold. What a part of a changed one inherits is no change of its own.
    """

    def __init__(self, desk: DraftDesk, families: Mapping[str, PartFamily]) -> None:
        self._desk = desk
        self.families = families
        self._found = 0
        self._lists: set[str] = set()
        self.counts = DraftCounts()
        before = desk.families.all()
        changed = {name for name in {*before, *families} if before.get(name) != families.get(name)}
        # what the draft holds of the parts of such a family once it follows
        self._following = {one.ref: self._digest(one) for one in desk.families.parts_of(changed)}

    def put(self, entries: Sequence[CatalogueEntry]) -> None:
        """Count what some thousand entries would do."""
        held = self._desk.digests([one.ref for one in entries])
        for one in entries:
            before = self._following.get(one.ref) or held.get(one.ref)
            self._found += before is not None
            if before is None:
                self.counts.new += 1
            elif before == self._digest(one):
                self.counts.unchanged += 1
            else:
                self.counts.changed += 1

    def put_list(self, one: PriceList) -> None:
        """Count what a price list would do."""
        self._lists.add(one.id)
        self.counts.price_lists += self._desk.price_lists.text(one.id) != list_text(one)

    def keep_only(self) -> None:
        """Count the entries and price lists that would be taken out where the draft held what was put and no other."""
        self.counts.gone += len(self._desk.refs()) - self._found
        self.counts.price_lists += len(self._desk.price_lists.names() - self._lists)

    def _digest(self, entry: CatalogueEntry) -> str:
        return digest_of(entry_text(with_family(entry, self.families)))


def look_at(looks: Iterable[DraftLook], entries: Iterable[CatalogueEntry]) -> None:
    """Let several looks count what the same entries would do, some thousands at a time."""
    for chunk in in_chunks(entries):
        for look in looks:
            look.put(chunk)
