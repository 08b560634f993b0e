"""A survey entered at speed: dispensers repeated, tables imported with faults by cell, two edits brought together."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import openpyxl
import pytest

from planning.position_tables import opened, pasted, positions_of_table
from planning.surveys import CAR
from spoutline.model.faults import InputFault
from spoutline.model.liquid import LiquidFamily
from spoutline.model.survey import Position, Survey
from spoutline.planning.conversion.relabelling import same_conversion
from spoutline.planning.refit.dispensers import (
    island_of,
    islands_of,
    on_island,
    positions_of,
    with_copies,
    with_other_side,
)
from spoutline.planning.refit.survey_merge import merged
from spoutline.planning.sets.relabel import same_question
from spoutline.planning.survey_import.clipboard import pasted_rows
from spoutline.planning.table_intake.into_draft import OpenedTable
from spoutline.planning.table_intake.raw_table import column_letters
from spoutline.units.accepted import UnitSystem

HEAD = "Position,Dispenser,Product,Blend,Outlet height (ft),Reach [m],Hold-open,Colour\n"


def survey(*labels: str, dispenser: str = "1") -> Survey:
    positions = tuple(
        Position.model_validate({"label": label, "dispenser": dispenser, "notes": "seen", "prepay": True})
        for label in labels
    )
    return CAR.model_copy(update={"positions": positions})


# dispensers as templates


def test_a_dispenser_is_repeated_along_an_island() -> None:
    grown = with_copies(survey("1A regular", "1B regular", "spare hose"), "1", ("2", "3"))
    assert [one.label for one in grown.positions] == [
        "1A regular",
        "1B regular",
        "spare hose",
        "2A regular",
        "2B regular",
        "2 spare hose",
        "3A regular",
        "3B regular",
        "3 spare hose",
    ]
    copy = grown.positions[3]
    assert (copy.dispenser, copy.prepay, copy.notes) == ("2", True, "")


def test_copies_stand_on_the_islands_that_are_named() -> None:
    template = _changed(survey("1A", "1B"), 0, island="North")
    assert islands_of(template) == ("North", "North")  # the other position of the dispenser stands there too
    assert [one.island for one in with_copies(template, "1", ("2", "3")).positions[2:]] == ["North"] * 4
    spread = with_copies(template, "1", ("2", "3"), ("North", " South "))
    assert [one.island for one in spread.positions[2:]] == ["North", "North", "South", "South"]
    assert {one.island for one in with_copies(template, "1", ("2", "3"), ("",)).positions[2:]} == {""}
    with pytest.raises(InputFault, match="one for each of the 3"):
        with_copies(template, "1", ("2", "3", "4"), ("North", "South"))
    with pytest.raises(InputFault, match="at most 60 characters"):
        with_copies(template, "1", ("2",), ("x" * 61,))


def test_a_whole_dispenser_is_put_on_an_island() -> None:
    moved = on_island(survey("1A", "1B"), "1", "2")
    assert (island_of(moved, "1"), [one.island for one in moved.positions]) == ("2", ["2", "2"])
    assert on_island(moved, "1", "") == survey("1A", "1B")
    with pytest.raises(InputFault, match="at most 60 characters"):
        on_island(moved, "1", "x" * 61)


def test_an_island_has_no_bearing_on_the_set() -> None:
    first, second = _changed(survey("1A", "1B"), 0, island="North").positions
    assert same_question(first) == same_question(second)
    assert same_conversion(first) == same_conversion(second)


def test_dispenser_1_does_not_claim_the_labels_of_dispenser_10() -> None:
    grown = with_copies(survey("10A"), "1", ("2",))
    assert grown.positions[1].label == "2 10A"


def test_a_side_is_mirrored_to_the_other() -> None:
    grown = with_other_side(survey("1A regular", "1A diesel", "1Apex"), "1", "A", "B")
    assert [one.label for one in positions_of(grown, "1")][3:] == ["1B regular", "1B diesel"]


def test_taken_names_and_labels_are_refused() -> None:
    with pytest.raises(InputFault, match="name of its own"):
        with_copies(survey("1A"), "1", ("1",))
    with pytest.raises(InputFault, match="name of its own"):
        with_copies(survey("1A"), "1", ("2", "2"))
    with pytest.raises(InputFault, match="this label is taken"):
        with_other_side(survey("1A", "1B"), "1", "A", "B")
    with pytest.raises(InputFault, match="use one of: 1"):
        with_copies(survey("1A"), "7", ("8",))
    with pytest.raises(InputFault, match="at most 60 characters"):
        with_copies(survey("1A"), "1", ("x" * 60,))
    with pytest.raises(InputFault, match="a name has at most 60"):
        with_copies(survey("1A"), "1", ("x" * 61,))
    Position(label="x" * 60)
    with pytest.raises(ValueError, match="60"):
        Position(label="x" * 61)


# import


def imported(tmp_path: Path, text: str, system: UnitSystem = UnitSystem.SI) -> tuple[Position, ...]:
    path = tmp_path / "station.csv"
    path.write_text(text, encoding="utf-8")
    return positions_of_table(opened(path, system=system))


def test_a_table_becomes_positions_with_its_units(tmp_path: Path) -> None:
    """1 ft = 0.3048 m exactly (international yard and pound agreement, 1959)."""
    first, second = imported(tmp_path, HEAD + "1A,1,Petrol,10,7,1.8,yes,red\n1B,1,dsl,20,2.1 m,6 ft,no,\n")
    assert (first.label, first.liquid.family, first.liquid.blend_percent) == ("1A", LiquidFamily.GASOLINE, 10)
    assert first.outlet.height_m == pytest.approx(7 * 0.3048, abs=1e-9)
    assert (first.filler.distance_m, first.hold_open_wanted) == (1.8, True)
    assert second.outlet.height_m == 2.1
    assert second.filler.distance_m == pytest.approx(6 * 0.3048, abs=1e-9)
    assert second.liquid.family is LiquidFamily.DIESEL


def test_an_island_has_a_column_of_its_own(tmp_path: Path) -> None:
    text = "Position,Pump,Island no.,Product,Blend\n1A,1,North,petrol,10\n2A,2,,petrol,10\n"
    path = tmp_path / "station.csv"
    path.write_text(text, encoding="utf-8")
    found = positions_of_table(opened(path, {"Island no.": "island"}))
    assert [(one.dispenser, one.island) for one in found] == [
        ("1", "North"),
        ("2", ""),
    ]
    with pytest.raises(InputFault, match="cell B2"):
        imported(tmp_path, f"Position,Island,Product,Blend\n1A,{'x' * 61},petrol,10\n")


def test_every_faulty_cell_is_told_with_its_address(tmp_path: Path) -> None:
    text = HEAD + "1A,1,benzine,10,7,1.8,yes,\n1A,1,diesel,120,tall,1.8,perhaps,\n,1,diesel,5,7,1.8,,\n"
    with pytest.raises(InputFault) as refused:
        imported(tmp_path, text)
    told = {problem.place.rsplit(" ", 1)[1]: problem for problem in refused.value.problems}
    assert set(told) == {"C2", "A3", "E3", "G3", "A4"}  # A3: the label of row 2
    assert "use one of: gasoline" in told["C2"].wanted
    assert "yes or no" in told["G3"].wanted
    with pytest.raises(InputFault) as refused:
        imported(tmp_path, HEAD + "1A,1,diesel,120,7,1.8,yes,\n1A,1,diesel,5,7,1.8,yes,\n1A,1,diesel,5,7,1.8,yes,\n")
    assert [one.place.rsplit(" ", 1)[1] for one in refused.value.problems] == ["D2", "A3", "A4"]


def test_a_value_out_of_range_is_told_with_its_range_at_its_own_cell(tmp_path: Path) -> None:
    """The ranges are those that the survey's model declares; DEF (ISO 22241-1) is urea and water, without a blend."""
    with pytest.raises(InputFault) as refused:
        imported(tmp_path, HEAD + "1A,1,diesel,120,7,-1.8,yes,\n1B,1,DEF,5,7,1.8,yes,\n")
    told = {one.place.rsplit(" ", 1)[1]: (one.field, one.wanted) for one in refused.value.problems}
    assert told == {
        "D2": ("liquid.blend_percent", "a number is needed, at least 0 and at most 100"),
        "F2": ("filler.distance_m", "a number is needed, at least 0 and at most 30"),
        "D3": ("liquid.blend_percent", "DEF has no blend: it must be 0"),
    }


