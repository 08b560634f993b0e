"""Whether some set meets a group of demands: first by masks and ports alone, then by the search."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace

from spoutline.model.no_set import AskedAnswer, Demand, DemandKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Requirement, RequirementId
from spoutline.model.survey import Position, Site
from spoutline.planning.no_set.other_answers import Variant, variants_of
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.conflicts import ConflictFinder
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.line_order import CHANGEABLE, GIVEN
from spoutline.planning.sets.line_questions import LineQuestions
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.pool import whole_pool
from spoutline.planning.sets.port_reach import PortReach

_Refs = frozenset[PartRef]
_SETTLED = (RequirementId.JOINTS, RequirementId.CHAIN)  # how parts are made: before everything else


@dataclass(frozen=True)
class Searched:
    """The search of a position under some decisions, with its quick look at ports."""

    search: ChainSearch
    reach: PortReach
    finder: ConflictFinder

    @property
    def known(self) -> LineQuestions:
        """What is known of groups of requirement lines."""
        return self.finder.questions


@dataclass(frozen=True)
class Freed:
    """The cheapest set that a group of demands allows, and what found it."""

    variant: Variant
    searched: Searched
    lines: frozenset[RequirementId]
    hanging_set: HangingSet


@dataclass
class Questions:
    """Asks what demands of a position allow. Dropping demands never makes an answer worse.

    A dropped answer stands for any of the ``variants``, the one that was given among them, unless that is refused.
    """

    position: Position
    site: Site
    context: PlanningContext
    _known: dict[tuple[int, _Refs, _Refs], Searched] = field(default_factory=dict)

    def __post_init__(self) -> None:
        """Find the other answers that there could be."""
        self.variants = variants_of(self.position, self.site, self.context.tables)
        self.as_answered = next((one for one in self.variants if not one.changed), None)
        self.demands = tuple(self._demands())

    def _demands(self) -> Iterable[Demand]:
        """Yield all demands, the hardest to change first."""
        answers = {answer for variant in self.variants for answer in variant.changed}
        yield from (Demand(kind=DemandKind.ANSWER, answer=one) for one in AskedAnswer if one in answers)
        lines = dict.fromkeys((*_SETTLED, *GIVEN, *CHANGEABLE))
        yield from (Demand(kind=DemandKind.LINE, line=one) for one in lines if one is not RequirementId.DECISION)
        decisions = self.position.decisions
        yield from (Demand(kind=DemandKind.PINNED, part=one) for one in sorted(set(decisions.pinned)))
        yield from (Demand(kind=DemandKind.REFUSED, part=one) for one in sorted(set(decisions.refused)))

    def is_met(self, group: frozenset[Demand]) -> bool:
        """Say whether a set meets these demands. Raise ``Cancelled`` where the listener asks to stop."""
        lines = lines_of(group)
        return any(self.searched(variant, group).known.has_set(lines) for variant in self._allowed(group))

    def look_ahead(self) -> None:
        """Look for the one conflict among all demands where there is only one, which answers most questions."""
        if self.as_answered is None:
            return
        every = frozenset(self.demands)
        lines, searched = lines_of(every), self.searched(self.as_answered, every)
        if searched.reach.first_gap(lines) is None:
            searched.known.look_ahead(lines, tuple(line for line in CHANGEABLE if line in lines))

    def is_derived(self, group: frozenset[Demand]) -> bool:
        """Say whether a requirement can be derived from these answers, whatever parts there are."""
        return any(True for _ in self._allowed(group))

    def freed(self, given_up: Iterable[Demand]) -> Freed | None:
        """Return the cheapest set without some demands, of the nearest answers that have one; None for no set."""
        group = frozenset(self.demands) - frozenset(given_up)
        for variant in self._allowed(group):
            found = self._best(variant, group)
            if found is not None:
                return Freed(variant, self.searched(variant, group), lines_of(group), found)
        return None

    def _allowed(self, group: frozenset[Demand]) -> Iterable[Variant]:
        kept = {demand.answer for demand in group if demand.answer is not None}
        return (variant for variant in self.variants if not variant.changed & kept)

    def _best(self, variant: Variant, group: frozenset[Demand]) -> HangingSet | None:
        lines, known = lines_of(group), self.searched(variant, group).known
        return known.best(lines) if known.has_set(lines) else None

    def searched(self, variant: Variant, group: frozenset[Demand]) -> Searched:
        """Return the search for a group's decisions; that of all decisions also serves where none is in force."""
        pinned, refused = (
            frozenset(one.part for one in group if one.kind is kind and one.part is not None)
            for kind in (DemandKind.PINNED, DemandKind.REFUSED)
        )
        decisions = self.position.decisions
        if not pinned and not refused:
            pinned, refused = frozenset(decisions.pinned), frozenset(decisions.refused)
        key = (id(variant), pinned, refused)
        if key not in self._known:
            self._known[key] = self._made(variant, pinned, refused)
        return self._known[key]

    def _made(self, variant: Variant, pinned: _Refs, refused: _Refs) -> Searched:
        requirement = _deciding(variant.requirement, pinned, refused)
        tables = self.context.tables
        pool = whole_pool(requirement, tables, self.context.parts)
        search, reach = ChainSearch(requirement, pool, LoadModel(requirement, tables)), PortReach(requirement, pool)
        return Searched(search, reach, ConflictFinder(search, self.context.listener, reach))


def lines_of(group: Iterable[Demand]) -> frozenset[RequirementId]:
    """Return the requirement lines in force; decisions are one where any part is asked for or refused."""
    members = tuple(group)
    decided = any(demand.kind in (DemandKind.PINNED, DemandKind.REFUSED) for demand in members)
    lines = frozenset(demand.line for demand in members if demand.line is not None)
    return lines | {RequirementId.DECISION} if decided else lines


def _deciding(requirement: Requirement, pinned: _Refs, refused: _Refs) -> Requirement:
    """Return what is asked with some of the decisions alone."""
    position = requirement.position
    update = {"pinned": tuple(sorted(pinned)), "refused": tuple(sorted(refused))}
    decisions = position.decisions.model_copy(update=update)
    return replace(requirement, position=position.model_copy(update={"decisions": decisions}))
