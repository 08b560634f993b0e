"""What the bill says, and in which order."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from documents import plan_factory as factory
from documents.readers import cautions, story
from spoutline.documents.content.bill_content import bill_content
from spoutline.documents.content.blocks import (
    Bullets,
    CautionSheet,
    Document,
    Figure,
    Heading,
    KeyValues,
    NumberedLine,
    PaperSize,
    Paragraph,
    Row,
    Signal,
    Table,
    ToldBefore,
    Worked,
)
from spoutline.documents.content.grouping import like_positions
from spoutline.model.caution import CautionCondition
from spoutline.model.check import Outcome
from spoutline.model.finding import Severity, Verdict
from spoutline.model.limit import LimitId
from spoutline.model.plan import SitePlan
from spoutline.model.quantity import Fact
from spoutline.model.survey import Climate, Duty, SurveyLiquid
from spoutline.planning.sets.relabel import relabelled
from spoutline.rules.work.job_conditions import job_conditions
from spoutline.units.accepted import UnitSystem


def content(plan: SitePlan | None = None, system: UnitSystem = UnitSystem.SI, *, calculations: bool = True) -> Document:
    made, dated = plan or factory.site_plan(), date(2026, 11, 25)
    return bill_content(made, story(system), cautions(), dated=dated, calculations=calculations)


def headings(document: Document, level: int) -> list[str]:
    return [block.text for block in document.blocks if isinstance(block, Heading) and block.level == level]


def rows_of(document: Document, first_column: str) -> list[Row]:
    return [
        row
        for block in document.blocks
        if isinstance(block, Table) and block.columns[0].title == first_column
        for row in block.rows
    ]


def all_text(document: Document) -> str:
    return repr(document.blocks)


def test_chapters_run_from_the_site_to_the_caution_sheet() -> None:
    assert headings(content(), 1) == [
        "Bill of materials",
        "Position 1A",
        "Position 2A",
        "Position 3A",
        "Annex A: what the positions ask for",
        "Annex B: calculation sheets",
        "Limits and sources",
        "Caution sheet for the installer",
    ]


def test_nothing_follows_the_cautions() -> None:
    blocks = content().blocks
    assert isinstance(blocks[-1], CautionSheet)
    assert all(one.sign is not None for one in blocks[-1].notes)


def test_the_caution_sheet_defers_to_local_codes_authority_and_licensed_installers() -> None:
    blocks = content().blocks
    start = next(
        number for number, block in enumerate(blocks) if isinstance(block, Heading) and "Caution sheet" in block.text
    )
    opening = blocks[start + 1]
    assert isinstance(opening, Paragraph)
    for words in ("Local codes", "authority having jurisdiction", "licensed installers"):
        assert words in opening.text


def test_cautions_come_gravest_first() -> None:
    order = list(Signal)
    sheet = content().blocks[-1]
    assert isinstance(sheet, CautionSheet)
    signals = [order.index(one.note.signal) for one in sheet.notes]
    assert signals == sorted(signals)
    assert len(signals) > 5


def test_the_site_head_names_everything_the_plan_was_made_from() -> None:
    head = next(block for block in content().blocks if isinstance(block, KeyValues))
    rows = {row.label: row.text for row in head.rows}
    assert rows["Name"] == "Bramblefork Fuels"
    assert rows["Address"] == "3 Mill Lane\nBramblefork"
    assert rows["Date"] == "Nov 25, 2026"
    assert rows["Jurisdiction"] == "United States, general, 2026-11"
    assert rows["Climate"] == "-10 °C to 40 °C"
    assert rows["Catalog edition"] == "2026-11 test"
    assert rows["Survey fingerprint"] == "0123456789abcdef"


def test_without_a_date_none_is_printed() -> None:
    document = bill_content(factory.site_plan(), story(), cautions())
    head = next(block for block in document.blocks if isinstance(block, KeyValues))
    assert "Date" not in {row.label for row in head.rows}


def test_parts_carry_the_numbers_of_the_drawing_in_chain_order() -> None:
    rows = [row for row in rows_of(content(), "No.") if row.cells[0].isdigit()]
    assert [(row.cells[0], row.cells[2]) for row in rows] == [
        ("1", "QW-W18"),
        ("2", "QW-B7"),
        ("3", "QW-C12"),
        ("4", "QW-S2"),
        ("5", "QW-N101"),
    ]


def test_positions_with_the_same_answer_share_one_section_that_names_them_all() -> None:
    labels = [f"P{number}" for number in range(1, 9)]
    plans = [factory.fitting_plan(factory.position(label, notes=f"note {label}")) for label in labels]
    plans = [relabelled(plans[0], plan.position) for plan in plans]
    document = content(factory.site_plan(*plans, factory.conflicting_plan()))
    assert headings(document, 1)[1:3] == ["Positions P1, P2, P3, P4, P5, P6 and 2 more", "Position 2A"]
    heads = [block for block in document.blocks if isinstance(block, KeyValues)]
    rows = [(row.label, row.text) for row in heads[1].rows]
    assert rows[1][0] == "Positions (8)"
    assert all(f"{label} (dispenser 1)" in rows[1][1] for label in labels)
    assert ("Notes of the survey", "P8: note P8") in rows


def test_positions_with_the_same_question_but_another_answer_stay_apart() -> None:
    first, second = factory.fitting_plan(), factory.fitting_plan(factory.position("1B"), accessories=())
    assert len(like_positions((first, relabelled(second, second.position)))) == 2


def test_a_check_that_cannot_be_shown_stands_out_and_has_no_tick() -> None:
    row = next(row for row in rows_of(content(), "Check") if row.cells[0].startswith("Resistance"))
    assert row.cells[-2] == "? cannot be shown"


def test_the_calculation_sheet_shows_formula_figures_result_limit_and_source() -> None:
    worked = [block for block in content().blocks if isinstance(block, Worked)]
    assert [block.title for block in worked] == ["Flow, cold", "Flow, hot"]
    told = worked[0].lines[0]
    assert isinstance(told, NumberedLine)
    assert told.line.formula == "v = 4 Q / (π D^2)"
    assert told.line.inputs == "with Q = 35 L/min, D = 19.05 mm"
    sources = {row.cells[0]: row.cells[1] for row in rows_of(content(), "No.") if len(row.cells) == 2}
    assert sources[told.mark] == "continuity"
    limit, mark = worked[0].limit.rsplit(" ", 1)
    assert limit == "Limit: at least 30 L/min"
    assert sources[mark.strip("[]")] == "flow wanted at a car [common practice]"


def test_a_line_that_occurs_again_is_told_once_and_then_referred_to() -> None:
    other = factory.fitting_plan(factory.position("9", duty=Duty.TRUCK))
    document = content(factory.site_plan(factory.fitting_plan(), other))
    worked = [block for block in document.blocks if isinstance(block, Worked)]
    first, again = worked[0].lines[0], worked[2].lines[0]
    assert isinstance(first, NumberedLine)
    assert again == ToldBefore(f"Line {first.number} holds here too.")
    numbers = [one.number for block in worked for one in block.lines if isinstance(one, NumberedLine)]
    assert numbers == ["1", "2"]


def test_without_calculations_annex_b_is_left_out_and_the_first_page_says_so() -> None:
    document = bill_content(factory.site_plan(), story(), cautions(), calculations=False)
    assert not [block for block in document.blocks if isinstance(block, Worked)]
    assert "Annex B: calculation sheets" not in headings(document, 1)
    opening = [block.text for block in document.blocks[:4] if isinstance(block, Paragraph)]
    assert any("annex B" in text and "left out" in text for text in opening)
    assert not any("left out of this copy" in block.text for block in content().blocks if isinstance(block, Paragraph))


def test_a_requirement_line_that_positions_share_is_told_once_with_whom_it_holds_for() -> None:
    other = factory.fitting_plan(factory.position("9", duty=Duty.TRUCK))
    third = factory.fitting_plan(factory.position("10", duty=Duty.REEL))
    reach = replace(factory.requirement_line(), facts=(Fact("listing_class", "E25"),))
    assert third.requirement is not None
    third = replace(third, requirement=replace(third.requirement, lines=(factory.requirement_line(), reach)))
    plan = factory.site_plan(factory.fitting_plan(), other, third)
    rows = rows_of(content(plan, calculations=False), "Requirement")
    assert [row.cells[3] for row in rows] == ["all positions", "10"]
    assert rows[0].cells[2] == "Gasoline with 10 % ethanol asks for parts listed for class E10."
    alone = rows_of(content(factory.site_plan(factory.fitting_plan())), "Requirement")
    assert [len(row.cells) for row in alone] == [4]


def test_a_line_that_most_positions_share_names_the_others() -> None:
    labels = ("1A", "2", "3", "4")
    plans = [factory.fitting_plan(factory.position(label, duty=duty)) for label, duty in zip(labels, Duty, strict=True)]
    assert plans[0].requirement is not None
    plans[0] = replace(plans[0], requirement=replace(plans[0].requirement, lines=()))
    rows = rows_of(content(factory.site_plan(*plans), calculations=False), "Requirement")
    assert [row.cells[3] for row in rows] == ["all but 1A"]


def test_every_mark_of_a_source_is_in_the_list() -> None:
    document = content()
    listed = [row.cells[0] for row in rows_of(document, "No.") if row.cells[0][:1] in ("L", "S")]
    assert len(set(listed)) == len(listed) > 4
    marked: set[str] = set()
    for title in ("Check", "Weight", "Requirement"):
        for row in rows_of(document, title):
            marked.update(mark for mark in row.cells[-1].split(", ") if mark)
    assert marked
    assert marked <= set(listed)


def test_a_position_without_a_set_gives_reasons_and_the_smallest_change() -> None:
    bullets = [block for block in content().blocks if isinstance(block, Bullets)]
    conflict, changes = bullets[0], bullets[1]
    assert conflict.items[0].startswith("No set in the catalog")
    assert "6.096 m" in changes.items[0]


def test_a_refused_position_gives_its_ways_out() -> None:
    items = [item for block in content().blocks if isinstance(block, Bullets) for item in block.items]
    assert any("covered again from 99.9 %" in item for item in items)
    assert any("B20 or less" in item for item in items)


def test_every_position_has_its_drawing_and_a_set_its_flow_curve() -> None:
    figures = [block for block in content().blocks if isinstance(block, Figure)]
    assert [figure.drawing.true_scale for figure in figures] == [True, True, True, False]


def test_only_the_limits_used_are_listed_each_with_source_and_status() -> None:
    rows = [row.cells for row in rows_of(content(), "No.") if row.cells[0].startswith("L")]
    assert [cells[0] for cells in rows] == ["L1", "L2"]
    assert [cells[1].partition(":")[0] for cells in rows] == ["Outlet bears", "Class E10 up to"]
    assert rows[1][2:] == ("UL 2586, 1.4, 2021", "read in the published text")
    assert rows[0][3] == "recalled, unconfirmed"


def test_one_document_never_mixes_unit_systems() -> None:
    # the catalogue's own names of parts may hold a size in either system
    si, us = (all_text(content(system=system)).replace("Curb hose 12 ft", "") for system in UnitSystem)
    for unit in (" gpm", " psi", " lbf", " ft'", "°F"):
        assert unit not in si
    for unit in (" L/min", " kPa", " mm'", "°C"):
        assert unit not in us


@pytest.mark.parametrize(
    ("jurisdiction_id", "paper"),
    [
        ("us_general", PaperSize.LETTER),
        ("us_vapour_rules", PaperSize.LETTER),
        ("us_without_recovery", PaperSize.LETTER),
        ("europe", PaperSize.A4),
    ],
)
def test_the_paper_is_that_of_the_jurisdiction(jurisdiction_id: str, paper: PaperSize) -> None:
    assert content(factory.site_plan(jurisdiction_id=jurisdiction_id)).paper is paper


def test_no_text_claims_approval_or_compliance() -> None:
    text = all_text(content()).lower()
    assert "compliant" not in text
    assert "is approved" not in text


def test_conditions_name_liquids_parts_and_places_of_the_whole_site() -> None:
    plan = factory.site_plan(
        factory.fitting_plan(),
        factory.fitting_plan(factory.retractor_position()),
        factory.fitting_plan(factory.reel_position()),
        factory.fitting_plan(factory.vapour_removed_position()),
    )
    found = job_conditions(plan)
    assert found == {
        CautionCondition.ALWAYS,
        CautionCondition.FLAMMABLE,
        CautionCondition.GASOLINE,
        CautionCondition.DIESEL_FAMILY,
        CautionCondition.BREAKAWAY,
        CautionCondition.RECONNECTABLE_BREAKAWAY,
        CautionCondition.RETRACTOR,
        CautionCondition.REEL,
        CautionCondition.VAPOUR_REMOVED,
        CautionCondition.LOW_TEMPERATURE,
    }


@pytest.mark.parametrize(
    ("family", "blend", "condition"),
    [
        ("gasoline", 10.0, None),
        ("gasoline", 15.0, CautionCondition.ETHANOL_ABOVE_10),
        ("diesel", 20.0, None),
        ("diesel", 100.0, CautionCondition.BIODIESEL_ABOVE_20),
        ("def", 0.0, CautionCondition.DEF),
    ],
)
def test_conditions_follow_the_blend(family: str, blend: float, condition: CautionCondition | None) -> None:
    liquid = SurveyLiquid.model_validate({"family": family, "blend_percent": blend})
    plan = factory.site_plan(factory.fitting_plan(factory.position(liquid=liquid)))
    blends = {CautionCondition.ETHANOL_ABOVE_10, CautionCondition.BIODIESEL_ABOVE_20, CautionCondition.DEF}
    assert job_conditions(plan) & blends == ({condition} if condition else set())


def test_where_a_listing_ends_is_read_from_the_rule_profile() -> None:
    liquid = SurveyLiquid.model_validate({"family": "gasoline", "blend_percent": 12})
    plan = factory.site_plan(factory.fitting_plan(factory.position(liquid=liquid)))
    assert CautionCondition.ETHANOL_ABOVE_10 in job_conditions(plan)
    wider = tuple(
        replace(row, value=15.0) if row.id is LimitId.LISTING_E10_MAX else row for row in plan.jurisdiction.limits
    )
    elsewhere = replace(plan, jurisdiction=replace(plan.jurisdiction, limits=wider))
    assert CautionCondition.ETHANOL_ABOVE_10 not in job_conditions(elsewhere)


def test_a_def_site_is_not_told_of_flammable_liquid() -> None:
    at = factory.site(climate=Climate(low_c=5, high_c=30))
    liquid = SurveyLiquid.model_validate({"family": "def", "blend_percent": 0})
    plan = factory.site_plan(factory.fitting_plan(factory.position(liquid=liquid), at), at=at)
    found = job_conditions(plan)
    assert CautionCondition.FLAMMABLE not in found
    assert CautionCondition.LOW_TEMPERATURE not in found


def test_good_practice_that_is_not_met_stands_beside_the_verdict() -> None:
    missed = replace(factory.spout_check(), severity=Severity.SHOULD, outcome=Outcome.FAILS, margin=-0.001)
    unshown = replace(factory.resistance_check(), severity=Severity.SHOULD)
    broken = replace(factory.advice_finding(), severity=Severity.SHOULD, verdict=Verdict.BROKEN)
    chosen = replace(factory.judged(), checks=(missed, unshown), findings=(broken, broken))
    document = content(factory.site_plan(factory.fitting_plan(chosen=chosen)))
    status = "✓ a set fits; good-practice lines not met: 2; good-practice lines that cannot be shown: 1"
    assert rows_of(document, "Position")[0].cells[4] == status
    assert status in all_text(document)
    assert "good-practice lines" not in all_text(content())
