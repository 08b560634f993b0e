"""Parts offered in place of those of lines: their differences by hand, in no total, and only where they fit."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from documents.readers import story
from documents.spreadsheet import Workbook
from paper_text import text_of
from planning.quoting_terms import list_of, terms_of
from planning.stores import ListStore
from program_runs import Spoutline
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.quotation.papers import pick_list_pdf, quotation_order_csv, quotation_pdf, quotation_workbook
from spoutline.gui.models.quotation_amounts import amount_rows
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.faults import InputFault
from spoutline.model.part import PartStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation import Quotation
from spoutline.planning.refit.touched import Touch, touched_parts
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

SI = Display(UnitSystem.SI)
# a person's prices, so that every difference can be reckoned by hand: 95.50 - 40.00 = 55.50 for each piece
PRICED = [
    {"part": "LS-B101", "unit_price": "40.00", "by": "Odile"},
    {"part": "QW-B101", "unit_price": "95.50", "by": "Odile"},
]
ALTERNATES = [
    {"part": "LS-B101", "by": "QW-B101", "note": "goes together again after a pull"},
    {"part": "QW-N103", "by": "QW-N143", "note": "for trucks"},  # its spout fits no car
    {"part": "TH-H110", "by": "TH-H101"},  # no line of this station
]


def quoted(workbench: Workbench, **terms: object) -> Quotation:
    return workbench.quoting().quote(demo_survey("small_town"), terms_of(**terms), SI).quotation


@pytest.fixture(scope="module")
def quotation(workbench: Workbench) -> Quotation:
    return quoted(workbench, overrides=PRICED, alternates=ALTERNATES)


def test_the_difference_is_that_of_the_whole_line_and_of_no_total(workbench: Workbench, quotation: Quotation) -> None:
    """Four breakaways of 55.50 more each are 222.00; with a tenth of all five as spares, rounded up, five of them."""
    (offered,) = quotation.options[0].offered_alternates
    assert (offered.line, offered.part.number) == (PartRef("LS-B101", "Larkspindle Couplings"), "QW-B101")
    assert (offered.ordered, offered.unit_price, offered.difference) == (4, Decimal("95.50"), Decimal("222.00"))
    without = quoted(workbench, overrides=PRICED)
    assert quotation.options[0].total == without.options[0].total
    assert quotation.options[0].lines == without.options[0].lines
    spared = quoted(
        workbench, overrides=PRICED, alternates=ALTERNATES[:1], spares=[{"kind": "breakaway", "percent": 10}]
    )
    (offered,) = spared.options[0].offered_alternates
    assert (offered.ordered, offered.difference) == (5, Decimal("277.50"))


def test_what_does_not_fit_as_the_only_change_is_named_and_not_offered(quotation: Quotation) -> None:
    (misfit,) = (one for one in quotation.options[0].alternates if one.misfits)
    assert misfit.part.number == "QW-N143"
    assert misfit.misfits == ("1A gasoline", "1B gasoline")
    assert (misfit.unit_price, misfit.difference) == (None, None)


def test_an_alternate_fits_where_the_search_for_substitutes_changes_nothing_else(workbench: Workbench) -> None:
    """Held against the other search: what it finds without another change fits, what it does not find at all does not.

    Every other nozzle of the catalog is tried in place of that of a gasoline hose.
    """
    survey = demo_survey("small_town")
    survey = survey.model_copy(update={"positions": survey.positions[:1]})
    plan = workbench.plan_site(survey).positions[0]
    fitting = workbench.substitutes(survey, plan, "QW-N103").fitting
    alone = {one.part.number for one in fitting if not one.changes}
    known = {one.part.number for one in fitting}
    others = [part.number for part in workbench.parts().search("QW-N1", None, 40) if part.number != "QW-N103"]
    tried = [number for number in others if number in alone or number not in known][:12]
    assert {number in alone for number in tried} == {True, False}
    terms = terms_of(alternates=[{"part": "QW-N103", "by": number} for number in tried])
    found = workbench.quoting().quote(survey, terms, SI).quotation.options[0].alternates
    assert {one.part.number: not one.misfits for one in found} == {number: number in alone for number in tried}


def test_paper_and_workbook_show_it_apart_from_the_lines(workbench: Workbench, quotation: Quotation) -> None:
    paper = " ".join(text_of(quotation_pdf(quotation, 1, story())).split())
    for told in ("Alternates", "QW-B101", "goes together again after a pull", "+222.00", "in no amount and no total"):
        assert told in paper
    assert "QW-N143 " not in paper.split("Alternates", 1)[1].split("in no amount", 1)[0]
    sheet = Workbook(quotation_workbook(quotation, 1, story())).values["Option 1"]
    row = next(row for row in sheet.iter_rows() if row[1].value == "QW-B101")
    assert (row[7].value, row[8].value, row[9].value) == (4, "Instead of LS-B101", 222)
    assert b"QW-B101" not in quotation_order_csv(quotation, 1)
    assert "QW-B101" not in text_of(pick_list_pdf(quotation, 0, 1, story()))
    plain = " ".join(text_of(quotation_pdf(quoted(workbench), 1, story())).split())
    assert "Alternates" not in plain


def test_the_window_shows_it_beside_the_amounts(quotation: Quotation) -> None:
    rows = {row.title: row.cells for row in amount_rows(quotation, story())}
    assert rows["QW-B101 instead of LS-B101"] == ("+222.00",)
    assert rows["QW-N143 instead of QW-N103"] == ("does not fit",)


@pytest.mark.parametrize(
    ("alternate", "told"),
    [
        ({"part": "LS-B101", "by": "NO-SUCH"}, r"alternates\[0\].by"),
        ({"part": "NO-SUCH", "by": "LS-B101"}, r"alternates\[0\].part"),
        ({"part": "LS-B101", "by": "QW-N103"}, "of the same kind"),
        ({"part": "LS-B101", "by": "LS-B101"}, "another part"),
        ({"part": "GR-L101", "by": "GR-L104"}, "hangs in a set"),
    ],
)
def test_what_cannot_be_an_alternate_is_told(workbench: Workbench, alternate: dict[str, str], told: str) -> None:
    with pytest.raises(InputFault, match=told):
        quoted(workbench, alternates=[alternate])


def test_a_terms_file_offers_it_and_the_shell_tells_it(spoutline: Spoutline, tmp_path: Path) -> None:
    survey, terms = tmp_path / "survey.json", tmp_path / "terms.toml"
    survey.write_text(demo_survey("small_town").model_dump_json(round_trip=True))
    priced = "".join(
        f'[[overrides]]\npart = "{one["part"]}"\nunit_price = {one["unit_price"]}\nby = "Odile"\n' for one in PRICED
    )
    offered = "".join(f'[[alternates]]\npart = "{one["part"]}"\nby = "{one["by"]}"\n' for one in ALTERNATES)
    terms.write_text(
        '[seller]\nname = "Hedgerow Supply"\n[customer]\nname = "Hollow Ford"\n'
        f'[heading]\nnumber = "A-1"\ndated = 2026-11-25\n{priced}{offered}'
    )
    told = " ".join(spoutline("quote", survey, "--terms", terms, "--csv", tmp_path / "order.csv").out.split())
    assert "QW-B101 instead of LS-B101: +222.00" in told
    assert "QW-N143 instead of QW-N103 is not offered" in told
    assert "1A gasoline, 1B gasoline" in told
    assert "TH-H110" not in told


def test_a_change_of_an_alternate_touches_the_quotation_that_offers_it(workbench: Workbench) -> None:
    """What is changed here by hand is what is told: a part gone, superseded, of another mass, at another list price."""
    made, day = quoted(workbench, alternates=ALTERNATES[:1]), terms_of().heading.dated
    assert "QW-B101" not in made.part_numbers
    assert "QW-B101" in {one.number for one in made.pins.parts}
    parts = {one.number: workbench.parts().part(one.number) for one in made.pins.parts}
    lists = workbench.quoting().terms().price_lists(DEMONSTRATION)
    assert touched_parts(made, ListStore(parts.values()), lists, day) == ()
    alternate = parts["QW-B101"]
    for changed, touch, detail in (
        (None, Touch.GONE, ""),
        (replace(alternate, status=PartStatus.SUPERSEDED, superseded_by="XX-B1"), Touch.SUPERSEDED, "XX-B1"),
        (replace(alternate, mass_kg=alternate.mass_kg + 1), Touch.DATA, "mass_kg"),
    ):
        others = [part for number, part in parts.items() if number != "QW-B101"]
        store = ListStore([*others, *([changed] if changed is not None else [])])
        (found,) = touched_parts(made, store, lists, day)
        assert (found.part.number, found.touch, found.detail) == ("QW-B101", touch, detail)
    dearer = list_of({"QW-B101": {1: "999.00"}}, maker=alternate.maker, valid_from=date(2026, 11, 1))
    (found,) = touched_parts(made, ListStore(parts.values()), (*lists, dearer), day)
    assert (found.part.number, found.touch) == ("QW-B101", Touch.PRICE)
    assert found.detail.endswith("→ 999.00 USD")
    # a price for which a person answers is on no list, and no list touches it
    answered = quoted(workbench, overrides=PRICED[1:], alternates=ALTERNATES[:1])
    assert touched_parts(answered, ListStore(parts.values()), (*lists, dearer), day) == ()
