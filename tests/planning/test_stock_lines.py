"""What a job takes of a stock, what is short and what is ordered: figures worked by hand.

Whole lots are ordered, and only where less than the least would be left: common practice, no source.
"""

from __future__ import annotations

import csv
from dataclasses import replace
from datetime import UTC, datetime
from io import StringIO
from typing import Any

import pytest

from documents import plan_factory as factory
from documents.pack_words import words
from paper_text import text_of
from spoutline.book.stock_text import stock_from_csv
from spoutline.documents.pack.stock_paper import StockSheet, stock_paper
from spoutline.documents.pack.stock_tables import lines_csv
from spoutline.documents.paper_form import PaperForm
from spoutline.explain.pack.words import PackWord
from spoutline.model.language import Language
from spoutline.model.part_ref import PartRef
from spoutline.model.stock_entry import Movement, StockBalance, StockEntry, StockLevel, StockLine, StoredEntry
from spoutline.planning.pack.stock_book import (
    balances,
    closing,
    needed_by,
    stock_lines,
    taken_for,
    to_order,
    uncounted,
)

NOZZLE = factory.nozzle()


def there(place: str, pieces: int, least: int | None = None, lot: int = 1, part: PartRef = NOZZLE.ref) -> StockBalance:
    level = None if least is None else StockLevel(place=place, part=part, least=least, lot=lot)
    return StockBalance(place=place, part=part, quantity=pieces, count="", level=level)


@pytest.mark.parametrize(
    ("pieces", "least", "lot", "takes", "short", "order"),
    [
        (6, 6, 4, 0, 0, 0),  # the least is there
        (5, 6, 4, 0, 0, 4),  # one is lacking, four come at once
        (6, 6, 4, 2, 0, 4),  # the job leaves four
        (1, 6, 4, 0, 0, 8),  # five are lacking: two lots
        (0, 0, 5, 0, 3, 5),  # three are short, no least is kept
        (2, 6, 1, 2, 3, 9),  # three short and six to keep
        (-1, 2, 1, 0, 0, 3),  # one more was taken than was known of
    ],
)
def test_whole_lots_are_ordered_where_less_than_the_least_is_left(
    pieces: int, least: int, lot: int, takes: int, short: int, order: int
) -> None:
    assert to_order(there("van", pieces, least, lot), takes, short) == order


def test_without_a_level_what_is_short_is_ordered() -> None:
    assert to_order(there("van", 0), 0, 3) == 3
    assert to_order(there("van", 0)) == 0


def test_pieces_come_from_the_first_place_that_has_any_and_the_rest_is_short() -> None:
    known = (there("store", 3), there("van", 2), there("attic", 9))
    van, store = stock_lines(known, {NOZZLE.ref: 6}, ("van", "store"))
    assert (van.balance.place, van.takes, van.short, van.order) == ("van", 2, 1, 1)
    assert (store.balance.place, store.takes, store.short, store.order) == ("store", 3, 0, 0)
    assert {van.needed, store.needed} == {6}
    # a part that lies nowhere is short at the first place
    (missing,) = stock_lines((), {NOZZLE.ref: 2}, ("van", "store"))
    assert (missing.balance.place, missing.balance.quantity, missing.short) == ("van", 0, 2)
    # without a job nothing is taken
    assert {line.takes for line in stock_lines(known, {}, ("van", "store"))} == {0}
    # a stock below nothing has nothing to take
    (below,) = stock_lines((there("van", -1),), {NOZZLE.ref: 1}, ("van",))
    assert (below.takes, below.short) == (0, 1)


def test_what_a_job_took_already_is_left_out_and_too_many_come_back() -> None:
    known = (there("van", 5),)
    # six needed, two taken: four to come
    (line,) = stock_lines(known, {NOZZLE.ref: 6}, ("van",), {NOZZLE.ref: 2})
    assert (line.needed, line.taken, line.takes, line.short, line.too_many) == (6, 2, 4, 0, 0)
    # somebody insists: six again, of which five lie there
    (line,) = stock_lines(known, {NOZZLE.ref: 6}, ("van",), {NOZZLE.ref: 2}, again=True)
    assert (line.taken, line.takes, line.short) == (2, 5, 1)
    # the survey has changed: one is needed, two were taken
    (line,) = stock_lines(known, {NOZZLE.ref: 1}, ("van",), {NOZZLE.ref: 2})
    assert (line.takes, line.short, line.order, line.too_many) == (0, 0, 0, 1)
    # what is needed no more and lies nowhere by now is told once
    (line,) = stock_lines((), {}, ("van", "store"), {NOZZLE.ref: 2})
    assert (line.balance.place, line.takes, line.too_many) == ("van", 0, 2)


