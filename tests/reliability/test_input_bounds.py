"""Each bound on what is read: just within it a file is taken or judged by its content, beyond it is refused by name."""

from __future__ import annotations

import io
import json
import struct
import zlib
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from planning.position_tables import opened
from program_runs import Spoutline
from reliability.fuzz_mutations import form_of, rezipped
from reliability.fuzz_seeds import (
    LISTS,
    PRICES,
    STOCK,
    catalogue_source,
    one_position,
    picture,
    saved_page,
    workbook,
    workbook_of_a_spreadsheet,
)
from spoutline.book.agreed_file import read_agreed_file
from spoutline.book.pack_job_text import read_pack_job
from spoutline.book.record_files import form_content, photo_of, saved_page_text
from spoutline.book.stock_text import read_stock
from spoutline.book.survey_text import read_survey, survey_from_json, survey_to_json
from spoutline.book.terms_files import TermsFolders, read_logo
from spoutline.book.terms_text import read_terms
from spoutline.catalogue.exchange import exchange_bytes
from spoutline.catalogue.exchange_reader import ExchangeReader
from spoutline.catalogue.price_lists import read_price_lists
from spoutline.catalogue.source import read_source
from spoutline.documents.own_files import FileForm, is_own
from spoutline.documents.pack.form_reading import records_from_form
from spoutline.documents.pack.tablet_reading import form_from_page
from spoutline.input_bounds.bounds import BOUNDS, InputBounds
from spoutline.input_bounds.picture import check_picture
from spoutline.input_bounds.reading import bounded_bytes
from spoutline.input_bounds.toml_text import toml_table
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault
from spoutline.planning.conversion.run_log import RunLog
from spoutline.planning.survey_import.clipboard import pasted_rows
from spoutline.planning.table_intake.raw_table import RawRow
from spoutline.ruletables.files import read_text

from planning.quoting_terms import terms_of  # isort: skip

SetBound = Callable[[str, int], None]


@pytest.fixture
def bound() -> Iterator[SetBound]:
    """Return a function that lowers a bound for the test, so that the file beyond it can be small."""
    kept = {name: getattr(BOUNDS, name) for name in InputBounds.__dataclass_fields__}

    def lower(name: str, value: int) -> None:
        assert value < kept[name]
        object.__setattr__(BOUNDS, name, value)

    yield lower
    for name, value in kept.items():
        object.__setattr__(BOUNDS, name, value)


def read_rows(path: Path) -> list[RawRow]:
    """Return the rows below the titles of a table of positions."""
    table = opened(path)
    return [row for row in table.table.rows() if row.number >= table.headings.first_row and not row.is_blank]


def file(folder: Path, name: str, content: bytes | str) -> Path:
    path = folder / name
    path.write_bytes(content.encode() if isinstance(content, str) else content)
    return path


SURVEY = survey_to_json(one_position())


@pytest.mark.parametrize(
    ("name", "read", "ending"),
    [
        ("survey_bytes", read_survey, "json"),
        ("document_bytes", read_agreed_file, "json"),
        ("toml_bytes", read_terms, "toml"),
        ("toml_bytes", read_pack_job, "toml"),
        ("toml_bytes", read_text, "toml"),
        ("stock_bytes", read_stock, "csv"),
        ("form_bytes", form_content, "pdf"),
        ("tablet_bytes", saved_page_text, "json"),
        ("picture_bytes", photo_of, "png"),
        ("table_bytes", read_rows, "xlsx"),
        ("text_table_bytes", read_rows, "csv"),
    ],
)
def test_a_file_of_too_many_bytes_is_refused_and_never_held(
    bound: SetBound, tmp_path: Path, name: str, read: Callable[[Path], object], ending: str
) -> None:
    bound(name, 1000)
    with pytest.raises(InputFault, match="at most 1000 bytes"):
        read(file(tmp_path, f"large.{ending}", b" " * 1001))


