"""What an edition has sets for: each combination asked as a plan asks it, its sets counted, its gaps explained."""

from __future__ import annotations

from collections.abc import Iterator, MutableMapping
from dataclasses import replace
from typing import Final

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.coverage_kinds import ClimateBand, OutletKind
from spoutline.model.coverage_map import CellState, Combination, CoverageCell, CoverageScope, LiquidClass, SlotStock
from spoutline.model.faults import Cancelled
from spoutline.model.finding import Severity
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part_columns import Mask
from spoutline.model.plan import Conflict, HangingSet, PositionPlan
from spoutline.model.requirement import Refusal, Requirement, Slot
from spoutline.model.survey import Climate, Outlet, Position, Site, Survey, SurveyLiquid
from spoutline.planning.protocols import PartStore, Progress
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.choice import ALL_LINES
from spoutline.planning.sets.conflicts import ConflictFinder, conflict_of_checks
from spoutline.planning.sets.context import PlanningContext, stop_listener
from spoutline.planning.sets.left_open import not_decided
from spoutline.planning.sets.loads import LoadModel
from spoutline.planning.sets.plan_position import chooser_for, plan_position
from spoutline.planning.sets.pool import SLOT_KINDS, Pool, SlotParts, narrow_pool, whole_pool
from spoutline.planning.sets.port_reach import PortReach
from spoutline.planning.sets.set_query import SetQuery
from spoutline.rules.derive.requirement import requirement_for
from spoutline.search.answer import Decision
from spoutline.search.effort import Exhausted
from spoutline.search.listener import Listener

# the greatest blend of each listing class; the classes: UL 2586, 2586A and 2586B, scopes
_LIQUIDS: Final[dict[LiquidClass, tuple[LiquidFamily, float]]] = {
    LiquidClass.E10: (LiquidFamily.GASOLINE, 10),
    LiquidClass.E25: (LiquidFamily.GASOLINE, 25),
    LiquidClass.E85: (LiquidFamily.GASOLINE, 85),
    LiquidClass.B5: (LiquidFamily.DIESEL, 5),
    LiquidClass.B20: (LiquidFamily.DIESEL, 20),
    LiquidClass.B100: (LiquidFamily.DIESEL, 100),
    LiquidClass.KEROSENE: (LiquidFamily.KEROSENE, 0),
    LiquidClass.FUEL_OIL: (LiquidFamily.FUEL_OIL, 0),
    LiquidClass.DEF: (LiquidFamily.DEF, 0),
}
# usual outlets; common practice, no source
_OUTLETS: Final[dict[OutletKind, Outlet]] = {
    OutletKind.NPT_3_4: Outlet.model_validate({"thread": "NPT", "size": "3/4"}),
    OutletKind.NPT_1: Outlet.model_validate({"thread": "NPT", "size": "1"}),
    OutletKind.G_3_4: Outlet.model_validate({"thread": "G", "size": "3/4"}),
    OutletKind.G_1: Outlet.model_validate({"thread": "G", "size": "1"}),
    OutletKind.BALANCE: Outlet.model_validate({"thread": "UN", "size": "1-7/8-12", "path": "balance"}),
    OutletKind.VACUUM_ASSIST: Outlet.model_validate({"thread": "M", "size": "34x1.5", "path": "vacuum_assist"}),
    OutletKind.WITH_RETURN: Outlet(vapour_return_available=True),
}
_CLIMATES: Final[dict[ClimateBand, Climate]] = {
    ClimateBand.MILD: Climate(low_c=-10, high_c=40),  # common practice, no source
    ClimateBand.MODERATE: Climate(low_c=-20, high_c=40),  # EN 13012:2021, scope
    ClimateBand.WIDE: Climate(low_c=-29, high_c=52),  # UL 2586A, 1.1
}
_LABEL: Final = "1"

Known = MutableMapping[Combination, CoverageCell]


@frozen(kw_only=True)
class CoverageWork:
    """What the map of an edition is made with; ``known`` keeps the answers, so that each is worked out once."""

    tables: RuleTables
    parts: PartStore
    currency: str
    known: Known


def climate_of(band: ClimateBand) -> Climate:
    """Return the temperatures of a band, degrees Celsius."""
    return _CLIMATES[band]


def outlet_of(kind: OutletKind) -> Outlet:
    """Return the outlet of a kind."""
    return _OUTLETS[kind]


def survey_of(combination: Combination, jurisdiction_id: str, currency: str) -> Survey:
    """Return the question of a combination as a survey of one position; all else as where nobody answered.

    DEF is asked outside the flammable zone.
    """
    family, blend = _LIQUIDS[combination.liquid]
    position = Position(
        label=_LABEL,
        liquid=SurveyLiquid(family=family, blend_percent=blend),
        duty=combination.duty,
        vapour_today=combination.vapour,
        vapour_wanted=combination.vapour,
        outlet=_OUTLETS[combination.outlet],
        in_flammable_zone=False if family is LiquidFamily.DEF else None,
    )
    site = Site(
        name="coverage", jurisdiction=jurisdiction_id, currency=currency, climate=_CLIMATES[combination.climate]
    )
    return Survey(site=site, positions=(position,))


