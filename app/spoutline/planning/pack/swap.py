"""What else on the van would do in place of a part that is missing: every stocked part re-checked at the position."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part, PartKind
from spoutline.model.plan import JudgedSet, PositionPlan
from spoutline.model.stock import Stock, SwapOption
from spoutline.planning.protocols import CandidateFilter, PartStore
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.place import Place, place_of
from spoutline.planning.sets.plan_position import chooser_for
from spoutline.planning.sets.pool import SLOT_KINDS, JudgedPart, Pool, narrow_pool
from spoutline.rules.parts.part_rules import judge_part

_FITTINGS = frozenset((PartKind.ADAPTOR, PartKind.SPLITTER))


class PartsAtHand:
    """A part store that shows only the parts at hand of another."""

    def __init__(self, store: PartStore, numbers: frozenset[str]) -> None:
        self._store = store
        self._numbers = numbers

    def edition(self) -> str:
        """Return the edition text of the compiled catalogue."""
        return self._store.edition()

    def candidates(self, wanted: CandidateFilter) -> tuple[Part, ...]:
        """Return the parts at hand that pass the filter."""
        return tuple(part for part in self._store.candidates(wanted) if part.number in self._numbers)

    def count(self, kind: PartKind) -> int:
        """Return how many parts of this kind the catalogue holds."""
        return self._store.count(kind)

    def part(self, number: str) -> Part | None:
        """Return one part by number, at hand or not."""
        return self._store.part(number)

    def parts(self, numbers: Sequence[str]) -> tuple[Part, ...]:
        """Return the parts with these numbers, unknown numbers left out."""
        return self._store.parts(numbers)

    def currencies(self) -> tuple[str, ...]:
        """Return the currencies in which the catalogue has prices, sorted."""
        return self._store.currencies()

    def nearest_numbers(self, number: str) -> tuple[str, ...]:
        """Return up to three known numbers close to a mistyped one."""
        return self._store.nearest_numbers(number)


@dataclass(frozen=True, slots=True)
class _Case:
    """What every stocked part is held against; ``pool`` holds the planned parts and the stock, judged."""

    place: Place
    stock: Stock
    context: PlanningContext
    pool: Pool

    @property
    def missing(self) -> str:
        """Part number that is not at hand."""
        return self.place.part.number

    @property
    def planned(self) -> tuple[str, ...]:
        """Part numbers of the planned set."""
        return self.place.chosen.hanging_set.numbers


def swap_options(plan: PositionPlan, missing: str, stock: Stock, context: PlanningContext) -> tuple[SwapOption, ...]:
    """Return every stocked part of the missing part's kind, those that would do first.

    Each is put in place of the missing part; the best set around it is searched among the other planned parts and the
    stock, and judged by every rule and check. Sets that change fewest parts come first, then the cheaper.

    Parameters
    ----------
    plan
        A position with a chosen set.
    missing
        Part number of that set which is not at hand.
    stock
        The stock list, quantities included.
    context
        Rule tables, catalogue and listener.

    Raises
    ------
    InputFault
        The set does not hold ``missing``, or the stock names a part that the catalogue does not hold.
    Cancelled
        If the listener asks to stop.
    """
    case = _case_of(plan, missing, stock, context)
    wanted = [line.number for line in stock.lines if line.quantity > 0 and line.number != missing]
    kind = SLOT_KINDS[case.place.slot]
    options = [_option(part, case) for part in context.parts.parts(wanted) if part.kind is kind]
    return tuple(sorted(options, key=_rank))


def _rank(option: SwapOption) -> tuple[bool, int, int, str]:
    price = option.judged.hanging_set.price_minor if option.judged else 0
    return option.judged is None, len(option.put_in), price, option.part.number


def _case_of(plan: PositionPlan, missing: str, stock: Stock, context: PlanningContext) -> _Case:
    place = place_of(plan, missing, context)
    _check_stock(stock, context.parts)
    stocked = {line.number for line in stock.lines if line.quantity > 0}
    at_hand = PartsAtHand(context.parts, frozenset({*place.chosen.hanging_set.numbers, *stocked} - {missing}))
    return _Case(place, stock, context, narrow_pool(place.requirement, context.tables, at_hand))


def _check_stock(stock: Stock, parts: PartStore) -> None:
    numbers = [line.number for line in stock.lines]
    known = {part.number for part in parts.parts(numbers)}
    problems = []
    for number in numbers:
        if number not in known:
            near = parts.nearest_numbers(number)
            hint = f"; near it are {', '.join(near)}" if near else ""
            wanted = f"it must be a part number of the catalog{hint}"
            problems.append(InputProblem("stock", "part number", repr(number), wanted))
    if problems:
        raise InputFault(tuple(problems))


def _option(part: Part, case: _Case) -> SwapOption:
    place = case.place
    findings = judge_part(part, place.slot, place.requirement, case.context.tables)
    judged = _best_set(part, case)
    option = SwapOption(
        part=part,
        quantity=case.stock.quantity(part.number),
        judged=judged,
        taken_out=(case.missing,),
        put_in=(part.number,),
        findings=findings,
    )
    if judged is None:
        return option
    new = judged.hanging_set.numbers
    return replace(
        option,
        taken_out=tuple(number for number in case.planned if number not in new),
        put_in=tuple(number for number in new if number not in case.planned),
    )


def _best_set(part: Part, case: _Case) -> JudgedSet | None:
    """Return the best set with ``part`` in the place: planned parts first, then sets that draw on the stock as well."""
    kind, planned = SLOT_KINDS[case.place.slot], {*case.planned} - {case.missing}
    for kinds in (frozenset[PartKind](), _FITTINGS - {kind}, frozenset(PartKind) - {kind}):
        pool = case.pool.only(_from(planned | {part.number}, kinds))
        choice = chooser_for(case.place.requirement, pool, case.context).choose(case.place.holding(part))
        if choice is not None:
            return choice.judged
    return None


def _from(numbers: set[str], kinds: frozenset[PartKind]) -> Callable[[JudgedPart], bool]:
    return lambda candidate: candidate.part.number in numbers or candidate.part.kind in kinds
