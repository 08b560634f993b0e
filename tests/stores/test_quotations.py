"""Quotations in the book: the expectations are the promises in the docstrings, no figure of the trade."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from sqlalchemy import inspect

from planning.quoting_terms import DAY, list_of, terms_of
from planning.stores import ListStore
from spoutline.book.all_tables import BookTable
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.database.engine import open_engine
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.part import Part, PartStatus
from spoutline.planning.refit.touched import Touch, touched_parts
from stores.quotation_life import SI, block_the_issue, follow_a_station, let_expire, live_through, quoted

pytestmark = pytest.mark.usefixtures("plans_once")  # what is kept is the matter here, not how it was planned


@pytest.fixture
def database(own_database: Path) -> Path:
    return own_database


@pytest.fixture
def bench(database: Path) -> Iterator[Workbench]:
    opened = open_workbench(Settings(database=str(database)))
    yield opened
    opened.close()


def test_a_quotation_lives_from_draft_to_acceptance(bench: Workbench) -> None:
    live_through(bench)


def test_an_offer_expires_after_its_last_day(bench: Workbench) -> None:
    let_expire(bench)


def test_a_station_keeps_its_customer_and_its_quotations_apart(bench: Workbench) -> None:
    follow_a_station(bench)


def test_a_missing_price_blocks_the_issue_unless_answered_for_by_name(bench: Workbench) -> None:
    block_the_issue(bench)


def test_the_tables_are_those_that_the_migrations_make(bench: Workbench, database: Path) -> None:
    bench.quoting().life().quotations()
    inspector = inspect(open_engine(f"sqlite:///{database}"))
    for table in BookTable.metadata.sorted_tables:
        made = {(column["name"], bool(column["nullable"])) for column in inspector.get_columns(table.name)}
        assert made == {(column.name, bool(column.nullable)) for column in table.columns}, table.name
        assert {index["name"] for index in inspector.get_indexes(table.name)} == {one.name for one in table.indexes}


def test_what_is_stored_holds_all_that_the_quotation_was_made_from(bench: Workbench) -> None:
    quotation = quoted(bench)
    stored = bench.quoting().life().stored(bench.quoting().life().keep(quotation).id).quotation
    assert stored == quotation
    pins = stored.pins
    assert pins.survey == demo_survey("marina")
    assert {one.number for one in pins.parts} == set(stored.part_numbers)
    used = {(line.list_id, line.part_number) for option in stored.options for line in option.lines}
    assert {(one.list_id, one.part_number) for one in pins.prices} == used
    jurisdiction = bench.jurisdictions().one("us_general")
    assert [one.id for one in pins.limits] == [one.id.value for one in jurisdiction.limits]


def test_another_process_quotes_the_same_bytes(bench: Workbench, database: Path) -> None:
    """The hash seed orders sets and dictionaries of words differently; papers must not show it."""
    script = (
        "import hashlib, sys\n"
        "from spoutline.bootstrap import Settings, open_workbench\n"
        "from stores.quotation_life import SI, quoted\n"
        "bench = open_workbench(Settings(database=sys.argv[1]))\n"
        "made = quoted(bench)\n"
        "papers = bench.quoting().papers()\n"
        "for content in (papers.pdf(made, 1, SI), papers.workbook(made, 1, SI), made.model_dump_json().encode()):\n"
        "    print(hashlib.sha256(content).hexdigest())\n"
    )
    environment = {**os.environ, "PYTHONHASHSEED": "4711", "PYTHONPATH": str(Path(__file__).parents[1])}
    done = subprocess.run(
        [sys.executable, "-c", script, str(database)], env=environment, capture_output=True, text=True, check=True
    )
    made, service = quoted(bench), bench.quoting()
    contents = (
        service.papers().pdf(made, 1, SI),
        service.papers().workbook(made, 1, SI),
        made.model_dump_json().encode(),
    )
    assert done.stdout.split() == [hashlib.sha256(content).hexdigest() for content in contents]


def catalogue_of(bench: Workbench, numbers: tuple[str, ...]) -> dict[str, Part]:
    return {number: bench.parts().part(number) for number in numbers}


def test_a_change_of_catalogue_or_price_list_touches_open_quotations(bench: Workbench) -> None:
    quotation = quoted(bench)
    parts = catalogue_of(bench, quotation.part_numbers)
    lists = bench.quoting().terms().price_lists(DEMONSTRATION)
    assert touched_parts(quotation, ListStore(parts.values()), lists, DAY) == ()
    gone, replaced, heavier, *_ = quotation.part_numbers
    changed = dict(parts)
    del changed[gone]
    changed[replaced] = replace(parts[replaced], status=PartStatus.SUPERSEDED, superseded_by="XX-N1")
    changed[heavier] = replace(parts[heavier], mass_kg=parts[heavier].mass_kg + 1)
    found = touched_parts(quotation, ListStore(changed.values()), lists, DAY)
    assert [(one.part.number, one.touch, one.detail) for one in found] == [
        (gone, Touch.GONE, ""),
        (replaced, Touch.SUPERSEDED, "XX-N1"),
        (heavier, Touch.DATA, "mass_kg"),
    ]
    line = quotation.options[0].lines[0]
    dearer = list_of({line.part_number: {1: "999.00"}}, maker=line.maker, valid_from=date(2026, 11, 1))
    found = touched_parts(quotation, ListStore(parts.values()), (*lists, dearer), DAY)
    assert [(one.part.number, one.touch) for one in found] == [(line.part_number, Touch.PRICE)]
    later = touched_parts(quotation, ListStore(parts.values()), lists, date(2028, 1, 1))
    assert {one.touch for one in later} == {Touch.PRICE_GONE}


def test_open_quotations_are_listed_with_what_touches_them(bench: Workbench) -> None:
    service = bench.quoting()
    stored = service.life().keep(quoted(bench))
    assert service.life().touched(DAY) == ()
    ((found, parts),) = service.life().touched(date(2028, 1, 1))
    assert found == stored
    assert len(parts) == len(stored.quotation.part_numbers)


def test_terms_of_a_second_currency_are_quoted_in_it(bench: Workbench) -> None:
    made = bench.quoting().quote(demo_survey("marina"), terms_of(currency="EUR"), SI).quotation
    assert {line.list_currency for line in made.options[0].lines} == {"EUR"}
    assert made.open_lines == ()
