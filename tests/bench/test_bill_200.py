"""How long the bill of a station of 200 unlike positions takes to set, as PDF and as a page.

Run on request: ``pytest tests/bench/test_bill_200.py -s``. The figures are measured, never asserted;
whether reportlab's own part in C was there is told beside them.
"""

from __future__ import annotations

import time
from io import BytesIO

import pytest
from pypdf import PdfReader
from pytest_benchmark.fixture import BenchmarkFixture
from reportlab.lib import rl_accel

from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.content.grouping import like_positions
from spoutline.documents.paper_form import PaperForm
from spoutline.model.plan import SitePlan
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

POSITIONS = 200
STEP_M = 0.004  # every position is that much farther from the vehicle than the one before


def unlike_station() -> Survey:
    """Return the demo refit over and over, dispensers renamed, no two positions at the same distance."""
    demo = demo_survey("refit_48")
    positions = []
    for number in range(POSITIONS):
        copy, place = divmod(number, len(demo.positions))
        one = demo.positions[place]
        distance = round(one.filler.distance_m + STEP_M * number, 3)
        changes = {
            "label": f"{copy}/{one.label}",
            "dispenser": f"{copy}/{one.dispenser}",
            "filler": one.filler.model_copy(update={"distance_m": distance}),
        }
        positions.append(one.model_copy(update=changes))
    return demo.model_copy(update={"positions": tuple(positions)})


@pytest.fixture(scope="module")
def site_plan(workbench: Workbench) -> SitePlan:
    return workbench.plan_site(unlike_station())


@pytest.mark.parametrize("form", [PaperForm.PDF, PaperForm.HTML])
def test_bill_of_200_unlike_positions(
    benchmark: BenchmarkFixture, workbench: Workbench, site_plan: SitePlan, form: PaperForm
) -> None:
    assert len(like_positions(site_plan.positions)) == POSITIONS

    def made() -> bytes:
        return workbench.bills().pdf(site_plan, Display(UnitSystem.US), form=form)

    content = benchmark.pedantic(made, rounds=3, warmup_rounds=1)
    started = time.process_time()
    assert made() == content
    spent = time.process_time() - started
    pages = len(PdfReader(BytesIO(content)).pages) if form is PaperForm.PDF else 1
    accelerated = "with" if getattr(rl_accel, "_c_funcs", None) else "without"
    print(f"\n{form}: {spent:.2f} s of the processor, {pages} pages, {accelerated} rl_accel")
    assert pages >= 1
