"""How well the limits of a position are founded, and that a check says where its own is only recalled."""

from __future__ import annotations

import pytest

from documents.readers import story
from rules.invented_parts import plain_set
from rules.stations import derived, position, tables
from spoutline.model.check import Check, CheckId, Outcome
from spoutline.model.limit import LimitId, LimitStatus
from spoutline.model.liquid import LiquidFamily
from spoutline.rules.checks.run import checks_for


def checks() -> dict[CheckId, Check]:
    return {check.id: check for check in checks_for(plain_set(), derived(position()), tables())}


@pytest.mark.parametrize(
    ("limit_id", "printed", "unit"),
    [
        # 10 g/m2.day at 38 degC: two trade texts report it of UL 330
        (LimitId.HOSE_PERMEATION_MAX, "10", "g/m²·day"),
        # 40 CFR 80.22(f), edition of 1990, as quoted: 2.5 in straight, 3.0 in to the spring
        (LimitId.SPOUT_GASOLINE_STRAIGHT_MIN, "2.5", "in"),
        (LimitId.SPOUT_GASOLINE_SPRING_DISTANCE, "3", "in"),
    ],
)
def test_rows_that_other_texts_report_are_secondary(limit_id: LimitId, printed: str, unit: str) -> None:
    row = tables().jurisdiction.limit(limit_id)
    assert row.status is LimitStatus.SECONDARY
    assert (f"{float(row.printed):g}", row.printed_unit) == (printed, unit)
    assert "not read" not in row.edition


def test_the_footing_counts_each_limit_of_the_lines_once() -> None:
    asked = derived(position())
    read = {limit_id for line in (*asked.lines, *asked.findings) for limit_id in line.limit_ids}
    assert sum(asked.footing.values()) == len(read)
    for status in LimitStatus:
        rows = [one for one in read if tables().jurisdiction.limit(one).status is status]
        assert asked.footing[status] == len(rows)
    told = story().footing(asked)
    assert f"{asked.footing[LimitStatus.MEMORY]} recalled" in told
    assert f"{asked.footing[LimitStatus.VERIFIED]} read in the published text" in told


def test_a_gasoline_spout_rests_on_its_whole_end_and_diesel_does_not() -> None:
    ends = {LimitId.SPOUT_GASOLINE_STRAIGHT_MIN, LimitId.SPOUT_GASOLINE_SPRING_DISTANCE}
    assert ends <= {limit_id for limit_id, _ in derived(position()).limit_statuses}
    assert not ends & {limit_id for limit_id, _ in derived(position(LiquidFamily.DIESEL, 5)).limit_statuses}


def test_a_check_on_a_recalled_limit_says_so_beside_its_verdict() -> None:
    found = checks()
    recalled = found[CheckId.RESISTANCE_TOTAL]  # 1 megohm: NFPA 77, from memory
    assert recalled.outcome is Outcome.PASSES
    assert story().check(recalled).verdict == "passes, limit recalled"
    assert story().marked_outcome(recalled).endswith("limit recalled")
    reported = found[CheckId.SPOUT_DIAMETER]  # SAE J285, secondary
    assert story().check(reported).verdict == "passes"
