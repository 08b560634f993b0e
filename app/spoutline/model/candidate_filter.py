"""What is asked of the catalogue for one slot: the bounds of a requirement that an index can answer."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.liquid import ListingClass, ListingScheme
from spoutline.model.part import PartKind
from spoutline.model.port import FlowPath


@frozen(kw_only=True)
class CandidateFilter:
    """The indexable bounds of a requirement; None leaves a column open."""

    kind: PartKind
    path: FlowPath | None = None
    listing_class: ListingClass | None = None
    scheme: ListingScheme | None = None
    temperature_low_c: float | None = None
    temperature_high_c: float | None = None
    active_only: bool = False
