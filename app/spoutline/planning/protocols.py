"""What the use cases need of the stores, so that ten-line fakes can stand in for them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Protocol

from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.catalogue_edition import CatalogueEdition
from spoutline.model.part import Part, PartKind
from spoutline.model.part_ref import PartRef

if TYPE_CHECKING:
    from spoutline.model.part_columns import PartColumns

__all__ = ["CandidateFilter", "PartStore", "Progress"]


class PartStore(Protocol):
    """The catalogue as the use cases see it. Parts come sorted by part number, equal numbers by maker."""

    def edition(self) -> CatalogueEdition:
        """Return the edition of the catalogue that the parts are of."""
        ...

    def candidates(self, wanted: CandidateFilter) -> tuple[Part, ...]:
        """Return the parts that pass the filter; one indexed query."""
        ...

    def columns(self, kind: PartKind) -> PartColumns:
        """Return the figures of all parts of a kind that hangs, as columns; the same object while nothing changed."""
        ...

    def count(self, kind: PartKind) -> int:
        """Return how many parts of this kind the catalogue holds."""
        ...

    def part(self, ref: PartRef) -> Part | None:
        """Return the part that ``ref`` names; None where there is none, or several have a bare number."""
        ...

    def parts(self, refs: Sequence[PartRef]) -> tuple[Part, ...]:
        """Return every part that one of ``refs`` names: none for an unknown one, several for a shared bare number."""
        ...

    def under_other_numbers(self, refs: Sequence[PartRef]) -> Mapping[PartRef, Part]:
        """Return the parts that have other numbers: item number, GTIN, an old number of the very part."""
        ...

    def currencies(self) -> tuple[str, ...]:
        """Return the currencies in which the catalogue has prices, sorted."""
        ...

    def nearest_numbers(self, number: str) -> tuple[str, ...]:
        """Return up to three known numbers close to a mistyped one."""
        ...


class Progress(Protocol):
    """A listener with which a long use case reports and asks whether to go on."""

    def on_progress(self, done: int, total: int) -> None:
        """Say that ``done`` of ``total`` units are finished."""
        ...

    def should_stop(self) -> bool:
        """Return True to stop; the use case then raises ``Cancelled``."""
        ...
