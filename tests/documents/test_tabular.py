"""Tables for spreadsheets: text stays text, figures stay figures, totals add up."""

from __future__ import annotations

import csv
from dataclasses import replace
from decimal import Decimal
from io import BytesIO, StringIO

import pytest
from openpyxl import load_workbook

from documents import plan_factory as factory
from documents.readers import story
from spoutline.documents.bill import bill_csv, bill_xlsx
from spoutline.documents.tabular.cells import shielded
from spoutline.documents.tabular.rows import bill_sheet, check_sheet
from spoutline.model.check import Bound
from spoutline.model.limit import LimitStatus
from spoutline.model.record import CommissioningRecord
from spoutline.units.accepted import UnitSystem


def rows_of(data: bytes) -> list[dict[str, str]]:
    return list(csv.DictReader(StringIO(data.decode("utf-8-sig"), newline="")))


def test_the_csv_opens_in_spreadsheets_as_utf_8() -> None:
    data = bill_csv(factory.site_plan(), story())
    assert data.startswith(b"\xef\xbb\xbf")  # the byte order mark of UTF-8
    assert data.count(b"\r\n") == data.count(b"\n")  # RFC 4180: rows end in CR LF


def test_the_csv_has_one_row_for_each_part_and_its_sums_add_up() -> None:
    rows = rows_of(bill_csv(factory.site_plan(), story()))
    assert [row["Part number"] for row in rows] == [*factory.chain().numbers, "QW-L1"]
    # 23.45 + 56.15 + 89.90 + 31.05 + 71.90 + 2 x 1.50, added by hand
    assert sum(Decimal(row["Amount"]) for row in rows) == Decimal("275.45")
    assert rows[-1]["Qty"] == "2"


@pytest.mark.parametrize("start", ["=", "+", "-", "@", "\t", "\r", "  ="])
def test_a_text_that_looks_like_a_formula_is_shielded(start: str) -> None:
    # the characters named by OWASP's page on CSV injection
    assert shielded(f"{start}cmd|' /C calc'!A0").startswith("'")


def test_plain_texts_and_figures_are_left_alone() -> None:
    assert shielded("Curb hose 12 ft") == "Curb hose 12 ft"
    rows = rows_of(bill_csv(factory.site_plan(), story()))
    assert rows[0]["Each"] == "23.45"


def test_hostile_names_stay_data_in_the_csv() -> None:
    where = factory.position("=1+1")
    rows = rows_of(bill_csv(factory.site_plan(factory.fitting_plan(where)), story()))
    assert rows[0]["Position"] == "'=1+1"


def test_the_workbook_has_bill_positions_and_checks() -> None:
    book = load_workbook(BytesIO(bill_xlsx(factory.site_plan(), story())))
    assert book.sheetnames == ["Bill", "Positions", "Checks"]
    positions = [row[0].value for row in book["Positions"].iter_rows(min_row=2)]
    assert positions == ["1A", "2A", "3A"]
    checks = [row[1].value for row in book["Checks"].iter_rows(min_row=2)]
    assert checks[0] == "Spout diameter"


def test_islands_stand_behind_the_dispensers_of_a_survey_that_names_some() -> None:
    """A position that names no island stands where the dispenser that it shares does."""
    plan = factory.site_plan()
    first, *rest = plan.survey.positions
    named = plan.survey.model_copy(update={"positions": (first.model_copy(update={"island": "=North"}), *rest)})
    told = replace(plan, survey=named)
    shown, bare = rows_of(bill_csv(told, story())), rows_of(bill_csv(plan, story()))
    assert list(shown[0])[:3] == ["Position", "Dispenser", "Island"]
    assert {row["Island"] for row in shown if row["Position"] == first.label} == {"'=North"}
    assert "Island" not in bare[0]
    assert [{key: text for key, text in row.items() if key != "Island"} for row in shown] == bare
    book = load_workbook(BytesIO(bill_xlsx(told, story())))
    assert [cell.value for cell in book["Positions"][2]][2] == "=North"
    assert book["Positions"]["C2"].data_type == "s"  # a text and no formula
    sums = [cell for cell in book["Bill"][1] if cell.value == "Amount"]
    formats = {book["Bill"].cell(row, sums[0].column).number_format for row in range(2, book["Bill"].max_row + 1)}
    assert formats == {"#,##0.00"}


def test_workbook_prices_are_numbers_that_add_up() -> None:
    sheet = load_workbook(BytesIO(bill_xlsx(factory.site_plan(), story())))["Bill"]
    titles = [cell.value for cell in sheet[1]]
    column = titles.index("Amount")
    sums = [row[column].value for row in sheet.iter_rows(min_row=2)]
    assert sum(Decimal(str(value)) for value in sums) == Decimal("275.45")


@pytest.mark.parametrize("system", list(UnitSystem))
def test_check_figures_come_in_the_chosen_units(system: UnitSystem) -> None:
    sheet = load_workbook(BytesIO(bill_xlsx(factory.site_plan(), story(system))))["Checks"]
    row = [cell.value for cell in sheet[2]]
    if system is UnitSystem.SI:
        assert row[3] == pytest.approx(20.8)
        assert row[4] == "mm"
    else:
        assert row[3] == pytest.approx(20.8 / 25.4)  # NIST SP 811: 1 in = 25.4 mm
        assert row[4] == "in"


@pytest.mark.parametrize("text", ["=1+1", "http://example.invalid", "007", "<b>&", "\U0001f525", "x" * 60])
def test_hostile_names_stay_texts_in_the_workbook(text: str) -> None:
    book = load_workbook(BytesIO(bill_xlsx(factory.site_plan(factory.fitting_plan(factory.position(text))), story())))
    cell = book["Bill"]["A2"]
    assert cell.value == text
    assert cell.data_type == "s"
    assert cell.hyperlink is None


def test_control_characters_do_not_spoil_the_workbook() -> None:
    where = factory.position("a\x01b")
    book = load_workbook(BytesIO(bill_xlsx(factory.site_plan(factory.fitting_plan(where)), story())))
    assert book["Bill"]["A2"].value == "ab"


def test_recalled_limits_and_what_was_recorded_as_wrong_have_columns_of_their_own() -> None:
    record = CommissioningRecord(site="S", position="1A", plan_revision="0" * 16, found=("Leak test: failed",))
    sheet = bill_sheet(factory.site_plan(), story(), (record,))
    row = dict(zip(sheet.titles, sheet.rows[0], strict=True))
    assert row["Recorded as wrong"] == "Leak test: failed"
    of_memory = Bound(value=1.0, source="NFPA 77", status=LimitStatus.MEMORY)
    read = Bound(value=1.0, source="J285", status=LimitStatus.VERIFIED)
    plan = factory.fitting_plan()
    assert plan.chosen is not None
    spout, bond = factory.spout_check(), factory.resistance_check()
    checks = (replace(spout, lower=None, upper=read), replace(bond, value=0.5, lower=None, upper=of_memory, margin=0.5))
    site_plan = factory.site_plan(replace(plan, chosen=replace(plan.chosen, checks=checks)))
    sheet = bill_sheet(site_plan, story())
    named = dict(zip(sheet.titles, sheet.rows[0], strict=True))["Checks resting on a recalled limit"]
    assert named == story().check(bond).title
    found = check_sheet(site_plan, story())
    column = found.titles.index("Footing of the limit")
    assert [row[column] for row in found.rows] == ["", "limit recalled"]
