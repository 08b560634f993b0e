"""Certificates of tests, made of what the book holds: the last measurement of each position, or why there is none."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.certificate import Certificate, CertifiedTest, Measurement
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.inspection import InspectionItemId
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.record import (
    MEASURED_ITEMS,
    CommissioningRecord,
    InspectionEntry,
    ItemResult,
    JudgedEntry,
    ReadingBand,
    RecordedWork,
    RecordEntry,
    RecordItem,
    RecordItemId,
    WearEntry,
)
from spoutline.model.worded import Worded
from spoutline.rules.work.records import judged_entry, record_items

_ITEM_OF: Final = {CertifiedTest.BOND: RecordItemId.BOND, CertifiedTest.LEAK: RecordItemId.LEAK}
# inspections that repeat the test of the commissioning form
_REPEATED_BY: Final = {
    CertifiedTest.BOND: MEASURED_ITEMS,
    CertifiedTest.LEAK: frozenset({InspectionItemId.AFTER_LEAK}),
}
_TRIED: Final = (ItemResult.PASSED, ItemResult.FAILED)
_MISSING: Final = {
    CertifiedTest.BOND: "the book holds no reading of the bond test; record one, then make the certificate",
    CertifiedTest.LEAK: "the book holds no result of the leak test; record one, then make the certificate",
}


def certificates(
    site_plan: SitePlan,
    history: Sequence[RecordedWork],
    test: CertifiedTest,
    bands: Mapping[RecordItemId, ReadingBand],
) -> tuple[Certificate, ...]:
    """Return a certificate for each dispenser of a plan whose positions ask for the test.

    Parameters
    ----------
    site_plan
        The plan with the sets that hang there; its checks limit the readings. Only its positions are certified.
    history
        What the book holds of the site, in the order in which it was recorded.
    test
        The test.
    bands
        How far from its computed value a reading may lie.

    Raises
    ------
    InputFault
        A position has no measurement, no dated one, or a part was replaced since; or none asks for the test.
    """
    rows: dict[str, list[Measurement]] = {}
    looking = _Looking(history, test, site_plan.provenance.survey_fingerprint, bands)
    problems: list[InputProblem] = []
    for plan in site_plan.positions:
        item = next((one for one in record_items(plan) if one.id is _ITEM_OF[test] and one.applies), None)
        if item is None:
            continue
        try:
            found = _measured(plan, item, looking)
        except InputFault as fault:
            problems.extend(fault.problems)
            continue
        rows.setdefault(plan.position.dispenser, []).append(found)
    if problems:
        raise InputFault(tuple(problems))
    if not rows:
        wanted = "no position here has a set that asks for this test"
        raise InputFault((InputProblem("", "certificate", test.value, wanted),))
    return tuple(Certificate(test=test, dispenser=name, rows=tuple(found)) for name, found in rows.items())


@frozen
class _Looking:
    """What measurements are looked for in, and by what they are judged; ``revision`` is that of the survey today."""

    history: Sequence[RecordedWork]
    test: CertifiedTest
    revision: str
    bands: Mapping[RecordItemId, ReadingBand]


def _measured(plan: PositionPlan, item: RecordItem, looking: _Looking) -> Measurement:
    """Return the last measurement of a position; raise ``InputFault`` where none can be certified."""
    label, test = plan.position.label, looking.test
    here = [entry for entry in looking.history if entry.position == label]
    tried = [(place, entry, held) for place, entry in enumerate(here) for held in _held(entry, test)]
    if not tried:
        raise _refused(label, "nothing", _MISSING[test])
    place, entry, held = max(tried, key=lambda one: (one[1].done_on or date.min, one[0]))
    if entry.done_on is None or isinstance(entry, WearEntry):
        raise _refused(label, "no day", "the record does not say on which day it was measured; record it with its day")
    if (replaced := _replaced_since(here, place, entry.done_on)) is not None:
        wanted = Worded("a part was replaced on {day}; measure again and record it", day=replaced.isoformat())
        raise _refused(label, entry.done_on.isoformat(), wanted)
    return Measurement(
        position=label,
        judged=JudgedEntry(item=item, entry=held, verdict=judged_entry(item, held, looking.bands.get(item.id))),
        done_on=entry.done_on,
        done_by=entry.done_by,
        licence=entry.licence if isinstance(entry, CommissioningRecord) else "",
        instruments=entry.instruments,
        is_of_today=not isinstance(entry, CommissioningRecord) or entry.plan_revision == looking.revision,
    )


def _held(entry: RecordedWork, test: CertifiedTest) -> Iterator[RecordEntry]:
    """Yield what a record tells of a test; nothing where it was not measured."""
    if isinstance(entry, CommissioningRecord):
        held = entry.entry(_ITEM_OF[test])
    elif isinstance(entry, InspectionEntry) and entry.item in _REPEATED_BY[test]:
        held = RecordEntry(
            item=_ITEM_OF[test],
            reading=entry.reading,
            over_range=entry.over_range,
            result=_told(entry.result, test),
            note=entry.note,
        )
    else:
        held = None
    if held is None:
        return
    has_reading = held.reading is not None or held.over_range
    if has_reading if test is CertifiedTest.BOND else held.result in _TRIED:
        yield held


def _told(result: ItemResult, test: CertifiedTest) -> ItemResult | None:
    """Return the result of an inspection; that it passed says nothing beside a reading, which its limit judges."""
    return None if test is CertifiedTest.BOND and result is ItemResult.PASSED else result


def _replaced_since(here: Sequence[RecordedWork], place: int, day: date) -> date | None:
    """Return the last day after a measurement on which a part was replaced, or the same day and recorded after it."""
    days = (
        one.done_on
        for at, one in enumerate(here)
        if isinstance(one, WearEntry) and (one.done_on > day or (one.done_on == day and at > place))
    )
    return max(days, default=None)


def _refused(label: str, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(label, "certificate", value, wanted),))
