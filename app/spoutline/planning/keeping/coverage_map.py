"""What an edition has sets for: each combination asked as a plan asks it, its sets counted, its gaps explained."""

from __future__ import annotations

import itertools
from collections.abc import Iterator, MutableMapping
from dataclasses import replace
from functools import partial
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.coverage_kinds import ClimateBand, OutletKind
from spoutline.model.coverage_map import CellState, Combination, CoverageCell, CoverageScope, LiquidClass
from spoutline.model.faults import Cancelled
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily
from spoutline.model.plan import PositionPlan
from spoutline.model.requirement import Refusal
from spoutline.model.survey import Climate, Outlet, Position, Site, Survey, SurveyLiquid
from spoutline.planning.keeping.alike_questions import AlikeQuestions
from spoutline.planning.protocols import PartStore, Progress
from spoutline.planning.sets.conflicts import conflict_of_checks
from spoutline.planning.sets.context import PlanningContext, stop_listener
from spoutline.planning.sets.left_open import not_decided
from spoutline.planning.sets.plan_position import plan_position
from spoutline.rules.derive.requirement import requirement_for
from spoutline.search.answer import Decision
from spoutline.search.effort import Exhausted

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
    """Yield the answer to every combination of ``scope``, those that differ in climate and outlet alone together.

    Within one climate band they come in the order of the scope.

    Raises
    ------
    Cancelled
        If ``progress`` asks to stop; what was answered so far stays in ``work.known``.
    """
    context = PlanningContext(work.tables, work.parts, stop_listener(progress))
    asked, done = scope.combinations(), 0
    for _, alike_ones in itertools.groupby(sorted(asked, key=partial(_station, scope)), partial(_station, scope)):
        alike = AlikeQuestions(context)
        for combination in alike_ones:
            if progress is not None:
                progress.on_progress(done, len(asked))
                if progress.should_stop():
                    raise Cancelled
            known = work.known.get(combination)
            if known is None or (not known.counted_all and known.sets_count != scope.most_counted):
                known = work.known[combination] = _cell(combination, work, alike, scope.most_counted)
            yield _counted_to(known, scope.most_counted)
            done += 1
    if progress is not None:
        progress.on_progress(len(asked), len(asked))


def _station(scope: CoverageScope, asked: Combination) -> tuple[int, int, int]:
    """Return where a combination stands in the order of the scope, whatever its climate and outlet."""
    return scope.liquids.index(asked.liquid), scope.duties.index(asked.duty), scope.vapours.index(asked.vapour)


def plan_of(combination: Combination, work: CoverageWork, progress: Progress | None = None) -> PositionPlan:
    """Return the whole plan of a combination: the set with its checks, or why nothing fits and what would help."""
    survey = survey_of(combination, work.tables.jurisdiction.id, work.currency)
    context = PlanningContext(work.tables, work.parts, stop_listener(progress))
    return plan_position(survey.positions[0], survey.site, context, with_alternatives=False)


def _counted_to(cell: CoverageCell, most: int) -> CoverageCell:
    """Return an answer that was counted further as one that was counted to ``most``."""
    return replace(cell, sets_count=most, counted_all=False) if cell.sets_count > most else cell


def _cell(combination: Combination, work: CoverageWork, alike: AlikeQuestions, most: int) -> CoverageCell:
    survey = survey_of(combination, work.tables.jurisdiction.id, work.currency)
    asked = requirement_for(survey.positions[0], survey.site, work.tables)
    if isinstance(asked, Refusal):
        return CoverageCell(combination=combination, state=CellState.NOT_ASKED, currency=work.currency, refusal=asked)
    ground = alike.ground(asked)
    chooser, gap = alike.chooser(ground), ground.first_gap()
    try:
        found = None if gap is not None else alike.found(chooser, most + 1)
    except Exhausted:
        return CoverageCell(
            combination=combination,
            state=CellState.NOT_DECIDED,
            currency=work.currency,
            slots=ground.slots,
            refusal=not_decided(chooser),
        )
    if found is None:
        missing = tuple(one.slot for one in ground.slots if not one.remaining)
        conflict = ground.why_not() or conflict_of_checks(chooser.last_refused)
        return CoverageCell(
            combination=combination,
            state=CellState.NOTHING_FITS,
            currency=work.currency,
            slots=ground.slots,
            missing=missing,
            unjoined=None if missing else gap,
            conflict=conflict,
        )
    chosen = found.choice.judged.hanging_set
    return CoverageCell(
        combination=combination,
        state=CellState.FITS,
        currency=work.currency,
        sets_count=min(found.counted.number, most),
        counted_all=found.counted.number <= most and found.counted.decision is Decision.DECIDED,
        makers=found.makers.names,
        is_open=found.counted.decision is Decision.UNDECIDED or not found.makers.is_all,
        price_minor=chosen.price_minor,
        parts=chosen.refs,
        slots=ground.slots,
    )