def test_a_liquid_or_blend_is_never_guessed(tmp_path: Path) -> None:
    with pytest.raises(InputFault, match=r"map one column to liquid\.family"):
        imported(tmp_path, "Position,Blend\n1A,10\n")
    with pytest.raises(InputFault, match=r"cell C2: liquid\.blend_percent"):
        imported(tmp_path, "Position,Product,Blend\n1A,gasoline,\n")
    assert imported(tmp_path, "Position,Product,Blend\n1A,DEF,\n")[0].liquid.family is LiquidFamily.DEF


def test_a_liquid_may_be_written_as_its_label_names_it(tmp_path: Path) -> None:
    """E and a number: percent ethanol in gasoline; B and a number: percent biodiesel in diesel (16 CFR 306)."""
    found = imported(tmp_path, "Position,Product\n1A,E85\n1B,b-20\n1C,DEF\n")
    assert [(one.liquid.family, one.liquid.blend_percent) for one in found] == [
        (LiquidFamily.GASOLINE, 85),
        (LiquidFamily.DIESEL, 20),
        (LiquidFamily.DEF, 0),
    ]
    with pytest.raises(InputFault, match=r"cell B2: liquid\.blend_percent"):
        imported(tmp_path, "Position,Product\n1A,diesel\n1B,B20\n")
    with pytest.raises(InputFault, match=r"cell C3.*B20 says 20 %"):
        imported(tmp_path, "Position,Product,Blend\n1A,E85,85\n1B,B20,5\n")
    with pytest.raises(InputFault, match="cell B2"):
        imported(tmp_path, "Position,Product\n1A,E850\n")