def coverage_cells(
    scope: CoverageScope, work: CoverageWork, progress: Progress | None = None
) -> Iterator[CoverageCell]:
    """Yield the answer to every combination of ``scope``, in its order.

    Raises
    ------
    Cancelled
        If ``progress`` asks to stop; what was answered so far stays in ``work.known``.
    """
    context = PlanningContext(work.tables, work.parts, stop_listener(progress))
    asked = scope.combinations()
    for done, combination in enumerate(asked):
        if progress is not None:
            progress.on_progress(done, len(asked))
            if progress.should_stop():
                raise Cancelled
        known = work.known.get(combination)
        if known is None or (not known.counted_all and known.sets_count != scope.most_counted):
            known = work.known[combination] = _cell(combination, work, context, scope.most_counted)
        yield _counted_to(known, scope.most_counted)
    if progress is not None:
        progress.on_progress(len(asked), len(asked))


def plan_of(combination: Combination, work: CoverageWork, progress: Progress | None = None) -> PositionPlan:
    """Return the whole plan of a combination: the set with its checks, or why nothing fits and what would help."""
    survey = survey_of(combination, work.tables.jurisdiction.id, work.currency)
    context = PlanningContext(work.tables, work.parts, stop_listener(progress))
    return plan_position(survey.positions[0], survey.site, context, with_alternatives=False)


def _counted_to(cell: CoverageCell, most: int) -> CoverageCell:
    """Return an answer that was counted further as one that was counted to ``most``."""
    return replace(cell, sets_count=most, counted_all=False) if cell.sets_count > most else cell


def _cell(combination: Combination, work: CoverageWork, context: PlanningContext, most: int) -> CoverageCell:
    survey = survey_of(combination, work.tables.jurisdiction.id, work.currency)
    asked = requirement_for(survey.positions[0], survey.site, work.tables)
    if isinstance(asked, Refusal):
        return CoverageCell(combination=combination, state=CellState.NOT_ASKED, currency=work.currency, refusal=asked)
    pool = narrow_pool(asked, work.tables, work.parts)
    chooser = chooser_for(asked, pool, context)
    slots = _slots(asked, pool, work.parts)
    gap = PortReach(asked, pool).first_gap(ALL_LINES)
    try:
        choice = None if gap is not None else chooser.choose()
    except Exhausted:
        return CoverageCell(
            combination=combination,
            state=CellState.NOT_DECIDED,
            currency=work.currency,
            slots=slots,
            refusal=not_decided(chooser),
        )
    if choice is None:
        missing = tuple(one.slot for one in slots if not one.remaining)
        conflict = _why(asked, context) or conflict_of_checks(chooser.last_refused)
        return CoverageCell(
            combination=combination,
            state=CellState.NOTHING_FITS,
            currency=work.currency,
            slots=slots,
            missing=missing,
            unjoined=None if missing else gap,
            conflict=conflict,
        )
    query = SetQuery(ALL_LINES, tuple(one for one in chooser.search.model.set_limits if one.severity is Severity.MUST))
    counted = chooser.search.count(query, most + 1, chooser.listener)
    chosen = choice.judged.hanging_set
    makers, knows_makers = _makers(chooser.search, query, chosen, chooser.listener)
    return CoverageCell(
        combination=combination,
        state=CellState.FITS,
        currency=work.currency,
        sets_count=min(counted.number, most),
        counted_all=counted.number <= most and counted.decision is Decision.DECIDED,
        makers=makers,
        is_open=counted.decision is Decision.UNDECIDED or not knows_makers,
        price_minor=chosen.price_minor,
        parts=chosen.refs,
        slots=slots,
    )


def _why(asked: Requirement, context: PlanningContext) -> Conflict | None:
    """Return the conflict without what would free a set, which costs most and is told where somebody asks.

    None also where it takes too much work to say what is in the way.
    """
    pool = whole_pool(asked, context.tables, context.parts)
    by_ports = PortReach(asked, pool).conflict()
    if by_ports is not None:
        return by_ports
    search = ChainSearch(asked, pool, LoadModel(asked, context.tables))
    try:
        return ConflictFinder(search, context.listener).conflict(with_relaxations=False)
    except Exhausted:
        return None


def _slots(asked: Requirement, pool: Pool, parts: PartStore) -> tuple[SlotStock, ...]:
    found = []
    for slot in asked.chain:
        makers = {maker for one in pool.portions(slot) for maker in one.columns.makers_of(one.free)}
        stock = SlotStock(
            slot=slot,
            in_catalogue=parts.count(SLOT_KINDS[slot]),
            remaining=pool.remaining(slot),
            makers=tuple(sorted(makers)),
        )
        found.append(stock)
    return tuple(found)


def _makers(
    search: ChainSearch, query: SetQuery, chosen: HangingSet, listener: Listener | None
) -> tuple[tuple[str, ...], bool]:
    """Return every maker with a part in at least one set, and whether these are all that there are.

    Any set with a part of another maker tells of one more.
    """
    found = {ref.maker for ref in chosen.refs}

    def is_of_others(parts: SlotParts) -> Mask:
        known = [parts.columns.by_maker(maker) for maker in sorted(found)]
        return np.asarray(parts.free & ~np.logical_or.reduce(known))

    for slot in (*search.requirement.chain, Slot.ADAPTOR, Slot.SPLITTER):
        try:
            while (path := search.any_path_with(query, slot, is_of_others, listener)) is not None:
                found |= {parts.columns.maker_at(row) for parts, row in search.places_of(path)}
        except Exhausted:
            return tuple(sorted(found)), False
    return tuple(sorted(found)), True
