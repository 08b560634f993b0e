"""The work due at all stations: from which day it is counted, how many days it is overdue, and in what order it comes.

Days are counted by hand on the calendar: a month is 30 days (Oklahoma Administrative Code 165:26-2-92(c)), a shear
valve is tripped yearly (International Fire Code 2018 clause 2305.2.4).
"""

from __future__ import annotations

import csv
import json
from datetime import date
from io import StringIO

import icalendar
import pytest

from documents import plan_factory as factory
from documents.pack_words import words
from paper_text import text_of
from spoutline import assets
from spoutline.documents.pack.due_paper import due_lines, due_paper
from spoutline.documents.pack.due_work import due_csv, due_json
from spoutline.documents.pack.inspection_calendar import inspection_calendar, stations_calendar
from spoutline.documents.paper_form import PaperForm
from spoutline.explain.pack.words import PackWord
from spoutline.model.due_work import DueWork, StationDue, UncountedReason
from spoutline.model.inspection import InspectionItemId
from spoutline.model.language import Language
from spoutline.model.record import ChangeReason, CommissioningRecord, InspectionEntry, RecordedWork, WearEntry
from spoutline.planning.pack.due_work import StationWork, due_at_station, first_day, in_order
from spoutline.planning.pack.inspection import needs_of
from spoutline.ruletables.inspection_items import load_inspection_items

ITEMS = load_inspection_items(assets.resources_folder())
ON = date(2026, 11, 29)
Item = InspectionItemId


def done(item: InspectionItemId, day: date, position: str = "1A") -> InspectionEntry:
    return InspectionEntry(site="S", position=position, item=item, done_on=day)


def form(day: date | None, position: str = "1A") -> CommissioningRecord:
    return CommissioningRecord(site="S", position=position, plan_revision="0" * 16, done_on=day)


def station(survey_id: int, name: str, *history: RecordedWork, in_service: date | None = None) -> StationWork:
    at = factory.site(name=name)
    plans = (factory.fitting_plan(factory.position("1A"), at), factory.refused_plan("3A"))
    needs = needs_of(factory.site_plan(*plans, at=at), ITEMS)
    return due_at_station(survey_id, at, needs, ITEMS, history, in_service=in_service)


def by_item(rows: tuple[StationDue, ...]) -> dict[InspectionItemId, tuple[date, int]]:
    return {row.due.item.id: (row.due.next_due, row.overdue_days(ON)) for row in rows}


def work(*stations: StationWork) -> DueWork:
    return DueWork(
        on=ON,
        rows=in_order(row for one in stations for row in one.rows),
        uncounted=tuple(left for one in stations for left in one.uncounted),
    )


def test_a_position_is_counted_from_the_first_day_that_its_records_tell() -> None:
    wear = WearEntry(
        site="S", position="1A", done_on=date(2026, 2, 1), removed="A", fitted="B", reason=ChangeReason.DRIVE_OFF
    )
    history = (form(None), form(date(2026, 3, 1)), wear, form(date(2025, 1, 1), "2A"))
    assert first_day(history, "1A") == date(2026, 2, 1)
    assert first_day(history, "3A") is None
    assert first_day((form(None),), "1A") is None


def test_days_due_and_overdue_are_those_of_the_calendar() -> None:
    # 1 October and 30 days: 31 October, which is 29 days before 29 November; 20 November a year later: 9 days before
    history = (form(date(2025, 11, 20)), done(Item.HOSE_PULLED_OUT, date(2026, 10, 1)))
    found = by_item(station(1, "Fern Pond", *history).rows)
    assert found[Item.HOSE_PULLED_OUT] == (date(2026, 10, 31), 29)
    assert found[Item.SHEAR_VALVE] == (date(2026, 11, 20), 9)
    # on the day itself nothing is overdue
    today = by_item(station(1, "Fern Pond", form(date(2025, 11, 29))).rows)
    assert today[Item.SHEAR_VALVE] == (ON, 0)


def test_positions_that_cannot_be_counted_are_named_with_the_reason() -> None:
    left = station(1, "Fern Pond").uncounted
    assert [(one.positions, one.reason) for one in left] == [
        (("1A",), UncountedReason.NO_RECORD),
        (("3A",), UncountedReason.NO_SET),
    ]
    given = station(1, "Fern Pond", in_service=date(2025, 11, 20))
    assert by_item(given.rows)[Item.SHEAR_VALVE] == (date(2026, 11, 20), 9)
    assert [one.reason for one in given.uncounted] == [UncountedReason.NO_SET]
    # a day on record goes before the one given
    recorded = station(1, "Fern Pond", form(date(2026, 1, 1)), in_service=date(2025, 11, 20))
    assert by_item(recorded.rows)[Item.SHEAR_VALVE] == (date(2027, 1, 1), 0)