def test_a_workbook_is_read_like_a_table(tmp_path: Path) -> None:
    path = tmp_path / "station.xlsx"
    book = openpyxl.Workbook()
    page = book.active
    page.title = "Hoses"
    for row in (["Station survey"], [], ["Position", "Product", "Blend", "Prepay"], ["1A", "gasoline", 10, True]):
        page.append(row)
    book.save(path)
    page["C4"] = "ten"
    book.save(path)
    sheet = opened(path, sheet="Hoses")
    with pytest.raises(InputFault, match=r"sheet Hoses, cell C4"):
        positions_of_table(sheet)
    page["C4"] = 10
    book.save(path)
    sheet = opened(path)
    (position,) = positions_of_table(sheet)
    assert (position.label, position.prepay, position.liquid.blend_percent) == ("1A", True, 10)
    with pytest.raises(InputFault, match="use one of: Hoses"):
        opened(path, sheet="Other")


def workbook(tmp_path: Path, *rows: list[object], percent: str = "", merged: tuple[str, ...] = ()) -> OpenedTable:
    """Write a workbook as a spreadsheet would and read it; the cell ``percent`` shows a share as a percentage."""
    book = openpyxl.Workbook()
    page = book.active
    for row in rows:
        page.append(row)
    if percent:
        page[percent].number_format = "0%"
    for cells in merged:
        page.merge_cells(cells)
    book.save(tmp_path / "station.xlsx")
    return opened(tmp_path / "station.xlsx")


def test_titles_below_merged_heads_are_found_and_understood(tmp_path: Path) -> None:
    heads = ["Where", None, "Outlet", None, "Filler", None, "Liquid"]
    titles = ["Hose", "Pump", "Height (ft)", "Size", "Distance (m)", "Height (m)", "Product", "Blend"]
    rows = (["Birch Hollow"], heads, titles, ["1A", "1", 7, "3/4", 1.8, 0.9, "diesel", 5])
    sheet = workbook(tmp_path, *rows, merged=("A2:B2", "C2:D2", "E2:F2"))
    assert tuple(one.head for one in sheet.headings.columns)[:6] == (
        "Where",
        "Where",
        "Outlet",
        "Outlet",
        "Filler",
        "Filler",
    )
    (position,) = positions_of_table(sheet)
    assert position.outlet.height_m == pytest.approx(7 * 0.3048, abs=1e-9)
    assert (position.filler.distance_m, position.filler.height_m) == (1.8, 0.9)


