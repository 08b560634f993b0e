"""Numbers and days as typed behind an option: read, or refused with what would be right."""

from __future__ import annotations

from argparse import ArgumentTypeError
from datetime import date

import pytest

from spoutline.cli.typed import day, day_of, serial
from spoutline.model.faults import InputFault


@pytest.mark.parametrize("text", ["0", "-1", "x", "1.5", "", "9" * 40, "9" * 5000, "٤٢", "2147483648"])
def test_what_counts_nothing_is_refused_by_its_text(text: str) -> None:
    with pytest.raises(ArgumentTypeError, match="a whole number from 1 up"):
        serial(text)


def test_a_number_is_read_up_to_what_both_stores_hold() -> None:
    assert [serial(text) for text in ("1", " 7 ", "2147483647")] == [1, 7, 2**31 - 1]  # PostgreSQL 16, 8.1: integer


@pytest.mark.parametrize("text", ["2026-02-30", "2026-13-01", "28.11.2026", "tomorrow", ""])
def test_what_is_no_day_is_refused_with_a_day_as_it_is_written(text: str) -> None:
    # ISO 8601-1: four digits of the year, month, day
    with pytest.raises(ArgumentTypeError, match="YYYY-MM-DD"):
        day(text)
    with pytest.raises(InputFault, match="--dated"):
        day_of(text, "--dated")


def test_a_day_is_read_and_may_be_left_out() -> None:
    assert day("2026-11-28") == date(2026, 11, 28) == day_of("2026-11-28", "--dated")
    assert day_of(None, "--dated") is None
