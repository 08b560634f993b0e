"""Damaged and hostile files: refused with a sentence, never a fault of the program, and nothing dropped unsaid."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planning.position_tables import opened, positions_of_table
from program_runs import Spoutline
from reliability.fuzz_mutations import rezipped
from reliability.fuzz_seeds import workbook
from spoutline.book.stock_text import stock_from_csv
from spoutline.book.survey_text import survey_from_json, survey_to_json
from spoutline.bootstrap.demos import demo_survey
from spoutline.input_bounds.toml_text import toml_table
from spoutline.model.faults import InputFault


@given(text=st.text(max_size=300))
def test_any_text_as_toml_or_stock_is_read_or_refused(text: str) -> None:
    for read in (lambda: toml_table(text, "x.toml", "terms"), lambda: stock_from_csv(text, "x.csv")):
        try:
            read()
        except InputFault as fault:
            assert fault.problems


@pytest.mark.parametrize(
    ("member", "change"),
    [
        ("xl/styles.xml", lambda text: text.replace(b"<cellXfs", b"<cellXfs>" + b"<xf/>" * 200_000 + b"<cellXfs")),
        ("xl/workbook.xml", lambda text: b'<!DOCTYPE a [<!ENTITY b "c">]>' + text),
        ("xl/worksheets/sheet1.xml", lambda text: text.replace(b"<v>", b"<v>99x", 1)),
        ("xl/worksheets/sheet1.xml", lambda text: text[: len(text) // 2]),
        ("xl/worksheets/sheet1.xml", lambda text: text.replace(b'<row r="2"', b'<row r="99999999999"')),
    ],
)
def test_a_workbook_that_blows_up_or_breaks_while_read_is_refused(tmp_path: Path, member: str, change) -> None:
    path = tmp_path / "t.xlsx"
    path.write_bytes(rezipped(workbook(), lambda name, text: change(text) if name == member else text))
    with pytest.raises(InputFault) as caught:
        positions_of_table(opened(path))
    assert str(path) in str(caught.value)


@pytest.mark.parametrize(
    "text",
    [f"a = {'9' * 5000}", f"a = {'[' * 900}", f"a = {'[' * 60}{']' * 60}", "a = 1e99999999999999999999", "." * 9],
)
def test_numbers_and_nesting_far_beyond_a_terms_file_are_refused(text: str) -> None:
    from decimal import Decimal

    with pytest.raises(InputFault, match=r"x\.toml: terms"):
        toml_table(text, "x.toml", "terms", parse_float=Decimal)


def test_huge_cells_and_numbers_of_a_stock_list_are_refused_at_their_line() -> None:
    with pytest.raises(InputFault, match=r"s\.csv, line 2"):
        stock_from_csv(f"part_number,quantity\nQA-1,{'9' * 5000}\n", "s.csv")
    with pytest.raises(InputFault, match=r"s\.csv, line 2"):
        stock_from_csv(f"part_number,quantity\n{'Q' * 200_000},1\n", "s.csv")


HIDDEN = ["\x00", "\u202e", "\u2066", "\u200e", "\u200f", "\u061c", "\u200b", "\u2060", "\ufeff", "\xad", "\U000e0041"]


@pytest.mark.parametrize("sign", HIDDEN)
def test_a_hidden_sign_in_a_name_is_refused_and_named(sign: str) -> None:
    # the signs that turn the reading direction: Unicode Standard Annex 9, table of explicit formatting characters
    # those of no width: Unicode Standard, DerivedCoreProperties.txt, Default_Ignorable_Code_Point
    survey = demo_survey("small_town")
    named = survey.model_copy(update={"site": survey.site.model_copy(update={"name": f"Elm{sign}Street"})})
    with pytest.raises(InputFault, match=rf"site\.name: .*U\+{ord(sign):04X}"):
        survey_from_json(survey_to_json(named), "s.json")


@pytest.mark.parametrize("sign", HIDDEN)
def test_a_hidden_sign_in_a_remark_is_made_visible_and_line_breaks_stay(sign: str) -> None:
    survey = demo_survey("small_town")
    document = json.loads(survey_to_json(survey))
    document["positions"][0]["notes"] = f"left{sign}side\n\tgate: \u0646\u200c\u0627"  # a joiner that Persian needs
    read = survey_from_json(json.dumps(document), "s.json")
    assert read.positions[0].notes == "left\ufffdside\n\tgate: \u0646\u200c\u0627"


def test_a_number_that_measures_nothing_is_refused_by_the_command(spoutline: Spoutline, tmp_path: Path) -> None:
    path = tmp_path / "s.json"
    document = json.loads(survey_to_json(demo_survey("small_town")))
    document["positions"][0]["supply"] = {"wanted_flow_l_min": 1e-308}
    path.write_text(json.dumps(document), encoding="utf-8")
    done = spoutline("plan", str(path))
    assert done.code == 2
    assert "wanted_flow_l_min: 1e-308" in done.err
