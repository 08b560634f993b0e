"""No output of any command takes the place of what the program draws on, or of a file that it did not write."""

from __future__ import annotations

import argparse
import hashlib
import io
import os
import shutil
import zipfile
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import openpyxl
import pypdf
import pytest

from spoutline.bootstrap import Settings, open_workbench
from spoutline.cli.commands import COMMANDS
from spoutline.cli.outputs import InputFile, OutputFile, OutputFolder
from spoutline.documents.own_files import FileForm, is_own
from spoutline.model.faults import StoreFault

TERMS = """
[seller]
name = "Hedgerow Supply"
logo = "letterhead.png"
[customer]
name = "Hollow Ford Fuels"
[heading]
number = "HS-1"
dated = 2026-11-25
"""
# the smallest picture that the PNG specification (third edition) allows: 1 x 1, grey
PICTURE = bytes.fromhex(
    "89504e470d0a1a0a0000000d4948445200000001000000010800000000"
    "3a7e9b550000000a49444154789c6360000000020001"
    "48afa4710000000049454e44ae426082"
)


@pytest.fixture
def place(spoutline: Any, written: Callable[..., Path], tmp_path: Path, database_to_copy: Path) -> dict[str, Path]:
    """Return a folder with everything that commands read."""
    files = {"survey": written(), "book": Path(shutil.copy(database_to_copy, tmp_path / "own.sqlite3"))}
    for name, content in (("terms.toml", TERMS.encode()), ("letterhead.png", PICTURE), ("job.toml", b"")):
        files[name] = tmp_path / name
        files[name].write_bytes(content)
    profiles = tmp_path / "profiles"
    assert spoutline("profile", "copy", "us_general", "mine").code == 0
    files["profile"] = profiles / "mine.toml"
    prices = tmp_path / "prices"
    prices.mkdir()
    (prices / "lists.toml").write_text("")
    files["prices"] = prices / "lists.toml"
    files["hard link"] = tmp_path / "hard.pdf"
    os.link(files["book"], files["hard link"])
    return files


def digests(place: dict[str, Path]) -> dict[str, str]:
    return {name: hashlib.sha256(path.read_bytes()).hexdigest() for name, path in place.items()}


def command_lines(place: dict[str, Path], target: Path) -> Iterator[tuple[object, ...]]:
    survey, terms = place["survey"], place["terms.toml"]
    for option in ("--pdf", "--csv", "--xlsx"):
        yield "bill", survey, option, target
    for option in ("--pdf", "--xlsx", "--csv", "--pick-list", "--bill"):
        yield "quote", survey, "--terms", terms, "--price-lists", place["prices"].parent, option, target
    for option in ("--pdf", "--cautions", "--form", "--inspection", "--ics"):
        yield "pack", survey, "--job", place["job.toml"], "--in-service", "2026-12-01", option, target
    for option in ("--pdf", "--ics"):
        yield "convert", survey, option, target
    yield "programme", survey.parent, "--csv", target
    yield "demo", "marina", "--out", target
    yield "demo", "--terms", "--out", target
    yield "profile", "export", "us_general", "--out", target
    for option in ("--pdf", "--xlsx"):
        yield "quotation", "issue", 1, "--by", "Odile", option, target
    for option in ("--pdf", "--xlsx", "--csv"):
        yield "quotation", "print", 1, option, target
    for option in ("--pdf", "--bill"):
        yield "record", "read", place["job.toml"], "--survey", survey, option, target


@pytest.mark.parametrize(
    "name", ["survey", "book", "profile", "hard link", "wal", "backup", "resource", "terms.toml", "prices"]
)
def test_no_output_of_any_command_takes_the_place_of_a_file_in_use(
    spoutline: Any, place: dict[str, Path], name: str
) -> None:
    from spoutline import assets

    backups = place["book"].with_name("own.sqlite3.backups")
    backups.mkdir()
    own = {
        "backup": backups / "new.sqlite3",
        "wal": place["book"].with_name("own.sqlite3-wal"),
        "resource": assets.resources_folder() / "phrases" / "en.toml",
    }
    target, before = own.get(name) or place[name], digests(place)
    reads = {"survey": "survey", "terms.toml": "--terms", "prices": "--price-lists"}.get(name)
    tried = 0
    for line in command_lines(place, target):
        if reads == "survey" and target not in line[:-1] and line[0] != "programme":
            continue
        if reads not in (None, "survey") and (reads not in line or line[0] == "demo"):
            continue
        done = spoutline(*line, "--force", "--database", place["book"])
        assert done.code == 2, (line, done.out)
        assert "name another file" in done.err, (line, done.err)
        assert str(line[-2]) in done.err
        tried += 1
    assert tried >= 5
    assert digests(place) == before
    assert not own["wal"].exists()


