"""Questions that admit nothing but what another admits: the other's best set is theirs too wherever it is admitted.

Colder and hotter places ask for more of the same parts, so that most of what suits a hard climate suits a mild one.
Whether that is so is looked up in the figures, part by part, and never taken for granted.
"""

from __future__ import annotations

import itertools
import math
from collections import defaultdict
from collections.abc import Iterable, Sequence
from typing import Final

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part_columns import Ints, Mask
from spoutline.model.part_ref import PartRef
from spoutline.model.requirement import RequirementId, Slot
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.choice import Choice, Chooser
from spoutline.planning.sets.loads import Load, Loads
from spoutline.planning.sets.pool import Pool, SlotParts
from spoutline.planning.sets.set_query import SetQuery
from spoutline.search.bounds import within

_ROOM: Final = 1e-6  # of two limits, for what their sums are rounded by

Hung = Sequence[tuple[Slot, PartRef]]  # the parts of a chain, adaptors included, dispenser first


@frozen
class Answered:
    """A question with its choice; ``is_plain`` says that it is proven, and that no full check turned a set down."""

    search: ChainSearch
    choice: Choice
    is_plain: bool

    @classmethod
    def of(cls, chooser: Chooser, choice: Choice) -> Answered:
        """Return what a chooser found."""
        return cls(chooser.search, choice, chooser.turned_down == 0 and choice.floor is None)


def choice_of_wider(asked: Chooser, known: Answered) -> Choice | None:
    """Return the choice of another question where it is that of ``asked`` for certain; None where that is not known.

    ``asked`` must admit nothing but what the other does (``is_narrower``). Of more sets it was the first in order,
    so it is the first of fewer, wherever it breaks no more shoulds here and its full checks hold.
    """
    choice = known.choice
    if not known.is_plain:
        return None
    hung = tuple((link.slot, link.part.ref) for link in choice.judged.hanging_set.links)
    if not admits(asked.search, asked.query(choice.dropped), hung):
        return None
    if _regrets(asked.search.pool, hung) != _regrets(known.search.pool, hung):
        return None
    judged = asked.accepted_or_none(choice.judged.hanging_set, choice.dropped)
    return None if judged is None else Choice(judged, choice.dropped)


def is_narrower(asked: ChainSearch, known: ChainSearch) -> bool:
    """Say whether every set of ``asked`` is one of ``known`` for certain, which breaks no more shoulds there.

    Both must be asked of the same columns. No part may be allowed, break fewer shoulds, bear more or ask less than
    there, and no chain that keeps the limits here may exceed one there.
    """
    mine, theirs = asked.requirement, known.requirement
    if (mine.outlet, mine.chain, mine.site.currency) != (theirs.outlet, theirs.chain, theirs.site.currency):
        return False
    if mine.outlet_pull_strength_n > theirs.outlet_pull_strength_n:
        return False
    pairs = _portions(asked.pool, known.pool)
    if pairs is None or not all(_are_fewer(*pair) for pair in pairs):
        return False
    flows: set[float] = set()
    for one, _ in pairs:
        if one.slot is Slot.NOZZLE:
            own, other = (model.design_flows_m3_s(one.columns)[one.free] for model in (asked.model, known.model))
            if not np.array_equal(own, other):
                return False
            flows.update(own.tolist())
    return all(_Held(asked, known, flow).is_narrower() for flow in sorted(flows))


