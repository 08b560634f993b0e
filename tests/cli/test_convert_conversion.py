"""The commands `convert` and `programme`, run in this process over the shared catalogue."""

from __future__ import annotations

import csv
import json
import math
from decimal import Decimal
from io import StringIO
from pathlib import Path
from random import Random

import pytest

from bench.generated_sites_conversion import small_site
from paper_text import pages_of, text_of
from program_runs import Spoutline
from spoutline.bootstrap.conversions import ConversionService
from spoutline.documents.json.conversion import ConversionDocument

DEMO = Path(__file__).resolve().parents[2] / "resources" / "demo"
ASSIST, BALANCE = DEMO / "conversion_assist.json", DEMO / "conversion_balance.json"


def changed(source: Path, target: Path, **answers: object) -> Path:
    data = json.loads(source.read_text(encoding="utf-8"))
    data["conversion"].update(answers)
    target.write_text(json.dumps(data), encoding="utf-8")
    return target


def test_convert_writes_report_and_calendar_and_prints_the_document(spoutline: Spoutline, tmp_path: Path) -> None:
    pdf, ics = tmp_path / "report.pdf", tmp_path / "plan.ics"
    done = spoutline("convert", ASSIST, "--pdf", pdf, "--ics", ics, "--json")
    assert done.code == 0
    document = ConversionDocument.model_validate_json(done.out)
    assert document.standing.standing == "may_go"
    assert "no permission" in document.advice
    assert len(document.positions) == 8
    assert pdf.read_bytes().startswith(b"%PDF")
    assert ics.read_bytes().startswith(b"BEGIN:VCALENDAR\r\n")


def test_one_page_is_written_beside_the_report_as_pdf_or_html(spoutline: Spoutline, tmp_path: Path) -> None:
    pdf, page, html = tmp_path / "report.pdf", tmp_path / "page.pdf", tmp_path / "page.html"
    done = spoutline("convert", ASSIST, "--pdf", pdf, "--one-page", page, "--dated", "2026-11-29")
    assert done.code == 0
    assert len(pages_of(page)) == 1 < len(pages_of(pdf))
    assert "Station on one page: Thimble Lane Fuels" in text_of(page.read_bytes())
    assert "Nov 29, 2026" in text_of(page.read_bytes())
    assert spoutline("convert", ASSIST, "--one-page", html, "--language", "es").code == 0
    assert "La estación en una página" in html.read_text(encoding="utf-8")
    taken = tmp_path / "letter.pdf"
    taken.write_text("mine")
    refused = spoutline("convert", ASSIST, "--one-page", taken)
    assert (refused.code, taken.read_text()) == (2, "mine")
    assert "--one-page" in refused.err


@pytest.mark.plans_anew
def test_the_document_is_the_same_every_time(spoutline: Spoutline) -> None:
    first, second = (spoutline("convert", BALANCE, "--json").out for _ in range(2))
    assert first == second


def test_the_text_tells_the_standing_first(spoutline: Spoutline) -> None:
    done = spoutline("convert", ASSIST)
    assert done.code == 0
    assert done.out.index("NOTICE") < done.out.index("Which way")
    assert "1A regular: can be converted (vapor recovery taken away)" in done.out


def test_a_forbidden_removal_ends_with_code_1_and_says_so(spoutline: Spoutline, tmp_path: Path) -> None:
    survey = changed(ASSIST, tmp_path / "survey.json", agency="california_retail")
    done = spoutline("convert", survey)
    assert done.code == 1
    assert "not allowed here" in done.out


def test_where_recovery_has_to_stay_the_papers_are_written_and_say_so(spoutline: Spoutline, tmp_path: Path) -> None:
    data = json.loads(BALANCE.read_text(encoding="utf-8"))
    data["conversion"]["agency"] = "california_retail"
    data["positions"] = data["positions"][:2]  # nothing but hoses that are to lose recovery
    survey, pdf, ics = tmp_path / "survey.json", tmp_path / "report.pdf", tmp_path / "plan.ics"
    survey.write_text(json.dumps(data), encoding="utf-8")
    done = spoutline("convert", survey, "--pdf", pdf, "--ics", ics, "--start", "2027-02-01")
    assert done.code == 1
    assert "not allowed here" in text_of(pdf.read_bytes())
    assert "Recovery stays, so nothing changes here" in text_of(pdf.read_bytes())
    calendar = ics.read_text(encoding="utf-8").replace("\n ", "")
    assert calendar.count("BEGIN:VEVENT") == 1
    assert "Vapor recovery stays: no removal is planned" in calendar
    assert "DTSTART;VALUE=DATE:20270201" in calendar


