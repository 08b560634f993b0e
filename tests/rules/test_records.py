"""Readings held against the plan: limits flagged, far values pointed out, nothing passed by silence."""

from __future__ import annotations

from dataclasses import replace

import pytest

from documents import plan_factory as factory
from spoutline import assets
from spoutline.model.check import Bound, Check, CheckId, Outcome
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitStatus
from spoutline.model.part import NozzleOperation
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, PositionPlan
from spoutline.model.quantity import Dimension
from spoutline.model.record import (
    ChangeReason,
    CommissioningRecord,
    ItemResult,
    PartChange,
    ReadingVerdict,
    RecordEntry,
    RecordItem,
    RecordItemId,
)
from spoutline.rules.work.records import judged_entry, judged_record, record_items
from spoutline.ruletables.inspection_items import load_reading_bands

BANDS = load_reading_bands(assets.resources_folder())


def check(check_id: CheckId, dimension: Dimension, value: float | None, low: float | None, high: float | None) -> Check:
    def bound(limit: float | None) -> Bound | None:
        return None if limit is None else Bound(value=limit, source="typed in", status=LimitStatus.MEMORY)

    return Check(
        id=check_id,
        severity=Severity.MUST,
        outcome=Outcome.PASSES,
        value=value,
        dimension=dimension,
        lower=bound(low),
        upper=bound(high),
        margin=None,
    )


def plan() -> PositionPlan:
    checks = (
        check(CheckId.SPOUT_DIAMETER, Dimension.DIAMETER, 0.0208, 0.0205, 0.02134),
        check(CheckId.GROUND_CLEARANCE_AT_REST, Dimension.LENGTH, 0.25, 0.1, None),
        # NFPA 77 guidance: 1 megohm to ground bleeds static; recalled
        check(CheckId.RESISTANCE_TOTAL, Dimension.RESISTANCE, 1200.0, None, 1e6),
        check(CheckId.FLOW_HOT, Dimension.FLOW, 36 / 60000, 30 / 60000, None),
        check(CheckId.FLOW_COLD, Dimension.FLOW, 35 / 60000, 30 / 60000, None),
        check(CheckId.NOZZLE_MINIMUM_FLOW, Dimension.FLOW, 35 / 60000, 11 / 60000, None),
        check(CheckId.NOZZLE_MAXIMUM_FLOW, Dimension.FLOW, 36 / 60000, None, 50 / 60000),
        # 40 CFR 1090.1550: 10 gallons a minute into road vehicles, 37.85 L/min
        check(CheckId.GASOLINE_FLOW_LIMIT, Dimension.FLOW, 36 / 60000, None, 37.854 / 60000),
    )
    return factory.fitting_plan(chosen=replace(factory.judged(), checks=checks))


ITEMS = {item.id: item for item in record_items(plan())}


def read(item: RecordItemId, value: float) -> ReadingVerdict:
    return judged_entry(ITEMS[item], RecordEntry(item=item, reading=value), BANDS.get(item))


def test_the_expectations_and_limits_are_those_of_the_plan() -> None:
    bond, spout, flow = (ITEMS[item] for item in (RecordItemId.BOND, RecordItemId.SPOUT, RecordItemId.FLOW))
    assert bond.expected == 1200.0
    assert bond.upper is not None
    assert bond.upper.value == 1e6
    assert spout.lower is not None
    assert spout.upper is not None
    assert (spout.lower.value, spout.upper.value) == (0.0205, 0.02134)
    # the flow must reach what is wanted and stay below the least of nozzle and law; the colder, lesser flow is expected
    assert flow.expected == pytest.approx(35 / 60000)
    assert flow.lower is not None
    assert flow.upper is not None
    assert (flow.lower.value, flow.upper.value) == (30 / 60000, 37.854 / 60000)


def test_only_what_the_set_has_is_tried() -> None:
    assert ITEMS[RecordItemId.BREAKAWAY].applies
    assert ITEMS[RecordItemId.SHUT_OFF].applies
    assert not ITEMS[RecordItemId.NO_PRESSURE].applies  # this nozzle has no such device
    nozzle = factory.nozzle()
    assert nozzle.nozzle is not None
    manual = replace(nozzle, nozzle=replace(nozzle.nozzle, operation=NozzleOperation.MANUAL))
    chain: HangingSet = factory.chain(last=manual)
    by_hand = {item.id: item for item in record_items(factory.fitting_plan(chosen=factory.judged(chain)))}
    assert not by_hand[RecordItemId.SHUT_OFF].applies
    assert record_items(factory.conflicting_plan()) == ()


def test_a_clearance_is_not_asked_for_where_a_reel_leaves_nothing_hanging() -> None:
    usual = plan()
    assert usual.chosen is not None
    on_reel = replace(
        check(CheckId.GROUND_CLEARANCE_AT_REST, Dimension.LENGTH, None, None, None), outcome=Outcome.INFORMATION
    )
    checks = (*(one for one in usual.chosen.checks if one.id is not on_reel.id), on_reel)
    items = record_items(replace(usual, chosen=replace(usual.chosen, checks=checks)))
    assert not next(one for one in items if one.id is RecordItemId.CLEARANCE).applies


