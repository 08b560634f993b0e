"""Questions of a coverage map that differ in climate and outlet alone: what one found is not looked for again."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass, replace
from functools import cached_property

from spoutline.frozen import frozen
from spoutline.model.coverage_map import SlotStock
from spoutline.model.finding import Severity
from spoutline.model.plan import Conflict
from spoutline.model.port import Port
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Outlet
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.choice import ALL_LINES, Choice, Chooser
from spoutline.planning.sets.conflicts import ConflictFinder
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.judgement import SetJudge
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.makers import KnownMakers, makers_of
from spoutline.planning.sets.narrower import Answered, choice_of_wider, is_narrower
from spoutline.planning.sets.pool import SLOT_KINDS, Pool, narrow_pool
from spoutline.planning.sets.port_reach import PortReach
from spoutline.planning.sets.set_query import SetQuery
from spoutline.rules.derive.requirement import outlet_port
from spoutline.search.answer import Count
from spoutline.search.effort import Exhausted


@frozen
class Found:
    """The choice of a question, how many sets it has up to a number, and the makers with a part in any of them."""

    choice: Choice
    counted: Count
    makers: KnownMakers


@frozen
class _Known:
    answered: Answered
    makers: KnownMakers


@dataclass(eq=False)
class Ground:
    """Parts, loads and ports of one question; none but ``reach`` and ``whole_reach`` look at the outlet's thread."""

    requirement: Requirement
    pool: Pool
    model: LoadModel
    reach: PortReach
    whole_reach: PortReach
    context: PlanningContext

    def at_outlet(self, requirement: Requirement) -> Ground:
        """Return the same for a requirement that differs in the thread of the outlet alone."""
        other = Ground(
            requirement,
            replace(self.pool, requirement=requirement),
            self.model.at_outlet(requirement),
            self.reach.at_outlet(requirement),
            self.whole_reach.at_outlet(requirement),
            self.context,
        )
        other.__dict__["slots"] = self.slots
        return other

    @cached_property
    def slots(self) -> tuple[SlotStock, ...]:
        """Per place of the chain, how many parts there are, how many no must forbids, and who makes these."""
        return tuple(self._stock(slot) for slot in self.requirement.chain)

    def _stock(self, slot: Slot) -> SlotStock:
        makers = {maker for one in self.pool.portions(slot) for maker in one.columns.makers_of(one.free)}
        return SlotStock(
            slot=slot,
            in_catalogue=self.context.parts.count(SLOT_KINDS[slot]),
            remaining=self.pool.remaining(slot),
            makers=tuple(sorted(makers)),
        )

    def first_gap(self) -> Slot | None:
        """Return the first place that no part allowed reaches; None where parts join up to a chain."""
        return self.reach.first_gap(ALL_LINES)

    def why_not(self) -> Conflict | None:
        """Return the conflict without what would free a set, which costs most and is told where somebody asks.

        None also where it takes too much work to say what is in the way.
        """
        by_ports = self.whole_reach.conflict()
        if by_ports is not None:
            return by_ports
        search = ChainSearch(self.requirement, self.whole_reach.pool, self.model)
        try:
            return ConflictFinder(search, self.context.listener).conflict(with_relaxations=False)
        except Exhausted:
            return None


class AlikeQuestions:
    """Answers questions that differ in climate and outlet alone, one after the other."""

    def __init__(self, context: PlanningContext) -> None:
        self._context = context
        self._grounds: dict[Requirement, Ground] = {}  # whatever the thread of the outlet
        self._known: dict[Port, list[_Known]] = defaultdict(list)

    def ground(self, requirement: Requirement) -> Ground:
        """Return what is known of a question before any set is looked for."""
        key = _at_any_thread(requirement)
        if key not in self._grounds:
            pool = narrow_pool(requirement, self._context.tables, self._context.parts)
            model = LoadModel(requirement, self._context.tables)
            reach, whole_reach = PortReach(requirement, pool), PortReach(requirement, pool.whole())
            self._grounds[key] = Ground(requirement, pool, model, reach, whole_reach, self._context)
        return self._grounds[key].at_outlet(requirement)

    def chooser(self, ground: Ground) -> Chooser:
        """Return what chooses among the sets of a question."""
        search = ChainSearch(ground.requirement, ground.pool, ground.model)
        judge = SetJudge(ground.requirement, self._context.tables, self._context.usual_prices)
        return Chooser(search, judge, self._context.listener)

    def found(self, chooser: Chooser, most: int) -> Found | None:
        """Return the choice of a question with what is counted of its sets, ``most`` of them; None without a set.

        Raise ``Exhausted`` where it takes too much work to say whether there is one.
        """
        search = chooser.search
        known = self._known[search.requirement.outlet]
        wider = next((one for one in reversed(known) if is_narrower(search, one.answered.search)), None)
        choice = None if wider is None else choice_of_wider(chooser, wider.answered)
        choice = choice or chooser.choose()
        if choice is None:
            return None
        musts = tuple(one for one in search.model.set_limits if one.severity is Severity.MUST)
        query = SetQuery(ALL_LINES, musts)
        counted = search.count(query, most, chooser.listener)
        known_makers = wider.makers if wider is not None and wider.makers.is_all else None
        makers = makers_of(search, query, choice.judged.hanging_set, known_makers, chooser.listener)
        known.append(_Known(Answered.of(chooser, choice), makers))
        search.forget()  # what is known from now on needs no more than parts and loads
        return Found(choice, counted, makers)


def _at_any_thread(requirement: Requirement) -> Requirement:
    """Return a requirement without the thread of the outlet and without what only tells of it; its path counts."""
    usual, position = Outlet(), requirement.position
    ends = {name: getattr(usual, name) for name in ("thread", "size", "gender")}
    free = position.model_copy(update={"outlet": position.outlet.model_copy(update=ends)})
    return replace(requirement, position=free, outlet=outlet_port(free), lines=(), findings=(), limit_statuses=())
