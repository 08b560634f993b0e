"""The short bill: its length, and its figures against those of the full bill."""

from __future__ import annotations

import math
import re
from dataclasses import replace

import pytest

from documents.readers import reader_of
from paper_text import pages_of, text_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.content.blocks import Table
from spoutline.documents.content.short_bill import short_bill_content
from spoutline.documents.content.totals import site_lines, total_of
from spoutline.model.language import Language
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

pytestmark = pytest.mark.usefixtures("plans_once")
US = Display(UnitSystem.US)
DEMOS = ("small_town", "marina", "truck_stop", "mixed_fuels", "conversion_balance")
HOSES_TO_A_PAGE = 10


def pages_before_the_cautions(pdf: bytes) -> int:
    reader = reader_of(pdf)
    chapters = [entry for entry in reader.outline if not isinstance(entry, list)]
    page = reader.get_destination_page_number(chapters[-1])
    assert page is not None
    return page


@pytest.mark.parametrize("name", DEMOS)
def test_a_short_bill_has_at_most_a_page_for_ten_hoses_in_every_language(workbench: Workbench, name: str) -> None:
    whole = workbench.plan_site(demo_survey(name))
    for count in {min(HOSES_TO_A_PAGE, len(whole.positions)), len(whole.positions)}:
        plan = replace(whole, positions=whole.positions[:count])
        for language in Language:
            pages = pages_before_the_cautions(workbench.bills().short_pdf(plan, US, language=language))
            assert 1 <= pages <= math.ceil(count / HOSES_TO_A_PAGE), (language, count)


@pytest.mark.parametrize("name", DEMOS)
def test_the_short_bill_holds_the_parts_sums_and_verdicts_of_the_full_one(workbench: Workbench, name: str) -> None:
    plan = workbench.plan_site(demo_survey(name))
    full, short = (text_of(pdf) for pdf in (workbench.bills().pdf(plan, US), workbench.bills().short_pdf(plan, US)))
    money = re.compile(r"\d[\d,]*\.\d\d")
    assert set(money.findall(short)) <= set(money.findall(full))
    currency = plan.survey.site.currency
    story = workbench.story(US)
    total = story.bare_money(total_of(site_lines(plan)).minor, currency)
    assert short.count(total) == full.count(total)  # at the positions, and under the parts
    for line in site_lines(plan):
        assert line.part.number in short
    flat = " ".join(short.split())
    for one in plan.positions:
        assert one.position.label in flat
        assert story.verdict(one).split(";")[0] in flat


def test_the_caution_sheet_of_the_short_bill_is_that_of_the_full_one(workbench: Workbench) -> None:
    plan = workbench.plan_site(demo_survey("small_town"))
    full, short = workbench.bills().pdf(plan, US), workbench.bills().short_pdf(plan, US)
    sheets = [pages_of(pdf)[pages_before_the_cautions(pdf) :] for pdf in (full, short)]
    hazards = [
        re.findall(r"^(?:DANGER|WARNING|CAUTION|NOTICE)\b.*$", "\n".join(sheet), re.MULTILINE) for sheet in sheets
    ]
    assert hazards[0]
    assert hazards[0] == hazards[1]


def test_a_position_without_a_set_keeps_its_reason(workbench: Workbench) -> None:
    plan = workbench.plan_site(demo_survey("mixed_fuels"))
    story = workbench.story(US)
    refused = next(one for one in plan.positions if one.refusal is not None)
    assert refused.refusal is not None
    told = " ".join(text_of(workbench.bills().short_pdf(plan, US)).split())
    assert all(sentence in told for sentence in story.refusal(refused.refusal))


def test_positions_that_are_told_alike_share_a_row(workbench: Workbench) -> None:
    plan = workbench.plan_site(demo_survey("mixed_fuels"))
    tables = [block for block in short_bill_content(plan, workbench.story(US), ()).blocks if isinstance(block, Table)]
    labels = [row.cells[0] for row in tables[0].rows[:-1]]
    assert len(labels) < len(plan.positions)
    assert sorted(", ".join(labels).split(", ")) == sorted(one.position.label for one in plan.positions)
