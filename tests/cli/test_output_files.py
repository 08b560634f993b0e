"""Files are written whole or not at all, the same bytes for the same survey, and never over the survey itself."""

from __future__ import annotations

import csv
import io
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import openpyxl

from paper_text import pages_of, text_of


def test_bill_writes_the_three_forms_asked_for(spoutline: Any, written: Callable[..., Path], tmp_path: Path) -> None:
    pdf, table, book = tmp_path / "bill.pdf", tmp_path / "bill.csv", tmp_path / "bill.xlsx"
    done = spoutline("bill", written(), "--pdf", pdf, "--csv", table, "--xlsx", book)
    assert done.code == 0
    assert done.out == ""
    assert len(pages_of(pdf)) >= 1
    assert len(list(csv.reader(io.StringIO(table.read_text(encoding="utf-8-sig"))))) > 3
    assert openpyxl.load_workbook(book).sheetnames
    assert sorted(path.name for path in tmp_path.iterdir()) == ["bill.csv", "bill.pdf", "bill.xlsx", "survey.json"]


def test_a_bill_with_an_open_position_is_written_and_says_which(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    no_class = {"label": "B30 lane", "liquid": {"family": "diesel", "blend_percent": 30}}
    done = spoutline("bill", written(no_class), "--pdf", tmp_path / "bill.pdf")
    assert done.code == 1
    assert "B30 lane" in done.err
    assert (tmp_path / "bill.pdf").exists()


def test_the_same_survey_gives_the_same_bytes_in_two_processes_with_other_hash_seeds(
    written: Callable[..., Path], tmp_path: Path, shared_database: Path
) -> None:
    survey = written()
    folders = [tmp_path / "one", tmp_path / "two"]
    for seed, folder in enumerate(folders, start=1):
        folder.mkdir()
        forms = [f"--{form}={folder / 'bill'}.{form}" for form in ("pdf", "csv", "xlsx")]
        shared = ["--database", str(shared_database)]
        environment = {**os.environ, "PYTHONHASHSEED": str(seed), "LANG": ["C", "C.UTF-8"][seed - 1]}
        commands = [[*shared, "bill", str(survey), *forms], [*shared, "plan", str(survey), "--json"]]
        script = f"from spoutline.cli.main import run\nfor one in {commands!r}:\n    assert run(one, None) == 0, one"
        plan = subprocess.run([sys.executable, "-c", script], check=True, env=environment, capture_output=True)
        (folder / "plan.json").write_bytes(plan.stdout)
    for name in ("bill.pdf", "bill.csv", "bill.xlsx", "plan.json"):
        assert (folders[0] / name).read_bytes() == (folders[1] / name).read_bytes(), name


def test_the_date_is_printed_only_where_it_is_given(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    survey = written()
    for name, options in (("plain", []), ("dated", ["--dated", "2031-07-04"])):
        assert spoutline("bill", survey, "--pdf", tmp_path / f"{name}.pdf", *options).code == 0
    texts = {name: text_of(tmp_path / f"{name}.pdf") for name in ("plain", "dated")}
    assert "2031" in texts["dated"]
    assert "2031" not in texts["plain"]
    done = spoutline("bill", survey, "--pdf", tmp_path / "never.pdf", "--dated", "2031-02-30")
    assert done.code == 2
    assert "--dated: '2031-02-30'" in done.err


def test_a_bill_leaves_its_calculations_out_on_request(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    survey, whole, short = written(), tmp_path / "whole.pdf", tmp_path / "short.pdf"
    assert spoutline("bill", survey, "--pdf", whole).code == 0
    assert spoutline("bill", survey, "--pdf", short, "--without-calculations").code == 0
    texts = [text_of(path) for path in (whole, short)]
    assert ["Annex B: calculation sheets" in text for text in texts] == [True, False]
    assert ["left out of this copy" in text for text in texts] == [False, True]


def test_calculations_can_be_left_out_of_a_pdf_only(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    done = spoutline("bill", written(), "--csv", tmp_path / "a.csv", "--without-calculations")
    assert done.code == 2
    assert "--pdf" in done.err
    assert not (tmp_path / "a.csv").exists()


def test_a_short_bill_is_written_on_request_into_a_pdf_alone(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    survey, full, short = written(), tmp_path / "full.pdf", tmp_path / "short.pdf"
    assert spoutline("bill", survey, "--pdf", full).code == 0
    assert spoutline("bill", survey, "--pdf", short, "--short").code == 0
    assert len(pages_of(short)) < len(pages_of(full))
    assert "Bill of materials (short)" in text_of(short)
    for options in (["--why"], []):
        target = ["--pdf", tmp_path / "no.pdf"] if options else ["--csv", tmp_path / "no.csv"]
        done = spoutline("bill", survey, *target, "--short", *options)
        assert done.code == 2
        assert "--short" in done.err
    assert not (tmp_path / "no.pdf").exists()
    assert not (tmp_path / "no.csv").exists()


def test_a_bill_needs_a_file_to_write(spoutline: Any, written: Callable[..., Path]) -> None:
    done = spoutline("bill", written())
    assert done.code == 2
    assert "--pdf" in done.err


def test_an_output_never_overwrites_the_survey_or_another_output(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    survey = written()
    before = survey.read_bytes()
    done = spoutline("bill", survey, "--pdf", survey)
    assert done.code == 2
    assert "the survey itself" in done.err
    done = spoutline("bill", survey, "--pdf", tmp_path / "x", "--csv", tmp_path / "." / "x")
    assert done.code == 2
    assert "--pdf" in done.err
    done = spoutline("bill", survey, "--pdf", tmp_path)
    assert done.code == 2
    assert "folder" in done.err
    assert survey.read_bytes() == before
    assert [path.name for path in tmp_path.iterdir()] == ["survey.json"]


def test_where_one_output_cannot_be_written_none_is(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    kept = tmp_path / "bill.pdf"
    kept.write_bytes(b"the former bill")
    done = spoutline("bill", written(), "--force", "--pdf", kept, "--csv", tmp_path / "missing" / "bill.csv")
    assert done.code == 2
    assert "bill.csv' is not usable; it cannot be written: the folder" in done.err
    assert kept.read_bytes() == b"the former bill"
    assert sorted(path.name for path in tmp_path.iterdir()) == ["bill.pdf", "survey.json"]


def test_a_demo_is_written_whole(spoutline: Any, tmp_path: Path) -> None:
    done = spoutline("demo", "marina", "--out", tmp_path / "no" / "demo.json")
    assert done.code == 2
    assert "cannot be written" in done.err