class _Held:
    """The parts of ``asked`` that nozzles of one design flow go with, at what they weigh here and in ``known``."""

    def __init__(self, asked: ChainSearch, known: ChainSearch, flow_m3_s: float) -> None:
        self._asked, self._known = asked.model, known.model
        self._loads: dict[Slot, list[tuple[Ints, Loads, Loads]]] = defaultdict(list)
        for parts in asked.pool.all_portions():
            may = parts.free
            if parts.slot is Slot.NOZZLE:
                may = may & (asked.model.design_flows_m3_s(parts.columns) == flow_m3_s)
            own, other = (model.loads(parts.columns, parts.slot, flow_m3_s) for model in (asked.model, known.model))
            self._loads[parts.slot].append((np.flatnonzero(may), own, other))
        chain = asked.requirement.chain
        fittings = [(Slot.ADAPTOR, Slot.SPLITTER), *((Slot.ADAPTOR,) for _ in chain[1:])]
        self._layers = [
            (slots, asked.model.is_above_breakaway(depth), is_optional)
            for depth, slot in enumerate(chain)
            for slots, is_optional in ((fittings[depth], True), ((slot,), False))
        ]

    def is_narrower(self) -> bool:
        """Say whether chains bear and ask each other no less than there, and keep every limit there."""
        for rows, own, other in itertools.chain.from_iterable(self._loads.values()):
            if (own.demands[rows] < other.demands[rows]).any() or (own.bears[rows] > other.bears[rows]).any():
                return False
        mine = {(one.load, one.requirement, one.severity): one.limit for one in self._asked.set_limits}
        return all(
            self._keeps(one.load, mine.get((one.load, one.requirement, one.severity), math.inf), one.limit)
            for one in self._known.set_limits
        )

    def _keeps(self, load: Load, limit: float, there: float) -> bool:
        """Say whether no chain within a limit here exceeds that there, by the sum of what each layer may add most."""
        most, more = 0.0, 0.0  # of the load there, and of what it is there above what it is here
        for slots, above, is_optional in self._layers:
            figures = [self._most(slot, load, above=above) for slot in slots] + [(0.0, 0.0)] * is_optional
            most += max(figure for figure, _ in figures)
            more += max(figure for _, figure in figures)
        if most <= there or limit == -math.inf:
            return True
        if more <= 0.0 and limit <= there:
            return True
        return more + _ROOM * (abs(limit) + abs(there)) <= there - limit

    def _most(self, slot: Slot, load: Load, *, above: bool) -> tuple[float, float]:
        """Return the most of a load there that a part of a slot has, and the most that it has more than here."""
        most = more = -math.inf
        for rows, own, other in self._loads[slot]:
            here, there = (one.column(load, above_breakaway=above)[rows] for one in (own, other))
            known = here < np.inf  # what is without end here is in no chain within a limit
            most = max(most, float(there.max(initial=-np.inf)))
            more = max(more, float((there[known] - here[known]).max(initial=-np.inf)))
        return most, more


def admits(search: ChainSearch, query: SetQuery, hung: Hung) -> bool:
    """Say whether a chain whose parts join up is one of the sets of a query, as the search counts them."""
    found = [search.pool.found(slot, ref) for slot, ref in hung]
    places = [place for place in found if place is not None and bool(place[0].allowed(query.lines)[place[1]])]
    if len(places) < len(hung):
        return False
    model, (nozzle, at) = search.model, places[-1]
    flow_m3_s = float(model.design_flows_m3_s(nozzle.columns)[at])
    loads = [(model.loads(parts.columns, parts.slot, flow_m3_s), row) for parts, row in places]
    return _bear_each_other(search, query, loads) and _keep_limits(search, query, places, loads)


def _keep_limits(
    search: ChainSearch, query: SetQuery, places: Iterable[tuple[SlotParts, int]], loads: Sequence[tuple[Loads, int]]
) -> bool:
    chain, total, depth = search.requirement.chain, np.zeros(len(Load)), 0
    for (parts, row), (own, _) in zip(places, loads, strict=True):
        above = search.model.is_above_breakaway(depth)
        total += own.of(np.array([row]), above_breakaway=above)[0]
        depth += parts.slot in chain  # an adaptor comes before the slot that is filled next
    kept = (one for one in query.limits if one.requirement in query.lines)
    limits = search.model.limit_vector(kept)
    return all(within(load, limit) for load, limit in zip(total.tolist(), limits, strict=True))


def _bear_each_other(search: ChainSearch, query: SetQuery, loads: Sequence[tuple[Loads, int]]) -> bool:
    if RequirementId.DRIVE_OFF not in query.lines:
        return True
    bears = [float(one.bears[row]) for one, row in loads]
    for at, (one, row) in enumerate(loads):
        others = (*bears[:at], *bears[at + 1 :], search.requirement.outlet_pull_strength_n)
        if float(one.demands[row]) > min(others):
            return False
    return True


def _regrets(pool: Pool, hung: Hung) -> int:
    return sum(pool.regrets_of(slot, ref) for slot, ref in hung)


def _portions(asked: Pool, known: Pool) -> tuple[tuple[SlotParts, SlotParts], ...] | None:
    """Return the portions of both pools in pairs; None where they are not of the same columns."""
    if tuple(asked.slots) != tuple(known.slots):
        return None
    mine, theirs = tuple(asked.all_portions()), tuple(known.all_portions())
    if len(mine) != len(theirs):
        return None
    pairs = tuple(zip(mine, theirs, strict=True))
    alike = all(one.slot is other.slot and one.columns is other.columns for one, other in pairs)
    return pairs if alike and all(one.extra_minor == other.extra_minor for one, other in pairs) else None


def _are_fewer(one: SlotParts, other: SlotParts) -> bool:
    free: Mask = one.free
    return not bool((free & ~other.free).any()) and bool((one.regrets >= other.regrets)[free].all())
