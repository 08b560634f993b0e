"""What an air agency, a jurisdiction or a person asks for hangs at every hose that it is asked of.

That low-permeation hose and enhanced conventional nozzle come with the removal of vapor recovery is N.J.A.C. 7:27-16.3.
The prices are relations between two answers of the program; none is a figure of the trade.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest

from paper_text import text_of
from program_runs import Spoutline
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef

TERMS = Path(__file__).parents[2] / "resources" / "terms" / "refit.toml"
Answer = Callable[..., Any]
GASOLINE = ("1A regular", "3A premium")


@pytest.fixture
def answer(spoutline: Spoutline, own_database: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Answer:
    """Answer a command about the demo station that converts from vacuum assist, changed as the test says."""
    monkeypatch.chdir(tmp_path)
    station = json.loads(spoutline("demo", "conversion_assist").out)
    station["positions"] = [one for one in station["positions"] if one["label"] in (*GASOLINE, "4B diesel")]

    def go(
        *command: str, agency: str = "unknown", jurisdiction: str = "us_general", expect: int = 0, **every: Any
    ) -> Any:
        survey = json.loads(json.dumps(station))
        survey["conversion"]["agency"] = agency
        survey["site"]["jurisdiction"] = jurisdiction
        for position in survey["positions"]:
            position.update(every)
        Path("survey.json").write_text(json.dumps(survey))
        done = spoutline("--database", own_database, command[0], "survey.json", *command[1:])
        assert done.code == expect, done.err
        return json.loads(done.out) if "--json" in command else done.out

    return go


def hoses_and_nozzles(plan: Any, catalogue: CatalogueStore) -> dict[str, list[Part]]:
    parts = {
        one["label"]: [
            PartRef(link["part_number"], link["maker"])
            for link in one["set"]
            if link["slot"] in ("whip_hose", "curb_hose", "nozzle")
        ]
        for one in plan["positions"]
    }
    return {label: list(catalogue.parts(tuple(numbers))) for label, numbers in parts.items() if label in GASOLINE}


def keeps_the_demand(part: Part) -> bool:
    if part.hose is not None:
        return part.hose.low_permeation
    return part.nozzle is not None and part.nozzle.enhanced_conventional


ASKING = {
    "the agency of the survey": {"agency": "new_jersey"},
    "the jurisdiction": {"jurisdiction": "us_without_recovery"},
}


@pytest.mark.parametrize("asking", ASKING.values(), ids=ASKING)
def test_both_demands_hang_at_every_gasoline_hose_and_cost_what_they_cost(
    asking: dict[str, str], answer: Answer, catalogue_store: CatalogueStore
) -> None:
    asked, plain = answer("plan", "--json", **asking), answer("plan", "--json", agency="maryland")
    found = hoses_and_nozzles(asked, catalogue_store)
    assert sorted(found) == sorted(GASOLINE)
    assert all(keeps_the_demand(part) for parts in found.values() for part in parts)
    assert not all(
        keeps_the_demand(part) for parts in hoses_and_nozzles(plain, catalogue_store).values() for part in parts
    )
    costs = [answer("convert", "--json", **where)["money"]["total"] for where in (asking, {"agency": "maryland"})]
    assert Decimal(costs[0]) > Decimal(costs[1])


def followed(position: Any) -> list[str]:
    """Return the parts of the way that is followed; two ways that are one are told once."""
    ways = {option["kind"]: option["part_numbers"] for option in position["options"]}
    return list(ways.get(position["follows"], ways["least_cost"]))


def test_the_conversion_hangs_what_the_plan_hangs_under_the_demand(answer: Answer) -> None:
    plan, conversion = (answer(name, "--json", agency="new_jersey") for name in ("plan", "convert"))
    hanging = {one["label"]: followed(one) for one in conversion["positions"] if one["outcome"] == "converts"}
    planned = {one["label"]: [link["part_number"] for link in one["set"]] for one in plan["positions"]}
    assert hanging
    assert hanging.items() <= planned.items()


def test_the_demand_of_the_agency_is_a_line_with_its_source(answer: Answer) -> None:
    lines = {
        line["id"]: line
        for line in answer("plan", "--json", agency="new_jersey")["positions"][0]["requirement"]["lines"]
    }
    for demand in ("low_permeation", "enhanced_conventional"):
        assert "air agency, New Jersey: N.J.A.C. 7:27-16.3" in lines[demand]["source"]
        assert lines[demand]["severity"] == "must"


def test_a_part_that_does_not_keep_the_demand_is_told_why(answer: Answer) -> None:
    told = answer("whynot", "1A regular", "TH-H101", agency="new_jersey", expect=1)
    assert "air agency, New Jersey" in told
    assert "not a low-permeation hose" in told


def test_an_agency_that_the_table_lacks_is_told_by_every_plan(answer: Answer) -> None:
    answer("plan", agency="nonesuch", expect=2)


def test_local_vapor_rules_go_on_refusing_removal(answer: Answer) -> None:
    # CARB pages on retail Phase II
    plan = answer("plan", "--json", jurisdiction="us_vapour_rules", expect=1)
    assert {one["status"] for one in plan["positions"] if one["label"] in GASOLINE} == {"not_allowed"}


def test_a_wish_for_a_reconnectable_breakaway_is_a_line_of_every_plan(
    answer: Answer, catalogue_store: CatalogueStore
) -> None:
    plan = answer("plan", "--json", reconnectable_wanted=True)
    for one in plan["positions"]:
        line = next(line for line in one["requirement"]["lines"] if line["id"] == "reconnectable")
        assert (line["severity"], line["source"]) == ("must", "decision in the survey")
        parts = catalogue_store.parts(tuple(PartRef(link["part_number"], link["maker"]) for link in one["set"]))
        assert all(part.breakaway.reconnectable for part in parts if part.breakaway is not None)
    told = answer("whynot", "1A regular", "LS-B101", reconnectable_wanted=True, expect=1)
    assert "single-use" in told


def test_a_wish_that_cannot_be_met_is_named_in_the_conflict(answer: Answer) -> None:
    pinned = {"decisions": {"pinned": ["LS-B101"]}}
    plan = answer("plan", "--json", reconnectable_wanted=True, expect=1, **pinned)
    conflict = plan["positions"][0]["conflict"]
    named = [*conflict["requirements"], *(one["requirement"] for one in conflict["relaxations"])]
    assert "reconnectable" in named


def test_bill_quotation_and_pack_name_what_is_asked_and_who_asks_it(answer: Answer) -> None:
    # the options of the terms that ask for single-use breakaways have no set, so that the quotation ends with 1
    answer("bill", "--pdf", "bill.pdf", agency="new_jersey", reconnectable_wanted=True)
    answer("pack", "--pdf", "pack.pdf", agency="new_jersey", reconnectable_wanted=True)
    answer("quote", "--terms", TERMS, "--pdf", "quote.pdf", agency="new_jersey", reconnectable_wanted=True, expect=1)
    for paper in ("bill.pdf", "pack.pdf", "quote.pdf"):
        text = text_of(Path(paper))
        assert "air agency, New Jersey: N.J.A.C. 7:27-16.3" in text, paper
        assert "econnectable breakaway" in text, paper
        assert "decision in the survey" in text, paper