def test_the_picture_of_the_letterhead_is_in_use_too(spoutline: Any, place: dict[str, Path]) -> None:
    picture = place["letterhead.png"]
    done = spoutline("quote", place["survey"], "--terms", place["terms.toml"], "--force", "--pdf", picture)
    assert done.code == 2
    assert "this is the picture of the letterhead" in done.err
    assert picture.read_bytes() == PICTURE


def test_a_file_that_the_program_did_not_write_is_left_unless_forced(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    survey = written()
    for ending in ("pdf", "csv", "xlsx"):
        path = tmp_path / f"letter.{ending}"
        path.write_bytes(b"somebody's work")
        refused = spoutline("bill", survey, f"--{ending}", path)
        assert refused.code == 2
        assert "was not written by the program" in refused.err
        assert "--force" in refused.err
        assert path.read_bytes() == b"somebody's work"
        assert spoutline("bill", survey, f"--{ending}", path, "--force").code == 0
        once = path.read_bytes()
        assert spoutline("bill", survey, f"--{ending}", path).code == 0  # its own file it replaces
        assert path.read_bytes() == once


def test_terms_and_jurisdictions_are_written_by_people(spoutline: Any, tmp_path: Path) -> None:
    path = tmp_path / "terms.toml"
    assert spoutline("demo", "--terms", "--out", path).code == 0
    assert spoutline("demo", "--terms", "--out", path).code == 2
    assert spoutline("demo", "--terms", "--out", path, "--force").code == 0


def test_a_filled_form_and_an_edited_workbook_are_somebodys_work(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    survey, form, book = written(), tmp_path / "form.pdf", tmp_path / "bill.xlsx"
    assert spoutline("pack", survey, "--form", form).code == 0
    assert spoutline("bill", survey, "--xlsx", book).code == 0
    assert is_own(form, FileForm.PDF)
    assert is_own(book, FileForm.XLSX)
    writer = pypdf.PdfWriter(pypdf.PdfReader(form), incremental=True)
    writer.update_page_form_field_values(writer.pages[0], {"done_by": "Merle"}, auto_regenerate=False)
    filled = io.BytesIO()
    writer.write(filled)
    form.write_bytes(filled.getvalue())
    workbook = openpyxl.load_workbook(book)
    workbook.active["A2"] = "counted by hand"
    workbook.save(book)
    before = form.read_bytes(), book.read_bytes()
    assert spoutline("pack", survey, "--form", form).code == 2
    assert spoutline("bill", survey, "--xlsx", book).code == 2
    assert (form.read_bytes(), book.read_bytes()) == before


def test_marks_of_each_form_are_told_from_files_of_others(tmp_path: Path) -> None:
    samples = {
        FileForm.PDF: b"%PDF-1.7\n/Producer (Another)\n%%EOF\n",
        FileForm.CSV: "\ufeffPart,Quantity\r\n".encode(),
        FileForm.ICS: b"BEGIN:VCALENDAR\r\nPRODID:-//Example Corp//EN\r\n",  # the form of RFC 5545, 3.7.3
        FileForm.HTML: b'<html><head><meta name="generator" content="other"></head></html>',
        FileForm.JSON: b'{"format": "geojson"}',
        FileForm.TOML: b'format = "spoutline-terms"',
        FileForm.XLSX: b"PK\x03\x04 broken",
    }
    for form, content in samples.items():
        for odd in (content, b"", b"\xff\x00" * 40):
            path = tmp_path / form.value
            path.write_bytes(odd)
            assert not is_own(path, form), form
    with zipfile.ZipFile(tmp_path / "xlsx", "w") as archive:
        archive.writestr("docProps/core.xml", "<x/>")
    assert not is_own(tmp_path / "xlsx", FileForm.XLSX)
    for form, text in (
        (FileForm.ICS, "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Spoutline//x//EN\r\n"),
        (FileForm.HTML, '<meta name="generator" content="Spoutline 1">'),
        (FileForm.JSON, '{"format": "spoutline-survey"}'),
    ):
        (tmp_path / "own").write_text(text)
        assert is_own(tmp_path / "own", form)


def actions_of(parser: argparse.ArgumentParser) -> Iterator[argparse.Action]:
    for action in parser._actions:
        if isinstance(action, argparse._SubParsersAction):
            for below in action.choices.values():
                yield from actions_of(below)
        else:
            yield action


def test_every_argument_that_names_a_file_says_whether_it_is_read_or_written() -> None:
    from_settings = {"profiles", "price_lists"}
    seen: set[type] = set()
    for command in COMMANDS:
        parser = argparse.ArgumentParser()
        command.arguments(parser)
        for action in actions_of(parser):
            names_a_file = action.type is Path or str(action.metavar) in ("SURVEY", "FILE", "FOLDER")
            if names_a_file and action.dest not in from_settings:
                assert isinstance(action, InputFile | OutputFile | OutputFolder), (command.name, action.dest)
                seen.add(type(action))
    assert seen == {InputFile, OutputFile, OutputFolder}


# issuing and its papers


@pytest.fixture
def draft(spoutline: Any, place: dict[str, Path]) -> Callable[..., Any]:
    def go(*arguments: object) -> Any:
        return spoutline(*arguments, "--database", place["book"])

    assert go("quotation", "keep", place["survey"], "--terms", place["terms.toml"], "--by", "Odile").code == 0
    return go


def status(go: Callable[..., Any]) -> str:
    return str(go("quotation", "list").out.split()[3])


def test_a_quotation_is_issued_with_its_papers_or_not_at_all(
    draft: Callable[..., Any], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    pdf, book = tmp_path / "q.pdf", tmp_path / "q.xlsx"
    asked = ("quotation", "issue", 1, "--by", "Odile", "--pdf", pdf)
    refused = draft(*asked, "--xlsx", tmp_path / "missing" / "q.xlsx")
    assert refused.code == 2
    assert "the folder" in refused.err
    assert status(draft) == "draft"
    assert not pdf.exists()
    move = Path.replace

    def full(part: Path, target: Path) -> Path:
        if target.name == "q.xlsx":
            raise OSError(28, "No space left on device")
        return move(part, target)

    with monkeypatch.context() as patch:
        patch.setattr(Path, "replace", full)
        failed = draft(*asked, "--xlsx", book)
    assert failed.code == 2
    assert "No space left on device. Nothing was written." in failed.err
    assert status(draft) == "draft"
    assert not pdf.exists()
    assert draft(*asked, "--xlsx", book).code == 0
    assert status(draft) == "issued"
    once = pdf.read_bytes()
    assert draft("quotation", "print", 1, "--pdf", pdf).code == 0
    assert pdf.read_bytes() == once


def test_where_the_book_fails_at_the_last_moment_no_paper_stays(
    draft: Callable[..., Any], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from sqlalchemy.orm import Session

    pdf = tmp_path / "q.pdf"

    def lost(_session: Session) -> None:
        assert pdf.exists()  # in its place already, so that both happen at one moment
        raise StoreFault("The database is gone.")

    with monkeypatch.context() as patch:
        patch.setattr(Session, "commit", lost)
        failed = draft("quotation", "issue", 1, "--by", "Odile", "--pdf", pdf)
    assert failed.code == 2
    assert not pdf.exists()
    assert status(draft) == "draft"
    assert not [path.name for path in tmp_path.iterdir() if path.name.startswith(".")]


def test_a_record_is_kept_with_its_papers_or_not_at_all(
    spoutline: Any, place: dict[str, Path], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    form, survey, bill = tmp_path / "form.pdf", place["survey"], tmp_path / "built.pdf"
    assert spoutline("pack", survey, "--form", form).code == 0
    reader = pypdf.PdfReader(form)
    name = next(name for name in reader.get_fields() if name.endswith("done_by"))
    writer = pypdf.PdfWriter(reader)
    writer.update_page_form_field_values(None, {name: "Merle"}, auto_regenerate=False)
    writer.write(form)

    def kept() -> int:
        bench = open_workbench(Settings(database=str(place["book"]), profiles=tmp_path / "profiles"))
        count = len(bench.packing().records().commissioning("Maple Ferry Fuels"))
        bench.close()
        return count

    line = ("record", "read", form, "--survey", survey, "--bill", bill, "--database", place["book"])

    def full(_part: Path, _target: Path) -> Path:
        raise OSError(28, "No space left on device")

    with monkeypatch.context() as patch:
        patch.setattr(Path, "replace", full)
        assert spoutline(*line).code == 2
    assert kept() == 0
    assert not bill.exists()
    assert spoutline(*line).code in (0, 1)
    assert kept() == 1
    assert bill.exists()
