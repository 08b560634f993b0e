"""From judged parts to a chain problem: ports numbered, figures turned into loads, requirement lines into limits."""

from __future__ import annotations

import heapq
import math
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from enum import Enum, auto
from typing import NamedTuple

from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, SetLink
from spoutline.model.port import Port
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.planning.sets.loads import Load, LoadFigures, LoadModel, SetLimit
from spoutline.planning.sets.pool import JudgedPart, Pool
from spoutline.rules.chain.joints import mates
from spoutline.search.finder import Finder
from spoutline.search.graph import MAJOR, NO_PORT, Item, Layer, Path, Problem
from spoutline.search.listener import Listener
from spoutline.search.through import ThroughLayer, holding

_REGRET = MAJOR  # outweighs any objective, so that fewer broken should-rules always come first
_TIE = 10**9  # outweighs any price, so that the price only breaks ties of another objective
_REMEMBERED = 4  # queries whose items are kept for other limits


class Objective(Enum):
    """What the walk minimises, after the number of broken should-rules; price always breaks a tie."""

    PRICE = auto()
    MASS = auto()
    PRESSURE_LOSS = auto()


def _everything(_: JudgedPart) -> bool:
    return True


@dataclass(frozen=True, slots=True)
class Held:
    """A part that every set must hold in a slot; an adaptor or splitter in any of the places it may take."""

    slot: Slot
    part: PartRef


@dataclass(frozen=True, slots=True)
class SetQuery:
    """One question to the search.

    ``lines`` are the requirement lines in force: a part that breaks one of them is left out, a set limit that serves
    one of them holds. ``keep`` narrows the parts further. An objective may be any load sum. Broken should-rules of
    parts outweigh every objective unless ``regrets_weigh`` is False. ``outlet_bears_all`` asks what a stronger
    dispenser outlet would allow. ``holds`` names a part that must be in the set.
    """

    lines: frozenset[RequirementId]
    limits: tuple[SetLimit, ...]
    keep: Callable[[JudgedPart], bool] = _everything
    objective: Objective | Load = Objective.PRICE
    regrets_weigh: bool = True
    outlet_bears_all: bool = False
    holds: Held | None = None


class Promise(NamedTuple):
    """What no set goes below: broken should-rules of its parts, then price in minor units."""

    regrets: int
    price_minor: int


@dataclass
class _Ports:
    """Numbers for the distinct ports met; which meet is asked once per pair of port kinds."""

    numbers: dict[Port, int] = field(default_factory=dict)

    def number(self, port: Port) -> int:
        return self.numbers.setdefault(port, len(self.numbers))

    def table(self, *, joints_matter: bool) -> dict[int, frozenset[int]]:
        return {
            number: frozenset(
                other for facing, other in self.numbers.items() if not joints_matter or mates(port, facing)
            )
            for port, number in self.numbers.items()
        }


# design flow, above the breakaway, drive-off counts, objective, regrets weigh
_Counting = tuple[float, bool, bool, Objective | Load, bool]