def test_a_file_far_larger_than_the_memory_for_it_is_read_no_further_than_its_bound(tmp_path: Path) -> None:
    path = tmp_path / "huge.json"
    with path.open("wb") as stream:
        stream.truncate(300 * 2**20)  # holes: it takes no room on the disk
    for read in (read_survey, read_terms, read_stock, photo_of, form_content, read_agreed_file):
        with pytest.raises(InputFault, match="bytes are read"):
            read(path)
    assert not any(is_own(path, form) for form in FileForm)


def test_no_more_than_the_bound_is_read(tmp_path: Path) -> None:
    path = file(tmp_path, "large", bytes(101))
    with pytest.raises(InputFault, match="at most 100 bytes"):
        bounded_bytes(path, 100, "file", "a small file is needed")
    assert bounded_bytes(path, 101, "file", "a small file is needed") == bytes(101)


def test_too_much_on_standard_input_is_refused(bound: SetBound, spoutline: Spoutline) -> None:
    bound("survey_bytes", len(SURVEY.encode()))
    assert spoutline("plan", "-", stdin=SURVEY.encode()).code == 0
    done = spoutline("plan", "-", stdin=SURVEY.encode() + b" ")
    assert done.code == 2
    assert "standard input: file: more than" in done.err


@pytest.mark.parametrize(
    ("name", "value", "text", "told"),
    [
        ("json_objects", 4, "[[],[],[],[]]", "about 5 objects and lists"),
        ("json_values", 3, "[1,2,3,4,5]", "about 4 values"),
        ("json_members", 2, '{"a": 1, "b": 2, "c": 3}', "3 fields of one object"),
        ("json_unknown", 1, '{"a": 1, "b": 2}', "2 unknown fields"),
    ],
)
def test_a_json_document_beyond_a_bound_is_refused(
    bound: SetBound, name: str, value: int, text: str, told: str
) -> None:
    bound(name, value)
    with pytest.raises(InputFault, match=told):
        survey_from_json(text, "s.json")


def test_a_document_with_far_too_many_faults_is_told_in_one_line(bound: SetBound) -> None:
    bound("problems", 3)
    faulty = json.loads(SURVEY)
    faulty["positions"][0] |= {"duty": 1, "prepay": "x", "overhead": "x", "notes": 5}
    with pytest.raises(InputFault) as caught:
        survey_from_json(json.dumps(faulty), "s.json")
    (problem,) = caught.value.problems
    assert problem.field == "survey"
    assert problem.value.endswith(" faults")


def large_survey(change: Callable[[dict[str, Any]], None]) -> str:
    """Return a survey of more characters than are read at once, each of its positions changed."""
    document = json.loads(SURVEY)
    (one,) = document["positions"]
    one["notes"] = "x" * 1900
    document["positions"] = [json.loads(json.dumps(one)) | {"label": f"L{number}"} for number in range(1100)]
    for position in document["positions"]:
        change(position)
    return json.dumps(document)


def test_a_large_document_with_far_too_many_faults_is_refused_before_all_are_made(tmp_path: Path) -> None:
    text = large_survey(lambda position: position.update(filler={"plan_legs_m": ["x"] * 40}))
    with pytest.raises(InputFault, match="more than 2000 faults"):
        survey_from_json(text, "s.json")
    agreed = json.dumps({"positions": [{"label": "x" * 50} | {f"f{k}": "" for k in range(400)}] * 700})
    with pytest.raises(InputFault, match="more than 2000 faults"):
        read_agreed_file(file(tmp_path, "a.json", agreed))


def test_a_large_document_with_few_faults_is_told_each_of_them_and_a_sound_one_is_read() -> None:
    assert len(survey_from_json(large_survey(lambda _: None), "s.json").positions) == 1100
    text = large_survey(lambda position: position.update(duty="x") if position["label"] in ("L3", "L900") else None)
    with pytest.raises(InputFault) as caught:
        survey_from_json(text, "s.json")
    assert [problem.field for problem in caught.value.problems] == ["positions[3].duty", "positions[900].duty"]


