"""The cheapest set that the inspector accepts, found by plain enumeration from the cheapest chain upward.

It shares nothing with the program's search: parts are filtered by the inspector, chains come off a heap in the order of
their price (with the least price still to come as the only guide), and each whole chain is inspected.
"""

from __future__ import annotations

import heapq
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from oracle.breach import MUST
from oracle.need import Need, need_of
from oracle.part_inspection import inspect_part
from oracle.set_inspection import REACH_BAND_M, coiled_m, inspect_set, ports_mate
from spoutline.model.part import Part, PartKind
from spoutline.model.plan import SetLink
from spoutline.model.port import Port
from spoutline.model.requirement import Slot
from spoutline.model.survey import Position, Site


@dataclass(frozen=True, slots=True)
class Found:
    """The cheapest accepted chain; ``links`` is None where none was accepted; ``complete`` False if the budget ran out.

    ``doubtful`` says that a cheaper chain was turned down or taken by less than the calculation's own doubt.
    """

    links: tuple[SetLink, ...] | None
    price_minor: int | None
    complete: bool
    doubtful: bool


def usable(parts: Sequence[Part], slot: Slot, need: Need) -> list[Part]:
    """Return the parts that break no must by themselves in ``slot``, cheapest first."""
    kind = PartKind(slot.value)
    fitting = (p for p in parts if p.kind is kind and p.inlet is not None)
    sound = [p for p in fitting if not any(b.severity is MUST for b in inspect_part(p, slot, need))]
    return sorted(sound, key=lambda p: (_price(p, need), p.number))


def _price(part: Part, need: Need) -> int:
    price = part.price_minor(need.site.currency)
    assert price is not None
    return price


def cheapest_accepted(position: Position, site: Site, parts: Sequence[Part], budget: int) -> Found:
    """Inspect chains from the cheapest upward and return the first accepted; at most ``budget`` chains are looked at.

    At most one adaptor is put into a joint, and a splitter only at the outlet.
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
        if looked_at >= budget:
            return Found(None, None, False, doubtful)
        inspection = inspect_set(need.position, need.site, links)
        if inspection.accepted:
            return Found(links, price, True, doubtful or bool(inspection.doubtful))
        doubtful = doubtful or bool(inspection.doubtful)
    return Found(None, None, True, doubtful)


class _Layers:
    """Usable parts per place, and the least price from each open port to the nozzle."""

    def __init__(self, chain: tuple[Slot, ...], need: Need, parts: Sequence[Part]) -> None:
        self.chain = chain
        self.need = need
        self.main = [usable(parts, slot, need) for slot in chain]
        self.adaptors = usable(parts, Slot.ADAPTOR, need)
        self.splitters = usable(parts, Slot.SPLITTER, need)
        self._least: dict[tuple[int, Port, bool], float] = {}
        connector = max((p.length_m for p in self.adaptors + self.splitters), default=0.0)
        longest = [max((p.length_m for p in place), default=0.0) + connector for place in self.main]
        self._longest_to_come = [sum(longest[place:]) for place in range(len(chain) + 1)]

    def can_still_reach(self, place: int, length_m: float) -> bool:
        """Whether the longest parts still to come can make the way to the filler."""
        return length_m + self._longest_to_come[place] >= self.need.reach_m + coiled_m(self.need) - REACH_BAND_M

    def connectors(self, place: int) -> list[Part]:
        """Return what may stand before the part at ``place``."""
        return self.adaptors + (self.splitters if place == 0 else [])

    def least(self, place: int, port: Port, connected: bool) -> float:
        """Return the least price from ``port`` through the slots from ``place`` on; infinite where nothing fits."""
        if place == len(self.chain):
            return 0.0
        key = (place, port, connected)
        if key not in self._least:
            options = [
                _price(p, self.need) + (self.least(place + 1, p.outlet, False) if p.outlet else 0.0)
                for p in self.main[place]
                if p.inlet and ports_mate(port, p.inlet)
            ]
            if not connected:
                options += [
                    _price(p, self.need) + self.least(place, p.outlet, True)
                    for p in self.connectors(place)
                    if p.inlet and p.outlet and ports_mate(port, p.inlet)
                ]
            self._least[key] = min(options, default=float("inf"))
        return self._least[key]


def _chains_by_price(
    chain: tuple[Slot, ...], need: Need, parts: Sequence[Part]
) -> Iterator[tuple[int, tuple[SetLink, ...]]]:
    layers = _Layers(chain, need, parts)
    outlet = need.position.outlet
    start = Port(outlet.thread, outlet.size, outlet.gender, outlet.path)
    serial = 0
    heap: list[tuple[float, int, int, int, Port, bool, tuple[SetLink, ...]]] = []
    first = layers.least(0, start, False)
    if first < float("inf"):
        heap.append((first, serial, 0, 0, start, False, ()))
    while heap:
        _, _, price, place, port, connected, links = heapq.heappop(heap)
        if place == len(chain):
            yield price, links
            continue
        steps = [(p, chain[place], place + 1, False) for p in layers.main[place]]
        if not connected:
            steps += [(p, Slot(p.kind.value), place, True) for p in layers.connectors(place)]
        for part, slot, next_place, next_connected in steps:
            if part.inlet is None or not ports_mate(port, part.inlet):
                continue
            length = sum(link.part.length_m for link in links) + part.length_m
            if _too_long(links, part, need) or not layers.can_still_reach(next_place, length):
                continue
            next_port = part.outlet or port
            to_come = layers.least(next_place, next_port, next_connected)
            if to_come == float("inf"):
                continue
            serial += 1
            now = price + _price(part, need)
            chained = (*links, SetLink(slot=slot, part=part))
            heapq.heappush(heap, (now + to_come, serial, now, next_place, next_port, next_connected, chained))


def _too_long(links: tuple[SetLink, ...], part: Part, need: Need) -> bool:
    if need.length_max_m is None or part.hose is None:
        return False
    hoses = [link.part for link in links if link.part.hose is not None] + [part]
    return sum(h.hose.length_m for h in hoses if h.hose) > need.length_max_m + 1e-6
