"""What a path that was found stands for: its parts, what they add to each load, and the set that they make."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import numpy as np

from spoutline.model.part import Part
from spoutline.model.part_columns import Floats
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, SetLink
from spoutline.model.requirement import Requirement, Slot
from spoutline.planning.sets.loads import Load, LoadModel, Loads
from spoutline.planning.sets.pool import PartSource, Pool, SlotParts
from spoutline.search.graph import Path


class PathParts:
    """Reads the paths of the chain problems of one position."""

    def __init__(self, requirement: Requirement, pool: Pool, model: LoadModel) -> None:
        self._requirement, self._pool, self._model = requirement, pool, model

    def places_of(self, path: Path) -> list[tuple[SlotParts, int]]:
        """Return where the parts of a path of one of the chain problems are: portion and row of each, in order."""
        places = [one for slot in self._requirement.chain for one in ((Slot.ADAPTOR, Slot.SPLITTER), (slot,))]
        filled = [(slots, item.key) for slots, item in zip(places, path.items, strict=True) if item is not None]
        return [self._found(slots, PartRef.from_key(key)) for slots, key in filled]

    def sums_of(self, path: Path) -> Floats:
        """Return what a path of one of the chain problems adds to each load, whichever of them its items carry."""
        total: Floats = np.zeros(len(Load))
        for loads, row, above in self._loads_along(path):
            total += loads.of(np.array([row]), above_breakaway=above)[0]
        return total

    def load_of(self, path: Path, load: Load) -> float:
        """Return what a path of one of the chain problems adds to one load."""
        return math.fsum(
            float(loads.column(load, above_breakaway=above)[row]) for loads, row, above in self._loads_along(path)
        )

    def _loads_along(self, path: Path) -> Iterator[tuple[Loads, int, bool]]:
        """Yield the loads of each part of a path: those of its portion, its row, whether it hangs above the breakaway.

        Before each slot there is room for an adaptor.
        """
        depths = [depth for depth, item in enumerate(path.items) if item is not None]
        places = self.places_of(path)
        nozzle, row = places[-1]
        flow_m3_s = float(self._model.design_flows_m3_s(nozzle.columns)[row])
        for depth, (parts, at) in zip(depths, places, strict=True):
            loads = self._model.loads(parts.columns, parts.slot, flow_m3_s)
            yield loads, at, self._model.is_above_breakaway(depth // 2)

    def hanging_set(self, path: Path) -> HangingSet:
        """Return the set that a path of one of the chain problems stands for."""
        currency = self._requirement.site.currency
        found = [(parts, parts.columns.ref_at(row)) for parts, row in self.places_of(path)]
        links = tuple(
            SetLink(slot=parts.slot, part=parts.at_cost(part, currency)) for parts, part in _handed_out(found)
        )
        price_minor = sum(link.part.price_minor(currency) or 0 for link in links)
        return HangingSet(links=links, price_minor=price_minor, currency=currency)

    def _found(self, slots: tuple[Slot, ...], ref: PartRef) -> tuple[SlotParts, int]:
        for slot in slots:
            found = self._pool.found(slot, ref)
            if found is not None:
                return found
        raise KeyError(ref)


def _handed_out(found: Sequence[tuple[SlotParts, PartRef]]) -> Iterator[tuple[SlotParts, Part]]:
    """Yield the parts themselves; those of one catalogue are asked for together."""
    asked: dict[PartSource, list[PartRef]] = {}
    for portion, ref in found:
        asked.setdefault(portion.source, []).append(ref)
    handed = {source: source(refs) for source, refs in asked.items()}
    yield from ((portion, handed[portion.source][ref]) for portion, ref in found)