def test_an_entry_of_a_large_document_with_far_too_much_in_it_is_refused(bound: SetBound) -> None:
    bound("json_entry_values", 60)
    text = large_survey(lambda position: position.update(other_fillers=[{}] * 61))
    with pytest.raises(InputFault, match=r"positions\[0\]: about \d+ values"):
        survey_from_json(text, "s.json")


@pytest.mark.parametrize(
    ("name", "value", "text", "told"),
    [
        ("toml_bytes", 10, "a = 1\nb = 22\n", "13 characters"),
        ("toml_entries", 2, "a = [1, 2, 3]", "3 entries"),
        ("toml_entries", 2, "a = 1\nb = 2\nc = 3", "3 entries"),
        ("nesting", 3, "a = [[[[1]]]]", "more than 3 levels"),
    ],
)
def test_a_toml_text_beyond_a_bound_is_refused(bound: SetBound, name: str, value: int, text: str, told: str) -> None:
    bound(name, value)
    with pytest.raises(InputFault, match=told):
        toml_table(text, "t.toml", "terms")


def test_a_dotted_name_of_very_many_parts_is_refused_before_it_is_read() -> None:
    # TOML v1.0.0, dotted keys: each dot makes a table in the one before it
    with pytest.raises(InputFault, match="levels"):
        toml_table("a." * 400_000 + "a = 1", "t.toml", "terms")
    assert toml_table("a." * 15 + "a = 1", "t.toml", "terms")
    assert toml_table('a = "' + "It is. " * 60 + '"', "t.toml", "terms")


def test_too_many_lines_of_stock_are_refused(bound: SetBound, tmp_path: Path) -> None:
    bound("stock_lines", 3)
    path = file(tmp_path, "s.csv", STOCK)
    assert len(read_stock(path).lines) == 3
    with pytest.raises(InputFault, match="at most 3 lines"):
        read_stock(file(tmp_path, "s.csv", STOCK + "X-1,1\n"))


def test_price_lists_and_parts_of_too_many_bytes_are_refused(bound: SetBound, tmp_path: Path) -> None:
    file(tmp_path, "lists.toml", LISTS)
    file(tmp_path, "own.csv", PRICES)
    assert read_price_lists(tmp_path)
    catalogue_source(tmp_path / "source")
    assert read_source(tmp_path / "source").parts
    bound("price_bytes", 50)
    with pytest.raises(InputFault, match="at most 50 bytes"):
        read_price_lists(tmp_path)
    bound("catalogue_bytes", 500)
    with pytest.raises(InputFault, match="at most 500 bytes"):
        read_source(tmp_path / "source")


@pytest.mark.parametrize(
    ("name", "value", "told"),
    [
        ("form_objects", 4, "5 objects"),
        ("form_dictionaries", 5, "7 dictionaries"),
        ("form_fields", 1, "more than 1 fields"),
        ("form_positions", 1, "2 positions"),
    ],
)
def test_a_form_beyond_a_bound_is_refused(bound: SetBound, name: str, value: int, told: str) -> None:
    bound(name, value)
    with pytest.raises(InputFault, match=told):
        records_from_form(form_of([(b"p1_tag", b"(x)"), (b"p2_tag", b"(x)")]), "f.pdf")


@pytest.mark.parametrize(
    ("name", "value", "told"),
    [
        ("form_fields", 3, "more than 3 fields"),
        ("form_positions", 0, "1 positions"),
        ("tablet_photos", 1, "2 of 1A"),
        ("tablet_photo_bytes", 100, "at most 100 bytes"),
        ("tablet_total_bytes", 500, "at most 500 bytes"),
        ("jpeg_pixels", 1199, "a picture of 40 x 30 pixels"),
        ("picture_pieces", 2, "more than 2 pieces"),
    ],
)
def test_a_saved_page_beyond_a_bound_is_refused(bound: SetBound, name: str, value: int, told: str) -> None:
    whole = saved_page(pictures=2)
    assert len(form_from_page(whole, "f.json", "Signature").records[0].photos) == 2
    bound(name, value)
    with pytest.raises(InputFault, match=told):
        form_from_page(whole, "f.json", "Signature")