def test_a_hose_that_keeps_recovery_is_told_in_the_head_and_counted(spoutline: Spoutline, tmp_path: Path) -> None:
    data = json.loads(BALANCE.read_text(encoding="utf-8"))
    data["conversion"].update(agency="texas")
    data["conversion"]["emissions"]["ullage_m3"] = 15.0
    data["conversion"]["sequence"].update(tank_end_reachable=True, condensate_traps=1)
    data["positions"] = data["positions"][:2]
    data["positions"][1]["vapour_wanted"] = "balance"
    survey, pdf = tmp_path / "survey.json", tmp_path / "report.pdf"
    survey.write_text(json.dumps(data), encoding="utf-8")
    done = spoutline("convert", survey, "--pdf", pdf)
    assert done.out.index("Vapor recovery is kept at 1B") < done.out.index("Which way")
    paper = " ".join(text_of(pdf.read_bytes()).split())
    assert paper.index("Vapor recovery is kept at 1B") < paper.index("Which way")
    assert "What stays live, and why" in paper
    assert "read in the published text" in paper  # how well the limits are founded
    assert "Nobody answered, so usual values are assumed" in paper
    document = ConversionDocument.model_validate_json(spoutline("convert", survey, "--json").out)
    assert document.standing.kept_against_rule == ("1B",)
    assert {(one.opening.value, one.needed_by) for one in document.stays_live} == {
        (name, ("1B",)) for name in ("cabinet_pipe", "riser", "condensate_trap", "tank_end")
    }
    assert not [one for one in document.closings if not one.position]
    assert document.decay is not None and document.decay.nozzles_recovering == 1
    # TP-201.3, balance, 1 to 6 nozzles: k = 760.49 gal (from memory); 1 in H2O = 249.089 Pa
    wanted = 2.0 * 249.089 * math.exp(-760.49 * 3.785411784e-3 / 15.0)
    assert document.decay.least_pressure_pa == pytest.approx(wanted)
    position = document.positions[0]
    assert "supply.pressure_kpa" in position.assumed
    assert sum(position.footing.values()) > 0


@pytest.mark.parametrize(
    ("arguments", "named"),
    [
        (("--start", "2027-02-30"), "--start"),
        (("--dated", "soon"), "--dated"),
    ],
)
def test_a_date_that_is_none_is_named(arguments: tuple[str, ...], named: str, spoutline: Spoutline) -> None:
    done = spoutline("convert", ASSIST, *arguments)
    assert done.code == 2
    assert named in done.err


def test_an_unknown_agency_and_a_calendar_without_dates_are_bad_input(
    spoutline: Spoutline, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    survey = changed(ASSIST, tmp_path / "survey.json", agency="atlantis")
    done = spoutline("convert", survey)
    assert done.code == 2
    assert "agency" in done.err
    ics = tmp_path / "plan.ics"
    with monkeypatch.context() as patch:  # it is said before a station is worked out, which may take minutes
        patch.setattr(ConversionService, "convert_shown", None)
        done = spoutline("convert", BALANCE, "--ics", ics)
    assert done.code == 2
    assert "start_date" in done.err
    assert not ics.exists()
    assert spoutline("convert", BALANCE, "--ics", ics, "--start", "2027-02-01").code == 0


def test_a_described_part_of_the_wrong_kind_is_named_in_the_survey(spoutline: Spoutline, tmp_path: Path) -> None:
    data = json.loads(BALANCE.read_text(encoding="utf-8"))
    data["positions"][0]["installed"] = [{"kind": "label", "description": "sticker"}]
    path = tmp_path / "survey.json"
    path.write_text(json.dumps(data), encoding="utf-8")
    done = spoutline("convert", path)
    assert done.code == 2
    assert "installed" in done.err


# programme


def sites(folder: Path, count: int) -> Path:
    folder.mkdir()
    draw = Random(7)
    for number in range(1, count + 1):
        text = small_site(number, draw).model_dump_json()
        (folder / f"site_{number:02d}.json").write_text(text, encoding="utf-8")
    return folder


def test_a_programme_keeps_to_its_budget_and_is_kept_in_the_book(spoutline: Spoutline, tmp_path: Path) -> None:
    folder = sites(tmp_path / "sites", 6)
    (folder / "broken.json").write_text("{", encoding="utf-8")
    table = tmp_path / "programme.csv"
    arguments = ("programme", folder, "--budget", "9000", "--years", "3", "--processes", "1", "--csv", table, "--json")
    done = spoutline(*arguments)
    assert done.code == 1  # the broken survey is told, the others go on
    programme = json.loads(done.out)
    spent: dict[int, Decimal] = {}
    for ranked in programme["ranked"]:
        if ranked["year"] is not None:
            spent[ranked["year"]] = spent.get(ranked["year"], Decimal(0)) + Decimal(ranked["site"]["cost"])
    assert spent
    assert all(amount <= 9000 for amount in spent.values())
    fault = next(one for one in programme["others"] if one["place"] == "broken.json")
    assert fault["outcome"] == "fault"
    assert fault["message"]
    rows = list(csv.reader(StringIO(table.read_text(encoding="utf-8-sig"))))
    assert len(rows) == 1 + 7


@pytest.mark.parametrize(
    ("arguments", "named"),
    [
        (("--budget", "-5"), "--budget"),
        (("--budget", "much"), "--budget"),
        (("--years", "0"), "--years"),
        (("--processes", "0"), "--processes"),
    ],
)
def test_terms_that_cannot_be_are_named(
    arguments: tuple[str, ...], named: str, spoutline: Spoutline, tmp_path: Path
) -> None:
    done = spoutline("programme", sites(tmp_path / "sites", 1), *arguments)
    assert done.code == 2
    assert named in done.err


def test_an_empty_or_missing_folder_is_named(spoutline: Spoutline, tmp_path: Path) -> None:
    for folder in (tmp_path / "nowhere", tmp_path):
        done = spoutline("programme", folder)
        assert done.code == 2
        assert "folder" in done.err
