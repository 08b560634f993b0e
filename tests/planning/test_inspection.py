"""When inspections come round, and the papers that tell it."""

from __future__ import annotations

from datetime import date, timedelta

import icalendar
import pytest

from documents import plan_factory as factory
from documents.pack_words import words
from paper_text import text_of
from spoutline import assets
from spoutline.documents.pack.inspection_calendar import inspection_calendar
from spoutline.documents.pack.papers import inspection_pdf
from spoutline.model.faults import InputFault
from spoutline.model.inspection import DueItem, InspectionInterval, InspectionItemId
from spoutline.model.language import Language
from spoutline.model.liquid import LiquidFamily, ListingScheme
from spoutline.model.record import ChangeReason, InspectionEntry, WearEntry
from spoutline.model.survey import Position, SurveyLiquid
from spoutline.planning.pack.inspection import due_at_site, items_for, last_done, next_day
from spoutline.rules.work.job_conditions import job_conditions
from spoutline.ruletables.inspection_items import inspection_items_from_toml, load_inspection_items

RESOURCES = assets.resources_folder()
ITEMS = load_inspection_items(RESOURCES)
TEXT = (RESOURCES / "inspection" / "items.toml").read_text(encoding="utf-8")
IN_SERVICE = date(2026, 12, 1)


def asked_of(position: Position) -> set[InspectionItemId]:
    conditions = job_conditions(factory.site_plan(factory.fitting_plan(position)))
    return {item.id for item in items_for(conditions, ITEMS, ListingScheme.UL)}


def due(position: str = "1A", **done: date) -> tuple[DueItem, ...]:
    site_plan = factory.site_plan(factory.fitting_plan(factory.position(position)), factory.refused_plan())
    entries = [
        InspectionEntry(site="S", position=place, item=InspectionItemId(name), done_on=day)
        for name, day in done.items()
        for place in (position, "another")
    ]
    return due_at_site(site_plan, ITEMS, entries, IN_SERVICE)


@pytest.mark.parametrize(
    ("last", "interval", "following"),
    [
        (date(2026, 12, 31), InspectionInterval.DAILY, date(2027, 1, 1)),
        (date(2026, 12, 29), InspectionInterval.WEEKLY, date(2027, 1, 5)),
        # Oklahoma Administrative Code 165:26-2-92(c) counts 30 days, not a calendar month
        (date(2027, 1, 30), InspectionInterval.MONTHLY, date(2027, 3, 1)),
        (date(2026, 12, 1), InspectionInterval.YEARLY, date(2027, 12, 1)),
        (date(2028, 2, 29), InspectionInterval.YEARLY, date(2029, 2, 28)),
        (date(2027, 2, 28), InspectionInterval.YEARLY, date(2028, 2, 28)),
    ],
)
def test_the_next_day_follows_the_calendar(last: date, interval: InspectionInterval, following: date) -> None:
    assert next_day(last, interval) == following


def test_intervals_with_a_published_source_are_the_published_ones() -> None:
    by_id = {item.id: item for item in ITEMS}
    # Okla. 165:26-2-92(a)(2): hose looked over daily; (c): pulled out in full every 30 days;
    # IFC 2018 clause 2305.2.4: shear valve linkage tripped at least yearly; Md. COMAR 26.11.24.05: vapour parts daily
    assert by_id[InspectionItemId.HOSE_SURFACE].interval is InspectionInterval.DAILY
    assert by_id[InspectionItemId.HOSE_PULLED_OUT].interval is InspectionInterval.MONTHLY
    assert by_id[InspectionItemId.SHEAR_VALVE].interval is InspectionInterval.YEARLY
    assert by_id[InspectionItemId.VAPOUR_LOOK].interval is InspectionInterval.DAILY
    assert all(item.source for item in ITEMS)


def test_a_position_is_asked_only_for_what_it_has() -> None:
    plain = asked_of(factory.position())
    assert {InspectionItemId.HOSE_SURFACE, InspectionItemId.CONTINUITY, InspectionItemId.BREAKAWAY_LOOK} <= plain
    assert not {InspectionItemId.RETRACTOR_LOOK, InspectionItemId.REEL_LOOK, InspectionItemId.VAPOUR_LOOK} & plain
    assert InspectionItemId.RETRACTOR_LOOK in asked_of(factory.retractor_position())
    assert InspectionItemId.REEL_LOOK in asked_of(factory.reel_position())
    assert InspectionItemId.HOLD_OPEN_TRIAL in asked_of(factory.position(hold_open_wanted=True))
    of_def = asked_of(factory.position(liquid=SurveyLiquid(family=LiquidFamily.DEF, blend_percent=0)))
    assert InspectionItemId.DEF_CRYSTALS in of_def
    assert not {InspectionItemId.HOSE_SURFACE, InspectionItemId.SHEAR_VALVE} & of_def


