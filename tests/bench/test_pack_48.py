"""How long the pack of a station with 48 positions takes to set, as PDF, in each language.

Run on request: ``pytest tests/bench/test_pack_48.py -s``. The figures are measured, never asserted.
"""

from __future__ import annotations

from io import BytesIO

import pytest
from pypdf import PdfReader
from pytest_benchmark.fixture import BenchmarkFixture

from documents.pack_words import words
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.pack.papers import form_pdf, pack_pdf
from spoutline.model.language import Language
from spoutline.model.pack import PackJob
from spoutline.model.plan import SitePlan


@pytest.fixture(scope="module")
def site_plan(workbench: Workbench) -> SitePlan:
    """Return the plan of the demo station with 48 positions."""
    return workbench.plan_site(demo_survey("refit_48"))


@pytest.mark.parametrize("language", Language)
def test_pack_of_48_positions(benchmark: BenchmarkFixture, site_plan: SitePlan, language: Language) -> None:
    own = words(language)
    pdf = benchmark.pedantic(pack_pdf, (site_plan, own, PackJob()), rounds=3, warmup_rounds=1)
    assert len(PdfReader(BytesIO(pdf)).pages) >= 48


def test_forms_of_48_positions(benchmark: BenchmarkFixture, site_plan: SitePlan) -> None:
    pdf = benchmark.pedantic(form_pdf, (site_plan, words()), rounds=3, warmup_rounds=1)
    assert len(PdfReader(BytesIO(pdf)).pages) == 48
