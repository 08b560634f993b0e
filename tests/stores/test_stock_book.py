"""The stock of the book: entries are added and never changed, counts add up, and nothing is lost by two at once."""

from __future__ import annotations

import sqlite3
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest

from spoutline.book.all_tables import BookTable
from spoutline.book.book import open_book
from spoutline.book.roles import roles_sql
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.stock_entry import Movement, StockEntry, StockLevel, StoredEntry
from spoutline.planning.pack.stock_book import balances

NOZZLE, HOSE = PartRef("QW-N1", "Quillmere"), PartRef("TH-H1", "Thistledown")
_COUNTING = """
import sys
from spoutline.book.book import open_book
from spoutline.model.part_ref import PartRef
from spoutline.model.stock_entry import Movement, StockEntry
book = open_book(sys.argv[1])
one = StockEntry(place="van", movement=Movement.COUNTED, part=PartRef("QW-N1", "Quillmere"), count="November")
for _ in range(40):
    book.stock.add((one,))
book.close()
"""


def url(path: Path) -> str:
    return f"sqlite:///{path / 'book.sqlite3'}"


def moved(movement: Movement, quantity: int = 1, part: PartRef = NOZZLE, **others: str) -> StockEntry:
    count = others.pop("count", "November") if movement is Movement.COUNTED else ""
    return StockEntry.model_validate(
        {"place": "van", "movement": movement, "part": part, "quantity": quantity, "count": count, **others}
    )


def test_entries_are_kept_as_they_were_added_and_an_undone_one_stays(tmp_path: Path) -> None:
    book = open_book(url(tmp_path))
    first, second = book.stock.add((moved(Movement.RECEIVED, 5), moved(Movement.TAKEN, 2, job="Fern Pond")))
    counter = book.stock.undo(second, "Merle")
    assert (counter.entry.movement, counter.entry.undoes) == (Movement.UNDONE, second)
    found = book.stock.entries()
    assert [(one.id, one.is_undone) for one in found] == [(first, False), (second, True), (counter.id, False)]
    assert found[1].entry == moved(Movement.TAKEN, 2, job="Fern Pond")
    assert [one.id for one in book.stock.entries(newest=1)] == [counter.id]
    assert balances(found, ())[0].quantity == 5
    for number, told in ((second, "already"), (counter.id, "undoes another"), (99, "no such entry")):
        with pytest.raises(InputFault, match=told):
            book.stock.undo(number)
    assert len(book.stock.entries()) == 3
    book.close()


def test_pieces_of_a_count_add_up_and_another_count_begins_anew(tmp_path: Path) -> None:
    book = open_book(url(tmp_path))
    book.stock.add((moved(Movement.RECEIVED, 9), moved(Movement.COUNTED), moved(Movement.COUNTED, 3)))
    # counted 1 and 3: what was received before does not count any more; 2 taken since
    book.stock.add((moved(Movement.TAKEN, 2),))
    assert [one.quantity for one in balances(book.stock.entries(), ())] == [2]
    book.stock.add((moved(Movement.COUNTED, 7, count="December"), moved(Movement.RETURNED, 1)))
    (held,) = balances(book.stock.entries(), ())
    assert (held.quantity, held.count) == (8, "December")
    # none is counted too
    book.stock.add((moved(Movement.COUNTED, 0, count="January"),))
    assert balances(book.stock.entries(), ())[0].quantity == 0
    book.close()


def test_a_piece_with_its_serial_number_is_counted_once(tmp_path: Path) -> None:
    book = open_book(url(tmp_path))
    piece = moved(Movement.COUNTED, serial="S%_1")
    (number,) = book.stock.add((piece,))
    with pytest.raises(InputFault, match=f"entry {number}"):
        book.stock.add((moved(Movement.COUNTED, part=HOSE), piece))
    assert len(book.stock.entries()) == 1  # all or none
    book.stock.add((moved(Movement.COUNTED, serial="S%_1", count="December"),))
    book.stock.undo(number)
    book.stock.add((piece,))
    book.close()


def test_what_is_added_is_made_from_the_entries_as_they_stand(tmp_path: Path) -> None:
    book = open_book(url(tmp_path))
    book.stock.add((moved(Movement.RECEIVED, 5),))
    book.stock.undo(1)
    seen: list[tuple[int, bool]] = []

    def look(entries: tuple[StoredEntry, ...]) -> list[StockEntry]:
        seen.extend((one.id, one.is_undone) for one in entries)
        return [moved(Movement.RECEIVED, 2)]

    def refuse(_: tuple[StoredEntry, ...]) -> list[StockEntry]:
        raise InputFault((InputProblem("", "place", "'van'", "look again"),))

    assert book.stock.add_seen(look) == (3,)
    assert seen == [(1, True), (2, False)]
    with pytest.raises(InputFault, match="look again"):
        book.stock.add_seen(refuse)
    assert len(book.stock.entries()) == 3
    book.close()


def test_the_newest_level_of_a_part_at_a_place_holds(tmp_path: Path) -> None:
    book = open_book(url(tmp_path))
    for least in (3, 6):
        book.stock.set_level(StockLevel(place="van", part=NOZZLE, least=least, lot=4))
    assert [(one.least, one.lot) for one in book.stock.levels()] == [(6, 4)]
    (held,) = balances((), book.stock.levels())
    assert (held.quantity, held.level) == (0, book.stock.levels()[0])
    assert book.stock.places() == ("van",)
    book.close()


def test_two_processes_that_count_at_once_lose_nothing(tmp_path: Path) -> None:
    open_book(url(tmp_path)).close()
    running = [subprocess.Popen([sys.executable, "-c", _COUNTING, url(tmp_path)]) for _ in range(2)]
    assert [one.wait(timeout=120) for one in running] == [0, 0]
    book = open_book(url(tmp_path))
    (held,) = balances(book.stock.entries(), ())
    assert held.quantity == 80  # each of the two counted 40
    book.close()


def test_a_book_of_before_gets_its_stock_and_keeps_the_rest(tmp_path: Path) -> None:
    book = open_book(url(tmp_path))
    book.stock.add((moved(Movement.RECEIVED, 5),))
    book.close()
    with closing(sqlite3.connect(tmp_path / "book.sqlite3")) as raw, raw:
        for table in ("stock_entries", "stock_levels"):
            raw.execute(f"DROP TABLE {table}")
        raw.execute("UPDATE book_version SET version_num = 'book_0013'")
    again = open_book(url(tmp_path))
    assert again.stock.entries() == ()
    assert again.stock.add((moved(Movement.RECEIVED),)) == (1,)
    again.close()


def test_an_estimator_of_a_shared_book_adds_entries_and_changes_none() -> None:
    told = roles_sql(BookTable.metadata.tables, ())
    for table in ("stock_entries", "stock_levels"):
        assert f'GRANT INSERT ON "public"."{table}" TO spoutline_estimator;' in told
