"""The options of a quotation side by side, as the window lists them."""

from __future__ import annotations

from planning.quoting_terms import terms_of
from planning.surveys import survey_of
from spoutline.bootstrap import Workbench
from spoutline.gui.models.quotation_amounts import amount_rows
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

E10 = {"family": "gasoline", "blend_percent": 10}
OPTIONS = [{"title": "Single-use", "breakaway": "single_use"}, {"title": "Reconnectable", "breakaway": "reconnectable"}]


def test_a_part_that_its_maker_replaced_stands_beside_its_successor(bench: Workbench) -> None:
    """The catalogue's file of swivels says that LS-S101 took the place of LS-S113."""
    display = Display(UnitSystem.SI)
    survey = survey_of(liquid=E10, decisions={"pinned": ("LS-S113",)})
    quotation = bench.quoting().quote(survey, terms_of(options=OPTIONS), display).quotation
    (row,) = (row for row in amount_rows(quotation, bench.story(display)) if "→" in row.title)
    assert row.title == "LS-S113 → LS-S101"
    assert row.cells == ("1 ×", "1 ×")
    assert not row.differs
    assert "1A" in row.about
    bare = bench.quoting().quote(survey_of(liquid=E10), terms_of(options=OPTIONS), display).quotation
    assert not [row for row in amount_rows(bare, bench.story(display)) if "→" in row.title]
