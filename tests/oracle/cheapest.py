"""The cheapest set in which the inspector finds nothing broken, by plain enumeration from the cheapest chain upward.

It shares nothing with the program's search: parts are filtered by the inspector, chains come off a heap in the order of
their price (with the least price still to come as the only guide), and each whole chain is inspected.
"""

from __future__ import annotations

import heapq
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from oracle.need import Need, need_of
from oracle.part_inspection import inspect_part
from oracle.set_inspection import REACH_BAND_M, chain_breaches, coiled_m, ports_mate
from spoutline.model.part import Part, PartKind
from spoutline.model.plan import SetLink
from spoutline.model.port import Port
from spoutline.model.requirement import Slot
from spoutline.model.survey import Position, Site

MOST_STEPS = 300_000


@dataclass(frozen=True, slots=True)
class Found:
    """The cheapest clean chain; ``links`` is None where none was clean; ``complete`` False if the budget ran out.

    ``doubtful`` says that a cheaper chain was turned down or taken by less than the calculation's own doubt.
    """

    links: tuple[SetLink, ...] | None
    price_minor: int | None
    complete: bool
    doubtful: bool


def usable(parts: Sequence[Part], slot: Slot, need: Need) -> list[Part]:
    """Return the parts that break nothing by themselves in ``slot``, cheapest first."""
    kind = PartKind(slot.value)
    fitting = (p for p in parts if p.kind is kind and p.inlet is not None)
    sound = [p for p in fitting if not any(inspect_part(p, slot, need))]
    return sorted(sound, key=lambda p: (_price(p, need), p.number))


def _price(part: Part, need: Need) -> int:
    price = part.price_minor(need.site.currency)
    assert price is not None
    return price


def cheapest_clean(position: Position, site: Site, parts: Sequence[Part], budget: int) -> Found:
    """Inspect chains from the cheapest upward and return the first clean one; at most ``budget`` chains are looked at.

    Adaptors are left out: each is one more joint, so a chain with one is not clean.
    """
    need = need_of(position, site)
    best: Found | None = None
    complete = True
    for chain in need.chains:
        found = _cheapest_of_chain(chain, need, parts, budget)
        complete = complete and found.complete
        cheaper = found.price_minor is not None and (
            best is None or best.price_minor is None or found.price_minor < best.price_minor
        )
        if best is None or cheaper:
            best = found
    assert best is not None
    return Found(best.links, best.price_minor, complete, best.doubtful or len(need.chains) > 1)


def _cheapest_of_chain(chain: tuple[Slot, ...], need: Need, parts: Sequence[Part], budget: int) -> Found:
    doubtful = False
    for looked_at, (price, links) in enumerate(_chains_by_price(chain, need, parts)):
        if looked_at >= budget or not links:
            return Found(None, None, False, doubtful)
        first = next(chain_breaches(links, need), None)
        if first is None or (first.near and all(breach.near for breach in chain_breaches(links, need))):
            return Found(links, price, True, doubtful or first is not None)
        doubtful = doubtful or first.near
    return Found(None, None, True, doubtful)


@dataclass(frozen=True, slots=True)
class _Step:
    """One part that may come next, with what it adds and what the cheapest rest costs behind it."""

    link: SetLink
    price: int
    length_m: float
    hose_m: float
    outlet: Port
    to_come: float


class _Layers:
    """Usable parts per place, and the least price from each open port to the nozzle."""

    def __init__(self, chain: tuple[Slot, ...], need: Need, parts: Sequence[Part]) -> None:
        self.chain = chain
        self.need = need
        self.main = [usable(parts, slot, need) for slot in chain]
        self._least: dict[tuple[int, Port], float] = {}
        self._steps: dict[tuple[int, Port], list[_Step]] = {}
        longest = [max((p.length_m for p in place), default=0.0) for place in self.main]
        self._longest_to_come = [sum(longest[place:]) for place in range(len(chain) + 1)]
        self._shortest = need.reach_m + coiled_m(need) - REACH_BAND_M

    def can_still_reach(self, place: int, length_m: float) -> bool:
        """Whether the longest parts still to come can make the way to the filler."""
        return length_m + self._longest_to_come[place] >= self._shortest

    def least(self, place: int, port: Port) -> float:
        """Return the least price from ``port`` through the slots from ``place`` on; infinite where nothing fits."""
        if place == len(self.chain):
            return 0.0
        key = (place, port)
        if key not in self._least:
            options = (step.price + step.to_come for step in self.steps(place, port))
            self._least[key] = min(options, default=float("inf"))
        return self._least[key]

    def steps(self, place: int, port: Port) -> list[_Step]:
        """Return what fits ``port`` in ``place`` and leads to the nozzle, cheapest first."""
        key = (place, port)
        if key not in self._steps:
            fitting = (p for p in self.main[place] if p.inlet and ports_mate(port, p.inlet))
            steps = [self._step(place, part, part.outlet) for part in fitting]
            self._steps[key] = [step for step in steps if step.to_come < float("inf")]
        return self._steps[key]

    def _step(self, place: int, part: Part, outlet: Port | None) -> _Step:
        return _Step(
            link=SetLink(slot=self.chain[place], part=part),
            price=_price(part, self.need),
            length_m=part.length_m,
            hose_m=part.hose.length_m if part.hose is not None else 0.0,
            outlet=outlet or part.inlet,  # nothing follows what has no outlet
            to_come=self.least(place + 1, outlet) if outlet else 0.0,
        )


def _chains_by_price(
    chain: tuple[Slot, ...], need: Need, parts: Sequence[Part]
) -> Iterator[tuple[int, tuple[SetLink, ...]]]:
    """Yield chains with their price, cheapest first; an empty chain says that the walk was given up."""
    layers = _Layers(chain, need, parts)
    outlet = need.position.outlet
    start = Port(outlet.thread, outlet.size, outlet.gender, outlet.path)
    longest_m = float("inf") if need.length_max_m is None else need.length_max_m + 1e-6
    serial = 0
    heap: list[tuple[float, int, int, float, float, Port, tuple[SetLink, ...]]] = []
    first = layers.least(0, start)
    if first < float("inf"):
        heap.append((first, serial, 0, 0.0, 0.0, start, ()))
    while heap:
        _, _, price, length, hoses, port, links = heapq.heappop(heap)
        place = len(links)
        if place == len(chain):
            yield price, links
            continue
        if serial > MOST_STEPS:
            yield MOST_STEPS, ()
            return
        for step in layers.steps(place, port):
            length_now, hoses_now = length + step.length_m, hoses + step.hose_m
            if (step.hose_m and hoses_now > longest_m) or not layers.can_still_reach(place + 1, length_now):
                continue
            serial += 1
            now = price + step.price
            entry = (now + step.to_come, serial, now, length_now, hoses_now, step.outlet, (*links, step.link))
            heapq.heappush(heap, entry)
