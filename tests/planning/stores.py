"""A part store over a plain list, for tests."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from spoutline.model.catalogue_edition import CatalogueEdition
from spoutline.model.part import Part, PartKind, PartStatus
from spoutline.model.part_columns import PartColumns, columns_of
from spoutline.model.part_ref import PartRef
from spoutline.planning.protocols import CandidateFilter


class ListStore:
    """The parts it is given, filtered one by one."""

    def __init__(self, parts: Iterable[Part]) -> None:
        self.all = tuple(sorted(parts, key=lambda part: part.ref))
        self._columns: dict[PartKind, PartColumns] = {}
        self._by_number: dict[str, list[Part]] = {}
        for part in self.all:
            self._by_number.setdefault(part.number, []).append(part)

    def edition(self) -> CatalogueEdition:
        return CatalogueEdition(catalogue="List", number=1, title="list")

    def candidates(self, wanted: CandidateFilter) -> tuple[Part, ...]:
        return tuple(part for part in self.all if passes(part, wanted))

    def columns(self, kind: PartKind) -> PartColumns:
        if kind not in self._columns:
            self._columns[kind] = columns_of(kind, (part for part in self.all if part.kind is kind))
        return self._columns[kind]

    def count(self, kind: PartKind) -> int:
        return sum(part.kind is kind for part in self.all)

    def part(self, ref: PartRef) -> Part | None:
        found = self.parts((ref,))
        return found[0] if len(found) == 1 else None

    def parts(self, refs: Sequence[PartRef]) -> tuple[Part, ...]:
        found = {part.ref: part for ref in refs for part in self._by_number.get(ref.number, ()) if ref.names(part.ref)}
        return tuple(found[ref] for ref in sorted(found))

    def under_other_numbers(self, refs: Sequence[PartRef]) -> Mapping[PartRef, Part]:
        return {}

    def currencies(self) -> tuple[str, ...]:
        return tuple(sorted({price.currency for part in self.all for price in part.prices}))

    def nearest_numbers(self, number: str) -> tuple[str, ...]:
        return ()


def passes(part: Part, wanted: CandidateFilter) -> bool:
    """Judge the filter from its meaning."""
    return (
        part.kind is wanted.kind
        and wanted.path in (None, part.path)
        and (wanted.listing_class is None or wanted.listing_class in part.listings)
        and (wanted.scheme is None or wanted.scheme in part.schemes)
        and (wanted.temperature_low_c is None or part.temperature_minimum_c <= wanted.temperature_low_c)
        and (wanted.temperature_high_c is None or part.temperature_maximum_c >= wanted.temperature_high_c)
        and not (wanted.active_only and part.status is not PartStatus.ACTIVE)
    )
