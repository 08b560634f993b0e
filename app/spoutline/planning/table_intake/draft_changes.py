"""What a table would change in a draft: new, changed with old and new values, price moves, near duplicates, missing."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Final

from spoutline.catalogue.changes import FieldChange, changed_fields
from spoutline.catalogue.shelf_lookup import EntryChange
from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.part_ref import PartRef

LARGE_MOVE: Final = 0.20  # of a price up or down that is asked about: common practice, no source


class ChangeKind(StrEnum):
    """What a table does to a part."""

    NEW = "new"
    CHANGED = "changed"
    MISSING = "missing"  # in the draft, of a maker of the table, and not in the table


@frozen
class PriceMove:
    """A price that moves a lot; ``share`` is the change by the old price, 0.25 for a quarter more."""

    currency: str
    before_minor: int
    after_minor: int

    @property
    def share(self) -> float:
        """The change by the old price."""
        return (self.after_minor - self.before_minor) / self.before_minor


@frozen
class PartChange:
    """A part that the table changes; ``row`` is 0 for one that is missing in it."""

    kind: ChangeKind
    ref: PartRef
    row: int
    fields: tuple[FieldChange, ...] = ()
    moves: tuple[PriceMove, ...] = ()
    alike: tuple[PartRef, ...] = ()  # parts whose numbers differ in capitals, blanks and signs alone

    @property
    def name(self) -> str:
        """What a person knows the row by."""
        return f"{self.ref.number}  {self.ref.maker}"


@frozen
class RowChange:
    """What a table does to something else than a part: a position, a type, an old number, a price."""

    kind: ChangeKind
    name: str
    row: int
    fields: tuple[FieldChange, ...] = ()
    moves: tuple[PriceMove, ...] = ()
    alike: tuple[PartRef, ...] = ()

    @property
    def ref(self) -> PartRef:
        """What names it, as a part is named."""
        return PartRef(self.name)


@dataclass(slots=True)
class DraftChanges:
    """The list of changes; ``changes`` holds the first ones, the counts hold all."""

    new: int = 0
    changed: int = 0
    unchanged: int = 0
    missing: int = 0
    price_moves: int = 0
    near_duplicates: int = 0
    changes: list[PartChange | RowChange] = field(default_factory=list)

    def add(self, change: PartChange | RowChange) -> None:
        """Count a change, and keep it while there is room."""
        self.price_moves += bool(change.moves)
        self.near_duplicates += bool(change.alike)
        if self.has_room(to_look_at=bool(change.moves or change.alike)):
            self.changes.append(change)

    def has_room(self, *, to_look_at: bool) -> bool:
        """Say whether a further change is kept; there is more room for one that a person should look at."""
        return len(self.changes) < BOUNDS.intake_faults * (2 if to_look_at else 1)


def row_changes(
    rows: Iterable[tuple[int, str, Mapping[str, str] | None, Mapping[str, str]]], missing: Iterable[str] = ()
) -> DraftChanges:
    """Return what rows change.

    Parameters
    ----------
    rows
        Of each its number, its name, and the texts of its fields before (None where it is new) and after.
    missing
        Names of what was there and the table does not hold.
    """
    found = DraftChanges()
    for number, name, before, after in rows:
        fields = tuple(
            FieldChange(key, (before or {}).get(key, ""), after.get(key, ""))
            for key in dict.fromkeys((*(before or {}), *after))
            if (before or {}).get(key, "") != after.get(key, "")
        )
        if before is None:
            found.new += 1
            found.add(RowChange(ChangeKind.NEW, name, number, fields))
        elif fields:
            found.changed += 1
            found.add(RowChange(ChangeKind.CHANGED, name, number, fields))
        else:
            found.unchanged += 1
    for name in missing:
        found.missing += 1
        found.add(RowChange(ChangeKind.MISSING, name, 0))
    return found


class Comparer:
    """Compares entries with what a draft holds, one after the other."""

    def __init__(self, refs: Iterable[PartRef]) -> None:
        self._held = set(refs)
        self._by_bare: dict[tuple[str, str], list[PartRef]] = {}
        for ref in self._held:
            self._by_bare.setdefault(_bare(ref), []).append(ref)
        self._came: set[PartRef] = set()
        self.changes = DraftChanges()

    def compare(self, row: int, before: CatalogueEntry | None, after: CatalogueEntry) -> None:
        """Note what an entry of the table changes."""
        found = self.changes
        self._came.add(after.ref)
        if before is None:
            found.new += 1
            found.add(PartChange(ChangeKind.NEW, after.ref, row, alike=self._alike(after.ref)))
        elif before == after:
            found.unchanged += 1
        else:
            found.changed += 1
            moves = price_moves(before, after)
            kept = found.has_room(to_look_at=bool(moves))  # what is not kept need not be told field by field
            fields = changed_fields(EntryChange(after.ref, before, after)) if kept else ()
            found.add(PartChange(ChangeKind.CHANGED, after.ref, row, fields, moves))

    def missing(self) -> tuple[PartRef, ...]:
        """Return the parts of the table's makers that the draft holds and the table does not, and note them."""
        makers = {ref.maker for ref in self._came}
        gone = tuple(sorted(ref for ref in self._held - self._came if ref.maker in makers))
        self.changes.missing = len(gone)
        for ref in gone:
            self.changes.add(PartChange(ChangeKind.MISSING, ref, 0))
        return gone

    def _alike(self, ref: PartRef) -> tuple[PartRef, ...]:
        bare = _bare(ref)
        alike = tuple(sorted(one for one in self._by_bare.get(bare, ()) if one != ref))
        self._by_bare.setdefault(bare, []).append(ref)
        return alike


def _bare(ref: PartRef) -> tuple[str, str]:
    return ref.maker.casefold(), "".join(sign for sign in ref.number.casefold() if sign.isalnum())


def price_moves(before: CatalogueEntry, after: CatalogueEntry) -> tuple[PriceMove, ...]:
    """Return the prices that move by more than ``LARGE_MOVE``."""
    old = {price.currency: price.minor for price in before.prices}
    moves = (
        PriceMove(price.currency, old[price.currency], price.minor) for price in after.prices if old.get(price.currency)
    )
    return tuple(move for move in moves if abs(move.share) > LARGE_MOVE)