def test_what_was_done_moves_the_next_day_and_what_was_not_counts_from_handing_over() -> None:
    found = {one.item.id: one for one in due(hose_pulled_out=date(2027, 3, 1))}
    assert found[InspectionItemId.HOSE_PULLED_OUT].next_due == date(2027, 3, 31)
    assert found[InspectionItemId.CONTINUITY].next_due == date(2027, 12, 1)
    assert found[InspectionItemId.CONTINUITY].last_done is None


def test_the_newest_entry_of_the_position_counts() -> None:
    def entry(position: str, day: date) -> InspectionEntry:
        return InspectionEntry(site="S", position=position, item=InspectionItemId.LABELS, done_on=day)

    entries = [entry("1A", date(2027, 5, 1)), entry("1A", date(2027, 4, 1)), entry("2A", date(2027, 6, 1))]
    assert last_done(entries, "1A") == {InspectionItemId.LABELS: date(2027, 5, 1)}


def test_the_paper_tells_items_due_together_once_and_then_the_wear_log() -> None:
    wear = (
        WearEntry(
            site="S",
            position="2A",
            done_on=date(2027, 2, 3),
            removed="QW-C12",
            fitted="QW-C13",
            reason=ChangeReason.DRIVE_OFF,
        ),
    )
    text = text_of(inspection_pdf(factory.site_plan(), words(), (*due("1A"), *due("2A")), wear))
    assert text.count("Hose pulled out in full") == 1
    assert "1A, 2A" in text
    assert "Dec 31, 2026" in text  # thirty days after handing over
    assert "Feb 3, 2027 2A QW-C12 QW-C13 drive-off" in text


@pytest.mark.parametrize("language", Language)
def test_the_calendar_is_read_by_an_independent_reader(language: Language) -> None:
    # icalendar, a reader of RFC 5545 of its own
    found = (*due("1A"), *due("2A; b, c"))
    raw = inspection_calendar(found, factory.site(), words(language).story)
    assert all(len(line) <= 75 for line in raw.split(b"\r\n"))  # RFC 5545 section 3.1
    events = [part for part in icalendar.Calendar.from_ical(raw).walk() if part.name == "VEVENT"]
    assert len(events) == len({one.item.id for one in found})
    assert len({str(event["UID"]) for event in events}) == len(events)
    by_rule = {event["RRULE"].to_ical() for event in events}
    assert by_rule == {b"FREQ=DAILY", b"FREQ=WEEKLY", b"FREQ=DAILY;INTERVAL=30", b"FREQ=YEARLY"}
    assert all("2A; b, c" in str(event["DESCRIPTION"]) for event in events)
    daily = next(event for event in events if event["RRULE"].to_ical() == b"FREQ=DAILY")
    assert daily["DTSTART"].dt == IN_SERVICE + timedelta(days=1)


def test_the_same_plan_gives_the_same_calendar() -> None:
    one, other = (inspection_calendar(due(), factory.site(), words().story) for _ in range(2))
    assert one == other


@pytest.mark.parametrize(
    ("old", "new", "words_of_it"),
    [
        ('interval = "weekly"', 'interval = "fortnightly"', "interval"),
        ('id = "labels"', 'id = "lables"', "id"),
        ('id = "labels"', 'id = "shear_valve"', "stands once"),
        ('applies = ["reel"]', 'applies = ["real"]', "applies"),
    ],
)
def test_a_faulty_table_is_refused(old: str, new: str, words_of_it: str) -> None:
    assert old in TEXT
    with pytest.raises(InputFault, match=words_of_it):
        inspection_items_from_toml(TEXT.replace(old, new, 1), "items.toml")


def test_an_item_left_out_is_named() -> None:
    head, _, rest = TEXT.partition('[[item]]\nid = "labels"')
    with pytest.raises(InputFault, match="labels"):
        inspection_items_from_toml(head + rest[rest.index("[[item]]") :], "items.toml")