@pytest.mark.parametrize(
    ("item", "value", "verdict"),
    [
        (RecordItemId.BOND, 1500.0, ReadingVerdict.WITHIN),
        (RecordItemId.BOND, 1e6, ReadingVerdict.UNUSUAL),  # at the limit, yet hundreds of times the computed value
        (RecordItemId.BOND, 1.001e6, ReadingVerdict.OUTSIDE),
        (RecordItemId.BOND, 200_000.0, ReadingVerdict.UNUSUAL),
        (RecordItemId.BOND, 0.0, ReadingVerdict.UNUSUAL),  # a short in the meter leads, most likely
        (RecordItemId.SPOUT, 0.0208, ReadingVerdict.WITHIN),
        (RecordItemId.SPOUT, 0.0204, ReadingVerdict.OUTSIDE),
        (RecordItemId.SPOUT, 0.0214, ReadingVerdict.OUTSIDE),
        (RecordItemId.SPOUT, 0.0213, ReadingVerdict.UNUSUAL),  # inside the window, half a millimetre from the plan
        (RecordItemId.CLEARANCE, 0.09, ReadingVerdict.OUTSIDE),
        (RecordItemId.CLEARANCE, 0.3, ReadingVerdict.WITHIN),
        (RecordItemId.FLOW, 29 / 60000, ReadingVerdict.OUTSIDE),
        (RecordItemId.FLOW, 38 / 60000, ReadingVerdict.OUTSIDE),
        (RecordItemId.FLOW, 36 / 60000, ReadingVerdict.WITHIN),
    ],
)
def test_a_reading_is_flagged_at_once(item: RecordItemId, value: float, verdict: ReadingVerdict) -> None:
    assert read(item, value) is verdict


@pytest.mark.parametrize(
    ("result", "verdict"),
    [
        (ItemResult.PASSED, ReadingVerdict.WITHIN),
        (ItemResult.FAILED, ReadingVerdict.OUTSIDE),
        (ItemResult.NOT_DONE, ReadingVerdict.OPEN),
        (ItemResult.NOT_APPLICABLE, ReadingVerdict.OPEN),  # the plan says that it applies
        (None, ReadingVerdict.OPEN),
    ],
)
def test_a_trial_passes_only_by_being_passed(result: ItemResult | None, verdict: ReadingVerdict) -> None:
    item = ITEMS[RecordItemId.LEAK]
    assert judged_entry(item, RecordEntry(item=item.id, result=result), None) is verdict


def test_nothing_entered_is_open_and_a_failed_trial_counts_even_where_none_was_asked() -> None:
    assert judged_entry(ITEMS[RecordItemId.BOND], None, None) is ReadingVerdict.OPEN
    unasked: RecordItem = ITEMS[RecordItemId.NO_PRESSURE]
    assert judged_entry(unasked, None, None) is ReadingVerdict.WITHIN
    failed = RecordEntry(item=unasked.id, result=ItemResult.FAILED)
    assert judged_entry(unasked, failed, None) is ReadingVerdict.OUTSIDE


def record(*entries: RecordEntry, **fields: object) -> CommissioningRecord:
    return CommissioningRecord(
        site="Bramblefork Fuels", position="1A", plan_revision="0123456789abcdef", entries=entries, **fields
    )  # type: ignore[arg-type]


def test_a_record_is_clear_only_when_every_item_is() -> None:
    passed = [RecordEntry(item=item.id, result=ItemResult.PASSED) for item in ITEMS.values() if item.dimension is None]
    values = {
        RecordItemId.BOND: 1300.0,
        RecordItemId.SPOUT: 0.0208,
        RecordItemId.CLEARANCE: 0.25,
        RecordItemId.FLOW: 35 / 60000,
    }
    readings = [RecordEntry(item=item, reading=value) for item, value in values.items()]
    assert judged_record(record(*passed, *readings), ITEMS.values(), BANDS).is_clear
    assert not judged_record(record(*passed, *readings[:-1]), ITEMS.values(), BANDS).is_clear


def test_as_built_follows_the_changes_in_order() -> None:
    changes = (
        PartChange(planned="B", fitted=("B2", "A1"), reason=ChangeReason.NOT_ON_VAN),
        PartChange(planned="C", fitted=(), reason=ChangeReason.WISH_OF_CUSTOMER),
    )
    assert record(parts=("A", "B", "C", "D"), changes=changes).as_built == tuple(map(PartRef, ("A", "B2", "A1", "D")))


def test_every_band_has_a_source_and_a_ratio_above_one() -> None:
    assert set(BANDS) == {RecordItemId.BOND, RecordItemId.FLOW, RecordItemId.CLEARANCE, RecordItemId.SPOUT}
    assert all(band.far_ratio > 1 and band.source and band.status for band in BANDS.values())
