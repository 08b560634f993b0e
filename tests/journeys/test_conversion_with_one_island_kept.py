"""An owner converts a station in a state that asks for both, and one island keeps balance recovery: the papers agree.

That low-permeation hose and enhanced conventional nozzle come with the removal is N.J.A.C. 7:27-16.3. Amounts and dates
are held against each other and against sums made here; none is taken from the program alone.
"""

from __future__ import annotations

import csv
import io
import json
import math
from collections.abc import Callable
from datetime import date, datetime, timedelta
from decimal import Decimal
from pathlib import Path
from typing import Any

import icalendar
import openpyxl
import pytest

from paper_text import text_of
from program_runs import Spoutline
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.part_ref import PartRef
from spoutline.model.port import FlowPath

FIRST_DAY = date(2027, 3, 1)
COAXIAL = (
    ("whip_hose", "TH-W117"),
    ("breakaway", "QW-B113"),
    ("curb_hose", "TH-H151"),
    ("nozzle", "QW-N120"),
)


@pytest.fixture
def run(
    spoutline: Spoutline, own_database: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Callable[..., str]:
    """Run a command about the station, in a folder of its own; the survey lies in ``station.json``."""
    monkeypatch.chdir(tmp_path)
    survey = json.loads(spoutline("demo", "conversion_balance").out)
    survey["site"]["jurisdiction"] = "us_without_recovery"
    survey["conversion"]["agency"] = "new_jersey"
    survey["conversion"]["emissions"]["ullage_m3"] = 15.0
    survey["conversion"]["sequence"].update(
        start_date=FIRST_DAY.isoformat(), tank_end_reachable=True, condensate_traps=2, tanks_underground=True
    )
    survey["conversion"]["money"] = {"labour_rate_per_hour": "95", "margin_lost_per_hour": "9"}
    for position in survey["positions"]:
        position["tank"] = {"1": "T1", "2": "T2"}.get(position["dispenser"], "")
    e15 = {"family": "gasoline", "blend_percent": 15}
    survey["positions"][3].update(liquid=e15, liquid_today={"family": "gasoline", "blend_percent": 10})
    parts = [{"kind": kind, "number": number, "condition": "good", "age_years": 3} for kind, number in COAXIAL]
    for label in ("4A", "4B"):
        kept = {**survey["positions"][0], "label": label, "dispenser": "4", "island": "South", "installed": parts}
        survey["positions"].append({**kept, "vapour_wanted": "balance"})
    Path("station.json").write_text(json.dumps(survey), encoding="utf-8")

    def go(*command: str) -> str:
        done = spoutline("--database", own_database, command[0], "station.json", *command[1:])
        assert done.code == 0, done.err
        return done.out

    return go


def sets_of(document: dict[str, Any]) -> dict[str, list[PartRef]]:
    found = {}
    for one in document["positions"]:
        option = next(option for option in one["options"] if option["kind"] == one["follows"])
        found[one["label"]] = list(map(PartRef, option["part_numbers"], option["makers"]))
    return found


def moment(task: dict[str, Any], end: str) -> datetime:
    day, minute = task[f"{end}_day"], task[f"{end}_minute"]
    return datetime.combine(FIRST_DAY, datetime.min.time()) + timedelta(days=day, hours=8, minutes=minute)


def test_the_papers_of_a_station_with_one_island_kept_agree(
    run: Callable[..., str], catalogue_store: CatalogueStore
) -> None:
    files = ("--pdf", "r.pdf", "--ics", "r.ics", "--csv", "r.csv", "--xlsx", "r.xlsx")
    document = json.loads(run("convert", "--json", *files))
    paper = " ".join(text_of(Path("r.pdf").read_bytes()).split())

    # what hangs there: both demands at the hoses that lose recovery, coaxial parts where it is kept
    sets = sets_of(document)
    for label, refs in sets.items():
        parts = list(catalogue_store.parts(tuple(refs)))
        hoses, nozzles = [one for one in parts if one.hose], [one for one in parts if one.nozzle]
        if label in ("1A", "1B", "2A E15", "2B E10"):
            assert all(one.hose and one.hose.low_permeation for one in hoses)
            assert all(one.nozzle and one.nozzle.enhanced_conventional for one in nozzles)
        if label in ("4A", "4B"):
            assert all(one.inlet and one.inlet.path is FlowPath.BALANCE for one in (*hoses, *nozzles))

    # what is closed, and what serves both and stays live
    closed = {(one["opening"], one["dispenser"]): one["quantity"] for one in document["closings"]}
    assert closed == {("cabinet_pipe", "1"): 1, ("riser", "1"): 1}
    live = {one["opening"]: (one["quantity"], one["needed_by"]) for one in document["stays_live"]}
    assert live == {"condensate_trap": (2, ["4A", "4B"]), "tank_end": (1, ["4A", "4B"])}
    for one in document["stays_live"]:
        assert one["says"].partition(":")[0] in paper
    steps = [one["id"] for one in document["sequence"]["tasks"]]
    assert not {"close_tank_end", "drain_traps"}.intersection(steps)

    # the decay test: two nozzles keep balance recovery, k = 760.49 gal (TP-201.3, from memory), 15 m3 of vapor space
    least = 2.0 * 249.089 * math.exp(-760.49 * 3.785411784e-3 / 15.0)
    assert document["decay"]["least_pressure_pa"] == pytest.approx(least)
    assert document["decay"]["nozzles_recovering"] == 2
    assert f"{least / 249.089:.3f} inches of water" in paper

    # the tank that takes E15 changes once, after the hardware of both its hoses, 30 days after the notice
    (change,) = document["tank_changes"]
    assert (change["tank"], change["positions"], change["way"]) == ("T2", ["2A E15", "2B E10"], "hardware_first")
    tasks = {one["id"]: one for one in document["sequence"]["tasks"]}
    product, told = tasks["change_product-tank-1"], tasks["notify_tank_agency-tank-1"]
    assert product["start_day"] - told["finish_day"] >= change["notice_days"] == 30
    assert "E15 label at the selector" in paper and "hardware first, then one change of product" in paper.lower()

    # calendar, table and workbook hold the tasks of the document, with the same times
    calendar = icalendar.Calendar.from_ical(Path("r.ics").read_bytes())
    events = {str(event["summary"]).partition(": ")[2]: event for event in calendar.walk("VEVENT")}
    rows = list(csv.DictReader(io.StringIO(Path("r.csv").read_text(encoding="utf-8-sig"))))
    assert len(calendar.walk("VEVENT")) == len(rows) == len(tasks) + len(document["sequence"]["deadlines"])
    for row in rows:
        task = tasks[row["id"]]
        start, finish = moment(task, "start"), moment(task, "finish")
        assert (row["start"], row["finish"]) == (f"{start:%Y-%m-%d %H:%M}", f"{finish:%Y-%m-%d %H:%M}")
        assert int(row["work_minutes"]) == task["work_minutes"]
        begins = events[row["task"]].start
        assert begins == (start.date() if task["waits_days"] else start)
        assert f"{start:%b} {start.day}, {start.year}" in paper
    book = openpyxl.load_workbook(Path("r.xlsx"))
    assert [cell.value for cell in book["Tasks"]["P"]][1:] == [row["id"] for row in rows]
    assert {(row[0], row[4]) for row in book["Closings"].iter_rows(min_row=2, values_only=True)} == {
        ("close", 1),
        ("stays live", 2),
        ("stays live", 1),
    }

    # the money: what is bought at its price, hours and standstill by the schedule
    costs = {one["kind"]: Decimal(one["amount"]) for one in document["money"]["costs"]}
    bought = sum(
        (
            Decimal(line["amount"]) * line["quantity"]
            for one in document["positions"]
            for line in one["differences"]
            if line["action"] == "add"
        ),
        Decimal(0),
    )
    assert bought == costs["parts"] + costs["accessories"]
    sequence = document["sequence"]
    assert sequence["work_minutes"] == sum(one["work_minutes"] for one in tasks.values())
    assert costs["labour"] == pytest.approx(Decimal(sequence["work_minutes"]) / 60 * 95, abs=Decimal("0.01"))
    assert costs["lost_margin"] == pytest.approx(Decimal(sequence["downtime_minutes"]) / 60 * 9, abs=Decimal("0.01"))
    total = sum(costs.values())
    assert Decimal(document["money"]["total"]) == total
    assert f"{total:,.2f} USD" in paper
    in_book = [row[1] for row in book["Costs"].iter_rows(min_row=2, values_only=True)]
    assert in_book[-1] == pytest.approx(float(total))
    assert sum(float(amount or 0) for amount in in_book[:-1]) == pytest.approx(float(total))


def test_what_is_agreed_from_the_conversion_is_what_the_bill_lists(run: Callable[..., str]) -> None:
    converted = sets_of(json.loads(run("convert", "--json")))
    run("agree", "--from", "convert", "--by", "O. Owner")
    run("bill", "--csv", "b.csv")
    shown = json.loads(run("convert", "--json"))
    assert sets_of(shown) == converted
    rows = list(csv.DictReader(io.StringIO(Path("b.csv").read_text(encoding="utf-8-sig"))))
    assert {row["Sets"].partition(",")[0] for row in rows if row["Sets"]}
    chain = {"adapter", "splitter", "whip hose", "breakaway", "curb hose", "swivel", "nozzle"}
    for label, refs in converted.items():
        listed = [row["Part number"] for row in rows if row["Position"] == label and row["Place"].lower() in chain]
        assert listed == [ref.number for ref in refs]