def entry(number: int, movement: Movement, quantity: int = 1, *, undone: bool = False, **others: Any) -> StoredEntry:
    count = others.pop("count", "May") if movement is Movement.COUNTED else ""
    told = {"place": "van", "movement": movement, "part": NOZZLE.ref, "quantity": quantity, "count": count, **others}
    moved = StockEntry.model_validate(told)
    return StoredEntry(id=number, entry=moved, recorded_at=datetime(2027, 5, 3, tzinfo=UTC), is_undone=undone)


def test_a_job_holds_what_was_taken_for_it_less_what_came_back() -> None:
    entries = (
        entry(1, Movement.RECEIVED, 9),
        entry(2, Movement.TAKEN, 4, job="Fern Pond"),
        entry(3, Movement.TAKEN, 1, job="Fern Pond", place="store"),
        entry(4, Movement.TAKEN, 3, job="Fern Pond", undone=True),
        entry(5, Movement.RETURNED, 2, job="Fern Pond"),
        entry(6, Movement.TAKEN, 7, job="Elm Bend"),
    )
    assert taken_for(entries, "Fern Pond") == {NOZZLE.ref: 3}
    assert taken_for(entries, "Elm Bend") == {NOZZLE.ref: 7}
    assert taken_for(entries, "") == {}


def test_a_count_did_not_find_what_nobody_scanned_in_it() -> None:
    hose, cap, seal = PartRef("TH-H1"), PartRef("CP-1"), PartRef("SE-1")
    before = (
        entry(1, Movement.COUNTED, 4, count="April"),
        entry(2, Movement.COUNTED, 6, count="April", part=hose),
        entry(3, Movement.COUNTED, 2, count="April", part=cap),
        entry(4, Movement.RECEIVED, 5, part=seal, place="store"),
    )
    assert uncounted(before, "van", "May") is None  # nothing was counted in it
    begun = (*before, entry(5, Movement.COUNTED, 3), entry(6, Movement.RECEIVED, 2, part=cap))
    found = uncounted(begun, "van", "May")
    assert found is not None
    # four caps by the book, of which two came when the shelf had been gone through; six hoses are gone
    assert [(one.part, one.quantity, one.came) for one in found] == [(cap, 4, 2), (hose, 6, 0)]
    closed = closing(found, "van", "May", "Merle", "")
    added = (StoredEntry(id=7 + at, entry=one, recorded_at=begun[0].recorded_at) for at, one in enumerate(closed))
    stored = (*begun, *added)
    held = {(one.place, one.part): one.quantity for one in balances(stored, ())}
    assert held == {("van", NOZZLE.ref): 3, ("van", cap): 2, ("van", hose): 0, ("store", seal): 5}
    assert uncounted(stored, "van", "May") == ()  # closed twice it adds nothing


def test_a_job_takes_what_its_loading_list_names() -> None:
    plans = [factory.fitting_plan(factory.position(label)) for label in ("1A", "1B")]
    needed = needed_by(factory.site_plan(*plans))
    # two positions of five parts and two labels each
    assert needed[NOZZLE.ref] == 2
    assert sum(needed.values()) == 2 * (5 + 2)


@pytest.mark.parametrize("language", Language)
def test_the_paper_tells_what_to_take_and_to_order(language: Language) -> None:
    story = words(language).story
    line = StockLine(balance=there("Van <7>", 1, 2, 4), needed=3, takes=1, short=2, order=4)
    sheet = StockSheet(lines=(line,), parts={NOZZLE.ref: NOZZLE}, job="Fern Pond")
    told = " ".join(text_of(stock_paper(sheet, story, on_letter=True)).split())
    for word in (PackWord.STOCK, PackWord.TO_TAKE, PackWord.SHORT, PackWord.TO_ORDER, PackWord.STOCK_PLACE):
        assert story.word(word) in told
    assert "Van <7>" in told
    assert f"{NOZZLE.number}" in told
    assert "Fern Pond" in told
    page = stock_paper(sheet, story, on_letter=False, form=PaperForm.HTML).decode()
    assert "Van &lt;7&gt;" in page
    again = StockSheet(lines=(replace(line, taken=4),), parts={NOZZLE.ref: NOZZLE}, job="Fern Pond")
    told = " ".join(text_of(stock_paper(again, story, on_letter=False)).split())
    for word in (PackWord.TAKEN_BEFORE, PackWord.BRING_BACK, PackWord.NEEDED):
        assert story.word(word) in told
    held = StockSheet(lines=(line,), parts={}, job="")
    assert story.word(PackWord.AT_HAND) in text_of(stock_paper(held, story, on_letter=False))


def test_the_table_is_no_formula_and_serves_as_a_stock_list() -> None:
    line = StockLine(balance=there("=van", 3, 2, 4), needed=0, takes=0, short=0, order=0)
    text = lines_csv((line,), {NOZZLE.ref: NOZZLE}).decode("utf-8-sig")
    (row,) = csv.DictReader(StringIO(text, newline=""))
    assert (row["place"], row["quantity"], row["least"], row["lot"]) == ("'=van", "3", "2", "4")
    assert stock_from_csv(text, "stock.csv").quantity(NOZZLE.ref) == 3
