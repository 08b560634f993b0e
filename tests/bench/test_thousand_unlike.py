"""A station of 1,000 positions no two of which ask the same: planned and quoted, its bill and its pack as PDF.

Run on request: ``pytest tests/bench/test_thousand_unlike.py -s``. Seconds of processor time of one run, nothing known
before; bill and pack are set from plans, the pack from one without alternatives. No time is asserted.
``BENCH_POSITIONS`` is the number of positions, 1,000 where it is not set.
"""

from __future__ import annotations

import os
import time
from collections.abc import Callable
from io import BytesIO
from typing import TypeVar

import pytest
from pypdf import PdfReader

from bench.figures import tell
from bench.unlike_station import unlike_station
from planning.quoting_terms import terms_of
from spoutline.bootstrap import Workbench
from spoutline.documents.content.grouping import like_positions
from spoutline.model.language import Language
from spoutline.model.pack import PackJob
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

POSITIONS = int(os.environ.get("BENCH_POSITIONS", "1000"))
_T = TypeVar("_T")


def timed(work: Callable[[], _T]) -> tuple[_T, float]:
    """Return what comes of some work, and the seconds of processor time that it took."""
    before = time.process_time()
    found = work()
    return found, time.process_time() - before


@pytest.mark.timeout(7_200)
def test_a_station_of_unlike_positions(own_workbench: Workbench) -> None:
    survey, display = unlike_station(POSITIONS), Display(UnitSystem.US)
    labour = {"hourly_rate": 80, "tasks": [{"title": "Exchange", "hours": "0.4"}]}
    quoted, quoting_s = timed(lambda: own_workbench.quoting().quote(survey, terms_of(labour=labour), display))
    assert len(quoted.quotation.options[0].positions) == POSITIONS
    plan, _ = timed(lambda: own_workbench.plan_site(survey))
    assert len(like_positions(plan.positions)) == POSITIONS
    bill, setting_s = timed(lambda: own_workbench.bills().pdf(plan, display))
    pages = len(PdfReader(BytesIO(bill)).pages)
    if POSITIONS == 1_000:
        tell("unlike station, planned and quoted, s", quoting_s)
        tell("unlike station, bill, s", setting_s)
        tell("unlike station, bill, pages", pages)
    told = f"planned and quoted {quoting_s:.1f} s, bill {setting_s:.1f} s, {pages:,} pages"
    short, planning_s = timed(lambda: own_workbench.plan_site(survey, with_alternatives=False))
    pack, packing_s = timed(lambda: own_workbench.packing().pack(short, Language.ENGLISH, display, PackJob()))
    told += f"; planned without alternatives {planning_s:.1f} s, pack {packing_s:.1f} s"
    told += f", {len(PdfReader(BytesIO(pack)).pages):,} pages"
    print(f"\n{POSITIONS:,} unlike positions: {told}")
