"""Records of installers in the book: kept as entered, with their photos, on disk when the call returns."""

from __future__ import annotations

import hashlib
import shutil
from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta, timezone
from pathlib import Path

import pytest

from spoutline.book.book import Book, open_book
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.inspection import InspectionItemId
from spoutline.model.record import (
    ChangeReason,
    CommissioningRecord,
    InspectionEntry,
    PartChange,
    PhotoNote,
    RecordEntry,
    RecordItemId,
    WearEntry,
)

NOW = datetime(2026, 11, 25, 9, 30, tzinfo=UTC)
PHOTO = b"\xff\xd8\xff an invented photo"
DIGEST = hashlib.sha256(PHOTO).hexdigest()


@pytest.fixture
def url(tmp_path: Path) -> str:
    return f"sqlite:///{tmp_path / 'book.sqlite3'}"


@pytest.fixture
def book(url: str, empty_book: Path, tmp_path: Path) -> Iterator[Book]:
    shutil.copy(empty_book, tmp_path / "book.sqlite3")
    opened = open_book(url, lambda: NOW)
    yield opened
    opened.close()


def record(position: str = "1A", **fields: object) -> CommissioningRecord:
    return CommissioningRecord(
        site="Bramblefork Fuels",
        position=position,
        plan_revision="0123456789abcdef",
        parts=("QW-W18", "QW-B7"),
        changes=(PartChange(planned="QW-B7", fitted=("QW-B9",), reason=ChangeReason.NOT_ON_VAN),),
        entries=(RecordEntry(item=RecordItemId.BOND, reading=1500.0, note="=2+3; 'x' \u00fc"),),
        done_on=date(2026, 11, 24),
        **fields,
    )  # type: ignore[arg-type]


def test_a_record_comes_back_unchanged_with_its_time(book: Book) -> None:
    given = record()
    number = book.position_records.add_commissioning(given, {})
    (stored,) = book.position_records.commissioning("Bramblefork Fuels")
    assert (stored.id, stored.record, stored.recorded_at) == (number, given, NOW)


def test_another_connection_sees_it_at_once(book: Book, url: str) -> None:
    book.position_records.add_commissioning(record(), {})
    other = open_book(url)
    assert len(other.position_records.commissioning("Bramblefork Fuels")) == 1
    other.close()


def test_records_are_told_by_site_and_position_oldest_first(book: Book) -> None:
    for position in ("1A", "2A", "1A"):
        book.position_records.add_commissioning(record(position), {})
    records = book.position_records
    assert [one.record.position for one in records.commissioning("Bramblefork Fuels")] == ["1A", "2A", "1A"]
    assert len(records.commissioning("Bramblefork Fuels", "1A")) == 2
    assert records.commissioning("Elsewhere") == ()


def test_a_photo_comes_back_with_its_record(book: Book) -> None:
    given = record(photos=(PhotoNote(name="plate.jpg", sha256=DIGEST),))
    number = book.position_records.add_commissioning(given, {DIGEST: PHOTO})
    assert book.position_records.photos(number) == {DIGEST: PHOTO}


@pytest.mark.parametrize("photos", [{}, {DIGEST: b"another picture"}])
def test_a_photo_that_is_missing_or_another_is_refused_and_nothing_is_kept(
    book: Book, photos: dict[str, bytes]
) -> None:
    given = record(photos=(PhotoNote(name="plate.jpg", sha256=DIGEST),))
    with pytest.raises(InputFault, match=r"plate\.jpg"):
        book.position_records.add_commissioning(given, photos)
    assert book.position_records.commissioning("Bramblefork Fuels") == ()


def test_wear_and_inspections_are_kept_apart(book: Book) -> None:
    wear = WearEntry(
        site="S", position="1A", done_on=date(2026, 2, 3), removed="QW-C12", fitted="QW-C12", reason=ChangeReason.WEAR
    )
    done = InspectionEntry(
        site="S", position="1A", item=InspectionItemId.HOSE_SURFACE, done_on=date(2026, 2, 4), note="clean"
    )
    book.position_records.add_wear(wear)
    book.position_records.add_inspection(done)
    assert book.position_records.wear("S") == (wear,)
    assert book.position_records.inspections("S") == (done,)
    assert book.position_records.commissioning("S") == ()


def test_a_stored_record_of_another_form_is_a_store_fault(book: Book, tmp_path: Path) -> None:
    import sqlite3

    book.position_records.add_commissioning(record(), {})
    with sqlite3.connect(tmp_path / "book.sqlite3") as connection:
        connection.execute("UPDATE position_records SET document = '{}'")
    with pytest.raises(StoreFault, match="this version"):
        book.position_records.commissioning("Bramblefork Fuels")


def test_work_of_a_day_to_come_is_refused_and_nothing_of_it_kept(book: Book) -> None:
    """At 09:30 of universal time on November 25 no clock on earth shows a later day than the 25th (UTC+14)."""
    records = book.position_records
    today, ahead = record(), record("1B").model_copy(update={"done_on": date(2026, 11, 26)})
    with pytest.raises(InputFault, match=r"2026-11-26.*2026-11-25"):
        records.add_commissionings([(today, {}), (ahead, {})])
    done = InspectionEntry(site="S", position="1A", item=InspectionItemId.HOSE_SURFACE, done_on=date(2999, 2, 3))
    with pytest.raises(InputFault, match="2999-02-03"):
        records.add_inspection(done)
    gone = WearEntry(
        site="S", position="1A", done_on=date(2026, 11, 26), removed="QW-C12", fitted="QW-C12", reason=ChangeReason.WEAR
    )
    with pytest.raises(InputFault, match="2026-11-26"):
        records.add_wear(gone)
    assert records.history("S") == records.history("Bramblefork Fuels") == ()
    records.add_inspection(done.model_copy(update={"done_on": date(2026, 11, 25)}))
    assert len(records.inspections("S")) == 1


def test_where_the_next_day_has_begun_its_work_is_kept(url: str, empty_book: Path, tmp_path: Path) -> None:
    """Clocks of the Line Islands are 14 hours ahead of universal time (IANA time zone Pacific/Kiritimati)."""
    shutil.copy(empty_book, tmp_path / "book.sqlite3")
    opened = open_book(url, lambda: datetime(2026, 11, 25, 10, 0, tzinfo=UTC))
    day = datetime(2026, 11, 25, 10, 0, tzinfo=UTC).astimezone(timezone(timedelta(hours=14))).date()
    done = InspectionEntry(site="S", position="1A", item=InspectionItemId.HOSE_SURFACE, done_on=day)
    opened.position_records.add_inspection(done)
    assert opened.position_records.inspections("S") == (done,)
    opened.close()