def test_stations_are_mixed_by_day_longest_overdue_first() -> None:
    late = station(1, "Fern Pond", form(date(2025, 1, 1)))
    later = station(2, "Aspen Quay", form(date(2026, 11, 29)))
    found = work(later, late)
    days = [row.due.next_due for row in found.rows]
    assert days == sorted(days)
    assert found.rows[0].site.name == "Fern Pond"
    assert found.rows[-1].site.name == "Aspen Quay"
    # all of the first are overdue but what comes before the winter of the next year; none of the second is
    assert found.overdue == sum(row.due.next_due < ON for row in late.rows) > 0


def test_the_tables_for_programs_hold_each_row_and_no_formula() -> None:
    found = work(station(7, "=Fern Pond", form(date(2025, 11, 20)), done(Item.HOSE_PULLED_OUT, date(2026, 10, 1))))
    rows = list(csv.DictReader(StringIO(due_csv(found, words().story).decode("utf-8-sig"), newline="")))
    pulled = next(row for row in rows if row["item"] == "hose_pulled_out")
    assert (pulled["site"], pulled["position"], pulled["every"]) == ("'=Fern Pond", "1A", "monthly")
    assert (pulled["last_done"], pulled["due"], pulled["overdue_days"]) == ("2026-10-01", "2026-10-31", "29")
    assert "165:26-2-92(c)" in pulled["source"]
    shear = next(row for row in rows if row["item"] == "shear_valve")
    assert (shear["last_done"], shear["counted_from"]) == ("", "2025-11-20")
    document = json.loads(due_json(found, words().story))
    assert (document["format"], document["on"], len(document["due"])) == ("spoutline-due", "2026-11-29", len(rows))
    assert document["due"][0]["survey"] == 7
    assert document["uncounted"][0] == {"site": "=Fern Pond", "positions": ["3A"], "reason": "no_set", "told": ""}


def test_the_calendar_puts_what_is_overdue_on_the_day_and_names_events_as_the_station_does() -> None:
    one = station(1, "Fern Pond", form(date(2025, 11, 20)))
    other = station(2, "Aspen Quay", form(date(2026, 11, 29)))
    found = work(one, other)
    events = icalendar.Calendar.from_ical(stations_calendar(found, words().story)).walk("VEVENT")
    assert all(event.decoded("dtstart") >= ON for event in events)
    (late,) = (
        event for event in events if "International Fire Code" in event["description"] and "Fern" in event["summary"]
    )
    assert late.decoded("dtstart") == ON
    assert str(late["summary"]).startswith("Overdue: Fern Pond: ")
    assert "Nov 20, 2026" in late["description"]
    assert late["rrule"]["FREQ"] == ["YEARLY"]
    (coming,) = (
        event for event in events if "International Fire Code" in event["description"] and "Aspen" in event["summary"]
    )
    assert coming.decoded("dtstart") == date(2027, 11, 29)
    assert "Overdue" not in coming["summary"]
    own = inspection_calendar([row.due for row in one.rows], one.rows[0].site, words().story)
    names = {str(event["uid"]) for event in icalendar.Calendar.from_ical(own).walk("VEVENT")}
    assert names == {str(event["uid"]) for event in events if "Fern" in event["summary"]}
    assert len({str(event["uid"]) for event in events}) == len(events)


@pytest.mark.parametrize("language", Language)
def test_the_paper_tells_overdue_work_first_and_positions_together(language: Language) -> None:
    at = factory.site(name="Fern <Pond>")
    plans = [factory.fitting_plan(factory.position(label), at) for label in ("1A", "1B")]
    needs = needs_of(factory.site_plan(*plans, factory.refused_plan("3A"), at=at), ITEMS)
    history = (form(date(2025, 11, 20)), form(date(2025, 11, 20), "1B"))
    fern = due_at_station(1, at, needs, ITEMS, history)
    found = work(fern, station(2, "Aspen Quay", form(ON)))
    story = words(language).story
    told = " ".join(text_of(due_paper(found, story, on_letter=False)).split())
    late, later = (told.index(story.word(word)) for word in (PackWord.OVERDUE, PackWord.DUE_LATER))
    assert late < told.index("Fern <Pond>") < later < told.index("Aspen Quay")
    # 20 November a year later is 9 days before 29 November: yearly work of both positions is one line
    assert f"9 {'j' if language is Language.FRENCH else 'd' if language in ('en', 'es') else 'T'}" in told
    yearly = [row for row in found.rows if row.due.next_due == date(2026, 11, 20) and row.site.name == "Fern <Pond>"]
    lines = due_lines(yearly)
    assert {tuple(row.due.position for row in line) for line in lines} == {("1A", "1B")}
    assert len(lines) == len(yearly) / 2
    assert story.word(PackWord.NO_SET_HERE) in told
    page = due_paper(found, story, on_letter=False, form=PaperForm.HTML).decode()
    assert "Fern &lt;Pond&gt;" in page
    empty = " ".join(text_of(due_paper(work(), story, on_letter=True)).split())
    assert story.word(PackWord.DUE_NONE) in empty