def png_of(width: int, height: int) -> bytes:
    """Return a picture whose size stands in its head alone (PNG Specification, 3rd edition, 11.2.1)."""
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    pieces = ((b"IHDR", head), (b"IDAT", zlib.compress(b"")), (b"IEND", b""))
    made = b"\x89PNG\r\n\x1a\n"
    for kind, content in pieces:
        made += struct.pack(">I", len(content)) + kind + content + struct.pack(">I", zlib.crc32(kind + content))
    return made


def test_a_picture_of_far_too_many_pixels_is_never_unpacked(bound: SetBound, tmp_path: Path) -> None:
    with pytest.raises(InputFault, match="a picture of 12000 x 12000 pixels"):
        photo_of(file(tmp_path, "bomb.png", png_of(12_000, 12_000)))
    with pytest.raises(InputFault, match="far too many pixels"):
        photo_of(file(tmp_path, "bomb.png", png_of(60_000, 60_000)))
    for form, name in (("PNG", "png_pixels"), ("JPEG", "jpeg_pixels")):
        check_picture(picture(form), "p", "photo")
        bound(name, 40 * 30 - 1)
        with pytest.raises(InputFault, match="a picture of 40 x 30 pixels"):
            check_picture(picture(form), "p", "photo")


@pytest.mark.parametrize(
    ("form", "place", "piece"),
    [
        ("PNG", 33, b"\x00\x00\x00\x00tEXt" + struct.pack(">I", zlib.crc32(b"tEXt"))),
        ("JPEG", 2, b"\xff\xfe\x00\x02"),  # an empty comment (ITU-T T.81, B.2.4.5)
    ],
)
def test_a_picture_of_very_many_pieces_is_refused(bound: SetBound, form: str, place: int, piece: bytes) -> None:
    bound("picture_pieces", 30)
    whole = picture(form)
    check_picture(whole, "p", "photo")
    with pytest.raises(InputFault, match="more than 30 pieces"):
        check_picture(whole[:place] + piece * 30 + whole[place:], "p", "photo")


