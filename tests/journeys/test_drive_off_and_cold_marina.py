"""Two days of an installer: a drive-off from report to certificate, and a marina before the winter.

The papers are read back against each other, number by number; what they must hold comes from the survey typed in here,
from the trade's published texts, or from another paper of the same day.
"""

from __future__ import annotations

import json
import re
import shutil
from collections.abc import Callable
from pathlib import Path

import icalendar
import pytest
from pypdf import PdfReader, PdfWriter

from paper_text import text_of
from program_runs import Spoutline

Written = Callable[..., Path]
SITE = "Heron Ford Fuels"


@pytest.fixture
def own(database_to_copy: Path, tmp_path: Path) -> tuple[str, str]:
    path = tmp_path / "own.sqlite3"
    shutil.copy(database_to_copy, path)
    return ("--database", str(path))


def survey_of(tmp_path: Path, position: dict[str, object], **site: object) -> Path:
    path = tmp_path / "survey.json"
    path.write_text(json.dumps({"site": {"name": SITE, **site}, "positions": [{"label": "1A", **position}]}))
    return path


def fill(source: Path, target: Path, values: dict[str, str]) -> None:
    writer = PdfWriter(clone_from=source)
    for page in writer.pages:
        writer.update_page_form_field_values(page, values, auto_regenerate=False)
    writer.write(target)


def limits_of(text: str) -> dict[str, str]:
    """Return what a paper says must be kept, by what is measured."""
    found = {}
    for name, pattern in (
        ("spout", r"([\d.]+ in – [\d.]+ in)"),
        ("bond", r"(≤ [\d.]+ M?Ω)"),
        ("flow", r"([\d.]+ gpm – [\d.]+ gpm)"),
    ):
        match = re.search(pattern, text)
        found[name] = match[1] if match else ""
    return found


def test_a_drive_off_from_report_to_certificate(spoutline: Spoutline, tmp_path: Path, own: tuple[str, str]) -> None:
    survey = survey_of(tmp_path, {"liquid": {"family": "gasoline", "blend_percent": 10}})
    chain = json.loads(spoutline("plan", survey, "--json").out)["positions"][0]["set"]
    torn = next(part["part_number"] for part in chain if part["slot"] == "breakaway")
    # the report: a car drove off, another breakaway of the same class was put on
    told = spoutline("record", "wear", SITE, "1A", torn, "--fitted", "QW-B101", "--reason", "drive_off",
                     "--on", "2026-02-03", "--survey", survey, *own)  # fmt: skip
    assert (told.code, told.out) == (0, "")
    asked = ("record", "due", survey, "--in-service", "2026-01-04", "--by", "2026-02-03", "--sets", "built", *own)
    due = spoutline(*asked)
    assert due.code == 1
    assert due.out.count("after_") == 7
    # the papers of the day show what hangs there now
    pack, form, plan, calendar = (tmp_path / name for name in ("pack.pdf", "form.pdf", "plan.pdf", "plan.ics"))
    spoutline("pack", survey, "--pdf", pack, "--form", form, "--inspection", plan, "--ics", calendar,
              "--in-service", "2026-01-04", "--sets", "built", *own)  # fmt: skip
    for paper in (pack, form):
        assert "QW-B101" in text_of(paper)
        assert torn not in text_of(paper)
    events = icalendar.Calendar.from_ical(calendar.read_bytes()).walk("VEVENT")
    assert sum("RRULE" not in event for event in events) == 7
    # readings typed by hand inside the limits that the form prints
    fields = PdfReader(form).get_fields()
    assert fields
    values = {name: "passed" for name in fields if name.endswith("_result")}
    values |= {"p1_clearance_reading": "8 in", "p1_spout_reading": "0.82", "p1_bond_reading": "90k"}
    values |= {"p1_flow_reading": "9.5", "p1_part2_serial": "SN 4711", "p1_part2_service_until": "2031-06"}
    values |= {"p1_signed_by": "Ada Quill", "p1_done_by": "Ada Quill", "p1_done_on": "2026-02-03"}
    filled, certificate, bill = (tmp_path / name for name in ("filled.pdf", "certificate.pdf", "bill.pdf"))
    fill(form, filled, values)
    read = spoutline("record", "read", filled, "--survey", survey, "--sets", "built", "--pdf", certificate,
                     "--bill", bill, *own)  # fmt: skip
    assert read.code == 0, read.out
    shown = text_of(certificate)
    for found in ("QW-B101", "SN 4711", "Jun 30, 2031", "90 kΩ", "0.82 in", "9.5 gpm", "Ada Quill", "Feb 3, 2026"):
        assert found in shown
    assert "QW-B101" in text_of(bill)
    # sheet, form and certificate hold a reading against the same figures
    assert limits_of(text_of(pack)) == limits_of(text_of(form)) == limits_of(shown)
    assert all(limits_of(shown).values())
    # what the form cannot prove is looked at and noted; then the position is free
    left = [line.split()[2] for line in spoutline(*asked).out.splitlines() if "after_" in line]
    assert left == ["after_hose", "after_outlet", "after_shear_valve"]
    for item in left:
        assert spoutline("record", "inspected", SITE, "1A", item, "--on", "2026-02-03", *own).code == 0
    assert spoutline(*asked).code == 0
    assert spoutline("record", "list", SITE, *own).code == 0


def test_a_marina_in_a_cold_climate(spoutline: Spoutline, tmp_path: Path, own: tuple[str, str]) -> None:
    boat = {
        "liquid": {"family": "diesel", "blend_percent": 5},
        "duty": "marine",
        "outlet": {"thread": "NPT", "size": "1", "gender": "female", "path": "single", "height_m": 1.0},
        "filler": {"label": "deck", "distance_m": 3.0, "height_m": 0.4},
    }
    survey = survey_of(tmp_path, boat, climate={"low_c": -20, "high_c": 30})
    planned = json.loads(spoutline("plan", survey, "--json").out)["positions"][0]
    pack, form, plan = (tmp_path / name for name in ("pack.pdf", "form.pdf", "plan.pdf"))
    done = spoutline("pack", survey, "--pdf", pack, "--form", form, "--inspection", plan,
                     "--in-service", "2026-05-03", *own)  # fmt: skip
    assert done.code == 0, done.err
    sheet, asked, inspected = (text_of(path) for path in (pack, form, plan))
    for part in planned["set"]:
        assert part["part_number"] in sheet
        assert part["part_number"] in asked
    assert limits_of(sheet) == limits_of(asked)
    # fire on the water: 29 CFR 1910.106(g)(4) and NFPA 30A chapter 11, from memory, are behind the caution
    assert "Fuel on the water, vapor in the bilge" in sheet
    assert "Stiff hose and brittle seals in the cold" in sheet
    assert "hazardous waste" in sheet
    # common practice, no source: what must stand the frost is looked at before the first winter, here by 1 October
    assert re.search(r"Oct 1, 2026 [^.]{0,40}Before the frost", inspected)
    # Okla. 165:26-2-92(c): hoses pulled out in full every 30 days; 3 May and 30 days is 2 June
    assert "Jun 2, 2026" in inspected
    for later, times in (("2026-09-30", 0), ("2026-10-01", 1)):
        due = spoutline("record", "due", survey, "--in-service", "2026-05-03", "--by", later, *own)
        assert due.code == 0
        assert due.out.count("cold_look") == times
