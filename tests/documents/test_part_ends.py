"""A part drawn with its two ends: which thread stands out, which is sunk in, and what is said of each."""

from __future__ import annotations

from itertools import product

import pytest

from spoutline.bootstrap import Workbench
from spoutline.documents.drawing.part_ends import part_ends_drawing
from spoutline.documents.drawing.shapes import Drawing, Label, Path, Weight, places_of
from spoutline.model.language import Language
from spoutline.model.nominal_size import NominalSize
from spoutline.model.part import HANGING_KINDS, PartKind
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


def npt(gender: Gender) -> Port:
    return Port(thread=ThreadStandard.NPT, size=NominalSize("3/4"), gender=gender, path=FlowPath.SINGLE)


COAXIAL = Port(thread=ThreadStandard.UN, size=NominalSize("1-7/8-12"), gender=Gender.MALE, path=FlowPath.BALANCE)


def draw(workbench: Workbench, kind: PartKind, inlet: Port | None, outlet: Port | None) -> Drawing:
    story = workbench.story(Display(UnitSystem.US), Language.ENGLISH)
    drawing = part_ends_drawing(kind, inlet, outlet, story)
    assert drawing is not None
    return drawing


def labels(drawing: Drawing) -> list[str]:
    return [shape.text for shape in drawing.shapes if isinstance(shape, Label)]


@pytest.mark.parametrize(("kind", "first", "second"), [*product((PartKind.SWIVEL, PartKind.CURB_HOSE), Gender, Gender)])
def test_a_male_thread_stands_out_of_its_end_and_a_female_one_is_sunk_in(
    workbench: Workbench, kind: PartKind, first: Gender, second: Gender
) -> None:
    bare = draw(workbench, kind, None, None)
    drawing = draw(workbench, kind, npt(first), npt(second))
    heights = [place.y_m for shape in bare.shapes if isinstance(shape, Path) for place in places_of(shape)]
    added = [shape for shape in drawing.shapes if isinstance(shape, Path) and shape not in bare.shapes]
    above = [one for one in added if min(place.y_m for place in one.places) >= max(heights) - 1e-12]
    below = [one for one in added if max(place.y_m for place in one.places) <= min(heights) + 1e-12]
    # a stub is a closed outline beyond the end; of a socket only the rim lies on the end, as a heavy line
    assert any(one.closed for one in above) == (first is Gender.MALE)
    assert any(one.closed for one in below) == (second is Gender.MALE)
    rims = [one for one in (*above, *below) if one.weight is Weight.HEAVY]
    assert len(rims) == [first, second].count(Gender.FEMALE)


def test_each_end_says_size_thread_sex_and_path_in_the_order_of_the_chain(workbench: Workbench) -> None:
    drawing = draw(workbench, PartKind.ADAPTOR, COAXIAL, npt(Gender.FEMALE))
    upper, lower = labels(drawing)[:2], labels(drawing)[2:]
    assert sorted(upper) != sorted(lower)
    assert any("1-7/8-12" in text and "male" in text for text in upper)
    assert any("balance" in text for text in upper)
    assert any("3/4" in text and "NPT" in text and "female" in text for text in lower)
    assert drawing.description.index("1-7/8-12") < drawing.description.index("3/4")


def test_an_end_that_nobody_stated_says_so_and_a_spout_is_no_end(workbench: Workbench) -> None:
    assert labels(draw(workbench, PartKind.SWIVEL, npt(Gender.MALE), None)).count("?") == 1
    assert labels(draw(workbench, PartKind.NOZZLE, None, None)) == ["?"]


@pytest.mark.parametrize("kind", list(PartKind))
def test_every_part_that_hangs_is_drawn_within_its_box(workbench: Workbench, kind: PartKind) -> None:
    story = workbench.story(Display(UnitSystem.US), Language.ENGLISH)
    drawing = part_ends_drawing(kind, npt(Gender.MALE), npt(Gender.FEMALE), story)
    assert (drawing is not None) == (kind in HANGING_KINDS)
    if drawing is not None:
        for shape in drawing.shapes:
            for place in places_of(shape):
                assert drawing.box.left_m <= place.x_m <= drawing.box.right_m
                assert drawing.box.bottom_m <= place.y_m <= drawing.box.top_m
