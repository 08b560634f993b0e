"""A chain problem with the parts that its items are: queries for fewer parts or other limits share the items."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part_columns import Ints, Mask
from spoutline.planning.sets.pool import Lines, SlotParts
from spoutline.search.finder import Finder
from spoutline.search.graph import Layer

Keep = Callable[[SlotParts], Mask]  # says which parts of a slot may be used


def everything(parts: SlotParts) -> Mask:
    """Say that every part of a slot may be used."""
    return parts.inside


@frozen
class LayerParts:
    """A layer of a chain, and the portions of parts and their rows that its items are."""

    layer: Layer
    portions: tuple[tuple[SlotParts, Ints], ...]
    above: bool  # the breakaway


@dataclass(frozen=True, eq=False)
class Assembled:
    """The problem of one design flow, with the parts that its items are."""

    finder: Finder
    flow_m3_s: float
    places: tuple[LayerParts, ...]
    _hopes: dict[tuple[float, ...], tuple[Mask, ...] | None] = field(default_factory=dict)  # by limits, whatever costs

    @cached_property
    def breaks(self) -> Lines:
        """The requirement lines whose *must* rules each item breaks, as bits; layer by layer."""
        found = (parts.forbidden[rows] for one in self.places for parts, rows in one.portions)
        return np.concatenate([np.zeros(0, np.uint64), *found])

    def may_hold(self, limits: tuple[float, ...]) -> bool:
        """Say whether any chain may keep these limits, each looked at by itself; False proves that none does."""
        hope = self._hope(limits)
        if hope is None:
            return True
        return all(one.layer.optional or may.any() for one, may in zip(self.places, hope, strict=True))

    def _hope(self, limits: tuple[float, ...]) -> tuple[Mask, ...] | None:
        if limits not in self._hopes:
            self._hopes[limits] = self.finder.within(limits).hopeful()
        return self._hopes[limits]

    def within(self, limits: tuple[float, ...]) -> Finder | None:
        """Return a finder for all parts, those left out that are known to hang in no set; None where that is all."""
        return self.narrowed(everything, limits) if self._hopes.get(limits) else self.finder.within(limits)

    def narrowed(self, keep: Keep, limits: tuple[float, ...], *, hopes: bool = True) -> Finder | None:
        """Return a finder for the parts that may be used; None where a slot of the chain is left without any.

        With ``hopes``, parts that no chain within the limits holds are looked for once for all questions.
        """
        known: dict[int, Mask] = {}
        for place in self.places:
            if id(place) not in known:
                nothing = np.zeros(0, np.bool_)
                known[id(place)] = np.concatenate([nothing, *(keep(parts)[rows] for parts, rows in place.portions)])
        hope = self._hope(limits) if hopes else None
        masks = [known[id(place)] for place in self.places]
        masks = masks if hope is None else [mask & may for mask, may in zip(masks, hope, strict=True)]
        if not all(place.layer.optional or mask.any() for place, mask in zip(self.places, masks, strict=True)):
            return None
        return self.finder.within(limits).only(masks)
