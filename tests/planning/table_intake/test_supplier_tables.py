"""Tables of parts and prices as suppliers write them: messy ones are understood, hostile ones refused with a reason.

Conversions: 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 lb = 0.45359237 kg (international yard and pound agreement, 1959).
"""

from __future__ import annotations

import re
import zipfile
from collections.abc import Callable
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest

from planning.table_intake.supplier_tables import MAKER, MESSY, PLAIN, Messy, seen, workbook
from reliability.fuzz_mutations import rezipped
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.faults import InputFault
from spoutline.model.part import PartKind
from spoutline.planning.table_intake.cell_values import FaultKind
from spoutline.planning.table_intake.column_map import TableMap
from spoutline.planning.table_intake.raw_table import TextEncoding


@pytest.mark.parametrize("one", MESSY, ids=lambda one: one.name)
def test_a_messy_table_is_understood(one: Messy, tmp_path: Path) -> None:
    path = tmp_path / f"parts.{one.ending}"
    path.write_bytes(one.content)
    found = seen(path, one.table_map)
    assert [report.problem() for report in found.report.reports] == []
    assert tuple(line.number for line in found.lines) == one.numbers
    assert tuple(price.minor for line in found.lines for price in line.prices if price.minor is not None) == one.prices
    for key, value in one.values.items():
        first = found.lines[0].values.get(key)
        assert first == (pytest.approx(value) if isinstance(value, float) else value), key
    assert {line.maker for line in found.lines} == {MAKER}


def test_at_least_twenty_messy_tables_are_tried() -> None:
    assert len({one.name for one in MESSY}) >= 20


def test_a_section_says_the_kind_of_the_rows_below_it(tmp_path: Path) -> None:
    path = tmp_path / "p.csv"
    path.write_text("Part no,Text,Price\nSwivels,,\nQ-1,A,1\nCurb hoses:,,\nQ-2,B,2\nAccessories,,\nQ-3,C,3\n")
    kinds = {number: line.kind for number, line in seen(path).by_number().items()}
    assert kinds == {"Q-1": PartKind.SWIVEL, "Q-2": PartKind.CURB_HOSE, "Q-3": None}


@pytest.mark.parametrize(
    ("text", "address", "wanted", "kind", "nearest"),
    [
        ("Part no,Price\nQ-1,1,5\n", None, "", None, ""),  # a cell beyond the titles says nothing
        ('Part no,Price USD\nQ-1,"1,250"\n', "B2", "could be 1.250 or 1250", FaultKind.QUESTION, "1250"),
        ('Part no,Price USD\nQ-1,"10,5"\n', "B2", "decimal comma", FaultKind.QUESTION, "10.5"),
        ("Part no,Price USD\nQ-1,1.255\n", "B2", "at most 2 decimals", FaultKind.QUESTION, "1.26"),
        ("Part no,Price USD\nQ-1,€ 5\n", "B2", "names EUR and the column USD", FaultKind.FAULT, ""),
        ("Part no,Price USD\nQ-1,-5\n", "B2", "at least 0", FaultKind.FAULT, ""),
        ("Part no,Price USD\nQ-1,cheap\n", "B2", "write an amount", FaultKind.FAULT, ""),
        ("Part no,Bore\nQ-1,19\n", "B2", "in which unit", FaultKind.QUESTION, ""),
        ("Part no,Bore\nQ-1,3/4\n", "B2", "in which unit", FaultKind.QUESTION, ""),
        ("Part no,Bore (mm)\nQ-1,900\n", "B2", "at most 80", FaultKind.FAULT, ""),
        ("Part no,Bore (mm)\nQ-1,wide\n", "B2", "write a number", FaultKind.FAULT, ""),
        ("Part no,Bore (mm)\nQ-1,19 kg\n", "B2", "units", FaultKind.FAULT, ""),
        ("Part no,Bore (mm)\nQ-1,1e400\n", "B2", "ordinary size", FaultKind.FAULT, ""),
        ("Part no,Materials\nQ-1,aluminum nbr\n", "B2", "did you mean aluminium", FaultKind.FAULT, "aluminium"),
        ("Part no,Kind\nQ-1,swivvel\n", "B2", "did you mean swivel", FaultKind.FAULT, "swivel"),
        ("Part no,Reconnectable\nQ-1,perhaps\n", "B2", "yes or no", FaultKind.FAULT, ""),
        ("Part no,Inlet\nQ-1,3/4\n", "B2", "no thread standard", FaultKind.QUESTION, ""),
        ("Part no,Inlet\nQ-1,NPT 3/4\n", "B2", "neither male nor female", FaultKind.QUESTION, ""),
        ("Part no,Inlet\nQ-1,NPT 7/9 male\n", "B2", "sizes of NPT", FaultKind.FAULT, ""),
        ("Part no,Price USD\n,5\n", "A2", "of each part, or skip the row", FaultKind.FAULT, ""),
        ("Part no,Price USD\nQ-1,5\nQ-1,6\n", "A3", "row 2 has this number", FaultKind.FAULT, ""),
        ("Part no,Lead time\nQ-1,2.5 days\n", "B2", "whole number", FaultKind.FAULT, ""),
        ("Part no,End of sale\nQ-1,31.12.2026\n", "B2", "YYYY-MM-DD", FaultKind.FAULT, ""),
        ("Part no,Text\nQ-1,left\u202eright\n", "B2", "U+202E", FaultKind.FAULT, "leftright"),
    ],
)
def test_a_cell_that_is_wrong_or_open_is_told_with_its_address(
    tmp_path: Path, text: str, address: str | None, wanted: str, kind: FaultKind | None, nearest: str
) -> None:
    path = tmp_path / "p.csv"
    path.write_text(text, encoding="utf-8")
    reports = seen(path, TableMap(maker=MAKER)).report.reports
    if address is None:
        assert not [one for one in reports if "currency" not in one.wanted]
        return
    (report,) = reports
    assert report.address == f"{path}, cell {address}"
    assert wanted in report.wanted
    assert (report.kind, report.nearest) == (kind, nearest)


