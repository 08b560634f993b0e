"""Numbers of quotations by a pattern: none given twice, none changed. The numbers expected are counted by hand."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from planning.quoting_terms import DAY
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.model.faults import InputFault
from spoutline.model.number_pattern import number_in, series_of
from spoutline.model.quotation import Quotation
from stores.numbering import numbers_kept_by_two_processes
from stores.quotation_life import SI, quoted

PATTERN = "{year}-{serial:04}"


@pytest.fixture
def bench(own_database: Path) -> Iterator[Workbench]:
    bench = open_workbench(Settings(database=str(own_database)))
    yield bench
    bench.close()


def under(bench: Workbench, number: str, dated: date = DAY) -> Quotation:
    return quoted(bench, heading={"number": number, "dated": dated})


def kept(bench: Workbench, number: str, dated: date = DAY) -> str:
    return bench.quoting().life().keep(under(bench, number, dated)).quotation.terms.heading.number


@pytest.mark.parametrize(
    ("pattern", "serial", "number"),
    [
        (PATTERN, 7, "2026-0007"),
        (PATTERN, 12345, "2026-12345"),
        ("HS/{month}/{serial}", 7, "HS/11/7"),
        ("{serial:03}", 7, "007"),
    ],
)
def test_a_pattern_is_filled(pattern: str, serial: int, number: str) -> None:
    assert number_in(series_of(pattern, DAY), serial) == number


@pytest.mark.parametrize("pattern", ["{yeer}-{serial}", "{serial}-{serial}", "{serial:4}", "{serial", "{serial:04}}"])
def test_a_pattern_that_cannot_be_filled_is_told_before_anything_is_quoted(bench: Workbench, pattern: str) -> None:
    with pytest.raises(InputFault, match=r"heading\.number.*\{serial:04\}"):
        under(bench, pattern)


def test_numbers_rise_within_a_year_begin_anew_with_the_next_and_pass_by_those_written_by_hand(
    bench: Workbench,
) -> None:
    assert kept(bench, PATTERN) == "2026-0001"
    assert kept(bench, "2026-0002") == "2026-0002"
    assert kept(bench, PATTERN) == "2026-0003"
    assert kept(bench, PATTERN, date(2026, 12, 30)) == "2026-0004"
    assert kept(bench, "{serial:02}") == "01"
    assert bench.quoting().life().named("2026-0003").id == 3


def test_a_number_stays_with_its_quotation_and_is_not_given_again_when_a_draft_takes_another(
    bench: Workbench,
) -> None:
    service, made = bench.quoting(), under(bench, PATTERN)
    draft = service.life().keep(made, "Odile")
    draft = service.life().save_draft(draft, made, "Odile")
    assert draft.quotation.terms.heading.number == "2026-0001"
    issued = service.life().issue(draft, "Odile", SI)
    assert service.life().revise(issued, made, "Odile").quotation.terms.heading.number == "2026-0001"
    other = service.life().keep(made)
    assert service.life().save_draft(other, under(bench, "HS-9")).quotation.terms.heading.number == "HS-9"
    assert kept(bench, PATTERN) == "2026-0003", "2026-0002 was told to somebody"


def test_two_processes_are_never_given_the_same_number(own_database: Path) -> None:
    numbers = numbers_kept_by_two_processes(str(own_database), 8)
    assert numbers == [f"2026-{serial:04}" for serial in range(1, 17)]
