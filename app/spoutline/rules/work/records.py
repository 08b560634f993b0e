"""What an installer reads and tries at a position, held against what was computed and what limits it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from spoutline.model.check import Bound, Check, CheckId, Outcome
from spoutline.model.part import NozzleOperation
from spoutline.model.plan import JudgedSet, PositionPlan
from spoutline.model.record import (
    READING_DIMENSIONS,
    CommissioningRecord,
    ItemResult,
    JudgedEntry,
    JudgedRecord,
    ReadingBand,
    ReadingLimit,
    ReadingVerdict,
    RecordEntry,
    RecordItem,
    RecordItemId,
)
from spoutline.model.requirement import Slot
from spoutline.model.survey import VapourStatus

_ROUNDING = 5e-4  # a limit is printed in four digits, and an entry equal to the print keeps it


def record_items(plan: PositionPlan) -> tuple[RecordItem, ...]:
    """Return what is asked of a position before it goes into service, in the order of the work.

    Expectations and limits are those of the plan's checks; nothing is computed again. Empty without a set. Source of
    the trials of the lever: Okla. 165:26-2-91(c), a dispenser runs only with the nozzle lifted and the switch operated;
    of the vapor space: state test lists (CARB TP-201.3, TP-201.1E); the rest common practice, no source.
    """
    if plan.chosen is None:
        return ()
    checks = {check.id: check for check in plan.chosen.checks}
    nozzle = plan.chosen.hanging_set.part_in(Slot.NOZZLE)
    data = nozzle.nozzle if nozzle is not None else None
    position = plan.position
    recovers = position.vapour_wanted is not VapourStatus.NONE
    is_removed = position.vapour_today is not VapourStatus.NONE and not recovers
    return (
        _trial(RecordItemId.BREAKAWAY, applies=_has_breakaway(plan.chosen)),
        _reading(RecordItemId.CLEARANCE, checks.get(CheckId.GROUND_CLEARANCE_AT_REST)),
        _reading(RecordItemId.SPOUT, checks.get(CheckId.SPOUT_DIAMETER)),
        _reading(RecordItemId.BOND, checks.get(CheckId.RESISTANCE_TOTAL)),
        _trial(RecordItemId.VAPOUR_CLOSING, applies=is_removed),
        _trial(RecordItemId.PRESSURE_DECAY, applies=is_removed or recovers),
        _trial(RecordItemId.VENT_VALVE, applies=is_removed or recovers),
        _trial(RecordItemId.LEAK, applies=True),
        _trial(RecordItemId.SHUT_OFF, applies=data is not None and data.operation is NozzleOperation.AUTOMATIC),
        _trial(RecordItemId.ATTITUDE, applies=data is not None and data.attitude_device),
        _trial(RecordItemId.LATCH, applies=data is not None and data.hold_open),
        _trial(RecordItemId.NO_PRESSURE, applies=data is not None and data.no_pressure_device),
        _trial(RecordItemId.LEVER_BEFORE, applies=True),
        _trial(RecordItemId.LEVER_PREPAID, applies=position.prepay),
        _trial(RecordItemId.LEVER_RETURNED, applies=True),
        _flow(checks),
        _concentration(plan),
    )


def judged_entry(item: RecordItem, entry: RecordEntry | None, band: ReadingBand | None) -> ReadingVerdict:
    """Return what is to be said of an entry at once.

    A failed trial, an open circuit or a reading outside a limit is ``OUTSIDE``; nothing entered, or a trial not done,
    is ``OPEN``; a reading inside its limits but further from the computed value than ``band`` allows is ``UNUSUAL``.
    """
    if entry is not None and entry.result is ItemResult.FAILED:
        return ReadingVerdict.OUTSIDE
    if not item.applies:
        return ReadingVerdict.WITHIN
    if item.dimension is None:
        passed = entry is not None and entry.result is ItemResult.PASSED
        return ReadingVerdict.WITHIN if passed else ReadingVerdict.OPEN
    return _judged_reading(entry, item, band)


def _judged_reading(entry: RecordEntry | None, item: RecordItem, band: ReadingBand | None) -> ReadingVerdict:
    if entry is not None and entry.over_range:
        return ReadingVerdict.OUTSIDE
    if entry is None or entry.reading is None:
        return ReadingVerdict.OPEN
    if _is_outside(entry.reading, item):
        return ReadingVerdict.OUTSIDE
    return ReadingVerdict.UNUSUAL if _is_far(entry.reading, item, band) else ReadingVerdict.WITHIN


def judged_record(
    record: CommissioningRecord, items: Iterable[RecordItem], bands: Mapping[RecordItemId, ReadingBand]
) -> JudgedRecord:
    """Return a record with every item judged, in the order of ``items``."""
    entries = (
        JudgedEntry(item=item, entry=entry, verdict=judged_entry(item, entry, bands.get(item.id)))
        for item in items
        for entry in (record.entry(item.id),)
    )
    return JudgedRecord(record=record, entries=tuple(entries))


def kept_range(item: RecordItem) -> tuple[float | None, float | None]:
    """Return between what a reading keeps the limits as they are printed, SI; None where there is no limit."""
    low = None if item.lower is None else item.lower.value * (1 - _ROUNDING)
    high = None if item.upper is None else item.upper.value * (1 + _ROUNDING)
    return low, high


def usual_range(item: RecordItem, band: ReadingBand | None) -> tuple[float | None, float | None]:
    """Return between what a reading is usual for what was computed, SI; None and None where nothing says it."""
    if band is None or item.expected is None or item.expected <= 0:
        return None, None
    return item.expected / band.far_ratio, item.expected * band.far_ratio


def _has_breakaway(judged: JudgedSet) -> bool:
    return any(link.part.breakaway is not None for link in judged.hanging_set.links)


def _trial(item: RecordItemId, *, applies: bool) -> RecordItem:
    return RecordItem(id=item, dimension=None, expected=None, lower=None, upper=None, applies=applies)


def _reading(item: RecordItemId, check: Check | None) -> RecordItem:
    """Return an item whose expectation and limits are those of a check; it falls away where the check says nothing."""
    dimension = READING_DIMENSIONS[item]
    if check is None or check.value is None:
        asked = check is not None and check.outcome is not Outcome.INFORMATION  # a reel leaves nothing to measure
        low, high = (check.lower, check.upper) if check is not None else (None, None)
        # what could not be computed is limited all the same
        return RecordItem(
            id=item, dimension=dimension, expected=None, lower=_limit(low), upper=_limit(high), applies=asked
        )
    return RecordItem(
        id=item,
        dimension=dimension,
        expected=check.value,
        lower=_limit(check.lower),
        upper=_limit(check.upper),
        applies=check.outcome is not Outcome.INFORMATION,
    )


def _flow(checks: Mapping[CheckId, Check]) -> RecordItem:
    """Return the flow: expected hot or cold, whichever is less; bound by what is wanted, the nozzle and the law."""
    solved = [check for name in (CheckId.FLOW_HOT, CheckId.FLOW_COLD) if (check := checks.get(name)) is not None]
    values = [check.value for check in solved if check.value is not None]
    bounding = (
        *solved,
        *(
            checks[name]
            for name in (CheckId.NOZZLE_MINIMUM_FLOW, CheckId.NOZZLE_MAXIMUM_FLOW, CheckId.GASOLINE_FLOW_LIMIT)
            if name in checks
        ),
    )
    lows = [check.lower for check in bounding if check.lower is not None]
    highs = [check.upper for check in bounding if check.upper is not None]
    return RecordItem(
        id=RecordItemId.FLOW,
        dimension=READING_DIMENSIONS[RecordItemId.FLOW],
        expected=min(values, default=None),
        lower=_limit(max(lows, key=lambda bound: bound.value, default=None)),
        upper=_limit(min(highs, key=lambda bound: bound.value, default=None)),
        applies=True,
    )


def _concentration(plan: PositionPlan) -> RecordItem:
    """Return the urea content of the DEF, percent by mass, that a refractometer reads; it falls away for a fuel."""
    low, high = (plan.requirement.urea_percent if plan.requirement is not None else None) or (None, None)
    return RecordItem(
        id=RecordItemId.CONCENTRATION,
        dimension=READING_DIMENSIONS[RecordItemId.CONCENTRATION],
        expected=None,
        lower=_limit(low),
        upper=_limit(high),
        applies=low is not None,
    )


def _limit(bound: Bound | None) -> ReadingLimit | None:
    return None if bound is None else ReadingLimit(value=bound.value, source=bound.source, status=bound.status)


def _is_outside(reading: float, item: RecordItem) -> bool:
    low, high = kept_range(item)
    return (low is not None and reading < low) or (high is not None and reading > high)


def _is_far(reading: float, item: RecordItem, band: ReadingBand | None) -> bool:
    low, high = usual_range(item, band)
    return (low is not None and reading < low) or (high is not None and reading > high)
