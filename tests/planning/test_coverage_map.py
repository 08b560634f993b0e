"""The coverage map of an edition, held against plain enumeration of every chain and against what a plan chooses."""

from __future__ import annotations

from dataclasses import replace

import pytest

from examples import seeds
from planning.enumeration import Weighing, chains, small_catalogue
from planning.stores import ListStore
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.coverage_kinds import ClimateBand, OutletKind
from spoutline.model.coverage_map import CellState, Combination, CoverageCell, CoverageScope, LiquidClass, stock_gaps
from spoutline.model.faults import Cancelled
from spoutline.model.limit import RuleTables
from spoutline.model.part import PartKind
from spoutline.model.requirement import Requirement, RequirementId, Slot
from spoutline.model.survey import Duty, VapourStatus
from spoutline.planning.keeping.coverage_map import CoverageWork, coverage_cells, plan_of, survey_of
from spoutline.planning.sets.choice import Chooser
from spoutline.planning.sets.conflicts import ConflictFinder
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import conflict_of
from spoutline.rules.derive.requirement import requirement_for

MOST = 10_000
CAR = Combination(LiquidClass.E10, Duty.CAR, VapourStatus.NONE, OutletKind.NPT_3_4, ClimateBand.MODERATE)


class StopsAtOnce:
    """A listener that asks to stop after some combinations."""

    def __init__(self, after: int) -> None:
        self.after, self.done = after, 0

    def on_progress(self, done: int, _total: int) -> None:
        self.done = done

    def should_stop(self) -> bool:
        return self.done >= self.after


def scope_of(*asked: Combination, most: int = MOST) -> CoverageScope:
    return CoverageScope(
        liquids=tuple(dict.fromkeys(one.liquid for one in asked)),
        duties=tuple(dict.fromkeys(one.duty for one in asked)),
        vapours=tuple(dict.fromkeys(one.vapour for one in asked)),
        outlets=tuple(dict.fromkeys(one.outlet for one in asked)),
        climates=tuple(dict.fromkeys(one.climate for one in asked)),
        most_counted=most,
    )


def work_on(store: ListStore | CatalogueStore, tables: RuleTables) -> CoverageWork:
    return CoverageWork(tables=tables, parts=store, currency="USD", known={})


def required(asked: Combination, tables: RuleTables) -> Requirement:
    survey = survey_of(asked, tables.jurisdiction.id, "USD")
    found = requirement_for(survey.positions[0], survey.site, tables)
    assert isinstance(found, Requirement)
    return found


def answer(asked: Combination, work: CoverageWork, most: int = MOST) -> CoverageCell:
    (cell,) = coverage_cells(scope_of(asked, most=most), work)
    return cell


