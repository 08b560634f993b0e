"""The installer's commands: pack, record and swap, from the survey file to the papers and back."""

from __future__ import annotations

import base64
import json
import re
import shutil
from collections.abc import Callable
from html import unescape
from io import BytesIO
from pathlib import Path

import icalendar
import pytest
from PIL import Image
from pypdf import PdfReader, PdfWriter

from paper_text import pages_of, text_of
from program_runs import Spoutline
from spoutline.book.survey_text import read_survey

Written = Callable[..., Path]


@pytest.fixture
def own(database_to_copy: Path, tmp_path: Path) -> tuple[str, str]:
    """Return the options for a database of the test's own: records are kept in it."""
    path = tmp_path / "own.sqlite3"
    shutil.copy(database_to_copy, path)
    return ("--database", str(path))


def fill(source: Path, target: Path, **values: str) -> None:
    writer = PdfWriter(clone_from=source)
    for page in writer.pages:
        writer.update_page_form_field_values(page, dict(values), auto_regenerate=False)
    writer.write(target)


@pytest.mark.parametrize(
    ("language", "title"),
    [
        ("en", "Installer's pack"),
        ("es", "Carpeta del instalador"),
        ("de", "Montagemappe"),
        ("fr", "Dossier de l'installateur"),
    ],
)
def test_pack_writes_the_papers_in_the_language_asked_for(
    spoutline: Spoutline, written: Written, tmp_path: Path, language: str, title: str
) -> None:
    pdf = tmp_path / "pack.pdf"
    done = spoutline("pack", written(), "--pdf", pdf, "--language", language)
    assert (done.code, done.err) == (0, "")
    assert title in text_of(pdf)
    assert PdfReader(pdf).trailer["/Root"]["/Lang"] == language


def test_pack_holds_the_parts_that_plan_prints(spoutline: Spoutline, written: Written, tmp_path: Path) -> None:
    survey, pdf = written(), tmp_path / "pack.pdf"
    spoutline("pack", survey, "--pdf", pdf)
    plan = json.loads(spoutline("plan", survey, "--json").out)
    text = text_of(pdf)
    for part in plan["positions"][0]["set"]:
        assert part["part_number"] in text


@pytest.mark.plans_anew
def test_pack_writes_every_paper_at_once_and_they_are_the_same_again(
    spoutline: Spoutline, written: Written, tmp_path: Path
) -> None:
    survey = written()
    papers = {name: tmp_path / f"paper.{name}" for name in ("pdf", "cautions", "form", "inspection", "ics")}
    options = [item for name, path in papers.items() for item in (f"--{name}", path)]
    spoutline("pack", survey, *options, "--in-service", "2026-12-01", "--dated", "2026-11-25")
    first = {name: path.read_bytes() for name, path in papers.items()}
    spoutline("pack", survey, *options, "--in-service", "2026-12-01", "--dated", "2026-11-25")
    assert {name: path.read_bytes() for name, path in papers.items()} == first
    assert icalendar.Calendar.from_ical(first["ics"]).walk("VEVENT")


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ((), "name at least one file"),
        (("--ics", "a.ics"), "--in-service"),
        (("--pdf", "a.pdf", "--dated", "yesterday"), "YYYY-MM-DD"),
        (("--pdf", "a.pdf", "--position", "9Z"), "position"),
        (("--pdf", "a.pdf", "--language", "it"), "invalid choice"),
        (("--pdf", "a.pdf", "--job", "none.toml"), "none.toml"),
        (("--pdf", "a.pdf", "--form", "a.pdf"), "another file"),
    ],
)
def test_bad_input_is_named_and_nothing_is_written(
    spoutline: Spoutline,
    written: Written,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    arguments: tuple[str, ...],
    words: str,
) -> None:
    monkeypatch.chdir(tmp_path)
    done = spoutline("pack", written(), *arguments)
    assert done.code == 2
    assert words in done.err
    assert not (tmp_path / "a.pdf").exists()


def test_a_position_without_a_set_is_told_and_the_papers_are_written(
    spoutline: Spoutline, written: Written, tmp_path: Path
) -> None:
    survey = written(
        {"label": "1", "liquid": {"family": "gasoline", "blend_percent": 10}},
        {"label": "2", "liquid": {"family": "diesel", "blend_percent": 50}},
    )
    pdf = tmp_path / "pack.pdf"
    done = spoutline("pack", survey, "--pdf", pdf)
    assert done.code == 1
    assert "2" in done.err
    assert "No set was found" in text_of(pdf)