@pytest.mark.parametrize("form", ["PNG", "JPEG"])
def test_a_damaged_picture_is_refused_before_it_comes_onto_paper(tmp_path: Path, form: str) -> None:
    whole = picture(form, (400, 300))
    path = file(tmp_path, "p.png", whole[: len(whole) // 2])
    with pytest.raises(InputFault, match="a PNG or JPEG picture is needed"):
        photo_of(path)
    terms = terms_of(seller={"name": "Hedgerow Supply", "logo": "p.png"})
    with pytest.raises(InputFault, match=r"seller\.logo"):
        read_logo(terms, TermsFolders(tmp_path, tmp_path))


def test_a_very_large_photo_is_drawn_from_a_smaller_copy(monkeypatch: pytest.MonkeyPatch) -> None:
    from PIL import Image

    from spoutline.documents.pdf import photo

    content = picture("JPEG", (800, 600))
    assert photo.drawable(content, "p", "photo") == content
    monkeypatch.setattr(photo, "_WHOLE_PIXELS", 10_000)
    monkeypatch.setattr(photo, "_COPY", (100, 100))
    with Image.open(io.BytesIO(photo.drawable(content, "p", "photo"))) as copy:
        assert (copy.format, copy.size) == ("JPEG", (200, 150))  # a quarter is the least that is not below the wish


def test_a_letterhead_of_too_many_bytes_is_refused(bound: SetBound, tmp_path: Path) -> None:
    content = picture("PNG")
    file(tmp_path, "p.png", content)
    terms = terms_of(seller={"name": "Hedgerow Supply", "logo": "p.png"})
    assert read_logo(terms, TermsFolders(tmp_path, tmp_path))
    bound("letterhead_bytes", len(content) - 1)
    with pytest.raises(InputFault, match="at most"):
        read_logo(terms, TermsFolders(tmp_path, tmp_path))


@pytest.mark.parametrize(
    ("name", "value", "told"),
    [("table_rows", 3, "more than 3"), ("table_cells", 19, "more than 19"), ("cell_characters", 7, "far too long")],
)
@pytest.mark.parametrize("ending", ["csv", "xlsx"])
def test_a_table_beyond_a_bound_is_refused(
    bound: SetBound, tmp_path: Path, name: str, value: int, told: str, ending: str
) -> None:
    rows = "Label,Liquid,Blend,Duty,Hook height\n" + "1,gasoline,10,car,1.2\n" * 3
    path = file(tmp_path, f"t.{ending}", rows if ending == "csv" else workbook(rows=3))
    assert len(read_rows(path)) == 3
    bound(name, value)
    with pytest.raises(InputFault, match=f"{told}|a row of the number 4"):
        read_rows(path)


def test_columns_beyond_the_bound_are_no_part_of_a_table(bound: SetBound, tmp_path: Path) -> None:
    bound("table_columns", 2)
    assert [one.title for one in opened(file(tmp_path, "t.csv", "Label,Duty,Notes\n1,car,x\n")).headings.columns] == [
        "Label",
        "Duty",
    ]


def test_a_text_too_long_for_a_title_names_no_column(tmp_path: Path) -> None:
    sheet = opened(file(tmp_path, "t.csv", f"Label,{'(' * 30_000}\n1,car\n"))
    assert [one.field.key if one.field else None for one in sheet.mapping] == ["label", None]


def test_pasted_cells_beyond_a_bound_are_refused(bound: SetBound) -> None:
    assert pasted_rows("a\tb\nc\td\n") == [["a", "b"], ["c", "d"]]
    bound("table_rows", 1)
    with pytest.raises(InputFault, match="clipboard: rows"):
        pasted_rows("a\tb\nc\td\n")
    bound("pasted_characters", 3)
    with pytest.raises(InputFault, match="8 characters"):
        pasted_rows("a\tb\nc\td\n")
    with pytest.raises(InputFault, match="clipboard, line"):
        bound("cell_characters", 1)
        object.__setattr__(BOUNDS, "pasted_characters", 10**6)
        pasted_rows("x" * 200_000)


SHEET, STYLES, STRINGS = "xl/worksheets/sheet1.xml", "xl/styles.xml", "xl/sharedStrings.xml"


def _with(member: str, change: Callable[[bytes], bytes]) -> bytes:
    whole = workbook_of_a_spreadsheet() if member == STRINGS else workbook()
    return rezipped(whole, lambda name, text: change(text) if name == member else text)


@pytest.mark.parametrize(
    ("name", "value", "content", "told"),
    [
        ("workbook_members", 3, workbook(), "files is not usable"),
        ("workbook_bytes", 900, workbook(), "bytes is not usable"),
        ("cell_elements", 30, workbook(rows=60), "more than 30 elements"),
        (
            "style_elements",
            90,
            _with(STYLES, lambda text: text.replace(b"<cellXfs", b"<a/>" * 200 + b"<cellXfs")),
            "90 el",
        ),
        (
            "text_elements",
            90,
            _with(STRINGS, lambda text: text.replace(b"</sst>", b"<si/>" * 200 + b"</sst>")),
            "90 el",
        ),
        ("other_elements", 60, _with("docProps/core.xml", lambda text: text + b"<a/>" * 200), "60 el"),
        (
            "merged_cells",
            1,
            _with(
                SHEET,
                lambda text: text.replace(
                    b"</sheetData>", b'</sheetData><mergeCells><mergeCell ref="A2:A4"/></mergeCells>'
                ),
            ),
            "merged",
        ),
    ],
)
def test_a_workbook_beyond_a_bound_is_refused(
    bound: SetBound, tmp_path: Path, name: str, value: int, content: bytes, told: str
) -> None:
    path = file(tmp_path, "t.xlsx", content)
    bound(name, value)
    with pytest.raises(InputFault, match=told):
        read_rows(path)


@pytest.mark.parametrize("number", [b"99999999999", b"10001", b"-1", b"x", b"1e9"])
def test_a_row_far_below_all_others_is_refused_at_once(tmp_path: Path, number: bytes) -> None:
    # ECMA-376 Part 1, 18.3.1.73: r is the row's number, and rows that are not there are empty
    content = _with(SHEET, lambda text: text.replace(b'<row r="3"', b'<row r="%s"' % number))
    with pytest.raises(InputFault, match="a row of the number"):
        read_rows(file(tmp_path, "t.xlsx", content))


def test_a_row_left_out_of_a_workbook_is_an_empty_one(tmp_path: Path) -> None:
    content = _with(SHEET, lambda text: text.replace(b'<row r="4"', b'<row r="400"').replace(b'"A4"', b'"A400"'))
    assert [row.number for row in read_rows(file(tmp_path, "t.xlsx", content))] == [2, 3, 400]


@pytest.mark.parametrize("dimension", ["A1:A2", "A1:XFD1048576", "A1", "ZZ99:A1"])
def test_a_false_dimension_drops_no_row_and_adds_none(tmp_path: Path, dimension: str) -> None:
    # ECMA-376 Part 1, 18.3.1.35: the dimension is optional and says what is used; it gives no leave to ignore rows
    rows = read_rows(file(tmp_path, "t.xlsx", workbook(rows=3, dimension=dimension)))
    assert [row.cells for row in rows] == [(str(n), "gasoline", "10", "car", "1.2") for n in (1, 2, 3)]


def test_own_papers_beyond_the_bound_are_taken_for_anothers(bound: SetBound, tmp_path: Path) -> None:
    path = file(tmp_path, "o.json", '{"format": "spoutline-plan"}')
    assert is_own(path, FileForm.JSON)
    bound("own_file_bytes", 10)
    assert not is_own(path, FileForm.JSON)


@pytest.mark.parametrize("name", ["exchange_bytes", "exchange_unpacked_bytes", "exchange_rows"])
def test_an_exchange_file_beyond_a_bound_is_refused(bound: SetBound, tmp_path: Path, name: str) -> None:
    entries = [CatalogueEntry(number=f"QX-{number}", maker="Quillwort Works") for number in range(3)]
    path = file(tmp_path, "parts.zip", exchange_bytes(entries))
    with ExchangeReader(path) as reader:
        assert len(list(reader.entries())) == 3
    bound(name, 2)
    with pytest.raises(InputFault, match="at most 2 "), ExchangeReader(path) as reader:
        list(reader.entries())


def test_a_file_of_a_run_beyond_the_bound_is_refused(bound: SetBound, tmp_path: Path) -> None:
    kept = tmp_path / "north.run"
    with RunLog(kept, "a"):
        pass
    with RunLog(kept, "a"):  # as it is, it is taken up again
        pass
    bound("run_bytes", 10)
    before = kept.read_bytes()
    with pytest.raises(InputFault, match="resume"):
        RunLog(kept, "a")
    assert kept.read_bytes() == before


def test_every_bound_has_a_test() -> None:
    text = Path(__file__).read_text(encoding="utf-8")
    tried_at_its_own_size = {"title_characters"}
    tests = Path(__file__).parents[1]
    for beside in ("planning/table_intake/test_supplier_tables.py", "stores/catalogue/test_part_files.py"):
        text += (tests / beside).read_text(encoding="utf-8")
    bounds = set(InputBounds.__dataclass_fields__)
    assert {name for name in bounds if f'"{name}"' not in text} <= tried_at_its_own_size