class ChainSearch:
    """All searches for one position draw on the same judged pool and the same figures, worked out once per part."""

    def __init__(self, requirement: Requirement, pool: Pool, model: LoadModel) -> None:
        self.requirement = requirement
        self.pool = pool
        self.model = model
        self._ports = _Ports()
        self._start = self._ports.number(requirement.outlet)
        self._by_key: dict[str, Part] = {}
        self._made: dict[_Counting, dict[tuple[Slot, str, str], Item]] = {}
        self._known: dict[SetQuery, tuple[Finder, ...]] = {}  # without limits, the last asked for at the end
        self._promises: dict[tuple[SetQuery, Slot], dict[PartRef, Promise]] = {}
        self._through: dict[tuple[SetQuery, Slot], tuple[ThroughLayer, ...]] = {}

    def sets(self, query: SetQuery, listener: Listener | None = None) -> Iterator[HangingSet]:
        """Yield the sets that keep every limit of ``query``, best objective first.

        Nozzles with different design flows make different problems, because every part's loss depends on that flow;
        their ordered answers are merged, so the whole stays exact.
        """
        walks = [
            ((path.cost, path.keys, path) for path in finder.in_order(listener)) for finder in self._finders(query)
        ]
        for _, _, path in heapq.merge(*walks, key=lambda found: found[:2]):
            yield self.hanging_set(path)

    def cheapest(self, query: SetQuery, listener: Listener | None = None) -> HangingSet | None:
        """Return a set with the best objective; None where there is none. Much quicker than ``sets`` at saying so."""
        held = query.holds
        paths = (
            (finder.cheapest(listener) for finder in self._finders(query))
            if held is None
            else (through.cheapest(held.part.key, listener) for through in self._layers_through(query, held.slot))
        )
        found = [path for path in paths if path is not None]
        best = min(found, key=lambda path: (path.cost, path.keys), default=None)
        return None if best is None else self.hanging_set(best)

    def least_costs(self, query: SetQuery, slot: Slot) -> dict[PartRef, int]:
        """Return, by part, a cost that no set with the part in ``slot`` goes below.

        A part that is left out is in no set; one that is named may still be in none.
        """
        least: dict[str, int] = {}
        for through in self._layers_through(query, slot):
            for key, cost in through.least_costs().items():
                least[key] = min(least.get(key, cost), cost)
        return {PartRef.from_key(key): cost for key, cost in least.items()}

    def promise(self, query: SetQuery) -> Promise | None:
        """Return what no set that holds the part of ``query`` goes below; None where there is no such set.

        The objective must be the price, with regrets weighed.
        """
        held = query.holds
        if held is None:
            return None
        return self.promises(replace(query, holds=None), held.slot).get(held.part)

    def promises(self, query: SetQuery, slot: Slot) -> Mapping[PartRef, Promise]:
        """Return, by part, what no set with the part in ``slot`` goes below; worked out once.

        The objective must be the price, with regrets weighed. A part that is left out is in no set.
        """
        if (query, slot) not in self._promises:
            least = self.least_costs(query, slot)
            self._promises[query, slot] = {ref: Promise(*divmod(cost, _REGRET)) for ref, cost in least.items()}
        return self._promises[query, slot]

    def _layers_through(self, query: SetQuery, slot: Slot) -> tuple[ThroughLayer, ...]:
        """Return the layers that a part of ``slot`` may fill, of every problem; made once for all parts of the slot."""
        free = replace(query, holds=None)
        if (free, slot) not in self._through:
            self._through[free, slot] = tuple(
                ThroughLayer(problem, layer)
                for problem in self.problems(free)
                for layer in _layers_for(slot, problem.layers)
            )
        return self._through[free, slot]

    def problems(self, query: SetQuery) -> Iterator[Problem]:
        """Yield one chain problem for each design flow of the allowed nozzles, and each place of a held part."""
        if query.holds is None:
            yield from self._free_problems(query)
            return
        for problem in self._free_problems(query):
            for layer in _layers_for(query.holds.slot, problem.layers):
                narrowed = holding(problem, layer, query.holds.part.key)
                if narrowed is not None:
                    yield narrowed

    def _finders(self, query: SetQuery) -> Iterator[Finder]:
        """Return a finder for each of the ``problems``; queries that differ in their limits alone share the items."""
        without = replace(query, limits=())
        known = self._known.pop(without, None)
        if known is None:
            known = tuple(map(Finder, self.problems(without)))
        self._known[without] = known
        while len(self._known) > _REMEMBERED:
            del self._known[next(iter(self._known))]
        limits = self._limits(query)
        return (finder.within(limits) for finder in known)

    def _free_problems(self, query: SetQuery) -> Iterator[Problem]:
        nozzles = self._allowed(Slot.NOZZLE, query)
        for flow_m3_s in sorted({self.model.design_flow_m3_s(nozzle.part) for nozzle in nozzles}):
            layers = tuple(self._layers(query, flow_m3_s))
            table = self._ports.table(joints_matter=RequirementId.JOINTS in query.lines)
            yield Problem(self._start, layers, table, self._limits(query), self._outlet_bears_n(query))

    def _outlet_bears_n(self, query: SetQuery) -> float:
        if query.outlet_bears_all or RequirementId.DRIVE_OFF not in query.lines:
            return math.inf
        return self.requirement.outlet_pull_strength_n

    def _limits(self, query: SetQuery) -> tuple[float, ...]:
        return self.model.limit_vector(limit for limit in query.limits if limit.requirement in query.lines)

    def _allowed(self, slot: Slot, query: SetQuery) -> list[JudgedPart]:
        return [
            candidate
            for candidate in self.pool.of(slot)
            if candidate.forbidden_by.isdisjoint(query.lines) and query.keep(candidate)
        ]

    def _layers(self, query: SetQuery, flow_m3_s: float) -> Iterator[Layer]:
        """Between any two slots one adaptor may come; at the dispenser outlet an adaptor or a splitter."""
        chain = self.requirement.chain
        between = self._allowed(Slot.ADAPTOR, query)
        for depth, slot in enumerate(chain):
            fittings = between if depth else between + self._allowed(Slot.SPLITTER, query)
            above = self.model.is_above_breakaway(depth)
            yield Layer("", tuple(self._items(fittings, query, flow_m3_s, above=above)), optional=True)
            nozzles_flow = flow_m3_s if slot is Slot.NOZZLE else None
            parts = [
                candidate
                for candidate in self._allowed(slot, query)
                if nozzles_flow is None or self.model.design_flow_m3_s(candidate.part) == nozzles_flow
            ]
            yield Layer(slot, tuple(self._items(parts, query, flow_m3_s, above=above)))

    def _items(self, candidates: list[JudgedPart], query: SetQuery, flow_m3_s: float, *, above: bool) -> Iterator[Item]:
        """Yield the items of the parts that have the ports of their slot, each made once per way of counting."""
        drive_off = RequirementId.DRIVE_OFF in query.lines
        made = self._made.setdefault((flow_m3_s, above, drive_off, query.objective, query.regrets_weigh), {})
        for candidate in candidates:
            part = candidate.part
            if part.inlet is None or (part.outlet is None) is not (candidate.slot is Slot.NOZZLE):
                continue
            key = (candidate.slot, part.number, part.maker)
            if key not in made:
                made[key] = self._item(candidate, query, flow_m3_s, above=above, drive_off=drive_off)
            yield made[key]

    def _item(self, candidate: JudgedPart, query: SetQuery, flow_m3_s: float, *, above: bool, drive_off: bool) -> Item:
        part = candidate.part
        figures = self.model.figures(part, candidate.slot, flow_m3_s)
        key = part.ref.key
        self._by_key[key] = part
        strength = figures.pull_strength_n
        return Item(
            key,
            self._cost(candidate, query, figures, above=above),
            NO_PORT if part.inlet is None else self._ports.number(part.inlet),
            NO_PORT if part.outlet is None else self._ports.number(part.outlet),
            figures.loads(above_breakaway=above),
            bears=(0.0 if strength is None else strength) if drive_off else math.inf,
            demands=figures.pull_demand_n if drive_off else 0.0,
        )

    def _cost(self, candidate: JudgedPart, query: SetQuery, figures: LoadFigures, *, above: bool) -> int:
        part = candidate.part
        price = part.price_minor(self.requirement.site.currency) or 0
        match query.objective:
            case Load() as load:
                own = round(figures.loads(above_breakaway=above)[load] * 1e6)
            case Objective.MASS:
                own = round(part.mass_kg * 1e4) * _TIE + price
            case Objective.PRESSURE_LOSS:
                own = round(figures.loss_hot_pa) * _TIE + price
            case Objective.PRICE:
                own = price
        return own + (candidate.regrets * _REGRET if query.regrets_weigh else 0)

    def hanging_set(self, path: Path) -> HangingSet:
        """Return the set that a path of one of the ``problems`` stands for."""
        slots: list[Slot] = []
        for slot in self.requirement.chain:
            slots.extend((Slot.ADAPTOR, slot))
        links = []
        for slot, item in zip(slots, path.items, strict=True):
            if item is not None:
                part = self._by_key[item.key]
                place = Slot(part.kind) if slot is Slot.ADAPTOR else slot
                links.append(SetLink(slot=place, part=part))
        currency = self.requirement.site.currency
        return HangingSet(
            links=tuple(links),
            price_minor=sum(link.part.price_minor(currency) or 0 for link in links),
            currency=currency,
        )


def _layers_for(slot: Slot, layers: tuple[Layer, ...]) -> Iterator[int]:
    """Yield the places that a part of ``slot`` may take; the layers without a name take adaptors and splitters."""
    name = "" if slot in (Slot.ADAPTOR, Slot.SPLITTER) else slot
    return (place for place, layer in enumerate(layers) if layer.name == name)
