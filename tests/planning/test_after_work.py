"""What a drive-off or a replaced part leaves to be done, and what must be looked at before the winter."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import icalendar
import pytest

from documents import plan_factory as factory
from documents.pack_words import words
from paper_text import text_of
from spoutline import assets
from spoutline.documents.pack.inspection_calendar import inspection_calendar
from spoutline.documents.pack.papers import inspection_pdf
from spoutline.model.check import Bound
from spoutline.model.inspection import DueItem, InspectionInterval, InspectionItemId
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import LiquidFamily, ListingScheme
from spoutline.model.record import (
    ChangeReason,
    CommissioningRecord,
    InspectionEntry,
    ItemResult,
    RecordedWork,
    RecordEntry,
    RecordItemId,
    WearEntry,
)
from spoutline.model.survey import SurveyLiquid
from spoutline.planning.pack.inspection import before_winter, due_at_site, items_for
from spoutline.rules.work.job_conditions import job_conditions
from spoutline.ruletables.inspection_items import load_inspection_items

ITEMS = load_inspection_items(assets.resources_folder())
IN_SERVICE = date(2026, 3, 1)
DAY = date(2026, 11, 28)
AFTER_ANY = {InspectionItemId.AFTER_BOND, InspectionItemId.AFTER_LEAK, InspectionItemId.AFTER_SHUT_OFF}
AFTER_DRIVE_OFF = {
    InspectionItemId.AFTER_BREAKAWAY,
    InspectionItemId.AFTER_HOSE,
    InspectionItemId.AFTER_OUTLET,
    InspectionItemId.AFTER_SHEAR_VALVE,
}


def wear(reason: ChangeReason = ChangeReason.DRIVE_OFF, day: date = DAY, position: str = "1A") -> WearEntry:
    return WearEntry(site="S", position=position, done_on=day, removed="A", fitted="B", reason=reason)


def looked(item: InspectionItemId, result: ItemResult = ItemResult.PASSED, day: date = DAY) -> InspectionEntry:
    return InspectionEntry(site="S", position="1A", item=item, done_on=day, result=result)


def form(day: date = DAY, signed: str = "J. Doe", leak: ItemResult = ItemResult.PASSED) -> CommissioningRecord:
    entries = (
        RecordEntry(item=RecordItemId.LEAK, result=leak),
        RecordEntry(item=RecordItemId.SHUT_OFF, result=ItemResult.PASSED),
    )
    return CommissioningRecord(
        site="S", position="1A", plan_revision="0" * 16, entries=entries, done_on=day, signed_by=signed
    )


def due(*history: RecordedWork) -> tuple[DueItem, ...]:
    plan = factory.fitting_plan(factory.position("1A"))
    return due_at_site(factory.site_plan(plan), ITEMS, history, IN_SERVICE)


def left(*history: RecordedWork) -> set[InspectionItemId]:
    found = [one for one in due(*history) if one.item.interval is InspectionInterval.ONCE]
    assert all(one.next_due == DAY for one in found)
    return {one.item.id for one in found}


def test_nothing_is_left_where_nothing_was_replaced() -> None:
    assert left() == set()
    assert left(wear(position="2A")) == set()


def test_a_drive_off_leaves_more_to_be_done_than_a_worn_part() -> None:
    # CARB Phase II orders, scheduled maintenance (secondary): leak and meter-creep test before reuse; the rest is
    # common practice, no source
    assert left(wear(ChangeReason.WEAR)) == AFTER_ANY
    assert left(wear()) == AFTER_ANY | AFTER_DRIVE_OFF


def test_an_inspection_that_passed_settles_its_own_item_and_one_that_failed_does_not() -> None:
    done = looked(InspectionItemId.AFTER_OUTLET)
    assert InspectionItemId.AFTER_OUTLET not in left(wear(), done)
    failed = looked(InspectionItemId.AFTER_OUTLET, ItemResult.FAILED)
    assert InspectionItemId.AFTER_OUTLET in left(wear(), failed)


def test_a_signed_form_after_the_work_settles_what_it_proves() -> None:
    proved = {InspectionItemId.AFTER_LEAK, InspectionItemId.AFTER_SHUT_OFF}
    assert left(wear(), form()) == (AFTER_ANY | AFTER_DRIVE_OFF) - proved
    assert InspectionItemId.AFTER_LEAK in left(wear(), form(signed=""))
    assert InspectionItemId.AFTER_LEAK in left(wear(), form(leak=ItemResult.FAILED))


def test_a_form_from_before_the_work_settles_nothing_though_it_is_of_the_same_day() -> None:
    assert left(form(), wear()) == AFTER_ANY | AFTER_DRIVE_OFF
    assert left(wear(), form(day=date(2026, 11, 27))) == AFTER_ANY | AFTER_DRIVE_OFF
    assert InspectionItemId.AFTER_LEAK not in left(form(day=date(2026, 11, 29)), wear())  # recorded late, done later


def test_the_second_drive_off_opens_everything_again() -> None:
    first = wear(day=date(2026, 11, 20))
    settled = [looked(item, day=date(2026, 11, 20)) for item in AFTER_ANY | AFTER_DRIVE_OFF]
    assert left(first, *settled) == set()
    assert left(first, *settled, wear()) == AFTER_ANY | AFTER_DRIVE_OFF


def test_paper_and_calendar_show_it_on_the_day_and_once() -> None:
    found = due(wear())
    text = text_of(inspection_pdf(factory.site_plan(), words(), found, (wear(),)))
    assert "Nov 28, 2026 once, before use" in text
    assert "After a drive-off: shear valve" in text
    raw = inspection_calendar(found, factory.site(), words().story)
    events = [part for part in icalendar.Calendar.from_ical(raw).walk() if part.name == "VEVENT"]
    once = [event for event in events if "After a " in str(event["SUMMARY"])]
    assert len(once) == len(AFTER_ANY | AFTER_DRIVE_OFF)
    assert all("RRULE" not in event and event["DTSTART"].dt == DAY for event in once)


@pytest.mark.parametrize(
    ("handed_over", "first"),
    [
        (date(2026, 3, 1), date(2026, 3, 1)),  # it still freezes
        (date(2026, 5, 2), date(2026, 10, 1)),
        (date(2026, 12, 1), date(2026, 12, 1)),
    ],
)
def test_what_must_stand_the_frost_is_looked_at_before_the_first_winter(handed_over: date, first: date) -> None:
    # common practice, no source: before the first frost of the northern autumn, and at once where it is winter
    assert before_winter(handed_over) == first
    position = factory.position(liquid=SurveyLiquid(family=LiquidFamily.DEF, blend_percent=0))
    plan = factory.site_plan(factory.fitting_plan(position))
    climate = plan.survey.site.climate.model_copy(update={"low_c": -20.0})
    site = plan.survey.site.model_copy(update={"climate": climate})
    cold = replace(plan, survey=plan.survey.model_copy(update={"site": site}))
    by_id = {one.item.id: one.next_due for one in due_at_site(cold, ITEMS, (), handed_over)}
    assert by_id[InspectionItemId.DEF_HEATING] == by_id[InspectionItemId.COLD_LOOK] == first
    done = InspectionEntry(site="S", position="1A", item=InspectionItemId.DEF_HEATING, done_on=date(2026, 10, 5))
    again = {one.item.id: one.next_due for one in due_at_site(cold, ITEMS, (done,), handed_over)}
    assert again[InspectionItemId.DEF_HEATING] == date(2027, 10, 1)


def test_def_is_tested_by_refractometer_and_its_hose_looked_at() -> None:
    # ISO 22241-1:2019 as reported (secondary): 31.8 to 33.2 % urea by mass
    position = factory.position(liquid=SurveyLiquid(family=LiquidFamily.DEF, blend_percent=0))
    plan = factory.fitting_plan(position)
    assert plan.requirement is not None
    low, high = (Bound(value=value, source="ISO 22241-1", status=LimitStatus.SECONDARY) for value in (31.8, 33.2))
    plan = replace(plan, requirement=replace(plan.requirement, urea_percent=(low, high)))
    found = due_at_site(factory.site_plan(plan), ITEMS, (), IN_SERVICE)
    assert {InspectionItemId.DEF_CONCENTRATION, InspectionItemId.DEF_HOSE} <= {one.item.id for one in found}
    assert "31.8 % – 33.2 %" in text_of(inspection_pdf(factory.site_plan(plan), words(), found, ()))


def test_vapor_recovery_is_tested_in_service_where_the_directive_holds() -> None:
    # Directive 2009/126/EC article 5: at least once a year, or every three years with automatic monitoring
    position = factory.position(vapour_today="balance", vapour_wanted="balance")
    conditions = job_conditions(factory.site_plan(factory.fitting_plan(position)))
    of_europe = {item.id: item for item in items_for(conditions, ITEMS, ListingScheme.EN)}
    assert of_europe[InspectionItemId.STAGE_TWO_TEST].interval is InspectionInterval.YEARLY
    elsewhere = {item.id for item in items_for(conditions, ITEMS, ListingScheme.UL)}
    assert InspectionItemId.STAGE_TWO_TEST not in elsewhere
