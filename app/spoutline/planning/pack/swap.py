"""What else on the van would do in place of a part that is missing: every stocked part re-checked at the position."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part, PartKind
from spoutline.model.plan import HangingSet, JudgedSet, PositionPlan
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.stock import Stock, SwapOption
from spoutline.planning.desk import Desk
from spoutline.planning.plan_position import chooser_for
from spoutline.planning.pool import SLOT_KINDS, narrow_pool
from spoutline.planning.protocols import CandidateFilter, PartStore
from spoutline.rules.part_rules import judge_part
from spoutline.rules.requirement import requirement_for


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
    """What every stocked part is held against."""

    planned: HangingSet
    missing: str
    slot: Slot
    requirement: Requirement
    stock: Stock
    desk: Desk


def swap_options(plan: PositionPlan, missing: str, stock: Stock, desk: Desk) -> tuple[SwapOption, ...]:
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
    desk
        Rule tables, catalogue and listener.

    Raises
    ------
    InputFault
        The set does not hold ``missing``, or the stock names a part that the catalogue does not hold.
    Cancelled
        If the listener asks to stop.
    """
    case = _case_of(plan, missing, stock, desk)
    wanted = [line.number for line in stock.lines if line.quantity > 0 and line.number != missing]
    kind = SLOT_KINDS[case.slot]
    options = [_option(part, case) for part in desk.parts.parts(wanted) if part.kind is kind]
    return tuple(sorted(options, key=_rank))


def _rank(option: SwapOption) -> tuple[bool, int, int, str]:
    price = option.judged.hanging_set.price_minor if option.judged else 0
    return option.judged is None, len(option.put_in), price, option.part.number


def _case_of(plan: PositionPlan, missing: str, stock: Stock, desk: Desk) -> _Case:
    if plan.chosen is None or plan.requirement is None:
        wanted = "this position has no set, so no part of it can be swapped"
        raise InputFault((InputProblem("", "position", repr(plan.position.label), wanted),))
    planned = plan.chosen.hanging_set
    slot = next((link.slot for link in planned.links if link.part.number == missing), None)
    if slot is None:
        wanted = f"name a part of the set: {', '.join(planned.numbers)}"
        raise InputFault((InputProblem("", "part number", repr(missing), wanted),))
    _check_stock(stock, desk.parts)
    decisions = plan.position.decisions
    kept = decisions.model_copy(update={"pinned": tuple(number for number in decisions.pinned if number != missing)})
    position = plan.position.model_copy(update={"decisions": kept})
    requirement = requirement_for(position, plan.requirement.site, desk.tables)
    if not isinstance(requirement, Requirement):
        requirement = plan.requirement
    return _Case(planned, missing, slot, requirement, stock, desk)


def _check_stock(stock: Stock, parts: PartStore) -> None:
    numbers = [line.number for line in stock.lines]
    known = {part.number for part in parts.parts(numbers)}
    problems = []
    for number in numbers:
        if number not in known:
            near = parts.nearest_numbers(number)
            hint = f"; near it are {', '.join(near)}" if near else ""
            wanted = f"it must be a part number of the catalogue{hint}"
            problems.append(InputProblem("stock", "part number", repr(number), wanted))
    if problems:
        raise InputFault(tuple(problems))


def _option(part: Part, case: _Case) -> SwapOption:
    findings = judge_part(part, case.slot, case.requirement, case.desk.tables)
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
        taken_out=tuple(number for number in case.planned.numbers if number not in new),
        put_in=tuple(number for number in new if number not in case.planned.numbers),
    )


def _best_set(part: Part, case: _Case) -> JudgedSet | None:
    """Return the best set with ``part`` in the slot: planned parts first, then sets that draw on the stock as well."""
    kind = SLOT_KINDS[case.slot]
    planned = {link.part.number for link in case.planned.links} - {case.missing}
    fittings = (PartKind.ADAPTOR, PartKind.SPLITTER)
    stocked = case.desk.parts.parts([line.number for line in case.stock.lines if line.quantity > 0])
    others = {one.number for one in stocked if one.kind is not kind} - {case.missing}
    adaptors = {one.number for one in stocked if one.kind in fittings and one.kind is not kind} - {case.missing}
    for numbers in (planned, planned | adaptors, planned | others):
        at_hand = PartsAtHand(case.desk.parts, frozenset({*numbers, part.number}))
        pool = narrow_pool(case.requirement, case.desk.tables, at_hand)
        choice = chooser_for(case.requirement, pool, case.desk).choose()
        if choice is not None and part.number in choice.judged.hanging_set.numbers:
            return choice.judged
    return None