def test_a_form_goes_out_comes_back_and_its_record_is_kept(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey, form, filled = written(), tmp_path / "form.pdf", tmp_path / "filled.pdf"
    spoutline("pack", survey, "--form", form, *own)
    fill(
        form, filled, p1_bond_reading="2 Mohm", p1_leak_result="passed", p1_done_by="Ada Quill", p1_done_on="2026-12-01"
    )
    record, bill = tmp_path / "record.pdf", tmp_path / "built.pdf"
    done = spoutline("record", "read", filled, "--survey", survey, "--pdf", record, "--bill", bill, *own)
    assert done.code == 1  # out of limit, and items left open
    assert "OUT OF LIMIT" in done.out
    assert "2 MΩ" in text_of(record)
    assert PdfReader(bill).metadata.title == "Bill of materials as built: Maple Ferry Fuels"
    built = text_of(bill)
    assert "Bill of materials as built" in built
    assert "Built by record Dec 1, 2026, Ada Quill: 1" in built
    listed = spoutline("record", "list", "Maple Ferry Fuels", *own)
    assert "commissioning  1  Ada Quill" in listed.out
    assert listed.code == 1
    assert "(≤ 1 MΩ): OUT OF LIMIT" in listed.out
    assert "✗ Nobody has signed the form" in listed.out
    pages = [" ".join(page.split()) for page in pages_of(bill)]
    assert "✗ stays closed" in pages[0]
    assert "✓ a set fits" not in pages[0]
    at_position = next(page for page in pages if "Position 1" in page)
    for told in ("2 MΩ (≤ 1 MΩ): OUT OF LIMIT", "Nobody has signed the form", "stays closed until"):
        assert told in pages[0]
        assert told in at_position


TWO = (
    {"label": "1A", "liquid": {"family": "gasoline", "blend_percent": 10}},
    {"label": "1B", "liquid": {"family": "gasoline", "blend_percent": 10}},
    {"label": "2", "liquid": {"family": "diesel", "blend_percent": 50}},  # no class: no set
)


def test_a_form_of_several_positions_becomes_as_many_records(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey, form, filled = written(*TWO), tmp_path / "form.pdf", tmp_path / "filled.pdf"
    spoutline("pack", survey, "--form", form, *own)
    fill(form, filled, p1_bond_reading="90 kohm", p1_done_by="Ada Quill", p2_bond_reading="2 Mohm", p2_done_by="Bo Fen")
    record, bill = tmp_path / "records.pdf", tmp_path / "built.pdf"
    done = spoutline("record", "read", filled, "--survey", survey, "--pdf", record, "--bill", bill, *own)
    assert (done.code, done.err.strip()) == (1, "")  # items were left open
    pages = [" ".join(page.split()) for page in pages_of(record)]
    assert any("record: 1A" in page and "90 kΩ" in page and "Ada Quill" in page for page in pages)
    assert any("record: 1B" in page and "2 MΩ" in page and "Bo Fen" in page for page in pages)
    assert not any("record: 1A" in page and "record: 1B" in page for page in pages)
    listed = spoutline("record", "list", "Maple Ferry Fuels", *own).out
    assert "commissioning  1A  Ada Quill" in listed
    assert "commissioning  1B  Bo Fen" in listed
    built = text_of(bill)
    assert "day not recorded, Ada Quill: 1A" in built
    assert "As planned, no record 2" in built


def test_one_position_of_a_form_can_be_read_alone(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey, form, filled = written(*TWO), tmp_path / "form.pdf", tmp_path / "filled.pdf"
    spoutline("pack", survey, "--form", form, *own)
    fill(form, filled, p1_done_by="Ada Quill", p2_done_by="Bo Fen")
    spoutline("record", "read", filled, "--survey", survey, "--position", "1B", *own)
    listed = spoutline("record", "list", "Maple Ferry Fuels", *own).out
    assert "commissioning  1B  Bo Fen" in listed
    assert "1A" not in listed


def test_pages_are_printed_for_filled_positions_only(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey, form, filled = written(*TWO), tmp_path / "form.pdf", tmp_path / "filled.pdf"
    spoutline("pack", survey, "--form", form, *own)
    fill(form, filled, p2_done_by="Bo Fen")
    record = tmp_path / "records.pdf"
    spoutline("record", "read", filled, "--survey", survey, "--pdf", record, *own)
    assert "record: 1B" in text_of(record)
    assert "record: 1A" not in text_of(record)
    record.unlink()
    done = spoutline("record", "read", form, "--survey", survey, "--pdf", record, *own)
    assert done.code == 2
    assert "the form is empty" in done.err
    assert not record.exists()


def test_a_position_without_a_set_has_no_inspections_and_the_paper_says_why(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    paper = tmp_path / "inspection.pdf"
    spoutline("pack", written(*TWO), "--inspection", paper, "--in-service", "2026-12-01", *own)
    text = text_of(paper)
    assert "By this plan nothing hangs here, so nothing is listed: 2." in text
    assert "1A, 1B" in text
    assert "1A, 1B, 2" not in text


def test_a_complete_record_is_clear(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey, form, filled = written(), tmp_path / "form.pdf", tmp_path / "filled.pdf"
    spoutline("pack", survey, "--form", form, *own)
    fields = PdfReader(form).get_fields()
    assert fields
    values = {name: "passed" for name in fields if name.endswith("_result")}
    # figures typed by hand inside the limits that the form prints
    values |= {"p1_clearance_reading": "7 3/4 in", "p1_spout_reading": "0.82", "p1_bond_reading": "90000"}
    values |= {"p1_flow_reading": "9.5"}
    unsigned = tmp_path / "unsigned.pdf"
    fill(form, unsigned, **values)
    done = spoutline("record", "read", unsigned, "--survey", survey, "--dry-run", *own)
    assert done.code == 1
    assert "✗ Nobody has signed the form" in done.out
    assert "✗ The day of the work is not entered" in done.out
    fill(form, unsigned, **values, p1_signed_by="A. Quill", p1_done_on="2999-12-01")
    done = spoutline("record", "read", unsigned, "--survey", survey, "--dry-run", *own)
    assert done.code == 1
    assert "done_on = '2999-12-01': the day on which the work was done, not after" in done.out
    assert "✗ The day of the work is not entered" in done.out
    fill(form, filled, **values, p1_signed_by="A. Quill", p1_done_on="2026-12-01")
    done = spoutline("record", "read", filled, "--survey", survey, "--dry-run", *own)
    assert "OPEN" not in done.out
    assert "OUT OF LIMIT" not in done.out
    assert done.code == 0
    assert spoutline("record", "list", "Maple Ferry Fuels", *own).out == ""


def test_a_form_of_another_survey_is_refused(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    form = tmp_path / "form.pdf"
    spoutline("pack", written(), "--form", form, *own)
    other = written(climate={"low_c": -5, "high_c": 30})
    done = spoutline("record", "read", form, "--survey", other, *own)
    assert done.code == 2
    assert "plan revision" in done.err


def test_a_photo_must_be_a_picture(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey, form, photo = written(), tmp_path / "form.pdf", tmp_path / "plate.jpg"
    spoutline("pack", survey, "--form", form, *own)
    photo.write_text("no picture")
    done = spoutline("record", "read", form, "--survey", survey, "--photo", photo, *own)
    assert done.code == 2
    assert "PNG or JPEG" in done.err


def test_wear_and_inspections_are_noted_and_move_the_plan(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey, paper = written(), tmp_path / "inspection.pdf"
    site = "Maple Ferry Fuels"
    assert spoutline("record", "wear", site, "1", "LS-B101", "--fitted", "LS-B101", "--reason", "drive_off",
                     "--on", "2026-02-03", "--survey", survey, *own).code == 0  # fmt: skip
    assert spoutline("record", "inspected", site, "1", "hose_pulled_out", "--on", "2026-03-01", *own).code == 0
    spoutline("pack", survey, "--inspection", paper, "--in-service", "2026-12-01", *own)
    text = text_of(paper)
    assert "Mar 31, 2026 30 days Hose pulled out in full" in text
    assert "drive-off" in text
    listed = spoutline("record", "list", site, *own).out
    assert "2026-02-03  wear  1  Larkspindle Couplings LS-B101 → Larkspindle Couplings LS-B101  drive-off" in listed
    assert "2026-03-01  inspection  1  hose_pulled_out  passed" in listed


def test_a_replacement_without_a_survey_is_kept_but_is_no_success(spoutline: Spoutline, own: tuple[str, str]) -> None:
    done = spoutline("record", "wear", "Nowhere Fuels", "1", "LS-B101", "--reason", "wear", "--on", "2026-01-01", *own)
    assert done.code == 1
    assert "--survey" in done.err
    assert "LS-B101" in spoutline("record", "list", "Nowhere Fuels", *own).out


def test_a_drive_off_is_due_until_it_is_settled(spoutline: Spoutline, written: Written, own: tuple[str, str]) -> None:
    survey, site = written(), "Maple Ferry Fuels"
    spoutline("record", "wear", site, "1", "LS-B101", "--fitted", "LS-B101", "--reason", "drive_off",
              "--on", "2026-02-03", "--survey", survey, *own)  # fmt: skip
    asked = ("record", "due", survey, "--in-service", "2026-02-01", "--by", "2026-02-03", *own)
    due = spoutline(*asked)
    assert due.code == 1
    left = [line.split()[2] for line in due.out.splitlines() if line.startswith("2026-02-03") and "After" in line]
    assert len(left) == 7
    assert all(item.startswith("after_") for item in left)
    for item in left:
        assert spoutline("record", "inspected", site, "1", item, "--on", "2026-02-03", *own).code == 0
    settled = spoutline(*asked)
    assert settled.code == 0
    assert "after_" not in settled.out


def test_a_part_that_was_fitted_is_judged(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    import json

    survey, form, filled = written(), tmp_path / "form.pdf", tmp_path / "filled.pdf"
    spoutline("pack", survey, "--form", form, *own)
    chain = json.loads(spoutline("plan", survey, "--json").out)["positions"][0]["set"]
    place = next(at for at, part in enumerate(chain, start=1) if part["slot"] == "breakaway")
    # a breakaway for DEF carries no class for gasoline: ISO 22241 liquids and fuels have couplings of their own
    fill(form, filled, **{f"p1_part{place}_fitted": "VD-B101", f"p1_part{place}_reason": "not_on_van"})
    done = spoutline("record", "read", filled, "--survey", survey, *own)
    assert done.code == 1
    assert [line for line in done.out.splitlines() if "✗" in line and "VD-B101" in line]
    fill(form, filled, **{f"p1_part{place}_fitted": "LS-B999", f"p1_part{place}_reason": "not_on_van"})
    done = spoutline("record", "read", filled, "--survey", survey, "--bill", tmp_path / "built.pdf", *own)
    assert done.code == 1
    assert "asked for again" in done.out
    assert "LS-B999" in done.out


@pytest.mark.parametrize(
    ("changed", "code", "words"),
    [
        ({"fitted": "DEF"}, 1, "✗"),
        ({"position": "9Z"}, 2, "position"),
        ({"removed": "OTHER"}, 2, "hangs at 1"),
        ({"fitted": "QW-N101"}, 2, "came off"),
        ({}, 0, ""),
    ],
)
def test_a_replacement_is_judged_or_refused(
    spoutline: Spoutline,
    written: Written,
    own: tuple[str, str],
    changed: dict[str, str],
    code: int,
    words: str,
) -> None:
    import json

    survey = written()
    chain = json.loads(spoutline("plan", survey, "--json").out)["positions"][0]["set"]
    hanging = next(part["part_number"] for part in chain if part["slot"] == "breakaway")
    named = {"position": "1", "removed": hanging, "fitted": hanging} | changed
    named = {key: {"DEF": "VD-B101", "OTHER": "VD-B101"}.get(value, value) for key, value in named.items()}
    done = spoutline("record", "wear", "Maple Ferry Fuels", named["position"], named["removed"], "--fitted",
                     named["fitted"], "--reason", "wear", "--on", "2026-01-01", "--survey", survey, *own)  # fmt: skip
    assert done.code == code
    assert words in done.out + done.err
    listed = spoutline("record", "list", "Maple Ferry Fuels", *own).out
    assert (named["fitted"] in listed) is (code < 2)


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("wear", "S", "1", "LS-B1O1", "--reason", "wear", "--on", "2026-01-01"), "part number"),
        (("wear", "S", "1", "LS-B101", "--reason", "wear", "--on", "soon"), "YYYY-MM-DD"),
        (("wear", " ", "1", "LS-B101", "--reason", "wear", "--on", "2026-01-01"), "SITE"),
        (("inspected", "S", "1", "hose", "--on", "2026-01-01"), "invalid choice"),
        (("inspected", "S", "1", "continuity", "--on", "2999-02-03"), "2999-02-03"),
        (("read", "none.pdf", "--survey", "none.json"), "none.pdf"),
    ],
)
def test_a_faulty_entry_is_refused(
    spoutline: Spoutline, own: tuple[str, str], arguments: tuple[str, ...], words: str
) -> None:
    done = spoutline("record", *arguments, *own)
    assert done.code == 2
    assert words in done.err


def test_swap_names_what_would_do_and_why_the_rest_would_not(
    spoutline: Spoutline, written: Written, tmp_path: Path
) -> None:
    import json

    survey = written({"label": "1", "liquid": {"family": "gasoline", "blend_percent": 10}, "hold_open_wanted": True})
    plan = json.loads(spoutline("plan", survey, "--json").out)
    nozzle = next(part["part_number"] for part in plan["positions"][0]["set"] if part["slot"] == "nozzle")
    stock = tmp_path / "stock.csv"
    # an enhanced nozzle with a latch and its device would do; one without a latch, and a truck nozzle, would not
    stock.write_text("part_number,quantity\nQW-N106,2\nQW-N103,4\nQW-N143,1\n")
    done = spoutline("swap", survey, "1", nozzle, "--stock", stock)
    assert done.code == 0
    assert "✓ QW-N106" in done.out
    assert "✗ QW-N103" in done.out
    assert "✗ QW-N143" in done.out
    stock.write_text("part_number,quantity\nQW-N143,1\n")
    assert spoutline("swap", survey, "1", nozzle, "--stock", stock).code == 1


def test_a_scanned_code_finds_its_survey_and_says_whether_it_has_changed(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    form, survey = tmp_path / "form.pdf", written(name="Code Hollow (invented)")
    spoutline("pack", survey, "--form", form, *own)
    fields = PdfReader(form).get_fields()
    assert fields
    code = str(fields["p1_tag"]["/V"])
    unknown = spoutline("record", "find", code, *own)
    assert unknown.code == 2
    assert "Code Hollow" in unknown.err
    from spoutline.bootstrap import Settings, open_workbench

    bench = open_workbench(Settings(database=own[1]))
    stored = bench.book().create(read_survey(survey))
    bench.close()
    assert "as printed" in spoutline("record", "find", code, *own).out
    bench = open_workbench(Settings(database=own[1]))
    bench.book().save(stored, stored.survey.model_copy(update={"site": stored.survey.site.model_copy(
        update={"customer": "Somebody else"})}))  # fmt: skip
    bench.close()
    assert "changed since" in spoutline("record", "find", code, *own).out
    assert spoutline("record", "find", "https://invented.invalid", *own).code == 2


def saved_by_page(page: Path, target: Path, *, revision: str = "", **values: str) -> Path:
    """Write what the page saves once ``values`` are entered into it; a photo of the first position comes along."""
    found = re.findall(
        r'<(?:input|select|textarea) [^>]*?id="(p[0-9]+_[^"]+)"[^>]*?(?: value="([^"]*)")?>', page.read_text()
    )
    fields = {name: unescape(value) for name, value in found} | values
    if revision:
        fields["p1_tag"] = re.sub(r"revision=\w+", f"revision={revision}", fields["p1_tag"])
    out = BytesIO()
    Image.new("RGB", (40, 30), "teal").save(out, "JPEG")
    data = base64.b64encode(out.getvalue()).decode()
    photo = {"position": 1, "kind": "photo", "name": "valve.jpg", "caption": "the valve", "data": data}
    filled = {"format": "filled-spoutline-form", "version": 1, "fields": [fields], "pictures": [photo]}
    target.write_text(json.dumps(filled), encoding="utf-8")
    return target


def test_a_page_goes_out_on_a_tablet_comes_back_and_its_record_is_kept_with_photos(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey, page, form = written(), tmp_path / "tablet.html", tmp_path / "form.pdf"
    assert spoutline("pack", survey, "--tablet", page, "--form", form, *own).code == 0
    values = {"p1_bond_reading": "2 Mohm", "p1_leak_result": "passed", "p1_done_on": "2026-12-01", "p1_done_by": "Ada"}
    fill(form, tmp_path / "filled.pdf", **values)
    filled = saved_by_page(page, tmp_path / "filled.json", **values)
    told = {
        path.suffix: spoutline("record", "read", path, "--survey", survey, "--dry-run", *own)
        for path in (tmp_path / "filled.pdf", filled)
    }
    assert told[".json"].out == told[".pdf"].out  # the same words, limits and verdicts
    assert "OUT OF LIMIT" in told[".json"].out
    record = tmp_path / "record.pdf"
    done = spoutline("record", "read", filled, "--survey", survey, "--pdf", record, *own)
    assert done.code == 1
    assert "valve.jpg: the valve" in text_of(record)
    assert sum(len(one.images) for one in PdfReader(record).pages) == 1
    assert "commissioning  1  Ada" in spoutline("record", "list", "Maple Ferry Fuels", *own).out
    again = tmp_path / "again.html"
    spoutline("pack", survey, "--tablet", again, *own)
    assert again.read_bytes() == page.read_bytes()


def test_a_page_of_another_survey_is_refused_and_nothing_is_kept(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey, page = written(), tmp_path / "tablet.html"
    spoutline("pack", survey, "--tablet", page, *own)
    filled = saved_by_page(page, tmp_path / "filled.json", revision="fedcba9876543210", p1_done_by="Ada")
    done = spoutline("record", "read", filled, "--survey", survey, *own)
    assert done.code == 2
    assert "fedcba9876543210" in done.err
    swapped = saved_by_page(page, tmp_path / "swapped.json", p1_planned="LS-B101 QW-N103", p1_done_by="Ada")
    assert spoutline("record", "read", swapped, "--survey", survey, *own).code == 2
    assert "Ada" not in spoutline("record", "list", "Maple Ferry Fuels", *own).out


def test_a_page_of_a_site_without_a_set_is_refused(spoutline: Spoutline, written: Written, tmp_path: Path) -> None:
    survey = written({"label": "2", "liquid": {"family": "diesel", "blend_percent": 50}})
    done = spoutline("pack", survey, "--tablet", tmp_path / "t.html")
    assert done.code == 2
    assert "a position with a set is needed" in done.err
    assert not (tmp_path / "t.html").exists()


def test_certificates_are_made_of_what_the_book_holds(
    spoutline: Spoutline, written: Written, tmp_path: Path, own: tuple[str, str]
) -> None:
    survey, bond, leak = written(), tmp_path / "bond.pdf", tmp_path / "leak.html"
    asked = ("record", "certificate", survey, *own)
    refused = spoutline(*asked, "--bond", bond)
    assert refused.code == 2
    assert "1: certificate" in refused.err
    assert "no reading of the bond test" in refused.err
    assert not bond.exists()
    assert "--bond or --leak" in spoutline(*asked).err
    noted = ("record", "inspected", "Maple Ferry Fuels", "1")
    with_what = ("--by", "Merle Ash", "--with", "ohmmeter no. 4411")
    assert spoutline(*noted, "hose_surface", "--on", "2026-11-20", "--resistance", "1 kohm", *own).code == 2
    assert spoutline(*noted, "continuity", "--on", "2026-11-20", "--resistance", "much", *own).code == 2
    measured = ("--resistance", "1.2 kohm", *with_what)
    assert spoutline(*noted, "continuity", "--on", "2026-11-20", *measured, *own).code == 0
    assert spoutline(*noted, "after_leak", "--on", "2026-11-20", *with_what, *own).code == 0
    done = spoutline(*asked, "--bond", bond, "--leak", leak, "--json")
    assert (done.code, done.err) == (0, "")
    rows = [one["positions"][0] for one in json.loads(done.out)["certificates"]]
    # 1.2 kΩ is 1200 Ω; 1 MΩ is the limit that the position's form prints
    assert [(row["reading"], row["most"], row["result"]) for row in rows] == [
        (1200.0, 1e6, None),
        (None, None, "passed"),
    ]
    assert "1.2 kΩ" in text_of(bond)
    assert "ohmmeter no. 4411" in unescape(leak.read_text(encoding="utf-8"))
    assert spoutline(*asked, "--bond", bond, "--position", "9").code == 2
    assert spoutline(*asked, "--bond", bond, "--dispenser", "9").code == 2
    # an open circuit is out of its limit: printed, and told by the exit code
    spoutline(*noted, "continuity", "--on", "2026-11-21", "--resistance", "OL", *own)
    out = spoutline(*asked, "--bond", bond)
    assert out.code == 1
    assert "OUT OF LIMIT" in text_of(bond)
    # a part replaced since makes the measurement one of what hung there before
    part = json.loads(spoutline("plan", survey, "--json").out)["positions"][0]["set"][0]["part_number"]
    spoutline("record", "wear", "Maple Ferry Fuels", "1", part, "--reason", "wear", "--on", "2026-11-22", *own)
    assert "replaced on 2026-11-22" in spoutline(*asked, "--bond", bond).err