@pytest.mark.parametrize("seed", seeds(4))
@pytest.mark.parametrize(
    "asked",
    [
        CAR,
        Combination(LiquidClass.B20, Duty.TRUCK, VapourStatus.NONE, OutletKind.NPT_1, ClimateBand.MILD),
        Combination(LiquidClass.E10, Duty.CAR, VapourStatus.BALANCE, OutletKind.BALANCE, ClimateBand.MODERATE),
    ],
    ids=["car", "truck", "balance"],
)
def test_sets_and_makers_are_those_of_every_chain(
    asked: Combination, seed: int, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    requirement = required(asked, us_tables)
    store = small_catalogue(catalogue, requirement, us_tables, seed)
    weighing = Weighing(requirement, us_tables)
    kept = [
        one
        for one in chains(requirement, store)
        if weighing.by_parts(one) is not None and weighing.by_checks(one) is not None
    ]
    cell = answer(asked, work_on(store, us_tables))
    assert cell.sets_count == len({one.refs for one in kept})
    assert cell.counted_all
    assert set(cell.makers) == {ref.maker for one in kept for ref in one.refs}
    assert (cell.state is CellState.FITS) is bool(kept)


@pytest.mark.parametrize("seed", seeds(3))
@pytest.mark.parametrize(
    ("liquid", "duty", "outlets"),
    [
        (LiquidClass.E10, Duty.CAR, (OutletKind.NPT_3_4, OutletKind.BALANCE, OutletKind.WITH_RETURN)),
        (LiquidClass.B20, Duty.TRUCK, (OutletKind.NPT_1, OutletKind.G_1)),
    ],
    ids=["car", "truck"],
)
def test_alike_questions_are_answered_as_each_by_itself(
    liquid: LiquidClass,
    duty: Duty,
    outlets: tuple[OutletKind, ...],
    seed: int,
    catalogue: CatalogueStore,
    us_tables: RuleTables,
) -> None:
    """Every chain of each question, whatever another climate or outlet told, and the plan of each by itself."""
    asked = [
        Combination(liquid, duty, VapourStatus.NONE, outlet, climate) for climate in ClimateBand for outlet in outlets
    ]
    store = small_catalogue(catalogue, required(asked[seed % len(asked)], us_tables), us_tables, seed + 1)
    work = work_on(store, us_tables)
    for cell in coverage_cells(scope_of(*asked), work):
        requirement = required(cell.combination, us_tables)
        weighing = Weighing(requirement, us_tables)
        kept = [
            one
            for one in chains(requirement, store)
            if weighing.by_parts(one) is not None and weighing.by_checks(one) is not None
        ]
        assert (cell.sets_count, set(cell.makers)) == (
            len({one.refs for one in kept}),
            {ref.maker for one in kept for ref in one.refs},
        )
        chosen = plan_of(cell.combination, work).chosen
        assert cell.parts == (chosen.hanging_set.refs if chosen else ())


def test_what_an_outlet_without_a_return_tells_is_not_looked_for_again(
    catalogue: CatalogueStore, us_tables: RuleTables, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A car without vapor recovery asks the same of an outlet with a return, which only splitters need."""
    chosen: list[Chooser] = []
    choose = Chooser.choose
    monkeypatch.setattr(Chooser, "choose", lambda self: (chosen.append(self), choose(self))[1])
    cells = list(
        coverage_cells(scope_of(CAR, replace(CAR, outlet=OutletKind.WITH_RETURN)), work_on(catalogue, us_tables))
    )
    assert [cell.state for cell in cells] == [CellState.FITS] * 2
    assert cells[0].parts == cells[1].parts
    assert len(chosen) == 1


def test_makers_beyond_the_counted_sets_are_found(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    store = small_catalogue(catalogue, required(CAR, us_tables), us_tables, 1)
    all_of_them, one_counted = (answer(CAR, work_on(store, us_tables), most) for most in (MOST, 1))
    assert all_of_them.sets_count > 1
    assert (one_counted.sets_count, one_counted.counted_all) == (1, False)
    assert one_counted.makers == all_of_them.makers


def test_price_and_parts_are_those_of_the_plan(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    work = work_on(small_catalogue(catalogue, required(CAR, us_tables), us_tables, 2), us_tables)
    plan, cell = plan_of(CAR, work), answer(CAR, work)
    assert plan.chosen is not None
    assert cell.parts == plan.chosen.hanging_set.refs
    assert cell.price_minor == plan.chosen.hanging_set.price_minor


def test_vapour_recovery_is_asked_of_gasoline_alone(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    """40 CFR 51.126 and the state rules speak of gasoline: recovery for diesel is no question to answer."""
    asked = Combination(LiquidClass.B5, Duty.CAR, VapourStatus.BALANCE, OutletKind.BALANCE, ClimateBand.MILD)
    cell = answer(asked, work_on(catalogue, us_tables))
    assert cell.state is CellState.NOT_ASKED
    assert cell.refusal is not None


def test_what_to_stock_is_the_kind_that_was_taken_out(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    full = small_catalogue(catalogue, required(CAR, us_tables), us_tables, 2)
    without = ListStore(part for part in full.all if part.kind is not PartKind.NOZZLE)
    cell = answer(CAR, work_on(without, us_tables))
    assert cell.state is CellState.NOTHING_FITS
    assert cell.missing == (Slot.NOZZLE,)
    (gap,) = stock_gaps((cell,))
    assert (gap.slot, gap.joins, gap.combinations, gap.alone) == (Slot.NOZZLE, False, 1, 1)


def test_an_outlet_that_nothing_joins_asks_for_an_adaptor(catalogue: CatalogueStore, us_tables: RuleTables) -> None:
    """ASME B1.20.1 and ISO 228-1 threads do not make up, so parts with NPT ends need an adaptor from a G outlet."""
    asked = Combination(LiquidClass.E10, Duty.CAR, VapourStatus.NONE, OutletKind.G_1, ClimateBand.MODERATE)
    full = small_catalogue(catalogue, required(CAR, us_tables), us_tables, 2)
    store = ListStore(part for part in full.all if part.kind is not PartKind.ADAPTOR)
    cell = answer(asked, work_on(store, us_tables))
    assert (cell.missing, cell.unjoined) == ((), Slot.WHIP_HOSE)
    assert cell.conflict is not None
    assert RequirementId.JOINTS in cell.conflict.requirements


@pytest.mark.parametrize("outlet", [OutletKind.NPT_3_4, OutletKind.G_1, OutletKind.VACUUM_ASSIST])
def test_conflict_by_ports_is_that_of_the_whole_search(
    outlet: OutletKind, catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    asked = Combination(LiquidClass.E10, Duty.CAR, VapourStatus.BALANCE, outlet, ClimateBand.MODERATE)
    store = small_catalogue(catalogue, required(CAR, us_tables), us_tables, 3)
    cell = answer(asked, work_on(store, us_tables))
    told = conflict_of(required(asked, us_tables), PlanningContext(us_tables, store))
    assert cell.conflict is not None
    assert told is not None
    assert cell.conflict.requirements == told.requirements


def test_answers_stay_where_the_work_was_stopped(
    catalogue: CatalogueStore, us_tables: RuleTables, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked = scope_of(*(Combination(CAR.liquid, CAR.duty, CAR.vapour, outlet, CAR.climate) for outlet in OutletKind))
    work = work_on(small_catalogue(catalogue, required(CAR, us_tables), us_tables, 2), us_tables)
    with pytest.raises(Cancelled):
        list(coverage_cells(asked, work, StopsAtOnce(after=3)))
    assert len(work.known) == 3
    again = dict(work.known)
    list(coverage_cells(asked, work))
    assert all(work.known[combination] is cell for combination, cell in again.items())
    monkeypatch.setattr(ConflictFinder, "conflict", None)  # every answer is known by now
    monkeypatch.setattr("spoutline.planning.keeping.alike_questions.narrow_pool", None)
    assert len(list(coverage_cells(asked, work))) == len(OutletKind)
