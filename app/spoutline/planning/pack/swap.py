"""What else on the van would do in place of a part that is missing: every stocked part re-checked at the position."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from spoutline.frozen import frozen
from spoutline.model.catalogue_edition import CatalogueEdition
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import MOST_IN_ARTICLE, PLACE_OF_PART, Part, PartKind
from spoutline.model.part_columns import PartColumns
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import JudgedSet, PositionPlan
from spoutline.model.requirement import Refusal, RequirementId
from spoutline.model.stock import Stock, SwapOption
from spoutline.planning.part_names import wrong_refs
from spoutline.planning.protocols import CandidateFilter, PartStore
from spoutline.planning.sets.assembled import Keep
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.conflicts import ConflictFinder
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.left_open import not_decided, reasons_open
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.place import Place, place_of
from spoutline.planning.sets.plan_position import chooser_for
from spoutline.planning.sets.pool import SLOT_KINDS, Pool, narrow_pool
from spoutline.rules.parts.part_rules import judge_part
from spoutline.search.effort import Exhausted

_FITTINGS = frozenset((PartKind.ADAPTOR, PartKind.SPLITTER))


class PartsAtHand:
    """A part store that shows only the parts at hand of another."""

    def __init__(self, store: PartStore, at_hand: frozenset[PartRef]) -> None:
        self._store = store
        self._at_hand = at_hand
        self._columns: dict[PartKind, PartColumns] = {}

    def edition(self) -> CatalogueEdition:
        """Return the edition of the catalogue that the parts are of."""
        return self._store.edition()

    def candidates(self, wanted: CandidateFilter) -> tuple[Part, ...]:
        """Return the parts at hand that pass the filter."""
        return tuple(part for part in self._store.candidates(wanted) if part.ref in self._at_hand)

    def columns(self, kind: PartKind) -> PartColumns:
        """Return the figures of the parts at hand of a kind."""
        if kind not in self._columns:
            self._columns[kind] = self._store.columns(kind).of_parts(self._at_hand)
        return self._columns[kind]

    def count(self, kind: PartKind) -> int:
        """Return how many parts of this kind the catalogue holds."""
        return self._store.count(kind)

    def part(self, ref: PartRef) -> Part | None:
        """Return the part that ``ref`` names, at hand or not."""
        return self._store.part(ref)

    def parts(self, refs: Sequence[PartRef]) -> tuple[Part, ...]:
        """Return every part that one of ``refs`` names, at hand or not."""
        return self._store.parts(refs)

    def under_other_numbers(self, refs: Sequence[PartRef]) -> Mapping[PartRef, Part]:
        """Return the parts that have other numbers, at hand or not."""
        return self._store.under_other_numbers(refs)

    def currencies(self) -> tuple[str, ...]:
        """Return the currencies in which the catalogue has prices, sorted."""
        return self._store.currencies()

    def nearest_numbers(self, number: str) -> tuple[str, ...]:
        """Return up to three known numbers close to a mistyped one."""
        return self._store.nearest_numbers(number)


@frozen
class _Case:
    """What every stocked part is held against; ``pool`` holds the planned parts and the stock, judged."""

    place: Place
    stock: Stock
    context: PlanningContext
    pool: Pool

    @property
    def missing(self) -> PartRef:
        """The part that is not at hand."""
        return self.place.part.ref

    @property
    def planned(self) -> tuple[PartRef, ...]:
        """The parts of the planned set."""
        return self.place.chosen.hanging_set.refs


def swap_options(
    plan: PositionPlan, missing: PartRef, stock: Stock, context: PlanningContext
) -> tuple[SwapOption, ...]:
    """Return every stocked part of the missing part's kind, those that would do first.

    Each is put in place of the missing part; the best set around it is searched among the other planned parts and the
    stock, and judged by every rule and check. Sets that change fewest parts come first, then the cheaper.

    Parameters
    ----------
    plan
        A position with a chosen set.
    missing
        The part of that set which is not at hand.
    stock
        The stock list, quantities included.
    context
        Rule tables, catalogue and listener.

    Raises
    ------
    InputFault
        The set does not hold ``missing``, or the stock names a part that the catalogue does not hold, or that
        several makers have.
    Cancelled
        If the listener asks to stop.
    """
    case = _case_of(plan, missing, stock, context)
    kind = SLOT_KINDS[case.place.slot]
    at_hand = [part for part in _at_hand(stock, context.parts) if part.ref != case.missing]
    options: list[SwapOption] = []
    for part in at_hand:
        if part.kind is kind:
            is_spared = any(option.is_undecided for option in options)  # the others mostly take as much work
            options.append(_option(part, case, is_spared=is_spared))
    return tuple(sorted(options, key=_rank))


def _rank(option: SwapOption) -> tuple[bool, bool, int, int, PartRef]:
    price = option.judged.hanging_set.price_minor if option.judged else 0
    return option.judged is None, not option.is_undecided, len(option.put_in), price, option.part.ref


def _case_of(plan: PositionPlan, missing: PartRef, stock: Stock, context: PlanningContext) -> _Case:
    place = place_of(plan, missing, context)
    _check_stock(stock, context.parts)
    stocked = _at_hand(stock, context.parts)
    wanted = {*place.chosen.hanging_set.refs, *(part.ref for part in stocked)} - {place.part.ref}
    at_hand = PartsAtHand(context.parts, frozenset(wanted))
    return _Case(place, stock, context, narrow_pool(place.requirement, context.tables, at_hand))


def _at_hand(stock: Stock, parts: PartStore) -> tuple[Part, ...]:
    """Return the parts of which pieces are at hand, those of a stocked article with it."""
    stocked = parts.parts([line.part for line in stock.lines if line.quantity > 0])
    inside = [
        PartRef(f"{part.number}{PLACE_OF_PART}{place}", part.maker)
        for part in stocked
        if part.article == part.ref
        for place in range(2, MOST_IN_ARTICLE + 1)
    ]
    coming = [part for part in parts.parts(inside) if part.comes_with is not None]
    return tuple({part.ref: part for part in (*stocked, *coming)}.values())


def _check_stock(stock: Stock, parts: PartStore) -> None:
    refs = [line.part for line in stock.lines]
    problems = [
        InputProblem("stock", "part number", repr(str(ref)), right) for ref, right in wrong_refs(refs, parts).items()
    ]
    if problems:
        raise InputFault(tuple(problems))


def _option(part: Part, case: _Case, *, is_spared: bool) -> SwapOption:
    place = case.place
    findings = judge_part(part, place.slot, place.requirement, case.context.tables)
    option = SwapOption(
        part=part,
        quantity=case.stock.quantity(part.article or part.ref),
        judged=None,
        taken_out=(case.missing,),
        put_in=(part.ref,),
        findings=findings,
    )
    if option.misfit.finding is not None:
        return option
    found = _best_set(part, case, is_spared=is_spared)
    if isinstance(found, Refusal):
        return replace(option, left_open=found.findings, is_undecided=True)
    if found is None:
        return _with_reasons(option, case)
    new = found.hanging_set.refs
    return replace(
        option,
        judged=found,
        taken_out=tuple(ref for ref in case.planned if ref not in new),
        put_in=tuple(ref for ref in new if ref not in case.planned),
    )


def _with_reasons(option: SwapOption, case: _Case) -> SwapOption:
    """Return an option with the lines that cannot hold together with its part, which breaks no must by itself."""
    requirement, tables = case.place.requirement, case.context.tables
    search = ChainSearch(requirement, case.pool, LoadModel(requirement, tables))
    try:
        found = ConflictFinder(search, case.context.listener).lines(case.place.holding(option.part))
    except Exhausted:
        return replace(option, left_open=reasons_open(requirement))
    return replace(option, lines=found or (RequirementId.JOINTS,))  # what is at hand does not join up with it


def _best_set(part: Part, case: _Case, *, is_spared: bool) -> JudgedSet | Refusal | None:
    """Return the best set with ``part`` in the place: planned parts first, then sets that draw on the stock as well.

    A refusal says that it takes too much work to say.
    """
    kind, planned = SLOT_KINDS[case.place.slot], {*case.planned} - {case.missing}
    for kinds in (frozenset[PartKind](), _FITTINGS - {kind}, frozenset(PartKind) - {kind}):
        pool = case.pool.only(_from(planned | {part.ref}, kinds))
        chooser = chooser_for(case.place.requirement, pool, case.context)
        if is_spared:
            chooser.spare_work()
        try:
            choice = chooser.choose(case.place.holding(part))
        except Exhausted:
            return not_decided(chooser)
        if choice is not None:
            return choice.judged
    return None


def _from(refs: set[PartRef], kinds: frozenset[PartKind]) -> Keep:
    return lambda parts: parts.inside if parts.columns.kind in kinds else parts.columns.is_one_of(refs)