def test_a_cell_merged_downwards_answers_for_every_row(tmp_path: Path) -> None:
    titles = ["Position", "Island", "Product", "Blend"]
    rows = (titles, ["1A", "North", "diesel", 5], ["1B", None, "diesel", 5], ["1C", None, "diesel", 5])
    sheet = workbook(tmp_path, *rows, merged=("B2:B3",))
    found = positions_of_table(sheet)
    assert [one.island for one in found] == ["North", "North", ""]


def test_a_share_shown_as_a_percentage_is_that_percentage(tmp_path: Path) -> None:
    """A spreadsheet keeps 85 % as 0.85; read as 0.85 % it would take E85 for plain gasoline."""
    sheet = workbook(tmp_path, ["Position", "Product", "Blend"], ["1A", "gasoline", 0.85], percent="C2")
    assert positions_of_table(sheet)[0].liquid.blend_percent == 85


def test_what_a_workbook_does_not_really_say_is_told(tmp_path: Path) -> None:
    titles = ["Position", "Product", "Blend", "Outlet size", "Notes"]
    sheet = workbook(
        tmp_path,
        titles,
        ["1A", "diesel", "=2+3", "3/4", date(2026, 3, 4)],
        ["1B", "diesel", 5, date(2026, 3, 4), ""],
    )
    with pytest.raises(InputFault) as refused:
        positions_of_table(sheet)
    told = {problem.place.rsplit(" ", 1)[1]: problem.wanted for problem in refused.value.problems}
    assert set(told) == {"C2", "D3"}  # a date among the notes is no fault
    assert "formula" in told["C2"]
    assert "date" in told["D3"]


def test_columns_that_only_carry_a_format_are_no_columns(tmp_path: Path) -> None:
    book = openpyxl.Workbook()
    page = book.active
    page.append(["Position", "Product", "Blend"])
    page.append(["1A", "diesel", 5])
    page["ZZ2"].number_format = "0.00"
    book.save(tmp_path / "s.xlsx")
    assert tuple(one.title for one in opened(tmp_path / "s.xlsx").headings.columns) == ("Position", "Product", "Blend")


def test_a_decimal_comma_is_read_only_where_a_person_says_so(tmp_path: Path) -> None:
    path = tmp_path / "s.csv"
    path.write_text("Tank, pump and hose list\nHose;Product;Blend;Outlet height (m)\n1A;petrol;10,0;2,15\n")
    sheet = opened(path)
    with pytest.raises(InputFault, match="cell C3"):
        positions_of_table(sheet)
    (position,) = positions_of_table(opened(path, decimal_comma=True))
    assert (position.liquid.blend_percent, position.outlet.height_m) == (10, 2.15)
    path.write_text("Hose;Product;Blend;Outlet height (mm)\n1A;petrol;10,0;2.150,5\n")
    assert positions_of_table(opened(path, decimal_comma=True))[0].outlet.height_m == 2.1505


def test_the_text_format_of_a_spreadsheet_is_read(tmp_path: Path) -> None:
    path = tmp_path / "s.txt"
    path.write_bytes("Hose\tProduct\tBlend\n1Ä\tdiesel\t5\n".encode("utf-16"))
    sheet = opened(path)
    assert positions_of_table(sheet)[0].label == "1Ä"


def test_a_mapping_can_be_corrected_by_column_or_title(tmp_path: Path) -> None:
    path = tmp_path / "s.csv"
    path.write_text("Nr;What;Percent;Label\nA;gasoline;10;x\n", encoding="utf-8")
    (position,) = positions_of_table(opened(path, {"A": "label", "What": "liquid.family", "Label": ""}))
    assert position.label == "A"
    with pytest.raises(InputFault, match=r"did you mean outlet\.height_m"):
        opened(path, {"A": "outlet.heigt_m"})
    with pytest.raises(InputFault, match="name one column of"):
        opened(path, {"Z": "label"})