def test_two_spellings_of_one_number_are_told_as_one(tmp_path: Path) -> None:
    # U+00C4 and A with U+0308 are canonically equivalent (Unicode Standard Annex 15)
    path = tmp_path / "p.csv"
    path.write_text("Part no,Price USD\n\u00c4-1,5\nA\u0308-1,6\n", encoding="utf-8")
    (report,) = seen(path).report.reports
    assert "row 2 has this number" in report.wanted


def _zip(members: dict[str, bytes]) -> bytes:
    out = BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in members.items():
            archive.writestr(name, content)
    return out.getvalue()


def _sound() -> bytes:
    def fill(book: Any) -> None:
        book.active.append(("Part no", "Price USD"))
        book.active.append(("Q-1", 10))

    return workbook(fill)


def _changed(member: str, change: Callable[[bytes], bytes]) -> bytes:
    return rezipped(_sound(), lambda name, text: change(text) if name == member else text)


SHEET = "xl/worksheets/sheet1.xml"
HOSTILE: dict[str, tuple[str, bytes, str]] = {
    "an empty file": ("csv", b"", "titles"),
    "only titles that mean nothing": ("csv", b"a,b\nc,d\n", "titles"),
    "a picture": ("csv", b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR", "NUL byte"),
    "UTF-16 without its mark": ("csv", "Part no,Price\nQ-1,5\n".encode("utf-16-le"), "NUL byte"),
    "another code page": ("csv", "Part no,Text\nQ-1,Düse\n".encode("cp1252"), "windows-1252"),
    "bytes that are no text, far below": ("csv", b"Part no,Price\n" + b"Q-1,5\n" * 20_000 + b"\xff\xfe\n", "encoding"),
    "a cell of 200,000 characters": ("csv", b"Part no,Text\nQ-1," + b"x" * 200_000 + b"\n", "characters"),
    "a cell of 40,000 characters": ("csv", b"Part no,Text\nQ-1," + b"x" * 40_000 + b"\n", "far too long"),
    "a quote that never ends": ("csv", b'Part no,Text\nQ-1,"x\n' + b"Q,y\n" * 50_000, "valid CSV"),
    "text behind a quote": ("csv", b'Part no,Text\nQ-1,"x"y\n', "valid CSV"),
    "a file of another kind": ("pdf", b"%PDF-1.7", "ends in .csv"),
    "no workbook": ("xlsx", b"PK\x03\x04 nothing", "a spreadsheet can open"),
    "a text called workbook": ("xlsx", b"Part no,Price\nQ-1,5\n", "a spreadsheet can open"),
    "a zip of something else": ("xlsx", _zip({"a.txt": b"x"}), "a spreadsheet can open"),
    "very many members": ("xlsx", _zip({f"m{number}": b"" for number in range(2_500)}), "files is read"),
    "entities": (
        "xlsx",
        _changed("xl/workbook.xml", lambda text: b'<!DOCTYPE a [<!ENTITY b "c">]>' + text),
        "declare no entities",
    ),
    "very many cell formats": (
        "xlsx",
        _changed("xl/styles.xml", lambda text: text.replace(b"<cellXfs", b"<cellXfs>" + b"<xf/>" * 200_000, 1)),
        "elements",
    ),
    "a row far below": (
        "xlsx",
        _changed(SHEET, lambda text: text.replace(b'<row r="2"', b'<row r="999999999"')),
        "rows are read",
    ),
    "a sheet cut off": ("xlsx", _changed(SHEET, lambda text: text[: len(text) // 2]), "a spreadsheet can open"),
    "a number that is none": (
        "xlsx",
        _changed(SHEET, lambda text: text.replace(b"<v>10</v>", b"<v>99x</v>")),
        "a spreadsheet can open",
    ),
}


@pytest.mark.parametrize("name", HOSTILE)
def test_a_hostile_table_is_refused_with_a_reason(name: str, tmp_path: Path) -> None:
    ending, content, told = HOSTILE[name]
    path = tmp_path / f"p.{ending}"
    path.write_bytes(content)
    with pytest.raises(InputFault, match=re.escape(told)) as caught:
        seen(path)
    assert str(path) in str(caught.value)


def test_at_least_twenty_hostile_tables_are_tried() -> None:
    assert len(HOSTILE) >= 20


def test_formulas_without_results_and_a_false_dimension_are_told_and_drop_nothing(tmp_path: Path) -> None:
    def fill(book: Any) -> None:
        for row in (("Part no", "Price USD", "Text"), ("Q-1", "=1+1", "a"), ("Q-2", 5, "='C:\\[x.xlsx]S'!A1")):
            book.active.append(row)

    path = tmp_path / "p.xlsx"
    path.write_bytes(
        rezipped(
            workbook(fill), lambda _name, text: re.sub(rb'<dimension ref="[^"]*"', b'<dimension ref="A1:A1"', text)
        )
    )
    found = seen(path)
    assert [line.number for line in found.lines] == ["Q-1", "Q-2"]
    assert [(one.address[-2:], one.wanted.split(":")[0]) for one in found.report.reports] == [
        ("B2", "a formula without its result"),
        ("C3", "a formula without its result"),
    ]


def test_a_zip_bomb_is_refused_before_it_is_unpacked(tmp_path: Path) -> None:
    path = tmp_path / "p.xlsx"
    path.write_bytes(_zip({"xl/worksheets/sheet1.xml": bytes(2_000_000)}))
    kept = BOUNDS.intake_workbook_bytes
    object.__setattr__(BOUNDS, "intake_workbook_bytes", 1_000_000)
    try:
        with pytest.raises(InputFault, match="at most 1000000 bytes, unpacked"):
            seen(path)
    finally:
        object.__setattr__(BOUNDS, "intake_workbook_bytes", kept)


@pytest.mark.parametrize("name", ["intake_rows", "intake_cells", "intake_bytes", "intake_faults"])
def test_a_table_beyond_a_bound_is_refused_or_told_in_part(name: str, tmp_path: Path) -> None:
    path = tmp_path / "p.csv"
    path.write_text("Part no,Price USD\n" + "".join(f"Q-{number},x\n" for number in range(20)))
    kept = getattr(BOUNDS, name)
    object.__setattr__(BOUNDS, name, 10)
    try:
        if name == "intake_faults":
            report = seen(path).report
            assert (len(report.reports), report.faults) == (10, 20)
        else:
            with pytest.raises(InputFault, match="at most 10"):
                seen(path)
    finally:
        object.__setattr__(BOUNDS, name, kept)


def test_windows_1252_is_only_read_where_somebody_says_so(tmp_path: Path) -> None:
    path = tmp_path / "p.csv"
    path.write_bytes("Part no,Text\nQ-1,Düse\n".encode("cp1252"))
    with pytest.raises(InputFault, match="name its encoding"):
        seen(path)
    named = PLAIN.model_copy(update={"encoding": TextEncoding.WINDOWS_1252})
    assert seen(path, named).lines[0].values["name"] == "Düse"


def test_a_sheet_is_chosen_by_name_and_a_wrong_name_tells_the_others(tmp_path: Path) -> None:
    path = tmp_path / "p.xlsx"
    path.write_bytes(next(one for one in MESSY if one.name == "a hidden sheet first").content)
    assert [line.number for line in seen(path, sheet="2019 old").lines] == ["Q-OLD"]
    with pytest.raises(InputFault, match="2019 old, 2026"):
        seen(path, sheet="2027")
