"""A chain problem with the parts that its items are: queries for fewer parts or other limits share the items."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part_columns import Floats, Ints, Mask
from spoutline.planning.sets.pool import Lines, SlotParts
from spoutline.search.alone import ROOM
from spoutline.search.answer import Decision, PathAnswer
from spoutline.search.finder import Finder
from spoutline.search.graph import Layer, Path
from spoutline.search.item_table import loads_of
from spoutline.search.listener import Listener

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


@frozen
class _Hope:
    """What a look at each limit by itself tells.

    ``binding`` says which limits some chain could exceed, ``items`` by layer which items chains within the limits may
    hold; None where that is not known soon.
    """

    binding: tuple[bool, ...]
    items: tuple[Mask, ...] | None


@frozen
class _Answer:
    """The cheapest chain where it is known that there is one, and a cost that every chain is known to exceed."""

    path: Path | None = None
    over: float = -math.inf


@dataclass(frozen=True, eq=False)
class Assembled:
    """The problem of one design flow, with the parts that its items are."""

    finder: Finder
    flow_m3_s: float
    places: tuple[LayerParts, ...]
    _hopes: dict[tuple[float, ...], _Hope] = field(default_factory=dict)  # by limits, whatever costs
    _tight: dict[tuple[float, ...], Finder] = field(default_factory=dict, init=False)
    _foreseen: dict[tuple[Keep, tuple[float, ...]], Finder | None] = field(default_factory=dict, init=False)
    _answers: dict[tuple[float, ...], _Answer] = field(default_factory=dict, init=False)  # by limits that may bind

    @cached_property
    def breaks(self) -> Lines:
        """The requirement lines whose *must* rules each item breaks, as bits; layer by layer."""
        found = (parts.forbidden[rows] for one in self.places for parts, rows in one.portions)
        return np.concatenate([np.zeros(0, np.uint64), *found])

    def may_hold(self, limits: tuple[float, ...]) -> bool:
        """Say whether any chain may keep these limits, each looked at by itself; False proves that none does."""
        if not self._may_add_up(limits):
            return False
        items = self._hope(limits).items
        if items is None:
            return True
        return all(one.layer.optional or may.any() for one, may in zip(self.places, items, strict=True))

    def _may_add_up(self, limits: tuple[float, ...]) -> bool:
        """Say the same with ports left aside, before the items are joined up: soon told, and mostly enough."""
        pairs = zip(self._least_sums, limits, strict=True)
        return all(least <= most + (0.0 if math.isinf(most) else ROOM * max(abs(most), 1.0)) for least, most in pairs)

    @cached_property
    def _least_sums(self) -> list[float]:
        """What no chain goes below, by load: the least of every layer."""
        known = {id(place): _least_loads(place.layer) for place in self.places}
        sums: list[float] = np.sum([known[id(place)] for place in self.places], axis=0).tolist()
        return sums

    def _hope(self, limits: tuple[float, ...]) -> _Hope:
        if limits not in self._hopes:
            finder = self.finder.within(limits)
            self._hopes[limits] = _Hope(finder.binding(), finder.hopeful())
        return self._hopes[limits]

    def _tightened(self, limits: tuple[float, ...]) -> Finder:
        """Return a finder without the limits and the parts that are known not to matter."""
        if limits not in self._tight:
            hope = self._hope(limits)
            finder = self.finder.within(limits).of_limits(hope.binding)
            self._tight[limits] = finder if hope.items is None else finder.only(hope.items)
        return self._tight[limits]

    def within(self, limits: tuple[float, ...]) -> Finder | None:
        """Return a finder for all parts but those that are known to hang in no set; None where that is all."""
        return self._tightened(limits) if self.may_hold(limits) else None

    def cheapest(
        self, limits: tuple[float, ...], listener: Listener | None, most_cost: int | None, fewest_majors: int
    ) -> PathAnswer:
        """Return the cheapest chain of all parts, as ``Finder.cheapest``.

        Questions that differ in limits alone that no chain exceeds have one answer, which is looked for once.
        """
        finder, most = self.within(limits), math.inf if most_cost is None else most_cost
        if finder is None:
            return PathAnswer.decided(None)
        asked = tuple(map(_where, limits, self._hope(limits).binding))
        known = self._answers.get(asked, _Answer())
        if known.path is None and known.over < most:
            found = finder.cheapest(listener, most_cost, fewest_majors)
            if found.decision is Decision.UNDECIDED:
                return found
            path = found.path
            known = self._answers[asked] = _Answer(path, most if path is None else path.cost - 1)
        return PathAnswer.decided(known.path if known.over < most else None)

    def narrowed(self, keep: Keep, limits: tuple[float, ...], *, hopes: bool = True) -> Finder | None:
        """Return a finder for the parts that may be used; None where a slot of the chain is left without any.

        With ``hopes``, parts that no chain within the limits holds are looked for once for all questions.
        """
        if hopes and (keep, limits) in self._foreseen:
            return self._foreseen[keep, limits]
        masks = self._masks(keep, limits, hopes=hopes)
        return None if masks is None else (self._tightened(limits) if hopes else self.finder.within(limits)).only(masks)

    def foresee(self, keeps: Sequence[Keep], limits: tuple[float, ...]) -> None:
        """Let bounds be worked out together for parts that several questions may use, once the first is asked."""
        masks = {keep: self._masks(keep, limits) for keep in keeps}
        some = {keep: mask for keep, mask in masks.items() if mask is not None}
        finders = self._tightened(limits).among(list(some.values())) if some else []
        known = dict(zip(some, finders, strict=True))
        self._foreseen.update({(keep, limits): known.get(keep) for keep in keeps})

    def least_cost(self, keep: Keep, limits: tuple[float, ...]) -> float:
        """Return what no chain without majors costs less than, of parts that were foreseen; 0 where unknown."""
        finder = self._foreseen.get((keep, limits), self.finder)
        return math.inf if finder is None else finder.least_cost()

    def _masks(self, keep: Keep, limits: tuple[float, ...], *, hopes: bool = True) -> list[Mask] | None:
        """Return, by layer, the parts that may be used; None where a slot of the chain is left without any."""
        known: dict[int, Mask] = {}
        for place in self.places:
            if id(place) not in known:
                nothing = np.zeros(0, np.bool_)
                known[id(place)] = np.concatenate([nothing, *(keep(parts)[rows] for parts, rows in place.portions)])
        masks = [known[id(place)] for place in self.places]
        if hopes and (items := self._hope(limits).items) is not None:
            masks = [mask & may for mask, may in zip(masks, items, strict=True)]
        if not all(place.layer.optional or mask.any() for place, mask in zip(self.places, masks, strict=True)):
            return None
        return masks


def _least_loads(layer: Layer) -> Floats:
    """Return the least that a layer adds to each load; infinite where it must be filled and has no items."""
    return np.asarray(loads_of(layer).min(axis=0, initial=0.0 if layer.optional else np.inf))


def _where(limit: float, binds: bool) -> float:
    return limit if binds else math.inf