def test_a_template_answers_what_a_row_leaves_out() -> None:
    sheet = pasted(pasted_rows("Label\tOutlet height\n7A\t2.0\n"))
    template = Position.model_validate({"label": "t", "liquid": {"family": "diesel", "blend_percent": 5}})
    (position,) = positions_of_table(sheet, template)
    assert (position.label, position.liquid.blend_percent, position.outlet.height_m) == ("7A", 5, 2.0)


def test_columns_are_named_as_in_a_spreadsheet() -> None:
    assert [column_letters(number) for number in (0, 25, 26, 51, 52, 701, 702)] == [
        "A",
        "Z",
        "AA",
        "AZ",
        "BA",
        "ZZ",
        "AAA",
    ]


@pytest.mark.parametrize(
    ("name", "content", "told"),
    [
        ("s.csv", b"Label\n\xff\n", "UTF-8"),
        ("s.csv", b"Label\n", "at least one row"),
        ("s.csv", b'Label\n"open\n', "valid CSV"),
        ("s.xlsx", b"no archive", "a workbook"),
        ("s.pdf", b"%PDF", ".txt or .xlsx"),
    ],
)
def test_a_file_that_is_no_table_is_refused(tmp_path: Path, name: str, content: bytes, told: str) -> None:
    path = tmp_path / name
    path.write_bytes(content)
    with pytest.raises(InputFault, match=told):
        opened(path)


# merging


def test_edits_of_different_fields_are_both_kept() -> None:
    base = survey("1A", "1B")
    mine = _changed(_changed(base, 0, prepay=False), 1, notes="mine")
    theirs = _changed(base, 0, hold_open_wanted=True)
    theirs = theirs.model_copy(update={"positions": (*theirs.positions, Position(label="2A"))})
    theirs = theirs.model_copy(update={"site": theirs.site.model_copy(update={"fenced": True})})
    found = merged(base, mine, theirs)
    assert found.conflicts == ()
    assert found.survey is not None
    first, second, added = found.survey.positions
    assert (first.prepay, first.hold_open_wanted, second.notes, added.label) == (False, True, "mine", "2A")
    assert found.survey.site.fenced
    assert merged(base, theirs, mine).survey == found.survey


def test_islands_and_the_answers_of_a_conversion_are_merged_too() -> None:
    base = survey("1A", "1B")
    mine = _changed(base, 0, island="North")
    theirs = _changed(base, 1, island="South")
    agency = base.conversion.model_copy(update={"agency": "carb", "under_living_quarters": True})
    theirs = theirs.model_copy(update={"conversion": agency})
    found = merged(base, mine, theirs)
    assert found.conflicts == ()
    assert found.survey is not None
    assert [one.island for one in found.survey.positions] == ["North", "South"]
    assert found.survey.conversion == agency
    both = merged(base, _changed(base, 0, island="North"), _changed(base, 0, island="South"))
    assert [(one.field, one.mine, one.theirs) for one in both.conflicts] == [("island", "North", "South")]


def test_the_same_field_changed_twice_is_a_conflict() -> None:
    base = survey("1A")
    found = merged(base, _changed(base, 0, notes="mine"), _changed(base, 0, notes="theirs"))
    assert [(one.position, one.field, one.base, one.mine, one.theirs) for one in found.conflicts] == [
        ("1A", "notes", "seen", "mine", "theirs")
    ]
    assert found.survey is not None
    assert found.survey.positions[0].notes == "mine"


def test_a_removal_goes_through_unless_the_other_changed_the_position() -> None:
    base = survey("1A", "1B")
    without = base.model_copy(update={"positions": base.positions[:1]})
    assert merged(base, without, base).survey == without
    assert merged(base, base, without).survey == without
    found = merged(base, without, _changed(base, 1, notes="new"))
    assert [(one.position, one.mine, one.theirs) for one in found.conflicts] == [("1B", "", "changed")]
    assert found.survey is not None
    assert len(found.survey.positions) == 2


def _changed(base: Survey, number: int, **changes: object) -> Survey:
    positions = list(base.positions)
    positions[number] = positions[number].model_copy(update=changes)
    return base.model_copy(update={"positions": tuple(positions)})
